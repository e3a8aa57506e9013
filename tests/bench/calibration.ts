/**
 * Is the outlook calibrated, and does following the verdict pay? Simulated listings (tests/bench/simulator.ts), three seeds fixed beforehand,
 * one more arm with sellers whose tapes are biased. Run by `npm run bench`; writes its rows into tests/bench/results.json and prints the tables.
 */
import type { Means } from '../../core/plan/means.ts'
import { type Reckoning, reckon, type Verdict } from '../../core/reckon.ts'
import { type Row, writeResults } from './results.ts'
import { type About, answered, listing, type Random, randomFrom, type Seller, type Told, type Truth } from './simulator.ts'
import { asItIsFits, someOwnPlanFits, type Trial, toldRequest, trial, trueRequest } from './world.ts'

/** 11, 22 and 33 were looked at while spreads, tails and the prior on size were chosen; these were not. */
const SEEDS = [404, 505, 606] as const
const PLAIN: Seller = { biasMm: 0 }
const MEANS: Means = { level: 3, tailor: false, hourWorth: 6, garmentWorth: 60 }
/** Listings a seed; deciles in the middle hold a twentieth each. */
const LISTINGS = Number(process.env.LISTINGS ?? 60_000)
const DECISIONS = Number(process.env.DECISIONS ?? 8_000)

interface Decile {
  n: number
  given: number
  worked: number
}
interface Table {
  deciles: Decile[]
  brier: number
  n: number
}

function calibrate(seed: number, seller: Seller): Table {
  const random = randomFrom(seed)
  const deciles = Array.from({ length: 10 }, (): Decile => ({ n: 0, given: 0, worked: 0 }))
  let squared = 0
  let n = 0
  for (let i = 0; i < LISTINGS; i++) {
    const { truth, told } = listing(random, seller)
    const one: Trial | null = trial(truth, told, MEANS)
    const decile = one === null ? undefined : deciles[Math.min(9, Math.floor(one.chance * 10))]
    if (one === null || decile === undefined) continue
    decile.n++
    decile.given += one.chance
    decile.worked += one.works ? 1 : 0
    squared += (one.chance - (one.works ? 1 : 0)) ** 2
    n++
  }
  return { deciles, brier: squared / n, n }
}

/** A step of money: what buying is worth where everything is known. Failing costs price and postage. */
function worthOfBuying(truth: Truth, price: number): { asItIs: number; altered: number } {
  const known = reckon(trueRequest(truth, Object.keys(truth.garment) as never, MEANS, { amount: price }), { outlook: false })
  const asItIs = asItIsFits(known) ? (MEANS.garmentWorth ?? 0) - price : -price
  const best = known.plans.find((plan) => plan.aim === 'least-work')
  const altered = someOwnPlanFits(known) ? Math.max(asItIs, (MEANS.garmentWorth ?? 0) - price - (best?.cost ?? 0)) : -price
  return { asItIs, altered }
}

interface Listed {
  truth: Truth
  told: Told
}
type Choice = (listed: Listed, price: number, random: Random) => { buys: boolean; alters: boolean }

/** The three ways of deciding that people have without the tool. */
const SIZE_LABEL: Choice = ({ told }) => {
  const body = told.kind === 'shirt' || told.kind === 'jacket' ? told.body.bustGirth : told.body.waistbandGirth
  return { buys: body !== undefined && Math.abs(told.label - body) <= 25, alters: false }
}
const USUAL_EASE: Record<string, number> = {
  waist: 22,
  hip: 62,
  thigh: 48,
  chest: 105,
  shoulderWidth: 20,
  sleeveLength: 10,
  inseam: -25,
  neck: 15
}
const BODY_OF: Record<string, string> = {
  waist: 'waistbandGirth',
  hip: 'hipGirth',
  thigh: 'thighGirth',
  chest: 'bustGirth',
  shoulderWidth: 'shoulderWidth',
  sleeveLength: 'armLength',
  inseam: 'insideLegLength',
  neck: 'neckGirth'
}
const off = (told: Told, point: string): number | undefined => {
  const body = told.body[point === 'waist' && (told.kind === 'shirt' || told.kind === 'jacket') ? 'waistGirth' : (BODY_OF[point] ?? '')]
  const ease = point === 'waist' && (told.kind === 'shirt' || told.kind === 'jacket') ? 120 : (USUAL_EASE[point] ?? 0)
  const mm = told.garment[point]
  return body === undefined || mm === undefined ? undefined : mm - body - ease
}
/** A favourite that fits at the usual ease, told figures within an inch around or half an inch along, nothing altered. */
const LIKE_A_FAVOURITE: Choice = ({ told }) => ({
  buys: Object.keys(USUAL_EASE).every(
    (point) => Math.abs(off(told, point) ?? 0) <= (['inseam', 'sleeveLength', 'shoulderWidth'].includes(point) ? 13 : 26)
  ),
  alters: false
})
/** Rules of thumb: in up to so much, out up to so much, lengths up freely; shoulders must fit. */
const THUMB: Record<string, [number, number]> = {
  waist: [-25, 60],
  hip: [-20, 40],
  thigh: [-20, 40],
  chest: [-40, 70],
  shoulderWidth: [-15, 15],
  sleeveLength: [-15, 45],
  inseam: [-30, 120],
  neck: [-10, 15]
}
const RULES_OF_THUMB: Choice = ({ told }) => ({
  buys: Object.entries(THUMB).every(([point, [small, big]]) => {
    const mm = off(told, point)
    return mm === undefined || (mm >= small && mm <= big)
  }),
  alters: true
})
const bought = (verdict: Verdict): boolean => verdict === 'wears-as-is' || verdict === 'alters-to-fit'
/** The verdict as it stands on what is told. */
const THE_VERDICT: Choice = ({ told }, price) => ({
  buys: bought(reckon(toldRequest(told, MEANS, { amount: price })).verdict),
  alters: true
})

/** The question worth most is asked, of the seller or of oneself, and the answer set beside the rest; so up to three times. */
const QUESTIONS = 3
function whenAsked(listed: Listed, price: number, random: Random): Reckoning {
  let { told } = listed
  let answer = reckon(toldRequest(told, MEANS, { amount: price }))
  for (let asked = 0; asked < QUESTIONS; asked++) {
    // a second look at a told figure is not asked for, and whom nobody can answer is passed over
    let next: Told | null = null
    for (const { point, body, about, again } of answer.ask) {
      next = again === true ? null : answered(random, { truth: listed.truth, told }, { point, body, made: about }, PLAIN)
      if (next !== null) break
    }
    if (next === null) break
    told = next
    answer = reckon(toldRequest(told, MEANS, { amount: price }))
  }
  return answer
}
const THE_VERDICT_WHEN_ASKED: Choice = (listed, price, random) => ({ buys: bought(whenAsked(listed, price, random).verdict), alters: true })
/** How far the seller's tape alone leads astray: the verdict where every figure, measure and fact of the make is told. */
const THE_VERDICT_ALL_TOLD: Choice = (listed, price, random) => {
  let { told } = listed
  const { truth } = listed
  const all: About[] = [
    ...Object.keys(truth.garment).map((point) => ({ point })),
    ...Object.keys(truth.body).map((body) => ({ body })),
    ...Object.keys(truth.made).map((made) => ({ made }))
  ]
  for (const about of all) told = answered(random, { truth, told }, about, PLAIN) ?? told
  return { buys: bought(reckon(toldRequest(told, MEANS, { amount: price })).verdict), alters: true }
}
/** What it says of the price: no more than pays at the chance that is given. */
const THE_PRICE_WHEN_ASKED: Choice = (listed, price, random) => ({
  buys: price <= (whenAsked(listed, price, random).worth?.risk ?? 0),
  alters: true
})

function regrets(seed: number): Record<string, number> {
  const random: Random = randomFrom(seed)
  const choices: Record<string, Choice> = {
    'following the verdict': THE_VERDICT,
    'the verdict after three questions': THE_VERDICT_WHEN_ASKED,
    'the price it gives after three questions': THE_PRICE_WHEN_ASKED,
    'the verdict where all is told': THE_VERDICT_ALL_TOLD,
    'the size label': SIZE_LABEL,
    'like a favourite, never altering': LIKE_A_FAVOURITE,
    'rules of thumb': RULES_OF_THUMB
  }
  const lost = Object.fromEntries(Object.keys(choices).map((name) => [name, 0]))
  for (let i = 0; i < DECISIONS; i++) {
    const listed = listing(random, PLAIN)
    const { truth } = listed
    const price = 8 + random() * 34
    const worth = worthOfBuying(truth, price)
    const best = Math.max(0, worth.altered)
    for (const [name, choose] of Object.entries(choices)) {
      const { buys, alters } = choose(listed, price, randomFrom(seed * 100_000 + i))
      lost[name] = (lost[name] ?? 0) + best - (buys ? (alters ? worth.altered : worth.asItIs) : 0)
    }
  }
  return Object.fromEntries(Object.entries(lost).map(([name, sum]) => [name, (100 * sum) / DECISIONS]))
}

const WITHOUT = ['the size label', 'like a favourite, never altering', 'rules of thumb']
const rows: Row[] = []
let worst = 0
for (const [arm, seller] of [
  ['plain sellers', PLAIN],
  ['biased sellers, +10 mm around', { biasMm: 10 }]
] as const) {
  for (const seed of arm === 'plain sellers' ? SEEDS : SEEDS.slice(0, 1)) {
    const table = calibrate(seed, seller)
    console.log(`\n${arm}, seed ${seed}: ${table.n} listings, Brier score ${table.brier.toFixed(4)}`)
    for (const [d, { n, given, worked }] of table.deciles.entries()) {
      const gap = (worked - given) / Math.max(1, n)
      console.log(
        `  ${d * 10}–${d * 10 + 10} %: ${String(n).padStart(6)} listings, given ${((100 * given) / n).toFixed(1)} %, worked ${((100 * worked) / n).toFixed(1)} %, ${(100 * gap).toFixed(1)} points`
      )
      if (arm === 'plain sellers') worst = Math.max(worst, Math.abs(gap))
    }
    rows.push({ name: `Brier score, ${arm}, seed ${seed}`, value: table.brier, unit: '1', ratio: null, against: null })
  }
}
rows.push({ name: 'calibration, farthest decile over three seeds', value: 100 * worst, unit: 'points', ratio: null, against: null })
for (const seed of SEEDS) {
  const lost = regrets(seed)
  const best = Math.min(...WITHOUT.map((name) => lost[name] ?? Number.POSITIVE_INFINITY))
  console.log(
    `\nregret per 100 listings, seed ${seed}: ${Object.entries(lost)
      .map(([name, value]) => `${name} ${value.toFixed(0)} (${(value / best).toFixed(2)} of the best without it)`)
      .join(' · ')}`
  )
  for (const [name, value] of Object.entries(lost))
    rows.push({
      name: `regret per 100 listings, ${name}, seed ${seed}`,
      value,
      unit: 'money',
      ratio: value / best,
      against: 'the best way without the tool'
    })
}
writeResults('calibration', rows)
