/** The files of texts in the manner of real listings, by name. */
import { englishWords } from './english-words.ts'
import { kinds } from './kinds.ts'
import { sevenLanguages } from './seven-languages.ts'
import type { WrittenCase } from './written-case.ts'

export const written: Record<string, WrittenCase[]> = { kinds, 'english words': englishWords, 'seven languages': sevenLanguages }
