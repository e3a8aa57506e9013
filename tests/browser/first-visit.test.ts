/**
 * The first visit, from an empty extension on a listing's page to a first verdict. A step is one thing a person does: one button or box pressed,
 * or one field filled. At most 8; counted here.
 */
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { Popup } from './rig/popup.ts'
import { Rig } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'

let shop: Shop
beforeAll(async () => {
  shop = await openShop()
})
afterAll(() => shop.close())

const MOST_STEPS = 8
const FIGURES = { 'Waistband': '75', 'Hip': '100', 'Inside leg': '80' }

async function workroomFrom(rig: Rig, listing: Page): Promise<Page> {
  const popup = await Popup.over(rig, listing)
  const opening = rig.context.waitForEvent('page')
  await popup.leaveBy('Enter body measures')
  const workroom = await opening
  await workroom.getByRole('heading', { name: 'What do you shop for?' }).waitFor()
  return workroom
}

test('to a first verdict in at most eight steps, by keyboard alone', async () => {
  const rig = await Rig.start()
  try {
    const listing = await rig.tab(shop.item('charcoal-wool-trousers'))
    const workroom = await workroomFrom(rig, listing)
    let steps = 2 // the toolbar button, and "Enter body measures"
    const tabTo = async (name: string | RegExp, role: 'checkbox' | 'button' | 'textbox') => {
      for (let i = 0; i < 40; i++) {
        await workroom.keyboard.press('Tab')
        const here = await workroom
          .getByRole(role, { name, ...(typeof name === 'string' ? { exact: true } : {}) })
          .evaluate((one) => one === document.activeElement)
        if (here) return
      }
      throw new Error(`no Tab leads to ${name}`)
    }
    await tabTo('Trousers and jeans', 'checkbox')
    await workroom.keyboard.press('Space')
    steps++
    await tabTo('Next', 'button')
    await workroom.keyboard.press('Enter')
    steps++
    await workroom.getByRole('heading', { name: 'Your measures' }).waitFor()
    for (const [name, typed] of Object.entries(FIGURES).slice(0, 2)) {
      await tabTo(name, 'textbox')
      await workroom.keyboard.type(typed)
      steps++
    }
    await tabTo('Save and go on', 'button')
    await workroom.keyboard.press('Enter')
    steps++
    await workroom.getByRole('heading', { name: 'Wishlist' }).waitFor()
    await listing.bringToFront()
    const popup = await Popup.over(rig, listing)
    steps++
    expect(['Alters to fit', 'Comes close', 'Wears as it is', 'Leave it']).toContain((await popup.verdict())?.trim())
    expect(steps).toBeLessThanOrEqual(MOST_STEPS)
  } finally {
    await rig.close()
  }
}, 120_000)

test('by touch at 360 px: nothing runs over, nothing typed is lost, a bad figure says what to do', async () => {
  const rig = await Rig.start()
  try {
    const workroom = await workroomFrom(rig, await rig.tab(shop.item('charcoal-wool-trousers')))
    await workroom.setViewportSize({ width: 360, height: 740 })
    const over = () => workroom.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
    const faults = async () => (await new AxeBuilder({ page: workroom }).analyze()).violations.map(({ id }) => id)
    expect(await over()).toBe(0)
    expect(await faults()).toEqual([])
    await workroom.getByText('Next').click()
    await workroom.getByText('Choose at least one').waitFor()
    await workroom.getByText('Trousers and jeans').click()
    await workroom.getByText('Next').click()
    await workroom.getByRole('textbox', { name: 'Hip', exact: true }).fill('1/0')
    await workroom.getByRole('textbox', { name: 'Waistband', exact: true }).fill('75')
    await workroom.reload()
    expect(await workroom.getByRole('textbox', { name: 'Hip', exact: true }).inputValue()).toBe('1/0')
    expect(await over()).toBe(0)
    expect(await faults()).toEqual([])
    await workroom.getByText('Save and go on').click()
    expect(await workroom.locator('.wrong').first().textContent()).toMatch(/\w/)
    expect(await workroom.getByRole('heading', { name: 'Your measures' }).count()).toBe(1)
    await workroom.getByRole('textbox', { name: 'Hip', exact: true }).fill('39 1/2 in')
    await workroom.getByText('Save and go on').click()
    await workroom.getByRole('heading', { name: 'Wishlist' }).waitFor()
  } finally {
    await rig.close()
  }
}, 120_000)

test('a garment that is liked instead, and a sample that goes again in one press', async () => {
  const rig = await Rig.start()
  try {
    const listing = await rig.tab(shop.item('charcoal-wool-trousers'))
    const workroom = await workroomFrom(rig, listing)
    await workroom.getByRole('button', { name: 'Try it with a sample' }).click()
    await workroom.getByRole('button', { name: 'Remove the sample' }).waitFor()
    await workroom.goto(rig.address('workroom.html#wishlist'))
    await workroom.getByText('Sample: bottle green wool trousers').waitFor()
    // each of the three is reckoned, to a verdict of its own
    for (const [name, verdict] of Object.entries({
      'bottle green wool trousers': 'Alters to fit',
      'cream cotton shirt': 'Comes close',
      'brown checked jacket': 'Leave it'
    })) {
      await workroom.getByRole('row').filter({ hasText: name }).getByText(verdict, { exact: true }).waitFor()
    }
    await workroom.getByRole('button', { name: 'Remove the sample' }).click()
    await workroom.getByRole('heading', { name: 'What do you shop for?' }).waitFor()
    await workroom.getByRole('button', { name: 'Measure a garment you like instead' }).click()
    for (const [name, typed] of Object.entries({ Waist: '39', Hip: '53', Thigh: '32', 'Inside leg': '77' }))
      await workroom.getByRole('textbox', { name, exact: true }).fill(typed)
    await workroom.getByRole('button', { name: 'Save and go on' }).click()
    await workroom.getByRole('heading', { name: 'Wishlist' }).waitFor()
    await listing.bringToFront()
    const popup = await Popup.over(rig, listing)
    expect((await popup.verdict())?.trim()).not.toBe('Whom is it for?')
  } finally {
    await rig.close()
  }
}, 120_000)
