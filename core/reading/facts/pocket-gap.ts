/** How far the back pockets of trousers lie apart: how much a centre back seam can be taken in before they meet. */
import { toMm } from '../../length.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { means, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'

const LEAST_MM = 15
const MOST_MM = 300
const REACH = 8

export interface PocketGap {
  quantity: Quantity
  mm: number
}

/** “back pockets 5" apart”, “5 in between the back pockets”; null where it is not told. */
export function pocketGap(text: TextRead, quantities: readonly Quantity[]): PocketGap | null {
  const { terms, layout } = text
  for (const pockets of termsAs(terms, 'backPockets')) {
    let low = 0
    let high = quantities.length
    while (low < high) {
      const middle = (low + high) >> 1
      if ((quantities[middle] as Quantity).spanTo < pockets.from - REACH) low = middle + 1
      else high = middle
    }
    for (let index = low; index < quantities.length; index++) {
      const one = quantities[index] as Quantity
      if (one.from > pockets.to + REACH) break
      if (one.unit === null || one.problem !== null || layout.sentence[one.from] !== layout.sentence[pockets.from]) continue
      const mm = toMm(one.value, one.unit)
      const from = Math.min(one.from, pockets.from) - 3
      const to = Math.max(one.spanTo, pockets.to) + 2
      if (mm >= LEAST_MM && mm <= MOST_MM && saysApart(text, from, to, one.from)) return { quantity: one, mm }
    }
  }
  return null
}

function saysApart({ terms, layout }: TextRead, from: number, to: number, at: number): boolean {
  for (let near = Math.max(0, from); near < to; near++)
    if (layout.sentence[near] === layout.sentence[at] && means(termAt(terms, near), 'apart')) return true
  return false
}
