/** A template at true scale: lines, labels and marks in mm, in its own place; pages lay it out. x to the right, y down the garment. */
import { allowanceAt } from '../../garment/construction.ts'
import type { Garment } from '../../garment/garment-as-worn.ts'
import type { Made } from '../../garment/garment-input.ts'
import type { AlterationId } from '../../ids/alterations.ts'
import type { PointId } from '../../ids/points.ts'
import type { SeamId } from '../../ids/seams.ts'
import { INCH_MM, type Units } from '../../length.ts'
import type { Job, Plan } from '../../plan/plan.ts'
import type { Reason, Values } from '../../words/reason.ts'
import type { Box, Line, Spot } from './line-work.ts'

/** What a line is: an edge or seam that is there and stays; a stitching line that the plan makes; one that goes; and what is done along it. */
export type LineRole = 'edge' | 'makes' | 'goes' | 'cut' | 'fold' | 'grain' | 'mark'

export interface TemplateLine {
  role: LineRole
  line: Line
}
export interface Label {
  at: Spot
  text: string
  anchor: 'start' | 'middle' | 'end'
  look?: 'strong' | 'faint'
  /** Turned a quarter to the left. */
  upright?: boolean
  /** What it speaks of: a thin line leads there, on the sheet that has the words. */
  lead?: Spot
}
export interface Template {
  /** Unlike any other of its plan. */
  id: string
  alteration: AlterationId
  title: string
  /** Where it is laid and what is done with it, a sentence each. */
  notes: string[]
  /** What was not told and is worked out or assumed, a sentence each. */
  assumed: string[]
  lines: TemplateLine[]
  labels: Label[]
  /** Around all lines, with room for the labels. */
  box: Box
  /** Lengths that must agree, mm: told to whoever sews, and tested. */
  lengths: Readonly<Record<string, number>>
}

export type Untemplated = { alteration: AlterationId; because: Reason }

/** What a maker of templates is given. */
export interface Asked {
  job: Job
  plan: Plan
  garment: Garment
  /** The sentence of a message, in the person's units. */
  t: (code: string, values?: Values) => string
  units: Units
}

/** A point's figure today, or a usual one; with the sentence that says it was not told. */
export function figureOf({ garment, t }: Asked, point: PointId, usual: number): { mm: number; assumed: string[] } {
  const taken = garment.points.get(point)
  const mm = taken?.mm ?? usual
  const told = taken !== undefined && taken.from !== 'inferred'
  return { mm, assumed: told ? [] : [t('template.worked-out', { point, mm })] }
}

/** A figure of the make, with the sentence that says it was not told. */
export function makeOf({ garment, t }: Asked, part: 'taperLengthMm' | 'hemDepthMm' | 'hipDepthMm'): { mm: number; assumed: string[] } {
  const mm = garment.made[part]
  return { mm, assumed: garment.assumed.includes(part) ? [t(`template.assumed.${part}`, { mm })] : [] }
}

/**
 * Seam allowance that is there, each side, mm, and what is left of it after a line has moved in: half an inch (common practice: side seams keep it).
 * Tailored clothes keep all, so that they can be let out again: then nothing is cut.
 */
export function allowances(garment: Garment, seam: SeamId): { thereMm: number; leaveMm: number | null } {
  const there = allowanceAt(garment.made, seam, garment.told)
  return { thereMm: there > 0 ? there : FELLED_MM, leaveMm: garment.made.tailored ? null : SEAM_LEFT_MM }
}
/** A felled seam lies in about so much cloth (common practice). */
const FELLED_MM = 10
export const SEAM_LEFT_MM = INCH_MM / 2

/** Is this part of the make only assumed? */
export const isAssumed = (garment: Garment, part: keyof Made): boolean => garment.assumed.includes(part)
