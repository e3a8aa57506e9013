/** A chart of bodies as evidence of the garment, and as a sentence. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import type { ChartRow } from '../../../../core/reading/reading.ts'
import { chartNotes } from '../../../../core/reading/request/chart-notes.ts'
import { chartForSale } from '../../../../core/reading/request/garment-from.ts'
import { chartEvidence, rowsForSale } from '../../../../core/reading/sizes/chart-evidence.ts'
import { usualRoom } from '../../../../core/wearer/usual-room.ts'
import { say } from '../../../../core/words/say.ts'

const stated = { text: '', start: 0, end: 0, value: 0, unit: null }
const row = (size: string | null, body: ChartRow['body'], lowMm: number, highMm = lowMm): ChartRow => ({
  size,
  body,
  lowMm,
  highMm,
  stated
})
const S = row('S', 'hipGirth', 910, 960)
const M = row('M', 'hipGirth', 970, 1030)

describe('of the size for sale', () => {
  test('by its label', () => {
    expect(rowsForSale([S, M], ['M'])).toEqual([M])
    expect(rowsForSale([S, M], ['UK M'])).toEqual([M])
    // one of its labels is in the chart
    expect(rowsForSale([S, M], ['M', 'W32'])).toEqual([M])
    expect(rowsForSale([row('UK 12', 'hipGirth', 970), S], ['12'])).toHaveLength(1)
    expect(rowsForSale([row('UK 12', 'hipGirth', 970), S], ['2'])).toEqual([])
    expect(rowsForSale([S, M], ['XM', 'S/M'])).toEqual([])
  })
  test('none where nobody says which', () => {
    expect(rowsForSale([S, M], [])).toEqual([])
    expect(rowsForSale([S, M], ['XL'])).toEqual([])
    expect(rowsForSale([S, M], ['S', 'M'])).toEqual([])
  })
  test('the only one', () => {
    expect(rowsForSale([M], [])).toEqual([M])
    expect(rowsForSale([M], ['S'])).toEqual([])
    expect(rowsForSale([row(null, 'hipGirth', 970)], ['S'])).toHaveLength(1)
  })
  test('a size that was chosen, or a label that was typed, stands before what was read', () => {
    const reading = { sizeChart: [S, M], sizeLabels: ['M'] }
    expect(chartForSale(reading, [])).toEqual([M])
    expect(chartForSale(reading, [{ size: 'S' }])).toEqual([S])
    expect(chartForSale(reading, [{ label: 'S' }])).toEqual([S])
  })
})

describe('evidence', () => {
  test('the body, and the room of the kind', () => {
    const [hip] = chartEvidence([M], 'skirt')
    expect(hip).toMatchObject({ point: 'hip', mm: 1060 })
    expect(hip?.sdMm).toBeCloseTo(Math.hypot(60 / Math.sqrt(12), 70))
  })
  test('only at points that the kind has, and no height', () => {
    expect(chartEvidence([M, row(null, 'stature', 1700)], 'shirt')).toEqual([])
    expect(chartEvidence([row(null, 'insideLegLength', 780)], 'skirt')).toEqual([])
    expect(chartEvidence([row(null, 'insideLegLength', 780)], 'jeans')).toEqual([{ point: 'inseam', mm: 780, sdMm: 40 }])
  })
  test.each<[GarmentKind, string[]]>([
    ['trousers', ['waist 825', 'hip 1070', 'inseam 780']],
    ['jeans', ['waist 830', 'hip 1040', 'inseam 780']],
    ['skirt', ['waist 820', 'hip 1060']],
    ['dress', ['waist 870', 'hip 1100']],
    ['jumpsuit', ['waist 880', 'hip 1090', 'inseam 760']],
    ['shirt', ['waist 970']],
    ['waistcoat', ['waist 910']]
  ])('the room of %s at waist, hip and leg', (kind, expected) => {
    const rows = [row(null, 'waistGirth', 800), row(null, 'hipGirth', 1000), row(null, 'insideLegLength', 780)]
    expect(chartEvidence(rows, kind).map(({ point, mm }) => `${point} ${mm}`)).toEqual(expected)
  })
  test('a bust is a chest, with the room that is usual there', () => {
    const room = usualRoom('chest', 'coat')
    expect(chartEvidence([row(null, 'bustGirth', 900, 960)], 'coat')).toEqual([
      { point: 'chest', mm: 930 + (room?.mm ?? Number.NaN), sdMm: Math.hypot(60 / Math.sqrt(12), room?.sd ?? Number.NaN) }
    ])
    expect(chartEvidence([row(null, 'bustGirth', 900)], 'skirt')).toEqual([])
  })
  test('a point once, never surer than 30', () => {
    const found = chartEvidence([row(null, 'waistGirth', 800), row(null, 'waistGirth', 850)], 'skirt')
    expect(found).toEqual([{ point: 'waist', mm: 820, sdMm: 30 }])
  })
})

test('a sentence for each row of the size for sale', () => {
  const say_ = (sizeChart: ChartRow[]) => chartNotes({ sizeChart, sizeLabels: ['M'] }, []).map((note) => say(note, { units: 'cm' }))
  expect(say_([S, M])).toEqual(['Size M is cut for hips of 97 to 103 cm.'])
  expect(say_([row('M', 'bustGirth', 1020), row(null, 'waistGirth', 800), row(null, 'stature', 1640, 1700)])).toEqual([
    'Size M is cut for a bust or chest of 102 cm.',
    'It is cut for a waist of 80 cm.',
    'It is cut for a height of 164 to 170 cm.'
  ])
})
