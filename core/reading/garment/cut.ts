/** The cut as its words tell it: facets that this kind of garment has, the title before the text, what is denied left out. */
import type { CutRead } from '../../garment/cut.ts'
import type { Facet } from '../../ids/cut.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import { facetsOf } from '../../wearer/cut/cut-table.ts'
import { cue } from '../text/cues.ts'
import { meaning, means, type Term, termAt } from '../text/terms.ts'
import { isDenied, type TextRead } from '../text/text.ts'

/** Words behind which another garment is spoken of: "goes with wide trousers". */
const BESIDE = cue('besideGarment')
/** So many words may stand between. */
const LED_BY = 3
/** How sure a word in the title is, and one in the text. */
const SURENESS = { title: 0.95, text: 0.8 }

/**
 * What has become of it stands over what it was made as: a fine jumper that has felted is felt. A smock in tiers is a smock, and a ball gown with an
 * empire line has that.
 */
const OUTRANKS: { facet: Facet; value: string; over: string }[] = [
  { facet: 'knit', value: 'felted', over: 'any' },
  { facet: 'silhouette', value: 'smock', over: 'gathered' },
  { facet: 'silhouette', value: 'empire', over: 'fit-flare' }
]
const outranks = (facet: Facet, value: string, read: string): boolean =>
  OUTRANKS.some((one) => one.facet === facet && one.value === value && (one.over === 'any' || one.over === read))

export function cutOf(texts: readonly TextRead[], title: TextRead | null, kind: GarmentKind | null): CutRead {
  if (kind === null) return {}
  const facets = new Set(facetsOf(kind))
  const cut: CutRead = {}
  for (const text of texts)
    for (const term of withLengths(text, text.phrases.cuts)) {
      if (isCutDenied(text, term) || isOfAnother(text, term, kind) || isOfAFigure(text, term)) continue
      for (const { role, ...one } of term.meaning.senses) {
        if (role !== 'cut' || !('facet' in one) || !facets.has(one.facet)) continue
        const read = cut[one.facet]?.value
        if (read !== undefined && !outranks(one.facet, one.value, read)) continue
        cut[one.facet] = { value: one.value, sureness: text === title ? SURENESS.title : SURENESS.text, from: 'told' }
      }
    }
  return cut
}

/** “pleated midi”: the length inside the name of a shape is told as well. */
const LENGTHS: readonly Facet[] = ['dressLength', 'legLength', 'topLength']
function withLengths({ tokens, trie }: TextRead, found: readonly Term[]): Term[] {
  return found.flatMap((term) => {
    const all = [term]
    for (let at = term.from + 1; at < term.to; at++) {
      const inner = trie.from(tokens[at]?.text ?? '')?.cuts?.meaning ?? null
      if (inner?.senses.some((sense) => sense.role === 'cut' && LENGTHS.includes(sense.facet)))
        all.push({ from: at, to: at + 1, meaning: inner })
    }
    return all
  })
}

const JUST = cue('justSo')
/** “not skinny, not flared”: denied; in “not flared either, just a straight leg” what follows is so instead. */
function isCutDenied(text: TextRead, term: Term): boolean {
  for (let at = term.from - 1; at >= Math.max(0, term.from - LED_BY) && text.layout.sentence[at] === text.layout.sentence[term.from]; at--)
    if (JUST.test(text.tokens[at]?.text)) return false
  return isDenied(text, term)
}

/** `16" relaxed, 21" stretched`: how it was measured, and no cut. */
const FIGURE_WITHIN = 4
function isOfAFigure({ tokens, terms }: TextRead, { from, to }: Term): boolean {
  if (to > from + 1 || !means(termAt(terms, from), 'relaxed')) return false
  return tokens.slice(Math.max(0, from - FIGURE_WITHIN), from).some(({ kind }) => kind === 'digits')
}

/** "goes with an oversized jumper": another kind's name, led up to by a word that sets it beside this one. */
function isOfAnother({ tokens, terms }: TextRead, { from, to }: Term, kind: GarmentKind): boolean {
  const named = meaning(termAt(terms, to - 1), 'kind') ?? meaning(termAt(terms, to), 'kind')
  if (named === undefined || named.kind === kind) return false
  for (let at = from - 1; at >= Math.max(0, from - LED_BY); at--) if (BESIDE.test(tokens[at]?.text)) return true
  return false
}
