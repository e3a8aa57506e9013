/** Whether a garment has sleeves. */
import { isCut } from './cut.ts'
import { type Garment, isTold } from './garment-as-worn.ts'

/** Are there sleeves, as told, or as its kind has them? A dress of which nothing is told may have none. */
export const hasSleeves = ({ kind, cut, points, told }: Garment): boolean =>
  !isCut(cut, 'sleeve', 'sleeveless') &&
  (kind === 'shirt' ||
    kind === 'knit-top' ||
    kind === 'jumper' ||
    cut.sleeve !== undefined ||
    told.shortSleeves === true ||
    isTold(points.get('sleeveLength')))
