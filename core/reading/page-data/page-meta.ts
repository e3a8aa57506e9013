/** What a page's meta properties tell (OpenGraph and its product properties, plain descriptions), as the capture hands them on. */
import { amountOf } from './amount.ts'
import { isJsonNode, type JsonNode, propertyOf, wordsIn } from './json-node.ts'
import { currencyCode, type OfferRead } from './offers.ts'

export interface MetaRead {
  name: string | null
  description: string | null
  price: OfferRead | null
  colour: string | null
  material: string | null
  condition: string | null
  size: string | null
  /** Where it stands among what is sold. */
  category: string | null
  whose: string[]
}

/** `{ meta: { 'og:title': …, 'product:price:amount': … } }` among the blocks; the first word for each fact. */
export function metaOf(blocks: readonly unknown[]): MetaRead {
  const nodes = blocks.flatMap((block) => (isJsonNode(block) && isJsonNode(block.meta) ? [block.meta] : []))
  const first = (...names: string[]): string | null => {
    for (const name of names) for (const node of nodes) if (wordsIn(node[name]) !== null) return wordsIn(node[name])
    return null
  }
  return {
    name: first('og:title', 'twitter:title'),
    description: first('og:description', 'twitter:description', 'description'),
    price: priceIn(nodes),
    colour: first('product:color', 'product:colour'),
    material: first('product:material'),
    condition: first('product:condition'),
    size: first('product:size'),
    category: first('product:category'),
    whose: [first('product:gender', 'product:target_gender'), first('product:category')].flatMap((one) => one ?? [])
  }
}

function priceIn(nodes: readonly JsonNode[]): OfferRead | null {
  for (const start of ['product:sale_price', 'product:price', 'og:price']) {
    for (const node of nodes) {
      const amount = amountOf(propertyOf(node, `${start}:amount`))
      if (amount !== null) return { amount, currency: currencyCode(propertyOf(node, `${start}:currency`)) }
    }
  }
  return null
}
