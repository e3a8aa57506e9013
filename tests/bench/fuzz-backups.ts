/**
 * Merges backup files that something happened to: none may throw or hang, lose what is here, do other than it was said to, or change anything the
 * third time. `npx tsx tests/bench/fuzz-backups.ts`; FILES=100000, SEED=7.
 */
import { emptyRecords, faultsOfMerging, mutatedBackup } from '../law/mutated-backups.ts'
import { randomFrom } from '../law/requests.ts'

const FILES = Number(process.env.FILES ?? 100_000)
const SEED = Number(process.env.SEED ?? 20261130)
/** So many are merged into one set of records, one after another. */
const A_DATABASE = 16
/** Of so many one comes three times. */
const EACH = 5
const HANGS_MS = 20_000
const SHOWN = 20
/** It is told how far it is each so many. */
const TOLD = 2_000

const random = randomFrom(SEED)
let [taken, wrong, slowest] = [0, 0, 0]
for (let begun = 0; begun < FILES; begun += A_DATABASE) {
  const { records, end } = await emptyRecords()
  for (let n = begun; n < Math.min(FILES, begun + A_DATABASE); n++) {
    const text = mutatedBackup(random)
    const began = performance.now()
    const faults: string[] = []
    try {
      const merged = await faultsOfMerging(records, text, n, n % EACH === 0)
      if (merged.taken) taken++
      faults.push(...merged.faults)
    } catch (error) {
      faults.push(String(error))
    }
    const took = performance.now() - began
    slowest = Math.max(slowest, took)
    if (took > HANGS_MS) faults.push(`${Math.round(took)} ms`)
    if (faults.length === 0) continue
    wrong++
    if (wrong <= SHOWN) console.log(`file ${n}: ${faults.join('; ')}`)
  }
  await end()
  const done = begun + A_DATABASE
  if (done % TOLD < A_DATABASE && done < FILES) console.log(`${done} files, ${taken} taken, ${wrong} wrong so far`)
}
console.log(
  `seed ${SEED}: ${FILES} mutated backups, ${taken} taken, the others refused with a reason, ${wrong} wrong, the slowest ${Math.round(slowest)} ms`
)
if (wrong > 0) process.exitCode = 1
