/** The price that is asked, by how sums are written. */
import { expect, test } from 'vitest'
import { priceOf } from '../../../../core/reading/facts/price.ts'
import { textOf } from '../given.ts'

const price = (words: string, language: string, locale = language) => {
  const found = priceOf([textOf(words, language)], locale)
  return found && `${found.amount} ${found.currency}`
}

test.each([
  ['ja', '¥3,980', '3980 JPY'],
  ['ja', '３，９８０円（税込）', '3980 JPY'],
  ['ja', '3千円でお願いします', '3000 JPY'],
  ['ja', '1万2千円', '12000 JPY'],
  ['ja', '1万2000円', '12000 JPY'],
  ['ja', '一千五百円 送料別', '1500 JPY'],
  ['ja', '12,000円で購入しました。3,500円でお譲りします', '3500 JPY'],
  ['ja', '定価9,800円→2,900円', '2900 JPY'],
  ['ja', '2,400円→2,000円', '2000 JPY'],
  ['ja', '1,500円＋送料210円', '1500 JPY'],
  ['ja', '2点目から100円引き、1,200円', '1200 JPY'],
  ['ja', '胸围100 ¥200 裤长90', '200 CNY'],
  ['ko', '15,000원', '15000 KRW'],
  ['ko', '₩48,000', '48000 KRW'],
  ['ko', '3만5천원', '35000 KRW'],
  ['ko', '3만 5천원', '35000 KRW'],
  ['ko', '3.5만 무배', '35000 KRW'],
  ['ko', '만오천원 택포', '15000 KRW'],
  ['ko', '십이만원에 팔아요', '120000 KRW'],
  ['ko', '가격\n33,000', '33000 KRW'],
  ['ko', '구매가 38만원 / 판매가 9만원', '90000 KRW'],
  ['pt', 'De R$ 120 por R$ 59, frete R$ 22', '59 BRL'],
  ['pt', '12€ (portes 3,50€)', '12 EUR'],
  ['pt', 'cento e vinte e cinco reais', '125 BRL'],
  ['da', 'Sælges for 100,-', '100 DKK'],
  ['de', '20,- €', '20 EUR'],
  ['en', '£20 → £15', '15 GBP'],
  ['en', 'the belt is + $5, the skirt is $20', '20 USD'],
  ['de', 'Gürtel + 5 €, Rock 20 €', '20 EUR']
])('%s: %s', (language, words, expected) => expect(price(words, language)).toBe(expected))

test('the page tells whose ¥ and whose bare sum it is', () => {
  expect(price('¥200', 'en', 'zh-CN')).toBe('200 CNY')
  expect(price('¥200', 'en', 'en')).toBe('200 JPY')
  expect(price('Valor: 80', 'pt', 'pt-BR')).toBe('80 BRL')
  expect(price('Valor: 80', 'pt', 'pt-PT')).toBe('80 EUR')
})
