/** English: worksheet. */
export const worksheet = {} as const
