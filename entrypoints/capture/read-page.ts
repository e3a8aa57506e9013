import { markedItems, metaBlock } from './marked-items.ts'
import { ownAddress, pageImages, pagePrice, pageTitle, strangeFrames, structuredBlocks } from './page-facts.ts'
import type { PageFound } from './page-found.ts'
import { pageText, WALK_BOUND } from './page-text.ts'

/** Everything that a click reads from a page, JSON-safe. */
export function readPage(page: Document): PageFound {
  const bar = page.location?.href ?? ''
  const { text, fullLength } = pageText(page)
  return {
    contentType: page.contentType ?? '',
    title: pageTitle(page),
    pageAddress: bar,
    address: ownAddress(page, bar),
    selection: selected(page).slice(0, WALK_BOUND),
    text,
    fullLength,
    structured: [...structuredBlocks(page), ...markedItems(page), ...metaBlock(page)],
    price: pagePrice(page),
    images: pageImages(page),
    frames: strangeFrames(page)
  }
}

/** The selected text with its line breaks, of this page or of a frame of its own origin. */
function selected(page: Document): string {
  const own = page.getSelection()?.toString().trim() ?? ''
  if (own !== '') return own
  for (const frame of page.querySelectorAll('iframe')) {
    const inner = frame.contentDocument?.getSelection()?.toString().trim() ?? ''
    if (inner !== '') return inner
  }
  return ''
}
