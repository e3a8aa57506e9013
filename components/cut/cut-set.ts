/** What a person set of the cut, in the corrections: one of them holds every facet that was set. Pure. */
import type { Made } from '../../core/garment/garment-input.ts'
import { type Cut, type Facet, isFacetValue } from '../../core/ids/cut.ts'
import type { Correction } from '../../core/reading/reading.ts'

/** Before there was a line for the cut, these were set as parts of the make. */
const BEFORE: Partial<Record<Facet, keyof Made>> = { silhouette: 'skirtShape', sleeve: 'shortSleeves' }

/** What the person set, the last of each facet. */
export const cutSet = (corrections: readonly Correction[]): Cut =>
  Object.assign({}, ...corrections.map((one) => ('cut' in one ? one.cut : {})))

/** Was this facet set, as the cut or, before, as a part of the make? */
export const isSet = (corrections: readonly Correction[], facet: Facet): boolean =>
  cutSet(corrections)[facet] !== undefined || corrections.some((one) => 'made' in one && saysOf(one.made, facet))
const saysOf = (made: Partial<Made>, facet: Facet): boolean => {
  const part = BEFORE[facet]
  return part !== undefined && made[part] !== undefined
}

/** The corrections with a facet set; null: as it was read. What was set of it before gives way. */
export function withFacet(corrections: readonly Correction[], facet: Facet, value: string | null): Correction[] {
  const { [facet]: _, ...others } = cutSet(corrections)
  const cut: Cut = value === null || !isFacetValue(facet, value) ? others : { ...others, [facet]: value }
  const rest = corrections.filter((one) => !('cut' in one)).flatMap((one) => withoutBefore(one, facet))
  return Object.keys(cut).length === 0 ? rest : [...rest, { cut }]
}

/** The corrections without anything that was set of the cut. */
export const withoutCut = (corrections: readonly Correction[]): Correction[] =>
  corrections
    .filter((one) => !('cut' in one))
    .flatMap((one) => withoutBefore(one, 'silhouette'))
    .flatMap((one) => withoutBefore(one, 'sleeve'))

function withoutBefore(one: Correction, facet: Facet): Correction[] {
  const part = BEFORE[facet]
  if (part === undefined || !('made' in one) || one.made[part] === undefined) return [one]
  const { [part]: _, ...made } = one.made
  return Object.keys(made).length === 0 ? [] : [{ made }]
}
