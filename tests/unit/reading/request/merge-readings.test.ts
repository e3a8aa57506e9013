/** A first reading and what a seller answers: fact by fact, which of the two leads. */
import { describe, expect, test } from 'vitest'
import { readListing } from '../../../../core/reading/read-listing.ts'
import type { MeasureReading, Reading } from '../../../../core/reading/reading.ts'
import { mergeReadings } from '../../../../core/reading/request/merge-readings.ts'
import { countsToo } from '../../../../core/reading/request/second-look.ts'

const reading = (title: string, text: string): Reading => readListing({ title, text })
const merged = (first: Partial<Reading>, later: Partial<Reading>) => {
  const empty = reading('', '')
  return mergeReadings({ ...empty, ...first }, { ...empty, ...later })
}
const waist = (mm: number, more: Partial<MeasureReading> = {}): MeasureReading => ({
  point: 'waist',
  mm,
  lowMm: mm,
  highMm: mm,
  basis: 'around',
  basisFrom: 'stated',
  unitFrom: 'stated',
  stated: { text: '', start: 0, end: 0, value: mm, unit: 'mm' },
  ...more
})

describe('a fact that both tell', () => {
  const [one, other] = [
    reading('Mens navy wool jacket', 'very good condition, £20, no stretch, machine washed, fully lined, skinny'),
    reading('Womens red cotton skirt', 'poor condition, £30, pencil skirt')
  ]
  test.each<[keyof Reading, 'first' | 'later']>([
    ['garment', 'first'],
    ['whose', 'first'],
    ['colour', 'first'],
    ['condition', 'later'],
    ['price', 'later']
  ])('%s: the %s', (fact, leading) => {
    expect(one[fact]).not.toEqual(other[fact])
    expect(mergeReadings(one, other)[fact]).toEqual((leading === 'first' ? one : other)[fact])
  })
  test('of the cloth the later fibres, stretch, weave and wash', () => {
    const [first, later] = [
      { fibres: [{ fibre: 'wool', percent: null }], traits: [], stretchPercent: 10, structure: 'knit' as const, washed: true },
      { fibres: [{ fibre: 'silk', percent: null }], traits: [], stretchPercent: 0, structure: 'woven' as const, washed: false }
    ]
    expect(merged({ cloth: first }, { cloth: later }).cloth).toEqual(later)
    const nothing = { fibres: [], traits: [], stretchPercent: null, structure: null, washed: null }
    expect(merged({ cloth: first }, { cloth: nothing }).cloth).toEqual(first)
    expect(merged({ cloth: nothing }, { cloth: later }).cloth).toEqual(later)
  })
  test('make and cut by their facts, the later over the first', () => {
    const told = (value: string) => ({ value, sureness: 0.8, from: 'told' as const })
    const read = merged(
      { made: { lined: true, hemDepthMm: 30 }, cut: { leg: told('wide'), rise: told('high') } },
      { made: { lined: false }, cut: { leg: told('skinny') } }
    )
    expect(read.made).toEqual({ lined: false, hemDepthMm: 30 })
    expect(read.cut).toEqual({ leg: told('skinny'), rise: told('high') })
  })
  test('what may be several is gathered, each once', () => {
    const read = merged(
      { sizeLabels: ['M', 'UK 12'], faults: ['A hole'], mending: ['patch'] },
      { sizeLabels: ['UK 12', 'L'], faults: ['A stain', 'A hole'], mending: ['clean', 'patch'] }
    )
    expect([read.sizeLabels, read.faults, read.mending]).toEqual([
      ['M', 'UK 12', 'L'],
      ['A hole', 'A stain'],
      ['patch', 'clean']
    ])
  })
})

test('a fact that one alone tells is kept', () => {
  const full = reading('Mens navy wool jacket', 'very good condition, £20, chest 40" around')
  const empty = reading('', '')
  for (const read of [mergeReadings(full, empty), mergeReadings(empty, full)])
    for (const fact of ['garment', 'whose', 'colour', 'condition', 'price', 'measures', 'sizeLabels', 'cloth'] as const)
      expect(read[fact]).toEqual(full[fact])
})

describe('measures', () => {
  test('of the same garment and size the newer stands, the older is kept beside it', () => {
    const [first, hip] = [waist(800), waist(1000, { point: 'hip' })]
    const read = merged({ measures: [first, hip] }, { measures: [waist(820)] })
    expect(read.measures).toEqual([hip, waist(820)])
    expect(read.superseded).toEqual([first])
    const sized = [waist(800, { size: 'M' }), waist(850, { size: 'L' }), waist(900, { of: 'skirt' })]
    const again = merged({ measures: sized, superseded: [hip] }, { measures: [waist(810, { size: 'M' })], superseded: [first] })
    expect(again.measures.map(({ mm }) => mm)).toEqual([850, 900, 810])
    expect(again.superseded).toEqual([hip, first, sized[0]])
  })
  test('doubts about points that are answered are settled, others stay', () => {
    const doubt = (...points: MeasureReading['point'][]) => ({
      code: 'reading.contradiction',
      readings: points.map((point) => ({ point, mm: 800 })),
      values: {},
      text: points.join(' ')
    })
    const read = merged(
      { issues: [doubt('waist'), doubt('hip'), doubt('waist', 'hip'), doubt()] },
      { measures: [waist(800)], issues: [doubt('waist')] }
    )
    expect(read.issues.map(({ text }) => text)).toEqual(['hip', 'waist hip', '', 'waist'])
  })
})

describe('an older figure counts beside the newest', () => {
  test('of the same point, garment and size alone', () => {
    expect(countsToo(waist(800), waist(800))).toBe(true)
    expect(countsToo(waist(800), waist(800, { point: 'hip' }))).toBe(false)
    expect(countsToo(waist(800), waist(800, { of: 'skirt' }))).toBe(false)
    expect(countsToo(waist(800), waist(800, { size: 'M' }))).toBe(false)
  })
  test('as far off as one tape goes, up or down, and a girth farther than a length', () => {
    const reach = (point: MeasureReading['point']) => {
      let mm = 0
      while (countsToo(waist(800, { point }), waist(801 + mm, { point }))) mm++
      return mm
    }
    const [girth, length] = [reach('waist'), reach('inseam')]
    expect(countsToo(waist(800), waist(800 - girth))).toBe(true)
    expect(countsToo(waist(800), waist(800 - girth - 1))).toBe(false)
    expect(girth).toBeGreaterThan(length)
    expect(length).toBeGreaterThan(0)
  })
})
