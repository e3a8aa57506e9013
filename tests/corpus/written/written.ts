/** The files of texts in the manner of real listings, by name. */
import { blind1 } from './blind-1.ts'
import { blind2 } from './blind-2.ts'
import { czech } from './cs.ts'
import { danish } from './da.ts'
import { englishWords } from './english-words.ts'
import { finnish } from './fi.ts'
import { figures } from './figures.ts'
import { figures2 } from './figures-2.ts'
import { figures3 } from './figures-3.ts'
import { japanese } from './ja.ts'
import { kinds } from './kinds.ts'
import { korean } from './ko.ts'
import { moreJapanese } from './more-ja.ts'
import { moreKorean } from './more-ko.ts'
import { morePortuguese } from './more-pt.ts'
import { norwegian } from './no.ts'
import { portuguese } from './pt.ts'
import { sevenLanguages } from './seven-languages.ts'
import type { WrittenCase } from './written-case.ts'

export const written: Record<string, WrittenCase[]> = {
  kinds,
  'english words': englishWords,
  'seven languages': sevenLanguages,
  figures,
  'figures-2': figures2,
  'figures-3': figures3,
  japanese,
  korean,
  portuguese,
  danish,
  norwegian,
  finnish,
  czech,
  'more japanese': moreJapanese,
  'more korean': moreKorean,
  'more portuguese': morePortuguese,
  'blind-1': blind1,
  'blind-2': blind2
}
