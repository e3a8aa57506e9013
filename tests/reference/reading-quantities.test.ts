/**
 * Figures and units of the reader against @microsoft/recognizers-text-suite 1.3.1 (tests only), over every text of the corpus whose
 * language it knows: it agrees wherever it is right. Where it is not, the place is listed with what stands there.
 */
import Recognizers from '@microsoft/recognizers-text-suite'
import { expect, test } from 'vitest'
import { quantitiesOf } from '../../core/reading/quantities/quantities.ts'
import { readText } from '../../core/reading/text/text.ts'
import { cases } from '../corpus/cases.ts'

const CULTURES: Record<string, string> = { en: 'en-us', de: 'de-de', fr: 'fr-fr', es: 'es-es', it: 'it-it', nl: 'nl-nl' }
const UNITS: [RegExp, 'in' | 'cm' | 'mm'][] = [
  [/^inch$/i, 'in'],
  [/^cent[ií]m[eèé]t/i, 'cm'],
  [/^mill?[ií]m[eèé]t/i, 'mm']
]

/** What it reads, where, and why that is not what is meant there. */
const NOT_RIGHT: { reads: string; after: RegExp; because: string }[] = [
  { reads: '- 33"', after: /^$/, because: 'the bullet of a list is no minus' },
  { reads: '- 41"', after: /waist\n$/, because: 'the bullet of a list is no minus' },
  { reads: '- 31"', after: /hips\n$/, because: 'the bullet of a list is no minus' },
  { reads: '- 12"', after: /inseam\n$/, because: 'the bullet of a list is no minus' },
  { reads: '.42"', after: /^$/, because: 'the bullet of a list is no decimal point' },
  { reads: '.38"', after: /chest\n$/, because: 'the bullet of a list is no decimal point' },
  { reads: '2"', after: /30[ -]1\/$/, because: 'the lower part of a mixed fraction is no figure of its own' },
  { reads: '¾"', after: /opening 7 $/, because: 'the fraction sign belongs to the whole number before it' },
  { reads: '29\ninches', after: /length $/, because: 'a word that begins the next line is no unit of the figure before it' },
  { reads: '42 (cm)', after: /sleeve 57, shoulder $/, because: 'a unit in brackets behind a list is the unit of all of it' },
  { reads: '41 (inches)', after: /hips = $/, because: 'a unit in brackets behind a list is the unit of all of it' },
  { reads: '2 (inches)', after: /11\.5 x $/, because: '“x 2” says that it is to be doubled' },
  { reads: '4in', after: /\d \d\/$/, because: 'the lower part of a mixed fraction is no figure of its own' },
  { reads: '2in', after: /12 1\/$/, because: 'the lower part of a mixed fraction is no figure of its own' },
  { reads: '2"', after: /20-1\/$/, because: 'the lower part of a mixed fraction is no figure of its own' },
  { reads: '4"', after: /(?:17-1|25-3)\/$/, because: 'the lower part of a mixed fraction is no figure of its own' },
  { reads: '11"', after: /5'$/, because: 'feet and inches are one height' },
  { reads: '9"', after: /5'$/, because: 'feet and inches are one height' },
  { reads: '1/0"', after: /Waist $/, because: 'a division by nought is told as one' },
  { reads: '5 cm', after: /3\.\.$/, because: 'a number with two points is told as unclear' },
  { reads: '8"', after: /5'$/, because: 'feet and inches are one height' },
  { reads: '7"', after: /5'$/, because: 'feet and inches are one height' },
  { reads: '2 in', after: /pockets and $/, because: '“in the back” begins with a preposition' },
  { reads: '32"', after: /reads "$/, because: 'the sign closes a quotation' },
  { reads: '12"', after: /"Size $/, because: 'the sign closes a quotation' },
  { reads: '- 9in', after: /waist $/, because: 'a dash between two measurements is no minus' },
  { reads: '- 12in', after: /inseam $/, because: 'a dash between two measurements is no minus' },
  { reads: '- 11.5in', after: /opening $/, because: 'a dash between two measurements is no minus' },
  { reads: '- 19.5"', after: /washing $/, because: 'a dash before a measurement is no minus' }
]

interface Found {
  text: string
  start: number
  end: number
  resolution: { value: string; unit: string } | null
}

test('every length that it reads is read the same, but for those listed', { timeout: 60_000 }, () => {
  let agreed = 0
  const listed = new Set<number>()
  const languages = new Set<string>()
  for (const { listing, expect: e } of Object.values(cases).flat()) {
    const language = e.language ?? 'en'
    const culture = CULTURES[language]
    if (culture === undefined) continue
    const { text } = listing
    const read = readText(text, language)
    const ours = quantitiesOf(read).map((one) => ({
      ...one,
      start: read.tokens[one.from]?.start ?? 0,
      end: read.tokens[one.to - 1]?.end ?? 0
    }))
    for (const theirs of Recognizers.recognizeDimension(text, culture) as unknown as Found[]) {
      const unit = UNITS.find(([name]) => name.test(theirs.resolution?.unit ?? ''))?.[1]
      // other dimensions, and units that stand with no figure at all
      if (unit === undefined || !/[\d¼-¾⅐-⅞]/.test(theirs.text)) continue
      const known = NOT_RIGHT.findIndex(({ reads, after }) => reads === theirs.text && after.test(text.slice(0, theirs.start)))
      const mine = ours.find((one) => one.start <= theirs.end && one.end > theirs.start)
      const value = Number((theirs.resolution?.value ?? '').replace(',', '.'))
      const same = mine !== undefined && mine.unit === unit && [mine.value, mine.low, mine.high].some((one) => Math.abs(one - value) < 1e-9)
      if (known >= 0) {
        expect(same, `${theirs.text} is listed, yet it agrees`).toBe(false)
        listed.add(known)
        continue
      }
      expect(
        same,
        `${language} “${text.slice(Math.max(0, theirs.start - 20), theirs.end + 10)}”: ${theirs.text}, not ${mine?.value} ${mine?.unit}`
      ).toBe(true)
      agreed++
      languages.add(language)
    }
  }
  expect(agreed).toBeGreaterThan(350)
  expect([...languages].sort()).toEqual(Object.keys(CULTURES).sort())
  expect(
    NOT_RIGHT.filter((_, index) => !listed.has(index)),
    'listed and not met'
  ).toEqual([])
})
