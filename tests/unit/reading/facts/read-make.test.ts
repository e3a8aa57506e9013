/** What figures tell of the make: cloth to spare, hems, how far an elastic waist goes, back pockets. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { spareIn } from '../../../../core/reading/facts/allowances.ts'
import { pocketGap } from '../../../../core/reading/facts/pocket-gap.ts'
import { isElastic, waistPulledOut } from '../../../../core/reading/facts/pulled-out.ts'
import { readMake } from '../../../../core/reading/facts/read-make.ts'
import type { Figure } from '../../../../core/reading/measures/figures.ts'
import type { Label, LabelRole } from '../../../../core/reading/names/label.ts'
import type { MeasureReading } from '../../../../core/reading/reading.ts'
import { figureAt, linkOf, nameAt, textOf } from '../given.ts'

/** Links of a text: its words, the role or the point of the name, its figure. */
const make = (words: string, kind: GarmentKind, links: [string, LabelRole | Label['points'], string][], spare: string[] = []) => {
  const text = textOf(words)
  const list = { text, units: { at: [], whole: null }, basis: { at: [], of: new Map() }, common: null, words: 'cm' as const }
  const { made, allowances } = readMake(text, {
    measured: {
      links: links.map(([name, role, figure]) =>
        linkOf(typeof role === 'string' ? nameAt(text, name, [], { role }) : nameAt(text, name, role), figureAt(text, figure))
      ),
      list,
      stretched: [],
      hemDepthMm: null
    },
    measures: [],
    garments: { kind, garmentAt: () => ({ kind, of: null }) },
    spare: new Set(spare.map((one) => figureAt(text, one))),
    pockets: null
  })
  return { made, allowances: allowances.map(({ point, mm }) => `${point} ${Math.round(mm * 10) / 10}`) }
}

describe('cloth to spare', () => {
  test('is of the name in its sentence', () => {
    expect(
      make('sleeve 24", 2" to let down', 'jacket', [
        ['sleeve', ['sleeveLength'], '24"'],
        ['to let down', 'letDown', '2"']
      ]).allowances
    ).toEqual(['sleeveLength 50.8'])
  })
  test('else of what is let down or out on this kind', () => {
    expect(make('2" to let down', 'jeans', [['to let down', 'letDown', '2"']]).allowances).toEqual(['inseam 50.8'])
    expect(make('2" to let down', 'skirt', [['to let down', 'letDown', '2"']]).allowances).toEqual(['skirtLength 50.8'])
    expect(make('1" to let out', 'shirt', [['to let out', 'letOut', '1"']]).allowances).toEqual(['chest 25.4'])
    expect(make('1" to let out', 'jeans', [['to let out', 'letOut', '1"']]).allowances).toEqual(['waist 25.4'])
  })
  test('told beside a figure with a plus it is of the name before it on the line', () => {
    expect(make('inseam 30" (+2")', 'jeans', [['inseam', ['inseam'], '30"']], ['2"']).allowances).toEqual(['inseam 50.8'])
    expect(make('inseam 30"\nsomething (+2")', 'jeans', [['inseam', ['inseam'], '30"']], ['2"']).allowances).toEqual([])
  })
  test('without a unit anywhere it is nobody’s', () => {
    expect(make('2 to let down', 'jeans', [['to let down', 'letDown', '2']]).allowances).toEqual([])
  })
  test('what can be let down from a hem is turned up there', () => {
    expect(make('hem has 2" to let down', 'jeans', [['to let down', 'letDown', '2"']]).made).toEqual({ hemDepthMm: 50.8 })
  })
  test('what a back seam gives is half on each side, and a little stays', () => {
    expect(make('centre back seam has 1" to let out', 'jeans', [['to let out', 'letOut', '1"']]).made.outletMm).toBeCloseTo(12.7 + 9.525, 9)
  })
  test('+ before a figure, but behind a price it is postage', () => {
    const text = textOf('inseam 30" +2 and £16 + 3')
    const figures = [figureAt(text, '2'), figureAt(text, '3', { nth: 2 })]
    expect([...spareIn(text, figures)].map(({ value }) => value)).toEqual([2])
  })
})

describe('an elastic waist', () => {
  const lying = (mm: number, basis: 'flat' | 'around'): MeasureReading => ({
    point: 'waist',
    mm,
    lowMm: mm,
    highMm: mm,
    basis,
    basisFrom: 'stated',
    unitFrom: 'stated',
    stated: { text: '', start: 0, end: 0, value: mm, unit: 'in' }
  })
  const pulled = (figure: string, evidence: Figure['evidence'] = []) => {
    const text = textOf(`waist ${figure}`)
    const label = nameAt(text, 'waist', ['waist'])
    const said = {
      kind: 'skirt' as const,
      of: null,
      size: null,
      evidence,
      qualifiers: new Set(['stretched' as const]),
      again: false,
      cost: 0
    }
    return [{ ...said, quantity: figureAt(text, figure), label, point: 'waist' as const, name: 'waist' as const }]
  }
  test('is told as it lies is: flat beside flat', () => {
    expect(waistPulledOut(pulled('18"'), [lying(711.2, 'flat')], null)?.mm).toBeCloseTo(914.4, 9)
    expect(waistPulledOut(pulled('36"'), [lying(711.2, 'around')], null)?.mm).toBeCloseTo(914.4, 9)
  })
  test('goes to no less than it lies at, and to no more than 2.4 times that', () => {
    expect(waistPulledOut(pulled('14"', ['word-around']), [lying(711.2, 'around')], null)).toBeNull()
    expect(waistPulledOut(pulled('70"', ['word-around']), [lying(711.2, 'around')], null)).toBeNull()
  })
  test('with nothing to lie at, a small figure is half of it', () => {
    expect(waistPulledOut(pulled('18"'), [], null)?.mm).toBeCloseTo(914.4, 9)
    expect(waistPulledOut(pulled('36"'), [], null)?.mm).toBeCloseTo(914.4, 9)
  })
  test.each<[string, Figure['evidence'], 'flat' | 'around' | null, number | null]>([
    // told flat or around, whatever it lies at
    ['18"', ['word-flat'], 'around', 914.4],
    ['18"', ['name-flat'], 'around', 914.4],
    ['36"', ['word-around'], 'flat', 914.4],
    ['18"', ['word-around'], 'around', null],
    ['36"', ['word-flat'], 'flat', null],
    // untold it is as the waist lies, else the other way
    ['18"', [], 'around', 914.4],
    ['36"', [], 'flat', 914.4],
    // with nothing to lie at
    ['18"', ['word-around'], null, 457.2],
    ['36"', ['word-flat'], null, 1828.8],
    ['480 mm', [], null, 480],
    ['479 mm', [], null, 958],
    // the ends of how far it goes: 1.01 and 2.4 times 711.2 mm
    ['718 mm', ['word-around'], 'around', null],
    ['719 mm', ['word-around'], 'around', 719],
    ['1706 mm', ['word-around'], 'around', 1706],
    ['1707 mm', ['word-around'], 'around', null]
  ])('%s told %j beside a waist that lies %s: %j', (figure, evidence, basis, expected) => {
    const mm = waistPulledOut(pulled(figure, evidence), basis === null ? [] : [lying(711.2, basis)], null)?.mm ?? null
    if (expected === null) expect(mm).toBeNull()
    else expect(mm).toBeCloseTo(expected, 6)
  })
  test('without a unit of its own it has that of the waist, else the common one, else none', () => {
    const bare = pulled('36')
    expect(waistPulledOut(bare, [lying(711.2, 'around')], 'cm')?.mm).toBeCloseTo(914.4, 9)
    expect(waistPulledOut(bare, [], 'in')?.mm).toBeCloseTo(914.4, 9)
    expect(waistPulledOut(bare, [], null)).toBeNull()
  })
  test('beside the waist of the same garment and size, and of no other point', () => {
    const figure = pulled('36"', ['word-around'])
    const far = lying(1000, 'around')
    expect(waistPulledOut(figure, [far], null)).toBeNull()
    expect(waistPulledOut(figure, [{ ...far, of: 'trousers' }], null)?.mm).toBeCloseTo(914.4, 9)
    expect(waistPulledOut(figure, [{ ...far, size: 'M' }], null)?.mm).toBeCloseTo(914.4, 9)
    expect(waistPulledOut(figure, [{ ...far, point: 'hip' }], null)?.mm).toBeCloseTo(914.4, 9)
    expect(
      waistPulledOut(
        figure.map((one) => ({ ...one, size: 'M' })),
        [{ ...far, size: 'M' }],
        null
      )
    ).toBeNull()
    expect(
      waistPulledOut(
        figure.map((one) => ({ ...one, point: 'hip' as const })),
        [],
        null
      )
    ).toBeNull()
  })
  test('its figure is left aside, but for a range, which tells too what the waist lies at', () => {
    const [one] = pulled('36"')
    if (one === undefined) throw new Error('no figure')
    expect(waistPulledOut([one], [], null)?.aside).toBe(one.quantity)
    expect(waistPulledOut([one], [lying(711.2, 'around')], null)?.aside).toBe(one.quantity)
    const range = { ...one, quantity: { ...one.quantity, range: true } }
    expect(waistPulledOut([range], [], null)?.aside).toBeNull()
    expect(waistPulledOut([range], [lying(711.2, 'around')], null)?.aside).toBeNull()
  })
  test('on legs and skirts it is elastic, on a dress it may be the cloth', () => {
    expect([isElastic('jeans'), isElastic('skirt'), isElastic('dress'), isElastic(null)]).toEqual([true, true, false, false])
  })
})

describe('back pockets', () => {
  const gap = (words: string, figure: string) => {
    const text = textOf(words)
    return pocketGap(text, [figureAt(text, figure)])?.mm ?? null
  }
  test('how far they lie apart', () => expect(gap('back pockets 5" apart', '5"')).toBe(127))
  test('not how wide they are, nor what no pockets could be', () => {
    expect(gap('back pockets 5" wide', '5"')).toBeNull()
    expect(gap('back pockets 20" apart', '20"')).toBeNull()
    expect(gap('The back pockets are worn thin. Its buttons stand 5" apart', '5"')).toBeNull()
  })
})
