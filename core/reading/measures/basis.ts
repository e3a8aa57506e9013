/**
 * Flat or around, by evidence. Each piece is named and weighed in one table; the pieces add (logarithms of odds for flat).
 * Close sums keep both readings.
 */
import type { GarmentKind } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import { logLikely } from '../quantities/plausible.ts'

export type Evidence =
  /** “pit to pit”, “across the waist”, “waist circumference”: the name itself */
  | 'name-flat'
  | 'name-around'
  /** a word beside the figure: flat, across; around, circumference */
  | 'word-flat'
  | 'word-around'
  /** its double stands beside it, or “x2” */
  | 'doubled'
  | 'halved'
  /** a heading over the list or a note under it */
  | 'list-flat'
  | 'list-around'
  /** “bust 35, best on a 34”: as large as the body it is meant for, or half of it */
  | 'advised-flat'
  | 'advised-around'

/** From memory, set by trial on listings of our own: words near outweigh headings, and what cannot be worn outweighs both. */
export const WEIGHT: Record<Evidence, number> = {
  'name-flat': 7,
  'name-around': -7,
  'word-flat': 7,
  'word-around': -7,
  doubled: 9,
  halved: -9,
  'list-flat': 4,
  'list-around': -3,
  'advised-flat': 6,
  'advised-around': -9
}
/** What a heading adds to a word beside the figure that says the same: both are one claim. */
const SAID_AGAIN = 0.5
const SAME_CLAIM: [Evidence, Evidence][] = [
  ['word-flat', 'list-flat'],
  ['word-around', 'list-around']
]

/** What the words say: logarithm of odds for flat. */
function weightOf(evidence: readonly Evidence[]): number {
  let sum = evidence.reduce((total, one) => total + WEIGHT[one], 0)
  for (const [word, list] of SAME_CLAIM) if (evidence.includes(word) && evidence.includes(list)) sum -= WEIGHT[list] * (1 - SAID_AGAIN)
  return sum
}
/** How far the other girths of the same list pull this one. */
const NEIGHBOURS = 2
/** The same where one of them is told to be a circumference, and none to lie flat. */
const NEIGHBOURS_TOLD = 2.5
const TOLD_AROUND = new Set<Evidence>(['word-around', 'name-around', 'halved'])
const SETTLES = new Set<Evidence>(['word-flat', 'word-around', 'name-flat', 'name-around', 'doubled', 'halved'])
/** Small girths of a leg or a sleeve are nearly always laid flat when nothing is said (common practice, no source). */
const HABIT: Partial<Record<PointId, number>> = {
  legOpening: 1,
  thigh: 0.5,
  knee: 1,
  cuff: 1,
  bicep: 1,
  hem: 1,
  armhole: 1.5,
  calf: 0.5,
  elbow: 1
}
/** What a girth's own size still says once a settled girth bears on it (from memory, set by trial). */
const OWN_SIZE_WEIGHT = 0.7
/** Under this sum nothing is sure. */
const UNSURE = 1.1

export interface GirthEvidence {
  point: PointId
  /** As stated, mm. */
  mm: number
  /** How far it gives, as stated, mm: a shirred waist is worn between what it lies at and what it pulls to. */
  stretchedMm?: number
  evidence: Evidence[]
}
export interface BasisJudged {
  basis: 'flat' | 'around'
  from: 'stated' | 'judged'
  close: boolean
}

/** How plausible flat is against around, for this kind and point. */
export const plausibility = (girth: GirthEvidence, kind: GarmentKind | null, habit = true): number => {
  const { point } = girth
  const mm = wornMm(girth)
  return logLikely(mm * 2, point, kind) - logLikely(mm, point, kind) + (habit ? (HABIT[point] ?? 0) : 0)
}

const wornMm = ({ mm, stretchedMm }: GirthEvidence): number => (stretchedMm === undefined ? mm : Math.sqrt(mm * stretchedMm))

/**
 * What one girth is of another on the same garment: centre and spread of the ratio's logarithm. Body ratios of ANSUR II means
 * (waist/chest 0.89–0.91, waist/hip 0.84–0.92, thigh/hip 0.60–0.61) and finished tables (knee/thigh 0.78, hem/thigh 0.70), widened from memory.
 */
const PROPORTION: [PointId, PointId, number, number][] = [
  ['waist', 'chest', 0.88, 0.13],
  ['waist', 'hip', 0.8, 0.12],
  ['chest', 'hip', 0.96, 0.12],
  ['underbust', 'chest', 0.86, 0.1],
  ['hem', 'chest', 1, 0.16],
  ['hem', 'waist', 1.08, 0.18],
  ['thigh', 'hip', 0.61, 0.1],
  ['thigh', 'waist', 0.75, 0.15],
  ['knee', 'thigh', 0.76, 0.14],
  ['legOpening', 'thigh', 0.68, 0.28],
  ['legOpening', 'knee', 0.92, 0.25]
]
const FARTHEST_PROPORTION = 3.5

function ratioFit(ratio: number, centre: number, spread: number): number {
  const z = Math.log(ratio / centre) / spread
  return -Math.min((z * z) / 2, 12)
}

/** How a settled girth of the same garment bears on another: ln odds for flat. */
function proportion(girth: GirthEvidence, other: { point: PointId; mm: number }): number {
  const mm = wornMm(girth)
  for (const [a, b, centre, spread] of PROPORTION) {
    const turned = a === other.point && b === girth.point
    if (!turned && !(a === girth.point && b === other.point)) continue
    const lead = turned
      ? ratioFit(other.mm / mm / 2, centre, spread) - ratioFit(other.mm / mm, centre, spread)
      : ratioFit((mm * 2) / other.mm, centre, spread) - ratioFit(mm / other.mm, centre, spread)
    return Math.max(-FARTHEST_PROPORTION, Math.min(FARTHEST_PROPORTION, lead))
  }
  return 0
}

/** The surest girths bear on the others; more than these are of several garments. */
const MOST_SETTLED = 12

/** The basis of every girth of one garment, judged together: the surest first, each then bearing on the rest. */
export function judgeBasis(girths: readonly GirthEvidence[], kind: GarmentKind | null): BasisJudged[] {
  const byWords = girths.map(({ evidence }) => weightOf(evidence))
  // a circumference that is told as such speaks for the small girths of its list too
  const told = girths.flatMap(({ evidence }) => evidence.filter((one) => SETTLES.has(one)))
  const around = told.length > 0 && told.every((one) => WEIGHT[one] < 0)
  const own = girths.map((girth, index) => (byWords[index] as number) + plausibility(girth, kind, !around))
  // a list of half girths shows in its other figures: each leans by its own sum, no farther than a step
  const leans = own.map((sum) => Math.tanh(sum / 3))
  const all = leans.reduce((sum, lean) => sum + lean, 0)
  const order = girths.map((_, index) => index).sort((a, b) => Math.abs(own[b] as number) - Math.abs(own[a] as number))
  let listDisproved = false
  let listHolds = false
  const settled: { point: PointId; mm: number }[] = []
  const judged: BasisJudged[] = []
  for (const index of order) {
    const girth = girths[index] as GirthEvidence
    // a list of whole girths that is said to lie flat was laid flat to be measured around
    const disproved = listDisproved && girth.evidence.includes('list-flat') && !girth.evidence.includes('word-flat')
    const stated = byWords[index] as number
    const claimed = stated - (disproved ? WEIGHT['list-flat'] : 0)
    const others = girths.length > 1 ? (all - (leans[index] as number)) / (girths.length - 1) : 0
    const fromSettled = settled.reduce((sum, other) => sum + proportion(girth, other), 0)
    // what another girth of the garment tells is not to be told twice
    const ownSize = (own[index] as number) - stated
    const neighbours = around ? NEIGHBOURS_TOLD : NEIGHBOURS
    const sum = claimed + ownSize * (fromSettled === 0 ? 1 : OWN_SIZE_WEIGHT) + neighbours * others + fromSettled
    const basis = sum > 0 ? 'flat' : 'around'
    if (girth.evidence.includes('list-flat')) {
      if (basis === 'flat') listHolds = true
      else if (!girth.evidence.some((one) => TOLD_AROUND.has(one)) && !listHolds) listDisproved = true
    }
    const agrees = stated !== 0 && stated > 0 === sum > 0
    judged[index] = {
      basis,
      from: agrees ? 'stated' : 'judged',
      close: agrees ? Math.abs(sum) < 0.3 : Math.abs(sum) < UNSURE || stated !== 0
    }
    if (settled.length < MOST_SETTLED) settled.push({ point: girth.point, mm: basis === 'flat' ? girth.mm * 2 : girth.mm })
  }
  return judged
}
