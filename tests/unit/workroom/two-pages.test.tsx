// @vitest-environment happy-dom
/** The same thing changed on two pages at once: fields of each stay, a clash is shown with both values, a removal is said. */
import 'fake-indexeddb/auto'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { SavingBar } from '../../../components/saving/saving-bar.tsx'
import { DraftsHeld } from '../../../components/workroom/drafts.tsx'
import { WardrobePage } from '../../../components/workroom/wardrobe/wardrobe-page.tsx'
import { put, remove } from '../../../core/records/change.ts'
import { all, one } from '../../../core/records/find.ts'
import { keepLook } from '../../../core/records/kept.ts'
import { choose, storeLook } from '../../../core/records/looks.ts'
import { panelActions } from '../../../entrypoints/view/panel-actions.ts'
import { Saving } from '../../../entrypoints/view/saving.ts'
import { workroomActions } from '../../../entrypoints/workroom/workroom-actions.ts'
import { field, hide, press, settled, show, shownText, submit, type } from '../on-page.tsx'
import { clock, freshRecords, owned, seen, there, WREN } from '../records/fixtures.ts'

vi.mock('wxt/browser', () => ({ browser: {} }))
beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(() => {
  hide()
  vi.restoreAllMocks()
})

/** Two workrooms over one set of records. */
async function pages() {
  const records = await freshRecords()
  const [saving, other] = [new Saving(records), new Saving(records)]
  const here = workroomActions(records, clock('here'), () => undefined, saving)
  const there = workroomActions(records, clock('there'), () => undefined, other)
  const stamp = clock('first')
  return { records, stamp, here, there, saving }
}
const clashed = (saving: Saving) => vi.waitFor(() => expect(saving.now().clashes.length).toBeGreaterThan(0))

describe('a garment', () => {
  const begun = async () => {
    const page = await pages()
    const { after } = await put(page.records, 'garmentsOwned', owned(), page.stamp())
    const now = async () => there(await one(page.records, 'garmentsOwned', after.id))
    return { ...page, began: after, id: after.id, now }
  }

  test('other fields, and other measures, are brought together', async () => {
    const { here, there, began, id, now } = await begun()
    const hip = { point: 'hip' as const, mm: 1000, stated: '100' }
    await there.editGarment(id, { ...began, name: 'Flannels', measures: [{ point: 'waist', mm: 780, stated: '78' }] }, began)
    expect(await here.editGarment(id, { ...began, notes: 'press first', measures: [...began.measures, hip] }, began)).toBe(true)
    expect(await now()).toMatchObject({
      name: 'Flannels',
      notes: 'press first',
      measures: [
        { point: 'waist', mm: 780 },
        { point: 'hip', mm: 1000 }
      ]
    })
  })

  test.each([
    ['mine', 'mine', true],
    ['theirs', 'theirs', true],
    [null, 'theirs', false]
  ] as const)('the same field otherwise is shown with both values: %s counts', async (how, notes, saved) => {
    const { here, there, saving, began, id, now } = await begun()
    await there.editGarment(id, { ...began, notes: 'theirs' }, began)
    const answer = here.editGarment(id, { ...began, notes: 'mine', name: 'Flannels' }, began)
    await clashed(saving)
    expect(saving.now()).toMatchObject({ is: 'not-saved', clashes: [{ path: ['notes'], mine: 'mine', theirs: 'theirs' }] })
    expect((await now()).name).toBe('Grey flannels')
    show(<SavingBar now={saving.now()} onAgain={vi.fn()} onReload={vi.fn()} onClose={vi.fn()} onSettle={(one) => saving.settle(one)} />)
    expect(shownText()).toContain('NotesHere: mine; there: theirs')
    press(how === 'mine' ? 'What is here counts' : how === 'theirs' ? 'What is there counts' : 'Back to what I typed')
    expect(await answer).toBe(saved)
    expect(await now()).toMatchObject({ notes, name: saved ? 'Flannels' : 'Grey flannels' })
    expect(saving.now().is).toBe('saved')
  })

  test('removed on the other page, nothing is written and it is said', async () => {
    const { here, there, saving, records, began, id } = await begun()
    await there.removeGarment(id, 'Grey flannels')
    expect(await here.editGarment(id, { ...began, notes: 'mine' }, began)).toBe(false)
    expect(saving.now().trouble).toBe('gone')
    expect(await all(records, 'garmentsOwned')).toEqual([])
  })

  test('removed while its form is open, what was typed stays and can be saved anew', async () => {
    const held = new Map<string, unknown>()
    const onAdd = vi.fn(async () => true)
    const shown = { id: 'g', ...owned() }
    const page = (garments: (typeof shown)[]) => (
      <DraftsHeld.Provider value={held}>
        <WardrobePage
          name="Wren"
          garments={garments}
          onAdd={onAdd}
          onEdit={vi.fn(async () => true)}
          onRemove={vi.fn()}
          onFavourite={vi.fn()}
        />
      </DraftsHeld.Provider>
    )
    show(page([shown]))
    press('Change Grey flannels')
    type('Notes', 'taken in twice')
    show(page([]), {}, true)
    expect(shownText()).toContain('removed on another page')
    expect(field('Notes').value).toBe('taken in twice')
    submit()
    await settled()
    expect(onAdd).toHaveBeenCalledExactlyOnceWith(expect.objectContaining({ name: 'Grey flannels', notes: 'taken in twice' }))
  })
})

test('a person’s fields, prices and own limits from two pages stay', async () => {
  const { records, stamp, here, there: other } = await pages()
  const { after: began } = await put(records, 'people', WREN, stamp())
  await other.editPerson(began.id, { ...began, means: { ...began.means, tailorPrices: { 'waist-in-darts': 12 } } }, 'Wren', began)
  await other.editPerson(began.id, { limits: { 'leg-taper': 0 } }, 'Wren', began)
  await here.editPerson(
    began.id,
    { ...began, fit: 'loose', means: { ...began.means, level: 4, tailorPrices: { 'leg-taper': 9 } } },
    'Wren',
    began
  )
  await here.editPerson(began.id, { limits: { 'seat-in': 20 } }, 'Wren', began)
  expect(await one(records, 'people', began.id)).toMatchObject({
    fit: 'loose',
    limits: { 'leg-taper': 0, 'seat-in': 20 },
    means: { level: 4, tailorPrices: { 'waist-in-darts': 12, 'leg-taper': 9 } }
  })
})

describe('a kept listing and its look', () => {
  const begun = async () => {
    const page = await pages()
    const look = await storeLook(page.records, seen(), page.stamp())
    const listing = there(await keepLook(page.records, look.id, null, page.stamp())).after
    const kept = there(await one(page.records, 'looks', look.id))
    const panel = panelActions({
      stamp: clock('panel'),
      saving: page.saving,
      look: kept,
      judgedLook: null,
      person: null,
      windowId: 1
    })
    const idle = () => vi.waitFor(() => expect(page.saving.now().is).not.toBe('saving'))
    return { ...page, look: kept, listing, panel, idle, now: async () => there(await one(page.records, 'looks', look.id)) }
  }

  test('figures of money typed in the wishlist and in the panel stay both', async () => {
    const { there, listing, panel, idle, look, now } = await begun()
    await there.editListing(listing.id, { money: { worth: 60 } }, '', listing)
    panel.onMoney({ ...look.money, price: 12 })
    await idle()
    expect((await now()).money).toEqual({ price: 12, postage: null, worth: 60 })
  })

  test('a correction of each page stays', async () => {
    const { records, stamp, panel, idle, look, now } = await begun()
    await choose(records, look.id, { corrections: [{ kind: 'jeans' }] }, stamp())
    panel.onCorrections([{ add: 'waist', mm: 760, source: 'own' }])
    await idle()
    expect((await now()).corrections).toEqual([{ kind: 'jeans' }, { add: 'waist', mm: 760, source: 'own' }])
  })

  test('notes changed in the wishlist while they were typed in the panel are shown beside them', async () => {
    const { there, saving, listing, panel, now } = await begun()
    await there.editListing(listing.id, { notes: 'ask for the rise' }, '', listing)
    panel.onNotes('for the wedding', '')
    await clashed(saving)
    expect(saving.now().clashes).toEqual([{ path: ['notes'], mine: 'for the wedding', theirs: 'ask for the rise' }])
    expect((await now()).notes).toBe('ask for the rise')
    saving.settle('mine')
    await vi.waitFor(async () => expect((await now()).notes).toBe('for the wedding'))
  })

  test('two wishlists: tags and status of each stay', async () => {
    const { records, here, there, listing } = await begun()
    await there.editListing(listing.id, { tags: ['wool'], status: 'asked' }, '', listing)
    await here.editListing(listing.id, { tags: ['winter'] }, '', listing)
    expect(await one(records, 'listingsKept', listing.id)).toMatchObject({ tags: ['wool', 'winter'], status: 'asked' })
  })

  test('kept again after it was removed elsewhere it is a listing again; changed after that it is said to be gone', async () => {
    const { records, stamp, here, saving, listing } = await begun()
    await remove(records, 'listingsKept', listing.id, stamp())
    expect(await here.editListing(listing.id, { notes: 'mine' }, '', listing)).toBe(false)
    expect(saving.now().trouble).toBe('gone')
  })
})
