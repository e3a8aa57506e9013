/** Records belong to the extension's id, and the id to its key: moving the folder loses nothing. */
import { cpSync, rmSync } from 'node:fs'
import { expect, test } from 'vitest'
import { BUILT } from '../../entrypoints/companion/places.mjs'
import { freshFolder, Rig } from './rig/rig.ts'
import { introduce, Workroom, WREN } from './rig/workroom.ts'

test('the build loaded from two folders, with one profile, finds the same records', async () => {
  const profile = freshFolder('profile')
  const elsewhere = freshFolder('elsewhere')
  cpSync(BUILT.chrome, elsewhere, { recursive: true })
  try {
    const first = await Rig.start({ profile })
    await introduce(first)
    await first.close()

    const second = await Rig.start({ profile, extension: elsewhere })
    const { page } = await Workroom.open(second, 'body')
    await page.getByRole('heading', { name: /^Wren: / }).waitFor()
    const found = await page.getByRole('textbox', { name: 'Waistband', exact: true }).inputValue()
    await second.close()

    expect(second.id).toBe(first.id)
    expect(found).toBe(WREN.measures.Waistband)
  } finally {
    for (const folder of [profile, elsewhere]) rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
  }
})
