/** The nouns of a text that name garments, each with its place. */
import { describe, expect, test } from 'vitest'
import { isBesideNoun, nounsOf } from '../../../../core/reading/garment/nouns.ts'
import { textOf } from '../given.ts'

/** Each noun and the place it has. */
const nouns = (words: string, language = 'en') =>
  nounsOf(textOf(words, language), language)
    .map(({ kind, place }) => `${kind} ${place}`)
    .join(', ')

describe('what its noun phrase is, and what only says of what sort', () => {
  test.each([
    ['dress', 'dress head'],
    ['waistcoat jacket', 'waistcoat modifier, jacket head'],
    ['waistcoat-jacket', 'waistcoat modifier, jacket head'],
    ['waistcoat - jacket', 'waistcoat head, jacket head'],
    ['waistcoat -jacket', 'waistcoat head, jacket head'],
    ['waistcoat, jacket', 'waistcoat head, jacket head'],
    ['waistcoat/jacket', 'waistcoat head, jacket head'],
    ['waistcoat lovely jacket', 'waistcoat head, jacket head'],
    // behind another noun a vague one names nothing new
    ['skirt top', 'skirt head, knit-top head'],
    ['jacket style', 'jacket part'],
    ['jacket lovely', 'jacket head'],
    ['jacket Xqxq', 'jacket name'],
    ['jacket xqxq', 'jacket head'],
    ['jacket XQ', 'jacket head'],
    ['jacket Lovely', 'jacket head'],
    ['jacket 4', 'jacket head'],
    ['stretch jeans', 'jeans head'],
    ['no jacket', 'jacket beside'],
    // a phrase that means something else and ends with the garment; not one that is of it
    ['waist length jacket', 'jacket head'],
    ['jacket-style', 'jacket head'],
    ['jacket Xq', 'jacket name'],
    ['jacket xQ', 'jacket head'],
    // a cut of several words is no thing
    ['boot cut jeans', 'jeans head'],
    ['boots', 'thing head']
  ])('%s: %s', (words, expected) => expect(nouns(words)).toBe(expected))
  test.each([
    // in French the first leads
    ['fr', 'veste chemise', 'jacket head, shirt modifier'],
    ['fr', 'veste avec chemise', 'jacket head, shirt beside'],
    // German writes a compound as one word: only a vague one is said of the other
    ['de', 'Jacke Hemd', 'jacket head, shirt head'],
    ['de', 'Kleid Top', 'dress head, knit-top modifier'],
    ['de', 'Top Kleid', 'knit-top modifier, dress head'],
    // in scripts without spaces a space parts two nouns; trousers or a skirt behind what is worn above are a set with it
    ['ja', 'ジャケットスカート', 'jacket modifier, skirt head'],
    ['ja', 'ジャケット スカート', 'jacket head, skirt beside'],
    ['ja', 'ジャケット パンツ', 'jacket head, trousers beside'],
    ['ja', 'ジャケット コート', 'jacket head, coat head'],
    ['ja', 'スカート ジャケット', 'skirt head, jacket head'],
    ['ja', 'ジャケット、スカート', 'jacket head, skirt head'],
    // trousers right beside what only jeans are called by are jeans
    ['ko', '와이드 데님 팬츠', 'jeans head, jeans head'],
    ['ko', '데님, 팬츠', 'jeans head, trousers head']
  ])('%s %s: %s', (language, words, expected) => expect(nouns(words, language)).toBe(expected))
})

describe('set beside what is for sale', () => {
  test.each([
    ['coat with jeans', 'coat head, jeans beside'],
    ['coat with jeans, a skirt or tailored trousers', 'coat head, jeans beside, skirt beside, trousers beside'],
    ['to wear over a dress', 'dress beside'],
    ['coat. Jeans', 'coat head, jeans head'],
    ['coat with pockets. Jeans', 'coat head, jeans head'],
    ['matching jacket', 'jacket beside'],
    // like one
    ['like a jacket', 'jacket beside'],
    ['like jacket', 'jacket beside'],
    ['like lovely jacket', 'jacket head'],
    // for sale all the same
    ['for sale a coat', 'coat head'],
    ['for women, a coat', 'coat head'],
    // a condition, a size or a figure between
    ['with good condition, a skirt', 'skirt head'],
    ['with size 12, a skirt', 'skirt head'],
    ['with 4 skirts', 'skirt head'],
    ['to match a 50s dress', 'dress beside'],
    ['to match a 1950s dress', 'dress beside'],
    ['to match a 55s dress', 'dress head'],
    // a sign in no list of garments
    ['with pockets, a skirt', 'skirt head'],
    ['with jeans, a skirt', 'jeans beside, skirt beside'],
    ['with jeans & skirt', 'jeans beside, skirt beside'],
    ['with jeans; skirt', 'jeans beside, skirt head'],
    ['with (a skirt', 'skirt head'],
    ['with jeans/skirt', 'jeans beside, skirt beside'],
    ['with jeans + skirt', 'jeans beside, skirt beside'],
    ['with jeans - skirt', 'jeans beside, skirt head'],
    ['with mum\u2019s skirt', 'skirt beside'],
    ['with T-shirt, skirt', 'knit-top beside, skirt beside'],
    ['with a 70s skirt', 'skirt beside'],
    ['with a 1970 s skirt', 'skirt head'],
    ['goes with the skirt', 'skirt beside'],
    ['as a dress', 'dress beside'],
    ['with a bag, a skirt', 'thing beside, skirt beside'],
    ['with\nskirt', 'skirt head'],
    // words that nobody knows, two at most
    ['with xq xq skirt', 'skirt beside'],
    ['with xq xq xq skirt', 'skirt head']
  ])('%s: %s', (words, expected) => expect(nouns(words)).toBe(expected))
  test('fourteen words on at most', () => {
    const beside = (words: string) => {
      const text = textOf(words)
      return isBesideNoun(text, text.tokens.length - 1)
    }
    expect(beside(`with ${'the '.repeat(13)}skirt`)).toBe(true)
    expect(beside(`with ${'the '.repeat(14)}skirt`)).toBe(false)
    expect(beside('skirt')).toBe(false)
  })
  test('where verbs stand last it is told behind', () => {
    expect(nouns('デニムに合うシャツ', 'ja')).toContain('shirt head')
    expect(nouns('スカートにも', 'ja')).toBe('skirt beside')
    expect(nouns('スカート', 'ja')).toBe('skirt head')
    expect(nouns('スカートやパンツにも', 'ja')).toBe('skirt beside, trousers beside')
    expect(nouns('スカートとコートに合う', 'ja')).toBe('skirt beside, coat beside')
    expect(nouns('スカート、パンツにも', 'ja')).toBe('skirt head, trousers beside')
    expect(nouns('ワンピース風', 'ja')).toBe('dress beside')
    // right behind another noun and its “and”
    expect(nouns('コートとスカート', 'ja')).toBe('coat head, skirt beside')
  })
})

describe('another item, a tag', () => {
  test.each([
    ['coat. Also selling a skirt', 'coat head, skirt aside'],
    // with its sentence, or where none is named in that, with its paragraph
    ['Also selling a skirt. Coat', 'skirt aside, coat head'],
    ['Also selling:\nskirt\n\ncoat', 'skirt aside, coat head'],
    ['Skirt not included. Coat', 'skirt aside, coat head'],
    ['#skirt', 'skirt tag'],
    ['# skirt', 'skirt tag'],
    ['coat #skirt', 'coat head, skirt tag'],
    // behind the first of three in a line
    ['#a #b #c skirt', 'skirt tag'],
    ['#a #b skirt', 'skirt head'],
    ['skirt, #a #b #c dress', 'skirt head, dress tag'],
    ['Coat, skirt not included', 'coat head, skirt aside'],
    ['Also selling: skirt, coat. Dress', 'skirt aside, coat aside, dress head'],
    ['Also selling:\nlovely\nskirt\n\ncoat', 'skirt aside, coat head'],
    ['skirt #a #b #c', 'skirt head'],
    ['#a #b #c\nskirt', 'skirt head']
  ])('%j: %s', (words, expected) => expect(nouns(words)).toBe(expected))
})

describe('how it is named', () => {
  const first = (words: string) => nounsOf(textOf(words), 'en')[0]
  test.each([
    ['this skirt', true],
    ['selling skirt', true],
    ['this blue skirt', true],
    ['this wool skirt', true],
    ['this lovely skirt', true],
    ['this used skirt', true],
    ['that skirt', false],
    ['this lovely long skirt', false],
    ['skirt', false]
  ])('%s is pointed at: %s', (words, expected) => expect(first(words)?.pointedAt).toBe(expected))
  test.each([
    ['category: skirt', true],
    ['item: skirt', true],
    ['category = skirt', true],
    ['category - skirt', false],
    ['category skirt', false],
    ['category, skirt', false],
    ['colour: skirt', false]
  ])('%s is of a field: %s', (words, expected) => expect(first(words)?.fielded).toBe(expected))
  test.each([
    ['top', true],
    ['skirt', false],
    ['ring', true]
  ])('%s is also named in passing: %s', (words, expected) => expect(first(words)?.passing).toBe(expected))
  test('its places are its own tokens', () => expect(first('the long skirt')).toMatchObject({ kind: 'skirt', or: null, from: 2, to: 3 }))
})

test('a text tells nothing new so far on', () => {
  expect(nouns(`${'x '.repeat(3999)}skirt`)).toBe('skirt head')
  expect(nouns(`${'x '.repeat(4000)}skirt`)).toBe('')
})
