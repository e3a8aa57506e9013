import { describe, expect, test } from 'vitest'
import { readListing } from '../../../core/reading/read-listing.ts'
import type { Asked } from '../../../core/reading/reading.ts'

const answered = (text: string, asked?: Asked) => readListing({ text, kind: 'skirt', ...(asked === undefined ? {} : { asked }) })

describe('a seller’s answer to what was asked', () => {
  test('a lone figure without a name is of it', () => {
    expect(answered('Hi! It’s 15.5 inches.', 'waist').measures).toMatchObject([
      { point: 'waist', mm: 2 * 15.5 * 25.4, basis: 'flat', stated: { text: '15.5 inches' } }
    ])
    expect(answered('71 cm', 'skirtLength').measures).toMatchObject([{ point: 'skirtLength', mm: 710 }])
    expect(answered('71 cm', 'skirtLength').issues).toEqual([])
  })
  test('unasked it stays nobody’s', () => {
    expect(answered('Hi! It’s 15.5 inches.').measures).toEqual([])
  })
  test('a name in the answer counts, whatever was asked', () => {
    expect(answered('The hips are 52 cm across', 'waist').measures).toMatchObject([{ point: 'hip', mm: 1040 }])
  })
  test('of two figures without a name neither is', () => {
    expect(answered('15 inches, or 16 if I pull', 'waist').measures).toEqual([])
  })
  test('how far an elastic waist pulls out', () => {
    const { made, measures, leftAside } = answered('About 18 inches flat', 'waistStretchedMm')
    expect(made).toMatchObject({ elasticWaist: true, waistStretchedMm: 36 * 25.4 })
    expect(measures).toEqual([])
    expect(leftAside).toMatchObject([{ because: 'pulled-out' }])
  })
  test('a figure that such a garment cannot have is told as a doubt', () => {
    const { measures, issues } = answered('3 metres', 'waist')
    expect(measures).toEqual([])
    expect(issues.map(({ code }) => code)).not.toEqual([])
  })
})
