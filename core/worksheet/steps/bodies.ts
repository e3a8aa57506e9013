/** Bodies of shirts, knits, jackets, coats, waistcoats and dresses: the steps of each job. DARTE, DARTQ darts of shirts; CP common practice, no source. */
import { isCut } from '../../garment/cut.ts'
import { hasSleeves } from '../../garment/sleeves.ts'
import { INCH_MM } from '../../length.ts'
import {
  amount,
  amountAndEdge,
  amountOf,
  atPoints,
  changeAt,
  darts,
  dartsFor,
  edgeOf,
  type Level,
  line,
  lineThrough,
  mark,
  offsetAt
} from '../marks.ts'
import { sideLevels } from '../shapes.ts'
import type { JobOn, Mark, StepRow, StepsRow } from '../step.ts'
import { taperOffsets } from '../taper.ts'
import { hemDown, hemUp } from './hem-steps.ts'
import { BASTE_DARTS, check, EDGES, LINING_ALONG, PRESS, pin, seamIn, seamOut, setIn, TRY_BASTED, TRY_PINNED } from './seam-steps.ts'

const lowPoint = ({ garment }: JobOn): 'hip' | 'hem' => (['dress', 'jumpsuit', 'coat'].includes(garment.kind) ? 'hip' : 'hem')
/** Below the hip of a jumpsuit the line is back on the old one after this (CP); of a dress or coat it runs on to the hem. */
const JUMPSUIT_RUN_MM = 200
/** Chest, waist and hip or hem, straight between them; where it ends above the hem it runs on beside the old line. */
export function sideLine(on: JobOn): Mark[] {
  const down = sideLevels(on.garment)
  const low = lowPoint(on)
  return lineThrough(on, (at): Level[] => {
    const levels = [
      { atMm: 0, offsetMm: at('chest') },
      { atMm: down.waist, offsetMm: at('waist') },
      { atMm: low === 'hip' ? down.hip : down.hem, offsetMm: at(low) }
    ]
    if (on.garment.kind === 'jumpsuit') return [...levels, { atMm: down.hip + JUMPSUIT_RUN_MM, offsetMm: 0 }]
    return low === 'hip' && down.hem > down.hip ? [...levels, { atMm: down.hem, offsetMm: at(low) }] : levels
  })
}
export const sideFigures = (on: JobOn): Mark[] => atPoints(on, ['chest', 'waist', lowPoint(on)])
/** What is taken at the chest runs out along the underarm of the sleeve. */
const SLEEVE_RUN_MM = 150
const intoSleeve = (on: JobOn): Mark[] =>
  taperOffsets(offsetAt(on, 'chest'), SLEEVE_RUN_MM).map(({ atMm, offsetMm }) => mark('sleeve-down', offsetMm, { at: atMm }))
const reachesSleeve = (on: JobOn): boolean => changeAt(on, 'chest') > 0 && hasSleeves(on.garment)
/** Past this at the chest the sleeve is set again (the row's tier). */
const RESET_MM = 50
const RESET: StepRow = { does: 'sleeve-set-again', act: 'sew', when: (on) => reachesSleeve(on) && changeAt(on, 'chest') > RESET_MM }
export const INTO_SLEEVE: StepRow = { does: 'run-into-sleeve', act: 'mark', when: reachesSleeve, figures: intoSleeve }

/** Two long back darts: three inches above the waist and three below (DARTE), longer where they are wide. */
const longDarts = (on: JobOn): Mark[] => {
  const long = dartsFor(amountOf(on), { fourPastMm: Number.POSITIVE_INFINITY, lengthMm: 3 * INCH_MM })
  const [width, half, length, leg] = darts(long)
  return [
    ...amountAndEdge(on),
    ...[width, half, leg].filter((one) => one !== undefined),
    mark('dart-above', length?.mm ?? 0),
    mark('dart-below', length?.mm ?? 0)
  ]
}
/** From nothing below the collar to the waist and half as much at the hem (as the row reckons it), or at the hip of a coat seven tenths. */
const centreBackLine = (on: JobOn): Mark[] => {
  const { waist, hip, hem } = sideLevels(on.garment)
  const top = 60
  const share = on.garment.kind === 'coat' ? 0.7 : 0.5
  return line([
    { atMm: 0, offsetMm: 0 },
    { atMm: top + waist, offsetMm: edgeOf(on) },
    { atMm: top + hip, offsetMm: share * edgeOf(on) },
    ...(hem > hip ? [{ atMm: top + hem, offsetMm: 0.5 * edgeOf(on) }] : [])
  ])
}
/** A waistcoat ends soon below the waist; the chest takes four tenths (as the row reckons it). */
const waistcoatLine = (on: JobOn): Mark[] => {
  const { waist, hem } = sideLevels(on.garment)
  return line([
    { atMm: 0, offsetMm: 0.4 * edgeOf(on) },
    { atMm: waist, offsetMm: edgeOf(on) },
    { atMm: Math.max(hem, waist + 40), offsetMm: edgeOf(on) }
  ])
}
const EACH_SEAM_MM = 10
const strips = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('strip-each', amountOf(on) / 2),
  mark('panel-width', amountOf(on) / 2 + 2 * EACH_SEAM_MM),
  mark('panel-length', sideLevels(on.garment).hem + 2 * EACH_SEAM_MM)
]
/** Shirts have a curved hem, unless they are told to end straight (as their template has it). */
const isCurved = ({ garment }: JobOn): boolean => garment.kind === 'shirt' && !isCut(garment.cut, 'hem', 'straight', 'drawn-in')
const isButtoned = ({ garment }: JobOn): boolean => !['knit-top', 'jumper'].includes(garment.kind)
const LINED_HEM: StepRow = { does: 'lining-hem-in', act: 'hand', when: ({ garment }) => garment.made.lined, figures: amount }
const VENT_FIRST: StepRow = { does: 'vent-open-back', act: 'unpick', opens: 'vent', when: ({ garment }) => garment.kind !== 'dress' }
const VENT_LAST: StepRow = { does: 'vent-back', act: 'sew', closes: 'vent', when: ({ garment }) => garment.kind !== 'dress' }

export const bodies: StepsRow[] = [
  {
    id: 'sides-in',
    part: 'body',
    ...seamIn({
      pin: pin('pin-sides', sideFigures),
      marks: sideLine,
      from: 'underarm',
      zip: 'side',
      markedToo: [INTO_SLEEVE],
      last: [RESET],
      check: 'check-sides'
    })
  },
  {
    id: 'sides-out',
    part: 'body',
    ...seamOut({
      measure: 'look-inside-sides',
      marks: sideLine,
      from: 'underarm',
      zip: 'side',
      markedToo: [INTO_SLEEVE],
      check: 'check-let-out'
    })
  },
  {
    id: 'back-darts',
    part: 'body',
    fit: [pin('pin-long-darts', longDarts), TRY_PINNED],
    work: [
      { does: 'mark-long-darts', act: 'mark', figures: longDarts },
      BASTE_DARTS,
      TRY_BASTED,
      { does: 'sew-long-darts', act: 'sew' },
      { does: 'press-darts', act: 'press', uses: ['ham'] },
      LINING_ALONG,
      check('check-darts')
    ]
  },
  {
    id: 'centre-back-in',
    part: 'body',
    ...seamIn({
      pin: pin('pin-centre-back-body', amountAndEdge),
      marks: centreBackLine,
      from: 'above-underarm',
      zip: 'back',
      first: [VENT_FIRST],
      last: [VENT_LAST],
      check: 'check-centre-back-body'
    })
  },
  {
    id: 'waistcoat-back-in',
    part: 'body',
    ...seamIn({
      pin: pin('pin-waistcoat-back', amountAndEdge),
      marks: waistcoatLine,
      from: 'underarm',
      first: [{ does: 'waistcoat-open', act: 'unpick', opens: 'back-seam' }],
      last: [{ does: 'waistcoat-closed', act: 'hand', closes: 'back-seam' }],
      check: 'check-waistcoat'
    })
  },
  {
    id: 'side-panels',
    part: 'body',
    ...setIn({ measure: 'measure-strips', figures: strips, sew: { does: 'sew-strips', act: 'sew' }, check: 'check-panel' })
  },
  {
    id: 'body-shorten',
    part: 'hems',
    ...hemUp(undefined, {
      edge: 'body',
      marked: [{ does: 'tails-curved', act: 'mark', when: isCurved }],
      last: [LINED_HEM, { does: 'check-pockets-and-buttons', act: 'look', when: isButtoned }],
      check: 'check-hem-level'
    })
  },
  { id: 'body-lengthen', part: 'hems', ...hemDown(undefined, { edge: 'body', last: [LINED_HEM], check: 'check-hem-level' }) },
  {
    id: 'bust-darts',
    part: 'body',
    fit: [pin('pin-bust-darts', amount), TRY_PINNED],
    work: [
      { does: 'mark-bust-darts', act: 'mark', figures: (on) => [...amount(on), mark('dart-half', amountOf(on) / 2)] },
      BASTE_DARTS,
      TRY_BASTED,
      { does: 'sew-darts', act: 'sew' },
      { does: 'press-darts', act: 'press', uses: ['ham'] },
      EDGES,
      PRESS,
      check('check-darts')
    ]
  }
]
