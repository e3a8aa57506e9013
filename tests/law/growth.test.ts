/**
 * Time grows with the length of a text, whatever it is made of. Each sign, each way to write a number and a phrase of each role of the tables,
 * repeated to 20 and to 80 KB, is read; four times the text may take no more than MOST times the CPU time (quadratic would be sixteen).
 * GROWTH=all asks every phrase of every language (an hour); SLICE=2/8 a part of them.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { phrasesIn } from '../../core/reading/languages/phrases.ts'
import { readListing } from '../../core/reading/read-listing.ts'
import { LEXICONS } from '../../core/reading/text/lexicons.ts'
import { keptStructured } from '../../core/records/look-text.ts'

const [SHORT, LONG] = [20_000, 80_000]
/** Of times that two cores share with others; measured anew before it is believed. */
const MOST = 8
/** Times below this are noise, ms. */
const NOISE = 60
const TRIES = 4
const EVERY = process.env.GROWTH === 'all'

const filled = (piece: string, length: number): string => piece.repeat(Math.ceil(length / piece.length)).slice(0, length)

/** CPU time, ms. */
function cpuOf(work: () => void): number {
  const before = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1000
}

/** How many times longer four times as much takes; the least of a few tries. 1 where both are over at once. */
function growth(work: (length: number) => void): number {
  let least = Number.POSITIVE_INFINITY
  for (let n = 0; n < TRIES && least > MOST; n++) {
    const long = cpuOf(() => work(LONG))
    if (long < NOISE) return 1
    const short = cpuOf(() => work(SHORT))
    least = Math.min(least, long / Math.max(short, 1))
  }
  return least
}

const slow = (pieces: readonly string[], read: (text: string) => void = (text) => void readListing({ text })): string[] => {
  read(filled('waist 40 cm, ', SHORT))
  return pieces.flatMap((piece) => {
    const times = growth((length) => read(filled(piece, length)))
    return times > MOST ? [`${JSON.stringify(piece)}: ${times.toFixed(1)} times`] : []
  })
}

const SIGNS = [
  ...'!"#$%&\'()*+,-./:;<=>?@[\\]^_`{|}~£€¥°×½¼…“”’–—•·、。，：；（）【】「」〜・￥＄ー',
  '\n',
  '\t',
  ' ',
  '\u00a0',
  '\u202e',
  '\u0301',
  '😀',
  '\u0000'
]
const NUMBERS = [
  '1',
  '1/2',
  '1 1/2',
  '1.5',
  '1,5',
  '30-1/2',
  '30½',
  '1/0',
  '3..5',
  '12/05/2023',
  '9/10',
  '32 x 34',
  'W32 L34',
  '36-38',
  '±2',
  '1 000'
]
const UNITS = ['"', ' cm', ' in', " '", ' mm', '%', '€', '$', '£', ' usd', '円', '만원', ' kr', 'zł']
const AROUND = (word: string): string[] => [`${word} `, `${word} 40 cm, `, `${word}, 12 `, `40 ${word}. `]

const words = LEXICONS.flatMap(({ language: _, ...tables }) => {
  const found = new Map<string, string[]>()
  const collect = (value: unknown, role: string): void => {
    if (typeof value === 'string') {
      const known = found.get(role)
      if (known === undefined) found.set(role, [...phrasesIn(value)])
      else known.push(...phrasesIn(value))
    } else if (typeof value === 'object' && value !== null)
      for (const [key, inner] of Object.entries(value))
        collect(inner, role === '' || role === 'words' || role === 'cues' ? `${role} ${key}` : role)
  }
  collect(tables, '')
  return [...found.values()]
})

test('each sign, alone and between words', { timeout: 300_000 }, () => {
  const forms = (sign: string): string[] => [`waist${sign} 12${sign} `, sign, `a${sign}`]
  expect(slow(SIGNS.flatMap((sign, at) => (EVERY ? forms(sign) : [forms(sign)[at % 3] as string])))).toEqual([])
  expect(slow(['$', '£', '¥', '￥', '＄', '€'].map((sign) => `waist${sign} 12${sign} `))).toEqual([])
})

test('each way to write a number, with each unit', { timeout: 300_000 }, () => {
  expect(
    slow([
      ...NUMBERS.map((number) => `${number} `),
      ...UNITS.flatMap((unit, at) => [`12${unit} `, `waist ${NUMBERS[at % NUMBERS.length]}${unit}, `])
    ])
  ).toEqual([])
  expect(slow(['$12 ', 'AU $12, ', '$12 posted, ', '¥12 ', 'price $12 now $10 ', '12 dollars, '])).toEqual([])
})

test('a phrase of each role of every language', { timeout: 600_000 }, () => {
  const [part = 0, parts = 1] = (process.env.SLICE ?? '0/1').split('/').map(Number)
  const chosen = EVERY
    ? words
        .flat()
        .flatMap(AROUND)
        .filter((_, at) => at % parts === part)
    : // the English ones, one way each, another each time the tables grow
      words.flatMap((phrases, at) => (at % 12 === 0 ? [AROUND(phrases[0] ?? 'waist')[at % 4] as string] : []))
  expect(chosen.length).toBeGreaterThan(20)
  expect(slow(chosen)).toEqual([])
})

describe('a page’s data', () => {
  const nested = (depth: number, open: string, close: string): string => `${open.repeat(depth)}1${close.repeat(depth)}`
  const read = (block: string) => readListing({ text: 'Waist 40 cm', structured: keptStructured([block]) })

  test('nested six thousand deep, and deeper, it is read or left', () => {
    for (const depth of [10, 600, 6_000, 20_000]) {
      for (const [open, close] of [
        ['[', ']'],
        ['{"@graph":', '}'],
        ['{"@type":"Product","name":"Kilt","isVariantOf":', '}'],
        ['{"@type":"Product","hasVariant":[', ']}'],
        ['{"@type":"ItemList","itemListElement":[', ']}']
      ] as const) {
        expect(read(nested(depth, open, close)).measures).toHaveLength(1)
        expect(readListing({ text: 'Waist 40 cm', structured: [nested(depth, open, close)] }).measures).toHaveLength(1)
      }
    }
  })

  test('its time grows with its length', { timeout: 300_000 }, () => {
    const offers = (length: number) => `{"@type":"Product","name":"Kilt","offers":[${filled('{"@type":"Offer","price":"1"},', length)}{}]}`
    const many = (length: number) => `[${filled('{"@type":"Product","name":"Kilt","description":"Waist 40 cm"},', length)}{}]`
    for (const block of [offers, many])
      expect(growth((length) => void readListing({ text: '', structured: [block(length - (length % 61))] }))).toBeLessThan(MOST)
  })
})

test('any short piece, many times over', { timeout: 300_000 }, () => {
  const piece = fc.oneof(fc.string({ minLength: 1, maxLength: 6 }), fc.string({ unit: 'grapheme', minLength: 1, maxLength: 4 }))
  fc.assert(
    fc.property(piece, (text) => {
      expect(slow([text])).toEqual([])
    }),
    { numRuns: Number(process.env.GROWTH_RUNS ?? 10), seed: 20261130 }
  )
})
