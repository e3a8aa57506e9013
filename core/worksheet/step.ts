/** The shape of a row in the tables of steps, of what it is laid on, and of the step it makes. All lengths mm. */
import type { Preparation } from '../alterations/minutes.ts'
import type { Line } from '../alterations/row.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { ConditionId } from '../garment/garment-input.ts'
import type { AlterationId } from '../ids/alterations.ts'
import type { PointId } from '../ids/points.ts'
import type { Job, Plan } from '../plan/plan.ts'
import type { Reason, Values } from '../words/reason.ts'
import type { ClothSetup } from './cloth-setup.ts'
import type { Thing } from './things.ts'

/** What the hands do. Cautions, tools and whether it can be taken back follow from it. */
export type Act = 'look' | 'pin' | 'try' | 'mark' | 'unpick' | 'baste' | 'sew' | 'hand' | 'cut' | 'press' | 'wash' | 'fill'

/** Order of work as the trade does it: each part is done before the next. */
export const PARTS = ['arrival', 'ready', 'mending', 'structure', 'waist', 'legs', 'body', 'sleeves', 'closures', 'hems', 'finish'] as const
export type Part = (typeof PARTS)[number]
/** Inside a part: all that is fitted, then what is opened once for all, the work, and what is closed once for all. */
export const STAGES = ['fit', 'open', 'work', 'close', 'last'] as const
export type Stage = (typeof STAGES)[number]

/** What is taken apart and put together again: the preparations that jobs share, and what a job opens by itself. */
export type Opened =
  | Preparation
  | 'zip'
  | 'casing'
  | 'rib'
  | 'bones'
  | 'strap'
  | 'dart'
  | 'shoulder'
  | 'waist-seam'
  | 'neck-edge'
  | 'vent'
  | 'back-seam'
  | 'closure'
  | 'part-seam'
  | 'felled-seam'
  | 'pleats'

/** A figure as a table gives it; its name is the message `figure.<is>`. */
export interface Mark {
  is: string
  mm: number
  /** Where it is measured, mm down the seam; and other values of its name. */
  values?: Values
}

/** A job laid on its garment: what a row of steps is worked out from. */
export interface JobOn {
  job: Job
  plan: Plan
  garment: Garment
  /** The lines of its row on this garment; empty where an id has no row. */
  lines: readonly Line[]
  cloth: ClothSetup
  /** What its row opens, shared with other jobs. */
  opens: readonly Preparation[]
  /** Other jobs of the plan. */
  beside: ReadonlySet<AlterationId>
}

/** One step of a job, of an opening, or of a mend, as data. */
export interface StepRow<On = JobOn> {
  /** The message `step.<does>`. */
  does: string
  act: Act
  /** Laid on only where this holds. */
  when?(on: On): boolean
  figures?(on: On): Mark[]
  values?(on: On): Values
  /** What it takes besides what its act always takes. */
  uses?: readonly Thing[]
  /** Cautions besides those of its act, `caution.<id>`. */
  mind?: readonly string[]
  opens?: Opened
  closes?: Opened
}

/** The steps of one alteration. */
export interface StepsRow {
  id: AlterationId
  /** Not given: either way. */
  direction?: 'less' | 'more'
  part: Part
  /** Before anything is opened: measured, pinned, tried. */
  fit: readonly StepRow[]
  work: readonly StepRow[]
}

export interface Figure {
  /** Which figure it is, in any language: `offset`, `fold`, `cut` … */
  is: string
  name: string
  mm: number
  values: Values
}
export interface Step {
  /** Unique on a sheet: what it belongs to and what is done. */
  id: string
  part: Part
  stage: Stage
  act: Act
  /** null: it belongs to the whole sheet, or to several jobs. */
  alteration: AlterationId | null
  condition: ConditionId | null
  does: Reason
  figures: Figure[]
  /** What cannot be taken back; always after a try-on. */
  irreversible: boolean
  tryOn: boolean
  /** Each said on the first step that needs it, and not again. */
  cautions: string[]
  /** Which cautions they are, in any language. */
  minds: string[]
  /** What is opened or closed here. */
  opens: Opened | null
  closes: Opened | null
  /** Everything used here is in `gather`. */
  uses: Thing[]
}

/** A point as it is, or as it is thought to be. */
export const pointMm = (garment: Garment, point: PointId, otherwise: number): number => garment.points.get(point)?.mm ?? otherwise
