/** Steps that many jobs have in common: pinning, trying, the new line, what is trimmed and pressed. */
import { closedBy } from '../../alterations/as-cut.ts'
import { allowanceAt, isFelled } from '../../garment/construction.ts'
import { INCH_MM } from '../../length.ts'
import { amountAndEdge, edgeOf, mark } from '../marks.ts'
import type { JobOn, Mark, StepRow, StepsRow } from '../step.ts'

export type FitAndWork = Pick<StepsRow, 'fit' | 'work'>

/** Cloth left beside a seam that was taken in (common practice: side seams keep 1/2 in). */
export const SEAM_LEFT_MM = INCH_MM / 2
/** Kept beyond a seam that was let out (CB-TR: 3/8 in; the limits reckon 10). */
export const OUT_LEFT_MM = 10

const seamOf = ({ job }: JobOn) => job.lines[0]?.seam
const allowance = (on: JobOn): number => {
  const seam = seamOf(on)
  return seam === undefined ? 0 : allowanceAt(on.garment.made, seam, on.garment.told)
}
/** Taken in, the cloth inside grows by the offset. Tailored clothes keep it, so that it can be let out again. */
const hasTooMuch = (on: JobOn): boolean => !on.garment.made.tailored && allowance(on) + edgeOf(on) > SEAM_LEFT_MM
const felled = (on: JobOn): boolean => {
  const seam = seamOf(on)
  return seam !== undefined && isFelled(on.garment.made, seam)
}

/** Pinned where it will be sewn; clips where pins leave holes. */
export const pin = (does: string, figures: (on: JobOn) => Mark[] = amountAndEdge): StepRow => ({ does, act: 'pin', figures })
export const TRY_PINNED: StepRow = { does: 'try-pinned', act: 'try' }
/** Darts are folded down their middle before they are basted. */
export const BASTE_DARTS: StepRow = { does: 'baste-darts', act: 'baste', when: ({ cloth }) => !cloth.clips }
export const BASTE: StepRow = { does: 'baste', act: 'baste', when: ({ cloth }) => !cloth.clips }
export const CLIP: StepRow = { does: 'clip', act: 'pin', when: ({ cloth }) => cloth.clips }
export const TRY_BASTED: StepRow = { does: 'try-basted', act: 'try' }
/** A line that comes back to the old seam somewhere. */
export const SEW: StepRow = { does: 'sew-line', act: 'sew' }
/** A line that lies beside the old seam for all its length. */
export const SEW_THROUGH: StepRow = { does: 'sew-line-through', act: 'sew' }
/** Where the figures of a line come down to nothing it meets the old seam. */
const meets =
  (marks: (on: JobOn) => Mark[]) =>
  (on: JobOn): boolean =>
    marks(on).some(({ is, mm }) => is === 'down' && mm === 0)
const sewn = (marks: (on: JobOn) => Mark[]): StepRow[] => [
  { ...SEW, when: meets(marks) },
  { ...SEW_THROUGH, when: (on) => !meets(marks)(on) }
]
/** What the first figure of a line is measured from: the message `from.<id>`. */
export type From = 'band' | 'fork' | 'underarm' | 'above-underarm' | 'armhole' | 'top-edge'
/** The seam beside it that moves alike, as legs have; undefined where one seam alone moves. */
const otherSeam = ({ job }: JobOn): string | undefined => job.lines.find(({ seam }) => seam !== job.lines[0]?.seam)?.seam
/** The new line chalked: so far down from a place that is told, so far from the old stitching, at every seam that moves. */
export const markLine = (does: 'mark-line-in' | 'mark-line-out', figures: (on: JobOn) => Mark[], from: From): StepRow[] => [
  { does, act: 'mark', figures, values: () => ({ from }), when: (on) => otherSeam(on) === undefined },
  {
    does: `${does}-both`,
    act: 'mark',
    figures,
    values: (on) => ({ from, other: otherSeam(on) ?? '' }),
    when: (on) => otherSeam(on) !== undefined
  }
]
export const OLD_OUT: StepRow = { does: 'old-stitches-out', act: 'unpick' }
export const TRIM: StepRow = {
  does: 'trim-seam',
  act: 'cut',
  when: (on) => hasTooMuch(on) && !felled(on),
  figures: () => [mark('left', SEAM_LEFT_MM)]
}
export const KEEP: StepRow = { does: 'keep-cloth', act: 'look', when: (on) => !hasTooMuch(on) && !felled(on) }
export const EDGES: StepRow = {
  does: 'finish-edges',
  act: 'sew',
  when: (on) => !on.cloth.hide && !felled(on) && !on.garment.made.lined,
  uses: ['overlocker']
}
/** A felled seam is opened before its line can move, unless it is opened for all jobs anyway. */
const FELL_OPEN: StepRow = { does: 'fell-open', act: 'unpick', when: felled, opens: 'felled-seam' }
/** One layer trimmed so that the other folds over it: 3/16 and 1/2 in beside the seam (CP). */
const FELL_TRIM: StepRow = {
  does: 'fell-trim',
  act: 'cut',
  when: felled,
  figures: () => [mark('fell-under', (3 / 16) * INCH_MM), mark('fell-over', INCH_MM / 2)]
}
export const FELL: StepRow = { does: 'fell-again', act: 'sew', when: felled, closes: 'felled-seam', uses: ['topstitching-thread'] }
export const GLUE: StepRow = {
  does: 'glue-seam',
  act: 'hand',
  when: ({ cloth }) => cloth.hide,
  uses: ['leather-glue', 'hammer'],
  mind: ['glue']
}
export const PRESS: StepRow = { does: 'press-seam', act: 'press' }
/** Where the lining is not opened by itself it is taken along by the same figures; a waistcoat is closed with it. */
export const LINING_ALONG: StepRow = {
  does: 'lining-along',
  act: 'sew',
  when: ({ garment, opens }) => garment.made.lined && !opens.includes('lining') && garment.kind !== 'waistcoat'
}
export const check = (does: string): StepRow => ({ does, act: 'look' })

const zipBack = ({ garment }: JobOn): boolean =>
  (garment.kind === 'skirt' || garment.kind === 'dress') && closedBy(garment, 'back-zip') && !garment.made.elasticWaist
const zipSide = ({ garment }: JobOn): boolean => closedBy(garment, 'side-zip')
const zipOut = (when: (on: JobOn) => boolean): StepRow => ({ does: 'zip-out', act: 'unpick', when, opens: 'zip' })
const zipIn = (when: (on: JobOn) => boolean): StepRow => ({ does: 'zip-in', act: 'sew', when, closes: 'zip', uses: ['zipper-foot'] })

type Zip = 'back' | 'side'
const ZIPS: Record<Zip, (on: JobOn) => boolean> = { back: zipBack, side: zipSide }

/** A seam taken in: `first` is what stands in the way and is opened by this job alone, `last` what belongs to it behind the seam. */
export function seamIn(how: {
  pin: StepRow
  marks: (on: JobOn) => Mark[]
  from: From
  check: string
  zip?: Zip
  /** What is looked at before anything is pinned or opened. */
  look?: readonly StepRow[]
  first?: readonly StepRow[]
  /** Where the line goes on into another seam. */
  markedToo?: readonly StepRow[]
  beforeSewn?: readonly StepRow[]
  last?: readonly StepRow[]
  mark?: string
}): FitAndWork {
  const { look = [], first = [], markedToo = [], beforeSewn = [], last = [], zip } = how
  const marked: StepRow[] =
    how.mark === undefined ? markLine('mark-line-in', how.marks, how.from) : [{ does: how.mark, act: 'mark', figures: how.marks }]
  return {
    fit: [...look, how.pin, TRY_PINNED],
    work: [
      ...first,
      ...(zip === undefined ? [] : [zipOut(ZIPS[zip])]),
      FELL_OPEN,
      ...marked,
      ...markedToo,
      BASTE,
      CLIP,
      TRY_BASTED,
      ...beforeSewn,
      ...sewn(how.marks),
      OLD_OUT,
      TRIM,
      KEEP,
      EDGES,
      FELL_TRIM,
      FELL,
      GLUE,
      PRESS,
      ...last,
      LINING_ALONG,
      ...(zip === undefined ? [] : [zipIn(ZIPS[zip])]),
      check(how.check)
    ]
  }
}

/** A seam let out: what is inside is looked at first; the new line lies outside the old one. Nothing is cut. */
export function seamOut(how: {
  measure: string
  marks: (on: JobOn) => Mark[]
  from: From
  check: string
  zip?: Zip
  first?: readonly StepRow[]
  markedToo?: readonly StepRow[]
  last?: readonly StepRow[]
}): FitAndWork {
  const { first = [], markedToo = [], last = [], zip } = how
  return {
    fit: [
      {
        does: how.measure,
        act: 'look',
        figures: (on) => [...amountAndEdge(on), mark('inside', edgeOf(on) + OUT_LEFT_MM), mark('left', OUT_LEFT_MM)]
      }
    ],
    work: [
      ...first,
      ...(zip === undefined ? [] : [zipOut(ZIPS[zip])]),
      ...markLine('mark-line-out', how.marks, how.from),
      ...markedToo,
      { does: 'baste-outside', act: 'baste' },
      { does: 'old-line-out', act: 'unpick' },
      TRY_BASTED,
      ...sewn(how.marks),
      EDGES,
      { does: 'press-old-line', act: 'press' },
      ...last,
      LINING_ALONG,
      ...(zip === undefined ? [] : [zipIn(ZIPS[zip])]),
      check(how.check)
    ]
  }
}

/** A strip or wedge of other cloth set in: cut from a paper first, tried, then sewn. */
export function setIn(how: {
  measure: string
  figures: (on: JobOn) => Mark[]
  sew: StepRow
  check: string
  first?: readonly StepRow[]
}): FitAndWork {
  return {
    fit: [{ does: how.measure, act: 'look', figures: how.figures }],
    work: [
      ...(how.first ?? []),
      { does: 'paper-first', act: 'mark', figures: how.figures, uses: ['panel-cloth'] },
      { does: 'try-paper', act: 'try' },
      { does: 'cut-panel', act: 'cut', uses: ['panel-cloth'] },
      how.sew,
      EDGES,
      PRESS,
      check(how.check)
    ]
  }
}
