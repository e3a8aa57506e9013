/** Tokens: what is asked of one. */
import { describe, expect, it } from 'vitest'
import { isOneOf, type Token } from '../../../../core/reading/text/tokens.ts'

describe('a mark', () => {
  const token = (text: string): Token => ({ kind: 'mark', text, start: 0, end: text.length, spaced: false })
  it.each([
    [':', ':=-', true],
    ['-', ':=-', true],
    [',', ':=-', false],
    // two marks in a row are no mark of the list
    [':=', ':=-', false]
  ])('%s is one of %s: %s', (text, marks, is) => expect(isOneOf(token(text), marks)).toBe(is))
  it('is none where no token stands', () => expect(isOneOf(undefined, ':=-')).toBe(false))
})
