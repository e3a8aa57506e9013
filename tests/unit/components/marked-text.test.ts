import { describe, expect, it } from 'vitest'
import { markedParts, piecesOf } from '../../../components/panel/marked-text.ts'
import { emptyReading, LISTING, stated, trousersReading } from './fixtures.ts'

describe('marks in the listing’s own words', () => {
  const marks = markedParts(trousersReading, [])
  const at = (quote: string) => marks.find(({ start, end }) => LISTING.slice(start, end) === quote)
  it('tell what was read, what is doubtful and what was left aside', () => {
    expect(at('waist 16" straight across')).toMatchObject({ as: 'read', says: { code: 'mark.around' } })
    expect(at('inside leg 31"')).toMatchObject({ as: 'read', says: { code: 'mark.long' } })
    expect(at('rise 11')).toMatchObject({ as: 'doubt' })
    expect(at('34')).toMatchObject({ as: 'aside', says: { code: 'mark.aside.size-label' } })
    expect(at('2" turned up')).toMatchObject({ as: 'read', says: { code: 'mark.allowance' } })
  })
  it('never lie over each other, and the doubt wins', () => {
    const quote = stated(LISTING, 'waist 16" straight across', 16, 'in')
    const doubted = markedParts({ ...trousersReading, issues: [{ code: 'x', stated: quote, readings: [], values: {}, text: 'x' }] }, [])
    const here = doubted.filter(({ start, end }) => start < quote.end && end > quote.start)
    expect(here.map(({ as }) => as)).toEqual(['doubt'])
    for (let i = 1; i < doubted.length; i++) expect(doubted[i]?.start).toBeGreaterThanOrEqual(doubted[i - 1]?.end ?? 0)
  })
  it('follow a correction', () => {
    const { text, start, end } = stated(LISTING, 'waist 16" straight across', 16, 'in')
    const not = markedParts(trousersReading, [{ quote: text, start, end, point: null }])
    expect(not.find((mark) => mark.start === start)).toMatchObject({ as: 'aside', says: { code: 'mark.not-this' } })
    const set = markedParts(trousersReading, [{ quote: text, start, end, point: 'waist', mm: 800, unit: 'cm', basis: 'around' }])
    expect(set.find((mark) => mark.start === start)).toMatchObject({ as: 'read', says: { code: 'mark.set-around', values: { mm: 800 } } })
  })
})

describe('the text in pieces', () => {
  it('is the text again when put together, whatever the marks', () => {
    expect(
      piecesOf(LISTING, markedParts(trousersReading, []), false)
        .map(({ text }) => text)
        .join('')
    ).toBe(LISTING)
    expect(piecesOf(LISTING, [], false)).toEqual([{ start: 0, text: LISTING, mark: null }])
    expect(piecesOf('', [], false)).toEqual([])
  })
  it('shows of a long page what stands around its marks, and the whole when asked', () => {
    const long = `${'a'.repeat(9000)} waist 16 ${'b'.repeat(9000)}`
    const reading = {
      ...emptyReading,
      measures: trousersReading.measures.slice(0, 1).map((one) => ({ ...one, stated: stated(long, 'waist 16', 16, 'in') }))
    }
    const marks = markedParts(reading, [])
    const shown = piecesOf(long, marks, false)
    expect(shown.filter(({ text }) => text === null)).toHaveLength(2)
    expect(shown.reduce((sum, { text }) => sum + (text?.length ?? 0), 0)).toBeLessThan(4000)
    expect(shown.some(({ mark }) => mark !== null)).toBe(true)
    expect(
      piecesOf(long, marks, true)
        .map(({ text }) => text)
        .join('')
    ).toBe(long)
  })
  it('leaves out a mark that reaches past the text', () => {
    const mark = { start: 3, end: 99, as: 'read' as const, says: { code: 'mark.doubt', values: {} } }
    expect(piecesOf('short', [mark], false)).toEqual([{ start: 0, text: 'short', mark: null }])
  })
})
