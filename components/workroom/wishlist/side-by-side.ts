/** Two or three kept listings at the same points, on one stretch of tape each. Pure. */
import { POINTS, POINTS_OF, type PointId } from '../../../core/ids/points.ts'
import type { Units } from '../../../core/length.ts'
import type { BandShown, GapShown } from '../../../core/reckon.ts'
import { capped } from '../../../core/words/say.ts'
import { tapeInput } from '../../tape/tape.tsx'
import { type Stretch, stretchOf } from '../../tape/tape-geometry.ts'
import type { PointShown } from '../../tape/tape-words.ts'
import type { ListingShown } from '../shown.ts'
import { planOf } from './listing-order.ts'

export const MOST_COMPARED = 3

export interface TapeShown {
  shown: PointShown
  /** Where the advised plan brings it; null: it stays. */
  afterMm: number | null
}
export interface PointCompared {
  point: PointId
  /** What is wanted, where all want the same; null: each tape has its own. */
  band: BandShown | null
  stretch: Stretch
  /** By listing, in their order. */
  tapes: (TapeShown | Absent)[]
}
/** Neither told nor worked out, or no such point on a garment of this kind. */
export type Absent = 'untold' | 'no-such-point'
export const isThere = (tape: TapeShown | Absent): tape is TapeShown => typeof tape !== 'string'

/** A move that shows. */
const MOVED_MM = 0.5

/** The points that at least one of them is judged at, in the order of points. */
export function sideBySide(listings: readonly ListingShown[], units: Units): PointCompared[] {
  return POINTS.flatMap((point): PointCompared[] => {
    const tapes = listings.map((listing) => tapeAt(listing, point))
    const there = tapes.filter(isThere)
    const bands = there.map(({ shown }) => shown.band)
    if (bands.every((band) => band === null)) return []
    const [first = null] = bands
    const isShared = bands.every((band) => same(band, first))
    const inputs = there.map(({ shown, afterMm }) => tapeInput(shown, afterMm))
    return [{ point, band: isShared ? first : null, stretch: stretchOf(inputs, units), tapes }]
  })
}

function tapeAt({ now, kind }: ListingShown, point: PointId): TapeShown | Absent {
  const gap: GapShown | undefined = now?.gaps.find((one) => one.point === point)
  if (gap === undefined) return kind !== null && !POINTS_OF[kind].includes(point) ? 'no-such-point' : 'untold'
  const after = planOf({ now })?.after.find((one) => one.point === point)?.mm
  return { shown: gap, afterMm: after === undefined || Math.abs(after - gap.garmentMm) < MOVED_MM ? null : after }
}

const same = (a: BandShown | null, b: BandShown | null): boolean =>
  a === b || (a !== null && b !== null && a.least === b.least && a.ideal === b.ideal && a.most === b.most)

/** A short name for each: the first words of its title that the others' titles have not. Titles that are alike get none, ''. */
export function shortNames(titles: readonly string[]): string[] {
  const words = titles.map((title) => title.split(/[^\p{L}\p{N}’'-]+/u).filter(Boolean))
  const lower = words.map((its) => new Set(its.map((word) => word.toLowerCase())))
  return words.map((its, i) => {
    const own = its.filter((word) => !lower.some((other, j) => j !== i && other.has(word.toLowerCase())))
    return capped(own.slice(0, 2).join(' ').slice(0, LONGEST_NAME))
  })
}
const LONGEST_NAME = 24
