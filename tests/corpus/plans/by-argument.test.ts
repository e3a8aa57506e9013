import { describe, expect, it } from 'vitest'
import type { Plan } from '../../../core/plan/plan.ts'
import { reckon } from '../../../core/reckon.ts'
import { type ArguedCase, argued } from './by-argument.ts'

const between = (mm: number | undefined, [least, most]: [number, number], what: string): void => {
  expect(mm, `${what} at least`).toBeGreaterThanOrEqual(least - 0.05)
  expect(mm, `${what} at most`).toBeLessThanOrEqual(most + 0.05)
}
const entries = <K extends string, V>(record: Partial<Record<K, V>>): [K, V][] => Object.entries(record) as [K, V][]

function holds(one: ArguedCase): void {
  const reckoning = reckon(one.request)
  expect(reckoning.verdict, JSON.stringify(reckoning.because.map(({ text }) => text))).toBe(one.expect.verdict)
  const advised: Plan | undefined = reckoning.plans[0]
  const jobs = advised?.alterations ?? []
  expect(jobs.map(({ id }) => id).sort()).toEqual(Object.keys(one.expect.jobs).sort())
  for (const job of jobs) {
    const wanted = one.expect.jobs[job.id]
    if (wanted !== undefined) between(job.amountMm, wanted, job.id)
    const way = one.expect.direction?.[job.id]
    if (way !== undefined) expect(job.direction, job.id).toBe(way)
    for (const [point, range] of entries(one.expect.amounts?.[job.id] ?? {})) between(job.amounts[point], range, `${job.id} ${point}`)
    expect(job.softLimit, `${job.id} soft`).toBe([one.expect.soft].flat().includes(job.id))
  }
  const wrong = advised?.misfit ?? reckoning.asItIs.misfit
  expect(wrong.map(({ point }) => point).sort()).toEqual(Object.keys(one.expect.staysWrong).sort())
  for (const [point, range] of entries(one.expect.staysWrong)) between(wrong.find((each) => each.point === point)?.mm, range, point)
  if (one.expect.minutes !== undefined) between(advised?.minutes, one.expect.minutes, 'minutes')
  if (one.expect.level !== undefined) expect(advised?.level).toBe(one.expect.level)
  for (const side of ['left', 'right'] as const) {
    const range = one.expect.sides?.[side]
    const lines = jobs.flatMap((job) => job.lines).filter((line) => line.side === side)
    if (range !== undefined) {
      expect(lines, side).toHaveLength(1)
      between(lines[0]?.offsetMm, range, side)
    }
  }
}

describe('plans: argued in figures first', () => {
  it.each(argued.map((one) => [one.name, one] as const))('%s', (_name, one) => holds(one))
  it('every case is argued in figures, under a name of its own', () => {
    for (const { argument, name } of argued) expect(argument, name).toMatch(/\d/)
    expect(new Set(argued.map(({ name }) => name)).size).toBe(argued.length)
  })
})
