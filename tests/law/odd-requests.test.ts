/** Whatever figures come in, the planner answers: it throws only on its own mistakes. */
import { describe, expect, it } from 'vitest'
import type { GarmentInput, Made } from '../../core/garment/garment-input.ts'
import { GARMENT_KINDS } from '../../core/ids/kinds.ts'
import { POINTS } from '../../core/ids/points.ts'
import { type ReckonRequest, reckon, whatWouldChange } from '../../core/reckon.ts'
import { BODY_MEASURES, FITS } from '../../core/wearer/body.ts'
import { randomFrom } from './requests.ts'

const SEED = 31_337
const ODD = [0, -4, 0.001, 1, 12, 400, 9_000, 1e9, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]

describe('odd requests', () => {
  it(`never throws, and every figure it gives is one (seed ${SEED})`, () => {
    const random = randomFrom(SEED)
    const odd = (usual: number): number => (random() < 0.5 ? usual * (0.8 + 0.4 * random()) : (ODD[Math.floor(random() * ODD.length)] ?? 0))
    let applied = 0
    for (let i = 0; i < 400; i++) {
      const kind = GARMENT_KINDS[i % GARMENT_KINDS.length] ?? 'other'
      const measures: GarmentInput['measures'] = POINTS.filter(() => random() < 0.5).map((point) => ({
        point,
        mm: odd(700),
        source: random() < 0.5 ? 'seller' : 'own',
        ...(random() < 0.2 ? { sdMm: odd(10) } : {}),
        ...(random() < 0.2 ? { side: random() < 0.5 ? ('left' as const) : ('right' as const) } : {})
      }))
      const made: Partial<Made> = {
        seamAllowanceMm: odd(12),
        outletMm: odd(20),
        hemDepthMm: odd(40),
        hipDepthMm: odd(200),
        backPocketGapMm: odd(120),
        taperLengthMm: odd(200),
        overlapMm: odd(30),
        felledSeams: random() < 0.5
      }
      const request: ReckonRequest = {
        garment: {
          kind,
          measures,
          made,
          cloth: { stretchPercent: odd(20), washed: random() < 0.5, fibres: [{ fibre: 'cotton', percent: odd(50) }] },
          price: { amount: odd(20) }
        },
        wearer: {
          fit: FITS[i % FITS.length] ?? 'regular',
          body: Object.fromEntries(BODY_MEASURES.filter(() => random() < 0.6).map((measure) => [measure, { mm: odd(800) }]))
        },
        favourite: { measures: POINTS.filter(() => random() < 0.2).map((point) => ({ point, mm: odd(700) })) },
        tried: [{ point: 'waist', spareMm: odd(20) }],
        means: { level: ((i % 5) + 1) as 1, tailor: i % 2 === 0, hourWorth: odd(10), garmentWorth: odd(50) },
        limits: { 'sides-in': odd(40), 'waist-in-centre-back': odd(40) }
      }
      const reckoning = reckon(request)
      whatWouldChange(request)
      for (const plan of reckoning.plans) {
        for (const job of plan.alterations)
          expect(Number.isFinite(job.amountMm) && job.amountMm > 0, `${job.id} ${job.amountMm}`).toBe(true)
        for (const { point, mm } of plan.after) expect(Number.isFinite(mm), `${point} after`).toBe(true)
      }
      for (const gap of reckoning.gaps) expect(Number.isFinite(gap.garmentMm), gap.point).toBe(true)
      expect(reckoning.chance === null || (reckoning.chance >= 0 && reckoning.chance <= 1)).toBe(true)
      applied++
    }
    expect(applied).toBe(400)
  }, 120_000)
})
