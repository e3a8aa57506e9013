/**
 * Each alteration twice: once where it is the answer, once where it is forbidden or useless. The bands are a favourite's, or Rowan's, regular
 * fit (core/wearer/ease.ts); the arithmetic behind each amount stands beside it.
 */

import type { GarmentInput, Made } from '../../../core/garment/garment-input.ts'
import type { AlterationId } from '../../../core/ids/alterations.ts'
import type { Cut } from '../../../core/ids/cut.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import type { Level } from '../../../core/plan/means.ts'
import type { ReckonRequest } from '../../../core/reckon.ts'
import { garment } from './plan-case.ts'
import { rowan } from './wearers.ts'

type Figures = Partial<Record<PointId, number>>
interface Asked {
  level?: Level
  tailor?: boolean
  made?: Partial<Made>
  more?: Partial<GarmentInput>
  /** A favourite's figures, for points that a body does not judge. */
  liked?: Figures
  /** Ruled out by the person, so that this one is left. */
  without?: AlterationId[]
  limits?: ReckonRequest['limits']
}

/** What suits Rowan, at the ideal or near. */
const SUITS: Partial<Record<GarmentKind, Figures>> = {
  trousers: { waist: 820, hip: 1040, thigh: 628, knee: 470, legOpening: 420, inseam: 755 },
  jeans: { waist: 820, hip: 1036, thigh: 628, knee: 450, legOpening: 410, inseam: 755 },
  shorts: { waist: 820, hip: 1040, thigh: 628 },
  skirt: { waist: 820, hip: 1040, skirtLength: 620, sweep: 1150 },
  shirt: { chest: 1060, waist: 930, hem: 1070, shoulderWidth: 440, sleeveLength: 610, neck: 394, bicep: 390, cuff: 225 },
  jacket: { chest: 1060, waist: 916, hem: 1080, shoulderWidth: 440, sleeveLength: 610, bicep: 390 },
  'knit-top': { chest: 1020, waist: 900, hem: 1010, shoulderWidth: 440, sleeveLength: 610 },
  jumper: { chest: 1020, waist: 900, hem: 1010, shoulderWidth: 440, sleeveLength: 610 },
  dress: { chest: 1036, waist: 840, hip: 1040, shoulderWidth: 440 }
}

function asked(
  kind: GarmentKind,
  change: Figures,
  { level = 3, tailor = false, made = {}, more = {}, liked, without = [], limits = {} }: Asked = {}
): ReckonRequest {
  return {
    garment: garment(kind, { ...SUITS[kind], ...change }, made, more),
    wearer: rowan,
    ...(liked === undefined
      ? {}
      : { favourite: { measures: Object.entries(liked).map(([point, mm]) => ({ point: point as PointId, mm })) } }),
    means: { level, tailor },
    limits: { ...limits, ...Object.fromEntries(without.map((id) => [id, 0])) }
  }
}

/** Told and liked just so, beside what a case is about: without these nothing is judged. */
const KEYS: Partial<Record<GarmentKind, Figures>> = {
  trousers: { waist: 800, hip: 1000 },
  jeans: { waist: 800, hip: 1000 },
  shorts: { waist: 800, hip: 1000 },
  skirt: { waist: 800 },
  jacket: { chest: 1050, shoulderWidth: 440 },
  shirt: { chest: 1000 },
  'knit-top': { chest: 1000 },
  jumper: { chest: 1000 },
  waistcoat: { chest: 1000 },
  dress: { chest: 1000 }
}
/** Judged by a favourite alone, so that no body's band bears on it: liked figures, less 0.6 of the tolerance, plus all of it (core/wearer/tolerance.ts). */
function likes(
  kind: GarmentKind,
  figures: Figures,
  liked: Figures,
  { level = 3, made = {}, more = {}, without = [], limits = {} }: Asked = {}
): ReckonRequest {
  return {
    garment: garment(kind, { ...KEYS[kind], ...figures }, made, more),
    favourite: { measures: Object.entries({ ...KEYS[kind], ...liked }).map(([point, mm]) => ({ point: point as PointId, mm })) },
    means: { level, tailor: false },
    limits: { ...limits, ...Object.fromEntries(without.map((id) => [id, 0])) }
  }
}
const cut = (cut: Cut, more: Partial<GarmentInput> = {}): Partial<GarmentInput> => ({ cut, ...more })

export interface Pair {
  id: AlterationId
  direction: 'less' | 'more'
  /** It shows: looked for in any plan, since it may stand beside the advised one only. */
  rescue?: true
  /** In the advised plan, by so much; alone unless `beside` names what goes with it. */
  answer: { why: string; request: ReckonRequest; amount: [number, number]; beside?: AlterationId[] }
  /** In no plan. */
  never: { why: string; request: ReckonRequest }
}

export const pairs: Pair[] = [
  {
    id: 'waist-in-centre-back',
    direction: 'less',
    answer: { why: '895 − 845 = 50, the back seam holds 74', request: asked('trousers', { waist: 895 }), amount: [50, 74] },
    never: { why: 'no back seam', request: asked('trousers', { waist: 895 }, { made: { backSeam: false } }) }
  },
  {
    id: 'waist-in-side-seams',
    direction: 'less',
    answer: {
      why: '890 − 845 = 45 and no back seam, darts ruled out: the sides hold 50',
      request: asked('trousers', { waist: 890 }, { made: { backSeam: false }, without: ['waist-in-darts', 'waist-in-elastic'] }),
      amount: [44, 50]
    },
    never: { why: 'the waist is too small', request: asked('trousers', { waist: 780 }) }
  },
  {
    id: 'waist-in-darts',
    direction: 'less',
    answer: { why: '885 − 845 = 40 on a skirt', request: asked('skirt', { waist: 885 }, { level: 2 }), amount: [40, 66] },
    never: { why: 'a back seam is the better place', request: asked('trousers', { waist: 885 }) }
  },
  {
    id: 'waist-in-elastic',
    direction: 'less',
    rescue: true,
    answer: {
      why: '885 − 845 = 40 at level 1: a button gives 13, elastic a tenth',
      request: asked('shorts', { waist: 885 }, { level: 1 }),
      amount: [40, 88]
    },
    never: {
      why: 'no gathers in a kilt',
      request: likes('skirt', { waist: 890 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'kilt' }) })
    }
  },
  {
    id: 'waist-elastic-shorten',
    direction: 'less',
    answer: {
      why: 'as it lies it may be no larger than the body, 800: 850 − 800 = 50; a fifth of 850 is 170',
      request: asked('shorts', { waist: 850 }, { made: { elasticWaist: true } }),
      amount: [50, 104]
    },
    never: { why: 'no elastic there', request: asked('shorts', { waist: 890 }) }
  },
  {
    id: 'waist-button-move',
    direction: 'less',
    answer: {
      why: '835 − 825 = 10; over a fly a button gives 13',
      request: likes('trousers', { waist: 835 }, { waist: 800 }, { level: 1 }),
      amount: [10, 13]
    },
    never: {
      why: 'a zip alone closes it',
      request: likes('skirt', { waist: 835 }, { waist: 800 }, { more: cut({ closing: 'front-zip' }) })
    }
  },
  {
    id: 'waist-button-move',
    direction: 'more',
    answer: {
      why: '785 − 775 = 10; over a fly it gives 10',
      request: likes('trousers', { waist: 775 }, { waist: 800 }, { level: 1 }),
      amount: [8, 10]
    },
    never: {
      why: 'an overlap of 20 has none to spare',
      request: likes('trousers', { waist: 775 }, { waist: 800 }, { level: 1, made: { overlapMm: 20 } })
    }
  },
  {
    id: 'waist-out-centre-back',
    direction: 'more',
    answer: { why: '800 − 780 = 20, an outlet of 25 gives 2 × 15 = 30', request: asked('trousers', { waist: 780 }), amount: [18, 30] },
    never: { why: 'a felled seam gives nothing', request: asked('jeans', { waist: 780 }) }
  },
  {
    id: 'waist-out-side-seams',
    direction: 'more',
    answer: {
      why: '800 − 765 = 35, no back seam, 20 a side gives 4 × 10 = 40',
      request: asked('trousers', { waist: 765 }, { made: { backSeam: false, seamAllowanceMm: 20 } }),
      amount: [34, 40]
    },
    never: { why: '10 a side gives nothing', request: asked('trousers', { waist: 765 }) }
  },
  {
    id: 'waist-out-panel',
    direction: 'more',
    rescue: true,
    answer: {
      why: '785 − 745 = 40 on felled jeans: only a panel, to 50',
      request: likes('jeans', { waist: 745 }, { waist: 800 }),
      amount: [40, 50]
    },
    never: { why: 'a let-out does it unseen', request: likes('trousers', { waist: 770 }, { waist: 800 }) }
  },
  {
    id: 'undo-earlier',
    direction: 'more',
    answer: {
      why: '800 − 775 = 25 on felled jeans, and the fold inside is told to hold 30',
      request: asked('jeans', { waist: 775 }, { limits: { 'undo-earlier': 30 } }),
      amount: [24, 30]
    },
    never: { why: 'no earlier alteration is told', request: asked('jeans', { waist: 775 }) }
  },
  {
    id: 'seat-in',
    direction: 'less',
    answer: {
      why: '1060 − 1025 = 35, the seat gives 38',
      request: likes('trousers', { hip: 1060 }, { hip: 1000 }, { level: 4 }),
      amount: [34, 38]
    },
    never: { why: 'level 4 work at level 3', request: likes('trousers', { hip: 1060 }, { hip: 1000 }) }
  },
  {
    id: 'seat-out',
    direction: 'more',
    answer: {
      why: '1018 − 1000 = 18, 25 a side gives 2 × 15 = 30',
      request: asked('trousers', { hip: 1000 }, { level: 4, made: { seamAllowanceMm: { seat: 25 } } }),
      amount: [16, 30]
    },
    never: { why: '10 a side gives nothing', request: asked('trousers', { hip: 1000 }, { level: 4 }) }
  },
  {
    id: 'leg-taper',
    direction: 'less',
    answer: { why: '700 − 680 = 20 at the thigh', request: asked('trousers', { thigh: 700 }), amount: [20, 76] },
    never: { why: 'a felled inside leg makes it level 4', request: asked('jeans', { thigh: 700 }) }
  },
  {
    id: 'thigh-out',
    direction: 'more',
    answer: {
      why: '605 − 590 = 15, 16 a side gives 4 × 6 = 24',
      request: asked('trousers', { thigh: 590 }, { made: { seamAllowanceMm: 16 } }),
      amount: [14, 24]
    },
    never: { why: 'felled inside leg, 10 at the side: nothing', request: asked('jeans', { thigh: 590 }) }
  },
  {
    id: 'thigh-panel',
    direction: 'more',
    rescue: true,
    answer: {
      why: '612 − 570 = 42, no seam gives it, a gusset holds 60',
      request: likes('jeans', { thigh: 570 }, { thigh: 620 }),
      amount: [42, 60]
    },
    never: {
      why: 'let out inside, unseen, where the seams hold it',
      request: likes('trousers', { thigh: 598 }, { thigh: 620 }, { made: { seamAllowanceMm: 25 } })
    }
  },
  {
    id: 'leg-shorten-plain',
    direction: 'less',
    answer: {
      why: '830 − 785 = 45, to the ideal 65, a plain hem',
      request: asked('trousers', { inseam: 830 }, { made: { hemKind: 'plain' }, level: 2 }),
      amount: [60, 90]
    },
    never: { why: 'a blind hem stays blind', request: asked('trousers', { inseam: 830 }, { level: 2 }) }
  },
  {
    id: 'leg-shorten-keep-edge',
    direction: 'less',
    answer: {
      why: '870 − 785 = 85, to the ideal 105, the fold holds 125',
      request: asked('jeans', { inseam: 870 }, { level: 2 }),
      amount: [100, 125]
    },
    never: { why: 'no original edge', request: asked('jeans', { inseam: 870 }, { level: 2, made: { hemKind: 'plain' } }) }
  },
  {
    id: 'leg-shorten-blind',
    direction: 'less',
    answer: {
      why: '830 − 785 = 45, to the ideal 65, tailored',
      request: asked('trousers', { inseam: 830 }, { level: 2 }),
      amount: [60, 90]
    },
    never: { why: 'jeans have none', request: asked('jeans', { inseam: 830 }) }
  },
  {
    id: 'leg-lengthen-hem',
    direction: 'more',
    answer: { why: '740 − 730 = 10, a hem of 40 keeps 25', request: asked('trousers', { inseam: 730 }, { level: 2 }), amount: [8, 15] },
    never: {
      why: 'cloth that keeps needle holes',
      request: asked('trousers', { inseam: 730 }, { level: 2, more: { cloth: { traits: ['silk'] } } })
    }
  },
  {
    id: 'leg-lengthen-facing',
    direction: 'more',
    answer: {
      why: '740 − 712 = 28, all of a hem of 40 but 6',
      request: asked('trousers', { inseam: 712 }, { level: 2 }),
      amount: [26, 34]
    },
    never: { why: 'the hem alone gives it', request: asked('trousers', { inseam: 738 }, { level: 2 }) }
  },
  {
    id: 'leg-lengthen-band',
    direction: 'more',
    rescue: true,
    answer: {
      why: '751 − 700 = 51 on casual legs; a hem of 40 gives 34, a band 60',
      request: likes('trousers', { inseam: 700 }, { inseam: 755 }, { level: 2, made: { tailored: false } }),
      amount: [50, 60]
    },
    never: { why: 'tailored legs take none', request: likes('trousers', { inseam: 700 }, { inseam: 755 }, { level: 2 }) }
  },
  {
    id: 'rise-shorten',
    direction: 'less',
    rescue: true,
    answer: {
      why: '295 − (270 + 7) = 18 against a favourite',
      request: asked('trousers', { frontRise: 295 }, { level: 5, liked: { frontRise: 270 } }),
      amount: [18, 25]
    },
    never: { why: 'level 5 work at level 4', request: asked('trousers', { frontRise: 295 }, { level: 4, liked: { frontRise: 270 } }) }
  },
  {
    id: 'rise-deepen',
    direction: 'more',
    rescue: true,
    answer: {
      why: '405 − 4 − 393 = 8 against a favourite',
      request: asked('trousers', { backRise: 393 }, { level: 4, liked: { backRise: 405 } }),
      amount: [6, 10]
    },
    never: { why: 'the rise is liked as it is', request: asked('trousers', { backRise: 405 }, { level: 4, liked: { backRise: 405 } }) }
  },
  {
    id: 'calf-out',
    direction: 'more',
    answer: {
      why: '386 − 373 = 13, 20 a side gives 2 × 10 = 20',
      request: likes('trousers', { calf: 373 }, { calf: 395 }, { level: 2, made: { seamAllowanceMm: 20 } }),
      amount: [13, 20]
    },
    never: { why: 'a felled inside leg', request: likes('jeans', { calf: 373 }, { calf: 395 }) }
  },
  {
    id: 'hem-widen',
    direction: 'more',
    rescue: true,
    answer: {
      why: '352 − 300 = 52, a slit opens 60',
      request: likes('trousers', { legOpening: 300 }, { legOpening: 360 }),
      amount: [52, 60]
    },
    never: { why: 'never in a lined skirt', request: likes('skirt', { sweep: 1000 }, { sweep: 1060 }, { made: { lined: true } }) }
  },
  {
    id: 'skirt-shorten',
    direction: 'less',
    answer: {
      why: '680 − (620 + 12) = 48',
      request: asked('skirt', { skirtLength: 680 }, { liked: { skirtLength: 620 } }),
      amount: [48, 75]
    },
    never: {
      why: 'at 290, 250 must stay: 40 would go, but nothing is too long',
      request: asked('skirt', { skirtLength: 290 }, { liked: { skirtLength: 290 } })
    }
  },
  {
    id: 'skirt-lengthen',
    direction: 'more',
    answer: {
      why: '640 − 7 − 620 = 13, a hem of 40 keeps 10',
      request: asked('skirt', {}, { liked: { skirtLength: 640 } }),
      amount: [12, 30]
    },
    never: { why: 'a hem of 10 has none to give', request: asked('skirt', {}, { liked: { skirtLength: 640 }, made: { hemDepthMm: 10 } }) }
  },
  {
    id: 'skirt-shorten-from-waist',
    direction: 'less',
    answer: {
      why: '620 − (580 + 12) = 28 with the hem ruled out; the waist grows by (1040 − 800) ÷ 200 of it, 34, and stays inside',
      request: asked('skirt', { waist: 800 }, { level: 4, liked: { skirtLength: 580 }, without: ['skirt-shorten'] }),
      amount: [28, 50]
    },
    never: { why: 'the hem is the easy way', request: asked('skirt', { skirtLength: 680 }, { level: 3, liked: { skirtLength: 620 } }) }
  },
  {
    id: 'skirt-sides-in',
    direction: 'less',
    answer: {
      why: 'waist 885 − 845 = 40 and hip 1140 − 1100 = 40 on one line',
      request: asked('skirt', { waist: 885, hip: 1140 }),
      amount: [40, 100]
    },
    never: { why: 'too small everywhere', request: asked('skirt', { waist: 770, hip: 1000 }) }
  },
  {
    id: 'skirt-sides-out',
    direction: 'more',
    answer: {
      why: 'waist 800 − 770 = 30 and hip 1020 − 1000 = 20, 20 a side gives 40',
      request: asked('skirt', { waist: 770, hip: 1000 }, { made: { seamAllowanceMm: 20, outletMm: 10, darts: false } }),
      amount: [30, 40]
    },
    never: {
      why: 'taffeta keeps its needle holes',
      request: asked('skirt', { waist: 770, hip: 1000 }, { made: { seamAllowanceMm: 20 }, more: { cloth: { traits: ['taffeta'] } } })
    }
  },
  {
    id: 'release-darts',
    direction: 'more',
    answer: {
      why: '800 − 785 = 15; the button gives 10, four darts 40',
      request: asked('skirt', { waist: 785 }, { level: 2 }),
      amount: [14, 40]
    },
    never: { why: 'no darts', request: asked('skirt', { waist: 785 }, { level: 2, made: { darts: false } }) }
  },
  {
    id: 'sides-in',
    direction: 'less',
    answer: {
      why: 'chest 1180 − 1133 = 47, waist 1050 − 1015 = 35, hem 1210 − 1163 = 47',
      request: likes('shirt', { chest: 1180, waist: 1050, hem: 1210 }, { chest: 1120, waist: 990, hem: 1150 }, { level: 2 }),
      amount: [47, 64]
    },
    never: {
      why: 'everything is too small',
      request: likes('shirt', { chest: 1060, waist: 900, hem: 1060 }, { chest: 1120, waist: 990, hem: 1150 }, { level: 4 })
    }
  },
  {
    id: 'sides-out',
    direction: 'more',
    answer: {
      why: '1010 − 990 = 20, 20 a side unfelled gives 40',
      request: asked(
        'shirt',
        { chest: 990 },
        { level: 2, made: { seamAllowanceMm: 20, felledSeams: false }, without: ['front-button-move'] }
      ),
      amount: [18, 40]
    },
    never: { why: 'felled sides', request: asked('shirt', { chest: 990 }, { level: 2 }) }
  },
  {
    id: 'back-darts',
    direction: 'less',
    answer: { why: '1080 − 1020 = 60 at the waist alone', request: asked('shirt', { waist: 1080 }, { level: 2 }), amount: [60, 100] },
    never: { why: 'a knit takes none', request: asked('knit-top', { waist: 1080 }, { level: 2 }) }
  },
  {
    id: 'centre-back-in',
    direction: 'less',
    answer: {
      why: '1010 − 978 = 32 with sides and buttons ruled out',
      request: asked('jacket', { waist: 1010 }, { level: 4, without: ['sides-in', 'front-button-move'] }),
      amount: [32, 38]
    },
    never: { why: 'no back seam', request: asked('jacket', { waist: 1010 }, { level: 4, made: { backSeam: false } }) }
  },
  {
    id: 'side-panels',
    direction: 'more',
    rescue: true,
    answer: {
      why: '992 − 950 = 42 on a knit, 7 a side gives nothing, panels 60',
      request: likes('knit-top', { chest: 950 }, { chest: 1000 }),
      amount: [42, 60]
    },
    never: {
      why: 'a shift is too plain for them',
      request: likes('dress', { chest: 950 }, { chest: 1000 }, { more: cut({ silhouette: 'shift' }) })
    }
  },
  {
    id: 'body-shorten',
    direction: 'less',
    answer: {
      why: '760 − (700 + 10) = 50',
      request: asked('shirt', { bodyLength: 760 }, { level: 2, liked: { bodyLength: 700 } }),
      amount: [50, 70]
    },
    never: { why: 'too short already', request: asked('shirt', { bodyLength: 640 }, { level: 2, liked: { bodyLength: 700 } }) }
  },
  {
    id: 'body-lengthen',
    direction: 'more',
    answer: {
      why: '740 − 6 − 725 = 9, a hem of 30 keeps 10',
      request: asked('shirt', { bodyLength: 725 }, { level: 2, made: { hemDepthMm: 30 }, liked: { bodyLength: 740 } }),
      amount: [8, 20]
    },
    never: { why: 'too long already', request: asked('shirt', { bodyLength: 760 }, { level: 2, liked: { bodyLength: 700 } }) }
  },
  {
    id: 'sleeve-shorten-cuff',
    direction: 'less',
    answer: {
      why: '650 − 640 = 10, to the ideal 32, the placket allows 45',
      request: asked('shirt', { sleeveLength: 650 }),
      amount: [10, 45]
    },
    never: { why: 'a jumper has no such cuff', request: asked('jumper', { sleeveLength: 650 }) }
  },
  {
    id: 'sleeve-shorten-hem',
    direction: 'less',
    answer: {
      why: '650 − 617 = 33 on a jersey top',
      request: likes('knit-top', { sleeveLength: 650 }, { sleeveLength: 610 }),
      amount: [32, 40]
    },
    never: { why: 'a rib comes off first', request: likes('jumper', { sleeveLength: 650 }, { sleeveLength: 610 }, { level: 5 }) }
  },
  {
    id: 'sleeve-shorten-lined',
    direction: 'less',
    answer: {
      why: '650 − 618 = 32, sham buttons allow 38',
      request: asked('jacket', { sleeveLength: 650 }, { level: 4 }),
      amount: [32, 38]
    },
    never: { why: 'the buttons work', request: asked('jacket', { sleeveLength: 650 }, { level: 4, made: { workingCuffButtons: true } }) }
  },
  {
    id: 'sleeve-shorten-head',
    direction: 'less',
    answer: {
      why: '650 − 618 = 32 with working buttons, level 5',
      request: asked('jacket', { sleeveLength: 650 }, { level: 5, made: { workingCuffButtons: true } }),
      amount: [32, 38]
    },
    never: {
      why: 'level 5 work at level 4',
      request: asked('jacket', { sleeveLength: 650 }, { level: 4, made: { workingCuffButtons: true } })
    }
  },
  {
    id: 'sleeve-lengthen',
    direction: 'more',
    answer: {
      why: '611 − 595 = 16, a lined sleeve gives 19',
      request: likes('jacket', { sleeveLength: 595 }, { sleeveLength: 615 }, { level: 4 }),
      amount: [15, 19]
    },
    never: {
      why: 'a hem of 10 has none to give',
      request: likes('jacket', { sleeveLength: 595 }, { sleeveLength: 615 }, { level: 4, made: { hemDepthMm: 10 } })
    }
  },
  {
    id: 'sleeve-taper',
    direction: 'less',
    answer: { why: '490 − 460 = 30 at the upper sleeve', request: asked('shirt', { bicep: 490 }, { level: 2 }), amount: [30, 76] },
    never: { why: 'too tight already', request: asked('shirt', { bicep: 330 }, { level: 2 }) }
  },
  {
    id: 'cuff-in',
    direction: 'less',
    answer: { why: '300 − 260 = 40, a button gives 20', request: asked('shirt', { cuff: 300 }, { level: 2 }), amount: [40, 50] },
    never: { why: 'a button does it', request: asked('shirt', { cuff: 270 }, { level: 1 }) }
  },
  {
    id: 'cuff-button-move',
    direction: 'less',
    answer: { why: '272 − 260 = 12, a button gives 20', request: asked('shirt', { cuff: 272 }, { level: 1 }), amount: [12, 20] },
    never: { why: 'too tight already', request: asked('shirt', { cuff: 175 }, { level: 1, without: ['cuff-button-move'] }) }
  },
  {
    id: 'cuff-button-move',
    direction: 'more',
    answer: { why: '185 − 175 = 10, a button gives 20', request: asked('shirt', { cuff: 175 }, { level: 1 }), amount: [10, 20] },
    never: { why: 'a jacket has no such button', request: asked('jacket', { cuff: 250 }, { level: 5 }) }
  },
  {
    id: 'shoulder-in',
    direction: 'less',
    answer: {
      why: '470 − 437 = 33, a shirt shoulder gives 19 a side',
      request: likes('shirt', { shoulderWidth: 470 }, { shoulderWidth: 430 }, { level: 4 }),
      amount: [33, 38]
    },
    never: { why: 'a jacket shoulder is level 5', request: likes('jacket', { shoulderWidth: 450 }, { shoulderWidth: 430 }, { level: 4 }) }
  },
  {
    id: 'shoulder-pads',
    direction: 'more',
    answer: {
      why: '1010 − 1002 = 8, a thinner pad gives 10, buttons ruled out',
      request: asked('jacket', { chest: 1002 }, { level: 3, without: ['front-button-move'] }),
      amount: [10, 10]
    },
    never: { why: 'a shirt has none', request: asked('shirt', { chest: 1002 }) }
  },
  {
    id: 'front-button-move',
    direction: 'less',
    answer: {
      why: '935 − 925 = 10; a jacket gives 13',
      request: likes('jacket', { waist: 935, chest: 1058 }, { waist: 900 }, { level: 1 }),
      amount: [10, 13]
    },
    never: {
      why: 'a bomber closes with a zip',
      request: likes('jacket', { waist: 935, chest: 1058 }, { waist: 900 }, { level: 1, more: cut({ layer: 'bomber' }) })
    }
  },
  {
    id: 'front-button-move',
    direction: 'more',
    answer: {
      why: '885 − 875 = 10; the button stands 30 from the edge and its own half must stay on it: 17',
      request: likes('jacket', { waist: 875, chest: 1045 }, { waist: 900 }, { level: 1 }),
      amount: [10, 17]
    },
    never: {
      why: 'an overlap of 25 has none to spare',
      request: likes('jacket', { waist: 875, chest: 1045 }, { waist: 900 }, { level: 1, made: { overlapMm: 25 } })
    }
  },
  {
    id: 'strap-shorten',
    direction: 'less',
    answer: { why: '340 − (300 + 12) = 28', request: asked('dress', { strap: 340 }, { liked: { strap: 300 } }), amount: [28, 60] },
    never: { why: 'too short already', request: asked('dress', { strap: 260 }, { liked: { strap: 300 } }) }
  },
  {
    id: 'lift-at-shoulder',
    direction: 'less',
    answer: {
      why: '445 − (425 + 12) = 8, the shoulder seam gives 25',
      request: asked('dress', { napeToWaist: 445 }, { liked: { napeToWaist: 425 } }),
      amount: [8, 25]
    },
    never: { why: 'too short already', request: asked('dress', { napeToWaist: 400 }, { liked: { napeToWaist: 425 } }) }
  },
  {
    id: 'dress-waist-raise',
    direction: 'less',
    answer: {
      why: '470 − (425 + 12) = 33, more than the shoulder seam gives',
      request: asked('dress', { napeToWaist: 470 }, { level: 4, liked: { napeToWaist: 425 } }),
      amount: [32, 38]
    },
    never: { why: 'level 4 work at level 3', request: asked('dress', { napeToWaist: 470 }, { level: 3, liked: { napeToWaist: 425 } }) }
  },
  {
    id: 'dress-waist-lower',
    direction: 'more',
    answer: {
      why: '425 − 7 − 410 = 8, 25 of cloth keeps 10',
      request: asked('dress', { napeToWaist: 410 }, { level: 4, made: { seamAllowanceMm: 25 }, liked: { napeToWaist: 425 } }),
      amount: [8, 15]
    },
    never: {
      why: '10 of cloth has none to give',
      request: asked('dress', { napeToWaist: 410 }, { level: 4, made: { seamAllowanceMm: 10 }, liked: { napeToWaist: 425 } })
    }
  },
  {
    id: 'neckline-take-in',
    direction: 'less',
    answer: { why: '600 − (560 + 7) = 33', request: asked('jumper', { neck: 600 }, { liked: { neck: 560 } }), amount: [32, 38] },
    never: { why: 'a shirt collar moves its button', request: asked('shirt', { neck: 420 }, { level: 5 }) }
  },
  {
    id: 'neck-button-move',
    direction: 'less',
    answer: { why: '420 − 412 = 8', request: asked('shirt', { neck: 420 }, { level: 1 }), amount: [8, 13] },
    never: { why: 'it suits', request: asked('shirt', {}, { level: 1 }) }
  },
  {
    id: 'neck-button-move',
    direction: 'more',
    answer: { why: '385 − 376 = 9', request: asked('shirt', { neck: 376 }, { level: 1 }), amount: [8, 13] },
    never: { why: 'it suits', request: asked('shirt', {}, { level: 1 }) }
  },
  {
    id: 'yoke-darts',
    direction: 'less',
    answer: {
      why: '865 − 825 = 40 at level 2, past what the button gives',
      request: likes('jeans', { waist: 865 }, { waist: 800 }, { level: 2 }),
      amount: [40, 64]
    },
    never: { why: 'the centre back does it unseen at level 3', request: likes('jeans', { waist: 845 }, { waist: 800 }) }
  },
  {
    id: 'drawstring-add',
    direction: 'less',
    rescue: true,
    answer: {
      why: '905 − 825 = 80, more than the seams of one size and a cord unseen under a shirt, elastic ruled out: 15 in 100 is 136',
      request: likes('shorts', { waist: 905 }, { waist: 800 }, { level: 2, without: ['waist-in-elastic'] }),
      amount: [80, 106]
    },
    never: {
      why: 'never a cord on children’s clothes',
      request: likes('shorts', { waist: 905 }, { waist: 800 }, { level: 2, without: ['waist-in-elastic'], more: { use: 'child' } })
    }
  },
  {
    id: 'pleat-reset',
    direction: 'less',
    answer: {
      why: '880 − 825 = 55; pleats give 80 in all',
      request: likes('skirt', { waist: 880 }, { waist: 800 }, { more: cut({ silhouette: 'pleated' }) }),
      amount: [54, 80]
    },
    never: { why: 'no pleats', request: likes('skirt', { waist: 880 }, { waist: 800 }, { more: cut({ silhouette: 'pencil' }) }) }
  },
  {
    id: 'pleat-release',
    direction: 'more',
    answer: {
      why: '785 − 760 = 25, no cloth at the seams, a pair of pleats holds 40',
      request: likes(
        'trousers',
        { waist: 760, hip: 990 },
        { waist: 800 },
        { level: 2, made: { outletMm: 10 }, more: cut({ pleats: 'front' }) }
      ),
      amount: [25, 40]
    },
    never: { why: 'no pleats', request: likes('trousers', { waist: 760 }, { waist: 800 }, { level: 2, made: { outletMm: 10 } }) }
  },
  {
    id: 'gathers-reset',
    direction: 'less',
    answer: {
      why: '900 − 825 = 75 with elastic and cord ruled out',
      request: likes(
        'skirt',
        { waist: 900 },
        { waist: 800 },
        { without: ['waist-in-elastic', 'drawstring-add'], more: cut({ silhouette: 'gathered' }) }
      ),
      amount: [74, 100]
    },
    never: {
      why: 'elastic holds the gathers',
      request: likes('skirt', { waist: 900 }, { waist: 800 }, { more: cut({ silhouette: 'gathered', closing: 'elastic' }) })
    }
  },
  {
    id: 'hook-move',
    direction: 'less',
    answer: {
      why: '835 − 825 = 10, a hook gives 13',
      request: likes('trousers', { waist: 835 }, { waist: 800 }, { level: 1, more: cut({ closing: 'hook' }) }),
      amount: [10, 13]
    },
    never: {
      why: 'a fly has its button',
      request: likes('trousers', { waist: 835 }, { waist: 800 }, { level: 1, more: cut({ closing: 'fly' }) })
    }
  },
  {
    id: 'hook-move',
    direction: 'more',
    answer: {
      why: '785 − 775 = 10, a hook gives 13',
      request: likes('trousers', { waist: 775 }, { waist: 800 }, { level: 1, more: cut({ closing: 'hook' }) }),
      amount: [10, 13]
    },
    never: {
      why: 'an overlap of 20 has none to spare',
      request: likes('trousers', { waist: 775 }, { waist: 800 }, { level: 1, made: { overlapMm: 20 }, more: cut({ closing: 'hook' }) })
    }
  },
  {
    id: 'buckle-move',
    direction: 'less',
    answer: {
      why: '865 − 825 = 40, the straps of a kilt give 60',
      request: likes('skirt', { waist: 865 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'kilt' }) }),
      amount: [40, 60]
    },
    never: { why: 'nothing buckles', request: likes('skirt', { waist: 865 }, { waist: 800 }, { level: 1 }) }
  },
  {
    id: 'buckle-move',
    direction: 'more',
    answer: {
      why: '785 − 740 = 45, the straps of a kilt give 60',
      request: likes('skirt', { waist: 740 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'kilt' }) }),
      amount: [45, 60]
    },
    never: {
      why: '785 − 720 = 65, and nothing buckles',
      request: likes('skirt', { waist: 720 }, { waist: 800 }, { level: 1, more: cut({ closing: 'back-zip' }) })
    }
  },
  {
    id: 'tie-move',
    direction: 'less',
    answer: {
      why: '865 − 825 = 40, a wrap gives 60',
      request: likes('dress', { waist: 865 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'wrap' }) }),
      amount: [40, 60]
    },
    never: {
      why: 'nothing is tied',
      request: likes('dress', { waist: 865 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'sheath' }) })
    }
  },
  {
    id: 'tie-move',
    direction: 'more',
    answer: {
      why: '785 − 740 = 45, a wrap gives 60',
      request: likes('dress', { waist: 740 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'wrap' }) }),
      amount: [45, 60]
    },
    never: {
      why: 'an overlap of 120 must stay',
      request: likes('dress', { waist: 740 }, { waist: 800 }, { level: 1, made: { overlapMm: 120 }, more: cut({ silhouette: 'wrap' }) })
    }
  },
  {
    id: 'turn-up-let-down',
    direction: 'more',
    answer: {
      why: '751 − 715 = 36; turn-ups of 40 hold 80, less a hem of 30',
      request: likes('trousers', { inseam: 715 }, { inseam: 755 }, { level: 2, made: { hemDepthMm: 40 }, more: cut({ turnUps: 'made' }) }),
      amount: [35, 50]
    },
    never: { why: 'no turn-ups', request: likes('trousers', { inseam: 715 }, { inseam: 755 }, { level: 2, made: { hemDepthMm: 40 } }) }
  },
  {
    id: 'turn-up-shorten',
    direction: 'less',
    answer: {
      why: '800 − 762 = 38',
      request: likes('trousers', { inseam: 800 }, { inseam: 755 }, { level: 2, more: cut({ turnUps: 'made' }) }),
      amount: [38, 46]
    },
    never: { why: 'no turn-ups', request: likes('trousers', { inseam: 800 }, { inseam: 755 }, { level: 2 }) }
  },
  {
    id: 'hem-unroll',
    direction: 'more',
    answer: {
      why: '751 − 720 = 31, a roll of 40 opened',
      request: likes('jeans', { inseam: 720 }, { inseam: 755 }, { level: 1, made: { hemDepthMm: 40 }, more: cut({ turnUps: 'rolled' }) }),
      amount: [30, 40]
    },
    never: {
      why: 'sewn turn-ups are unpicked, not unrolled',
      request: likes('jeans', { inseam: 720 }, { inseam: 755 }, { level: 1, more: cut({ turnUps: 'made' }) })
    }
  },
  {
    id: 'growth-tuck',
    direction: 'less',
    answer: {
      why: '600 − 567 = 33; a tuck takes 60 and nothing is cut',
      request: likes('trousers', { inseam: 600 }, { inseam: 560 }, { level: 1, more: { use: 'child' } }),
      amount: [32, 60]
    },
    never: { why: 'grown people do not grow', request: likes('trousers', { inseam: 600 }, { inseam: 560 }, { level: 1 }) }
  },
  {
    id: 'growth-hem',
    direction: 'less',
    answer: {
      why: '640 − 567 = 73, more than a tuck takes',
      request: likes('trousers', { inseam: 640 }, { inseam: 560 }, { level: 2, more: { use: 'child' } }),
      amount: [72, 100]
    },
    never: { why: 'a tuck does it', request: likes('trousers', { inseam: 600 }, { inseam: 560 }, { level: 2, more: { use: 'child' } }) }
  },
  {
    id: 'hem-layered',
    direction: 'less',
    answer: {
      why: '700 − 632 = 68 on three layers',
      request: likes('dress', { skirtLength: 700 }, { skirtLength: 620 }, { level: 4, more: cut({ layers: 'several' }) }),
      amount: [68, 80]
    },
    never: { why: 'one layer is a plain hem', request: likes('dress', { skirtLength: 700 }, { skirtLength: 620 }, { level: 4 }) }
  },
  {
    id: 'bodice-boned-in',
    direction: 'less',
    answer: {
      why: '970 − 933 = 37, bones out and in again: 38 blends in',
      request: likes('dress', { chest: 970 }, { chest: 920 }, { level: 5, more: cut({ boning: 'boned' }) }),
      amount: [36, 50]
    },
    never: {
      why: 'level 5 work at level 4',
      request: likes('dress', { chest: 970 }, { chest: 920 }, { level: 4, more: cut({ boning: 'boned' }) })
    }
  },
  {
    id: 'strapless-draw',
    direction: 'less',
    answer: {
      why: '955 − 933 = 22 with the sides ruled out; elastic in the top edge gives 40',
      request: likes('dress', { chest: 955 }, { chest: 920 }, { level: 2, without: ['sides-in'], more: cut({ silhouette: 'strapless' }) }),
      amount: [22, 40]
    },
    never: {
      why: 'it hangs from its shoulders',
      request: likes('dress', { chest: 955 }, { chest: 920 }, { level: 2, without: ['sides-in'] })
    }
  },
  {
    id: 'lace-back',
    direction: 'less',
    rescue: true,
    answer: {
      why: '980 − 933 = 47; the top edge gives 40, and bones are level 5 work',
      request: likes('dress', { chest: 980 }, { chest: 920 }, { level: 4, more: cut({ silhouette: 'strapless', boning: 'boned' }) }),
      amount: [46, 60]
    },
    never: {
      why: 'taken in with the bones out at level 5',
      request: likes('dress', { chest: 980 }, { chest: 920 }, { level: 5, more: cut({ silhouette: 'strapless', boning: 'boned' }) })
    }
  },
  {
    id: 'lace-back',
    direction: 'more',
    rescue: true,
    answer: {
      why: '912 − 860 = 52, no seam gives it',
      request: likes('dress', { chest: 860 }, { chest: 920 }, { level: 4, more: cut({ silhouette: 'strapless', boning: 'boned' }) }),
      amount: [52, 60]
    },
    never: {
      why: 'buttons close its back',
      request: likes(
        'dress',
        { chest: 860 },
        { chest: 920 },
        { level: 4, more: cut({ silhouette: 'strapless', boning: 'boned', closing: 'buttons' }) }
      )
    }
  },
  {
    id: 'waistcoat-back-in',
    direction: 'less',
    answer: {
      why: '960 − 905 = 55, the back gives 76',
      request: likes('waistcoat', { waist: 960, chest: 1020 }, { waist: 880 }),
      amount: [54, 76]
    },
    never: { why: 'too small already', request: likes('waistcoat', { waist: 840 }, { waist: 880 }, { level: 5 }) }
  },
  {
    id: 'knit-take-in',
    direction: 'less',
    answer: {
      why: '1060 − 1013 = 47, an overlocked side gives 60',
      request: likes('jumper', { chest: 1060 }, { chest: 1000 }, { level: 4 }),
      amount: [46, 60]
    },
    never: { why: 'jersey is taken in as it is sewn', request: likes('knit-top', { chest: 1060 }, { chest: 1000 }, { level: 4 }) }
  },
  {
    id: 'rib-rejoin',
    direction: 'less',
    answer: {
      why: '650 − 617 = 33',
      request: likes('jumper', { sleeveLength: 650 }, { sleeveLength: 610 }, { level: 4 }),
      amount: [32, 40]
    },
    never: { why: 'a knitted rib is level 4 work', request: likes('jumper', { sleeveLength: 650 }, { sleeveLength: 610 }) }
  },
  {
    id: 'rib-rejoin-body',
    direction: 'less',
    answer: {
      why: '740 − 690 = 50 above the rib of a sweatshirt',
      request: likes('knit-top', { bodyLength: 740 }, { bodyLength: 680 }, { more: cut({ knit: 'sweatshirt' }) }),
      amount: [50, 60]
    },
    never: { why: 'no rib', request: likes('knit-top', { bodyLength: 740 }, { bodyLength: 680 }) }
  },
  {
    id: 'sleeve-lengthen-facing',
    direction: 'more',
    answer: {
      why: '611 − 585 = 26, more than 19; all of a hem of 40 but 6',
      request: likes('jacket', { sleeveLength: 585 }, { sleeveLength: 615 }, { level: 4 }),
      amount: [25, 34]
    },
    never: { why: 'the hem alone gives it', request: likes('jacket', { sleeveLength: 600 }, { sleeveLength: 615 }, { level: 4 }) }
  },
  {
    id: 'underarm-raise',
    direction: 'less',
    answer: {
      why: '480 − 455 = 25 without sleeves',
      request: likes('dress', { armhole: 480 }, { armhole: 440 }, { level: 2, more: cut({ sleeve: 'sleeveless' }) }),
      amount: [25, 40]
    },
    never: {
      why: 'sleeves are set there',
      request: likes('dress', { armhole: 480 }, { armhole: 440 }, { level: 2, more: cut({ sleeve: 'long' }) })
    }
  }
]
