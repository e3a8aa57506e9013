/** Garments as they truly are: a maker's table at a size, a design of its own, cloth, and how exactly it was sewn. */
import type { Person } from './bodies.ts'
import { chance, type Figures, heavy, normal, oneOf, type Random } from './chance.ts'
import { asKnown, isBelow, type Kind, LEGS, type Leg, RULES, type Rule, type SizeBody, sizesOf, WHOLE_SIZE_BETWEEN } from './makers.ts'
import type { Sex } from './survey.ts'

/** Cloth as it truly is. `usable`: how far it gives in wear, as a share of the body's girth. */
export interface ClothTruth {
  structure: 'woven' | 'knit'
  elastane: number
  usable: number
}
export interface Garment {
  figures: Figures
  cloth: ClothTruth
  /** Facets that a buyer can see, by the names that sellers give them. */
  cut: Record<string, string>
  /** The band sits so far below this person's natural waist; 0 where nothing hangs from a band. */
  bandBelow: number
  /** The hip is cut wide: it stands free. */
  flared: boolean
  /** A length that is the cut, and no lack. */
  cropped: boolean
  sleeves: boolean
}

/**
 * Elastane in trousers: of 273 women's pairs 65 had none, 64 had 1 or 2 %, 144 had 3 and more (github.com/tas09009/thredup-scraper-api); men's and other
 * kinds M. Usable in wear after the share (a shop's and two cloth dealers' classes; `stretch` M): spreads of its own, for two cloths of a share differ.
 */
const ELASTANE: Record<Sex, Record<'0' | '1' | '2' | '4', number>> = {
  women: { '0': 0.24, '1': 0.1, '2': 0.22, '4': 0.44 },
  men: { '0': 0.52, '1': 0.2, '2': 0.22, '4': 0.06 }
}
const USABLE: Record<string, number> = { '0': 0.002, '1': 0.025, '2': 0.05, '4': 0.08 }
const KNIT_USABLE = { mean: 0.07, sd: 0.025 }
const OTHER_STRETCH_SHARE = 0.15

function clothOf(random: Random, kind: Kind, sex: Sex, leg: Leg): ClothTruth {
  if (kind === 'knit-top' || kind === 'jumper' || (kind === 'dress' && chance(random, 0.25))) {
    const elastane = chance(random, kind === 'jumper' ? 0.1 : 0.4) ? 5 : 0
    return { structure: 'knit', elastane, usable: Math.max(0.01, normal(random, KNIT_USABLE.mean + 0.004 * elastane, KNIT_USABLE.sd)) }
  }
  const legs = kind === 'trousers' || kind === 'jeans'
  const drawn = oneOf(random, ELASTANE[sex])
  // nobody cuts a skinny leg of cloth that does not give
  const share = legs ? (leg === 'skinny' && drawn === '0' ? '2' : drawn) : chance(random, OTHER_STRETCH_SHARE) ? '2' : '0'
  return { structure: 'woven', elastane: Number(share), usable: Math.max(0, (USABLE[share] ?? 0) * (1 + normal(random, 0, 0.3))) }
}
/** Stretch is cut closer, so much of what it gives; the tables' means are of cloth that gives this much. */
const CUT_CLOSER: Record<string, number> = { waist: 0.35, hip: 0.5, thigh: 0.6, knee: 0.6 }
const MEAN_USABLE = { women: 0.05, men: 0.02 }

/** Production: sd 7 around, 4 along (makers allow ±25 around a waist, ±13 a thigh or a chest, ±6 a length: casualindustrees; propercloth). */
const SEWN = { around: 7, along: 4 }
const ALONG = new Set(['inseam', 'frontRise', 'backRise', 'shoulderWidth', 'sleeveLength', 'bodyLength', 'skirtLength'])
export const isAlong = (point: string): boolean => ALONG.has(point)
const MAKERS_FREEDOM = 5

/** What a rule says where nothing is off. */
export const byRule = ({ intercept, from }: Rule, known: Readonly<Record<string, number>>): number =>
  Object.entries(from).reduce((sum, [name, slope]) => sum + slope * (known[name] ?? 0), intercept)

/**
 * Which size is one's own: by hip and waist, or by the bust; women's legs by the hip and where a band lies. Men know the waist that usually fits them:
 * 26 under the girth where they wear it (M). Looked at are one's own and one either way.
 */
export function sizeLookedAt(random: Random, kind: Kind, { sex, body, girthBelow }: Person): { size: SizeBody; off: -1 | 0 | 1 } {
  const sizes = sizesOf(kind, sex)
  const b = (measure: string): number => body[measure] ?? 0
  const far = (size: SizeBody): number => {
    if (!isBelow(kind)) return Math.abs(size.bust - b('bustGirth'))
    if (sex === 'men') return Math.abs(size.waist + 26 - b('waistbandGirth'))
    const atBand = kind === 'skirt' ? size.waist - b('waistGirth') : size.band - girthBelow(USUAL_BAND_BELOW)
    return Math.abs(size.hip - b('hipGirth') + atBand)
  }
  const own = sizes.reduce((best, size, place) => (far(size) < far(sizes[best] as SizeBody) ? place : best), 0)
  const off = Number(oneOf(random, { '-1': 0.25, '0': 0.5, '1': 0.25 })) as -1 | 0 | 1
  const place = Math.min(sizes.length - 1, Math.max(0, own + off))
  return { size: sizes[place] as SizeBody, off: (place - own) as -1 | 0 | 1 }
}

/** Where women's bands mostly lie, below the natural waist (cutters' tables: a low waist). */
const USUAL_BAND_BELOW = 60

/** Ankle and cropped legs among women's (M); full ones: 30 to 32 in as makers' regulars, and men's by their label, nearest to one's own. */
const CROPPED_SHARE = { women: 0.28, men: 0.04 }
function insideLeg(random: Random, { sex, body }: Person, cropped: boolean): number {
  if (cropped) return normal(random, 655, 38)
  if (sex === 'women') return normal(random, 772, 28)
  const label = Math.round(((body.insideLegLength ?? 0) - 20) / 50.8) + Number(oneOf(random, { '-1': 0.2, '0': 0.6, '1': 0.2 }))
  return Math.min(914, Math.max(711, label * 50.8)) + normal(random, 0, 8)
}

/** How a band lies on a person: the front rise against the one that reaches the navel, mean of front and back (0.8 of it), then the navel's depth. */
const bandBelowOf = ({ navelRise, navelBelow }: Person, frontRise: number): number =>
  Math.min(150, Math.max(-25, 0.8 * (navelRise - frontRise) + navelBelow))
/** A usual rise, and the girth that a maker adds for each mm that the band lies lower: half of a woman's slope near the navel, and a man's. */
const USUAL_RISE = { women: (band: number) => 99.4 + 0.1728 * band, men: (band: number) => 192.4 + 0.1229 * band }
const GIRTH_PER_MM = { women: 0.55, men: 0.3 }
/** Skirts sit at the natural waist or a little lower; there a size's body widens by 0.42 of hip less waist in 60 (cutters' tables). */
const SKIRT_PER_MM = 1.7

export function garmentOf(random: Random, kind: Kind, who: Person, size: SizeBody): Garment {
  const { sex } = who
  const legs = kind === 'trousers' || kind === 'jeans'
  const leg = oneOf(random, Object.fromEntries(Object.entries(LEGS).map(([name, row]) => [name, row[sex]])) as Record<Leg, number>)
  const cloth = clothOf(random, kind, sex, leg)
  const flared = (kind === 'skirt' || kind === 'dress') && chance(random, 0.45)
  const flare = flared ? Math.abs(normal(random, 150, 120)) + 50 : 0
  const cropped = legs && chance(random, CROPPED_SHARE[sex])
  const sleeves = kind === 'dress' ? chance(random, 0.35) : kind === 'knit-top' ? chance(random, 0.35) : !isBelow(kind)
  const skirtBand = Math.max(0, normal(random, 10, 12))
  const whole = WHOLE_SIZE_BETWEEN * heavy(random, MAKERS_FREEDOM)
  const known: Figures = {
    ...asKnown(size, whole),
    leg: LEGS[leg].thigh,
    flare,
    // a skirt cut to sit lower is cut wider
    drop: kind === 'skirt' ? SKIRT_PER_MM * skirtBand : 0
  }
  const figures: Figures = {}
  if (legs) figures.legOpening = Math.max(230, normal(random, LEGS[leg].opening, 22))
  for (const rule of RULES[kind][sex] ?? []) {
    const drawn = byRule(rule, { ...known, ...figures }) + rule.between * heavy(random, MAKERS_FREEDOM) + rule.within * normal(random)
    figures[rule.point] = drawn * (legs ? 1 - (CUT_CLOSER[rule.point] ?? 0) * (cloth.usable - MEAN_USABLE[sex]) : 1)
    if (rule.point === 'frontRise') known.drop = GIRTH_PER_MM[sex] * (USUAL_RISE[sex](size.band) - drawn)
  }
  if (legs) {
    figures.calf = ((figures.knee ?? 0) + (figures.legOpening ?? 0)) / 2 + normal(random, 5, 12)
    figures.inseam = insideLeg(random, who, cropped)
  }
  if (!sleeves) for (const point of ['sleeveLength', 'bicep', 'cuff']) delete figures[point]
  for (const [point, mm] of Object.entries(figures)) figures[point] = mm + normal(random, 0, isAlong(point) ? SEWN.along : SEWN.around)
  return {
    figures,
    cloth,
    cut: cutSeen(kind, { leg, flare, cropped, sleeves }),
    bandBelow: legs ? bandBelowOf(who, figures.frontRise ?? 0) : kind === 'skirt' ? skirtBand : 0,
    flared,
    cropped,
    sleeves
  }
}

/** From so much more at the hip on it is called flared (M). */
const WIDE_FLARE = 150
function cutSeen(
  kind: Kind,
  { leg, flare, cropped, sleeves }: { leg: Leg; flare: number; cropped: boolean; sleeves: boolean }
): Record<string, string> {
  if (kind === 'trousers' || kind === 'jeans') return { leg, legLength: cropped ? 'ankle' : 'full' }
  const cut: Record<string, string> = {}
  if (kind === 'skirt') cut.silhouette = flare === 0 ? 'pencil' : flare < WIDE_FLARE ? 'a-line' : 'flared'
  if (kind === 'dress') cut.silhouette = flare === 0 ? 'sheath' : flare < WIDE_FLARE ? 'a-line' : 'fit-flare'
  if (kind === 'dress' && !sleeves) cut.sleeve = 'sleeveless'
  if (kind === 'knit-top' && !sleeves) cut.sleeve = 'short'
  if (kind === 'dress' || (kind === 'knit-top' && sleeves)) cut.sleeve ??= 'long'
  return cut
}
