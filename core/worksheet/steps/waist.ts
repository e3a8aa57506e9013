/** Waist and seat: the steps of each job. CP common practice, no source; figures by the plan. */
import { POCKETS_APART_MM, TWO_DARTS_MM } from '../../alterations/waist.ts'
import { amount, amountAndEdge, amountOf, darts, dartsFor, edgeOf, line, mark, taper } from '../marks.ts'
import { backTaperMm, sideTaperMm } from '../shapes.ts'
import type { JobOn, Mark, StepRow, StepsRow } from '../step.ts'
import { taperShare } from '../taper.ts'
import { BASTE_DARTS, check, EDGES, PRESS, pin, SEW, seamIn, seamOut, setIn, TRY_BASTED, TRY_PINNED } from './seam-steps.ts'

/** The back pockets after a taking-in at the centre back: they come together by the share of it at their depth. */
export const pocketGapAfter = (gapMm: number, amountMm: number, depthMm: number, taperMm: number, blend?: number): number =>
  gapMm - amountMm * taperShare(depthMm / taperMm, blend)
const pocketsAfter = ({ job, garment }: JobOn): number =>
  pocketGapAfter(garment.made.backPocketGapMm, job.amountMm, garment.made.pocketDepthMm, backTaperMm(garment))
const isOnLegs = ({ garment }: JobOn): boolean => garment.kind !== 'skirt'

const POCKETS: StepRow = {
  does: 'pockets-apart',
  act: 'look',
  when: isOnLegs,
  figures: (on) => [
    mark('pocket-gap', on.garment.made.backPocketGapMm),
    mark('pocket-gap-after', pocketsAfter(on)),
    mark('pocket-gap-least', POCKETS_APART_MM)
  ]
}

/** Two darts share it, four past the soft limit of darts under the band or past the tier of darts through the yoke. */
const BACK_DARTS = { fourPastMm: TWO_DARTS_MM['waist-in-darts'], lengthMm: 115 }
const YOKE_DARTS = { fourPastMm: TWO_DARTS_MM['yoke-darts'], lengthMm: 90 }
const hasFour =
  (how: Parameters<typeof dartsFor>[1]) =>
  (on: JobOn): boolean =>
    dartsFor(amountOf(on), how).count === 4
const backDarts = (on: JobOn): Mark[] => [...amount(on), ...darts(dartsFor(amountOf(on), BACK_DARTS))]
const yokeDarts = (on: JobOn): Mark[] => [...amount(on), ...darts(dartsFor(amountOf(on), YOKE_DARTS))]

/** Up to the band, and down into the fork, the seat line runs out. */
const FORK_RUN_MM = 100
const seatLine = (on: JobOn): Mark[] => {
  const hip = on.garment.made.hipDepthMm
  return line([
    { atMm: 0, offsetMm: 0 },
    { atMm: hip, offsetMm: edgeOf(on) },
    { atMm: hip + FORK_RUN_MM, offsetMm: 0 }
  ])
}
/** The thigh comes along by three tenths (as the limits reckon it), at the back of the inside leg. */
const INSIDE_LEG_SHARE = 0.3
const INSIDE_LEG_RUN_MM = 150
const insideLegTop = (on: JobOn): Mark[] => [mark('inseam-top', INSIDE_LEG_SHARE * amountOf(on)), mark('runs-out', INSIDE_LEG_RUN_MM)]

const EACH_SEAM_MM = 10
const wedge = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('panel-width', amountOf(on) + 2 * EACH_SEAM_MM),
  mark('panel-length', backTaperMm(on.garment) + EACH_SEAM_MM),
  mark('seam-each', EACH_SEAM_MM)
]

export const waist: StepsRow[] = [
  {
    id: 'waist-in-centre-back',
    part: 'waist',
    ...seamIn({
      pin: pin('pin-centre-back', (on) => [...amountAndEdge(on), mark('runs-out', backTaperMm(on.garment))]),
      marks: (on) => taper(on, backTaperMm(on.garment)),
      from: 'band',
      zip: 'back',
      look: [POCKETS],
      check: 'check-centre-back'
    })
  },
  {
    id: 'waist-in-side-seams',
    part: 'waist',
    ...seamIn({
      pin: pin('pin-sides-at-waist', (on) => [...amountAndEdge(on), mark('runs-out', sideTaperMm(on.garment))]),
      marks: (on) => taper(on, sideTaperMm(on.garment)),
      from: 'band',
      first: [{ does: 'pocket-tops', act: 'unpick', opens: 'part-seam' }],
      last: [{ does: 'pocket-tops-back', act: 'sew', closes: 'part-seam' }],
      check: 'check-side-seams-hang'
    })
  },
  {
    id: 'waist-in-darts',
    part: 'waist',
    fit: [
      { ...pin('pin-back-darts', backDarts), when: (on) => !hasFour(BACK_DARTS)(on) },
      { ...pin('pin-back-darts-four', backDarts), when: hasFour(BACK_DARTS) },
      TRY_PINNED
    ],
    work: [
      { does: 'mark-darts', act: 'mark', figures: backDarts },
      BASTE_DARTS,
      TRY_BASTED,
      { does: 'sew-darts', act: 'sew' },
      { does: 'press-darts', act: 'press', uses: ['ham'] },
      { does: 'lining-darts', act: 'sew', when: ({ garment }) => garment.made.lined },
      check('check-darts')
    ]
  },
  {
    id: 'yoke-darts',
    part: 'waist',
    fit: [
      { ...pin('pin-yoke-darts', yokeDarts), when: (on) => !hasFour(YOKE_DARTS)(on) },
      { ...pin('pin-yoke-darts-four', yokeDarts), when: hasFour(YOKE_DARTS) },
      TRY_PINNED
    ],
    work: [
      { does: 'yoke-loops-off', act: 'unpick', opens: 'part-seam' },
      { does: 'mark-yoke-darts', act: 'mark', figures: yokeDarts },
      BASTE_DARTS,
      TRY_BASTED,
      { does: 'sew-yoke-darts', act: 'sew', uses: ['walking-foot', 'hammer'] },
      { does: 'yoke-loops-on', act: 'sew', closes: 'part-seam' },
      check('check-yoke-darts')
    ]
  },
  {
    id: 'waist-out-centre-back',
    part: 'waist',
    ...seamOut({
      measure: 'look-inside-centre-back',
      marks: (on) => taper(on, backTaperMm(on.garment)),
      from: 'band',
      zip: 'back',
      check: 'check-let-out'
    })
  },
  {
    id: 'waist-out-side-seams',
    part: 'waist',
    ...seamOut({
      measure: 'look-inside-sides',
      marks: (on) => taper(on, backTaperMm(on.garment)),
      from: 'band',
      first: [{ does: 'pocket-tops', act: 'unpick', opens: 'part-seam' }],
      last: [{ does: 'pocket-tops-back', act: 'sew', closes: 'part-seam' }],
      check: 'check-let-out'
    })
  },
  {
    id: 'waist-out-panel',
    part: 'waist',
    ...setIn({
      measure: 'measure-wedge',
      figures: wedge,
      first: [{ does: 'open-for-wedge', act: 'unpick', opens: 'back-seam' }],
      sew: { does: 'sew-wedge', act: 'sew', closes: 'back-seam' },
      check: 'check-panel'
    })
  },
  {
    id: 'seat-in',
    part: 'legs',
    ...seamIn({
      pin: pin('pin-seat', (on) => [...amountAndEdge(on), mark('hip-depth', on.garment.made.hipDepthMm)]),
      marks: (on) => [...seatLine(on), ...insideLegTop(on)],
      from: 'band',
      mark: 'mark-seat-in',
      check: 'check-seat'
    })
  },
  {
    id: 'seat-out',
    part: 'legs',
    ...seamOut({ measure: 'look-inside-seat', marks: (on) => [...seatLine(on), ...insideLegTop(on)], from: 'band', check: 'check-seat' })
  },
  {
    id: 'undo-earlier',
    part: 'waist',
    fit: [{ does: 'look-for-old-line', act: 'look', figures: amountAndEdge }],
    work: [
      { does: 'later-stitches-out', act: 'unpick', opens: 'back-seam' },
      { does: 'press-old-line', act: 'press' },
      { does: 'mark-old-line', act: 'mark', figures: amountAndEdge },
      { does: 'baste-outside', act: 'baste' },
      TRY_BASTED,
      { ...SEW, closes: 'back-seam' },
      EDGES,
      PRESS,
      check('check-let-out')
    ]
  },
  {
    id: 'release-darts',
    part: 'waist',
    fit: [
      {
        does: 'look-at-darts',
        act: 'look',
        figures: (on) => [...amount(on), mark('dart-width', amountOf(on) / releasedDarts(on), { count: releasedDarts(on) })]
      }
    ],
    work: [
      { does: 'darts-out', act: 'unpick', opens: 'dart' },
      { does: 'press-old-line', act: 'press' },
      {
        does: 'mark-darts-narrower',
        act: 'mark',
        figures: (on) => [mark('dart-narrower', amountOf(on) / releasedDarts(on)), mark('dart-half', amountOf(on) / releasedDarts(on) / 2)]
      },
      BASTE_DARTS,
      TRY_BASTED,
      { does: 'sew-darts', act: 'sew', closes: 'dart' },
      { does: 'press-darts', act: 'press', uses: ['ham'] },
      check('check-let-out')
    ]
  }
]

/** A dart gives 10 (the limit of its row): two of them to 20, else four. */
function releasedDarts(on: JobOn): number {
  return amountOf(on) > TWO_DARTS_MM['release-darts'] ? 4 : 2
}
