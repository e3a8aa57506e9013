/** Whatever happened to a backup file, it is read or refused, loses nothing that is here, and changes nothing when it comes again. */
import { expect, test } from 'vitest'
import { emptyRecords, faultsOfMerging, mutatedBackup } from './mutated-backups.ts'
import { randomFrom } from './requests.ts'

const SEED = 20_261_130
const FILES = 240
const A_DATABASE = 40

test(`${FILES} mutated backups, merged one after another (seed ${SEED})`, { timeout: 120_000 }, async () => {
  const random = randomFrom(SEED)
  let [taken, refused] = [0, 0]
  for (let begun = 0; begun < FILES; begun += A_DATABASE) {
    const { records, end } = await emptyRecords()
    for (let n = begun; n < begun + A_DATABASE; n++) {
      const text = mutatedBackup(random)
      const merged = await faultsOfMerging(records, text, n, n % 3 === 0)
      expect(merged.faults, `file ${n}`).toEqual([])
      if (merged.taken) taken++
      else refused++
    }
    await end()
  }
  // both were tried, often
  expect(Math.min(taken, refused)).toBeGreaterThan(FILES / 20)
})
