/**
 * Unit names and number forms of each language as CLDR has them, by way of Intl.NumberFormat (ICU's copy of CLDR; tests only):
 * a length of a skirt written out in each form is read as the same length.
 */
import { expect, test } from 'vitest'
import { readListing } from '../../core/reading/read-listing.ts'

const SKIRTS: Record<string, [title: string, length: string]> = {
  en: ['Skirt', 'Length'],
  de: ['Rock', 'Länge'],
  fr: ['Jupe', 'Longueur'],
  es: ['Falda', 'Largo'],
  it: ['Gonna', 'Lunghezza'],
  nl: ['Rok', 'Lengte'],
  pl: ['Spódnica', 'Długość'],
  sv: ['Kjol', 'Längd']
}
const UNITS: [unit: 'centimeter' | 'millimeter' | 'inch', mm: number, values: number[]][] = [
  ['centimeter', 10, [61, 62.5, 58.25]],
  ['millimeter', 1, [640, 605]],
  ['inch', 25.4, [24, 22.5, 25.75]]
]
const forms = Object.keys(SKIRTS).flatMap((language) =>
  UNITS.flatMap(([unit, mm, values]) =>
    (['long', 'short', 'narrow'] as const).flatMap((unitDisplay) =>
      values.map((value) => ({
        language,
        unit,
        mm,
        value,
        written: new Intl.NumberFormat(language, { style: 'unit', unit, unitDisplay }).format(value)
      }))
    )
  )
)

test('Intl has the data of every language', () => {
  expect(Intl.NumberFormat.supportedLocalesOf(Object.keys(SKIRTS))).toEqual(Object.keys(SKIRTS))
  expect(new Set(forms.map(({ written }) => written)).size).toBeGreaterThan(80)
})

test.each(forms)('$language: $written', ({ language, mm, value, written }) => {
  const [title, length] = SKIRTS[language] as [string, string]
  const { measures } = readListing({ title, text: `${length}: ${written}`, language })
  expect(measures.map(({ point, stated }) => [point, stated.value])).toEqual([['skirtLength', value]])
  expect(measures[0]?.mm).toBeCloseTo(value * mm, 9)
  expect(measures[0]?.unitFrom).toBe('stated')
})

/** Prices in the form of each language and the currencies of its countries. */
const MONEY: [language: string, currency: string][] = [
  ['en-GB', 'GBP'],
  ['en-US', 'USD'],
  ['de', 'EUR'],
  ['fr', 'EUR'],
  ['es', 'EUR'],
  ['it', 'EUR'],
  ['nl', 'EUR'],
  ['pl', 'PLN'],
  ['sv', 'SEK']
]
test.each(MONEY.flatMap(([language, currency]) => [18, 24.5, 1250].map((amount) => ({ language, currency, amount }))))(
  '$amount $currency in $language',
  ({ language, currency, amount }) => {
    const written = new Intl.NumberFormat(language, { style: 'currency', currency }).format(amount)
    const [title] = SKIRTS[language.slice(0, 2)] as [string, string]
    expect(readListing({ title, text: written, language }).price, written).toEqual({ amount, currency })
  }
)
