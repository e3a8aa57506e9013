import { describe, expect, it } from 'vitest'
import { alterationsFor } from '../../../core/alterations/alterations-for.ts'
import { CATALOGUE, WITHOUT_ROW } from '../../../core/alterations/catalogue.ts'
import { garmentAsWorn } from '../../../core/garment/garment-as-worn.ts'
import { ALTERATIONS } from '../../../core/ids/alterations.ts'
import { reckon } from '../../../core/reckon.ts'
import { hasMessage } from '../../../core/words/say.ts'
import { pairs } from './each-alteration.ts'

const name = ({ id, direction }: { id: string; direction: string }): string => `${id}/${direction}`

describe('each alteration, where it is the answer', () => {
  it.each(pairs.map((pair) => [name(pair), pair.answer.why, pair] as const))(
    '%s: %s',
    (_name, _why, { id, direction, answer, rescue = false }) => {
      const reckoning = reckon(answer.request)
      const holdsIt = reckoning.plans.find(({ alterations }) => alterations.some((job) => job.id === id))
      const advised = rescue ? holdsIt : reckoning.plans[0]
      expect(advised?.alterations.map((job) => job.id).sort(), JSON.stringify(reckoning.because.map(({ text }) => text))).toEqual(
        [id, ...(answer.beside ?? [])].sort()
      )
      const job = advised?.alterations.find((one) => one.id === id)
      expect(job?.direction).toBe(direction)
      const option = alterationsFor(garmentAsWorn(answer.request.garment), answer.request.limits).options.find(
        ({ key }) => key === `${id}/${direction}`
      )
      expect(option?.rescue).toBe(rescue)
      expect(job?.amountMm).toBeGreaterThanOrEqual(answer.amount[0])
      expect(job?.amountMm).toBeLessThanOrEqual(answer.amount[1])
      expect(job?.limitBecause.length).toBeGreaterThan(10)
      expect(advised?.misfit.reduce((sum, { mm }) => sum + Math.abs(mm), 0)).toBeLessThanOrEqual(2)
    }
  )
})

describe('each alteration, where it is forbidden or useless', () => {
  it.each(pairs.map((pair) => [name(pair), pair.never.why, pair] as const))('%s: %s', (_name, _why, { id, direction, never }) => {
    const { plans } = reckon(never.request)
    for (const plan of plans)
      expect(
        plan.alterations.filter((job) => job.id === id && job.direction === direction),
        plan.aim
      ).toEqual([])
  })
})

describe('the catalogue is whole', () => {
  const rows = new Set(CATALOGUE.map(name))
  it.each([...ALTERATIONS])('%s has a row, a source and words', (id) => {
    expect(hasMessage(`alteration.${id}`)).toBe(true)
    const mine = CATALOGUE.filter((row) => row.id === id)
    if (WITHOUT_ROW[id] !== undefined) return expect(mine).toEqual([])
    expect(mine.length, `${id} needs a row in core/alterations`).toBeGreaterThan(0)
    for (const row of mine) {
      expect(row.source.length, `${name(row)} needs a source`).toBeGreaterThan(1)
      expect(row.kinds.length).toBeGreaterThan(0)
      expect(hasMessage(`do.${row.id}.${row.direction}`), `${name(row)} needs the words "do.${row.id}.${row.direction}"`).toBe(true)
    }
  })
  it('every row has its two cases, and every case a row', () => {
    expect(pairs.map(name).sort()).toEqual([...rows].sort())
  })
  it('every row has a place of its own', () => {
    expect(rows.size).toBe(CATALOGUE.length)
  })
  it('what excludes another names something that exists', () => {
    for (const row of CATALOGUE) for (const id of row.excludes ?? []) expect(ALTERATIONS).toContain(id)
  })
})
