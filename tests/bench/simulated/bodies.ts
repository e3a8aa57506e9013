/** People as they truly are, and what they say of themselves. */
import { chance, type Figures, normal, type Random } from './chance.ts'
import { MEASURED, type Measured, type Sex, SURVEY } from './survey.ts'

/** The lower triangle whose product with its own transpose is the table of correlations. */
function triangle(sex: Sex): number[][] {
  const { correlation } = SURVEY[sex]
  const lower: number[][] = []
  for (let i = 0; i < MEASURED.length; i++) {
    const row: number[] = []
    for (let j = 0; j <= i; j++) {
      const wanted = i === j ? 1 : (correlation[i]?.[j] ?? 0)
      const done = row.reduce((sum, mine, k) => sum + mine * (lower[j]?.[k] ?? (j === i ? mine : 0)), 0)
      row.push(i === j ? Math.sqrt(Math.max(1e-9, wanted - done)) : (wanted - done) / (lower[j]?.[j] ?? 1))
    }
    lower.push(row)
  }
  return lower
}
const LOWER: Record<Sex, number[][]> = { women: triangle('women'), men: triangle('men') }

/** One person's measures as the survey takes them. */
export function surveyed(random: Random, sex: Sex): Record<Measured, number> {
  const { mean, sd } = SURVEY[sex]
  const plain = MEASURED.map(() => normal(random))
  return Object.fromEntries(
    MEASURED.map((measure, i) => {
      const together = (LOWER[sex][i] ?? []).reduce((sum, weight, k) => sum + weight * (plain[k] ?? 0), 0)
      return [measure, (mean[i] ?? 0) + (sd[i] ?? 0) * together]
    })
  ) as Record<Measured, number>
}

export interface Person {
  sex: Sex
  /** By the names of ISO 8559-1, mm. `waistGirth` is the natural waist, `waistbandGirth` where this person wears a band. */
  body: Figures
  /** The body's girth so far below the natural waist. */
  girthBelow: (mm: number) => number
  /** The front rise that reaches the navel. */
  navelRise: number
  /** How far the navel lies below the natural waist. */
  navelBelow: number
}

/**
 * The natural waist: from the navel's girth after Heinz, Peterson, Johnson and Kerk 2003 (J. Statistics Education 11(2), 260 women and 247 men;
 * both girths on the same person). Its waist is the mean of a contracted and a relaxed reading, some 20 to 30
 * under the natural waist of ISO 8559: 25 are given back.
 */
const NATURAL = {
  women: { intercept: 165, slope: 0.636, sd: 42 },
  men: { intercept: 35, slope: 0.924, sd: 42 }
}
const CONTRACTED_MM = 25
/** Levels and the rise that reaches the navel: lines worked out from ANSUR II; stature and hip, mm. */
const LEVELS = {
  women: { navelBelow: 46, navelSd: 17, hipBelow: [-5.5, 0.121, 17], rise: [27, 0.038, 0.194] },
  men: { navelBelow: 35, navelSd: 19, hipBelow: [18.2, 0.105, 21], rise: [1, 0.001, 0.293] }
} as const
const RISE_SD = 25
/** Where a band is liked, below the natural waist: women about the top of the hip bone, men some 25 below the navel (common practice). */
const LIKED_BAND = { women: [30, 25], men: [58, 20] } as const
/**
 * Over the kneecap, not the lower thigh of the survey: its mean after Heinz and others 2003 (82 + 0.283 hip women, 121 + 0.257 hip men). Shoulder
 * point to shoulder point over the nape is some 35 more than the straight breadth (from memory).
 */
const KNEE = { women: 371, men: 383 }
const OVER_THE_NAPE = 35

export function person(random: Random, sex: Sex): Person {
  const taken = surveyed(random, sex)
  const { intercept, slope, sd } = NATURAL[sex]
  const natural = Math.min(taken.navelWaist - 3, intercept + slope * taken.navelWaist + normal(random, CONTRACTED_MM, sd))
  const levels = LEVELS[sex]
  const navelBelow = Math.max(12, normal(random, levels.navelBelow, levels.navelSd))
  const hipBelow = Math.max(
    navelBelow + 60,
    levels.hipBelow[0] + levels.hipBelow[1] * taken.stature + normal(random, 0, levels.hipBelow[2])
  )
  const girthBelow = (mm: number): number => {
    if (mm <= 0) return natural
    if (mm < navelBelow) return natural + ((taken.navelWaist - natural) * mm) / navelBelow
    const share = Math.min(1, (mm - navelBelow) / (hipBelow - navelBelow))
    return taken.navelWaist + (taken.hip - taken.navelWaist) * share
  }
  const [liked, likedSd] = LIKED_BAND[sex]
  const [rise, byStature, byHip] = levels.rise
  const knee = KNEE[sex] + 0.75 * (taken.lowerThigh - (SURVEY[sex].mean[MEASURED.indexOf('lowerThigh')] ?? 0)) + normal(random, 0, 10)
  return {
    sex,
    girthBelow,
    navelBelow,
    navelRise: rise + byStature * taken.stature + byHip * taken.hip + normal(random, 0, RISE_SD),
    body: {
      stature: taken.stature,
      bustGirth: taken.bust,
      waistGirth: natural,
      waistbandGirth: girthBelow(normal(random, liked, likedSd)),
      hipGirth: taken.hip,
      thighGirth: taken.thigh,
      kneeGirth: knee,
      calfGirth: taken.calf,
      heelGirth: taken.heel,
      neckGirth: taken.neck,
      upperArmGirth: taken.biceps,
      wristGirth: taken.wrist,
      shoulderWidth: taken.biacromial + normal(random, OVER_THE_NAPE, 6),
      armLength: taken.arm,
      insideLegLength: taken.insideLeg
    }
  }
}

/**
 * Errors of a person's own tape, sd in mm: large girths 8 (duplicate self-measures 2 to 19, Barrios and others 2016, BMC Med Res Methodol 16:49; an
 * expert may err by 9, ISO 20685), small ones 4, lengths 9. Two fifths of it is a habit that all of one person's figures share.
 */
const OWN_TAPE = { large: 8, small: 4, length: 9 }
const HABIT_SHARE = 0.4
const SMALL = new Set(['kneeGirth', 'calfGirth', 'heelGirth', 'neckGirth', 'upperArmGirth', 'wristGirth'])

/** How far off all of a person's own figures are together, in sd. */
export const ownHabit = (random: Random): number => normal(random)

export function ownTape(random: Random, measure: string, mm: number, habit: number): number {
  const sd = SMALL.has(measure) ? OWN_TAPE.small : measure.endsWith('Girth') ? OWN_TAPE.large : OWN_TAPE.length
  return Math.round((mm + sd * (Math.sqrt(HABIT_SHARE) * habit + Math.sqrt(1 - HABIT_SHARE) * normal(random))) / 5) * 5
}

/** How many tell each measure of their own (from memory). */
const TELLS: Record<string, Record<Sex, number>> = {
  stature: { women: 0.97, men: 0.97 },
  bustGirth: { women: 0.95, men: 0.9 },
  hipGirth: { women: 0.95, men: 0.8 },
  thighGirth: { women: 0.3, men: 0.25 },
  insideLegLength: { women: 0.45, men: 0.55 },
  shoulderWidth: { women: 0.35, men: 0.4 },
  armLength: { women: 0.3, men: 0.35 },
  neckGirth: { women: 0.1, men: 0.5 },
  upperArmGirth: { women: 0.2, men: 0.15 },
  kneeGirth: { women: 0.05, men: 0.05 },
  calfGirth: { women: 0.12, men: 0.08 },
  wristGirth: { women: 0.08, men: 0.08 }
}
/** The waist is told as the natural one or where the band is worn, by some as both (from memory). */
const NATURAL_WAIST_TOLD = { women: 0.75, men: 0.4 }
const BOTH_WAISTS = 0.2

export function toldOf(random: Random, { sex, body }: Pick<Person, 'sex' | 'body'>, habit: number): Figures {
  const named = Object.keys(TELLS).filter((measure) => chance(random, TELLS[measure]?.[sex] ?? 0))
  const natural = chance(random, NATURAL_WAIST_TOLD[sex])
  const both = chance(random, BOTH_WAISTS)
  if (natural || both) named.push('waistGirth')
  if (!natural || both) named.push('waistbandGirth')
  return Object.fromEntries(named.map((measure) => [measure, ownTape(random, measure, body[measure] ?? 0, habit)]))
}
