/** The simulated world is what it says: bodies as the survey has them, garments as the tables have them, and nothing of the product in it. */
import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { person, surveyed } from '../../bench/simulated/bodies.ts'
import { randomFrom } from '../../bench/simulated/chance.ts'
import { byRule, garmentOf } from '../../bench/simulated/garments.ts'
import { asKnown, type Kind, RULES, sizesOf } from '../../bench/simulated/makers.ts'
import { GRADES } from '../../bench/simulated/sellers.ts'
import { MEASURED, type Sex, SURVEY } from '../../bench/simulated/survey.ts'
import { listing, simplyWorks } from '../../bench/simulator.ts'

const mean = (all: readonly number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length
const sdOf = (all: readonly number[]): number => {
  const middle = mean(all)
  return Math.sqrt(mean(all.map((one) => (one - middle) ** 2)))
}
const BODIES = 6000

test.each(['women', 'men'] as const)('bodies of %s have the means, spreads and correlations of the survey', (sex) => {
  const random = randomFrom(5)
  const all = Array.from({ length: BODIES }, () => surveyed(random, sex))
  const { mean: means, sd, correlation } = SURVEY[sex]
  const around = MEASURED.map((measure) => {
    const middle = mean(all.map((one) => one[measure]))
    return all.map((one) => one[measure] - middle)
  })
  for (const [i, measure] of MEASURED.entries()) {
    const mine = all.map((one) => one[measure])
    expect(Math.abs(mean(mine) - (means[i] ?? 0)), `${measure}, mean`).toBeLessThan(0.06 * (sd[i] ?? 0))
    expect(sdOf(mine) / (sd[i] ?? 1), `${measure}, sd`).toBeCloseTo(1, 1)
    for (const [j, wanted] of (correlation[i] ?? []).entries()) {
      const [these = [], those = []] = [around[i], around[j]]
      const together = mean(these.map((one, n) => one * (those[n] ?? 0))) / sdOf(these) / sdOf(those)
      expect(Math.abs(together - wanted), `${measure} with ${MEASURED[j]}`).toBeLessThan(0.04)
    }
  }
})

test.each(['women', 'men'] as const)('the natural waist of %s is the narrowest, and the body widens below it to the hip', (sex) => {
  const random = randomFrom(6)
  for (let i = 0; i < 500; i++) {
    const { body, girthBelow } = person(random, sex)
    expect(girthBelow(0)).toBe(body.waistGirth)
    expect(girthBelow(10)).toBeGreaterThan(body.waistGirth ?? 0)
    expect(girthBelow(300)).toBeCloseTo(body.hipGirth ?? 0, 6)
  }
})

test.each(
  (Object.entries(RULES) as [Kind, (typeof RULES)[Kind]][]).flatMap(([kind, bySex]) =>
    (Object.keys(bySex) as Sex[]).map((sex) => [kind, sex] as const)
  )
)('garments have the means of the tables: %s of %s', (kind, sex) => {
  const random = randomFrom(7)
  const who = person(random, sex)
  const size = sizesOf(kind, sex)[5]
  if (size === undefined) throw new Error('no such size')
  const all = Array.from({ length: 3000 }, () => garmentOf(random, kind, who, size))
  for (const rule of RULES[kind][sex] ?? []) {
    // where the design decides, the table's mean is that of a plain one
    const plain = all.filter(
      ({ figures, flared, cut }) =>
        figures[rule.point] !== undefined &&
        !(flared && (rule.from.flare ?? 0) > 0) &&
        ((rule.from.leg ?? 0) === 0 || cut.leg === 'straight') &&
        (rule.from.drop ?? 0) === 0
    )
    const off = plain.map(
      ({ figures }) => (figures[rule.point] ?? 0) - byRule(rule, { ...asKnown(size), ...figures, leg: 0, flare: 0, drop: 0 })
    )
    if (plain.length > 0) expect(Math.abs(mean(off)), `${rule.point} of ${plain.length}`).toBeLessThan(7)
  }
})

test('it imports nothing of the product', () => {
  const folder = new URL('../../bench/simulated/', import.meta.url)
  const files = [...readdirSync(folder).map((name) => new URL(name, folder)), new URL('../../bench/simulator.ts', import.meta.url)]
  expect(files.length).toBeGreaterThan(5)
  const imported = files.flatMap((file) => [...readFileSync(file, 'utf8').matchAll(/from '([^']+)'/g)].map(([, from]) => from ?? ''))
  expect(imported.filter((from) => !/^\.\/(simulated\/)?[a-z-]+\.ts$/.test(from))).toEqual([])
})

test('the same seed tells the same listings, and every point that is wanted is one that the garment has', () => {
  const wanted = (seed: number) => {
    const random = randomFrom(seed)
    return Array.from({ length: 200 }, (_, i) => listing(random, GRADES[i % 3] ?? 'average'))
  }
  expect(wanted(8)).toEqual(wanted(8))
  for (const { truth } of wanted(8)) {
    expect(Object.keys(truth.wants).length).toBeGreaterThan(1)
    for (const [point, { least, ideal, most }] of Object.entries(truth.wants)) {
      expect(truth.garment[point], `${truth.kind} ${point}`).toBeGreaterThan(0)
      expect(least).toBeLessThan(ideal)
      expect(most).toBeGreaterThan(ideal)
    }
  }
})

test('careless sellers err more than careful ones', () => {
  const error = (grade: (typeof GRADES)[number]): number => {
    const random = randomFrom(9)
    const off = Array.from({ length: 1500 }, () => listing(random, grade)).flatMap(({ truth, told }) =>
      Object.entries(told.garment).map(([point, mm]) => Math.abs(mm - (truth.garment[point] ?? 0)))
    )
    return mean(off)
  }
  const [careful, average, careless] = GRADES.map(error)
  expect(average).toBeGreaterThan(careful ?? 0)
  expect(careless).toBeGreaterThan(1.3 * (average ?? 0))
})

test('simple limits take a waist in by 75, and a jacket’s shoulder not at all', () => {
  const wants = { waist: { least: 800, ideal: 820, most: 840, beneath: 800 } }
  const made = { seamAllowanceMm: 10, outletMm: 0 }
  expect(simplyWorks({ kind: 'trousers', garment: { waist: 914 }, wants, made })).toBe(true)
  expect(simplyWorks({ kind: 'trousers', garment: { waist: 916 }, wants, made })).toBe(false)
  const shoulder = { shoulderWidth: { least: 430, ideal: 440, most: 460, beneath: 420 } }
  expect(simplyWorks({ kind: 'jacket', garment: { shoulderWidth: 465 }, wants: shoulder, made })).toBe(false)
})
