/** Requests with figures that nobody would measure: zero, less than nothing, no number at all, among usual ones. */
import type { GarmentInput, Made } from '../../core/garment/garment-input.ts'
import { GARMENT_KINDS } from '../../core/ids/kinds.ts'
import { POINTS } from '../../core/ids/points.ts'
import type { Reckoning, ReckonRequest } from '../../core/reckon.ts'
import { BODY_MEASURES, FITS } from '../../core/wearer/body.ts'
import { absurdIn } from './absurd.ts'
import type { Random } from './requests.ts'

const ODD = [0, -4, 0.001, 1, 12, 400, 9_000, 1e9, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]

/** `i` goes through kinds, fits and levels. */
export function oddRequest(random: Random, i: number): ReckonRequest {
  const odd = (usual: number): number => (random() < 0.5 ? usual * (0.8 + 0.4 * random()) : (ODD[Math.floor(random() * ODD.length)] ?? 0))
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
  return {
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
}

/** What is wrong with an answer, whatever was asked: figures that are none, sentences that nobody would say. */
export function faultsOf(reckoning: Reckoning): string[] {
  const faults: string[] = []
  for (const plan of reckoning.plans) {
    for (const { id, amountMm } of plan.alterations) if (!(Number.isFinite(amountMm) && amountMm > 0)) faults.push(`${id} ${amountMm}`)
    for (const { point, mm } of plan.after) if (!Number.isFinite(mm)) faults.push(`${point} ${mm} after`)
    if (!Number.isFinite(plan.minutes)) faults.push(`${plan.minutes} minutes`)
  }
  for (const { point, garmentMm } of reckoning.gaps) if (!Number.isFinite(garmentMm)) faults.push(`${point} ${garmentMm}`)
  const { chance } = reckoning
  if (!(chance === null || (chance >= 0 && chance <= 1))) faults.push(`chance ${chance}`)
  return [...faults, ...absurdIn(reckoning)]
}
