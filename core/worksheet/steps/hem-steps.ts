/** Edges turned up and let down: the steps that legs, skirts, bodies and sleeves have in common. */
import { INCH_MM } from '../../length.ts'
import { cutFor, type Hem, type HemHow, hangsFirst, hemFor, hemFullness } from '../hems.ts'
import { amount, amountOf, bySide, mark } from '../marks.ts'
import type { JobOn, Mark, Opened, StepRow } from '../step.ts'
import { check, type FitAndWork } from './seam-steps.ts'

const newEdge = (on: JobOn): Mark[] => bySide(on, (mm) => [mark('amount', mm)])
const isRound = ({ garment }: JobOn): boolean => garment.kind === 'skirt' || garment.kind === 'dress'
const PIN_LEGS: StepRow = { does: 'pin-length', act: 'pin', when: (on) => !isRound(on), figures: newEdge }
/** A skirt is pinned up all round, a leg on one side first. */
const PIN_ROUND: StepRow = { does: 'pin-hem-round', act: 'pin', when: isRound, figures: newEdge }
export const TRY_LENGTH: StepRow = { does: 'try-length', act: 'try' }
/** How an edge is pinned and tried: legs and skirts with shoes on, sleeves with the arms bent, bodies from all sides. */
export const PIN_LENGTH: readonly StepRow[] = [PIN_LEGS, PIN_ROUND]
type Edge = 'leg-or-skirt' | 'sleeve' | 'body'
const PINNED: Record<Edge, readonly StepRow[]> = {
  'leg-or-skirt': PIN_LENGTH,
  sleeve: [{ does: 'pin-sleeve-length', act: 'pin', figures: newEdge }],
  body: [{ does: 'pin-body-length', act: 'pin', figures: newEdge }]
}
const TRIED: Record<Edge, StepRow> = {
  'leg-or-skirt': TRY_LENGTH,
  sleeve: { does: 'try-arms', act: 'try' },
  body: { does: 'try-body-length', act: 'try' }
}
const HANG: StepRow = { does: 'hang-a-day', act: 'look', when: ({ garment, job }) => !job.id.startsWith('sleeve') && hangsFirst(garment) }
/** Less than this of ease is nothing (CP). */
const EASED_MM = 3

const hemOf = (on: JobOn, how: HemHow): Hem => hemFor(on.garment, how)
const edgeFigures = (on: JobOn, how: HemHow): Mark[] => {
  return bySide(on, (mm) => [mark('new-edge', mm), ...cutFigures(on, how, mm)])
}
const cutFigures = (on: JobOn, how: HemHow, mm: number): Mark[] => {
  const { belowMm, offMm } = cutFor(on.garment, hemOf(on, how), mm)
  return [mark('cut-line', belowMm), mark('cut-off', offMm)]
}
const foldsOf = (on: JobOn, how: HemHow): Mark[] => {
  const hem = hemOf(on, how)
  const { belowMm } = cutFor(on.garment, hem, amountOf(on))
  const first = Math.min(hem.firstTurnMm, belowMm)
  return first === 0 ? [mark('turn-once', belowMm)] : [mark('turn-first', first), mark('turn-then', belowMm - first)]
}
const fullness = (on: JobOn, how: HemHow): number => hemFullness(on.garment, cutFor(on.garment, hemOf(on, how), amountOf(on)).belowMm, how)

/** How each hem is sewn; only the one that such a hem gets is laid on. */
const SEWN: Record<Hem['sewn'], Omit<StepRow, 'when'>> = {
  'double-turned': { does: 'sew-hem-turned', act: 'sew' },
  narrow: { does: 'sew-hem-narrow', act: 'sew' },
  blind: { does: 'sew-hem-blind', act: 'hand', uses: ['thimble'] },
  stretch: { does: 'sew-hem-stretch', act: 'sew', uses: ['twin-needle'] },
  glued: { does: 'glue-hem', act: 'hand', uses: ['leather-glue', 'hammer'], mind: ['glue'] }
}
const HEM_KINDS = ['double-turned', 'narrow', 'blind', 'stretch', 'glued'] as const
/** The hem is sewn as such cloth and garment want it. */
export const sewHem = (how: HemHow, closes: Opened): StepRow[] =>
  HEM_KINDS.map((kind) => ({
    ...SEWN[kind],
    when: (on: JobOn) => hemOf(on, how).sewn === kind,
    figures: (on: JobOn) => foldsOf(on, how),
    closes
  }))

/** Turned up: pinned at the new length, tried, marked all round, cut, turned, eased, sewn, pressed. */
export function hemUp(
  how?: HemHow,
  more: {
    edge?: Edge
    first?: readonly StepRow[]
    marked?: readonly StepRow[]
    last?: readonly StepRow[]
    closes?: Opened
    check?: string
  } = {}
): FitAndWork {
  const { edge = 'leg-or-skirt', first = [], marked = [], last = [], closes = 'hem' } = more
  return {
    fit: [HANG, ...PINNED[edge], TRIED[edge]],
    work: [
      ...first,
      { does: 'press-open-flat', act: 'press' },
      { does: 'mark-new-edge', act: 'mark', figures: (on) => edgeFigures(on, how) },
      ...marked,
      { does: 'pin-turned', act: 'pin' },
      { does: 'try-turned', act: 'try' },
      {
        does: 'cut-hem',
        act: 'cut',
        when: (on) => cutFor(on.garment, hemOf(on, how), amountOf(on)).offMm > 0,
        figures: (on) => bySide(on, (mm) => cutFigures(on, how, mm))
      },
      {
        does: 'ease-hem',
        act: 'sew',
        when: (on) => fullness(on, how) > EASED_MM,
        figures: (on) => [mark('fullness', fullness(on, how)), mark('ease-row', INCH_MM / 4)]
      },
      {
        does: 'hem-follows-slope',
        act: 'look',
        when: (on) => fullness(on, how) < -EASED_MM,
        figures: (on) => [mark('raw-edge-shorter', -fullness(on, how))]
      },
      ...sewHem(how, closes),
      { does: 'press-hem', act: 'press' },
      ...last,
      check(more.check ?? 'check-legs-alike')
    ]
  }
}

/** All that is left of the old hem's cloth below the new edge, mm. */
const left = ({ garment }: JobOn, amountMm: number): number => Math.max(0, garment.made.hemDepthMm - amountMm)
const TAPE_MM = 1.75 * INCH_MM
const FACING_SEAM_MM = 6

/** Let down: the old fold pressed out, the new edge tried, hemmed with what is left or faced with tape. Nothing is cut. */
export function hemDown(
  how?: 'faced',
  more: { edge?: Edge; first?: readonly StepRow[]; last?: readonly StepRow[]; closes?: Opened; check?: string } = {}
): FitAndWork {
  const { edge = 'leg-or-skirt', first = [], last = [], closes = 'hem' } = more
  const sewn: StepRow[] =
    how === 'faced'
      ? [
          {
            does: 'tape-on',
            act: 'sew',
            figures: (on) => [mark('tape-width', TAPE_MM), mark('tape-seam', Math.min(FACING_SEAM_MM, left(on, amountOf(on))))],
            uses: ['hem-tape']
          },
          { does: 'tape-turned', act: 'hand', closes, uses: ['hem-tape', 'thimble'] }
        ]
      : [{ does: 'sew-hem-left', act: 'sew', figures: (on) => bySide(on, (mm) => [mark('hem-left', left(on, mm))]), closes }]
  return {
    fit: [
      {
        does: 'look-inside-hem',
        act: 'look',
        figures: (on) => [...amount(on), mark('hem-depth', on.garment.made.hemDepthMm), mark('hem-left', left(on, amountOf(on)))]
      }
    ],
    work: [
      ...first,
      { does: 'press-old-line', act: 'press' },
      { does: 'pin-new-edge', act: 'pin', figures: (on) => bySide(on, (mm) => [mark('new-edge-below', mm)]) },
      TRIED[edge],
      ...sewn,
      { does: 'press-hem', act: 'press' },
      ...last,
      check(more.check ?? 'check-legs-alike')
    ]
  }
}
