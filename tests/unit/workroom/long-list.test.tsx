// @vitest-environment happy-dom
/** A long wishlist: rows in view are drawn and some around them, the row with the keyboard stays, a short one is drawn whole; its order is the old one. */
import { act, fireEvent } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import type { FindShown, ListingShown } from '../../../components/workroom/shown.ts'
import {
  chanceOf,
  found,
  minutesOf,
  SEARCH_ALL,
  type Search,
  spendOf,
  verdictOf,
  wayOf
} from '../../../components/workroom/wishlist/listing-order.ts'
import { DRAWN_WHOLE } from '../../../components/workroom/wishlist/use-lines.ts'
import { WishlistPage, type WishlistPageProps } from '../../../components/workroom/wishlist/wishlist-page.tsx'
import { GARMENT_KINDS } from '../../../core/ids/kinds.ts'
import { STATUSES } from '../../../core/ids/listing-statuses.ts'
import { VERDICTS } from '../../../core/ids/verdicts.ts'
import { randomFrom } from '../../law/requests.ts'
import { keptListing } from '../components/fixtures.ts'
import { hide, inPage, show as onPage, textOf, type } from '../on-page.tsx'

const ROW = 138
/** happy-dom lays nothing out: each line is as tall as a row is, and the page scrolls to where it is told. */
beforeEach(() => {
  vi.spyOn(HTMLElement.prototype, 'offsetHeight', 'get').mockReturnValue(ROW)
  vi.stubGlobal('innerHeight', 800)
  Object.assign(window, { scrollY: 0 })
})
afterEach(() => {
  hide()
  vi.restoreAllMocks()
  vi.unstubAllGlobals()
})

const finds = (count: number): ListingShown[] =>
  Array.from({ length: count }, (_, n) =>
    keptListing({ id: `l${n}`, title: `find ${n}`, keptAt: new Date(Date.UTC(2026, 0, 1, 0, n)).toISOString() })
  )
function show(listings: readonly FindShown[], over: Partial<WishlistPageProps> = {}, again = false) {
  const props = {
    ...{ listings, currency: 'GBP', ready: true, today: '2026-03-09', pictureProblem: null },
    ...{ onOpen: vi.fn(), cardOf: (id: string) => `#card/${id}`, workOf: (id: string) => `#work/${id}` },
    ...{ onEdit: vi.fn(async () => true), onStatus: vi.fn(), onRemove: vi.fn(), onPicture: vi.fn(), onNoPicture: vi.fn() },
    ...over
  }
  onPage(<WishlistPage {...props} />, {}, again)
  return props
}
const rows = () => [...inPage().querySelectorAll<HTMLElement>('tr[data-listing]')]
const titles = () => rows().map((row) => textOf(row.querySelector('.wr-title')))
const table = () => inPage().querySelector('table')
async function scrollTo(px: number): Promise<void> {
  Object.assign(window, { scrollY: px })
  await act(async () => {
    window.dispatchEvent(new Event('scroll'))
    await new Promise((done) => setTimeout(done, 20))
  })
}

test('a list of no more than a few screens is drawn whole', () => {
  show(finds(DRAWN_WHOLE))
  expect(rows()).toHaveLength(DRAWN_WHOLE)
  expect(inPage().textContent).not.toContain('Only the rows near the screen')
  expect(inPage().querySelectorAll('.wr-room')).toHaveLength(0)
})

test('of a thousand only those near the screen are drawn; how many there are and which these are is told', async () => {
  const inView = vi.fn()
  show(finds(1000), { onInView: inView })
  expect(rows().length).toBeLessThan(30)
  expect(titles()[0]).toBe('find 999')
  expect(table()?.getAttribute('aria-rowcount')).toBe('1001')
  expect(rows().map((row) => row.getAttribute('aria-rowindex'))).toEqual(rows().map((_, n) => String(n + 2)))
  expect(inPage().textContent).toContain('Only the rows near the screen are drawn')
  expect(inPage().textContent).toContain(`Rows 1 to ${rows().length} of 1000`)
  await scrollTo(500 * ROW)
  expect(rows().length).toBeLessThan(30)
  expect(titles()).toContain('find 495')
  expect(titles()).not.toContain('find 999')
  expect(rows()[0]?.getAttribute('aria-rowindex')).toBe(String(999 - Number(titles()[0]?.slice(5)) + 2))
  const ids = there(inView.mock.calls.at(-1))[0]
  expect(ids).toEqual(rows().map((row) => row.dataset.listing))
})

test('the room for what is not drawn is as tall as that would be', async () => {
  show(finds(1000))
  await scrollTo(300 * ROW)
  const rooms = [...inPage().querySelectorAll<HTMLElement>('.wr-room td')].map((one) => Number.parseFloat(one.style.height))
  expect(rooms).toHaveLength(2)
  const drawn = rows().length
  const first = Number(rows()[0]?.getAttribute('aria-rowindex')) - 2
  // rows that were not drawn yet are taken to be as tall as they mostly are: a pixel off at most
  const off = (room: number | undefined, lines: number) => Math.abs((room ?? 0) - lines * ROW) / lines
  expect(off(rooms[0], first)).toBeLessThan(1)
  expect(off(rooms[1], 1000 - first - drawn)).toBeLessThan(1)
})

test('the row with the keyboard stays drawn, wherever the page is scrolled', async () => {
  show(finds(1000))
  const status = rows()[2]?.querySelector('select')
  act(() => status?.focus())
  await scrollTo(600 * ROW)
  expect(document.activeElement).toBe(status)
  expect(titles()[0]).toBe('find 997')
  expect(titles()[1]).toBe(`find ${there(Number(titles()[1]?.slice(5)))}`)
  expect(inPage().querySelectorAll('.wr-room')).toHaveLength(3)
  await scrollTo(0)
  expect(document.activeElement).toBe(status)
})

test('after a row is removed the one in its place has the focus, far down, too', async () => {
  const listings = finds(1000)
  const props = show(listings)
  await scrollTo(400 * ROW)
  const row = there(rows()[6])
  const next = titles()[7]
  const remove = there([...row.querySelectorAll('button')].find((one) => textOf(one) === 'Remove'))
  act(() => remove.focus())
  fireEvent.click(remove)
  expect(props.onRemove).toHaveBeenCalledExactlyOnceWith(row.dataset.listing)
  show(
    listings.filter(({ id }) => id !== row.dataset.listing),
    {},
    true
  )
  await act(() => new Promise<void>((done) => setTimeout(done, 20)))
  expect(textOf(document.activeElement)).toBe(next)
})

test('what is looked for is found in all of them, drawn or not', () => {
  show(finds(1000))
  type('Find', '17')
  const wanted = Array.from({ length: 1000 }, (_, n) => `find ${999 - n}`).filter((title) => title.includes('17'))
  expect(wanted).toHaveLength(20)
  expect(titles()).toEqual(wanted)
})

/** Filtering and ordering as it was before there were ranks and kept texts: the order must be the same, ties as well. */
function foundBefore(listings: readonly FindShown[], search: Search, language?: string): FindShown[] {
  const words = search.find.toLowerCase().split(/\s+/).filter(Boolean)
  const most = (value: number | null, limit: number | null) => limit === null || (value !== null && value <= limit)
  const wanted = listings.filter((one) => {
    const { status, verdict, kind, minutesMost, spendMost } = search
    if (status !== null && one.status !== status) return false
    if ((verdict !== null && verdictOf(one) !== verdict) || (kind !== null && one.kind !== kind)) return false
    if (!most(minutesOf(one), minutesMost) || !most(spendOf(one), spendMost)) return false
    const text = [one.title, one.site, one.notes, one.kind ?? '', ...one.tags].join(' ').toLowerCase()
    return words.every((word) => text.includes(word))
  })
  const sign = wayOf(search) === 'ascending' ? 1 : -1
  const collator = new Intl.Collator(language)
  const rank = (one: FindShown): number | null => {
    const verdict = verdictOf(one)
    if (search.order === 'verdict') return verdict === null ? null : VERDICTS.length - VERDICTS.indexOf(verdict)
    if (search.order === 'chance') return chanceOf(one)
    if (search.order === 'spend') return spendOf(one)
    if (search.order === 'minutes') return minutesOf(one)
    return STATUSES.indexOf(one.status)
  }
  const compare = (a: FindShown, b: FindShown): number => {
    if (search.order === 'title') return sign * collator.compare(a.title, b.title)
    if (search.order === 'kept') return a.keptAt === b.keptAt ? 0 : a.keptAt < b.keptAt ? -sign : sign
    const [one, other] = [rank(a), rank(b)]
    if (one === null || other === null) return one === other ? 0 : one === null ? 1 : -1
    return sign * (one - other)
  }
  return wanted.sort((a, b) => compare(a, b) || (a.keptAt < b.keptAt ? 1 : -1))
}

test('every order and filter gives the same finds in the same order as before, ties as well (seed 7)', () => {
  const random = randomFrom(7)
  const from = <T,>(all: readonly T[]): T => all[Math.floor(random() * all.length)] as T
  const WORDS = ['Äpfel', 'apfel', 'Zebra', 'öl', 'Oel', 'rust cord', 'Rust cord', 'éclair', 'Ecru', '']
  const brief = () =>
    random() < 0.3
      ? null
      : {
          ...{ verdict: from(VERDICTS), chance: from([null, 0.2, 0.5, 0.5]), chanceIf: null },
          ...{ minutes: from([0, 30, 60, 106]), level: 2, spend: from([null, 12, 29.9]) }
        }
  let compared = 0
  for (const count of [0, 1, 7, 40, 300]) {
    const listings: FindShown[] = Array.from({ length: count }, (_, n) => ({
      ...keptListing({
        ...{ id: `l${n}`, title: `${from(WORDS)} ${from(WORDS)}`, notes: from(WORDS), tags: [from(WORDS)], status: from(STATUSES) },
        ...{
          kind: from([...GARMENT_KINDS, null]),
          price: from([null, 5, 24]),
          keptAt: from([...WORDS.keys()].map((day) => `2026-03-0${day}T09:00:00.000Z`))
        }
      }),
      brief: brief()
    }))
    for (const language of ['en', 'de', 'sv'])
      for (const order of ['kept', 'title', 'verdict', 'minutes', 'spend', 'chance', 'status'] as const)
        for (const turned of [false, true])
          for (const over of [{}, { find: 'rust' }, { status: 'asked' as const }, { minutesMost: 60 }, { spendMost: 24, find: 'o' }]) {
            const search = { ...SEARCH_ALL, order, turned, ...over }
            expect(found(listings, search, language).map(({ id }) => id)).toEqual(
              foundBefore(listings, search, language).map(({ id }) => id)
            )
            compared++
          }
  }
  expect(compared).toBe(5 * 3 * 7 * 2 * 5)
})

function there<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('expected something, found nothing')
  return value
}
