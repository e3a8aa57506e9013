/**
 * Shares of fibres told without a sign: 65/35 poly cotton, acrylic/wool (60/40), cotton 95 elastane 5, pure wool.
 * “Pure” and “all” say a hundred: Regulation (EU) 1007/2011, Article 7.
 */

import { cue } from '../text/cues.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'

export interface FibreAt {
  fibre: string
  from: number
  to: number
}

const PURE = cue('pure')
const BETWEEN = cue('betweenFibres')
/** “feels like pure wool” is no share. */
const FEELS = cue('feelsLike')
const CLOSE = 4
/** Words that may stand between the names and their shares. */
const BESIDE = cue('besideShares')

/** Shares by fibre, where the numbers beside a run of names are as many as they and make a hundred. Linear. */
export function sharesOf(text: TextRead, found: readonly FibreAt[]): Map<string, number> {
  const shares = new Map<string, number>()
  for (let first = 0; first < found.length; ) {
    let last = first
    while (last + 1 < found.length && isRun(text, found[last] as FibreAt, found[last + 1] as FibreAt)) last++
    const run = found.slice(first, last + 1)
    const ofRun = sharesOfRun(text, run)
    if (ofRun) for (const [index, { fibre }] of run.entries()) if (!shares.has(fibre)) shares.set(fibre, ofRun[index] as number)
    first = last + 1
  }
  return shares
}

function isRun({ tokens, layout }: TextRead, a: FibreAt, b: FibreAt): boolean {
  if (b.from - a.to > CLOSE || a.fibre === b.fibre || layout.line[a.from] !== layout.line[b.from]) return false
  for (let at = a.to; at < b.from; at++) {
    const token = tokens[at] as Token
    // “cotton: 95, elastane: 5”
    if (at === a.to && token.text === ':' && tokens[at + 1]?.kind === 'digits') continue
    if (token.kind === 'digits' || (token.kind === 'mark' && isOneOf(token, ',/&+-'))) continue
    if (token.kind !== 'word' || !BETWEEN.test(token.text)) return false
  }
  return true
}

function sharesOfRun(text: TextRead, run: readonly FibreAt[]): number[] | null {
  const { tokens } = text
  const first = run[0] as FibreAt
  const last = run[run.length - 1] as FibreAt
  const whole = (numbers: (number | null)[]): number[] | null => {
    const known = numbers.filter((one) => one !== null)
    return known.length === run.length && known.reduce((sum, one) => sum + one, 0) === 100 ? known : null
  }
  const after = whole(run.map(({ to }) => numberAt(text, tokens[to]?.text === ':' ? to + 1 : to)))
  const before = whole(run.map(({ from }) => numberAt(text, from - 1)))
  if (after ?? before) return after ?? before
  if (run.length === 1) {
    // 正絹 is one word with its fibre
    const pure = [first.from, first.from - 1].find((at) => PURE.test(tokens[at]?.text))
    return pure === undefined || FEELS.test(tokens[pure - 1]?.text) ? null : [100]
  }
  return whole(ratioBefore(text, first.from, run.length)) ?? whole(ratioAfter(text, last.to, run.length))
}

const numberAt = ({ tokens }: TextRead, at: number): number | null => {
  const token = tokens[at]
  return token?.kind === 'digits' && token.text.length <= 3 ? Number(token.text) : null
}
const isJoint = (token: Token | undefined): boolean => isOneOf(token, '/-')

/** 65/35 poly cotton */
function ratioBefore(text: TextRead, from: number, wanted: number): (number | null)[] {
  const { tokens } = text
  let at = from - 1
  while (from - at < 3 && (tokens[at]?.text === '%' || BESIDE.test(tokens[at]?.text))) at--
  const numbers: (number | null)[] = []
  for (; numbers.length < wanted; at -= 2) {
    numbers.unshift(numberAt(text, at))
    if (numbers.length < wanted && !isJoint(tokens[at - 1])) return []
  }
  return numbers
}

/** wool poly blend 55/45 · mohair & wool (30/70) */
function ratioAfter(text: TextRead, to: number, wanted: number): (number | null)[] {
  const { tokens } = text
  let at = to
  while (at - to < 3 && (isOneOf(tokens[at], '(:,-') || BESIDE.test(tokens[at]?.text))) at++
  const numbers: (number | null)[] = []
  for (; numbers.length < wanted; at += 2) {
    numbers.push(numberAt(text, at))
    if (numbers.length < wanted && !isJoint(tokens[at + 1])) return []
  }
  return numbers
}
