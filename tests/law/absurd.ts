/** What no sentence for a person may hold: names of nothing, unfilled places, figures that only a program writes. */
const ABSURD = /\bNaN\b|Infinity|undefined|\bnull\b|\[object|[{}]|\de[+-]?\d|[-−]0(?![\d.,])| {2}|^\s*$/

/** The sentences in an answer or a reading, wherever they stand. */
export function sentencesIn(value: unknown): string[] {
  const found: string[] = []
  const look = (inner: unknown): void => {
    if (typeof inner !== 'object' || inner === null) return
    for (const [name, one] of Object.entries(inner)) {
      if (SPOKEN.has(name) && typeof one === 'string') found.push(one)
      // what a listing says itself is nobody's sentence
      else if (name !== 'stated') look(one)
    }
  }
  look(value)
  return found
}
const SPOKEN = new Set(['text', 'question', 'limitBecause', 'because'])

/** The sentences that nobody could have written; `quoted`: words of a listing or a person that may stand in one as they came. */
export function absurdIn(value: unknown, quoted = ''): string[] {
  return sentencesIn(value).filter((sentence) => ABSURD.test(quoted === '' ? sentence : withoutQuotes(sentence, quoted)))
}

/** Without what a sentence has in quotation marks and in its listing's own words. */
const withoutQuotes = (sentence: string, quoted: string): string =>
  sentence.replace(/“([^”]*)”/gu, (whole, inner: string) => (quoted.includes(inner.trim()) ? '“”' : whole))
