/** Elastic and cords at the waist: the steps of each job. CP common practice, no source. */
import { amount, amountOf, mark } from '../marks.ts'
import { type JobOn, type Mark, pointMm, type StepRow, type StepsRow } from '../step.ts'
import { check } from './seam-steps.ts'

const waistMm = ({ garment }: JobOn): number => pointMm(garment, 'waist', 850)
/** Elastic that lies in the back half, drawn in by the whole amount, with 15 at either end to sew on (CP). */
const ELASTIC_END_MM = 15
const backElastic = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('elastic-works', waistMm(on) / 2 - amountOf(on)),
  mark('elastic-cut', waistMm(on) / 2 - amountOf(on) + 2 * ELASTIC_END_MM)
]
/** Ends lapped by 15 where elastic is joined (CP); a hand's breadth of casing is opened. */
const LAP_MM = 15
const HAND_MM = 80
/** A cord is as long as the waist and half a metre to tie (CP). */
const TIES_MM = 500
const TRY_SAFETY_PINS: StepRow = { does: 'try-safety-pinned', act: 'try' }

export const elastic: StepsRow[] = [
  {
    id: 'waist-in-elastic',
    part: 'waist',
    fit: [{ does: 'measure-elastic', act: 'look', figures: backElastic, uses: ['elastic'] }],
    work: [
      { does: 'slits-in-band', act: 'unpick', opens: 'casing' },
      { does: 'elastic-in', act: 'hand', figures: backElastic, uses: ['elastic', 'bodkin'], mind: ['old-elastic'] },
      TRY_SAFETY_PINS,
      { does: 'elastic-ends', act: 'sew' },
      { does: 'slits-closed', act: 'hand', closes: 'casing' },
      check('check-gathers')
    ]
  },
  {
    id: 'waist-elastic-shorten',
    part: 'waist',
    fit: [{ does: 'measure-old-elastic', act: 'look', figures: amount, mind: ['old-elastic'] }],
    work: [
      { does: 'casing-open', act: 'unpick', figures: () => [mark('span', HAND_MM)], opens: 'casing' },
      { does: 'elastic-lapped', act: 'pin', figures: amount },
      TRY_SAFETY_PINS,
      {
        does: 'elastic-cut',
        act: 'cut',
        when: (on) => amountOf(on) > LAP_MM,
        figures: (on) => [mark('cut-off', amountOf(on) - LAP_MM), mark('lap', LAP_MM)]
      },
      { does: 'elastic-joined', act: 'sew' },
      { does: 'casing-closed', act: 'sew', closes: 'casing' },
      check('check-gathers')
    ]
  },
  {
    id: 'drawstring-add',
    part: 'waist',
    fit: [{ does: 'measure-cord', act: 'look', figures: (on) => [...amount(on), mark('cord', waistMm(on) + TIES_MM)], uses: ['cord'] }],
    work: [
      { does: 'mark-eyelets', act: 'mark', uses: ['eyelets', 'interfacing'] },
      { does: 'try-cord', act: 'try' },
      { does: 'eyelets-in', act: 'cut', uses: ['eyelets', 'interfacing', 'hammer'], mind: ['hammer'] },
      {
        does: 'cord-in',
        act: 'hand',
        figures: (on) => [mark('cord', waistMm(on) + TIES_MM)],
        uses: ['cord', 'bodkin'],
        mind: ['no-cords-for-children']
      },
      check('check-cord')
    ]
  }
]
