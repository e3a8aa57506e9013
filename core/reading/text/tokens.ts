/** Words, digits and marks of a plain text, each with its place. */
import { FILLER } from './normalise.ts'

export interface Token {
  kind: 'word' | 'digits' | 'fraction' | 'mark' | 'break'
  text: string
  start: number
  end: number
  /** Does white space stand before it? */
  spaced: boolean
}

const LETTER = /\p{L}/u
const DIGIT = /\d/
const FRACTION = /[¼-¾⅐-⅞↉]/

type Class = 'word' | 'digits' | 'fraction' | 'mark' | 'break' | 'space' | 'filler'

const ASCII: Class[] = Array.from({ length: 128 }, (_, code) => classOf(String.fromCharCode(code)))

function classOf(character: string): Class {
  if (character === FILLER) return 'filler'
  if (character === '\n') return 'break'
  if (/\s/.test(character)) return 'space'
  if (DIGIT.test(character)) return 'digits'
  if (LETTER.test(character)) return 'word'
  return FRACTION.test(character) ? 'fraction' : 'mark'
}

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
    if (kind === 'word' || kind === 'digits') {
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
    tokens.push({ kind, text, start: at, end, spaced })
    spaced = kind === 'break'
    at = end
  }
  return tokens
}
