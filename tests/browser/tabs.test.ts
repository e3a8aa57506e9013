/** Never one garment's answer beside another unmarked: two listings in two tabs, switching, navigating, and a new day. */
import { rmSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Panel } from './rig/panel.ts'
import { Popup } from './rig/popup.ts'
import { freshFolder, Rig, until } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'
import { introduce } from './rig/workroom.ts'

const TROUSERS = 'Charcoal wool trousers, pleated'
const JEANS = 'Indigo jeans, straight leg'
const profile = freshFolder('profile')
let shop: Shop
let rig: Rig
let panel: Panel
let first: Page
let second: Page

beforeAll(async () => {
  shop = await openShop()
  rig = await Rig.start({ profile })
  await introduce(rig)
  first = await rig.tab(shop.item('charcoal-wool-trousers'))
  second = await rig.tab(shop.item('indigo-jeans'))
})
afterAll(async () => {
  await rig?.close()
  await shop?.close()
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 })
})

/** The panel comes to name this garment, marked or not; whatever it shows on the way must be marked or be of the page in front. */
async function comesTo(title: string, marked: boolean, inFront: string): Promise<void> {
  await until(`the panel to be about ${title}${marked ? ', marked' : ''}`, async () => {
    const now = await panel.stands()
    return now.title === title && now.marked === marked
  })
  // and stays so: nothing late may take the mark away
  await panel.page.waitForTimeout(700)
  const { title: shown, marked: isMarked } = await panel.stands()
  expect(isMarked || shown === inFront, `${shown} beside ${inFront}, ${isMarked ? 'marked' : 'unmarked'}`).toBe(true)
  expect([shown, isMarked]).toEqual([title, marked])
}

test('the answer is of the page in front, or says that it is not, through switching, navigating and reading again', async () => {
  await first.bringToFront()
  panel = await (await Popup.over(rig, first)).openBeside()
  await comesTo(TROUSERS, false, TROUSERS)

  // a tab that was never read comes forward
  await second.bringToFront()
  await comesTo(TROUSERS, true, JEANS)
  expect(await panel.mark()).toContain(`This answer is about “${TROUSERS}”`)
  expect(await panel.page.getByText('Click the toolbar button to check this one.').count()).toBeGreaterThan(0)

  // it is read
  await Popup.over(rig, second)
  await comesTo(JEANS, false, JEANS)

  // each answer comes back with its tab
  await first.bringToFront()
  await comesTo(TROUSERS, false, TROUSERS)
  await second.bringToFront()
  await comesTo(JEANS, false, JEANS)

  // the page in front becomes another
  await second.goto(shop.item('moss-tweed-skirt'))
  await comesTo(JEANS, true, 'Moss green tweed skirt, A-line')
  await Popup.over(rig, second)
  await comesTo('Moss green tweed skirt, A-line', false, 'Moss green tweed skirt, A-line')

  // back in its history, to a page that was read before
  await second.goBack()
  await until('the skirt not to stand unmarked beside the jeans', async () => {
    const { title, marked } = await panel.stands()
    return marked || title === JEANS
  })

  // an address that changes without a new page
  await first.bringToFront()
  await comesTo(TROUSERS, false, TROUSERS)
  await first.evaluate(() => history.pushState(null, '', '/item/rust-cord-trousers.html'))
  await comesTo(TROUSERS, true, 'another page by its address')
})

test('the tab of an answer is closed: the answer is marked, not given to its neighbour', async () => {
  const third = await rig.tab(shop.item('oat-linen-shirt'))
  await Popup.over(rig, third)
  await comesTo('Oat linen shirt', false, 'Oat linen shirt')
  await third.close()
  const { title, marked } = await until('the panel to let go of the closed tab', async () => {
    const now = await panel.stands()
    return now.marked || now.title !== 'Oat linen shirt' ? now : undefined
  })
  expect(marked || title !== 'Oat linen shirt').toBe(true)
})

test('after a restart every answer is marked until it is read again', async () => {
  await rig.close()
  rig = await Rig.start({ profile })
  const page = await rig.tab(shop.item('charcoal-wool-trousers'))
  // the panel cannot be opened without the button, which reads; so what it would show is looked at in a tab of its own
  const panelPage = await rig.tab(rig.address('sidepanel.html'))
  await panelPage.getByRole('heading', { level: 1 }).waitFor()
  expect(await panelPage.getByText(/^This answer is about /).count()).toBeGreaterThan(0)
  await panelPage.close()

  panel = await (await Popup.over(rig, page)).openBeside()
  await comesTo(TROUSERS, false, TROUSERS)
})
