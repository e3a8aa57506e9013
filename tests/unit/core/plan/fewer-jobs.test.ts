/** A job whose absence leaves less than 4 mm wrong may be left out, in a plan of its own. */
import { describe, expect, it } from 'vitest'
import { reckon } from '../../../../core/reckon.ts'
import { garment } from '../../../corpus/plans/plan-case.ts'
import { homeSewer, rowan } from '../../../corpus/plans/wearers.ts'

/** The waist is 35 too big; the legs are so many too long, 785 being the most. */
const jobsOf = (inseam: number): string[][] =>
  reckon(
    {
      garment: garment('trousers', { waist: 880, hip: 1040, thigh: 628, inseam }),
      wearer: rowan,
      means: homeSewer,
      limits: { 'leg-shorten-plain': 0 }
    },
    { outlook: false }
  ).plans.map(({ alterations }) => alterations.map(({ id }) => id))

describe('one job fewer', () => {
  it('3 too long hardly matter: a plan leaves the legs as they are', () => {
    expect(jobsOf(788)[0]).toHaveLength(2)
    expect(jobsOf(788)).toContainEqual(['waist-in-centre-back'])
  })
  it('5 too long do', () => {
    expect(jobsOf(790)[0]).toHaveLength(2)
    expect(jobsOf(790)).not.toContainEqual(['waist-in-centre-back'])
  })
})
