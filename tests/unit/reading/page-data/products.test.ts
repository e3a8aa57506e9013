/** Which products the page's data names, and which of them the page is about. */
import { describe, expect, test } from 'vitest'
import type { JsonNode } from '../../../../core/reading/page-data/json-node.ts'
import { chosenProduct, graphOf, nodesUnder, resolveId } from '../../../../core/reading/page-data/products.ts'

const product = (name: string, more: object = {}) => ({ '@type': 'Product', name, ...more })
const namesOf = (...values: unknown[]) => graphOf(values).products.map(({ name }) => name)

describe('the products of a page', () => {
  test.each(['Product', 'IndividualProduct', 'ProductModel', 'ProductGroup', 'SomeProducts', 'https://schema.org/product'])(
    'a %s',
    (type) => expect(namesOf({ '@type': type, name: 'Kilt' })).toEqual(['Kilt'])
  )
  test.each(['Offer', 'ProductCollection', 'MyProduct'])('no %s', (type) => expect(namesOf({ '@type': type, name: 'Kilt' })).toEqual([]))
  test('in lists and nested, in order and once each', () => {
    const coat = product('Coat')
    expect(namesOf([product('Kilt'), [product('Skirt')]], { mainEntity: { '@list': [coat] } }, coat)).toEqual(['Coat', 'Kilt', 'Skirt'])
    expect(namesOf('Kilt', null, 4)).toEqual([])
  })
  test.each([
    'isRelatedTo',
    'isSimilarTo',
    'isAccessoryOrSparePartFor',
    'isConsumableFor',
    'predecessorOf',
    'successorOf',
    'itemReviewed',
    'recommendedProduct',
    'breadcrumb',
    'publisher',
    'brand',
    'manufacturer',
    'review',
    'schema:brand',
    'https://schema.org/isSimilarTo'
  ])('what stands under %s is another one', (key) => {
    expect(namesOf(product('Kilt', { [key]: product('Sporran') }))).toEqual(['Kilt'])
    expect(namesOf({ mainEntity: product('Kilt', { [key]: [product('Sporran')] }) })).toEqual(['Kilt'])
  })
})

describe('nodes that are pointed at by their address', () => {
  const offer = { '@id': '#offer', price: 9 }
  const graph = graphOf([product('Kilt', { offers: { '@id': '#offer' } }), offer, { '@id': '#offer', price: 8 }])
  test('the first that tells more than its address', () => expect(graph.byId.get('#offer')).toBe(offer))
  test('what only points is not what it points at, though it stands before it', () => {
    expect(graphOf([{ '@id': '#offer' }, offer]).byId.get('#offer')).toBe(offer)
  })
  test.each<[string, unknown, unknown]>([
    ['an address', { '@id': '#offer' }, offer],
    ['an address with its type', { '@id': '#offer', '@type': 'Offer' }, offer],
    ['what tells by itself', { '@id': '#offer', '@type': 'Offer', price: 7 }, { '@id': '#offer', '@type': 'Offer', price: 7 }],
    ['an address of nothing', { '@id': '#nothing' }, { '@id': '#nothing' }],
    ['no address', { '@type': 'Offer' }, { '@type': 'Offer' }],
    ['words', '#offer', '#offer'],
    ['a number for one', { '@id': 4 }, { '@id': 4 }]
  ])('%s', (_, value, expected) => expect(resolveId(value, graph)).toEqual(expected))
  test('those under a name, and words are none', () => {
    expect(nodesUnder({ offers: [{ '@id': '#offer' }, 'free'] }, 'offers', graph)).toEqual([offer])
  })
})

describe('the one that the page is about', () => {
  const chosen = (products: JsonNode[], title?: string, address?: string) =>
    chosenProduct({ products, byId: new Map() }, title, address)?.name ?? null
  const [shirt, skirt] = [product('Linen shirt'), product('Cord skirt, brown')]
  test('of none none, of one that one', () => {
    expect(chosen([])).toBeNull()
    expect(chosen([shirt], 'Boots', 'https://rail.example/9')).toBe('Linen shirt')
  })
  test.each<[string, string | undefined, string | null]>([
    ['its title, in capitals and with spaces', ' CORD  skirt, brown ', 'Cord skirt, brown'],
    ['some of its words', 'Brown cord skirt of the seventies', 'Cord skirt, brown'],
    ['a fourth of them', 'A cord coat lovely', 'Cord skirt, brown'],
    ['fewer', 'A cord coat so lovely', null],
    ['none of them', 'Boots', null],
    ['no title and no address', undefined, 'Linen shirt'],
    ['a title of nothing', ' ', 'Linen shirt']
  ])('%s', (_, title, expected) => expect(chosen([shirt, skirt], title)).toBe(expected))
  test('of two alike the first, and rather the one that is offered', () => {
    const [one, other] = [product('Kilt', { sku: 1 }), product('Kilt', { offers: { price: 9 } })]
    const which = (products: JsonNode[]) => chosenProduct({ products, byId: new Map() }, 'Kilt', undefined)
    expect(which([one, { ...one }])).toBe(one)
    expect(which([one, other])).toBe(other)
    expect(which([one, product('Kilt', { hasVariant: [] })])?.hasVariant).toEqual([])
  })
  const here = 'https://www.rail.example/item/2/?ref=x#photos'
  test.each<[string, object]>([
    ['its url', { url: 'http://m.rail.example/item/2' }],
    ['its own address', { '@id': 'https://rail.example/Item/2#it' }],
    ['the page that it is the main thing of', { mainEntityOfPage: { '@id': 'https://rail.example/item/2' } }],
    ['the url of that page', { mainEntityOfPage: { url: 'https://rail.example/item/2' } }],
    ['that page in words', { mainEntityOfPage: 'https://rail.example/item/2' }],
    ['the url of its offer', { offers: [{ price: 9 }, { url: 'https://rail.example/item/2//' }] }]
  ])('%s is the address of the page', (_, more) => {
    expect(chosen([shirt, product('Kilt', more)], 'Linen shirt', here)).toBe('Kilt')
    expect(chosen([shirt, product('Kilt', more)], 'Linen shirt', 'https://rail.example/item/3')).toBe('Linen shirt')
  })
  test.each<[string, object]>([
    ['no address', { url: 'rail.example/item/2' }],
    ['an offer in words', { offers: 'https://rail.example/item/2' }],
    ['another place', { url: 'https://other.example/item/2' }]
  ])('%s is not', (_, more) => expect(chosen([shirt, product('Kilt', more)], 'Linen shirt', here)).toBe('Linen shirt'))
  test('with an address that is nobody’s and no title there is none', () => expect(chosen([shirt, skirt], undefined, here)).toBeNull())
})
