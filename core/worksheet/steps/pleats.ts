/** Pleats and gathers at the waist: the steps of each job. LTA total ÷ pleats ÷ 2; CP common practice, no source. */
import { amount, amountOf, mark } from '../marks.ts'
import { type JobOn, type Mark, pointMm, type StepsRow } from '../step.ts'
import { check } from './seam-steps.ts'

const waistMm = ({ garment }: JobOn): number => pointMm(garment, 'waist', 850)
/** As the minutes reckon it: a skirt has sixteen pleats, trousers a pair. */
const pleatsOn = ({ garment }: JobOn): number => (garment.kind === 'skirt' ? 16 : 2)
/** LTA: total ÷ pleats ÷ 2. */
export const pleatSide = (amountMm: number, pleats: number): number => amountMm / pleats / 2
const deeperPleats = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('pleat-side', pleatSide(amountOf(on), pleatsOn(on)), { count: pleatsOn(on) })
]

export const pleats: StepsRow[] = [
  {
    id: 'pleat-reset',
    part: 'waist',
    fit: [{ does: 'count-pleats', act: 'look', figures: deeperPleats }],
    work: [
      { does: 'mark-pleats', act: 'mark', figures: deeperPleats },
      { does: 'baste-pleats', act: 'baste' },
      { does: 'try-basted', act: 'try' },
      { does: 'press-pleats', act: 'press', uses: ['press-cloth'] },
      check('check-pleats')
    ]
  },
  {
    id: 'pleat-release',
    part: 'waist',
    fit: [{ does: 'look-at-pleats', act: 'look', figures: (on) => [...amount(on), mark('pleat-each', amountOf(on) / 2)] }],
    work: [
      { does: 'pleats-out', act: 'unpick', opens: 'pleats' },
      { does: 'press-old-line', act: 'press' },
      { does: 'baste-pleats-flat', act: 'baste', closes: 'pleats' },
      { does: 'try-basted', act: 'try' },
      check('check-let-out')
    ]
  },
  {
    id: 'gathers-reset',
    part: 'waist',
    fit: [{ does: 'measure-gathers', act: 'look', figures: (on) => [...amount(on), mark('band-new', waistMm(on) - amountOf(on))] }],
    work: [
      { does: 'gather-threads', act: 'sew', figures: () => [mark('gather-row', 6), mark('gather-row-two', 12)] },
      { does: 'draw-gathers', act: 'hand', figures: (on) => [mark('band-new', waistMm(on) - amountOf(on))] },
      { does: 'try-basted', act: 'try' },
      check('check-gathers')
    ]
  }
]
