import { expect, test } from 'vitest'
import type { ListingShown } from '../../../components/workroom/shown.ts'
import { found, ordered, SEARCH_ALL, type Search, spendOf, wayOf } from '../../../components/workroom/wishlist/listing-order.ts'
import { keptListing } from '../components/fixtures.ts'

let ids = 0
const listing = (over: Partial<ListingShown>) =>
  keptListing({
    id: String(ids++),
    title: '',
    site: '',
    keptAt: `2026-03-01T09:${String(ids).padStart(2, '0')}:00.000Z`,
    price: null,
    kind: null,
    ...over
  })
const then = (verdict: NonNullable<ListingShown['verdictThen']>['verdict'], chance: number | null, minutes: number) => ({
  verdict,
  chance,
  level: 2,
  minutes,
  spend: null,
  jobs: []
})
const listings = [
  listing({ title: 'Flannels', site: 'rail-and-peg.example', verdictThen: then('alters-to-fit', 0.8, 100), tags: ['wool'], price: 24 }),
  listing({ title: 'Anorak', status: 'passed' }),
  listing({ title: 'Poplin shirt', verdictThen: then('wears-as-is', 0.6, 0), notes: 'two-piece collar, wool blend', price: 12 }),
  listing({ title: 'Hopsack jacket', verdictThen: then('too-little-told', null, 10), kind: 'jacket' })
]
const titles = (search: Partial<Search>) => found(listings, { ...SEARCH_ALL, ...search }).map(({ title }) => title)

test('the last kept comes first', () => {
  expect(titles({})).toEqual(['Hopsack jacket', 'Poplin shirt', 'Anorak', 'Flannels'])
})
test('every word looked for stands somewhere in title, site, notes, tags or kind', () => {
  expect(titles({ find: 'WOOL' })).toEqual(['Poplin shirt', 'Flannels'])
  expect(titles({ find: 'wool  peg' })).toEqual(['Flannels'])
  expect(titles({ find: 'jacket' })).toEqual(['Hopsack jacket'])
  expect(titles({ find: 'velvet' })).toEqual([])
})
test('by verdict best first; too little told after all judged; not reckoned last', () => {
  expect(titles({ order: 'verdict' })).toEqual(['Poplin shirt', 'Flannels', 'Hopsack jacket', 'Anorak'])
})
test('by chance, cost, time and title; what is not known comes last', () => {
  expect(titles({ order: 'chance' })).toEqual(['Flannels', 'Poplin shirt', 'Hopsack jacket', 'Anorak'])
  expect(titles({ order: 'spend' })).toEqual(['Poplin shirt', 'Flannels', 'Hopsack jacket', 'Anorak'])
  expect(titles({ order: 'minutes' })).toEqual(['Poplin shirt', 'Hopsack jacket', 'Flannels', 'Anorak'])
  expect(titles({ order: 'title' })).toEqual(['Anorak', 'Flannels', 'Hopsack jacket', 'Poplin shirt'])
})
test('only one status or verdict', () => {
  expect(titles({ status: 'passed' })).toEqual(['Anorak'])
  expect(titles({ verdict: 'wears-as-is' })).toEqual(['Poplin shirt'])
})
test('turned about, what is known goes the other way, and what is not known still comes last', () => {
  expect(titles({ order: 'verdict', turned: true })).toEqual(['Hopsack jacket', 'Flannels', 'Poplin shirt', 'Anorak'])
  expect(titles({ order: 'minutes', turned: true })).toEqual(['Flannels', 'Hopsack jacket', 'Poplin shirt', 'Anorak'])
  expect(titles({ turned: true })).toEqual(['Flannels', 'Anorak', 'Poplin shirt', 'Hopsack jacket'])
})
test('a head pressed orders by it, what one looks for on top; pressed again it turns the list about', () => {
  const once = ordered(SEARCH_ALL, 'chance')
  expect([once.order, wayOf(once)]).toEqual(['chance', 'descending'])
  const twice = ordered(once, 'chance')
  expect([twice.order, wayOf(twice)]).toEqual(['chance', 'ascending'])
  expect(wayOf(ordered(twice, 'spend'))).toBe('ascending')
})
test('only one kind, so much work and no more, so much money and no more; what is not known does not pass', () => {
  expect(titles({ kind: 'jacket' })).toEqual(['Hopsack jacket'])
  expect(titles({ minutesMost: 0 })).toEqual(['Poplin shirt'])
  expect(titles({ minutesMost: 60 })).toEqual(['Hopsack jacket', 'Poplin shirt'])
  expect(titles({ spendMost: 20 })).toEqual(['Poplin shirt'])
  expect(titles({ spendMost: 24, find: 'wool' })).toEqual(['Poplin shirt', 'Flannels'])
})
test('the list given is not turned about', () => {
  const before = [...listings]
  found(listings, { ...SEARCH_ALL, order: 'title' })
  expect(listings).toEqual(before)
})
test('what it costs is the answer of now, else of then, else the price', () => {
  expect(spendOf(listing({ price: 12 }))).toBe(12)
  expect(spendOf(listing({ price: 12, verdictThen: { ...then('leave-it', 0, 0), spend: 30 } }))).toBe(30)
})
