/** The table of verdicts, a case a row: each from a request whose figures leave no doubt which row it is. */
import { describe, expect, it } from 'vitest'
import type { GarmentInput, GarmentMeasure } from '../../../core/garment/garment-input.ts'
import { type ReckonRequest, reckon, type Verdict } from '../../../core/reckon.ts'
import { rowan } from '../../corpus/plans/wearers.ts'

const trousers = (waist: number, sdMm: number, more: Partial<GarmentInput> = {}): GarmentInput => ({
  kind: 'trousers',
  measures: (
    [
      ['waist', waist],
      ['hip', 1040],
      ['thigh', 628],
      ['inseam', 755]
    ] as const
  ).map(([point, mm]): GarmentMeasure => ({ point, mm, sdMm, source: 'seller' })),
  ...more
})
const without = (point: string, input: GarmentInput): GarmentInput => ({
  ...input,
  measures: input.measures.filter((one) => one.point !== point)
})
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
    ['the waist is not told', 'too-little-told', () => ask(without('waist', trousers(820, 2)), 3, false)],
    ['neither hip nor thigh is told', 'too-little-told', () => ask(without('hip', without('thigh', trousers(820, 2))), 3, false)],
    [
      'only a label tells the waist',
      'too-little-told',
      () =>
        ask(
          {
            ...without('waist', trousers(820, 2)),
            measures: [...without('waist', trousers(820, 2)).measures, { point: 'waist', mm: 820, source: 'label' }]
          },
          3,
          false
        )
    ],
    ['nothing lies outside', 'wears-as-is', () => ask(trousers(820, 2), 3, false)],
    ['nothing lies outside, protective', 'wears-as-is', () => ask(trousers(820, 2, { use: 'protective' }), 3, false)],
    ['protective and too big', 'leave-it', () => ask(trousers(895, 2, { use: 'protective' }), 5, true)],
    ['children’s sleepwear and too big', 'leave-it', () => ask(trousers(895, 2, { use: 'child-sleepwear' }), 5, true)],
    ['the own plan fits and is likely', 'alters-to-fit', () => ask(trousers(895, 2), 3, false)],
    ['too hard for oneself, a tailor at hand', 'needs-a-tailor', () => ask(trousers(895, 2), 1, true, NO_BUTTONS)],
    ['too hard for oneself and no tailor, far off', 'leave-it', () => ask(trousers(895, 2), 1, false, NO_BUTTONS)],
    ['too hard for oneself and no tailor, 14 off', 'comes-close', () => ask(trousers(859, 2), 1, false, NO_BUTTONS)],
    ['the plan fits but is not likely', 'comes-close', () => ask(trousers(880, 80), 3, false, {}, 'close')],
    ['a remainder of 16 is not close', 'leave-it', () => ask(trousers(861, 2), 1, false, NO_BUTTONS)]
  ]
  it.each(rows)('%s: %s', (_name, verdict, run) => {
    const reckoning = run()
    expect(reckoning.verdict, reckoning.because.map(({ text }) => text).join(' ')).toBe(verdict)
    if (verdict !== 'leave-it') expect(reckoning.because.length).toBeGreaterThan(0)
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
