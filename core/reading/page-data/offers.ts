/** What a product is offered for: its price, and the sizes it comes in. */
import { amountOf } from './amount.ts'
import { isJsonNode, type JsonNode, lastName, listed, propertyOf, wordsIn } from './json-node.ts'
import { type Graph, nodesUnder } from './products.ts'

export interface OfferRead {
  amount: number
  /** ISO 4217, or null where none is told. */
  currency: string | null
}

/** Offers of a product and of its variants, those inside an aggregate before it. */
export function offersOf(product: JsonNode, graph: Graph): JsonNode[] {
  const holders = [product, ...nodesUnder(product, 'hasVariant', graph)]
  return holders.flatMap((holder) => nodesUnder(holder, 'offers', graph).flatMap((offer) => [...nodesUnder(offer, 'offers', graph), offer]))
}

const GONE = /(?:soldout|outofstock|discontinued)$/i
const isGone = (offer: JsonNode): boolean => GONE.test(wordsIn(propertyOf(offer, 'availability')) ?? '')

/** The first price of what can still be bought, else the first; the product's own where no offer has one. */
export function priceOf(product: JsonNode, offers: readonly JsonNode[]): OfferRead | null {
  const inOrder = [...offers.filter((one) => !isGone(one)), ...offers.filter(isGone), product]
  for (const offer of inOrder) {
    const price = priceIn(offer)
    if (price !== null) return price
  }
  return null
}

const STRUCK = /(?:listprice|strikethroughprice|msrp|srp)$/i

function priceIn(offer: JsonNode): OfferRead | null {
  const specifications = listed(propertyOf(offer, 'priceSpecification')).filter(isJsonNode)
  const asked = specifications.filter((one) => !STRUCK.test(lastName(wordsIn(propertyOf(one, 'priceType')) ?? '')))
  for (const holder of [offer, ...asked]) {
    const price = propertyOf(holder, 'price')
    const inOffer = isJsonNode(price) ? propertyOf(price, 'value') : price
    const amount = amountOf(inOffer ?? propertyOf(holder, 'lowPrice'))
    if (amount === null) continue
    const currency = [
      propertyOf(holder, 'priceCurrency'),
      isJsonNode(price) ? propertyOf(price, 'currency') : undefined,
      propertyOf(offer, 'priceCurrency')
    ]
    return { amount, currency: currency.map(currencyCode).find((code) => code !== null) ?? null }
  }
  return null
}

export const currencyCode = (value: unknown): string | null => {
  const code = wordsIn(value)
  return code !== null && /^[a-z]{3}$/i.test(code) ? code.toUpperCase() : null
}

/** A size as one would say it: M, UK 12; null where it is none. */
export function sizeWords(value: unknown): string | null {
  if (!isJsonNode(value)) return wordsIn(value)
  const name = wordsIn(propertyOf(value, 'name') ?? value['@value'])
  if (name === null) return null
  const system = /^(?:wearable)?sizesystem([a-z]{2})$/i.exec(lastName(wordsIn(propertyOf(value, 'sizeSystem')) ?? ''))?.[1]?.toUpperCase()
  return system === undefined || system === 'EN' || /[a-z]/i.test(name) ? name : `${system} ${name}`
}

/** What is sold one a size: variants, or offers that tell their size. */
export const variantsOf = (product: JsonNode, offers: readonly JsonNode[], graph: Graph): JsonNode[] => [
  ...nodesUnder(product, 'hasVariant', graph),
  ...offers.flatMap((offer) => [offer, ...nodesUnder(offer, 'itemOffered', graph)])
]
