import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { exportBackup, importBackup } from '../../../core/records/backup.ts'
import { patch } from '../../../core/records/change.ts'
import { all, one } from '../../../core/records/find.ts'
import { keepLook, openKept } from '../../../core/records/kept.ts'
import { lookNow } from '../../../core/records/look-now.ts'
import { choose, keepDraft, pasteInto, storeLook, undoChoice } from '../../../core/records/looks.ts'
import type { LookChoices } from '../../../core/records/schemas.ts'
import { changeListing, sharedOf } from '../../../core/records/shared-fields.ts'
import { type Done, workroomActions } from '../../../entrypoints/workroom/workroom-actions.ts'
import { clock, freshRecords, seen, there } from './fixtures.ts'

const ANSWER = { id: 'a', text: 'The thigh is 32 cm flat.', at: '2026-03-01T09:00:00.000Z' }

/** A page looked at and kept, with what the panel and the wishlist can do to it. */
async function kept() {
  const records = await freshRecords()
  const stamp = clock()
  const { id: lookId } = await storeLook(records, seen(), stamp())
  const listingId = there(await keepLook(records, lookId, null, stamp())).after.id
  let last: Done | null = null
  const actions = workroomActions(records, stamp, (done) => {
    last = done
  })
  return {
    records,
    stamp,
    lookId,
    listingId,
    actions,
    /** The workroom's own way back. */
    takeBack: async () => (last as Done | null)?.undo?.(),
    look: async () => there(await one(records, 'looks', lookId)),
    listing: async () => there((await all(records, 'listingsKept')).find(({ id }) => id === listingId))
  }
}

test('an answer added after keeping stays when the wishlist changes the status and the listing is opened; undo holds it', async () => {
  const { records, stamp, lookId, listingId, actions, listing } = await kept()
  await choose(records, lookId, { answers: [ANSWER] }, stamp())
  await actions.editListing(listingId, { status: 'asked' }, 'Flannels')
  expect(await openKept(records, listingId, stamp())).toMatchObject({ id: lookId, answers: [ANSWER] })
  expect(await listing()).toMatchObject({ status: 'asked', answers: [ANSWER] })
  await undoChoice(records, lookId, stamp())
  expect(await listing()).toMatchObject({ status: 'asked', answers: [] })
})

test('notes edited in the wishlist are not overwritten by the older ones of the panel', async () => {
  const { records, stamp, lookId, listingId, actions, listing, look } = await kept()
  await choose(records, lookId, { notes: 'from the panel' }, stamp())
  await keepLook(records, lookId, null, stamp())
  await actions.editListing(listingId, { notes: 'from the wishlist' }, 'Flannels')
  expect(await look()).toMatchObject({ notes: 'from the wishlist' })
  await keepLook(records, lookId, null, stamp())
  expect(await listing()).toMatchObject({ notes: 'from the wishlist' })
})

describe('each shared field, changed on either side', () => {
  const CHOICES: Partial<LookChoices> = {
    title: 'Grey flannels',
    text: 'Waist 17 in flat',
    textCutFrom: 300_000,
    money: { price: 5, postage: 2, worth: 40 },
    corrections: [{ kind: 'jeans' }],
    answers: [ANSWER],
    notes: 'nice cloth',
    personId: 'p',
    fit: 'loose',
    favouriteId: 'g',
    aim: 'tailor'
  }
  test.each(Object.entries(CHOICES))('%s chosen in the panel is in the listing, and undo takes it back in both', async (name, value) => {
    const { records, stamp, lookId, look, listing } = await kept()
    const before = (await listing())[name as keyof LookChoices]
    await choose(records, lookId, { [name]: value }, stamp())
    expect(await listing()).toMatchObject({ [name]: value })
    await undoChoice(records, lookId, stamp())
    expect((await listing())[name as keyof LookChoices]).toEqual(before)
    expect(sharedOf(await look())).toEqual(sharedOf(await listing()))
  })

  test('a page read again, and text pasted: the listing follows, and undo brings back all that the page said before', async () => {
    const { records, stamp, lookId, look, listing } = await kept()
    const before = sharedOf(await listing())
    const page = {
      text: 'Sold',
      structured: ['{"name":"Sold"}'],
      price: { amount: 1, currency: 'GBP' },
      images: ['https://a.example/1.jpg']
    }
    await storeLook(records, seen(page), stamp())
    expect(await listing()).toMatchObject({ text: 'Sold', structured: [{ name: 'Sold' }], price: page.price, images: page.images })
    await undoChoice(records, lookId, stamp())
    expect(sharedOf(await look())).toEqual(before)
    expect(sharedOf(await listing())).toEqual(before)
    await pasteInto(records, lookId, 'Waist 42 cm flat', stamp())
    expect(await listing()).toMatchObject({ text: 'Waist 42 cm flat' })
  })

  test('notes and money changed in the wishlist are in the look, as a step that the panel can undo', async () => {
    const { records, stamp, lookId, listingId, actions, look, listing } = await kept()
    await choose(records, lookId, { money: { price: 5, postage: 2, worth: null } }, stamp())
    await actions.editListing(listingId, { notes: 'soft', money: { worth: 40 } }, 'Flannels')
    const money = { price: 5, postage: 2, worth: 40 }
    for (const one of [await look(), await listing()]) expect(one).toMatchObject({ notes: 'soft', money })
    await undoChoice(records, lookId, stamp())
    for (const one of [await look(), await listing()])
      expect(one).toMatchObject({ notes: '', money: { price: 5, postage: 2, worth: null } })
  })

  test('the wishlist takes its change back: the look is as before, its undo too', async () => {
    const { records, stamp, lookId, listingId, actions, look, listing, takeBack } = await kept()
    await choose(records, lookId, { fit: 'loose' }, stamp())
    const undoBefore = (await look()).undo
    await actions.editListing(listingId, { notes: 'soft', status: 'asked' }, 'Flannels')
    expect(await takeBack()).toBe(true)
    expect(await listing()).toMatchObject({ notes: '', status: 'watching', fit: 'loose' })
    expect(await look()).toMatchObject({ notes: '', fit: 'loose', undo: undoBefore })
  })

  test('the wishlist can not take back what the panel changed again since, and says so', async () => {
    const { records, stamp, lookId, listingId, actions, listing, takeBack } = await kept()
    await actions.editListing(listingId, { notes: 'soft' }, 'Flannels')
    await choose(records, lookId, { answers: [ANSWER] }, stamp())
    expect(await takeBack()).toBe(false)
    expect(await listing()).toMatchObject({ notes: 'soft', answers: [ANSWER] })
  })

  test('half-typed notes of the panel give way to newer ones of the wishlist, and undo has them', async () => {
    const { records, stamp, lookId, listingId, actions, look, listing } = await kept()
    await keepDraft(records, lookId, 'notes', 'half ty', stamp())
    await keepDraft(records, lookId, 'waist', '4', stamp())
    await actions.editListing(listingId, { notes: 'from the wishlist' }, 'Flannels')
    expect(await look()).toMatchObject({ notes: 'from the wishlist', drafts: { waist: '4' } })
    await keepLook(records, lookId, null, stamp())
    expect(await listing()).toMatchObject({ notes: 'from the wishlist' })
    await undoChoice(records, lookId, stamp())
    expect(await listing()).toMatchObject({ notes: 'half ty' })
  })

  test('a status alone changes no look', async () => {
    const { listingId, actions, look } = await kept()
    const before = await look()
    await actions.editListing(listingId, { status: 'bought' }, 'Flannels')
    expect(await look()).toEqual(before)
  })

  test('two looks of one listing say the same', async () => {
    const { records, stamp, lookId, listingId, actions, look } = await kept()
    const other = await storeLook(records, seen({ tabId: 11 }), stamp())
    await patch(records, 'looks', other.id, { keptId: listingId }, stamp())
    await choose(records, other.id, { fit: 'close' }, stamp())
    expect(await look()).toMatchObject({ fit: 'close' })
    await choose(records, lookId, { aim: 'tailor' }, stamp())
    await actions.editListing(listingId, { notes: 'soft' }, 'Flannels')
    expect(await one(records, 'looks', other.id)).toMatchObject({ fit: 'close', aim: 'tailor', notes: 'soft' })
  })
})

describe('removed and brought back', () => {
  test('a removed listing leaves its look as it was, kept no longer; brought back it has what was chosen meanwhile', async () => {
    const { records, stamp, lookId, listingId, actions, takeBack, listing } = await kept()
    await choose(records, lookId, { fit: 'loose' }, stamp())
    await actions.removeListing(listingId, 'Flannels')
    expect(await lookNow(records, lookId)).toMatchObject({ id: lookId, fit: 'loose', keptId: null })
    await choose(records, lookId, { answers: [ANSWER] }, stamp())
    expect(await takeBack()).toBe(true)
    expect(await lookNow(records, lookId)).toMatchObject({ keptId: listingId })
    expect(await listing()).toMatchObject({ fit: 'loose', answers: [ANSWER] })
  })

  test('opened, a look that a merge left behind is as its listing says; one that agrees is not written', async () => {
    const { records, stamp, lookId, listingId, look } = await kept()
    const before = await look()
    expect(await openKept(records, listingId, stamp())).toEqual(before)
    await patch(records, 'listingsKept', listingId, { notes: 'from elsewhere' }, stamp())
    expect(await openKept(records, listingId, stamp())).toMatchObject({ id: lookId, notes: 'from elsewhere', undo: [{ notes: '' }] })
  })

  test('after a backup was merged the listing counts, and what the look had instead is a step of its undo', async () => {
    const { records, stamp, lookId, listingId, actions, look } = await kept()
    const away = await freshRecords()
    const awayStamp = clock('away')
    await importBackup(away, JSON.stringify(await exportBackup(records, stamp())), stamp())
    for (const status of ['asked', 'bought'] as const) await changeListing(away, listingId, awayStamp(), () => ({ status, fit: 'close' }))
    await actions.editListing(listingId, { status: 'passed' }, 'Flannels')
    // the look goes on here alone
    for (const aim of ['tailor', 'least-work', 'closest-fit'] as const) await patch(records, 'looks', lookId, { aim }, stamp())
    await importBackup(records, JSON.stringify(await exportBackup(away, stamp())), stamp())
    expect(await look()).toMatchObject({ fit: 'close', aim: null })
    expect(Object.assign({}, ...(await look()).undo)).toMatchObject({ fit: null, aim: 'closest-fit' })
  })
})

describe('in whatever order', () => {
  type World = Awaited<ReturnType<typeof kept>>
  const DO: Record<string, (world: World) => Promise<unknown>> = {
    answer: ({ records, lookId, stamp }) => choose(records, lookId, { answers: [ANSWER] }, stamp()),
    panelNotes: ({ records, lookId, stamp }) => choose(records, lookId, { notes: 'from the panel' }, stamp()),
    half: ({ records, lookId, stamp }) => keepDraft(records, lookId, 'notes', 'half ty', stamp()),
    wishlist: ({ actions, listingId }) => actions.editListing(listingId, { notes: 'from the wishlist', money: { worth: 40 } }, ''),
    status: ({ actions, listingId }) => actions.editListing(listingId, { status: 'asked' }, ''),
    back: ({ takeBack }) => takeBack(),
    undo: ({ records, lookId, stamp }) => undoChoice(records, lookId, stamp()),
    keep: ({ records, lookId, stamp }) => keepLook(records, lookId, null, stamp()),
    open: ({ records, listingId, stamp }) => openKept(records, listingId, stamp()),
    reread: ({ records, stamp }) => storeLook(records, seen({ text: 'Waist 17 in flat' }), stamp()),
    remove: ({ actions, listingId }) => actions.removeListing(listingId, '')
  }
  const names = Object.keys(DO)
  const pairs = names.flatMap((a) => names.map((b) => [a, b]))
  const orders = [...pairs, ...['answer', 'wishlist'].flatMap((first) => pairs.map((pair) => [first, ...pair]))]

  test(`every two of ${names.length}, and two after an answer or the wishlist: look and listing agree, and nothing told is lost but by undo`, {
    timeout: 60_000
  }, async () => {
    let told = 0
    for (const order of orders) {
      const world = await kept()
      for (const name of order) await DO[name]?.(world)
      const look = await world.look()
      const listing = look.keptId === null ? null : await one(world.records, 'listingsKept', look.keptId)
      const at = order.join(', ')
      if (listing !== null) expect(sharedOf(look), at).toEqual(sharedOf(listing))
      if (order.includes('answer') && !order.includes('undo') && !order.includes('back')) {
        told++
        expect(look.answers, at).toEqual([ANSWER])
      }
      world.records.db.close()
    }
    expect(told).toBeGreaterThan(100)
  })
})
