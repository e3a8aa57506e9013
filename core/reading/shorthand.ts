/** One-letter names, where several stand in a run. */
import type { Label } from './label.ts'
import type { PointName } from './languages/lexicon.ts'
import type { Lexis } from './lexis.ts'
import type { Quantity } from './quantities.ts'
import type { Token } from './tokens.ts'

const LETTERS = new Set(['w', 'h', 'r', 'i', 'l', 't', 'b', 'c', 's', 'k', 'lo', 'sl', 'sh', 'il', 'ol'])
const GAP = 8

/**
 * W: 16" H: 20" R: 11" I: 30"
 * ^       ^ one letter is a name only in a run of at least two different ones
 */
export function shorthand(tokens: readonly Token[], quantities: readonly Quantity[], own: Lexis['letters']): Label[] {
  const found: Label[] = []
  let run: { label: Label; end: number }[] = []
  const close = () => {
    const letters = new Set(run.map(({ label }) => label.letter))
    const bare = run.length === 2 && letters.has('s') && letters.size < 2
    if (letters.size >= 2 && !bare) for (const { label } of run) found.push(label)
    run = []
  }
  for (const one of quantities) {
    const label = letterBefore(tokens, one, own) ?? letterAfter(tokens, one, own)
    if (!label) continue
    const last = run[run.length - 1]
    if (last && label.from - last.end > GAP) close()
    run.push({ label, end: Math.max(one.spanTo, label.to) })
  }
  close()
  return found
}

const letterLabel = (at: number, letter: string, name: PointName | undefined): Label => ({
  from: at,
  to: at + 1,
  role: 'point',
  points: name === undefined ? [] : [name],
  basis: null,
  weak: false,
  letter
})

function letterBefore(tokens: readonly Token[], one: Quantity, own: Lexis['letters']): Label | null {
  let at = one.from - 1
  if (/^[:=./-]$/.test(tokens[at]?.text ?? '') && tokens[at]?.kind === 'mark') at--
  const word = tokens[at]
  if (word?.kind !== 'word' || !(LETTERS.has(word.text) || own[word.text])) return null
  const glued = tokens[at - 1]
  if (glued && !word.spaced && (glued.kind === 'word' || glued.kind === 'digits' || glued.text === "'")) return null
  return letterLabel(at, word.text, own[word.text])
}

function letterAfter(tokens: readonly Token[], one: Quantity, own: Lexis['letters']): Label | null {
  const word = tokens[one.to]
  if (word?.kind !== 'word' || !(LETTERS.has(word.text) || own[word.text])) return null
  // 20" W x 28" L: a letter that stands off its figure must end there
  const next = tokens[one.to + 1]
  if (word.spaced && !(next === undefined || next.kind === 'break' || next.text === 'x' || /^[,;/|]$/.test(next.text))) return null
  return letterLabel(one.to, word.text, own[word.text])
}
