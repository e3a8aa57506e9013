/** Nodes of structured data: what a name holds in them, whatever form it takes. */

export type JsonNode = Readonly<Record<string, unknown>>
export const isJsonNode = (value: unknown): value is JsonNode => typeof value === 'object' && value !== null && !Array.isArray(value)

const PREFIXES = ['', 'schema:', 'https://schema.org/', 'http://schema.org/']

/** What a node holds under a name of the vocabulary, with or without its prefix. */
export function propertyOf(node: JsonNode, name: string): unknown {
  for (const prefix of PREFIXES) {
    const value = node[prefix + name]
    if (value !== undefined && value !== null) return value
  }
  return undefined
}

/** A value as a list; nothing is an empty one. */
export const listed = (value: unknown): unknown[] =>
  Array.isArray(value)
    ? value.flat(3)
    : isJsonNode(value) && Array.isArray(value['@list'])
      ? value['@list']
      : value === undefined
        ? []
        : [value]

/** Words of a value: a string, a number, a node's name; several with commas. Its address only where nothing else names it. */
export function wordsIn(value: unknown, depth = 0): string | null {
  if (depth > 4) return null
  if (typeof value === 'string') return value.trim() === '' ? null : value.trim()
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : null
  if (Array.isArray(value)) {
    const parts = value.slice(0, 50).map((part) => wordsIn(part, depth + 1))
    const words = parts.filter((part) => part !== null)
    return words.length > 0 ? words.join(', ') : null
  }
  return isJsonNode(value) ? wordsIn(propertyOf(value, 'name') ?? value['@value'] ?? value['@id'], depth + 1) : null
}

/** The types of a node in small letters, without their vocabulary's address. */
export const typesOf = (node: JsonNode): string[] =>
  [node['@type'], node.type, node['rdf:type']]
    .flat()
    .filter((type): type is string => typeof type === 'string')
    .map((type) => lastName(type).toLowerCase())

/** schema:Product, https://schema.org/Product → Product. */
export const lastName = (name: string): string => name.replace(/[/#]+$/, '').replace(/^.*[/#:]/, '')
