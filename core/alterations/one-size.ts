/**
 * About one size in all: what may be changed of a girth over all seams together, whatever each seam would hold. A row whose own limit is wider
 * keeps it where it stands alone.
 *
 * Sources: TXB1295 an extension guide on buying to alter (one size), MULLEN a tailor on jackets (1.5–2 in overall), TSM a suit maker (2 in at
 * the sides, not over two sizes); where none is named, common practice.
 */
import type { Garment } from '../garment/garment-as-worn.ts'
import { type GarmentKind, OVER_A_SHIRT } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { SeamId } from '../ids/seams.ts'
import { type Line, limit, type Row, type SharedLimit } from './row.ts'

const GIRTHS = ['chest', 'waist', 'hip'] as const
const UPPER: ReadonlySet<GarmentKind> = new Set(OVER_A_SHIRT)
const WHOLE: ReadonlySet<GarmentKind> = new Set<GarmentKind>(['dress', 'skirt', 'jumpsuit', ...OVER_A_SHIRT])
/** Elastic, straps, ties and bands are no seams of the body: they may go further. */
const SEAMS: ReadonlySet<SeamId> = new Set<SeamId>(['side', 'centre-back', 'seat', 'dart', 'front-edge', 'panel'])
/** What comes along by less than this does not count. */
const COUNTED = 0.25

/** How much of a girth changes in all, mm around. */
export function oneSizeMm({ kind, made }: Garment, girth: PointId): number {
  if (UPPER.has(kind) && made.tailored) return 50
  if (WHOLE.has(kind) && made.lined) return 60
  return kind === 'shirt' && girth === 'waist' ? 100 : 80
}

const shareOf = ({ effects, seams }: Line, girth: PointId): number => {
  const share = Math.abs(effects[girth] ?? 0)
  return share >= COUNTED && seams.some(({ seam }) => SEAMS.has(seam)) ? share : 0
}

/** The girths that more than one row takes in, or lets out: only there is anything shared. `lines` are those of each row on this garment. */
export function sharedGirths(rows: readonly Row[], lines: readonly (readonly Line[])[]): readonly PointId[] {
  return GIRTHS.filter((girth) => {
    const count = { less: 0, more: 0 }
    for (const [n, { direction }] of rows.entries()) if (lines[n]?.some((line) => shareOf(line, girth) > 0)) count[direction]++
    return count.less > 1 || count.more > 1
  })
}

export function oneSize(garment: Garment, lines: readonly Line[], girths: readonly PointId[]): SharedLimit[] {
  return girths.flatMap((girth): SharedLimit[] => {
    // most rows touch none of these girths
    if (lines.every(({ effects }) => effects[girth] === undefined)) return []
    const shares = lines.map((line) => shareOf(line, girth))
    const alone = lines.reduce((sum, { capMm }, k) => sum + (shares[k] ?? 0) * capMm, 0)
    if (alone <= 0) return []
    const budgetMm = oneSizeMm(garment, girth)
    const scale = Math.min(1, budgetMm / alone)
    return [
      { group: `one-size-${girth}`, shares: shares.map((share) => share * scale), budgetMm, because: limit('one-size', { most: budgetMm }) }
    ]
  })
}
