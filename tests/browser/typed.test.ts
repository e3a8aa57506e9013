/** What is typed wrong gets a clear word beside its field; what is typed at all is there again when the panel is opened again. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Panel } from './rig/panel.ts'
import { Popup } from './rig/popup.ts'
import { Rig } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'
import { introduce } from './rig/workroom.ts'

let shop: Shop
let rig: Rig
let panel: Panel
beforeAll(async () => {
  shop = await openShop()
  rig = await Rig.start()
  await introduce(rig)
  panel = await (await Popup.over(rig, await rig.tab(shop.item('charcoal-wool-trousers')))).openBeside()
  await panel.settled()
})
afterAll(async () => {
  await rig?.close()
  await shop?.close()
})

test.for([
  ['1/0', 'A fraction can’t be divided by nothing.'],
  ['3..5', 'This is no length.'],
  ['-4', 'A length can’t be below nothing.'],
  ['0', 'A length of nothing can’t be judged.'],
  ['9 m', 'This is no length.'],
  ['900 cm', 'No garment is longer than 5 metres.'],
  ['<b>16</b>', 'This is no length.']
] as const)('"%s" in a field is answered beside it, and the answer stays as it was', async ([typed, sentence]) => {
  const before = await panel.answer()
  const field = await panel.field('waist')
  await field.fill(typed)
  const said = panel.page.getByRole('alert').filter({ hasText: sentence })
  await said.waitFor()
  expect(await field.getAttribute('aria-invalid')).toBe('true')
  expect(await field.getAttribute('aria-describedby')).toBe(await said.getAttribute('id'))
  await panel.page.waitForTimeout(600)
  expect(await panel.answer()).toBe(before)
  expect(await field.inputValue()).toBe(typed)
})

test('an empty field is not yet wrong, and changes nothing', async () => {
  const before = await panel.answer()
  await (await panel.field('waist')).fill('')
  await panel.page.waitForTimeout(600)
  expect(await panel.page.getByRole('alert').count()).toBe(0)
  expect(await panel.answer()).toBe(before)
})

test('a figure turned from flat to around, and to the other unit, changes the answer and can be taken back', async () => {
  const before = await panel.answer()
  const field = await panel.field('waist')
  await field.fill('16')
  const form = panel.page.getByRole('group', { name: 'Correct the waist' })
  await form.getByRole('radio', { name: 'All around' }).click()
  const around = await panel.changedFrom(before)
  expect(around).not.toBe(before)
  await form.getByRole('radio', { name: 'Flat, one side' }).click()
  expect(await panel.changedFrom(around)).toBe(before)
  await form.getByRole('radio', { name: 'cm' }).click()
  await panel.changedFrom(before)
  await panel.undo()
  await panel.changedFrom(await panel.answer().then((now) => (now === before ? null : now)))
  expect(await panel.answer()).toBe(before)
})

test('what was typed and not yet taken, and the notes, are there when the panel comes back', async () => {
  await (await panel.field('hip')).fill('1/0')
  await (await panel.notes()).fill('Half a thought')
  await panel.page.waitForTimeout(800)
  await panel.page.reload()
  await panel.page.getByRole('main').waitFor()
  expect(await (await panel.field('hip')).inputValue()).toBe('1/0')
  expect(await (await panel.notes()).inputValue()).toBe('Half a thought')
})
