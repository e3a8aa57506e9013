/**
 * Does it come right, by simple published limits alone? Each point by itself, no plan and no solver: a second judge beside the product's own engine.
 * Sources: waist in 75 in all, more is another size (a tailoring course's limit); out what the seams hold less 6 kept (Trousers, 3/8 in kept each
 * side); hips 38 in, thigh 76 in; legs up freely, down by the hem less 10; sides in 100, jackets 38; shirts' sleeves up 45, lined 38; sleeves down by
 * the hem less 12; shoulders and necks hardly (13). The rest from memory.
 */
import type { Kind } from './makers.ts'
import type { Want } from './taste.ts'

interface Judged {
  kind: Kind
  garment: Readonly<Record<string, number>>
  wants: Readonly<Record<string, Want>>
  made: Readonly<Record<string, number | boolean>>
}
interface Limit {
  less: number
  more: number
}
const KEPT = 6

/** How far each point can be brought, smaller and larger. */
function limitOf(point: string, kind: Kind, made: Judged['made']): Limit {
  const seams = Math.max(0, Number(made.seamAllowanceMm ?? 0) - KEPT)
  const sides = made.felledSeams === true ? 0 : 4 * seams
  const outlet = 2 * Math.max(0, Number(made.outletMm ?? 0) - KEPT)
  const hem = Math.max(0, Number(made.hemDepthMm ?? 0) - 10)
  const knit = kind === 'knit-top' || kind === 'jumper'
  const limits: Record<string, Limit> = {
    waist: { less: kind === 'jeans' ? 50 : kind === 'jacket' ? 76 : 75, more: Math.max(outlet, sides) },
    hip: { less: kind === 'dress' || kind === 'skirt' ? 80 : 0, more: kind === 'dress' || kind === 'skirt' ? sides : 0 },
    thigh: { less: 76, more: sides },
    knee: { less: 76, more: sides },
    calf: { less: 76, more: sides },
    inseam: { less: 400, more: hem },
    chest: { less: kind === 'jacket' ? 38 : knit ? 60 : 100, more: knit ? 0 : sides },
    hem: { less: kind === 'jacket' ? 38 : 80, more: knit ? 0 : sides },
    bicep: { less: 50, more: 0 },
    cuff: { less: 50, more: 0 },
    neck: { less: 13, more: 0 },
    sleeveLength: {
      less: kind === 'jacket' ? 38 : knit ? 150 : 45,
      more: kind === 'jacket' ? Math.max(0, Number(made.hemDepthMm ?? 0) - 12) : 3
    }
  }
  return limits[point] ?? { less: 0, more: 0 }
}

/** Is every point within its wants, as it is or brought there within the limits? */
export const simplyWorks = ({ kind, garment, wants, made }: Judged): boolean =>
  Object.entries(wants).every(([point, { least, most }]) => {
    const mm = garment[point] ?? 0
    const { less, more } = limitOf(point, kind, made)
    return mm > most ? mm - most <= less : mm < least ? least - mm <= more : true
  })
