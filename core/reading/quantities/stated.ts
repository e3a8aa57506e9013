/** A figure as it stands in its text. */
import type { Stated } from '../../garment/issue.ts'
import type { TextRead } from '../text/text.ts'
import type { Quantity } from './quantities.ts'

/** Its place is its own tokens; a unit at the head of a column does not stand beside it. */
export function statedOf({ original, tokens }: TextRead, one: Quantity): Stated {
  const start = tokens[one.from]?.start ?? 0
  const end = tokens[one.to - 1]?.end ?? start
  return { text: original.slice(start, end), start, end, value: one.value, unit: one.fromColumn ? null : one.unit }
}
