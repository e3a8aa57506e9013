/**
 * The text of a page as a person sees it, without its navigation: text nodes in reading order, a line for a block, a list
 * item or a table row, a tab between the cells of a row. Text stays text: nothing here reads or writes HTML.
 */
export interface PageText {
  text: string
  /** At least this long in the page; longer than the text when the walk stopped at the bound. */
  fullLength: number
}

/** The walk stops here: more than is kept, so that the cut is known. */
export const WALK_BOUND = 400_000
/** A main part with less than this is taken for an empty frame around the real text. */
const ENOUGH = 200
/** In a row of boxes, what is no longer than this is a label or a figure and stays on its line. */
const SHORT = 40
/** Two boxes of a grid whose tops differ by less, px, stand in one row. */
const SAME_HEIGHT = 4

const SKIPPED = new Set(
  'BR SCRIPT STYLE NOSCRIPT TEMPLATE NAV FOOTER IFRAME OBJECT EMBED CANVAS VIDEO AUDIO SELECT INPUT TEXTAREA BUTTON SVG PROGRESS METER HEAD'.split(
    ' '
  )
)
const SKIPPED_ROLES = new Set(['navigation', 'banner', 'contentinfo', 'search', 'menu', 'menubar', 'tooltip', 'alertdialog'])
const LINES = new Set(
  (
    'ADDRESS ARTICLE ASIDE BLOCKQUOTE DETAILS DIV DL FIELDSET FIGCAPTION FIGURE FORM H1 H2 H3 H4 H5 H6 HEADER HGROUP HR LI MAIN OL P ' +
    'PRE SECTION SUMMARY TABLE TBODY TFOOT THEAD TR UL'
  ).split(' ')
)

/** The main text: of `main` or of the longest `article` where they hold enough, else of the whole body. */
export function pageText(page: Document): PageText {
  const mains = [...page.querySelectorAll('main, [role="main"]')]
  const articles = mains.length > 0 ? [] : [...page.querySelectorAll('article')]
  let best: PageText = { text: '', fullLength: 0 }
  for (const part of [...mains, ...articles]) {
    const found = textOf(part)
    if (found.text.length > best.text.length) best = found
  }
  if (best.text.length >= ENOUGH || page.body === null) return best
  const whole = textOf(page.body)
  return whole.text.length > best.text.length ? whole : best
}

/** The visible text under an element. */
export function textOf(root: Element): PageText {
  const lines = new Lines(folded(root))
  walk(root, lines, false)
  const text = lines.text()
  return { text, fullLength: lines.full ? Math.max(text.length, (root.textContent ?? '').length) : text.length }
}

function walk(node: Node, lines: Lines, keepsBreaks: boolean): void {
  if (lines.full) return
  if (node.nodeType === 3) lines.add(node.nodeValue ?? '', keepsBreaks)
  else if (isElement(node)) walkElement(node, lines)
}

function walkElement(element: Element, lines: Lines): void {
  const tag = element.tagName.toUpperCase()
  if (tag === 'BR') lines.breakLine()
  if (tag === 'IFRAME') walkFrame(element, lines)
  if (SKIPPED.has(tag) || SKIPPED_ROLES.has(element.getAttribute('role') ?? '')) return
  const style = element.ownerDocument.defaultView?.getComputedStyle(element)
  if (isHidden(element, style) && !lines.folded.has(element.id)) return
  const ends = edges(element, tag, style)
  if (ends.before === 'cell') lines.breakCell()
  else if (ends.before === 'line') lines.breakLine()
  const keepsBreaks = tag === 'PRE' || /^(pre|break-spaces)/.test(style?.whiteSpace ?? '')
  for (const child of childrenOf(element)) walk(child, lines, keepsBreaks)
  if (ends.after === 'cell') lines.breakCell()
  else if (ends.after === 'line') lines.breakLine()
}

const isHidden = (element: Element, style: CSSStyleDeclaration | undefined): boolean =>
  element.hasAttribute('hidden') ||
  element.getAttribute('aria-hidden') === 'true' ||
  style?.display === 'none' ||
  style?.visibility === 'hidden' ||
  style?.visibility === 'collapse'

/**
 * Parts that are folded away and that a press on the page opens: the panel of a tab, what a closed button controls. Measures
 * often stand there. What a menu button opens is no part of the listing.
 */
function folded(root: Element): ReadonlySet<string> {
  const openers = root.querySelectorAll('[aria-controls][aria-expanded="false"]:not([aria-haspopup]), [role="tab"][aria-controls]')
  const ids = [...openers].filter((opener) => opener.closest('nav, [role="navigation"], [role="banner"]') === null)
  return new Set(ids.flatMap((opener) => (opener.getAttribute('aria-controls') ?? '').split(/\s+/)).filter(Boolean))
}

type Break = 'cell' | 'line' | 'none'
const on = (both: Break): { before: Break; after: Break } => ({ before: both, after: both })

/** How an element stands apart from its neighbours. */
function edges(element: Element, tag: string, style: CSSStyleDeclaration | undefined): { before: Break; after: Break } {
  // a term begins a line, its figure ends it
  if (tag === 'DT') return { before: 'line', after: 'cell' }
  if (tag === 'DD') return { before: 'cell', after: 'line' }
  const display = style?.display ?? ''
  if (tag === 'TD' || tag === 'TH' || display === 'table-cell') return on('cell')
  const inRow = rowEdges(element)
  if (inRow !== null && (element.textContent ?? '').trim().length <= SHORT) return inRow
  if (LINES.has(tag) && display !== 'inline' && display !== 'contents') return on('line')
  return on(/^(block|flow-root|flex|grid|list-item|table|table-row)$/.test(display) ? 'line' : 'none')
}

/** The edges of a box in a row of boxes (a label and its figure, side by side). In a grid only what stands at one height is a row. */
function rowEdges(element: Element): { before: Break; after: Break } | null {
  const parent = element.parentElement
  const style = parent?.ownerDocument.defaultView?.getComputedStyle(parent)
  if (style === undefined) return null
  if (/flex$/.test(style.display)) return style.flexDirection.startsWith('column') ? null : on('cell')
  if (!/grid$/.test(style.display)) return null
  const edge = (other: Element | null): Break => (other !== null && areLevel(element, other) ? 'cell' : 'line')
  return { before: edge(element.previousElementSibling), after: edge(element.nextElementSibling) }
}

function areLevel(one: Element, other: Element): boolean {
  const a = one.getBoundingClientRect()
  const b = other.getBoundingClientRect()
  return a.height > 0 && b.height > 0 && Math.abs(a.top - b.top) < SAME_HEIGHT
}

/** What is shown inside: an open shadow tree in place of the children, and in a slot what is put there. */
function childrenOf(element: Element): Iterable<Node> {
  if (element.shadowRoot !== null && element.shadowRoot !== undefined) return element.shadowRoot.childNodes
  if ('assignedNodes' in element && typeof element.assignedNodes === 'function') {
    const put: Node[] = element.assignedNodes()
    if (put.length > 0) return put
  }
  return element.childNodes
}

/** A frame of the page's own origin is part of the page; another's gives null and can't be seen. */
function walkFrame(frame: Element, lines: Lines): void {
  if (!('contentDocument' in frame)) return
  const inner: unknown = frame.contentDocument
  if (typeof inner !== 'object' || inner === null || !('body' in inner) || !isElement(inner.body)) return
  walkElement(inner.body, lines)
  lines.breakLine()
}

/** By its own mark: an element of a frame is no instance of this window's Element. */
const isElement = (node: unknown): node is Element => typeof node === 'object' && node !== null && 'nodeType' in node && node.nodeType === 1

/** Lines as they grow. */
class Lines {
  readonly folded: ReadonlySet<string>
  #done: string[] = []
  #line = ''
  #length = 0
  full = false

  constructor(folded: ReadonlySet<string>) {
    this.folded = folded
  }

  add(text: string, keepsBreaks: boolean): void {
    const [first = '', ...rest] = keepsBreaks ? text.split(/\r\n|\r|\n/) : [text.replace(/\s+/g, ' ')]
    this.#append(first)
    for (const line of rest) {
      this.breakLine()
      this.#append(line)
    }
  }

  breakCell(): void {
    this.#line = this.#line.trimEnd()
    if (this.#line !== '') this.#line += '\t'
  }

  breakLine(): void {
    const line = this.#line.trim()
    if (line !== '') this.#done.push(line)
    this.#line = ''
  }

  text(): string {
    this.breakLine()
    return this.#done.join('\n')
  }

  #append(text: string): void {
    const piece = this.#line === '' || /\s$/.test(this.#line) ? text.trimStart() : text
    this.#line += piece
    this.#length += piece.length
    if (this.#length > WALK_BOUND) this.full = true
  }
}
