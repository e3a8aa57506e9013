/**
 * For every kind three requests: one that wears as it is, one that alters, one to leave. Rowan's body, regular fit (core/wearer/ease.ts); a point
 * that a body does not judge is set against a favourite. The figures are realistic; the reason stands beside each, in figures.
 */
import type { AlterationId } from '../../../core/ids/alterations.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import type { Means } from '../../../core/plan/means.ts'
import type { ReckonRequest, Verdict } from '../../../core/reckon.ts'
import { garment } from './plan-case.ts'
import { careful, homeSewer, rowan, withTailor } from './wearers.ts'

type Figures = Partial<Record<PointId, number>>
export interface KindCase {
  kind: GarmentKind
  verdict: Verdict
  why: string
  request: ReckonRequest
  /** The advised plan's jobs, exactly these. */
  jobs?: AlterationId[]
  /** What stays wrong whatever is done, at least these. */
  wrong?: PointId[]
}

interface Alters {
  figures: Figures
  why: string
  jobs: AlterationId[]
  means?: Means
  verdict?: Verdict
}
interface Leave {
  figures: Figures
  why: string
  wrong: PointId[]
}

function three(kind: GarmentKind, suits: Figures, alters: Alters, leave: Leave, liked?: Figures): KindCase[] {
  const request = (figures: Figures, means: Means): ReckonRequest => ({
    garment: garment(kind, figures),
    wearer: rowan,
    ...(liked === undefined
      ? {}
      : { favourite: { measures: Object.entries(liked).map(([point, mm]) => ({ point: point as PointId, mm })) } }),
    means
  })
  return [
    { kind, verdict: 'wears-as-is', why: 'every told point lies inside', request: request(suits, homeSewer) },
    {
      kind,
      verdict: alters.verdict ?? 'alters-to-fit',
      why: alters.why,
      jobs: alters.jobs,
      request: request({ ...suits, ...alters.figures }, alters.means ?? homeSewer)
    },
    { kind, verdict: 'leave-it', why: leave.why, wrong: leave.wrong, request: request({ ...suits, ...leave.figures }, homeSewer) }
  ]
}

export const byKind: KindCase[] = [
  ...three(
    'trousers',
    { waist: 820, hip: 1045, thigh: 630, inseam: 756 },
    {
      figures: { waist: 880, inseam: 800 },
      why: 'waist 35 over 845 is past a button, so the centre back; legs 15 over 785, a blind hem',
      jobs: ['waist-in-centre-back', 'leg-shorten-blind']
    },
    {
      figures: { hip: 960, thigh: 560 },
      why: 'seat 58 short of 1018, 10 of cloth at the seat gives nothing; the thigh alone could have a gusset',
      wrong: ['hip']
    }
  ),
  ...three(
    'jeans',
    { waist: 820, hip: 1036, thigh: 630, inseam: 756 },
    {
      figures: { inseam: 850, waist: 855 },
      why: 'legs 65 over 785, the edge kept; waist 10 over 845, the button, which holds 13 over a fly',
      jobs: ['leg-shorten-keep-edge', 'waist-button-move']
    },
    { figures: { waist: 700, hip: 940 }, why: 'seat 60 short of 1000, felled; a panel widens the waist but not the seat', wrong: ['hip'] }
  ),
  ...three(
    'shorts',
    { waist: 820, hip: 1045, thigh: 630 },
    {
      figures: { waist: 900, thigh: 710 },
      why: 'waist 55 over 845: the back seam; thigh 30 over 680: a taper',
      jobs: ['waist-in-centre-back', 'leg-taper']
    },
    { figures: { thigh: 520, hip: 950 }, why: 'thigh 85 short of 605, more than a gusset of 60; seat 68 short', wrong: ['thigh', 'hip'] }
  ),
  ...three(
    'skirt',
    { waist: 820, hip: 1045, skirtLength: 600 },
    {
      figures: { waist: 880, skirtLength: 660 },
      why: 'waist 35 over 845: darts; 48 over 612: the hem up',
      jobs: ['waist-in-darts', 'skirt-shorten']
    },
    { figures: { hip: 900, waist: 700 }, why: 'hip 120 short of 1020, 12 of cloth gives 8', wrong: ['hip'] },
    { skirtLength: 600 }
  ),
  ...three(
    'dress',
    { chest: 1040, waist: 845, hip: 1045 },
    { figures: { waist: 930 }, why: 'waist 40 over 890 and nothing else: back darts', jobs: ['back-darts'] },
    {
      figures: { chest: 860, waist: 700, hip: 880 },
      why: 'chest 138 and hip 140 short, more than panels of 120 can widen',
      wrong: ['chest', 'hip']
    }
  ),
  ...three(
    'jumpsuit',
    { chest: 1040, waist: 845, hip: 1045, inseam: 756 },
    { figures: { waist: 930 }, why: 'waist 40 over 890: back darts', jobs: ['back-darts'] },
    { figures: { chest: 840, hip: 880 }, why: 'chest 158 and hip 140 short, more than panels of 120 can widen', wrong: ['chest', 'hip'] }
  ),
  ...three(
    'shirt',
    { chest: 1070, waist: 940, shoulderWidth: 445, sleeveLength: 610, neck: 396 },
    {
      figures: { waist: 1060, sleeveLength: 645 },
      why: 'waist 40 over 1020: back darts, the sides are felled; sleeves 5 over 640: at the cuff',
      jobs: ['back-darts', 'sleeve-shorten-cuff']
    },
    { figures: { shoulderWidth: 390, chest: 930 }, why: 'shoulders 30 short of 420, and shoulders never grow', wrong: ['shoulderWidth'] }
  ),
  ...three(
    'knit-top',
    { chest: 1020, waist: 910, hem: 1010, shoulderWidth: 445, sleeveLength: 610 },
    {
      figures: { sleeveLength: 660, chest: 1140, waist: 1060, hem: 1160 },
      why: 'chest, waist and hem 40 over on one line of the sides; sleeves 15 over 645, the root of the thumb in a knit',
      jobs: ['sides-in', 'sleeve-shorten-hem']
    },
    {
      figures: { shoulderWidth: 560, chest: 1400 },
      why: 'a tent: chest 300 over 1100, the sides take 50 without the sleeves; shoulders 80 over 480',
      wrong: ['chest', 'shoulderWidth']
    }
  ),
  ...three(
    'jumper',
    { chest: 1020, shoulderWidth: 445, sleeveLength: 610 },
    {
      figures: { sleeveLength: 650 },
      why: 'sleeves 5 over 645: the rib comes off and is joined on again, level 4 where it is knitted',
      jobs: ['rib-rejoin'],
      means: careful
    },
    {
      figures: { chest: 740, shoulderWidth: 370 },
      why: 'chest 124 short of the 864 that the wool stretches over; shoulders 50 short',
      wrong: ['shoulderWidth']
    }
  ),
  ...three(
    'jacket',
    { chest: 1062, waist: 920, shoulderWidth: 440, sleeveLength: 610 },
    {
      figures: { sleeveLength: 645 },
      why: 'sleeves 27 over 618: lined, level 4, a tailor’s work here',
      jobs: ['sleeve-shorten-lined'],
      means: withTailor,
      verdict: 'needs-a-tailor'
    },
    { figures: { shoulderWidth: 515 }, why: 'shoulders 40 over 475; a tailored shoulder gives 20 and is level 5', wrong: ['shoulderWidth'] }
  ),
  ...three(
    'coat',
    { chest: 1115, waist: 990, hip: 1125, shoulderWidth: 440, sleeveLength: 612 },
    {
      figures: { waist: 1085, chest: 1195, hip: 1235, sleeveLength: 660 },
      why: 'chest, waist and hip 15 over and sleeves 20 over: with the lining open the sides cost less than three buttons',
      jobs: ['sides-in', 'sleeve-shorten-lined'],
      means: careful
    },
    {
      figures: { chest: 980, shoulderWidth: 400 },
      why: 'chest 70 short of 1050: a jacket must go under it; shoulders 25 short of 425',
      wrong: ['shoulderWidth']
    }
  ),
  ...three(
    'waistcoat',
    { chest: 1020, waist: 860 },
    { figures: { waist: 922 }, why: 'waist 22 over 900: the centre back of the lining back', jobs: ['waistcoat-back-in'] },
    {
      figures: { chest: 900, waist: 780 },
      why: 'chest 90 short of 990; 12 of cloth and an overlap of 50 give 33',
      wrong: ['chest', 'waist']
    }
  )
]
