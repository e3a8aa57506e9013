/** What a page's marked-up items and meta properties tell of a product, as blocks like its JSON-LD; whoever reads them judges. */
import { table } from '../../core/ids/table.ts'
import { textOf } from './page-text.ts'

const ITEMS_BOUND = 12
const DEPTH_BOUND = 6
const VALUES_BOUND = 400
const TEXT_BOUND = 20_000
const PRODUCT = /schema\.org\/(?:product|individualproduct|productmodel|productgroup)$/i

type Value = string | Item
interface Item {
  [name: string]: Value | Value[]
}

/** Products marked up with itemscope and itemprop, each as one block of JSON. */
export function markedItems(page: Document): string[] {
  const found: string[] = []
  for (const element of page.querySelectorAll('[itemscope][itemtype]')) {
    const inside = element.parentElement?.closest('[itemscope]')
    if (!PRODUCT.test((element.getAttribute('itemtype') ?? '').trim())) continue
    // a product within a product comes with the outer one
    if (inside && element.hasAttribute('itemprop') && PRODUCT.test((inside.getAttribute('itemtype') ?? '').trim())) continue
    found.push(JSON.stringify(itemOf(element, { left: VALUES_BOUND }, 0)))
    if (found.length === ITEMS_BOUND) break
  }
  return found
}

function itemOf(scope: Element, room: { left: number }, depth: number): Item {
  // a page names its properties as it likes, also “constructor”
  const item: Item = Object.create(null)
  const type = scope.getAttribute('itemtype')?.trim()
  if (type) item['@type'] = type
  const id = scope.getAttribute('itemid')?.trim()
  if (id) item['@id'] = id
  for (const element of propertiesOf(scope)) {
    if (room.left-- <= 0) break
    const value = element.hasAttribute('itemscope') ? (depth < DEPTH_BOUND ? itemOf(element, room, depth + 1) : null) : valueIn(element)
    if (value === null) continue
    for (const name of (element.getAttribute('itemprop') ?? '').split(/\s+/)) {
      const known = item[name]
      if (name === '' || name.startsWith('@')) continue
      item[name] = known === undefined ? value : Array.isArray(known) ? [...known, value] : [known, value]
    }
  }
  return item
}

/** The properties of an item itself, not those of the items in it; also where itemref points. */
function propertiesOf(scope: Element): Element[] {
  const referred = (scope.getAttribute('itemref') ?? '')
    .split(/\s+/)
    .flatMap((id) => (id === '' ? [] : (scope.ownerDocument.getElementById(id) ?? [])))
  const own = [...scope.querySelectorAll('[itemprop]')].filter((element) => element.parentElement?.closest('[itemscope]') === scope)
  return [...own, ...referred.filter((element) => element.hasAttribute('itemprop') && !scope.contains(element))]
}

/** As the HTML standard has it: content, an address, a date, a value, else the text with its lines. */
function valueIn(element: Element): string | null {
  const told =
    element.getAttribute('content') ??
    element.getAttribute(ADDRESS[element.tagName] ?? 'content') ??
    (element.tagName === 'TIME' ? element.getAttribute('datetime') : null) ??
    (element.tagName === 'DATA' || element.tagName === 'METER' ? element.getAttribute('value') : null) ??
    textOf(element).text
  const text = told.trim().slice(0, TEXT_BOUND)
  return text === '' ? null : text
}
const ADDRESS = table<string>({ A: 'href', LINK: 'href', AREA: 'href', IMG: 'src' })

const TOLD = /^(?:og:(?:title|description|price:[a-z]+)|product:[a-z_:]+|twitter:(?:title|description)|description)$/

/** The page's meta properties about a product, as one block; none where it says nothing of one. */
export function metaBlock(page: Document): string[] {
  const meta = new Map<string, string>()
  for (const element of page.querySelectorAll('meta[content]')) {
    const name = (element.getAttribute('property') ?? element.getAttribute('name') ?? '').trim().toLowerCase()
    const content = (element.getAttribute('content') ?? '').trim().slice(0, TEXT_BOUND)
    if (TOLD.test(name) && content !== '' && !meta.has(name)) meta.set(name, content)
  }
  return meta.size > 0 ? [JSON.stringify({ meta: Object.fromEntries(meta) })] : []
}
