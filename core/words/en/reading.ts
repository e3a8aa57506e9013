/** English: reading. */
export const reading = {} as const
