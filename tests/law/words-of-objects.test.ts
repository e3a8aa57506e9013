/**
 * A word of a listing is never looked up where objects keep their own names: “constructor”, “__proto__” and “toString” are words like any other.
 * A made-up word is set on Object.prototype as a trap: any table that text reaches without being a Map or a bare table springs it.
 */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { phrasesIn } from '../../core/reading/languages/phrases.ts'
import { readListing } from '../../core/reading/read-listing.ts'
import { LEXICONS } from '../../core/reading/text/lexicons.ts'
import { say } from '../../core/words/say.ts'

const NAMES = [...Object.getOwnPropertyNames(Object.prototype), 'prototype', 'length', 'name']
/** Made up: no table has it. Once as it is written, once as each fold of a text leaves it. */
const TRAP = 'polywump'
const TRAPS = [TRAP, TRAP.toUpperCase(), 'Polywump', 'ʘ']
/** Phrases put into one text. */
const AT_ONCE = 5
const EVERY = Number(process.env.WORDS_EVERY ?? 2)

const sprung: string[] = []
beforeAll(() => {
  for (const name of TRAPS)
    Object.defineProperty(Object.prototype, name, {
      configurable: true,
      get() {
        const at = (new Error().stack ?? '').split('\n').find((line) => /\/core\//.test(line)) ?? 'not in core'
        sprung.push(`${name}: ${at.trim()}`)
        return undefined
      }
    })
})
afterAll(() => {
  for (const name of TRAPS) Reflect.deleteProperty(Object.prototype, name)
})

/** Every string of a language's tables that can be a phrase. */
function wordsOf(value: unknown, found: Set<string> = new Set()): Set<string> {
  if (typeof value === 'string') for (const phrase of phrasesIn(value)) found.add(phrase)
  else if (typeof value === 'object' && value !== null) {
    for (const [key, inner] of Object.entries(value)) {
      if (!Array.isArray(value)) found.add(key)
      wordsOf(inner, found)
    }
  }
  return found
}

const everyPlace = (word: string): string[] => [
  `${word} 40 cm, waist ${word} 30", 30 ${word}, size ${word}, ${word}: 12"`,
  `Size: ${word}. Label ${word}/${word}. ${word} W 32 L 34 ${word}`,
  `50% ${word}, 50% cotton. Price ${word} 20, ${word}20, 20 ${word}; AU ${word}; &${word}; &${word.slice(0, 6)};`,
  `${word} ${word} and a half inches left to let down, ${word} inches of hem, half ${word}`,
  `${word}\t${word}\t${word}\n40\t50\t60\n|${word}|waist|\n|M|40|`,
  `W 40 H 50 ${word} 60, P2${word} 40, ${word}2${word} 50`,
  `Damen${word} ${word}hose ${word}kjol ${word}-line, low ${word}, ${word} rise, not ${word}`
]

const pageWith = (word: string) => ({
  '@type': word,
  name: word,
  category: word,
  color: word,
  material: word,
  size: { '@type': 'SizeSpecification', name: word, sizeGroup: word, suggestedGender: word },
  audience: { suggestedGender: word },
  itemCondition: word,
  [word]: word,
  offers: { '@type': 'Offer', price: '20', priceCurrency: word, availability: word, itemCondition: word },
  hasMeasurement: [{ '@type': 'QuantitativeValue', name: word, unitCode: word, value: 40 }]
})
const productWith = (word: string) => ({ ...pageWith(word), '@type': 'Product' })

test('no word of a text, a title, an address, a language or the page’s data is looked up in an object’s own names', {
  timeout: 60_000
}, () => {
  sprung.length = 0
  for (const word of TRAPS) {
    for (const text of everyPlace(word)) {
      for (const { language } of LEXICONS) readListing({ text, title: `${word} trousers ${word}`, language })
      readListing({ text, language: word, address: `https://a.invalid/${word}/${word}-trousers?${word}=${word}` })
      readListing({ text, language: `en-${word}`, structured: [pageWith(word), productWith(word), { '@graph': [productWith(word)] }] })
      readListing({ text: 'Wool trousers, waist 40 cm.', structured: [productWith(word)], title: word })
    }
  }
  expect([...new Set(sprung)]).toEqual([])
})

test('each name that every object has, beside every phrase of every language, breaks nothing, and what is measured lies where it stands', {
  timeout: 60_000
}, () => {
  let texts = 0
  let measures = 0
  for (const { language, ...lexicon } of LEXICONS) {
    const words = [...wordsOf(lexicon)].filter((_, place) => place % EVERY === 0)
    for (let at = 0; at < words.length; at += AT_ONCE) {
      const name = NAMES[texts++ % NAMES.length] as string
      const text = words
        .slice(at, at + AT_ONCE)
        .map((word) => `${word} ${name} ${word} 40 cm, ${name}: 12" ${word}`)
        .join('\n')
      const reading = readListing({ text, title: `${name} ${words[at]}`, language })
      for (const { mm, stated } of reading.measures) {
        measures++
        if (!(mm > 0 && Number.isFinite(mm))) throw new Error(`${mm} mm of ${JSON.stringify(text)}`)
        if ((text + (reading.added ?? '')).slice(stated.start, stated.end) !== stated.text)
          throw new Error(`misplaced: ${JSON.stringify(text)}`)
      }
    }
  }
  expect(texts).toBeGreaterThan(800)
  expect(measures).toBeGreaterThan(1000)
})

test.each(NAMES)('“%s” in every place of a listing changes none of its measures', (name) => {
  const plain = 'Wool trousers. Waist 40 cm, hip 52 cm, inside leg 78 cm, thigh 31 cm laid flat.'
  const measured = ({ measures }: ReturnType<typeof readListing>) => measures.map(({ point, mm }) => [point, mm])
  const before = measured(readListing({ text: plain }))
  expect(before.length).toBe(4)
  expect(measured(readListing({ text: `${plain}\n${name}\nSize ${name}. ${name}.`, title: `${name} trousers`, language: name }))).toEqual(
    before
  )
  expect(measured(readListing({ text: plain, structured: [productWith(name)] }))).toEqual(before)
})

test.each(NAMES)('“%s” is no message and no value of one', (name) => {
  expect(() => say({ code: name, values: {} }, { units: 'cm' })).toThrow(`no message has the code "${name}"`)
  expect(() => say({ code: 'person.saved', values: {} }, { units: 'cm', language: name })).toThrow('needs a value')
  expect(say({ code: 'person.saved', values: { name } }, { units: 'cm' })).toContain(name)
})
