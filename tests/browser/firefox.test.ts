/** The Firefox build, as Mozilla's own checker and the manifest see it. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { BUILT, inRoot } from '../../entrypoints/companion/places.mjs'
import { runStep } from '../../entrypoints/companion/run-step.mjs'

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
