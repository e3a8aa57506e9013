/** What is knitted: the steps of each job. TONGAM, MAILTRIB, KINKED ribs off and on; CP common practice, no source. */
import { isKnitted } from '../../alterations/as-cut.ts'
import { amount, amountOf, mark } from '../marks.ts'
import { type JobOn, type Mark, pointMm, type StepRow, type StepsRow } from '../step.ts'
import { INTO_SLEEVE, sideFigures, sideLine } from './bodies.ts'
import { check, pin, seamIn } from './seam-steps.ts'

/** TONGAM: the rib and the edge are each quartered, and the rib is stretched from pin to pin. */
const quarters =
  (girth: 'cuff' | 'hem') =>
  (on: JobOn): Mark[] => [mark('quarter', pointMm(on.garment, girth, girth === 'cuff' ? 200 : 900) / 4)]
const SEAM_MM = 10
const cutLine = (on: JobOn): Mark[] => [...amount(on), mark('seam-each', SEAM_MM), mark('cut-off', Math.max(0, amountOf(on) - SEAM_MM))]
const isRun = ({ garment }: JobOn): boolean => isKnitted(garment)
const HOLD_STITCHES: StepRow = { does: 'hold-stitches', act: 'sew', when: isRun, uses: ['knitting-needle', 'yarn'] }

const rejoin = (girth: 'cuff' | 'hem'): Pick<StepsRow, 'fit' | 'work'> => ({
  fit: [
    { does: girth === 'cuff' ? 'pin-above-rib' : 'pin-above-body-rib', act: 'pin', figures: amount },
    { does: 'try-pinned', act: 'try' }
  ],
  work: [
    { does: 'mark-above-rib', act: 'mark', figures: cutLine },
    HOLD_STITCHES,
    { does: 'rib-off', act: 'unpick', opens: 'rib' },
    { does: 'baste-rib', act: 'baste', figures: quarters(girth) },
    { does: 'try-basted', act: 'try' },
    { does: 'cut-above-rib', act: 'cut', figures: cutLine },
    { does: 'rib-on', act: 'sew', figures: quarters(girth), closes: 'rib', uses: ['overlocker'] },
    { does: 'steam-rib', act: 'press' },
    check('check-rib')
  ]
})

export const knits: StepsRow[] = [
  {
    id: 'knit-take-in',
    part: 'body',
    ...seamIn({
      pin: pin('pin-knit-sides', sideFigures),
      marks: sideLine,
      from: 'underarm',
      markedToo: [INTO_SLEEVE],
      beforeSewn: [{ does: 'stitches-held-at-line', act: 'sew', when: isRun }],
      check: 'check-sides'
    })
  },
  { id: 'rib-rejoin', part: 'sleeves', ...rejoin('cuff') },
  { id: 'rib-rejoin-body', part: 'hems', ...rejoin('hem') }
]
