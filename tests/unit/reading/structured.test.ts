/** Structured data as pages really nest it. */
import { expect, test } from 'vitest'
import { currencyOf } from '../../../core/reading/price.ts'
import { structuredOf } from '../../../core/reading/structured.ts'

test('a block that is still a string is parsed', () => {
  expect(structuredOf(['{"@type":"Product","name":"Skirt"}'], undefined)).toMatchObject({ name: 'Skirt', broken: false })
})
test('a broken block is told and the next one read', () => {
  expect(structuredOf(['{', { '@type': 'Product', name: 'Skirt' }], undefined)).toMatchObject({ name: 'Skirt', broken: true })
})
test.each([
  ['12.50', 12.5],
  ['12,50', 12.5],
  ['1.250,00', 1250],
  ['1,250.00', 1250],
  ['£12', 12],
  [12, 12],
  ['1,250', 1250]
])('a price of %j is %d', (price, amount) => {
  expect(structuredOf([{ '@type': 'Product', offers: { price, priceCurrency: 'gbp' } }], undefined).price).toEqual({
    amount,
    currency: 'GBP'
  })
})
test.each(['', 'free', 0, -3, null, {}])('a price of %j is none', (price) => {
  expect(structuredOf([{ '@type': 'Product', offers: { price } }], undefined).price).toBeNull()
})
test('one offer a size, and a price specification', () => {
  const product = {
    '@type': 'schema:Product',
    offers: { '@type': 'AggregateOffer', offers: [{ priceSpecification: { price: '9.00', priceCurrency: 'EUR' } }] }
  }
  expect(structuredOf([product], undefined).price).toEqual({ amount: 9, currency: 'EUR' })
})
test('a circle of references ends', () => {
  const page: Record<string, unknown> = { '@type': 'Product', name: 'Coat' }
  page.self = page
  expect(structuredOf([page], undefined).name).toBe('Coat')
})
test('colour, size and condition in their several shapes', () => {
  const product = { '@type': 'Product', color: ['Red', 'Blue'], size: { name: 'M' }, itemCondition: 'http://schema.org/NewCondition' }
  expect(structuredOf([product], undefined)).toMatchObject({ colour: 'Red, Blue', size: 'M', condition: 'new' })
})
test.each([
  ['£', '', 'GBP'],
  ['€', '', 'EUR'],
  ['$', '', 'USD'],
  ['$', 'en-CA', 'CAD'],
  ['$', 'en-AU', 'AUD']
])('%s on a page in %j is %s', (sign, locale, code) => expect(currencyOf(sign, locale)).toBe(code))
