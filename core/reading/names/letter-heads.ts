/** “W / H / R / I” and then as many figures in a row: letters that head what stands in their order. */
import type { Quantity } from '../quantities/quantities.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'
import type { Label } from './label.ts'
import { LETTERS, letterLabel } from './shorthand.ts'

const PARTS = '/|,·•x-'
const MOST = 8

/** The letters of each such run. Linear: a run is looked at once. */
export function letterHeads(text: TextRead, quantities: readonly Quantity[]): Label[] {
  const { tokens } = text
  const found: Label[] = []
  let next = 0
  for (let at = 0; at < tokens.length; at++) {
    if (!isLetter(text, at)) continue
    const run = [at]
    let end = at + 1
    while (run.length < MOST) {
      const letter = isOneOf(tokens[end], PARTS) && !isLetter(text, end) ? end + 1 : end
      if (!isLetter(text, letter)) break
      run.push(letter)
      end = letter + 1
    }
    at = end - 1
    const letters = new Set(run.map((index) => tokens[index]?.text))
    if (run.length < 2 || letters.size < run.length) continue
    while (next < quantities.length && (quantities[next] as Quantity).from < end) next++
    if (isRowBehind(text, quantities, next, run.length, end))
      for (const index of run) found.push(letterLabel(index, tokens[index]?.text ?? '', text.trie.letters[tokens[index]?.text ?? '']))
  }
  return found
}

const isLetter = ({ tokens, trie }: TextRead, at: number): boolean => {
  const token = tokens[at]
  if (token?.kind !== 'word' || token.text.length > 2 || token.text === 'x') return false
  return LETTERS.test(token.text) || trie.letters[token.text] !== undefined
}

/** Exactly so many figures on one line, right behind the letters or on the line below, with nothing but signs between. */
function isRowBehind(text: TextRead, quantities: readonly Quantity[], first: number, size: number, end: number): boolean {
  const { tokens, layout } = text
  const row = quantities.slice(first, first + size)
  const [head] = row
  if (head === undefined || row.length < size) return false
  for (let at = end; at < head.from; at++) if (tokens[at]?.kind !== 'break' && tokens[at]?.kind !== 'mark') return false
  if ((layout.line[head.from] as number) > (layout.line[end - 1] as number) + 1) return false
  for (let index = 1; index < size; index++) {
    const [before, one] = [row[index - 1] as Quantity, row[index] as Quantity]
    if (one.from - before.spanTo > 1 || layout.line[one.from] !== layout.line[head.from]) return false
    if (one.from > before.spanTo && tokens[before.spanTo]?.kind !== 'mark' && tokens[before.spanTo]?.text !== 'x') return false
  }
  const further = quantities[first + size]
  return further === undefined || further.from - (row[size - 1] as Quantity).spanTo > 1
}
