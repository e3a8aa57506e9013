/** English: plan. */
export const plan = {} as const
