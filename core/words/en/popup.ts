/** English: popup. */
export const popup = {} as const
