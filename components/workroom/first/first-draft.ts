/** Everything typed and chosen on the first visit: kept until it is saved. */
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import type { Units } from '../../../core/length.ts'
import type { Level } from '../../../core/plan/means.ts'
import type { BodyMeasureId } from '../../../core/wearer/body.ts'
import { inUnits } from '../settings/sewing.tsx'
import type { GarmentFields, PersonFields } from '../shown.ts'
import { typedLength } from '../typed.ts'
import type { Laid } from '../wardrobe/garment-typed.ts'
import type { ShoppedFor } from './shops-for.ts'

export interface FirstDraft {
  step: 'what' | 'sewing' | 'body' | 'garment'
  /** Where it goes on to from the sewing. */
  towards: 'body' | 'garment'
  name: string
  units: Units
  /** ISO 4217; '' for none. */
  currency: string
  level: Level
  tailor: boolean
  chosen: ShoppedFor[]
  body: Partial<Record<BodyMeasureId, string>>
  kind: GarmentKind
  /** How the girths of the garment are measured. */
  laid: Laid
  garment: Partial<Record<PointId, string>>
}

export const firstDraft = (units: Units, currency = ''): FirstDraft => ({
  step: 'what',
  towards: 'body',
  name: '',
  units,
  currency,
  level: 3,
  tailor: false,
  chosen: [],
  body: {},
  kind: 'trousers',
  laid: 'flat',
  garment: {}
})

export interface BodyTaken {
  measures: { measure: BodyMeasureId; mm: number; stated: string }[]
  problems: Partial<Record<BodyMeasureId, string>>
}

/** The fields asked for as figures: an empty one is left out, a bad one is a problem. */
export function bodyTaken(asked: readonly BodyMeasureId[], { body, units }: Pick<FirstDraft, 'body' | 'units'>): BodyTaken {
  const taken: BodyTaken = { measures: [], problems: {} }
  for (const measure of asked) {
    const stated = (body[measure] ?? '').trim()
    if (stated === '') continue
    const length = typedLength(stated, units)
    if (length.ok) taken.measures.push({ measure, mm: length.value, stated })
    else taken.problems[measure] = length.problem
  }
  return taken
}

/** Who it is, and what they can sew, as far as the first visit asks. */
export type FirstPerson = Pick<PersonFields, 'name' | 'units' | 'currency' | 'means'>
export const personOf = ({ name, units, currency, level, tailor }: FirstDraft): FirstPerson => ({
  name: name.trim(),
  currency,
  ...inUnits({ level, tailor }, units)
})

/** What every step is given. */
export interface FirstVisitProps {
  draft: FirstDraft
  onDraft: (draft: FirstDraft) => void
  onBody: (person: FirstPerson, measures: BodyTaken['measures']) => void
  onGarment: (person: FirstPerson, garment: Pick<GarmentFields, 'kind' | 'measures'>) => void
  /** To the full form; what was typed goes along. */
  onSkip: () => void
  onSample: () => void
}
