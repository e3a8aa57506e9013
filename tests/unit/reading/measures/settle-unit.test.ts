/** The unit of every figure. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import type { PointId } from '../../../../core/ids/points.ts'
import type { LengthUnit } from '../../../../core/length.ts'
import type { Figure } from '../../../../core/reading/measures/figures.ts'
import { commonest, type Findings, type ListContext, withUnits } from '../../../../core/reading/measures/settle-unit.ts'
import { type Bare, listUnit, plausibleUnit, type ToldUnits, toldUnits } from '../../../../core/reading/measures/unit.ts'
import { figureAt, nameAt, textOf } from '../given.ts'

const NONE: ToldUnits = { at: [], whole: null }

interface Told {
  kind?: GarmentKind
  units?: ToldUnits
  common?: LengthUnit | null
  /** Of every figure. */
  cost?: number
  fromColumn?: true
}
/** Points with their figures, in order: “chest 21”. */
const settle = (
  words: string,
  figures: [PointId, string][],
  { kind = 'jumper', units = NONE, common = null, cost = 0, fromColumn }: Told = {}
) => {
  const text = textOf(words)
  const list: ListContext = { text, units, basis: { at: [], of: new Map() }, common, words: 'cm' }
  const found: Findings = { asides: [], issues: [] }
  const settled = withUnits(
    figures.map(([point, figure]): Figure => {
      const quantity = figureAt(text, figure, fromColumn ? { fromColumn } : {})
      const label = { ...nameAt(text, figure, []), from: quantity.from - 1, to: quantity.from }
      return { quantity, label, point, name: null, kind, of: null, size: null, evidence: [], qualifiers: new Set(), again: false, cost }
    }),
    list,
    found
  )
  return {
    units: settled.map(({ point, unit, unitFrom }) => `${point} ${unit} ${unitFrom}`),
    issues: found.issues.map(({ code, readings }) => [code, ...readings.map(({ mm }) => Math.round(mm))]),
    asides: found.asides.map(({ quantity, because }) => `${quantity.value} ${because}`)
  }
}

describe('a figure with a unit keeps it, a bare one takes it', () => {
  test('of its list', () => {
    const units: ToldUnits = { at: [{ token: 0, unit: 'cm' }], whole: 'cm' }
    expect(settle('cm: chest 53', [['chest', '53']], { units }).units).toEqual(['chest cm list'])
  })
  test('of its neighbours, the commonest', () => {
    expect(
      settle('chest 21" waist 20 length 26"', [
        ['chest', '21"'],
        ['waist', '20'],
        ['bodyLength', '26"']
      ]).units
    ).toEqual(['chest in stated', 'waist in list', 'bodyLength in stated'])
  })
  test('else the commonest of the text', () => {
    expect(settle('chest 53', [['chest', '53']], { common: 'cm' }).units).toEqual(['chest cm list'])
  })
  test('but none in which nobody could wear it', () => {
    expect(settle('chest 21', [['chest', '21']], { common: 'cm' }).units).toEqual(['chest in judged'])
  })
})

describe('of its own, of its column, of most', () => {
  test('a unit told for a column is that of a list', () => {
    expect(settle('chest 53 cm', [['chest', '53 cm']], { fromColumn: true }).units).toEqual(['chest cm list'])
    expect(settle('chest 53 cm', [['chest', '53 cm']]).units).toEqual(['chest cm stated'])
  })
  test('the commonest, of two as common the first', () => {
    const most = (...counts: [LengthUnit, number][]) => commonest(new Map(counts))
    expect(most()).toBeNull()
    expect(most(['in', 1], ['cm', 2])).toBe('cm')
    expect(most(['in', 2], ['cm', 2])).toBe('in')
  })
  test('a heading leads over neighbours, neighbours over the text', () => {
    const figures: [PointId, string][] = [
      ['chest', '53'],
      ['bodyLength', '700 mm']
    ]
    const units: ToldUnits = { at: [], whole: 'cm' }
    expect(settle('chest 53 length 700 mm', figures, { units }).units[0]).toBe('chest cm list')
    expect(
      settle(
        'chest 530 length 700 mm',
        [
          ['chest', '530'],
          ['bodyLength', '700 mm']
        ],
        { common: 'cm' }
      ).units[0]
    ).toBe('chest mm list')
  })
  test('figures come back in the order of the text, judged or not', () => {
    const read = settle('chest 21 length 26" sleeve 62', [
      ['chest', '21'],
      ['bodyLength', '26"'],
      ['sleeveLength', '62']
    ])
    expect(read.units).toEqual(['chest in list', 'bodyLength in stated', 'sleeveLength cm judged'])
  })
})

describe('no unit anywhere', () => {
  test('what a garment can have decides for the list as a whole, and is said once', () => {
    const read = settle('chest 53 sleeve 62 length 70', [
      ['chest', '53'],
      ['sleeveLength', '62'],
      ['bodyLength', '70']
    ])
    expect(read.units).toEqual(['chest cm judged', 'sleeveLength cm judged', 'bodyLength cm judged'])
    expect(read.issues).toEqual([['reading.unit-judged']])
  })
  test('where both would do, it is an issue with both readings and no measure', () => {
    const read = settle('strap 30', [['strap', '30']], { kind: 'dress' })
    expect(read).toEqual({ units: [], issues: [['reading.no-unit', 762, 300]], asides: ['30 unknown'] })
  })
  test('inches are the commoner habit; the list must lead by e² to be sure', () => {
    expect(plausibleUnit([{ point: 'chest', value: 21 }], 'jumper')).toBe('in')
    expect(plausibleUnit([{ point: 'sleeveLength', value: 62 }], 'jumper')).toBe('cm')
    // a half chest of 53 cm is likelier than a whole one of 53 in, but not by so much
    expect(plausibleUnit([{ point: 'chest', value: 53 }], 'jumper')).toBeNull()
    expect(plausibleUnit([{ point: 'strap', value: 30 }], 'dress')).toBeNull()
    expect(plausibleUnit([], 'dress')).toBeNull()
  })
  test('a girth in doubt is told as it goes around, a length as stated', () => {
    // a cuff of 10: 10 inches all around, or 10 cm laid flat
    expect(settle('cuff 10', [['cuff', '10']], { kind: 'shirt' }).issues).toEqual([['reading.no-unit', 254, 200]])
  })
  test('one that fits no unit is of nobody, unless a colon says whose it is', () => {
    expect(settle('length 900', [['bodyLength', '900']])).toEqual({ units: [], issues: [], asides: [] })
    expect(settle('length: 900', [['bodyLength', '900']], { cost: -0.3 }).units).toEqual(['bodyLength in judged'])
  })
  test('one that the unit of the whole does not fit takes the only one that does', () => {
    const read = settle('sleeve 62 length 70 chest 21', [
      ['sleeveLength', '62'],
      ['bodyLength', '70'],
      ['chest', '21']
    ])
    expect(read.units).toEqual(['sleeveLength cm judged', 'bodyLength cm judged', 'chest in judged'])
  })
  test('one misread figure does not turn a list', () => {
    const list: Bare[] = [
      { point: 'sleeveLength', value: 62 },
      { point: 'bodyLength', value: 70 }
    ]
    expect(plausibleUnit([...list, { point: 'chest', value: 21 }], 'jumper')).toBe('cm')
  })
})

describe('units that stand without a figure', () => {
  const told = (words: string) => toldUnits(textOf(words), []).at.map(({ unit }) => unit)
  test.each([
    ['Measurements (cm)', ['cm']],
    ['all in inches', ['in']],
    ['Chest (in):', ['in']],
    ['cm: chest 53', ['cm']]
  ])('%s', (words, units) => expect(told(words)).toEqual(units))
  test.each([
    // “in” is a unit only where it is shut in
    ['Chest [in]', ['in']],
    ['Chest / in |', ['in']],
    ['Chest (in the dress)', []],
    ['Chest in:', []],
    // any other closes its part, or stands between marks or beside a word of measuring
    ['Chest / cm wobble', ['cm']],
    ['taken in cm wobble', ['cm']],
    ['waist inches wobble', ['in']],
    ['wobble inches flat', ['in']],
    ['wobble inches and more', ['in']],
    ['wobble inches wobble', []],
    ['wobble inches. Wobble', ['in']],
    // of a figure that was not read it is that figure's
    ['53 cm', []],
    // metres and yards are of cloth
    ['all in yards', []]
  ])('%s', (words, units) => expect(told(words)).toEqual(units))
  test('one behind a figure with its unit is of the list again', () => {
    const text = textOf('chest 53 cm, waist (in)')
    expect(toldUnits(text, [figureAt(text, '53 cm')])).toMatchObject({ at: [{ unit: 'in' }], whole: 'in' })
  })
  test('“in” alone is a word', () => expect(told('worn in summer')).toEqual([]))
  test('one beside a figure is that figure’s', () => {
    const text = textOf('chest 53 cm')
    expect(toldUnits(text, [figureAt(text, '53 cm')]).at).toEqual([])
  })
  test('one unit alone is that of the whole text, of two none is', () => {
    expect(toldUnits(textOf('Measurements (cm)'), []).whole).toBe('cm')
    expect(toldUnits(textOf('Chest (cm):\nlength (in):'), []).whole).toBeNull()
  })
  test('the nearest counts: between name and figure, else the heading before, else of the whole text', () => {
    const units: ToldUnits = {
      at: [
        { token: 2, unit: 'cm' },
        { token: 11, unit: 'in' }
      ],
      whole: null
    }
    const at = (from: number, to: number) => {
      const text = textOf('a 1')
      return listUnit(
        units,
        { ...nameAt(text, 'a', []), from, to: from + 1 },
        { ...figureAt(text, '1'), from: to, to: to + 1, spanTo: to + 1 }
      )
    }
    expect(at(5, 6)).toBe('cm')
    expect(at(10, 12)).toBe('in')
    expect(at(20, 21)).toBe('in')
    expect(at(0, 1)).toBeNull()
  })
})
