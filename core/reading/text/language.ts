/** The language of a text, by its commonest words and by the words of its trade. */
import { isUnspaced, type Script, scriptOf } from '../languages/scripts.ts'
import { OF_EVERY } from './lexicons.ts'
import type { Token } from './tokens.ts'

/** The places of the languages in which a word is common; gathered when first asked. */
let table: ReadonlyMap<string, readonly number[]> | null = null

function commonWords(): ReadonlyMap<string, readonly number[]> {
  table ??= new Map(
    Object.entries(OF_EVERY.telling).flatMap(([places, words]) => {
      const its = places.split(' ').map(Number)
      return words.split(' ').map((word) => [word, its] as const)
    })
  )
  return table
}

const LANGUAGES = OF_EVERY.languages
const ENGLISH = LANGUAGES.findIndex(({ language }) => language === 'en')
const AT_FIRST: readonly number[] = LANGUAGES.map((_, place) => (place === ENGLISH ? 0.6 : 0))
/** So many words tell it. */
const SAMPLE = 400

/** So many words of the language that was told, beside more of English, are a text in both. */
const BESIDE_ENGLISH = { least: 6, share: 0.4 }
/** How much the scripts of a word tell each language that has them. */
function byScript(text: string, scores: number[]): void {
  const scripts = new Set<Script>()
  for (let at = 0; at < text.length; at++) {
    const script = scriptOf(text.charCodeAt(at))
    if (script !== null) scripts.add(script)
  }
  for (const [place, language] of LANGUAGES.entries())
    for (const script of scripts) scores[place] = (scores[place] as number) + (language.scripts?.[script] ?? 0)
}

/** ISO 639-1 of the likeliest language; a told language leads by a little, English is what nothing contradicts. */
export function languageOf(texts: readonly (readonly Token[])[], given: string | undefined): string {
  const words = commonWords()
  const scores = [...AT_FIRST]
  const hint = given?.slice(0, 2).toLowerCase()
  const hinted =
    hint === undefined ? -1 : LANGUAGES.findIndex(({ language, alsoCalled }) => language === hint || alsoCalled?.includes(hint))
  if (hinted >= 0) scores[hinted] = (scores[hinted] as number) + 1.5
  for (const tokens of texts) {
    for (let at = 0; at < tokens.length && at < SAMPLE; at++) {
      const token = tokens[at] as Token
      if (token.kind !== 'word') continue
      if (isUnspaced(token.text.charCodeAt(0))) byScript(token.text, scores)
      const languages = words.get(token.text)
      if (languages === undefined) continue
      const share = 1 / languages.length
      for (const place of languages) scores[place] = (scores[place] as number) + share
    }
  }
  let best = ENGLISH
  for (let place = 0; place < scores.length; place++) if ((scores[place] as number) > (scores[best] as number)) best = place
  // a text in two languages is read as the other: English is read beside each
  const told = hinted >= 0 ? (scores[hinted] as number) : 0
  if (best === ENGLISH && told >= BESIDE_ENGLISH.least && told > (scores[ENGLISH] as number) * BESIDE_ENGLISH.share) best = hinted
  return LANGUAGES[best]?.language ?? 'en'
}
