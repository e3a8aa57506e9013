import { describe, expect, it } from 'vitest'
import { combinedReading } from '../../../entrypoints/view/combined-reading.ts'
import { emptyReading, inch, stated, trousersReading } from './fixtures.ts'

const text = 'hip 20" flat, waist 15 1/2" flat, front rise 11"'
const measure = (point: 'hip' | 'waist' | 'frontRise', mm: number, quote: string, value: number) => ({
  point,
  mm,
  lowMm: mm,
  highMm: mm,
  basis: 'flat' as const,
  basisFrom: 'stated' as const,
  unitFrom: 'stated' as const,
  stated: stated(text, quote, value, 'in')
})
const answer = {
  ...emptyReading,
  measures: [measure('hip', inch(40), 'hip 20" flat', 20), measure('waist', inch(31), 'waist 15 1/2" flat', 15.5)]
}

describe('a listing and the seller’s answers as one reading', () => {
  const both = combinedReading(trousersReading, [answer])
  it('takes the newer figure at each point, once, and keeps the others', () => {
    expect(both.measures.map(({ point, mm }) => [point, Math.round(mm)])).toEqual([
      ['thigh', 635],
      ['inseam', 787],
      ['legOpening', 406],
      ['hip', 1016],
      ['waist', 787]
    ])
  })
  it('lets the last of several answers count', () => {
    const last = { ...emptyReading, measures: [measure('waist', inch(30), 'waist 15 1/2" flat', 15)] }
    expect(
      combinedReading(trousersReading, [answer, last])
        .measures.filter(({ point }) => point === 'waist')
        .map(({ mm }) => Math.round(mm))
    ).toEqual([762])
  })
  it('keeps a doubt until the answer settles it', () => {
    expect(both.issues).toHaveLength(1)
    const settled = { ...emptyReading, measures: [measure('frontRise', inch(11), 'front rise 11"', 11)] }
    expect(combinedReading(trousersReading, [settled]).issues).toHaveLength(0)
  })
  it('is the listing itself without answers', () => {
    expect(combinedReading(trousersReading, [])).toEqual(trousersReading)
  })
})
