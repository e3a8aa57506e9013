/** What is doubtful about the figures of a text as a whole: several garments, several sizes, a figure that nothing names. */
import type { Issue, Stated } from '../garment/issue.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { Units } from '../length.ts'
import { issue } from './issues.ts'
import type { Quantity } from './quantities/quantities.ts'
import { statedOf } from './quantities/stated.ts'
import type { Reading } from './reading.ts'
import type { TextRead } from './text/text.ts'

export interface FigureIssuesGiven {
  found: readonly Quantity[]
  measures: Reading['measures']
  /** Found while the measures were made. */
  issues: readonly Issue[]
  leftAside: Reading['leftAside']
  kind: GarmentKind | null
  words: Units
}
/** A figure that nothing names stands among those left aside too. */
export type FigureIssues = Pick<Reading, 'issues' | 'leftAside'>

export function figureIssues(text: TextRead, { found, measures, issues, leftAside, kind, words }: FigureIssuesGiven): FigureIssues {
  const all = [...issues, ...severalIssues(measures, kind, words)]
  const nameless = measures.length > 0 || all.length > 0 ? null : namelessFigure(text, found, leftAside)
  if (nameless === null) return { issues: all, leftAside }
  const isAside = leftAside.some(({ stated }) => stated.start === nameless.start)
  return {
    issues: [issue('reading.no-name', { stated: nameless.text }, { stated: nameless }, words)],
    leftAside: isAside ? leftAside : [...leftAside, { stated: nameless, because: 'unknown' }]
  }
}

/** More than one garment, or more than one size, is measured: which is it? */
function severalIssues(measures: Reading['measures'], kind: GarmentKind | null, words: Units): Issue[] {
  const issues: Issue[] = []
  const kinds = new Set(measures.map(({ of }) => of))
  if (kinds.size > 1) issues.push(issue('reading.several-garments', { n: kinds.size, kind: kind ?? 'other' }, {}, words))
  const sizes = new Set(measures.flatMap(({ size }) => (size === undefined ? [] : [size])))
  if (sizes.size > 1) issues.push(issue('reading.several-sizes', { sizes: [...sizes].join(', ') }, {}, words))
  return issues
}

const SHORT_TEXT = 40
/** Beside its figure such a text has an end mark, quotes or a blank, and nothing more. */
const MOST_BESIDE = 3

/** The figure of a text that is little more than that: it needs a name. */
function namelessFigure(text: TextRead, found: readonly Quantity[], leftAside: Reading['leftAside']): Stated | null {
  const whole = text.original.trim()
  if (whole.length > SHORT_TEXT) return null
  const one = found.find((quantity) => quantity.problem === null && !quantity.height)
  if (!one) return null
  const stated = statedOf(text, one)
  const aside = leftAside.find(({ stated: other }) => other.start === stated.start)
  const isIt = aside ? aside.because === 'unknown' : stated.text.length >= whole.length - MOST_BESIDE
  return isIt ? stated : null
}
