/** How sure, and what of it a question could settle. */
import { describe, expect, it } from 'vitest'
import { alterationsFor } from '../../../../../core/alterations/alterations-for.ts'
import { garmentAsWorn } from '../../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../../../core/garment/garment-input.ts'
import type { PointId } from '../../../../../core/ids/points.ts'
import type { Means } from '../../../../../core/plan/means.ts'
import { outlookOf } from '../../../../../core/plan/outlook/outlook.ts'
import { gapsBetween } from '../../../../../core/wearer/gaps.ts'
import { targetFor } from '../../../../../core/wearer/target.ts'
import type { Wearer } from '../../../../../core/wearer/wearer.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'
import { rowan } from '../../../../corpus/plans/wearers.ts'

function outlook(input: GarmentInput, means: Means = { level: 3, tailor: false }, wearer: Wearer = rowan) {
  const worn = garmentAsWorn(input)
  const target = targetFor(worn, wearer)
  const { options } = alterationsFor(worn)
  return outlookOf({ garment: worn, target, wearer, gaps: gapsBetween(worn, target), options, means, limits: {}, markMm: 2 })
}
const asked = (...of: Parameters<typeof outlook>) =>
  outlook(...of)
    .uncertain()
    .map(({ what }) => what)
const trousers = { waist: 880, hip: 1040, thigh: 628 }
const JACKET = { chest: 1060, waist: 916, hem: 1080, shoulderWidth: 440, sleeveLength: 612 }

describe('how sure', () => {
  it('doing nothing is in no draw better than sewing, nor sewing than a tailor', () => {
    const { asItIs, own, tailor, likely, works } = outlook(garment('trousers', trousers), { level: 1, tailor: true })
    expect(asItIs).toBeLessThan(own)
    expect(own).toBeLessThan(tailor ?? 0)
    expect(likely).toBe(tailor)
    expect(works.filter((one) => one).length / works.length).toBe(likely)
  })
  it('without a tailor there is no such chance, and what is likely is one’s own', () => {
    expect(outlook(garment('trousers', trousers))).toMatchObject({ tailor: null, likely: outlook(garment('trousers', trousers)).own })
  })
})

describe('what no table speaks of', () => {
  it('leaves no chance at 0 or 1: in one draw of eight it is even', () => {
    const hopeless = outlook(garment('trousers', { waist: 500, hip: 620 }))
    expect([hopeless.asItIs, hopeless.own]).toEqual([1 / 16, 1 / 16])
    // nothing left to go wrong in the others
    const { own } = outlook(garment('trousers', trousers)).ifTheyHold(
      ['waist', 'hip', 'thigh', 'knee', 'calf', 'legOpening', 'inseam', 'outseam', 'frontRise', 'backRise', 'crotchLength'].map(
        (point) => ({
          point: point as PointId
        })
      )
    )
    expect(own).toBe(15 / 16)
  })
})

describe('what a question could settle', () => {
  it('a seller’s figure by a second look, a figure that was worked out by a first, one’s own by none', () => {
    const input = garment('trousers', { waist: 880 })
    input.measures.push({ point: 'inseam', mm: 760, source: 'own' })
    const points = asked(input).flatMap((what) => ('point' in what ? [what] : []))
    expect(points).toContainEqual({ point: 'waist', again: true })
    expect(points).toContainEqual({ point: 'hip' })
    expect(points.map(({ point }) => point)).not.toContain('inseam')
    input.measures.push({ point: 'waist', mm: 884, source: 'seller' })
    expect(asked(input).map((what) => ('point' in what ? what.point : ''))).not.toContain('waist')
  })
  it('the make that can be seen: not inside a lining', () => {
    const about = (lined: boolean) => asked(garment('jacket', JACKET, { lined })).flatMap((what) => ('about' in what ? [what.about] : []))
    expect(about(false)).toEqual(expect.arrayContaining(['outletMm', 'seamAllowanceMm', 'hemDepthMm']))
    expect(about(true)).not.toEqual(expect.arrayContaining(['outletMm']))
    expect(about(true)).toContain('workingCuffButtons')
  })
  it('a body measure that was worked out from others', () => {
    const { thighGirth: _, ...body } = rowan.body
    expect(asked(garment('trousers', trousers), undefined, { ...rowan, body })).toContainEqual({ body: 'thighGirth' })
    expect(asked(garment('trousers', trousers))).not.toContainEqual({ body: 'thighGirth' })
  })
  it('how far elastic goes, where it was not told', () => {
    expect(asked(garment('trousers', trousers, { elasticWaist: true }))).toContainEqual({ about: 'waistStretchedMm' })
    expect(asked(garment('trousers', trousers, { elasticWaist: true, waistStretchedMm: 1000 }))).not.toContainEqual({
      about: 'waistStretchedMm'
    })
  })
})
