/** English: workroom. */
export const workroom = {} as const
