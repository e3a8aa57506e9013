/** What would change the verdict: a level more, more cloth at the seams, another fit. Each is tried; only what betters it is said. */
import { allowanceAt, madeAs } from '../../garment/construction.ts'
import type { GarmentInput, Made } from '../../garment/garment-input.ts'
import { SEAMS, type SeamId } from '../../ids/seams.ts'
import type { Verdict } from '../../ids/verdicts.ts'
import { FITS } from '../../wearer/body.ts'
import type { Reason, Saying } from '../../words/reason.ts'
import { said, type Wording } from '../../words/say.ts'
import type { Level } from '../means.ts'
import type { ReckonRequest } from '../request.ts'
import { rankOf } from './verdict.ts'

/** So much more cloth at every seam is tried, mm. */
const MORE_CLOTH_MM = 10

export function wouldChange(request: ReckonRequest, verdictOf: (request: ReckonRequest) => Verdict, wording: Wording): Reason[] {
  const now = rankOf(verdictOf(request))
  if (now === undefined || now >= BETTERED) return []
  return trials(request).flatMap(({ saying, changed }) => {
    const verdict = verdictOf(changed)
    return (rankOf(verdict) ?? -1) > now ? [said({ ...saying, values: { ...saying.values, verdict } }, wording)] : []
  })
}

/** Nothing needs bettering that the person can do alone. */
const BETTERED = rankOf('alters-to-fit') ?? 0

function trials(request: ReckonRequest): { saying: Saying; changed: ReckonRequest }[] {
  const { garment, means, wearer } = request
  const all: { saying: Saying; changed: ReckonRequest }[] = []
  if (means.level < 5) {
    const level = (means.level + 1) as Level
    all.push({ saying: { code: 'change.level', values: { level } }, changed: { ...request, means: { ...means, level } } })
  }
  all.push({
    saying: { code: 'change.cloth', values: { mm: MORE_CLOTH_MM } },
    changed: { ...request, garment: { ...garment, made: { ...garment.made, ...withMoreCloth(garment) } } }
  })
  for (const fit of wearer === undefined ? [] : FITS) {
    if (wearer !== undefined && fit !== wearer.fit)
      all.push({ saying: { code: 'change.fit', values: { fit } }, changed: { ...request, wearer: { ...wearer, fit } } })
  }
  return all
}

/** Every allowance with more than is told of it, or else assumed of the kind; the back seam by its outlet where that is what counts. */
function withMoreCloth({ kind, made: told = {} }: GarmentInput): Partial<Made> {
  const { made } = madeAs(kind, told)
  const more = (seam: SeamId): number => allowanceAt({ ...made, felledSeams: false }, seam, told) + MORE_CLOTH_MM
  const stated = made.seamAllowanceMm
  return {
    seamAllowanceMm: typeof stated === 'number' ? stated + MORE_CLOTH_MM : Object.fromEntries(SEAMS.map((seam) => [seam, more(seam)])),
    ...(typeof stated === 'number' || told.outletMm !== undefined ? { outletMm: made.outletMm + MORE_CLOTH_MM } : {})
  }
}
