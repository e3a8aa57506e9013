/** A body with what was not told worked out from the survey lines, and marked. */
import { isDepth, isLength } from '../length.ts'
import { BODY_MEASURES, type Body, type BodyMeasureId } from './body.ts'
import { FLEXED_MM, HEEL, OVER_THE_BACK_MM, SURVEY_LINES, type SurveyLine } from './survey.ts'

export interface BodyTaken {
  mm: number
  sdMm: number
  /** Empty: told. Else the measures it was worked out from. */
  basedOn: BodyMeasureId[]
}
export type WholeBody = ReadonlyMap<BodyMeasureId, BodyTaken>

/**
 * How far one's own tape on one's own body is off, mm (sd). Self-measured girths repeat within 2–19 mm (Barrios et al. 2016,
 * BMC Med Res Methodol 16:49); 7 is inside that. Small girths and lengths: ISO 20685 allows a trained hand 4–5; 5.
 */
const OWN_SD_MM: Partial<Record<BodyMeasureId, number>> = { bustGirth: 7, waistGirth: 7, waistbandGirth: 7, hipGirth: 7 }
const ownSd = (measure: BodyMeasureId): number => OWN_SD_MM[measure] ?? 5

/** The wearer's natural waist stands in for where a band is worn, and the other way about, with this sd (from memory). */
const BAND_FOR_WAIST_SD_MM = 25

/** Told measures as they are; the rest from the line with the least doubt. No sex is asked: both lines are weighed alike, their difference is doubt. */
export function wholeBody(body: Body): WholeBody {
  const taken = new Map<BodyMeasureId, BodyTaken>()
  for (const measure of BODY_MEASURES) {
    const told = body[measure]
    if (told !== undefined && isLength(told.mm))
      taken.set(measure, { mm: told.mm, sdMm: told.sdMm !== undefined && isDepth(told.sdMm) ? told.sdMm : ownSd(measure), basedOn: [] })
  }
  const told = new Map(taken)
  standIn(taken, 'waistGirth', 'waistbandGirth')
  standIn(taken, 'waistbandGirth', 'waistGirth')
  // twice: a thigh may come from a hip that came from a waist
  for (let round = 0; round < 2; round++) {
    const before = new Map(taken)
    for (const line of SURVEY_LINES) {
      const one = alongLine(line, before)
      const best = taken.get(line.measure)
      if (one !== undefined && !told.has(line.measure) && (best === undefined || one.sdMm < best.sdMm)) taken.set(line.measure, one)
    }
    standIn(taken, 'waistbandGirth', 'waistGirth')
  }
  if (!taken.has('heelGirth')) taken.set('heelGirth', { ...HEEL, basedOn: ['stature'] })
  return taken
}

function standIn(taken: Map<BodyMeasureId, BodyTaken>, wanted: BodyMeasureId, other: BodyMeasureId): void {
  const source = taken.get(other)
  if (source === undefined || taken.has(wanted)) return
  taken.set(wanted, { mm: source.mm, sdMm: Math.hypot(source.sdMm, BAND_FOR_WAIST_SD_MM), basedOn: [other] })
}

function alongLine(line: SurveyLine, taken: ReadonlyMap<BodyMeasureId, BodyTaken>): BodyTaken | undefined {
  const sources = line.from.map((measure) => taken.get(measure))
  const [first, second] = sources
  if (first === undefined || (line.from.length === 2 && second === undefined)) return undefined
  const one = ([intercept, b, c, residual]: SurveyLine['female']) => ({
    mm: intercept + b * asSurveyed(line.from[0], first.mm) + c * asSurveyed(line.from[1], second?.mm ?? 0),
    variance: residual ** 2 + (b * first.sdMm) ** 2 + (c * (second?.sdMm ?? 0)) ** 2
  })
  const female = one(line.female)
  const male = one(line.male)
  return {
    mm: fromSurveyed(line.measure, (female.mm + male.mm) / 2),
    sdMm: Math.sqrt((female.variance + male.variance) / 2 + ((female.mm - male.mm) / 2) ** 2),
    basedOn: line.from
  }
}

const SHIFT: Partial<Record<BodyMeasureId, number>> = { upperArmGirth: -FLEXED_MM, shoulderWidth: OVER_THE_BACK_MM }
const fromSurveyed = (measure: BodyMeasureId, mm: number): number => mm + (SHIFT[measure] ?? 0)
const asSurveyed = (measure: BodyMeasureId | undefined, mm: number): number => mm - (measure === undefined ? 0 : (SHIFT[measure] ?? 0))
