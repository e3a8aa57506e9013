/** Figures become measures; what cannot be settled becomes an issue and no measure. */
import { describe, expect, test } from 'vitest'
import type { PointId } from '../../../../core/ids/points.ts'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import type { Figure } from '../../../../core/reading/measures/figures.ts'
import { measuresOf } from '../../../../core/reading/measures/measures.ts'
import { figureAt, nameAt, textOf } from '../given.ts'

/** A point, its figure, and what else is known of it. */
type Given = [PointId, string, (Partial<Omit<Figure, 'quantity'>> & { more?: Parameters<typeof figureAt>[2] })?]
const measured = (words: string, figures: Given[]) => {
  const text = textOf(words)
  const list = {
    text,
    units: { at: [], whole: null },
    basis: { at: [], of: new Map<PointName, 'flat'>() },
    common: null,
    words: 'cm' as const
  }
  const read = measuresOf(
    figures.map(([point, figure, { more, ...rest } = {}]): Figure => {
      const quantity = figureAt(text, figure, more)
      const label = { ...nameAt(text, figure, []), from: 0, to: 1 }
      const plain = { kind: 'jumper' as const, of: null, size: null, evidence: [], qualifiers: new Set<never>(), again: false, cost: 0 }
      return { ...plain, quantity, label, point, name: point as PointName, ...rest }
    }),
    list
  )
  return {
    measures: read.measures.map(({ point, mm, basis, basisFrom }) => `${point} ${Math.round(mm * 10) / 10} ${basis} ${basisFrom}`),
    issues: read.issues.map(({ code }) => code),
    asides: read.asides.map(({ quantity, because }) => `${quantity.value} ${because}`),
    repeats: read.repeats.map(({ value }) => value),
    hemDepthMm: read.hemDepthMm
  }
}

test('a girth is around whatever was stated, a length is as stated', () => {
  expect(
    measured('chest 20" length 27"', [
      ['chest', '20"', { evidence: ['word-flat'] }],
      ['bodyLength', '27"']
    ]).measures
  ).toEqual(['chest 1016 flat stated', 'bodyLength 685.8 length stated'])
})

describe('the same point twice', () => {
  test('nearly the same is a repeat', () => {
    expect(
      measured('a 27" b 27.25"', [
        ['bodyLength', '27"'],
        ['bodyLength', '27.25"']
      ])
    ).toMatchObject({ repeats: [27.25], issues: [] })
  })
  test('whole and half of a girth too, where one of them was judged', () => {
    const read = measured('chest 20" 40"', [
      ['chest', '20"'],
      ['chest', '40"']
    ])
    expect([read.measures, read.repeats, read.issues]).toEqual([['chest 1016 flat judged'], [40], []])
  })
  test('another figure is a contradiction, and the second is nobody’s', () => {
    expect(
      measured('a 27" b 29"', [
        ['bodyLength', '27"'],
        ['bodyLength', '29"']
      ])
    ).toMatchObject({
      measures: ['bodyLength 685.8 length stated'],
      issues: ['reading.contradiction'],
      asides: ['29 unknown']
    })
  })
  test('a bare one gives way to one with its unit', () => {
    expect(
      measured('a 26 b 27"', [
        ['bodyLength', '26'],
        ['bodyLength', '27"']
      ])
    ).toMatchObject({
      measures: ['bodyLength 685.8 length stated']
    })
  })
  test('of another size it is another measure', () => {
    const two: Given[] = [
      ['bodyLength', '27"', { size: 'M' }],
      ['bodyLength', '29"', { size: 'L' }]
    ]
    expect(measured('a 27" b 29"', two)).toMatchObject({ issues: [], measures: expect.objectContaining({ length: 2 }) })
  })
})

describe('no measure', () => {
  test('a small figure of a hem is how deep it is, of another edge a detail', () => {
    const knee: Given[] = [['hem', '2"', { name: 'hem' }]]
    expect(measured('hem 2"', knee)).toMatchObject({ measures: [], hemDepthMm: 50.8, asides: ['2 detail'], issues: [] })
    expect(measured('cuff 2"', [['cuff', '2"', { name: 'cuff' }]])).toMatchObject({ measures: [], hemDepthMm: null, asides: ['2 detail'] })
  })
  test('what nobody could wear is said', () => {
    expect(measured('length 90"', [['bodyLength', '90"']])).toMatchObject({
      measures: [],
      issues: ['reading.too-large'],
      asides: ['90 unknown']
    })
    expect(measured('length 1"', [['bodyLength', '1"']])).toMatchObject({ measures: [], issues: ['reading.too-small'] })
  })
  test('a broken number is said', () => {
    expect(measured('a 27"', [['bodyLength', '27"', { more: { problem: 'divided-by-zero' } }]])).toMatchObject({
      measures: [],
      issues: ['reading.divided-by-zero']
    })
  })
  test('a bare figure far from its name is prose, one with a unit is not', () => {
    expect(measured('a 27', [['bodyLength', '27', { cost: 1.06 }]]).measures).toEqual([])
    expect(measured('a 27', [['bodyLength', '27', { cost: 1.05 }]]).measures).toHaveLength(1)
    expect(measured('a 27"', [['bodyLength', '27"', { cost: 1.06 }]]).measures).toHaveLength(1)
  })
  test('down the front gives way to down the back', () => {
    const sides: Given[] = [
      ['bodyLength', '27"', { qualifiers: new Set(['front' as const]) }],
      ['bodyLength', '29"']
    ]
    expect(measured('a 27" b 29"', sides)).toMatchObject({
      measures: ['bodyLength 736.6 length stated'],
      asides: ['27 detail'],
      issues: []
    })
  })
})

test('a doubt about the basis, and two units that disagree, are issues beside the measure', () => {
  const read = measured('a 27" (90 cm)', [['bodyLength', '27"', { more: { disagrees: figureAt(textOf('90 cm'), '90 cm') } }]])
  expect(read).toMatchObject({ measures: ['bodyLength 685.8 length stated'], issues: ['reading.units-disagree'], asides: ['90 unknown'] })
})
