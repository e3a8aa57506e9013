/** Who took a figure: the seller's own tape, or a shop whose words the seller copied. */
import { lastFrom } from '../text/in-order.ts'
import { means, type Term, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'

export type Source = 'own' | 'shop'
interface Span {
  from: number
  to: number
  source: Source
}

/** Of each token the source that was told last before it; null: none told. Linear. */
export function sourcesIn(text: TextRead): (token: number) => Source | null {
  const { terms } = text
  if (!terms.by.has('ownTape') && !terms.by.has('shopCopy')) return () => null
  const heads = termsAs(terms, 'ownTape', 'shopCopy', 'sizeChart')
  const spans = heads.map((term, index): Span => {
    const source = means(term, 'ownTape') ? 'own' : 'shop'
    const limit = heads[index + 1]?.from ?? text.tokens.length
    return { from: term.from, to: source === 'own' ? limit : endOfCopy(text, term, limit), source }
  })
  return (token) => {
    const span = lastFrom(spans, token)
    return span && token < span.to ? span.source : null
  }
}

/** What is copied ends with its paragraph, or where a later line or sentence begins to measure. */
function endOfCopy({ tokens, terms, layout }: TextRead, head: Term, limit: number): number {
  const paragraph = layout.paragraph[head.from]
  let at = head.to
  for (; at < limit && layout.paragraph[at] === paragraph; at++) {
    const its = termAt(terms, at)
    const heads = its?.from === at && means(its, 'heading') && layout.sentence[at] !== layout.sentence[head.from]
    if (heads && (tokens[at - 1]?.kind === 'break' || means(its, 'measures'))) return at
  }
  return at
}
