/** A solved problem as a plan: amounts that were chosen by hand, and all that is said of them. */
import { describe, expect, it } from 'vitest'
import type { Option } from '../../../../core/alterations/row.ts'
import { garmentAsWorn } from '../../../../core/garment/garment-as-worn.ts'
import type { Plan } from '../../../../core/plan/plan.ts'
import { type PlanContext, planFrom } from '../../../../core/plan/plan-from.ts'
import { problemFor } from '../../../../core/plan/solve/problem.ts'
import type { Gap } from '../../../../core/wearer/gaps.ts'
import type { Want } from '../../../../core/wearer/want.ts'
import { garment } from '../../../corpus/plans/plan-case.ts'
import { besideBand } from './beside.ts'
import { line, option } from './options.ts'

const input = garment('trousers', { waist: 860, hip: 1000 })
const BIG = besideBand('waist', 860, 800, 820)
const centreBack = (capMm = 60, more: Partial<Option> = {}) =>
  option('waist-in-centre-back', [line({ waist: -1, hip: -0.5 }, capMm)], { per25Minutes: 5, ...more })

interface Asked extends Partial<PlanContext> {
  aim?: Plan['aim']
  /** Those that the plan was solved with. */
  mine?: Option[]
}
function plan(amounts: number[][], { aim = 'least-work', mine = [centreBack()], ...more }: Asked = {}): Plan {
  const context: PlanContext = {
    garment: garmentAsWorn(input),
    input,
    gaps: [BIG, besideBand('hip', 1000, 980, 1020)],
    means: { level: 3, tailor: false },
    options: mine,
    refusals: [],
    wording: { units: 'cm' },
    ...more
  }
  return planFrom(aim, problemFor(aim, context.gaps, mine, context.options, context.means.markMm ?? 2, 1), amounts, context)
}
const why = (amounts: number[][], asked: Asked): string | undefined => plan(amounts, asked).misfit[0]?.because

describe('a plan', () => {
  it('says what is done, how far each seam moves, what stays wrong and what it takes', () => {
    expect(plan([[30]])).toEqual({
      aim: 'least-work',
      alterations: [
        {
          id: 'waist-in-centre-back',
          amountMm: 30,
          direction: 'less',
          amounts: { waist: -30 },
          lines: [{ seam: 'side', offsetMm: 15 }],
          limitMm: 60,
          limitBecause: expect.any(String),
          softLimit: false,
          rescue: false,
          withoutIt: [{ point: 'waist', mm: 40 }]
        }
      ],
      after: [
        { point: 'waist', mm: 830 },
        { point: 'hip', mm: 985 }
      ],
      misfit: [{ point: 'waist', mm: 10, because: 'The waist is 4 cm too big; mending it there would spoil another measure.' }],
      chance: null,
      level: 2,
      // ten to set it up, five for each 25
      minutes: 16,
      cost: null
    })
  })

  it('of nothing used is empty, and says where the garment is', () => {
    expect(plan([[0]])).toMatchObject({ alterations: [], level: 0, minutes: 0, cost: 0, after: [{ mm: 860 }, { mm: 1000 }] })
  })

  it('leaves out what is not stated, and what lies less than a millimetre outside', () => {
    const gaps = [besideBand('waist', 820.9, 800, 820), besideBand('hip', 1000, 980, 1020, { from: 'inferred', judged: false })]
    expect(plan([[0]], { gaps })).toMatchObject({ misfit: [], after: [{ point: 'waist', mm: 820.9 }] })
    expect(plan([[0]], { gaps: [besideBand('waist', 821, 800, 820)] }).misfit).toMatchObject([{ point: 'waist', mm: 1 }])
  })

  it('has its jobs in the order of the work: the waist before the legs, whatever they are called', () => {
    const mine = [option('leg-taper', [line({ knee: -1 }, 40)]), centreBack()]
    expect(plan([[20], [10]], { mine }).alterations.map(({ id }) => id)).toEqual(['waist-in-centre-back', 'leg-taper'])
  })

  it('past a tier is harder and takes longer, up to it not', () => {
    const because = { code: 'limit.sides', values: {} }
    const mine = [centreBack(60, { tier: { line: 0, beyondMm: 20, level: 4, minutes: 15, because } })]
    expect(plan([[30]], { mine })).toMatchObject({ level: 4, minutes: 31 })
    expect(plan([[20]], { mine })).toMatchObject({ level: 2, minutes: 14 })
    expect(plan([[30]], { mine: mine.map((one) => ({ ...one, level: 5 as const })) }).level).toBe(5)
  })

  it('takes the time of its largest amount, and says each point’s own', () => {
    const sides = option('waist-in-side-seams', [line({ waist: -1 }, 40, 4), { ...line({ hip: -1 }, 40, 4), point: 'hip' }], {
      per25Minutes: 5
    })
    const [job] = plan([[10, 30]], { mine: [sides] }).alterations
    expect(job).toMatchObject({ amountMm: 30, amounts: { waist: -10, hip: -30 }, lines: [{ seam: 'side', offsetMm: 7.5 }] })
    expect(plan([[10, 30]], { mine: [sides] }).minutes).toBe(16)
    expect(plan([[0, 30]], { mine: [sides] }).alterations[0]?.amounts).toEqual({ hip: -30 })
  })

  it('past a soft limit says so, by more than a millimetre', () => {
    const soft = [option('waist-in-centre-back', [{ ...line({ waist: -1 }, 60), softMm: 25 }])]
    expect(plan([[30]], { mine: soft }).alterations[0]?.softLimit).toBe(true)
    expect(plan([[26]], { mine: soft }).alterations[0]?.softLimit).toBe(false)
  })

  it('moves each side by itself where they differ: the other by so much less', () => {
    const sides = { left: 840, right: 860 }
    const worn = garmentAsWorn(input)
    const apart = { ...worn, points: new Map([...worn.points, ['waist', { mm: 850, sdMm: 5, from: 'own', sides }] as const]) }
    expect(plan([[30]], { garment: apart }).alterations[0]?.lines).toEqual([
      { seam: 'side', side: 'left', offsetMm: 5 },
      { seam: 'side', side: 'right', offsetMm: 15 }
    ])
    expect(plan([[10]], { garment: apart }).alterations[0]?.lines[0]).toEqual({ seam: 'side', side: 'left', offsetMm: 0 })
    const out = [option('waist-out-centre-back', [line({ waist: 1 }, 60)], { key: 'waist-out-centre-back/more', direction: 'more' })]
    const small = [besideBand('waist', 840, 880, 900)]
    expect(plan([[30]], { garment: apart, mine: out, gaps: small }).alterations[0]?.lines).toEqual([
      { seam: 'side', side: 'left', offsetMm: 15 },
      { seam: 'side', side: 'right', offsetMm: 5 }
    ])
  })

  it('without a job another may become worse than it is: only that is said', () => {
    const mine = [option('waist-in-centre-back', [line({ waist: -1 }, 60)]), option('waist-in-side-seams', [line({ hip: -1 }, 60)])]
    expect(plan([[30], [10]], { mine }).alterations.map(({ id, withoutIt }) => [id, withoutIt])).toEqual([
      ['waist-in-centre-back', [{ point: 'waist', mm: 40 }]],
      ['waist-in-side-seams', []]
    ])
  })
})

describe('what it costs', () => {
  const priced = (means: PlanContext['means'], more: Asked = {}) => plan([[30]], { means, ...more })
  it('notions and own hours; a tailor’s prices; null where one is missing', () => {
    const own = { level: 3 as const, tailor: false }
    expect(priced({ ...own, hourWorth: 15 }).cost).toBe(4)
    expect(priced({ ...own, hourWorth: 15, notions: { 'waist-in-centre-back': 1.5, 'leg-taper': 9 } }).cost).toBe(5.5)
    expect(priced(own).cost).toBeNull()
    expect(priced({ ...own, hourWorth: 15 }, { aim: 'tailor' }).cost).toBeNull()
    expect(priced({ ...own, tailorPrices: { 'waist-in-centre-back': 18 } }, { aim: 'tailor' }).cost).toBe(18)
    expect(priced({ ...own, tailorPrices: { 'leg-taper': 18 } }, { aim: 'tailor' }).cost).toBeNull()
  })
  it('one’s own pace counts for oneself, not for a tailor; mending is added as it is', () => {
    const mended = { ...input, condition: [{ job: 'replace-button' as const, minutes: 30, cost: 2 }] }
    const means = { level: 3 as const, tailor: false, pace: 2, hourWorth: 30 }
    expect(priced(means)).toMatchObject({ minutes: 32, cost: 16 })
    expect(priced(means, { input: mended })).toMatchObject({ minutes: 62, cost: 33 })
    const prices = { tailorPrices: { 'waist-in-centre-back': 18 } }
    expect(priced({ ...means, ...prices }, { aim: 'tailor', input: mended })).toMatchObject({ minutes: 46, cost: 20 })
  })
})

describe('why something stays wrong', () => {
  const harder = centreBack(60, { level: 4 })
  const small = besideBand('waist', 760, 800, 820)
  const holes = [{ id: 'waist-out-centre-back' as const, direction: 'more' as const, because: { code: 'limit.needle-holes', values: {} } }]
  it.each<[string, string, number[][], Asked]>([
    ['a mark', 'The waist is off by less than', [[38]], {}],
    ['what the seams hold', 'The waist is 4 cm too big; only 3 cm can come out.', [[30]], { mine: [centreBack(30)] }],
    ['it would spoil another', 'The waist is 4 cm too big; mending it there would spoil another measure.', [[30]], {}],
    [
      'as much as is needed, and no more',
      'The waist is 4 cm too big; mending it there would spoil another measure.',
      [[30]],
      { mine: [centreBack(40)] }
    ],
    ['too hard, the easiest of them', 'level 4 work', [], { mine: [], options: [centreBack(60, { level: 5 }), harder] }],
    ['nothing there', 'nothing there can be', [], { mine: [], options: [] }],
    ['what only moves it a little', 'nothing there can be', [[0]], { mine: [option('leg-taper', [line({ waist: -0.24 }, 60)])] }],
    [
      'what moves it by a quarter',
      'The waist is 4 cm too big; only 1.5 cm',
      [[0]],
      { mine: [option('leg-taper', [line({ waist: -0.25 }, 60)])] }
    ],
    ['what moves it the other way', 'nothing there can be', [[0]], { gaps: [small] }],
    [
      'cloth that keeps its needle holes',
      'this cloth keeps its needle holes',
      [],
      { mine: [], options: [], gaps: [small], refusals: holes }
    ],
    ['too big, whatever the cloth keeps', 'nothing there can be', [], { mine: [], options: [], refusals: holes }],
    [
      'another refusal',
      'nothing there can be',
      [],
      { mine: [], options: [], gaps: [small], refusals: holes.map((one) => ({ ...one, because: { code: 'limit.sides', values: {} } })) }
    ],
    [
      'the body does not pass',
      'won’t go through 76 cm; it needs about 80 cm.',
      [],
      { mine: [], options: [], gaps: [{ ...small, bound: 800, want: { from: 'bound', measure: 'hipGirth' } as Want }] }
    ],
    [
      'a bound under what is liked',
      'nothing there can be',
      [],
      { mine: [], options: [], gaps: [{ ...small, bound: 790, want: { from: 'body', measure: 'hipGirth' } as Want }] }
    ],
    [
      'too big, whatever must pass',
      'nothing there can be',
      [],
      { mine: [], options: [], gaps: [{ ...BIG, bound: 700, want: { from: 'bound', measure: 'hipGirth' } as Want } satisfies Gap] }
    ]
  ])('%s', (_, said, amounts, asked) => expect(why(amounts, asked)).toContain(said))

  it('a point that a job put out is off by what it is now', () => {
    const gaps = [BIG, besideBand('hip', 982, 980, 1020)]
    expect(plan([[40]], { gaps }).misfit).toMatchObject([{ point: 'hip', mm: -18, because: expect.stringContaining('1.8 cm too small') }])
  })
})
