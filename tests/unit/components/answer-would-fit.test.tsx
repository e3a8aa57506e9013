// @vitest-environment happy-dom
/** What would make it fit, what stands at the head where it must be chosen, and the seller's own language. */
import { within } from '@testing-library/preact'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { SellerMessage } from '../../../components/answer/seller-message.tsx'
import { WouldFit } from '../../../components/answer/would-fit.tsx'
import { verdictReasons } from '../../../components/judged.ts'
import { ListingHead } from '../../../components/panel/listing-head.tsx'
import { readListing } from '../../../core/reading/read-listing.ts'
import type { Ask } from '../../../core/reckon.ts'
import { LANGUAGE_ROWS } from '../../../core/words/languages.ts'
import { hide, inPage, press, show, shownText, textOf } from '../on-page.tsx'
import { leaveIt, trousersJudged } from './fixtures.ts'

afterEach(hide)
const reason = (code: string, text: string) => ({ code, values: {}, text })
const items = () => [...inPage().querySelectorAll('.would-fit li')].map(textOf)

describe('what would make it fit', () => {
  const left = { ...trousersJudged, reckoning: leaveIt }
  const many = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((letter) => reason('change.fit', `In fit ${letter}.`))
  it('is said of what is to be left, and what would make it better of what comes close', () => {
    show(<WouldFit judged={{ ...left, wouldChange: many.slice(0, 1) }} short={false} />)
    expect(textOf(inPage().querySelector('h3'))).toBe('What would make it fit')
    show(<WouldFit judged={{ ...left, reckoning: { ...leaveIt, verdict: 'comes-close' }, wouldChange: many.slice(0, 1) }} short={false} />)
    expect(textOf(inPage().querySelector('h3'))).toBe('What would make it better')
  })
  it('says that nothing would, once that is known, and not while it is worked out', () => {
    show(<WouldFit judged={{ ...left, settled: false }} short={false} />)
    expect(shownText()).toBe('')
    show(<WouldFit judged={left} short={false} />)
    expect(shownText()).toBe('We know of no change that would make it fit.')
    show(<WouldFit judged={{ ...left, reckoning: { ...leaveIt, verdict: 'comes-close' } }} short={false} />)
    expect(shownText()).toBe('')
  })
  it('has few of them in a small window, the most telling first', () => {
    show(<WouldFit judged={{ ...left, wouldChange: many }} short />)
    expect(items()).toEqual(['In fit a.', 'In fit b.'])
    show(<WouldFit judged={{ ...left, wouldChange: many }} short={false} />)
    expect(items()).toHaveLength(6)
  })
  it('a tailor is named once: here, and not among the reasons too', () => {
    const reckoning = { ...leaveIt, because: [reason('verdict.why', 'Too wide.'), reason('verdict.tailor-could', 'A tailor could.')] }
    expect(verdictReasons({ ...left, reckoning })).toEqual(['Too wide.', 'A tailor could.'])
    const wouldChange = [reason('change.tailor', 'A tailor could make it fit.')]
    expect(verdictReasons({ ...left, reckoning, wouldChange })).toEqual(['Too wide.'])
  })
})

describe('several garments in one listing', () => {
  const text = 'Jacket: chest 53 cm flat, shoulders 45 cm. Trousers: waist 40 cm flat, inside leg 79 cm.'
  const judged = { ...trousersJudged, text, reading: readListing({ title: 'Two-piece suit', text }), corrections: [] }
  it('are asked about at the head, one press each, and the choice is a correction', () => {
    const onCorrections = vi.fn()
    show(<ListingHead judged={judged} onCorrections={onCorrections} />)
    const group = within(inPage()).getByRole('group', { name: 'The listing measures more than one garment. Which one?' })
    expect([...group.querySelectorAll('button')].map(textOf).sort()).toEqual(['Jacket', 'Trousers'])
    expect(within(group).getByRole('button', { name: 'Trousers' }).getAttribute('aria-pressed')).toBe('true')
    press('Jacket')
    expect(onCorrections).toHaveBeenCalledWith([{ kind: 'jacket' }])
  })
  it('once chosen are no question any more, and can be chosen anew', () => {
    show(<ListingHead judged={{ ...judged, corrections: [{ kind: 'trousers' }] }} onCorrections={vi.fn()} />)
    expect(inPage().querySelector('.which.asked')).toBeNull()
    expect(within(inPage()).getByRole('group', { name: 'Of the garments in this listing' }).querySelectorAll('button')).toHaveLength(2)
  })
  it('of one garment nothing is asked', () => {
    show(<ListingHead judged={trousersJudged} onCorrections={vi.fn()} />)
    expect(inPage().querySelector('.which')).toBeNull()
  })
})

describe('the message in the language of the listing', () => {
  const hip: Ask = { point: 'hip', worth: 6, unit: 'money', question: 'Could you measure the hip?' }
  const ask = (language: string) =>
    show(
      <SellerMessage title="Hose" ask={[hip]} conditions={[]} language={language} short={false} isMain={false} onCopy={async () => true} />,
      { language: 'en' }
    )
  const other = LANGUAGE_ROWS.find(({ id }) => id !== 'en')
  it('is in one\u2019s own where the listing is in it, or in one that there are no words in', () => {
    for (const language of ['en', 'en-GB', 'xx']) {
      ask(language)
      expect(inPage().querySelector('q')?.lang, language).toBe('en')
      expect(within(inPage()).queryByLabelText('In the language of the listing')).toBeNull()
    }
  })
  it.skipIf(other === undefined)('is in the listing\u2019s where there are words in it, and can be had in one\u2019s own', async () => {
    ask(other?.id ?? '')
    await vi.waitFor(() => expect(inPage().querySelector('q')?.lang).toBe(other?.id))
    press('In the language of the listing')
    expect(inPage().querySelector('q')?.lang).toBe('en')
    expect(textOf(inPage().querySelector('q'))).toContain('Could you measure the hip?')
  })
})
