/** Several names, then as many figures: bust/waist/hips 36/28/38, and tables with a row a size. */

import type { PointName } from '../languages/lexicon.ts'
import type { Label } from '../names/label.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { LETTERS, LONG_OR_SHORT, SIZE_WORD } from '../sizes/size-words.ts'
import { cue } from '../text/cues.ts'
import { endsSentence } from '../text/layout.ts'
import { means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'

export interface Shared {
  quantity: Quantity
  label: Label
  /** null: a letter, settled by what its figure can be. */
  point: PointName | null
  size: string | null
}
export interface Joint {
  shared: Shared[]
  labels: Set<Label>
  quantities: Set<Quantity>
  sizes: string[]
  /** Sizes in number that head the rows of a table. */
  sizeFigures: Quantity[]
}
interface Around extends TextRead {
  labels: readonly Label[]
  quantities: readonly Quantity[]
}
const LONGEST = 12

/** What joint names and tables share out; the rest is linked one by one. Linear. */
export function jointOf(around: Around): Joint {
  const joint: Joint = { shared: [], labels: new Set(), quantities: new Set(), sizes: [], sizeFigures: [] }
  const { labels, quantities } = around
  let quantity = 0
  for (let first = 0; first < labels.length; ) {
    const chain = chainFrom(around, first)
    const last = chain[chain.length - 1] as Label
    if (chain.length === 1 && last.points.length < 2) {
      first++
      continue
    }
    while (quantities[quantity] && (quantities[quantity] as Quantity).from < last.to) quantity++
    const names = chain.flatMap((label): Name[] =>
      label.letter && label.points.length === 0 ? [{ label, point: null }] : label.points.map((point) => ({ label, point }))
    )
    if (names.length >= 2 && chain.every((label) => label.role === 'point' && !label.weak)) {
      const next = first + chain.length
      const done =
        figuresBefore(around, names, chain[0] as Label, quantity, labels[first - 1], joint) ||
        rows(around, names, last, quantity, next, joint) ||
        figures(around, names, last, quantity, next, standsClose(chain), joint)
      if (done) for (const label of chain) joint.labels.add(label)
    }
    first += chain.length
  }
  return joint
}
interface Name {
  label: Label
  point: PointName | null
}

/** Labels one after another with nothing but commas, slashes, bars and “and” between. */
function chainFrom({ tokens, terms, labels }: Around, first: number): Label[] {
  const chain = [labels[first] as Label]
  // “55 x 56 (chest x length), sleeve 23”: what opens in brackets ends with them
  const bracketed = tokens[(labels[first] as Label).from - 1]?.text === '('
  for (let next = first + 1; next < labels.length && chain.length < LONGEST; next++) {
    const before = chain[chain.length - 1] as Label
    const label = labels[next] as Label
    // a letter and a name in full make no list
    if (label.from - before.to > 6 || (before.letter === null) !== (label.letter === null)) break
    let joins = true
    for (let at = before.to; at < label.from && joins; at++) {
      const token = tokens[at] as Token
      const term = termAt(terms, at)
      if (bracketed && token.text === ')') joins = false
      if (token.kind === 'mark' ? !isOneOf(token, ',/|&+()][·•~-') : token.text !== 'x' && !means(term, 'and', 'unit')) joins = false
    }
    if (!joins) break
    chain.push(label)
  }
  return chain
}

/** “chest waist hips”: names with nothing between; then marks must part their figures. */
const standsClose = (chain: readonly Label[]): boolean =>
  chain.some((label, index) => index > 0 && (chain[index - 1] as Label).to === label.from)

/** Exactly as many figures as names, in the names' order. */
function figures(
  text: Around,
  names: readonly Name[],
  last: Label,
  from: number,
  nextLabel: number,
  adjacent: boolean,
  joint: Joint
): boolean {
  const { tokens, labels, quantities } = text
  const limit = labels[nextLabel]?.from ?? tokens.length
  const row: (Quantity | null)[] = []
  let reached = last.to
  for (let index = from; index < quantities.length && row.length <= names.length; index++) {
    const one = quantities[index] as Quantity
    takeOpen()
    if (one.from >= limit || !joins(text, reached, one.from, row.length === 0)) break
    if (adjacent && row.length > 0 && tokens[reached]?.kind !== 'mark') return false
    row.push(one)
    reached = one.spanTo
  }
  if (row.length > 0) takeOpen()
  if (row.length !== names.length) return false
  // a figure that runs straight into the next name is that name's
  const next = labels[nextLabel]
  if (next && next.from === reached && names.length > 1 && !isOneOf(tokens[last.to], ':=-')) return false
  row.forEach((quantity, index) => {
    if (quantity !== null) share(joint, names[index] as Name, quantity, null)
  })
  return true

  /** The words of girths without a bound that come next. */
  function takeOpen(): void {
    while (row.length < names.length) {
      const behind = openTo(text, reached, row.length === 0)
      if (behind === null) return
      row.push(null)
      reached = behind
    }
  }
}

const OPEN = cue('unbounded')
/**
 * 35/26/free · full/28/40: a girth that nothing bounds stands in the row as a word. The token behind it, or null; right behind the names
 * no mark need stand before it, but one behind it.
 */
function openTo({ tokens }: TextRead, at: number, first: boolean): number | null {
  const leads = first && tokens[at]?.kind === 'word'
  const word = leads ? at : at + 1
  const sign = leads ? tokens[at + 1] : tokens[at]
  const opens = sign?.kind === 'mark' && isOneOf(sign, '/,:-') && tokens[word]?.kind === 'word' && OPEN.test(tokens[word].text)
  return opens ? word + 1 : null
}

/** 22 x 27 (chest x length): the figures first, the names in brackets behind them. */
function figuresBefore(
  { tokens, quantities }: Around,
  names: readonly Name[],
  first: Label,
  next: number,
  before: Label | undefined,
  joint: Joint
): boolean {
  if (tokens[first.from - 1]?.text !== '(') return false
  const row = quantities.slice(Math.max(0, next - names.length), next)
  if (row.length !== names.length || (before && before.to > (row[0] as Quantity).from)) return false
  if ((row[row.length - 1] as Quantity).spanTo < first.from - 2) return false
  for (let index = 1; index < row.length; index++) {
    const sign = tokens[(row[index - 1] as Quantity).spanTo]?.text
    if ((row[index] as Quantity).from - (row[index - 1] as Quantity).spanTo !== 1 || !/^[x/,-]$/.test(sign ?? '')) return false
  }
  row.forEach((quantity, index) => {
    share(joint, names[index] as Name, quantity, null)
  })
  return true
}

function share(joint: Joint, { label, point }: Name, quantity: Quantity, size: string | null): void {
  joint.quantities.add(quantity)
  joint.shared.push({ quantity, label: { ...label, points: point === null ? [] : [point] }, point, size })
}

function joins({ tokens, terms }: TextRead, from: number, to: number, head: boolean): boolean {
  if (to - from > 6) return false
  for (let at = from; at < to; at++) {
    const token = tokens[at] as Token
    if (token.kind === 'break' || endsSentence(tokens, at)) return false
    if (token.kind === 'mark') continue
    const term = termAt(terms, at)
    if (token.text !== 'x' && !means(term, 'and', 'light', 'unit', ...(head ? (['measures', 'basis'] as const) : []))) return false
  }
  return true
}

/** Size | Bust | Waist, and below it rows of as many figures, each with its size before them. */
function rows(around: Around, names: readonly Name[], last: Label, from: number, nextLabel: number, joint: Joint): boolean {
  const { tokens, layout, labels, quantities } = around
  const head = layout.line[last.from]
  let line = -1
  let index = from
  const limit = labels[nextLabel]?.from ?? tokens.length
  let any = false
  while (index < quantities.length && (quantities[index] as Quantity).from < limit) {
    const first = quantities[index] as Quantity
    const its = layout.line[first.from] as number
    if (its === head || (line >= 0 && its > line + 2) || (line < 0 && its > (head as number) + 2)) break
    const row: Quantity[] = []
    while (index < quantities.length && layout.line[(quantities[index] as Quantity).from] === its) row.push(quantities[index++] as Quantity)
    const size = sizeOf(around, row, names.length)
    if (size === undefined) break
    line = its
    any = true
    if (size.label !== null) joint.sizes.push(size.label)
    if (size.figure) {
      joint.sizeFigures.push(size.figure)
      joint.quantities.add(size.figure)
    }
    size.row.forEach((quantity, at) => {
      share(joint, names[at] as Name, quantity, size.label)
    })
  }
  return any
}

function sizeOf({ tokens, layout }: TextRead, row: readonly Quantity[], wanted: number) {
  const first = row[0] as Quantity
  if (row.length === wanted + 1 && first.unit === null && Number.isInteger(first.value))
    return { label: String(first.value), figure: first, row: row.slice(1) }
  if (row.length !== wanted) return undefined
  const before: string[] = []
  for (let at = first.from - 1; at >= 0 && layout.line[at] === layout.line[first.from] && tokens[at]?.kind !== 'break'; at--) {
    const token = tokens[at] as Token
    if (token.kind === 'mark') continue
    if (token.kind === 'digits' || before.length > 1) return undefined
    before.unshift(token.text)
  }
  const [word, long] = before
  if (word === undefined) return { label: null, figure: null, row: [...row] }
  if (!SIZE_WORD.test(word) || (long !== undefined && !LONG_OR_SHORT.test(long))) return undefined
  const letter = LETTERS[word] ?? word.toUpperCase()
  return { label: long === undefined ? letter : `${letter} ${long}`, figure: null, row: [...row] }
}
