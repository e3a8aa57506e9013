/**
 * Is the outlook calibrated? Simulated listings (tests/bench/simulator.ts), three seeds fixed beforehand,
 * one more arm with sellers whose tapes are biased. Run by `npm run bench`; writes its rows into tests/bench/results.json and prints the tables.
 */
import { type Row, writeResults } from './results.ts'
import { listing, randomFrom, type Seller } from './simulator.ts'
import { MEANS, PLAIN, SEEDS, type Trial, trial } from './world.ts'

/** Listings a seed; deciles in the middle hold a twentieth each. */
const LISTINGS = Number(process.env.LISTINGS ?? 60_000)

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

const rows: Row[] = []
let worst = 0
const together = Array.from({ length: 10 }, (): Decile => ({ n: 0, given: 0, worked: 0 }))
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
      const all = together[d]
      if (arm !== 'plain sellers' || all === undefined) continue
      worst = Math.max(worst, Math.abs(gap))
      all.n += n
      all.given += given
      all.worked += worked
    }
    rows.push({ name: `Brier score, ${arm}, seed ${seed}`, value: table.brier, unit: '1', ratio: null, against: null })
  }
}
const farthest = Math.max(...together.map(({ n, given, worked }) => Math.abs(worked - given) / Math.max(1, n)))
rows.push({
  name: 'calibration, farthest decile of the three seeds together',
  value: 100 * farthest,
  unit: 'points',
  ratio: null,
  against: null
})
rows.push({ name: 'calibration, farthest decile of any one seed', value: 100 * worst, unit: 'points', ratio: null, against: null })
rows.push({
  name: 'listings in the smallest decile, three seeds together',
  value: Math.min(...together.map(({ n }) => n)),
  unit: 'listings',
  ratio: null,
  against: null
})
writeResults('calibration', rows)
