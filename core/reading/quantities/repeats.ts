/** Figures that say one thing twice: 30" / 76 cm, 18" (36" around), 36" (18" flat). The first one stays. */
import { toMm } from '../../length.ts'
import { means, meansAny, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Token } from '../text/tokens.ts'
import type { Quantity } from './quantities.ts'

const PARTS: Parameters<typeof meansAny>[1] = [
  'stretched',
  'relaxed',
  'point',
  'detail',
  'to',
  'front',
  'back',
  'cuffed',
  'uncuffed',
  'opened'
]
const SMALL: Parameters<typeof meansAny>[1] = ['light', 'basis', 'or', 'and', 'unit', 'measures', 'all']

const FURTHEST = 8
const MARKS = new Set(['/', '(', ')', '-', '=', ',', '~', '|', '≈', '[', ']', '.', '+', ':', '&', "'", '*'])

/** Joins what belongs together; gives back what is left, in order. */
export function withoutRepeats(text: TextRead, quantities: readonly Quantity[]): Quantity[] {
  const kept: Quantity[] = []
  for (const one of quantities) {
    const last = kept[kept.length - 1]
    const joined = last && couldRepeat(text, last, one) ? repeated(text, last, one) : null
    if (joined) kept[kept.length - 1] = joined
    else kept.push(one)
  }
  return kept
}

/** Only marks, small words and words of flat and around stand between. */
function couldRepeat({ tokens, terms }: TextRead, first: Quantity, second: Quantity): boolean {
  if (first.problem || second.problem || first.height || second.height) return false
  if (second.from - first.spanTo > FURTHEST || second.from <= first.spanTo) return false
  for (let at = first.spanTo; at < second.from; at++) {
    const token = tokens[at] as Token
    if (token.kind === 'break') return false
    if (token.kind === 'mark' && MARKS.has(token.text)) continue
    const term = termAt(terms, at)
    if (meansAny(term, PARTS)) return false
    if (!meansAny(term, SMALL)) return false
  }
  return true
}

const JOINTS = new Set(['/', '(', '='])

const near = (a: number, b: number, mm: number, share: number): boolean => Math.abs(a - b) <= Math.max(mm, share * Math.max(a, b))

function repeated({ tokens, terms }: TextRead, first: Quantity, second: Quantity): Quantity | null {
  const both = first.unit !== null && second.unit !== null && first.unit !== second.unit
  const [a, b] = inOneUnit(first, second)
  if (both && near(a.low, b.low, 13, 0.02) && near(a.high, b.high, 13, 0.02))
    return { ...first, doubling: second.doubling ?? first.doubling, spanTo: second.to }
  if (!both && first.unit === null && second.unit === null && first.value !== second.value) {
    // 30/76: inches and centimetres without a unit
    if (tokens[first.to]?.text === '/' && near(toMm(first.value, 'in'), toMm(second.value, 'cm'), 13, 0.02))
      return { ...first, unit: 'in', spanTo: second.to }
  }
  // 54.5 / 21.5": the bare one in the other unit
  if (!both && (first.unit === null) !== (second.unit === null) && JOINTS.has(tokens[first.spanTo]?.text ?? '')) {
    const unit = first.unit ?? second.unit
    const other = unit === 'in' ? 'cm' : unit === 'cm' ? 'in' : null
    if (other !== null && unit !== null) {
      const [one, two] = [toMm(first.value, first.unit ?? other), toMm(second.value, second.unit ?? other)]
      if (near(one, two, 8, 0.015)) return { ...first, unit: first.unit ?? other, spanTo: second.to }
    }
  }
  if (near(b.low, a.low * 2, 6, 0.015) && near(b.high, a.high * 2, 6, 0.015)) return double(first, second, 'flat')
  if (near(a.low, b.low * 2, 6, 0.015) && near(a.high, b.high * 2, 6, 0.015)) return double(first, second, 'around')
  const bracket = ['/', '('].includes(tokens[first.to]?.text ?? '')
  const claimed = means(termAt(terms, second.to), 'point', 'detail')
  if (both && bracket && !claimed) return { ...first, disagrees: second, spanTo: second.to }
  return null
}

const double = (first: Quantity, second: Quantity, doubling: 'flat' | 'around'): Quantity => ({
  ...first,
  unit: first.unit ?? second.unit,
  doubling,
  spanTo: second.to
})

/** Both in millimetres where a unit is known; bare ones take each other's. */
function inOneUnit(first: Quantity, second: Quantity) {
  const unit = first.unit ?? second.unit ?? 'cm'
  const mm = (one: Quantity) => ({ low: toMm(one.low, one.unit ?? unit), high: toMm(one.high, one.unit ?? unit) })
  return [mm(first), mm(second)] as const
}
