/**
 * Worked examples from handbooks, columns and extension texts. Each row names its source: CWU17 Central Washington Univ. costume text
 * ch. 17 · KIM, SG8 alteration columns · CORSET a pattern-calculation tutorial · CB-TR a seamstress's note on the centre back trouser
 * seam, 2013 · TONGA a newspaper sewing column, 2005 · OH-INS, OH-MAG, OH-LB original-hem tutorials · DARTE a tutorial on shirt darts ·
 * FYG a note on sleeve buttonholes · ISO 5077 shrinkage · ASTM D3107 growth · STRETCHF a stretch formula with examples ·
 * TM8400-182 US Army TM 10-8400-201-23 p. 182 · DUFFY a tailor's note on measuring trousers. "geometry": computed here by hand.
 */
import { describe, expect, it } from 'vitest'
import { alterationsFor } from '../../core/alterations/alterations-for.ts'
import { edgeFold, letOutHolds, slopeBetween } from '../../core/alterations/geometry.ts'
import { taperShare } from '../../core/alterations/taper.ts'
import { clothTaken, wornChange } from '../../core/garment/cloth.ts'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../core/garment/garment-input.ts'
import { toMm } from '../../core/length.ts'
import { reckon } from '../../core/reckon.ts'
import { easeFor } from '../../core/wearer/ease.ts'

const inch = (value: number): number => toMm(value, 'in')

/** What a stitching line's mm come to in a girth, over so many seams, as the tables of alterations have it. */
function perOffset(seams: number): number {
  const trousers = garmentAsWorn({ kind: 'trousers', measures: [{ point: 'waist', mm: 900, source: 'own' }] })
  const id = seams === 2 ? 'waist-in-side-seams' : 'waist-in-centre-back'
  const line = alterationsFor(trousers).options.find((option) => option.id === id)?.lines[0]
  return line?.seams[0]?.mmPerOffset ?? Number.NaN
}

/** `digits` is how exactly the source states its result. */
const rows: { name: string; source: string; computed: number; stated: number; digits: number }[] = [
  { name: 'split over two side seams, 6 in', source: 'CWU17 (rule), KIM (inputs)', computed: 6 / perOffset(2), stated: 1.5, digits: 6 },
  { name: 'bust 8 in over two side seams', source: 'SG8', computed: 8 / perOffset(2), stated: 2, digits: 6 },
  {
    name: 'underbust −3 cm over two princess seams, four raw edges',
    source: 'CORSET (sum in text, division computed)',
    computed: -3 / perOffset(2),
    stated: -0.75,
    digits: 6
  },
  { name: 'centre back let out 2 in: new line 1 in outside', source: 'CB-TR', computed: 2 / perOffset(1), stated: 1, digits: 6 },
  {
    name: 'centre back let-out capacity, outlet 1.5 in',
    source: 'CB-TR (keep 3/8); outlet assumed in the row',
    computed: letOutHolds(1.5, 0.375, 1),
    stated: 2.25,
    digits: 6
  },
  {
    name: 'skirt side let-out capacity, 5/8 in',
    source: 'TONGA (5/8), CB-TR (3/8)',
    computed: letOutHolds(0.625, 0.375, 2),
    stated: 1,
    digits: 6
  },
  {
    name: 'back-pocket gap after a 2 in take-in',
    source: 'geometry, straight taper',
    computed: 6 - 2 * taperShare(3 / 9, 0),
    stated: 4.667,
    digits: 3
  },
  { name: 'straight taper, a third of the way down', source: 'geometry', computed: taperShare(3 / 9, 0), stated: 0.667, digits: 3 },
  { name: 'original hem, 5 in', source: 'OH-INS', computed: edgeFold(5), stated: 2.5, digits: 6 },
  { name: 'original hem, 3 in', source: 'OH-MAG', computed: edgeFold(3), stated: 1.5, digits: 6 },
  { name: 'original hem, 2 in', source: 'OH-LB', computed: edgeFold(2), stated: 1, digits: 6 },
  { name: 'tapered leg shortened 3 in', source: 'geometry', computed: 14 - slopeBetween(18, 14, 16) * 3, stated: 14.75, digits: 6 },
  { name: 'A-line shortened 2 in', source: 'geometry', computed: 60 - slopeBetween(40, 60, 18) * 2, stated: 57.78, digits: 2 }
]

describe('worked examples, by figure', () => {
  it.each(rows.map((row) => [row.name, row.source, row] as const))('%s (%s)', (_name, _source, row) => {
    expect(row.computed).toBeCloseTo(row.stated, row.digits)
  })
})

describe('worked examples, through the product', () => {
  const trousers = (figures: Partial<GarmentInput>): GarmentInput => ({
    kind: 'trousers',
    measures: [{ point: 'waist', mm: 900, source: 'own' }],
    ...figures
  })

  it('centre back let-out capacity 2.25 in on an outlet of 1.5 in (CB-TR keeps 3/8 in; ours keeps 10 mm, 0.475 mm more)', () => {
    const option = alterationsFor(garmentAsWorn(trousers({ made: { outletMm: inch(1.5) } }))).options.find(
      ({ id }) => id === 'waist-out-centre-back'
    )
    expect(option?.lines[0]?.capMm).toBeCloseTo(inch(2.25) - 2 * (10 - inch(0.375)), 6)
  })

  it('skirt side let-out capacity 1 in on 5/8 in (TONGA; CB-TR keeps 3/8 in, ours 10 mm)', () => {
    const garment = garmentAsWorn({
      kind: 'skirt',
      measures: [{ point: 'waist', mm: 800, source: 'own' }],
      made: { seamAllowanceMm: inch(0.625) }
    })
    const option = alterationsFor(garment).options.find(({ id }) => id === 'skirt-sides-out')
    expect(option?.lines[0]?.capMm).toBeCloseTo(inch(1) - 4 * (10 - inch(0.375)), 6)
  })

  it('back pockets 6 in apart, 2 in out of the waist: the gap draws on the share at pocket depth (geometry; our curve is the smooth one)', () => {
    const garment = garmentAsWorn(trousers({ made: { backPocketGapMm: inch(6), pocketDepthMm: inch(3), taperLengthMm: inch(9) } }))
    const limit = alterationsFor(garment).options.find(({ id }) => id === 'waist-in-centre-back')?.shared[0]
    expect(limit?.budgetMm).toBeCloseTo(inch(6) - 50, 6)
    expect(limit?.shares[0]).toBeCloseTo(taperShare(1 / 3), 6)
    expect(taperShare(1 / 3)).toBeCloseTo(0.6, 6)
  })

  it('two shirt back darts of 1 in take 2 in out of the waist, 1/4 of it at each stitching line (DARTE)', () => {
    const reckoning = reckon({
      garment: {
        kind: 'shirt',
        measures: [
          { point: 'chest', mm: 1000, source: 'own' },
          { point: 'waist', mm: 1000, source: 'own' }
        ]
      },
      favourite: {
        measures: [
          { point: 'chest', mm: 1000 },
          { point: 'waist', mm: 1000 - inch(2) }
        ],
        toleranceMm: { waist: 0.1 }
      },
      means: { level: 2, tailor: false, markMm: 0.1 }
    })
    const job = reckoning.plans[0]?.alterations.find(({ id }) => id === 'back-darts')
    expect(job?.amountMm).toBeGreaterThan(inch(2) - 0.6)
    expect(job?.amountMm).toBeLessThan(inch(2) + 0.6)
    expect(job?.lines[0]?.offsetMm).toBeCloseTo((job?.amountMm ?? 0) / 4, 2)
  })

  it('a trouser leg 3 in shorter opens by the slope from knee to hem (geometry)', () => {
    // knee 18, opening 14 over a length of 16 below the knee: the inside leg is 16 ÷ 0.53
    const garment = garmentAsWorn({
      kind: 'trousers',
      measures: [
        { point: 'waist', mm: 900, source: 'own' },
        { point: 'knee', mm: inch(18), source: 'own' },
        { point: 'legOpening', mm: inch(14), source: 'own' },
        { point: 'inseam', mm: inch(16) / 0.53, source: 'own' }
      ]
    })
    const option = alterationsFor(garment).options.find(({ id }) => id === 'leg-shorten-blind')
    expect(inch(14) + (option?.lines[0]?.effects.legOpening ?? 0) * inch(3)).toBeCloseTo(inch(14.75), 6)
  })

  it('shrinking 5 % leaves 28.5 of 30 in, and 31.58 must be there before (ISO 5077, definition)', () => {
    const viscose = clothTaken('skirt', { washed: false, fibres: [{ fibre: 'viscose', percent: 100 }] })
    const { shrink } = wornChange('skirt', viscose, 'skirtLength')
    expect(shrink).toBe(0.05)
    expect(30 * (1 - shrink)).toBeCloseTo(28.5, 6)
    // a band of exactly 30 in asks for 31.58 on today's tape
    const reckoning = reckon({
      garment: {
        kind: 'skirt',
        measures: [
          { point: 'waist', mm: 800, source: 'own' },
          { point: 'skirtLength', mm: 700, source: 'own' }
        ],
        cloth: { washed: false, fibres: [{ fibre: 'viscose', percent: 100 }] }
      },
      favourite: {
        measures: [
          { point: 'skirtLength', mm: inch(30) },
          { point: 'waist', mm: 800 }
        ]
      },
      means: { level: 1, tailor: false }
    })
    expect(reckoning.gaps.find(({ point }) => point === 'skirtLength')?.band?.ideal).toBeCloseTo(inch(31.58), 0)
  })

  it('a coat of 22 in half breast on a size 40 chest has 4 in of ease (TM8400-182): our ideal for a jacket is within a quarter inch', () => {
    const row = easeFor('jacket').find(({ point }) => point === 'chest')
    expect(2 * 22 - 40).toBe(4)
    expect(Math.abs((row?.fits.regular[0] ?? 0) - inch(4))).toBeLessThan(inch(0.25))
  })

  it('sleeves without moving the buttons: 1/2 in from buttons 1 1/2 in up that may stand 1 in from the edge (FYG)', () => {
    expect(Math.abs(inch(0.5) - 13)).toBeLessThan(0.5)
    const garment = garmentAsWorn({ kind: 'jacket', measures: [{ point: 'chest', mm: 1000, source: 'own' }] })
    const because = alterationsFor(garment).options.find(({ id }) => id === 'sleeve-shorten-lined')?.lines[0]?.because
    expect(because?.values.still).toBe(13)
  })
})

/** Rows of the table that nothing in the product computes yet, each with its reason. */
const leftOut: { row: string; because: string }[] = [
  { row: 'Corset bust P + 2f + 2b', because: 'a pattern calculation for a new garment, not an alteration' },
  {
    row: 'Sleeve lengthen without moving buttons, under 0.5 in',
    because: 'the planner limits lengthening by the hem, which is narrower; buttons are not modelled there'
  },
  { row: 'Growth 3 %, 34 in', because: 'growth in wear is a length for rigid denim here, not a percentage of stretch cloth' },
  { row: 'Stretch %, three examples', because: 'a stretch percentage is told, never computed from two lengths' },
  { row: 'mm to stitches per inch', because: 'stitch lengths belong to the work sheet, which is not built yet' },
  { row: 'Narrow-hem leg correction (20 − hem)/2', because: 'the wanted inside leg does not look at the hem width yet' },
  { row: 'Strapless edge mismatch', because: 'strapless edges are not modelled' }
]

describe('worked examples left out', () => {
  it(`${leftOut.length} rows, each with a reason`, () => {
    console.info(`worked examples left out: ${leftOut.length} (${leftOut.map(({ row }) => row).join('; ')})`)
    for (const { because } of leftOut) expect(because.length).toBeGreaterThan(20)
    // 18 figures (some rows of the table hold two) and the product rows above cover the rest of its 28
    expect(leftOut.length).toBe(7)
  })
})
