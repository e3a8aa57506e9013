/** Garments drawn from the model of garments itself: hardly one is called contradictory, and most that hold a slip are. */
import { expect, test } from 'vitest'
import { contradictions } from '../../core/garment/contradictions.ts'
import { garmentAsWorn, isTold, SD_MM } from '../../core/garment/garment-as-worn.ts'
import type { GarmentMeasure } from '../../core/garment/garment-input.ts'
import { beliefOf } from '../../core/garment/model/garment-belief.ts'
import { choleskyOf } from '../../core/garment/model/joint-normal.ts'
import { MODEL_ROWS } from '../../core/garment/model/rows.ts'
import { WHOSE, type Whose } from '../../core/garment/model/whose.ts'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import { isGirth, POINTS_OF, type PointId } from '../../core/ids/points.ts'
import { type Random, randomFrom } from './requests.ts'

const KINDS = Object.keys(MODEL_ROWS) as GarmentKind[]
const bell = (random: Random): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
const usualSd = (point: PointId): number => SD_MM.seller[isGirth(point) ? 'girth' : 'length']

interface Drawn {
  kind: GarmentKind
  whose: Whose
  measures: GarmentMeasure[]
}
/** One garment of the model, of which a seller tells two points in three, to half a centimetre. */
function draw(random: Random): Drawn {
  const kind = KINDS[Math.floor(random() * KINDS.length)] as GarmentKind
  const whose = WHOSE[Math.floor(random() * WHOSE.length)] as Whose
  const belief = beliefOf({ kind, elasticWaist: false, cut: {}, womens: whose === 'women' ? 1 : 0 }, [])
  if (belief === undefined) throw new Error(`${kind} has no rows`)
  const { points, joint } = belief
  const lower = choleskyOf(
    joint,
    points.map((_, place) => place)
  )
  const z = points.map(() => bell(random))
  const measures = points.flatMap((point, place): GarmentMeasure[] => {
    const truth = z.reduce((sum, one, other) => sum + one * (lower[place * points.length + other] ?? 0), joint.mean[place] ?? 0)
    const mm = Math.round((truth + bell(random) * usualSd(point)) / 5) * 5
    return mm > 0 && random() < 2 / 3 && POINTS_OF[kind].includes(point) ? [{ point, mm, source: 'seller' }] : []
  })
  return { kind, whose, measures }
}
const issuesOf = ({ kind, whose, measures }: Drawn, told: boolean) =>
  contradictions(garmentAsWorn({ kind, measures, ...(told ? { whose } : {}) }), { units: 'cm' })

test('of 2,000 garments of the model no more than 20 are called contradictory, told whose they are or not', () => {
  const random = randomFrom(20261)
  let [called, calledUntold, figures] = [0, 0, 0]
  for (let n = 0; n < 2000; n++) {
    const drawn = draw(random)
    figures += drawn.measures.length
    if (issuesOf(drawn, true).length > 0) called++
    if (issuesOf(drawn, false).length > 0) calledUntold++
  }
  expect(figures).toBeGreaterThan(8000)
  expect(
    [called, calledUntold].every((one) => one <= 20),
    `${called} and ${calledUntold} of 2,000`
  ).toBe(true)
})

test('of those in which a chest, waist, hip or thigh beside two figures more is told flat, most are', () => {
  const random = randomFrom(20262)
  let [slips, seen, atIt] = [0, 0, 0]
  for (let n = 0; n < 1000; n++) {
    const drawn = draw(random)
    const slip = drawn.measures.find(({ point }) => ['thigh', 'hip', 'waist', 'chest'].includes(point))
    if (slip === undefined || drawn.measures.length < 3) continue
    const measures = drawn.measures.map((one) => (one === slip ? { ...one, mm: one.mm / 2 } : one))
    const issues = issuesOf({ ...drawn, measures }, false)
    slips++
    if (issues.length > 0) seen++
    if (issues.some(({ readings }) => readings.some(({ point }) => point === slip.point))) atIt++
  }
  expect(slips).toBeGreaterThan(500)
  expect(seen / slips).toBeGreaterThan(0.75)
  expect(atIt / seen).toBeGreaterThan(0.9)
})

test('each reading names two figures that were told', () => {
  const random = randomFrom(20263)
  for (let n = 0; n < 500; n++) {
    const drawn = draw(random)
    const measures = drawn.measures.map((one) => ({ ...one, mm: one.mm * (random() < 0.2 ? 0.5 : 1) }))
    const garment = garmentAsWorn({ kind: drawn.kind, measures })
    for (const { readings } of contradictions(garment, { units: 'cm' })) {
      expect(readings.map(({ point }) => point)).toHaveLength(2)
      for (const { point, mm } of readings) {
        expect(isTold(garment.points.get(point))).toBe(true)
        expect(garment.points.get(point)?.mm).toBe(mm)
      }
    }
  }
})
