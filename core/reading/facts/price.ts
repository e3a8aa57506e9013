/** The asking price: not the price when new, not the postage. */

import { table } from '../../ids/table.ts'
import { once } from '../../once.ts'
import { CURRENCY_MARKS, PAID } from '../quantities/not-a-length.ts'
import type { Reading } from '../reading.ts'
import { amount, cue } from '../text/cues.ts'
import { meaning, means, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import { isChinese, postedIn } from './posted-in.ts'
import { isWeight, pricesInWords } from './price-words.ts'

/** ISO 4217 of a sign; a dollar and a crown are those of the page's country. */
const DOLLARS = table<string>({ AU: 'AUD', CA: 'CAD', NZ: 'NZD', SG: 'SGD', HK: 'HKD' })
export function currencyOf(sign: string, locale: string, text = ''): string {
  const country = /[-_]([a-z]{2})\b/i.exec(locale)?.[1]?.toUpperCase() ?? (sign === '$' ? postedIn(text) : '')
  if (sign === '£') return 'GBP'
  if (sign === '€') return 'EUR'
  if (sign === '¥') return country === 'CN' || ZH.test(locale) || isChinese(text) ? 'CNY' : 'JPY'
  if (sign === '₹') return 'INR'
  if (sign === '₩') return 'KRW'
  return DOLLARS[country] ?? 'USD'
}

const ZH = /^zh\b/i

interface Found {
  amount: number
  currency: string
  /** How surely it is what is asked: by a word, alone in its part of the text, else by its place. */
  rank: number
}
const REACH = 4
const ASKED = 4
const ALONE = 2
const PLAIN = 1
const ASIDE = 0

export function priceOf(texts: readonly TextRead[], locale: string): Reading['price'] {
  let best: Found | null = null
  const home = HOME_IN[locale.slice(0, 5).toLowerCase()] ?? HOME[locale.slice(0, 2).toLowerCase()] ?? ''
  for (const text of texts) {
    const elsewhere = new Set(termsAs(text.terms, 'elsewhere').map(({ from }) => text.layout.sentence[from] as number))
    const money: Money = { locale, home, told: once(() => loneCurrency(text)) }
    for (let at = home === '' && !speaksOfMoney(text) ? text.tokens.length : 0; at < text.tokens.length; at++) {
      if (text.tokens[at]?.kind !== 'digits') continue
      const found = priceAt(text, at, money, elsewhere)
      if (!found || (best && found.rank <= best.rank)) continue
      if (found.rank === ASKED) return { amount: found.amount, currency: found.currency }
      best = found
    }
    for (const sum of best && best.rank > PLAIN ? [] : pricesInWords(text)) {
      if (isWeight(text, sum) || wasPaid(text, sum.from) || isFee(text, sum.from, sum.to)) continue
      const alone = opensPart(text, sum.from)
      if (best === null || alone) best = { amount: sum.amount, currency: sum.currency, rank: alone ? ALONE : PLAIN }
      break
    }
  }
  return best && { amount: best.amount, currency: best.currency }
}

/** Is there a sign or a word of money anywhere? Without one no figure is a price, where no country tells a currency. */
function speaksOfMoney({ tokens, terms }: TextRead): boolean {
  if (terms.by.has('currency')) return true
  for (const { kind, text } of tokens)
    if (kind === 'mark' ? CURRENCY_MARKS.has(text) : kind === 'word' && (SAYS_PRICE.test(text) || HAGGLED.test(text))) return true
  return false
}

/** What sums without a sign are in. */
interface Money {
  locale: string
  /** Of the language or the country of the page; '': it could be any. */
  home: string
  /** “(euro)”, “in euros”, “we only take USD”: a currency told by itself, where sums stand bare. */
  told: () => string | undefined
}
function priceAt(text: TextRead, at: number, money: Money, elsewhere: ReadonlySet<number>): Found | null {
  const { tokens, terms } = text
  const token = tokens[at] as Token
  if (
    isThousand(text, at - 1) ||
    multipleAt(text, at - 1) !== undefined ||
    (tokens[at - 1]?.kind === 'mark' && isOneOf(tokens[at - 1], '.,') && !token.spaced && tokens[at - 2]?.kind === 'digits')
  )
    return null
  const sum = inMultiples(text, amountAt(text, at))
  if (!sum || sum.value <= 0) return null
  if (isDashed(text, sum.to)) sum.to += 2
  const sign = currencyAt(text, at, sum.to, money)
  if (sign === null) return null
  // “fees are silly, so £26 here”: what stands before it is about something else
  const hence = HENCE.test(tokens[sign.from - 1]?.text)
  let asked = hence
  let another = false
  for (let near = sign.from - 1; near >= Math.max(0, sign.from - REACH); near--) {
    if (hence || text.layout.segment[near] !== text.layout.segment[at] || tokens[near]?.kind === 'digits') break
    const term = termAt(terms, near)
    // “£6.50 post. £45”: the word is of the sum before it
    if (means(term, 'retail') && tokens[near - 1]?.kind === 'digits') break
    if (ANOTHER.test(tokens[near]?.text)) another = true
    if (means(term, 'price') || LETS_GO.test(tokens[near]?.text)) asked = true
    // “cost: £29” asks it, “cost £90” was paid
    else if (means(term, 'retail') && !(COSTS.test(tokens[near]?.text) && isOneOf(tokens[near + 1], ':-'))) return null
  }
  const next = termAt(terms, sign.to)
  if (means(next, 'price')) asked = true
  if (next && means(next, 'retail') && !hasOwnSum(text, next.to) && !means(next, 'currency') && isOfRetail(text, sign.to)) return null
  if (!asked && (wasPaid(text, at) || isPaidBehind(text, sign.to))) return null
  const { currency } = sign
  if (elsewhere.has(text.layout.sentence[at] as number)) return { amount: sum.value, currency, rank: ASIDE }
  if (another) return { amount: sum.value, currency, rank: ASIDE }
  if (asked && !isFormer(text, sign.to)) return { amount: sum.value, currency, rank: ASKED }
  if (isFormer(text, sign.to) || EXTRA.test(tokens[sign.to]?.text) || isOnTop(tokens[sign.from - 1]?.text) || isTagPrice(text, sign.from))
    return { amount: sum.value, currency, rank: ASIDE }
  return { amount: sum.value, currency, rank: opensPart(text, sign.from) && closesPart(text, sign.to) ? ALONE : PLAIN }
}

/** “£3 postage”, “100円引き”: is what stands behind a sum what the sum is for? Where verbs stand last, only what is glued to it. */
const isOfRetail = (text: TextRead, at: number): boolean =>
  text.trie.verbLast
    ? text.tokens[at]?.spaced === false && !POST.test(text.tokens[at]?.text)
    : !isPostFree(text, at) && !isPostApart(text, at)

const ANOTHER = cue('anotherItem')
/** “£48 rrp 125”, “€ 14 spedizione piego libri 3,90”: behind the word stands the sum that it is of. */
function hasOwnSum({ tokens, layout }: TextRead, at: number): boolean {
  for (let near = at; near < at + REACH && layout.sentence[near] === layout.sentence[at]; near++) {
    const token = tokens[near]
    if (token === undefined || token.kind === 'break') return false
    if (token.kind === 'digits' || CURRENCY_MARKS.has(token.text)) return true
    if (token.kind === 'mark' && token.text !== ':') return false
  }
  return false
}

/** “postage is five pounds”: asked for something else. */
function isFee(text: TextRead, from: number, to: number): boolean {
  const { tokens, terms, layout } = text
  for (let near = from - 1; near >= Math.max(0, from - REACH) && layout.segment[near] === layout.segment[from]; near--)
    if (means(termAt(terms, near), 'retail')) return true
  if (POST.test(tokens[to]?.text) && !text.trie.verbLast && !isPostApart(text, to)) return true
  return EXTRA.test(tokens[to]?.text) || isOnTop(tokens[from - 1]?.text)
}

/** “£20 → £15”, “£20 => £15”: what was asked before. */
function isFormer({ tokens }: TextRead, at: number): boolean {
  if (isOneOf(tokens[at], '→⇒➡➔')) return true
  let tip = at
  while (tip < at + SHAFT && isOneOf(tokens[tip], '-=') && tokens[tip + 1]?.spaced === false) tip++
  return tip > at && tokens[tip]?.text === '>'
}
/** So many marks an arrow has before its tip: “-->”. */
const SHAFT = 3

/** “£5 more”, “3 € extra”: on top of what is asked. */
const EXTRA = cue('extra')
const ON_TOP_WORD = cue('onTop')
const isOnTop = (text: string | undefined): boolean => text === '+' || ON_TOP_WORD.test(text)
const NEW = cue('whenNew')

/** “NWT $128”: what it was to cost when new. */
const isTagPrice = ({ tokens }: TextRead, from: number): boolean => NEW.test(tokens[from - 1]?.text)

/** “£45 posted”, “$70 shipped”, “£20 post free”: the postage is in the price. */
const isPostFree = ({ tokens }: TextRead, at: number): boolean => {
  const word = tokens[at]?.text
  const next = tokens[at + 1]?.text
  return POST_PAID.test(word) || (POST.test(word) && INCLUDED.test(next)) || (INCLUDED.test(word) && POST.test(next))
}
/** “£45 postage £3”, “70 euro spedizione esclusa”: the postage is told by itself behind the price. */
const isPostApart = ({ tokens }: TextRead, at: number): boolean => {
  const next = tokens[at + 1]
  if (!POST.test(tokens[at]?.text) || next === undefined || next.kind === 'break') return false
  if (next.kind === 'digits' || CURRENCY_MARKS.has(next.text) || NOT_IN_IT.test(next.text)) return true
  // “frais de port en sus”
  for (let near = at + 1; near < at + 6 && tokens[near]?.kind === 'word'; near++) if (ON_TOP_OF_IT.test(tokens[near]?.text)) return true
  return false
}
const ON_TOP_OF_IT = cue('postageApart')
const NOT_IN_IT = cue('excluded')
const HENCE = cue('hence')
const COSTS = cue('costs')
/** “paid £165, accept £40”, “lo lascio a 50 €”. */
const LETS_GO = cue('letsGo')
const POST_PAID = cue('postPaid')
const POST = cue('postage')
const INCLUDED = cue('postIncluded')

const opensPart = ({ tokens, layout }: TextRead, from: number): boolean =>
  from === 0 || layout.segment[from - 1] !== layout.segment[from] || isOneOf(tokens[from - 1], '.,;!?•·|*(-')
const closesPart = ({ tokens, layout }: TextRead, to: number): boolean =>
  tokens[to] === undefined ||
  tokens[to]?.kind === 'break' ||
  layout.segment[to] !== layout.segment[to - 1] ||
  isOneOf(tokens[to], '.,;!+(-')

/** The currency a word names. */
function wordOf({ tokens, terms }: TextRead, at: number): string | undefined {
  const term = termAt(terms, at)
  return tokens[at]?.kind === 'word' && term?.from === at ? meaning(term, 'currency')?.currency : undefined
}

/** The currency of an amount: its sign, its word, a word behind its sign (“$110 CAD”); and where all of it begins and ends. */
function currencyAt(
  text: TextRead,
  at: number,
  to: number,
  { locale, home, told }: Money
): { currency: string; from: number; to: number } | null {
  const { tokens, terms } = text
  const before = tokens[at - 1]
  const after = tokens[to]
  if (before && CURRENCY_MARKS.has(before.text)) {
    const country = before.text === '$' && !before.spaced ? DOLLAR_OF[tokens[at - 2]?.text ?? ''] : undefined
    if (country !== undefined) return { currency: country, from: at - 2, to }
    const named =
      wordOf(text, to) ?? (before.text === '$' && (tokens[to]?.text.length ?? 0) > 1 ? DOLLAR_OF[tokens[to]?.text ?? ''] : undefined)
    return named === undefined
      ? { currency: currencyOf(before.text, locale, text.original), from: at - 1, to }
      : { currency: named, from: at - 1, to: termAt(terms, to)?.to ?? to + 1 }
  }
  // “chest 100 ¥200”: the sign of the next sum
  const next = tokens[to + 1]
  const ofNext = after?.spaced === true && next?.kind === 'digits' && !next.spaced
  if (after && CURRENCY_MARKS.has(after.text) && !ofNext)
    return { currency: currencyOf(after.text, locale, text.original), from: at, to: to + 1 }
  const behind = wordOf(text, to)
  if (behind !== undefined)
    return {
      currency: behind === 'USD' && DOLLAR.test(after?.text) ? currencyOf('$', locale, text.original) : behind,
      from: at,
      to: termAt(terms, to)?.to ?? to + 1
    }
  // 8e: the sign's letter in French
  if (after?.text === 'e' && !after.spaced && home === 'EUR') return { currency: home, from: at, to: to + 1 }
  // “size EUR 36” is no price
  if (before?.kind === 'word' && means(termAt(terms, at - 1), 'region') && isSized(text, at - 1)) return null
  const ahead = before?.kind === 'word' ? meaning(termAt(terms, at - 1), 'currency')?.currency : undefined
  if (ahead !== undefined) return { currency: ahead, from: at - 1, to }
  if (after?.text === '"' || means(termAt(terms, to), 'unit', 'point')) return null
  const sign = isOneOf(before, ':=') ? at - 2 : at - 1
  const now = (PRICE_NOW.test(tokens[sign]?.text) || POST_PAID.test(after?.text)) && told() !== undefined
  const bare =
    now ||
    saysPrice(text, at) ||
    (home !== '' && isDashed(text, to - 2)) ||
    HAGGLED.test(after?.text) ||
    (home !== '' && isRound(text, at, to))
  return bare ? { currency: told() ?? home, from: at, to } : null
}

const PRICE_NOW = cue('priceNow')
function loneCurrency(text: TextRead): string | undefined {
  const { tokens, terms } = text
  for (const term of termsAs(terms, 'currency')) {
    if (tokens[term.from - 1]?.kind === 'digits' || tokens[term.to]?.kind === 'digits' || isSized(text, term.to + 1)) continue
    return meaning(term, 'currency')?.currency
  }
  return undefined
}

/** “price 20”, “price: 20”, “[price] 20”, and the name alone on the line before it. */
function saysPrice({ tokens }: TextRead, at: number): boolean {
  let name = at - 1
  for (let steps = 0; steps < 2 && isOneOf(tokens[name], ':=]'); steps++) name--
  if (tokens[at - 1]?.kind === 'break' && tokens[at - 3]?.kind !== 'word') name--
  return SAYS_PRICE.test(tokens[name]?.text)
}
/** “100,-”: a sum and no pence. */
const isDashed = ({ tokens }: TextRead, to: number): boolean =>
  isOneOf(tokens[to], '.,') &&
  tokens[to]?.spaced === false &&
  tokens[to + 1]?.text === '-' &&
  tokens[to + 1]?.spaced === false &&
  tokens[to + 2]?.kind !== 'digits'

/** 3.5만: so many ten thousands are money, whatever else follows. */
const isRound = ({ tokens }: TextRead, at: number, to: number): boolean =>
  tokens[at]?.kind === 'digits' && tokens[to - 1]?.kind === 'word' && (MULTIPLE.get(tokens[to - 1]?.text) ?? 0) >= LEAST_ROUND
const LEAST_ROUND = 1000

const isSized = ({ terms }: TextRead, at: number): boolean => [at - 1, at - 2, at - 3].some((near) => means(termAt(terms, near), 'size'))

const DOLLAR = cue('dollars')
/** AU$35, C$40. */
const DOLLAR_OF = table<string>({
  au: 'AUD',
  a: 'AUD',
  aud: 'AUD',
  c: 'CAD',
  ca: 'CAD',
  cad: 'CAD',
  nz: 'NZD',
  nzd: 'NZD',
  us: 'USD',
  usd: 'USD',
  s: 'SGD',
  r: 'BRL',
  sg: 'SGD',
  hk: 'HKD'
})

/** Where no currency is told: “VB 15”, “price: 20”. In English it could be any. */
const HOME = table<string>({
  de: 'EUR',
  fr: 'EUR',
  es: 'EUR',
  it: 'EUR',
  nl: 'EUR',
  pl: 'PLN',
  sv: 'SEK',
  ja: 'JPY',
  ko: 'KRW',
  da: 'DKK',
  no: 'NOK',
  nb: 'NOK',
  nn: 'NOK',
  fi: 'EUR',
  cs: 'CZK'
})
/** The same where a language has two homes, by the country of the page. */
const HOME_IN = table<string>({ 'pt-br': 'BRL', 'pt-pt': 'EUR' })
const SAYS_PRICE = cue('priceName')
const HAGGLED = cue('haggled')

const SOON = 4
/** “12,000円で購入”, “5만원에 구매”: where verbs stand last it is told behind the sum. */
function isPaidBehind({ tokens, layout, trie }: TextRead, to: number): boolean {
  if (!trie.verbLast) return false
  for (let near = to; near < to + SOON && tokens[near]?.kind === 'word' && layout.sentence[near] === layout.sentence[to - 1]; near++)
    if (PAID.test(tokens[near]?.text)) return true
  return false
}

const FAR = 20

/** “I bought these in 2019 for £80”: earlier in its sentence somebody paid it. */
function wasPaid({ tokens, layout, trie }: TextRead, at: number): boolean {
  if (trie.verbLast) return false
  for (let near = at - 1; near >= Math.max(0, at - FAR) && layout.sentence[near] === layout.sentence[at]; near--)
    if (PAID.test(tokens[near]?.text)) return true
  return false
}

interface Amount {
  value: number
  to: number
}
/** 38.50 · 38,50 · 1,250 · 1.250,00 · 1 250 */
function amountAt(text: TextRead, at: number): Amount | null {
  const { tokens } = text
  let digits = tokens[at]?.text ?? ''
  let to = at + 1
  if (isThousand(text, at)) digits += tokens[to++]?.text ?? ''
  if (digits.length > 7) return null
  while (isOneOf(tokens[to], '.,') && !tokens[to]?.spaced && tokens[to + 1]?.kind === 'digits' && !tokens[to + 1]?.spaced && to - at < 6) {
    const part = tokens[to + 1]?.text ?? ''
    if (part.length === 3) digits += part
    else return part.length <= 2 ? { value: Number(`${digits}.${part}`), to: to + 2 } : null
    to += 2
  }
  return { value: Number(digits), to }
}

const MULTIPLE = amount('multiple')

/** 3千 · 1万2千 · 4만 5천 · 1万2000: an amount told in thousands and ten thousands, its parts added up. */
function inMultiples(text: TextRead, first: Amount | null): Amount | null {
  const { tokens } = text
  let one = first
  let sum = 0
  for (let parts = 0; one !== null && parts < 4; parts++) {
    let { value, to } = one
    for (let times = multipleAt(text, to); times !== undefined; times = multipleAt(text, to)) {
      value *= times
      to++
    }
    sum += value
    if (to === one.to || tokens[to]?.kind !== 'digits') return { value: sum, to }
    one = amountAt(text, to)
  }
  return null
}
const multipleAt = ({ tokens }: TextRead, at: number): number | undefined =>
  tokens[at]?.kind === 'word' && !tokens[at]?.spaced ? MULTIPLE.get(tokens[at]?.text) : undefined

/** 1 250: a narrow or hard space parts thousands; a plain one only behind a single figure (38 250 may be a size and a price). */
function isThousand({ tokens, original }: TextRead, at: number): boolean {
  const first = tokens[at]
  const next = tokens[at + 1]
  if (first?.kind !== 'digits' || next?.kind !== 'digits' || next.text.length !== 3 || first.text.length > 3) return false
  const between = original.slice(first.end, next.start)
  return /^[\u00a0\u2009\u202f]$/.test(between) || (between === ' ' && first.text.length === 1 && first.text !== '0')
}
