/** Records belong to the extension's id, and the id to its key: moving the folder loses nothing. */
import { cpSync, rmSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { BUILT } from '../../entrypoints/companion/places.mjs'
import { freshFolder, Rig } from './rig/rig.ts'

/** Puts a note into a store of its own, or reads it back, the way a record is kept. */
function note(page: Page, text?: string): Promise<string | undefined> {
  return page.evaluate(
    (written) =>
      new Promise<string | undefined>((done, fail) => {
        const request = indexedDB.open('identity-check', 1)
        request.onerror = () => fail(request.error)
        request.onupgradeneeded = () => request.result.createObjectStore('notes')
        request.onsuccess = () => {
          const database = request.result
          const transaction = database.transaction('notes', 'readwrite')
          const store = transaction.objectStore('notes')
          const step = written === undefined ? store.get('note') : store.put(written, 'note')
          transaction.oncomplete = () => {
            database.close()
            done(written ?? step.result)
          }
        }
      }),
    text
  )
}

test('the build loaded from two folders, with one profile, finds the same records', async () => {
  const profile = freshFolder('profile')
  const elsewhere = freshFolder('elsewhere')
  cpSync(BUILT.chrome, elsewhere, { recursive: true })
  try {
    const first = await Rig.start({ profile })
    await note(await first.tab(first.address('workroom.html')), 'left here')
    await first.close()

    const second = await Rig.start({ profile, extension: elsewhere })
    const found = await note(await second.tab(second.address('workroom.html')))
    await second.close()

    expect(second.id).toBe(first.id)
    expect(found).toBe('left here')
  } finally {
    for (const folder of [profile, elsewhere]) rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
  }
})
