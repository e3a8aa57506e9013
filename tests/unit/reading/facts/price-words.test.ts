/** Sums in words. */
import { describe, expect, test } from 'vitest'
import { isWeight, pricesInWords } from '../../../../core/reading/facts/price-words.ts'
import { slice } from '../../../../core/reading/text/text.ts'
import { textOf } from '../given.ts'

/** Each sum with the words it stands in. */
const sums = (words: string, language = 'en') => {
  const text = textOf(words, language)
  return pricesInWords(text).map(({ amount, currency, from, to }) => `${amount} ${currency}: ${slice(text, from, to)}`)
}

describe('before the word of a currency', () => {
  test.each([
    ['fourteen pounds', ['14 GBP: fourteen pounds']],
    ['asking twenty pounds', ['20 GBP: twenty pounds']],
    ['twenty five pounds', ['25 GBP: twenty five pounds']],
    ['twenty-five pounds', ['25 GBP: twenty-five pounds']],
    // a ten is no one of another ten, nor are teens of tens
    ['twenty thirty pounds', ['30 GBP: thirty pounds']],
    ['twenty ten pounds', ['10 GBP: ten pounds']],
    ['ten five pounds', ['5 GBP: five pounds']],
    ['a hundred pounds', ['100 GBP: a hundred pounds']],
    ['two hundred pounds', ['200 GBP: two hundred pounds']],
    ['a hundred and ten pounds', ['110 GBP: a hundred and ten pounds']],
    ['two hundred and twenty-five pounds', ['225 GBP: two hundred and twenty-five pounds']],
    ['a hundred ten pounds', ['110 GBP: a hundred ten pounds']],
    // less is a weight, or small change
    ['two pounds', []],
    ['three pounds', ['3 GBP: three pounds']],
    ['lovely pounds', []],
    ['hundred pounds', []],
    ['some hundred pounds', []],
    ['some hundred and ten pounds', ['10 GBP: ten pounds']],
    ['a tenner', ['10 GBP: tenner']],
    ['a fiver', ['5 GBP: fiver']]
  ])('%s', (words, expected) => expect(sums(words)).toEqual(expected))
})

describe('with its hundredths behind it', () => {
  test.each([
    ['fourteen pounds fifty', ['14.5 GBP: fourteen pounds fifty']],
    ['nine pounds ninety-five', ['9.95 GBP: nine pounds ninety-five']],
    ['nine pounds ninety five', ['9.95 GBP: nine pounds ninety five']],
    ['nine pounds ten', ['9.1 GBP: nine pounds ten']],
    ['nine pounds ten five', ['9.1 GBP: nine pounds ten']],
    ['nine pounds twenty five', ['9.25 GBP: nine pounds twenty five']],
    ['nine pounds twenty ten', ['9.2 GBP: nine pounds twenty']],
    ['nine pounds nine', ['9 GBP: nine pounds']],
    ['nine pounds posted', ['9 GBP: nine pounds']]
  ])('%s', (words, expected) => expect(sums(words)).toEqual(expected))
})

describe('joined by a word, the greater first', () => {
  test.each([
    ['pt', 'vinte e cinco reais', ['25 BRL: vinte e cinco reais']],
    ['pt', 'cento e vinte e cinco reais', ['125 BRL: cento e vinte e cinco reais']],
    ['pt', 'cinco e vinte reais', ['20 BRL: vinte reais']],
    ['pt', 'vinte e vinte reais', ['20 BRL: vinte reais']],
    ['pt', 'dez e cinco reais', ['5 BRL: cinco reais']]
  ])('%s: %s', (language, words, expected) => expect(sums(words, language)).toEqual(expected))
})

describe('in numerals', () => {
  test.each([
    ['ja', '一千五百円', ['1500 JPY: 一千五百円']],
    ['ja', '千円', ['1000 JPY: 千円']],
    ['ja', '二万三千円', ['23000 JPY: 二万三千円']],
    ['ja', '十二万円', ['120000 JPY: 十二万円']],
    ['ja', '二百五十円', ['250 JPY: 二百五十円']],
    ['ja', '二百五十一円', ['251 JPY: 二百五十一円']],
    ['ko', '만오천원', ['15000 KRW: 만오천원']],
    ['ko', '십이만원', ['120000 KRW: 십이만원']],
    ['ko', '이만원', ['20000 KRW: 이만원']],
    // figures before them are read with them elsewhere
    ['ja', '3千円', []]
  ])('%s: %s', (language, words, expected) => expect(sums(words, language)).toEqual(expected))
  test('words behind a space are of no numeral', () => {
    expect(sums('五 千円', 'ja')).toEqual(['1000 JPY: 千円'])
  })
})

describe('a weight', () => {
  test.each([
    ['weighs five pounds', true],
    ['weighs around five pounds', true],
    ['weighs just about five pounds', true],
    ['weighs it is just about five pounds', false],
    ['five pounds in weight', true],
    ['five pounds heavy', true],
    ['five pounds and not of much weight', false],
    ['five pounds posted', false]
  ])('%s', (words, expected) => {
    const text = textOf(words)
    expect(pricesInWords(text).map((one) => isWeight(text, one))).toEqual([expected])
  })
})
