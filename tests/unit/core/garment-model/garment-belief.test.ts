/** What is thought of a garment's untold points. */
import { describe, expect, it } from 'vitest'
import { beliefOf, type Described, evidenceOf, type Observed } from '../../../../core/garment/model/garment-belief.ts'
import { CUT_FIGURES, MODEL_ROWS, WIDENED } from '../../../../core/garment/model/rows.ts'
import { shareOfWomens } from '../../../../core/garment/model/whose.ts'
import { GARMENT_KINDS, type GarmentKind } from '../../../../core/ids/kinds.ts'
import { POINTS_OF, type PointId } from '../../../../core/ids/points.ts'

const told = (figures: Partial<Record<PointId, number>>, sdMm = 12): Observed[] =>
  (Object.entries(figures) as [PointId, number][]).map(([point, mm]) => ({ point, mm, sdMm, commonShare: 0.3 }))
const believed = (kind: GarmentKind, figures: Partial<Record<PointId, number>>, more: Partial<Described> = {}) =>
  beliefOf({ kind, elasticWaist: false, cut: {}, womens: 0.5, ...more }, told(figures))

describe('a garment as it is thought of', () => {
  it('every row has a source, stands after what it starts from, and is of a point that the kind has', () => {
    let rows = 0
    for (const [kind, list] of Object.entries(MODEL_ROWS) as [GarmentKind, (typeof MODEL_ROWS)['shirt'] & object][]) {
      const before = new Set<string>()
      for (const { point, from, source, useSdMm, standing } of list) {
        for (const other of Object.keys(from)) expect(before, `${kind} ${point} from ${other}`).toContain(other)
        before.add(point)
        if (point !== 'hip' || kind === 'coat' || !['shirt', 'knit-top', 'jumper', 'jacket'].includes(kind))
          expect(POINTS_OF[kind]).toContain(point)
        expect(source.length).toBeGreaterThan(5)
        expect(useSdMm * WIDENED[standing]).toBeGreaterThan(0)
        rows++
      }
    }
    expect(rows).toBeGreaterThan(90)
  })
  it('a told waist tells the hip, within no less than its row’s spread; a told thigh brings it nearer', () => {
    const women = { womens: 1 }
    const [waist, both] = [believed('jeans', { waist: 800 }, women), believed('jeans', { waist: 800, thigh: 640 }, women)]
    // cut for women: half way between the line of jeans of both and that of women's legs
    expect(waist?.of('hip')?.mm).toBeCloseTo(380 + 0.795 * (waist?.of('waist')?.mm ?? 0), 6)
    expect(waist?.of('hip')?.sdMm).toBeGreaterThanOrEqual(47)
    expect(both?.of('hip')?.mm).toBeGreaterThan(waist?.of('hip')?.mm ?? 0)
    expect(both?.of('hip')?.sdMm).toBeLessThan(waist?.of('hip')?.sdMm ?? 0)
    expect(both?.of('hip')?.sdMm).toBeGreaterThanOrEqual(47)
  })
  it('a pencil’s hip follows its waist closely, a skirt’s of any cut loosely', () => {
    const hip = (cut: Described['cut']) => believed('skirt', { waist: 720 }, { cut })?.of('hip')
    expect(hip({ silhouette: 'pencil' })?.sdMm).toBeLessThan(0.6 * (hip({})?.sdMm ?? 0))
    // the body of its size, 254 over the waist, and 30 more ease
    expect(hip({ silhouette: 'pencil' })?.mm).toBeCloseTo(
      284 + (believed('skirt', { waist: 720 }, { cut: { silhouette: 'pencil' } })?.of('waist')?.mm ?? 0),
      6
    )
  })
  it('a sleeve that is told short is thought short, however long such a shirt’s sleeves are', () => {
    expect(believed('shirt', { chest: 1060 }, { cut: { sleeve: 'short' } })?.of('sleeveLength')?.mm).toBeCloseTo(225, 0)
  })
  it('the cut that is told shifts it and says where its points lie', () => {
    const opening = (leg: 'skinny' | 'straight' | 'wide') => believed('jeans', { waist: 800 }, { cut: { leg } })?.of('legOpening')?.mm ?? 0
    expect(opening('skinny')).toBeLessThan(opening('straight'))
    expect(opening('straight')).toBeLessThan(opening('wide'))
    const hip = (cut: Described['cut']) => believed('trousers', { waist: 800 }, { cut })?.of('hip')?.mm ?? 0
    expect(hip({ leg: 'slim' })).toBeLessThan(hip({}))
    expect(hip({ leg: 'wide' })).toBeGreaterThan(hip({}))
    // what was measured wins over the word
    expect(believed('jeans', { waist: 800, legOpening: 470 }, { cut: { leg: 'skinny' } })?.of('legOpening')?.mm).toBeGreaterThan(460)
  })
  it('women’s and men’s lines: told, they part; untold, the figures weigh them', () => {
    const rise = (womens: number) => believed('trousers', { waist: 860 }, { womens })?.of('inseam')?.mm ?? 0
    expect(rise(0)).toBeGreaterThan(rise(1))
    const unsaid = (inseam: number) => believed('trousers', { waist: 860, inseam })?.of('frontRise')?.mm ?? 0
    // a long leg is more likely a man’s, whose rise is deeper
    expect(unsaid(860)).toBeGreaterThan(unsaid(640))
    expect(shareOfWomens('dress', undefined, 'men')).toBeGreaterThan(0.9)
    expect(shareOfWomens('jeans', 'men', 'women')).toBeLessThan(0.1)
    expect(shareOfWomens('jeans', undefined, 'women')).toBeGreaterThan(0.5)
    expect(shareOfWomens('jeans', undefined, undefined)).toBe(0.5)
  })
  it('a leg that widens from the knee says nothing of the knee by its opening', () => {
    const knee = (leg: 'straight' | 'flared') =>
      believed('jeans', { waist: 800, thigh: 560, legOpening: 620 }, { cut: { leg } })?.of('knee')?.mm ?? 0
    expect(knee('flared')).toBeCloseTo(16.4 + 0.7169 * 560, -1)
    expect(knee('straight')).toBeGreaterThan(560)
  })
  it('an elastic waist has a line of its own', () =>
    expect(believed('trousers', { waist: 700 }, { elasticWaist: true })?.of('hip')?.mm).toBeCloseTo(607 + 0.6069 * 700, -2))
  it('a point that no row speaks of stands alone, at its figure', () => {
    const belief = believed('dress', { chest: 920, strap: 300 })
    expect(belief?.of('strap')?.mm).toBeCloseTo(300, 0)
    expect(belief?.of('armhole')).toBeUndefined()
  })
  it('left out, a told figure is what the others make of it', () => {
    const womens = { womens: 1 }
    const [alone, both] = [believed('jeans', { waist: 800 }, womens), believed('jeans', { waist: 800, hip: 1080 }, womens)]
    const without = both?.without('hip')
    expect(without?.mm).toBeCloseTo(alone?.of('hip')?.mm ?? 0, 3)
    expect(without?.sdMm).toBeCloseTo(alone?.of('hip')?.sdMm ?? 0, 3)
  })
  it('the order of telling changes nothing', () => {
    const figures = told({ waist: 850, hip: 1000, inseam: 760, thigh: 600 })
    const described = { kind: 'trousers' as const, elasticWaist: false, cut: {}, womens: 0.5 }
    const [one, other] = [beliefOf(described, figures), beliefOf(described, [...figures].reverse())]
    for (const point of one?.points ?? []) expect(one?.of(point)?.mm).toBeCloseTo(other?.of(point)?.mm ?? Number.NaN, 6)
  })
  it('figures of the cut are of facets that exist, each with its source', () => {
    for (const { source, sdMm } of CUT_FIGURES) {
      expect(source.length).toBeGreaterThan(5)
      expect(sdMm).toBeGreaterThan(0)
    }
  })
})

describe('the evidence of figures alone', () => {
  const sets: Partial<Record<PointId, number>>[] = [
    { waist: 800 },
    { waist: 760, hip: 1010, inseam: 780 },
    { chest: 1040, bodyLength: 690, sleeveLength: 610, shoulderWidth: 440 },
    // a strap has no row of its own anywhere: it stands alone
    { strap: 30, chest: 900 },
    { skirtLength: 640, sweep: 1200, waist: 700, hip: 960 }
  ]
  it('is that of the whole belief to the same bit, on every kind, with and without elastic, cut for women, for men and for both', () => {
    let compared = 0
    for (const kind of GARMENT_KINDS)
      for (const elasticWaist of [false, true])
        for (const womens of [0, 0.5, 0.97, 1])
          for (const figures of sets) {
            const whole = beliefOf({ kind, elasticWaist, cut: {}, womens }, told(figures))?.joint.logEvidence
            expect(evidenceOf({ kind, elasticWaist, womens }, told(figures)), `${kind} ${Object.keys(figures)}`).toBe(whole)
            compared++
          }
    expect(compared).toBe(GARMENT_KINDS.length * 2 * 4 * sets.length)
  })
  it('changes nothing that is thought of a kind', () => {
    const before = believed('shirt', {})?.of('chest')
    evidenceOf({ kind: 'shirt', elasticWaist: false, womens: 0.5 }, told({ chest: 1400, bodyLength: 900 }))
    expect(believed('shirt', {})?.of('chest')).toEqual(before)
  })
  it('falls as a figure leaves what is usual', () => {
    const of = (waist: number) => evidenceOf({ kind: 'jeans', elasticWaist: false, womens: 0.5 }, told({ waist })) ?? Number.NaN
    expect(of(800)).toBeGreaterThan(of(1100))
    expect(of(1100)).toBeGreaterThan(of(1700))
  })
})
