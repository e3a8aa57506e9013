/** Shoulders, straps, necklines, waist seams of dresses: the steps of each job. MADA cap ease; CP common practice, no source. */
import { closedBy } from '../../alterations/as-cut.ts'
import { hasSleeves } from '../../garment/sleeves.ts'
import { INCH_MM } from '../../length.ts'
import { amount, amountAndEdge, amountOf, mark } from '../marks.ts'
import type { JobOn, Mark, StepRow, StepsRow } from '../step.ts'
import { taperOffsets } from '../taper.ts'
import {
  BASTE,
  BASTE_DARTS,
  check,
  EDGES,
  LINING_ALONG,
  markLine,
  OLD_OUT,
  PRESS,
  pin,
  SEW,
  SEW_THROUGH,
  TRIM,
  TRY_BASTED,
  TRY_PINNED
} from './seam-steps.ts'

const eachSide = (on: JobOn): Mark[] => [...amountAndEdge(on), mark('each-shoulder', amountOf(on) / 2)]
/** Where the new armhole runs: all of it at the shoulder's end, back on the old line at the notches half way down (CP). */
const NOTCH_MM = 130
const armholeLine = (on: JobOn): Mark[] =>
  taperOffsets(amountOf(on) / 2, NOTCH_MM).map(({ atMm, offsetMm }) => mark('down', offsetMm, { at: atMm }))
const zipAcross = ({ garment }: JobOn): boolean => closedBy(garment, 'back-zip', 'side-zip', 'front-zip')
const WAIST_ZIP_OUT: StepRow = { does: 'zip-out', act: 'unpick', when: zipAcross, opens: 'zip' }
const WAIST_ZIP_IN: StepRow = { does: 'zip-in', act: 'sew', when: zipAcross, closes: 'zip', uses: ['zipper-foot'] }
const SEAM_MM = 12
const waistSeam = (up: boolean): Pick<StepsRow, 'fit' | 'work'> => ({
  fit: up
    ? [pin('pin-waist-seam', amount), TRY_PINNED]
    : [{ does: 'look-inside-waist-seam', act: 'look', figures: (on) => [...amount(on), mark('inside', amountOf(on) + 10)] }],
  work: [
    WAIST_ZIP_OUT,
    { does: 'waist-seam-open', act: 'unpick', opens: 'waist-seam' },
    { does: up ? 'mark-waist-up' : 'mark-waist-down', act: 'mark', figures: amountAndEdge },
    { does: 'match-waist-seams', act: 'pin' },
    { does: 'baste', act: 'baste' },
    TRY_BASTED,
    { ...SEW_THROUGH, closes: 'waist-seam' },
    ...(up
      ? [{ does: 'trim-bodice', act: 'cut' as const, figures: (on: JobOn) => [mark('cut-off', amountOf(on)), mark('left', SEAM_MM)] }]
      : []),
    EDGES,
    { does: 'press-waist-seam', act: 'press' },
    LINING_ALONG,
    WAIST_ZIP_IN,
    check('check-waist-seam')
  ]
})
const NECK_DARTS = 2
const neckDarts = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('dart-width', amountOf(on) / NECK_DARTS, { count: NECK_DARTS }),
  mark('dart-half', amountOf(on) / NECK_DARTS / 2),
  mark('dart-length', 3 * INCH_MM)
]
/** Raised at each side seam: the line runs out down the seam over this (CP). */
const UNDERARM_RUN_MM = 150
const underarm = (on: JobOn): Mark[] =>
  taperOffsets(amountOf(on) / 2, UNDERARM_RUN_MM).map(({ atMm, offsetMm }) => mark('down', offsetMm, { at: atMm }))

export const shoulders: StepsRow[] = [
  {
    id: 'shoulder-in',
    part: 'structure',
    fit: [pin('pin-shoulders', eachSide), TRY_PINNED],
    work: [
      { does: 'pads-out', act: 'unpick', opens: 'shoulder', when: ({ garment }) => garment.made.lined },
      { does: 'mark-armhole', act: 'mark', figures: (on) => [...eachSide(on), ...armholeLine(on)] },
      { does: 'baste-sleeve-to-line', act: 'baste' },
      TRY_BASTED,
      { does: 'once-more-before-cut', act: 'try' },
      { does: 'cut-armhole', act: 'cut', figures: (on) => [mark('cut-off', amountOf(on) / 2), mark('seam-each', SEAM_MM)] },
      { does: 'pads-back', act: 'hand', closes: 'shoulder', when: ({ garment }) => garment.made.lined },
      check('check-shoulders')
    ]
  },
  {
    id: 'shoulder-pads',
    part: 'structure',
    fit: [{ does: 'feel-pads', act: 'look', figures: amount }],
    work: [
      { does: 'pad-reached', act: 'unpick', opens: 'shoulder' },
      { does: 'pad-thinned', act: 'hand' },
      { does: 'pad-basted', act: 'baste' },
      { does: 'try-pads', act: 'try' },
      { does: 'pad-sewn', act: 'hand', closes: 'shoulder', uses: ['thimble'] },
      check('check-shoulders')
    ]
  },
  {
    id: 'strap-shorten',
    part: 'closures',
    fit: [pin('pin-straps', amount), TRY_PINNED],
    work: [
      { does: 'strap-off', act: 'unpick', opens: 'strap' },
      { does: 'mark-strap', act: 'mark', figures: amount },
      { does: 'strap-on', act: 'sew', closes: 'strap' },
      check('check-straps')
    ]
  },
  {
    id: 'lift-at-shoulder',
    part: 'structure',
    fit: [pin('pin-shoulder-seams', amountAndEdge), TRY_PINNED],
    work: [
      { does: 'neck-edge-open', act: 'unpick', opens: 'neck-edge' },
      { does: 'mark-shoulder-line', act: 'mark', figures: amountAndEdge },
      BASTE,
      TRY_BASTED,
      SEW_THROUGH,
      OLD_OUT,
      { does: 'armhole-deeper', act: 'cut', when: ({ garment }) => hasSleeves(garment), figures: (on) => [mark('cut-off', amountOf(on))] },
      TRIM,
      EDGES,
      PRESS,
      { does: 'neck-edge-closed', act: 'sew', closes: 'neck-edge', figures: (on) => [mark('neck-edge-shorter', 2 * amountOf(on))] },
      check('check-shoulders')
    ]
  },
  {
    id: 'underarm-raise',
    part: 'body',
    fit: [pin('pin-underarm', amountAndEdge), TRY_PINNED],
    work: [
      { does: 'armhole-edge-open', act: 'unpick', opens: 'neck-edge' },
      ...markLine('mark-line-in', underarm, 'armhole'),
      BASTE,
      TRY_BASTED,
      SEW,
      OLD_OUT,
      TRIM,
      EDGES,
      { does: 'armhole-edge-closed', act: 'sew', closes: 'neck-edge' },
      PRESS,
      check('check-armholes')
    ]
  },
  { id: 'dress-waist-raise', part: 'structure', ...waistSeam(true) },
  { id: 'dress-waist-lower', part: 'structure', ...waistSeam(false) },
  {
    id: 'neckline-take-in',
    part: 'structure',
    fit: [pin('pin-neckline', neckDarts), TRY_PINNED],
    work: [
      { does: 'neck-facing-open', act: 'unpick', opens: 'neck-edge' },
      { does: 'mark-neck-darts', act: 'mark', figures: neckDarts },
      BASTE_DARTS,
      TRY_BASTED,
      { does: 'sew-darts', act: 'sew' },
      { does: 'neck-facing-closed', act: 'sew', closes: 'neck-edge', figures: amount },
      { does: 'press-darts', act: 'press', uses: ['ham'] },
      check('check-neckline')
    ]
  }
]
