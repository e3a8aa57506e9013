import { describe, expect, it } from 'vitest'
import type { Line, Option } from '../../../../../core/alterations/row.ts'
import { PlanSearch } from '../../../../../core/plan/outlook/plan-search.ts'
import { partsOf } from '../../../../../core/plan/solve/parts.ts'
import { singlePointReach } from '../../../../../core/plan/solve/single-point-reach.ts'
import { reckon } from '../../../../../core/reckon.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'
import { rowan } from '../../../../corpus/plans/wearers.ts'

const line = (effects: Line['effects'], capMm: number): Line => ({
  point: 'waist',
  effects,
  capMm,
  because: { code: 'limit.sides', values: {} },
  seams: []
})
const option = (key: string, id: Option['id'], lines: Line[], more: Partial<Option> = {}): Option => ({
  key,
  id,
  direction: 'less',
  lines,
  smoothMm: 60,
  shared: [],
  opens: [],
  setupMinutes: 10,
  per25Minutes: 0,
  level: 2,
  penaltyMinutes: 0,
  excludes: [],
  rescue: false,
  ...more
})

describe('one point alone', () => {
  it('adds up what goes together and takes the best of rivals', () => {
    const a = option('a', 'sides-in', [line({ waist: -1 }, 30)], { excludes: ['back-darts'] })
    const b = option('b', 'back-darts', [line({ waist: -1 }, 50)])
    const c = option('c', 'bust-darts', [line({ waist: -0.5 }, 40)])
    expect(singlePointReach('waist', [a, b, c])).toEqual({ up: 0, down: 70 })
  })
  it('one that is worth less than its two rivals together gives way', () => {
    const middle = option('a', 'sides-in', [line({ waist: -1 }, 60)], { excludes: ['back-darts', 'bust-darts'] })
    const one = option('b', 'back-darts', [line({ waist: -1 }, 40)])
    const other = option('c', 'bust-darts', [line({ waist: -1 }, 45)])
    expect(singlePointReach('waist', [middle, one, other])).toEqual({ up: 0, down: 85 })
  })
  it('is not so simple with a fixed step or a limit that two share', () => {
    expect(singlePointReach('waist', [option('a', 'sides-in', [line({ waist: -1 }, 10)], { fixedMm: 10 })])).toBeUndefined()
    const shared = [{ group: 'pocket-gap', shares: [1], budgetMm: 20, because: { code: 'limit.sides', values: {} } }]
    const two = [
      option('a', 'sides-in', [line({ waist: -1 }, 30)], { shared }),
      option('b', 'back-darts', [line({ waist: -1 }, 30)], { shared })
    ]
    expect(singlePointReach('waist', two)).toBeUndefined()
    expect(singlePointReach('waist', two.slice(0, 1))).toEqual({ up: 0, down: 20 })
  })
})

describe('makes that differ', () => {
  it('what a generous make allowed is no answer for a stingy one', () => {
    const made = (capMm: number) => [
      option('a', 'sides-in', [line({ waist: -1, chest: -1 }, capMm)]),
      option('b', 'back-darts', [line({ waist: -1 }, 5)])
    ]
    const parts = partsOf(['waist', 'chest'], made(100))
    const search = new PlanSearch(parts, [made(100), made(20)], 2)
    const figures = parts.map(() => ({ at: Float64Array.of(900, 1000), least: Float64Array.of(800, 900), most: Float64Array.of(850, 960) }))
    expect(parts).toHaveLength(1)
    expect(search.fits(0, figures)).toBe(true)
    expect(search.fits(1, figures)).toBe(false)
    expect(search.fits(0, figures)).toBe(true)
  })
  it('a hem that may be shallower than assumed makes letting down less sure', () => {
    const short = { waist: 820, hip: 1040, thigh: 628, inseam: 729 }
    const chance = (hemDepthMm?: number) =>
      reckon({
        garment: {
          ...garment('trousers', short, hemDepthMm === undefined ? {} : { hemDepthMm }),
          measures: garment('trousers', short).measures.map((one) => ({ ...one, source: 'own' as const }))
        },
        wearer: rowan,
        means: { level: 2, tailor: false },
        limits: { 'leg-lengthen-facing': 0, 'leg-lengthen-band': 0 }
      }).chance ?? 0
    expect(chance(40)).toBeGreaterThan(chance() + 0.05)
  })
})
