import { describe, expect, it } from 'vitest'
import type { Judged } from '../../../components/judged.ts'
import { aroundMm, pointRows, withoutPoint, withPoint } from '../../../components/panel/point-rows.ts'
import { emptyReading, inch, LISTING, leaveIt, stated, tooLittle, trousersJudged, trousersReading } from './fixtures.ts'

const rowsOf = (changes: Partial<Judged> = {}) => pointRows({ ...trousersJudged, ...changes }, 'in')
const row = (point: string, changes: Partial<Judged> = {}) => {
  const found = rowsOf(changes).find((one) => one.point === point)
  if (found === undefined) throw new Error(`no row for ${point}`)
  return found
}

describe('the rows of points', () => {
  it('stand outside first, then inside as measured, and last what was only worked out; only what misses is whole', () => {
    expect(rowsOf().map(({ point, whole }) => [point, whole])).toEqual([
      ['waist', true],
      ['inseam', true],
      ['thigh', false],
      ['legOpening', false],
      ['hip', false]
    ])
  })
  it('carry what was stated in its own unit and basis', () => {
    expect(row('waist').stated).toEqual({ typed: '16', unit: 'in', basis: 'flat' })
    expect(row('thigh').stated).toEqual({ typed: '12½', unit: 'in', basis: 'flat' })
    expect(row('inseam').stated).toEqual({ typed: '31', unit: 'in', basis: 'length' })
    expect(row('hip').stated).toBeNull()
  })
  it('show the way of the chosen plan, and of the advised one before any is chosen', () => {
    expect(row('waist').afterMm).toBeCloseTo(inch(30.5))
    expect(row('waist', { aim: 'closest-fit' }).afterMm).toBeCloseTo(inch(29.5))
    expect(row('thigh').afterMm).toBeNull()
  })
  it('show what is wanted of a point that is not told', () => {
    const shown = row('waist', { reckoning: tooLittle, reading: emptyReading })
    expect(shown.shown.garmentMm).toBeNull()
    expect(shown.shown.band?.ideal).toBeCloseTo(inch(29.5))
    // a whole tape is for what was measured
    expect(shown.whole).toBe(false)
    expect(shown.folded).toBe(false)
  })
  it('take the points of the kind and no others', () => {
    expect(
      pointRows({ ...trousersJudged, kind: 'jacket', reading: emptyReading, reckoning: leaveIt }, 'in').map(({ point }) => point)
    ).toEqual(['chest', 'shoulderWidth'])
  })
})

describe('setting a figure right', () => {
  const waist = row('waist')
  const quote = stated(LISTING, 'waist 16" straight across', 16, 'in')
  it('doubles a flat girth', () => {
    expect(aroundMm(16, 'in', 'flat')).toBeCloseTo(inch(32))
    expect(aroundMm(81, 'cm', 'around')).toBeCloseTo(810)
    expect(aroundMm(31, 'in', 'length')).toBeCloseTo(inch(31))
  })
  it('stands on its place in the text, once', () => {
    const first = withPoint(trousersJudged, waist, { mm: 800, unit: 'cm', basis: 'around' })
    expect(first).toEqual([{ quote: quote.text, start: quote.start, end: quote.end, point: 'waist', mm: 800, unit: 'cm', basis: 'around' }])
    const again = withPoint({ corrections: first }, row('waist', { corrections: first }), { mm: 810, unit: 'cm', basis: 'flat' })
    expect(again).toHaveLength(1)
    expect(row('waist', { corrections: again }).stated).toEqual({ typed: '40.5', unit: 'cm', basis: 'flat' })
  })
  it('adds a point that was not told, and takes it away again', () => {
    const hip = row('hip')
    const added = withPoint(trousersJudged, hip, { mm: 1020, unit: 'cm', basis: 'flat' })
    expect(added).toEqual([{ add: 'hip', mm: 1020, source: 'seller' }])
    expect(row('hip', { corrections: added }).correction).not.toBeNull()
    expect(withoutPoint({ corrections: added }, hip)).toEqual([])
  })
  it('can say that a figure is not this point, and take that back', () => {
    const not = withPoint(trousersJudged, waist, 'not-this-point')
    expect(not).toEqual([{ quote: quote.text, start: quote.start, end: quote.end, point: null }])
    expect(withoutPoint({ corrections: not }, waist)).toEqual([])
  })
  it('leaves every other setting alone', () => {
    const others = [{ kind: 'jeans' as const }, { made: { lined: true } }, { add: 'hip' as const, mm: 1000, source: 'seller' as const }]
    expect(withPoint({ corrections: others }, waist, { mm: 800, unit: 'cm', basis: 'around' }).slice(0, 3)).toEqual(others)
  })
})

describe('a later answer of the seller', () => {
  const text = 'waist 15 1/2" flat'
  const answer = {
    id: '1',
    text,
    on: '2026-03-02',
    reading: {
      ...emptyReading,
      measures: [
        { ...(trousersReading.measures[0] as (typeof trousersReading.measures)[0]), mm: inch(31), stated: stated(text, text, 15.5, 'in') }
      ]
    }
  }
  it('goes before the listing, and both are kept', () => {
    const both = row('waist', { answers: [answer] })
    expect(both.said.map(({ from, reading }) => [from, Math.round(reading.mm)])).toEqual([
      ['answer', Math.round(inch(31))],
      ['listing', Math.round(inch(32))]
    ])
    expect(both.stated?.typed).toBe('15½')
  })
  it('goes before what was set for the older reading', () => {
    const corrections = withPoint(trousersJudged, row('waist'), { mm: 800, unit: 'cm', basis: 'around' })
    expect(row('waist', { corrections, answers: [answer] }).correction).toBeNull()
  })
})

describe('a point that was told twice', () => {
  const answer = (around: number): Judged['answers'] => [
    {
      id: 'a',
      text: '',
      on: '2026-03-02',
      reading: {
        ...emptyReading,
        measures: [
          {
            point: 'waist',
            mm: inch(around),
            lowMm: inch(around),
            highMm: inch(around),
            basis: 'flat',
            basisFrom: 'stated',
            unitFrom: 'stated',
            stated: stated(LISTING, 'waist 16" straight across', around / 2, 'in')
          }
        ]
      }
    }
  ]
  it('counts with both figures where they lie near each other, else with the newer', () => {
    expect(row('waist').said.map(({ counts }) => counts)).toEqual([true])
    expect(row('waist', { answers: answer(32.5) }).said.map(({ from, counts }) => [from, counts])).toEqual([
      ['answer', true],
      ['listing', true]
    ])
    expect(row('waist', { answers: answer(34) }).said.map(({ from, counts }) => [from, counts])).toEqual([
      ['answer', true],
      ['listing', false]
    ])
  })
})
