/** A tailor's price: the popup leads straight to its field in the panel, the answer follows it, and one press takes it back. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { LISTINGS, rowsOf, somebody, writeRows } from './pictures/screen-seeds.ts'
import { type ListingPages, listingPage, serveListings } from './rig/listing-pages.ts'
import { Popup } from './rig/popup.ts'
import { Rig, until } from './rig/rig.ts'

const JACKET = LISTINGS.tailor?.en ?? { title: '', text: '' }
let rig: Rig
let pages: ListingPages
beforeAll(async () => {
  pages = await serveListings(() => listingPage(JACKET))
  rig = await Rig.start()
  const room = await rig.tab(rig.address('workroom.html#settings'))
  await room.getByRole('heading', { level: 1 }).waitFor()
  await writeRows(room, somebody('en'))
  await room.close()
})
afterAll(async () => {
  await rig?.close()
  await pages?.close()
})

test('entered from the popup, counted, and taken back', async () => {
  const popup = await Popup.over(rig, await rig.tab(pages.address('jacket')))
  await popup.page.getByText('+ the tailor').waitFor()
  await popup.leaveBy(/^Enter it the tailor’s price$/)
  const panel = await rig.surface('sidepanel')
  const fields = panel.locator('.tailor-part input')
  await until('the keyboard to stand at the field', () => fields.first().evaluate((one) => one === document.activeElement))
  const count = await fields.count()
  expect(count).toBeGreaterThan(0)
  for (let n = 0; n < count; n++) {
    await fields.nth(n).fill('10')
    await fields.nth(n).press('Enter')
    await panel
      .getByRole('status')
      .getByText(/^Price saved: £10\.00 \(.+\)\.$/)
      .waitFor()
    // what is saved comes back to the page before the next is typed
    await until('the price to be kept', async () => {
      const [person] = await rowsOf(panel, 'people')
      const means = person?.means as { tailorPrices?: object } | undefined
      return Object.keys(means?.tailorPrices ?? {}).length === n + 1
    })
  }
  await panel
    .locator('.facts')
    .getByText(`£${45 + 10 * count}.00`)
    .waitFor()
  await panel.getByRole('button', { name: 'Undo', exact: true }).click()
  await panel.getByRole('status').getByText('Undone.').waitFor()
  await panel.getByText('+ the tailor').waitFor()
  expect(await fields.last().evaluate((one) => one === document.activeElement)).toBe(true)
}, 60_000)
