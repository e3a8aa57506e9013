/** Whole sheets: what is opened once for several jobs, the order of work, lines against a routine of their own, gathering, dockets, refusals. */
import { describe, expect, test } from 'vitest'
import type { GarmentInput } from '../../../../core/garment/garment-input.ts'
import type { Worksheet } from '../../../../core/worksheet/worksheet.ts'
import { worksheetFor } from '../../../../core/worksheet/worksheet.ts'
import { figure, figures, has, planWith, requestFor, sheetWith, stepThat } from './given.ts'

const trousers = (more: Partial<GarmentInput> = {}): GarmentInput => ({
  kind: 'trousers',
  measures: [
    { point: 'waist', mm: 900, source: 'own' },
    { point: 'hip', mm: 1060, source: 'own' },
    { point: 'inseam', mm: 800, source: 'own' }
  ],
  ...more
})
const at = (sheet: Worksheet, does: string): number => sheet.steps.indexOf(stepThat(sheet, does))

describe('several jobs at once', () => {
  const sheet = sheetWith(trousers(), [
    { id: 'leg-shorten-plain', amountMm: 50 },
    { id: 'leg-taper', amountMm: { knee: 24, legOpening: 32 } },
    { id: 'seat-in', amountMm: 20 },
    { id: 'waist-in-centre-back', amountMm: 40 },
    { id: 'waist-button-move', amountMm: 6 }
  ])

  test('waist, then seat and legs, then closures, then hems', () => {
    const order = ['mark-line-in', 'mark-seat-in', 'mark-button-in', 'mark-new-edge', 'finish-tried'].map((does) => at(sheet, does))
    expect(order).toEqual([...order].sort((a, b) => a - b))
    expect(sheet.parts.map(({ part }) => part)).toEqual(['arrival', 'ready', 'waist', 'legs', 'closures', 'hems', 'finish'])
    expect(sheet.parts[2]?.name).toBe('Waist')
  })

  test('the band is opened once before both jobs, and closed once behind both, after the seat seam', () => {
    expect(sheet.steps.filter(({ opens }) => opens === 'waistband')).toHaveLength(1)
    expect(sheet.steps.filter(({ closes }) => closes === 'waistband')).toHaveLength(1)
    expect(at(sheet, 'band-off')).toBeLessThan(at(sheet, 'mark-line-in'))
    expect(at(sheet, 'seat-on')).toBeLessThan(at(sheet, 'band-on'))
    // of two jobs that open the band at the back, the larger amount says how far: 2.5 × 40
    expect(figures(sheet, 'band-off', 'band-span')).toEqual([100])
    // the seat leaves the band as it is: 900 − 40
    expect(figure(sheet, 'band-cut', 'band-new')).toBe(860)
  })

  test('the hem is opened for the taper and not sewn on its old fold first, for it is shortened', () => {
    expect(has(sheet, 'hem-again')).toBe(false)
    expect(sheet.steps.filter(({ closes }) => closes === 'hem')).toHaveLength(1)
    expect(at(sheet, 'hem-off')).toBeLessThan(at(sheet, 'sew-hem-turned'))
  })

  test('a taper alone has its hem again, before what else is hemmed', () => {
    const alone = sheetWith(trousers(), [{ id: 'leg-taper', amountMm: { knee: 24, legOpening: 32 } }])
    expect(stepThat(alone, 'hem-again').closes).toBe('hem')
  })

  test('what is gathered is told once, with a substitute where a machine or a foot may be missing', () => {
    const all = [...sheet.gather.tools, ...sheet.gather.notions].map(({ thing }) => thing)
    expect(new Set(all).size).toBe(all.length)
    expect(sheet.gather.substitutes.find(({ thing }) => thing === 'overlocker')?.text).toMatch(/zigzag/)
    const zip = sheetWith({ kind: 'jeans', measures: [], condition: [{ job: 'replace-zip' }] }, [])
    expect(zip.gather.substitutes.find(({ thing }) => thing === 'zipper-foot')?.text).toMatch(/back-stitch/)
  })
})

/** Where a polyline stands at a depth: the general way, through any two spots. */
function onPolyline(spots: readonly (readonly [number, number])[], x: number): number {
  for (const [n, [x2, y2]] of spots.entries()) {
    const [x1, y1] = spots[n - 1] ?? [Number.NaN, Number.NaN]
    if (x >= x1 && x <= x2) return y1 + ((y2 - y1) * (x - x1)) / (x2 - x1)
  }
  throw new Error(`${x} lies beside the line`)
}
/** The taper by its slopes alone, integrated: even to two thirds, then falling evenly to nothing. */
function integrated(t: number, steps = 5_000): number {
  const area = (from: number): number => {
    const width = (1 - from) / steps
    let sum = 0
    for (let n = 0; n < steps; n++) {
      const u = from + (n + 0.5) * width
      sum += (u <= 2 / 3 ? 1 : 3 * (1 - u)) * width
    }
    return sum
  }
  return area(t) / area(0)
}

describe('lines to chalk', () => {
  test('a taper on the sheet, every 25 mm, is what its slopes leave', () => {
    const sheet = sheetWith(trousers({ made: { taperLengthMm: 230 } }), [{ id: 'waist-in-centre-back', amountMm: 36 }])
    const marks = stepThat(sheet, 'mark-line-in').figures.filter(({ is }) => is === 'down')
    expect(marks.map(({ values }) => values.at)).toEqual([0, 25, 50, 75, 100, 125, 150, 175, 200, 225, 230])
    for (const { mm, values } of marks) expect(mm).toBeCloseTo(18 * integrated(Number(values.at) / 230), 2)
  })

  test('a leg runs straight through thigh, knee and opening: 0.47 of 800 down is the knee', () => {
    const sheet = sheetWith(trousers(), [{ id: 'leg-taper', amountMm: { thigh: 8, knee: 24, legOpening: 32 } }])
    // around a leg over two seams: a quarter at each edge
    const spots = [
      [0, 2],
      [376, 6],
      [800, 8]
    ] as const
    // both seams of the leg move; a straight stretch is drawn with a ruler, so that few marks are told, the knee and the hem among them
    const marks = stepThat(sheet, 'mark-line-in-both').figures.filter(({ is }) => is === 'down')
    expect(marks.map(({ values }) => Number(values.at))).toEqual([0, 150, 300, 376, 450, 600, 750, 800])
    for (const { mm, values } of marks) expect(mm).toBeCloseTo(onPolyline(spots, Number(values.at)), 2)
  })

  test('where only the thigh is taken the line is back at the knee, and nothing is marked below', () => {
    const sheet = sheetWith(trousers(), [{ id: 'leg-taper', amountMm: { thigh: 20 } }])
    const marks = stepThat(sheet, 'mark-line-in-both').figures.filter(({ is }) => is === 'down')
    expect(Number(marks.at(-1)?.values.at)).toBeCloseTo(376, 6)
    for (const { mm, values } of marks) expect(mm).toBeCloseTo(5 * integrated(Number(values.at) / 376), 2)
  })

  test('sides of a top run through chest, waist and hem; what the chest takes runs out along the sleeve', () => {
    const shirt: GarmentInput = {
      kind: 'shirt',
      measures: [
        { point: 'napeToWaist', mm: 440, source: 'own' },
        { point: 'bodyLength', mm: 760, source: 'own' }
      ]
    }
    const sheet = sheetWith(shirt, [{ id: 'sides-in', amountMm: { chest: 16, waist: 48, hem: 40 } }])
    // 0.45 of 440 down to the waist, 760 − 0.55 × 440 down to the hem
    const spots = [
      [0, 4],
      [198, 12],
      [518, 10]
    ] as const
    for (const { mm, values } of stepThat(sheet, 'mark-line-in').figures) expect(mm).toBeCloseTo(onPolyline(spots, Number(values.at)), 2)
    const sleeve = figures(sheet, 'run-into-sleeve', 'sleeve-down')
    expect([sleeve[0], sleeve.at(-1)]).toEqual([4, 0])
  })

  test('legs of two lengths are each turned up by their own amount', () => {
    const plan = planWith(trousers(), [{ id: 'leg-shorten-plain', amountMm: 40 }])
    const [job] = plan.alterations
    if (job === undefined) throw new Error('no job')
    job.lines = [
      { seam: 'hem', side: 'left', offsetMm: 36 },
      { seam: 'hem', side: 'right', offsetMm: 44 }
    ]
    const sheet = worksheetFor(plan, requestFor(trousers()), 'A4', 'cm')
    const edges = stepThat(sheet, 'mark-new-edge').figures.filter(({ is }) => is === 'new-edge')
    expect(edges.map(({ mm, name }) => [mm, name])).toEqual([
      [36, 'New edge above the old one, left'],
      [44, 'New edge above the old one, right']
    ])
  })
})

describe('what the garment asks for', () => {
  test('jeans: the felled back seam is opened before the line is marked and felled again; the button is hammered', () => {
    const jeans: GarmentInput = { ...trousers(), kind: 'jeans' }
    const sheet = sheetWith(jeans, [
      { id: 'waist-in-centre-back', amountMm: 30 },
      { id: 'waist-button-move', amountMm: 8 }
    ])
    expect(at(sheet, 'fell-open')).toBeLessThan(at(sheet, 'mark-line-in'))
    expect(at(sheet, 'sew-line')).toBeLessThan(at(sheet, 'fell-again'))
    expect(has(sheet, 'hammered-on')).toBe(true)
    expect(has(sheet, 'shank-wound')).toBe(false)
  })

  test('a skirt with a zip in the back seam: out before, in again behind', () => {
    const skirt: GarmentInput = {
      kind: 'skirt',
      measures: [{ point: 'waist', mm: 800, source: 'own' }],
      made: { backSeam: true },
      cut: { closing: 'back-zip' }
    }
    const sheet = sheetWith(skirt, [{ id: 'waist-in-centre-back', amountMm: 30 }])
    expect(at(sheet, 'zip-out')).toBeLessThan(at(sheet, 'sew-line'))
    expect(at(sheet, 'sew-line')).toBeLessThan(at(sheet, 'zip-in'))
  })

  test('leather is clipped, glued and never ironed', () => {
    const leather: GarmentInput = {
      kind: 'jacket',
      measures: [{ point: 'waist', mm: 1000, source: 'own' }],
      cloth: { structure: 'leather' }
    }
    const sheet = sheetWith(leather, [{ id: 'sides-in', amountMm: { waist: 30 } }])
    const all = [...sheet.gather.tools, ...sheet.gather.notions].map(({ thing }) => thing)
    expect(all).toContain('clips')
    expect(all).not.toContain('pins')
    expect(all).not.toContain('iron')
    expect(has(sheet, 'glue-seam')).toBe(true)
    expect(has(sheet, 'baste')).toBe(false)
  })

  test('synthetics are warned of the iron, and a child’s clothes of cords and buttons', () => {
    const nylon: GarmentInput = { ...trousers(), cloth: { fibres: [{ fibre: 'polyamide', percent: 100 }] }, use: 'child' }
    const minds = sheetWith(nylon, [{ id: 'leg-taper', amountMm: { knee: 24 } }]).steps.flatMap((step) => step.minds)
    expect(minds).toContain('iron-cool')
    expect(minds).toContain('child')
  })

  test('mending alone has steps, and no last fitting', () => {
    const sheet = sheetWith({ ...trousers(), condition: [{ job: 'darn' }, { job: 'treat-pests' }] }, [], { level: 0 })
    expect(sheet.steps.filter(({ condition }) => condition !== null).map(({ condition }) => condition)).toContain('treat-pests')
    expect(has(sheet, 'finish-tried')).toBe(false)
    expect(at(sheet, 'mend-pests-bagged')).toBeLessThan(at(sheet, 'mend-darn-laid'))
  })

  test('inches are said in inches', () => {
    const text = sheetWith(trousers(), [{ id: 'leg-shorten-plain', amountMm: 50.8 }], {}, 'in').steps.map(({ does }) => does.text)
    expect(text.some((one) => one.includes('2 in'))).toBe(true)
    expect(text.join(' ')).not.toMatch(/\d cm\b/)
  })
})

describe('dockets and refusals', () => {
  test('level 4 gives a docket: what is asked, figures, what is looked at on collection', () => {
    const plan = planWith(trousers(), [{ id: 'waist-in-centre-back', amountMm: 40 }], { level: 4, after: [{ point: 'waist', mm: 860 }] })
    const { docket } = worksheetFor(plan, requestFor(trousers()), 'A4', 'cm')
    expect(docket?.asks.map(({ asked }) => asked.text)).toEqual(['Take 4 cm out of the waist at the centre back'])
    expect(docket?.asks[0]?.figures.map(({ is, mm }) => [is, mm])).toEqual([['docket-less', 40]])
    expect(docket?.onCollection.figures.map(({ mm, name }) => [mm, name])).toEqual([[860, 'Measures afterwards: waist']])
    expect(docket?.onCollection.look.length).toBeGreaterThan(3)
    expect(sheetWith(trousers(), [{ id: 'waist-in-centre-back', amountMm: 40 }]).docket).toBeNull()
  })

  test.each(['protective', 'child-sleepwear', 'medical-compression'] as const)('%s has no sheet, and the reason', (use) => {
    const sheet = sheetWith({ ...trousers(), use }, [{ id: 'leg-shorten-plain', amountMm: 30 }])
    expect(sheet.refused?.text).toMatch(/^No sheet is made/)
    expect([sheet.steps, sheet.parts, sheet.docket]).toEqual([[], [], null])
  })
})
