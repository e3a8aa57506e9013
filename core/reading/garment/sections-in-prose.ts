/** “The skirt is 14" across the waist”, “…, trousers waist 34"”: a second garment that a sentence or a part of a list begins with. */
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import { cue } from '../text/cues.ts'
import { endsSentence } from '../text/layout.ts'
import { meaning, means, type Term, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'

export interface Section {
  from: number
  kind: GarmentKind
}

const VERB = cue('verb', 'has')
/** the, my, matching */
const BESIDE = cue('the', 'anyGarment')

/** The sections that headings give, and those that only follow another garment. */
export function sectionsInProse(text: TextRead, headed: readonly Section[]): Section[] {
  const sections = [...headed]
  const known = new Set(headed.map(({ from }) => from))
  for (const term of termsAs(text.terms, 'kind')) {
    const kind = meaning(term, 'kind')?.kind
    if (kind === undefined || known.has(term.from) || !isMeasured(text, term) || !begins(text, term)) continue
    // the skirt of a dress is no second garment
    if (kind === 'skirt' && sections.some((one) => SHAPE[one.kind] === 'whole')) continue
    sections.push({ from: term.from, kind })
  }
  sections.sort((a, b) => a.from - b.from)
  return sections.filter(({ kind }, index) => sections[index - 1]?.kind !== kind)
}

/** A sentence, a line, or a part of a list. */
function begins({ tokens }: TextRead, { from }: Term): boolean {
  const start = BESIDE.test(tokens[from - 1]?.text) ? from - 1 : from
  const before = tokens[start - 1]
  return before === undefined || before.kind === 'break' || endsSentence(tokens, start - 1) || isOneOf(before, ',;|/•·*')
}

/** “trousers waist 34”, “the skirt is 14" across”, “the jacket measures 19"”. */
function isMeasured({ tokens, terms }: TextRead, { from, to }: Term): boolean {
  const line = tokens[from - 1] === undefined || tokens[from - 1]?.kind === 'break'
  // “Trousers W34 L32 - waist 17”: its size, then its figures
  if (line && (isWaistSize(tokens, to) || means(termAt(terms, to), 'size', 'region'))) return true
  const next = termAt(terms, to)
  if (tokens[to]?.kind !== 'word' || next?.from !== to) return VERB.test(tokens[to]?.text) && tokens[to + 1]?.kind === 'digits'
  if (means(next, 'point')) return tokens[next.to]?.kind === 'digits' || isOneOf(tokens[next.to], ':=-')
  return (VERB.test(tokens[to]?.text) || means(next, 'measures')) && isFigureNear(tokens[next.to]?.kind, tokens[next.to + 1]?.kind)
}
const isWaistSize = (tokens: TextRead['tokens'], at: number): boolean =>
  tokens[at + 1]?.kind === 'digits' && !tokens[at + 1]?.spaced && tokens[at]?.text === 'w'
const isFigureNear = (...kinds: (string | undefined)[]): boolean => kinds.includes('digits')
