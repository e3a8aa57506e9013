/** Figures of another piece in the same text: the second of a pair, what is worn with it in the picture. */
import type { GarmentKind } from '../../ids/kinds.ts'
import { amount, cue } from '../text/cues.ts'
import { endsSentence } from '../text/layout.ts'
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import type { Link } from './assign.ts'

const PLACE = amount('place')
const THE = cue('the')
const NUMBERED = cue('numbered')

/** The token where the second of several pieces begins (“First one is …. Second is …”, #1 … #2), or the end of the text. */
export function secondPieceAt(text: TextRead): number {
  const { tokens } = text
  let first = false
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token
    const number = token.kind === 'digits'
    const place = number && token.text.length === 1 ? Number(token.text) : PLACE.get(token.text)
    if (place !== 1 && place !== 2) continue
    const start = number || THE.test(tokens[at - 1]?.text) ? at - 1 : at
    if (!begins(text, start) || (number && !(tokens[at - 1]?.text === '#' && !token.spaced) && !NUMBERED.test(tokens[at - 1]?.text)))
      continue
    if (place === 1) first = true
    else if (first) return start
  }
  return tokens.length
}

const begins = ({ tokens }: TextRead, at: number): boolean =>
  at <= 0 || tokens[at - 1]?.kind === 'break' || endsSentence(tokens, at - 1) || isOneOf(tokens[at - 1], ';:•·*|)')

/** The links of the garment itself. */
export const ofThisPiece = (text: TextRead, links: readonly Link[], kind: GarmentKind | null): Link[] =>
  links.filter((link) => !isOfAnother(text, link, kind))

/** “a 25" waist petticoat” beside a dress: the figure of what its name describes. */
function isOfAnother({ tokens, terms }: TextRead, { label, quantity, before }: Link, kind: GarmentKind | null): boolean {
  if (before || label.role !== 'point' || label.from < quantity.spanTo) return false
  const next = termAt(terms, label.to)
  if (tokens[label.to]?.kind !== 'word' || next?.from !== label.to) return false
  const its = meaning(next, 'kind')?.kind
  return its === undefined ? means(next, 'thing') && !means(next, 'point', 'nothing') : kind !== null && its !== kind
}
