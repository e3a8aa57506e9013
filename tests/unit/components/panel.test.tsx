// @vitest-environment happy-dom
/** The panel as a person drives it: by role and label. */
import { act } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { type Judged, verdictReasons } from '../../../components/judged.ts'
import { Panel, type PanelActions } from '../../../components/panel/panel.tsx'
import { readListing } from '../../../core/reading/read-listing.ts'
import { button, field, fill, hide, inPage, leave, show as onPage, pick, press, shownText, textOf, type } from '../on-page.tsx'
import { inch, leaveIt, tooLittle, trousersGaps, trousersJudged, trousersReckoning, wearsAsIs } from './fixtures.ts'

const who = { people: [{ id: 'p', name: 'Ash' }], personId: 'p', fit: 'regular' as const, favourites: [], favouriteId: null }
const nothing = (): PanelActions => ({
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
  onTailorPrice: vi.fn(async () => true)
})
let actions: PanelActions

beforeEach(() => {
  vi.useFakeTimers()
  actions = nothing()
})
afterEach(() => {
  hide()
  vi.useRealTimers()
})

/** Draws the panel, or draws it anew with what has changed. */
function show(judged: Judged | null, people = who.people): void {
  onPage(<Panel who={{ ...who, people }} judged={judged} {...actions} />, { units: 'in', language: 'en' }, true)
}
/** A fact of the answer, by its name. */
const factOf = (name: string): string =>
  textOf([...inPage().querySelectorAll('.facts dt')].find((one) => textOf(one) === name)?.nextElementSibling)
/** A part that is folded behind its head. */
const partOf = (head: string): HTMLDetailsElement | undefined =>
  [...inPage().querySelectorAll('details')].find((one) => textOf(one.querySelector('summary')).startsWith(head))
const wait = () => act(() => void vi.advanceTimersByTime(400))

describe('correcting a figure', () => {
  it('takes a typed length a moment after the last key, in the unit and basis that are picked', () => {
    show(trousersJudged)
    press('Correct waist')
    type('Stated waist', '15 3/4')
    expect(actions.onDraft).toHaveBeenLastCalledWith('stated.waist', '15 3/4')
    expect(actions.onCorrections).not.toHaveBeenCalled()
    wait()
    expect(actions.onCorrections).toHaveBeenCalledTimes(1)
    expect(vi.mocked(actions.onCorrections).mock.calls[0]?.[0]).toMatchObject([
      { point: 'waist', mm: inch(31.5), unit: 'in', basis: 'flat' }
    ])
  })
  it('takes a unit that is typed with the figure', () => {
    show(trousersJudged)
    press('Correct waist')
    type('Stated waist', '40 cm')
    wait()
    expect(vi.mocked(actions.onCorrections).mock.calls[0]?.[0]).toMatchObject([{ mm: 800, unit: 'cm', basis: 'flat' }])
  })
  it.each([
    ['1/0', 'A fraction can’t be divided by nothing'],
    ['3..5', 'This is no length'],
    ['-4', 'A length can’t be below nothing'],
    ['0', 'A length of nothing can’t be judged'],
    ['900 cm', 'No garment is longer than 5 metres']
  ])('%s: says why beside the field, keeps what was typed and changes nothing', (typed, why) => {
    show(trousersJudged)
    press('Correct waist')
    type('Stated waist', typed)
    wait()
    const at = field('Stated waist')
    expect(at.value).toBe(typed)
    expect(at.getAttribute('aria-invalid')).toBe('true')
    expect(textOf(document.getElementById(at.getAttribute('aria-describedby') ?? ''))).toContain(why)
    expect(actions.onCorrections).not.toHaveBeenCalled()
    expect(actions.onDraft).toHaveBeenLastCalledWith('stated.waist', typed)
  })
  it('turns flat into around, and inches into centimetres, at once', () => {
    show(trousersJudged)
    press('Correct waist')
    pick('Measured', 'All around')
    expect(vi.mocked(actions.onCorrections).mock.lastCall?.[0]).toMatchObject([{ mm: inch(16), basis: 'around' }])
    pick('Unit', 'cm')
    expect(vi.mocked(actions.onCorrections).mock.lastCall?.[0]).toMatchObject([{ mm: 320, unit: 'cm' }])
  })
  it('can say that it is not this point', () => {
    show(trousersJudged)
    press('Correct waist')
    press('Not the waist')
    expect(vi.mocked(actions.onCorrections).mock.lastCall?.[0]).toMatchObject([{ point: null }])
  })
  it('loses nothing that was typed when it closes before it was taken', () => {
    show(trousersJudged)
    press('Correct waist')
    type('Stated waist', '15')
    press('Close waist')
    expect(vi.mocked(actions.onCorrections).mock.calls[0]?.[0]).toMatchObject([{ mm: inch(30) }])
  })
  it('opens where something was typed before, with what was typed', () => {
    show({ ...trousersJudged, drafts: { 'stated.inseam': '30 1/' } })
    expect(field('Stated inside leg').value).toBe('30 1/')
  })
  it('enters a point that is not told', () => {
    show(trousersJudged)
    press('Enter hip')
    type('Stated hip', '20')
    wait()
    expect(vi.mocked(actions.onCorrections).mock.lastCall?.[0]).toEqual([{ add: 'hip', mm: inch(40), source: 'seller' }])
  })
})

describe('the answer', () => {
  it('names verdict, facts and the question, and copies it', async () => {
    show(trousersJudged)
    const answer = inPage().querySelector('.answer')
    expect(textOf(answer)).toContain('Alters to fit')
    expect(textOf(answer)).toContain('6 in 10')
    expect(factOf('Work')).toBe('1 h 10Sewing level 3')
    expect(factOf('Cost')).toBe('£24.00 + 1 h 10£29.90 with your time counted; worth £55.00 to you')
    expect(factOf('Chance it fits')).toBe('6 in 10')
    expect(textOf(partOf('Price and what it is worth to you'))).toContain('£29.90 in all: price, work and any postage you enter.')
    await act(async () => button('Copy the message').click())
    expect(actions.onCopy).toHaveBeenCalledWith(expect.stringContaining('straight across the seat'))
    expect(textOf(answer)).toContain('Copied.')
  })
  it('says a changed answer in a live region, once it has settled, and the first one not at all', () => {
    show(trousersJudged)
    const live = inPage().querySelector('.panel > [aria-live=polite]')
    expect(textOf(live)).toBe('')
    show({ ...trousersJudged, reckoning: wearsAsIs, settled: false })
    expect(textOf(live)).toBe('')
    show({ ...trousersJudged, reckoning: wearsAsIs })
    expect(textOf(live)).toContain('The answer is now: Wears as it is')
  })
  it('says nothing when another garment comes in its place', () => {
    show(trousersJudged)
    show({ ...trousersJudged, title: 'Another', reckoning: wearsAsIs })
    expect(textOf(inPage().querySelector('.panel > [aria-live=polite]'))).toBe('')
  })
  it('keeps, and another time passes by', async () => {
    show(trousersJudged)
    await act(async () => press('Keep for later'))
    expect(actions.onKeep).toHaveBeenCalledTimes(1)
    show({ ...trousersJudged, kept: 'watching' })
    await act(async () => press('Undo'))
    expect(actions.onTakeBack).toHaveBeenLastCalledWith(null)
    show(trousersJudged)
    await act(async () => press('Not for me'))
    expect(actions.onPass).toHaveBeenCalledTimes(1)
    expect(actions.onKeep).toHaveBeenCalledTimes(1)
  })
  it('opens the seller’s answer from “too little told”', () => {
    show({ ...trousersJudged, reckoning: tooLittle })
    press('Enter the seller’s answer')
    expect(partOf('Add what the seller answered')?.open).toBe(true)
  })
  it('shows what doing nothing leaves wrong beside the ways to do it', () => {
    show(trousersJudged)
    expect(textOf(inPage().querySelector('.as-it-is'))).toBe(
      'Unaltered: waist 1½ in too big, inside leg 1 in too long. Chance hardly 1 in 10.'
    )
  })
  it('of what is to be left says what is wrong, and nothing of any plan', () => {
    show({ ...trousersJudged, kind: 'jacket', reckoning: leaveIt })
    const misses = inPage().querySelector('section[aria-labelledby=points-head]')
    expect([...(misses?.querySelectorAll('.phead') ?? [])].map(textOf)).toEqual(['Chest1 in too big', 'Shoulder1½ in too wide'])
    expect(textOf(inPage().querySelector('.answer'))).toContain('The shoulders are 1½ in too wide.')
    expect(inPage().querySelector('#moves-head')).toBeNull()
    for (const head of ['Ways to do it', 'Cautions']) expect(partOf(head), head).toBeUndefined()
    expect(inPage().querySelector('table.plans')).toBeNull()
    expect(inPage().querySelector('.as-it-is')).toBeNull()
    expect(factOf('Work')).toBe('')
    expect(shownText()).not.toMatch(/in all: price|pays on average|1 h\b/)
  })
  it('counts mending as work where there is nothing else to do: its cost is counted too', () => {
    show({ ...trousersJudged, reckoning: wearsAsIs })
    expect(factOf('Work')).toBe('None')
    const mended = { code: 'verdict.mending', values: { minutes: 40 }, text: 'Mending and care take another 40 min.' }
    show({ ...trousersJudged, reckoning: { ...wearsAsIs, because: [...wearsAsIs.because, mended] } })
    expect(factOf('Work')).toBe('40 minMending and care')
  })
  it('shows the ways to do it only where two differ', () => {
    show(trousersJudged)
    expect(partOf('Ways to do it')).toBeDefined()
    const [least] = trousersReckoning.plans
    if (least === undefined) throw new Error('no plan')
    show({ ...trousersJudged, reckoning: { ...trousersReckoning, plans: [least, { ...least, aim: 'closest-fit' }] } })
    expect(partOf('Ways to do it')).toBeUndefined()
    expect(textOf(inPage().querySelector('#moves-head'))).toBe('What to sew')
  })
})

describe('before any kind is known', () => {
  const headOf = (listing: { title: string; text: string }) => {
    show({ ...trousersJudged, kind: null, reckoning: null, reading: readListing(listing), text: listing.text })
    return shownText()
  }
  it('asks which garment it is', () => {
    expect(headOf({ title: 'Lovely thing', text: 'Worn twice.' })).toContain('Which garment is it?')
  })
  it('says what seems to be no garment, once', () => {
    const said = headOf({ title: 'Brown leather shoulder bag', text: 'Width 30 cm, height 22 cm. £25' })
    expect(said).toContain('Is this a garment?')
    expect(said.split('does not look like a garment')).toHaveLength(2)
    expect(said).not.toContain('Which garment is it?')
  })
  it('says what seems to be a page of many listings', () => {
    const text = Array.from({ length: 14 }, (_, i) => `Wool skirt no ${i + 1}, waist ${60 + i} cm. £${12 + i}.00`).join('\n')
    expect(headOf({ title: 'Vintage skirts', text })).toContain('Which listing do you mean?')
  })
})

describe('an answer about another page', () => {
  it('names its garment and says what to press', () => {
    show({ ...trousersJudged, place: 'elsewhere' })
    const mark = inPage().querySelector('.mind')
    expect(textOf(mark)).toBe(
      'This answer is about “Heavy grey twill trousers, pleated”, not the page in front. Click the toolbar button to check this one.'
    )
  })
  it('is not marked beside its own page', () => {
    show(trousersJudged)
    expect(inPage().querySelector('.mind')).toBeNull()
  })
})

describe('where there is no answer', () => {
  it.each(['browser-page', 'store-page', 'pdf', 'empty', 'other-origin-frame', 'no-permission', 'tab-gone', 'failed'] as const)(
    '%s has its own sentence and the offer to paste',
    (problem) => {
      show({ ...trousersJudged, text: '', problem, reckoning: null })
      const says = textOf(inPage().querySelector('.why'))
      expect(says.length).toBeGreaterThan(40)
      expect(inPage().querySelector('textarea')).not.toBeNull()
      expect(button('Read it').disabled).toBe(true)
    }
  )
  it('asks whom it is for when there is nobody', () => {
    show({ ...trousersJudged, reckoning: null }, [])
    press('Enter body measures')
    expect(actions.onWorkroom).toHaveBeenCalledWith('body')
  })
  it('shows page text as text, whatever stands in it', () => {
    show({ ...trousersJudged, title: '<img src=x onerror=alert(1)>', text: '<script>alert(1)</script> waist 16' })
    expect(inPage().querySelector('img')).toBeNull()
    expect(inPage().querySelector('script')).toBeNull()
    expect(textOf(inPage().querySelector('h1'))).toBe('<img src=x onerror=alert(1)>')
  })
})

describe('a doubtful figure', () => {
  it('offers its readings, and takes the one that is chosen at its place in the text', () => {
    show(trousersJudged)
    press('It is the front rise, 11 in')
    const quote = 'rise 11'
    const start = trousersJudged.text.indexOf(quote)
    const set = { quote, start, end: start + quote.length, point: 'frontRise' as const, mm: 279.4 }
    expect(vi.mocked(actions.onCorrections).mock.lastCall?.[0]).toEqual([set])
    show({ ...trousersJudged, corrections: [set] })
    const mark = [...inPage().querySelectorAll('mark')].find((one) => textOf(one).startsWith(quote))
    expect(mark?.className).toBe('')
    expect(textOf(mark)).toBe('rise 11set to 11')
  })
})

describe('what is assumed', () => {
  it('is shown as assumed and can be set and taken back', () => {
    show(trousersJudged)
    press('Set lined')
    pick('Lined', 'Yes')
    expect(vi.mocked(actions.onCorrections).mock.lastCall?.[0]).toEqual([{ made: { lined: true } }])
    show({ ...trousersJudged, corrections: [{ made: { lined: true } }] })
    press('Undo lined')
    expect(vi.mocked(actions.onCorrections).mock.lastCall?.[0]).toEqual([])
  })
})

describe('several sizes in one text', () => {
  const text = 'Size S: waist 78 cm, hips 96 cm\nSize M: waist 84 cm, hips 102 cm'
  const judged: Judged = { ...trousersJudged, text, reading: readListing({ title: 'Trousers', text }), corrections: [{ size: 'S' }] }
  it('lets the one for sale be chosen, and the choice taken back', () => {
    show(judged)
    const select = field('Size for sale')
    if (!(select instanceof HTMLSelectElement)) throw new Error('no choice of size')
    expect([...select.options].map(({ value }) => value)).toEqual(['', 'S', 'M'])
    expect(select.value).toBe('S')
    for (const value of ['M', '']) type('Size for sale', value)
    expect(vi.mocked(actions.onCorrections).mock.calls).toEqual([[[{ size: 'M' }]], [[]]])
  })
})

describe('a size that is still to be chosen', () => {
  const text = 'Size S: waist 78 cm, hips 96 cm\nSize M: waist 84 cm, hips 102 cm'
  it('stands at the head with what to do, and nothing is asked of the seller before it is chosen', () => {
    const reckoning = {
      ...trousersJudged.reckoning,
      ask: [{ point: 'waist' as const, worth: 1, unit: 'score' as const, question: 'How wide?' }]
    }
    const judged = { ...trousersJudged, text, reading: readListing({ title: 'Trousers', text }), reckoning } as Judged
    show({ ...judged, corrections: [] })
    expect(shownText()).toContain('Choose the one for sale')
    expect(verdictReasons({ ...judged, corrections: [] })).toHaveLength(1)
    expect(verdictReasons({ ...judged, corrections: [{ size: 'S' }] })).toEqual(verdictReasons(trousersJudged))
    expect(shownText()).not.toContain('How wide?')
    show({ ...judged, corrections: [{ size: 'S' }] })
    expect(shownText()).not.toContain('Choose the one for sale')
    expect(shownText()).toContain('How wide?')
  })
})

describe('the size on the label', () => {
  const LABEL = 'Size on the label'
  const reading = { ...trousersJudged.reading, sizeLabels: ['W34 L32'] }
  const judged: Judged = { ...trousersJudged, reading, corrections: [{ kind: 'trousers' }] }
  it('shows what was read, and typed stands for it beside the other corrections', () => {
    show(judged)
    expect(field(LABEL).value).toBe('W34 L32')
    fill(LABEL, 'W32 L30')
    expect(vi.mocked(actions.onCorrections).mock.lastCall?.[0]).toEqual([{ kind: 'trousers' }, { label: 'W32 L30' }])
  })
  it('left untouched, or put back, it corrects nothing, whatever is looked at next', () => {
    show(judged)
    leave(LABEL)
    fill(LABEL, 'W34 L32')
    show({ ...judged, reading: { ...reading, sizeLabels: ['44'] } })
    expect(field(LABEL).value).toBe('44')
    leave(LABEL)
    expect(actions.onCorrections).not.toHaveBeenCalled()
  })
})

describe('the cut', () => {
  const read = {
    rise: { value: 'low', sureness: 0.9, from: 'told' },
    leg: { value: 'bootcut', sureness: 0.6, from: 'seen' },
    legLength: { value: 'full', sureness: 0.4, from: 'assumed' }
  } as const
  const jeans: Judged = { ...trousersJudged, kind: 'jeans', cut: read, cutAsRead: read }
  const options = (label: string) => [...field(label).querySelectorAll('option')].map(textOf)

  it('stands in one line, of what was told and seen; what is only assumed is left to the choices', () => {
    show(jeans)
    expect(textOf(inPage().querySelector('.cut-line'))).toBe('CutLow rise, bootcutChange the cut')
    show({ ...jeans, cut: {}, cutAsRead: {} })
    expect(textOf(inPage().querySelector('.cut-line p'))).toBe('Not described')
  })
  it('opens to a choice for each facet, with what was read and from where', () => {
    show(jeans)
    expect(button('Change the cut').getAttribute('aria-expanded')).toBe('false')
    press('Change the cut')
    expect(button('Close the cut').getAttribute('aria-expanded')).toBe('true')
    expect(options('Rise')[0]).toBe('Low rise (as read)')
    expect(options('Rise')).toContain('At the natural waist')
    const note = (label: string) => textOf(document.getElementById(field(label).getAttribute('aria-describedby') ?? ''))
    expect([note('Rise'), note('Leg'), note('Length of leg'), note('Turn-ups')]).toEqual([
      'Stated',
      'From the figures',
      'Not stated; the usual',
      'Not stated'
    ])
  })
  it('a choice is a correction beside the others, and as read takes it back', () => {
    show({ ...jeans, corrections: [{ kind: 'jeans' }] })
    press('Change the cut')
    type('Leg', 'flared')
    expect(actions.onCorrections).toHaveBeenLastCalledWith([{ kind: 'jeans' }, { cut: { leg: 'flared' } }])
    show({
      ...jeans,
      corrections: [{ kind: 'jeans' }, { cut: { leg: 'flared', rise: 'high' } }],
      cut: { ...read, leg: { value: 'flared', sureness: 1, from: 'told' }, rise: { value: 'high', sureness: 1, from: 'told' } }
    })
    expect(field('Leg').value).toBe('flared')
    expect(options('Leg')[0]).toBe('Bootcut (as read)')
    expect(textOf(inPage().querySelector('.cut-line p'))).toBe('High rise, flared')
    type('Leg', '')
    expect(actions.onCorrections).toHaveBeenLastCalledWith([{ kind: 'jeans' }, { cut: { rise: 'high' } }])
  })
  it('the shape of a skirt that was set as a part of its make counts as set here, and gives way here', () => {
    const flared = { silhouette: { value: 'flared', sureness: 0.9, from: 'told' } } as const
    const skirt: Judged = {
      ...trousersJudged,
      kind: 'skirt',
      corrections: [{ made: { skirtShape: 'flared', lined: true } }],
      cut: flared,
      cutAsRead: {}
    }
    show(skirt)
    press('Change the cut')
    expect(field('Shape').value).toBe('flared')
    type('Shape', '')
    expect(actions.onCorrections).toHaveBeenLastCalledWith([{ made: { lined: true } }])
    type('Shape', 'pencil')
    expect(actions.onCorrections).toHaveBeenLastCalledWith([{ made: { lined: true } }, { cut: { silhouette: 'pencil' } }])
  })
  it('is asked in one place: how it is made has neither the shape of a skirt nor the length of sleeves', () => {
    show({ ...trousersJudged, kind: 'shirt' })
    expect(shownText()).not.toMatch(/short or three-quarter/i)
    show({ ...trousersJudged, kind: 'skirt' })
    expect([...inPage().querySelectorAll('.given b')].map(textOf)).not.toContain('Skirt')
  })
  it('a garment of no known kind has no line', () => {
    show({ ...trousersJudged, kind: null })
    expect(inPage().querySelector('.cut-line')).toBeNull()
    show({ ...trousersJudged, kind: 'other' })
    expect(inPage().querySelector('.cut-line')).toBeNull()
  })
})

describe('what is said of a band', () => {
  const said = (code: string, text: string) => ({ code, values: {}, text })
  it('where a hem ends stands beside it, why so much is wanted once it is opened', () => {
    const [waist, thigh, inseam] = (['waist', 'thigh', 'inseam'] as const).map((point) => trousersGaps.find((gap) => gap.point === point))
    if (!waist || !thigh || !inseam) throw new Error('no gaps')
    const because = [said('target.ends-at', 'It ends at mid-calf on you.'), said('target.body', 'From your inside leg.')]
    const gaps = [waist, { ...inseam, because }, { ...thigh, because: [said('target.gives', 'The cloth gives.')] }]
    show({ ...trousersJudged, reckoning: { ...trousersReckoning, gaps } })
    expect(shownText()).toContain('It ends at mid-calf on you.')
    expect(shownText()).not.toContain('From your inside leg.')
    press('Correct inside leg')
    expect(shownText()).toContain('From your inside leg.')
    expect(shownText()).not.toContain('The cloth gives.')
    press('Correct thigh')
    expect(textOf(inPage().querySelector('ul[aria-label="Why you want this much: thigh"]'))).toBe('The cloth gives.')
  })
})

describe('a kind that no word tells', () => {
  it('is chosen from all of them, in the order given', () => {
    show({ ...trousersJudged, kind: null, reckoning: null, kinds: ['shirt', 'jacket', 'other'] })
    const select = field('Kind of garment')
    if (!(select instanceof HTMLSelectElement)) throw new Error('no choice of kind')
    expect([...select.options].map(({ value }) => value)).toEqual(['', 'shirt', 'jacket', 'other'])
    type('Kind of garment', 'jacket')
    expect(vi.mocked(actions.onCorrections).mock.lastCall?.[0]).toEqual([{ kind: 'jacket' }])
  })
})

describe('a chart of bodies in the text', () => {
  const text = 'To fit hips 97-103 cm. Waist 42 cm flat.'
  it('is said where doubts are, and its figures are marked as no measures', () => {
    show({ ...trousersJudged, text, reading: readListing({ title: 'Trousers size M', text }), corrections: [] })
    expect(shownText()).toContain('It is cut for hips of 38')
    expect(shownText()).toContain('advice on fit, left aside')
  })
})
