/** A solved problem as a plan that a person can read: jobs, lines, limits, what stays wrong and why, level, minutes, cost. */

import { type Line, type Option, perOffsetOf, type Refusal } from '../alterations/row.ts'
import { mendingOf } from '../garment/condition.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentInput } from '../garment/garment-input.ts'
import { ALTERATIONS } from '../ids/alterations.ts'
import type { PointId } from '../ids/points.ts'
import { type Gap, overshoot } from '../wearer/gaps.ts'
import { say, type Wording } from '../words/say.ts'
import type { Means } from './means.ts'
import type { Aim, Job, Misfit, Plan } from './plan.ts'
import { NOTICED_MM, ROUNDING, toThousandths } from './rounding.ts'
import { effectOn, evaluate, isUsed } from './solve/evaluate.ts'
import { type Amounts, type Problem, softPast } from './solve/problem.ts'
import { mendOf, wayOf } from './way.ts'

export interface PlanContext {
  garment: Garment
  input: GarmentInput
  gaps: readonly Gap[]
  means: Means
  /** Every option of any level, and what was refused: for the reasons. */
  options: readonly Option[]
  refusals: readonly Refusal[]
  wording: Wording
}

export function planFrom(aim: Aim, problem: Problem, amounts: Amounts, context: PlanContext): Plan {
  const outcome = evaluate(problem, amounts)
  const misfit = problem.points.flatMap((point, p): Misfit[] => {
    const mm = overshoot(outcome.after[p] ?? point.mm, point.least, point.most)
    return Math.abs(mm) < NOTICED_MM
      ? []
      : [{ point: point.point, mm: toThousandths(mm), because: whyWrong(point.point, mm, problem, context) }]
  })
  const used = problem.options.flatMap((option, a) => (isUsed(amounts[a]) ? [{ option, mine: amounts[a] ?? [] }] : []))
  // as the work goes: waist, seat and legs, body, sleeves; the order of the ids
  used.sort((one, other) => ALTERATIONS.indexOf(one.option.id) - ALTERATIONS.indexOf(other.option.id))
  const jobs = used.map(({ option, mine }) => jobOf(option, mine, problem, outcome.after, context))
  const level = used.reduce<number>((hardest, { option, mine }) => Math.max(hardest, levelOf(option, mine)), 0) as Plan['level']
  return {
    aim,
    alterations: jobs,
    after: context.gaps.flatMap(({ point, from, garmentMm }) =>
      from === 'inferred'
        ? []
        : [{ point, mm: toThousandths(used.reduce((mm, { option, mine }) => mm + effectOn(point, option, mine), garmentMm)) }]
    ),
    misfit,
    chance: null,
    level,
    minutes: minutesOf(used, problem, context, aim),
    cost: costOf(used, problem, context, aim)
  }
}

const levelOf = (option: Option, mine: readonly number[]): number =>
  option.tier !== undefined && (mine[option.tier.line] ?? 0) > option.tier.beyondMm
    ? Math.max(option.level, option.tier.level)
    : option.level

function jobOf(option: Option, mine: readonly number[], problem: Problem, after: readonly number[], context: PlanContext): Job {
  const amountMm = Math.max(...mine)
  const widest = option.lines[mine.indexOf(amountMm)] ?? option.lines[0]
  if (widest === undefined) throw new Error(`${option.key} has no line`)
  const amounts: Job['amounts'] = {}
  option.lines.forEach((line, k) => {
    const change = (line.effects[line.point] ?? 0) * (mine[k] ?? 0)
    if (Math.abs(change) > ROUNDING) amounts[line.point] = toThousandths(change)
  })
  return {
    id: option.id,
    amountMm: toThousandths(amountMm),
    direction: option.direction,
    amounts,
    lines: linesOf(widest, amountMm, option.direction, context),
    limitMm: toThousandths(widest.capMm),
    limitBecause: say(widest.because, context.wording),
    rescue: option.rescue,
    softLimit: option.lines.some((line, k) => softPast(line, mine[k] ?? 0) > NOTICED_MM),
    withoutIt: problem.points.flatMap((point, p) => {
      const now = overshoot(after[p] ?? point.mm, point.least, point.most)
      const without = overshoot((after[p] ?? point.mm) - effectOn(point.point, option, mine), point.least, point.most)
      return Math.abs(without) > Math.abs(now) + NOTICED_MM ? [{ point: point.point, mm: toThousandths(without) }] : []
    })
  }
}

/** How far each stitching line moves; left and right apart where the garment's two sides differ. */
function linesOf(line: Line, amountMm: number, direction: Job['direction'], { garment, gaps }: PlanContext): Job['lines'] {
  const sides = garment.points.get(line.point)?.sides
  const asked = gaps.find(({ point }) => point === line.point)?.garmentMm
  return line.seams.flatMap((move): Job['lines'] => {
    const { seam, outward } = move
    const perOffset = perOffsetOf(move, amountMm)
    const offset = (mm: number): number => toThousandths((outward ? -1 : 1) * (mm / perOffset))
    if (sides === undefined || asked === undefined) return [{ seam, offsetMm: offset(amountMm) }]
    const way = direction === 'less' ? 1 : -1
    return (['left', 'right'] as const).map((side) => ({
      seam,
      side,
      offsetMm: offset(Math.max(0, amountMm + way * (sides[side] - asked)))
    }))
  })
}

/** The binding reason at a point that stays wrong: what is needed, and what the seams hold. */
function whyWrong(point: PointId, mm: number, problem: Problem, { options, gaps, refusals, wording }: PlanContext): string {
  const gap = gaps.find((one) => one.point === point)
  const needs = Math.abs(gap?.gapMm === 0 || gap === undefined ? mm : gap.gapMm)
  const back = mm > 0 ? -1 : 1
  const helps = (option: Option) =>
    option.lines.some((line) => Math.sign(line.effects[point] ?? 0) === back && Math.abs(line.effects[point] ?? 0) >= 0.25)
  const holds = (some: readonly Option[]) =>
    some.filter(helps).reduce(
      (most, option) =>
        Math.max(
          most,
          option.lines.reduce((sum, line) => sum + Math.max(0, back * (line.effects[point] ?? 0)) * line.capMm, 0)
        ),
      0
    )
  const own = holds(problem.options)
  const anyone = holds(options)
  const values = { needs, holds: own, mark: problem.markMm, way: wayOf(mm, point), mend: mendOf(mm, point) }
  if (Math.abs(mm) <= problem.markMm) return say({ code: 'misfit.mark', values, point }, wording)
  if (gap?.bound !== undefined && mm < 0 && gap.want?.from === 'bound')
    return say(
      { code: `misfit.passes`, values: { now: gap.garmentMm, bound: gap.bound, body: gap.want.measure ?? 'hipGirth' }, point },
      wording
    )
  if (own >= needs) return say({ code: 'misfit.elsewhere', values, point }, wording)
  if (own > 0) return say({ code: 'misfit.limit', values, point }, wording)
  if (anyone > 0) {
    const level = Math.min(...options.filter(helps).map((option) => option.level))
    return say({ code: 'misfit.level', values: { ...values, level }, point }, wording)
  }
  const refused = refusals.find(({ because }) => because.code === 'limit.needle-holes')
  return say({ code: refused !== undefined && mm < 0 ? 'misfit.needle-holes' : 'misfit.nothing', values, point }, wording)
}

/** Work, mending and what is opened, in minutes: the table's, by the person's own pace where the person sews. */
function minutesOf(used: { option: Option; mine: readonly number[] }[], problem: Problem, { means, input }: PlanContext, aim: Aim): number {
  const opened = new Set(used.flatMap(({ option }) => option.opens))
  const jobs = used.reduce((sum, { option, mine }) => {
    const tier = option.tier !== undefined && (mine[option.tier.line] ?? 0) > option.tier.beyondMm ? option.tier.minutes : 0
    return sum + option.setupMinutes + tier + (option.per25Minutes * Math.max(...mine)) / 25
  }, 0)
  const openings = [...opened].reduce((sum, what) => sum + problem.preparations[what], 0)
  const pace = aim === 'tailor' ? 1 : (means.pace ?? 1)
  return Math.round((jobs + openings) * pace + mendingOf(input).minutes)
}

/** Notions and own hours, or the tailor's prices; null where a price is missing. */
function costOf(used: { option: Option; mine: readonly number[] }[], problem: Problem, context: PlanContext, aim: Aim): number | null {
  const { means, input } = context
  const mended = mendingOf(input)
  const notions = used.reduce((sum, { option }) => sum + (means.notions?.[option.id] ?? 0), 0)
  if (aim === 'tailor') {
    let sum = notions + mended.cost
    for (const { option } of used) {
      const price = means.tailorPrices?.[option.id]
      if (price === undefined) return null
      sum += price
    }
    return sum
  }
  const minutes = minutesOf(used, problem, context, aim)
  if (minutes > 0 && means.hourWorth === undefined) return null
  return notions + mended.cost + (minutes / 60) * (means.hourWorth ?? 0)
}
