/**
 * How well could anybody tell from what is told? A plain logistic regression, fitted to the simulated listings of some seeds and asked of others, from
 * nothing but what is told: how far each point lies from the usual ease on the body, or would by the tables and the survey where it is not told. It
 * knows the tables that the world was made from, so it is a mark to measure by and no product: a Brier score near it is near what the world allows.
 *
 * `npx tsx tests/bench/reachable.ts`; LISTINGS=3000 (to fit, and a third of it to ask), GRADES=average, SEEDS=11,12 (to fit, to ask).
 */
import { byRule } from './simulated/garments.ts'
import { asKnown, RULES, sizesOf } from './simulated/makers.ts'
import { MEASURED, type Measured, type Sex, SURVEY } from './simulated/survey.ts'
import { bodyBeneath, type Figures, type Grade, KINDS, type Kind, listing, randomFrom, type Told, usualEase } from './simulator.ts'
import { known, worksOut } from './world.ts'

const LISTINGS = Number(process.env.LISTINGS ?? 12_000)
const GRADE = (process.env.GRADES ?? 'average') as Grade
const [FITTED = 11, ASKED = 12] = process.env.SEEDS?.split(',').map(Number) ?? []

/** Solves a small linear system, by elimination with the largest pivot. */
function solved(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0])
  const size = rows.length
  for (let i = 0; i < size; i++) {
    const best = rows.slice(i).reduce((most, row, k) => (Math.abs(row[i] ?? 0) > Math.abs(rows[most]?.[i] ?? 0) ? i + k : most), i)
    ;[rows[i], rows[best]] = [rows[best] as number[], rows[i] as number[]]
    const pivot = rows[i] as number[]
    for (let k = i + 1; k < size; k++) {
      const row = rows[k] as number[]
      const factor = (row[i] ?? 0) / (pivot[i] ?? 1)
      if (factor !== 0) for (let j = i; j <= size; j++) row[j] = (row[j] ?? 0) - factor * (pivot[j] ?? 0)
    }
  }
  const answer = new Array<number>(size).fill(0)
  for (let i = size - 1; i >= 0; i--) {
    const row = rows[i] as number[]
    const rest = answer.reduce((sum, one, j) => sum + (j > i ? one * (row[j] ?? 0) : 0), 0)
    answer[i] = ((row[size] ?? 0) - rest) / (row[i] ?? 1)
  }
  return answer
}

/** What a told measure is called in the survey. */
const IN_SURVEY: Record<string, Measured> = {
  stature: 'stature',
  bustGirth: 'bust',
  hipGirth: 'hip',
  thighGirth: 'thigh',
  kneeGirth: 'lowerThigh',
  calfGirth: 'calf',
  neckGirth: 'neck',
  upperArmGirth: 'biceps',
  wristGirth: 'wrist',
  shoulderWidth: 'biacromial',
  armLength: 'arm',
  insideLegLength: 'insideLeg'
}
/** The navel's girth from a natural waist, and back (Heinz and others 2003). */
const NAVEL = { women: { from: [44, 1.097], back: [190, 0.636] }, men: { from: [144, 0.842], back: [60, 0.924] } } as const
const OFF_THE_SURVEY: Record<string, number> = { shoulderWidth: 35 }

const correlationOf = (sex: Sex, i: number, j: number): number =>
  i === j ? 1 : (SURVEY[sex].correlation[Math.max(i, j)]?.[Math.min(i, j)] ?? 0)

/** The likeliest body by the survey: what is told, and the rest from it. */
function likeliestBody(told: Told, sex: Sex): Figures {
  const { mean, sd } = SURVEY[sex]
  const taken: [number, number][] = Object.entries(IN_SURVEY).flatMap(([measure, name]) => {
    const mm = told.body[measure]
    const place = MEASURED.indexOf(name)
    if (mm === undefined || measure === 'kneeGirth') return []
    return [[place, (mm - (OFF_THE_SURVEY[measure] ?? 0) - (mean[place] ?? 0)) / (sd[place] ?? 1)]] as [number, number][]
  })
  const { waistGirth, waistbandGirth } = told.body
  const [intercept, slope] = NAVEL[sex].from
  const navel = waistbandGirth ?? (waistGirth === undefined ? undefined : intercept + slope * waistGirth)
  const at = MEASURED.indexOf('navelWaist')
  if (navel !== undefined) taken.push([at, (navel - (mean[at] ?? 0)) / (sd[at] ?? 1)])
  const weights = solved(
    taken.map(([i]) => taken.map(([j]) => correlationOf(sex, i, j) + (i === j ? 0.03 : 0))),
    taken.map(([, z]) => z)
  )
  const likeliest = (name: Measured): number => {
    const place = MEASURED.indexOf(name)
    const z = taken.reduce((sum, [i], k) => sum + (weights[k] ?? 0) * correlationOf(sex, place, i), 0)
    return (mean[place] ?? 0) + (sd[place] ?? 0) * z
  }
  const body = Object.fromEntries(
    Object.entries(IN_SURVEY).map(([measure, name]) => [measure, told.body[measure] ?? likeliest(name) + (OFF_THE_SURVEY[measure] ?? 0)])
  )
  body.kneeGirth = told.body.kneeGirth ?? likeliest('lowerThigh') - 28
  const [least, back] = NAVEL[sex].back
  body.waistGirth = waistGirth ?? least + back * likeliest('navelWaist')
  body.band = waistbandGirth ?? likeliest('navelWaist')
  body.foot = 0.97 * likeliest('heel')
  return body
}

/** Every point by what is told, or by the tables of the size that the told figures are nearest to. */
function likeliestGarment(told: Told, sex: Sex): Figures {
  const rules = RULES[told.kind][sex] ?? []
  const figures: Figures = {}
  const anchor = told.garment.chest !== undefined ? 'chest' : 'waist'
  const leading = rules.find(({ point }) => point === anchor)
  const mm = told.garment[anchor]
  const sizes = sizesOf(told.kind, sex)
  const far = (place: number): number =>
    leading === undefined || mm === undefined
      ? Math.abs(place - 5)
      : Math.abs(byRule(leading, { ...asKnown(sizes[place] ?? { bust: 0, waist: 0, hip: 0, band: 0 }) }) - mm)
  const nearest = sizes.reduce((best, _, place) => (far(place) < far(best) ? place : best), 0)
  const size = asKnown(sizes[nearest] ?? { bust: 0, waist: 0, hip: 0, band: 0 })
  figures.legOpening = told.garment.legOpening ?? 405
  for (const rule of rules) figures[rule.point] = told.garment[rule.point] ?? byRule(rule, { ...size, ...figures })
  figures.calf = ((figures.knee ?? 0) + (figures.legOpening ?? 0)) / 2 + 5
  figures.inseam = told.garment.inseam ?? 770
  return figures
}

/** Steps at which a distance is cut, mm: a line with bends in it. */
const BENDS = [-60, -25, 0, 25, 60, 110]

function featuresOf(told: Told): number[] {
  const sex: Sex = told.sizes ?? ((told.body.stature ?? 1690) > 1695 ? 'men' : 'women')
  const body = likeliestBody(told, sex)
  const garment = likeliestGarment(told, sex)
  const rise = garment.frontRise ?? 0
  const features = [1, sex === 'men' ? 1 : 0, told.acceptsRescues ? 1 : 0, told.sizesOff, told.sizesOff ** 2]
  for (const [facet, values] of Object.entries({
    silhouette: ['a-line', 'flared', 'fit-flare'],
    leg: ['skinny', 'slim', 'wide'],
    legLength: ['ankle'],
    sleeve: ['long']
  }))
    features.push(...values.map((value) => (told.cut[facet] === value ? 1 : 0)))
  features.push(told.cloth.fibres?.some(({ fibre }) => fibre === 'elastane') === true ? 1 : 0, told.cloth.fibres === undefined ? 1 : 0)
  if (rise > 0) features.push((rise - 260) / 50, told.garment.frontRise === undefined ? 1 : 0)
  const free = ['a-line', 'flared', 'fit-flare'].includes(told.cut.silhouette ?? '')
  for (const [point, ease] of Object.entries(usualEase(told.kind, 'women'))) {
    const measure = bodyBeneath(told.kind, sex, point) ?? ''
    const own = usualEase(told.kind, sex)[point] ?? ease
    const isTold = told.garment[point] !== undefined
    const off = Math.max(-150, Math.min(250, (garment[point] ?? 0) - (body[measure] ?? 0) - own)) * (free && point === 'hip' ? 0 : 1)
    const bent = BENDS.map((bend) => Math.max(0, off - bend) / 50)
    features.push(isTold ? 1 : 0, ...[off / 50, ...bent].flatMap((one) => (isTold ? [one, 0] : [0, one])))
  }
  return features
}

interface Case {
  features: number[]
  works: boolean
}
function cases(seed: number, many: number): Map<Kind, Case[]> {
  const random = randomFrom(seed)
  const found = new Map<Kind, Case[]>(KINDS.map((kind) => [kind, []]))
  for (let i = 0; i < many; i++) {
    const { truth, told } = listing(random, GRADE)
    found.get(truth.kind)?.push({ features: featuresOf(told), works: worksOut(known(truth), truth) })
  }
  return found
}

const sure = (weights: readonly number[], features: readonly number[]): number =>
  1 / (1 + Math.exp(-features.reduce((sum, one, i) => sum + one * (weights[i] ?? 0), 0)))
/** Held to small weights (ridge), by Newton's steps. */
const RIDGE = 3
function fitted(all: readonly Case[]): number[] {
  const size = all[0]?.features.length ?? 0
  let weights = new Array<number>(size).fill(0)
  for (let step = 0; step < 8; step++) {
    const slope = weights.map((one) => -RIDGE * one)
    const bend = weights.map((_, i) => weights.map((_one, j) => (i === j ? RIDGE : 0)))
    for (const { features, works } of all) {
      const p = sure(weights, features)
      const rest = (works ? 1 : 0) - p
      for (const [i, x] of features.entries()) {
        if (x === 0) continue
        slope[i] = (slope[i] ?? 0) + rest * x
        const row = bend[i] as number[]
        for (const [j, y] of features.entries()) if (y !== 0) row[j] = (row[j] ?? 0) + p * (1 - p) * x * y
      }
    }
    const by = solved(bend, slope)
    weights = weights.map((one, i) => one + (by[i] ?? 0))
  }
  return weights
}

const learnt = cases(FITTED, LISTINGS)
const asked = cases(ASKED, Math.round(LISTINGS / 3))
let squared = 0
let constant = 0
let n = 0
for (const kind of KINDS) {
  const weights = fitted(learnt.get(kind) ?? [])
  const mine = asked.get(kind) ?? []
  const share = mine.filter(({ works }) => works).length / mine.length
  const errors = mine.map(({ features, works }) => (sure(weights, features) - (works ? 1 : 0)) ** 2)
  const sum = errors.reduce((all, one) => all + one, 0)
  squared += sum
  constant += mine.length * share * (1 - share)
  n += mine.length
  console.log(
    `${kind.padEnd(10)} ${(100 * share).toFixed(1)} % work; Brier of its share alone ${(share * (1 - share)).toFixed(3)}, of the regression ` +
      `${(sum / mine.length).toFixed(3)} (${mine.length} listings)`
  )
}
console.log(
  `all kinds: Brier of each kind's share alone ${(constant / n).toFixed(4)}, of the regression ${(squared / n).toFixed(4)} (${GRADE} sellers)`
)
