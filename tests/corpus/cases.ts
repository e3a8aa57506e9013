/** The corpus, a group a key. */
import type { Case } from './case.ts'
import { asidesAndParts } from './en/asides-and-parts.ts'
import { basis } from './en/basis.ts'
import { cloth } from './en/cloth.ts'
import { houseStyles } from './en/house-styles.ts'
import { lateLetters } from './en/late-letters.ts'
import { layouts } from './en/layouts.ts'
import { lessons } from './en/lessons.ts'
import { letters } from './en/letters.ts'
import { making } from './en/making.ts'
import { misreadings } from './en/misreadings.ts'
import { moreLessons } from './en/more-lessons.ts'
import { moreLetters } from './en/more-letters.ts'
import { sizeCharts } from './en/size-charts.ts'
import { traps } from './en/traps.ts'
import { unitsAndKinds } from './en/units-and-kinds.ts'
import { whoseSizes } from './en/whose-sizes.ts'
import { wordsOfTheCut } from './en/words-of-the-cut.ts'
import { german } from './other/de.ts'
import { spanish } from './other/es.ts'
import { french } from './other/fr.ts'
import { italian } from './other/it.ts'
import { japanese } from './other/ja.ts'
import { korean } from './other/ko.ts'
import { lettersAbroad } from './other/letters.ts'
import { dutch } from './other/nl.ts'
import { polish } from './other/pl.ts'
import { portuguese } from './other/pt.ts'
import { swedish } from './other/sv.ts'
import { whoseAbroad } from './other/whose-and-charts.ts'

export const cases: Record<string, Case[]> = {
  layouts,
  basis,
  traps,
  cloth,
  lessons,
  'more lessons': moreLessons,
  'asides and parts': asidesAndParts,
  misreadings,
  making,
  letters,
  'more letters': moreLetters,
  'late letters': lateLetters,
  'house styles': houseStyles,
  'units and kinds': unitsAndKinds,
  'words of the cut': wordsOfTheCut,
  'whose sizes': whoseSizes,
  'size charts': sizeCharts,
  'whose sizes and charts abroad': whoseAbroad,
  'letters abroad': lettersAbroad,
  german,
  french,
  spanish,
  italian,
  dutch,
  polish,
  swedish,
  portuguese,
  japanese,
  korean
}
