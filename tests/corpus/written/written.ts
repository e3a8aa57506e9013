/** The files of texts in the manner of real listings, by name. */
import { kinds } from './kinds.ts'
import type { WrittenCase } from './written-case.ts'

export const written: Record<string, WrittenCase[]> = { kinds }
