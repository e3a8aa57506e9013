/** What becomes of a listing that is kept. */
export const STATUSES = ['watching', 'asked', 'bought', 'passed'] as const
export type Status = (typeof STATUSES)[number]
