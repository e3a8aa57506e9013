/** Several garments in one text (a suit): which of them a figure is of. */
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import { cue } from '../text/cues.ts'
import { lastFrom } from '../text/in-order.ts'
import { meaning, means, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'
import type { Section } from './sections-in-prose.ts'
import { sectionsInProse } from './sections-in-prose.ts'

export interface Garments {
  /** The garment whose heading a token stands under: its kind, and `of` where the text has several. */
  garmentAt: (token: number) => { kind: GarmentKind | null; of: GarmentKind | null }
}

/** By headings that name kinds of different halves of the body, or a waistcoat and a jacket; with one kind only, every figure is of it. */
export function garmentsOf(text: TextRead, kind: GarmentKind | null): Garments {
  const sections = withTheFirst(sectionsInProse(text, sectionsOf(text)), kind)
  const shapes = new Set(sections.map((section) => SHAPE[section.kind]))
  const kinds = new Set(sections.map((section) => section.kind))
  // a waistcoat beside a jacket is a garment of its own
  if (shapes.size < 2 && !(kinds.has('waistcoat') && kinds.size > 1)) return { garmentAt: () => ({ kind, of: null }) }
  return {
    garmentAt: (token) => {
      const its = lastFrom(sections, token)?.kind ?? kind
      return { kind: its, of: its }
    }
  }
}

/** Words in a remark beside a heading, at most: “Trousers (free, well worn)”. */
const REMARK = 14
function pastRemark({ tokens }: TextRead, at: number): number {
  if (tokens[at]?.text !== '(') return at
  for (let end = at + 1; end < at + REMARK; end++) {
    const token = tokens[end]
    if (token === undefined || token.kind === 'break') return at
    if (token.text === ')') return end + 1
  }
  return at
}

const THE = cue('the')

/** Headings that name a garment: “Jacket:”, “Trousers measurements”. The figures below are of it. */
function sectionsOf(text: TextRead): { from: number; kind: GarmentKind }[] {
  const { tokens, terms } = text
  const sections: { from: number; kind: GarmentKind }[] = []
  for (const term of termsAs(terms, 'kind')) {
    const kind = meaning(term, 'kind')?.kind
    if (!kind) continue
    const before = tokens[term.from - 1]
    const starts =
      before === undefined ||
      before.kind === 'break' ||
      isOneOf(before, '.!?;•*|[-') ||
      THE.test(before.text) ||
      (before.kind === 'mark' && before.spaced) ||
      // “top (jacket): chest 52”
      (before.text === '(' && tokens[term.from - 2]?.kind === 'word' && (tokens[term.from - 3]?.kind ?? 'break') === 'break')
    let at = term.to
    if (means(termAt(terms, at), 'heading', 'measures')) at = termAt(terms, at)?.to ?? at
    const measures = at > term.to
    // “[Jacket] chest 36"”
    const enclosed = isOneOf(before, '[(') && isOneOf(tokens[at], '])')
    at = pastRemark(text, enclosed ? at + 1 : at)
    const after = tokens[at]
    // “Jacket bust 36", … Skirt waist 26"”
    const names = before?.kind !== 'mark' || !before.spaced ? means(termAt(terms, at), 'point') : false
    const heads =
      names ||
      enclosed ||
      after === undefined ||
      after.kind === 'break' ||
      after.text === ':' ||
      measures ||
      (after.text === '-' && after.spaced)
    const last = sections[sections.length - 1]
    if (starts && heads && last?.kind !== kind) sections.push({ from: term.from, kind })
  }
  return sections
}

/** “Chest 40, length 29. Trousers: waist 34”: what stands before the first heading is of the garment itself. */
function withTheFirst(sections: Section[], kind: GarmentKind | null): Section[] {
  const [first] = sections
  if (first === undefined || first.from === 0 || kind === null) return sections
  const [own, its] = [SHAPE[kind], SHAPE[first.kind]]
  const isVest = first.kind === 'waistcoat' && (kind === 'jacket' || kind === 'coat')
  const isBelow = own === 'upper' ? its === 'legs' || its === 'skirt' : own === 'whole' && its === 'legs' && kind !== 'jumpsuit'
  return isVest || isBelow ? [{ from: 0, kind }, ...sections] : sections
}
