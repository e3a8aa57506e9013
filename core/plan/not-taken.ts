/** The other ways: what would move a wrong point the right way and is not in the advised plan, each with the reason, in figures where there is one. */
import { CATALOGUE } from '../alterations/catalogue.ts'
import type { AlterationId } from '../alterations/ids.ts'
import { PREPARATIONS } from '../alterations/minutes.ts'
import type { Option, Refusal } from '../alterations/row.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { PointId } from '../garment/points.ts'
import type { Gap } from '../wearer/gaps.ts'
import type { Reason, Saying } from '../words/reason.ts'
import { said, type Wording } from '../words/say.ts'
import type { Means } from './means.ts'
import type { Plan } from './plan.ts'
import { excludeEachOther } from './problem.ts'

export interface NotTaken {
  id: AlterationId
  direction: 'less' | 'more'
  /** The wrong point that it would move. */
  point: PointId
  because: Reason
}

interface Considered {
  garment: Garment
  gaps: readonly Gap[]
  options: readonly Option[]
  refusals: readonly Refusal[]
  means: Means
  markMm: number
}

/** A by-effect of less than this, mm a mm, is no way to move a point. */
const MEANT = 0.5

export function notTaken({ garment, gaps, options, refusals, means, markMm }: Considered, advised: Plan, wording: Wording): NotTaken[] {
  const wrong = gaps.filter((gap) => gap.judged && Math.abs(gap.gapMm) > markMm)
  const inPlan = new Set(advised.alterations.map(({ id, direction }) => `${id}/${direction}`))
  const taken = options.filter(({ key }) => inPlan.has(key))
  const own = advised.aim === 'tailor' ? 5 : means.level
  const refused = refusals.flatMap(({ id, direction, because }): NotTaken[] => {
    const row = CATALOGUE.find((one) => one.id === id && one.direction === direction)
    const gap = wrong.find(({ point, gapMm }) => row?.lines(garment).some(({ effects }) => helps(effects[point] ?? 0, gapMm)))
    return gap === undefined ? [] : [{ id, direction, point: gap.point, because: said({ ...because, alteration: id }, wording) }]
  })
  const passedOver = options.flatMap((option): NotTaken[] => {
    if (inPlan.has(option.key)) return []
    const gap = wrong.find(({ point, gapMm }) => option.lines.some(({ effects }) => helps(effects[point] ?? 0, gapMm)))
    if (gap === undefined) return []
    const because = whyNot(option, gap, taken, own)
    return [{ id: option.id, direction: option.direction, point: gap.point, because: said({ ...because, alteration: option.id }, wording) }]
  })
  return [...passedOver, ...refused]
}

const helps = (effect: number, gapMm: number): boolean => Math.sign(effect) === -Math.sign(gapMm) && Math.abs(effect) >= MEANT

function whyNot(option: Option, { point, gapMm }: Gap, taken: readonly Option[], own: number): Saying {
  if (option.level > own) return { code: 'not-taken.level', values: { level: option.level, own }, point }
  const needs = Math.abs(gapMm)
  const holds = holdsAt(option, point)
  if (holds < needs) return { code: 'not-taken.too-little', values: { holds, needs }, point }
  const instead = taken.filter(({ lines }) => lines.some(({ effects }) => helps(effects[point] ?? 0, gapMm)))
  const minutes = burdenOf([option])
  const others = burdenOf(instead)
  if (instead.length > 0 && minutes >= others) return { code: 'not-taken.dearer', values: { minutes, instead: others }, point }
  const rival = taken.find((one) => excludeEachOther(option, one))
  if (rival !== undefined) return { code: 'not-taken.beside', values: {}, point }
  return { code: 'not-taken.no-gain', values: {}, point }
}

/** How far an option could move a point by itself, mm. */
const holdsAt = ({ lines, shared }: Option, point: PointId): number =>
  lines.reduce((sum, { effects, capMm }, k) => {
    const own = shared.reduce(
      (cap, { shares, budgetMm }) => ((shares[k] ?? 0) > 0 ? Math.min(cap, budgetMm / (shares[k] ?? 1)) : cap),
      capMm
    )
    return sum + Math.abs(effects[point] ?? 0) * own
  }, 0)

/** What the planner weighs, minutes: set-up, what is opened once, and stated penalties. */
function burdenOf(options: readonly Option[]): number {
  const opened = new Set(options.flatMap(({ opens }) => opens))
  return (
    options.reduce((sum, { setupMinutes, penaltyMinutes }) => sum + setupMinutes + penaltyMinutes, 0) +
    [...opened].reduce((sum, what) => sum + PREPARATIONS[what], 0)
  )
}
