import { expect, test } from 'vitest'
import { ALL_PAGES } from '../../../components/workroom/frame.tsx'
import { pricesFrom } from '../../../components/workroom/settings/price-list.tsx'
import { addressOf, routeOf } from '../../../entrypoints/workroom/use-route.ts'

test.each([
  ['', 'wishlist', null],
  ['#body', 'body', null],
  ['#garments', 'wardrobe', null],
  ['#wardrobe', 'wardrobe', null],
  ['#wishlist/a%2Fb', 'wishlist', 'a/b'],
  ['#body/a', 'body', null],
  ['#alterations', 'alterations', null],
  ['#first', 'first', null],
  ['#first-visit', 'first', null],
  ['#what-can-be-altered', 'alterations', null],
  ['#card-for-the-shop/a', 'card', 'a'],
  ['#settings', 'settings', null],
  ['#help/tape', 'help', 'tape'],
  ['#look', 'look', null],
  ['#card/a%2Fb', 'card', 'a/b'],
  ['#card', 'card', null],
  ['#nonsense', 'wishlist', null],
  ['#wishlist/%', 'wishlist', '%']
])('%s is the part %s', (hash, page, open) => {
  expect(routeOf(hash)).toEqual({ page, open })
})

test('a page is found again at its own address', () => {
  for (const page of ALL_PAGES) expect(routeOf(addressOf(page)).page).toBe(page)
  expect(routeOf(addressOf('wishlist', 'a/b'))).toEqual({ page: 'wishlist', open: 'a/b' })
})

test('prices are taken where something is typed, and not at all where one is no amount', () => {
  expect(pricesFrom({ 'leg-taper': '12,50', 'waist-in-darts': '' })).toEqual({ 'leg-taper': 12.5 })
  expect(pricesFrom({ 'leg-taper': '12', 'waist-in-darts': 'a lot' })).toBeNull()
})
