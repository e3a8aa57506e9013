/**
 * Does following what it says pay? Simulated listings (tests/bench/simulator.ts), decided by the verdict, after up to three questions, by the price that
 * it gives, and by the ways that people have without it; each against knowing everything. Run by `npm run bench`; writes tests/bench/results.json.
 */
import type { PointId } from '../../core/ids/points.ts'
import { type Reckoning, reckon, type Verdict } from '../../core/reckon.ts'
import { type Row, writeResults } from './results.ts'
import { myShare, sideBySide } from './side-by-side.ts'
import { type About, answered, listing, type Random, randomFrom, type Told, type Truth } from './simulator.ts'
import { askedThrough, MARK_MM, MEANS, PLAIN, SEEDS, toldRequest, total, trueRequest } from './world.ts'

const DECISIONS = Number(process.env.DECISIONS ?? 8_000)

/** How much of its worth is left of a garment that is so many mm off in all, past a mark. */
type Kept = (offMm: number) => number
const PAYOFFS: Record<string, Kept> = {
  /** What does not fit within a mark is worth nothing. */
  'worn or not': (offMm) => (offMm <= MARK_MM ? 1 : 0),
  /**
   * A little off is worth a little less, 25 mm off nothing: the fitting tolerance of a sizing study (Jung, Kwon and You, men of the
   * 1988 US Army survey, ±25 mm).
   */
  'a little less': (offMm) => Math.max(0, 1 - Math.max(0, offMm - MARK_MM) / 25)
}

/** What buying is worth where everything is known. Failing costs the price. */
function worthOfBuying(known: Reckoning, price: number, kept: Kept): { asItIs: number; altered: number } {
  const worth = (misfit: readonly { mm: number }[], work: number): number => (MEANS.garmentWorth ?? 0) * kept(total(misfit)) - price - work
  const asItIs = worth(known.asItIs.misfit, 0)
  const own = known.plans.filter(({ aim }) => aim !== 'tailor')
  return { asItIs, altered: Math.max(asItIs, ...own.map(({ misfit, cost }) => worth(misfit, cost ?? 0))) }
}

interface Listed {
  truth: Truth
  told: Told
}
interface Offer extends Listed {
  price: number
  /** What it says of the listing as it stands. */
  asTold: Reckoning
  /** What it says when three questions were answered. */
  whenAsked: Reckoning
  random: Random
}
type Choice = (offer: Offer) => { buys: boolean; alters: boolean }

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
/** The verdict as it stands on what is told, and what it says of the price: no more than pays at the chance that is given. */
const THE_VERDICT: Choice = ({ asTold }) => ({ buys: bought(asTold.verdict), alters: true })
const THE_PRICE: Choice = ({ price, asTold }) => ({ buys: price <= (asTold.worth?.risk ?? 0), alters: true })

const THE_VERDICT_WHEN_ASKED: Choice = ({ whenAsked }) => ({ buys: bought(whenAsked.verdict), alters: true })
/** How far the seller's tape alone leads astray: the verdict where every figure, measure and fact of the make is told. */
const THE_VERDICT_ALL_TOLD: Choice = ({ told: toldFirst, truth, price, random }) => {
  let told = toldFirst
  const all: About[] = [
    ...Object.keys(truth.garment).map((point) => ({ point })),
    ...Object.keys(truth.body).map((body) => ({ body })),
    ...Object.keys(truth.made).map((made) => ({ made }))
  ]
  for (const about of all) told = answered(random, { truth, told }, about, PLAIN) ?? told
  return { buys: bought(reckon(toldRequest(told, MEANS, { amount: price })).verdict), alters: true }
}
const THE_PRICE_WHEN_ASKED: Choice = ({ price, whenAsked }) => ({ buys: price <= (whenAsked.worth?.risk ?? 0), alters: true })

/** With the small remainders that it calls close. */
const OR_CLOSE_WHEN_ASKED: Choice = ({ whenAsked: { verdict } }) => ({ buys: bought(verdict) || verdict === 'comes-close', alters: true })

const CHOICES: Record<string, Choice> = {
  'the verdict': THE_VERDICT,
  'the price it gives': THE_PRICE,
  'the verdict after three questions': THE_VERDICT_WHEN_ASKED,
  'the verdict after three questions, comes close bought too': OR_CLOSE_WHEN_ASKED,
  'the price it gives after three questions': THE_PRICE_WHEN_ASKED,
  'the verdict where all is told': THE_VERDICT_ALL_TOLD,
  'the size label': SIZE_LABEL,
  'like a favourite, never altering': LIKE_A_FAVOURITE,
  'rules of thumb': RULES_OF_THUMB
}
const WITHOUT = ['the size label', 'like a favourite, never altering', 'rules of thumb']

/** By payoff, by way of deciding: what is lost against knowing everything, money per 100 listings. */
function regrets(seed: number): Record<string, Record<string, number>> {
  const random: Random = randomFrom(seed)
  const lost = Object.fromEntries(
    Object.keys(PAYOFFS).map((payoff) => [payoff, Object.fromEntries(Object.keys(CHOICES).map((name) => [name, 0]))])
  )
  for (let i = 0; i < DECISIONS; i++) {
    const listed = listing(random, PLAIN)
    const { truth } = listed
    const price = 8 + random() * 34
    const known = reckon(trueRequest(truth, Object.keys(truth.garment) as PointId[], MEANS, { amount: price }), { outlook: false })
    const answers = () => randomFrom(seed * 100_000 + i)
    const whenAsked = askedThrough(answers(), truth, listed.told, MEANS, { amount: price }).answer
    const asTold = reckon(toldRequest(listed.told, MEANS, { amount: price }))
    const payoffs = Object.entries(PAYOFFS).map(([payoff, kept]) => ({
      sums: lost[payoff] ?? {},
      worth: worthOfBuying(known, price, kept)
    }))
    for (const [name, choose] of Object.entries(CHOICES)) {
      const { buys, alters } = choose({ ...listed, price, asTold, whenAsked, random: answers() })
      for (const { sums, worth } of payoffs)
        sums[name] = (sums[name] ?? 0) + Math.max(0, worth.altered) - (buys ? (alters ? worth.altered : worth.asItIs) : 0)
    }
  }
  for (const sums of Object.values(lost)) for (const [name, sum] of Object.entries(sums)) sums[name] = (100 * sum) / DECISIONS
  return lost
}

const share = myShare()
if (share !== undefined) console.log(JSON.stringify(regrets(Number(share))))
else {
  const rows: Row[] = []
  const all = await sideBySide<ReturnType<typeof regrets>>(import.meta.filename, SEEDS.map(String))
  for (const [place, seed] of SEEDS.entries())
    for (const [payoff, lost] of Object.entries(all[place] ?? {})) {
      const best = Math.min(...WITHOUT.map((name) => lost[name] ?? Number.POSITIVE_INFINITY))
      console.log(`\nregret per 100 listings, ${payoff}, seed ${seed}:`)
      for (const [name, value] of Object.entries(lost)) {
        console.log(`  ${name}: ${value.toFixed(0)} (${(value / best).toFixed(2)} of the best without it)`)
        rows.push({
          name: `${payoff}: ${name}, seed ${seed}`,
          value,
          unit: 'money per 100 listings',
          ratio: value / best,
          against: 'the best way without the tool'
        })
      }
    }
  writeResults('regret', rows)
}
