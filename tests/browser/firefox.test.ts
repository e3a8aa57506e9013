/** The Firefox build: before Mozilla's own checker, and in Firefox itself. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { BUILT, inRoot } from '../../entrypoints/companion/places.mjs'
import { runStep } from '../../entrypoints/companion/run-step.mjs'
import { Firefox } from './rig/firefox.ts'
import { openShop } from './rig/shop.ts'

interface Complaint {
  code: string
  file?: string
  message: string
}

test('the checker of Firefox add-ons finds no fault', async () => {
  const { output } = await runStep(process.execPath, [
    inRoot('node_modules/web-ext/bin/web-ext.js'),
    'lint',
    '--source-dir',
    BUILT.firefox,
    '--output',
    'json',
    '--no-config-discovery'
  ])
  const found: { summary: object; errors: Complaint[]; warnings: Complaint[] } = JSON.parse(output.slice(output.indexOf('{')))
  expect(found.errors).toEqual([])
  // Preact can set HTML and holds one such line; the house tests see that the product never asks it to
  expect(found.warnings.filter(({ code }) => code !== 'UNSAFE_VAR_ASSIGNMENT')).toEqual([])
  expect(found.warnings.length).toBeLessThanOrEqual(1)
})

test('it asks for no more than it uses, keeps its id, and collects nothing', () => {
  const manifest = JSON.parse(readFileSync(join(BUILT.firefox, 'manifest.json'), 'utf8'))
  expect(manifest.permissions.toSorted()).toEqual(['activeTab', 'contextMenus', 'scripting'])
  for (const name of ['host_permissions', 'optional_permissions', 'content_scripts', 'key']) expect(manifest, name).not.toHaveProperty(name)
  expect(manifest.browser_specific_settings.gecko).toMatchObject({
    id: 'seam-reckoner@work-table.invalid',
    data_collection_permissions: { required: ['none'] }
  })
  expect(manifest.sidebar_action.default_panel).toBe('sidepanel.html')
  const chrome = JSON.parse(readFileSync(join(BUILT.chrome, 'manifest.json'), 'utf8'))
  expect(manifest.content_security_policy).toEqual(chrome.content_security_policy)
})

test('Firefox runs it: each page opens and may fetch nothing, and the button opens the popup over a listing', async ({ skip }) => {
  const firefox = await Firefox.start()
  if (firefox === null) return skip('Firefox is not installed')
  const shop = await openShop()
  try {
    for (const name of ['popup.html', 'sidepanel.html', 'workroom.html']) {
      await firefox.open(firefox.address(name))
      expect(await firefox.inPage('arguments[0](document.title)'), name).not.toBe('')
      expect(await firefox.inPage(`fetch('${shop.front}').then(() => arguments[0]('reached'), () => arguments[0]('refused'))`), name).toBe(
        'refused'
      )
    }
    await firefox.open(shop.item('charcoal-wool-trousers'))
    expect(await firefox.press('Charcoal wool trousers')).toContain('Charcoal wool trousers')
  } finally {
    await firefox.close()
    await shop.close()
  }
})

test('the main job in Firefox: a first visit, a verdict over the listing, the sidebar beside it, kept, and there in the wishlist', async ({
  skip
}) => {
  const firefox = await Firefox.start()
  if (firefox === null) return skip('Firefox is not installed')
  const shop = await openShop()
  try {
    await firefox.open(firefox.address('workroom.html#body'))
    await firefox.byHand({ press: 'Trousers and jeans' }, { press: 'Next' })
    await firefox.byHand({ press: 'Next' }, { press: 'Centimetres' })
    await firefox.byHand(
      { field: 'Waistband', typed: '75' },
      { field: 'Hip', typed: '100' },
      { field: 'Inside leg', typed: '80' },
      { press: 'Save and go on' }
    )
    expect(await firefox.inPage<string>("setTimeout(() => arguments[0](document.querySelector('h1').innerText), 800)")).toBe('Wishlist')
    await firefox.open(shop.item('charcoal-wool-trousers'))
    const popup = await firefox.press('Waist')
    expect(popup).toMatch(/Alters to fit|Comes close/)
    await firefox.surface('popup.html', 'Waist', 'Keep for later')
    await firefox.openSidebar()
    const beside = await firefox.surface('sidepanel.html', 'The listing, as read')
    expect(beside).toContain('Charcoal wool trousers, pleated')
    expect(beside).toMatch(/81.3 now/)
    await firefox.open(firefox.address('workroom.html#wishlist'))
    expect(await firefox.inPage<string>('setTimeout(() => arguments[0](document.body.innerText), 1500)')).toContain(
      'Charcoal wool trousers, pleated'
    )
  } finally {
    await firefox.close()
    await shop.close()
  }
})
