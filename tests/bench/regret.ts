/**
 * Does following what it says pay? Simulated listings (tests/bench/simulator.ts) of average sellers, decided by the verdict, after up to three
 * questions, by the price that it gives, and by the ways that people have without it; each against knowing everything. Run by `npm run bench`; prints
 * the tables and writes tests/bench/results.json. DECISIONS=100 makes it short; SEEDS=1,2 tries out on others (then nothing is written down);
 * GRADES=careless takes other sellers.
 */
import { type Reckoning, reckon, type Verdict } from '../../core/reckon.ts'
import { type Row, writeResults } from './results.ts'
import { myShare, sideBySide } from './side-by-side.ts'
import {
  type About,
  answered,
  bodyBeneath,
  type Grade,
  listing,
  normal,
  type Random,
  randomFrom,
  type Told,
  type Truth,
  usualEase
} from './simulator.ts'
import { askedThrough, type Known, known, MARK_MM, ownPlans, SEEDS, toldRequest, total, WORTH } from './world.ts'

/** Decisions of each seed. */
const DECISIONS = Number(process.env.DECISIONS ?? 3_600)
const GRADE = (process.env.GRADES ?? 'average') as Grade

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
function worthOfBuying(all: Known, truth: Truth, price: number, kept: Kept): { asItIs: number; altered: number } {
  const worth = (misfit: readonly { mm: number }[], work: number): number => WORTH * kept(total(misfit)) - price - work
  const asItIs = worth(all.asItIs.misfit, 0)
  return { asItIs, altered: Math.max(asItIs, ...ownPlans(all, truth).map(({ misfit, cost }) => worth(misfit, cost ?? 0))) }
}

interface Offer {
  truth: Truth
  told: Told
  price: number
  /** What it says of the listing as it stands. */
  asTold: Reckoning
  /** What it says when three questions were answered. */
  whenAsked: Reckoning
  random: Random
}
type Choice = (offer: Offer) => { buys: boolean; alters: boolean }

/** The ways of deciding that people have without the tool: the label of one's own size. */
const SIZE_LABEL: Choice = ({ told }) => ({ buys: told.sizesOff === 0, alters: false })

const LENGTHS = new Set(['inseam', 'sleeveLength', 'shoulderWidth'])
/** A garment of one's own that fits: the ideal, as one's own tape has it. Told figures within an inch around or half an inch along; nothing altered. */
const FAVOURITE_TAPE = { around: 8, along: 5 }
const LIKE_A_FAVOURITE: Choice = ({ truth, told, random }) => ({
  buys: Object.entries(truth.wants).every(([point, { ideal, most }]) => {
    const mm = told.garment[point]
    if (mm === undefined) return true
    const along = LENGTHS.has(point)
    const off = mm - ideal - normal(random, 0, along ? FAVOURITE_TAPE.along : FAVOURITE_TAPE.around)
    // where it stands free it is not held against the favourite
    return off >= -(along ? 13 : 26) && (off <= (along ? 13 : 26) || most === Number.POSITIVE_INFINITY)
  }),
  alters: false
})

/** Rules of thumb: the usual ease on one's own figures; in up to so much, out up to so much, lengths up freely; shoulders must fit. */
const THUMB: Record<string, [number, number]> = {
  waist: [-25, 60],
  hip: [-25, 60],
  thigh: [-25, 60],
  chest: [-40, 70],
  hem: [-40, 90],
  shoulderWidth: [-20, 25],
  sleeveLength: [-20, 45],
  inseam: [-30, 120],
  neck: [-10, 25]
}
/** Free where the cut is seen to be wide. */
const seenFree = ({ cut }: Told, point: string): boolean =>
  point === 'hip' ? ['a-line', 'flared', 'fit-flare'].includes(cut.silhouette ?? '') : point === 'thigh' && cut.leg === 'wide'
const RULES_OF_THUMB: Choice = ({ told, truth }) => {
  const ease = usualEase(told.kind, truth.sex)
  return {
    buys: Object.entries(THUMB).every(([point, [small, big]]) => {
      const measure = bodyBeneath(told.kind, truth.sex, point)
      const band = told.body.waistbandGirth ?? told.body.waistGirth
      const body =
        measure === 'band'
          ? band
          : told.body[measure === 'waistGirth' && told.body.waistGirth === undefined ? 'waistbandGirth' : (measure ?? '')]
      const mm = told.garment[point]
      if (body === undefined || mm === undefined || (point === 'inseam' && told.cut.legLength === 'ankle')) return true
      const off = mm - body - (ease[point] ?? 0)
      return off >= small && (off <= big || seenFree(told, point))
    }),
    alters: true
  }
}
const NOTHING: Choice = () => ({ buys: false, alters: false })

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
    ...[...Object.keys(truth.made), ...Object.keys(truth.cut), 'fibre'].map((made) => ({ made }))
  ]
  for (const about of all) told = answered(random, { truth, told }, about) ?? told
  return { buys: bought(reckon(toldRequest(told, { amount: price })).verdict), alters: true }
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
  'rules of thumb': RULES_OF_THUMB,
  'nothing is bought': NOTHING
}
const WITHOUT = ['the size label', 'like a favourite, never altering', 'rules of thumb']

const GROUPS = ['all', 'those who accept rescues', 'those who do not'] as const
type Sums = Record<string, { lost: number; bought: number }>
interface Lost {
  /** By group: how many decisions; by payoff, by way of deciding, what is lost against knowing everything, and how many are bought. */
  decisions: Record<string, number>
  lost: Record<string, Record<string, Sums>>
}

/** A seed is asked in two halves, so that all processes have the same to do. */
const HALVES = [0, 1]
function regrets(seed: number, half: number): Lost {
  const random: Random = randomFrom(seed * 10 + half)
  const nothing = (): Sums => Object.fromEntries(Object.keys(CHOICES).map((name) => [name, { lost: 0, bought: 0 }]))
  const all: Lost = {
    decisions: Object.fromEntries(GROUPS.map((group) => [group, 0])),
    lost: Object.fromEntries(GROUPS.map((group) => [group, Object.fromEntries(Object.keys(PAYOFFS).map((payoff) => [payoff, nothing()]))]))
  }
  for (let i = 0; i < DECISIONS / HALVES.length; i++) {
    const { truth, told } = listing(random, GRADE)
    const price = 8 + random() * 34
    const everything = known(truth, { amount: price })
    const answers = () => randomFrom((seed * 10 + half) * 100_000 + i)
    const whenAsked = askedThrough(answers(), truth, told, { amount: price }).answer
    const asTold = reckon(toldRequest(told, { amount: price }))
    const groups = ['all', truth.acceptsRescues ? GROUPS[1] : GROUPS[2]]
    for (const group of groups) all.decisions[group] = (all.decisions[group] ?? 0) + 1
    const payoffs = Object.entries(PAYOFFS).map(([payoff, kept]) => ({ payoff, worth: worthOfBuying(everything, truth, price, kept) }))
    for (const [name, choose] of Object.entries(CHOICES)) {
      const { buys, alters } = choose({ truth, told, price, asTold, whenAsked, random: answers() })
      for (const { payoff, worth } of payoffs)
        for (const group of groups) {
          const sum = all.lost[group]?.[payoff]?.[name]
          if (sum === undefined) continue
          sum.lost += Math.max(0, worth.altered) - (buys ? (alters ? worth.altered : worth.asItIs) : 0)
          sum.bought += buys ? 1 : 0
        }
    }
  }
  return all
}

/** Prints one table and gives its rows. */
function tableOf(title: string, of: string, sums: Sums, decisions: number): Row[] {
  const best = Math.min(...WITHOUT.map((name) => sums[name]?.lost ?? Number.POSITIVE_INFINITY))
  console.log(`\nregret per 100 listings, ${title}, ${of} (${decisions} decisions):`)
  return Object.entries(sums).map(([name, { lost, bought: some }]) => {
    const value = (100 * lost) / Math.max(1, decisions)
    console.log(
      `  ${name.padEnd(58)} ${value.toFixed(0).padStart(6)}   ${(lost / best).toFixed(2)} of the best without it, ` +
        `${((100 * some) / Math.max(1, decisions)).toFixed(0)} in 100 bought`
    )
    return {
      name: `${title}: ${name}, ${of}`,
      value,
      unit: 'money per 100 listings',
      ratio: lost / best,
      against: 'the best way without the tool'
    }
  })
}

const added = (all: readonly Sums[]): Sums =>
  Object.fromEntries(
    Object.keys(CHOICES).map((name) => [
      name,
      {
        lost: all.reduce((sum, one) => sum + (one[name]?.lost ?? 0), 0),
        bought: all.reduce((sum, one) => sum + (one[name]?.bought ?? 0), 0)
      }
    ])
  )

const share = myShare()
if (share !== undefined) {
  const [seed = 0, half = 0] = share.split(' ').map(Number)
  console.log(JSON.stringify(regrets(seed, half)))
} else {
  const rows: Row[] = []
  const shares = SEEDS.flatMap((seed) => HALVES.map((half) => `${seed} ${half}`))
  const found = await sideBySide<Lost>(import.meta.filename, shares)
  const halvesOf = (place: number): Lost[] => found.slice(place * HALVES.length, (place + 1) * HALVES.length)
  const runs = [...SEEDS.map((seed, place) => ({ of: `seed ${seed}`, run: halvesOf(place) })), { of: 'all seeds', run: found }]
  for (const { of, run } of runs)
    for (const group of GROUPS)
      for (const payoff of Object.keys(PAYOFFS)) {
        const sums = added(run.map((one) => one.lost[group]?.[payoff] ?? {}))
        const decisions = run.reduce((sum, one) => sum + (one.decisions[group] ?? 0), 0)
        rows.push(...tableOf(`${payoff}, ${group}`, of, sums, decisions))
      }
  if (process.env.SEEDS === undefined) writeResults('regret', rows)
}
