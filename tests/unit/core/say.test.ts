import { describe, expect, it, test } from 'vitest'
import { say } from '../../../core/words/say.ts'

const cm = { units: 'cm' as const }

describe('say', () => {
  it('puts lengths in the person’s units', () => {
    const saying = { code: 'do.waist-in-centre-back.less', values: { amount: 63.5 } }
    expect(say(saying, { units: 'in' })).toBe('Take 2½ in out of the waist at the centre back')
    expect(say(saying, cm)).toBe('Take 6.4 cm out of the waist at the centre back')
  })
  it('looks words up and begins with a capital', () => {
    expect(say({ code: 'verdict.stays', values: { mm: 20, way: 'wide' }, point: 'shoulderWidth' }, cm)).toBe(
      'The shoulder stays 2 cm too wide.'
    )
    expect(say({ code: 'point.waist', values: {} }, cm)).toBe('Waist')
  })
  it('says a chance in tens', () => {
    expect(say({ code: 'facts.chance-if', values: { chance: 0.42 } }, cm)).toBe('4 in 10 if all that is right')
  })
  it('throws on an unknown code, a missing value and an unknown word', () => {
    expect(() => say({ code: 'no.such', values: {} }, cm)).toThrow('no.such')
    expect(() => say({ code: 'do.waist-in-centre-back.less', values: {} }, cm)).toThrow('amount')
    expect(() => say({ code: 'verdict.stays', values: { mm: 1, way: 'sideways' }, point: 'waist' }, cm)).toThrow('sideways')
  })
  it('writes page text as text: nothing in a value is a placeholder', () => {
    expect(say({ code: 'verdict.why', values: { why: '{amount|length} <script>' } }, cm)).toBe('{amount|length} <script>')
  })
})

test.each([
  ['an override', '\u202egnp.exe', '\u2068gnp.exe\u2069'],
  ['a closed isolate that would break out', 'a\u2069\u202eb', '\u2068ab\u2069'],
  ['letters from right to left', 'שמלה', '\u2068שמלה\u2069'],
  ['plain letters', 'Kilt é 日本', 'Kilt é 日本']
])('a title with %s turns nothing else of its sentence', (_, title, shown) => {
  expect(say({ code: 'wishlist.saved', values: { title } }, { units: 'cm' })).toBe(`${shown} saved.`)
})
