/** Sleeves and cuffs: the steps of each job. FYG buttons; MADA cap ease; GENIE cuffs; CP common practice, no source. */
import type { Garment } from '../../garment/garment-as-worn.ts'
import { INCH_MM } from '../../length.ts'
import { amount, amountAndEdge, amountOf, atPoints, changeAt, edgeOf, lineThrough, mark } from '../marks.ts'
import { finishedMm, sleeveLevels } from '../shapes.ts'
import type { JobOn, Mark, StepRow, StepsRow } from '../step.ts'
import { hemDown, hemUp } from './hem-steps.ts'
import { check, pin, seamIn, TRY_PINNED } from './seam-steps.ts'

/** MADA: a cap is so much longer than its armhole: 25–38 in woven cloth, 13–19 in knits. Shirts, felled there, have next to none (CP: 0–13). */
export function capEaseMm({ kind, cloth }: Garment): [number, number] {
  if (cloth.structure === 'knit') return [INCH_MM / 2, (3 / 4) * INCH_MM]
  return kind === 'shirt' ? [0, INCH_MM / 2] : [INCH_MM, (3 / 2) * INCH_MM]
}
export const capEase = ({ garment }: { garment: Garment }): Mark[] => {
  const [least, most] = capEaseMm(garment)
  return [mark('cap-ease-least', least), mark('cap-ease-most', most)]
}
/** All of the cap line moves down by the amount: at its top, at the notches and under the arm alike. */
const capLine = (on: JobOn): Mark[] => [
  ...amount(on),
  ...(['top', 'front-notch', 'back-notch', 'underarm'] as const).map((where) => mark('cap-down', amountOf(on), { where }))
]
const sleeveLine = (on: JobOn): Mark[] => {
  const cuff = finishedMm(on.plan, 'sleeveUnderarm', sleeveLevels(on.garment).cuff)
  return lineThrough(on, (at) => [
    { atMm: 0, offsetMm: at('bicep') },
    { atMm: cuff, offsetMm: at('cuff') }
  ])
}
const sleeveFigures = (on: JobOn): Mark[] => atPoints(on, ['bicep', 'cuff'])

/** FYG: sham buttons stand 1 1/4–1 1/2 in from the edge; 13 goes without moving them. */
const BUTTONS_STAY_MM = 13
const buttonsMove = (on: JobOn): boolean => amountOf(on) > BUTTONS_STAY_MM && !on.cloth.hide
const SHAM_OFF: StepRow = { does: 'sham-buttons-off', act: 'unpick', when: buttonsMove, opens: 'closure' }
const SHAM_ON: StepRow = {
  does: 'sham-buttons-on',
  act: 'hand',
  when: buttonsMove,
  closes: 'closure',
  figures: () => [mark('button-from-edge', (5 / 4) * INCH_MM), mark('button-from-edge-most', (3 / 2) * INCH_MM)],
  uses: ['button']
}
/** A lining lies so much shorter than its sleeve, with a pleat for reach (CP). */
const LINING_FOLD_MM = 20
const sleeveLining = (does: 'sleeve-lining-up' | 'sleeve-lining-down'): StepRow => ({
  does,
  act: 'hand',
  when: ({ garment }) => garment.made.lined,
  figures: (on) => [...amount(on), mark('lining-fold', LINING_FOLD_MM)]
})
/** The cuff is sewn on again; the sleeve's end is gathered or pleated to it. Its placket keeps 90 (the limit of the row). */
const SEAM_MM = 10
const cuffLine = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('cut-off', amountOf(on)),
  mark('seam-each', SEAM_MM),
  mark('placket-least', 90)
]

export const sleeves: StepsRow[] = [
  {
    id: 'sleeve-shorten-cuff',
    part: 'sleeves',
    fit: [pin('pin-sleeve-tuck', amount), { does: 'try-arms', act: 'try' }],
    work: [
      { does: 'mark-above-cuff', act: 'mark', figures: cuffLine },
      { does: 'placket-shorter', act: 'unpick' },
      { does: 'baste-cuff', act: 'baste' },
      { does: 'try-arms', act: 'try' },
      { does: 'cut-above-cuff', act: 'cut', figures: cuffLine },
      { does: 'sleeve-to-cuff', act: 'pin' },
      check('check-sleeves')
    ]
  },
  { id: 'sleeve-shorten-hem', part: 'hems', ...hemUp('sleeve', { edge: 'sleeve', closes: 'cuff', check: 'check-sleeves' }) },
  {
    id: 'sleeve-shorten-lined',
    part: 'hems',
    ...hemUp('sleeve-lined', {
      edge: 'sleeve',
      first: [SHAM_OFF],
      last: [SHAM_ON, sleeveLining('sleeve-lining-up')],
      closes: 'cuff',
      check: 'check-sleeves'
    })
  },
  {
    id: 'sleeve-shorten-head',
    part: 'sleeves',
    fit: [pin('pin-sleeve-head', amount), { does: 'try-arms', act: 'try' }],
    work: [
      { does: 'mark-cap', act: 'mark', figures: capLine },
      { does: 'measure-cap', act: 'look', figures: capEase },
      { does: 'baste-sleeve-to-line', act: 'baste', figures: capEase },
      { does: 'try-arms', act: 'try' },
      { does: 'once-more-before-cut', act: 'try' },
      { does: 'cut-cap', act: 'cut', figures: (on) => [mark('cut-off', amountOf(on)), mark('seam-each', SEAM_MM)] },
      { does: 'ease-cap', act: 'sew', figures: capEase },
      check('check-sleeves')
    ]
  },
  {
    id: 'sleeve-lengthen',
    part: 'hems',
    ...hemDown(undefined, { edge: 'sleeve', last: [sleeveLining('sleeve-lining-down')], closes: 'cuff', check: 'check-sleeves' })
  },
  {
    id: 'sleeve-lengthen-facing',
    part: 'hems',
    ...hemDown('faced', { edge: 'sleeve', last: [sleeveLining('sleeve-lining-down')], closes: 'cuff', check: 'check-sleeves' })
  },
  {
    id: 'sleeve-taper',
    part: 'sleeves',
    ...seamIn({ pin: pin('pin-sleeve-taper', sleeveFigures), marks: sleeveLine, from: 'underarm', check: 'check-elbow' })
  },
  {
    id: 'cuff-in',
    part: 'sleeves',
    fit: [pin('pin-cuffs', (on) => [...amountAndEdge(on), mark('around', changeAt(on, 'cuff'), { point: 'cuff' })]), TRY_PINNED],
    work: [
      { does: 'mark-cuff-ends', act: 'mark', figures: amountAndEdge },
      { does: 'sleeve-end-eased', act: 'baste', figures: (on) => [mark('sleeve-end-ease', amountOf(on))] },
      { does: 'try-cuffs', act: 'try' },
      {
        does: 'cut-cuff-ends',
        act: 'cut',
        when: (on) => edgeOf(on) > SEAM_MM,
        figures: (on) => [mark('cut-off', edgeOf(on) - SEAM_MM), mark('seam-each', SEAM_MM)]
      },
      { does: 'cuff-ends-sewn', act: 'sew' },
      check('check-cuffs')
    ]
  }
]
