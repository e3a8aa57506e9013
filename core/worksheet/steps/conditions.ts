/** Mending and care: the steps of each. TM8400 darns and patches; UCIPM, NAYLOR pests; TONGA11 vinegar; HSW-BTN buttons; CP common practice, no source. */
import type { Garment } from '../../garment/garment-as-worn.ts'
import type { ConditionId } from '../../garment/garment-input.ts'
import { INCH_MM } from '../../length.ts'
import type { ClothSetup } from '../cloth-setup.ts'
import { mark } from '../marks.ts'
import { type Mark, type Part, pointMm, type StepRow } from '../step.ts'
import { shankMm } from './closures.ts'
import { arrivalCare } from './frame.ts'

export interface MendOn {
  garment: Garment
  cloth: ClothSetup
}
export interface MendRow {
  part: Part
  steps: readonly StepRow<MendOn>[]
}
const FINISH: StepRow<MendOn> = { does: 'mend-pressed', act: 'press' }
/** TM8400-70: a tear to 1/2 in is darned, to 4 in patched; a patch laps by 1/2 to 1 in and is turned under by 3/8. */
const patch = (): Mark[] => [mark('patch-lap', INCH_MM / 2), mark('patch-lap-most', INCH_MM), mark('patch-turn', (3 / 8) * INCH_MM)]
const shank = ({ garment }: MendOn): Mark[] => [mark('shank', shankMm(garment.kind))]
const elastic = ({ garment }: MendOn): Mark[] => [mark('elastic-cut', pointMm(garment, 'waist', 850) + 30), mark('lap', 30)]
const stands =
  (...fibres: string[]) =>
  ({ garment }: MendOn): boolean =>
    garment.cloth.fibres.some(({ fibre }) => fibres.includes(fibre)) || garment.cloth.structure === 'leather'
const DELICATE = stands('wool', 'cashmere', 'mohair', 'alpaca', 'angora', 'camel', 'silk')
const isDelicate = (on: MendOn): boolean => DELICATE(on) || on.garment.kind === 'jumper'

export const MENDS: Record<ConditionId, MendRow> = {
  'replace-button': {
    part: 'finish',
    steps: [
      { does: 'mend-button-place', act: 'mark' },
      { does: 'button-on', act: 'hand', figures: shank, uses: ['button', 'spacer'] },
      { does: 'shank-wound', act: 'hand', figures: shank, uses: ['spacer'] }
    ]
  },
  'sew-shank': { part: 'finish', steps: [{ does: 'mend-shank', act: 'hand', figures: shank, uses: ['spacer'] }] },
  'close-seam': {
    part: 'mending',
    steps: [
      { does: 'mend-seam-pinned', act: 'pin', figures: () => [mark('over-old', 25)] },
      { does: 'mend-seam-sewn', act: 'sew', figures: () => [mark('over-old', 25)] },
      FINISH
    ]
  },
  darn: {
    part: 'mending',
    steps: [
      {
        does: 'mend-darn-laid',
        act: 'hand',
        figures: () => [mark('darn-most', INCH_MM / 2), mark('darn-around', 6)],
        uses: ['yarn', 'thimble']
      },
      { does: 'mend-darn-woven', act: 'hand', uses: ['yarn'] },
      FINISH
    ]
  },
  patch: {
    part: 'mending',
    steps: [
      { does: 'mend-patch-cut', act: 'fill', figures: patch, uses: ['patch-cloth', 'scissors'], mind: ['knife'] },
      { does: 'mend-patch-pinned', act: 'pin', figures: patch },
      { does: 'mend-patch-sewn', act: 'sew', uses: ['patch-cloth'] },
      FINISH
    ]
  },
  'replace-zip': {
    part: 'mending',
    steps: [
      { does: 'mend-zip-measured', act: 'look', uses: ['zip'] },
      { does: 'mend-zip-out', act: 'unpick', opens: 'zip' },
      { does: 'mend-zip-basted', act: 'baste', uses: ['zip'] },
      { does: 'mend-zip-tried', act: 'look' },
      { does: 'mend-zip-in', act: 'sew', closes: 'zip', uses: ['zip', 'zipper-foot'] },
      FINISH
    ]
  },
  'replace-elastic': {
    part: 'mending',
    steps: [
      { does: 'casing-open', act: 'unpick', figures: () => [mark('span', 80)], opens: 'casing', mind: ['old-elastic'] },
      { does: 'mend-elastic-in', act: 'hand', figures: elastic, uses: ['elastic', 'bodkin'] },
      { does: 'try-safety-pinned', act: 'try' },
      { does: 'mend-elastic-joined', act: 'sew' },
      { does: 'casing-closed', act: 'sew', closes: 'casing' }
    ]
  },
  'lift-crease': { part: 'ready', steps: [{ does: 'mend-crease', act: 'press', uses: ['vinegar', 'press-cloth'], mind: ['vinegar'] }] },
  'lift-fade': { part: 'ready', steps: [{ does: 'mend-fade', act: 'wash', uses: ['dye'], mind: ['solvents'] }] },
  'de-pill': { part: 'ready', steps: [{ does: 'mend-pills', act: 'hand', uses: ['comb'] }] },
  're-line-pocket': {
    part: 'mending',
    steps: [
      { does: 'mend-pocket-pattern', act: 'mark', uses: ['pocket-cloth'] },
      { does: 'mend-pocket-out', act: 'unpick', opens: 'part-seam' },
      { does: 'mend-pocket-sewn', act: 'sew', closes: 'part-seam', uses: ['pocket-cloth'] },
      FINISH
    ]
  },
  clean: {
    part: 'ready',
    steps: [
      { does: 'mend-clean-wash', act: 'wash', when: (on) => !isDelicate(on), uses: ['cleaner'], mind: ['solvents'] },
      { does: 'mend-clean-delicate', act: 'wash', when: isDelicate, uses: ['cleaner'], mind: ['solvents'] }
    ]
  },
  dye: {
    part: 'finish',
    steps: [
      { does: 'mend-dye-tested', act: 'look', uses: ['dye'] },
      { does: 'mend-dye', act: 'wash', uses: ['dye'], mind: ['dye'] }
    ]
  },
  're-proof': { part: 'finish', steps: [{ does: 'mend-proof', act: 'fill', uses: ['proofing'], mind: ['leather-and-wax'] }] },
  'polish-leather': { part: 'finish', steps: [{ does: 'mend-polish', act: 'fill', uses: ['polish'], mind: ['leather-and-wax'] }] },
  're-heel': {
    part: 'mending',
    steps: [{ does: 'mend-heel', act: 'fill', uses: ['heels', 'pliers', 'hammer', 'leather-glue'], mind: ['knife', 'glue'] }]
  },
  'block-knit': {
    part: 'finish',
    steps: [
      { does: 'mend-block-wet', act: 'wash' },
      { does: 'mend-block-pinned', act: 'pin' },
      { does: 'mend-block-dry', act: 'look' }
    ]
  },
  'treat-pests': {
    part: 'arrival',
    steps: [
      { does: 'mend-pests-bagged', act: 'look', uses: ['bags'], mind: ['pests-apart'] },
      { does: 'mend-pests-frozen', act: 'look', when: ({ garment }) => arrivalCare(garment) === 'freeze', uses: ['bags'] },
      { does: 'mend-pests-hot', act: 'wash', when: ({ garment }) => !['freeze', 'hide'].includes(arrivalCare(garment)) },
      { does: 'mend-pests-brushed', act: 'look' }
    ]
  },
  'collar-turn': {
    part: 'mending',
    steps: [
      { does: 'mend-collar-off', act: 'unpick', opens: 'neck-edge' },
      { does: 'mend-collar-turned', act: 'baste' },
      { does: 'mend-collar-on', act: 'sew', closes: 'neck-edge' },
      FINISH
    ]
  }
}
