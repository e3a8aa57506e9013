/**
 * The points that decide whether a kind of garment fits: where one of them is not told, an answer is as far as told. The other points are as the
 * garment is cut: untold, they can be too small for the body and never too big.
 */
import { type GarmentKind, SHAPE, type Shape } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import { type CutRead, isCut } from './cut.ts'

const KEY: Record<Shape, readonly PointId[]> = {
  legs: ['waist', 'hip', 'thigh', 'inseam'],
  skirt: ['waist', 'hip'],
  whole: ['chest', 'waist', 'hip'],
  upper: ['chest'],
  none: []
}
/** Layers without the shoulders of a tailored jacket. */
const SOFT_LAYERS = ['denim', 'overshirt', 'biker', 'bomber', 'field', 'waxed', 'fleece', 'puffer', 'kimono']

export function keyPoints(kind: GarmentKind, cut: CutRead): readonly PointId[] {
  const keys = KEY[SHAPE[kind]]
  if (kind === 'jumpsuit') return [...keys, 'torsoLength']
  return kind === 'jacket' && !isCut(cut, 'layer', ...SOFT_LAYERS) ? [...keys, 'shoulderWidth'] : keys
}
