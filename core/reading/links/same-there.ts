/** “21" across the chest, the same at the waist”: a figure told of a second name without being written again. */
import type { Label } from '../names/label.ts'
import { cue, cueInside } from '../text/cues.ts'
import { means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Link } from './assign.ts'

/** A quick look: most texts say it nowhere. */
const SAID = cueInside('same')
const SAME = cue('same')
const SAME_AT = cue('sameAt')
const FURTHEST = 4

/** Girths that the figure before them holds for too. `links`: what is linked, in order of its figures. */
export function sameThere(text: TextRead, labels: readonly Label[], links: readonly Link[]): Link[] {
  const { original } = text
  if (!SAID.test(original)) return []
  const taken = new Set(links.map(({ label }) => label))
  return labels.flatMap((label) => {
    if (label.role !== 'point' || label.points.length !== 1 || taken.has(label) || !isSame(text, label.from)) return []
    const before = links.filter(({ quantity }) => quantity.spanTo <= label.from).at(-1)
    if (before?.label.role !== 'point' || isParted(text, before.quantity.spanTo, label.from)) return []
    return [{ ...before, label: { ...label, basis: label.basis ?? before.label.basis }, again: false, before: true }]
  })
}

/** “the same at the hip”. */
function isSame({ tokens, terms }: TextRead, from: number): boolean {
  for (let at = from - 1; at >= from - FURTHEST; at--) {
    if (SAME.test(tokens[at]?.text)) return at < from - 1 && SAME_AT.test(tokens[at + 1]?.text)
    if (!means(termAt(terms, at), 'light', 'basis')) return false
  }
  return false
}

const FAR = 16
function isParted({ tokens }: TextRead, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (tokens[at]?.kind === 'break' || tokens[at]?.kind === 'digits') return true
  return to - from > FAR
}
