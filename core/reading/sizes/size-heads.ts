/** Several sizes in one text, each heading its figures: which of them a figure is of. */

export interface SizeHead {
  /** The token where it begins. */
  from: number
  label: string
}

/** The size that heads a token; null where the text names but one. */
export function sizeHeadedAt(heads: readonly SizeHead[]): (token: number) => string | null {
  if (new Set(heads.map(({ label }) => label)).size < 2) return () => null
  return (token) => {
    let low = 0
    let high = heads.length
    while (low < high) {
      const middle = (low + high) >> 1
      if ((heads[middle] as SizeHead).from <= token) low = middle + 1
      else high = middle
    }
    return heads[low - 1]?.label ?? null
  }
}
