/** What would change the verdict: a level more, more cloth at the seams, another fit. Each is tried; only what betters it is said. */
import { FITS } from '../../wearer/body.ts'
import type { Reason, Saying } from '../../words/reason.ts'
import { said, type Wording } from '../../words/say.ts'
import type { Level } from '../means.ts'
import type { ReckonRequest } from '../request.ts'
import { RANK, type Verdict } from './verdict.ts'

/** So much more cloth at every seam is tried, mm. */
const MORE_CLOTH_MM = 10

export function wouldChange(request: ReckonRequest, verdictOf: (request: ReckonRequest) => Verdict, wording: Wording): Reason[] {
  const now = RANK[verdictOf(request)]
  if (now === undefined || now >= BETTERED) return []
  return trials(request).flatMap(({ saying, changed }) => {
    const verdict = verdictOf(changed)
    return (RANK[verdict] ?? -1) > now ? [said({ ...saying, values: { ...saying.values, verdict } }, wording)] : []
  })
}

/** Nothing needs bettering that the person can do alone. */
const BETTERED = RANK['alters-to-fit'] ?? 3

function trials(request: ReckonRequest): { saying: Saying; changed: ReckonRequest }[] {
  const { garment, means, wearer } = request
  const all: { saying: Saying; changed: ReckonRequest }[] = []
  if (means.level < 5) {
    const level = (means.level + 1) as Level
    all.push({ saying: { code: 'change.level', values: { level } }, changed: { ...request, means: { ...means, level } } })
  }
  const allowance = garment.made?.seamAllowanceMm
  if (allowance === undefined || typeof allowance === 'number') {
    const made = {
      ...garment.made,
      seamAllowanceMm: (allowance ?? USUAL_ALLOWANCE_MM) + MORE_CLOTH_MM,
      outletMm: (garment.made?.outletMm ?? 0) + USUAL_OUTLET_MM + MORE_CLOTH_MM
    }
    all.push({ saying: { code: 'change.cloth', values: { mm: MORE_CLOTH_MM } }, changed: { ...request, garment: { ...garment, made } } })
  }
  for (const fit of wearer === undefined ? [] : FITS) {
    if (wearer !== undefined && fit !== wearer.fit)
      all.push({ saying: { code: 'change.fit', values: { fit } }, changed: { ...request, wearer: { ...wearer, fit } } })
  }
  return all
}
const USUAL_ALLOWANCE_MM = 12
const USUAL_OUTLET_MM = 20
