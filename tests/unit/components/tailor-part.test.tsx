// @vitest-environment happy-dom
/** What a tailor asks, entered in the answer: saved, said, and taken back; and a tailor counted in where there was none. */
import { act, fireEvent } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { GO_TO, TAILOR_PRICE } from '../../../components/answer/go-to.ts'
import { TailorPart } from '../../../components/answer/tailor-part.tsx'
import type { Judged } from '../../../components/judged.ts'
import type { Plan } from '../../../core/plan/plan.ts'
import { button, field, hide, inPage, press, show, shownText, textOf } from '../on-page.tsx'
import { trousersJudged, trousersReckoning } from './fixtures.ts'

const actions = { onTailor: vi.fn(async () => true), onTailorPrice: vi.fn(async () => true), onDraft: vi.fn() }
beforeEach(() => void vi.clearAllMocks())
afterEach(hide)

const tailors = trousersReckoning.plans.find(({ aim }) => aim === 'tailor') as Plan
const [job] = tailors.alterations
const byTailor = (over: Partial<Judged> = {}): Judged => ({
  ...trousersJudged,
  reckoning: { ...trousersReckoning, verdict: 'needs-a-tailor', plans: [{ ...tailors, cost: null }] },
  ...over
})
const part = (judged: Judged, again = false): void => show(<TailorPart judged={judged} {...actions} />, {}, again)
const status = (): string => textOf(inPage().querySelector('[role=status]'))
const priced = (price: number): Judged => byTailor({ tailor: { atHand: true, prices: { [job?.id ?? '']: price } } })
/** Types it and presses Enter. */
const enter = (typed: string) => act(async () => void fireEvent.change(field(label()), { target: { value: typed } }))
const label = (): string => textOf(inPage().querySelector('label'))

describe('the price of a tailor', () => {
  it('is typed in place, saved for the job, said, and taken back with the keyboard at its field', async () => {
    part(byTailor())
    expect(inPage().querySelector('details')?.open).toBe(false)
    await enter('12.50')
    expect(actions.onTailorPrice).toHaveBeenLastCalledWith(job?.id, 12.5)
    expect(status()).toMatch(/^Price saved: £12\.50 \(.+\)\.$/)
    part(priced(12.5), true)
    expect(field(label()).value).toBe('12.5')
    await act(async () => press('Undo'))
    expect(actions.onTailorPrice).toHaveBeenLastCalledWith(job?.id, null)
    expect(status()).toBe('Undone.')
    expect(document.activeElement).toBe(field(label()))
    part(byTailor(), true)
    expect(field(label()).value).toBe('')
  })
  it('what is no amount is not saved', async () => {
    part(byTailor())
    await enter('about ten')
    expect(actions.onTailorPrice).not.toHaveBeenCalled()
    expect(status()).toBe('')
  })
  it('what could not be saved is not said to be', async () => {
    actions.onTailorPrice.mockResolvedValueOnce(false)
    part(byTailor())
    await enter('9')
    expect(status()).toBe('')
  })
  it('sent here by the small window, the keyboard stands at the field, once', () => {
    part(byTailor({ drafts: { [GO_TO]: TAILOR_PRICE } }))
    expect(document.activeElement).toBe(field(label()))
    expect(inPage().querySelector('details')?.open).toBe(true)
    expect(actions.onDraft).toHaveBeenCalledWith(GO_TO, null)
    part(byTailor(), true)
    expect(inPage().querySelector('details')?.open).toBe(true)
  })
  it('a plan of one’s own has no such field', () => {
    part({ ...trousersJudged, aim: 'least-work' })
    expect(inPage().querySelector('input')).toBeNull()
  })
})

describe('no tailor yet', () => {
  const couldHelp = byTailor({
    reckoning: { ...trousersReckoning, verdict: 'comes-close', plans: trousersReckoning.plans.filter(({ aim }) => aim !== 'tailor') },
    tailor: { atHand: false, prices: {} },
    wouldChange: [{ code: 'change.tailor', values: {}, text: 'A tailor could make it fit.' }]
  })
  it('is counted in by one press, said, and taken back', async () => {
    part(couldHelp)
    await act(async () => press('Count a tailor in'))
    expect(actions.onTailor).toHaveBeenLastCalledWith(true)
    expect(status()).toBe('From now on work can go to a tailor, for every listing.')
    part(byTailor(), true)
    await act(async () => press('Undo'))
    expect(actions.onTailor).toHaveBeenLastCalledWith(false)
  })
  it('is not offered where a tailor would not help', () => {
    part({ ...couldHelp, wouldChange: [] })
    expect(shownText()).not.toContain('Count a tailor in')
    expect(() => button('Count a tailor in')).toThrow()
  })
})
