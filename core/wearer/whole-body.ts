/** A body with what was not told worked out from the survey lines, and marked. */
import { isDepth, isLength } from '../length.ts'
import { BODY_MEASURES, type Body, type BodyMeasureId, type Sex, type Sizes } from './body.ts'
import { FLEXED_MM, OVER_THE_BACK_MM, SURVEY_LINES, type SurveyLine } from './survey.ts'

export interface BodyTaken {
  mm: number
  sdMm: number
  /** Empty: told. Else the measures it was worked out from. */
  basedOn: BodyMeasureId[]
}
/** Every measure that is told or could be worked out; whose sizes the person wears, as far as said. */
export type WholeBody = ReadonlyMap<BodyMeasureId, BodyTaken> & { readonly sizes: Sizes | undefined }

const BOTH: readonly Sex[] = ['women', 'men']
/** The sexes whose lines are weighed; not said: both. A child's are both too. */
export const sexesOf = (sizes: Sizes | undefined): readonly Sex[] => (sizes === 'women' || sizes === 'men' ? [sizes] : BOTH)

/**
 * How far one's own tape on one's own body is off, mm (sd). Self-measured girths repeat within 2–19 mm (Barrios et al. 2016,
 * BMC Med Res Methodol 16:49); 7 is inside that. Small girths and lengths: ISO 20685 allows a trained hand 4–5; 5.
 */
const OWN_SD_MM: Partial<Record<BodyMeasureId, number>> = { bustGirth: 7, waistGirth: 7, waistbandGirth: 7, hipGirth: 7 }
const ownSd = (measure: BodyMeasureId): number => OWN_SD_MM[measure] ?? 5

/** Told measures as they are; the rest from the line with the least doubt. Whose sizes not said: both sexes' lines are weighed alike, their difference is doubt. */
export function wholeBody(body: Body, sizes?: Sizes): WholeBody {
  const taken = new Map<BodyMeasureId, BodyTaken>()
  for (const measure of BODY_MEASURES) {
    const told = body[measure]
    if (told !== undefined && isLength(told.mm))
      taken.set(measure, { mm: told.mm, sdMm: told.sdMm !== undefined && isDepth(told.sdMm) ? told.sdMm : ownSd(measure), basedOn: [] })
  }
  const told = new Set(taken.keys())
  const sexes = sexesOf(sizes)
  // three times: a knee may come from a hip that came from a waist that came from a bust
  for (let round = 0; round < 3; round++) {
    const before = new Map(taken)
    for (const line of SURVEY_LINES) {
      const one = alongLine(line, before, sexes)
      const best = taken.get(line.measure)
      if (one !== undefined && !told.has(line.measure) && (best === undefined || one.sdMm < best.sdMm - 1e-9)) taken.set(line.measure, one)
    }
  }
  if (!taken.has('heelGirth')) taken.set('heelGirth', { ...heelUntold(sexes), basedOn: ['stature'] })
  return Object.assign(taken, { sizes })
}

/** Heel and ankle around where nothing of the body tells it: mean and sd of the survey (ANSUR II). */
const HEEL: Record<Sex, { mm: number; sdMm: number }> = { women: { mm: 310, sdMm: 15 }, men: { mm: 343, sdMm: 17 } }
const heelUntold = (sexes: readonly Sex[]): { mm: number; sdMm: number } => together(sexes.map((sex) => HEEL[sex]))

/** One belief of several that are weighed alike: what they differ by is doubt. */
function together(beliefs: readonly { mm: number; sdMm: number }[]): { mm: number; sdMm: number } {
  const mm = beliefs.reduce((sum, one) => sum + one.mm, 0) / beliefs.length
  return { mm, sdMm: Math.sqrt(beliefs.reduce((sum, one) => sum + one.sdMm ** 2 + (one.mm - mm) ** 2, 0) / beliefs.length) }
}

const LINE: Record<Sex, 'female' | 'male'> = { women: 'female', men: 'male' }

function alongLine(line: SurveyLine, taken: ReadonlyMap<BodyMeasureId, BodyTaken>, sexes: readonly Sex[]): BodyTaken | undefined {
  const sources = line.from.map((measure) => taken.get(measure))
  const [first, second] = sources
  if (first === undefined || (line.from.length === 2 && second === undefined)) return undefined
  // a figure that was itself worked out from the wanted one tells nothing of it
  if (sources.some((source) => source?.basedOn.includes(line.measure))) return undefined
  const belief = together(
    sexes.map((sex) => {
      const [intercept, b, c, residual] = line[LINE[sex]]
      return {
        mm: intercept + b * asSurveyed(line.from[0], first.mm) + c * asSurveyed(line.from[1], second?.mm ?? 0),
        sdMm: Math.hypot(residual, b * first.sdMm, c * (second?.sdMm ?? 0))
      }
    })
  )
  return { ...belief, mm: fromSurveyed(line.measure, belief.mm), basedOn: line.from }
}

const SHIFT: Partial<Record<BodyMeasureId, number>> = { upperArmGirth: -FLEXED_MM, shoulderWidth: OVER_THE_BACK_MM }
const fromSurveyed = (measure: BodyMeasureId, mm: number): number => mm + (SHIFT[measure] ?? 0)
const asSurveyed = (measure: BodyMeasureId | undefined, mm: number): number => mm - (measure === undefined ? 0 : (SHIFT[measure] ?? 0))
