/** A seller's answer about a point that was typed by hand before: the answer stands, and what was typed of other points stays. */
import { expect, test } from 'vitest'
import { all } from '../../../core/records/find.ts'
import { pasteNew } from '../../../core/records/looks.ts'
import { lookDoings } from '../../../entrypoints/view/look-doings.ts'
import { clock, freshRecords } from '../records/fixtures.ts'

test('the answered point that was added by hand gives way, another stays', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const pasted = await pasteNew(records, 'Charcoal flannel trousers, waist 16 in flat', 1, stamp())
  const corrections = [
    { add: 'hip' as const, mm: 1000, source: 'seller' as const },
    { add: 'inseam' as const, mm: 760, source: 'own' as const },
    { kind: 'trousers' as const }
  ]
  const look = { ...pasted, corrections }
  lookDoings({ records, stamp, look, judgedLook: null, windowId: 1 }).onAnswer('Hips 52 cm flat')
  await expect.poll(async () => (await all(records, 'looks'))[0]?.answers).toHaveLength(1)
  expect((await all(records, 'looks'))[0]?.corrections).toEqual(corrections.slice(1))
})
