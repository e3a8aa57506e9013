/** One-letter names, where several stand in a run. */

import type { PointName } from '../languages/lexicon.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { cue } from '../text/cues.ts'
import { meaning, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import type { Label } from './label.ts'

export const LETTERS = cue('letterName')
const GAP = 8
/** On one line names in full may stand between: “B 38 / W open / SHDR 15 / L 20”. */
const GAP_IN_LINE = 16

/**
 * W: 16" H: 20" R: 11" I: 30"
 * ^       ^ one letter is a name only in a run of at least two different ones, or
 * P2P 21" L 28"
 *         ^ an L right behind a figure with a name, or
 * W 68cm      a W or an L that has a line to itself
 */
export function shorthand(text: TextRead, quantities: readonly Quantity[]): Label[] {
  const found: Label[] = []
  let run: { label: Label; end: number; alone: boolean }[] = []
  const close = () => {
    const letters = new Set(run.map(({ label }) => label.letter))
    const bare = run.length === 2 && letters.has('s') && letters.size < 2
    const alone = run.length === 1 && run[0]?.alone === true
    if (alone || (letters.size >= 2 && !bare)) for (const { label } of run) found.push(label)
    run = []
  }
  for (const [place, one] of quantities.entries()) {
    const after = letterAfter(text, one)
    // “L: 22W x 28L”: the letter that is glued to its figure
    const label = after && isGlued(text, after.from) && !isGlued(text, one.from) ? after : (letterBefore(text, one) ?? after)
    if (!label) continue
    const before = quantities[place - 1]
    const alone =
      headsLine(text, label, one) ||
      (label.letter === 'l' && label.from < one.from && before !== undefined && isWidthBefore(text, before, label.from))
    const last = run[run.length - 1]
    if (last && label.from - last.end > GAP && !isOneLine(text, last.end, label.from)) close()
    run.push({ label, end: Math.max(one.spanTo, label.to), alone })
  }
  close()
  return found
}

const isGlued = ({ tokens }: TextRead, at: number): boolean => tokens[at]?.spaced === false

/** Is it a W, an L or a name of more letters at the start of a line, with a length behind it that fills the line but for brackets and signs? */
function headsLine({ tokens, terms }: TextRead, { letter, from }: Label, { from: figure, to, unit }: Quantity): boolean {
  if (!(letter === 'w' || letter === 'l' || (letter?.length ?? 0) > 1) || from > figure || unit === null) return false
  const behind = isOneOf(tokens[to], '↔→•') ? to + 1 : to
  const after = tokens[behind]
  const fills = after === undefined || after.kind === 'break' || after.text === '(' || meaning(termAt(terms, behind), 'basis') !== undefined
  return fills && startsLine(tokens, from)
}

/** At the beginning of a line, or behind the one sign it begins with. */
const startsLine = (tokens: readonly Token[], at: number): boolean =>
  at === 0 || tokens[at - 1]?.kind === 'break' || (tokens[at - 1]?.kind === 'mark' && (at === 1 || tokens[at - 2]?.kind === 'break'))

const BEFORE_L = new Set<PointName>(['chest', 'shoulderWidth', 'sleeveLength', 'waist', 'hip'])
/** Has this figure one of the names that a length is set beside, and does it stand right before the letter? */
function isWidthBefore({ tokens, terms }: TextRead, { from, spanTo }: Quantity, letter: number): boolean {
  for (let at = spanTo; at < letter; at++)
    if (tokens[at]?.kind !== 'mark' && tokens[at]?.kind !== 'break' && !meaning(termAt(terms, at), 'basis')) return false
  const named = termAt(terms, isOneOf(tokens[from - 1], ':=~-') ? from - 2 : from - 1)
  const name = meaning(named, 'point')?.point
  return letter - spanTo <= 4 && name !== undefined && BEFORE_L.has(name)
}

function isOneLine({ tokens }: TextRead, from: number, to: number): boolean {
  if (to - from > GAP_IN_LINE) return false
  for (let at = from; at < to; at++) if (tokens[at]?.kind === 'break') return false
  return true
}

export const letterLabel = (at: number, letter: string, name: PointName | undefined): Label => ({
  from: at,
  to: at + 1,
  role: 'point',
  points: name === undefined ? [] : [name],
  basis: null,
  weak: false,
  letter
})

/** What stands between a letter and its figure: W: 16 · W-16 · w;16 · W~16 · W → 16. */
const BETWEEN = ':=./;~>→⇒↔_-'
const MOST_MARKS = 2

function letterBefore({ tokens, trie }: TextRead, one: Quantity): Label | null {
  let at = one.from - 1
  for (let marks = 0; marks < MOST_MARKS && isOneOf(tokens[at], BETWEEN); marks++) at--
  const word = tokens[at]
  if (word?.kind !== 'word' || !(LETTERS.test(word.text) || trie.letters[word.text])) return null
  const glued = tokens[at - 1]
  if (glued && !word.spaced && (glued.kind === 'word' || glued.kind === 'digits' || glued.text === "'")) return null
  return letterLabel(at, word.text, trie.letters[word.text])
}

function letterAfter({ tokens, trie }: TextRead, one: Quantity): Label | null {
  const word = tokens[one.to]
  if (word?.kind !== 'word' || !(LETTERS.test(word.text) || trie.letters[word.text])) return null
  // 20" W x 28" L: a letter that stands off its figure must end there
  const next = tokens[one.to + 1]
  if (word.spaced && !(next === undefined || next.kind === 'break' || next.text === 'x' || isOneOf(next, ',;/|'))) return null
  return letterLabel(one.to, word.text, trie.letters[word.text])
}
