/** Legs up and down: the steps of each job. OH the fold is half; SEAM2, HDS turn-ups; TX a hem is marked with shoes on; CP common practice. */
import { legSlope } from '../../alterations/leg-length.ts'
import { INCH_MM } from '../../length.ts'
import { hemFullness } from '../hems.ts'
import { amount, amountAndEdge, amountOf, bySide, mark } from '../marks.ts'
import { isLegged } from '../shapes.ts'
import { type JobOn, type Mark, pointMm, type StepRow, type StepsRow } from '../step.ts'
import { hemDown, hemUp, PIN_LENGTH, TRY_LENGTH } from './hem-steps.ts'
import { check } from './seam-steps.ts'

/** OH-INS, OH-MAG, OH-LB: the fold is half of the shortening, measured from the old hem's stitching. */
export const foldMm = (on: JobOn): number => amountOf(on) / 2
const fold = (on: JobOn): Mark[] => bySide(on, (mm) => [mark('fold', mm / 2), mark('amount', mm)])
/** A tuck deeper than this is trimmed to it; the inner seam to 1/4 in (CP). */
const TUCK_LEFT_MM = INCH_MM / 2
const INNER_LEFT_MM = INCH_MM / 4
/** Above the old edge the leg is wider than it by this, mm around: past 12 it is eased in, or the leg is tapered first (as the row reckons it). */
const EASED_MM = 12
const edgeDiffers = (on: JobOn): number => Math.abs(legSlope(on.garment) * amountOf(on))
const isTuckTrimmed = (on: JobOn): boolean => foldMm(on) > TUCK_LEFT_MM

/** How deep a turn-up is where nobody told (as the row reckons it). */
const TURN_UP_MM = 38
const turnUp = ({ garment }: JobOn): number => garment.told.hemDepthMm ?? TURN_UP_MM
const opened = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('turn-up', turnUp(on)),
  mark('opened-gives', 2 * turnUp(on)),
  mark('hem-left', 2 * turnUp(on) - amountOf(on))
]
const madeAgain = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('turn-up', turnUp(on)),
  mark('fold-above-raw', turnUp(on)),
  mark('new-edge-above-raw', 2 * turnUp(on)),
  mark('cut-off', amountOf(on))
]
const BAND_SEAM_MM = 10
const openingMm = ({ garment }: JobOn): number => pointMm(garment, 'legOpening', 400)
const band = (on: JobOn): Mark[] => [
  ...amount(on),
  mark('band-cut-width', 2 * amountOf(on) + 2 * BAND_SEAM_MM),
  mark('band-cut-length', openingMm(on) + 2 * BAND_SEAM_MM)
]
/** Past this a mm a leg puckers when it is turned up (as the row reckons it). */
const tapers = (on: JobOn): boolean => isLegged(on.garment.kind) && Math.abs(hemFullness(on.garment, 1)) > 0.1
const PRESS_HEM: StepRow = { does: 'press-hem', act: 'press' }
const tuck = (on: JobOn): Mark[] => [...amount(on), mark('fold', foldMm(on)), mark('tuck-apart', amountOf(on))]

export const legLength: StepsRow[] = [
  { id: 'leg-shorten-plain', part: 'hems', ...hemUp('plain') },
  { id: 'leg-shorten-blind', part: 'hems', ...hemUp('blind') },
  {
    id: 'leg-shorten-keep-edge',
    part: 'hems',
    fit: [...PIN_LENGTH, TRY_LENGTH],
    work: [
      { does: 'mark-fold', act: 'mark', figures: fold },
      { does: 'pin-fold', act: 'pin' },
      { does: 'try-fold', act: 'try' },
      {
        does: 'ease-fold',
        act: 'baste',
        when: (on) => edgeDiffers(on) > EASED_MM,
        figures: (on) => [mark('edge-narrower', edgeDiffers(on))]
      },
      { does: 'sew-beside-edge', act: 'sew', uses: ['zipper-foot', 'topstitching-thread'] },
      {
        does: 'trim-tuck',
        act: 'cut',
        when: isTuckTrimmed,
        figures: () => [mark('tuck-left', TUCK_LEFT_MM), mark('inner-left', INNER_LEFT_MM)]
      },
      { does: 'tuck-edges', act: 'sew', when: isTuckTrimmed, uses: ['overlocker'] },
      { does: 'press-tuck', act: 'press' },
      { does: 'catch-tuck', act: 'hand' },
      check('check-legs-alike')
    ]
  },
  { id: 'leg-lengthen-hem', part: 'hems', ...hemDown() },
  { id: 'leg-lengthen-facing', part: 'hems', ...hemDown('faced') },
  {
    id: 'leg-lengthen-band',
    part: 'hems',
    fit: [{ does: 'measure-band', act: 'look', figures: band, uses: ['panel-cloth'] }],
    work: [
      { does: 'pin-paper-band', act: 'pin', figures: band },
      { does: 'try-paper', act: 'try' },
      { does: 'cut-bands', act: 'cut', figures: band, uses: ['panel-cloth'] },
      { does: 'sew-bands', act: 'sew', closes: 'hem' },
      PRESS_HEM,
      check('check-legs-alike')
    ]
  },
  {
    id: 'turn-up-let-down',
    part: 'hems',
    fit: [{ does: 'look-in-turn-up', act: 'look', figures: opened }],
    work: [
      { does: 'turn-up-open', act: 'unpick', figures: opened },
      { does: 'press-old-line', act: 'press' },
      { does: 'pin-new-edge', act: 'pin', figures: amount },
      TRY_LENGTH,
      { does: 'sew-hem-left', act: 'sew', figures: (on) => [mark('hem-left', 2 * turnUp(on) - amountOf(on))], closes: 'hem' },
      check('check-legs-alike')
    ]
  },
  {
    id: 'turn-up-shorten',
    part: 'hems',
    fit: [...PIN_LENGTH, TRY_LENGTH],
    work: [
      { does: 'turn-up-open', act: 'unpick', figures: (on) => [mark('turn-up', turnUp(on))] },
      { does: 'press-open-flat', act: 'press' },
      { does: 'mark-turn-up', act: 'mark', figures: madeAgain },
      { does: 'pin-turn-up', act: 'pin', figures: (on) => [mark('turn-up', turnUp(on))] },
      { does: 'try-turn-up', act: 'try' },
      { does: 'cut-below-turn-up', act: 'cut', figures: (on) => [mark('cut-off', amountOf(on))] },
      { does: 'sew-turn-up', act: 'sew' },
      { does: 'catch-turn-up', act: 'hand', closes: 'hem' },
      PRESS_HEM,
      check('check-legs-alike')
    ]
  },
  {
    id: 'hem-unroll',
    part: 'hems',
    fit: [{ does: 'look-at-roll', act: 'look', figures: amount }],
    work: [
      { does: 'roll-open', act: 'unpick', figures: amountAndEdge },
      { does: 'press-old-line', act: 'press' },
      check('check-legs-alike')
    ]
  },
  {
    id: 'growth-tuck',
    part: 'hems',
    fit: [...PIN_LENGTH, TRY_LENGTH],
    work: [
      { does: 'mark-tuck', act: 'mark', figures: tuck },
      { does: 'sew-growth-tuck', act: 'hand', figures: tuck },
      PRESS_HEM,
      check('check-growth')
    ]
  },
  {
    id: 'growth-hem',
    part: 'hems',
    fit: [...PIN_LENGTH, TRY_LENGTH],
    work: [
      { does: 'press-open-flat', act: 'press' },
      { does: 'turn-all-up', act: 'pin', figures: (on) => [...amount(on), mark('hem-left', on.garment.made.hemDepthMm + amountOf(on))] },
      {
        does: 'open-seam-in-hem',
        act: 'unpick',
        when: tapers,
        figures: (on) => [mark('raw-edge-shorter', Math.abs(hemFullness(on.garment, on.garment.made.hemDepthMm + amountOf(on))))]
      },
      { does: 'sew-growth-hem', act: 'hand', closes: 'hem' },
      PRESS_HEM,
      check('check-growth')
    ]
  }
]
