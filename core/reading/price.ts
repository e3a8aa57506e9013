/** The asking price: not the price when new, not the postage. */
import { CURRENCY_MARKS } from './not-a-length.ts'
import type { Reading } from './reading.ts'
import { meaning, means, termAt } from './terms.ts'
import type { TextRead } from './text.ts'
import type { Token } from './tokens.ts'

/** ISO 4217 of a sign; a dollar and a crown are those of the page's country. */
const DOLLARS: Record<string, string> = { AU: 'AUD', CA: 'CAD', NZ: 'NZD', SG: 'SGD', HK: 'HKD' }
export function currencyOf(sign: string, locale: string): string {
  const country = /[-_]([a-z]{2})\b/i.exec(locale)?.[1]?.toUpperCase() ?? ''
  if (sign === '£') return 'GBP'
  if (sign === '€') return 'EUR'
  if (sign === '¥') return country === 'CN' ? 'CNY' : 'JPY'
  if (sign === '₹') return 'INR'
  return DOLLARS[country] ?? 'USD'
}

interface Found {
  amount: number
  currency: string
  asked: boolean
}
const REACH = 4

export function priceOf(texts: readonly TextRead[], locale: string): Reading['price'] {
  let first: Found | null = null
  for (const text of texts) {
    for (let at = 0; at < text.tokens.length; at++) {
      const found = priceAt(text, at, locale)
      if (!found) continue
      if (found.asked) return { amount: found.amount, currency: found.currency }
      first ??= found
    }
  }
  return first && { amount: first.amount, currency: first.currency }
}

function priceAt(text: TextRead, at: number, locale: string): Found | null {
  const { tokens, terms } = text
  const token = tokens[at] as Token
  if (
    token.kind !== 'digits' ||
    isThousand(text, at - 1) ||
    (tokens[at - 1]?.kind === 'mark' && /^[.,]$/.test(tokens[at - 1]?.text ?? '') && !token.spaced && tokens[at - 2]?.kind === 'digits')
  )
    return null
  const amount = amountAt(text, at)
  if (!amount || amount.value <= 0) return null
  const before = tokens[at - 1]
  const after = tokens[amount.to]
  let currency: string | null = null
  if (before && CURRENCY_MARKS.has(before.text)) currency = currencyOf(before.text, locale)
  else if (after && CURRENCY_MARKS.has(after.text)) currency = currencyOf(after.text, locale)
  else
    currency =
      meaning(termAt(terms, amount.to), 'currency')?.currency ??
      (before?.kind === 'word' ? meaning(termAt(terms, at - 1), 'currency')?.currency : undefined) ??
      null
  if (currency === null) return null
  let asked = false
  for (let near = at - 1; near >= Math.max(0, at - 1 - REACH); near--) {
    if (text.layout.segment[near] !== text.layout.segment[at]) break
    const term = termAt(terms, near)
    if (means(term, 'price')) asked = true
    else if (means(term, 'retail')) return null
  }
  if (wasPaid(text, at)) return null
  const next = termAt(terms, amount.to)
  if (means(next, 'price')) asked = true
  if (next && means(next, 'retail') && !means(next, 'currency')) return null
  return { amount: amount.value, currency, asked }
}

const PAID =
  /^(?:bought|paid|purchased|gekauft|achete|achetee|achetes|comprado|comprada|compre|pagato|pagata|acquistato|acquistata|gekocht|kupilam|kupiona|kupione|kupiony|kopte|kopt|inkopt)$/
const FAR = 8

/** “I bought these in 2019 for £80”: earlier in its sentence somebody paid it. */
function wasPaid({ tokens, layout }: TextRead, at: number): boolean {
  for (let near = at - 1; near >= Math.max(0, at - FAR) && layout.sentence[near] === layout.sentence[at]; near--)
    if (PAID.test(tokens[near]?.text ?? '')) return true
  return false
}

/** 38.50 · 38,50 · 1,250 · 1.250,00 · 1 250 */
function amountAt(text: TextRead, at: number): { value: number; to: number } | null {
  const { tokens } = text
  let digits = tokens[at]?.text ?? ''
  let to = at + 1
  if (isThousand(text, at)) digits += tokens[to++]?.text ?? ''
  if (digits.length > 7) return null
  while (
    /^[.,]$/.test(tokens[to]?.text ?? '') &&
    !tokens[to]?.spaced &&
    tokens[to + 1]?.kind === 'digits' &&
    !tokens[to + 1]?.spaced &&
    to - at < 6
  ) {
    const part = tokens[to + 1]?.text ?? ''
    if (part.length === 3) digits += part
    else return part.length <= 2 ? { value: Number(`${digits}.${part}`), to: to + 2 } : null
    to += 2
  }
  return { value: Number(digits), to }
}

/** 1 250: a narrow or hard space parts thousands; a plain one only behind a single figure (38 250 may be a size and a price). */
function isThousand({ tokens, original }: TextRead, at: number): boolean {
  const first = tokens[at]
  const next = tokens[at + 1]
  if (first?.kind !== 'digits' || next?.kind !== 'digits' || next.text.length !== 3 || first.text.length > 3) return false
  const between = original.slice(first.end, next.start)
  return /^[\u00a0\u2009\u202f]$/.test(between) || (between === ' ' && first.text.length === 1 && first.text !== '0')
}
