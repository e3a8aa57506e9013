/**
 * JSON read in short steps: the text is taken apart at the lists that lie in its outermost object, or in an object of that, and their items are
 * read one by one. What comes of it is what JSON.parse of the whole gives, and so is what is refused.
 */

/** So many characters are looked through, or read, in one step. */
const STEP = 300_000

const QUOTE = 0x22
const COMMA = 0x2c
const BACKSLASH = 0x5c
const [LIST, LIST_END, OBJECT, OBJECT_END] = [0x5b, 0x5d, 0x7b, 0x7d]
/** Lists no deeper than this are taken apart: the outermost object, one in it, the list. */
const DEEPEST_LIST = 3

export interface RowsOfJson {
  /** The whole, in which each item of those lists is its place in `items`. */
  outline: unknown
  items: readonly unknown[]
  /** How deep each item goes, counted from the outermost: 1. */
  depths: readonly number[]
  /** How deep the text goes; 0: it is neither list nor object. */
  depth: number
}

interface Apart {
  outline: string
  /** Where each item begins and ends. */
  spans: [from: number, to: number][]
  depths: number[]
  depth: number
}

/** Throws as JSON.parse does. Yields how many characters of the text are read. */
export function* rowsOfJson(text: string): Generator<number, RowsOfJson> {
  const { outline, spans, depths, depth } = yield* takenApart(text)
  const whole: unknown = JSON.parse(outline)
  const items: unknown[] = []
  let yielded = 0
  for (const [from, to] of spans) {
    items.push(JSON.parse(text.slice(from, to)))
    if (to - yielded < STEP) continue
    yielded = to
    yield to
  }
  return { outline: whole, items, depths, depth }
}

/** Looks for where items begin and end; whether what stands between is JSON is for JSON.parse to say. */
function* takenApart(text: string): Generator<number, Apart> {
  const found: Apart = { outline: '', spans: [], depths: [], depth: 0 }
  const outline: string[] = []
  /** Of the outermost three: is it a list? */
  const kinds: boolean[] = []
  let depth = 0
  /** The depth of the list whose items are looked for; 0: none. */
  let inList = 0
  /** From where the text belongs to the outline, or the item began. */
  let from = 0
  let deepest = 0
  let next = STEP
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (code === QUOTE) {
      at = endOfString(text, at)
    } else if (code === OBJECT || code === LIST) {
      depth++
      found.depth = Math.max(found.depth, depth)
      deepest = Math.max(deepest, depth)
      if (depth > DEEPEST_LIST || inList > 0) continue
      kinds[depth - 1] = code === LIST
      if (code === OBJECT || depth === 1 || kinds.slice(0, depth - 1).includes(true)) continue
      outline.push(text.slice(from, at + 1))
      inList = depth
      from = at + 1
      deepest = depth
    } else if (code === OBJECT_END || code === LIST_END) {
      if (depth === inList && inList > 0) {
        item(at)
        inList = 0
        from = at
      }
      depth--
    } else if (code === COMMA && depth === inList && inList > 0) {
      item(at)
      outline.push(',')
      from = at + 1
    }
    if (at < next) continue
    next = at + STEP
    yield at
  }
  // what was begun and not ended stays so
  if (inList === 0) outline.push(text.slice(from))
  return { ...found, outline: outline.join('') }

  /** The item that ends here, if there is one. */
  function item(to: number): void {
    if (isBlank(text, from, to)) return
    outline.push(String(found.spans.length))
    found.spans.push([from, to])
    found.depths.push(deepest)
    deepest = inList
  }
}

/** Where a string ends that begins here; the end of the text where it does not. */
function endOfString(text: string, begins: number): number {
  let end = begins
  for (;;) {
    end = text.indexOf('"', end + 1)
    if (end < 0) return text.length
    let before = end - 1
    while (text.charCodeAt(before) === BACKSLASH) before--
    // an even number of them stand for themselves
    if ((end - before) % 2 === 1) return end
  }
}

/** Nothing but what JSON takes for space. */
function isBlank(text: string, from: number, to: number): boolean {
  for (let at = from; at < to; at++) {
    const code = text.charCodeAt(at)
    if (code !== 0x20 && code !== 0x0a && code !== 0x0d && code !== 0x09) return false
  }
  return true
}
