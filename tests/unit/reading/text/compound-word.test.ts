/** Words written as one. */
import { expect, test } from 'vitest'
import { textOf } from '../given.ts'

/** What a word means, by role. */
const senses = (word: string, language: string) =>
  (textOf(word, language).terms.list[0]?.meaning.senses ?? []).map((sense) => {
    if (sense.role === 'kind') return sense.kind
    if (sense.role === 'fibre') return sense.fibre
    return sense.role === 'colour' ? sense.colour : sense.role
  })

test.each([
  ['de', 'Sommerkleid', ['dress']],
  ['de', 'Xqkleid', []],
  ['de', 'Xqukleid', ['dress']],
  // of what cloth its first part tells, with and without what joins them
  ['de', 'Baumwollkleid', ['dress', 'cotton']],
  ['de', 'Seidenkleid', ['dress', 'silk']],
  ['de', 'Leinenskleid', ['dress', 'linen']],
  ['de', 'Schwarzkleid', ['dress', 'black']],
  ['de', 'Wollkleid', ['dress', 'wool']],
  // the head of a compound stands last
  ['de', 'Kleidxqu', []],
  // in no language that writes them apart
  ['en', 'summerdress', []]
])('%s: %s', (language, word, expected) => {
  const found = senses(word, language)
  if (expected.length === 0) expect(found).toEqual([])
  else expect(found).toEqual(expect.arrayContaining(expected))
})
test('a longer word is none', () => {
  expect(senses(`${'x'.repeat(35)}kleid`, 'de')).toEqual(['dress'])
  expect(senses(`${'x'.repeat(36)}kleid`, 'de')).toEqual([])
})

test.each([
  // a first part of three letters at least, a head of four, and of fourteen at the most
  ['de', 'Umkleid', []],
  ['de', 'Abkkleid', ['dress']],
  // known as one word it keeps its cloth all the same
  ['de', 'Wollrock', ['skirt', 'wool']],
  ['de', 'Wollmantel', ['wool']],
  ['de', 'Leinenhose', ['trousers', 'linen']],
  ['de', 'Seidenbluse', ['silk']],
  // of several heads the one before which something is told: cotton, not the wool of a tree
  ['de', 'Baumwollrock', ['skirt', 'cotton']],
  // a colour or a cloth is told once, and no second garment
  ['de', 'Hosenrock', ['skirt']],
  ['de', 'Jeansrock', ['skirt']],
  ['de', 'Jeanskleid', ['dress']]
])('%s: %s is %j', (language, word, expected) => {
  const kinds = new Set(['dress', 'skirt', 'trousers', 'jeans', 'shorts'])
  const found = senses(word, language)
  expect(found.filter((one) => kinds.has(one))).toEqual(expected.filter((one) => kinds.has(one)))
  expect(found).toEqual(expect.arrayContaining(expected))
})
test('the wool in cotton is none, nor is what a garment’s own name says told twice', () => {
  expect(senses('Baumwollrock', 'de')).not.toContain('wool')
  expect(senses('Sommerkleid', 'de').filter((one) => one === 'dress')).toHaveLength(1)
})
