/** Structured data of the page (schema.org in JSON-LD, marked-up items, meta properties): the product that the page is about. */

import { cueInside } from '../text/cues.ts'
import { jsonBlock } from './json-block.ts'
import { isJsonNode, type JsonNode, lastName, listed, propertyOf, wordsIn } from './json-node.ts'
import { offersOf, priceOf, sizeWords, variantsOf } from './offers.ts'
import { metaOf } from './page-meta.ts'
import { chosenProduct, type Graph, graphOf } from './products.ts'
import { measureLines } from './schema-measures.ts'

export interface StructuredRead {
  name: string | null
  /** Plain text with its lines. */
  description: string | null
  price: { amount: number; currency: string | null } | null
  colour: string | null
  material: string | null
  condition: string | null
  /** The one size told; null for none or several. */
  size: string | null
  /** Where it stands among what is sold. */
  category: string | null
  /** Whom it is for, as named: a gender, an audience, the path of a category. */
  whose: string[]
  /** Measurements as lines that read like a seller's. */
  lines: string[]
  /** A block could not be read and was skipped. */
  broken: boolean
}

const NOTHING: StructuredRead = {
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

/** `address`: of the page, to tell which of several products it is about. Never throws. */
export function structuredOf(blocks: readonly unknown[] | undefined, title: string | undefined, address?: string): StructuredRead {
  if (blocks === undefined || blocks.length === 0) return NOTHING
  const values: unknown[] = []
  let broken = false
  for (const block of blocks) {
    const value = typeof block === 'string' ? jsonBlock(block) : block
    if (value === undefined) broken = true
    else values.push(value)
  }
  const meta = metaOf(values)
  const graph = graphOf(values)
  const product = chosenProduct(graph, title, address)
  if (product === null)
    return { ...meta, description: plainText(meta.description), condition: conditionOf(meta.condition), lines: [], broken }
  const offers = offersOf(product, graph)
  const variants = variantsOf(product, offers, graph)
  const wordsOf = (name: string): string | null => wordsIn(propertyOf(product, name))
  return {
    name: wordsOf('name') ?? meta.name,
    description: plainText(wordsOf('description') ?? meta.description),
    price: priceOf(product, offers) ?? meta.price,
    colour: wordsOf('color') ?? wordsOf('colour') ?? meta.colour,
    material: wordsOf('material') ?? meta.material,
    condition: conditionOf(wordsOf('itemCondition') ?? firstWords(offers, 'itemCondition') ?? meta.condition),
    size: onlySize([product, ...variants]) ?? meta.size,
    category: wordsOf('category') ?? meta.category,
    whose: [...forWhom(product), ...meta.whose],
    lines: linesOf(product, variants, graph),
    broken
  }
}

const firstWords = (nodes: readonly JsonNode[], name: string): string | null =>
  nodes.reduce<string | null>((found, node) => found ?? wordsIn(propertyOf(node, name)), null)

function onlySize(nodes: readonly JsonNode[]): string | null {
  const sizes = new Set(nodes.flatMap((node) => listed(propertyOf(node, 'size')).flatMap((size) => sizeWords(size) ?? [])))
  return sizes.size === 1 ? ([...sizes][0] ?? null) : null
}

/** The gender of its audience, whoever else is named there, and where it stands among what is sold. */
function forWhom(product: JsonNode): string[] {
  const audience = listed(propertyOf(product, 'audience'))
  const genders = audience.filter(isJsonNode).map((one) => wordsIn(propertyOf(one, 'suggestedGender')))
  const others = audience.map((one) =>
    isJsonNode(one) ? wordsIn(propertyOf(one, 'audienceType') ?? propertyOf(one, 'name')) : wordsIn(one)
  )
  return [...genders.map((one) => one && lastName(one)), ...others, wordsIn(propertyOf(product, 'category'))].flatMap((one) => one ?? [])
}

/** The product's own measurements, then those of its variants, each under its size where there are several. */
function linesOf(product: JsonNode, variants: readonly JsonNode[], graph: Graph): string[] {
  const lines = measuresUnder(product, graph)
  const seen = new Set([product])
  const sized: { size: string | null; lines: string[] }[] = []
  for (const variant of variants) {
    if (seen.has(variant)) continue
    seen.add(variant)
    const its = measuresUnder(variant, graph)
    if (its.length > 0) sized.push({ size: listed(propertyOf(variant, 'size')).map(sizeWords)[0] ?? null, lines: its })
  }
  const several = new Set(sized.map(({ size }) => size)).size > 1
  for (const { size, lines: its } of sized) {
    if (several && size === null) continue
    if (several) lines.push(`Size ${size}:`)
    lines.push(...its)
  }
  return lines.length <= MOST_LINES ? [...(several ? lines : new Set(lines))] : []
}
const MOST_LINES = 400

function measuresUnder(node: JsonNode, graph: Graph): string[] {
  const sizes = listed(propertyOf(node, 'size')).filter(isJsonNode)
  const audience = listed(propertyOf(node, 'audience')).filter(isJsonNode)
  const resolved = (value: unknown) =>
    listed(value).map((one) => (isJsonNode(one) && Object.keys(one).length === 1 ? (graph.byId.get(String(one['@id'])) ?? one) : one))
  return [
    ...measureLines(resolved(propertyOf(node, 'hasMeasurement'))),
    ...sizes.flatMap((size) => measureLines(resolved(propertyOf(size, 'hasMeasurement')))),
    ...measureLines(listed(propertyOf(node, 'additionalProperty')).filter(isMeasured)),
    ...[...sizes, ...audience].flatMap((one) => measureLines(resolved(propertyOf(one, 'suggestedMeasurement')), true))
  ]
}

const OTHER_PROPERTY = cueInside('otherProperty')
/** A free property with a figure and a unit of length; one called a size is of the label. */
const isMeasured = (property: unknown): boolean =>
  isJsonNode(property) &&
  !OTHER_PROPERTY.test(wordsIn(propertyOf(property, 'name')) ?? '') &&
  (propertyOf(property, 'unitCode') !== undefined ||
    propertyOf(property, 'unitText') !== undefined ||
    /\d\s*(?:cm|mm|in|inch|inches|["″”])\s*$/i.test(wordsIn(propertyOf(property, 'value')) ?? ''))

/** Descriptions come with the page's code in them: what ends a line there ends one here. */
function plainText(markup: string | null): string | null {
  if (markup === null) return null
  const text = markup
    .slice(0, LONGEST)
    .replace(/<br\s?\/?>|<\/(?:p|li|div|tr|h[1-6]|dd|dt)>/gi, '\n')
    .replace(/<\/?[a-z][^<>]{0,500}>/gi, ' ')
    .trim()
  return text === '' ? null : text
}
const LONGEST = 20_000

const CONDITIONS: [RegExp, string][] = [
  [/^new(?:condition)?$/i, 'new'],
  [/^used(?:condition)?$/i, 'used'],
  [/^refurbished(?:condition)?$/i, 'refurbished'],
  [/^damaged(?:condition)?$/i, 'damaged']
]
/** schema.org's condition names as plain words; other words as they stand. */
const conditionOf = (words: string | null): string | null => {
  if (words === null) return null
  const name = /^https?:|^schema:/i.test(words) ? lastName(words) : words
  return CONDITIONS.find(([one]) => one.test(name))?.[1] ?? name.toLowerCase()
}
