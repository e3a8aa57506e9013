/** Buttons, hooks, buckles and ties moved: the steps of each job. HSW-BTN stitches and winds; shank lengths MEM; the rest CP, no source. */

import type { GarmentKind } from '../../ids/kinds.ts'
import { table } from '../../ids/table.ts'
import { amount, amountOf, mark } from '../marks.ts'
import type { JobOn, Mark, StepRow, StepsRow } from '../step.ts'
import { check, type FitAndWork } from './seam-steps.ts'

/** A shank is as long as the buttonhole's edge is thick (MEM): a shirt's 3, a coat's 6, between them 4. */
export const shankMm = (kind: GarmentKind): number => (kind === 'coat' || kind === 'jacket' ? 6 : kind === 'shirt' ? 3 : 4)
const shank = ({ garment }: JobOn): Mark[] => [mark('shank', shankMm(garment.kind))]
/** As the minutes reckon it. */
const FRONT_BUTTONS: Partial<Record<GarmentKind, number>> = { jacket: 2, coat: 3, waistcoat: 5, shirt: 7 }
const OVERLAP_LEFT = table<number>({ 'front-button-move': 25, 'tie-move': 120, 'waist-button-move': 20, 'hook-move': 20 })

/** Where it moves out, so much must still overlap. */
const OVERLAP: StepRow = {
  does: 'overlap-left',
  act: 'look',
  when: ({ job }) => job.direction === 'more' && OVERLAP_LEFT[job.id] !== undefined,
  figures: ({ job, garment }) => [
    // how far a wrap laps is not known unless it is told
    ...(job.id === 'tie-move' && garment.told.overlapMm === undefined
      ? []
      : [mark('overlap-after', Math.max(0, garment.made.overlapMm - job.amountMm))]),
    mark('overlap-least', OVERLAP_LEFT[job.id] ?? 0)
  ]
}
const TRY_CLOSED: StepRow = { does: 'try-pinned-shut', act: 'try' }
const REINFORCE: StepRow = {
  does: 'stay-behind',
  act: 'hand',
  when: ({ cloth }) => cloth.knit || cloth.stitchMm <= 2,
  uses: ['interfacing']
}

/** The waist button of jeans is hammered through the band; every other is sewn on. */
const isHammered = ({ job, garment }: JobOn): boolean => job.id === 'waist-button-move' && garment.kind === 'jeans'
const isSewn = (on: JobOn): boolean => !isHammered(on)

/** One button, or a row of them on one line. */
const button = (where: string, count = (_on: JobOn): number => 1): FitAndWork => ({
  fit: [{ does: where, act: 'pin', figures: amount, values: (on) => ({ count: count(on), way: on.job.direction }) }, TRY_CLOSED, OVERLAP],
  work: [
    { does: 'mark-button-in', act: 'mark', figures: amount, when: ({ job }) => job.direction === 'less' },
    { does: 'mark-button-out', act: 'mark', figures: amount, when: ({ job }) => job.direction === 'more' },
    { does: 'button-off', act: 'unpick', when: isSewn, opens: 'closure' },
    REINFORCE,
    { does: 'button-on', act: 'hand', when: isSewn, figures: shank, uses: ['button', 'spacer'], closes: 'closure' },
    { does: 'shank-wound', act: 'hand', when: isSewn, figures: shank, uses: ['spacer'] },
    { does: 'hammered-off', act: 'unpick', when: isHammered, opens: 'closure', uses: ['pliers'] },
    {
      does: 'hammered-on',
      act: 'fill',
      when: isHammered,
      closes: 'closure',
      uses: ['button', 'awl', 'hammer', 'interfacing'],
      mind: ['hammer']
    },
    check('check-button')
  ]
})
const strap = (on: JobOn): Mark[] => [...amount(on), mark('each-strap', amountOf(on) / 2)]

export const closures: StepsRow[] = [
  { id: 'waist-button-move', part: 'closures', ...button('pin-waist-button') },
  {
    id: 'front-button-move',
    part: 'closures',
    ...button('pin-front-buttons', ({ garment }) => FRONT_BUTTONS[garment.kind] ?? 3)
  },
  { id: 'neck-button-move', part: 'closures', ...button('pin-neck-button') },
  {
    id: 'cuff-button-move',
    part: 'closures',
    ...button('pin-cuff-buttons', () => 2)
  },
  {
    id: 'hook-move',
    part: 'closures',
    fit: [{ does: 'pin-hook', act: 'pin', figures: amount }, TRY_CLOSED, OVERLAP],
    work: [
      { does: 'mark-hook', act: 'mark', figures: amount },
      { does: 'hook-off', act: 'unpick', opens: 'closure' },
      { does: 'hook-on', act: 'hand', uses: ['hook'], closes: 'closure' },
      check('check-hook')
    ]
  },
  {
    id: 'buckle-move',
    part: 'closures',
    fit: [{ does: 'pin-buckles', act: 'pin', figures: buckles }, TRY_CLOSED],
    work: [
      { does: 'mark-buckles', act: 'mark', figures: buckles },
      { does: 'buckles-off', act: 'unpick', opens: 'closure' },
      { does: 'buckles-on', act: 'hand', closes: 'closure', uses: ['awl', 'thimble'] },
      check('check-buckles')
    ]
  },
  {
    id: 'tie-move',
    part: 'closures',
    fit: [{ does: 'pin-tie', act: 'pin', figures: amount }, TRY_CLOSED, OVERLAP],
    work: [
      { does: 'mark-tie', act: 'mark', figures: amount },
      { does: 'tie-off', act: 'unpick', opens: 'closure' },
      { does: 'tie-on', act: 'sew', closes: 'closure' },
      check('check-tie')
    ]
  }
]

/** Two straps round the waist share the amount; straps over the shoulders each move by all of it. */
function buckles(on: JobOn): Mark[] {
  return on.garment.kind === 'jumpsuit' ? amount(on) : strap(on)
}
