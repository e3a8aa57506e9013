/** Pleats and gathers at the waist. MEM from memory, CP common practice, no source. */
import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { isPleated } from './as-cut.ts'
import { limit, type Row } from './row.ts'

/** The front pleats of trousers, a pair or two. */
const frontPleats = ({ kind, cut }: Garment): boolean => kind !== 'skirt' && isCut(cut, 'pleats', 'front')
const hasPleats = (garment: Garment): boolean => (garment.kind === 'skirt' ? isPleated(garment) : frontPleats(garment))

export const pleats: Row[] = [
  {
    id: 'pleat-reset',
    direction: 'less',
    kinds: ['skirt', 'trousers', 'shorts'],
    there: hasPleats,
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: -1 },
        // 6 a side of each pleat: a skirt has a dozen or more, trousers two
        capMm: garment.kind === 'skirt' ? 80 : 24,
        because: limit('pleats-deeper', { side: 6 }),
        seams: [{ seam: 'waistband', mmPerOffset: 1 }]
      }
    ],
    opens: ['waistband'],
    level: 3,
    minutes: (garment) => [45 + 3 * (garment.kind === 'skirt' ? 16 : 2), 0],
    source: 'LTA (total ÷ pleats ÷ 2); 6 a side and 80 in all, 45 min and 3 a pleat CP'
  },
  {
    id: 'pleat-release',
    direction: 'more',
    kinds: ['trousers', 'shorts', 'skirt'],
    there: (garment) => hasPleats(garment) && !isCut(garment.cut, 'silhouette', 'kilt'),
    lines: () => [
      {
        point: 'waist',
        effects: { waist: 1, hip: 1 },
        capMm: 40,
        softMm: 20,
        because: limit('pleats-open'),
        seams: [{ seam: 'dart', mmPerOffset: 2, outward: true }]
      }
    ],
    opens: ['waistband'],
    level: 2,
    minutes: [30, 0],
    outward: true,
    penalties: ['fade'],
    source: 'PINKTH (worked): 20–40 a pair; the old folds show CP'
  },
  {
    id: 'gathers-reset',
    direction: 'less',
    kinds: ['skirt'],
    there: ({ cut }) => isCut(cut, 'silhouette', 'gathered', 'puffball') && !isCut(cut, 'closing', 'elastic', 'drawstring'),
    lines: () => [
      {
        point: 'waist',
        effects: { waist: -1 },
        capMm: 150,
        because: limit('gathers-reset'),
        seams: [{ seam: 'waistband', mmPerOffset: 1 }]
      }
    ],
    opens: ['waistband'],
    level: 3,
    minutes: [75, 3],
    source: 'CP: any amount, the band shortened at the back; 150 before the gathers bunch'
  }
]
