/**
 * What every sheet begins and ends with: second-hand cloth as it arrives, made ready, and the last fitting.
 * NAYLOR 60 °C, tumble over 40 °C for 30 min · UCIPM freezer for several days, bagged · CP common practice, no source.
 */
import { isKnitted } from '../../alterations/as-cut.ts'
import { wornChange } from '../../garment/cloth.ts'
import { type Garment, isTold } from '../../garment/garment-as-worn.ts'
import type { Plan } from '../../plan/plan.ts'
import type { ClothSetup } from '../cloth-setup.ts'
import { mark } from '../marks.ts'
import type { Mark, Part, StepRow } from '../step.ts'

export interface SheetOn {
  garment: Garment
  cloth: ClothSetup
  plan: Plan
  /** Does the person sew: are there jobs, or mending? */
  sews: boolean
  /** Is a seam, a hem or a dart sewn, or only a button or a hook? */
  presses: boolean
  /** Is anything sewn by machine? */
  machines: boolean
  /** Signs of pests were found: the steps that treat them stand in for those of every garment. */
  infested: boolean
}

/** What second-hand cloth stands on arrival, by its most delicate fibre. */
export type ArrivalCare = 'hot-wash' | 'tumble' | 'freeze' | 'hide' | 'by-label'
const FREEZE = new Set(['wool', 'cashmere', 'mohair', 'alpaca', 'angora', 'camel', 'silk', 'down', 'fur'])
const HOT = new Set(['cotton', 'linen', 'hemp', 'ramie'])
const SYNTHETIC = new Set(['polyester', 'polyamide', 'acrylic', 'elastane'])
/** Wool, hair and silk felt or shrink in heat: never 60 °C for them (UCIPM: the freezer). Not told: by its label. */
export function arrivalCare({ cloth, kind }: Garment): ArrivalCare {
  if (cloth.structure === 'leather' || ['suede', 'vinyl', 'coated'].some((trait) => ([...cloth.traits] as string[]).includes(trait)))
    return 'hide'
  const fibres = cloth.fibres.map(({ fibre }) => fibre)
  if (
    fibres.some((fibre) => FREEZE.has(fibre)) ||
    ['silk', 'beaded', 'pleated'].some((trait) => ([...cloth.traits] as string[]).includes(trait))
  )
    return 'freeze'
  if (fibres.length === 0) return kind === 'jumper' ? 'freeze' : 'by-label'
  if (fibres.every((fibre) => HOT.has(fibre))) return 'hot-wash'
  return fibres.every((fibre) => HOT.has(fibre) || SYNTHETIC.has(fibre)) ? 'tumble' : 'by-label'
}
const cares =
  (care: ArrivalCare) =>
  ({ garment, infested }: SheetOn): boolean =>
    arrivalCare(garment) === care && (!infested || care === 'hide')
const isTailored = ({ garment }: SheetOn): boolean => ['jacket', 'coat', 'waistcoat'].includes(garment.kind)
const isHotWashed = (on: SheetOn): boolean => cares('hot-wash')(on) && !isTailored(on)
const isByLabel = (on: SheetOn): boolean => cares('by-label')(on) || (cares('hot-wash')(on) && isTailored(on))
/** What is knitted is never pressed flat, nor hung up wet: it grows (CP). */
const isSteamed = ({ garment }: SheetOn): boolean => isKnitted(garment)
const isPressed = (on: SheetOn): boolean => on.presses && !on.cloth.clips
/** Rigid cotton that gives in wear: at first it fits slightly tight. */
const growsAtWaist = ({ garment }: SheetOn): number => wornChange(garment.kind, garment.cloth, 'waist').growMm
const sews = ({ sews: does }: SheetOn): boolean => does
/** Points that the plan changes, as they should measure before and behind it. */
const changed = ({ plan }: SheetOn): ReadonlySet<string> => new Set(plan.alterations.flatMap(({ amounts }) => Object.keys(amounts)))
const after = (on: SheetOn): Mark[] =>
  on.plan.after.filter(({ point }) => changed(on).has(point)).map(({ point, mm }) => mark('after', mm, { point }))
const now = (on: SheetOn): Mark[] =>
  [...on.garment.points]
    .filter(([point, taken]) => changed(on).has(point) && isTold(taken))
    .map(([point, { mm }]) => mark('now', mm, { point }))

export const FRAME: readonly { part: Part; step: StepRow<SheetOn> }[] = [
  { part: 'arrival', step: { does: 'arrive-apart', act: 'look', when: ({ infested }) => !infested, uses: ['bags'], mind: ['signs'] } },
  { part: 'arrival', step: { does: 'arrive-hot-wash', act: 'wash', when: isHotWashed } },
  { part: 'arrival', step: { does: 'arrive-tumble', act: 'wash', when: cares('tumble') } },
  { part: 'arrival', step: { does: 'arrive-freeze', act: 'look', when: cares('freeze'), uses: ['bags'] } },
  { part: 'arrival', step: { does: 'arrive-hide', act: 'look', when: cares('hide'), uses: ['bags'] } },
  { part: 'arrival', step: { does: 'arrive-by-label', act: 'look', when: isByLabel } },
  {
    part: 'ready',
    step: {
      does: 'ready-washed',
      act: 'wash',
      when: ({ garment, sews: does }) => does && !garment.cloth.washed && arrivalCare(garment) !== 'hide'
    }
  },
  { part: 'ready', step: { does: 'ready-pressed', act: 'press', when: (on) => isPressed(on) && !isSteamed(on) } },
  { part: 'ready', step: { does: 'ready-clips', act: 'look', when: (on) => on.machines && on.cloth.clips, uses: ['clips'] } },
  { part: 'ready', step: { does: 'ready-measured', act: 'look', when: sews, figures: now, uses: ['tape'] } },
  { part: 'ready', step: { does: 'ready-sample', act: 'sew', when: ({ machines }) => machines } },
  {
    part: 'ready',
    step: {
      does: 'ready-tight-at-first',
      act: 'look',
      when: (on) => sews(on) && growsAtWaist(on) > 0,
      figures: (on) => [mark('gives', growsAtWaist(on))]
    }
  },
  { part: 'finish', step: { does: 'finish-pressed', act: 'press', when: (on) => isPressed(on) && !isSteamed(on) } },
  { part: 'finish', step: { does: 'finish-steamed', act: 'press', when: (on) => isPressed(on) && isSteamed(on) } },
  { part: 'finish', step: { does: 'finish-tried', act: 'try', when: ({ plan }) => plan.alterations.length > 0, figures: after } }
]
