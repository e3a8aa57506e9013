/** With everything known, the product's engine judges by the simulated person's own bands and by nothing else. */
import { expect, test } from 'vitest'
import { GRADES, listing, randomFrom } from '../../bench/simulator.ts'
import { known, toldRequest, trueRequest } from '../../bench/world.ts'

const LISTINGS = 200
const random = randomFrom(31)
const listings = Array.from({ length: LISTINGS }, (_, i) => listing(random, GRADES[i % 3] ?? 'average'))

test('every point that touches the body is judged, by the person’s own band, and no other is', () => {
  const off: string[] = []
  let judged = 0
  for (const { truth } of listings) {
    const { gaps } = known(truth)
    for (const { point, band } of gaps) {
      const want = truth.wants[point]
      if (band === null && want === undefined) continue
      judged++
      const name = `${truth.kind} ${point}`
      if (band === null || want === undefined) off.push(`${name}: ${band === null ? 'not judged' : 'not wanted'}`)
      else if (Math.abs((band.least ?? Number.NaN) - want.least) > 1.5) off.push(`${name}: least ${band.least}, wanted ${want.least}`)
      else if (want.most < Number.POSITIVE_INFINITY && Math.abs((band.most ?? Number.NaN) - want.most) > 1.5)
        off.push(`${name}: most ${band.most}, wanted ${want.most}`)
    }
    for (const point of Object.keys(truth.wants)) if (!gaps.some((gap) => gap.point === point)) off.push(`${truth.kind} ${point}: missing`)
  }
  expect(off).toEqual([])
  expect(judged).toBeGreaterThan(4 * LISTINGS)
})

test('rescues stand in the means of those who accept them, and the truth is not in what is told', () => {
  for (const { truth, told } of listings) {
    const request = toldRequest(told)
    expect(request.means.acceptRescues !== undefined).toBe(truth.acceptsRescues)
    expect(request.favourite).toBeUndefined()
    expect(request.wearer?.ease).toBeUndefined()
    expect(request.garment.measures.length).toBe(Object.keys(told.garment).length)
    expect(trueRequest(truth).wearer).toBeUndefined()
  }
})
