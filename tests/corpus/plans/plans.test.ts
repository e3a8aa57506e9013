import { describe, expect, it } from 'vitest'
import type { AlterationId } from '../../../core/ids/alterations.ts'
import type { Job, Plan } from '../../../core/plan/plan.ts'
import { reckon } from '../../../core/reckon.ts'
import { cases } from './cases.ts'

const ids = (plan: Plan): AlterationId[] => plan.alterations.map((job) => job.id).sort()

function expectJobs(jobs: Job[], wanted: Partial<Record<AlterationId, [number, number]>>): void {
  expect(jobs.map((job) => job.id).sort()).toEqual(Object.keys(wanted).sort())
  for (const job of jobs) {
    const [least, most] = wanted[job.id] ?? [Number.NaN, Number.NaN]
    expect(job.amountMm, `${job.id} at least`).toBeGreaterThanOrEqual(least)
    expect(job.amountMm, `${job.id} at most`).toBeLessThanOrEqual(most)
  }
}

describe('plans: case by case', () => {
  it.each(cases.map((one) => [one.name, one] as const))('%s', (_name, one) => {
    const known = new Set(['verdict', 'advised', 'plan', 'forbidden', 'noJobs', 'staysWrong', 'because'])
    for (const key of Object.keys(one.expect)) expect(known.has(key), `unknown expectation ${key}`).toBe(true)
    const reckoning = reckon(one.request)
    expect(reckoning.verdict, JSON.stringify(reckoning.because.map((reason) => reason.text))).toBe(one.expect.verdict)
    const advised = reckoning.plans[0]
    if (one.expect.advised) expectJobs(advised?.alterations ?? [], one.expect.advised)
    if (one.expect.plan) {
      const { aim, jobs } = one.expect.plan
      const plan = reckoning.plans.find((candidate) => candidate.aim === aim)
      expect(plan, `a plan for ${aim}`).toBeDefined()
      expectJobs(plan?.alterations ?? [], jobs)
    }
    for (const plan of reckoning.plans) for (const id of one.expect.forbidden) expect(ids(plan), `${plan.aim} has ${id}`).not.toContain(id)
    if (one.expect.noJobs) for (const plan of reckoning.plans) expect(ids(plan)).toEqual([])
    if (one.expect.staysWrong) {
      const wrong = advised ? advised.misfit : reckoning.asItIs.misfit
      expect(wrong.map((misfit) => misfit.point).sort()).toEqual([...one.expect.staysWrong].sort())
    }
    for (const code of one.expect.because ?? []) expect(reckoning.because.map((reason) => reason.code)).toContain(code)
  })
})
