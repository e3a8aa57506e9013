import { describe, expect, it } from 'vitest'
import { alterationsFor } from '../../../core/alterations/alterations-for.ts'
import { oneSizeMm } from '../../../core/alterations/one-size.ts'
import { type Garment, garmentAsWorn } from '../../../core/garment/garment-as-worn.ts'
import type { GarmentInput, GarmentMeasure } from '../../../core/garment/garment-input.ts'
import { excludeEachOther } from '../../../core/plan/solve/problem.ts'
import { byCut } from './limits-by-cut.ts'

const USUAL = { waist: 850, hip: 1050, chest: 1050, inseam: 780, skirtLength: 620, bodyLength: 720, sleeveLength: 620 } as const

const garmentOf = (input: Omit<GarmentInput, 'measures'>): Garment => {
  const measures = Object.entries(USUAL).map(([point, mm]): GarmentMeasure => ({ point: point as keyof typeof USUAL, mm, source: 'own' }))
  return garmentAsWorn({ ...input, measures })
}

describe('how far a job goes, by cut, make and cloth', () => {
  it.each(byCut.map((one) => [`${one.kind}, ${one.job}: ${one.why}`, one] as const))(
    '%s',
    (_name, { job, most, soft, level, rescue, ...input }) => {
      const option = alterationsFor(garmentOf(input)).options.find(({ key }) => key === job)
      if (most === null) return expect(option).toBeUndefined()
      expect(Math.floor(Math.max(...(option?.lines.map(({ capMm }) => capMm) ?? [0])))).toBe(most)
      if (soft !== undefined) expect(option?.lines[0]?.softMm).toBe(soft)
      if (level !== undefined) expect(option?.level).toBe(level)
      if (rescue !== undefined) expect(option?.rescue).toBe(rescue)
      return undefined
    }
  )
})

describe('what goes together', () => {
  const together = (input: Omit<GarmentInput, 'measures'>, one: string, other: string): boolean => {
    const { options } = alterationsFor(garmentOf(input))
    const [first, second] = [one, other].map((key) => options.find((option) => option.key === key))
    if (first === undefined || second === undefined) throw new Error(`${one} or ${other} is not offered on ${input.kind}`)
    return !excludeEachOther(first, second)
  }
  const roomy = { seamAllowanceMm: 25, outletMm: 25 }
  it.each([
    ['waist out by a seam, in by its button', 'trousers', 'waist-out-centre-back/more', 'waist-button-move/less'],
    ['waist in at the back, out by its button', 'trousers', 'waist-in-centre-back/less', 'waist-button-move/more'],
    ['seat in and out', 'trousers', 'seat-in/less', 'seat-out/more'],
    ['sides in, buttons out', 'jacket', 'sides-in/less', 'front-button-move/more'],
    ['sides in and out', 'dress', 'sides-in/less', 'sides-out/more'],
    ['legs up and down', 'trousers', 'leg-shorten-blind/less', 'leg-lengthen-hem/more'],
    ['a blind hem and a plain one', 'trousers', 'leg-shorten-blind/less', 'leg-shorten-plain/less'],
    ['lifted at the shoulder, waist seam lowered', 'dress', 'lift-at-shoulder/less', 'dress-waist-lower/more']
  ] as const)('never: %s', (_why, kind, one, other) => {
    expect(together({ kind, made: roomy }, one, other)).toBe(false)
  })
  it.each([
    ['hip out at the sides, waist in by darts: one line', 'skirt', 'skirt-sides-out/more', 'waist-in-darts/less'],
    ['both buttons and sides in', 'jacket', 'sides-in/less', 'front-button-move/less'],
    ['thigh out, knee in: one new line', 'trousers', 'thigh-out/more', 'leg-taper/less'],
    ['waist in, seat out', 'trousers', 'waist-in-centre-back/less', 'seat-out/more']
  ] as const)('well: %s', (_why, kind, one, other) => {
    expect(together({ kind, made: { ...roomy, backSeam: kind !== 'skirt' } }, one, other)).toBe(true)
  })
})

describe('about one size in all', () => {
  it.each([
    ['a tailored jacket', { kind: 'jacket' }, 'waist', 50],
    ['a lined dress', { kind: 'dress', made: { lined: true } }, 'hip', 60],
    ['an unlined dress', { kind: 'dress' }, 'chest', 80],
    ['a lined skirt', { kind: 'skirt', made: { lined: true } }, 'waist', 60],
    ['jeans', { kind: 'jeans' }, 'waist', 80],
    ['a jumper', { kind: 'jumper' }, 'chest', 80],
    ['a shirt with two darts', { kind: 'shirt' }, 'waist', 100],
    ['a shirt’s chest', { kind: 'shirt' }, 'chest', 80]
  ] as const)('%s', (_name, input, girth, most) => {
    expect(oneSizeMm(garmentOf(input), girth)).toBe(most)
  })
  it('several seams share it; one by itself keeps its own limit', () => {
    const { options } = alterationsFor(garmentOf({ kind: 'trousers' }))
    const shares = options.flatMap(({ id, lines, shared }) =>
      shared
        .filter(({ group }) => group === 'one-size-waist')
        .map(({ shares, budgetMm }) => ({ id, alone: (shares[0] ?? 0) * (lines[0]?.capMm ?? 0), budgetMm }))
    )
    const waistIn = shares.filter(({ id }) => id === 'waist-in-centre-back' || id === 'waist-in-side-seams')
    expect(waistIn).toHaveLength(2)
    for (const { alone, budgetMm } of waistIn) expect(alone).toBeLessThanOrEqual(budgetMm)
    // 74 at the back and 50 at the sides would be 124
    expect(waistIn.reduce((sum, { alone }) => sum + alone, 0)).toBeGreaterThan(80)
  })
})
