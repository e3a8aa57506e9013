/** Is a page one listing at all? A shop's front and a search page name many things, each with its price. */
import type { KindSign } from '../languages/lexicon.ts'
import { CURRENCY_MARKS } from '../quantities/not-a-length.ts'
import { meaning, means, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'

/** So many sums that stand by themselves are of several things; fewer where the page says itself that it is a list. */
const SUMS = 6
const SUMS_OF_A_LIST = 4
/** So many garments must be named for it. */
const NAMED = 4
/** Whoever measures that much sells one thing. */
const MEASURED = 2
/** Sums and names beyond this tell nothing new. */
const MOST = 400

/** `measured`: how many measures were read in it. Linear. */
export function isManyListings(text: TextRead, measured: number): boolean {
  if (measured > MEASURED) return false
  const end = othersFrom(text)
  const named = termsAs(text.terms, 'kind', 'thing').slice(0, MOST)
  if (named.filter(({ from }) => from < end).length < NAMED) return false
  const sums = sumsIn(text, end)
  return sums >= SUMS || (sums >= SUMS_OF_A_LIST && signAt(text, 'list') !== null)
}

/** “You may also like”: what follows stands below one listing. */
const othersFrom = (text: TextRead): number => signAt(text, 'others') ?? text.tokens.length

/** Different sums of money that are no postage and no former price. */
function sumsIn({ tokens, terms }: TextRead, end: number): number {
  const sums = new Set<string>()
  for (let at = 0; at < end && sums.size < MOST; at++) {
    const token = tokens[at]
    if (token?.kind !== 'digits' || isOneOf(tokens[at - 1], '.,')) continue
    const behind = termAt(terms, at + 1)
    const marked =
      CURRENCY_MARKS.has(tokens[at - 1]?.text ?? '') ||
      CURRENCY_MARKS.has(tokens[at + 1]?.text ?? '') ||
      meaning(behind, 'currency') !== undefined
    if (marked && !means(termAt(terms, at - 2), 'retail') && !means(behind, 'retail')) sums.add(token.text)
  }
  return sums.size
}

/** Where the first words of a sort stand. */
const signAt = ({ phrases }: TextRead, as: KindSign['as']): number | null =>
  phrases.signs.find(({ meaning: its }) => its.senses.some((sense) => sense.role === 'sign' && sense.as === as))?.from ?? null
