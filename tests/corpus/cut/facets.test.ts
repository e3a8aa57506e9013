import { describe, expect, it } from 'vitest'
import type { Cut } from '../../../core/ids/cut.ts'
import { FACET_IDS } from '../../../core/ids/cut.ts'
import type { PointId } from '../../../core/ids/points.ts'
import { reckon } from '../../../core/reckon.ts'
import { CUT_ROWS } from '../../../core/wearer/cut/cut-table.ts'
import type { Wearer } from '../../../core/wearer/wearer.ts'
import { type FacetCase, facetCases } from './facets.ts'

const mm = (value: number) => ({ mm: value })
const wearer: Wearer = {
  fit: 'as-cut',
  sizes: 'women',
  body: {
    stature: mm(1680),
    bustGirth: mm(920),
    underbustGirth: mm(800),
    waistGirth: mm(740),
    hipGirth: mm(1000),
    thighGirth: mm(590),
    kneeGirth: mm(380),
    calfGirth: mm(365),
    insideLegLength: mm(780),
    armLength: mm(560),
    shoulderWidth: mm(400),
    backWaistLength: mm(410)
  }
}

function found({ kind, figures, cloth, point }: FacetCase, cut: Cut): FacetCase['is'] {
  const measures = Object.entries(figures).map(([id, value]) => ({ point: id as PointId, mm: value, source: 'seller' as const }))
  const { gaps } = reckon(
    { garment: { kind, measures, cut, ...(cloth === undefined ? {} : { cloth }) }, wearer, means: { level: 3, tailor: false } },
    { outlook: false }
  )
  const gap = gaps.find((one) => one.point === point)
  if (gap === undefined || gap.band === null) return 'not judged'
  return gap.gapMm > 2 ? 'too big' : gap.gapMm < -2 ? 'too small' : 'fits'
}

describe('the cut, facet by facet', () => {
  it.each(facetCases.map((one) => [`${one.facet}: ${JSON.stringify(one.cut)} ${one.kind} ${one.point} — ${one.why}`, one] as const))(
    '%s',
    (_, one) => {
      expect({ with: found(one, one.cut), without: found(one, {}) }).toEqual({ with: one.is, without: one.without })
    }
  )
  it('every facet that has a row has a case where it decides, and one where it must not', () => {
    const judged = new Set(CUT_ROWS.map(({ facet }) => facet))
    for (const facet of FACET_IDS.filter((id) => judged.has(id))) {
      const mine = facetCases.filter((one) => one.facet === facet)
      expect(
        mine.some((one) => one.is !== one.without),
        `${facet} decides nowhere`
      ).toBe(true)
      expect(
        mine.some((one) => one.is === one.without),
        `${facet} is not held back anywhere`
      ).toBe(true)
    }
  })
})
