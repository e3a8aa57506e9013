/** English: panel. */
export const panel = {} as const
