/** The files of texts in the manner of real listings, by name. */
import { englishWords } from './english-words.ts'
import { figures } from './figures.ts'
import { figures2 } from './figures-2.ts'
import { figures3 } from './figures-3.ts'
import { kinds } from './kinds.ts'
import { sevenLanguages } from './seven-languages.ts'
import type { WrittenCase } from './written-case.ts'

export const written: Record<string, WrittenCase[]> = {
  kinds,
  'english words': englishWords,
  'seven languages': sevenLanguages,
  figures,
  'figures-2': figures2,
  'figures-3': figures3
}
