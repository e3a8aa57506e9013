/** What a page's data tell of the product, fact by fact: where each may stand, and what leads. */
import { describe, expect, test } from 'vitest'
import { currencyCode, sizeWords } from '../../../../core/reading/page-data/offers.ts'
import { metaOf } from '../../../../core/reading/page-data/page-meta.ts'
import { structuredOf } from '../../../../core/reading/page-data/structured.ts'

const of = (product: object, ...more: unknown[]) => structuredOf([{ '@type': 'Product', name: 'Kilt', ...product }, ...more], undefined)

test('of no data nothing is told', () => {
  const nothing = {
    name: null,
    description: null,
    price: null,
    colour: null,
    material: null,
    condition: null,
    size: null,
    category: null,
    whose: [],
    lines: [],
    broken: false
  }
  expect(structuredOf(undefined, 'Kilt')).toEqual(nothing)
  expect(structuredOf([], 'Kilt')).toEqual(nothing)
  expect(structuredOf([{ '@type': 'WebPage', name: 'Kilts' }], 'Kilt')).toEqual(nothing)
  expect(structuredOf(['{'], 'Kilt')).toEqual({ ...nothing, broken: true })
})

describe('words of the product, else of the meta properties', () => {
  const meta = {
    meta: {
      'og:title': 'Old kilt',
      'og:description': 'A<br>kilt',
      'product:color': 'Green',
      'product:material': 'Wool',
      'product:condition': 'Used',
      'product:size': 'S',
      'product:category': 'Kilts',
      'product:gender': 'male',
      'product:price:amount': '35'
    }
  }
  test('alone', () => {
    expect(structuredOf([meta], undefined)).toEqual({
      name: 'Old kilt',
      description: 'A\nkilt',
      price: { amount: 35, currency: null },
      colour: 'Green',
      material: 'Wool',
      condition: 'used',
      size: 'S',
      category: 'Kilts',
      whose: ['male', 'Kilts'],
      lines: [],
      broken: false
    })
  })
  test('behind those of the product', () => {
    const product = {
      description: 'A skirt',
      color: 'Red',
      material: 'Linen',
      itemCondition: 'NewCondition',
      size: 'M',
      category: 'Skirts',
      offers: { price: 9 }
    }
    expect(of(product, meta)).toMatchObject({
      name: 'Kilt',
      description: 'A skirt',
      price: { amount: 9 },
      colour: 'Red',
      material: 'Linen',
      condition: 'new',
      size: 'M',
      category: 'Skirts',
      whose: ['Skirts', 'male', 'Kilts']
    })
    expect(structuredOf([{ '@type': 'Product' }, meta], undefined)).toMatchObject({
      name: 'Old kilt',
      description: 'A\nkilt',
      price: { amount: 35 },
      colour: 'Green',
      material: 'Wool',
      condition: 'used',
      size: 'S',
      category: 'Kilts'
    })
    expect(of({ colour: 'Blue' }).colour).toBe('Blue')
  })
  test.each([
    [{ 'twitter:title': 'A' }, { name: 'A' }],
    [{ 'og:title': 'B', 'twitter:title': 'A' }, { name: 'B' }],
    [{ 'og:title': ' ', 'twitter:title': 'A' }, { name: 'A' }],
    [{ 'twitter:description': 'A', description: 'B' }, { description: 'A' }],
    [{ description: 'B' }, { description: 'B' }],
    [{ 'product:colour': 'Red' }, { colour: 'Red' }],
    [{ 'product:target_gender': 'female' }, { whose: ['female'] }],
    [{ 'product:sale_price:amount': '20', 'product:price:amount': '35' }, { price: { amount: 20, currency: null } }],
    [{ 'og:price:amount': '35', 'og:price:currency': 'gbp' }, { price: { amount: 35, currency: 'GBP' } }],
    [{ 'product:price:amount': 'free', 'og:price:amount': '35' }, { price: { amount: 35, currency: null } }]
  ])('%j', (meta, expected) => expect(metaOf([{ meta }])).toMatchObject(expected))
  test('the first of several blocks, and none that is no node', () => {
    expect(metaOf(['x', { meta: 'x' }, null, { meta: { 'og:title': 'A' } }, { meta: { 'og:title': 'B' } }]).name).toBe('A')
  })
})

describe('its condition', () => {
  test.each([
    ['https://schema.org/NewCondition', 'new'],
    ['schema:UsedCondition', 'used'],
    ['RefurbishedCondition', 'refurbished'],
    ['damaged', 'damaged'],
    ['NEW', 'new'],
    // words as they stand
    ['Like new', 'like new'],
    ['Used: twice', 'used: twice'],
    ['Renewed', 'renewed'],
    ['Refurbished', 'refurbished'],
    ['Refurbished twice', 'refurbished twice'],
    ['Not refurbished', 'not refurbished'],
    ['Damaged seam', 'damaged seam'],
    ['Undamaged', 'undamaged'],
    ['News', 'news']
  ])('%s: %s', (itemCondition, expected) => expect(of({ itemCondition }).condition).toBe(expected))
  test('of its first offer that tells one', () => {
    expect(of({ offers: [{ price: 9 }, { itemCondition: 'Used' }, { itemCondition: 'New' }] }).condition).toBe('used')
    expect(of({ itemCondition: 'New', offers: { itemCondition: 'Used' } }).condition).toBe('new')
  })
})

describe('its one size', () => {
  test.each<[object, string | null]>([
    [{ size: 'M' }, 'M'],
    [{ size: ['M', 'M'] }, 'M'],
    [{ size: ['S', 'M'] }, null],
    [{ size: 'M', offers: { size: 'M' } }, 'M'],
    [{ size: 'M', offers: { itemOffered: { size: 'S' } } }, null],
    [{ hasVariant: [{ size: 'S' }] }, 'S'],
    [{ hasVariant: [{ size: 'S' }, { size: 'M' }] }, null],
    [{ size: {} }, null],
    [{}, null]
  ])('%j: %j', (product, expected) => expect(of(product).size).toBe(expected))
  test.each<[unknown, string | null]>([
    [{ name: '12', sizeSystem: 'https://schema.org/WearableSizeSystemUK' }, 'UK 12'],
    [{ name: '12', sizeSystem: 'WearableSizeSystemUk' }, 'UK 12'],
    [{ name: '12', sizeSystem: 'SizeSystemIT' }, 'IT 12'],
    [{ name: 'UK 12', sizeSystem: 'WearableSizeSystemUK' }, 'UK 12'],
    [{ name: 'M', sizeSystem: 'WearableSizeSystemUS' }, 'M'],
    [{ name: '12', sizeSystem: 'WearableSizeSystemEN13402' }, '12'],
    [{ name: '12', sizeSystem: 'WearableSizeSystemEN' }, '12'],
    [{ name: '12' }, '12'],
    [{ '@value': '12' }, '12'],
    [{ '@id': '#12' }, null],
    [12, '12']
  ])('%j is said %j', (size, expected) => expect(sizeWords(size)).toBe(expected))
})

describe('its price', () => {
  test.each<[object, { amount: number; currency: string | null } | null]>([
    [
      { offers: { price: 9 }, price: 8 },
      { amount: 9, currency: null }
    ],
    [{ price: 8 }, { amount: 8, currency: null }],
    [{ offers: { lowPrice: 7 } }, { amount: 7, currency: null }],
    [{ offers: { price: { value: 6, currency: 'eur' } } }, { amount: 6, currency: 'EUR' }],
    [{ offers: { price: 6, priceCurrency: 'GBP' } }, { amount: 6, currency: 'GBP' }],
    [{ offers: { price: { value: 6, currency: 'eur' }, priceCurrency: 'GBP' } }, { amount: 6, currency: 'GBP' }],
    [{ offers: { priceCurrency: 'GBP', priceSpecification: { price: 6 } } }, { amount: 6, currency: 'GBP' }],
    [{ offers: { price: 6, priceCurrency: 'pounds' } }, { amount: 6, currency: null }],
    // what can still be bought leads, and nothing that is struck through counts
    ...['SoldOut', 'OutOfStock', 'https://schema.org/Discontinued'].map((availability): [object, { amount: number; currency: null }] => [
      { offers: [{ price: 5, availability }, { price: 6 }] },
      { amount: 6, currency: null }
    ]),
    [{ offers: [{ price: 5, availability: 'InStock' }, { price: 6 }] }, { amount: 5, currency: null }],
    [
      { offers: [{ price: 5, availability: 'SoldOut' }], price: 4 },
      { amount: 5, currency: null }
    ],
    ...['ListPrice', 'StrikethroughPrice', 'MSRP', 'https://schema.org/SRP'].map((priceType): [object, null] => [
      { offers: { priceSpecification: { price: 40, priceType } } },
      null
    ]),
    [{ offers: { priceSpecification: { price: 40, priceType: 'SalePrice' } } }, { amount: 40, currency: null }],
    // inside an aggregate, and of its variants
    [{ offers: { lowPrice: 3, offers: [{ price: 5 }] } }, { amount: 5, currency: null }],
    [{ hasVariant: { offers: { price: 5 } } }, { amount: 5, currency: null }]
  ])('%j: %j', (product, expected) => expect(of(product).price).toEqual(expected))
  test.each<[unknown, string | null]>([
    ['gbp', 'GBP'],
    ['£', null],
    ['pound', null],
    ['gb', null],
    [undefined, null]
  ])('the currency %j: %j', (value, expected) => expect(currencyCode(value)).toBe(expected))
})

describe('its measurements', () => {
  const waist = (value: number) => ({ name: 'Waist', value, unitCode: 'CMT' })
  const property = (more: object) => of({ additionalProperty: { name: 'Waist', ...more } }).lines
  test('its own, of its size, free ones, and of the body that it is for', () => {
    const product = {
      hasMeasurement: waist(70),
      additionalProperty: { name: 'Hips', value: '98 cm' },
      size: { name: 'M', hasMeasurement: { name: 'Length', value: '60 cm' }, suggestedMeasurement: waist(68) },
      audience: ['Women', { suggestedMeasurement: { name: 'Hips', value: '96 cm' } }]
    }
    expect(of(product).lines).toEqual(['waist: 70 cm', 'length: 60 cm', 'hips: 98 cm', 'To fit waist 68 cm', 'To fit hips 96 cm'])
  })
  test('those that are only pointed at', () => {
    expect(of({ hasMeasurement: { '@id': '#waist' } }, { '@id': '#waist', ...waist(70) }).lines).toEqual(['waist: 70 cm'])
  })
  test('free properties with a unit of length, and none of the label', () => {
    expect(property({ value: 70, unitCode: 'CMT' })).toEqual(['waist: 70 cm'])
    expect(property({ value: 70, unitText: 'cm' })).toEqual(['waist: 70 cm'])
    for (const value of ['70 cm', '70cm', '700 mm', '28 in', '28 inch', '28 inches', '28"', '28″', '28” '])
      expect(property({ value })).toEqual([`waist: ${value.trim()}`])
    expect(property({ value: 70 })).toEqual([])
    expect(property({ value: '70 cm, lovely' })).toEqual([])
    expect(property({ name: 'Waist size', value: '70 cm' })).toEqual([])
    expect(of({ additionalProperty: ['Waist 70 cm'] }).lines).toEqual([])
  })
  test('under their sizes where there are several', () => {
    const [s, m, none] = [{ size: 'S', hasMeasurement: waist(68) }, { size: 'M', hasMeasurement: waist(74) }, { hasMeasurement: waist(80) }]
    expect(of({ hasVariant: [s, m] }).lines).toEqual(['Size S:', 'waist: 68 cm', 'Size M:', 'waist: 74 cm'])
    expect(of({ hasVariant: [s, m, none] }).lines).toEqual(['Size S:', 'waist: 68 cm', 'Size M:', 'waist: 74 cm'])
    expect(of({ hasVariant: [s] }).lines).toEqual(['waist: 68 cm'])
    expect(of({ hasVariant: [s, { ...s }], hasMeasurement: waist(68) }).lines).toEqual(['waist: 68 cm'])
    expect(of({ hasVariant: [s, { size: 'M' }] }).lines).toEqual(['waist: 68 cm'])
    expect(of({ hasVariant: [s], offers: { itemOffered: s } }).lines).toEqual(['waist: 68 cm'])
  })
  test('four hundred of them at most', () => {
    const variants = (count: number) => Array.from({ length: count }, (_, at) => ({ size: `s${at}`, hasMeasurement: waist(60 + at) }))
    expect(of({ hasVariant: variants(200) }).lines).toHaveLength(400)
    expect(of({ hasVariant: variants(201) }).lines).toEqual([])
  })
})

test.each([
  ['A<br>b<br/>c<br />d', 'A\nb\nc\nd'],
  ['<p>A</p><p>b</p>', 'A\n b'],
  ['<li>A</li>b</div>c</tr>d</h2>e</dd>f</dt>g', 'A\nb\nc\nd\ne\nf\ng'],
  ['A <b class="x">bold</b> one', 'A  bold  one'],
  ['waist < hips, 3 <4> 5', 'waist < hips, 3 <4> 5'],
  ['<p> </p>', null],
  [`${'x'.repeat(20_001)}`, 'x'.repeat(20_000)]
])('the description %j', (description, expected) => expect(of({ description }).description).toBe(expected))

describe('whom it is for', () => {
  test.each<[object, string[]]>([
    [{ audience: { suggestedGender: 'https://schema.org/Female' } }, ['Female']],
    [{ audience: { audienceType: 'Adults', name: 'All' } }, ['Adults']],
    [{ audience: { name: 'Men' } }, ['Men']],
    [{ audience: 'Women' }, ['Women']],
    [{ audience: [{ name: 'Adults' }, { suggestedGender: 'male' }] }, ['male', 'Adults']],
    [{ category: 'Skirts' }, ['Skirts']]
  ])('%j: %j', (product, expected) => expect(of(product).whose).toEqual(expected))
})
