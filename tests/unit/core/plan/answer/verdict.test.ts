/** The table of verdicts, a case a row: each from a request whose figures leave no doubt which row it is. */
import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput, GarmentMeasure } from '../../../../../core/garment/garment-input.ts'
import { judge } from '../../../../../core/plan/answer/verdict.ts'
import type { Plan } from '../../../../../core/plan/plan.ts'
import { MOST_RESCUED_MM, type Plans } from '../../../../../core/plan/plan-alterations.ts'
import { type ReckonRequest, reckon, type Verdict } from '../../../../../core/reckon.ts'
import { type Gap, gapsBetween } from '../../../../../core/wearer/gaps.ts'
import { targetFor } from '../../../../../core/wearer/target.ts'
import { rowan } from '../../../../corpus/plans/wearers.ts'

const trousers = (waist: number, sdMm: number, more: Partial<GarmentInput> = {}, hip = 1040): GarmentInput => ({
  kind: 'trousers',
  measures: (
    [
      ['waist', waist],
      ['hip', hip],
      ['thigh', 628],
      ['inseam', 755]
    ] as const
  ).map(([point, mm]): GarmentMeasure => ({ point, mm, sdMm, source: 'seller' })),
  ...more
})
const measured = (input: GarmentInput, source: GarmentMeasure['source']): GarmentInput => ({
  ...input,
  measures: input.measures.map((one) => ({ ...one, source }))
})
const without = (point: string, input: GarmentInput): GarmentInput => ({
  ...input,
  measures: input.measures.filter((one) => one.point !== point)
})
const lengthOnly = without('waist', without('hip', without('thigh', trousers(820, 2))))
const ask = (
  garment: GarmentInput,
  level: 1 | 2 | 3 | 4 | 5,
  tailor: boolean,
  limits: ReckonRequest['limits'] = {},
  fit: 'close' | 'regular' = 'regular'
) => reckon({ garment, wearer: { ...rowan, fit }, means: { level, tailor }, limits })
const NO_BUTTONS = { 'waist-button-move': 0, 'waist-in-elastic': 0 } as const

describe('the verdict table', () => {
  const rows: [string, Verdict, () => ReturnType<typeof reckon>][] = [
    ['no girth of the legs or seat is told', 'too-little-told', () => ask(lengthOnly, 3, false)],
    [
      'a label alone tells the waist',
      'too-little-told',
      () => ask({ ...lengthOnly, measures: [...lengthOnly.measures, { point: 'waist', mm: 820, source: 'label' }] }, 3, false)
    ],
    ['the waist is not told: as far as told', 'wears-as-is', () => ask(without('waist', trousers(820, 2)), 3, false)],
    ['the waist alone is told: as far as told', 'wears-as-is', () => ask(without('hip', without('thigh', trousers(820, 2))), 3, false)],
    ['nothing lies outside', 'wears-as-is', () => ask(trousers(820, 2), 3, false)],
    ['nothing lies outside, protective', 'wears-as-is', () => ask(trousers(820, 2, { use: 'protective' }), 3, false)],
    ['protective and too big', 'leave-it', () => ask(trousers(895, 2, { use: 'protective' }), 5, true)],
    ['children’s sleepwear and too big', 'leave-it', () => ask(trousers(895, 2, { use: 'child-sleepwear' }), 5, true)],
    ['the own plan fits and is likely', 'alters-to-fit', () => ask(trousers(895, 2), 3, false)],
    ['too hard for oneself, a tailor at hand', 'needs-a-tailor', () => ask(trousers(895, 2), 1, true, NO_BUTTONS)],
    ['too hard for oneself and no tailor, far off', 'leave-it', () => ask(trousers(895, 2), 1, false, NO_BUTTONS)],
    ['too hard for oneself and no tailor, 14 off', 'comes-close', () => ask(trousers(859, 2), 1, false, NO_BUTTONS)],
    ['the plan fits but is not likely', 'comes-close', () => ask(trousers(880, 200), 3, false, {}, 'close')],
    ['a waist so odd beside the hips that it is likelier a slip than not', 'too-little-told', () => ask(trousers(340, 10), 3, false)],
    ['the same, measured by oneself', 'leave-it', () => ask(measured(trousers(340, 10), 'own'), 3, false)],
    ['the same, and hips that are too wide too', 'leave-it', () => ask(trousers(340, 10, {}, 1130), 3, false)],
    ['a small waist, and no odd one', 'leave-it', () => ask(trousers(640, 10), 3, false)],
    ['a remainder of 16 is not close', 'leave-it', () => ask(trousers(861, 2), 1, false, NO_BUTTONS)]
  ]
  it.each(rows)('%s: %s', (_name, verdict, run) => {
    const reckoning = run()
    expect(reckoning.verdict, reckoning.because.map(({ text }) => text).join(' ')).toBe(verdict)
    if (verdict !== 'leave-it') expect(reckoning.because.length).toBeGreaterThan(0)
  })
  it('says that it is as far as told where something that decides is not told, and names it', () => {
    const reckoning = ask(without('waist', trousers(820, 2)), 3, false)
    expect(reckoning.asFarAsTold).toBe(true)
    expect(reckoning.because.map(({ code }) => code)).toContain('verdict.if')
    expect(reckoning.conditions.map(({ point }) => point)).toContain('waist')
    expect(ask(trousers(820, 2), 3, false).asFarAsTold).toBe(false)
  })
  it('says which figure may be a slip, and asks for it first', () => {
    const { because, ask: asks, plans, chance } = ask(trousers(340, 10), 3, false)
    expect(because.map(({ code, point, values }) => [code, point, values.mm])).toEqual([['verdict.may-be-a-slip', 'waist', 340]])
    expect(asks[0]).toMatchObject({ point: 'waist', why: 'Is the waist right as it is stated? It is all that stands in the way.' })
    expect([plans, chance]).toEqual([[], null])
  })
  it('never a job on what is never altered', () => {
    for (const use of ['protective', 'child-sleepwear', 'medical-compression'] as const)
      expect(ask(trousers(895, 2, { use }), 5, true).plans).toEqual([])
  })
  it('without outlook every chance is null, nothing is asked, and the verdict says that it is provisional', () => {
    const reckoning = reckon({ garment: trousers(895, 80), wearer: rowan, means: { level: 3, tailor: false } }, { outlook: false })
    expect(reckoning.chance).toBeNull()
    expect(reckoning.plans.every(({ chance }) => chance === null)).toBe(true)
    expect(reckoning.ask).toEqual([])
    expect(reckoning.because.map(({ code }) => code)).toContain('verdict.provisional')
  })
})

describe('the best of one’s own plans', () => {
  const plan = (aim: Plan['aim'], ...wrong: number[]): Plan => ({
    aim,
    alterations: [],
    after: [],
    misfit: wrong.map((mm) => ({ point: 'waist', mm, because: 'so it is' })),
    chance: null,
    level: 2,
    minutes: 30,
    cost: null
  })
  const rescued = (mm: number) => ({ rescue: true, withoutIt: [{ point: 'waist', mm }] }) as unknown as Plan['alterations'][number]
  const rescueOf = (...alterations: Plan['alterations']): Plan => ({ ...plan('closest-fit'), alterations })
  const plans = (rescue?: Plan, tailor?: Plan): Plans => ({ own: [plan('least-work', 70)], rescue, tailor })
  const judged = (own: Plan[], tailor?: Plan, change: (gap: Gap) => Gap = (same) => same) => {
    const garment = garmentAsWorn(trousers(895, 2))
    const gaps = gapsBetween(garment, targetFor(garment, rowan)).map(change)
    return judge({
      garment,
      gaps,
      plans: { own, rescue: undefined, tailor },
      wearsAs: () => null,
      chanceIf: () => ({ own: null, tailor: null }),
      means: { level: 3, tailor: true },
      markMm: 2,
      chance: { own: null, tailor: null }
    })
  }
  it('is the one that fits, where the least work does not', () => {
    const [least, closest] = [plan('least-work', 4), plan('closest-fit', 1)]
    expect(judged([least, closest])).toEqual({ verdict: 'alters-to-fit', advised: closest })
  })
  it('is the least work where both fit, and where neither leaves less by more than a mark', () => {
    const fits = [plan('least-work', 2), plan('closest-fit', 0)]
    expect(judged(fits).advised).toBe(fits[0])
    const close = [plan('least-work', 10), plan('closest-fit', 8.5)]
    expect(judged(close)).toEqual({ verdict: 'comes-close', advised: close[0] })
  })
  it('is the closest where it leaves less by more than a mark', () => {
    const far = [plan('least-work', 10), plan('closest-fit', 7)]
    expect(judged(far)).toEqual({ verdict: 'comes-close', advised: far[1] })
  })
  it.each([
    ['a girth 15 off', [{ point: 'waist', mm: -15 }], {}, 'comes-close'],
    ['a girth 16 off', [{ point: 'waist', mm: -16 }], {}, 'leave-it'],
    ['a length 25 off', [{ point: 'inseam', mm: 25 }], {}, 'comes-close'],
    ['a length 26 off', [{ point: 'inseam', mm: 26 }], {}, 'leave-it'],
    [
      'a girth and a length, each close enough',
      [
        { point: 'waist', mm: 15 },
        { point: 'inseam', mm: -25 }
      ],
      {},
      'comes-close'
    ],
    [
      'one close and one too far',
      [
        { point: 'waist', mm: 15 },
        { point: 'hip', mm: -16 }
      ],
      {},
      'leave-it'
    ],
    // pulled-up shoulders show, however little
    ['shoulders 8 off', [{ point: 'shoulderWidth', mm: 8 }], {}, 'leave-it'],
    ['work for the best hands', [{ point: 'waist', mm: -15 }], { level: 5 }, 'leave-it'],
    ['work a level below that', [{ point: 'waist', mm: -15 }], { level: 4 }, 'comes-close'],
    ['smaller than the body passes', [{ point: 'waist', mm: -10 }], { after: [{ point: 'waist', mm: 789 }] }, 'leave-it'],
    ['as small as the body passes', [{ point: 'waist', mm: -10 }], { after: [{ point: 'waist', mm: 790 }] }, 'comes-close'],
    ['another point, smaller than that', [{ point: 'waist', mm: -10 }], { after: [{ point: 'hip', mm: 700 }] }, 'comes-close']
  ] as [string, Plan['misfit'], Partial<Plan>, Verdict][])('what is left comes close: %s', (_, misfit, more, verdict) => {
    const left = { ...plan('least-work'), misfit, ...more }
    expect(judged([left], undefined, (gap) => (gap.point === 'waist' ? { ...gap, bound: 790 } : gap)).verdict).toBe(verdict)
  })
  it.each<[string, Partial<Parameters<typeof judge>[0]>, Verdict, 'own' | 'tailor' | 'rescue' | 'none']>([
    ['one small rescue', { plans: plans(rescueOf(rescued(20))) }, 'comes-close', 'rescue'],
    ['a rescue as large as may be', { plans: plans(rescueOf(rescued(-MOST_RESCUED_MM))) }, 'comes-close', 'rescue'],
    ['a rescue that brings more', { plans: plans(rescueOf(rescued(MOST_RESCUED_MM + 1))) }, 'leave-it', 'own'],
    ['two rescues', { plans: plans(rescueOf(rescued(10), rescued(10))) }, 'leave-it', 'own'],
    ['a plan of last resort with no rescue', { plans: plans(rescueOf({ ...rescued(10), rescue: false })) }, 'leave-it', 'own'],
    ['another fit in which it lies whole', { wearsAs: () => 'loose' }, 'comes-close', 'own'],
    ['more likely than not, all the same', { chance: { own: 0.55, tailor: null } }, 'comes-close', 'own'],
    ['as likely as not', { chance: { own: 0.54, tailor: null } }, 'leave-it', 'own'],
    ['a tailor at hand, whose chance it is', { chance: { own: 0.9, tailor: 0.1 } }, 'leave-it', 'own'],
    ['a tailor at hand, likely', { chance: { own: 0.1, tailor: 0.6 } }, 'comes-close', 'own'],
    ['a tailor whose plan fits', { plans: plans(undefined, plan('tailor', 1)) }, 'needs-a-tailor', 'tailor'],
    [
      'a tailor whose plan fits, and no tailor at hand',
      { plans: plans(undefined, plan('tailor', 1)), means: { level: 3, tailor: false } },
      'leave-it',
      'own'
    ],
    [
      'a tailor whose plan fits and is not likely',
      { plans: plans(undefined, plan('tailor', 1)), chance: { own: 0.1, tailor: 0.4 }, chanceIf: () => ({ own: 0.1, tailor: 0.44 }) },
      'comes-close',
      'tailor'
    ],
    [
      'a tailor whose plan is likely if what is not told suits',
      { plans: plans(undefined, plan('tailor', 1)), chance: { own: 0.1, tailor: 0.4 }, chanceIf: () => ({ own: 0.1, tailor: 0.45 }) },
      'needs-a-tailor',
      'tailor'
    ]
  ])('what is left is far off: %s', (_, more, verdict, advised) => {
    const garment = garmentAsWorn(trousers(895, 2))
    const given = {
      garment,
      gaps: gapsBetween(garment, targetFor(garment, rowan)),
      plans: plans(),
      wearsAs: () => null,
      chanceIf: () => ({ own: null, tailor: null }),
      means: { level: 3 as const, tailor: true },
      markMm: 2,
      chance: { own: 0.1, tailor: null },
      ...more
    }
    const found = judge(given)
    const { own, tailor, rescue } = given.plans
    expect(found.verdict).toBe(verdict)
    expect(found.advised).toBe({ own: own[0], tailor, rescue, none: undefined }[advised])
  })
  it('stands before a tailor’s that leaves as little', () => {
    const [least, closest] = [plan('least-work', 9), plan('closest-fit', 1)]
    expect(judged([least, closest], plan('tailor', 0)).advised).toBe(closest)
  })
})
