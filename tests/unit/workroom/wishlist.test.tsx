// @vitest-environment happy-dom
/** The wishlist as a person drives it: order, filters, and what is changed in a row itself. */
import { act, fireEvent } from '@testing-library/preact'
import { afterEach, expect, test, vi } from 'vitest'
import { DraftsHeld } from '../../../components/workroom/drafts.tsx'
import type { ListingShown } from '../../../components/workroom/shown.ts'
import { WishlistPage, type WishlistPageProps } from '../../../components/workroom/wishlist/wishlist-page.tsx'
import { paintedSize } from '../../../entrypoints/workroom/picture-file.ts'
import { listingShown } from '../../../entrypoints/workroom/wishlist-part.tsx'
import { keptListing } from '../components/fixtures.ts'
import { button, field, fill, hide, inPage, key, show as onPage, press, shownText, textOf, type } from '../on-page.tsx'

afterEach(hide)

const AT = '2026-03-01T09:00:00.000Z'
const then = (verdict: NonNullable<ListingShown['verdictThen']>['verdict'], minutes: number, spend: number) => ({
  verdict,
  chance: 0.6,
  level: 2,
  minutes,
  spend,
  jobs: []
})
const kept = (id: string, over: Partial<ListingShown>) => keptListing({ id, title: id, site: 'rail-and-peg.example', ...over })
const three = [
  kept('Flannels', {
    verdictThen: then('alters-to-fit', 106, 29.9),
    money: { price: 24, postage: 3.9, worth: 55 },
    keptAt: '2025-10-12T11:00:00.000Z'
  }),
  kept('Anorak', { price: null, status: 'passed', kind: 'coat', keptAt: '2026-03-02T12:00:00.000Z' }),
  kept('Poplin shirt', { verdictThen: then('wears-as-is', 0, 12.5), kind: 'shirt', notes: 'two-piece collar' })
]
const pageProps = (listings: readonly ListingShown[]) =>
  ({
    listings,
    currency: 'GBP',
    ready: true,
    today: '2026-03-09',
    onOpen: vi.fn(),
    cardOf: (id: string) => `#card/${id}`,
    workOf: (id: string) => `#work/${id}`,
    onEdit: vi.fn<WishlistPageProps['onEdit']>(async () => true),
    onStatus: vi.fn(),
    onRemove: vi.fn(),
    onPicture: vi.fn(),
    onNoPicture: vi.fn(),
    pictureProblem: null
  }) satisfies WishlistPageProps
function show(listings: readonly ListingShown[] = three, again = false) {
  const props = pageProps(listings)
  onPage(<WishlistPage {...props} />, {}, again)
  return props
}
const titles = () => [...inPage().querySelectorAll('tbody .wr-title')].map(textOf)
const head = (name: string) => button(name).closest('th')
const rowOf = (title: string) => [...inPage().querySelectorAll('tbody tr')].find((row) => textOf(row).includes(title))

test('the head of a column orders by it, says which way, and pressed again turns it about', () => {
  show()
  expect(titles()).toEqual(['Anorak', 'Poplin shirt', 'Flannels'])
  expect(head('Kept')?.getAttribute('aria-sort')).toBe('descending')
  press('Answer')
  expect(titles()).toEqual(['Poplin shirt', 'Flannels', 'Anorak'])
  expect(head('Answer')?.getAttribute('aria-sort')).toBe('descending')
  expect(head('Kept')?.hasAttribute('aria-sort')).toBe(false)
  press('Work')
  expect(titles()).toEqual(['Poplin shirt', 'Flannels', 'Anorak'])
  press('Work')
  expect(titles()).toEqual(['Flannels', 'Poplin shirt', 'Anorak'])
  expect(head('Work')?.getAttribute('aria-sort')).toBe('descending')
})

test('filters narrow the list, are counted, and go in one press', () => {
  show()
  fill('Kind', 'shirt')
  expect(titles()).toEqual(['Poplin shirt'])
  expect([...field('Kind').querySelectorAll('option')].map(textOf)).toEqual(['Any', 'Trousers', 'Shirt', 'Coat'])
  fill('Kind', 'any')
  fill('Work, at most', '0')
  expect(titles()).toEqual(['Poplin shirt'])
  fill('Work, at most', 'any')
  fill('In all, at most', '29.90')
  expect(titles()).toEqual(['Poplin shirt', 'Flannels'])
  fill('Status', 'passed')
  expect(titles()).toEqual([])
  expect(shownText()).toContain('Filters: 2 set')
  expect(inPage().querySelector('[role="status"]')?.textContent).toContain('No listing you kept matches')
  press('Show all again')
  expect(titles()).toHaveLength(3)
})

test('a bad amount in a filter is told at its field, and the list stays', () => {
  show()
  fill('In all, at most', 'a lot')
  expect(field('In all, at most').getAttribute('aria-invalid')).toBe('true')
  expect(titles()).toHaveLength(3)
})

test('money and days are written as people write them', () => {
  show()
  expect(textOf(rowOf('Flannels'))).toContain('£29.90')
  expect(textOf(rowOf('Flannels'))).toContain('£24.00 + £3.90 post')
  expect(textOf(rowOf('Flannels'))).toContain('12 Oct 2025')
  expect(textOf(rowOf('Anorak')?.querySelector('time'))).toBe('2 Mar')
})

test('a price in another currency is written in that one, and is no part of what it costs in all', () => {
  const record = {
    ...{ id: 'x', device: 'd', revision: 1, createdAt: AT, updatedAt: AT, deletedAt: null, keptAt: AT, request: null, verdictThen: null },
    ...{ address: '', title: 'Abroad', site: '', text: '', textCutFrom: null, structured: [], images: [], corrections: [], answers: [] },
    ...{ notes: '', tags: [], status: 'watching' as const, personId: null, fit: null, favouriteId: null, aim: null },
    price: { amount: 20, currency: 'USD' },
    money: { price: null, postage: null, worth: null }
  }
  const shown = listingShown(record, null, 'GBP')
  expect(shown.price).toBeNull()
  show([shown])
  expect(textOf(rowOf('Abroad')?.querySelector('.c-mo'))).toBe('In all–US$20.00 asked')
})

test('the status is a word in the row that opens its choices', () => {
  const { onStatus } = show()
  const status = field('Status of Poplin shirt')
  expect([...status.querySelectorAll('option')].map(textOf)).toEqual(['Thinking about it', 'Asked', 'Bought', 'Not for me'])
  fireEvent.change(status, { target: { value: 'bought' } })
  expect(onStatus).toHaveBeenCalledExactlyOnceWith('Poplin shirt', 'bought')
})

test('notes are kept when their field is left or Enter is pressed, and Escape brings back what was there', async () => {
  const { onEdit } = show()
  type('Notes on Poplin shirt', 'half')
  expect(onEdit).not.toHaveBeenCalled()
  key('Notes on Poplin shirt', 'Escape')
  expect(field('Notes on Poplin shirt').value).toBe('two-piece collar')
  type('Notes on Poplin shirt', 'ask for the sleeve')
  key('Notes on Poplin shirt', 'Enter')
  expect(onEdit).toHaveBeenCalledExactlyOnceWith('Poplin shirt', { notes: 'ask for the sleeve' }, { notes: 'two-piece collar' })
  fill('Notes on Flannels', 'worn once')
  expect(onEdit).toHaveBeenLastCalledWith('Flannels', { notes: 'worn once' }, { notes: '' })
  // left as it was: nothing is written
  fill('Notes on Anorak', ' ')
  expect(onEdit).toHaveBeenCalledTimes(2)
})

test('notes that could not be saved stay in their field, and what is typed while they are saved is not lost', async () => {
  const { onEdit } = show()
  let answer: (saved: boolean) => void = () => undefined
  onEdit.mockImplementation(
    () =>
      new Promise((done) => {
        answer = done
      })
  )
  const answered = async (saved: boolean) => act(async () => answer(saved))
  fill('Notes on Flannels', 'worn once')
  await answered(false)
  expect(field('Notes on Flannels').value).toBe('worn once')
  key('Notes on Flannels', 'Enter')
  type('Notes on Flannels', 'worn once, small hole')
  await answered(true)
  expect(field('Notes on Flannels').value).toBe('worn once, small hole')
  key('Notes on Flannels', 'Enter')
  expect(onEdit).toHaveBeenLastCalledWith('Flannels', { notes: 'worn once, small hole' }, { notes: 'worn once' })
})

test('notes on a listing that is removed elsewhere are told, until they are read', () => {
  const held = new Map<string, unknown>()
  const page = (listings: readonly ListingShown[], again: boolean) =>
    onPage(
      <DraftsHeld.Provider value={held}>
        <WishlistPage {...pageProps(listings)} />
      </DraftsHeld.Provider>,
      {},
      again
    )
  page(three, false)
  type('Notes on Flannels', 'ask for the rise')
  page(
    three.filter(({ id }) => id !== 'Flannels'),
    true
  )
  expect(textOf(inPage().querySelector('[role="alert"]'))).toContain('ask for the rise')
  press('Close')
  expect(inPage().querySelector('[role="alert"]')).toBeNull()
})

test('a find that is bought leads to its work sheet', () => {
  show([kept('Cord skirt', { status: 'bought' }), kept('Linen skirt', {})])
  const ways = (title: string) => [...(rowOf(title)?.querySelectorAll('a') ?? [])].map((link) => link.getAttribute('href'))
  expect(ways('Cord skirt')).toEqual(['#work/Cord skirt'])
  expect(ways('Linen skirt')).toEqual([])
})

test('Change puts the focus into the form; Escape closes it and gives the focus back', async () => {
  const { onEdit } = show()
  press('Change Flannels')
  expect(document.activeElement).toBe(field('Price'))
  type('Price', '20')
  fireEvent.keyDown(field('Price'), { key: 'Escape' })
  await act(() => new Promise((done) => requestAnimationFrame(() => done(undefined))))
  expect(onEdit).not.toHaveBeenCalled()
  expect(document.activeElement).toBe(button('Change Flannels'))
})

test('when a removed row goes, the next one has the focus', () => {
  show()
  button('Remove Poplin shirt').focus()
  press('Remove Poplin shirt')
  show(
    three.filter(({ id }) => id !== 'Poplin shirt'),
    true
  )
  expect(textOf(document.activeElement)).toBe('Flannels')
})

test('a listing shows the picture it was given, else a drawing, whatever its kind and whether it has an answer', () => {
  const dot = 'data:image/png;base64,AAAA'
  show([kept('With', { picture: dot }), kept('Bare', { kind: null }), kept('Dress', { kind: 'dress' })])
  expect(rowOf('With')?.querySelector('img')?.getAttribute('src')).toBe(dot)
  expect(rowOf('With')?.querySelector('img')?.getAttribute('alt')).toBe('Your picture of With')
  for (const title of ['Bare', 'Dress']) expect(rowOf(title)?.querySelector('.c-th svg')?.getAttribute('aria-label')).toBeTruthy()
})

test('a picture is chosen as a file or dropped, and taken away again', () => {
  const { onPicture, onNoPicture } = show([kept('With', { picture: 'data:image/png;base64,AAAA' })])
  press('Change With')
  const file = new File(['x'], 'x.png', { type: 'image/png' })
  fireEvent.change(field('Choose another picture'), { target: { files: [file] } })
  expect(onPicture).toHaveBeenCalledExactlyOnceWith('With', file)
  const place = inPage().querySelector('.wr-picture')
  if (place === null) throw new Error('nowhere to drop')
  fireEvent(place, Object.assign(new Event('drop', { bubbles: true, cancelable: true }), { dataTransfer: { files: [file] } }))
  expect(onPicture).toHaveBeenCalledTimes(2)
  press('Remove the picture')
  expect(onNoPicture).toHaveBeenCalledExactlyOnceWith('With')
})

test('a picture is painted with its longest edge at 640 px, and never larger than it is', () => {
  expect(paintedSize(4000, 3000)).toEqual({ width: 640, height: 480 })
  expect(paintedSize(900, 1600)).toEqual({ width: 360, height: 640 })
  expect(paintedSize(300, 200)).toEqual({ width: 300, height: 200 })
  expect(paintedSize(5000, 1)).toEqual({ width: 640, height: 1 })
})
