/**
 * Is the outlook calibrated? Simulated listings (tests/bench/simulator.ts) of three grades of sellers, three seeds fixed beforehand, put to the product
 * and looked up. Run by `npm run bench`; prints the tables and writes its rows into tests/bench/results.json.
 *
 * LISTINGS=500 makes it short; SEEDS=1,2 tries out on other seeds (then nothing is written down); GRADES=average takes fewer sellers.
 * JUDGE=simple or ease judges by simple published limits, or by the product's bands around the person's own ideal, instead of the person's own bands.
 * BY=kind,untold prints given and worked by group (kind, untold, sex, grade, verdict, sizes, rescues, cloth; kind+untold crosses two).
 * WHY=1 prints what failed of those given 80 % or more, and what was called wrong or doubted of those given 20 % or less that worked.
 */
import { type Row, writeResults } from './results.ts'
import { myShare, sideBySide } from './side-by-side.ts'
import { GRADES, type Grade, listing, randomFrom } from './simulator.ts'
import { askedThrough, SEEDS, trial } from './world.ts'

/** Listings of each seed and grade. */
const LISTINGS = Number(process.env.LISTINGS ?? 2_600)
const USED_GRADES = (process.env.GRADES?.split(',') as Grade[] | undefined) ?? GRADES
/** Who judges whether it works. */
const JUDGE = process.env.JUDGE ?? 'own'
const BY = process.env.BY?.split(',') ?? []
const WHY = process.env.WHY === '1'

/** How the listings of an arm are put. */
type Way = 'as told' | 'own body exact' | 'after three questions'
interface Arm {
  seed: number
  grade: Grade
  way: Way
  listings: number
}
const SIDE_GRADE: Grade = USED_GRADES.includes('average') ? 'average' : (USED_GRADES[0] ?? 'average')
const ARMS: Arm[] = SEEDS.flatMap((seed) => [
  ...USED_GRADES.map((grade): Arm => ({ seed, grade, way: 'as told', listings: LISTINGS })),
  { seed, grade: SIDE_GRADE, way: 'own body exact', listings: Math.round(LISTINGS / 2) },
  { seed, grade: SIDE_GRADE, way: 'after three questions', listings: Math.round(LISTINGS / 4) }
])

/** One listing, as far as the tables want it. */
interface Seen {
  chance: number
  /** By the judge that was asked for; and by the person's own bands. */
  works: boolean
  own: boolean
  simply: boolean
  byEase: boolean
  asItIs: boolean
  /** Groups that it belongs to. */
  of: Record<string, string>
  failed: { point: string; mm: number; told: boolean }[]
  doubted: { point: string; mm: number; told: boolean }[]
}

function seenIn({ seed, grade, way, listings }: Arm): { seen: Seen[]; unanswered: number } {
  const random = randomFrom(seed * 10 + GRADES.indexOf(grade))
  const seen: Seen[] = []
  let unanswered = 0
  for (let i = 0; i < listings; i++) {
    const { truth, told: toldFirst } = listing(random, grade)
    let told = toldFirst
    if (way === 'own body exact')
      told = { ...told, body: Object.fromEntries(Object.keys(told.body).map((measure) => [measure, truth.body[measure] ?? 0])) }
    if (way === 'after three questions') told = askedThrough(randomFrom(seed * 1_000_000 + i), truth, told).told
    const one = trial(truth, told)
    if (one.chance === null) {
      unanswered++
      continue
    }
    seen.push({
      chance: one.chance,
      works: JUDGE === 'simple' ? one.simplyWorks : JUDGE === 'ease' ? one.worksByOwnEase : one.works,
      own: one.works,
      simply: one.simplyWorks,
      byEase: one.worksByOwnEase,
      asItIs: one.asItIsWorks,
      of: {
        kind: truth.kind,
        untold: one.untold >= 3 ? '3+' : String(one.untold),
        sex: truth.sex,
        grade,
        verdict: one.verdict,
        sizes: told.sizes === undefined ? 'unsaid' : 'said',
        rescues: truth.acceptsRescues ? 'accepted' : 'not accepted',
        cloth: truth.cloth.structure === 'knit' ? 'knit' : truth.cloth.elastane > 0 ? 'stretch' : 'rigid'
      },
      failed: WHY && one.chance >= 0.8 && !one.works ? one.failed : [],
      doubted: WHY && one.chance <= 0.2 && one.works ? one.doubted : []
    })
  }
  return { seen, unanswered }
}

interface Decile {
  n: number
  given: number
  worked: number
}
interface Table {
  deciles: Decile[]
  brier: number
  /** Mean distance of given and worked over the deciles, as many as fall in each, and each alike. */
  weighted: number
  unweighted: number
  farthest: number
  n: number
}
/** A decile with fewer is left out where each counts alike. */
const FEWEST = 25

function tableOf(seen: readonly Seen[]): Table {
  const deciles = Array.from({ length: 10 }, (): Decile => ({ n: 0, given: 0, worked: 0 }))
  let squared = 0
  for (const { chance, works } of seen) {
    const decile = deciles[Math.min(9, Math.floor(chance * 10))] as Decile
    decile.n++
    decile.given += chance
    decile.worked += works ? 1 : 0
    squared += (chance - (works ? 1 : 0)) ** 2
  }
  const filled = deciles.filter(({ n }) => n >= FEWEST).map(({ n, given, worked }) => Math.abs(given - worked) / n)
  return {
    deciles,
    brier: squared / seen.length,
    weighted: deciles.reduce((sum, { given, worked }) => sum + Math.abs(given - worked), 0) / seen.length,
    unweighted: filled.reduce((sum, off) => sum + off, 0) / Math.max(1, filled.length),
    farthest: Math.max(0, ...filled),
    n: seen.length
  }
}

function groupedBy<T>(all: readonly T[], nameOf: (one: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>()
  for (const one of all) {
    const name = nameOf(one)
    const group = groups.get(name)
    if (group === undefined) groups.set(name, [one])
    else group.push(one)
  }
  return groups
}

const percent = (share: number): string => (100 * share).toFixed(1)
const mean = (seen: readonly Seen[], of: (one: Seen) => number): number =>
  seen.reduce((sum, one) => sum + of(one), 0) / Math.max(1, seen.length)

function printTable(title: string, table: Table): void {
  const { deciles, brier, weighted, unweighted, farthest, n } = table
  console.log(`\n${title}: ${n} listings, Brier ${brier.toFixed(4)}`)
  for (const [d, { n: some, given, worked }] of deciles.entries())
    console.log(
      `  ${String(d * 10).padStart(2)}–${d * 10 + 10} %: ${String(some).padStart(6)} listings, given ${percent(given / Math.max(1, some))} %, ` +
        `worked ${percent(worked / Math.max(1, some))} %`
    )
  console.log(
    `  error over the deciles ${percent(weighted)} points weighted, ${percent(unweighted)} unweighted; the farthest ${percent(farthest)}`
  )
}

function printGroups(by: string, seen: readonly Seen[]): void {
  const keys = by.split('+')
  const groups = groupedBy(seen, ({ of }) => keys.map((key) => of[key] ?? '?').join(', '))
  console.log(`\nby ${by}: given → worked, in %; Brier; share of listings`)
  for (const name of [...groups.keys()].toSorted()) {
    const group = groups.get(name) ?? []
    const { brier, weighted } = tableOf(group)
    console.log(
      `  ${name.padEnd(28)} ${percent(mean(group, ({ chance }) => chance)).padStart(5)} → ` +
        `${percent(mean(group, ({ works }) => (works ? 1 : 0))).padStart(5)}   Brier ${brier.toFixed(3)}, deciles ${percent(weighted)}, ` +
        `n ${group.length}`
    )
  }
}

function printWhy(seen: readonly Seen[]): void {
  const sure = seen.filter(({ chance }) => chance >= 0.8)
  const failures = sure.filter(({ works }) => !works)
  console.log(`\ngiven 80 % or more: ${sure.length}, of them failed ${failures.length}; what stayed wrong (a listing may have several):`)
  printPoints(failures.map(({ failed, of }) => ({ points: failed, kind: of.kind ?? '?' })))
  const unsure = seen.filter(({ chance }) => chance <= 0.2)
  const works = unsure.filter((one) => one.works)
  console.log(
    `\ngiven 20 % or less: ${unsure.length}, of them worked ${works.length}; what it called wrong, or worked out as outside its band:`
  )
  printPoints(works.map(({ doubted, of }) => ({ points: doubted, kind: of.kind ?? '?' })))
}
function printPoints(listings: readonly { points: Seen['doubted']; kind: string }[]): void {
  const points = groupedBy(
    listings.flatMap(({ points, kind }) => points.map((one) => ({ ...one, kind }))),
    ({ kind, point, told, mm }) => `${kind} ${point}, ${told ? 'told' : 'untold'}${mm > 0 ? ', too big' : ', too small'}`
  )
  for (const [name, all] of [...points].toSorted(([, a], [, b]) => b.length - a.length).slice(0, 40)) {
    const by = all.reduce((sum, { mm }) => sum + Math.abs(mm), 0) / all.length
    console.log(`  ${String(all.length).padStart(5)} ${name}, by ${by.toFixed(0)} mm`)
  }
}

/** Do the judges agree: the engine on the person's own bands, simple published limits, and the product's bands around the person's own ideal? */
function printJudges(seen: readonly Seen[]): void {
  const shareOf = (which: (one: Seen) => boolean): string => `${percent(mean(seen, (one) => Number(which(one))))} %`
  console.log(
    `\nthe judges: ${shareOf(({ own }) => own)} work by the engine on the person's own bands; ` +
      `${shareOf(({ simply }) => simply)} by simple limits (agree on ${shareOf(({ own, simply }) => own === simply)}); ` +
      `${shareOf(({ byEase }) => byEase)} by the product's bands around one's own ideal (agree on ${shareOf(({ own, byEase }) => own === byEase)})`
  )
  printTable('judged by simple limits', tableOf(seen.map((one) => ({ ...one, works: one.simply }))))
  printTable('judged by the product’s bands around one’s own ideal', tableOf(seen.map((one) => ({ ...one, works: one.byEase }))))
  const untouched = seen.filter(({ of }) => of.verdict === 'wears-as-is')
  const ofThem = (which: (one: Seen) => number): string => `${percent(mean(untouched, which))} %`
  console.log(
    `\nof those told to wear as they are (${untouched.length}): given ${ofThem(({ chance }) => chance)}, ` +
      `wear untouched ${ofThem(({ asItIs }) => Number(asItIs))}, work in the end ${ofThem(({ works }) => Number(works))}`
  )
}

function report(found: readonly { seen: Seen[]; unanswered: number }[]): void {
  const rows: Row[] = []
  const seenOf = (way: Way, only: (arm: Arm) => boolean = () => true): Seen[] =>
    ARMS.flatMap((arm, place) => (arm.way === way && only(arm) ? (found[place]?.seen ?? []) : []))
  const add = (name: string, { brier, weighted, unweighted }: Table): void => {
    rows.push(
      { name: `Brier score, ${name}`, value: brier, unit: '1', ratio: null, against: null },
      { name: `error over the deciles, weighted, ${name}`, value: 100 * weighted, unit: 'points', ratio: null, against: null },
      { name: `error over the deciles, each alike, ${name}`, value: 100 * unweighted, unit: 'points', ratio: null, against: null }
    )
  }
  for (const seed of SEEDS)
    for (const grade of USED_GRADES) {
      const name = `${grade} sellers, seed ${seed}`
      const table = tableOf(seenOf('as told', (arm) => arm.seed === seed && arm.grade === grade))
      printTable(name, table)
      add(name, table)
    }
  const all = seenOf('as told')
  for (const way of ['own body exact', 'after three questions'] as const) {
    const name = `${way}, ${SIDE_GRADE} sellers, all seeds`
    printTable(name, tableOf(seenOf(way)))
    add(name, tableOf(seenOf(way)))
  }
  printTable(
    `as told with one’s own tape, ${SIDE_GRADE} sellers, all seeds (beside the two above)`,
    tableOf(seenOf('as told', (arm) => arm.grade === SIDE_GRADE))
  )
  printTable('all sellers, all seeds', tableOf(all))
  add('all sellers, all seeds', tableOf(all))
  const unanswered = ARMS.reduce((sum, arm, place) => sum + (arm.way === 'as told' ? (found[place]?.unanswered ?? 0) : 0), 0)
  console.log(`\nno chance given: ${unanswered}; a constant at the share that works would have a Brier of ${base(all).toFixed(4)}`)
  for (const by of ['kind', 'untold', ...BY.filter((one) => one !== 'kind' && one !== 'untold')]) printGroups(by, all)
  printJudges(all)
  if (WHY) printWhy(all)
  if (process.env.SEEDS === undefined && JUDGE === 'own') writeResults('calibration', rows)
}
const base = (seen: readonly Seen[]): number => {
  const share = mean(seen, ({ works }) => (works ? 1 : 0))
  return share * (1 - share)
}

const share = myShare()
if (share !== undefined) console.log(JSON.stringify(seenIn(ARMS[Number(share)] as Arm)))
else
  report(
    await sideBySide(
      import.meta.filename,
      ARMS.map((_, place) => String(place))
    )
  )
