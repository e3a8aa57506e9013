/** The price that is asked, by how sums are written. */
import { describe, expect, test } from 'vitest'
import { currencyOf, priceOf } from '../../../../core/reading/facts/price.ts'
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
  expect(price('Valor: 80', 'pt', 'PT-br')).toBe('80 BRL')
  expect(price('Preis 20', 'de', 'de-DE')).toBe('20 EUR')
  expect(price('Preis 20', 'de', 'DE')).toBe('20 EUR')
})

describe('whose sign it is', () => {
  test.each([
    ['£', 'en-US', 'GBP'],
    ['€', 'en', 'EUR'],
    ['₹', 'en', 'INR'],
    ['₩', 'en', 'KRW'],
    ['¥', 'ja', 'JPY'],
    ['¥', 'zh', 'CNY'],
    ['¥', 'en-CN', 'CNY'],
    // the page's country tells a dollar
    ['$', 'en', 'USD'],
    ['$', 'en-US', 'USD'],
    ['$', 'en-AU', 'AUD'],
    ['$', 'en_CA', 'CAD'],
    ['$', 'en-NZ', 'NZD'],
    ['$', 'en-SG', 'SGD'],
    ['$', 'zh-HK', 'HKD'],
    // a script is no country
    ['$', 'zh-Hant', 'USD']
  ])('%s on a page in %s is %s', (sign, locale, expected) => expect(currencyOf(sign, locale)).toBe(expected))
  test('where the page names no country, where it is posted does', () => {
    expect(currencyOf('$', 'en', 'free post within Australia')).toBe('AUD')
    expect(currencyOf('$', 'en-US', 'free post within Australia')).toBe('USD')
    expect(currencyOf('$', 'en', 'made in Australia')).toBe('USD')
  })
  test('a text in Chinese asks yuan', () => {
    expect(currencyOf('¥', 'en', '胸宽 50')).toBe('CNY')
    expect(currencyOf('¥', 'en', '身幅 50')).toBe('JPY')
  })
})

/** In English unless told. */
const rows = (given: [string, string | null, string?][]) =>
  test.each(given)('%s: %s', (words, expected, language = 'en') => expect(price(words, language)).toBe(expected))

describe('a dollar of a country', () => {
  rows([
    ['AU$35', '35 AUD'],
    ['C$40', '40 CAD'],
    ['asking AU$35', '35 AUD'],
    ['R$40', '40 BRL'],
    ['$110 CAD', '110 CAD'],
    ['$35 AU', '35 AUD'],
    // a letter behind a sum is a word of its own
    ['$35 a', '35 USD'],
    // the country stands off its sign: it is a word of the sentence
    ['fits US $35', '35 USD'],
    ['size C $40', '40 USD']
  ])
  test.each([
    ['US$35', '35 USD'],
    ['A$35', '35 AUD'],
    ['NZ$35', '35 NZD'],
    ['S$35', '35 SGD'],
    ['SG$35', '35 SGD'],
    ['HK$35', '35 HKD'],
    ['CA$35', '35 CAD'],
    ['$35 USD', '35 USD'],
    ['$35 NZD', '35 NZD'],
    // and it counts as asked by the word before its sign
    ['was $9 CAD then. Asking $35 CAD', '35 CAD'],
    ['was $9 CAD then. Asking C$35', '35 CAD']
  ])('%s on a page of another country', (words, expected) => expect(price(words, 'en', 'en-AU')).toBe(expected))
  test('dollars in a word are those of the page', () => {
    expect(price('35 dollars', 'en', 'en-CA')).toBe('35 CAD')
    expect(price('35 us dollars', 'en', 'en-US')).toBe('35 USD')
    expect(price('35 euros', 'en', 'en-CA')).toBe('35 EUR')
  })
})

test('where verbs stand last, only what is glued to a sum is what it is for, and postage never is', () => {
  expect(price('100円引き', 'ja')).toBeNull()
  expect(price('100円 引き', 'ja')).toBe('100 JPY')
  expect(price('900円送料別', 'ja')).toBe('900 JPY')
})

describe('how a sum is written', () => {
  rows([
    ['£38.50', '38.5 GBP'],
    ['38,50 €', '38.5 EUR'],
    ['£38.5', '38.5 GBP'],
    ['£1,250', '1250 GBP'],
    ['€1.250,00', '1250 EUR'],
    ['£1,250.99', '1250.99 GBP'],
    ['£1 250', '1250 GBP'],
    // a narrow or hard space parts thousands; a plain one only behind a single figure
    ['38\u00a0250 €', '38250 EUR'],
    ['38\u202f250 €', '38250 EUR'],
    ['100\u202f250 €', '100250 EUR'],
    ['38 250 €', '250 EUR'],
    ['0 250 €', '250 EUR'],
    ['1 25 €', '25 EUR'],
    // four figures behind a mark are no sum, nor is nothing
    ['£38.5000', null],
    ['£0', null],
    // a number of eight figures is somebody's telephone or an article's
    ['£1234567', '1234567 GBP'],
    ['£12345678', null]
  ])
})

describe('no pence: 100,-', () => {
  rows([
    ['100,- €', '100 EUR', 'de'],
    ['100,-', '100 EUR', 'de'],
    ['100.-', '100 EUR', 'de'],
    // the mark stands off, or another figure follows it
    ['100, -', null, 'de'],
    ['100 ,-', null, 'de'],
    ['100,-5', null, 'de'],
    // in English it could be in anything
    ['100,-', null, 'en']
  ])
})

describe('a sum that is asked', () => {
  rows([
    ['asking £20', '20 GBP'],
    ['£60. Asking just about £20', '20 GBP'],
    // four words before it at the most
    ['£60. Asking one two three £20', '20 GBP'],
    ['£60. Asking it and that would be £20', '60 GBP'],
    // a word of asking behind it
    ['€60. 20 € VB', '20 EUR', 'de'],
    // “cost: £29” asks it, “cost £90” was paid
    ['cost: £29', '29 GBP'],
    ['cost £90', null],
    ['rrp: £90', null],
    ['paid £165, accept £40', '40 GBP'],
    ['pagato 90 €, lo lascio a 50 €', '50 EUR', 'it'],
    // “fees are silly, so £26 here”: what stands before it is about something else
    ['cost me a bit, so £26 here', '26 GBP'],
    ['cost me a bit £26 here', null],
    // “so” stands right before it
    ['so cost £26 here', null]
  ])
})

describe('a sum that is not what is asked', () => {
  rows([
    ['rrp £90', null],
    ['£90 rrp', null],
    // “£48 rrp 125”: behind the word stands its own sum
    ['£48 rrp 125', '48 GBP'],
    ['£48 rrp £125', '48 GBP'],
    ['£48 rrp: £125', '48 GBP'],
    ['£48 rrp, £125 in shops', '125 GBP'],
    // “£6.50 post. £45”: the word is of the sum before it
    ['£6.50 post. £45', '45 GBP'],
    ['postage £45', null],
    // somebody paid it, earlier in its sentence and no farther back than twenty tokens, its sign among them
    ['I bought these in 2019 for £80', null],
    ['I bought these. £80', '80 GBP'],
    [`bought ${'it '.repeat(17)}for £80`, null],
    [`bought ${'it '.repeat(18)}for £80`, '80 GBP']
  ])
  test('where verbs stand last, paid is told behind the sum, four words at the most', () => {
    expect(price('5만원에 구매', 'ko')).toBeNull()
    expect(price('5만원. 구매', 'ko')).toBe('50000 KRW')
  })
})

describe('postage beside a price', () => {
  rows([
    ['£3 postage', null],
    ['£45 posted', '45 GBP'],
    ['$70 shipped', '70 USD'],
    ['£20 post free', '20 GBP'],
    ['£20 free post', '20 GBP'],
    ['£20 incl postage', '20 GBP'],
    ['£45 postage £3', '45 GBP'],
    ['£45 postage 3', '45 GBP'],
    ['£45 postage extra', '45 GBP'],
    ['70 euro spedizione esclusa', '70 EUR', 'it'],
    ['70 euro spedizione', null, 'it'],
    ['20 € frais de port en sus', '20 EUR', 'fr'],
    ['20 € frais de port', null, 'fr'],
    // five words behind it at the most
    ['20 € frais de port toujours en sus', '20 EUR', 'fr'],
    ['20 € frais de port chez vous en sus', null, 'fr']
  ])
})

/** Each beside a sum that is asked by its place alone. */
describe('a sum that stands aside gives way to another', () => {
  rows([
    ['£20 → £15', '15 GBP'],
    ['£20 -> £15', '15 GBP'],
    ['£20 - > £15', '20 GBP'],
    ['£20 => £15', '15 GBP'],
    ['£20 --> £15', '15 GBP'],
    ['£20 -lovely. Belt £15 here', '20 GBP'],
    // what comes on top
    ['£5 more for the belt. £20', '20 GBP'],
    ['£5 for the belt. £20', '20 GBP'],
    ['with belt £5 extra, skirt £20 here', '20 GBP'],
    ['with belt £5 today, skirt £20 here', '5 GBP'],
    ['belt plus £5 today, skirt £20 here', '20 GBP'],
    // what it was to cost when new
    ['NWT $128 but $40 here', '40 USD'],
    ['mint $128 but $40 here', '128 USD'],
    // of another piece, or in a listing of its own
    ['other skirt £9 today, this one £20 here', '20 GBP'],
    ['brown skirt £9 today, this one £20 here', '9 GBP'],
    ['Belt £9 in a separate listing. Skirt £20 here', '20 GBP'],
    ['Belt £9 in a tidy state. Skirt £20 here', '9 GBP'],
    // and counts where there is none other
    ['NWT $128', '128 USD']
  ])
})

describe('a sum alone in its part of the text', () => {
  rows([
    ['saved £9 somehow today. £20.', '20 GBP'],
    ['saved £9 somehow today. £20 today', '9 GBP'],
    ['saved £9 somehow today. Lovely £20.', '9 GBP'],
    ['saved £9 somehow today\n£20', '20 GBP'],
    ['saved £9 somehow today • £20', '20 GBP'],
    // in words, it opens its part
    ['saved £9 somehow today. Twenty pounds', '20 GBP'],
    ['saved £9 somehow today with twenty pounds', '9 GBP'],
    ['twenty pounds', '20 GBP'],
    ['paid twenty pounds', null],
    ['weighs five pounds', null],
    ['postage is five pounds', null],
    ['five pounds postage', null],
    ['belt plus five pounds', null],
    ['five pounds extra', null],
    ['five pounds postage extra', '5 GBP']
  ])
})

describe('a bare sum', () => {
  rows([
    // in the home of its language
    ['price 20', '20 EUR', 'de'],
    ['price: 20', '20 EUR', 'de'],
    ['[price] 20', '20 EUR', 'de'],
    ['price\n20', '20 EUR', 'de'],
    ['Preis 20', '20 EUR', 'de'],
    ['Waschbar 20', null, 'de'],
    ['20 VB', '20 EUR', 'de'],
    ['20 Taschen', null, 'de'],
    // a name with words before it on its line heads no sum on the next
    ['what a price\n20', null, 'de'],
    // a length has its unit
    ['price 20"', null, 'de'],
    ['price 20 cm', null, 'de'],
    // so many thousands are money, so many hundreds are not
    ['3.5만', '35000 KRW', 'ko'],
    ['3천', '3000 KRW', 'ko'],
    ['3백', null, 'ko']
  ])
  test('in a currency that is told by itself', () => {
    expect(price('Prices in euros. Now 20', 'en')).toBe('20 EUR')
    expect(price('Prices in euros. Now: 20', 'en')).toBe('20 EUR')
    expect(price('Prices in crates. Now 20', 'en')).toBeNull()
    // a currency beside a sum is that sum's
    expect(price('was 90 euros. Now 20', 'en')).toBeNull()
  })
  test('8e: the sign’s letter, where euros are at home', () => {
    expect(price('8e', 'fr')).toBe('8 EUR')
    expect(price('8 e', 'fr')).toBeNull()
    expect(price('8e', 'en')).toBeNull()
  })
})

describe('a sign or a word of another figure', () => {
  rows([
    // the sign of the next sum
    ['chest 100 £20', '20 GBP'],
    ['chest 100£ 20', '100 GBP'],
    // a word ahead, of what is asked
    ['asking EUR 36', '36 EUR'],
    // a region of a size is no currency
    ['size EUR 36', null],
    ['EUR 36', '36 EUR']
  ])
})
