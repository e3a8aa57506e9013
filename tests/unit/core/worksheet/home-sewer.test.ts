/** What whoever has only the paper would otherwise have to guess: which seams, measured from where, in which direction, how the ends are left. */
import { describe, expect, test } from 'vitest'
import { CATALOGUE } from '../../../../core/alterations/catalogue.ts'
import { garmentAsWorn } from '../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../../core/garment/garment-input.ts'
import { reckon } from '../../../../core/reckon.ts'
import type { Worksheet } from '../../../../core/worksheet/worksheet.ts'
import { figure, figures, has, sheetWith, stepThat } from './given.ts'

const of = (kind: GarmentInput['kind'], more: Partial<GarmentInput> = {}): GarmentInput => ({
  kind,
  measures: [{ point: 'waist', mm: 900, source: 'own' }],
  ...more
})
const cloth = (fibre: string, more: GarmentInput['cloth'] = {}): Partial<GarmentInput> => ({
  cloth: { fibres: [{ fibre, percent: 100 }], ...more }
})
const text = (sheet: Worksheet, does: string): string => stepThat(sheet, does).does.text
const at = (sheet: Worksheet, does: string): number => sheet.steps.indexOf(stepThat(sheet, does))
const minds = (sheet: Worksheet): string[] => sheet.steps.flatMap((step) => step.minds)

describe('a line is chalked from somewhere, in a direction, at every seam that moves', () => {
  test.each([
    [
      sheetWith(of('trousers'), [{ id: 'waist-in-centre-back', amountMm: 40 }]),
      'mark-line-in',
      /from the top edge.*away from the raw edge/
    ],
    [
      sheetWith(of('trousers'), [{ id: 'leg-taper', amountMm: { knee: 24, legOpening: 32 } }]),
      'mark-line-in-both',
      /inside leg seam.*side seam.*the crotch/
    ],
    [sheetWith(of('dress'), [{ id: 'sides-in', amountMm: { waist: 40, hip: 40 } }]), 'mark-line-in', /from the underarm/],
    [
      sheetWith(of('trousers', { made: { outletMm: 40 } }), [{ id: 'waist-out-centre-back', direction: 'more', amountMm: 20 }]),
      'mark-line-out',
      /towards the raw edge/
    ]
  ])('%#', (sheet, does, words) => {
    expect(text(sheet, does)).toMatch(words)
  })

  test('a line that comes back to the old seam runs along it; one that never does is sewn from edge to edge', () => {
    expect(has(sheetWith(of('trousers'), [{ id: 'waist-in-centre-back', amountMm: 40 }]), 'sew-line')).toBe(true)
    const beside = sheetWith(of('shirt'), [{ id: 'sides-in', amountMm: { chest: 16, waist: 48, hem: 40 } }])
    expect([has(beside, 'sew-line'), has(beside, 'sew-line-through')]).toEqual([false, true])
  })

  test('a side taken in at the chest of a jumper goes on into its sleeve', () => {
    const sheet = sheetWith(of('jumper', cloth('wool', { structure: 'knit' })), [
      { id: 'knit-take-in', amountMm: { chest: 60, waist: 60 } }
    ])
    expect(figures(sheet, 'run-into-sleeve', 'sleeve-down')[0]).toBe(15)
    expect(at(sheet, 'mark-line-in')).toBeLessThan(at(sheet, 'run-into-sleeve'))
  })
})

describe('in the right order', () => {
  test('pockets are measured before the band is off', () => {
    const sheet = sheetWith(of('trousers'), [{ id: 'waist-in-centre-back', amountMm: 40 }])
    expect(at(sheet, 'pockets-apart')).toBeLessThan(at(sheet, 'band-off'))
  })

  test('a felled seam is opened and pressed before anything is chalked, and trimmed by figures before it is felled', () => {
    const sheet = sheetWith(of('shirt'), [{ id: 'sides-in', amountMm: { chest: 16, waist: 48, hem: 40 } }])
    const order = ['fell-open', 'mark-line-in', 'run-into-sleeve', 'sew-line-through', 'fell-trim', 'fell-again']
    expect(order.map((does) => at(sheet, does))).toEqual(order.map((does) => at(sheet, does)).sort((a, b) => a - b))
    expect(stepThat(sheet, 'fell-trim').irreversible).toBe(true)
    expect(figure(sheet, 'fell-trim', 'fell-over')).toBeGreaterThan(figure(sheet, 'fell-trim', 'fell-under'))
  })

  test('a shirt’s curve is chalked on the hem pressed flat, and an opened hem is closed under its own heading', () => {
    const shirt = sheetWith(of('shirt'), [{ id: 'body-shorten', amountMm: 40 }])
    expect(at(shirt, 'press-open-flat')).toBeLessThan(at(shirt, 'tails-curved'))
    expect(has(sheetWith(of('knit-top'), [{ id: 'body-shorten', amountMm: 40 }]), 'check-pockets-and-buttons')).toBe(false)
    expect(stepThat(sheetWith(of('dress'), [{ id: 'sides-in', amountMm: { waist: 40, hip: 40 } }]), 'hem-again').part).toBe('hems')
  })
})

describe('how much, and which way', () => {
  test('a band is joined half of what is taken from its cut; at both sides a quarter at each end', () => {
    const back = sheetWith(of('trousers'), [{ id: 'waist-in-centre-back', amountMm: 40 }])
    expect([figure(back, 'band-cut', 'band-end'), figure(back, 'band-cut', 'seam-each')]).toEqual([20, 10])
    const sides = sheetWith(of('trousers'), [{ id: 'waist-in-side-seams', amountMm: 40 }])
    expect([has(sides, 'band-cut'), figure(sides, 'band-cut-sides', 'band-end')]).toEqual([false, 10])
  })

  test('a button moves in from its edge, or out towards it', () => {
    const coat = of('coat')
    expect(text(sheetWith(coat, [{ id: 'front-button-move', amountMm: 20 }]), 'mark-button-in')).toMatch(/away from the edge/)
    expect(text(sheetWith(coat, [{ id: 'front-button-move', direction: 'more', amountMm: 10 }]), 'mark-button-out')).toMatch(
      /nearer to the edge/
    )
  })

  test('a skirt is pinned up all round, a leg first on one side', () => {
    expect(has(sheetWith(of('skirt'), [{ id: 'skirt-shorten', amountMm: 60 }]), 'pin-hem-round')).toBe(true)
    expect(has(sheetWith(of('jeans'), [{ id: 'leg-shorten-keep-edge', amountMm: 60 }]), 'pin-length')).toBe(true)
  })

  test('an edge that is kept: folded at half, the old stitching brought up to the whole', () => {
    const sheet = sheetWith(of('jeans'), [{ id: 'leg-shorten-keep-edge', amountMm: 84 }])
    expect(stepThat(sheet, 'mark-fold').figures.map(({ is, mm }) => [is, mm])).toEqual([
      ['fold', 42],
      ['amount', 84]
    ])
    expect(text(sheet, 'pin-fold')).toMatch(/right side on right side.*second line/)
  })

  test('four darts are pinned as four, and their legs and the plan’s line are one figure: 56 ÷ 4 ÷ 2', () => {
    const skirt = of('skirt', { made: { backSeam: false } })
    const sheet = sheetWith(skirt, [{ id: 'waist-in-darts', amountMm: 56 }])
    expect(has(sheet, 'pin-back-darts-four')).toBe(true)
    expect(figure(sheet, 'mark-darts', 'dart-half')).toBe(7)
    const { plans } = reckon({
      garment: {
        kind: 'skirt',
        measures: [
          { point: 'waist', mm: 880, source: 'own' },
          { point: 'hip', mm: 1010, source: 'own' }
        ],
        made: { backSeam: false }
      },
      favourite: { kind: 'skirt', measures: [{ point: 'waist', mm: 824, source: 'own' }] },
      means: { level: 3, tailor: false }
    } as never)
    const job = plans.flatMap(({ alterations }) => alterations).find(({ id, amountMm }) => id === 'waist-in-darts' && amountMm > 40)
    expect(job?.lines[0]?.offsetMm).toBeCloseTo((job?.amountMm ?? Number.NaN) / 8, 3)
  })
})

describe('no more than the garment needs', () => {
  test('on arrival: one look, one cleaning, one caution for what may be found', () => {
    const shirt = sheetWith(of('shirt', cloth('cotton')), [{ id: 'sides-in', amountMm: { waist: 40 } }])
    expect(shirt.steps.filter(({ part }) => part === 'arrival')).toHaveLength(2)
    expect(stepThat(shirt, 'arrive-apart').minds).toEqual(['signs'])
  })

  test('wool is frozen or cleaned by its label, never at 60 °C; with moth it is frozen once', () => {
    const wool = sheetWith(of('trousers', cloth('wool')), [{ id: 'waist-in-centre-back', amountMm: 40 }])
    expect(text(wool, 'arrive-freeze')).toMatch(/^Never wash it at 60 °C.*label.*freeze/)
    const moth = sheetWith(of('trousers', { ...cloth('wool'), condition: [{ job: 'treat-pests' }] }), [])
    expect(moth.steps.filter(({ does }) => /−18/.test(does.text))).toHaveLength(1)
    // down is no wash at 60 °C either, whatever was found in it
    const down = sheetWith(of('coat', { ...cloth('down'), condition: [{ job: 'treat-pests' }] }), [])
    expect([has(down, 'mend-pests-hot'), has(down, 'mend-pests-frozen')]).toEqual([false, true])
  })

  test('a button needs no iron, no machine and no sample', () => {
    const sheet = sheetWith(of('coat'), [{ id: 'front-button-move', amountMm: 20 }])
    const things = [...sheet.gather.tools, ...sheet.gather.notions].map(({ thing }) => thing)
    expect(['iron', 'machine', 'machine-needle'].filter((one) => things.includes(one as never))).toEqual([])
    expect(sheet.steps.length).toBeLessThan(12)
  })

  test('a knitted jumper is steamed and dried flat, not pressed and hung', () => {
    const sheet = sheetWith(of('jumper', cloth('wool', { structure: 'knit' })), [{ id: 'knit-take-in', amountMm: 40 }])
    expect([has(sheet, 'ready-pressed'), has(sheet, 'finish-pressed')]).toEqual([false, false])
    expect(text(sheet, 'finish-steamed')).toMatch(/laid flat/)
    expect(minds(sheet)).toContain('iron-knit')
  })

  test('leather: clips instead of pins, ends knotted and not sewn back, no word of the iron but that there is none', () => {
    const sheet = sheetWith(of('skirt', { cloth: { structure: 'leather' } }), [{ id: 'skirt-sides-in', amountMm: { waist: 32, hip: 32 } }])
    expect(has(sheet, 'ready-clips')).toBe(true)
    expect(text(sheet, 'sew-line')).toMatch(/do not sew back/)
    expect(minds(sheet).filter((one) => one.startsWith('iron') || one === 'old-buttons')).toEqual(['iron-none'])
  })
})

test('a waist seam raised shortens the dress by as much: the bodice is cut, the skirt stays as long as it is (geometry)', () => {
  const row = CATALOGUE.find(({ id }) => id === 'dress-waist-raise')
  expect(row?.lines(garmentAsWorn(of('dress')))[0]?.effects).toEqual({ napeToWaist: -1, bodyLength: -1 })
})
