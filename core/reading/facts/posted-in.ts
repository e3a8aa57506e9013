/** Whose dollars a price is in: where a seller posts to tells it, and sizes of one country and of no other; where a thing was made does not. */
import { phrasesIn } from '../languages/phrases.ts'
import { cue, cueInside } from '../text/cues.ts'
import { OF_EVERY } from '../text/lexicons.ts'

const PLACES = OF_EVERY.postedIn.map(([country, phrases]) => ({ country, phrases: phrasesIn(phrases) }))
const SIZED_AU = /\b(?:AU|Aus) (?=(?:(\p{L}+) )?\d{1,2}\b)/gu
const SIZED_ELSEWHERE = /\b(?:US|UK|EU|EUR|IT|FR|DE|JP) ?(?=(?:(\p{L}+) )?\d)/gu
const SIZE = cue('sizeWord')
/** “AU 12”, “AU size 12”. */
const isSized = (text: string, sizes: RegExp): boolean =>
  [...text.matchAll(sizes)].some(([, between]) => between === undefined || SIZE.test(between))

/** What a whole text says is asked once, however many sums stand in it: each asks for the same text again. */
function ofLastText<T>(ask: (text: string) => T): (text: string) => T {
  let last: { text: string; answer: T } | null = null
  return (text) => {
    if (last === null || last.text !== text) last = { text, answer: ask(text) }
    return last.answer
  }
}

/** Letters that only Chinese is written in: 宽, 码. */
const CHINESE = cueInside('chinese')
export const isChinese = ofLastText((text) => CHINESE.test(text))

/** The country (ISO 3166) that a text is sold in by what it says, or ''. */
export const postedIn = ofLastText((text): string => {
  const plain = text.toLowerCase().replaceAll('-', ' ')
  const said = PLACES.find(({ phrases }) => phrases.some((phrase) => stands(plain, phrase)))
  if (said) return said.country
  return isSized(text, SIZED_AU) && !isSized(text, SIZED_ELSEWHERE) ? 'AU' : ''
})

/** Does a phrase stand in a text, with no letter or digit beside it? */
function stands(text: string, phrase: string): boolean {
  for (let at = text.indexOf(phrase); at >= 0; at = text.indexOf(phrase, at + 1))
    if (!IN_WORD.test(text.charAt(at - 1)) && !IN_WORD.test(text.charAt(at + phrase.length))) return true
  return false
}
const IN_WORD = /[\p{L}\p{N}]/u
