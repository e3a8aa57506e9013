/** Faults that a text admits, and the mending they ask for. */
import type { ConditionId } from '../../garment/garment-input.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import { cue } from '../text/cues.ts'
import { meaning, means, type Term, termAt, termsAs } from '../text/terms.ts'
import { isDenied, slice, type TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'

const LONGEST_FAULT = 160

export interface FaultsRead {
  faults: string[]
  mending: ConditionId[]
}

/** The sentences that admit something, and the mending they ask for. */
export function faultsOf(texts: readonly TextRead[], kind: GarmentKind | null): FaultsRead {
  const faults = new Set<string>()
  const mending = new Set<ConditionId>()
  for (const text of texts) {
    let said = -1
    for (const term of termsAs(text.terms, 'fault')) {
      const fault = meaning(term, 'fault')
      if (!fault || means(term, 'nothing') || isDenied(text, term) || isOfSize(text, term) || isLook(text, term)) continue
      const done = fault.mending.length > 0 && isMended(text, term)
      for (const job of isOfPocket(text, term) ? POCKET : fault.mending)
        if (!done || NOT_SEWN.has(job)) mending.add(job === 'patch' && (kind === 'jumper' || kind === 'knit-top') ? 'darn' : job)
      const sentence = text.layout.sentence[term.from] as number
      if (sentence === said) continue
      said = sentence
      faults.add(sentenceOf(text, term))
    }
  }
  return { faults: [...faults], mending: [...mending] }
}

const PALE = cue('paleLook')
const DENIM = cue('denim')

/** “Faded black tee”, “bleached denim”: how it is meant to look. */
const isLook = ({ tokens, terms }: TextRead, { from, to }: Term): boolean =>
  to === from + 1 &&
  PALE.test(tokens[from]?.text) &&
  tokens[to]?.kind === 'word' &&
  (means(termAt(terms, to), 'colour', 'kind', 'fibre') || DENIM.test(tokens[to]?.text))

const POCKET: ConditionId[] = ['re-line-pocket']
const HOLED = new Set<ConditionId>(['patch', 'darn', 'close-seam'])
const NEAR = 6

const BESIDE = cue('beside')

const INSIDE = cue('inside')
const POCKET_WORD = cue('pocket')
const LINING = cue('pocketLining')

/** “small hole in the left pocket lining”, “pocket lining torn”, “hole inside one pocket”: the bag of a pocket, not the cloth. */
function isOfPocket({ tokens, terms, layout }: TextRead, term: Term): boolean {
  const fault = meaning(term, 'fault')
  if (!fault?.mending.some((job) => HOLED.has(job)) || fault.mending.includes('treat-pests')) return false
  const same = (at: number) => layout.segment[at] === layout.segment[term.from]
  let within = INSIDE.test(tokens[term.to]?.text)
  for (let at = term.to; at < term.to + NEAR && same(at); at++) {
    const text = tokens[at]?.text
    if (BESIDE.test(text)) within = false
    if (POCKET_WORD.test(text)) return within || LINING.test(tokens[at + 1]?.text)
    if (means(termAt(terms, at), 'fault') && at > term.to) break
  }
  for (let at = term.from - 1; at > term.from - NEAR && at > 0 && same(at); at--)
    if (LINING.test(tokens[at]?.text) && POCKET_WORD.test(tokens[at - 1]?.text)) return true
  return false
}

/** What a needle does not see to: a hole that was darned may still have had moths. */
const NOT_SEWN = new Set<ConditionId>(['treat-pests', 'clean', 'dye', 'de-pill', 'lift-crease', 'polish-leather', 're-proof', 'block-knit'])
/** “easily mended”, “needs to be repaired”, “muss geflickt werden”: not yet. */
const NOT_YET = cue('notYet')

/** Does its sentence say that this fault was seen to: “moth nip, darned”, “a repaired tear”, “two holes and a tear, all mended”? */
function isMended(text: TextRead, fault: Term): boolean {
  const { layout } = text
  const sentence = layout.sentence[fault.from] as number
  const mends = termsAs(text.terms, 'mended')
  let low = 0
  let high = mends.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((layout.sentence[(mends[middle] as Term).from] as number) < sentence) low = middle + 1
    else high = middle
  }
  for (let index = low; index < mends.length && layout.sentence[(mends[index] as Term).from] === sentence; index++) {
    const one = mends[index] as Term
    if (one === fault || isDenied(text, one) || isNotYet(text, one)) continue
    const [from, to] = one.from < fault.from ? [one.to, fault.from] : [fault.to, one.from]
    if (means(termAt(text.terms, one.from - 1), 'all') || !others(text, from, to)) return true
  }
  return false
}

const isNotYet = ({ tokens }: TextRead, { from, to }: Term): boolean =>
  [from - 3, from - 2, from - 1, to].some((at) => NOT_YET.test(tokens[at]?.text))

/** Another fault between, or the part of the sentence about something else. */
function others({ tokens, terms }: TextRead, from: number, to: number): boolean {
  let commas = 0
  for (let at = from; at < to; at++) {
    const term = termAt(terms, at)
    if (means(term, 'but', 'kind') || (means(term, 'fault') && !means(term, 'mended'))) return true
    if (isOneOf(tokens[at], ',;') && ++commas > 1) return true
  }
  return false
}

/** “the mark size 12”: a mark right before a size is no fault. */
const isOfSize = (text: TextRead, term: Term): boolean => means(term, 'size') || means(termAt(text.terms, term.to), 'size')

/** The sentence a term stands in, or its part when that is long, without its end mark. */
function sentenceOf(text: TextRead, term: Term): string {
  const whole = spanOf(text, text.layout.sentence, term.from)
  const span = whole.length > LONGEST_FAULT ? spanOf(text, text.layout.segment, term.from) : whole
  return span
    .slice(0, LONGEST_FAULT * 2)
    .replace(/^[\s•·・*|,;-]+/, '')
    .replace(/[\s.,;!。、！]+$/, '')
}

function spanOf(text: TextRead, of: readonly number[], at: number): string {
  let from = at
  let to = at + 1
  while (from > 0 && of[from - 1] === of[at] && at - from < 200) from--
  while (to < of.length && of[to] === of[at] && to - at < 200) to++
  return slice(text, from, to)
}
