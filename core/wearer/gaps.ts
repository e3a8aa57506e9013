/** Where the garment is beside what is wanted, on the tape of today: growth and shrinkage are taken into the band. */
import type { WornChange } from '../garment/cloth.ts'
import { type Garment, isTold, type PointTaken } from '../garment/garment-as-worn.ts'
import type { PointId } from '../ids/points.ts'
import type { Saying } from '../words/reason.ts'
import type { Target, Want } from './want.ts'

export interface Band {
  least: number
  ideal: number
  most: number
}

export interface Gap {
  point: PointId
  garmentMm: number
  from: PointTaken['from']
  sdMm: number
  /** So often was it measured; not told: once. */
  readings?: number
  /** What is wanted, on today's tape; null: not judged. */
  band: Band | null
  /** What a plan aims for, mm: the ideal, or where that is only worked out the figure itself as far as the band allows. */
  aimMm: number
  /** How much further out the edges lie than wanted, because the band was worked out and not told, mm: the margin of an edge. */
  edgeMarginMm: number
  /** How unsure the band itself is (the body's sd, the person's taste, the cloth's), mm. */
  bandSdMm: number
  /** How unsure its lower edge is beside that, mm (sd). */
  leastSdMm?: number
  /** + too big, − too small, 0 inside. */
  gapMm: number
  /** May it decide? Only a told figure against a band may. */
  judged: boolean
  /** Below this the body cannot pass or sit, on today's tape. */
  bound?: number
  want?: Want
  because: Saying[]
}

/** A band worked out from other body measures decides only where it is surely missed: its edges lie this many sd further out. */
const SURE_SD = 1.645
/** But never so far that a fault of centimetres is silent, mm; the chance carries the rest of the doubt. */
const MOST_MARGIN_MM = 15

/** What will measure so when worn measures so on today's tape. */
const onTape = (mm: number, { growMm, shrink }: WornChange): number => (mm - growMm) / (1 - shrink)

/** The edges on today's tape, the figure that is set against them (of two sides the worse), and how far it lies outside. */
export function gapAt(garment: Garment, point: PointId, told: PointTaken, want: Want) {
  const worn = garment.worn(point)
  const margin = want.basedOn.length > 0 ? Math.min(MOST_MARGIN_MM, SURE_SD * want.sdMm) : 0
  const least = onTape(want.least, worn) - margin
  const most = onTape(want.most, worn) + margin
  const mm = worseSide(told, least, most)
  return { worn, margin, least, most, mm, gapMm: overshoot(mm, least, most) }
}

export const gapsBetween = (garment: Garment, target: Target): Gap[] =>
  Array.from(garment.points, ([point, told]) => {
    const want = target.get(point)
    const gap = want === undefined ? unwanted(point, told) : besideWant(garment, point, told, want)
    if (told.readings !== undefined) gap.readings = told.readings
    return gap
  })

/** The figure alone: nothing is wanted there. */
const unwanted = (point: PointId, { mm, from, sdMm }: PointTaken): Gap => ({
  point,
  garmentMm: mm,
  from,
  sdMm,
  band: null,
  aimMm: mm,
  edgeMarginMm: 0,
  bandSdMm: 0,
  gapMm: 0,
  judged: false,
  because: []
})

function besideWant(garment: Garment, point: PointId, told: PointTaken, want: Want): Gap {
  const { worn, margin, least, most, mm, gapMm } = gapAt(garment, point, told, want)
  const ideal = clamp(want.ideal === null ? mm : onTape(want.ideal, worn), least, most)
  const because = [...want.because, ...worn.because]
  if (margin > 0) because.push({ code: 'target.worked-out', values: { body: want.basedOn[0] ?? 'stature' }, point })
  const gap: Gap = {
    point,
    garmentMm: mm,
    from: told.from,
    sdMm: told.sdMm,
    band: { least, ideal, most },
    aimMm: want.basedOn.length > 0 ? clamp(mm, least, most) : ideal,
    edgeMarginMm: margin,
    bandSdMm: Math.hypot(want.sdMm, want.tasteSdMm ?? 0, worn.growSdMm, worn.shrinkSd * mm),
    gapMm,
    judged: isTold(told),
    want,
    because
  }
  if (want.leastSdMm !== undefined) gap.leastSdMm = want.leastSdMm
  if (want.bound !== undefined) gap.bound = onTape(want.bound, worn)
  return gap
}

/** Where left and right differ, the side that is further out of the band on today's tape; the other follows it. */
function worseSide({ mm, sides }: PointTaken, least: number, most: number): number {
  if (sides === undefined) return mm
  const out = (side: number): number => Math.abs(overshoot(side, least, most))
  if (out(sides.left) === out(sides.right)) return out(sides.left) === 0 ? mm : sides.left
  return out(sides.left) > out(sides.right) ? sides.left : sides.right
}

/** + above most, − below least, 0 inside. */
export const overshoot = (mm: number, least: number, most: number): number => (mm > most ? mm - most : mm < least ? mm - least : 0)
const clamp = (mm: number, least: number, most: number): number => Math.min(Math.max(mm, least), most)
