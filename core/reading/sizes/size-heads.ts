/** Several sizes in one text, each heading its figures: which of them a figure is of. */
import { lastFrom } from '../text/in-order.ts'

export interface SizeHead {
  /** The token where it begins. */
  from: number
  label: string
}

/** The size that heads a token; null where the text names but one. */
export function sizeHeadedAt(heads: readonly SizeHead[]): (token: number) => string | null {
  if (new Set(heads.map(({ label }) => label)).size < 2) return () => null
  return (token) => lastFrom(heads, token)?.label ?? null
}
