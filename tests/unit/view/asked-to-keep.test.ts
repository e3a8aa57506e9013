// @vitest-environment happy-dom
/** The browser is asked to keep what is saved once something typed is saved: not at opening, not for a press, and once. */
import 'fake-indexeddb/auto'
import { afterEach, expect, test, vi } from 'vitest'
import { put } from '../../../core/records/change.ts'
import { askOnceTyped } from '../../../entrypoints/view/asked-to-keep.ts'
import { Saving } from '../../../entrypoints/view/saving.ts'
import { clock, freshRecords, WREN } from '../records/fixtures.ts'

afterEach(() => {
  vi.unstubAllGlobals()
  vi.restoreAllMocks()
  document.body.innerHTML = ''
})

async function page(userAgent: string, kept = false) {
  const persist = vi.fn(async () => true)
  vi.stubGlobal('navigator', { userAgent, storage: { persisted: async () => kept, persist } })
  document.body.innerHTML = '<input type="text"><input type="checkbox"><textarea></textarea>'
  const records = await freshRecords()
  const saving = new Saving(records)
  const stamp = clock()
  askOnceTyped(saving)
  const save = () => saving.run((records) => put(records, 'people', WREN, stamp()))
  const type = (selector: string) => document.querySelector(selector)?.dispatchEvent(new Event('input', { bubbles: true }))
  const turn = () => new Promise((done) => setTimeout(done))
  return { persist, save, type, turn, saving }
}

test('asked behind the first save of something typed, and never again', async () => {
  const { persist, save, type, turn } = await page('Chrome/142')
  await save()
  type('[type=checkbox]')
  await save()
  await turn()
  expect(persist).not.toHaveBeenCalled()
  type('textarea')
  await turn()
  expect(persist).not.toHaveBeenCalled()
  await save()
  await turn()
  expect(persist).toHaveBeenCalledOnce()
  type('[type=text]')
  await save()
  await turn()
  expect(persist).toHaveBeenCalledOnce()
})

test('a save that failed is no save', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
  const { persist, type, turn, saving, save } = await page('Chrome/142')
  type('textarea')
  await saving.run(async () => Promise.reject(new Error('no')), { inForm: true })
  await turn()
  expect(persist).not.toHaveBeenCalled()
  await save()
  await turn()
  expect(persist).toHaveBeenCalledOnce()
})

test.each([
  ['Firefox/140.0', false],
  ['Chrome/142', true]
])('not where the person would be asked, nor where it is promised already: %s', async (userAgent, kept) => {
  const { persist, save, type, turn } = await page(userAgent, kept)
  type('textarea')
  await save()
  await turn()
  expect(persist).not.toHaveBeenCalled()
})
