/** Which points decide: without which nothing is said, and which are named where they are not told. */
import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../../core/garment/garment-input.ts'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import type { PointId } from '../../../../core/ids/points.ts'
import { missingFor, untoldKeys } from '../../../../core/plan/keys.ts'
import { gapsBetween } from '../../../../core/wearer/gaps.ts'
import { targetFor } from '../../../../core/wearer/target.ts'
import type { Target } from '../../../../core/wearer/want.ts'
import { garment } from '../../../corpus/plans/plan-case.ts'
import { rowan } from '../../../corpus/plans/wearers.ts'

const missing = (kind: GarmentKind, figures: Partial<Record<PointId, number>>) => {
  const worn = garmentAsWorn(garment(kind, figures))
  return missingFor(worn, gapsBetween(worn, targetFor(worn, rowan)))
}

describe('without which nothing is said', () => {
  it.each<[GarmentKind, Partial<Record<PointId, number>>, PointId[] | null]>([
    ['trousers', { inseam: 780 }, ['waist', 'hip', 'thigh']],
    ['trousers', { waist: 820 }, null],
    ['trousers', { hip: 1040 }, null],
    ['trousers', { thigh: 620 }, null],
    ['skirt', { skirtLength: 600 }, ['waist', 'hip']],
    ['skirt', { hip: 1000 }, null],
    ['dress', { bodyLength: 1000 }, ['chest', 'waist', 'hip']],
    ['dress', { chest: 1000 }, null],
    ['dress', { hip: 1040 }, null],
    ['shirt', { sleeveLength: 610 }, ['chest', 'waist', 'hem']],
    ['shirt', { chest: 1080 }, null],
    ['shirt', { hem: 1080 }, null],
    ['other', { chest: 1080 }, []]
  ])('%s with %j: %j', (kind, figures, points) => expect(missing(kind, figures)).toEqual(points))
})

describe('what decides and is not told', () => {
  const untold = (input: GarmentInput, fit: 'close' | 'regular' = 'regular', change: (target: Target) => Target = (same) => same) => {
    const worn = garmentAsWorn(input)
    return untoldKeys(worn, change(targetFor(worn, { ...rowan, fit })))
  }
  it.each<[string, GarmentInput, PointId[]]>([
    ['of trousers', garment('trousers', { waist: 820 }), ['hip', 'thigh', 'inseam']],
    ['of trousers that tell them all', garment('trousers', { waist: 820, hip: 1040, thigh: 628, inseam: 765 }), []],
    ['of a skirt, whose hip may be too small', garment('skirt', { waist: 820 }), ['hip']],
    // shoulders of a tailored jacket, and of no soft one
    ['of a jacket', garment('jacket', { chest: 1120 }), ['shoulderWidth']],
    ['of a bomber', garment('jacket', { chest: 1120 }, {}, { cut: { layer: 'bomber' } }), []],
    ['of a label alone', { kind: 'skirt', measures: [{ point: 'waist', mm: 820, source: 'label' }] }, ['waist', 'hip']]
  ])('%s', (_, input, points) => expect(untold(input)).toEqual(points))

  it('is the waist of a shirt too, where it is wanted close', () => {
    const shirt = garment('shirt', { chest: 1040 })
    const wanted = (ease: number) => (target: Target) =>
      new Map([...target].map(([point, want]) => [point, point === 'waist' ? { ...want, ideal: 800 + ease, bodyMm: 800 } : want]))
    expect(untold(shirt, 'close', wanted(89))).toContain('waist')
    expect(untold(shirt, 'close', wanted(90))).not.toContain('waist')
    // the waist of a dress decides anyhow, once
    expect(untold(garment('dress', { chest: 1000 }), 'close', wanted(20)).filter((point) => point === 'waist')).toEqual(['waist'])
  })
  it('is no point that nothing is aimed for and that is surely large enough', () => {
    const free = (least: number) => (target: Target) =>
      new Map([...target].map(([point, want]) => [point, point === 'hip' ? { ...want, ideal: null, least } : want]))
    const skirt = garment('skirt', { waist: 820 })
    const hip = garmentAsWorn(skirt).points.get('hip')
    const surely = (hip?.mm ?? 0) - 2 * (hip?.sdMm ?? 0)
    expect(untold(skirt, 'regular', free(surely - 1))).toEqual([])
    expect(untold(skirt, 'regular', free(surely + 1))).toEqual(['hip'])
  })
})
