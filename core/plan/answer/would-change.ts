/** What would change the verdict: a level more, a tailor, another figure, more cloth at the seams, another fit. Each is tried; only what betters it is said. */
import { allowanceAt, madeAs } from '../../garment/construction.ts'
import type { GarmentInput, Made } from '../../garment/garment-input.ts'
import { SEAMS, type SeamId } from '../../ids/seams.ts'
import type { Verdict } from '../../ids/verdicts.ts'
import { FITS } from '../../wearer/body.ts'
import type { Reason, Saying } from '../../words/reason.ts'
import { listed, listedAsChoice, said, sayInside, type Wording } from '../../words/say.ts'
import type { Level } from '../means.ts'
import type { Misfit } from '../plan.ts'
import type { ReckonRequest } from '../request.ts'
import { conditionShown, onTape } from './conditions-said.ts'
import { rankOf } from './verdict.ts'

/** So much more cloth at every seam is tried, mm. */
const MORE_CLOTH_MM = 10

/** Further off than this it is another garment, mm; and of more points than these nobody goes looking (settings). */
const MOST_OFF_MM = 60
const MOST_POINTS = 2

/** How a request stands: its verdict, and what the advised plan leaves wrong. */
export interface Standing {
  verdict: Verdict
  wrong: readonly Misfit[]
}

export function wouldChange(request: ReckonRequest, standingOf: (request: ReckonRequest) => Standing, wording: Wording): Reason[] {
  const { verdict: verdictNow, wrong } = standingOf(request)
  const now = rankOf(verdictNow)
  if (now === undefined || now >= BETTERED) return []
  const better = [...trials(request), ...otherFigures(request, wrong, wording)].flatMap(({ saying, changed }): Saying[] => {
    const { verdict } = standingOf(changed)
    return (rankOf(verdict) ?? -1) > now ? [{ ...saying, values: { ...saying.values, verdict } }] : []
  })
  return fitsTogether(better, wording).map((saying) => said(saying, wording))
}

/** Other fits that come to the same verdict are said once, in the place of the first. */
function fitsTogether(sayings: readonly Saying[], wording: Wording): Saying[] {
  const alike = (one: Saying): Saying[] => sayings.filter(({ code, values }) => code === FIT && values.verdict === one.values.verdict)
  return sayings.flatMap((saying): Saying[] => {
    if (saying.code !== FIT) return [saying]
    const fits = alike(saying)
    if (fits.length === 1) return [saying]
    if (fits[0] !== saying) return []
    const names = fits.map(({ values }) => sayInside({ code: `fit.${values.fit}`, values: {} }, wording))
    // their ids beside their names, for whoever tries them
    const ids = fits.map(({ values }) => values.fit).join(' ')
    return [{ code: 'change.fits', values: { fits: listedAsChoice(names, wording), ids, verdict: saying.values.verdict ?? '' } }]
  })
}
const FIT = 'change.fit'

/** Nothing needs bettering that the person can do alone. */
const BETTERED = rankOf('alters-to-fit') ?? 0

interface Trial {
  saying: Saying
  changed: ReckonRequest
}

function trials(request: ReckonRequest): Trial[] {
  const { garment, means, wearer } = request
  const all: Trial[] = []
  if (means.level < 5) {
    const level = (means.level + 1) as Level
    all.push({ saying: { code: 'change.level', values: { level } }, changed: { ...request, means: { ...means, level } } })
  }
  if (!means.tailor) all.push({ saying: { code: 'change.tailor', values: {} }, changed: { ...request, means: { ...means, tailor: true } } })
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

/** The figures at which nothing would stay wrong, on the seller's tape: what to look for in another garment of the kind, or in a slip of the tape. */
function otherFigures(request: ReckonRequest, wrong: readonly Misfit[], wording: Wording): Trial[] {
  if (wrong.length === 0 || wrong.length > MOST_POINTS || wrong.some(({ mm }) => Math.abs(mm) > MOST_OFF_MM)) return []
  let { measures } = request.garment
  const clauses: string[] = []
  for (const { point, mm } of wrong) {
    const told = measures.find((one) => one.point === point)
    if (told === undefined) return []
    const bound = told.mm - mm
    const edges = { point, least: mm < 0 ? bound : null, most: mm > 0 ? bound : null }
    const tape = onTape(edges, wording.units)
    const to = (tape.least ?? tape.most ?? 0) * (tape.flat ? 2 : 1)
    measures = measures.map((one) => (one.point === point ? { ...one, mm: to } : one))
    clauses.push(conditionShown({ ...edges, chance: null }, wording).text)
  }
  const saying = { code: 'change.figure', values: { condition: listed(clauses, wording) } }
  return [{ saying, changed: { ...request, garment: { ...request.garment, measures } } }]
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
