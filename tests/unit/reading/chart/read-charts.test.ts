/** Charts of the bodies that sizes are cut for: where one stands, its rows, and what is a garment’s after all. */
import { describe, expect, test } from 'vitest'
import { readCharts, readCutFor, withoutCharts } from '../../../../core/reading/chart/read-charts.ts'
import { labelsOf } from '../../../../core/reading/names/labels.ts'
import { readQuantities } from '../../../../core/reading/quantities/read-quantities.ts'
import type { ChartRow } from '../../../../core/reading/reading.ts'
import { readSizes } from '../../../../core/reading/sizes/read-sizes.ts'
import { textOf } from '../given.ts'

const stages = (words: string) => {
  const text = textOf(words)
  const sizes = readSizes(text, null, readQuantities(text), { kind: null, language: 'en' })
  return { text, sizes, labels: labelsOf(text, sizes.lengths) }
}
const shown = (rows: readonly ChartRow[]) =>
  rows.map(({ size, body, lowMm, highMm }) => `${size ?? '-'} ${body} ${Math.round(lowMm)}-${Math.round(highMm)}`)
const chart = (words: string) => {
  const { text, sizes, labels } = stages(words)
  return shown(readCharts(text, labels, sizes).rows)
}

describe('a chart', () => {
  test('behind its head', () => {
    expect(chart('Size guide: bust 92-97 cm, hips 98-103 cm')).toEqual(['- bustGirth 920-970', '- hipGirth 980-1030'])
    expect(chart('Size guide M: waist 30-32 in')).toEqual(['M waistGirth 762-813'])
    expect(chart('Size chart 14: bust 38"')).toEqual(['14 bustGirth 965-965'])
  })
  test('on the lines below it, each with its size', () => {
    expect(chart('Size guide\nS: waist 76-81 cm\nM: waist 82-87 cm')).toEqual(['S waistGirth 760-810', 'M waistGirth 820-870'])
  })
  test('across a blank line, and no further than the next', () => {
    expect(chart('Size guide\n\nS: waist 76-81 cm\n\nwaist 86 cm')).toEqual(['S waistGirth 760-810'])
  })
  test('in columns, with the unit of the chart', () => {
    expect(chart('Size chart (cm)\nSize | Chest | Waist\nM | 94-102 | 82-90')).toEqual(['M bustGirth 940-1020', 'M waistGirth 820-900'])
    expect(chart('Size chart\nSize | Bust | Hips\n38 | 88 | 96\n40 | 92 | 100')).toEqual([
      '38 bustGirth 880-880',
      '38 hipGirth 960-960',
      '40 bustGirth 920-920',
      '40 hipGirth 1000-1000'
    ])
  })
  test('below a sentence that points to it, where several sizes follow', () => {
    expect(chart('Please see the size guide below.\nUK 10: bust 86 cm\nUK 12: bust 91 cm')).toEqual([
      'UK 10 bustGirth 860-860',
      'UK 12 bustGirth 910-910'
    ])
    expect(chart('Please see the size guide below.\nBust 91 cm')).toEqual([])
  })
  test('of a child, known by its height', () => {
    expect(chart('Size guide: age 7-8, height 122-128 cm, chest 64 cm')).toEqual(['age 7-8 stature 1220-1280', 'age 7-8 bustGirth 640-640'])
    expect(chart('Size guide: waist 64 cm, height 60-70 cm')).toEqual([])
  })
  test('a name takes one figure', () => {
    expect(chart('Size guide: bust 92 cm or 97 cm')).toEqual(['- bustGirth 920-920'])
  })
  test('of bare figures: inches where they are small', () => {
    expect(chart('Size guide: bust 36-38, waist 28-30')).toEqual(['- bustGirth 914-965', '- waistGirth 711-762'])
  })
})

describe('no chart', () => {
  test.each([
    ['laid flat', 'Size guide:\nPit to pit 58 cm\nLength 74 cm'],
    ['half a body', 'Size guide:\nWaist 36 cm\nHips 48 cm'],
    ['with a length of the garment', 'Size guide:\nChest 112 cm\nLength 74 cm'],
    ['only pointed to', 'Please check the size guide. Waist 86 cm'],
    ['denied', 'No size guide: waist 86 cm'],
    ['a person', 'Body measurements: bust 92 cm, hips 98 cm, height 170 cm'],
    ['a model', 'Model body measurements: bust 92 cm'],
    ['nothing told', 'Size guide in the pictures']
  ])('%s', (_, words) => expect(chart(words)).toEqual([]))
})

test('a chart in a line ends where the garment is measured', () => {
  expect(chart('Size guide: bust 92 cm. Measures pit to pit 50 cm, waist 88 cm')).toEqual(['- bustGirth 920-920'])
  expect(chart('Size guide: bust 92 cm, pit to pit 50 cm')).toEqual([])
})

test('what is a chart’s is taken from the garment: figures, names, heads and sizes that stand nowhere else', () => {
  const { text, sizes, labels } = stages('Size guide\nSize S: waist 76-81 cm\nSize M: waist 82-87 cm\n\nSize M. Waist 44 cm flat')
  const own = withoutCharts(sizes, labels, readCharts(text, labels, sizes))
  expect(own.sizes.lengths.map(({ value }) => value)).toEqual([44])
  expect(own.labels).toHaveLength(1)
  expect(own.sizes.labels).toEqual(['M'])
  expect(own.sizes.heads.every(({ from }) => from > 15)).toBe(true)
})

describe('a body in a line of its own', () => {
  const cutFor = (words: string) => {
    const { text, sizes, labels } = stages(words)
    const asides = new Map(sizes.lengths.map((one) => [one, 'fits-advice'] as const))
    return shown(readCutFor(text, labels, sizes, asides))
  }
  test.each([
    ['To fit bust 92-97 cm, hips 98-103 cm', ['- bustGirth 920-970', '- hipGirth 980-1030']],
    ['To fit a bust of 92-97 cm', ['- bustGirth 920-970']],
    ['Fits 28-29" waist', ['- waistGirth 711-737']],
    ['Size M is cut for hips 97-103 cm', ['M hipGirth 970-1030']]
  ])('%s', (words, rows) => expect(cutFor(words)).toEqual(rows))
  test.each(['To fit up to a 40" bust', 'Would fit a 34" bust', 'To fit a 12" doll bust', 'not to fit bust 92 cm'])('none: %s', (words) =>
    expect(cutFor(words)).toEqual([])
  )
})

describe('where a chart begins and ends, and whose rows they are', () => {
  test.each<[string, string[]]>([
    ['Size guide in the pictures. Size guide: bust 92 cm', ['- bustGirth 920-920']],
    ['Size guide: bust 92 cm. Size guide: hips 98 cm', ['- bustGirth 920-920', '- hipGirth 980-980']],
    ['UK size guide\nM: waist 82-87 cm', ['M waistGirth 820-870']],
    ['Our own size guide\nM: waist 82-87 cm', []],
    ['Size guide.\nM: waist 82-87 cm', []],
    ['Size guide.\nS: waist 76-81 cm\nM: waist 82-87 cm', ['S waistGirth 760-810', 'M waistGirth 820-870']],
    ['Size guide\n\nA lovely skirt\n\nM: waist 82-87 cm', []],
    ['Size guide\nM: waist 82-87 cm\nMeasurements\nwaist 88 cm', ['M waistGirth 820-870']],
    ['Size guide\nS: waist 76-81 cm\nM: waist 82-87 cm\nPit to pit 50 cm', ['S waistGirth 760-810', 'M waistGirth 820-870']],
    ['Size guide\nMeasurements\nwaist 88 cm, bust 92 cm', []],
    ['Size guide M: bust 92 cm. The dress has a waist of 88 cm', ['M bustGirth 920-920']],
    ['Size guide M: bust 92 cm. Measures: waist 88 cm', ['M bustGirth 920-920']],
    ['Size guide M: bust 92 cm. Hips 98 cm', ['M bustGirth 920-920', 'M hipGirth 980-980']],
    ['Size guide XL: waist 94-99 cm', ['XL waistGirth 940-990']],
    ['Size guide for s/he: waist 94-99 cm', ['- waistGirth 940-990']],
    ['Size guide 24: bust 132 cm', ['24 bustGirth 1320-1320']],
    ['Size guide for this lovely brand of winter coats and other clothes: bust 92-97 cm', []],
    ['Size guide: waist 30-32 in, hips 40-42 in', ['- waistGirth 762-813', '- hipGirth 1016-1067']],
    ['Size guide: waist 19-20 in, hips 26-28 in', []],
    ['Size guide: waist 20-21 in, hips 26-28 in', ['- waistGirth 508-533', '- hipGirth 660-711']],
    ['Size guide: hips 190 cm, waist 180 cm', ['- hipGirth 1900-1900', '- waistGirth 1800-1800']],
    ['Size guide: hips 191 cm, waist 180 cm', []],
    ['Body measurements: bust 92-97 cm', ['- bustGirth 920-970']],
    ['Body measurements M: bust 92 cm', ['M bustGirth 920-920']],
    [
      'Size chart (inches)\nS | bust 34 | waist 26\nM | bust 36 | waist 28',
      ['S bustGirth 864-864', 'S waistGirth 660-660', 'M bustGirth 914-914', 'M waistGirth 711-711']
    ],
    ['Size chart\nSize | Bust | Waist | Length\nS | 84 | 66 | 100\nM | 88 | 70 | 101', []],
    ['Size guide: height 170 cm, chest 96 cm', []],
    ['Size guide age 8: height 128 cm, chest 64 cm', ['age 8 stature 1280-1280', 'age 8 bustGirth 640-640']],
    ['Size guide: height 122-128 cm, chest 64 cm', ['- stature 1220-1280', '- bustGirth 640-640']],
    ['Size guide: inside leg 76-81 cm, waist 76-81 cm', ['- insideLegLength 760-810', '- waistGirth 760-810']],
    ['Bust 50 cm flat. Size guide: bust 92-97 cm', ['- bustGirth 920-970']],
    ['Size guide:\nbust 92 cm\nlength 60 cm', []],
    ['Size guide:\nS: bust 88 cm\nM: bust 92 cm\nlength 60 cm', ['S bustGirth 880-880', 'M bustGirth 920-920']],
    [
      'Size chart (inches)\nS - bust 34, waist 26\nM - bust 36, waist 28',
      ['S bustGirth 864-864', 'S waistGirth 660-660', 'M bustGirth 914-914', 'M waistGirth 711-711']
    ],
    [
      'Size chart (inches)\nS bust 34 waist 26\nM bust 36 waist 28',
      ['S bustGirth 864-864', 'S waistGirth 660-660', 'M bustGirth 914-914', 'M waistGirth 711-711']
    ],
    [
      'Size chart (inches)\nS (bust 34, waist 26)\nM (bust 36, waist 28)',
      ['S bustGirth 864-864', 'S waistGirth 660-660', 'M bustGirth 914-914', 'M waistGirth 711-711']
    ],
    [
      'Size chart (inches)\nS = bust 34, waist 26\nM = bust 36, waist 28',
      ['S bustGirth 864-864', 'S waistGirth 660-660', 'M bustGirth 914-914', 'M waistGirth 711-711']
    ],
    ['Size chart (inches)\nS bust 34 size M waist 28', ['S bustGirth 864-864', 'M waistGirth 711-711']]
  ])('%j', (words, rows) => expect(chart(words)).toEqual(rows))
})
