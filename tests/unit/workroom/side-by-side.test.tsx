// @vitest-environment happy-dom
import { afterEach, expect, test, vi } from 'vitest'
import type { ListingShown } from '../../../components/workroom/shown.ts'
import { isThere, shortNames, sideBySide } from '../../../components/workroom/wishlist/side-by-side.ts'
import { WishlistPage } from '../../../components/workroom/wishlist/wishlist-page.tsx'
import type { GarmentMeasure } from '../../../core/garment/garment-input.ts'
import { reckon } from '../../../core/reckon.ts'
import { keptListing } from '../components/fixtures.ts'
import { hide, inPage, press, show, shownText } from '../on-page.tsx'

afterEach(hide)

const BODY = { waistbandGirth: { mm: 750 }, hipGirth: { mm: 1000 } }
const listing = (id: string, title: string, figures: Partial<Record<'waist' | 'hip' | 'inseam', number>>) =>
  keptListing({
    id,
    title,
    site: 'rail-and-peg.example',
    keptAt: `2026-03-01T09:0${id}:00.000Z`,
    price: null,
    now: reckon(
      {
        garment: {
          kind: 'trousers',
          measures: Object.entries(figures).map(([point, mm]): GarmentMeasure => ({ point: point as 'waist', mm, source: 'seller' }))
        },
        wearer: { body: BODY, fit: 'regular' },
        means: { level: 3, tailor: false }
      },
      { outlook: false }
    )
  })
const flannel = listing('1', 'Charcoal flannel trousers', { waist: 812, hip: 1060 })
const linen = listing('2', 'Sand linen trousers', { waist: 780, hip: 1080 })
const cord = listing('3', 'Rust cord trousers', { waist: 840, hip: 1100 })
const denim = listing('4', 'Blue denim trousers', { waist: 800, hip: 1050 })

test('one stretch of tape shows all of them, and the shared wish is told once', () => {
  const large = listing('5', 'Large trousers', { waist: 1100, hip: 1300 })
  const waist = sideBySide([flannel, large], 'cm').find(({ point }) => point === 'waist')
  const tapes = waist?.tapes.filter(isThere) ?? []
  expect(tapes.map(({ shown }) => shown.garmentMm)).toEqual([812, 1100])
  expect(waist?.band).toEqual(tapes[0]?.shown.band)
  for (const { shown, afterMm } of tapes) {
    const { garmentMm, sdMm, band } = shown
    const marks = [(garmentMm ?? 0) - 1.645 * sdMm, (garmentMm ?? 0) + 1.645 * sdMm, band?.least ?? 0, band?.most ?? 0, afterMm]
    for (const mark of marks.filter((one) => typeof one === 'number')) {
      expect(mark).toBeGreaterThanOrEqual(waist?.stretch.fromMm ?? Number.NaN)
      expect(mark).toBeLessThanOrEqual(waist?.stretch.toMm ?? Number.NaN)
    }
  }
  // the plan takes the larger waist in, and its lane is drawn
  expect(tapes[0]?.afterMm).toBeLessThan(812)
})

test('a wish that differs is told on each tape; what is not reckoned has none', () => {
  const other: ListingShown = { ...linen, id: '9', now: null }
  const both = sideBySide([flannel, other], 'cm')
  expect(both.length).toBeGreaterThan(0)
  expect(both.every(({ tapes }) => tapes[1] === 'untold')).toBe(true)
  const shirt: ListingShown = { ...other, kind: 'shirt' }
  const byPoint = new Map(sideBySide([flannel, shirt], 'cm').map(({ point, tapes }) => [point, tapes[1]]))
  expect([byPoint.get('waist'), byPoint.get('thigh')]).toEqual(['untold', 'no-such-point'])
  const wider = structuredClone(linen)
  const gap = wider.now?.gaps.find(({ point }) => point === 'waist')
  if (gap?.band) gap.band = { ...gap.band, most: (gap.band.most ?? 0) + 50 }
  expect(sideBySide([flannel, wider], 'cm').find(({ point }) => point === 'waist')?.band).toBeNull()
})

test('short names are the words that tell the titles apart', () => {
  expect(shortNames(['Charcoal flannel trousers', 'Sand linen trousers'])).toEqual(['Charcoal flannel', 'Sand linen'])
  expect(shortNames(['Grey trousers', 'grey trousers, cuffed'])).toEqual(['', 'Cuffed'])
})

test('two or three are ticked and set side by side; a fourth is not', () => {
  show(
    <WishlistPage
      listings={[flannel, linen, cord, denim]}
      currency="GBP"
      ready
      cardOf={(id) => `#card/${id}`}
      onOpen={vi.fn()}
      workOf={(id) => `#work/${id}`}
      onEdit={vi.fn()}
      onStatus={vi.fn()}
      onRemove={vi.fn()}
      onPicture={vi.fn()}
      onNoPicture={vi.fn()}
      pictureProblem={null}
      today="2026-03-09"
    />
  )
  const compare = () => [...inPage().querySelectorAll('button')].find((one) => one.textContent?.startsWith('Compare '))
  expect(compare()?.disabled).toBe(true)
  press('Compare Charcoal flannel trousers')
  expect(compare()?.disabled).toBe(true)
  press('Compare Sand linen trousers')
  press('Compare 2')
  expect(shownText()).toContain('2 side by side')
  const waist = [...inPage().querySelectorAll('.wr-point-row')].find((row) => row.querySelector('h3')?.textContent === 'Waist')
  expect(waist?.querySelectorAll('svg[role="img"]')).toHaveLength(2)
  expect([...(waist?.querySelectorAll('.wr-tape-of .note') ?? [])].map((one) => one.textContent)).toEqual([
    'Charcoal flannel',
    'Sand linen'
  ])
  press('Compare Rust cord trousers')
  expect(shownText()).toContain('3 side by side')
  expect(shownText()).toContain('Three fit side by side')
  expect(inPage().querySelector<HTMLInputElement>('input[aria-label="Compare Blue denim trousers"]')?.disabled).toBe(true)
  press('Compare Rust cord trousers')
  press('Compare Sand linen trousers')
  expect(inPage().querySelector('.wr-compare')).toBeNull()
})
