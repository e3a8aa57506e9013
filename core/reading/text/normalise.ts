/**
 * A text made plain without moving anything: every UTF-16 unit of the plain text stands at the same place in the original.
 * What has no place of its own (tags, second halves of characters, entities) becomes FILLER, which the tokens skip.
 */

import { table } from '../../ids/table.ts'
import { isSquaredUnit, isUnspaced } from '../languages/scripts.ts'

/** Skipped by the tokens; never printed. */
export const FILLER = '\u0000'

const SAME = table<string>({
  '”': '"',
  '“': '"',
  '„': '"',
  '‟': '"',
  '″': '"',
  '〃': '"',
  '˝': '"',
  ʺ: '"',
  '＂': '"',
  '«': '"',
  '»': '"',
  '’': "'",
  '‘': "'",
  '‚': "'",
  '‛': "'",
  '′': "'",
  ʹ: "'",
  ʼ: "'",
  '`': "'",
  '´': "'",
  '＇': "'",
  '–': '-',
  '—': '-',
  '―': '-',
  '‒': '-',
  '‐': '-',
  '‑': '-',
  '−': '-',
  '✕': '×',
  '✖': '×',
  '⨯': '×',
  '⁄': '/',
  '∕': '/',
  '\u2028': '\n',
  '\u2029': '\n',
  '\r': '\n',
  '\v': '\n',
  '\f': '\n',
  '\t': ' ',
  æ: 'a',
  œ: 'o',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ß: 's',
  ı: 'i',
  // no letter of its sign is a word
  '№': '№',
  º: '°',
  '˚': '°',
  '〜': '~',
  '〰': '~',
  '・': '·',
  '･': '·',
  '｡': '。',
  '､': '、',
  '「': '[',
  '」': ']',
  '『': '[',
  '』': ']',
  '【': '[',
  '】': ']',
  '〔': '[',
  '〕': ']',
  '〈': '[',
  '〉': ']',
  '《': '[',
  '》': ']',
  '｢': '[',
  '｣': ']',
  ﾞ: FILLER,
  ﾟ: FILLER,
  '\u00ad': FILLER,
  '\u200b': FILLER,
  '\u200c': FILLER,
  '\u200d': FILLER,
  '\u2060': FILLER,
  '\ufeff': FILLER,
  '\ufe0f': FILLER
})
/** Kept as they are though a compatibility form exists: fractions are numbers of their own. */
const FRACTION = /[¼-¾⅐-⅞↉]/
const COMBINING = /\p{M}/u

const cache = new Map<string, string>()

/** One character (one or two units) as plain text of the same number of units. */
function plainCharacter(character: string): string {
  if (isUnspaced(character.charCodeAt(0)) || isSquaredUnit(character.charCodeAt(0))) return character
  const known = cache.get(character)
  if (known !== undefined) return known
  const plain = workOut(character)
  if (cache.size < 4000) cache.set(character, plain)
  return plain
}

function workOut(character: string): string {
  const lower = character.toLowerCase()
  const same = SAME[character] ?? SAME[lower]
  if (same !== undefined) return same.padEnd(character.length, FILLER)
  if (FRACTION.test(character)) return character
  if (COMBINING.test(character)) return FILLER.repeat(character.length)
  // ｶ → カ, ﾷ → ᄇ: the narrow forms of letters that are written without spaces
  const wide = character.normalize('NFKC')
  if (wide.length === 1 && isUnspaced(wide.charCodeAt(0))) return wide
  // é → e, 𝗪 → w, ３ → 3; what unfolds into more than its first letter keeps only a sign that something stood there
  const folded = character.normalize('NFKD').toLowerCase().replace(/\p{M}/gu, '')
  if (folded.length >= 1 && folded.length <= character.length) {
    const first = SAME[folded] ?? folded
    if (/^[\p{L}\p{N}\p{P}\p{S}\s]+$/u.test(first) && first.length <= character.length)
      return (character.length === 2 && first === character ? '•' : first).padEnd(character.length, FILLER)
  }
  if (/\s/u.test(character)) return ' '.padEnd(character.length, FILLER)
  return character.length === 2 ? `•${FILLER}` : (folded[0] ?? '•')
}

const ENTITIES = table<string>({
  quot: '"',
  ldquo: '"',
  rdquo: '"',
  Prime: '"',
  apos: "'",
  lsquo: "'",
  rsquo: "'",
  prime: "'",
  amp: '&',
  nbsp: ' ',
  lt: '<',
  gt: '>',
  frac12: '½',
  frac14: '¼',
  frac34: '¾',
  times: 'x',
  ndash: '-',
  mdash: '-',
  minus: '-',
  bull: '•',
  middot: '·',
  deg: '°',
  pound: '£',
  euro: '€'
})
const ENTITY = /&(#\d{1,6}|#x[0-9a-f]{1,5}|[a-z]{2,6}\d{0,2});/gi
const TAG = /<(\/?)([a-z][a-z0-9]{0,15})(?:\s[^<>]{0,500})?\/?>/gi
const BREAKS = /^(?:br|p|li|ul|ol|div|tr|table|h[1-6]|section|dt|dd|dl)$/i
const UNREAD = ['script', 'style']

export interface Plain {
  /** As long as the original. */
  text: string
  /** Tags or scripts were found. */
  markup: boolean
}

/** Lower case, plain quotes, dashes and letters, no marks above letters, no tags; same length as the original. Linear. */
export function normalise(original: string): Plain {
  let markup = false
  let text = original
  if (text.includes('<')) {
    text = withoutUnread(text)
    text = text.replace(TAG, (tag, _close, name: string) => (BREAKS.test(name) ? '\n' : ' ').padEnd(tag.length, FILLER))
    markup = text !== original
  }
  if (text.includes('&')) {
    text = text.replace(ENTITY, (entity, name: string) => {
      const plain = name.startsWith('#') ? fromCode(name) : (ENTITIES[name] ?? ENTITIES[name.toLowerCase()])
      return plain === undefined ? entity : plain.padEnd(entity.length, FILLER)
    })
  }
  if (text.includes('\t')) text = text.replace(LINE, columns)
  if (/^\p{ASCII}*$/u.test(text) && !/[\r\v\f\t`]/.test(text)) return { text: text.toLowerCase(), markup }
  if (BROKEN.test(text)) text = text.replace(JOINED, (parts) => parts.normalize('NFKC').padEnd(parts.length, FILLER))
  if (text.includes('ー') || text.includes('ｰ')) text = text.replace(LONG_SOUND, '-')
  const lower = text.toLowerCase()
  if (lower.length === text.length) return { text: lower.replace(NOT_PLAIN, plainCharacter), markup }
  // a letter whose small form is longer (İ) would move the rest: one character at a time
  const parts: string[] = []
  for (const character of text)
    parts.push(character.charCodeAt(0) < 0x80 ? character.toLowerCase().replace(NOT_PLAIN, plainCharacter) : plainCharacter(character))
  return { text: parts.join(''), markup }
}
const LINE = /[^\n]+/g
const CELLS_APART = /\S[ ]*\t\s*(?=\S)/g

/** Tabs part the columns of a line that has three or more, as a table on a page comes out in its text; one tab alone is a space. */
function columns(line: string): string {
  const parted = line.match(CELLS_APART)
  return parted === null || parted.length < 2 ? line : line.replace(CELLS_APART, (between) => between.replace('\t', '|'))
}
const NOT_PLAIN = /[^ -_a-~\n]/gu
/** ﾊﾞ, は and its mark apart, a syllable in its letters: one character in two or three. */
const BROKEN = /[\uff9e\uff9f\u3099\u309a\u1161-\u1175]/
const JOINED = /[\u3041-\u30ff\uff66-\uff9d][\uff9e\uff9f\u3099\u309a]|[\u1100-\u1112][\u1161-\u1175][\u11a8-\u11c2]?/g
/** The sign of a long vowel behind no vowel is a dash: 肩幅ー45. */
const LONG_SOUND = /(?<![\u3041-\u30ff\uff66-\uff9f\0])[ー\uff70]/g

function fromCode(name: string): string | undefined {
  const code = name[1] === 'x' || name[1] === 'X' ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1))
  if (!(code > 0 && code < 0xd800)) return undefined
  return String.fromCharCode(code)
}

/** Scripts and styles are blanked from tag to closing tag; one that never closes is left as text. */
function withoutUnread(text: string): string {
  let now = text
  for (const name of UNREAD) {
    const lower = now.toLowerCase()
    if (lower.length !== now.length) continue
    let from = lower.indexOf(`<${name}`)
    if (from < 0) continue
    const parts: string[] = []
    let done = 0
    while (from >= 0) {
      const close = lower.indexOf(`</${name}`, from)
      if (close < 0) break
      const end = lower.indexOf('>', close)
      if (end < 0) break
      parts.push(now.slice(done, from), '\n'.padEnd(end + 1 - from, FILLER))
      done = end + 1
      from = lower.indexOf(`<${name}`, done)
    }
    parts.push(now.slice(done))
    now = parts.join('')
  }
  return now
}
