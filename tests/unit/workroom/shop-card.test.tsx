// @vitest-environment happy-dom
import { afterEach, describe, expect, test, vi } from 'vitest'
import type { ListingShown } from '../../../components/workroom/shown.ts'
import { cardRows, pricesThatPay } from '../../../components/workroom/wishlist/card-rows.ts'
import { ShopCard } from '../../../components/workroom/wishlist/shop-card.tsx'
import { POINTS } from '../../../core/ids/points.ts'
import { figure } from '../../../core/length.ts'
import { conditionShown } from '../../../core/plan/answer/conditions-said.ts'
import type { Reckoning } from '../../../core/reckon.ts'
import { HIP, hangingOn, INSEAM, keptListing, leaveIt, tooLittle, trousersReckoning, wearsAsIs } from '../components/fixtures.ts'
import { hide, inPage, press, show, shownText, textOf } from '../on-page.tsx'

const kept = (now: Reckoning | null, over: Partial<ListingShown> = {}) => keptListing({ now, ...over })
const onPrint = vi.fn()
const card = (listing: ListingShown) => show(<ShopCard listing={listing} onPrint={onPrint} />, { units: 'in' })
const part = (head: string): string =>
  textOf([...inPage().querySelectorAll('section')].find((one) => textOf(one.querySelector('h2')) === head))
afterEach(hide)

describe('the card', () => {
  test('names the garment, its verdict and chance, what to measure, what to do, and the price that pays', () => {
    card(kept(hangingOn(HIP, INSEAM)))
    expect(textOf(inPage().querySelector('h1'))).toBe('Grey trousers')
    expect(shownText()).toContain('second-rail.example, £24.00 asked')
    expect(textOf(inPage().querySelector('.wr-verdict'))).toBe('Alters to fit')
    expect(textOf(inPage().querySelector('.wr-card-chance'))).toBe('Chance 6 in 10;8 in 10 if all of this is so')
    const rows = [...inPage().querySelectorAll('tbody tr')].map((row) => [...row.children].map(textOf))
    expect(rows).toEqual([
      ['Hip7⅞ in below the top of the waist', '19½–21', '39–42', ''],
      ['Inside legcrotch seam to bottom edge', '29–40', '']
    ])
    expect(part('Then do this')).toBe('Then do thisWaist in at the centre back: 1½ inLegs up, blind hem: 1 inLevel 3 of 5, 1 h 10')
    expect(part('What you can pay for it')).toBe(
      'What you can pay for itUp to £34.44 if all of this is so.Up to £33.00 while nobody has measured it.'
    )
  })
  test('is printed by one button', () => {
    card(kept(trousersReckoning))
    press('Print the card')
    expect(onPrint).toHaveBeenCalledOnce()
  })
  test('says so where nothing is left to measure, or to do', () => {
    card(kept(wearsAsIs))
    expect(part('Measure there')).toContain('Everything that matters is known.')
    expect(part('Then do this')).toBe('')
  })
  test('of what is to be left has the reason, and no work and no price', () => {
    card(kept(leaveIt))
    expect(shownText()).toContain('The shoulders are 1½ in too wide.')
    expect(part('Then do this')).toBe('')
    expect(part('What you can pay for it')).toBe('')
  })
  test('names what is missing where nothing can be judged, without a range', () => {
    card(kept(tooLittle))
    expect(part('Measure there')).toContain('Waist')
    expect(part('Measure there')).toContain('Note what it is')
  })
  test('says of a measure of one’s own that it is taken before', () => {
    const own = { body: 'hipGirth' as const, least: 960, most: null, chance: null, text: '' }
    card(kept({ ...trousersReckoning, conditions: [own] }))
    expect(part('Measure there')).toMatch(/Before you go, measure yourself: your own hip is .+ or more\.$/)
  })
  test('waits for its answer, and has nothing to print till then', () => {
    card(kept(null, { verdictThen: { verdict: 'alters-to-fit', chance: 0.4, level: 3, minutes: 60, spend: 30, jobs: [] } }))
    expect(shownText()).toContain('working out the answer')
    expect(inPage().querySelector('button')).toBeNull()
    card(kept(null))
    expect(shownText()).toContain('No answer yet.')
  })
  test('a title with markup is shown as it is written', () => {
    card(kept(trousersReckoning, { title: '<img src=x>' }))
    expect(inPage().querySelector('img')).toBeNull()
  })
})

describe('what is measured', () => {
  test.each(['cm', 'in'] as const)('has the figures that are said of it in words, at every point, in %s', (units) => {
    for (const point of POINTS) {
      for (const [least, most] of [
        [1026, 1092],
        [603, null],
        [null, 788],
        [500, 502]
      ] as const) {
        const condition = { point, least, most, chance: null, text: '' }
        const { text } = conditionShown(condition, { units })
        const [row] = cardRows(kept({ ...trousersReckoning, conditions: [condition] }), units)
        const shown = row?.flat ?? row?.whole
        expect(row?.flat !== null, text).toBe(text.includes('laid flat'))
        for (const end of [shown?.least ?? null, shown?.most ?? null]) if (end !== null) expect(text).toContain(figure(end, units))
      }
    }
  })
  test('a girth is twice what it is laid flat', () => {
    const [row] = cardRows(kept(hangingOn(HIP)), 'cm')
    expect(row?.whole?.least).toBe((row?.flat?.least ?? 0) * 2)
    expect(row?.whole?.most).toBe((row?.flat?.most ?? 0) * 2)
  })
})

describe('the price that pays', () => {
  test('once all holds is the chance then of what is left of its worth, less what postage is lost', () => {
    const worth = { spend: 30, against: 50, upTo: 30, risk: 5 }
    const listing = kept({ ...hangingOn(HIP), chanceIf: 0.75, worth })
    expect(pricesThatPay(listing)).toEqual({ now: 5, ifSo: 22.5 })
    expect(pricesThatPay({ ...listing, money: { price: null, postage: 4, worth: null } })).toEqual({ now: 5, ifSo: 21.5 })
  })
  test('is not said where its worth is not told', () => {
    card(kept({ ...hangingOn(HIP), worth: null }))
    expect(part('What you can pay for it')).toContain('To see it here, enter the price')
    // what it costs is known: only what it is worth is asked for
    card(kept({ ...hangingOn(HIP), worth: { spend: 30, against: null, upTo: null, risk: null } }))
    expect(part('What you can pay for it')).toContain('To see it here, enter what it is worth to you')
    card(kept({ ...hangingOn(HIP), worth: { spend: 30, against: 50, upTo: 30, risk: 0.1 } }))
    expect(part('What you can pay for it')).toContain('no price is worth it')
  })
})
