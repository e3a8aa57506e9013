/** Things in the order of their text, found by halving: a long text has many of them. */
export interface Placed {
  from: number
}

/** The first that begins at a token or behind it. */
function firstAt(list: readonly Placed[], token: number): number {
  let low = 0
  let high = list.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((list[middle] as Placed).from < token) low = middle + 1
    else high = middle
  }
  return low
}

/** Those that begin from a token on and before another. */
export const between = <T extends Placed>(list: readonly T[], from: number, to: number): T[] =>
  list.slice(firstAt(list, from), firstAt(list, to))

/** The last that begins at a token or before it: the heading that a token stands under. */
export const lastFrom = <T extends Placed>(list: readonly T[], token: number): T | undefined => lastBefore(list, token + 1)
/** The last that begins before a token. */
export const lastBefore = <T extends Placed>(list: readonly T[], token: number): T | undefined => list[firstAt(list, token) - 1]
/** The first that begins at a token or behind it. */
export const nextFrom = <T extends Placed>(list: readonly T[], token: number): T | undefined => list[firstAt(list, token)]
