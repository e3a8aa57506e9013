/** What is wanted at each point, before the cloth: from a body, from a favourite, or both (the favourite wins where it has the point). */
import { stretchUsed } from '../garment/cloth.ts'
import { type Garment, isTold } from '../garment/garment-as-worn.ts'
import { SHAPE } from '../ids/kinds.ts'
import { isGirth, POINTS, type PointId } from '../ids/points.ts'
import { isLength, LONGEST_MM } from '../length.ts'
import { girthAtBand } from './band-height.ts'
import type { BodyMeasureId } from './body.ts'
import { afterTrying } from './diary.ts'
import { type EaseRow, easeFor, FREE_MM } from './ease.ts'
import { elasticGoes, elasticWaist } from './elastic-waist.ts'
import { toleranceAt } from './tolerance.ts'
import type { Target, Want } from './want.ts'
import type { Favourite, Tried, Wearer } from './wearer.ts'
import { type WholeBody, wholeBody } from './whole-body.ts'

/** A band this wide, from the bound, where a wish and a physical bound contradict. */
const SETTLED_MM = 10
/** A closed leg opening must pass heel and ankle with this to spare (common practice). */
const HEEL_SPARE_MM = 10

export function targetFor(garment: Garment, wearer?: Wearer, favourite?: Favourite, tried: readonly Tried[] = []): Target {
  const body = wearer === undefined ? undefined : wholeBody(wearer.body)
  const wants = new Map<PointId, Want>()
  if (wearer !== undefined && body !== undefined) {
    for (const row of easeFor(garment.kind)) {
      const want = fromBody(row, garment, wearer, body)
      if (want !== undefined) wants.set(row.point, want)
    }
  }
  for (const { point, mm } of favourite?.measures ?? []) {
    if (!isLength(mm)) continue
    const { under, over } = toleranceAt(point, favourite?.toleranceMm?.[point])
    wants.set(point, {
      least: mm - under,
      ideal: mm,
      most: mm + over,
      sdMm: 4,
      from: 'favourite',
      basedOn: [],
      because: [{ code: 'target.favourite', values: { mm }, point }]
    })
  }
  for (const one of tried) {
    const want = wants.get(one.point)
    if (want !== undefined) wants.set(one.point, afterTrying(want, garment, one))
  }
  if (body !== undefined) for (const [point, bound] of boundsOf(garment, body)) wants.set(point, settle(wants.get(point), bound))
  return new Map(
    POINTS.flatMap((point): [PointId, Want][] => {
      const want = wants.get(point)
      return want === undefined ? [] : [[point, want]]
    })
  )
}

function fromBody(row: EaseRow, garment: Garment, wearer: Wearer, body: WholeBody): Want | undefined {
  const band = row.point === 'waist' && SHAPE[garment.kind] === 'legs' ? girthAtBand(garment, body) : undefined
  const drawnIn = row.point === 'hem' && isDrawnIn(garment)
  const against = drawnIn ? 'waistGirth' : row.body
  const measure = band ?? body.get(against)
  if (measure === undefined) return undefined
  const elastic = row.point === 'waist' ? elasticWaist(garment, wearer.fit, measure, row.body) : undefined
  if (elastic !== undefined) return { ...elastic, because: [...elastic.because, ...(band?.because ?? [])] }
  if (row.point === 'hem' && !reachesHip(garment, body)) return undefined
  if ((row.point === 'sleeveLength' || row.point === 'cuff') && hasShortSleeves(garment, body)) return undefined
  const [tableIdeal, tableMost] = row.fits[wearer.fit]
  const stated = wearer.ease?.[row.point]
  const own = stated !== undefined && Number.isFinite(stated.mm) && Math.abs(stated.mm) <= LONGEST_MM ? stated : undefined
  const idealEase = own?.mm ?? tableIdeal
  const leastEase = row.leastByFit?.[wearer.fit] ?? row.least
  const stretch = isGirth(row.point) ? stretchUsed(garment.cloth) : 0
  const least = stretch > 0 ? Math.min(measure.mm * (1 - stretch), measure.mm + leastEase) : measure.mm + Math.min(leastEase, idealEase)
  const hip = drawnIn ? Math.max(0, (body.get('hipGirth')?.mm ?? measure.mm) - measure.mm) : 0
  const free = (row.point === 'hip' || row.point === 'sweep') && garment.kind === 'skirt' && garment.made.skirtShape !== 'straight'
  return {
    least,
    ideal: free || drawnIn ? null : measure.mm + idealEase,
    most: measure.mm + hip + (free ? FREE_MM : idealEase + (tableMost - tableIdeal)),
    sdMm: Math.hypot(measure.sdMm, own?.sdMm ?? 0),
    from: 'body',
    measure: against,
    basedOn: measure.basedOn,
    because: [
      {
        code: drawnIn ? 'target.drawn-in' : 'target.body',
        values: { body: against, mm: measure.mm, ease: idealEase, fit: wearer.fit },
        point: row.point
      },
      ...(band?.because ?? [])
    ]
  }
}

/** A bottom edge this much narrower than the chest is drawn in: it sits where it holds, above the hip (blousons, ribs; common practice). */
const DRAWN_IN = 0.9
function isDrawnIn({ kind, points }: Garment): boolean {
  const [hem, chest] = [points.get('hem'), points.get('chest')]
  return MAY_BE_DRAWN_IN.has(kind) && isTold(hem) && isTold(chest) && hem.mm < DRAWN_IN * chest.mm
}
const MAY_BE_DRAWN_IN: ReadonlySet<string> = new Set(['jacket', 'coat', 'jumper', 'knit-top'])

/** Told so, or told shorter than this share of the arm: the cut, and not an arm's length that is missing (three-quarter sleeves; common practice). */
const LONG_SLEEVE = 0.8
function hasShortSleeves({ made, points }: Garment, body: WholeBody): boolean {
  const sleeve = points.get('sleeveLength')
  const arm = body.get('armLength')
  return made.shortSleeves || (isTold(sleeve) && arm !== undefined && sleeve.mm < LONG_SLEEVE * arm.mm)
}

/** Does a top's bottom edge come down to the hip? Not told: shirts, jackets, coats and knits do (common practice). */
const HIP_BELOW_WAIST_MM = 130
function reachesHip(garment: Garment, body: WholeBody): boolean {
  const length = garment.points.get('bodyLength')
  const back = body.get('backWaistLength')
  return length === undefined || back === undefined || length.mm >= back.mm + HIP_BELOW_WAIST_MM
}

/** What the body must pass or sit in, whatever is liked. */
function boundsOf(garment: Garment, body: WholeBody): [PointId, Want][] {
  const bounds: [PointId, Want][] = []
  const give = 1 - 2 * stretchUsed(garment.cloth)
  const must = (point: PointId, measure: BodyMeasureId, spare: number) => {
    const taken = body.get(measure)
    if (taken === undefined || !garment.points.has(point) || garment.made.opens.includes(point)) return
    const bound = taken.mm * give + spare
    bounds.push([
      point,
      {
        least: bound,
        ideal: null,
        most: bound + FREE_MM,
        sdMm: taken.sdMm,
        from: 'bound',
        basedOn: taken.basedOn,
        bound,
        because: [{ code: 'target.must-pass', values: { body: measure, mm: bound }, point }]
      }
    ])
  }
  if (['trousers', 'jeans', 'jumpsuit'].includes(garment.kind)) must('legOpening', 'heelGirth', HEEL_SPARE_MM)
  if (['shirt', 'knit-top', 'jumper', 'dress'].includes(garment.kind)) {
    must('neck', 'headGirth', 0)
    if (!hasShortSleeves(garment, body)) must('cuff', 'handGirth', 0)
  }
  const goesTold = !garment.made.elasticWaist || garment.told.waistStretchedMm !== undefined
  if (['trousers', 'jeans', 'shorts', 'skirt'].includes(garment.kind) && goesTold) must('waist', 'hipGirth', -elasticGoes(garment))
  return bounds
}

/** A wish under a bound: the bound holds, and a wish that lies wholly below it becomes a narrow band from it. */
function settle(wish: Want | undefined, bound: Want): Want {
  if (wish === undefined) return bound
  const least = Math.max(wish.least, bound.least)
  const because = wish.least < bound.least ? [...wish.because, ...bound.because] : wish.because
  if (wish.most >= least)
    return { ...wish, least, ideal: wish.ideal === null ? null : Math.max(wish.ideal, least), bound: bound.least, because }
  return {
    ...wish,
    least,
    ideal: least,
    most: least + SETTLED_MM,
    sdMm: Math.max(wish.sdMm, bound.sdMm),
    bound: bound.least,
    because: [...because, { code: 'target.contradiction', values: { mm: least } }]
  }
}
