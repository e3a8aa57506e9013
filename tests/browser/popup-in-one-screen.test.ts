/** The popup in one screen: twelve listings and their verdicts, at three widths; and Keep and Not for me by keyboard alone. */
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { inRoot } from '../../entrypoints/companion/places.mjs'
import { type ListingPages, listingPage, serveListings } from './rig/listing-pages.ts'
import { Popup } from './rig/popup.ts'
import { Rig, until } from './rig/rig.ts'
import { introduce, Workroom } from './rig/workroom.ts'

const SCREENS = inRoot('test-results/screens')
mkdirSync(SCREENS, { recursive: true })

interface Listing {
  title: string
  text: string
  /** What the trade leaves no doubt of, for Wren (waistband 75, hip 100, chest 96, shoulders 43 cm); a question mark behind it is no other verdict. */
  verdict?: string
}

/** Invented; short and long, whole and full of gaps, kind known and not. */
const LISTINGS: Record<string, Listing> = {
  'fits': {
    title: 'Grey flannel trousers',
    text: 'Unlined. Laid flat: waist 38.5 cm, hip 53 cm, thigh 31 cm, inside leg 80 cm. £18.'
  },
  'waist-in': {
    title: 'Brown wool trousers with turn-ups',
    text: 'Waist 16 in flat, hip 21 in flat, thigh 12 1/2 in flat, inside leg 31 in. Side seams have 3 cm of spare cloth. £24.',
    verdict: 'Alters to fit'
  },
  'only-waist': { title: 'Wool trousers', text: 'Waist 41 cm flat. Measured by me. Please ask for more. £9.' },
  'no-figures': {
    title: 'Wool skirt, plum',
    text: 'A lovely skirt in good order, size 14 on the label. £12.',
    verdict: 'Too little stated'
  },
  'too-small': {
    title: 'Cotton shirt, sky blue',
    text: 'Chest 44 cm flat, shoulders 38 cm, sleeve 56 cm, length 68 cm. £8.',
    verdict: 'Leave it'
  },
  'never': {
    title: 'High visibility jacket, EN ISO 20471 class 3',
    text: 'Protective workwear. Chest 62 cm flat, shoulders 50 cm, sleeve 66 cm, length 78 cm. £15.',
    verdict: 'Leave it'
  },
  'jacket': {
    title: 'Tailored tweed jacket, fully lined, four sham buttons at each cuff, in a herringbone of moss, rust and oat wool',
    text: 'Pit to pit 53 cm, shoulder to shoulder 45 cm, sleeve 66 cm, length 74 cm, waist 50 cm flat. 100% wool. £45.'
  },
  'two-garments': {
    title: 'Two-piece suit in charcoal wool',
    text: 'Jacket: chest 53 cm flat, shoulders 45 cm, sleeve 64 cm. Trousers: waist 40 cm flat, hip 53 cm flat, inside leg 79 cm. £60.'
  },
  'two-sizes': {
    title: 'Linen trousers in two sizes',
    text: 'Size S: waist 78 cm, hips 96 cm\nSize M: waist 84 cm, hips 102 cm\nInside leg of both 78 cm. £20.'
  },
  'many-figures': {
    title: 'Straight jeans',
    text:
      'All laid flat: waist 39 cm, hip 53 cm, thigh 31 cm, knee 22 cm, calf 20 cm, bottoms 19 cm. Inside leg 86 cm, outside leg 110 cm, ' +
      'front rise 27 cm, back rise 36 cm. 98% cotton, 2% elastane. A small hole by the back pocket, some moth at the hem. £14.'
  },
  'other-currency': {
    title: 'Long wool coat with a belt, raglan sleeves and deep pockets',
    text: 'Chest 58 cm flat, sleeve 62 cm, length 115 cm, hem 70 cm flat. Slight wear at the cuffs. €85.00 plus postage.'
  },
  'kind-unknown': { title: 'Lovely thing from a drawer', text: 'Worn twice. Width 40 cm, height 60 cm. £5.' }
}
const names = Object.keys(LISTINGS)

let rig: Rig
let pages: ListingPages
beforeAll(async () => {
  pages = await serveListings((name) => {
    const listing = LISTINGS[name]
    return listing === undefined ? undefined : listingPage(listing)
  })
  rig = await Rig.start()
  await introduce(rig)
})
afterAll(async () => {
  await rig?.close()
  await pages?.close()
})

const TALLEST = 600
const BUSY = /working it out|Reading the page|wird berechnet|wird gelesen/i
/** The answer has settled: nothing is still being worked out, and nothing has moved for a moment. */
async function settled(popup: Page): Promise<void> {
  let last = ''
  await until('the popup to settle', async () => {
    const now = (await popup.locator('body').textContent()) ?? ''
    const stays = now === last && !BUSY.test(now)
    last = now
    await popup.waitForTimeout(120)
    return stays
  })
}

/** The popup as a browser opens it at this width: it makes room for its rows once, as it opens. */
async function openAt(popup: Page, width: number): Promise<void> {
  await popup.addInitScript((px) => addEventListener('DOMContentLoaded', () => document.body.style.setProperty('width', `${px}px`)), width)
  await popup.reload()
  await settled(popup)
  expect(await popup.evaluate(() => document.querySelector('.sheet')?.clientWidth)).toBe(width)
}

/** How tall the document is, how much wider than its window, and what is cut off by the sheet or by its own box. */
const laidOut = (popup: Page) =>
  popup.evaluate(() => {
    const sheet = document.querySelector('.sheet')
    if (sheet === null) throw new Error('no sheet')
    const { bottom, right } = sheet.getBoundingClientRect()
    const shown = [...sheet.querySelectorAll('*')].filter((one) => one.closest('svg, .sr, option, datalist') === null)
    const beyond = shown.filter((one) => {
      const box = one.getBoundingClientRect()
      return box.height > 0 && box.width > 0 && (box.bottom > bottom + 1 || box.right > right + 1)
    })
    const clipped = shown.filter((one) => {
      const { overflowX, overflowY } = getComputedStyle(one)
      return (
        (overflowY !== 'visible' && one.scrollHeight > one.clientHeight + 1) ||
        (overflowX === 'hidden' && one.scrollWidth > one.clientWidth + 1)
      )
    })
    const named = (some: Element[]) => some.slice(0, 3).map((one) => `${one.tagName}.${one.className}: ${one.textContent?.slice(0, 40)}`)
    const { scrollHeight, scrollWidth, clientWidth } = document.documentElement
    return { height: scrollHeight, tooWide: scrollWidth - clientWidth, beyond: named(beyond), clipped: named(clipped) }
  })

const verdicts = new Set<string>()
/** Those with most to say are laid out at a width between, too. */
const MOST_TO_SAY = ['many-figures', 'two-garments', 'jacket', 'only-waist', 'other-currency']
test.for(names)('%s: at most 600 px tall at 320 and 380 px, and nothing is cut off', async (name) => {
  const tab = await rig.tab(pages.address(name))
  const popup = await Popup.over(rig, tab)
  await settled(popup.page)
  const verdict = ((await popup.verdict()) ?? '').trim()
  verdicts.add(verdict.replace('?', ''))
  const wanted = LISTINGS[name]?.verdict
  if (wanted !== undefined) expect(verdict.replace('?', '')).toBe(wanted)
  for (const width of MOST_TO_SAY.includes(name) ? [320, 360, 380] : [320, 380]) {
    await openAt(popup.page, width)
    const { height, ...cut } = await laidOut(popup.page)
    expect(cut, `${name} at ${width}`).toEqual({ tooWide: 0, beyond: [], clipped: [] })
    if (width === 320) await popup.page.screenshot({ path: join(SCREENS, `popup-${name}-${width}.png`), fullPage: true })
    expect.soft(height, `${name} at ${width}`).toBeLessThanOrEqual(TALLEST)
  }
  const { violations } = await new AxeBuilder({ page: popup.page }).setLegacyMode(true).analyze()
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`)).toEqual([])
  await tab.close()
})

test('the listings came to several verdicts, so that each of them was laid out', () => {
  expect([...verdicts]).toEqual(expect.arrayContaining(['Alters to fit', 'Leave it', 'Too little stated']))
  expect(verdicts.size).toBeGreaterThanOrEqual(4)
})

test('Keep, Undo, Not for me, Undo by keyboard: each says what was done, and the keyboard goes on where it was', async () => {
  const tab = await rig.tab(pages.address('waist-in'))
  const { page: popup } = await Popup.over(rig, tab)
  await settled(popup)
  const focused = () => popup.evaluate(() => document.activeElement?.textContent?.trim() ?? '')
  const tabTo = async (name: string) => {
    for (let n = 0; n < 40; n++) {
      if ((await focused()) === name) return
      await popup.keyboard.press('Tab')
    }
    throw new Error(`no Tab leads to ${name}`)
  }
  const faults = async () => (await new AxeBuilder({ page: popup }).setLegacyMode(true).analyze()).violations.map(({ id }) => id)
  const kept = async () => (await popup.getByRole('button', { name: 'Wishlist', exact: true }).count()) > 0
  const says = (text: string) => popup.getByRole('status').getByText(text, { exact: true }).waitFor()
  for (const [name, said, key] of [
    ['Keep for later', 'Kept on your wishlist.', 'Enter'],
    ['Not for me', 'Noted as not for you.', 'Space']
  ] as const) {
    await tabTo(name)
    await popup.keyboard.press(key)
    await says(said)
    await until(`${name} to be kept`, kept)
    expect(await focused()).toBe('Undo')
    expect(await faults()).toEqual([])
    expect((await laidOut(popup)).height).toBeLessThanOrEqual(TALLEST)
    await popup.keyboard.press(key)
    await says('Undone.')
    await until('it not to be kept', async () => !(await kept()))
    await until(`the keyboard to stand at ${name}, it stands at “${await focused()}”`, async () => (await focused()) === name)
    expect(await popup.getByRole('button', { name: /^(Keep for later|Not for me)$/ }).count()).toBe(2)
    expect(await faults()).toEqual([])
  }
  await tab.close()
})

test('in German, whose words are longer: at most 600 px tall, too, and nothing is cut off', async () => {
  const { page } = await Workroom.open(rig, 'settings')
  await page.getByRole('combobox', { name: 'Language' }).selectOption('de')
  await until('the page to speak German', async () => (await page.evaluate(() => document.documentElement.lang)) === 'de-DE')
  await page.close()
  // the narrowest is the tallest
  for (const name of ['many-figures', 'jacket', 'other-currency']) {
    const tab = await rig.tab(pages.address(name))
    const popup = await Popup.over(rig, tab)
    await openAt(popup.page, 320)
    const { height, ...cut } = await laidOut(popup.page)
    expect(cut, name).toEqual({ tooWide: 0, beyond: [], clipped: [] })
    await popup.page.screenshot({ path: join(SCREENS, `popup-de-${name}-320.png`), fullPage: true })
    expect.soft(height, name).toBeLessThanOrEqual(TALLEST)
    await tab.close()
  }
})
