/** Structured data as pages really nest it. */
import { expect, test } from 'vitest'
import { currencyOf } from '../../../core/reading/facts/price.ts'
import { jsonBlock } from '../../../core/reading/page-data/json-block.ts'
import { structuredOf } from '../../../core/reading/page-data/structured.ts'
import { readListing } from '../../../core/reading/read-listing.ts'

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

const name = (blocks: unknown[], title?: string, address?: string) => structuredOf(blocks, title, address).name
test('of several products the one whose address or title is the page’s', () => {
  const list = {
    '@graph': [
      { '@type': 'product', name: 'Linen shirt', url: 'https://rail.example/item/1' },
      { '@type': 'Product', name: 'Cord skirt, brown', offers: { url: 'https://www.rail.example/item/2?ref=x', price: 9 } },
      { '@type': 'Product', name: 'Wool coat' }
    ]
  }
  expect(name([list], 'Cord skirt, brown')).toBe('Cord skirt, brown')
  expect(name([list], 'Brown cord skirt from Ana')).toBe('Cord skirt, brown')
  expect(name([list], 'Anything', 'https://rail.example/item/1/#photos')).toBe('Linen shirt')
  expect(name([list], 'Wool coat', 'https://rail.example/item/2')).toBe('Cord skirt, brown')
})
test('of several products none of which is alike, none', () => {
  const alike = [
    { '@type': 'Product', name: 'Boots' },
    { '@type': 'Product', name: 'Umbrella' }
  ]
  expect(structuredOf(alike, 'Tweed jacket with vents')).toMatchObject({ name: null, price: null, lines: [] })
})
test('products named only as alike are beside the page', () => {
  const product = { '@type': 'Product', name: 'Kilt', isRelatedTo: [{ '@type': 'Product', name: 'Sporran', offers: { price: 3 } }] }
  expect(structuredOf([product], 'Something else')).toMatchObject({ name: 'Kilt', price: null })
})
test('prefixed names and nodes that are only pointed at', () => {
  const graph = {
    '@graph': [
      { '@id': '#it', '@type': 'schema:Product', 'schema:name': 'Apron', 'schema:offers': { '@id': '#offer' } },
      { '@id': '#offer', '@type': 'schema:Offer', 'schema:price': '7,50', 'schema:priceCurrency': 'EUR' }
    ]
  }
  expect(structuredOf([graph], undefined)).toMatchObject({ name: 'Apron', price: { amount: 7.5, currency: 'EUR' } })
})
test('an offer that is gone and a price that is struck through give way', () => {
  const offers = [
    { price: 10, availability: 'https://schema.org/SoldOut', size: 'S' },
    {
      priceSpecification: [
        { price: 40, priceType: 'https://schema.org/ListPrice' },
        { price: 22, priceCurrency: 'GBP' }
      ],
      size: 'M'
    }
  ]
  expect(structuredOf([{ '@type': 'Product', offers }], undefined)).toMatchObject({ price: { amount: 22, currency: 'GBP' }, size: null })
})
test('a size with its system', () => {
  const size = { '@type': 'SizeSpecification', name: '12', sizeSystem: 'https://schema.org/WearableSizeSystemUK' }
  const { sizeLabels } = readListing({ title: 'Dress', text: 'A dress.', structured: [{ '@type': 'Product', name: 'Dress', size }] })
  expect(sizeLabels).toEqual(['UK 12'])
})

const quantity = (valueReference: string, value: unknown, unitCode?: string) => ({
  '@type': 'QuantitativeValue',
  valueReference,
  value,
  unitCode
})
test('measurements of the garment are read, those of the body left aside', () => {
  const structured = [
    {
      '@type': 'Product',
      name: 'Skirt',
      hasMeasurement: [quantity('https://schema.org/WearableMeasurementWaist', '74,5', 'CMT'), quantity('Length', 24, 'INH')],
      size: {
        name: 'M',
        hasMeasurement: quantity('WearableMeasurementHips', 980, 'MMT'),
        suggestedMeasurement: [quantity('BodyMeasurementWaist', 70, 'CMT')]
      }
    }
  ]
  const text = 'Lovely skirt.'
  const reading = readListing({ title: 'Skirt', text, structured })
  const figures = Object.fromEntries(reading.measures.map(({ point, mm }) => [point, Math.round(mm * 10) / 10]))
  expect(figures).toEqual({ waist: 745, skirtLength: 609.6, hip: 980 })
  const whole = text + reading.added
  for (const { stated } of [...reading.measures, ...reading.leftAside]) expect(whole.slice(stated.start, stated.end)).toBe(stated.text)
  expect(reading.leftAside).toMatchObject([{ stated: { value: 70 }, because: 'fits-advice' }])
})
test('what the text tells is not told again', () => {
  const structured = [
    { '@type': 'Product', name: 'Skirt', hasMeasurement: [quantity('Waist', 70, 'CMT')], description: 'A skirt. Waist 75 cm.' }
  ]
  const reading = readListing({ title: 'Skirt', text: 'A skirt.\nWaist 75 cm.', structured })
  expect(reading.added).toBeUndefined()
  expect(reading.measures.map(({ mm }) => mm)).toEqual([750])
})
test('the description is read where the text is poorer', () => {
  const structured = ['{"@type":"Product","name":"Skirt","description":"Wool.<br>Waist: 72 cm<br/>Hips: 98 cm"}']
  const reading = readListing({ title: 'Skirt', text: 'Show more', structured })
  expect(reading.measures.map(({ point, mm }) => [point, mm])).toEqual([
    ['waist', 720],
    ['hip', 980]
  ])
  expect(reading.cloth.fibres).toEqual([{ fibre: 'wool', percent: null }])
})
test('measurements one size each stand under their sizes', () => {
  const variant = (size: string, waist: number) => ({ '@type': 'Product', size, hasMeasurement: quantity('Waist', waist, 'CMT') })
  const structured = [{ '@type': 'ProductGroup', name: 'Skirt', hasVariant: [variant('S', 68), variant('M', 74)] }]
  const reading = readListing({ title: 'Skirt', text: 'Two sizes.', structured })
  expect(reading.measures.map(({ size, mm }) => [size, mm])).toEqual([
    ['S', 680],
    ['M', 740]
  ])
})
test.each([
  ['a unit that is no length', quantity('Waist', 70, 'KGM')],
  ['a name that is no measure of fit', quantity('WearableMeasurementCup', 70, 'CMT')],
  ['no figure', quantity('Waist', 'regular', 'CMT')],
  ['no name', { value: 70, unitCode: 'CMT' }],
  ['a range that is none', { name: 'Waist', minValue: {}, unitCode: 'CMT' }]
])('%s gives no line', (_, measure) => {
  expect(structuredOf([{ '@type': 'Product', hasMeasurement: measure }], undefined).lines).toEqual([])
})
test('a range of an adjustable waist', () => {
  const measure = { name: 'Waist', minValue: 70, maxValue: 78, unitText: 'cm' }
  expect(structuredOf([{ '@type': 'Product', hasMeasurement: measure }], undefined).lines).toEqual(['waist: 70-78 cm'])
})

const META = {
  meta: {
    'og:title': 'Wool kilt',
    'og:description': 'Waist 71 cm',
    'product:price:amount': '35,00',
    'product:price:currency': 'eur',
    'product:color': 'Green',
    'product:material': 'Wool',
    'product:size': 'S'
  }
}
test('meta properties tell what no product does', () => {
  expect(structuredOf([META], 'Wool kilt')).toMatchObject({
    name: 'Wool kilt',
    price: { amount: 35, currency: 'EUR' },
    size: 'S',
    material: 'Wool'
  })
  const both = structuredOf([META, { '@type': 'Product', name: 'Kilt', offers: { price: 40, priceCurrency: 'EUR' } }], 'Wool kilt')
  expect(both).toMatchObject({ price: { amount: 40 }, colour: 'Green', description: 'Waist 71 cm' })
})

test.each([
  ['a comment around it', '<!-- {"a": 1} -->', { a: 1 }],
  ['CDATA marks', '//<![CDATA[\n{"a": 1}\n//]]>', { a: 1 }],
  ['a line break inside a string', '{"a": "one\ntwo \\" three"}', { a: 'one\ntwo " three' }]
])('a block with %s', (_, block, value) => expect(jsonBlock(block)).toEqual(value))
test.each(['{', '{"a": 1,}', '', '"one', '[1'])('%j is broken', (block) => expect(jsonBlock(block)).toBeUndefined())
test('whom it is for: a gender, an audience, the path of its category', () => {
  const product = {
    '@type': 'Product',
    name: 'Shirt',
    audience: [{ '@type': 'PeopleAudience', suggestedGender: 'https://schema.org/Female', audienceType: 'Adults' }, 'Women'],
    category: ['Clothing', 'Shirts']
  }
  expect(structuredOf([product], undefined).whose).toEqual(['Female', 'Adults', 'Women', 'Clothing, Shirts'])
  expect(structuredOf([{ meta: { 'product:gender': 'male', 'og:title': 'Shirt' } }], undefined).whose).toEqual(['male'])
  expect(structuredOf([{ '@type': 'Product', name: 'Shirt' }], undefined).whose).toEqual([])
})
test('the body that a size is suggested for is read where the text names none', () => {
  const hips = { '@type': 'QuantitativeValue', valueReference: 'BodyMeasurementHips', minValue: 97, maxValue: 103, unitCode: 'CMT' }
  const structured = [{ '@type': 'Product', name: 'Skirt', size: { name: 'M', suggestedMeasurement: hips } }]
  const rowsOf = (text: string) => readListing({ title: 'Skirt', text, structured }).sizeChart.map(({ body, lowMm }) => [body, lowMm])
  expect(rowsOf('Lovely skirt.')).toEqual([['hipGirth', 970]])
  expect(rowsOf('To fit hips 96-100 cm.')).toEqual([['hipGirth', 960]])
})
