/** Plans to lay sheets on: those of invented requests, and one of every row of the catalogue on a garment that it can be done on. */
import { alterationsFor } from '../../core/alterations/alterations-for.ts'
import { CATALOGUE } from '../../core/alterations/catalogue.ts'
import { type Line, perOffsetOf, type Row } from '../../core/alterations/row.ts'
import { type Garment, garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../core/garment/garment-input.ts'
import type { Job, Plan } from '../../core/plan/plan.ts'
import { type ReckonRequest, reckon } from '../../core/reckon.ts'
import { bodyOf, seenOn } from '../../core/wearer/target.ts'
import { pairs } from '../corpus/plans/each-alteration.ts'
import { type Random, randomFrom, requestFrom } from './requests.ts'

export interface Laid {
  request: ReckonRequest
  plan: Plan
  garment: Garment
}

const worn = (request: ReckonRequest): Garment => seenOn(garmentAsWorn(request.garment, request.wearer?.sizes), bodyOf(request.wearer))

/** A plan of these rows alone, each by as much as `share` of what it may do at most. */
export function planOf(
  garment: Garment,
  rows: readonly { row: Row; lines: readonly Line[] }[],
  share: number,
  level: Plan['level'] = 3
): Plan {
  return {
    aim: 'least-work',
    alterations: rows.map(({ row, lines }): Job => {
      const each = lines.map((line) => Math.round(Math.max(1, line.capMm * share)))
      const amountMm = Math.max(...each)
      const widest = lines[each.indexOf(amountMm)]
      if (widest === undefined) throw new Error(`${row.id} has no line`)
      return {
        id: row.id,
        direction: row.direction,
        amountMm,
        amounts: Object.fromEntries(lines.map((line, k) => [line.point, (line.effects[line.point] ?? 0) * (each[k] ?? 0)])),
        lines: widest.seams.map((move) => ({
          seam: move.seam,
          offsetMm: ((move.outward ? -1 : 1) * amountMm) / perOffsetOf(move, amountMm)
        })),
        limitMm: widest.capMm,
        limitBecause: '',
        softLimit: false,
        rescue: false,
        withoutIt: []
      }
    }),
    after: [...garment.points].map(([point, { mm }]) => ({ point, mm })),
    misfit: [],
    chance: null,
    level,
    minutes: 0,
    cost: null
  }
}

/** Every option of a garment, alone, and a few together that do not exclude each other. */
function handMade(input: GarmentInput, random: Random, limits: ReckonRequest['limits'] = {}): Laid[] {
  const request: ReckonRequest = { garment: input, means: { level: 5, tailor: false }, limits }
  const garment = worn(request)
  const { options } = alterationsFor(garment, limits)
  const laid = options.flatMap((option) => {
    const row = CATALOGUE.find(
      ({ id, direction, kinds }) => id === option.id && direction === option.direction && kinds.includes(garment.kind)
    )
    return row === undefined ? [] : [{ row, lines: option.lines, excludes: option.excludes }]
  })
  const together = laid.filter(() => random() < 0.4)
  const apart = together.filter(({ row, excludes }, n) =>
    together.every(
      (other, k) => k >= n || (!excludes.includes(other.row.id) && !other.excludes.includes(row.id) && other.row.id !== row.id)
    )
  )
  return [
    ...laid.map((one) => ({ request, garment, plan: planOf(garment, [one], 0.2 + 0.8 * random()) })),
    ...(apart.length > 1 ? [{ request, garment, plan: planOf(garment, apart, 0.2 + 0.8 * random(), 4) }] : [])
  ]
}

/** Lengths measured left and right, which differ. */
function uneven(request: ReckonRequest, random: Random): ReckonRequest {
  const measures = request.garment.measures.flatMap((one) => {
    if (!['inseam', 'sleeveLength', 'strap', 'thigh'].includes(one.point)) return [one]
    const apart = Math.round(20 * random())
    return [
      { ...one, mm: one.mm - apart / 2, side: 'left' as const },
      { ...one, mm: one.mm + apart / 2, side: 'right' as const }
    ]
  })
  return { ...request, garment: { ...request.garment, measures } }
}

/** Plans of `count` invented requests, plans of every row on the garments of the corpus, and of many rows at once. */
export function plansOf(seed: number, count: number): Laid[] {
  const random = randomFrom(seed)
  const requests = Array.from({ length: count }, () => requestFrom(random)).map((request, n) =>
    n % 4 === 0 ? uneven(request, random) : request
  )
  const reckoned = requests.flatMap((request) =>
    reckon(request, { outlook: false }).plans.map((plan): Laid => ({ request, plan, garment: worn(request) }))
  )
  const conditions: GarmentInput['condition'][] = [
    [{ job: 'replace-zip' }, { job: 'treat-pests' }],
    [{ job: 'darn' }, { job: 'clean' }],
    []
  ]
  const everywhere = [...requests.slice(0, 120), ...pairs.map(({ answer }) => answer.request)].flatMap(({ garment, limits }) =>
    handMade({ ...garment, condition: conditions[Math.floor(random() * conditions.length)] ?? [] }, random, limits)
  )
  return [...reckoned, ...everywhere]
}
