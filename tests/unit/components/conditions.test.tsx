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
import { HIP, hangingOn, INSEAM, muchWorkedOut, THIGH, trousersJudged, trousersReckoning, WAIST } from './fixtures.ts'

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
  onKind: vi.fn(),
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
const lines = (): string[] => [...inPage().querySelectorAll('.answer > h2, .answer > p')].map(textOf)
const details = (summary: string): HTMLDetailsElement | undefined =>
  [...inPage().querySelectorAll('details')].find((one) => textOf(one.querySelector('summary')).startsWith(summary))

describe.each(surfaces)('%s', (_, draw) => {
  it('says what the untold must be right under the verdict, before every other reason, and once', () => {
    draw(asked(hangingOn(HIP, THIGH)))
    const [verdict, second, third] = lines()
    expect(verdict).toBe('Alters to fit')
    expect(second).toBe('As far as told: it works out if the hip, laid flat, is 19½ to 21 in and the thigh, laid flat, is 12 to 13½ in.')
    expect(third).toMatch(/^Take 1½ in out/)
    expect(shownText().split('As far as told').length).toBe(2)
  })
  it('names three of four and counts the rest', () => {
    draw(asked(hangingOn(WAIST, HIP, THIGH, INSEAM)))
    expect(lines()[1]).toMatch(/^As far as told: it works out if the waist.+the hip.+the thigh, laid flat, is 12 to 13½ in, and 1 more\.$/)
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
    const chance = [...inPage().querySelectorAll('dt')].find((one) => textOf(one) === 'Chance')?.nextElementSibling
    expect(textOf(chance)).toBe('6 in 10;8 in 10 if so')
    expect(chance?.querySelectorAll('.g-dots').length).toBe(2)
  })
  it('shows told points, key points and those with a condition', () => {
    draw(asked(muchWorkedOut(hangingOn(HIP))))
    const heads = [...inPage().querySelectorAll('.point h3, .part > table th, .read th')].map(textOf)
    expect(heads.slice(0, 5)).toEqual(['Waist', 'Calf', 'Inside leg', 'Hip', 'Thigh'])
    expect(heads).not.toContain('Knee')
    expect(heads).not.toContain('Outside leg')
  })
})

it('the panel lists what its sentence only counts', () => {
  panel(asked(hangingOn(WAIST, HIP, THIGH, INSEAM)))
  expect(textOf(details('What else must hold')?.querySelector('ul'))).toBe('The inside leg is 29 to 40 in')
  popup(asked(hangingOn(WAIST, HIP, THIGH, INSEAM)))
  expect(details('What else must hold')).toBeUndefined()
})

it('a changed answer is said with what the untold must be, before why', () => {
  panel(trousersJudged)
  panel(asked(hangingOn(HIP)), true)
  expect(textOf(inPage().querySelector('.panel > [aria-live=polite]'))).toMatch(
    /^The answer is now: Alters to fit\. As far as told: .+ 21 in\. Take 1½ in out/
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
    const its = details('Worked out, not told')
    expect(its?.open).toBe(false)
    expect([...(its?.querySelectorAll('th') ?? [])].map(textOf)).toEqual(['Knee', 'Outside leg'])
    expect(within(its as HTMLElement).getAllByRole('button', { hidden: true })).toHaveLength(2)
  })
  it('is open where a figure was half typed', () => {
    panel(asked(muchWorkedOut(hangingOn(HIP)), { drafts: { 'stated.knee': '9' } }))
    expect(details('Worked out, not told')?.open).toBe(true)
  })
  it('keeps its row in its place while a figure is typed there, and lets it go when it is closed', () => {
    const judged = asked(muchWorkedOut(hangingOn(HIP)))
    panel(judged)
    press('Enter knee')
    type('Stated knee', '9')
    panel({ ...judged, corrections: [{ add: 'knee', mm: 457.2, source: 'seller' }] }, true)
    expect(textOf(details('Worked out, not told'))).toContain('Knee')
    press('Close knee')
    expect(textOf(details('Worked out, not told'))).not.toContain('Knee')
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
    expect(within(inPage()).getByRole('group', { name: 'In one message' }).querySelectorAll('input')).toHaveLength(3)
    expect(['Hip', 'Lining', 'Darts'].map((name) => box(name).checked)).toEqual([true, true, false])
    expect(message()).toBe(`${HELLO} Could you measure the hip? 19½ to 21 in would suit. Is it lined? Thank you.`)
  })
  it('asks what is ticked, and leaves the range out where nobody is to measure to please', () => {
    asking(hip, lined, darts)
    press('Lining')
    press('Darts')
    press('Say what would suit')
    expect(message()).toBe(`${HELLO} Could you measure the hip? Are there darts at the waist? Thank you.`)
  })
  it('is copied whole by one button, and says so until it is another', async () => {
    asking(hip, lined)
    await act(async () => press('Copy the message'))
    expect(actions.onCopy).toHaveBeenLastCalledWith(message())
    const status = inPage().querySelector('.ask [role=status]')
    expect(textOf(status)).toContain('Copied.')
    press('Lining')
    expect(textOf(status)).toBe('')
  })
  it('can’t be copied with nothing in it', () => {
    asking(hip, lined)
    press('Hip')
    press('Lining')
    expect(button('Copy the message').disabled).toBe(true)
    expect(shownText()).toContain('Tick at least one')
    expect(shownText()).not.toContain('Say what would suit')
  })
  it('of one question has no choice of questions, and of none there is no message', () => {
    asking(lined)
    expect(inPage().querySelector('.ask fieldset')).toBeNull()
    expect(inPage().querySelector('.ask input')).toBeNull()
    expect(message()).toBe(`${HELLO} Is it lined? Thank you.`)
    asking(own)
    expect(inPage().querySelector('.ask')).toBeNull()
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
    press('Lining')
    panel({ ...judged, notes: 'typed since' }, true)
    expect(box('Lining').checked).toBe(false)
    panel(asked({ ...hangingOn(HIP), ask: [lined, darts] }), true)
    expect(box('Lining').checked).toBe(true)
  })
})
