/** A garment's measures as typed: text and flat or around for each point, and the way to figures and back. Pure. */

import type { GarmentKind } from '../../../core/ids/kinds.ts'
import { isGirth, POINTS_OF, type PointId } from '../../../core/ids/points.ts'
import type { Units } from '../../../core/length.ts'
import type { GarmentFields } from '../shown.ts'
import { typedLength } from '../typed.ts'

export type Laid = 'flat' | 'around'
export interface PointTyped {
  text: string
  laid: Laid
}
export type PointsTyped = Partial<Record<PointId, PointTyped>>

const FLAT = ' flat'

/** The fields of a garment that is kept; what was typed comes back as it was typed. */
export function typedOf(measures: GarmentFields['measures']): PointsTyped {
  const typed: PointsTyped = {}
  for (const { point, stated } of measures) {
    const flat = stated.endsWith(FLAT)
    typed[point] = { text: flat ? stated.slice(0, -FLAT.length) : stated, laid: flat ? 'flat' : 'around' }
  }
  return typed
}

/** The points asked for: those of the kind, and any other that something was typed for. */
export function pointsAsked(kind: GarmentKind, typed: PointsTyped): PointId[] {
  const own = POINTS_OF[kind]
  const others: PointId[] = POINTS_OF.other.filter((point) => !own.includes(point) && (typed[point]?.text ?? '').trim() !== '')
  return [...own, ...others]
}

export interface MeasuresTaken {
  measures: GarmentFields['measures']
  problems: Partial<Record<PointId, string>>
}

/** Every field as a figure; a flat girth is doubled, an empty field is left out, a bad one is a problem. */
export function measuresFrom(typed: PointsTyped, units: Units): MeasuresTaken {
  const taken: MeasuresTaken = { measures: [], problems: {} }
  for (const point of POINTS_OF.other) {
    const field = typed[point]
    if (field === undefined || field.text.trim() === '') continue
    const length = typedLength(field.text, units)
    const flat = isGirth(point) && field.laid === 'flat'
    if (!length.ok) taken.problems[point] = length.problem
    else if (flat && length.value > MOST_FLAT_MM) taken.problems[point] = 'workroom.length.too-large'
    else taken.measures.push({ point, mm: length.value * (flat ? 2 : 1), stated: withUnit(field.text.trim(), units) + (flat ? FLAT : '') })
  }
  return taken
}
const MOST_FLAT_MM = 2500

/** A bare number keeps the unit it was typed in, so that it means the same when the units are changed. */
const withUnit = (text: string, units: Units): string => {
  const bare = typedLength(text, 'cm')
  const other = typedLength(text, 'in')
  return bare.ok && other.ok && bare.value !== other.value ? `${text} ${units}` : text
}
