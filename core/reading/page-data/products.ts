/** The products that structured data names, and the one that the page is about. */
import { isJsonNode, type JsonNode, listed, propertyOf, typesOf, wordsIn } from './json-node.ts'

export interface Graph {
  products: JsonNode[]
  /** Nodes by their address, for those that are only pointed at. */
  byId: ReadonlyMap<string, JsonNode>
}

const MOST_NODES = 5000
const PRODUCT = /^(?:product|individualproduct|productmodel|productgroup|someproducts)$/
/** What stands beside the product, never the product itself. */
const BESIDE = new Set([
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
  'review'
])

/** https://schema.org/brand → brand. */
const nameAlone = (key: string): string => key.slice(Math.max(key.lastIndexOf('/'), key.lastIndexOf(':')) + 1)

/** Every product in graphs, lists and nested things, in order; no node twice, none of those named only as alike. */
export function graphOf(values: readonly unknown[]): Graph {
  const products: JsonNode[] = []
  const byId = new Map<string, JsonNode>()
  const seen = new Set<unknown>()
  const open: unknown[] = [...values]
  for (let index = 0; index < open.length && index < MOST_NODES; index++) {
    const node = open[index]
    if (typeof node !== 'object' || node === null || seen.has(node)) continue
    seen.add(node)
    if (!isJsonNode(node)) {
      open.push(...listed(node).slice(0, MOST_NODES))
      continue
    }
    const id = node['@id']
    if (typeof id === 'string' && Object.keys(node).length > 1 && !byId.has(id)) byId.set(id, node)
    if (typesOf(node).some((type) => PRODUCT.test(type))) products.push(node)
    for (const [key, inner] of Object.entries(node))
      if (typeof inner === 'object' && inner !== null && !BESIDE.has(nameAlone(key))) open.push(inner)
  }
  return { products, byId }
}

/** The node itself, where it is only pointed at by its address. */
export const resolveId = (value: unknown, { byId }: Graph): unknown => {
  if (!isJsonNode(value) || Object.keys(value).length > 2) return value
  const id = value['@id']
  return typeof id === 'string' ? (byId.get(id) ?? value) : value
}
/** Nodes under a name, those only pointed at found. */
export const nodesUnder = (node: JsonNode, name: string, graph: Graph): JsonNode[] =>
  listed(propertyOf(node, name))
    .map((value) => resolveId(value, graph))
    .filter(isJsonNode)

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim()
/** Without its scheme, www, query, fragment and last slash. */
const bare = (address: string): string =>
  address
    .toLowerCase()
    .replace(/^https?:\/\/(?:www\.|m\.)?/, '')
    .replace(/[?#].*$/, '')
    .replace(/\/+$/, '')

const MOST_PRODUCTS = 200
/** By so little is a product of a list alike that it is another one. */
const LEAST_ALIKE = 0.25

/** The one whose address is the page's, else whose name is the title, else the one most alike; of several that are not alike, none. */
export function chosenProduct(graph: Graph, title: string | undefined, address: string | undefined): JsonNode | null {
  const products = graph.products.slice(0, MOST_PRODUCTS)
  if (products.length <= 1) return products[0] ?? null
  const here = address === undefined ? '' : bare(address)
  const wanted = title === undefined ? '' : plain(title)
  const words = new Set(wanted.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== ''))
  let best: JsonNode | null = null
  let most = -1
  for (const one of products) {
    const name = plain(wordsIn(propertyOf(one, 'name')) ?? '')
    const own = [...new Set(name.split(/[^\p{L}\p{N}]+/u).slice(0, 60))].filter((word) => word !== '')
    const alike = words.size === 0 || own.length === 0 ? 0 : own.filter((word) => words.has(word)).length / Math.max(own.length, words.size)
    const offered = propertyOf(one, 'offers') === undefined && propertyOf(one, 'hasVariant') === undefined ? 0 : 0.01
    const score = (here !== '' && addressesOf(one).includes(here) ? 2 : 0) + (name !== '' && name === wanted ? 1 : alike) + offered
    if (score > most) {
      most = score
      best = one
    }
  }
  return most >= LEAST_ALIKE || (wanted === '' && here === '') ? best : null
}

function addressesOf(product: JsonNode): string[] {
  const pages = listed(propertyOf(product, 'mainEntityOfPage')).map((page) =>
    isJsonNode(page) ? (page['@id'] ?? propertyOf(page, 'url')) : page
  )
  const offers = listed(propertyOf(product, 'offers')).map((offer) => (isJsonNode(offer) ? propertyOf(offer, 'url') : undefined))
  return [product['@id'], propertyOf(product, 'url'), ...pages, ...offers]
    .filter((address): address is string => typeof address === 'string' && /^https?:/i.test(address))
    .map(bare)
}
