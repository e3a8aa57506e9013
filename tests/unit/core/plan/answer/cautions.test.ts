/** Which cautions a garment and its plan call for. */
import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../../../core/garment/garment-input.ts'
import { cautionsFor } from '../../../../../core/plan/answer/cautions.ts'
import type { Plan } from '../../../../../core/plan/plan.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'

const job = (softLimit: boolean): Plan['alterations'][number] => ({
  id: 'sides-in',
  amountMm: 40,
  direction: 'less',
  amounts: { chest: -40 },
  lines: [{ seam: 'side', offsetMm: 10 }],
  limitMm: 100,
  limitBecause: 'the seams end there',
  softLimit,
  rescue: false,
  withoutIt: []
})
const plan = (level: Plan['level'], softLimit = false): Plan => ({
  aim: 'least-work',
  alterations: [job(softLimit)],
  after: [],
  misfit: [],
  chance: null,
  level,
  minutes: 40,
  cost: null
})
const codes = (more: Partial<GarmentInput>, with_: Plan | undefined) => {
  const input = garment('jacket', { chest: 1100 }, {}, more)
  return cautionsFor(garmentAsWorn(input), input, with_).map(({ code }) => code.replace('caution.', ''))
}

describe('cautions', () => {
  it('second-hand always; of needles and irons only where something is sewn', () => {
    expect(codes({}, undefined)).toEqual(['second-hand'])
    expect(codes({}, plan(2))).toEqual(['second-hand', 'needles', 'iron'])
  })
  it('level 4 is tried on first, and past a soft limit is said', () => {
    expect(codes({}, plan(4))).toContain('try-on-first')
    expect(codes({}, plan(3))).not.toContain('try-on-first')
    expect(codes({}, plan(2, true))).toContain('past-soft-limit')
  })
  it('cloth that was never washed is washed first, where it is sewn', () => {
    expect(codes({ cloth: { washed: false } }, plan(2))).toContain('wash-first')
    expect(codes({ cloth: { washed: false } }, undefined)).not.toContain('wash-first')
  })
  it('the use comes first; pests, solvents and leather by what is told', () => {
    expect(codes({ use: 'protective' }, undefined)[0]).toBe('protective')
    expect(codes({ condition: [{ job: 'treat-pests' }, { job: 'clean' }] }, undefined)).toEqual(['second-hand', 'pests', 'solvents'])
    expect(codes({ cloth: { structure: 'leather' } }, undefined)).toContain('leather-and-wax')
    expect(codes({ cloth: { traits: ['coated'] } }, undefined)).toContain('leather-and-wax')
  })
})
