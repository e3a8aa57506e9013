/** What a product is offered for: its price, and the sizes it comes in. */
import { amountOf } from './amount.ts'
import { type Bag, held, isBag, lastName, listed, wordsIn } from './bag.ts'
import { type Graph, nodesUnder } from './products.ts'

export interface OfferRead {
  amount: number
  /** ISO 4217, or null where none is told. */
  currency: string | null
}

/** Offers of a product and of its variants, those inside an aggregate before it. */
export function offersOf(product: Bag, graph: Graph): Bag[] {
  const holders = [product, ...nodesUnder(product, 'hasVariant', graph)]
  return holders.flatMap((holder) => nodesUnder(holder, 'offers', graph).flatMap((offer) => [...nodesUnder(offer, 'offers', graph), offer]))
}

const GONE = /(?:soldout|outofstock|discontinued)$/i
const isGone = (offer: Bag): boolean => GONE.test(wordsIn(held(offer, 'availability')) ?? '')

/** The first price of what can still be bought, else the first; the product's own where no offer has one. */
export function priceOf(product: Bag, offers: readonly Bag[]): OfferRead | null {
  const inOrder = [...offers.filter((one) => !isGone(one)), ...offers.filter(isGone), product]
  for (const offer of inOrder) {
    const price = priceIn(offer)
    if (price !== null) return price
  }
  return null
}

const STRUCK = /(?:listprice|strikethroughprice|msrp|srp)$/i

function priceIn(offer: Bag): OfferRead | null {
  const specifications = listed(held(offer, 'priceSpecification')).filter(isBag)
  const asked = specifications.filter((one) => !STRUCK.test(lastName(wordsIn(held(one, 'priceType')) ?? '')))
  for (const holder of [offer, ...asked]) {
    const price = held(holder, 'price')
    const told = isBag(price) ? held(price, 'value') : price
    const amount = amountOf(told ?? held(holder, 'lowPrice'))
    if (amount === null) continue
    const currency = [held(holder, 'priceCurrency'), isBag(price) ? held(price, 'currency') : undefined, held(offer, 'priceCurrency')]
    return { amount, currency: currency.map(currencyCode).find((code) => code !== null) ?? null }
  }
  return null
}

export const currencyCode = (told: unknown): string | null => {
  const code = wordsIn(told)
  return code !== null && /^[a-z]{3}$/i.test(code) ? code.toUpperCase() : null
}

/** A size as one would say it: M, UK 12; null where it is none. */
export function sizeWords(value: unknown): string | null {
  if (!isBag(value)) return wordsIn(value)
  const name = wordsIn(held(value, 'name') ?? value['@value'])
  if (name === null) return null
  const system = /^(?:wearable)?sizesystem([a-z]{2})$/i.exec(lastName(wordsIn(held(value, 'sizeSystem')) ?? ''))?.[1]?.toUpperCase()
  return system === undefined || system === 'EN' || /[a-z]/i.test(name) ? name : `${system} ${name}`
}

/** What is sold one a size: variants, or offers that tell their size. */
export const variantsOf = (product: Bag, offers: readonly Bag[], graph: Graph): Bag[] => [
  ...nodesUnder(product, 'hasVariant', graph),
  ...offers.flatMap((offer) => [offer, ...nodesUnder(offer, 'itemOffered', graph)])
]
