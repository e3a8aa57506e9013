/** Skirts, and the skirts of dresses: the steps of each job. USDAHEM hang a day; MLT; CP common practice, no source. */
import { closedBy, isLayered, isPleated } from '../../alterations/as-cut.ts'
import { isCut } from '../../garment/cut.ts'
import { amount, amountAndEdge, amountOf, atPoints, lineThrough, mark } from '../marks.ts'
import { type JobOn, type Mark, pointMm, type StepRow, type StepsRow } from '../step.ts'
import { hemDown, hemUp, PIN_LENGTH, TRY_LENGTH } from './hem-steps.ts'
import { check, pin, seamIn, seamOut, TRY_BASTED } from './seam-steps.ts'

/** A lining hangs shorter than its skirt by this (CP). */
const LINING_SHORTER_MM = 25
const LINING_HEM: StepRow = {
  does: 'lining-hem',
  act: 'sew',
  when: ({ garment }) => garment.made.lined,
  figures: (on) => [...amount(on), mark('lining-shorter', LINING_SHORTER_MM)]
}
/** Past this the vent is cut again, higher (the row's tier). */
const PAST_VENT_MM = 50
const ventRecut = (on: JobOn): boolean => isCut(on.garment.cut, 'vent', 'vent', 'kick-pleat') && amountOf(on) > PAST_VENT_MM
const VENT_OPEN: StepRow = { does: 'vent-open', act: 'unpick', when: ventRecut, figures: amount, opens: 'vent' }
const VENT_AGAIN: StepRow = { does: 'vent-again', act: 'sew', when: ventRecut, figures: amount, closes: 'vent', uses: ['interfacing'] }

const hasZip = ({ garment }: JobOn): boolean => closedBy(garment, 'side-zip', 'back-zip')

const skirtLine = (on: JobOn): Mark[] => {
  const hip = on.garment.made.hipDepthMm
  const hem = Math.max(hip + 50, pointMm(on.garment, 'skirtLength', 600))
  return lineThrough(on, (at) => [
    { atMm: 0, offsetMm: at('waist') },
    { atMm: hip, offsetMm: at('hip') },
    { atMm: hem, offsetMm: at('sweep') }
  ])
}
const skirtFigures = (on: JobOn): Mark[] => atPoints(on, ['waist', 'hip', 'sweep'])

/** A godet runs out upwards over this (CP); its seams take 10 each. */
const GODET_MM = 200
const EACH_SEAM_MM = 10
const godet = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('godet-each', amountOf(on) / 2),
  mark('panel-width', amountOf(on) / 2 + 2 * EACH_SEAM_MM),
  mark('panel-length', GODET_MM + EACH_SEAM_MM)
]
const EACH_LEG = (on: JobOn): boolean => on.garment.kind === 'trousers' || on.garment.kind === 'jeans'
/** One in each leg, each of the whole amount; one in each side of a skirt or a top. */
const godets = (on: JobOn): Mark[] =>
  EACH_LEG(on)
    ? [
        ...amount(on),
        mark('godet-each', amountOf(on)),
        mark('panel-width', amountOf(on) + 2 * EACH_SEAM_MM),
        mark('panel-length', GODET_MM + EACH_SEAM_MM)
      ]
    : godet(on)

export const skirts: StepsRow[] = [
  {
    id: 'skirt-shorten',
    part: 'hems',
    ...hemUp(undefined, { first: [VENT_OPEN], last: [VENT_AGAIN, LINING_HEM], check: 'check-hem-level' })
  },
  {
    id: 'hem-layered',
    part: 'hems',
    fit: [{ does: 'count-layers', act: 'look', figures: amount }, ...PIN_LENGTH, TRY_LENGTH],
    work: [
      { does: 'layers-apart', act: 'pin' },
      { does: 'mark-each-layer', act: 'mark', figures: amount },
      { does: 'try-turned', act: 'try' },
      { does: 'cut-each-layer', act: 'cut', figures: amount },
      { does: 'sew-each-layer', act: 'sew' },
      { does: 'press-hem', act: 'press' },
      check('check-hem-level')
    ]
  },
  {
    id: 'skirt-lengthen',
    part: 'hems',
    ...hemDown(undefined, { last: [{ ...LINING_HEM, does: 'lining-down', figures: amount }], check: 'check-hem-level' })
  },
  {
    id: 'skirt-shorten-from-waist',
    part: 'structure',
    fit: [
      { does: 'pin-skirt-up', act: 'pin', figures: amountAndEdge },
      { does: 'try-pinned', act: 'try' }
    ],
    work: [
      { does: 'zip-out', act: 'unpick', when: hasZip, opens: 'zip' },
      { does: 'mark-below-band', act: 'mark', figures: amountAndEdge },
      { does: 'baste-band', act: 'baste' },
      TRY_BASTED,
      { does: 'cut-above-band-line', act: 'cut', figures: (on) => [mark('cut-off', amountOf(on)), mark('seam-each', EACH_SEAM_MM)] },
      { does: 'zip-in', act: 'sew', when: hasZip, closes: 'zip', uses: ['zipper-foot'] },
      {
        does: 'sides-to-band',
        act: 'sew',
        when: ({ garment }) => !isPleated(garment),
        figures: (on) => [mark('waist-change', waistChange(on))]
      },
      { does: 'pleats-to-band', act: 'pin', when: ({ garment }) => isPleated(garment) },
      check('check-hem-level')
    ]
  },
  {
    id: 'skirt-sides-in',
    part: 'body',
    ...seamIn({ pin: pin('pin-skirt-sides', skirtFigures), marks: skirtLine, from: 'band', zip: 'side', check: 'check-skirt-sides' })
  },
  {
    id: 'skirt-sides-out',
    part: 'body',
    ...seamOut({ measure: 'look-inside-sides', marks: skirtLine, from: 'band', zip: 'side', check: 'check-let-out' })
  },
  {
    id: 'hem-widen',
    part: 'hems',
    fit: [{ does: 'measure-godet', act: 'look', figures: godets, uses: ['panel-cloth'] }],
    work: [
      { does: 'open-seam-up', act: 'unpick', figures: () => [mark('span', GODET_MM)], opens: 'part-seam' },
      { does: 'paper-first', act: 'mark', figures: godets, uses: ['panel-cloth'] },
      { does: 'try-paper', act: 'try' },
      { does: 'cut-panel', act: 'cut', when: (on) => !isLayered(on.garment), uses: ['panel-cloth'] },
      { does: 'sew-godet', act: 'sew', closes: 'part-seam' },
      { does: 'sew-hem-left', act: 'sew', figures: ({ garment }) => [mark('hem-left', garment.made.hemDepthMm)], closes: 'hem' },
      { does: 'press-hem', act: 'press' },
      check('check-panel')
    ]
  }
]

/** How much wider the top is where it is cut lower, mm around: what the sides must take to meet the band. */
function waistChange({ lines, job }: JobOn): number {
  return Math.abs((lines[0]?.effects.waist ?? 0) * job.amountMm)
}
