/** Sleeves and cuffs. MEM from memory, CP common practice, no source. */

import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { OUTER, SLEEVED } from '../ids/kinds.ts'
import type { Saying } from '../words/reason.ts'
import { hasShoulderSeam, isRibbed } from './as-cut.ts'
import { type Effects, limit, type Row } from './row.ts'

const sleeve = (sign: number): Effects => ({ sleeveLength: sign, sleeveFromCentreBack: sign, sleeveUnderarm: sign })
const sleeveMm = (garment: Garment): number => garment.points.get('sleeveLength')?.mm ?? 600
/** Shirts have cuffs, and what is cut like one. */
const hasCuffs = ({ kind, cut }: Garment): boolean => kind === 'shirt' || isCut(cut, 'silhouette', 'shirt-dress', 'blouse', 'boiler')
/** Tailored sleeves are lined, and where the seller says that there is no lining they are hemmed as any other. */
const isLinedSleeve = ({ made, told }: Garment): boolean => made.lined || (made.tailored && told.lined !== false)
const softSleeve = (garment: Garment): Saying | undefined =>
  isLinedSleeve(garment) ? limit('lined-sleeve') : hasCuffs(garment) ? limit('cuff-first') : zippedCuffs(garment)
/** Zips and buttonholes at the cuff stay where they are. */
const zippedCuffs = ({ cut }: Garment): Saying | undefined => (isCut(cut, 'layer', 'biker') ? limit('zipped-cuffs') : undefined)
/** A denim jacket's sleeve ends in a cuff that is sewn on: there is no hem to let down. */
const noHemToLetDown = (garment: Garment): Saying | undefined =>
  hasCuffs(garment) || isCut(garment.cut, 'layer', 'denim') ? limit('cuff-no-hem') : zippedCuffs(garment)
const notLined = (garment: Garment): Saying | undefined =>
  !isLinedSleeve(garment) ? limit('not-lined') : garment.made.workingCuffButtons ? limit('working-buttons') : zippedCuffs(garment)
/** Without a seam at the shoulder the sleeve ends at the cuff alone. */
const noHead = (garment: Garment): Saying | undefined => (hasShoulderSeam(garment) ? undefined : limit('no-shoulder-seam'))
const isLeather = ({ cloth }: Garment): boolean => cloth.structure === 'leather'
/** Down: a coat has more turned up; told of the hem, all but 12 of it. */
const linedDown = ({ kind, told }: Garment): number => (told.hemDepthMm === undefined ? (kind === 'coat' ? 25 : 19) : told.hemDepthMm - 12)

export const sleeves: Row[] = [
  {
    id: 'sleeve-shorten-cuff',
    direction: 'less',
    kinds: ['shirt', 'dress', 'jumpsuit'],
    there: hasCuffs,
    lines: () => [
      { point: 'sleeveLength', effects: sleeve(-1), capMm: 45, because: limit('placket'), seams: [{ seam: 'cuff', mmPerOffset: 1 }] }
    ],
    opens: ['cuff'],
    level: 3,
    minutes: [45, 3],
    oneOf: 'sleeve-length',
    source: 'GENIE (4 cm worked); 45: the placket shortens with it and keeps 90 CP'
  },
  {
    id: 'sleeve-shorten-hem',
    direction: 'less',
    kinds: ['knit-top', 'jumper', 'dress', 'jumpsuit', 'coat', 'jacket'],
    there: (garment) => !isRibbed(garment),
    unless: softSleeve,
    lines: (garment) => [
      {
        point: 'sleeveLength',
        effects: sleeve(-1),
        capMm: Math.max(0, sleeveMm(garment) - 50),
        because: limit('sleeve-left', { left: 50 }),
        seams: [{ seam: 'hem', mmPerOffset: 1 }]
      }
    ],
    opens: ['cuff'],
    level: 2,
    minutes: [35, 2],
    oneOf: 'sleeve-length',
    source: 'TONGAM; CP'
  },
  {
    id: 'sleeve-shorten-lined',
    direction: 'less',
    kinds: OUTER,
    unless: notLined,
    lines: (garment) => [
      {
        point: 'sleeveLength',
        effects: sleeve(-1),
        capMm: isLeather(garment) ? 40 : 38,
        softMm: 25,
        because: limit('sham-buttons', { still: 13 }),
        seams: [{ seam: 'hem', mmPerOffset: 1 }]
      }
    ],
    opens: ['lining', 'cuff'],
    level: 4,
    minutes: [60, 4],
    oneOf: 'sleeve-length',
    source: 'FYG (buttons 1–2 in from the edge; 13 without moving them), YDAP (25–38): 38, warned past 25; leather 40 MARTIN'
  },
  {
    id: 'sleeve-shorten-head',
    direction: 'less',
    kinds: ['shirt', 'jacket', 'coat', 'knit-top', 'jumper'],
    there: (garment) => !isRibbed(garment),
    unless: noHead,
    lines: (garment) => [
      {
        point: 'sleeveLength',
        effects: { ...sleeve(-1), bicep: -0.3 },
        capMm: isLeather(garment) ? 30 : garment.made.tailored ? 38 : 75,
        because: limit('sleeve-head'),
        seams: [{ seam: 'armhole', mmPerOffset: 1 }]
      }
    ],
    opens: (garment) => (garment.made.lined ? ['armhole', 'lining'] : ['armhole']),
    level: (garment) => (garment.made.tailored ? 5 : 4),
    minutes: (garment) => (garment.made.tailored ? [180, 0] : [75, 5]),
    penalties: ['recut'],
    reseams: ['armhole'],
    oneOf: 'sleeve-length',
    source: 'FYG (working buttonholes: from the shoulder only); MADA (cap ease 25–38, knits 13–19); 38 and 75 MEM; leather 30 MARTIN'
  },
  {
    id: 'sleeve-lengthen',
    direction: 'more',
    kinds: SLEEVED,
    there: (garment) => !isRibbed(garment),
    unless: noHemToLetDown,
    lines: (garment) => [
      {
        point: 'sleeveLength',
        effects: sleeve(1),
        capMm: Math.max(0, garment.made.lined ? Math.min(linedDown(garment), garment.made.hemDepthMm - 10) : garment.made.hemDepthMm - 10),
        physicalMm: Math.max(0, garment.made.hemDepthMm - 3),
        because: limit('hem', { depth: garment.made.hemDepthMm, keep: 10 }),
        seams: [{ seam: 'hem', mmPerOffset: 1, outward: true }]
      }
    ],
    opens: (garment) => (garment.made.lined ? ['lining', 'cuff'] : ['cuff']),
    level: (garment) => (garment.made.lined ? 4 : 2),
    minutes: (garment) => [garment.made.lined ? 55 : 35, 3],
    outward: true,
    penalties: ['fade'],
    oneOf: 'sleeve-length',
    source: 'YDAP (3/4 in on lined jackets), coats 25, told hems less 12 CP'
  },
  {
    id: 'sleeve-lengthen-facing',
    direction: 'more',
    kinds: OUTER,
    unless: (garment) => (garment.made.lined ? noHemToLetDown(garment) : limit('not-lined')),
    lines: (garment) => [
      {
        point: 'sleeveLength',
        effects: sleeve(1),
        capMm: Math.max(0, garment.made.hemDepthMm - 6),
        physicalMm: Math.max(0, garment.made.hemDepthMm - 3),
        because: limit('facing', { depth: garment.made.hemDepthMm }),
        seams: [{ seam: 'hem', mmPerOffset: 1, outward: true }]
      }
    ],
    opens: ['lining', 'cuff'],
    level: 4,
    minutes: [75, 3],
    outward: true,
    penalties: ['fade'],
    oneOf: 'sleeve-length',
    source: 'CP: all of the hem but 6'
  },
  {
    id: 'sleeve-taper',
    direction: 'less',
    kinds: SLEEVED,
    lines: (garment) => [
      {
        point: 'bicep',
        effects: { bicep: -1, elbow: -0.5 },
        capMm: garment.made.lined ? 38 : 76,
        because: limit('elbow'),
        seams: [{ seam: 'underarm', mmPerOffset: 2 }]
      },
      {
        point: 'cuff',
        effects: { cuff: -1, elbow: -0.5 },
        capMm: garment.made.lined ? 38 : 76,
        because: limit('elbow'),
        seams: [{ seam: 'underarm', mmPerOffset: 2 }]
      }
    ],
    opens: (garment) => (garment.made.lined ? ['lining', 'cuff'] : ['cuff']),
    level: (garment) => (garment.made.lined ? 4 : 2),
    minutes: (garment) => [garment.made.lined ? 50 : 30, 3],
    reseams: ['underarm'],
    source: 'THREADS (51 over the arm stays); 76 at the elbow, lined 38 CP'
  },
  {
    id: 'cuff-in',
    direction: 'less',
    kinds: ['shirt', 'dress', 'jumpsuit'],
    lines: () => [{ point: 'cuff', effects: { cuff: -1 }, capMm: 50, because: limit('cuff'), seams: [{ seam: 'cuff', mmPerOffset: 2 }] }],
    opens: ['cuff'],
    level: 2,
    minutes: [25, 2],
    oneOf: 'cuff',
    source: 'CP'
  }
]
