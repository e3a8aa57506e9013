/** The shape of a row in the tables of alterations, and of the option it makes on one garment. */
import type { Garment } from '../garment/garment-as-worn.ts'
import type { AlterationId } from '../ids/alterations.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { SeamId } from '../ids/seams.ts'
import type { Saying } from '../words/reason.ts'
import type { Penalty, Preparation } from './minutes.ts'

export type Effects = Partial<Record<PointId, number>>

/** One amount. A row has one, or several along one smooth line. */
export interface Line {
  /** The point it is meant for. */
  point: PointId
  /** Change of each point, mm per mm of the amount. */
  effects: Effects
  /** Default limit, mm; never above `physicalMm`. */
  capMm: number
  /** What is physically there, whatever the person allows; not given: no such bound. */
  physicalMm?: number
  /** Beyond this: allowed, warned, at a burden a mm. */
  softMm?: number
  because: Saying
  /** The stitching lines that move, and how many mm of amount one mm of line gives (2 a seam in a girth, 1 in a length). */
  seams: SeamMove[]
}

export interface SeamMove {
  seam: SeamId
  mmPerOffset: number
  outward?: boolean
  /** Past this amount, mm, twice as many lines share it, each moving half as far: four darts instead of two. */
  twicePastMm?: number
}
/** How many mm of amount one mm of this line gives when all of the amount is `amountMm`. */
export const perOffsetOf = ({ mmPerOffset, twicePastMm }: SeamMove, amountMm: number): number =>
  twicePastMm !== undefined && amountMm > twicePastMm ? 2 * mmPerOffset : mmPerOffset

/** A limit that several options draw on together: Σ share × amount ≤ budget. */
export interface SharedLimit {
  group: string
  /** By line of the option. */
  shares: number[]
  budgetMm: number
  because: Saying
}

export interface Tier {
  line: number
  beyondMm: number
  level: number
  minutes: number
  because: Saying
}

export interface Row {
  id: AlterationId
  direction: 'less' | 'more'
  kinds: readonly GarmentKind[]
  /** Is what it works on there (buckles, pleats, a rib)? Where not, it is not spoken of. Reads cut, cloth, kind and use, never the make. */
  there?(garment: Garment): boolean
  /** Why it can't be done on this garment; undefined: it can. */
  unless?(garment: Garment): Saying | undefined
  lines(garment: Garment): Line[]
  shared?(garment: Garment): SharedLimit[]
  tier?(garment: Garment): Tier | undefined
  opens?: readonly Preparation[] | ((garment: Garment) => readonly Preparation[])
  level: number | ((garment: Garment) => number)
  /** Whole job with all it opens, then per 25 mm. */
  minutes: [number, number] | ((garment: Garment) => [number, number])
  /** Old stitching comes to light: cloth that keeps needle holes forbids it. */
  outward?: true
  wovenOnly?: true
  /** The seam that is sewn is in lining cloth: what the outer cloth does to the work does not count. */
  inLining?: true
  /** These seams are re-done: felled ones cost more. */
  reseams?: readonly SeamId[]
  penalties?: readonly Penalty[] | ((garment: Garment) => readonly Penalty[])
  /** Of all rows with this name one is done: ways to the same end. */
  oneOf?: 'leg-length' | 'skirt-length' | 'body-length' | 'sleeve-length' | 'cuff'
  /** What else never goes with it. What moves the same points the other way need not be named: see apart.ts. */
  excludes?: readonly AlterationId[]
  /** One fixed step instead of an amount, mm. */
  fixedMm?: number
  source: string
}

/** An alteration in one direction on one garment: what the planner chooses from. */
export interface Option {
  /** id and direction. */
  key: string
  id: AlterationId
  direction: 'less' | 'more'
  lines: Line[]
  /** Neighbouring amounts of one line differ by at most this, mm. */
  smoothMm: number
  fixedMm?: number
  shared: SharedLimit[]
  tier?: Tier
  opens: readonly Preparation[]
  /** Set-up without what it opens, minutes. */
  setupMinutes: number
  per25Minutes: number
  level: 1 | 2 | 3 | 4 | 5
  /** Stated penalties in minutes: risk, visible change. */
  penaltyMinutes: number
  excludes: readonly AlterationId[]
  /** Only where a point would stay wrong without it. */
  rescue: boolean
}

/** Why a job goes no further, or is not done here: `limit.<code>`. */
export const limit = (code: string, values: Saying['values'] = {}): Saying => ({ code: `limit.${code}`, values })

/** Why an alteration is no option here. */
export interface Refusal {
  id: AlterationId
  direction: 'less' | 'more'
  because: Saying
}
