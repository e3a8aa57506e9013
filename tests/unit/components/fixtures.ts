/** Invented garments and answers, by hand, for the pages' own tests. All lengths mm. */

import type { Judged } from '../../../components/judged.ts'
import type { ListingShown } from '../../../components/workroom/shown.ts'
import { madeAs } from '../../../core/garment/construction.ts'
import type { Stated } from '../../../core/garment/issue.ts'
import { GARMENT_KINDS } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import { type LengthUnit, toMm } from '../../../core/length.ts'
import type { ConditionShown } from '../../../core/plan/answer/conditions-said.ts'
import type { Job, Plan } from '../../../core/plan/plan.ts'
import type { MeasureReading, Reading } from '../../../core/reading/reading.ts'
import type { GapShown, Reckoning } from '../../../core/reckon.ts'
import type { Reason } from '../../../core/words/reason.ts'

export const inch = (value: number): number => toMm(value, 'in')

/** A find on the wishlist, of which a test names what it is about. */
export const keptListing = (over: Partial<ListingShown> = {}): ListingShown => ({
  id: 'l',
  title: 'Grey trousers',
  site: 'second-rail.example',
  keptAt: '2026-03-01T09:00:00.000Z',
  price: 24,
  kind: 'trousers',
  status: 'watching',
  notes: '',
  tags: [],
  money: { price: null, postage: null, worth: null },
  verdictThen: null,
  now: null,
  ...over
})

export const LISTING =
  'Heavy grey twill trousers from a drawer, unlined, worn twice.\n\nMarked 34 but please go by the tape: waist 16" ' +
  'straight across, thigh 12 1/2" flat, inside leg 31", bottoms 8" flat, rise 11. About 2" turned up in the hem. Small ' +
  'nip by the back pocket. 98% wool, 2% elastane. My nephew is 6\'1" and wore them belted.'

export const stated = (text: string, quote: string, value: number, unit: LengthUnit | null): Stated => {
  const start = text.indexOf(quote)
  if (start < 0) throw new Error(`"${quote}" is not in the text`)
  return { text: quote, start, end: start + quote.length, value, unit }
}

const measure = (
  point: PointId,
  mm: number,
  basis: MeasureReading['basis'],
  basisFrom: MeasureReading['basisFrom'],
  said: Stated
): MeasureReading => ({ point, mm, lowMm: mm, highMm: mm, basis, basisFrom, unitFrom: 'stated', stated: said })

export const emptyReading: Reading = {
  garment: { kind: null, sureness: 0 },
  measures: [],
  cloth: { fibres: [], traits: [], stretchPercent: null, washed: null, structure: null },
  made: {},
  cut: {},
  use: null,
  whose: null,
  language: 'en',
  colour: null,
  condition: null,
  mending: [],
  price: null,
  sizeChart: [],
  sizeLabels: [],
  faults: [],
  allowances: [],
  leftAside: [],
  issues: []
}

const rise = stated(LISTING, 'rise 11', 11, null)
export const trousersReading: Reading = {
  ...emptyReading,
  garment: { kind: 'trousers', sureness: 0.97 },
  measures: [
    measure('waist', inch(32), 'flat', 'stated', stated(LISTING, 'waist 16" straight across', 16, 'in')),
    measure('thigh', inch(25), 'flat', 'stated', stated(LISTING, 'thigh 12 1/2" flat', 12.5, 'in')),
    measure('inseam', inch(31), 'length', 'stated', stated(LISTING, 'inside leg 31"', 31, 'in')),
    measure('legOpening', inch(16), 'flat', 'judged', stated(LISTING, 'bottoms 8" flat', 8, 'in'))
  ],
  cloth: {
    fibres: [
      { fibre: 'wool', percent: 98 },
      { fibre: 'elastane', percent: 2 }
    ],
    traits: [],
    stretchPercent: null,
    washed: null,
    structure: 'woven'
  },
  made: { lined: false, hemDepthMm: 50.8 },
  mending: ['treat-pests'],
  price: { amount: 24, currency: 'GBP' },
  sizeLabels: ['34'],
  faults: ['Small nip by the back pocket'],
  allowances: [{ point: 'inseam', mm: 50.8, stated: stated(LISTING, '2" turned up', 2, 'in') }],
  leftAside: [
    { stated: stated(LISTING, '34', 34, null), because: 'size-label' },
    { stated: stated(LISTING, '6\'1"', 73, 'in'), because: 'model' }
  ],
  issues: [
    {
      code: 'reading.no-unit',
      stated: rise,
      readings: [
        { point: 'frontRise', mm: 279.4 },
        { point: 'frontRise', mm: 110 }
      ],
      values: {},
      text: 'The rise is 11, and no unit is given. Say whether it is inches or centimetres.'
    }
  ]
}

const gap = (
  point: PointId,
  garmentMm: number,
  sdMm: number,
  band: readonly [number, number, number] | null,
  from: GapShown['from'] = 'seller'
): GapShown => ({
  point,
  garmentMm,
  from,
  sdMm,
  band: band === null ? null : { least: band[0], ideal: band[1], most: band[2] },
  gapMm: band === null ? 0 : garmentMm > band[2] ? garmentMm - band[2] : garmentMm < band[0] ? garmentMm - band[0] : 0,
  because: []
})
const reason = (text: string): Reason => ({ code: 'plan.example', values: {}, text })

export const trousersGaps: GapShown[] = [
  gap('waist', inch(32), inch(0.45), [inch(28.75), inch(29.5), inch(30.5)]),
  gap('hip', inch(40.75), inch(0.85), [inch(38.5), inch(39.75), inch(41.5)], 'inferred'),
  gap('thigh', inch(25), inch(0.36), [inch(23), inch(24.25), inch(26)]),
  gap('legOpening', inch(16), inch(0.3), [inch(14), inch(15.5), inch(17)]),
  gap('inseam', inch(31), inch(0.23), [inch(29), inch(29.5), inch(30)])
]

export const waistIn = (totalMm: number): Job => ({
  id: 'waist-in-centre-back',
  amountMm: totalMm,
  direction: 'less',
  amounts: { waist: -totalMm },
  lines: [{ seam: 'centre-back', offsetMm: totalMm / 2 }],
  limitMm: 74,
  limitBecause: 'At most 2⅞ in all: past that the taper pulls at its end.',
  softLimit: false,
  rescue: false,
  withoutIt: [{ point: 'waist', mm: 38 }]
})
export const legsUp = (mm: number): Job => ({
  id: 'leg-shorten-blind',
  amountMm: mm,
  direction: 'less',
  amounts: { inseam: -mm, outseam: -mm },
  lines: [{ seam: 'hem', offsetMm: mm }],
  limitMm: 300,
  limitBecause: 'Any amount that leaves 2 in below the knee.',
  softLimit: false,
  rescue: false,
  withoutIt: [{ point: 'inseam', mm: 25 }]
})

const after = (waist: number, inseam: number) => [
  { point: 'waist' as const, mm: inch(waist) },
  { point: 'thigh' as const, mm: inch(25) },
  { point: 'legOpening' as const, mm: inch(16) },
  { point: 'inseam' as const, mm: inch(inseam) }
]
export const leastWork: Plan = {
  aim: 'least-work',
  alterations: [waistIn(inch(1.5)), legsUp(inch(1))],
  after: after(30.5, 30),
  misfit: [],
  chance: 0.62,
  level: 3,
  minutes: 70,
  cost: 1
}
export const closestFit: Plan = {
  aim: 'closest-fit',
  alterations: [waistIn(inch(2.5)), legsUp(inch(1.5))],
  after: after(29.5, 29.5),
  misfit: [],
  chance: 0.62,
  level: 3,
  minutes: 100,
  cost: 2
}
export const tailorPlan: Plan = { ...closestFit, aim: 'tailor', chance: 0.9, level: 4, minutes: 0, cost: 38 }

export const trousersReckoning: Reckoning = {
  verdict: 'alters-to-fit',
  cut: {},
  asFarAsTold: false,
  conditions: [],
  chanceIf: null,
  wearsAs: null,
  doubts: [],
  because: [
    reason('Take 1½ in out of the waist at the centre back and turn the legs up 1 in.'),
    reason('Thigh and leg opening suit you already; the hip is not told.')
  ],
  gaps: trousersGaps,
  conversions: [],
  untold: [],
  assumed: [reason('The hem is taken to be a blind one: look inside the leg.')],
  asItIs: {
    misfit: [
      { point: 'waist', mm: inch(1.5), because: 'The waist is 1½ in too big.' },
      { point: 'inseam', mm: inch(1), because: 'The inside leg is 1 in too long.' }
    ],
    chance: 0.02
  },
  plans: [leastWork, closestFit, tailorPlan],
  notTaken: [],
  chance: 0.62,
  ask: [
    {
      point: 'hip',
      worth: 6.2,
      unit: 'money',
      question: 'Could you lay them flat and measure straight across the seat, 8 inches below the top of the band?'
    }
  ],
  worth: { spend: 29.9, against: 55, upTo: 41, risk: 33 },
  cautions: ['Treat for moths before it comes near other wool.', 'Old needle holes show where a seam is let out.'],
  issues: trousersReading.issues
}

export const leaveIt: Reckoning = {
  verdict: 'leave-it',
  cut: {},
  asFarAsTold: false,
  conditions: [],
  chanceIf: null,
  wearsAs: null,
  doubts: [],
  because: [
    reason('The shoulders are 1½ in too wide. Setting them in means taking the sleeves out and re-cutting; 1 in is the most that gives.')
  ],
  gaps: [
    gap('chest', inch(46), inch(0.6), [inch(41), inch(43), inch(45)]),
    gap('shoulderWidth', inch(20.25), inch(0.3), [inch(17.75), inch(18.25), inch(18.75)])
  ],
  conversions: [],
  untold: [],
  assumed: [],
  asItIs: {
    misfit: [
      { point: 'chest', mm: inch(1), because: 'The chest is 1 in too big.' },
      { point: 'shoulderWidth', mm: inch(1.5), because: 'The shoulders are 1½ in too wide.' }
    ],
    chance: 0
  },
  notTaken: [],
  plans: [
    {
      aim: 'least-work',
      alterations: [
        {
          id: 'sides-in',
          amountMm: inch(1),
          direction: 'less',
          amounts: { chest: -inch(1), waist: -inch(0.5), hem: -inch(0.5) },
          lines: [{ seam: 'side', offsetMm: inch(0.25) }],
          limitMm: 100,
          limitBecause: 'At most 4 in all, 2 in a side.',
          softLimit: false,
          rescue: false,
          withoutIt: [{ point: 'chest', mm: inch(1) }]
        }
      ],
      after: [
        { point: 'chest', mm: inch(45) },
        { point: 'shoulderWidth', mm: inch(20.25) }
      ],
      misfit: [{ point: 'shoulderWidth', mm: inch(1.5), because: 'The shoulders can give 1 in at most, and only by re-cutting.' }],
      chance: 0.05,
      level: 4,
      minutes: 60,
      cost: null
    }
  ],
  chance: 0.05,
  ask: [],
  worth: { spend: 44, against: 60, upTo: null, risk: null },
  cautions: [],
  issues: []
}

export const tooLittle: Reckoning = {
  verdict: 'too-little-told',
  cut: {},
  asFarAsTold: false,
  conditions: [],
  chanceIf: null,
  wearsAs: null,
  doubts: [],
  because: [reason('Only the inside leg and a size label are given. Without the waist, and the hip or the thigh, nothing can be judged.')],
  gaps: [gap('inseam', inch(30), inch(0.3), [inch(29), inch(29.5), inch(30)])],
  conversions: [],
  untold: [{ point: 'waist', band: { least: inch(28.75), ideal: inch(29.5), most: inch(30.5) } }],
  assumed: [],
  asItIs: { misfit: [], chance: null },
  plans: [],
  notTaken: [],
  chance: null,
  ask: [
    {
      point: 'waist',
      worth: 1,
      unit: 'score',
      question: 'Could you measure the waistband flat, side to side, and the thigh flat, just under the fork?'
    }
  ],
  worth: null,
  cautions: [],
  issues: []
}

export const wearsAsIs: Reckoning = {
  ...trousersReckoning,
  verdict: 'wears-as-is',
  cut: {},
  asFarAsTold: false,
  conditions: [],
  chanceIf: null,
  wearsAs: null,
  doubts: [],
  because: [reason('Every measure that was told is inside what you want.')],
  gaps: [
    gap('waist', inch(29.75), inch(0.2), [inch(28.75), inch(29.5), inch(30.5)]),
    gap('thigh', inch(25), inch(0.36), [inch(23), inch(24.25), inch(26)])
  ],
  asItIs: { misfit: [], chance: 0.84 },
  plans: [],
  notTaken: [],
  chance: 0.84,
  ask: [],
  cautions: []
}

export const trousersJudged: Judged = {
  title: 'Heavy grey twill trousers, pleated',
  site: 'second-rail.example',
  price: { amount: 24, currency: 'GBP' },
  place: 'here',
  problem: null,
  text: LISTING,
  textCutFrom: null,
  reading: trousersReading,
  answers: [],
  corrections: [],
  kind: 'trousers',
  kinds: GARMENT_KINDS,
  ...madeAs('trousers', trousersReading.made),
  cut: {},
  cutAsRead: {},
  reckoning: trousersReckoning,
  settled: true,
  wouldChange: [],
  aim: null,
  level: 3,
  tailor: { atHand: true, prices: {} },
  money: { price: null, postage: null, worth: null },
  notes: '',
  kept: null,
  canUndo: false,
  drafts: {}
}

/** What an untold point must be, as a clause of its own. */
export const condition = (point: PointId, least: number, most: number, text: string): ConditionShown => ({
  point,
  least: inch(least),
  most: inch(most),
  chance: 0.5,
  text
})
export const HIP = condition('hip', 39, 42, 'the hip, laid flat, is 19½ to 21 in')
export const THIGH = condition('thigh', 24, 27, 'the thigh, laid flat, is 12 to 13½ in')
export const INSEAM = condition('inseam', 29, 40, 'the inside leg is 29 to 40 in')
export const WAIST = condition('waist', 28, 34, 'the waist, laid flat, is 14 to 17 in')

const IF = 'It works out if'
/** The trousers, where what is not told decides. */
export const hangingOn = (...conditions: ConditionShown[]): Reckoning => ({
  ...trousersReckoning,
  asFarAsTold: true,
  conditions,
  chance: 0.62,
  chanceIf: 0.84,
  because: [
    ...trousersReckoning.because.slice(0, 1),
    { code: 'verdict.if', values: {}, text: `${IF} ${conditions.map(({ text }) => text).join(' and ')}.` },
    ...trousersReckoning.because.slice(1)
  ]
})
/** The same with points that were only worked out. */
export const muchWorkedOut = (reckoning: Reckoning): Reckoning => ({
  ...reckoning,
  gaps: [
    ...reckoning.gaps,
    gap('knee', inch(18), inch(1), [inch(14), inch(16), inch(20)], 'inferred'),
    gap('calf', inch(15), inch(1), [inch(15.5), inch(16), inch(20)], 'inferred'),
    gap('outseam', inch(41), inch(1), null, 'inferred')
  ]
})
