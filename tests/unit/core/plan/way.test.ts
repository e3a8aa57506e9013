/** The word for being past an edge, point by point: what is measured along is long or short, what is measured across a back wide or narrow. */
import { expect, test } from 'vitest'
import { POINTS, type PointId } from '../../../../core/ids/points.ts'
import { mendOf, wayOf } from '../../../../core/plan/way.ts'

// as the trade speaks (common practice, no source)
const LONG: PointId[] = [
  ...(['sleeveLength', 'sleeveFromCentreBack', 'sleeveUnderarm', 'bodyLength', 'skirtLength', 'napeToWaist'] as const),
  ...(['inseam', 'outseam', 'frontRise', 'backRise', 'crotchLength', 'strap', 'torsoLength'] as const)
]
const WIDE: PointId[] = ['shoulderWidth', 'backWidth']

test.each(POINTS)('%s', (point) => {
  const [over, under] = LONG.includes(point) ? ['long', 'short'] : WIDE.includes(point) ? ['wide', 'narrow'] : ['big', 'small']
  expect([wayOf(1, point), wayOf(-1, point)]).toEqual([over, under])
  expect([mendOf(1, point), mendOf(-1, point)]).toEqual(LONG.includes(point) ? ['shorten', 'lengthen'] : ['in', 'out'])
})
