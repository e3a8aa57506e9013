/**
 * Telling a point never leaves the chance of the rest incoherent: the chance before is the mean of the chances after, over what the answer may be (the
 * law of total probability), within what a few answers and 256 draws can show.
 */
import { describe, expect, it } from 'vitest'
import { alterationsFor } from '../../core/alterations/alterations-for.ts'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { PointId } from '../../core/ids/points.ts'
import { untoldKeys } from '../../core/plan/keys.ts'
import { drawnPoints } from '../../core/plan/outlook/drawn-points.ts'
import { outlookOf } from '../../core/plan/outlook/outlook.ts'
import type { ReckonRequest } from '../../core/reckon.ts'
import { gapsBetween } from '../../core/wearer/gaps.ts'
import { bodyOf, seenOn, targetFor } from '../../core/wearer/target.ts'
import { randomFrom, requestFrom } from './requests.ts'

const SEED = 2718
const ANSWERS = 16

function outlook(request: ReckonRequest) {
  const body = bodyOf(request.wearer)
  const garment = seenOn(garmentAsWorn(request.garment, request.wearer?.sizes), body)
  const target = targetFor(garment, request.wearer, undefined, undefined, body)
  const gaps = gapsBetween(garment, target)
  const { options } = alterationsFor(garment, request.limits)
  return {
    garment,
    target,
    gaps,
    likely: outlookOf({
      garment,
      target,
      wearer: request.wearer,
      gaps,
      options,
      means: request.means,
      limits: request.limits ?? {},
      markMm: 2
    }).likely
  }
}
const told = (request: ReckonRequest, point: PointId, mm: number): ReckonRequest => ({
  ...request,
  garment: { ...request.garment, measures: [...request.garment.measures, { point, mm, source: 'seller' }] }
})

describe('the law of total probability', () => {
  it(`the chance is the mean of the chances over the answers (seed ${SEED})`, () => {
    const random = randomFrom(SEED)
    const off: number[] = []
    for (let tries = 0; off.length < 40 && tries < 4000; tries++) {
      const made = requestFrom(random, ['trousers', 'jeans', 'skirt', 'shirt', 'jacket'])
      const request: ReckonRequest = {
        means: made.means,
        ...(made.wearer === undefined ? {} : { wearer: made.wearer }),
        garment: made.garment
      }
      const now = outlook(request)
      const point = untoldKeys(now.garment, now.target).find((one) => now.garment.points.has(one))
      const drawn = drawnPoints(now.gaps, now.garment).find(({ gap }) => gap.point === point)
      if (point === undefined || drawn === undefined || now.likely < 0.15 || now.likely > 0.85) continue
      const answers = [...drawn.answer()].sort((one, other) => one - other)
      const chances = Array.from({ length: ANSWERS }, (_, k) => {
        const answer = answers[Math.floor(((k + 0.5) / ANSWERS) * answers.length)] ?? 0
        return outlook(told(request, point, answer)).likely
      })
      off.push(chances.reduce((sum, chance) => sum + chance, 0) / ANSWERS - now.likely)
    }
    const mean = off.reduce((sum, one) => sum + one, 0) / off.length
    const farthest = Math.max(...off.map(Math.abs))
    console.info(
      `total probability: ${off.length} requests, off by ${(100 * mean).toFixed(1)} points on average, ${(100 * farthest).toFixed(1)} at most`
    )
    expect(off.length).toBe(40)
    expect(Math.abs(mean)).toBeLessThan(0.04)
    expect(farthest).toBeLessThan(0.2)
  }, 120_000)
})
