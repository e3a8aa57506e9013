/** The tape lies where the trade takes the point: each point of each kind has its line, on the cloth that is drawn. */
import { describe, expect, it } from 'vitest'
import { drawnPoints, measureLine, viewFor } from '../../../components/outline/measure-line.ts'
import { GARMENT_KINDS } from '../../../core/ids/kinds.ts'
import { POINTS_OF } from '../../../core/ids/points.ts'
import { boxOf, outlineOf } from '../../../core/worksheet/outline/outline-geometry.ts'

/** A short leg has no knee, a sleeveless top no sleeve. */
const LACKS: Record<string, string[]> = {
  shorts: ['knee', 'calf'],
  waistcoat: ['sleeveLength', 'sleeveFromCentreBack', 'sleeveUnderarm', 'bicep', 'elbow', 'cuff']
}

describe.each(GARMENT_KINDS.filter((kind) => kind !== 'other'))('%s', (kind) => {
  it.each(POINTS_OF[kind])('has a line for its %s, and it lies on the garment', (point) => {
    const line = measureLine(kind, point)
    if (LACKS[kind]?.includes(point)) return expect(line).toBeNull()
    const box = boxOf(outlineOf(kind, { points: drawnPoints(kind), jobs: [], made: {} }, viewFor(point)))
    expect(line?.length).toBeGreaterThan(1)
    for (const { x, y } of line ?? []) {
      expect(x).toBeGreaterThanOrEqual(box.left - 1)
      expect(x).toBeLessThanOrEqual(box.right + 1)
      expect(y).toBeGreaterThanOrEqual(box.top - 1)
      expect(y).toBeLessThanOrEqual(box.bottom + 1)
    }
  })
})

it('measures a waist level across the top, an inside leg from the fork to the hem, a chest from underarm to underarm', () => {
  const waist = measureLine('trousers', 'waist') ?? []
  expect(waist.map(({ y }) => y)).toEqual([0, 0])
  expect(waist[0]?.x).toBe(-(waist[1]?.x ?? 0))
  const inseam = measureLine('trousers', 'inseam') ?? []
  expect([inseam[0]?.x, inseam[0]?.y, inseam.at(-1)?.y]).toEqual([0, 270, 270 + 760])
  const chest = measureLine('shirt', 'chest') ?? []
  expect(chest[0]?.y).toBe(chest[1]?.y)
  expect((chest[1]?.x ?? 0) - (chest[0]?.x ?? 0)).toBeCloseTo(1080 / 2, 0)
})
