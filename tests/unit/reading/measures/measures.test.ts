/** Figures become measures; what cannot be settled becomes an issue and no measure. */
import { describe, expect, test } from 'vitest'
import type { PointId } from '../../../../core/ids/points.ts'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import type { Figure } from '../../../../core/reading/measures/figures.ts'
import { measuresOf } from '../../../../core/reading/measures/measures.ts'
import { figureAt, nameAt, textOf } from '../given.ts'

/** A point, its figure, and what else is known of it. */
type Given = [PointId, string, (Partial<Omit<Figure, 'quantity'>> & { more?: Parameters<typeof figureAt>[2] })?]
/** A list of which nothing is known beside its figures. */
const listOf = (text: ReturnType<typeof textOf>) => ({
  text,
  units: { at: [], whole: null },
  basis: { at: [], of: new Map<PointName, 'flat'>() },
  common: null,
  words: 'cm' as const
})
const measured = (words: string, figures: Given[]) => {
  const text = textOf(words)
  const list = listOf(text)
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

describe('nearly the same, to the millimetre', () => {
  const twice = (point: PointId, first: string, second: string, a: Given[2] = {}, b: Given[2] = {}) => {
    const { repeats, issues } = measured(`a ${first} b ${second}`, [
      [point, first, a],
      [point, second, b]
    ])
    return repeats.length > 0 ? 'repeat' : issues.join()
  }
  test('thirteen apart at the most', () => {
    expect(twice('bodyLength', '700 mm', '713 mm')).toBe('repeat')
    expect(twice('bodyLength', '700 mm', '714 mm')).toBe('reading.contradiction')
  })
  test('or inside the range of the first', () => {
    const range = { more: { low: 680, high: 740, range: true } }
    expect(twice('bodyLength', '700 mm', '740 mm', range)).toBe('repeat')
    expect(twice('bodyLength', '700 mm', '741 mm', range)).toBe('reading.contradiction')
    expect(twice('bodyLength', '700 mm', '680 mm', range)).toBe('repeat')
    expect(twice('bodyLength', '700 mm', '679 mm', range)).toBe('reading.contradiction')
  })
  test('half of a length is none of it', () => expect(twice('bodyLength', '800 mm', '400 mm')).toBe('reading.contradiction'))
  test('half of a girth is, unless words say how both lay', () => {
    const flat: Given[2] = { evidence: ['word-flat', 'doubled'] }
    expect(twice('chest', '500 mm', '500 mm', flat, { evidence: ['word-around', 'halved'] })).toBe('reading.contradiction')
  })
})

test('a bare figure gives way to one with its unit, and not the other way round', () => {
  const order = (first: string, second: string) =>
    measured(`a ${first} b ${second}`, [
      ['bodyLength', first],
      ['bodyLength', second]
    ])
  expect(order('26', '29"')).toMatchObject({ measures: ['bodyLength 736.6 length stated'], issues: [] })
  expect(order('29"', '26')).toMatchObject({ measures: ['bodyLength 736.6 length stated'], issues: ['reading.contradiction'] })
})

test('a garment of a set is measured by itself', () => {
  const set: Given[] = [
    ['waist', '700 mm', { of: 'skirt', kind: 'skirt' }],
    ['waist', '900 mm', { of: 'jacket', kind: 'jacket' }]
  ]
  expect(measured('a 700 mm b 900 mm', set)).toMatchObject({ issues: [], measures: expect.objectContaining({ length: 2 }) })
})

describe('what stands beside figures', () => {
  /** A waist with the body it is advised for, or how far it goes. */
  const beside = (figure: string, point: PointId, advice: string | null, stretched: string | null = null) => {
    const text = textOf(`a ${figure} b ${advice ?? stretched}`)
    const quantity = figureAt(text, figure)
    const its = (words: string | null) => (words === null ? null : figureAt(text, words))
    const seen: string[] = []
    const one: Figure = {
      quantity,
      label: { ...nameAt(text, 'a', []), from: 0, to: 1 },
      point,
      name: point as PointName,
      kind: 'dress',
      of: null,
      size: null,
      evidence: [],
      qualifiers: new Set(),
      again: false,
      cost: 0
    }
    const list = listOf(text)
    const read = measuresOf([one], list, { adviceOn: () => its(advice), stretchedOf: () => its(stretched) })
    for (const { basis, basisFrom } of read.measures) seen.push(`${basis} ${basisFrom}`)
    return seen.join()
  }
  test('a body a little less than the figure: it goes around; a body of twice: it lies flat', () => {
    // 600 mm of waist may be either
    expect(beside('600 mm', 'waist', '481 mm')).toBe('around stated')
    expect(beside('600 mm', 'waist', '480 mm')).toMatch(/judged/)
    expect(beside('600 mm', 'waist', '659 mm')).toBe('around stated')
    expect(beside('600 mm', 'waist', '660 mm')).toMatch(/judged/)
    expect(beside('600 mm', 'waist', '961 mm')).toBe('flat stated')
    expect(beside('600 mm', 'waist', '960 mm')).toMatch(/judged/)
    expect(beside('600 mm', 'waist', '1319 mm')).toBe('flat stated')
    expect(beside('600 mm', 'waist', '1320 mm')).toMatch(/judged/)
  })
  test('a bare body over 62 is of centimetres', () => {
    expect(beside('1575 mm', 'hip', '62')).toBe('around stated')
    expect(beside('700 mm', 'waist', '63')).toBe('around stated')
  })
  test('advice is for girths that a body has', () => expect(beside('600 mm', 'hem', '590 mm')).toMatch(/judged/))
  test('how far it goes counts only where it is farther', () => {
    expect(beside('560 mm', 'waist', null, '900 mm')).toBe('around judged')
    expect(beside('400 mm', 'waist', null, '390 mm')).toBe('flat judged')
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
  test('a depth is under 115 mm, of an edge or of a name not told', () => {
    const edge = (figure: string, name: PointName | null, point: PointId = 'hem') => {
      const { asides, hemDepthMm, issues } = measured(`a ${figure}`, [[point, figure, { name }]])
      return [asides.map((one) => one.split(' ')[1]).join(), hemDepthMm, issues.join()]
    }
    expect(edge('114 mm', 'hem')).toEqual(['detail', 114, ''])
    expect(edge('115 mm', 'hem')).toEqual(['unknown', null, 'reading.too-small'])
    expect(edge('50 mm', 'bottomEdge')).toEqual(['detail', 50, ''])
    expect(edge('50 mm', 'sweep')).toEqual(['detail', 50, ''])
    expect(edge('50 mm', 'waist', 'waist')).toEqual(['detail', null, ''])
    expect(edge('50 mm', null, 'waist')).toEqual(['detail', null, ''])
    expect(edge('50 mm', 'chest', 'chest')).toEqual(['unknown', null, 'reading.too-small'])
  })
  test('the first depth of two counts', () => {
    expect(
      measured('a 50 mm b 60 mm', [
        ['hem', '50 mm', { name: 'hem' }],
        ['hem', '60 mm', { name: 'hem' }]
      ]).hemDepthMm
    ).toBe(50)
  })
  test('a second figure that a word tells apart may stand half as far again', () => {
    const again = (cost: number, more: Given[2] = {}) => measured('a 27', [['bodyLength', '27', { cost, ...more }]]).measures.length
    const said = { again: true, qualifiers: new Set(['back' as const]) }
    expect([again(1.55, said), again(1.56, said)]).toEqual([1, 0])
    expect(again(1.3, { again: true })).toBe(0)
    expect(again(1.3, { qualifiers: new Set(['back' as const]) })).toBe(0)
  })
  test('front and back in one is no front alone', () => {
    expect(
      measured('a 27" b 29"', [
        ['bodyLength', '27"', { qualifiers: new Set(['front' as const, 'back' as const]) }],
        ['bodyLength', '29"']
      ]).asides
    ).toEqual(['29 unknown'])
    expect(measured('a 27"', [['bodyLength', '27"', { qualifiers: new Set(['front' as const]) }]]).measures).toHaveLength(1)
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
