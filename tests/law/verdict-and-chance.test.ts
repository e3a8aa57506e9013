/** A verdict never contradicts its own chance. */
import { describe, expect, it } from 'vitest'
import { reckon } from '../../core/reckon.ts'
import { randomFrom, requestFrom } from './requests.ts'

const SEED = 9_191
/** What is said to be 5 in 10 and more; what is said to be 6 in 10 and more. */
const LIKELY = 0.45
const MORE = 0.55

describe('verdict and chance', () => {
  it(`agree, or it is as far as told (seed ${SEED})`, () => {
    const random = randomFrom(SEED)
    const count: Record<string, number> = {}
    const wrong: string[] = []
    for (let r = 0; r < 300; r++) {
      const request = requestFrom(random)
      if (random() < 0.6) request.garment.measures = request.garment.measures.filter(() => random() < 0.5)
      const { verdict, chance, chanceIf, asFarAsTold } = reckon(request)
      if (chance === null) continue
      const low = chance < LIKELY
      const kind = `${verdict}, ${low ? 'unlikely' : 'likely'}`
      count[kind] = (count[kind] ?? 0) + 1
      if (verdict === 'wears-as-is' && low && !asFarAsTold) wrong.push(`${r}: ${kind}, not said to be as far as told`)
      if ((verdict === 'alters-to-fit' || verdict === 'needs-a-tailor') && low && (chanceIf ?? 0) < LIKELY)
        wrong.push(`${r}: ${kind}, and no condition brings it there`)
      if (verdict === 'leave-it' && chance >= MORE) wrong.push(`${r}: left at ${chance}`)
      for (const one of [chance, chanceIf ?? 0]) expect(one >= 0 && one <= 1).toBe(true)
    }
    console.info(`verdict and chance: ${JSON.stringify(count)}`)
    expect(wrong).toEqual([])
    expect(Object.keys(count).length).toBeGreaterThan(5)
  }, 60_000)
})
