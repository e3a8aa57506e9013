/** What several jobs open: taken apart once before the first of them works, put together once behind the last. CP common practice, no source. */
import type { Preparation } from '../../alterations/minutes.ts'
import { isCut } from '../../garment/cut.ts'
import type { Garment } from '../../garment/garment-as-worn.ts'
import { hasSleeves } from '../../garment/sleeves.ts'
import type { AlterationId } from '../../ids/alterations.ts'
import type { ClothSetup } from '../cloth-setup.ts'
import { mark } from '../marks.ts'
import { loopsOn, loopsWithin } from '../shapes.ts'
import { type JobOn, type Mark, type Part, pointMm, type Stage, type StepRow } from '../step.ts'
import { capEase } from './sleeves.ts'

/** An opening on its garment, with the jobs that share it. */
export interface OpeningOn {
  what: Preparation
  garment: Garment
  cloth: ClothSetup
  jobs: readonly JobOn[]
}
export interface OpeningRow {
  open: readonly StepRow<OpeningOn>[]
  close: readonly StepRow<OpeningOn>[]
  /** Where it is closed, if no job closes it; not given: behind the last job that shares it. */
  closedIn?: { part: Part; stage: Stage }
}

/** Where the band is opened, by job: the rest of it stays on. */
const BAND_AT: Partial<Record<AlterationId, 'centre-back' | 'sides' | 'back' | 'whole'>> = {
  'waist-in-centre-back': 'centre-back',
  'waist-out-centre-back': 'centre-back',
  'waist-out-panel': 'centre-back',
  'seat-in': 'centre-back',
  'seat-out': 'centre-back',
  'waist-in-side-seams': 'sides',
  'waist-out-side-seams': 'sides',
  'skirt-sides-in': 'sides',
  'skirt-sides-out': 'sides',
  'waist-in-darts': 'back',
  'release-darts': 'back',
  'rise-shorten': 'whole',
  'skirt-shorten-from-waist': 'whole',
  'pleat-reset': 'whole',
  'pleat-release': 'whole',
  'gathers-reset': 'whole'
}
/** The span grows with what is taken: two and a half times the amount, never under 100 (CP: more is opened for more). */
export const bandSpanMm = (amountMm: number): number => Math.max(100, 2.5 * amountMm)
const waistMm = ({ garment }: OpeningOn): number => pointMm(garment, 'waist', 850)
const waistChange = ({ jobs }: OpeningOn): number => jobs.reduce((sum, { job }) => sum + (job.amounts.waist ?? 0), 0)
const places = ({ jobs }: OpeningOn) => new Set(jobs.map(({ job }) => BAND_AT[job.id] ?? 'whole'))
const widest = ({ jobs }: OpeningOn, place: string): number =>
  bandSpanMm(Math.max(0, ...jobs.filter(({ job }) => (BAND_AT[job.id] ?? 'whole') === place).map(({ job }) => job.amountMm)))

/** How far the band comes off, at each place it does. */
function bandSpans(on: OpeningOn): Mark[] {
  const at = places(on)
  if (at.has('whole')) return [mark('band-span', waistMm(on), { where: 'whole' })]
  const spans = (['centre-back', 'sides'] as const).filter((place) => at.has(place) && !(place === 'centre-back' && at.has('back')))
  return [
    ...(at.has('back') ? [mark('band-span', waistMm(on) / 2, { where: 'back' })] : []),
    ...spans.map((place) => mark('band-span', widest(on, place), { where: place }))
  ]
}
/** Loops that stand in the way. */
function loopsOff(on: OpeningOn): number {
  const at = places(on)
  if (at.has('whole')) return loopsOn(on.garment)
  if (at.has('back')) return loopsWithin(on.garment, waistMm(on) / 4)
  return (at.has('centre-back') ? loopsWithin(on.garment, widest(on, 'centre-back') / 2) : 0) + (at.has('sides') ? 2 : 0)
}
const hasLoops = ({ garment }: OpeningOn): boolean => ['trousers', 'jeans', 'shorts'].includes(garment.kind) && !garment.made.elasticWaist
/** The seam may take a little less than the band, and the band is eased on (common practice): no more than this. */
const EASED_ON_MM = 6
const TRIFLE_MM = 0.5
const bandFigures = (on: OpeningOn): Mark[] =>
  Math.abs(waistChange(on)) > TRIFLE_MM
    ? [mark('band-change', Math.abs(waistChange(on))), mark('band-new', waistMm(on) + waistChange(on))]
    : []

const onlySides = (on: OpeningOn): boolean => [...places(on)].every((place) => place === 'sides')
/** Each end of the cut band is sewn half of what its place takes from the cut: one place in the back, two at the sides. A seam is left (CP). */
const BAND_SEAM_MM = 10
const bandCut = (on: OpeningOn): Mark[] => [
  ...bandFigures(on),
  mark('band-end', Math.abs(waistChange(on)) / (onlySides(on) ? 4 : 2)),
  mark('seam-each', BAND_SEAM_MM)
]

const waistband: OpeningRow = {
  open: [
    {
      does: 'loops-off',
      act: 'unpick',
      when: (on) => hasLoops(on) && loopsOff(on) > 0,
      values: (on) => ({ loops: loopsOff(on), of: loopsOn(on.garment) })
    },
    { does: 'band-off', act: 'unpick', figures: bandSpans, opens: 'waistband' }
  ],
  close: [
    {
      does: 'band-tried',
      act: 'try',
      figures: (on) => [...bandFigures(on), ...(waistChange(on) < -TRIFLE_MM ? [mark('band-eased', EASED_ON_MM)] : [])]
    },
    { does: 'band-cut', act: 'cut', when: (on) => waistChange(on) < -TRIFLE_MM && !onlySides(on), figures: bandCut },
    { does: 'band-cut-sides', act: 'cut', when: (on) => waistChange(on) < -TRIFLE_MM && onlySides(on), figures: bandCut },
    { does: 'band-longer', act: 'sew', when: (on) => waistChange(on) > TRIFLE_MM, figures: bandFigures, uses: ['interfacing'] },
    { does: 'band-on', act: 'sew', closes: 'waistband' },
    { does: 'loops-on', act: 'sew', when: (on) => hasLoops(on) && loopsOff(on) > 0 },
    { does: 'band-pressed', act: 'press' }
  ]
}
const hasTurnUps = ({ garment }: OpeningOn): boolean => isCut(garment.cut, 'turnUps', 'made')
const hem: OpeningRow = {
  open: [
    {
      does: 'hem-off',
      act: 'unpick',
      when: (on) => !hasTurnUps(on),
      figures: ({ garment }) => [mark('hem-depth', garment.made.hemDepthMm)],
      opens: 'hem'
    },
    { does: 'hem-off-turn-up', act: 'unpick', when: hasTurnUps, opens: 'hem' }
  ],
  close: [
    { does: 'hem-again', act: 'sew', figures: ({ garment }) => [mark('hem-depth', garment.made.hemDepthMm)], closes: 'hem' },
    { does: 'press-hem', act: 'press' }
  ],
  closedIn: { part: 'hems', stage: 'close' }
}
/** Edges and pads leave the seams of the lining as they are. */
const movesSeams = ({ jobs }: OpeningOn): boolean =>
  jobs.some(({ job }) => job.lines.some(({ seam }) => seam !== 'hem' && seam !== 'armhole' && seam !== 'cuff'))
const lining: OpeningRow = {
  open: [{ does: 'lining-off', act: 'unpick', opens: 'lining' }],
  close: [
    { does: 'lining-in-too', act: 'sew', when: movesSeams },
    { does: 'lining-closed', act: 'hand', closes: 'lining', uses: ['thimble'] }
  ],
  closedIn: { part: 'hems', stage: 'last' }
}
const setIn = (on: OpeningOn): boolean => hasSleeves(on.garment)
const armhole: OpeningRow = {
  open: [
    { does: 'armhole-marked', act: 'mark', when: setIn },
    { does: 'sleeve-out', act: 'unpick', when: setIn, opens: 'armhole' },
    { does: 'armhole-edge-off', act: 'unpick', when: (on) => !setIn(on), opens: 'armhole' }
  ],
  close: [
    {
      does: 'sleeve-in-basted',
      act: 'baste',
      when: setIn,
      figures: capEase
    },
    { does: 'try-sleeves', act: 'try', when: setIn },
    { does: 'sleeve-in', act: 'sew', when: setIn, closes: 'armhole' },
    { does: 'armhole-edge-on', act: 'sew', when: (on) => !setIn(on), closes: 'armhole' },
    { does: 'press-armhole', act: 'press', uses: ['ham'] }
  ]
}
/** Shirts have cuffs, and what is cut like one; other sleeves end in a hem. */
const hasCuff = ({ garment }: OpeningOn): boolean =>
  garment.kind === 'shirt' || isCut(garment.cut, 'silhouette', 'shirt-dress', 'blouse', 'boiler')
const cuff: OpeningRow = {
  open: [
    { does: 'cuff-off', act: 'unpick', when: hasCuff, opens: 'cuff' },
    { does: 'sleeve-hem-off', act: 'unpick', when: (on) => !hasCuff(on), opens: 'cuff' }
  ],
  close: [
    { does: 'cuff-on', act: 'sew', when: hasCuff, closes: 'cuff' },
    { does: 'sleeve-hem-again', act: 'sew', when: (on) => !hasCuff(on), closes: 'cuff' },
    { does: 'press-cuffs', act: 'press' }
  ]
}
/** A seam that is opened for a job, and closed where that job has not sewn it. */
const seam = (off: string, on: string, what: Preparation): OpeningRow => ({
  open: [{ does: off, act: 'unpick', opens: what }],
  close: [{ does: on, act: 'sew', closes: what }]
})

/** In the order they are opened; what was opened last is closed first. */
export const OPENINGS: Record<Preparation, OpeningRow> = {
  lining,
  waistband,
  hem,
  cuff,
  armhole,
  sides: seam('sides-off', 'sides-on', 'sides'),
  seat: seam('seat-off', 'seat-on', 'seat'),
  inseam: seam('inseam-off', 'inseam-on', 'inseam')
}
