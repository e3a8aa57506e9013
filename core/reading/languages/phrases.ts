/**
 * How the language files write their phrases: one a line, as people write them. Case, accents, hyphens and glued dots are
 * evened out when the table is read; a line that begins with // is a comment.
 */

/** Phrases of one meaning, one a line; a single one may stand in quotes. */
export type Phrases = string

const NO_PHRASES: readonly string[] = []

/** The phrases of a list, without comments and empty lines. */
export function phrasesIn(list: Phrases | undefined): readonly string[] {
  if (list === undefined) return NO_PHRASES
  const phrases: string[] = []
  for (const line of list.split('\n')) {
    const phrase = line.trim()
    if (phrase !== '' && !phrase.startsWith('//')) phrases.push(phrase)
  }
  return phrases
}

/** Each phrase of the first list with each of the second behind it: “sleeve buttons”, “don't open”. */
export const everyPairOf = (first: Phrases, second: Phrases): Phrases =>
  phrasesIn(first)
    .flatMap((start) => phrasesIn(second).map((end) => `${start} ${end}`))
    .join('\n')
