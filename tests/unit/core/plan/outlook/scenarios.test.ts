/** What was not told of the make, in sixteen makes. */
import { describe, expect, it } from 'vitest'
import { alterationsFor } from '../../../../../core/alterations/alterations-for.ts'
import { garmentAsWorn } from '../../../../../core/garment/garment-as-worn.ts'
import type { Made } from '../../../../../core/garment/garment-input.ts'
import type { GarmentKind } from '../../../../../core/ids/kinds.ts'
import { SCENARIOS, scenariosOf } from '../../../../../core/plan/outlook/scenarios.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'

const ANYWHERE = { point: 'waist' as const, lowMm: 700, highMm: 900, least: 799, most: 801 }
function scenarios(kind: GarmentKind, made: Partial<Made> = {}, needs = [ANYWHERE]) {
  const worn = garmentAsWorn(garment(kind, { waist: 800, hip: 1040 }, made))
  return scenariosOf(worn, {}, needs, alterationsFor(worn).options, { level: 5, tailor: true })
}
const about = (kind: GarmentKind, made: Partial<Made> = {}) => scenarios(kind, made).uncertain.map((one) => one.about)
const cap = (one: { options: { id: string; lines: { capMm: number }[] }[] }, id: string): number | undefined =>
  one.options.find((option) => option.id === id)?.lines[0]?.capMm

describe('makes that may be', () => {
  it('only what was not told is uncertain', () => {
    expect(about('trousers')).toContain('outletMm')
    expect(about('trousers', { outletMm: 25 })).not.toContain('outletMm')
    expect(about('trousers')).toContain('backPocketGapMm')
    expect(about('skirt')).not.toContain('backPocketGapMm')
  })
  it('a length spreads about what is assumed: the back seam of trousers lets out more in some, less in others', () => {
    const caps = scenarios('trousers').all.map((one) => cap(one, 'waist-out-centre-back') ?? 0)
    expect(caps).toHaveLength(SCENARIOS)
    // as assumed, an outlet of 25 gives 2 × (25 − 10) = 30; its sd is 0.4 × 25
    expect(caps.filter((mm) => mm > 30)).toHaveLength(SCENARIOS / 2)
    expect(Math.max(...caps)).toBeGreaterThan(60)
    expect(Math.min(...caps)).toBe(0)
  })
  it('a skirt has no back seam as assumed, and one in about a third of its makes', () => {
    const withSeam = scenarios('skirt').all.filter((one) => cap(one, 'waist-in-centre-back') !== undefined)
    expect(withSeam).toHaveLength(Math.round(0.35 * SCENARIOS))
  })
  it('told in everything that spreads it is one make', () => {
    const told = { outletMm: 25, seamAllowanceMm: 10, hemDepthMm: 40, backPocketGapMm: 140, overlapMm: 40, backSeam: true }
    expect(scenarios('trousers', told).all).toHaveLength(1)
  })
  it('options that could help nowhere are not worked out', () => {
    const fits = { ...ANYWHERE, lowMm: 800, highMm: 800 }
    expect(scenarios('trousers', {}, [fits]).widest).toEqual([])
    expect(scenarios('trousers').widest.every(({ lines }) => lines.some(({ effects }) => effects.waist !== undefined))).toBe(true)
  })
})
