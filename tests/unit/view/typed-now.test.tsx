// @vitest-environment happy-dom
/** A figure that is being typed is answered before it is saved; what is saved counts again as soon as it is another. */
import { act } from '@testing-library/preact'
import { afterEach, expect, test, vi } from 'vitest'
import type { Correction } from '../../../core/reading/reading.ts'
import type { Look } from '../../../core/records/schemas.ts'
import { useTyped } from '../../../entrypoints/view/look-panel.tsx'
import { hide, show } from '../on-page.tsx'

vi.mock('wxt/browser', () => ({ browser: {} }))
afterEach(hide)

const waist = (mm: number): Correction[] => [{ add: 'waist', mm, source: 'seller' }]
const look = (corrections: Correction[], id = 'a') => ({ id, corrections }) as Look
let now: ReturnType<typeof useTyped>
function Panel({ of }: { of: Look | null }) {
  now = useTyped(of)
  return null
}
const shown = (of: Look | null) => show(<Panel of={of} />, {}, true)
const answered = () => now.asTyped?.corrections
const typed = (corrections: Correction[] | null) => act(() => now.onTry(corrections))

test('what is typed is answered, and what is saved again once that is another', async () => {
  shown(look(waist(760)))
  expect(answered()).toEqual(waist(760))
  await typed(waist(7))
  await typed(waist(78))
  expect(answered()).toEqual(waist(78))
  // something else of the look was saved: a draft, a note
  shown({ ...look(waist(760)), notes: 'n' } as Look)
  expect(answered()).toEqual(waist(78))
  shown(look(waist(780)))
  expect(answered()).toEqual(waist(780))
})

test('taken back, what was typed before does not come again', async () => {
  shown(look(waist(760)))
  await typed(waist(780))
  shown(look(waist(780)))
  shown(look(waist(760)))
  expect(answered()).toEqual(waist(760))
})

test('what is no length, another look, or none is not answered by what was typed', async () => {
  shown(look(waist(760)))
  await typed(waist(780))
  await typed(null)
  expect(answered()).toEqual(waist(760))
  await typed(waist(780))
  shown(look(waist(760), 'b'))
  expect(answered()).toEqual(waist(760))
  shown(null)
  expect(now.asTyped).toBeNull()
  await typed(waist(780))
  expect(now.asTyped).toBeNull()
})
