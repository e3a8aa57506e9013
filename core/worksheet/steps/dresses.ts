/** Bodices that are boned, strapless or laced: the steps of each job. STRAPLESS, DRESSNO9; CP common practice, no source. */
import { amount, amountAndEdge, amountOf, atPoints, lineThrough, mark } from '../marks.ts'
import { sideLevels } from '../shapes.ts'
import { type JobOn, type Mark, pointMm, type StepsRow } from '../step.ts'
import { check, pin, seamIn, TRY_PINNED } from './seam-steps.ts'

const boned = (on: JobOn): Mark[] => atPoints(on, ['chest', 'waist'])
/** From the top edge to the waist, and run out below it over a hand's breadth (CP). */
const BELOW_WAIST_MM = 80
const bodice = (on: JobOn): Mark[] => {
  const { waist } = sideLevels(on.garment)
  return lineThrough(on, (at) => [
    { atMm: 0, offsetMm: at('chest') },
    { atMm: waist, offsetMm: at('waist') },
    { atMm: waist + BELOW_WAIST_MM, offsetMm: 0 }
  ])
}
const topElastic = (on: JobOn): Mark[] => [...amount(on), mark('elastic-works', pointMm(on.garment, 'chest', 880) / 2 - amountOf(on))]
/** Loops stand so far apart (CP: 13, a hand's lacing). */
const LOOPS_APART_MM = 13
const BACK_MM = 300
const lacing = (on: JobOn): Mark[] => [
  ...amount(on),
  ...amountAndEdge(on).slice(1),
  mark('loops-apart', LOOPS_APART_MM),
  mark('placket-width', amountOf(on) + 60),
  mark('lace-length', 12 * BACK_MM)
]

export const dresses: StepsRow[] = [
  {
    id: 'bodice-boned-in',
    part: 'structure',
    ...seamIn({
      pin: pin('pin-bodice', boned),
      marks: bodice,
      from: 'top-edge',
      first: [{ does: 'bones-out', act: 'unpick', opens: 'bones', uses: ['pliers'] }],
      last: [{ does: 'bones-back', act: 'sew', closes: 'bones' }],
      check: 'check-bodice'
    })
  },
  {
    id: 'strapless-draw',
    part: 'body',
    fit: [pin('pin-top-edge', topElastic), TRY_PINNED],
    work: [
      { does: 'top-edge-open', act: 'unpick', opens: 'neck-edge' },
      { does: 'top-elastic-in', act: 'hand', figures: topElastic, uses: ['elastic', 'bodkin', 'grip-tape'] },
      { does: 'try-safety-pinned', act: 'try' },
      { does: 'top-edge-closed', act: 'hand', closes: 'neck-edge' },
      check('check-top-edge')
    ]
  },
  {
    id: 'lace-back',
    part: 'closures',
    fit: [{ does: 'measure-lacing', act: 'look', figures: lacing, uses: ['loop-tape', 'lacing'] }],
    work: [
      { does: 'zip-out-for-lacing', act: 'unpick', opens: 'zip' },
      { does: 'mark-loops', act: 'mark', figures: lacing },
      { does: 'baste-loops', act: 'baste', uses: ['loop-tape', 'lacing'] },
      { does: 'try-laced', act: 'try' },
      { does: 'lacing-loops-on', act: 'sew', closes: 'zip', uses: ['loop-tape', 'zipper-foot'] },
      {
        does: 'placket-behind',
        act: 'sew',
        figures: (on) => [mark('placket-width', amountOf(on) + 60)],
        uses: ['panel-cloth', 'interfacing']
      },
      check('check-lacing')
    ]
  }
]
