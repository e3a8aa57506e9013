import { describe, expect, it } from 'vitest'
import { reckon } from '../../../../../core/reckon.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'
import { careful, homeSewer, rowan } from '../../../../corpus/plans/wearers.ts'

const suits = { waist: 820, hip: 1045, thigh: 630, inseam: 756 }
const why = (request: Parameters<typeof reckon>[0]) =>
  Object.fromEntries(reckon(request, { outlook: false }).notTaken.map(({ id, because }) => [id, because]))

describe('other ways, and why not', () => {
  it('trousers 35 too big at the waist: every other way with its reason, in figures', () => {
    const others = why({ garment: garment('trousers', { ...suits, waist: 880 }), wearer: rowan, means: homeSewer })
    // 35 are asked; over a fly a button moves 13
    expect(others['waist-button-move']).toMatchObject({ code: 'not-taken.too-little', values: { holds: 13, needs: 35 } })
    expect(others['waist-button-move']?.text).toBe('By itself it gives only 1.3 cm of the 3.5 cm needed.')
    // set-up 30 for the whole, waistband included, against 45 at the sides
    expect(others['waist-in-side-seams']).toMatchObject({ code: 'not-taken.dearer', values: { minutes: 45, instead: 30 } })
    expect(others['waist-in-darts']).toMatchObject({ code: 'limit.has-back-seam' })
    expect(others['waist-in-centre-back']).toBeUndefined()
    // what lets out is no way to take in
    expect(others['waist-out-centre-back']).toBeUndefined()
  })
  it('weighs as the planner does: on a check both the seam and its band take 1.4 times as long (45 and 30)', () => {
    const others = why({
      garment: garment('trousers', { ...suits, waist: 880 }, {}, { cloth: { traits: ['check'] } }),
      wearer: rowan,
      means: homeSewer
    })
    expect(others['waist-in-side-seams']?.values).toEqual({ minutes: 63, instead: 42 })
  })
  it('a rescue that would be less work than the seams is said to be one', () => {
    const others = why({
      garment: garment('jeans', { waist: 890, hip: 1045, thigh: 630 }, { backPocketGapMm: 70 }),
      wearer: rowan,
      means: homeSewer
    })
    expect(others['waist-in-elastic']).toMatchObject({ code: 'not-taken.rescue' })
  })
  it('a job beyond one’s level says both levels', () => {
    const others = why({ garment: garment('trousers', { ...suits, hip: 1110 }), wearer: rowan, means: homeSewer })
    expect(others['seat-in']).toMatchObject({ code: 'not-taken.level', values: { level: 4, own: 3 } })
    expect(why({ garment: garment('trousers', { ...suits, hip: 1110 }), wearer: rowan, means: careful })['seat-in']).toBeUndefined()
  })
  it('an elastic waist says once that its seams are left; a plain one says nothing of elastic', () => {
    const asked = (elasticWaist: boolean) =>
      reckon({ garment: garment('trousers', { ...suits, waist: 880 }, { elasticWaist }), wearer: rowan, means: homeSewer })
    const codes = asked(true).notTaken.map(({ because }) => because.code)
    expect(codes.filter((code) => code === 'limit.elastic-band')).toHaveLength(1)
    expect(asked(false).notTaken.map(({ id }) => id)).not.toContain('waist-elastic-shorten')
  })
  it('what moves a point by half as much as its amount or more is a way to move it; by less it is none', () => {
    // a shirt's sides take half of their amount from the upper arm
    const arm = why({
      garment: garment('shirt', { chest: 1060, waist: 930, hem: 1070, bicep: 480 }),
      wearer: rowan,
      favourite: { measures: [{ point: 'bicep', mm: 390 }] },
      means: { level: 1, tailor: false }
    })
    expect(arm['sides-in']).toBeDefined()
    // a seat takes 0.3 of its amount from the thigh
    const thigh = why({ garment: garment('trousers', { ...suits, thigh: 700 }), wearer: rowan, means: careful })
    expect(thigh['seat-in']).toBeUndefined()
  })
  it('nothing is wrong: there are no other ways', () => {
    expect(reckon({ garment: garment('trousers', suits), wearer: rowan, means: homeSewer }).notTaken).toEqual([])
  })
})
