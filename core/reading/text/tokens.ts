/** Words, digits and marks of a plain text, each with its place. */

import { table } from '../../ids/table.ts'
import { isSquaredUnit, isUnspaced } from '../languages/scripts.ts'
import { FILLER } from './normalise.ts'

export interface Token {
  kind: 'word' | 'digits' | 'fraction' | 'mark' | 'break'
  text: string
  start: number
  end: number
  /** Does white space stand before it? */
  spaced: boolean
}

/** Is it one of these marks (or letters, each a token of its own)? */
export const isOneOf = (token: Token | undefined, marks: string): boolean =>
  token !== undefined && token.text.length === 1 && marks.includes(token.text)

/** Does a figure stand here, or behind the one mark that leads to it? */
export const leadsToFigure = (tokens: readonly Token[], at: number): boolean =>
  tokens[isOneOf(tokens[at], ':=-') ? at + 1 : at]?.kind === 'digits'

const LETTER = /\p{L}/u
const DIGIT = /\d/
const FRACTION = /[¼-¾⅐-⅞↉]/

/** A run: letters of a script without spaces, of one word or of many (see runs.ts); what stands beside it in other letters is another word. */
type Class = 'word' | 'run' | 'digits' | 'fraction' | 'mark' | 'break' | 'space' | 'filler'

const ASCII: Class[] = Array.from({ length: 128 }, (_, code) => classOf(String.fromCharCode(code)))

function classOf(character: string): Class {
  if (character === FILLER) return 'filler'
  if (character === '\n') return 'break'
  if (/\s/.test(character)) return 'space'
  if (DIGIT.test(character)) return 'digits'
  const code = character.charCodeAt(0)
  if (isUnspaced(code)) return 'run'
  if (isSquaredUnit(code)) return 'word'
  if (LETTER.test(character)) return 'word'
  return FRACTION.test(character) ? 'fraction' : 'mark'
}

const TIMES = '×'
const WIDE = table<string>({ '、': ',', '。': '.' })

/** The tokens of a plain text, in order. Letters and digits run together with their own kind; a mark stands alone. Linear. */
export function tokensOf(plain: string): Token[] {
  const tokens: Token[] = []
  let spaced = true
  let at = 0
  while (at < plain.length) {
    const code = plain.charCodeAt(at)
    const kind = code < 128 ? (ASCII[code] as Class) : classOf(plain.charAt(at))
    if (kind === 'space' || kind === 'filler') {
      spaced ||= kind === 'space'
      at++
      continue
    }
    let end = at + 1
    let text = plain.charAt(at)
    if (kind === 'word' || kind === 'run' || kind === 'digits') {
      // W𝗮𝗶s𝘁: fillers inside a run belong to it
      let last = end
      let filled = false
      for (; end < plain.length; end++) {
        const next = plain.charCodeAt(end)
        const its = next < 128 ? (ASCII[next] as Class) : classOf(plain.charAt(end))
        if (its === 'filler') {
          filled = true
          continue
        }
        if (its !== kind) break
        last = end + 1
      }
      end = last
      text = plain.slice(at, end)
      if (filled) text = text.replaceAll(FILLER, '')
    }
    // a filler after the last unit belongs to the character it completes: &quot; and 𝗪 end where they end in the original
    while (end < plain.length && plain.charCodeAt(end) === 0) end++
    // the marks of Chinese and Japanese have their space within
    const wide = code > 0x3000 && kind === 'mark' ? WIDE[text] : undefined
    // “57cm×70cm”: the sign is a word of its own, also right behind a letter
    if (text === TIMES) tokens.push({ kind: 'word', text: 'x', start: at, end, spaced })
    else tokens.push({ kind: kind === 'run' ? 'word' : kind, text: wide ?? text, start: at, end, spaced })
    spaced = kind === 'break' || wide !== undefined
    at = end
  }
  return tokens
}
