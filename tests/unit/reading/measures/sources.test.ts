/** Who took a figure. */
import { describe, expect, test } from 'vitest'
import { sourcesIn } from '../../../../core/reading/measures/sources.ts'
import { readListing } from '../../../../core/reading/read-listing.ts'
import { figureAt, textOf } from '../given.ts'

const source = (words: string, figure: string) => {
  const text = textOf(words)
  return sourcesIn(text)(figureAt(text, figure).from)
}

describe('by the words last said before it', () => {
  const words = 'From the website: length 120cm.\n\nMy own tape: length 116cm'
  test('a shop, then the seller', () => expect([source(words, '120cm'), source(words, '116cm')]).toEqual(['shop', 'own']))
  test('what is copied ends with its paragraph', () => expect(source('Website says 120cm.\n\nLength 116cm', '116cm')).toBeNull())
  test('nobody where nobody is named', () => expect(source('length 120cm', '120cm')).toBeNull())
})

describe('how far their words reach', () => {
  test.each<[string, string, 'own' | 'shop' | null]>([
    // what the seller took goes on, over a paragraph too
    ['I measured:\n\nlength 116cm', '116cm', 'own'],
    ['I measured: waist 80cm.\n\nFrom the website: length 120cm', '120cm', 'shop'],
    ['I measured: waist 80cm. Size chart: length 120cm', '120cm', 'shop'],
    ['length 116cm. I measured: waist 80cm', '116cm', null],
    ['Website says 120cm. I measured: waist 80cm. Size chart: length 122cm', '80cm', 'own'],
    // a size chart with nobody named is read elsewhere
    ['Size chart: length 120cm', '120cm', null],
    // what is copied goes on over a line
    ['Website says:\nlength 120cm', '120cm', 'shop'],
    // and ends where a later line or sentence begins to measure
    ['Website says soft wool.\nMeasurements: length 116cm', '116cm', null],
    ['Website says soft wool. Measures 116cm', '116cm', null],
    ['Website says measures 120cm', '120cm', 'shop'],
    ['Website says soft wool.\nLovely: length 116cm', '116cm', 'shop']
  ])('%s', (words, figure, expected) => expect(source(words, figure)).toBe(expected))
})

test('what the seller measured counts, and the other stands aside', () => {
  const { measures, leftAside } = readListing({
    title: 'Midi dress',
    text: 'Brand says: bust 88cm, length 120cm.\n\nI measured: bust 90cm around, length 118cm.'
  })
  expect(measures.map(({ stated }) => stated.text)).toEqual(['90cm', '118cm'])
  expect(leftAside.map(({ stated, because }) => `${stated.text} ${because}`)).toEqual(['88cm size-chart', '120cm size-chart'])
})
test('a shop alone is believed', () => {
  const { measures } = readListing({ title: 'Midi dress', text: 'Brand says: bust 88cm, length 120cm.' })
  expect(measures.map(({ stated }) => stated.text)).toEqual(['88cm', '120cm'])
})
