/**
 * Lengths on a body: where the hem of a skirt, a dress or a coat falls on this wearer, as a share of the stature above the floor.
 * Heights of waist and nape: lines over ANSUR II (2012). Names of lengths: style guides on skirt lengths; their edges are common practice.
 */
import type { Garment } from '../garment/garment-as-worn.ts'
import { isTold } from '../garment/garment-as-worn.ts'
import type { FacetValue } from '../ids/cut.ts'
import type { PointId } from '../ids/points.ts'
import { halfApart, mean } from './band-height.ts'
import type { Sex } from './body.ts'
import type { Want } from './want.ts'
import { sexesOf, type WholeBody } from './whole-body.ts'

/** Height of the hem over the floor, share of the stature: least, ideal, most. The lowest hem first. */
export const HEM_HEIGHTS: Record<FacetValue<'dressLength'>, [number, number, number]> = {
  train: [-0.2, -0.05, 0],
  maxi: [0, 0.025, 0.065],
  ankle: [0.03, 0.045, 0.07],
  tea: [0.075, 0.11, 0.15],
  midi: [0.12, 0.17, 0.225],
  'below-knee': [0.22, 0.24, 0.258],
  knee: [0.255, 0.275, 0.295],
  'above-knee': [0.295, 0.315, 0.345],
  mini: [0.335, 0.38, 0.43],
  micro: [0.43, 0.45, 0.48]
}
/** Where a hem ends, in words: from this share of the stature on. */
const ENDS: [from: number, where: string][] = [
  [0.345, 'thigh'],
  [0.295, 'above-knee'],
  [0.255, 'knee'],
  [0.22, 'below-knee'],
  [0.12, 'mid-calf'],
  [0.075, 'low-calf'],
  [0.03, 'ankle'],
  [0, 'floor']
]
/** Nobody said how long: only a hem on the floor, or one above this, is a fault. */
const BARE = 0.43
/** Sellers' names of lengths overlap by 150 (312 dresses called knee length measure 762–965): so far past its edges a name is still true. */
const NAME_MM = 45
/** Long skirts are worn with a heel: so much more than barefoot still clears the floor (common practice). */
const HEEL_MM = 30

/** Height above the floor, barefoot: intercept, stature, sd (ANSUR II). */
const WAIST_HEIGHT: Record<Sex, [number, number, number]> = { women: [-146.4, 0.7199, 17.5], men: [-150.3, 0.7069, 19] }
const NAPE_HEIGHT: Record<Sex, [number, number, number]> = { women: [-90.4, 0.9126, 10.5], men: [-78.1, 0.9084, 11.2] }
/** The back is curved, and a length is told from the nape or from the shoulder at the neck, 25 apart: half of that, and doubt. */
const OVER_THE_BACK_MM = 27
const FROM_WHERE_SD_MM = 15

/** Each length, and where it is measured from. */
const LENGTHS: { kind: Garment['kind']; point: PointId; from: 'waist' | 'nape' }[] = [
  { kind: 'skirt', point: 'skirtLength', from: 'waist' },
  { kind: 'dress', point: 'bodyLength', from: 'nape' },
  { kind: 'dress', point: 'skirtLength', from: 'waist' },
  { kind: 'coat', point: 'bodyLength', from: 'nape' }
]

/** Height above the floor, mm; undefined: no stature told. */
function heightOf(from: 'waist' | 'nape', body: WholeBody): { mm: number; sdMm: number } | undefined {
  const stature = body.get('stature')
  if (stature === undefined || stature.basedOn.length > 0) return undefined
  const lines = sexesOf(body.sizes).map((sex) => (from === 'waist' ? WAIST_HEIGHT : NAPE_HEIGHT)[sex])
  const heights = lines.map(([intercept, slope]) => intercept + slope * stature.mm)
  const mm = mean(heights)
  const apart = halfApart(heights)
  const sd = Math.max(...lines.map(([, , residual]) => residual))
  return from === 'waist'
    ? { mm, sdMm: Math.hypot(sd, apart) }
    : { mm: mm + OVER_THE_BACK_MM, sdMm: Math.hypot(sd, apart, FROM_WHERE_SD_MM) }
}

/** What is wanted of a skirt's, a dress's or a coat's lengths; the reason says where the told length ends on this wearer. */
export function hemWants(garment: Garment, body: WholeBody, told: FacetValue<'dressLength'> | undefined): [PointId, Want][] {
  return LENGTHS.flatMap(({ kind, point, from }): [PointId, Want][] => {
    // a coat is as long as it is cut: only a name that was told is a wish
    if (kind !== garment.kind || (told === undefined && kind === 'coat')) return []
    const start = heightOf(from, body)
    const stature = body.get('stature')?.mm
    if (start === undefined || stature === undefined) return []
    const length = garment.points.get(point)
    const height = isTold(length) ? (start.mm - length.mm) / stature : undefined
    const where = height === undefined ? undefined : (ENDS.find(([least]) => height >= least)?.[1] ?? 'floor')
    const at = (share: number) => start.mm - share * stature
    const heights = told === undefined ? undefined : HEM_HEIGHTS[told]
    const lowest = told === 'train' ? Number.POSITIVE_INFINITY : start.mm + HEEL_MM
    const band =
      heights === undefined
        ? { least: at(BARE), ideal: null, most: lowest }
        : { least: at(heights[2]) - NAME_MM, ideal: at(heights[1]), most: Math.min(at(heights[0]) + NAME_MM, lowest) }
    const because = where === undefined ? [] : [{ code: 'target.ends-at', values: { where }, point }]
    return [[point, { ...band, sdMm: start.sdMm, from: 'body', measure: 'stature', basedOn: [], because }]]
  })
}
