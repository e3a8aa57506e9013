/** Figures of another piece in the same text: the second of a pair, what is worn with it in the picture. */
import type { GarmentKind } from '../../ids/kinds.ts'
import { endsSentence } from '../text/layout.ts'
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Token } from '../text/tokens.ts'
import type { Link } from './assign.ts'

const FIRST = 'first 1st erste erster erstes premier premiere primer primera primo prima eerste pierwsza pierwszy forsta 1'
const SECOND = 'second 2nd zweite zweiter zweites deuxieme seconde segunda segundo secondo seconda tweede druga drugi andra 2'
const PLACE = new Map([...FIRST.split(' ').map((word) => [word, 1] as const), ...SECOND.split(' ').map((word) => [word, 2] as const)])

/** A quick look: most texts speak of no second. */
const MAYBE = /second|2nd|zweit|deuxi|segund|tweede|drug|andra|#2|no\.? 2/i

/** The token where the second of several pieces begins (“First one is …. Second is …”, #1 … #2), or the end of the text. */
export function secondPieceAt(text: TextRead): number {
  const { tokens, original } = text
  if (!MAYBE.test(original)) return tokens.length
  let first = false
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token
    const place = PLACE.get(token.text)
    if (place === undefined) continue
    const number = token.kind === 'digits'
    const start = number || tokens[at - 1]?.text === 'the' ? at - 1 : at
    if (!begins(text, start) || (number && !(tokens[at - 1]?.text === '#' && !token.spaced) && tokens[at - 1]?.text !== 'no')) continue
    if (place === 1) first = true
    else if (first) return start
  }
  return tokens.length
}

const begins = ({ tokens }: TextRead, at: number): boolean =>
  at <= 0 || tokens[at - 1]?.kind === 'break' || endsSentence(tokens, at - 1) || /^[;:•·*|)]$/.test(tokens[at - 1]?.text ?? '')

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
