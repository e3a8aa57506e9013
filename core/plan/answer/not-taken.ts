/** The other ways: what would move a wrong point the right way and is not in the advised plan, each with the reason, in figures where there is one. */
import { keyOf } from '../../alterations/apart.ts'
import { CATALOGUE } from '../../alterations/catalogue.ts'
import { preparationsIn } from '../../alterations/minutes.ts'
import type { Option, Refusal } from '../../alterations/row.ts'
import { timeFactor } from '../../garment/cloth.ts'
import type { Garment } from '../../garment/garment-as-worn.ts'
import type { AlterationId } from '../../ids/alterations.ts'
import type { PointId } from '../../ids/points.ts'
import type { Gap } from '../../wearer/gaps.ts'
import type { Reason, Saying } from '../../words/reason.ts'
import { said, type Wording } from '../../words/say.ts'
import { HARDEST, type Means } from '../means.ts'
import type { Plan } from '../plan.ts'
import { setUpOf } from '../solve/evaluate.ts'
import { excludeEachOther, type Problem } from '../solve/problem.ts'
import { capOf } from '../solve/single-point-reach.ts'

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
const MEANT_EFFECT = 0.5

const ROWS = new Map(CATALOGUE.map((row) => [keyOf(row), row]))

export function notTaken({ garment, gaps, options, refusals, means, markMm }: Considered, advised: Plan, wording: Wording): NotTaken[] {
  const wrong = gaps.filter((gap) => gap.judged && Math.abs(gap.gapMm) > markMm)
  if (wrong.length === 0) return []
  const inPlan = new Set(advised.alterations.map(keyOf))
  const inUse = options.filter(({ key }) => inPlan.has(key))
  const own = advised.aim === 'tailor' ? HARDEST : means.level
  const preparations = preparationsIn(timeFactor(garment.cloth))
  const refused = refusals.flatMap(({ id, direction, because }): NotTaken[] => {
    const lines = ROWS.get(keyOf({ id, direction }))?.lines(garment)
    const gap = wrong.find(({ point, gapMm }) => lines?.some(({ effects }) => helps(effects[point] ?? 0, gapMm)))
    return gap === undefined ? [] : [{ id, direction, point: gap.point, because: said({ ...because, alteration: id }, wording) }]
  })
  const passedOver = options.flatMap((option): NotTaken[] => {
    if (inPlan.has(option.key)) return []
    const gap = wrong.find(({ point, gapMm }) => option.lines.some(({ effects }) => helps(effects[point] ?? 0, gapMm)))
    if (gap === undefined) return []
    const because = whyNot(option, gap, inUse, own, preparations)
    return [{ id: option.id, direction: option.direction, point: gap.point, because: said({ ...because, alteration: option.id }, wording) }]
  })
  return [...passedOver, ...refused.filter(worthNaming)]
}

/** Elastic that is not there is no way to do anything; that there is elastic is said once. */
const worthNaming = ({ because: { code } }: NotTaken, place: number, all: readonly NotTaken[]): boolean =>
  code !== 'limit.no-elastic' && (code !== 'limit.elastic-band' || all.findIndex(({ because }) => because.code === code) === place)

const helps = (effect: number, gapMm: number): boolean => Math.sign(effect) === -Math.sign(gapMm) && Math.abs(effect) >= MEANT_EFFECT

function whyNot(
  option: Option,
  { point, gapMm }: Gap,
  inUse: readonly Option[],
  own: number,
  preparations: Problem['preparations']
): Saying {
  if (option.level > own) return { code: 'not-taken.level', values: { level: option.level, own }, point }
  const needs = Math.abs(gapMm)
  const holds = holdsAt(option, point)
  if (holds < needs) return { code: 'not-taken.too-little', values: { holds, needs }, point }
  const instead = inUse.filter(({ lines }) => lines.some(({ effects }) => helps(effects[point] ?? 0, gapMm)))
  if (option.rescue && instead.length > 0 && instead.every(({ rescue }) => !rescue)) return { code: 'not-taken.rescue', values: {}, point }
  const minutes = setUpOf([option], preparations)
  const others = setUpOf(instead, preparations)
  if (instead.length > 0 && minutes >= others) return { code: 'not-taken.dearer', values: { minutes, instead: others }, point }
  const rival = inUse.find((one) => excludeEachOther(option, one))
  if (rival !== undefined) return { code: 'not-taken.beside', values: {}, point }
  return { code: 'not-taken.no-gain', values: {}, point }
}

/** How far an option could move a point by itself, mm. */
const holdsAt = (option: Option, point: PointId): number =>
  option.lines.reduce((sum, line, k) => sum + Math.abs(line.effects[point] ?? 0) * capOf(option, line, k), 0)
