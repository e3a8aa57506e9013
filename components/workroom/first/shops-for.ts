/** What somebody shops for, and the fewest measures that matter for it: without these nothing is judged, or the commonest job is not seen. */
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import type { BodyMeasureId } from '../../../core/wearer/body.ts'

export const SHOPPED_FOR = ['legs', 'skirts', 'shirts', 'jackets', 'dresses'] as const
export type ShoppedFor = (typeof SHOPPED_FOR)[number]

const FEWEST: Record<ShoppedFor, BodyMeasureId[]> = {
  legs: ['waistbandGirth', 'hipGirth', 'insideLegLength'],
  skirts: ['waistbandGirth', 'hipGirth'],
  shirts: ['bustGirth', 'shoulderWidth', 'armLength'],
  jackets: ['bustGirth', 'waistGirth', 'shoulderWidth', 'armLength'],
  dresses: ['bustGirth', 'waistGirth', 'hipGirth']
}
const ORDER: BodyMeasureId[] = ['bustGirth', 'waistGirth', 'waistbandGirth', 'hipGirth', 'insideLegLength', 'shoulderWidth', 'armLength']

/** The measures for all that was chosen, each once, from the top down. */
export const fewestFor = (chosen: readonly ShoppedFor[]): BodyMeasureId[] =>
  ORDER.filter((measure) => chosen.some((one) => FEWEST[one].includes(measure)))

/** A measure that sharpens the answer, for anyone willing to take one more. */
const IF_LIKED: Partial<Record<ShoppedFor, BodyMeasureId[]>> = { legs: ['thighGirth'] }
export const ifLikedFor = (chosen: readonly ShoppedFor[]): BodyMeasureId[] => chosen.flatMap((one) => IF_LIKED[one] ?? [])

/** The few points of a garment that is liked: what a listing of its kind is first set beside. */
export const LIKED_POINTS: Partial<Record<GarmentKind, PointId[]>> = {
  trousers: ['waist', 'hip', 'thigh', 'inseam'],
  jeans: ['waist', 'hip', 'thigh', 'inseam'],
  shorts: ['waist', 'hip', 'thigh'],
  skirt: ['waist', 'hip', 'skirtLength'],
  dress: ['chest', 'waist', 'hip', 'bodyLength'],
  shirt: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength'],
  'knit-top': ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength'],
  jumper: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength'],
  jacket: ['chest', 'shoulderWidth', 'sleeveLength', 'waist'],
  coat: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength']
}
export const LIKED_KINDS = Object.keys(LIKED_POINTS) as GarmentKind[]
