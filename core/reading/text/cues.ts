/**
 * Does a word have a role in one of the languages? For rules that hang on a single word: `const WITH = cue('with')`, then
 * `WITH.test(token.text)`. The words stand in the language files (languages/cue-roles.ts lists the roles); sellers mix
 * languages, so a word counts whatever the text's language is.
 */
import type { AmountRole, CueRole } from '../languages/cue-roles.ts'
import { phrasesIn } from '../languages/phrases.ts'
import { LEXICONS, wordsOf } from './phrase-trie.ts'

export interface Cue {
  /** Is this word, evened out as tokens are, one of them? */
  test: (word: string) => boolean
}

/** The words of these roles in every language; gathered when first asked. */
export function cue(...roles: CueRole[]): Cue {
  let words: ReadonlySet<string> | null = null
  return {
    test: (word) => {
      words ??= new Set(writtenAs(roles).flatMap(wordsOf))
      return words.has(word)
    }
  }
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
      parts ??= writtenAs(roles)
      const lower = text.toLowerCase()
      return parts.some((part) => holds(lower, part))
    }
  }
}

const writtenAs = (roles: readonly CueRole[]): string[] => LEXICONS.flatMap(({ cues }) => roles.flatMap((role) => phrasesIn(cues[role])))

export interface Amount {
  /** What this word, evened out as tokens are, stands for; undefined where for nothing. */
  get: (word: string) => number | undefined
}

/** The amounts that words stand for in this role, in every language. */
export function amount(role: AmountRole): Amount {
  let known: ReadonlyMap<string, number> | null = null
  return {
    get: (word) => {
      known ??= new Map(
        LEXICONS.flatMap(({ amounts }) =>
          Object.entries(amounts?.[role] ?? {}).flatMap(([written, value]) => wordsOf(written).map((one) => [one, value] as const))
        )
      )
      return known.get(word)
    }
  }
}
