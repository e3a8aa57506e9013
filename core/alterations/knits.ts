/** What is knitted: taken in by overlocker, its ribs taken off and joined on again. MEM from memory, CP common practice, no source. */
import type { Garment } from '../garment/garment-as-worn.ts'
import { KNITS } from '../ids/kinds.ts'
import { isKnitted, isRibbed } from './as-cut.ts'
import { sides } from './bodies.ts'
import { limit, type Row } from './row.ts'

/** Jersey and sweatshirts are sewn; knitted stitches run. */
const knitLevel = (garment: Garment): number => (isKnitted(garment) ? 4 : 3)
const ribMinutes = (garment: Garment): [number, number] => (isKnitted(garment) ? [120, 4] : [60, 2])

export const knits: Row[] = [
  {
    id: 'knit-take-in',
    direction: 'less',
    kinds: KNITS,
    there: isRibbed,
    lines: (garment) => sides(garment, -1, { capMm: 60, because: limit('knit-in') }),
    level: knitLevel,
    minutes: [50, 3],
    source: 'CP: 60, not through a rib or a pattern'
  },
  {
    id: 'rib-rejoin',
    direction: 'less',
    kinds: KNITS,
    there: isRibbed,
    lines: (garment) => [
      {
        point: 'sleeveLength',
        effects: { sleeveLength: -1, sleeveFromCentreBack: -1, sleeveUnderarm: -1 },
        capMm: Math.max(0, (garment.points.get('sleeveLength')?.mm ?? 600) - 50),
        because: limit('sleeve-left', { left: 50 }),
        seams: [{ seam: 'cuff', mmPerOffset: 1 }]
      }
    ],
    level: knitLevel,
    minutes: ribMinutes,
    oneOf: 'sleeve-length',
    source: 'TONGAM, MAILTRIB, KINKED (cuff off, quartered, joined on; unravelled and grafted); minutes MEM'
  },
  {
    id: 'rib-rejoin-body',
    direction: 'less',
    kinds: KNITS,
    there: isRibbed,
    lines: (garment) => [
      {
        point: 'bodyLength',
        effects: { bodyLength: -1 },
        capMm: Math.max(0, (garment.points.get('bodyLength')?.mm ?? 650) - 350),
        because: limit('body-left', { left: 350 }),
        seams: [{ seam: 'hem', mmPerOffset: 1 }]
      }
    ],
    level: knitLevel,
    minutes: ribMinutes,
    oneOf: 'body-length',
    source: 'TONGAM, MAILTRIB, KINKED (cuff off, quartered, joined on; unravelled and grafted); minutes MEM'
  }
]
