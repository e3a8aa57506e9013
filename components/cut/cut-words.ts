/** A cut in one line of words: "low rise, bootcut, full length". */
import type { CutRead } from '../../core/garment/cut.ts'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { Words } from '../words.tsx'
import { facetsAsked } from './cut-choices.ts'

/** What was told of the cut and what shows in the figures; '' where there is nothing. What is only assumed is left to the choices. */
export function cutWords(kind: GarmentKind, cut: CutRead, { t, inner }: Words): string {
  const known = facetsAsked(kind, cut).flatMap((facet) => {
    const read = cut[facet]
    return read === undefined || read.from === 'assumed' ? [] : [inner(`cut.${facet}.${read.value}`)]
  })
  return known.length === 0 ? '' : t('cut.line', { words: known.join(', ') })
}
