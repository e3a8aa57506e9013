/** Structured data of the page (schema.org in JSON-LD): the product that the page is about. Broken pieces are skipped. */

export interface StructuredRead {
  name: string | null
  description: string | null
  price: { amount: number; currency: string | null } | null
  colour: string | null
  material: string | null
  condition: string | null
  size: string | null
  broken: boolean
}
type Bag = Record<string, unknown>
const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value)

const MOST_NODES = 5000

export function structuredOf(blocks: readonly unknown[] | undefined, title: string | undefined): StructuredRead {
  const found: Bag[] = []
  let broken = false
  for (const block of blocks ?? []) {
    let value = block
    if (typeof block === 'string') {
      try {
        value = JSON.parse(block)
      } catch {
        broken = true
        continue
      }
    }
    collect(value, found)
  }
  const product = chosen(found, title)
  if (!product) return { name: null, description: null, price: null, colour: null, material: null, condition: null, size: null, broken }
  const offer = offerOf(product)
  return {
    name: textOf(product.name),
    description: textOf(product.description),
    price: priceOfOffer(offer) ?? priceOfOffer(product),
    colour: textOf(product.color) ?? textOf(product.colour),
    material: textOf(product.material),
    condition: conditionOf(textOf(product.itemCondition) ?? textOf(offer?.itemCondition)),
    size: textOf(product.size),
    broken
  }
}

/** Every product in graphs, lists and nested things, in order; no node twice. */
function collect(value: unknown, found: Bag[]): void {
  const open: unknown[] = [value]
  const seen = new Set<unknown>()
  for (let index = 0; index < open.length && index < MOST_NODES; index++) {
    const node = open[index]
    if (typeof node !== 'object' || node === null || seen.has(node)) continue
    seen.add(node)
    if (isBag(node) && typesOf(node).some((type) => /^(?:product|individualproduct|productmodel|productgroup)$/.test(type)))
      found.push(node)
    for (const inner of Object.values(node)) if (typeof inner === 'object' && inner !== null) open.push(inner)
  }
}

const typesOf = (node: Bag): string[] =>
  [node['@type'], node.type]
    .flat()
    .filter((type): type is string => typeof type === 'string')
    .map((type) => type.replace(/^.*[/#:]/, '').toLowerCase())

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim()

/** The one whose name is the title, else the one most alike, else the first with an offer. */
function chosen(products: readonly Bag[], title: string | undefined): Bag | null {
  if (products.length <= 1 || title === undefined) return products.find((one) => one.offers !== undefined) ?? products[0] ?? null
  const wanted = plain(title)
  const words = new Set(wanted.split(' '))
  let best: Bag | null = null
  let most = -1
  for (const one of products.slice(0, 200)) {
    const name = plain(textOf(one.name) ?? '')
    const own = name.split(' ').slice(0, 60)
    const score =
      name !== '' && name === wanted
        ? 1000
        : own.filter((word) => word !== '' && words.has(word)).length / Math.max(own.length, words.size) +
          (one.offers === undefined ? 0 : 0.01)
    if (score > most) {
      most = score
      best = one
    }
  }
  return best
}

function offerOf(product: Bag): Bag | null {
  const offers = [product.offers].flat().filter(isBag)
  const inner = offers.flatMap((offer) => [offer.offers].flat().filter(isBag))
  return [...offers, ...inner].find((offer) => priceOfOffer(offer) !== null) ?? offers[0] ?? null
}

function priceOfOffer(offer: Bag | null): { amount: number; currency: string | null } | null {
  if (!offer) return null
  const specification = [offer.priceSpecification].flat().find(isBag)
  for (const holder of [offer, specification]) {
    if (!holder) continue
    const amount = numberOf(holder.price ?? holder.lowPrice)
    if (amount !== null) {
      const currency = textOf(holder.priceCurrency) ?? textOf(offer.priceCurrency)
      return { amount, currency: currency !== null && /^[a-z]{3}$/i.test(currency) ? currency.toUpperCase() : null }
    }
  }
  return null
}

/** A price may be a string, with a comma, a currency sign or a thousands mark. */
function numberOf(value: unknown): number | null {
  if (typeof value === 'number') return Number.isFinite(value) && value > 0 ? value : null
  if (typeof value !== 'string' || value.length > 40) return null
  const digits = value.replace(/[^\d.,]/g, '')
  const last = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','))
  const cents = last >= 0 && digits.length - last - 1 <= 2
  const amount = Number(cents ? `${digits.slice(0, last).replace(/[.,]/g, '')}.${digits.slice(last + 1)}` : digits.replace(/[.,]/g, ''))
  return digits !== '' && Number.isFinite(amount) && amount > 0 ? amount : null
}

function textOf(value: unknown): string | null {
  if (typeof value === 'string') return value.trim() === '' ? null : value.trim()
  if (typeof value === 'number') return String(value)
  if (Array.isArray(value)) {
    const parts = value.map(textOf).filter((part) => part !== null)
    return parts.length > 0 ? parts.join(', ') : null
  }
  return isBag(value) ? textOf(value.name ?? value['@value'] ?? value['@id']) : null
}

const CONDITIONS: [RegExp, string][] = [
  [/new(?:condition)?$/i, 'new'],
  [/used(?:condition)?$/i, 'used'],
  [/refurbished(?:condition)?$/i, 'refurbished'],
  [/damaged(?:condition)?$/i, 'damaged']
]
/** schema.org's condition names as plain words; other words as they stand. */
const conditionOf = (told: string | null): string | null =>
  told === null ? null : (CONDITIONS.find(([name]) => name.test(told))?.[1] ?? told.toLowerCase())
