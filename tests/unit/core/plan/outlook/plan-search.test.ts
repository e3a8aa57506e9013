import { describe, expect, it } from 'vitest'
import { PlanSearch } from '../../../../../core/plan/outlook/plan-search.ts'
import { partsOf } from '../../../../../core/plan/solve/parts.ts'
import { reckon } from '../../../../../core/reckon.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'
import { rowan } from '../../../../corpus/plans/wearers.ts'
import { line, option } from '../options.ts'

describe('makes that differ', () => {
  it('what a generous make allowed is no answer for a stingy one', () => {
    const made = (capMm: number) => [
      option('sides-in', [line({ waist: -1, chest: -1 }, capMm)]),
      option('back-darts', [line({ waist: -1 }, 5)])
    ]
    const parts = partsOf(['waist', 'chest'], made(100))
    const search = new PlanSearch(parts, [made(100), made(20)], 2)
    const figures = parts.map(() => ({ at: Float64Array.of(900, 1000), least: Float64Array.of(800, 900), most: Float64Array.of(850, 960) }))
    expect(parts).toHaveLength(1)
    expect(search.fits(0, figures)).toBe(true)
    expect(search.fits(1, figures)).toBe(false)
    expect(search.fits(0, figures)).toBe(true)
  })
  it('the mark that may stay wrong is one in all, over parts that nothing ties', () => {
    const options = [option('back-darts', [line({ waist: -1 }, 30)]), option('bust-darts', [line({ chest: -1 }, 30)])]
    const parts = partsOf(['waist', 'chest'], options)
    expect(parts).toHaveLength(2)
    const search = new PlanSearch(parts, [options], 2)
    /** Each so much past what its darts hold. */
    const fits = (past: number) =>
      search.fits(
        0,
        parts.map(() => ({ at: Float64Array.of(880 + past), least: Float64Array.of(800), most: Float64Array.of(850) }))
      )
    expect([fits(0), fits(0.9), fits(1.1), fits(1.9)]).toEqual([true, true, false, false])
  })
  it('a hem that may be shallower than assumed makes letting down less sure', () => {
    const short = { waist: 820, hip: 1040, thigh: 628, inseam: 722 }
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
    expect(chance(40)).toBeGreaterThan(chance() + 0.005)
  })
})

describe('what stands in the way', () => {
  const EDGES = { waist: [800, 850], chest: [900, 960], hip: [900, 960] } as const
  type Point = keyof typeof EDGES
  const hindering = (at: { [point in Point]?: number }, options = [option('back-darts', [line({ waist: -1 }, 30)])]) => {
    const parts = partsOf(Object.keys(at) as Point[], options)
    const search = new PlanSearch(parts, [options], 2)
    const figures = parts.map(({ points }) => ({
      at: Float64Array.from(points, (point) => at[point as Point] ?? 0),
      least: Float64Array.from(points, (point) => EDGES[point as Point][0]),
      most: Float64Array.from(points, (point) => EDGES[point as Point][1])
    }))
    expect(search.fits(0, figures)).toBe(false)
    return search.hindering(0, figures).flatMap((places, part) => places.map((p) => parts[part]?.points[p]))
  }
  it('is what no work brings between its edges, not what is out and can be mended', () => {
    expect(hindering({ waist: 870, chest: 1000 })).toEqual(['chest'])
    expect(hindering({ waist: 900, chest: 950 })).toEqual(['waist'])
    expect(hindering({ waist: 900, chest: 1000 })).toEqual(['waist', 'chest'])
  })
  it('where each could be mended alone, those without which the rest would come out', () => {
    // one seam takes waist and chest in by the same; the hip hangs together with the waist and comes out anyway
    const options = [option('sides-in', [line({ waist: -1, chest: -1 }, 100)]), option('seat-in', [line({ hip: -1, waist: -0.1 }, 30)])]
    expect(hindering({ waist: 855, chest: 1050, hip: 970 }, options)).toEqual(['waist', 'chest'])
    expect(hindering({ waist: 830, chest: 1050, hip: 970 }, options)).toEqual(['chest'])
  })
  it('where none is off by more than a mark alone, all that are off together', () => {
    expect(hindering({ waist: 881.5, chest: 961.5 })).toEqual(['waist', 'chest'])
  })
})
