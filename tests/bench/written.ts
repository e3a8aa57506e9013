/**
 * How texts in the manner of real listings are read: measures (F1, by language), flat or around, kind with its table of confusions, price,
 * fibres. `npx tsx tests/bench/written.ts [FILE.json …]` reads cases of files instead of those of the corpus; `ALL=1` names every fault.
 */
import { readFileSync } from 'node:fs'
import { written } from '../corpus/written/written.ts'
import { compare, unlike, type WrittenCase } from '../corpus/written/written-case.ts'

const files = process.argv.slice(2)
const cases: WrittenCase[] = (
  files.length > 0 ? files.map((file) => JSON.parse(readFileSync(file, 'utf8'))) : Object.values(written)
).flat()

interface Score {
  texts: number
  whole: number
  stated: number
  found: number
  otherBasis: number
  wrong: number
  kind: number
  price: number
  fibres: number
}
const none = (): Score => ({ texts: 0, whole: 0, stated: 0, found: 0, otherBasis: 0, wrong: 0, kind: 0, price: 0, fibres: 0 })
const scores = new Map<string, Score>()
const confused = new Map<string, number>()

for (const one of cases) {
  const compared = compare(one)
  const { reading, found, otherBasis, missed, wrong } = compared
  const faults = unlike(one, compared)
  for (const key of [one.lang, 'all']) {
    const score = scores.get(key) ?? none()
    scores.set(key, score)
    score.texts++
    score.whole += faults.length === 0 ? 1 : 0
    score.stated += one.measures.length
    score.found += found.length + otherBasis.length
    score.otherBasis += otherBasis.length
    score.wrong += wrong.length
    score.kind += reading.garment.kind === one.kind ? 1 : 0
    score.price += faults.some((fault) => fault.startsWith('price')) ? 0 : 1
    score.fibres += faults.some((fault) => fault.startsWith('fibres')) ? 0 : 1
  }
  if (reading.garment.kind !== one.kind) {
    const pair = `${one.kind} read as ${reading.garment.kind}`
    confused.set(pair, (confused.get(pair) ?? 0) + 1)
  }
  if (process.env.ALL && faults.length > 0) console.log(`${one.id} (${one.class}) ${one.title ?? ''}\n   ${faults.join('\n   ')}`)
  if (process.env.ALL && missed.length === one.measures.length && missed.length > 0) console.log('   nothing found')
}

const percent = (part: number, of: number): string => (of === 0 ? '-' : ((100 * part) / of).toFixed(1))
console.table(
  Object.fromEntries(
    [...scores].map(([key, s]) => [
      key,
      {
        texts: s.texts,
        whole: s.whole,
        recall: percent(s.found, s.stated),
        precision: percent(s.found, s.found + s.wrong),
        F1: percent(2 * s.found, s.stated + s.found + s.wrong),
        basis: percent(s.found - s.otherBasis, s.found),
        kind: percent(s.kind, s.texts),
        price: percent(s.price, s.texts),
        fibres: percent(s.fibres, s.texts)
      }
    ])
  )
)
for (const [pair, times] of [...confused].sort((a, b) => b[1] - a[1])) console.log(`${String(times).padStart(3)}  ${pair}`)
