/** The files of texts in the manner of real listings, by name. */
import { japanese } from './ja.ts'
import { korean } from './ko.ts'
import { moreJapanese } from './more-ja.ts'
import { moreKorean } from './more-ko.ts'
import { morePortuguese } from './more-pt.ts'
import { portuguese } from './pt.ts'
import type { WrittenCase } from './written-case.ts'

export const written: Record<string, WrittenCase[]> = {
  japanese,
  korean,
  portuguese,
  'more japanese': moreJapanese,
  'more korean': moreKorean,
  'more portuguese': morePortuguese
}
