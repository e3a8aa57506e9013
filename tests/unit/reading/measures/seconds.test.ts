/** The second of two figures of one name. */
import { describe, expect, test } from 'vitest'
import type { LengthUnit } from '../../../../core/length.ts'
import type { Qualifier } from '../../../../core/reading/measures/context.ts'
import type { Figure } from '../../../../core/reading/measures/figures.ts'
import { secondsOf } from '../../../../core/reading/measures/seconds.ts'
import { readListing } from '../../../../core/reading/read-listing.ts'
import type { MeasureReading } from '../../../../core/reading/reading.ts'
import { figureAt, nameAt, textOf } from '../given.ts'

const seconds = (title: string, text: string) =>
  (readListing({ title, text }).seconds ?? []).map(({ point, mm, how, stated }) => `${point} ${Math.round(mm)} ${how} ${stated.text}`)

describe('is told as the first is, and is no measure', () => {
  test.each([
    ['Jeans', 'Inseam 33" (30" cuffed)', ['inseam 762 cuffed 30"']],
    ['Wrap skirt', 'Waist 40" open, 28" tied', ['waist 1016 opened 40"']],
    ['Trousers', 'Waist 14" flat relaxed, stretches to 20"', ['waist 1016 stretched 20"']],
    ['Blouse', 'Length is 25 inches at the front and 27 inches at the back', ['bodyLength 686 back 27 inches']],
    ['Coat', 'Length 40" without collar, 43" with collar', ['bodyLength 1092 null 43"']]
  ])('%s: %s', (title, text, expected) => expect(seconds(title, text)).toEqual(expected))
  test('there is none where a name has one figure', () =>
    expect(readListing({ title: 'Coat', text: 'Length 40"' }).seconds).toBeUndefined())
})

/** A waist of 20 cm told a second time beside a measure; each row changes one thing. */
function told(figure: string, of: Partial<Figure> = {}, first: Partial<MeasureReading> = {}, common: LengthUnit | null = null) {
  const text = textOf(`waist ${figure}`)
  const measure: MeasureReading = {
    point: 'waist',
    mm: 400,
    lowMm: 400,
    highMm: 400,
    basis: 'around',
    basisFrom: 'stated',
    unitFrom: 'stated',
    stated: { text: '40 cm', start: 0, end: 5, value: 40, unit: 'cm' },
    ...first
  }
  const one: Figure = {
    quantity: figureAt(text, figure),
    label: nameAt(text, 'waist', ['waist']),
    point: 'waist',
    name: 'waist',
    kind: 'skirt',
    of: null,
    size: null,
    evidence: [],
    qualifiers: new Set(),
    again: true,
    cost: 0,
    ...of
  }
  return secondsOf(text, [one], [measure], common).map(({ mm, how }) => `${mm} ${how}`)
}
const bare = { stated: { text: '40', start: 0, end: 2, value: 40, unit: null } }

describe('in the unit and on the basis of the first', () => {
  test('its own unit leads, then that of the first, then that of the text', () => {
    expect(told('20 mm')).toEqual(['20 null'])
    expect(told('20')).toEqual(['200 null'])
    expect(told('20', {}, bare, 'mm')).toEqual(['20 null'])
    expect(told('20', {}, {}, 'mm')).toEqual(['200 null'])
    expect(told('20', {}, bare)).toEqual([])
  })
  test('a flat one is doubled, but not what is told around', () => {
    expect(told('20 cm', {}, { basis: 'flat' })).toEqual(['400 null'])
    expect(told('20 cm', { evidence: ['word-around'] }, { basis: 'flat' })).toEqual(['200 null'])
    expect(told('20 cm', {}, { basis: 'length' })).toEqual(['200 null'])
  })
  test('of the same point, garment and size', () => {
    expect(told('20 cm', {}, { point: 'hip' })).toEqual([])
    expect(told('20 cm', { of: 'skirt' }, { of: 'skirt' })).toEqual(['200 null'])
    expect(told('20 cm', { of: 'skirt' }, { of: 'jacket' })).toEqual([])
    expect(told('20 cm', { size: 'M' }, { size: 'M' })).toEqual(['200 null'])
    expect(told('20 cm', { size: 'M' }, { size: 'L' })).toEqual([])
  })
})

describe('the most telling state is told', () => {
  const state = (...qualifiers: Qualifier[]) => told('20 cm', { qualifiers: new Set(qualifiers) })
  test.each<[Qualifier[], string]>([
    [['relaxed', 'stretched'], '200 stretched'],
    [['back', 'cuffed'], '200 cuffed'],
    [['measured', 'inner'], '200 inner'],
    [['front', 'opened'], '200 opened'],
    [['measured'], '200 measured']
  ])('%j', (qualifiers, expected) => expect(state(...qualifiers)).toEqual([expected]))
})
