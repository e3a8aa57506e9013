import { describe, expect, it } from 'vitest'
import type { GarmentInput, Made } from '../../../core/garment/garment-input.ts'
import { readListing } from '../../../core/reading/read-listing.ts'
import { garmentFrom } from '../../../core/reading/request/garment-from.ts'
import { reckon } from '../../../core/reckon.ts'
import type { Fit } from '../../../core/wearer/body.ts'
import { rowan } from '../../corpus/plans/wearers.ts'

/** Rowan's waistband is 800, the hip 980. */
const asked = (waist: number, made: Partial<Made>, { fit = 'regular', level = 3 }: { fit?: Fit; level?: 1 | 3 } = {}) => {
  const garment: GarmentInput = {
    kind: 'trousers',
    measures: [
      { point: 'waist', mm: waist, source: 'own' },
      { point: 'hip', mm: 1060, source: 'own' },
      { point: 'thigh', mm: 640, source: 'own' }
    ],
    made
  }
  return reckon({ garment, wearer: { ...rowan, fit }, means: { level, tailor: false } })
}
const waistOf = (reckoning: ReturnType<typeof reckon>) => reckoning.gaps.find(({ point }) => point === 'waist')

describe('a waist that elastic draws in', () => {
  it('may lie far smaller than the body, as long as it pulls out to it with 10 mm to spare', () => {
    const told = asked(640, { elasticWaist: true, waistStretchedMm: 860 })
    // 800 + 10 − (860 − 640) = 590; best 50 shorter; at most the body itself
    expect(waistOf(told)?.band).toEqual({ least: 590, ideal: 750, most: 800 })
    expect(told.verdict).toBe('wears-as-is')
    expect(asked(640, {}).verdict).not.toBe('wears-as-is')
  })

  it('is too small where it does not pull out so far, and no button or seam is moved for it', () => {
    const { plans, asItIs } = asked(640, { elasticWaist: true, waistStretchedMm: 780 })
    expect(asItIs.misfit).toMatchObject([{ point: 'waist', mm: -30 }])
    const done = plans.flatMap(({ alterations }) => alterations.map(({ id }) => id))
    expect(done).not.toContain('waist-button-move')
    expect(done).not.toContain('waist-out-centre-back')
  })

  it('lies no larger than the body, or its elastic is shortened; a loose fit lets it be 25 larger', () => {
    const large = asked(850, { elasticWaist: true })
    expect(large.verdict).toBe('alters-to-fit')
    expect(large.plans[0]?.alterations).toMatchObject([{ id: 'waist-elastic-shorten', limitMm: 170 }])
    expect(asked(820, { elasticWaist: true }).verdict).not.toBe('wears-as-is')
    expect(asked(820, { elasticWaist: true }, { fit: 'loose' }).verdict).toBe('wears-as-is')
  })

  it('goes a quarter further than it lies where that is not told, says so, and asks for it', () => {
    // 660 goes to 825, 640 to 800
    expect(asked(660, { elasticWaist: true }).verdict).toBe('wears-as-is')
    const { asItIs, ask, assumed } = asked(640, { elasticWaist: true })
    expect(asItIs.misfit).toMatchObject([{ point: 'waist', mm: -10 }])
    expect(assumed.map(({ text }) => text)).toContain('Assumed: the elastic waist pulls out to 80 cm around.')
    expect(ask.map(({ about }) => about)).toContain('waistStretchedMm')
    expect(asked(640, { elasticWaist: true, waistStretchedMm: 830 }).ask.map(({ about }) => about)).not.toContain('waistStretchedMm')
  })

  it('must pass the hips where it does not open and how far it goes is told', () => {
    // 980 − (860 − 640) = 760
    expect(waistOf(asked(640, { elasticWaist: true, waistStretchedMm: 860, opens: [] }))?.band?.least).toBe(760)
    expect(asked(640, { elasticWaist: true, waistStretchedMm: 990, opens: [] }).verdict).toBe('wears-as-is')
  })

  it('comes from the listing’s own words', () => {
    const reading = readListing({ title: 'Joggers', text: 'Waist: 25" relaxed to 34" stretched. Hips 42" around. Thigh 25" around.' })
    const garment = garmentFrom(reading, [])
    expect(garment.made).toMatchObject({ elasticWaist: true, waistStretchedMm: 34 * 25.4 })
    expect(reckon({ garment, wearer: rowan, means: { level: 2, tailor: false } }).verdict).toBe('wears-as-is')
  })
})
