/** What must hold of every cut and every cloth, on invented requests. Each law prints its seed and how often it applied, and fails when it never did. */
import { describe, expect, it } from 'vitest'
import { alterationsFor } from '../../core/alterations/alterations-for.ts'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { Cloth } from '../../core/garment/garment-input.ts'
import { type Cut, FACETS, type Facet } from '../../core/ids/cut.ts'
import { reckon } from '../../core/reckon.ts'
import { CUT_ROWS } from '../../core/wearer/cut/cut-table.ts'
import { type Random, randomFrom, requestFrom } from './requests.ts'

const SEED = 20261201
const RUNS = 400
const MARK_MM = 2
const pick = <T>(random: Random, from: readonly T[]): T => {
  const one = from[Math.floor(random() * from.length)]
  if (one === undefined) throw new Error('nothing to pick from')
  return one
}

/** A request with some words of the cut and a fit among all, asked without what is uncertain. */
function cutRequest(random: Random) {
  const request = requestFrom(random)
  const cut: Partial<Record<Facet, string>> = {}
  for (const facet of Object.keys(FACETS) as Facet[]) {
    const values = CUT_ROWS.filter((row) => row.facet === facet && row.kinds.includes(request.garment.kind)).flatMap(({ values }) => [
      ...values
    ])
    if (values.length > 0 && random() < 0.4) cut[facet] = pick(random, values)
  }
  if (request.wearer !== undefined && random() < 0.6) request.wearer = { ...request.wearer, fit: 'as-cut' }
  return { request, cut: cut as Cut }
}
const asked = (request: ReturnType<typeof requestFrom>, cut: Cut, cloth?: Cloth) =>
  reckon({ ...request, garment: { ...request.garment, cut, ...(cloth === undefined ? {} : { cloth }) } }, { outlook: false })

describe('the cut', () => {
  it('a free point is never too big, and no plan makes it smaller for its own sake', () => {
    const random = randomFrom(SEED)
    let applied = 0
    for (let run = 0; run < RUNS; run++) {
      const { request, cut } = cutRequest(random)
      for (const gap of asked(request, cut).gaps.filter(({ band }) => band !== null && band.most === null)) {
        applied++
        expect(gap.gapMm, `run ${run}: ${gap.point}`).toBeLessThanOrEqual(0)
      }
    }
    console.info(`free points: seed ${SEED}, applied ${applied} times`)
    expect(applied).toBeGreaterThan(100)
  })

  it('in a wider leg nothing below the band is too big that was not in a narrower one', () => {
    const random = randomFrom(SEED + 7)
    const order = ['skinny', 'slim', 'straight', 'relaxed', 'wide', 'palazzo'] as const
    let applied = 0
    for (let run = 0; run < RUNS; run++) {
      const { request, cut } = cutRequest(random)
      if (!['trousers', 'jeans'].includes(request.garment.kind) || request.wearer === undefined) continue
      const { closing: _, pleats: __, ...others } = cut
      const wearer = { ...request.wearer, fit: 'as-cut' as const }
      const { favourite: ___, ...plainly } = request
      const tooBig = order.map((leg) =>
        asked({ ...plainly, wearer }, { ...others, leg }).gaps.reduce(
          (sum, { point, gapMm }) => sum + (['hip', 'thigh', 'knee', 'calf'].includes(point) ? Math.max(0, gapMm) : 0),
          0
        )
      )
      for (let k = 1; k < order.length; k++) {
        const [narrower = 0, wider = 0] = [tooBig[k - 1], tooBig[k]]
        if (narrower > 0) applied++
        expect(wider, `run ${run}: ${order[k]} after ${order[k - 1]}`).toBeLessThanOrEqual(narrower + 1e-6)
      }
    }
    console.info(`wider legs: seed ${SEED + 7}, applied ${applied} times`)
    expect(applied).toBeGreaterThan(20)
  })

  it('no plan takes a point in and lets it out', () => {
    const random = randomFrom(SEED + 8)
    let applied = 0
    for (let run = 0; run < RUNS; run++) {
      const { request, cut } = cutRequest(random)
      const { options } = alterationsFor(garmentAsWorn({ ...request.garment, cut }), request.limits)
      const several = new Set(options.filter(({ lines }) => lines.length > 1).map(({ key }) => key))
      for (const { alterations } of asked(request, cut).plans) {
        if (alterations.length < 2) continue
        applied++
        // one that shapes a seam by several amounts may leave a point alone that another moves
        const plain = alterations.filter(({ id, direction }) => !several.has(`${id}/${direction}`))
        const moved = new Map<string, number>()
        for (const { id, amounts } of plain)
          for (const [point, mm] of Object.entries(amounts)) {
            expect((moved.get(point) ?? mm) * mm, `run ${run}: ${id} at the ${point}`).toBeGreaterThan(0)
            moved.set(point, mm)
          }
      }
    }
    console.info(`opposite moves: seed ${SEED + 8}, applied ${applied} times`)
    expect(applied).toBeGreaterThan(100)
  })

  it('words of the cut never change a figure that was told', () => {
    const random = randomFrom(SEED + 1)
    let applied = 0
    for (let run = 0; run < RUNS; run++) {
      const { request, cut } = cutRequest(random)
      const told = (gaps: ReturnType<typeof asked>['gaps']) =>
        gaps
          .filter(({ from }) => from !== 'inferred')
          .map(({ point, garmentMm, from }) => [
            point,
            request.garment.measures.some((m) => m.point === point && m.side !== undefined) ? from : garmentMm
          ])
      const [withWords, without] = [asked(request, cut), asked(request, {})]
      expect(told(withWords.gaps), `run ${run}`).toEqual(told(without.gaps))
      applied += Object.keys(cut).length
    }
    console.info(`words and figures: seed ${SEED + 1}, ${applied} words`)
    expect(applied).toBeGreaterThan(100)
  })

  it('more stretch never makes a garment smaller than it was: no point becomes too small, or more so', () => {
    const random = randomFrom(SEED + 2)
    let applied = 0
    for (let run = 0; run < RUNS; run++) {
      const { request, cut } = cutRequest(random)
      const structure = pick(random, ['woven', 'knit'] as const)
      const less = Math.round(random() * 40)
      const more = less + Math.round(random() * 40)
      const of = (stretchPercent: number) => asked(request, cut, { structure, stretchPercent }).gaps
      const before = new Map(of(less).map(({ point, gapMm }) => [point, gapMm]))
      for (const { point, gapMm } of of(more)) {
        const was = before.get(point) ?? 0
        if (was < 0) applied++
        expect(Math.min(0, gapMm), `run ${run}: ${point} at ${less} and ${more} %`).toBeGreaterThanOrEqual(Math.min(0, was) - 1e-6)
      }
    }
    console.info(`stretch: seed ${SEED + 2}, applied ${applied} times`)
    expect(applied).toBeGreaterThan(100)
  })

  it('a told word beats what the figures show', () => {
    const random = randomFrom(SEED + 3)
    let applied = 0
    for (let run = 0; run < RUNS; run++) {
      const { request, cut } = cutRequest(random)
      const read = asked(request, cut).cut
      for (const [facet, value] of Object.entries(cut) as [Facet, string][]) {
        applied++
        expect(read[facet], `run ${run}`).toMatchObject({ value, from: 'told' })
      }
    }
    console.info(`told beats seen: seed ${SEED + 3}, applied ${applied} times`)
    expect(applied).toBeGreaterThan(100)
  })

  it('nothing under a mark is called wrong', () => {
    const random = randomFrom(SEED + 4)
    let applied = 0
    for (let run = 0; run < RUNS; run++) {
      const { request, cut } = cutRequest(random)
      const { asItIs, plans } = asked(request, cut)
      for (const { point, mm } of [...asItIs.misfit, ...plans.flatMap(({ misfit }) => misfit)]) {
        applied++
        expect(Math.abs(mm), `run ${run}: ${point}`).toBeGreaterThanOrEqual(Math.min(MARK_MM, request.means.markMm ?? MARK_MM) / 2)
      }
    }
    console.info(`marks: seed ${SEED + 4}, applied ${applied} times`)
    expect(applied).toBeGreaterThan(100)
  })
})
