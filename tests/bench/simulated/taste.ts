/**
 * What a person wants of a garment at each point that touches the body: an ideal, and how far under and over it they still wear it.
 *
 * Sources of the ideals, mm over the body: [E] an ease chart (monsterkonstruktion.se/en/ease: shirts 60 to 100 at the bust, 40 to 80 at the waist, 60
 * to 100 at the hip; jackets 80 to 120, 60 to 100, 80 to 120; knit tops 60 to 120, 40 to 80, 60 to 100; trousers 40 to 60 at the hip; wide from 180).
 * [U] US Army TM 10-227: trousers 13 at the waist, coats 102 to 178. [R] S. Robinson, Costume text ch. 16: trousers 19 to 25 at the waist, 38 to 51 at
 * the seat, 25 at the thigh at least; men's shirts 76. [N] NMSU C-209: thigh 25 to 51, knee 25 at least. [C] D. McCunn: skirts 25 and 51. [S] a shirt
 * table after GB/T 1335: shoulder 15 to 65 over the nape, cuff 45 to 64, men's chest 220. [T] a magazine's rule for sleeves: 51 over the arm at least.
 * The spreads around them, and lengths, M (from memory). Sleeves: half way between a tailor's 3 to 18 over the straight arm
 * (thefineyounggentleman.com; mademan.com) and the 35 to 50 that makers' tables have.
 */
import type { Person } from './bodies.ts'
import { chance, type Figures, normal, type Random } from './chance.ts'
import { type Garment, isAlong } from './garments.ts'
import type { Kind } from './makers.ts'
import type { Sex } from './survey.ts'

export interface Want {
  least: number
  ideal: number
  /** Infinity: it can never be too big. */
  most: number
  /** The body beneath. */
  beneath: number
}

interface Row {
  body: string
  ideal: number
  under: number
  over: number
}
const row = (body: string, ideal: number, under: number, over: number): Row => ({ body, ideal, under, over })
const FREE = Number.POSITIVE_INFINITY

const LEGS = (waist: Row, hip: Row): Record<string, Row> => ({
  waist,
  hip,
  thigh: row('thighGirth', 48, 28, 92), // N, R at least
  knee: row('kneeGirth', 75, 50, FREE), // N 25 at least
  calf: row('calfGirth', 55, 42, FREE), // M
  legOpening: row('foot', 60, 55, FREE), // the foot goes through it, M
  inseam: row('insideLegLength', -15, 28, 24) // M, a flat shoe
})
const LEGS_OF: Record<Sex, Record<string, Row>> = {
  // N: as tight as a waistband is worn; bands on women are bought snug; E 40 to 60
  women: LEGS(row('band', 2, 26, 30), row('hipGirth', 50, 28, 78)),
  // U 13, R 19 to 25; R 38 to 51 at least, wide from E 180
  men: LEGS(row('band', 16, 20, 28), row('hipGirth', 62, 34, 115))
}
/** A closer leg is worn closer: skinny 35 below to 45 over the thigh, slim 20 to 75, wide from 60 (shops' and makers' classes, most of it M). */
const BY_LEG: Record<string, Record<string, number>> = {
  skinny: { thigh: -40, knee: -50, calf: -48 },
  slim: { thigh: -12, knee: -25, calf: -22 },
  wide: { thigh: 45, knee: 60, calf: 40 }
}
const SHIRT = (chest: Row, waist: Row, neck: Row): Record<string, Row> => ({
  chest,
  waist,
  neck,
  hem: row('hipGirth', 80, 62, 110), // E 60 to 100, wide from 180
  shoulderWidth: row('shoulderWidth', 28, 30, 46), // S
  sleeveLength: row('armLength', 28, 28, 34), // half way
  bicep: row('upperArmGirth', 75, 30, 95), // T
  cuff: row('wristGirth', 62, 34, 55) // S
})
const KNIT = (chest: number, hem: number, hemOver: number, sleeve: number): Record<string, Row> => ({
  chest: row('bustGirth', chest, 60, 105), // E 60 to 120, wide from 180
  waist: row('waistGirth', 120, 110, FREE), // E 40 to 80 at least; it hangs from the shoulders
  hem: row('hipGirth', hem, 80, hemOver), // E, less where a rib holds it
  shoulderWidth: row('shoulderWidth', 22, 36, 80), // M, dropped ones are worn too
  sleeveLength: row('armLength', sleeve, 30, 55), // half way; a rib holds what is over
  bicep: row('upperArmGirth', 65, 40, 130) // T
})
const JACKET: Record<string, Row> = {
  chest: row('bustGirth', 105, 52, 90), // E 80 to 120
  waist: row('waistGirth', 135, 75, 105), // U 102 to 178
  hem: row('hipGirth', 95, 62, 95), // E 80 to 120, wide from 180
  shoulderWidth: row('shoulderWidth', 28, 28, 40), // M
  sleeveLength: row('armLength', 20, 26, 34), // half way
  bicep: row('upperArmGirth', 82, 38, 95) // T
}
export const TASTE: Record<Kind, Record<Sex, Record<string, Row>>> = {
  trousers: LEGS_OF,
  jeans: LEGS_OF,
  skirt: {
    women: { waist: row('band', 20, 20, 28), hip: row('hipGirth', 50, 26, 75) }, // C, E
    men: {}
  },
  dress: {
    women: {
      chest: row('bustGirth', 75, 42, 75), // E 40 to 100
      waist: row('waistGirth', 75, 50, 80), // E 40 to 80, wide from 150
      hip: row('hipGirth', 75, 42, 90), // E 40 to 100
      shoulderWidth: row('shoulderWidth', 16, 26, 32), // S
      sleeveLength: row('armLength', 26, 28, 34), // half way
      bicep: row('upperArmGirth', 70, 30, 100) // T
    },
    men: {}
  },
  shirt: {
    // E, wide from 180 and at the waist from 150; a blouse is worn open at the neck (M)
    women: SHIRT(row('bustGirth', 95, 48, 95), row('waistGirth', 110, 70, 80), row('neckGirth', 32, 22, FREE)),
    // between R 76 and S 220; the neck M
    men: SHIRT(row('bustGirth', 135, 60, 95), row('waistGirth', 130, 80, 80), row('neckGirth', 12, 15, 34))
  },
  'knit-top': { women: KNIT(65, -5, 185, 24), men: KNIT(90, 50, 130, 24) },
  jumper: { women: KNIT(80, -50, 220, 28), men: KNIT(105, 30, 150, 28) },
  jacket: { women: JACKET, men: JACKET }
}

/** One's own shift at each point: sd 16 around, 10 along; half of what varies around is one taste for all of one's clothes. */
const SHIFT = { around: 16, along: 10 }
const COMMON_SHARE = 0.5
/** How wide one's own bands are, against the usual. */
const WIDTH_SHARE = 0.25
/**
 * Of what cloth gives, so much lets a garment be smaller, and so much is what it is worn closer by; knits are not worn closer for it. Pulled over a foot
 * it gives more than in wear.
 */
const GIVES = { least: 0.6, ideal: 0.3, foot: 2 }

/** At the least a leg's opening lets the foot through, pointed: 0.97 of heel and instep (M). */
const FOOT_SHARE = 0.97

export interface Taste {
  common: number
  width: number
  /** Wears what hangs straight: waist and hem of a soft top can't be too big. */
  straight: boolean
}
const LIKES_STRAIGHT = 0.5
export const tasteOf = (random: Random): Taste => ({
  common: normal(random),
  width: Math.exp(normal(random, 0, WIDTH_SHARE)),
  straight: chance(random, LIKES_STRAIGHT)
})

/** The body beneath a point. */
const beneath = ({ body, girthBelow }: Person, { body: measure }: Row, bandBelow: number): number => {
  if (measure === 'band') return girthBelow(bandBelow)
  if (measure === 'foot') return FOOT_SHARE * (body.heelGirth ?? 0)
  return body[measure] ?? 0
}

/** What this person wants of this garment, at every point of it that touches the body. */
export function wantsOf(
  random: Random,
  kind: Kind,
  who: Person,
  garment: Garment,
  { common, width, straight }: Taste
): Record<string, Want> {
  const { cloth, figures } = garment
  const wants: Record<string, Want> = {}
  for (const [point, wanted] of Object.entries(TASTE[kind][who.sex])) {
    const shift = isAlong(point)
      ? SHIFT.along * normal(random)
      : SHIFT.around * (Math.sqrt(COMMON_SHARE) * common + Math.sqrt(1 - COMMON_SHARE) * normal(random))
    if (figures[point] === undefined || isSkipped(point, kind, garment)) continue
    const beneathIt = beneath(who, wanted, garment.bandBelow)
    const gives = isAlong(point) ? 0 : cloth.usable * beneathIt
    // a wider shoulder takes half of what is over off the sleeve
    const wider =
      point === 'sleeveLength' ? ((figures.shoulderWidth ?? 0) - (wants.shoulderWidth?.ideal ?? figures.shoulderWidth ?? 0)) / 2 : 0
    const rigid = beneathIt + wanted.ideal + (BY_LEG[garment.cut.leg ?? '']?.[point] ?? 0) + shift - wider
    const ideal = rigid - (cloth.structure === 'woven' ? GIVES.ideal * gives : 0)
    wants[point] = {
      beneath: beneathIt,
      least: rigid - (point === 'legOpening' ? 1 : width) * wanted.under - (point === 'legOpening' ? GIVES.foot : GIVES.least) * gives,
      ideal,
      most:
        isFree(point, wanted, garment) || (straight && STRAIGHT_POINTS.has(point) && STRAIGHT_KINDS.has(kind))
          ? FREE
          : ideal + width * wanted.over
    }
  }
  return wants
}
/** A length that is the cut is no lack; without sleeves there is no shoulder seam. */
const isSkipped = (point: string, kind: Kind, { cropped, sleeves }: Garment): boolean =>
  (point === 'inseam' && cropped) || (point === 'shoulderWidth' && kind === 'dress' && !sleeves)
const STRAIGHT_POINTS = new Set(['waist', 'hem'])
const STRAIGHT_KINDS = new Set<Kind>(['shirt', 'knit-top', 'jumper'])
const isFree = (point: string, { over }: Row, { flared, cut }: Garment): boolean =>
  over === FREE || (flared && point === 'hip') || (cut.leg === 'wide' && point === 'thigh')

/** The usual ease, as those know it who go by rules of thumb. */
export const usualEase = (kind: Kind, sex: Sex): Figures =>
  Object.fromEntries(Object.entries(TASTE[kind][sex]).map(([point, { ideal }]) => [point, ideal]))
export const bodyBeneath = (kind: Kind, sex: Sex, point: string): string | undefined => TASTE[kind][sex][point]?.body
