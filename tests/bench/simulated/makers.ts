/**
 * Makers' tables as rules: a point from the body that a size is cut for, or from points that were worked out before. `between` is how far makers lie
 * apart (sd, a heavy tail), `within` how far sizes and pieces of one maker do; both mm, girths around.
 *
 * Sources: [J] joint figures of 1,765 published rows of finished garments, 56 sources (state standards, makers' size tables, pattern houses, one
 * retailer's own measuring); each rule is of a kind and sex or of several kinds together. [P] a garment maker's published woven trouser specification
 * (casualindustrees.com/pages/6-pant-size-chart-1). [C] a shirtmaker's published chino table (charlestyrwhitt.com/uk/size-guides). [S] a shirt table
 * after GB/T 1335 (github.com/microflora/te2014). [A] US Army TM 10-8400-201-23, coats. [L] a pattern envelope's finished measurements of a loose jacket
 * (sandbox83.mybigcommerce.com/m7817). [E] the body that the size is cut for and a published ease chart (monsterkonstruktion.se/en/ease; D. McCunn,
 * computer-aided-pattern-design.com/405-Ease.html). M: from memory. Between makers: the joint figures' own where they rest on several sources, else M.
 */
import type { Sex } from './survey.ts'

export const KINDS = ['trousers', 'jeans', 'skirt', 'dress', 'shirt', 'knit-top', 'jumper', 'jacket'] as const
export type Kind = (typeof KINDS)[number]

export interface Rule {
  point: string
  intercept: number
  /** `sizeBust`, `sizeWaist`, `sizeHip` are the body that the size is cut for; `band` a garment's waist of that size; others are points above. */
  from: Readonly<Record<string, number>>
  between: number
  within: number
  source: string
}
const rule = (
  point: string,
  intercept: number,
  from: Readonly<Record<string, number>>,
  [between, within]: readonly [number, number],
  source: string
): Rule => ({ point, intercept, from, between, within, source })

/** The opening by the leg that is worn: published ranges of makers and shops (leaf.tv; heddels.com/dictionary/leg-opening; bigwritehook.co.uk). */
export const LEGS = {
  skinny: { opening: 290, thigh: -60, women: 0.25, men: 0.05 },
  slim: { opening: 345, thigh: -30, women: 0.2, men: 0.3 },
  straight: { opening: 405, thigh: 0, women: 0.3, men: 0.5 },
  bootcut: { opening: 480, thigh: -15, women: 0.12, men: 0.05 },
  wide: { opening: 560, thigh: 55, women: 0.13, men: 0.1 }
} as const
export type Leg = keyof typeof LEGS

const legRules = (menHip: Rule): Record<Sex, Rule[]> => ({
  women: [
    rule('frontRise', 99.4, { band: 0.1728 }, [20.7, 34.8], 'J: fixed waist, women'),
    rule('backRise', 182.9, { frontRise: 0.7264 }, [6.3, 5.6], 'J: long legs, women'),
    rule(
      'waist',
      0,
      { band: 1, drop: 1 },
      [14, 8],
      'J: 737 to 762 where the body has 645 to 683, at a low or middle band; between makers M'
    ),
    rule('hip', 301.9, { band: 0.9091 }, [30, 8], 'J: fixed waist, women; between makers as of both sexes, less its odd ones'),
    rule('thigh', 193.7, { hip: 0.4394, leg: 1 }, [30, 11.7], 'J: fixed waist, women'),
    rule('knee', -78.8, { thigh: 0.391, legOpening: 0.7325 }, [9.7, 8.7], 'J: fixed waist, both')
  ],
  men: [
    rule('frontRise', 192.4, { band: 0.1229 }, [15.4, 7], 'J: fixed waist, men'),
    rule('backRise', 114.6, { frontRise: 0.9376 }, [38.5, 8.8], 'J: fixed waist, men'),
    rule('waist', 0, { band: 1, drop: 1 }, [14, 8], 'P, C; between makers M'),
    menHip,
    rule('thigh', 76.8, { hip: 0.538, leg: 1 }, [15.4, 4.3], 'J: long legs, men'),
    rule('knee', -78.8, { thigh: 0.391, legOpening: 0.7325 }, [9.7, 8.7], 'J: fixed waist, both')
  ]
})

const SHOULDER: Rule = rule('shoulderWidth', 78.5, { chest: 0.35 }, [21.1, 12], 'J: upper garments, both')

export const RULES: Record<Kind, Partial<Record<Sex, readonly Rule[]>>> = {
  trousers: legRules(rule('hip', -22, { band: 1.2151 }, [30, 10], 'J: fixed waist, men; P agrees within 10')),
  jeans: legRules(rule('hip', 147, { band: 1 }, [22, 8], 'J: jeans, men, both girths at their mean size')),
  skirt: {
    women: [
      rule('waist', 25.4, { sizeWaist: 1, drop: 1 }, [14, 8], 'E: McCunn, skirts 1 in'),
      rule('hip', 55, { sizeHip: 1, flare: 1 }, [26, 10], 'E: 2 in at least; between makers J'),
      rule('sweep', 180, { sizeHip: 1, flare: 2 }, [150, 20], 'M'),
      rule('skirtLength', 644, {}, [160, 10], 'J: skirts, mean of designs')
    ]
  },
  dress: {
    women: [
      rule('chest', 75, { sizeBust: 1 }, [32, 10], 'E: between a fitted bodice and a shirt dress'),
      rule('waist', -262.7, { chest: 1.1159 }, [45, 12], 'J: dresses, less its odd makers'),
      rule('hip', 75, { sizeHip: 1, flare: 1 }, [35, 10], 'E: between a fitted bodice and a shirt dress'),
      rule('shoulderWidth', 199.1, { chest: 0.2153 }, [14.1, 10], 'J: shirts, women'),
      rule('bicep', 121.7, { chest: 0.2505 }, [20, 8], 'J: shirts, both'),
      rule('sleeveLength', 530.6, { chest: 0.052 }, [18, 8], 'J: shirts, women'),
      rule('bodyLength', 950, {}, [150, 10], 'J: dresses, mean of designs')
    ]
  },
  shirt: {
    women: [
      rule('chest', 120, { sizeBust: 1 }, [40, 10], 'S (140), J’s women’s shirts less'),
      rule('waist', 57.2, { chest: 0.9058 }, [45, 12.3], 'J: upper garments, both'),
      rule('hem', -174.7, { chest: 1.1969 }, [45, 15], 'J: upper garments, both (hip)'),
      rule('shoulderWidth', 199.1, { chest: 0.2153 }, [14.1, 8], 'J: shirts, women; S agrees within 5'),
      rule('sleeveLength', 530.6, { chest: 0.052 }, [18, 8], 'J: shirts, women'),
      rule('neck', 137.3, { chest: 0.2225 }, [10, 4.5], 'J: shirts, both; S agrees within 6'),
      rule('bicep', 121.7, { chest: 0.2505 }, [20, 8], 'J: shirts, both'),
      rule('cuff', -39.2, { chest: 0.2519 }, [18, 8], 'J: shirts, both; S some 15 less'),
      rule('bodyLength', 532.5, { chest: 0.0875 }, [40, 8], 'J: shirts, women')
    ],
    men: [
      rule('chest', 180, { sizeBust: 1 }, [45, 10], 'S (220), casual ones closer (M)'),
      rule('waist', 57.2, { chest: 0.9058 }, [45, 12.3], 'J: upper garments, both'),
      rule('hem', 79.8, { chest: 0.897 }, [30, 12], 'J: upper garments, men'),
      rule('shoulderWidth', 156.8, { chest: 0.2765 }, [13, 6], 'J: shirts, men; S agrees'),
      rule('sleeveLength', 423.6, { chest: 0.1662 }, [22, 8], 'J: shirts, men'),
      rule('neck', 126.5, { chest: 0.2311 }, [9.4, 3.8], 'J: shirts, men; S agrees'),
      rule('bicep', 121.7, { chest: 0.2505 }, [20, 8], 'J: shirts, both'),
      rule('cuff', 100, { chest: 0.12 }, [12, 4], 'S'),
      rule('bodyLength', 534.7, { chest: 0.2229 }, [28, 8], 'J: shirts, men')
    ]
  },
  'knit-top': {
    women: [
      rule('chest', 45, { sizeBust: 1 }, [55, 10], 'J: women’s knit tops about a size’s bust, relaxed; E some 45 more'),
      rule('waist', 57.2, { chest: 0.9058 }, [40, 12.3], 'J: upper garments, both'),
      rule('hem', -132.2, { chest: 1.1185 }, [45, 15], 'J: knit tops, both'),
      SHOULDER,
      rule('sleeveLength', 530.6, { chest: 0.052 }, [18, 8], 'J: shirts, women'),
      rule('bicep', -100.9, { chest: 0.5017 }, [35, 10], 'J: knit tops, both'),
      rule('bodyLength', 495.3, { chest: 0.1021 }, [50, 8], 'J: knit tops, women')
    ],
    men: [
      rule('chest', 85, { sizeBust: 1 }, [45, 10], 'J: men’s knit tops about a size’s chest; E agrees'),
      rule('waist', 57.2, { chest: 0.9058 }, [40, 12.3], 'J: upper garments, both'),
      rule('hem', -132.2, { chest: 1.1185 }, [45, 15], 'J: knit tops, both'),
      SHOULDER,
      rule('sleeveLength', 457.6, { chest: 0.1496 }, [20, 8], 'J: knit tops, both'),
      rule('bicep', 75.7, { chest: 0.3136 }, [30, 8], 'J: upper garments, men'),
      rule('bodyLength', 513.4, { chest: 0.1842 }, [24, 8], 'J: knit tops, men')
    ]
  },
  jumper: {
    women: [
      rule('chest', 70, { sizeBust: 1 }, [55, 12], 'E: relaxed knit; J less'),
      rule('waist', 57.2, { chest: 0.9058 }, [40, 12.3], 'J: upper garments, both'),
      rule('hem', -192.2, { chest: 1.1185 }, [50, 15], 'J: knit tops; a rib 60 less (M)'),
      SHOULDER,
      rule('sleeveLength', 540, { chest: 0.052 }, [20, 10], 'J: shirts, women; a rib turned back (M)'),
      rule('bicep', 247.1, { chest: 0.1401 }, [38, 10], 'J: jumpers, both'),
      rule('bodyLength', 566.4, { chest: 0.0278 }, [50, 10], 'J: jumpers, women')
    ],
    men: [
      rule('chest', 110, { sizeBust: 1 }, [50, 12], 'J: men’s jumpers about a size’s chest; E agrees'),
      rule('waist', 57.2, { chest: 0.9058 }, [40, 12.3], 'J: upper garments, both'),
      rule('hem', -192.2, { chest: 1.1185 }, [50, 15], 'J: knit tops; a rib 60 less (M)'),
      SHOULDER,
      rule('sleeveLength', 457.6, { chest: 0.1496 }, [20, 10], 'J: knit tops, both'),
      rule('bicep', 247.1, { chest: 0.1401 }, [38, 10], 'J: jumpers, both'),
      rule('bodyLength', 513.4, { chest: 0.1842 }, [24, 10], 'J: knit tops, men')
    ]
  },
  jacket: {
    women: [
      rule('chest', 115, { sizeBust: 1 }, [36, 8], 'E (80 to 120); L 45 more'),
      rule('waist', -165, { chest: 1 }, [45, 10], 'E at half, straight ones at half (M)'),
      rule('hem', 80, { chest: 1 }, [40, 10], 'L'),
      rule('shoulderWidth', 44.6, { chest: 0.3706 }, [20, 8], 'J: outer garments, both'),
      rule('sleeveLength', 530.6, { chest: 0.052 }, [20, 10], 'J: shirts, women'),
      rule('bicep', 75.7, { chest: 0.3136 }, [28, 8], 'J: upper garments, men'),
      rule('bodyLength', 640, {}, [50, 8], 'L')
    ],
    men: [
      rule('chest', 115, { sizeBust: 1 }, [32, 8], 'A (105); casual ones wider'),
      rule('waist', -95, { chest: 1 }, [38, 10], 'M'),
      rule('hem', 79.8, { chest: 0.897 }, [34, 12], 'J: upper garments, men'),
      rule('shoulderWidth', 44.6, { chest: 0.3706 }, [20, 8], 'J: outer garments, both'),
      rule('sleeveLength', 643.8, { chest: -0.021 }, [15, 12], 'J: jackets, men, long-sleeved casual ones left out (10 less, M)'),
      rule('bicep', 75.7, { chest: 0.3136 }, [28, 8], 'J: upper garments, men'),
      rule('bodyLength', 757, {}, [25, 6], 'A')
    ]
  }
}

/** A maker's size as a whole, apart from the chart: larger or smaller at every girth (M). */
export const WHOLE_SIZE_BETWEEN = 15

/** A size by the names that rules have for it, all of it so much larger. */
export const asKnown = ({ bust, waist, hip, band }: SizeBody, larger = 0): Record<string, number> => ({
  sizeBust: bust + larger,
  sizeWaist: waist + larger,
  sizeHip: hip + larger,
  band: band + larger
})

/** Bodies that sizes are cut for. Women: a US pattern-size chart (misses 6 to 20, women 40 to 50), inches. */
const WOMEN_IN = [
  [30.5, 23, 32.5],
  [31.5, 24, 33.5],
  [32.5, 25, 34.5],
  [34, 26.5, 36],
  [36, 28, 38],
  [38, 30, 40],
  [40, 32, 42],
  [42, 34, 44],
  [44, 37, 46],
  [46, 39, 48],
  [48, 41.5, 50],
  [50, 44, 52],
  [52, 46.5, 54],
  [54, 49, 56]
] as const
const INCH = 25.4
export interface SizeBody {
  bust: number
  waist: number
  hip: number
  /** A garment's waist of this size where most bands lie. */
  band: number
}
/** 60 below the natural waist a woman’s girth has gone 0.42 of the way to the hip (cutters' tables, M). */
const BAND_SHARE = 0.42
const WOMEN: SizeBody[] = WOMEN_IN.map(([bust, waist, hip]) => ({
  bust: bust * INCH,
  waist: waist * INCH,
  hip: hip * INCH,
  band: (waist + BAND_SHARE * (hip - waist)) * INCH
}))
/** Men: a waist of 26 to 52 in by 2 (P, C: a garment's waist lies 38 above its label), a chest of 34 to 56 in by 2; the rest by the survey's lines. */
const BAND_OVER_LABEL = 38
const MEN_BELOW: SizeBody[] = Array.from({ length: 14 }, (_, i) => {
  const waist = (26 + 2 * i) * INCH
  return { bust: 0.693 * waist + 406, waist, hip: 0.601 * waist + 454, band: waist + BAND_OVER_LABEL }
})
const MEN_ABOVE: SizeBody[] = Array.from({ length: 12 }, (_, i) => {
  const bust = (34 + 2 * i) * INCH
  const waist = 1.132 * bust - 258
  return { bust, waist, hip: 0.601 * waist + 454, band: waist + BAND_OVER_LABEL }
})
export const isBelow = (kind: Kind): boolean => kind === 'trousers' || kind === 'jeans' || kind === 'skirt'
export const sizesOf = (kind: Kind, sex: Sex): readonly SizeBody[] => (sex === 'women' ? WOMEN : isBelow(kind) ? MEN_BELOW : MEN_ABOVE)
