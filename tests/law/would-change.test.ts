/** What would change the verdict is never a promise: each is tried here anew by the planner, and gives the verdict that it says. */
import { expect, test } from 'vitest'
import { isGirth } from '../../core/ids/points.ts'
import type { Verdict } from '../../core/ids/verdicts.ts'
import { type ReckonRequest, reckon, whatWouldChange } from '../../core/reckon.ts'
import type { Reason } from '../../core/words/reason.ts'
import { randomFrom, requestFrom } from './requests.ts'

const SEED = 20812
const BETTER: readonly Verdict[] = ['leave-it', 'comes-close', 'needs-a-tailor', 'alters-to-fit', 'wears-as-is']
const verdictOf = (request: ReckonRequest): Verdict => reckon(request, { outlook: false }).verdict

/** The clauses of a figure as its sentence says them: "the hip, laid flat, is 49 cm or more". */
const CLAUSE = /the ([a-z ]+?)(, laid flat,)? is ([\d.]+) cm or (more|less)/g
/** The request with what the sentence says, typed as a seller would say it; null: it names what is not measured. */
function withFigures(
  request: ReckonRequest,
  { text }: Reason
): { request: ReckonRequest; moved: { was: number; now: number; way: string }[] } | null {
  const { gaps } = reckon(request, { outlook: false })
  const wrong = gaps.filter(({ gapMm, from }) => gapMm !== 0 && (from === 'seller' || from === 'own'))
  const clauses = [...text.matchAll(CLAUSE)]
  const named = (point: string) => point.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
  const moved: { was: number; now: number; way: string }[] = []
  let { measures } = request.garment
  for (const [, name = '', flat, figure, way = ''] of clauses) {
    const told = measures.find(({ point }) => wrong.some((gap) => gap.point === point) && sameName(name, named(point)))
    if (told === undefined) return null
    const now = Number(figure) * 10 * (flat !== undefined && isGirth(told.point) ? 2 : 1)
    moved.push({ was: told.mm, now, way })
    measures = measures.map((one) => (one.point === told.point ? { ...one, mm: now } : one))
  }
  return clauses.length === 0 ? null : { request: { ...request, garment: { ...request.garment, measures } }, moved }
}
const sameName = (said: string, point: string): boolean => point === said || point.startsWith(`${said} `)

/** Each request that is said to better the verdict. */
function changed(request: ReckonRequest, reason: Reason): (ReckonRequest | null)[] {
  if (reason.code !== 'change.fits') return [changedOnce(request, reason)]
  return String(reason.values.ids)
    .split(' ')
    .map((fit) => changedOnce(request, { ...reason, code: 'change.fit', values: { fit } }))
}
function changedOnce(request: ReckonRequest, { code, values }: Reason): ReckonRequest | null {
  const { means, wearer } = request
  if (code === 'change.level') return { ...request, means: { ...means, level: Number(values.level) as typeof means.level } }
  if (code === 'change.tailor') return { ...request, means: { ...means, tailor: true } }
  if (code === 'change.fit' && wearer !== undefined) return { ...request, wearer: { ...wearer, fit: values.fit as typeof wearer.fit } }
  return null
}

test(`every change that is named betters the verdict, to just the one that is said (seed ${SEED})`, () => {
  const random = randomFrom(SEED)
  const tried: Record<string, number> = {}
  for (let n = 0; n < 250; n++) {
    const request = requestFrom(random)
    const now = verdictOf(request)
    for (const reason of whatWouldChange(request)) {
      expect(BETTER.indexOf(reason.values.verdict as Verdict), reason.text).toBeGreaterThan(BETTER.indexOf(now))
      const figures = reason.code === 'change.figure' ? withFigures(request, reason) : null
      const others = figures === null ? changed(request, reason) : [figures.request]
      for (const other of others)
        if (other !== null) expect(verdictOf(other), `${reason.text} ${JSON.stringify(request)}`).toBe(reason.values.verdict)
      if (others.every((other) => other === null)) continue
      // what is too small is wanted larger, and what is too big smaller
      for (const { was, now: is, way } of figures?.moved ?? []) expect(way, reason.text).toBe(is > was ? 'more' : 'less')
      tried[reason.code] = (tried[reason.code] ?? 0) + 1
    }
  }
  expect((tried['change.fit'] ?? 0) + (tried['change.fits'] ?? 0)).toBeGreaterThan(5)
  expect(tried['change.fits'] ?? 0).toBeGreaterThan(2)
  for (const code of ['change.level', 'change.tailor', 'change.figure']) expect(tried[code] ?? 0, code).toBeGreaterThan(5)
}, 120_000)
