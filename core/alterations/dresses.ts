/** Bodices of dresses that are boned, strapless or laced. MEM from memory, CP common practice, no source. */
import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import { closedBy, isBoned } from './as-cut.ts'
import { type Line, limit, type Row } from './row.ts'

const BODICES: GarmentKind[] = ['dress', 'shirt']
const isStrapless = ({ cut }: Garment): boolean => isCut(cut, 'silhouette', 'strapless', 'corset')
/** A back that opens with a zip can be laced instead. */
const canBeLaced = (garment: Garment): boolean => closedBy(garment, 'back-zip') && (isBoned(garment) || isStrapless(garment))
const laced = (sign: 1 | -1): Line => ({
  point: 'chest',
  effects: { chest: sign, waist: sign },
  capMm: 60,
  because: limit('lacing'),
  seams: [{ seam: 'centre-back', mmPerOffset: 2, outward: sign > 0 }]
})

export const dresses: Row[] = [
  {
    id: 'bodice-boned-in',
    direction: 'less',
    kinds: BODICES,
    there: isBoned,
    lines: () => {
      const how = { capMm: 50, softMm: 38, because: limit('bones'), seams: [{ seam: 'side', mmPerOffset: 4 }] satisfies Line['seams'] }
      return [
        { point: 'chest', effects: { chest: -1 }, ...how },
        { point: 'waist', effects: { waist: -1 }, ...how }
      ]
    },
    level: 5,
    minutes: [180, 30],
    source: 'STRAPLESS (1/2–3/4 in a side blends, over 1 in not), DRESSNO9 (bones out and in again, 1–4 h)'
  },
  {
    id: 'strapless-draw',
    direction: 'less',
    kinds: ['dress'],
    there: isStrapless,
    lines: () => [
      {
        point: 'chest',
        effects: { chest: -1 },
        capMm: 40,
        softMm: 20,
        because: limit('top-edge'),
        seams: [{ seam: 'neckline', mmPerOffset: 1 }]
      }
    ],
    level: 2,
    minutes: [35, 0],
    source: 'CP: elastic in the top edge, tape that grips: 20–40'
  },
  {
    id: 'lace-back',
    direction: 'less',
    kinds: ['dress'],
    there: canBeLaced,
    lines: () => [laced(-1)],
    level: 4,
    minutes: [180, 0],
    penalties: ['lacing'],
    source: 'CP: a rescue that shows, 60 either way'
  },
  {
    id: 'lace-back',
    direction: 'more',
    kinds: ['dress'],
    there: canBeLaced,
    lines: () => [laced(1)],
    level: 4,
    minutes: [180, 0],
    penalties: ['lacing'],
    source: 'CP: a rescue that shows, 60 either way'
  }
]
