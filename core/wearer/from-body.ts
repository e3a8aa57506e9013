/**
 * What is wanted from a body: one band a point, from the ease table and from what the cut says of the point, by one mechanism for all facets:
 * no seam there → not judged; free → never too big; else the band of the more particular facet, or the wish's; then the cloth.
 */
import { stretchAt } from '../garment/cloth.ts'
import { isCut, knownCut } from '../garment/cut.ts'
import { type Garment, isTold } from '../garment/garment-as-worn.ts'
import type { Cut } from '../ids/cut.ts'
import { type GarmentKind, KNITS, SHAPE } from '../ids/kinds.ts'
import { isGirth, POINTS_OF, type PointId } from '../ids/points.ts'
import { LONGEST_MM } from '../length.ts'
import { girthAtBand, skirtBandSd } from './band-height.ts'
import type { BodyMeasureId } from './body.ts'
import type { CutWant } from './cut/cut-row.ts'
import { rowsOf } from './cut/cut-table.ts'
import { easeFor, edgesFor, FREE_MM, holdsUp } from './ease.ts'
import { elasticWaist } from './elastic-waist.ts'
import { hemWants } from './hem-height.ts'
import type { Want } from './want.ts'
import type { Wearer } from './wearer.ts'
import type { BodyTaken, WholeBody } from './whole-body.ts'

/** The body measure a point is set against, where neither a row of ease nor one of the cut names another. */
const AGAINST: Partial<Record<PointId, BodyMeasureId>> = {
  chest: 'bustGirth',
  waist: 'waistGirth',
  hip: 'hipGirth',
  hem: 'hipGirth',
  sweep: 'hipGirth',
  thigh: 'thighGirth',
  knee: 'kneeGirth',
  calf: 'calfGirth',
  underbust: 'underbustGirth',
  bicep: 'upperArmGirth',
  cuff: 'wristGirth',
  neck: 'neckGirth',
  shoulderWidth: 'shoulderWidth',
  sleeveLength: 'armLength',
  napeToWaist: 'backWaistLength',
  inseam: 'insideLegLength',
  torsoLength: 'trunkGirth'
}

/** Over the body, mm; null most: free above; null ideal: nothing is aimed for. */
interface Band {
  least: number
  ideal: number | null
  most: number | null
}

/** What the cut says of each point; 'skip' there. */
export type CutWants = ReadonlyMap<PointId, readonly CutWant[]>
export function cutWants(garment: Garment, cut: Cut): CutWants {
  const wants = new Map<PointId, CutWant[]>()
  for (const { wants: row } of rowsOf(cut, garment.kind))
    for (const [point, want] of Object.entries(row) as [PointId, CutWant][]) wants.set(point, [...(wants.get(point) ?? []), want])
  return wants
}
/** Points where this cut has no seam to judge. */
export const skippedIn = (wants: CutWants): Set<PointId> =>
  new Set([...wants].flatMap(([point, list]) => (list.includes('skip') ? [point] : [])))

export function wantsFromBody(garment: Garment, wearer: Wearer, body: WholeBody, wants: CutWants): Map<PointId, Want> {
  const found = new Map<PointId, Want>()
  for (const point of POINTS_OF[garment.kind]) {
    const want = wants.get(point)?.includes('skip') ? undefined : wantAt(point, garment, wearer, body, wants)
    if (want !== undefined) found.set(point, isHalfTrunk(point, garment) ? halved(want) : want)
  }
  const skipped = skippedIn(wants)
  for (const [point, want] of hemWants(garment, body, knownCut(garment.cut).dressLength)) if (!skipped.has(point)) found.set(point, want)
  return found
}

function wantAt(point: PointId, garment: Garment, wearer: Wearer, body: WholeBody, wants: CutWants): Want | undefined {
  const ease = easeFor(garment.kind).find((row) => row.point === point)
  const said = (wants.get(point) ?? []).filter((want) => want !== 'skip')
  if (ease === undefined && said.length === 0) return undefined
  const against = said.findLast((want) => 'against' in want && want.against !== undefined)
  const named = against !== undefined && 'against' in against ? against.against : undefined
  const measure = measureAt(point, garment, body, named ?? ease?.body ?? AGAINST[point])
  if (measure === undefined) return undefined
  const { id, taken, snugMm, because } = measure
  if (point === 'hem' && id === 'hipGirth' && !reachesHip(garment, body)) return undefined
  // where the cloth itself clings, the elastic adds nothing
  const clings = said.some((want) => 'percent' in want && want.percent[0] < 0)
  const elastic = point === 'waist' && !clings ? elasticWaist(garment, wearer.fit, taken, id) : undefined
  if (elastic !== undefined) return { ...elastic, because: [...elastic.because, ...because] }
  const table = ease === undefined ? undefined : edgesFor(ease, garment.kind, wearer.fit)
  const cut = bandOfCut(said, taken.mm)
  const base = cut === undefined ? table : table === undefined ? cut : together(cut, table, wearer, point, garment.kind)
  const band = withOther(withShifts(base, said), said, garment, taken.mm)
  if (band === undefined) return undefined
  const own = ownEase(wearer, point)
  const moved = own === undefined || band.ideal === null ? 0 : own.mm - band.ideal
  const ideal = band.ideal === null ? null : band.ideal + moved
  const most = band.most === null ? null : band.most + moved
  const least = ideal === null ? band.least : Math.min(band.least, ideal)
  const give = isGirth(point) ? givenBy(garment, said, point, taken.mm, wearer) : NOTHING
  const takes = point === 'sleeveLength' ? takenByShoulder(garment, body) : 0
  const leastMm = Math.max(0, taken.mm + (give.close?.least ?? least - give.mm) - snugMm - takes)
  const idealMm = ideal === null || most === null ? null : taken.mm + (give.close?.ideal ?? ideal - give.mm / 2) - takes
  // a figure that is only worked out knows nothing of the shape: what does not decide is as it is cut, too small perhaps and never too big
  const isUnknown = isOfShape(point, garment.kind, wearer, body) && garment.points.get(point)?.from === 'inferred'
  const mostMm = isUnknown ? null : give.close === undefined ? most : give.close.most
  return {
    least: leastMm,
    ideal: idealMm === null ? null : Math.max(idealMm, leastMm),
    most: mostMm === null ? aboveAll(garment, point, leastMm) : Math.max(taken.mm + mostMm - takes, leastMm),
    ...(mostMm === null ? { freeAbove: true } : {}),
    sdMm: Math.hypot(taken.sdMm, own?.sdMm ?? 0),
    ...(own === undefined ? { tasteSdMm: tasteAt(point, taken.mm) } : {}),
    ...(give.sdMm > 0 ? { leastSdMm: give.sdMm } : {}),
    from: 'body',
    measure: id,
    bodyMm: taken.mm,
    basedOn: taken.basedOn,
    because: [
      {
        code: 'target.body',
        values: { body: id, mm: taken.mm, ease: idealMm === null ? leastMm - taken.mm : idealMm - taken.mm, fit: wearer.fit },
        point
      },
      ...(give.mm > 0 ? [{ code: 'target.gives', values: { mm: give.mm, percent: garment.cloth.stretchPercent }, point }] : []),
      ...because
    ]
  }
}

/**
 * People like things so much closer or looser than the table, mm (sd; from memory), until they say so or the diary has learnt it: around the body
 * 16, less at what is small.
 */
const TASTE_MM = { girth: 16, length: 10 }
const TASTE_SHARE = 0.025
const tasteAt = (point: PointId, bodyMm: number): number =>
  isGirth(point) ? Math.min(TASTE_MM.girth, TASTE_SHARE * bodyMm) : TASTE_MM.length

/** How wide these are is the shape of a leg, a sleeve or a body, not its size. */
const OF_THE_SHAPE: ReadonlySet<PointId> = new Set<PointId>(['knee', 'calf', 'legOpening', 'sweep', 'hem', 'bicep', 'cuff'])
/**
 * So is the shoulder of a knit, which may be dropped, the neck of a blouse, which is worn open, and the waist of what hangs from the shoulders, unless
 * it is wanted close.
 */
const isOfShape = (point: PointId, kind: GarmentKind, { fit }: Wearer, { sizes }: WholeBody): boolean =>
  OF_THE_SHAPE.has(point) ||
  (point === 'shoulderWidth' && KNITS.includes(kind)) ||
  (point === 'neck' && sizes === 'women') ||
  (point === 'waist' && SHAPE[kind] === 'upper' && fit !== 'close')

/** Free above: further up than the garment itself, however wide it is. */
const aboveAll = ({ points }: Garment, point: PointId, leastMm: number): number => Math.max(leastMm, points.get(point)?.mm ?? 0) + FREE_MM

/** A trunk told shorter than this is told from shoulder to fork, half of the way round (the whole is 1,400 and more on adults; ANSUR II). */
const HALF_TRUNK_MM = 1100
const isHalfTrunk = (point: PointId, garment: Garment): boolean => {
  const told = garment.points.get(point)
  return point === 'torsoLength' && isTold(told) && told.mm < HALF_TRUNK_MM
}
const halved = (want: Want): Want => ({
  ...want,
  least: want.least / 2,
  ideal: want.ideal === null ? null : want.ideal / 2,
  most: want.most / 2,
  sdMm: want.sdMm / 2
})

interface Measure {
  id: BodyMeasureId
  taken: BodyTaken
  snugMm: number
  because: Want['because']
}
/** What the wearer measures where the point lies: a band by its rise; else the named measure, or what stands in for it. */
function measureAt(point: PointId, garment: Garment, body: WholeBody, id: BodyMeasureId | undefined): Measure | undefined {
  const atWaist = point === 'waist' && (id === 'waistbandGirth' || id === 'waistGirth')
  const band = atWaist && SHAPE[garment.kind] === 'legs' ? girthAtBand(garment, body) : undefined
  if (band !== undefined) return { id: 'waistbandGirth', taken: band, snugMm: band.snugMm, because: band.because }
  // a skirt is worn at the waist, or where its wearer is used to wear a band (hungAt); so are a child's legs
  const told = body.get('waistbandGirth')
  const instead =
    atWaist && (garment.kind === 'skirt' || body.sizes === 'children') && (told === undefined || told.basedOn.length > 0)
      ? 'waistGirth'
      : id
  const taken = instead === undefined ? undefined : body.get(instead)
  if (taken === undefined || instead === undefined) return undefined
  return atWaist && garment.kind === 'skirt' ? hungAt(instead, taken, garment, body) : { id: instead, taken, snugMm: 0, because: [] }
}

/**
 * A skirt hangs at the waist, or where its wearer is used to wear a band. Too small for there, it rides up to the natural waist and sits
 * there as well, unless it is cut low (common practice).
 */
function hungAt(id: BodyMeasureId, taken: BodyTaken, garment: Garment, body: WholeBody): Measure {
  const natural = body.get('waistGirth')
  const ridesUp = natural !== undefined && !isCut(garment.cut, 'rise', 'low', 'ultra-low')
  return {
    id,
    taken: { ...taken, sdMm: Math.hypot(taken.sdMm, skirtBandSd(body)) },
    snugMm: ridesUp ? Math.max(0, taken.mm - natural.mm) : 0,
    because: []
  }
}

/** The band of the cut over a body measure: free beats set; of several the most particular, which stands last. */
function bandOfCut(said: readonly Exclude<CutWant, 'skip'>[], mm: number): Band | undefined {
  const isFree = said.findLast((want) => 'free' in want)
  if (isFree !== undefined && 'free' in isFree) return { least: isFree.free ?? -mm, ideal: null, most: null }
  const set = said.findLast((want) => 'set' in want || 'percent' in want || 'share' in want)
  if (set === undefined) return undefined
  const [scale, off, [least, ideal, most]] =
    'set' in set
      ? [1, 0, set.set]
      : 'percent' in set
        ? [mm / 100, 0, set.percent]
        : 'share' in set
          ? [mm, mm, set.share]
          : [1, 0, [0, null, null] as const]
  const over = (edge: number | null) => (edge === null ? null : scale * edge - off)
  return { least: scale * least - off, ideal: over(ideal), most: over(most) }
}

/**
 * As it is cut, the cut's band. A wish takes the table's where the cut touches; what the cut leaves free, lengths, and the band that trousers and
 * skirts hang from, stay the cut's.
 */
function together(cut: Band, table: Band, { fit }: Wearer, point: PointId, kind: GarmentKind): Band {
  if (fit === 'as-cut' || (!isGirth(point) && point !== 'shoulderWidth') || holdsUp(point, kind)) return cut
  return {
    least: Math.min(cut.least, table.least),
    ideal: cut.most === null ? null : table.ideal,
    most: cut.most === null ? null : table.most
  }
}

function withShifts(band: Band | undefined, said: readonly Exclude<CutWant, 'skip'>[]): Band | undefined {
  let shifted = band
  for (const want of said) {
    if (!('shift' in want) || shifted === undefined) continue
    const [least, ideal, most] = want.shift
    shifted = {
      least: shifted.least + least,
      ideal: shifted.ideal === null || most === null ? null : shifted.ideal + ideal,
      most: shifted.most === null || most === null ? null : shifted.most + most
    }
  }
  return shifted
}

/** The second test of a tailored waist: so much under the garment's own chest will do as well, unless a more particular row sets the band anew. */
function withOther(band: Band | undefined, said: readonly Exclude<CutWant, 'skip'>[], garment: Garment, mm: number): Band | undefined {
  const other = said.findLast((want) => 'or' in want || 'set' in want)
  if (band === undefined || other === undefined || !('or' in other)) return band
  const above = garment.points.get(other.under)
  if (!isTold(above)) return band
  const [least, , most] = other.or
  return {
    ...band,
    least: Math.min(band.least, above.mm + least - mm),
    most: band.most === null || most === null ? null : Math.max(band.most, above.mm + most - mm)
  }
}

const ownEase = (wearer: Wearer, point: PointId) => {
  const stated = wearer.ease?.[point]
  return stated !== undefined && Number.isFinite(stated.mm) && Math.abs(stated.mm) <= LONGEST_MM ? stated : undefined
}

interface Give {
  /** What the cloth may give, mm. */
  mm: number
  sdMm: number
  /** A close cut of cloth that stretches has edges of its own, over the body, mm. */
  close?: { least: number; ideal: number; most: number | null }
}
const NOTHING: Give = { mm: 0, sdMm: 0 }
/** Cuts whose own band lies so near the body that only cloth that gives is cut so, mm over the body at its ideal. */
const CLOSE_MM = 25

function givenBy(garment: Garment, said: readonly Exclude<CutWant, 'skip'>[], point: PointId, mm: number, { fit }: Wearer): Give {
  const share = stretchAt(garment.cloth, point)
  if (share <= 0) return NOTHING
  const give: Give = { mm: share * mm, sdMm: (garment.cloth.stretch.usableSd / Math.max(garment.cloth.stretch.usable, 1e-9)) * share * mm }
  // rows in % are of such cloth already
  if (said.some((want) => 'percent' in want)) return { mm: 0, sdMm: give.sdMm }
  const edges = garment.cloth.stretch.close[point]
  const set = said.findLast((want) => 'set' in want)
  const isClose =
    set !== undefined && 'set' in set && set.set[1] !== null && set.set[1] <= CLOSE_MM && fit !== 'loose' && fit !== 'oversized'
  if (edges === undefined || !isClose || point === 'waist') return give
  const [least, ideal, most] = edges
  return { ...give, close: { least: (least / 100) * mm, ideal: (ideal / 100) * mm, most: most === null ? null : (most / 100) * mm } }
}

/** A shoulder this much wider than the body's is usual: past it, half of what it gains the sleeve loses (common practice). */
const SHOULDER_MM = 20
function takenByShoulder(garment: Garment, body: WholeBody): number {
  const shoulder = garment.points.get('shoulderWidth')
  const own = body.get('shoulderWidth')
  return isTold(shoulder) && own !== undefined ? Math.max(0, shoulder.mm - own.mm - SHOULDER_MM) / 2 : 0
}

/** Does a top's bottom edge come down to the hip? Not told: shirts, jackets, coats and knits do (common practice). */
const HIP_BELOW_WAIST_MM = 130
function reachesHip(garment: Garment, body: WholeBody): boolean {
  const length = garment.points.get('bodyLength')
  const back = body.get('backWaistLength')
  return length === undefined || back === undefined || length.mm >= back.mm + HIP_BELOW_WAIST_MM
}
