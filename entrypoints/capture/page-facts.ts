/** What a page says of itself beside its text: title, address, structured blocks, price fields, image addresses, strange frames. */
import type { PageFound } from './page-found.ts'

const BLOCK_BOUND = 100_000
const BLOCKS_BOUND = 20
const IMAGES_BOUND = 12
/** Smaller pictures are icons and thumbnails. */
const IMAGE_LEAST = 200

/** The longest heading that the window's title contains (so without the shop's name), else the window's title. */
export function pageTitle(page: Document): string {
  const headings = [...page.querySelectorAll('h1')].map((heading) => squeezed(heading.textContent ?? ''))
  const named = headings
    .filter((heading) => heading.length > 3 && squeezed(page.title).includes(heading))
    .sort((a, b) => b.length - a.length)
  const main = squeezed(page.querySelector('main h1, [role="main"] h1')?.textContent ?? '')
  return named[0] ?? (squeezed(page.title) || main || headings[0] || '')
}

/** The address the page calls its own, if it is on the same host; else the one in the bar, without its fragment. */
export function ownAddress(page: Document, bar: string): string {
  const here = parsed(bar)
  const own = parsed(page.querySelector('link[rel="canonical"]')?.getAttribute('href') ?? '', bar)
  const bare = (host: string): string => host.replace(/^(www|m)\./, '')
  if (own !== null && here !== null && /^https?:$/.test(own.protocol) && bare(own.host) === bare(here.host)) return own.href
  return bar.replace(/#(?![/!]).*$/, '')
}

/** JSON-LD blocks as they stand; whoever parses them leaves broken ones out. */
export const structuredBlocks = (page: Document): string[] =>
  [...page.querySelectorAll('script[type="application/ld+json" i]')]
    .map((block) => (block.textContent ?? '').trim())
    .filter((text) => text !== '' && text.length <= BLOCK_BOUND)
    .slice(0, BLOCKS_BOUND)

/** A price from the page's own price fields: meta properties first, then marked-up items; null when none is plain. */
export function pagePrice(page: Document): PageFound['price'] {
  const meta = (name: string): string => page.querySelector(`meta[property="${name}"], meta[name="${name}"]`)?.getAttribute('content') ?? ''
  for (const start of ['product:price', 'og:price']) {
    const amount = moneyFrom(meta(`${start}:amount`))
    if (amount !== null) return { amount, currency: currencyFrom(meta(`${start}:currency`)) }
  }
  const item = page.querySelector('[itemprop="price"]')
  if (item === null) return null
  const amount = moneyFrom(item.getAttribute('content') ?? item.textContent ?? '')
  if (amount === null) return null
  const currency = (item.closest('[itemscope]') ?? page).querySelector('[itemprop="priceCurrency"]')
  return { amount, currency: currencyFrom(currency?.getAttribute('content') ?? currency?.textContent ?? '') }
}

/** 29.90, 29,90, 1,299.00, 1 299,00 or 1.299,00; null for anything else. */
export function moneyFrom(text: string): number | null {
  const figure = text.replace(/[^\d.,]/g, '')
  if (!/^\d/.test(figure) || figure.length > 15) return null
  const cents = /[.,](\d{1,2})$/.exec(figure)
  const whole = (cents === null ? figure : figure.slice(0, cents.index)).replace(/[.,]/g, '')
  const amount = Number(`${whole}.${cents?.[1] ?? '0'}`)
  return Number.isFinite(amount) ? amount : null
}

const currencyFrom = (text: string): string => /^[A-Z]{3}$/.exec(text.trim().toUpperCase())?.[0] ?? ''

/** Addresses of the main pictures; nothing is fetched. */
export function pageImages(page: Document): string[] {
  const found: string[] = []
  const shown = page.querySelector('meta[property="og:image"]')?.getAttribute('content')
  if (shown) found.push(parsed(shown, page.baseURI)?.href ?? '')
  for (const image of (page.querySelector('main, [role="main"]') ?? page).querySelectorAll('img')) {
    const wide = Math.max(image.naturalWidth || 0, image.width || 0)
    if (wide >= IMAGE_LEAST) found.push(image.currentSrc || image.src)
  }
  return [...new Set(found.filter((address) => /^https?:/.test(address)))].slice(0, IMAGES_BOUND)
}

/** Frames that belong to another origin: their text stays unread. */
export function strangeFrames(page: Document): PageFound['frames'] {
  const view = page.defaultView
  const room = (view?.innerWidth ?? 0) * (view?.innerHeight ?? 0)
  let count = 0
  let largestShare = 0
  for (const frame of page.querySelectorAll('iframe')) {
    if (frame.contentDocument !== null) continue
    const { width, height } = frame.getBoundingClientRect()
    if (width * height === 0) continue
    count++
    if (room > 0) largestShare = Math.max(largestShare, Math.min(1, (width * height) / room))
  }
  return { count, largestShare }
}

const squeezed = (text: string): string => text.replace(/\s+/g, ' ').trim()

function parsed(address: string, base?: string): URL | null {
  if (address === '') return null
  try {
    return new URL(address, base)
  } catch {
    return null
  }
}
