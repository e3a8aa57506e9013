/** Each case whole: text → reading → garment → answer, beside what a tailor says. */
import { describe, expect, it } from 'vitest'
import type { PointId } from '../../../core/ids/points.ts'
import { readListing } from '../../../core/reading/read-listing.ts'
import { garmentFrom } from '../../../core/reading/request/garment-from.ts'
import { type Reckoning, reckon, type Verdict } from '../../../core/reckon.ts'
import { everyday } from './everyday.ts'
import { everyday2 } from './everyday-2.ts'
import { everyday3 } from './everyday-3.ts'
import { everyday4 } from './everyday-4.ts'
import { everyday5 } from './everyday-5.ts'
import { hard } from './hard.ts'
import { hard2 } from './hard-2.ts'
import { hard3 } from './hard-3.ts'
import { NOT_YET } from './not-yet.ts'
import type { TailorCase, TailorJob } from './tailor-case.ts'

/** Amounts move in steps of the mark on each line. */
const STEP_MM = 4
/** Nothing is advised there, whatever a plan beside it holds. */
const NO_ADVICE: ReadonlySet<Verdict> = new Set<Verdict>(['leave-it', 'too-little-told'])

const answerTo = ({ text, body, sizes, fit, level, tailor }: TailorCase): Reckoning =>
  reckon({
    garment: garmentFrom(readListing({ text }), []),
    wearer: {
      body: Object.fromEntries(Object.entries(body).map(([id, mm]) => [id, { mm }])),
      fit,
      ...(sizes === undefined ? {} : { sizes })
    },
    means: { level, tailor }
  })

function offJob({ about, point, lessMm, moreMm }: TailorJob, moved: ReadonlyMap<PointId, number>): string[] {
  const mm = moved.get(point) ?? 0
  const [by, range] = lessMm === undefined ? [mm, moreMm] : [-mm, lessMm]
  if (range === undefined) return [`no amount is named for "${about}"`]
  return by >= range[0] - STEP_MM && by <= range[1] + STEP_MM ? [] : [`${about}: ${point} ${by}, not ${range[0]} to ${range[1]}`]
}

/** All in which the answer is not the tailor's. */
function unlike(one: TailorCase): string[] {
  const { verdict, plans, asItIs, ask } = answerTo(one)
  const wanted = [one.verdict].flat()
  const jobs = verdict === 'wears-as-is' || verdict === 'too-little-told' ? [] : (plans[0]?.alterations ?? [])
  const moved = new Map<PointId, number>()
  for (const { amounts } of jobs)
    for (const [point, mm] of Object.entries(amounts) as [PointId, number][]) moved.set(point, (moved.get(point) ?? 0) + mm)
  const wrong = new Set(asItIs.misfit.map(({ point }) => point))
  const asked = ask.map(({ point, about, body }) => String(point ?? about ?? body))
  const isAdvised = !wanted.some((each) => NO_ADVICE.has(each))
  return [
    ...(wanted.includes(verdict) ? [] : [`${verdict}, not ${wanted.join(' or ')}`]),
    ...(isAdvised ? one.jobs.flatMap((job) => offJob(job, moved)) : []),
    ...(isAdvised && one.jobs.length === 0 && jobs.length > 0
      ? [`${jobs.map(({ id }) => id).join(', ')}, where nothing is to be done`]
      : []),
    ...one.notWrong.filter((point) => wrong.has(point)).map((point) => `${point} is called wrong`),
    ...(one.wrong ?? []).filter((point) => !wrong.has(point)).map((point) => `${point} is not called wrong`),
    ...(one.ask ?? []).filter((what) => !asked.includes(what)).map((what) => `${what} is not asked`)
  ]
}

const EVERYDAY = [...everyday, ...everyday2, ...everyday3, ...everyday4, ...everyday5]
const HARD = [...hard, ...hard2, ...hard3]

describe.each([
  ['everyday', EVERYDAY],
  ['hard', HARD]
] as const)('a tailor’s cases, %s', (_, group) => {
  it.each(group.map((one) => [one.name, one] as const))('%s', (name, one) => {
    const off = unlike(one)
    if (NOT_YET[name] === undefined) expect(off, one.why).toEqual([])
    else expect(off, `${name} is answered now: take it off the list of those that are not`).not.toEqual([])
  })
})

describe('the cases', () => {
  const all = [...EVERYDAY, ...HARD]
  it('each has a name of its own and an argument in figures', () => {
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length)
    for (const { why, name } of all) expect(why, name).toMatch(/\d/)
  })
  it('are more than twice as many everyday ones as hard ones', () => {
    expect(EVERYDAY.length).toBe(280)
    expect(HARD.length).toBe(100)
  })
  it('those not answered yet are among them, each with its reason', () => {
    for (const [name, why] of Object.entries(NOT_YET)) {
      expect(all.map((one) => one.name)).toContain(name)
      expect(why.length, name).toBeGreaterThan(40)
    }
  })
})
