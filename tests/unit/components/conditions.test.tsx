// @vitest-environment happy-dom
/** What the untold must be, as panel and popup say it. */
import { act, within } from '@testing-library/preact'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { chanceIfOf } from '../../../components/answer/facts.tsx'
import type { Judged } from '../../../components/judged.ts'
import { Panel } from '../../../components/panel/panel.tsx'
import { pointRows } from '../../../components/panel/point-rows.ts'
import { Popup } from '../../../components/popup/popup.tsx'
import type { Ask } from '../../../core/reckon.ts'
import { button, hide, inPage, press, show, shownText, textOf, type } from '../on-page.tsx'
import { HIP, hangingOn, INSEAM, inch, muchWorkedOut, THIGH, trousersJudged, trousersReckoning, WAIST } from './fixtures.ts'

const who = { people: [{ id: 'p', name: 'Ash' }], personId: 'p', fit: 'regular' as const, favourites: [], favouriteId: null }
const actions = {
  onWho: vi.fn(),
  onFavourite: vi.fn(),
  onCorrections: vi.fn(),
  onDraft: vi.fn(),
  onAim: vi.fn(),
  onMoney: vi.fn(),
  onPaste: vi.fn(),
  onAnswer: vi.fn(),
  onNotes: vi.fn(),
  onKeep: vi.fn(async () => true),
  onPass: vi.fn(async () => true),
  onTakeBack: vi.fn(async () => true),
  onWishlist: vi.fn(),
  onUndo: vi.fn(),
  onCopy: vi.fn(async () => true),
  onWorkroom: vi.fn(),
  onTailor: vi.fn(async () => true),
  onTailorPrice: vi.fn(async () => true),
  onKind: vi.fn(),
  onEnterPrice: vi.fn(),
  onOpenBeside: vi.fn()
}
afterEach(hide)

const asked = (reckoning: Judged['reckoning'], over: Partial<Judged> = {}): Judged => ({ ...trousersJudged, reckoning, ...over })
const panel = (judged: Judged, again = false): void => show(<Panel who={who} judged={judged} {...actions} />, { units: 'in' }, again)
const popup = (judged: Judged): void => show(<Popup who={who} judged={judged} {...actions} />, { units: 'in' })
const surfaces = [
  ['the panel', panel],
  ['the popup', popup]
] as const

/** The head of the answer, line by line. */
const lines = (): string[] => [...inPage().querySelectorAll('.answer > h2, .answer > p, .answer > .if-told')].map(textOf)
const facts = (): Element | null => inPage().querySelector('.answer > .facts')
const details = (summary: string): HTMLDetailsElement | undefined =>
  [...inPage().querySelectorAll('details')].find((one) => textOf(one.querySelector('summary')).startsWith(summary))

describe.each(surfaces)('%s', (_, draw) => {
  it('says the verdict, that it is as far as the listing says, why, and then what the untold must be, each once', () => {
    draw(asked(hangingOn(HIP, THIGH)))
    const [verdict, asFar, why, condition] = lines()
    expect(verdict).toBe('Alters to fit?')
    expect(asFar).toBe('As far as the listing says: ask before you buy')
    expect(why).toMatch(/^Take 1½ in out/)
    expect(condition).toBe('It works out if the hip, laid flat, is 19½ to 21 in and the thigh, laid flat, is 12 to 13½ in.')
    for (const once of ['As far as the listing says', 'It works out if']) expect(shownText().split(once), once).toHaveLength(2)
  })
  it('says so before the facts, so that no chance is read without what it hangs on', () => {
    draw(asked(hangingOn(HIP, THIGH)))
    const condition = inPage().querySelector('.answer > .if-told')
    const place = facts()?.compareDocumentPosition(condition as Node) ?? 0
    expect(place & Node.DOCUMENT_POSITION_PRECEDING).toBeTruthy()
  })
  it('draws one point that decides as an open band on a tape, and several as words alone', () => {
    draw(asked(hangingOn(HIP)))
    expect(inPage().querySelectorAll('.if-told svg')).toHaveLength(1)
    expect(inPage().querySelector('.if-told svg')?.getAttribute('aria-label')).toMatch(/^Hip/)
    draw(asked(hangingOn(HIP, THIGH)))
    expect(inPage().querySelector('.if-told svg')).toBeNull()
  })
  it('of a listing that leaves nothing out says no such thing', () => {
    draw(asked(trousersReckoning))
    expect(shownText()).not.toContain('As far as the listing says')
  })
  it('names three of four and counts the rest', () => {
    draw(asked(hangingOn(WAIST, HIP, THIGH, INSEAM)))
    expect(lines()[3]).toMatch(/^It works out if the waist.+the hip.+the thigh, laid flat, is 12 to 13½ in and 1 more\.$/)
  })
  it('has no such line where nothing hangs on the untold, or a size is to be chosen first', () => {
    draw(asked(trousersReckoning))
    expect(inPage().querySelector('.if-told')).toBeNull()
    const issue = { code: 'reading.several-sizes', values: {}, text: 'Say which size it is.', readings: [] }
    const reading = { ...trousersJudged.reading, issues: [issue] }
    draw(asked(hangingOn(HIP), { reading: reading as never }))
    expect(inPage().querySelector('.if-told')).toBeNull()
  })
  it('says the chance if so beside the chance', () => {
    draw(asked(hangingOn(HIP)))
    const chance = [...inPage().querySelectorAll('dt')].find((one) => textOf(one) === 'Chance it fits')?.nextElementSibling
    expect(textOf(chance?.querySelector('span'))).toBe('6 in 10')
    expect(textOf(chance?.querySelector('small'))).toBe('8 in 10 if the hip is right')
    expect(chance?.querySelectorAll('.g-dots').length).toBe(2)
  })
})

describe('where the points stand', () => {
  const judged = asked(muchWorkedOut(hangingOn(HIP)))
  const headsIn = (place: Element | null | undefined) => [...(place?.querySelectorAll('.point h3, th') ?? [])].map(textOf)
  it('in the panel: what misses has a whole tape, what fits a line, and what nobody measured a place of its own', () => {
    panel(judged)
    const misses = inPage().querySelector('section[aria-labelledby=points-head]')
    expect(textOf(misses?.querySelector('h2'))).toBe('Where it does not fit')
    expect(headsIn(misses)).toEqual(['Waist', 'Inside leg'])
    expect(misses?.querySelectorAll('.point svg.tape, .point [role=img]').length).toBeGreaterThanOrEqual(2)
    expect(headsIn(details('Where it fits'))).toEqual(['Thigh', 'Leg opening'])
    expect(headsIn(details('Not stated'))).toEqual(['Calf', 'Hip', 'Knee', 'Outside leg'])
  })
  it('what the plan moves though it fits is not said to misfit', () => {
    const gaps = trousersReckoning.gaps.map((gap) => (gap.point === 'waist' ? { ...gap, gapMm: 0 } : gap))
    panel(asked({ ...trousersReckoning, gaps }))
    expect(textOf(inPage().querySelector('#points-head'))).toBe('Where it does not fit, or is altered')
  })
  it('in the popup: what was measured, what misses first; no guess stands among them', () => {
    popup(judged)
    const part = inPage().querySelector('section[aria-label="Points"]')
    expect(headsIn(part)).toEqual(['Waist', 'Inside leg', 'Thigh', 'Leg opening'])
    expect(textOf(part)).not.toContain('more under')
    // the hip, which decides, has the tape of its condition
    expect(inPage().querySelector('.if-told svg')?.getAttribute('aria-label')).toMatch(/^Hip/)
  })
  it('nothing that is only guessed is said to fit', () => {
    panel(asked({ ...hangingOn(HIP), gaps: trousersReckoning.gaps.filter(({ point }) => point === 'hip' || point === 'thigh') }))
    expect(headsIn(details('Where it fits'))).toEqual(['Thigh'])
    expect(textOf(details('Not stated'))).toContain('Hip')
  })
  it('what was measured where nothing is wanted is not said to fit either', () => {
    const [waist] = trousersReckoning.gaps
    if (waist === undefined) throw new Error('no waist')
    panel(asked({ ...trousersReckoning, plans: [], gaps: [{ ...waist, band: null, gapMm: 0 }] }))
    expect(details('Where it fits')).toBeUndefined()
    expect(headsIn(details('Fits, or can’t be checked'))).toContain('Waist')
  })
  it.each([
    ['Where it does not fit', 'Correct waist', 'Close waist'],
    ['Where it fits', 'Correct thigh', 'Close thigh']
  ])('a point opened under “%s” stays there until it is closed, whatever is typed', (head, open, close) => {
    const point = open === 'Correct waist' ? ('waist' as const) : ('thigh' as const)
    const placeNamed = () => [...inPage().querySelectorAll('section.part, details.part')].find((one) => textOf(one).startsWith(head))
    const moved = (garmentMm: number) =>
      asked({
        ...trousersReckoning,
        plans: [],
        gaps: trousersReckoning.gaps.map((gap) => (gap.point === point ? { ...gap, garmentMm } : gap))
      })
    const before = asked({ ...trousersReckoning, plans: [] })
    const name = point === 'waist' ? 'Waist' : 'Thigh'
    // the waist comes inside by what is typed, the thigh goes out
    const after = moved(inch(point === 'waist' ? 29.5 : 30))
    panel(before)
    press(open)
    const field = inPage().querySelector('fieldset.correct input')
    panel(after, true)
    expect(headsIn(placeNamed())).toContain(name)
    expect(inPage().querySelector('fieldset.correct input')).toBe(field)
    press(close)
    expect(headsIn(placeNamed())).not.toContain(name)
  })
  it.each(['Correct waist', 'Correct thigh', 'Enter hip'])('%s: Escape closes it, and stands at its button', (name) => {
    panel(asked({ ...trousersReckoning, plans: [] }))
    press(name)
    const field = inPage().querySelector<HTMLInputElement>('fieldset.correct input')
    if (field === null) throw new Error('nothing was opened')
    act(() => field.focus())
    act(() => void field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true })))
    expect(inPage().querySelector('fieldset.correct')).toBeNull()
    expect(textOf(document.activeElement)).toBe(name)
    expect(document.activeElement?.getAttribute('aria-expanded')).toBe('false')
  })
  it.each(['Escape', 'Close'])('%s on a point that has left its place meanwhile stands at its button there', (how) => {
    panel(asked({ ...trousersReckoning, plans: [] }))
    press('Correct thigh')
    const gaps = trousersReckoning.gaps.map((gap) => (gap.point === 'thigh' ? { ...gap, garmentMm: inch(30) } : gap))
    panel(asked({ ...trousersReckoning, plans: [], gaps }), true)
    const field = inPage().querySelector<HTMLInputElement>('fieldset.correct input')
    act(() => field?.focus())
    if (how === 'Close') press('Close thigh')
    else act(() => void field?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true })))
    expect(textOf(document.activeElement)).toBe('Correct thigh')
    expect(headsIn(inPage().querySelector('section[aria-labelledby=points-head]'))).toContain('Thigh')
  })
})

it('the panel lists what its sentence only counts', () => {
  panel(asked(hangingOn(WAIST, HIP, THIGH, INSEAM)))
  expect(textOf(details('What else has to be right')?.querySelector('ul'))).toBe('The inside leg is 29 to 40 in')
  popup(asked(hangingOn(WAIST, HIP, THIGH, INSEAM)))
  expect(details('What else has to be right')).toBeUndefined()
})

it('a changed answer is said as it stands: why, then what the untold must be', () => {
  panel(trousersJudged)
  panel(asked(hangingOn(HIP)), true)
  expect(textOf(inPage().querySelector('.panel > [aria-live=polite]'))).toMatch(
    /^The answer is now: Alters to fit\. Take 1½ in out.+ It works out if the hip.+ 21 in\.$/
  )
})

describe('the chance if so', () => {
  const judged = asked({ ...hangingOn(HIP), chanceIf: 0.95 })
  it('is that of the hands of the advised plan', () => {
    expect(chanceIfOf(judged)).toBe(0.95)
    expect(chanceIfOf({ ...judged, aim: 'closest-fit' })).toBe(0.95)
    expect(chanceIfOf({ ...judged, aim: 'tailor' })).toBeNull()
  })
  it('is left out where it is the same in tens, and where there is none', () => {
    expect(chanceIfOf(asked({ ...hangingOn(HIP), chanceIf: 0.64 }))).toBeNull()
    expect(chanceIfOf(asked(trousersReckoning))).toBeNull()
    expect(chanceIfOf(asked(null))).toBeNull()
  })
})

describe('what was only worked out', () => {
  const folded = (reckoning: NonNullable<Judged['reckoning']>) =>
    pointRows(asked(reckoning), 'in').flatMap((row) => (row.folded ? [row.point] : []))
  it('is folded, but for key points, those outside, and those with a condition', () => {
    expect(folded(muchWorkedOut(trousersReckoning))).toEqual(['knee', 'outseam'])
    const knee = { ...HIP, point: 'knee' as const }
    expect(folded(muchWorkedOut(hangingOn(knee)))).toEqual(['outseam'])
  })
  it('stands in the panel behind its own line, with a way to enter it', () => {
    panel(asked(muchWorkedOut(hangingOn(HIP))))
    const its = details('Not stated')
    expect(its?.open).toBe(false)
    expect([...(its?.querySelectorAll('th') ?? [])].map(textOf)).toEqual(['Calf', 'Hip', 'Knee', 'Outside leg'])
    expect([...within(its as HTMLElement).getAllByRole('button', { name: /^Enter /, hidden: true })].map(textOf)).toEqual([
      'Enter calf',
      'Enter hip',
      'Enter knee',
      'Enter outside leg'
    ])
  })
  it('is open where a figure was half typed', () => {
    panel(asked(muchWorkedOut(hangingOn(HIP)), { drafts: { 'stated.knee': '9' } }))
    expect(details('Not stated')?.open).toBe(true)
  })
  it('keeps its row in its place while a figure is typed there, and lets it go when it is closed', () => {
    const judged = asked(muchWorkedOut(hangingOn(HIP)))
    panel(judged)
    press('Enter knee')
    type('Stated knee', '9')
    const set = muchWorkedOut(hangingOn(HIP))
    const gaps = set.gaps.map((gap) => (gap.point === 'knee' ? { ...gap, from: 'seller' as const } : gap))
    panel({ ...judged, reckoning: { ...set, gaps }, corrections: [{ add: 'knee', mm: 457.2, source: 'seller' }] }, true)
    expect(textOf(details('Not stated'))).toContain('Knee')
    press('Close knee')
    expect(textOf(details('Not stated'))).not.toContain('Knee')
  })
})

describe('the message to the seller', () => {
  const hip: Ask = { point: 'hip', worth: 6, unit: 'money', question: 'Could you measure the hip?', suits: '19½ to 21 in would suit.' }
  const lined: Ask = { about: 'lined', worth: 3, unit: 'money', question: 'Is it lined?' }
  const darts: Ask = { about: 'darts', worth: 1, unit: 'money', question: 'Are there darts at the waist?' }
  const own: Ask = { body: 'hipGirth', worth: 0, unit: 'money', question: 'Measure your own hip.', suits: '96 cm or more would suit.' }
  const asking = (...ask: Ask[]) => panel(asked({ ...hangingOn(HIP), ask }))
  const box = (name: string) => within(inPage()).getByLabelText(name) as HTMLInputElement
  const message = () => textOf(inPage().querySelector('.ask q'))
  const HELLO = 'Hello, I am interested in “Heavy grey twill trousers, pleated”.'

  it('names the article, has the questions that are worth it ticked, and says what would suit', () => {
    asking(hip, lined, darts)
    expect(within(inPage()).getByRole('group', { name: 'Ask about' }).querySelectorAll('input')).toHaveLength(3)
    expect(['The hip', 'The lining', 'Darts'].map((name) => box(name).checked)).toEqual([true, true, false])
    expect(message()).toBe(`${HELLO} Could you measure the hip? 19½ to 21 in would suit. Is it lined? Thank you.`)
  })
  it('asks what is ticked, and leaves the range out where nobody is to measure to please', () => {
    asking(hip, lined, darts)
    press('The lining')
    press('Darts')
    press('Say which figure would suit me')
    expect(message()).toBe(`${HELLO} Could you measure the hip? Are there darts at the waist? Thank you.`)
  })
  it('is copied whole by one button, and says so until it is another', async () => {
    asking(hip, lined)
    await act(async () => press('Copy the message'))
    expect(actions.onCopy).toHaveBeenLastCalledWith(message())
    const status = inPage().querySelector('.ask [role=status]')
    expect(textOf(status)).toContain('Copied.')
    press('The lining')
    expect(textOf(status)).toBe('')
  })
  it('can’t be copied with nothing in it', () => {
    asking(hip, lined)
    press('The hip')
    press('The lining')
    expect(button('Copy the message').disabled).toBe(true)
    expect(shownText()).toContain('Tick at least one')
    expect(shownText()).not.toContain('Say which figure would suit me')
  })
  it('of one question has no choice of questions, and of none there is no message', () => {
    asking(lined)
    expect(inPage().querySelector('.ask fieldset')).toBeNull()
    expect(inPage().querySelector('.ask input')).toBeNull()
    expect(message()).toBe(`${HELLO} Is it lined? Thank you.`)
    asking(own)
    expect(inPage().querySelector('section.ask')).toBeNull()
    expect(inPage().querySelector('.ask q')).toBeNull()
  })
  it('leaves one’s own measure to oneself, wherever it stands', () => {
    asking(hip, own)
    expect(message()).not.toContain('Measure your own')
    press('Enter it')
    expect(actions.onWorkroom).toHaveBeenLastCalledWith('body')
  })
  it('keeps what was ticked while the same is asked, and begins anew with another garment’s questions', () => {
    const judged = asked({ ...hangingOn(HIP), ask: [hip, lined] })
    panel(judged)
    press('The lining')
    panel({ ...judged, notes: 'typed since' }, true)
    expect(box('The lining').checked).toBe(false)
    panel(asked({ ...hangingOn(HIP), ask: [lined, darts] }), true)
    expect(box('The lining').checked).toBe(true)
  })
})
