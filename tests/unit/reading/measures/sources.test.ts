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
