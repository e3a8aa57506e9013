/**
 * How much of a page is kept with a look. A listing is a few thousand characters; a page may be millions, and every change
 * of a record writes it whole. So: TEXT_KEPT characters of text (about a hundred printed pages), the rest is left out and
 * `textCutFrom` says how long it was; a structured block or an address that is longer than its bound is left out.
 */
import { jsonBlock } from '../reading/page-data/json-block.ts'

export const TEXT_KEPT = 200_000
const STRUCTURED_KEPT = 100_000
const IMAGES_KEPT = 12
const ADDRESS_KEPT = 2_000
const TITLE_KEPT = 500

/** The text as kept, and its full length where something was cut off (never inside a pair of surrogates). */
export function keptText(text: string, fullLength = text.length): { text: string; textCutFrom: number | null } {
  let kept = text.slice(0, TEXT_KEPT)
  const last = kept.charCodeAt(kept.length - 1)
  if (kept.length < text.length && last >= 0xd800 && last <= 0xdbff) kept = kept.slice(0, -1)
  return { text: kept, textCutFrom: fullLength > kept.length ? fullLength : null }
}

/** Enough of a broken block to see that it is one. */
const BROKEN_KEPT = 80

/** Raw JSON-LD blocks, parsed; of a broken one its beginning stays as text, so that it can be told; what goes past the bound is left out. */
export function keptStructured(blocks: readonly string[]): unknown[] {
  const kept: unknown[] = []
  let room = STRUCTURED_KEPT
  for (const block of blocks) {
    if (block.length > room) continue
    const value = jsonBlock(block)
    kept.push(value === undefined ? block.slice(0, BROKEN_KEPT) : value)
    room -= block.length
  }
  return kept
}

/** The first few image addresses of the web, each once. */
export function keptImages(addresses: readonly string[]): string[] {
  const kept = addresses.filter((address) => /^https?:/i.test(address) && address.length <= ADDRESS_KEPT)
  return [...new Set(kept)].slice(0, IMAGES_KEPT)
}

/** In one line, without the signs that would turn the direction of what stands around it. */
export const keptTitle = (title: string): string =>
  title
    .replace(/[\u202a-\u202e\u2066-\u2069]/g, '')
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, TITLE_KEPT)
export const keptAddress = (address: string): string => {
  const plain = withoutTracking(address)
  return plain.length <= ADDRESS_KEPT ? plain : ''
}

/** Parts of a query that tell a site where somebody came from and say nothing of the page; common practice of those who send letters and run counts. */
const TRACKING = /^(?:utm_[a-z_]+|[a-z]{1,3}clid|mc_[ce]id|igshid|_ga|_gl|yclid|wbraid|gbraid)$/i

/** An address without what follows somebody about; the rest of its query in its order. */
export function withoutTracking(address: string): string {
  const query = address.indexOf('?')
  if (query === -1) return address
  const hash = address.indexOf('#')
  if (hash !== -1 && hash < query) return address
  const end = hash === -1 ? address.length : hash
  const kept = address
    .slice(query + 1, end)
    .split('&')
    .filter((part) => !TRACKING.test(part.split('=')[0] ?? ''))
  return address.slice(0, query) + (kept.join('&') === '' ? '' : `?${kept.join('&')}`) + address.slice(end)
}

/** The host of an address, without www; '' when it has none. */
export function siteOf(address: string): string {
  try {
    const { protocol, host } = new URL(address)
    return protocol === 'http:' || protocol === 'https:' ? host.replace(/^www\./, '') : ''
  } catch {
    return ''
  }
}

/** An address as pages are told apart by: without its fragment, unless the fragment is a route of its own (`#/…`, `#!…`). */
export const pageAddressOf = (address: string): string => {
  const plain = withoutTracking(address)
  const hash = plain.indexOf('#')
  return hash === -1 || /^#[/!]/.test(plain.slice(hash)) ? plain : plain.slice(0, hash)
}
