/** The taper against its definition by slopes, integrated step by step, and against straight lines drawn by a general routine. */
import { expect, test } from 'vitest'
import { BLEND, taperOffsets, taperShare } from '../../../../core/worksheet/taper.ts'

/**
 * The same line told by its slope alone (design: straight, then tangent to the old seam at its end): constant to 1 − β, then falling evenly to 0.
 * Its area is 1, so that the steepest slope follows; the share is what is left of that area. Midpoint rule.
 */
function integratedShare(t: number, blend: number, steps = 20_000): number {
  const slope = (u: number) => (u <= 1 - blend ? 1 : (1 - u) / blend)
  const area = (from: number, to: number): number => {
    let sum = 0
    const width = (to - from) / steps
    for (let n = 0; n < steps; n++) sum += slope(from + (n + 0.5) * width) * width
    return sum
  }
  return area(t, 1) / area(0, 1)
}

test.each([0.15, 1 / 3, 0.5, 1])('the share at every depth is what its slopes leave (blend %f)', (blend) => {
  for (const t of [0, 0.1, 0.25, 1 / 3, 0.5, 0.62, 2 / 3, 0.8, 0.95, 1])
    expect(taperShare(t, blend)).toBeCloseTo(integratedShare(t, blend), 4)
})

test('a third down, with the usual blend, six tenths are left (design)', () => {
  expect(BLEND).toBeCloseTo(1 / 3, 12)
  expect(taperShare(1 / 3)).toBeCloseTo(0.6, 12)
})

/** Where a straight line between two places stands at a depth: the general way. */
const onLine = ([x1, y1]: [number, number], [x2, y2]: [number, number], x: number): number => y1 + ((y2 - y1) * (x - x1)) / (x2 - x1)

test('without a blend it is the straight line of the handbooks', () => {
  for (const { atMm, offsetMm } of taperOffsets(19, 230, 25, 0)) expect(offsetMm).toBeCloseTo(onLine([0, 19], [230, 0], atMm), 9)
})

test('marks stand every 25 mm and at the end, where the old seam is met', () => {
  const marks = taperOffsets(15, 190)
  expect(marks.map(({ atMm }) => atMm)).toEqual([0, 25, 50, 75, 100, 125, 150, 175, 190])
  expect(marks[0]?.offsetMm).toBe(15)
  expect(marks.at(-1)?.offsetMm).toBe(0)
  // by hand: k = 1.2, at 75 of 190 1 − 1.2 × 75/190 = 0.5263; at 175, 1.2 × (15/190)² × 1.5 = 0.01122
  expect(marks[3]?.offsetMm).toBeCloseTo(7.895, 3)
  expect(marks[7]?.offsetMm).toBeCloseTo(0.168, 3)
})

test('a length that is a whole number of steps ends once', () => {
  expect(taperOffsets(10, 100).map(({ atMm }) => atMm)).toEqual([0, 25, 50, 75, 100])
})

test('no taper is one mark; what is no figure is refused', () => {
  expect(taperOffsets(10, 0)).toEqual([{ atMm: 0, offsetMm: 10 }])
  expect(() => taperOffsets(10, 100, 0)).toThrow(/step above 0/)
  expect(() => taperOffsets(Number.NaN, 100)).toThrow(/figures/)
})
