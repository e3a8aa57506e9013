import { describe, expect, it } from 'vitest'
import { figure, formatLength, INCH_MM, LONGEST_MM, parseLength, toMm } from '../../../core/length.ts'

describe('a typed length', () => {
  it.each([
    ['28 3/4', 'in', 28.75 * INCH_MM],
    ['28-3/4', 'in', 28.75 * INCH_MM],
    ['28¾', 'in', 28.75 * INCH_MM],
    ['28 ¾ in', undefined, 28.75 * INCH_MM],
    ['28.75"', undefined, 28.75 * INCH_MM],
    ['28.75”', undefined, 28.75 * INCH_MM],
    ['½', 'in', 0.5 * INCH_MM],
    ['3/4 inch', undefined, 0.75 * INCH_MM],
    ['73 cm', 'in', 730],
    ['73cm', undefined, 730],
    ['73,5', 'cm', 735],
    ['735 mm', 'cm', 735],
    ['  80  ', 'cm', 800]
  ] as const)('%s with %s', (typed, unit, mm) => {
    const parsed = parseLength(typed, unit)
    expect(parsed.ok).toBe(true)
    if (parsed.ok) expect(parsed.mm).toBeCloseTo(mm, 9)
  })

  it.each([
    ['', 'cm', 'empty'],
    ['   ', 'cm', 'empty'],
    ['12', undefined, 'no-unit'],
    ['1/0', 'in', 'divided-by-zero'],
    ['3..5', 'cm', 'not-a-number'],
    ['-4', 'cm', 'negative'],
    ['−4', 'cm', 'negative'],
    ['0', 'cm', 'zero'],
    ['900', 'cm', 'too-large'],
    ['<b>12</b>', 'cm', 'not-a-number'],
    ['twelve', 'in', 'not-a-number'],
    ['1e3', 'mm', 'not-a-number']
  ] as const)('%j with %s is refused: %s', (typed, unit, problem) => {
    expect(parseLength(typed, unit)).toEqual({ ok: false, problem })
  })

  it('an inch is 25.4 mm exactly (NIST SP 811), both ways', () => {
    expect(toMm(40, 'in')).toBe(1016)
    expect(LONGEST_MM).toBe(5000)
  })
})

describe('a length as shown', () => {
  it.each([
    [730, 'cm', '73'],
    [735, 'cm', '73.5'],
    [735.4, 'cm', '73.5'],
    [0, 'cm', '0'],
    [0.3, 'cm', '0'],
    [-18, 'cm', '−1.8'],
    [28.75 * INCH_MM, 'in', '28¾'],
    [0.125 * INCH_MM, 'in', '⅛'],
    [29.99 * INCH_MM, 'in', '30'],
    [-1.5 * INCH_MM, 'in', '−1½'],
    [0, 'in', '0']
  ] as const)('%s mm in %s is %s', (mm, units, text) => {
    expect(figure(mm, units)).toBe(text)
    expect(formatLength(mm, units)).toBe(`${text} ${units}`)
  })
})
