/**
 * Is the outlook calibrated? Simulated listings (tests/bench/simulator.ts), three seeds fixed beforehand,
 * one more arm with sellers whose tapes are biased. Run by `npm run bench`; writes its rows into tests/bench/results.json and prints the tables.
 */
import { type Row, writeResults } from './results.ts'
import { myShare, sideBySide } from './side-by-side.ts'
import { listing, randomFrom, type Seller } from './simulator.ts'
import { askedThrough, MEANS, PLAIN, SEEDS, type Trial, trial } from './world.ts'

/** Listings of each arm: enough for 4,000 in the smallest decile of every seed. */
const LISTINGS = Number(process.env.LISTINGS ?? 150_000)

interface Arm {
  name: string
  seed: number
  seller: Seller
  listings: number
  /** After up to three questions. */
  asked?: true
}
const ARMS: Arm[] = [
  ...SEEDS.map((seed) => ({ name: 'plain sellers', seed, seller: PLAIN, listings: LISTINGS })),
  { name: 'biased sellers, +10 mm around', seed: SEEDS[0], seller: { biasMm: 10 }, listings: LISTINGS / 3 },
  { name: 'plain sellers, after three questions', seed: SEEDS[1], seller: PLAIN, listings: LISTINGS / 3, asked: true }
]

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

function calibrate({ seed, seller, listings, asked }: Arm): Table {
  const random = randomFrom(seed)
  const deciles = Array.from({ length: 10 }, (): Decile => ({ n: 0, given: 0, worked: 0 }))
  let squared = 0
  let n = 0
  for (let i = 0; i < listings; i++) {
    const { truth, told } = listing(random, seller)
    const later = asked ? askedThrough(randomFrom(seed * 1_000_000 + i), truth, told, MEANS).told : told
    const one: Trial | null = trial(truth, later, MEANS)
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

const share = myShare()
if (share !== undefined) console.log(JSON.stringify(calibrate(ARMS[Number(share)] as Arm)))
else {
  const rows: Row[] = []
  const tables = await sideBySide<Table>(
    import.meta.filename,
    ARMS.map((_, place) => String(place))
  )
  for (const [place, { name, seed }] of ARMS.entries()) {
    const { deciles, brier, n: all } = tables[place] as Table
    console.log(`\n${name}, seed ${seed}: ${all} listings, Brier score ${brier.toFixed(4)}`)
    const off = deciles.map(({ n, given, worked }) => (worked - given) / Math.max(1, n))
    for (const [d, { n, given, worked }] of deciles.entries())
      console.log(
        `  ${d * 10}–${d * 10 + 10} %: ${String(n).padStart(6)} listings, given ${((100 * given) / n).toFixed(1)} %, ` +
          `worked ${((100 * worked) / n).toFixed(1)} %, ${(100 * (off[d] ?? 0)).toFixed(1)} points`
      )
    const farthest = Math.max(...off.map(Math.abs))
    const smallest = Math.min(...deciles.map(({ n }) => n))
    for (const [what, value, unit] of [
      ['Brier score', brier, '1'],
      ['farthest decile', 100 * farthest, 'points'],
      ['smallest decile', smallest, 'listings']
    ] as const)
      rows.push({ name: `${what}, ${name}, seed ${seed}`, value, unit, ratio: null, against: null })
  }
  writeResults('calibration', rows)
}
