/** The files of texts in the manner of real listings, by name. */
import { figures } from './figures.ts'
import type { WrittenCase } from './written-case.ts'

export const written: Record<string, WrittenCase[]> = { figures }
