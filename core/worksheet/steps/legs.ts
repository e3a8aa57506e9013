/** Legs in and out, the rise: the steps of each job. CP common practice, no source; figures by the plan. */
import { closedBy } from '../../alterations/as-cut.ts'
import { amount, amountAndEdge, amountOf, atPoints, edgeOf, line, lineThrough, mark, taper } from '../marks.ts'
import { finishedMm, legLevels } from '../shapes.ts'
import type { JobOn, Mark, StepRow, StepsRow } from '../step.ts'
import { BASTE, check, EDGES, PRESS, pin, SEW, seamIn, seamOut, setIn, TRY_BASTED } from './seam-steps.ts'

/** The line of a leg: thigh, knee and opening, straight between them. */
const legLine = (on: JobOn): Mark[] => {
  const { knee, hem: today } = legLevels(on.garment)
  const hem = finishedMm(on.plan, 'inseam', today)
  return lineThrough(on, (at) => [
    { atMm: 0, offsetMm: at('thigh') },
    { atMm: knee, offsetMm: at('knee') },
    { atMm: hem, offsetMm: at('legOpening') }
  ])
}
const legFigures = (on: JobOn): Mark[] => atPoints(on, ['thigh', 'knee', 'legOpening'])
/** Let out at the thigh it is back on the old line at the knee. */
const thighLine = (on: JobOn): Mark[] => taper(on, legLevels(on.garment).knee)
/** From nothing at the knee to the calf, and half of it at the opening (as the row reckons it). */
const calfLine = (on: JobOn): Mark[] => {
  const { knee, calf, hem: today } = legLevels(on.garment)
  const hem = finishedMm(on.plan, 'inseam', today)
  return line([
    { atMm: knee, offsetMm: 0 },
    { atMm: calf, offsetMm: edgeOf(on) },
    { atMm: hem, offsetMm: edgeOf(on) / 2 }
  ])
}
const EACH_SEAM_MM = 10
/** A gusset runs out after so much of each seam (CP). */
const GUSSET_LEG_MM = 130
const gusset = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('panel-width', amountOf(on) + 2 * EACH_SEAM_MM),
  mark('gusset-leg', GUSSET_LEG_MM),
  mark('seam-each', EACH_SEAM_MM)
]
/** The waist grows by three tenths where the band comes down (as the row reckons it). */
const WAIST_GROWS = 0.3
const lowered = (on: JobOn): Mark[] => [...amountAndEdge(on), mark('band-ease', WAIST_GROWS * amountOf(on))]
const hasFly = ({ garment }: JobOn): boolean => closedBy(garment, 'fly', 'side-zip', 'back-zip')
const ONE_CUT: StepRow = { does: 'once-more-before-cut', act: 'try' }

export const legs: StepsRow[] = [
  {
    id: 'leg-taper',
    part: 'legs',
    ...seamIn({ pin: pin('pin-legs', legFigures), marks: legLine, from: 'fork', check: 'check-crease' })
  },
  { id: 'thigh-out', part: 'legs', ...seamOut({ measure: 'look-inside-legs', marks: thighLine, from: 'fork', check: 'check-let-out' }) },
  { id: 'calf-out', part: 'legs', ...seamOut({ measure: 'look-inside-calves', marks: calfLine, from: 'fork', check: 'check-let-out' }) },
  {
    id: 'thigh-panel',
    part: 'legs',
    ...setIn({ measure: 'measure-gusset', figures: gusset, sew: { does: 'sew-gusset', act: 'sew' }, check: 'check-gusset' })
  },
  {
    id: 'rise-shorten',
    part: 'structure',
    fit: [
      { does: 'pin-band-lower', act: 'pin', figures: lowered },
      { does: 'try-pinned', act: 'try' }
    ],
    work: [
      { does: 'zip-shorter', act: 'unpick', when: hasFly, opens: 'zip', uses: ['pliers'] },
      { does: 'mark-band-line', act: 'mark', figures: lowered },
      { does: 'baste-band', act: 'baste' },
      TRY_BASTED,
      ONE_CUT,
      { does: 'cut-above-band-line', act: 'cut', figures: (on) => [mark('cut-off', amountOf(on)), mark('seam-each', EACH_SEAM_MM)] },
      { does: 'zip-top', act: 'sew', when: hasFly, closes: 'zip', uses: ['zipper-foot'] },
      { does: 'ease-into-band', act: 'sew', figures: (on) => [mark('band-ease', WAIST_GROWS * amountOf(on))] },
      check('check-fly')
    ]
  },
  {
    id: 'rise-deepen',
    part: 'structure',
    fit: [{ does: 'measure-fork', act: 'look', figures: amountAndEdge }],
    work: [
      { does: 'mark-fork', act: 'mark', figures: amountAndEdge },
      BASTE,
      { does: 'try-sitting', act: 'try' },
      SEW,
      { does: 'sew-fork-again', act: 'sew' },
      ONE_CUT,
      { does: 'trim-fork', act: 'cut', figures: () => [mark('left', 8)] },
      EDGES,
      PRESS,
      check('check-seat')
    ]
  }
]
