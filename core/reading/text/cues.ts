/**
 * Does a word have a role in one of the languages? For rules that hang on a single word: `const WITH = cue('with')`, then
 * `WITH.test(token.text)`. The words stand in the language files (languages/cue-roles.ts lists the roles); sellers mix
 * languages, so a word counts whatever the text's language is.
 */
import type { AmountRole, CueRole } from '../languages/cue-roles.ts'
import { phrasesIn } from '../languages/phrases.ts'
import { OF_EVERY } from './lexicons.ts'
import { wordsOf } from './phrase-trie.ts'

export interface Cue {
  /** Is this word, evened out as tokens are, one of them? Where no token stands there is none. */
  test: (word: string | undefined) => boolean
}

/** The words of these roles in every language; gathered when first asked. */
export function cue(...roles: CueRole[]): Cue {
  let words: ReadonlySet<string> | null = null
  let looks = NO_LOOKS
  return {
    test: (word) => {
      if (words === null) {
        words = new Set(writtenAs(roles).flatMap(wordsOf))
        looks = looksOf(words)
      }
      return word !== undefined && looksLike(word, looks) && words.has(word)
    }
  }
}

/** How long a few words are and with which letters they begin, a bit each: most words of a text are none of them by that alone. */
interface Looks {
  lengths: number
  letters: number
}
const NO_LOOKS: Looks = { lengths: 0, letters: 0 }
const looksLike = (word: string, { lengths, letters }: Looks): boolean =>
  ((lengths >>> Math.min(word.length, 31)) & 1) === 1 && ((letters >>> (word.charCodeAt(0) & 31)) & 1) === 1
function looksOf(words: Iterable<string>): Looks {
  const looks = { ...NO_LOOKS }
  for (const word of words) {
    looks.lengths |= 1 << Math.min(word.length, 31)
    looks.letters |= 1 << (word.charCodeAt(0) & 31)
  }
  return looks
}

/** Does a text hold one of these words, or parts of words, anywhere as it was written? */
export const cueInside = (...roles: CueRole[]): Cue => partOf(roles, (text, part) => text.includes(part))
/** Does a word begin with one of them? */
export const cueStart = (...roles: CueRole[]): Cue => partOf(roles, (text, part) => text.startsWith(part))
/** Does a word end with one of them? */
export const cueEnd = (...roles: CueRole[]): Cue => partOf(roles, (text, part) => text.endsWith(part))

function partOf(roles: readonly CueRole[], holds: (text: string, part: string) => boolean): Cue {
  let parts: readonly string[] | null = null
  return {
    test: (text) => {
      if (text === undefined) return false
      parts ??= writtenAs(roles)
      const lower = text.toLowerCase()
      return parts.some((part) => holds(lower, part))
    }
  }
}

const writtenAs = (roles: readonly CueRole[]): string[] => roles.flatMap((role) => phrasesIn(OF_EVERY.cues[role]))

export interface Amount {
  /** What this word, evened out as tokens are, stands for; undefined where for nothing. */
  get: (word: string | undefined) => number | undefined
}

/** The amounts that words stand for in this role, in every language. */
export function amount(role: AmountRole): Amount {
  let known: ReadonlyMap<string, number> | null = null
  let looks = NO_LOOKS
  return {
    get: (word) => {
      if (known === null) {
        known = new Map(
          OF_EVERY.amounts.flatMap((amounts) =>
            Object.entries(amounts[role] ?? {}).flatMap(([written, value]) => wordsOf(written).map((one) => [one, value] as const))
          )
        )
        looks = looksOf(known.keys())
      }
      return word !== undefined && looksLike(word, looks) ? known.get(word) : undefined
    }
  }
}
