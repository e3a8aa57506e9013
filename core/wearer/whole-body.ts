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
/** The sexes whose lines are weighed; not said: both. Heights of a child are both too, as shares of the stature. */
export const sexesOf = (sizes: Sizes | undefined): readonly Sex[] => (sizes === 'women' || sizes === 'men' ? [sizes] : BOTH)

/**
 * How far one's own tape on one's own body is off, mm (sd). Self-measured girths repeat within 2–19 mm (Barrios et al. 2016,
 * BMC Med Res Methodol 16:49); 7 is inside that. Small girths and lengths: ISO 20685 allows a trained hand 4–5; 5.
 */
const OWN_SD_MM: Partial<Record<BodyMeasureId, number>> = { bustGirth: 7, waistGirth: 7, waistbandGirth: 7, hipGirth: 7 }
const ownSd = (measure: BodyMeasureId): number => OWN_SD_MM[measure] ?? 5

/** Grown people were surveyed: of a child only foot and hand follow from the stature, by the women's line carried on (± 15, common practice). */
const CHILDS: Partial<Record<BodyMeasureId, true>> = { heelGirth: true, handGirth: true }
const CHILD_SD_MM = 15
const CHILDS_LINES = SURVEY_LINES.filter(({ measure, from }) => CHILDS[measure] && from.length === 1)
const linesFor = (sizes: Sizes | undefined): readonly SurveyLine[] => (sizes === 'children' ? CHILDS_LINES : SURVEY_LINES)

/** A line that is surer by less than this is no surer, mm. */
const LESS_SD_MM = 0.01

/**
 * Told measures as they are; the rest from the line with the least doubt. Whose sizes not said: both sexes' lines are weighed alike, their
 * difference is doubt. A child's: foot and hand alone.
 */
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
  for (let round = 0, found = true; round < 3 && found; round++) {
    const before = new Map(taken)
    found = false
    for (const line of linesFor(sizes)) {
      if (told.has(line.measure)) continue
      const one = alongLine(line, before, sizes)
      const best = taken.get(line.measure)
      if (one === undefined || (best !== undefined && one.sdMm >= best.sdMm - LESS_SD_MM)) continue
      taken.set(line.measure, one)
      found = true
    }
  }
  if (sizes !== 'children' && !taken.has('heelGirth')) taken.set('heelGirth', { ...heelUntold(sexes), basedOn: ['stature'] })
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

/** Lines that could tell a measure which is not told, each with its sources; undefined where one is missing or was itself worked out from it. */
function alongLine(
  { measure, from, female, male }: SurveyLine,
  taken: ReadonlyMap<BodyMeasureId, BodyTaken>,
  sizes: Sizes | undefined
): BodyTaken | undefined {
  const [firstId, secondId] = from
  const first = firstId === undefined ? undefined : taken.get(firstId)
  const second = secondId === undefined ? undefined : taken.get(secondId)
  if (firstId === undefined || first === undefined || (secondId !== undefined && second === undefined)) return undefined
  if (first.basedOn.includes(measure) || second?.basedOn.includes(measure)) return undefined
  const x = asSurveyed(firstId, first.mm)
  const y = secondId === undefined || second === undefined ? 0 : asSurveyed(secondId, second.mm)
  const sdOfSecond = second?.sdMm ?? 0
  const shift = SHIFT[measure] ?? 0
  const [ofWomen, ofMen] = [valueOn(female, x, y), valueOn(male, x, y)]
  const womensVariance = varianceOn(female, first.sdMm, sdOfSecond)
  if (sizes === 'women') return { mm: ofWomen + shift, sdMm: Math.sqrt(womensVariance), basedOn: from }
  if (sizes === 'children') return { mm: ofWomen + shift, sdMm: Math.max(CHILD_SD_MM, Math.sqrt(womensVariance)), basedOn: from }
  const mensVariance = varianceOn(male, first.sdMm, sdOfSecond)
  if (sizes === 'men') return { mm: ofMen + shift, sdMm: Math.sqrt(mensVariance), basedOn: from }
  const sdMm = Math.sqrt((womensVariance + mensVariance) / 2 + ((ofWomen - ofMen) / 2) ** 2)
  return { mm: (ofWomen + ofMen) / 2 + shift, sdMm, basedOn: from }
}
type Line = SurveyLine['female']
const valueOn = ([intercept, b, c]: Line, x: number, y: number): number => intercept + b * x + c * y
const varianceOn = ([, b, c, residual]: Line, sdOfFirst: number, sdOfSecond: number): number =>
  residual ** 2 + (b * sdOfFirst) ** 2 + (c * sdOfSecond) ** 2

const SHIFT: Partial<Record<BodyMeasureId, number>> = { upperArmGirth: -FLEXED_MM, shoulderWidth: OVER_THE_BACK_MM }
const asSurveyed = (measure: BodyMeasureId, mm: number): number => mm - (SHIFT[measure] ?? 0)
