/** Every verdict, best first; too little told stands apart, at the end. This file imports nothing: records, pages and the planner stand on it. */
export const VERDICTS = ['wears-as-is', 'alters-to-fit', 'needs-a-tailor', 'comes-close', 'leave-it', 'too-little-told'] as const
export type Verdict = (typeof VERDICTS)[number]
