/** From the parcel to the finished piece: own tape beside the seller's, what is looked at, what the result teaches. */
import { describe, expect, test } from 'vitest'
import { GARMENT_KINDS } from '../../../../core/ids/kinds.ts'
import { type ReckonRequest, reckon } from '../../../../core/reckon.ts'
import { en } from '../../../../core/words/en/index.ts'
import {
  besideSeller,
  inspectionFor,
  paceTaught,
  planChange,
  type Sewn,
  sellerTaught,
  type TapeBeside,
  tableMinutes,
  withOwnTape
} from '../../../../core/worksheet/arrival.ts'
import { randomFrom } from '../../../law/requests.ts'

const wording = { units: 'cm' as const }
/** Trousers wanted like a favourite: 850 at the waist, 750 inside the leg. The seller says 880 and 800. */
const asked: ReckonRequest = {
  garment: {
    kind: 'trousers',
    measures: [
      { point: 'waist', mm: 880, source: 'seller' },
      { point: 'inseam', mm: 800, source: 'seller' },
      { point: 'hip', mm: 1040, source: 'label' }
    ]
  },
  favourite: {
    measures: [
      { point: 'waist', mm: 850 },
      { point: 'inseam', mm: 750 }
    ]
  },
  means: { level: 4, tailor: false }
}
const plan = (request: ReckonRequest) => reckon(request, { outlook: false }).plans[0]

describe('the buyer’s own tape', () => {
  test('point by point: the same, larger, smaller, further than tapes differ, not told', () => {
    const own = [
      { point: 'waist' as const, mm: 881 },
      { point: 'inseam' as const, mm: 806 },
      { point: 'hip' as const, mm: 1030 },
      { point: 'thigh' as const, mm: Number.NaN }
    ]
    const beside = besideSeller(asked.garment, own, wording)
    expect(beside.map(({ point, differenceMm, isBeyond, says }) => [point, differenceMm, isBeyond, says.code])).toEqual([
      ['waist', 1, false, 'arrived.same'],
      ['inseam', 6, false, 'arrived.larger'],
      // a size label is no tape
      ['hip', null, false, 'arrived.new']
    ])
    // twice the sd of a seller's girth, 12, and one's own, 5: 26
    const at = (mm: number) => besideSeller(asked.garment, [{ point: 'waist', mm }], wording)[0]
    expect([at(905)?.isBeyond, at(907)?.isBeyond, at(853)?.says.code, at(855)?.says.code]).toEqual([
      false,
      true,
      'arrived.much-smaller',
      'arrived.smaller'
    ])
    expect(at(860)?.says.text).toBe('The waist is 2 cm smaller than the seller said; two people measuring may differ by that.')
  })

  test('own figures stand in place of earlier ones of one’s own, and the request stays as it was', () => {
    const kept = structuredClone(asked)
    const once = withOwnTape(asked, [{ point: 'waist', mm: 870 }])
    const twice = withOwnTape(once, [
      { point: 'waist', mm: 860 },
      { point: 'inseam', mm: -3 }
    ])
    expect(twice.garment.measures.filter(({ source }) => source === 'own')).toEqual([{ point: 'waist', mm: 860, source: 'own' }])
    expect(twice.garment.measures.filter(({ point }) => point === 'inseam')).toHaveLength(1)
    // what a size label made likely stays as evidence, and counts least
    const hips = withOwnTape(asked, [{ point: 'hip', mm: 1030 }]).garment.measures.filter(({ point }) => point === 'hip')
    expect(hips.map(({ source }) => source)).toEqual(['label', 'own'])
    expect(asked).toEqual(kept)
  })

  test('a waist that is as wanted takes its job away; a longer leg is shortened by more', () => {
    const own = withOwnTape(asked, [
      { point: 'waist', mm: 850 },
      { point: 'inseam', mm: 815 }
    ])
    const change = planChange(plan(asked), plan(own), wording)
    expect(change.stays).toBe(false)
    const gone = change.jobs.filter(({ isMm }) => isMm === null)
    expect(gone.length).toBeGreaterThan(0)
    expect(gone.every(({ says }) => says.text.startsWith('No longer needed'))).toBe(true)
    const leg = change.jobs.find(({ id }) => id.startsWith('leg-shorten'))
    expect((leg?.isMm ?? 0) - (leg?.wasMm ?? 0)).toBeCloseTo(15, -1)
    expect(change.minutes.is).toBeLessThan(change.minutes.was)
  })

  test('the same figures leave the plan as it stands', () => {
    expect(planChange(plan(asked), plan(asked), wording)).toMatchObject({ stays: true, jobs: [] })
    expect(planChange(undefined, plan(asked), wording).jobs.every(({ wasMm }) => wasMm === null)).toBe(true)
  })
})

describe('what is looked at', () => {
  test('every kind has pests, seams and labels first and last what was altered before; each look has its sentence and none is left over', () => {
    const seen = new Set<string>()
    for (const kind of GARMENT_KINDS) {
      const looks = inspectionFor(
        { kind, measures: [], made: { elasticWaist: true }, cloth: { structure: 'leather', traits: ['beaded'] } },
        wording
      ).map(({ look }) => look.code)
      expect(looks[0]).toBe('inspect.pests')
      expect(looks).toContain('inspect.earlier')
      for (const code of looks) seen.add(code)
    }
    expect([...seen].sort()).toEqual(
      Object.keys(en)
        .filter((code) => code.startsWith('inspect.'))
        .sort()
    )
  })

  test('trousers: the fork, and the cloth inside the seams, which may be typed in', () => {
    const looks = inspectionFor({ kind: 'trousers', measures: [] }, wording)
    expect(looks.map(({ look }) => look.code)).toContain('inspect.fork')
    expect(looks.flatMap(({ about }) => about ?? [])).toEqual(['outletMm', 'seamAllowanceMm', 'hemDepthMm'])
    expect(inspectionFor({ kind: 'skirt', measures: [] }, wording).map(({ look }) => look.code)).not.toContain('inspect.fork')
  })
})

describe('what the sewn result teaches', () => {
  const sewn = (minutes: number, ownMinutes: number, more: Partial<ReckonRequest> = {}): Sewn => {
    const planned = plan(asked)
    if (planned === undefined) throw new Error('no plan')
    return { request: { ...asked, ...more }, plan: { ...planned, minutes }, ownMinutes }
  }

  test('pace is own minutes by the table’s, over all pieces together', () => {
    expect(paceTaught([sewn(60, 90)])).toEqual({ was: 1, is: 1.5, from: 1, own: 90, table: 60 })
    // (90 + 30) / (60 + 60)
    expect(paceTaught([sewn(60, 90), sewn(60, 30)], 1.2)).toEqual({ was: 1.2, is: 1, from: 2, own: 120, table: 120 })
  })

  test('a plan reckoned at a pace has the table’s minutes under it, and mending is taken off both', () => {
    const means = { ...asked.means, pace: 2 }
    expect(tableMinutes(sewn(120, 0, { means }))).toBe(60)
    const mended = { means, garment: { ...asked.garment, condition: [{ job: 'darn' as const }] } }
    // a darn is 30 minutes: 150 = 60 × 2 + 30; 120 of own time, 90 of it sewing
    expect(tableMinutes(sewn(150, 0, mended))).toBe(60)
    expect(paceTaught([sewn(150, 120, mended)], 2)).toEqual({ was: 2, is: 1.5, from: 1, own: 90, table: 60 })
  })

  test('nothing to compare teaches nothing', () => {
    expect(paceTaught([])).toBeNull()
    expect(paceTaught([sewn(0, 40), sewn(60, Number.NaN), sewn(60, 0)])).toBeNull()
    expect(sellerTaught([])).toBeNull()
  })

  const beside = (differenceMm: number | null): TapeBeside => ({
    point: 'waist',
    sellerMm: 800,
    ownMm: 800,
    differenceMm,
    isBeyond: false,
    says: { code: '', values: {}, text: '' }
  })

  test('one exact figure makes a seller a little surer, a bad one unsurer; what was is kept', () => {
    const good = sellerTaught([beside(0)])
    const bad = sellerTaught([beside(40)])
    // (4 × 144 + 0) / 5, (4 × 144 + 1600 − 25) / 5
    expect(good?.is.girth).toBeCloseTo(Math.sqrt(115.2), 6)
    expect(bad?.is.girth).toBeCloseTo(Math.sqrt(430.2), 6)
    expect([good?.was.girth, good?.is.length]).toEqual([12, 8])
  })

  test('of many figures the sd that they were drawn with comes out (Monte Carlo, seed 7)', () => {
    const random = randomFrom(7)
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
    for (const sd of [6, 12, 30]) {
      const many = Array.from({ length: 4_000 }, () => beside(sd * normal() + 5 * normal()))
      // 4,000 figures tell a variance to about 2 % (√(2/n)); one's own error of 5 is taken off again
      expect(Math.abs((sellerTaught(many)?.is.girth ?? 0) / sd - 1), `sd ${sd}`).toBeLessThan(0.05)
    }
  })
})
