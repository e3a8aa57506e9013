/** Every state a page can be in, and how it is reached; in the order in which each leaves what the next needs. */
import type { Page } from 'playwright-core'
import { say } from '../../../core/words/say.ts'
import { Popup } from '../rig/popup.ts'
import { type Rig, until } from '../rig/rig.ts'
import { LISTINGS, ownGarments, rowsOf, somebody, writeRows } from './screen-seeds.ts'

export type Language = 'en' | 'de'
/** What drives all of it: the browser, and the pages that stay open. */
export interface Drive {
  rig: Rig
  language: Language
  listing(name: string): string
  panel: Page | null
  room: Page | null
}
export interface State {
  name: string
  surface: 'popup' | 'panel' | 'workroom'
  open(drive: Drive): Promise<Page>
  /** What comes after it needs it: it is gone through even where it is not pictured. */
  leads?: true
}

/** A sentence or a name as the pages say it. */
const words = ({ language }: Drive, code: string, values: Record<string, string | number> = {}): string =>
  say({ code, values }, { units: 'cm', language, currency: language === 'de' ? 'EUR' : 'GBP' })
const pressed = (page: Page, drive: Drive, code: string, values: Record<string, string | number> = {}): Promise<void> =>
  page
    .getByRole('button', { name: words(drive, code, values), exact: true })
    .first()
    .click()

/** Nothing is still being worked out, and nothing has moved for a moment. */
async function settled(page: Page, drive: Drive): Promise<Page> {
  const pending = [words(drive, 'facts.chance.pending'), words(drive, 'popup.reading'), words(drive, 'workroom.loading')]
  let last = ''
  await until(
    'the page to settle',
    async () => {
      const now = (await page.locator('body').textContent()) ?? ''
      const stays = now === last && !pending.some((one) => now.toLowerCase().includes(one.toLowerCase()))
      last = now
      await page.waitForTimeout(250)
      return stays
    },
    30_000
  )
  return page
}

async function popupOver(drive: Drive, address: string): Promise<Page> {
  for (const page of drive.rig.context.pages()) if (/^(?:http|about|chrome:)/.test(page.url())) await page.close().catch(() => undefined)
  const popup = await Popup.over(drive.rig, await drive.rig.tab(address))
  return settled(popup.page, drive)
}
const popup = (name: string, then?: (page: Page, drive: Drive) => Promise<unknown>): State => ({
  name: `popup-${name.split('+')[0]}${then === undefined ? '' : '-kept'}`,
  surface: 'popup',
  leads: true,
  open: async (drive) => {
    const page = await popupOver(drive, drive.listing(name))
    if (then !== undefined) await then(page, drive)
    return page
  }
})

/** The panel, opened once and following what is read. */
async function panelOver(drive: Drive, name: string): Promise<Page> {
  const small = await popupOver(drive, drive.listing(name))
  if (drive.panel === null) {
    const isUnread = LISTINGS[name]?.[drive.language].text === ''
    await small
      .getByRole('button', { name: words(drive, isUnread ? 'popup.paste-beside' : 'popup.open-beside') })
      .click()
      .catch(() => undefined)
    drive.panel = await drive.rig.surface('sidepanel')
  }
  const title = LISTINGS[name]?.[drive.language].title ?? ''
  if (title !== '') await drive.panel.getByRole('heading', { level: 1, name: title }).waitFor()
  return settled(drive.panel, drive)
}
const unfolded = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const one of document.querySelectorAll('details')) one.open = true
  })
const panel = (name: string): State[] => [
  { name: `panel-${name}`, surface: 'panel', open: (drive) => panelOver(drive, name) },
  {
    name: `panel-${name}-unfolded`,
    surface: 'panel',
    open: async (drive) => {
      const page = await panelOver(drive, name)
      await unfolded(page)
      return page
    }
  }
]

async function roomAt(drive: Drive, hash: string): Promise<Page> {
  const room = drive.room ?? (await drive.rig.context.newPage())
  drive.room = room
  await room.bringToFront()
  await room.goto('about:blank')
  await room.goto(drive.rig.address(`workroom.html#${hash}`))
  await room.getByRole('main').waitFor()
  return settled(room, drive)
}
/** The rows are drawn, with the answers that are worked out after them. */
const listed = async (page: Page): Promise<void> => {
  const answered = page.locator('[data-listing] .wr-to-card')
  const rows = page.locator('[data-listing]')
  await until(
    'every row to have its answer',
    async () => (await rows.count()) > 0 && (await answered.count()) >= (await rows.count()),
    30_000
  )
}
const room = (name: string, hash: string, then?: (page: Page, drive: Drive) => Promise<unknown>, leads?: true): State => ({
  name: `room-${name}`,
  surface: 'workroom',
  ...(leads === undefined ? {} : { leads }),
  open: async (drive) => {
    const page = await roomAt(drive, hash)
    if (then !== undefined) {
      await then(page, drive)
      await settled(page, drive)
    }
    return page
  }
})
const seeded = (rows: (drive: Drive) => Record<string, readonly object[]>) => async (page: Page, drive: Drive) => {
  await writeRows(page, rows(drive))
  await page.reload()
  await page.getByRole('heading').first().waitFor()
}
/** What is written past the pages has no summary: all are made anew. */
const ANEW = { local: [{ key: 'summaries', format: 0, through: '' }] }
/** A page on which something was broken before it began. */
const broken = (name: string, hash: string, breaks: () => void): State => ({
  name: `room-${name}`,
  surface: 'workroom',
  open: async (drive) => {
    const page = await drive.rig.context.newPage()
    await page.addInitScript(breaks)
    await page.goto(drive.rig.address(`workroom.html#${hash}`))
    await page.waitForTimeout(1500)
    return page
  }
})

const keptIds = async (page: Page): Promise<string[]> =>
  (await rowsOf(page, 'listingsKept')).filter(({ deletedAt }) => deletedAt === null).map(({ id }) => String(id))
/** A page of what was kept, of the trousers that alter to fit unless another listing is named. */
const onListing = (
  name: string,
  hash: string,
  then?: (page: Page, drive: Drive) => Promise<unknown>,
  listing: keyof typeof LISTINGS = 'alters'
): State => ({
  name: `room-${name}`,
  surface: 'workroom',
  open: async (drive) => {
    const list = await roomAt(drive, 'wishlist')
    const title = LISTINGS[listing]?.[drive.language].title
    const row = (await rowsOf(list, 'listingsKept')).find((one) => one.title === title && one.deletedAt === null)
    const page = await roomAt(drive, `${hash}/${row?.id}`)
    if (then !== undefined) {
      await then(page, drive)
      await settled(page, drive)
    }
    return page
  }
})
const keep = async (page: Page, drive: Drive): Promise<void> => {
  await page.getByRole('button', { name: new RegExp(`^(?:${words(drive, 'answer.keep')}|${words(drive, 'answer.keep-anyway')})$`) }).click()
  await page.getByText(words(drive, 'keep.done')).waitFor()
}
const ownNames = ({ language }: Drive): string[] => ownGarments(language).garmentsOwned.map(({ name }) => name)
const FOR_LEGS = 'first.for.legs'

export const STATES: readonly State[] = [
  popup('alters'),
  { ...panel('alters')[0], name: 'panel-nobody', surface: 'panel', open: (drive) => panelOver(drive, 'alters') },
  room('first-1', 'first-visit'),
  room('first-2', 'first-visit', async (page, drive) => {
    await page.getByText(words(drive, FOR_LEGS), { exact: true }).click()
    await pressed(page, drive, 'first.next')
  }),
  // what was chosen is remembered, and the next step is gone on from
  room('first-3', 'first-visit', async (page, drive) => {
    const legs = page.getByText(words(drive, FOR_LEGS), { exact: true })
    if ((await legs.count()) > 0) {
      const box = page.getByRole('checkbox').first()
      await box.check()
      await pressed(page, drive, 'first.next')
    }
    await pressed(page, drive, 'first.next')
  }),
  room('first-garment', 'first-visit', async (page, drive) => {
    const back = page.getByRole('button', { name: words(drive, 'first.back'), exact: true })
    while ((await back.count()) > 0) await back.click()
    await pressed(page, drive, 'first.garment-instead')
    await pressed(page, drive, 'first.next')
  }),
  room('nobody-body', 'body', async (page, drive) => {
    const skip = page.getByRole('button', { name: words(drive, 'first.skip') })
    if ((await skip.count()) > 0) await skip.click()
  }),
  room('nobody-settings', 'settings'),
  room('nobody-backup', 'backup'),
  room(
    'seed',
    'wishlist',
    async (page, drive) => {
      await seeded(({ language }) => somebody(language))(page, drive)
      // what is written past the pages is seen by those that are loaded anew
      await drive.panel?.reload()
    },
    true
  ),
  room('wishlist-empty', 'wishlist'),
  room('wardrobe-empty', 'wardrobe'),
  popup('wears'),
  ...panel('wears'),
  popup('alters', keep),
  ...panel('alters'),
  popup('tailor', keep),
  ...panel('tailor'),
  popup('close', keep),
  ...panel('close'),
  popup('leave', keep),
  ...panel('leave'),
  popup('untold', keep),
  ...panel('untold'),
  popup('ask', keep),
  ...panel('ask'),
  popup('slip', keep),
  ...panel('slip'),
  popup('dress', keep),
  ...panel('dress'),
  popup('kind'),
  ...panel('kind'),
  popup('sizes'),
  ...panel('sizes'),
  popup('several'),
  ...panel('several'),
  popup('doubtful'),
  ...panel('doubtful'),
  popup('empty'),
  ...panel('empty').slice(0, 1),
  {
    name: 'panel-correcting',
    surface: 'panel',
    open: async (drive) => {
      const page = await panelOver(drive, 'doubtful')
      await unfolded(page)
      // each that is opened is called Close from then on
      const correct = page.getByRole('button', { name: new RegExp(`^${words(drive, 'points.correct')} `) })
      for (let n = 0; n < 3 && (await correct.count()) > 0; n++) await correct.first().click()
      await page.locator('.correct .fieldin').first().fill('17')
      return settled(page, drive)
    }
  },
  {
    name: 'panel-elsewhere',
    surface: 'panel',
    open: async (drive) => {
      const page = await panelOver(drive, 'alters')
      await (await drive.rig.tab(drive.listing('wears'))).bringToFront()
      return settled(page, drive)
    }
  },
  room('wishlist', 'wishlist', listed),
  room('wishlist-filtered', 'wishlist', async (page) => {
    const fold = page.locator('summary').first()
    if ((await fold.count()) > 0) await fold.click()
    const select = page.getByRole('combobox').nth(2)
    if ((await select.count()) > 0) await select.selectOption({ index: 1 })
  }),
  room('wishlist-compare', 'wishlist', async (page) => {
    for (const box of (await page.getByRole('checkbox').all()).slice(0, 3)) await box.check()
    await page
      .getByRole('button')
      .filter({ hasText: /3/ })
      .first()
      .click()
      .catch(() => undefined)
  }),
  onListing('open', 'wishlist'),
  onListing('open-unfolded', 'wishlist', unfolded),
  onListing('card', 'card-for-the-shop'),
  onListing('work', 'work'),
  onListing('work-unfolded', 'work', unfolded),
  onListing('work-sheet', 'work', (page, drive) => pressed(page, drive, 'sheet.make')),
  onListing('work-sheet-unfolded', 'work', unfolded),
  onListing('work-arrived', 'work', async (page, drive) => {
    const own = page.getByRole('main').getByRole('textbox')
    for (const [n, figure] of ['41.3', '52', '32'].entries()) {
      await own.nth(n).fill(figure)
      await own.nth(n).press('Tab')
    }
    // where it does not sit right, and how
    await page.getByRole('radio').first().check()
    await page.getByRole('radio', { name: words(drive, 'tryon.spare') }).check()
  }),
  onListing('work-tailor', 'work', (page, drive) => pressed(page, drive, 'sheet.make'), 'tailor'),
  room('work-gone', 'work/none'),
  room('open-gone', 'wishlist/none'),
  room(
    'wardrobe',
    'wardrobe',
    seeded(({ language }) => ownGarments(language)),
    true
  ),
  room('wardrobe-adding', 'wardrobe', (page, drive) => pressed(page, drive, 'wardrobe.add')),
  room('wardrobe-editing', 'wardrobe', (page, drive) =>
    page.getByRole('button', { name: words(drive, 'wardrobe.edit', { name: ownNames(drive)[0] ?? '' }) }).click()
  ),
  room('undo-bar', 'wardrobe', (page, drive) =>
    page.getByRole('button', { name: words(drive, 'wardrobe.remove', { name: ownNames(drive).at(-1) ?? '' }) }).click()
  ),
  room('body', 'body'),
  room('body-unfolded', 'body', unfolded),
  room('settings', 'settings'),
  room('settings-unfolded', 'settings', unfolded),
  room('alterations', 'what-can-be-altered'),
  room('backup', 'backup'),
  room('help', 'help'),
  room('help-tape', 'help/tape'),
  room('help-unfolded', 'help', unfolded),
  room('look', 'listing-you-had-open'),
  room('wishlist-many', 'wishlist', async (page, drive) => {
    const kept = (await rowsOf(page, 'listingsKept')).filter(({ deletedAt }) => deletedAt === null)
    const many = Array.from({ length: 40 }, (_, n) => ({ ...kept[n % kept.length], id: `many-${n}` }))
    await seeded(() => ({ listingsKept: many, ...ANEW }))(page, drive)
  }),
  room('unreadable', 'wishlist', async (page, drive) => {
    const [id] = await keptIds(page)
    await seeded(() => ({ listingsKept: [{ id, title: 7 }], ...ANEW }))(page, drive)
  }),
  room('not-saved', 'wardrobe', async (page) => {
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw Object.assign(new Error('full'), { name: 'QuotaExceededError' })
      }
    })
    await page.locator('main button[aria-pressed]').first().click()
    await page.waitForTimeout(500)
  }),
  broken('not-opened', 'wishlist', () => {
    IDBFactory.prototype.open = () => {
      throw Object.assign(new Error('no access'), { name: 'SecurityError' })
    }
  })
]
