/** Does something leave nothing wrong? By one point and jobs of one line, so that it is plain beforehand. */
import { describe, expect, it } from 'vitest'
import type { Option } from '../../../../core/alterations/row.ts'
import { garmentAsWorn } from '../../../../core/garment/garment-as-worn.ts'
import type { Means } from '../../../../core/plan/means.ts'
import type { Plan } from '../../../../core/plan/plan.ts'
import { distinct, leavesNothingWrong } from '../../../../core/plan/plan-alterations.ts'
import type { Gap } from '../../../../core/wearer/gaps.ts'
import { besideBand } from './beside.ts'
import { line, option } from './options.ts'

const garment = garmentAsWorn({ kind: 'trousers', measures: [] })
const means = (level: Means['level'], more: Partial<Means> = {}): Means => ({ level, tailor: false, ...more })
const job = (capMm: number, more: Partial<Option> = {}) => option('waist-in-centre-back', [line({ waist: -1 }, capMm)], more)
const waist = (mm: number, more: Partial<Gap> = {}) => besideBand('waist', mm, 800, 840, more)

describe('at most one mark stays wrong', () => {
  it.each<[string, Gap[], Option[], Means, boolean]>([
    ['inside', [waist(820)], [], means(1), true],
    ['a mark outside', [waist(842)], [], means(1), true],
    ['two points that are a mark outside together', [waist(841), besideBand('hip', 979, 980, 1020)], [], means(1), true],
    ['two points a mark outside each', [waist(842), besideBand('hip', 978, 980, 1020)], [], means(1), false],
    ['outside, and nothing to be done', [waist(843)], [], means(5), false],
    ['outside, and not judged', [waist(900, { judged: false })], [], means(1), true],
    ['a job that holds it', [waist(880)], [job(40)], means(2), true],
    ['a job that holds all but a mark', [waist(882)], [job(40)], means(2), true],
    ['a job that holds less', [waist(883)], [job(40)], means(2), false],
    // its two lines move by marks of 2: 36 at most
    ['a job whose last mark is past its limit', [waist(880)], [job(39)], means(2), false],
    ['too hard a job', [waist(880)], [job(40)], means(1), false],
    ['too hard a job, and a tailor at hand', [waist(880)], [job(40)], means(1, { tailor: true }), true],
    ['a rescue', [waist(880)], [job(40, { rescue: true })], means(2), false],
    ['a rescue that is accepted', [waist(880)], [job(40, { rescue: true })], means(2, { acceptRescues: ['waist-in-centre-back'] }), true],
    ['a job the other way', [waist(760)], [job(40)], means(2), false],
    [
      'a job that spoils another point',
      [waist(880), besideBand('hip', 985, 980, 1020)],
      [option('waist-in-centre-back', [line({ waist: -1, hip: -0.5 }, 60)])],
      means(2),
      false
    ],
    [
      'a job that moves another point within its band',
      [waist(880), besideBand('hip', 1010, 980, 1020)],
      [option('waist-in-centre-back', [line({ waist: -1, hip: -0.5 }, 60)])],
      means(2),
      true
    ],
    ['a coarser mark', [waist(843)], [], means(1, { markMm: 3.175 }), true]
  ])('%s', (_, gaps, options, its, nothing) => expect(leavesNothingWrong({ garment, gaps, offer: () => ({ options }) }, its)).toBe(nothing))
})

it('plans of the same jobs by the same amounts are one, the first', () => {
  const plan = (aim: Plan['aim'], ...alterations: object[]) => ({ aim, alterations }) as unknown as Plan
  const [a, b] = [
    { id: 'leg-taper', direction: 'less', amounts: { knee: -20 } },
    { id: 'leg-taper', direction: 'less', amounts: { knee: -22 } }
  ]
  const all = [
    plan('least-work', a),
    plan('closest-fit', { ...a, limitMm: 9 }),
    plan('closest-fit', b),
    plan('tailor'),
    plan('tailor', a, b)
  ]
  expect(distinct(all)).toEqual([all[0], all[2], all[3], all[4]])
})
