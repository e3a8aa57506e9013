/** What a maker’s chart of bodies makes likely of the garment: the body that the size is cut for, and the room that such a kind usually has. */
import type { GarmentKind } from '../../ids/kinds.ts'
import { POINTS_OF, type PointId } from '../../ids/points.ts'
import type { BodyMeasureId } from '../../wearer/body.ts'
import { type Room, usualRoom } from '../../wearer/usual-room.ts'
import type { ChartRow } from '../reading.ts'
import type { LabelMeasure } from './label-evidence.ts'

type Ease = Partial<Record<GarmentKind, Room>>
/** Room at the waist: a band lies close, what hangs from the shoulders does not (from memory). */
const WAIST_EASE: Ease = {
  trousers: { mm: 25, sd: 30 },
  jeans: { mm: 30, sd: 35 },
  shorts: { mm: 25, sd: 35 },
  skirt: { mm: 20, sd: 30 },
  dress: { mm: 70, sd: 60 },
  jumpsuit: { mm: 80, sd: 60 },
  shirt: { mm: 170, sd: 80 },
  'knit-top': { mm: 110, sd: 80 },
  jumper: { mm: 160, sd: 90 },
  jacket: { mm: 140, sd: 60 },
  coat: { mm: 220, sd: 90 },
  waistcoat: { mm: 110, sd: 60 }
}
/** Room at the hip (from memory). */
const HIP_EASE: Ease = {
  trousers: { mm: 70, sd: 45 },
  jeans: { mm: 40, sd: 45 },
  shorts: { mm: 80, sd: 55 },
  skirt: { mm: 60, sd: 70 },
  dress: { mm: 100, sd: 80 },
  jumpsuit: { mm: 90, sd: 70 },
  coat: { mm: 180, sd: 90 }
}
/** Trousers end about where the leg does, a heel’s breadth off (from memory). */
const LEG_EASE: Ease = { trousers: { mm: 0, sd: 40 }, jeans: { mm: 0, sd: 40 }, jumpsuit: { mm: -20, sd: 45 } }

const ROOM: Partial<Record<BodyMeasureId, { point: PointId; easeOf: (kind: GarmentKind) => Room | undefined }>> = {
  bustGirth: { point: 'chest', easeOf: (kind) => usualRoom('chest', kind) },
  waistGirth: { point: 'waist', easeOf: (kind) => WAIST_EASE[kind] },
  hipGirth: { point: 'hip', easeOf: (kind) => HIP_EASE[kind] },
  insideLegLength: { point: 'inseam', easeOf: (kind) => LEG_EASE[kind] }
}
/** Charts say a body to a size, not a garment to a figure. */
const LEAST_SD = 30

/** Those of the size for sale: that of a label, or all where the chart is of one size alone; none where nobody says which. */
export function rowsForSale(rows: readonly ChartRow[], labels: readonly string[]): ChartRow[] {
  const sizes = new Set(rows.flatMap(({ size }) => size ?? []))
  const isNamed = (size: string) => labels.some((label) => label === size || label.endsWith(` ${size}`) || size.endsWith(` ${label}`))
  const named = [...sizes].filter(isNamed)
  const chosen = named.length > 0 ? named : sizes.size === 1 && labels.length === 0 ? [...sizes] : []
  return rows.filter(({ size }) => size === null || (chosen.length === 1 && size === chosen[0]))
}

/** One measure a point, by the first row that tells it. */
export function chartEvidence(rows: readonly ChartRow[], kind: GarmentKind): LabelMeasure[] {
  const found: LabelMeasure[] = []
  for (const { body, lowMm, highMm } of rows) {
    const room = ROOM[body]
    const ease = room?.easeOf(kind)
    if (room === undefined || ease === undefined || !POINTS_OF[kind].includes(room.point)) continue
    if (found.some(({ point }) => point === room.point)) continue
    const sdMm = Math.max(LEAST_SD, Math.hypot((highMm - lowMm) / Math.sqrt(12), ease.sd))
    found.push({ point: room.point, mm: (lowMm + highMm) / 2 + ease.mm, sdMm })
  }
  return found
}
