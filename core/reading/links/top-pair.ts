/** 22.5 x 29 on a shirt that names nothing: across the chest, and how long (common practice, no source). */
import type { GarmentKind } from '../../ids/kinds.ts'
import type { Label } from '../names/label.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { quantityInches } from '../quantities/quantity-mm.ts'
import { endsSentence } from '../text/layout.ts'
import { means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'

const TOPS = new Set<GarmentKind | null>(['knit-top', 'shirt', 'jumper'])
/** Widths and lengths of tops, in inches. */
const WIDTH = { least: 14, most: 34 }
const LENGTH = { least: 18, most: 40 }
const BEFORE = 5

/** The pair, or null: only one stands alone, and no name tells a chest or a length. */
export function topPair(
  text: TextRead,
  quantities: readonly Quantity[],
  labels: readonly Label[],
  kind: GarmentKind | null
): [Quantity, Quantity] | null {
  const { tokens } = text
  if (!TOPS.has(kind) || labels.some(({ role, points }) => role === 'point' && points.some((point) => NAMED.has(point)))) return null
  let found: [Quantity, Quantity] | null = null
  for (let index = 1; index < quantities.length; index++) {
    const [width, length] = [quantities[index - 1] as Quantity, quantities[index] as Quantity]
    if (tokens[width.to]?.text !== 'x' || length.from !== width.to + 1) continue
    if (found || tokens[length.to]?.text === 'x' || tokens[width.from - 1]?.text === 'x' || !isTop(width, length)) return null
    if (isOfThing(text, width.from, length.to, width.unit === null && length.unit === null)) return null
    found = [width, length]
  }
  return found
}

const NAMED = new Set<string>(['chest', 'length', 'bodyLength', 'width', 'sleeveLength'])

function isTop(width: Quantity, length: Quantity): boolean {
  const unit = length.unit ?? width.unit
  if (unit === 'mm' || width.range || length.range || width.problem || length.problem || !(length.value > width.value * 0.95)) return false
  const inches = ({ value }: Quantity) => quantityInches({ value, unit })
  const inside = (value: number, { least, most }: { least: number; most: number }) => value >= least && value <= most
  return inside(inches(width), WIDTH) && inside(inches(length), LENGTH)
}

/** A pocket of 12 x 14, a parcel, a print: what stands beside the pair names it. */
function isOfThing({ tokens, terms }: TextRead, from: number, to: number, bare: boolean): boolean {
  for (let at = from - 1; at >= Math.max(0, from - BEFORE) && tokens[at]?.kind !== 'break' && !endsSentence(tokens, at); at--)
    if (means(termAt(terms, at), 'detail', 'thing', 'parcel', 'fits', 'model') || (bare && means(termAt(terms, at), 'size'))) return true
  return means(termAt(terms, to), 'detail', 'thing', 'parcel') || means(termAt(terms, to + 1), 'detail', 'thing', 'parcel')
}
