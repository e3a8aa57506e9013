/** Lines, sentences, segments (between commas) and paragraphs, by token. */

import { cue } from './cues.ts'
import type { Token } from './tokens.ts'

export interface Layout {
  line: number[]
  sentence: number[]
  segment: number[]
  paragraph: number[]
}

/** A dot after these ends no sentence. */
const SHORT = cue('shortForm')
const PARTS = new Set([',', ';', '|', '•', '·', '*'])

/** Does a sentence end with this token? A dot between digits or after a short form does not end one. */
export function endsSentence(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at]
  if (token === undefined || token.kind !== 'mark') return false
  if (token.text === '!' || token.text === '?') return true
  if (token.text !== '.') return false
  const next = tokens[at + 1]
  if (next !== undefined && next.kind !== 'break' && !next.spaced) return false
  const before = tokens[at - 1]
  if (before === undefined || before.kind === 'break' || before.text === '.') return false
  if (next === undefined || next.kind === 'break') return true
  if (isNamedLine(tokens, at)) return false
  return !(before.kind === 'word' && SHORT.test(before.text)) || /^(?:ins|in|cm)$/.test(before.text)
}

const FIGURE = /^(?:digits|fraction)$/

/** “Waist. 15” alone on its line: the dot stands for a colon. */
function isNamedLine(tokens: readonly Token[], at: number): boolean {
  if (!FIGURE.test(tokens[at + 1]?.kind ?? '')) return false
  let from = at - 1
  while (from >= 0 && at - from <= 3 && tokens[from]?.kind === 'word') from--
  if (from >= 0 && tokens[from]?.kind !== 'break') return false
  for (let to = at + 2; to < at + 6 && tokens[to]?.text !== 'x'; to++)
    if (tokens[to] === undefined || tokens[to]?.kind === 'break') return true
  return false
}

export function layoutOf(tokens: readonly Token[]): Layout {
  const layout: Layout = { line: [], sentence: [], segment: [], paragraph: [] }
  let line = 0
  let sentence = 0
  let segment = 0
  let paragraph = 0
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token
    layout.line.push(line)
    layout.sentence.push(sentence)
    layout.segment.push(segment)
    layout.paragraph.push(paragraph)
    if (token.kind === 'break') {
      line++
      sentence++
      segment++
      if (tokens[at + 1]?.kind === 'break') paragraph++
    } else if (endsSentence(tokens, at)) {
      sentence++
      segment++
    } else if (token.kind === 'mark' && PARTS.has(token.text)) segment++
  }
  return layout
}
