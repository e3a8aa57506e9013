/** What a machine can tell of a picture: nothing runs over, nothing is cut off, no other language, no figure or name that went missing. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'

/** Words that stand in almost every English sentence and in no German one. */
const ENGLISH =
  /\b(?:the|of|with|your|you|is|are|not|this|that|it|and|from|to|be|at|for|by|too|what|which|none|no|has|have|or|if|about|how|as)\b/i
/** A value that is missing, or a code that was never made a sentence. */
const MISSING = /\b(?:undefined|NaN|null|\[object \w+\]|Infinity)\b|\{\w+(?:\|[^}]*)?\}/
const RAW_CODE = /^[a-z]+(?:[.-][a-z][a-z-]*)+$/

/** Everything a person reads or hears on the page, a piece a line. */
const pieces = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const all: string[] = []
    const walk = (node: Node) => {
      if (node instanceof Element) {
        if (node.matches('script, style, q, .quoted')) return
        for (const name of ['aria-label', 'title', 'placeholder', 'alt']) {
          const value = node.getAttribute(name)
          if (value !== null) all.push(value)
        }
      }
      if (node.nodeType === Node.TEXT_NODE && node.textContent !== null) all.push(node.textContent)
      for (const child of node.childNodes) walk(child)
    }
    walk(document.body)
    return all.map((piece) => piece.trim()).filter((piece) => piece !== '')
  })

export async function wordFaults(page: Page, language: string): Promise<string[]> {
  const all = await pieces(page)
  return [
    ...all.filter((piece) => MISSING.test(piece) || RAW_CODE.test(piece)).map((piece) => `missing or raw: ${piece}`),
    ...(language === 'en' ? [] : all.filter((piece) => ENGLISH.test(piece)).map((piece) => `English: ${piece}`))
  ]
}

/** What is pressed is at least so large either way (WCAG 2.2, 2.5.8), but for a rounding; a link within a sentence may be smaller. */
const LEAST_TARGET_PX = 23.5
/** How far the page is wider than its window, and what is cut off by its own box. */
export const layoutFaults = (page: Page): Promise<string[]> =>
  page.evaluate((LEAST) => {
    const faults: string[] = []
    const { scrollWidth, clientWidth } = document.documentElement
    const named = (one: Element): string =>
      `${one.tagName.toLowerCase()}.${one.getAttribute('class') ?? ''} “${one.textContent?.trim().slice(0, 40)}”`
    const shown = [...document.body.querySelectorAll('*')].filter((one) => one.closest('svg, .sr, option, datalist') === null)
    const scrolls = (one: Element): boolean =>
      one.parentElement !== null && (['auto', 'scroll'].includes(getComputedStyle(one).overflowX) || scrolls(one.parentElement))
    if (scrollWidth > clientWidth) {
      // a drawing's letters may be what reaches farthest
      const right = (one: Element): number => one.getBoundingClientRect().right
      const all = [...document.body.querySelectorAll('*')].filter((one) => !scrolls(one))
      const farthest = all.reduce((most, one) => (right(one) >= right(most) ? one : most), document.body as Element)
      faults.push(`${scrollWidth - clientWidth} px wider than the window: ${named(farthest)}`)
    }
    for (const one of shown) {
      const box = one.getBoundingClientRect()
      // of no size, or only for a screen reader
      if (box.width <= 1 || box.height <= 1) continue
      const { overflowX, overflowY } = getComputedStyle(one)
      if (box.right > clientWidth + 1 && !scrolls(one)) faults.push(`beyond the edge: ${named(one)}`)
      // heads that only a screen reader is told, and sentences that end in an ellipsis
      if (one.matches('textarea, select, thead') || getComputedStyle(one).webkitLineClamp !== 'none') continue
      if (overflowY === 'hidden' && one.scrollHeight > one.clientHeight + 1) faults.push(`cut off below: ${named(one)}`)
      if (overflowX === 'hidden' && one.scrollWidth > one.clientWidth + 1) faults.push(`cut off aside: ${named(one)}`)
    }
    for (const one of document.querySelectorAll('button, a, select, input, textarea, summary')) {
      const box = (one.closest('label') ?? one).getBoundingClientRect()
      const isInText = one.tagName === 'A' && (one.parentElement?.tagName === 'P' || one.parentElement?.tagName === 'LI')
      const isShown = box.width > 0 && box.height > 0 && one.closest('.sr, .wr-skip, thead') === null
      if (isShown && !isInText && Math.min(box.width, box.height) < LEAST) faults.push(`too small to press: ${named(one)}`)
    }
    return faults.slice(0, 6)
  }, LEAST_TARGET_PX)

/** What axe finds; a small window needs the mode that opens no other tab. */
export async function axeFaults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze()
  return violations.map(({ id, nodes }) => `axe ${id}: ${nodes[0]?.html.slice(0, 140)}`)
}
