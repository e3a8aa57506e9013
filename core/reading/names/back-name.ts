/** “Back 29"”: a name by itself; which of three points it is, the garment and the size of the figure tell. */
import type { GarmentKind } from '../../ids/kinds.ts'
import { SHAPE } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { cue } from '../text/cues.ts'
import { means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'
import type { Label } from './label.ts'

/** What `letter` holds for it: it is settled by its figure, as one-letter names are. */
export const BACK = 'back'
/** “Drop 24"” on a kilt: its length; a smaller one is of something on it. */
export const DROP = 'drop'
export const SHORTEST_DROP_IN = 10

const DROPS = cue('drop')

/** The word alone before its figure, where a part of a list begins. Linear. */
export function backNames({ tokens, terms }: TextRead, quantities: readonly Quantity[]): Label[] {
  const found: Label[] = []
  // “sleeve 25" back 30"”: right behind the figure before it
  const ends = new Set(quantities.map(({ spanTo }) => spanTo))
  for (const { from, spanTo, unit } of quantities) {
    let at = from - 1
    for (let marks = 0; marks < 2 && isOneOf(tokens[at], ':=/>→⇒-'); marks++) at--
    const term = termAt(terms, at)
    const drop = DROPS.test(tokens[at]?.text) && term?.from === at
    if (!term || term.to !== at + 1 || !(drop || (means(term, 'back') && !means(term, 'point', 'detail')))) continue
    const before = tokens[term.from - 1]
    const begins = before === undefined || before.kind === 'break' || isOneOf(before, ',;/.•·*|)') || ends.has(term.from)
    // “sleeve 23 · back 45”: bare, but a part of a list
    const listed =
      (before === undefined || before.kind !== 'word') &&
      (tokens[spanTo] === undefined || /^(?:break|mark)$/.test(tokens[spanTo]?.kind ?? ''))
    if (begins && (unit !== null || at < from - 1 || listed))
      found.push({ from: term.from, to: term.to, role: 'point', points: [], basis: null, weak: false, letter: drop ? DROP : BACK })
  }
  return found
}

/** A back width ends where the shortest back length begins (finished tables: back widths to 480 mm, back lengths from 560). */
const LONGEST_WIDTH_IN = 20.5

export function pointOfBack(kind: GarmentKind | null, inches: number): PointId | null {
  const shape = kind === null ? 'none' : SHAPE[kind]
  if (shape === 'legs') return inches < 22 ? 'backRise' : null
  if (shape === 'skirt') return null
  return inches > LONGEST_WIDTH_IN ? 'bodyLength' : inches > 11 ? 'backWidth' : null
}
