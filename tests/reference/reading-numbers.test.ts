/** Numbers and units of the reader against general libraries (js-quantities 1.8.0, fraction.js 5.3.4; tests only). */
import Fraction from 'fraction.js'
import Qty from 'js-quantities'
import { expect, test } from 'vitest'
import { numberAt } from '../../core/reading/quantities/numbers.ts'
import { readListing } from '../../core/reading/read-listing.ts'
import { tokensOf } from '../../core/reading/text/tokens.ts'

/** Lengths a skirt can have, so that each is read. */
test.each([
  [26, 'in'],
  [27.75, 'in'],
  [19.5, 'in'],
  [66, 'cm'],
  [58.5, 'cm'],
  [640, 'mm'],
  [702, 'mm']
] as const)('%d %s in millimetres', (value, unit) => {
  const { measures } = readListing({ title: 'Skirt', text: `Length: ${value} ${unit}` })
  expect(measures).toHaveLength(1)
  expect(measures[0]?.mm).toBeCloseTo(new Qty(value, unit).to('mm').scalar, 9)
})

const DENOMINATORS = [2, 4, 8, 16]
test('every mixed fraction of a tape from 1 to 60 in', () => {
  let checked = 0
  for (let whole = 1; whole <= 60; whole += 7) {
    for (const below of DENOMINATORS) {
      for (let above = 1; above < below; above++) {
        const text = `${whole} ${above}/${below}`
        const expected = new Fraction(text).valueOf()
        for (const written of [text, `${whole}-${above}/${below}`]) {
          expect(numberAt(tokensOf(written), 0, new Set())?.value, written).toBeCloseTo(expected, 12)
          checked++
        }
      }
    }
  }
  expect(checked).toBe(9 * (1 + 3 + 7 + 15) * 2)
})

/** Unicode's own value of each fraction sign: its compatibility form, 1⁄2. */
test.each([...'½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚'])('%s', (glyph) => {
  const expected = new Fraction(glyph.normalize('NFKD').replace('⁄', '/')).valueOf()
  expect(numberAt(tokensOf(`28${glyph}`), 0, new Set())?.value).toBeCloseTo(28 + expected, 12)
})
