/** As far as told: the verdicts, the intervals and the first question beside a tailor's. Those that are not yet so are named, each with its reason. */
import { describe, expect, it } from 'vitest'
import { readListing } from '../../../core/reading/read-listing.ts'
import { garmentFrom } from '../../../core/reading/request/garment-from.ts'
import { reckon } from '../../../core/reckon.ts'
import type { BodyMeasureId } from '../../../core/wearer/body.ts'
import { legs } from './legs.ts'
import { NOT_YET } from './not-yet.ts'
import { others } from './others.ts'
import type { End, ToldCase } from './told-case.ts'

const isIn = (mm: number | null, end: End): boolean => end === null || (mm !== null && mm >= end[0] && mm <= end[1])

function wrongIn({ text, body, sizes, fit, level, tailor, ...wanted }: ToldCase): string[] {
  const garment = garmentFrom(readListing({ text }), [])
  const own = Object.fromEntries(Object.entries(body).map(([measure, mm]) => [measure as BodyMeasureId, { mm }]))
  const answer = reckon({ garment, wearer: { body: own, fit, ...(sizes === undefined ? {} : { sizes }) }, means: { level, tailor } })
  const wrong: string[] = []
  if (!wanted.verdict.includes(answer.verdict)) wrong.push(`${answer.verdict}, not ${wanted.verdict.join(' or ')}`)
  if (answer.asFarAsTold !== wanted.asFarAsTold) wrong.push(`as far as told: ${answer.asFarAsTold}`)
  for (const { point, least, most } of wanted.conditions) {
    const found = answer.conditions.find((one) => one.point === point)
    if (found === undefined || !isIn(found.least, least) || !isIn(found.most, most))
      wrong.push(`${point} ${found?.least} to ${found?.most}, not ${JSON.stringify(least)} to ${JSON.stringify(most)}`)
  }
  const [first] = answer.ask
  const asked = first?.point ?? first?.about ?? first?.body
  // what is to be left for what is told needs no question
  if (answer.verdict !== 'leave-it' && wanted.askFirst.length > 0 && asked !== undefined && !wanted.askFirst.includes(asked))
    wrong.push(`asks first: ${asked}`)
  return wrong
}

const CASES = [...legs, ...others]
describe('as far as told', () => {
  it.each(CASES.map((one) => [one.name, one] as const))('%s', (name, one) => {
    const wrong = wrongIn(one)
    const reason = NOT_YET[name]
    if (reason === undefined) expect(wrong, one.why).toEqual([])
    else expect(wrong, `${name} is answered now: take it off the list of those that are not`).not.toEqual([])
  })
  it('forty cases, half of them legs; the verdict is a tailor’s in most', () => {
    expect(CASES.length).toBe(40)
    expect(Object.keys(NOT_YET).every((name) => CASES.some((one) => one.name === name))).toBe(true)
    const verdicts = CASES.filter((one) => wrongIn(one).every((text) => !text.includes(', not ') || text.includes(' to '))).length
    console.info(`as far as told: ${verdicts} of ${CASES.length} verdicts, ${CASES.length - Object.keys(NOT_YET).length} whole`)
    expect(verdicts).toBeGreaterThanOrEqual(36)
  })
})
