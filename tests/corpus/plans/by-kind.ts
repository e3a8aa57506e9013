/**
 * For every kind three requests: one that wears as it is, one that alters, one to leave. Rowan's body, regular fit; a point that a body does not
 * judge is set against a favourite. The figures are realistic; the reason stands beside each.
 */
import type { GarmentKind } from '../../../core/garment/kinds.ts'
import type { PointId } from '../../../core/garment/points.ts'
import type { Means } from '../../../core/plan/means.ts'
import type { ReckonRequest, Verdict } from '../../../core/reckon.ts'
import { garment } from './plan-case.ts'
import { rowan } from './wearers.ts'

type Figures = Partial<Record<PointId, number>>
export interface KindCase {
  kind: GarmentKind
  verdict: Verdict
  why: string
  request: ReckonRequest
}

function three(
  kind: GarmentKind,
  suits: Figures,
  alters: [Figures, string, Means?, Verdict?],
  leave: [Figures, string],
  liked?: Figures
): KindCase[] {
  const request = (figures: Figures, means: Means): ReckonRequest => ({
    garment: garment(kind, figures),
    wearer: rowan,
    ...(liked === undefined
      ? {}
      : { favourite: { measures: Object.entries(liked).map(([point, mm]) => ({ point: point as PointId, mm })) } }),
    means
  })
  const home: Means = { level: 3, tailor: false }
  return [
    { kind, verdict: 'wears-as-is', why: 'every told point lies inside', request: request(suits, home) },
    { kind, verdict: alters[3] ?? 'alters-to-fit', why: alters[1], request: request({ ...suits, ...alters[0] }, alters[2] ?? home) },
    { kind, verdict: 'leave-it', why: leave[1], request: request({ ...suits, ...leave[0] }, home) }
  ]
}

export const byKind: KindCase[] = [
  ...three(
    'trousers',
    { waist: 820, hip: 1045, thigh: 630, inseam: 756 },
    [{ waist: 880, inseam: 800 }, 'waist in at the centre back, legs up'],
    [{ hip: 960, thigh: 560 }, 'seat and thigh too small, nothing to let out']
  ),
  ...three(
    'jeans',
    { waist: 820, hip: 1036, thigh: 630, inseam: 756 },
    [{ inseam: 850 }, 'legs up, the edge kept'],
    [{ waist: 700, hip: 940 }, 'felled seams give nothing']
  ),
  ...three(
    'shorts',
    { waist: 820, hip: 1045, thigh: 630 },
    [{ waist: 870 }, 'waist in'],
    [{ thigh: 520, hip: 950 }, 'too small to sit in']
  ),
  ...three(
    'skirt',
    { waist: 820, hip: 1045, skirtLength: 600 },
    [{ waist: 880, skirtLength: 660 }, 'darts, hem up'],
    [{ hip: 900, waist: 700 }, 'far too small'],
    { skirtLength: 600 }
  ),
  ...three(
    'dress',
    { chest: 1040, waist: 845, hip: 1045 },
    [{ waist: 930 }, 'back darts'],
    [{ chest: 900, waist: 760 }, 'the chest is a hand too small']
  ),
  ...three(
    'jumpsuit',
    { chest: 1040, waist: 845, hip: 1045, inseam: 756 },
    [{ waist: 930 }, 'back darts'],
    [{ chest: 840, hip: 900 }, 'more too small than panels can widen']
  ),
  ...three(
    'shirt',
    { chest: 1070, waist: 940, shoulderWidth: 445, sleeveLength: 610, neck: 396 },
    [{ waist: 1060, sleeveLength: 645 }, 'darts, sleeves up at the cuff'],
    [{ shoulderWidth: 390, chest: 930 }, 'the shoulders never grow']
  ),
  ...three(
    'knit-top',
    { chest: 1020, waist: 910, hem: 1010, shoulderWidth: 445, sleeveLength: 610 },
    [{ sleeveLength: 660 }, 'sleeves up'],
    [{ shoulderWidth: 560, chest: 1400 }, 'a tent: more than the sides can lose']
  ),
  ...three(
    'jumper',
    { chest: 1020, shoulderWidth: 445, sleeveLength: 610 },
    [{ sleeveLength: 650 }, 'sleeves up at the rib'],
    [{ chest: 760, shoulderWidth: 370 }, 'more than the wool gives']
  ),
  ...three(
    'jacket',
    { chest: 1062, waist: 920, shoulderWidth: 440, sleeveLength: 610 },
    [{ sleeveLength: 645 }, 'lined sleeves, a tailor’s work', { level: 2, tailor: true }, 'needs-a-tailor'],
    [{ shoulderWidth: 490 }, 'shoulders five centimetres wide']
  ),
  ...three(
    'coat',
    { chest: 1115, waist: 990, hip: 1125, shoulderWidth: 440, sleeveLength: 612 },
    [{ waist: 1090 }, 'the front buttons move'],
    [{ chest: 980, shoulderWidth: 400 }, 'a jacket must go under it']
  ),
  ...three(
    'waistcoat',
    { chest: 1062, waist: 920 },
    [{ waist: 1000 }, 'the front buttons move'],
    [{ chest: 900, waist: 780 }, 'far too small']
  )
]
