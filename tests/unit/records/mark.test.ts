/** A mark tells texts apart: as often as chance would have it, each half of it alone. */
import { expect, test } from 'vitest'
import { markOf } from '../../../core/records/mark.ts'

const halves = (text: string): [number, number] => {
  const [one = '', other = ''] = markOf(text).split('.')
  return [Number.parseInt(one, 36), Number.parseInt(other, 36)]
}

test('equal texts have equal marks, of two halves of 32 bits each', () => {
  for (const text of ['', 'a', 'Waist 16 in flat', '\u0000', 'ż🧵']) {
    expect(markOf(text)).toMatch(/^[0-9a-z]{1,7}\.[0-9a-z]{1,7}$/)
    expect(markOf(`${text}`)).toBe(markOf(text))
    for (const half of halves(text)) {
      expect(half).toBeGreaterThanOrEqual(0)
      expect(half).toBeLessThan(2 ** 32)
    }
  }
})

test('of twenty thousand texts that differ in little, no two have the same mark, and of each half hardly any', () => {
  // by chance twenty thousand values of 32 bits meet 0.05 times
  const texts = Array.from({ length: 20_000 }, (_, n) => `Waist ${n} mm`)
  expect(new Set(texts.map(markOf)).size).toBe(texts.length)
  for (const which of [0, 1] as const) expect(new Set(texts.map((text) => halves(text)[which])).size).toBeGreaterThan(texts.length - 3)
})

test('the order and the number of letters count, at either end', () => {
  const texts = ['ab', 'ba', 'aab', 'abb', 'abab', 'a', 'aa', 'aaa', '', ' ', '  ', '\u0000', '\u0000\u0000', 'b', 'ab ', ' ab']
  for (const which of [0, 1] as const) expect(new Set(texts.map((text) => halves(text)[which])).size).toBe(texts.length)
})

test('one letter more changes about half of the bits of each half, in every place', () => {
  const bits = [Array.from({ length: 32 }, () => 0), Array.from({ length: 32 }, () => 0)] as const
  const TIMES = 2_000
  for (let n = 0; n < TIMES; n++) {
    const [before, after] = [halves(`hem ${n} cm`), halves(`hem ${n} cn`)]
    for (const which of [0, 1] as const) {
      const changed = (before[which] ^ after[which]) >>> 0
      for (let bit = 0; bit < 32; bit++) bits[which][bit] = (bits[which][bit] ?? 0) + ((changed >>> bit) & 1)
    }
  }
  for (const half of bits) {
    const shares = half.map((count) => count / TIMES)
    expect(shares.reduce((sum, one) => sum + one, 0) / 32).toBeGreaterThan(0.4)
    expect(shares.reduce((sum, one) => sum + one, 0) / 32).toBeLessThan(0.6)
    expect(Math.min(...shares)).toBeGreaterThan(0.1)
  }
})
