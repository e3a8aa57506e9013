/** Darts: their two legs as long as each other, the fold between them, at true scale. */
import { TWO_DARTS_MM } from '../../alterations/waist.ts'
import type { AlterationId } from '../../ids/alterations.ts'
import type { Job } from '../../plan/plan.ts'
import { dartsFor } from '../marks.ts'
import { whole } from './label-box.ts'
import { along, apart, type Line, lengthOf, type Spot } from './line-work.ts'
import { grain, STEP_MM } from './seam-strip.ts'
import { type Asked, allowances, type Label, type Template, type TemplateLine } from './template.ts'
import { named } from './waist-strips.ts'

/**
 * How long a dart is and into how many an amount is shared. `upMm` is not 0 where it narrows above the waist too. `fourPastMm`: past this, two more.
 * Back darts of shirts: three inches above the waist and three below (DARTE); waist darts 11 to 12 cm, through band and yoke 9 (common practice);
 * four past the soft limit of the row, or its tier.
 */
const DARTS: Partial<Record<AlterationId, { downMm: number; upMm: number; fourPastMm: number }>> = {
  'waist-in-darts': { downMm: 115, upMm: 0, fourPastMm: TWO_DARTS_MM['waist-in-darts'] },
  'yoke-darts': { downMm: 90, upMm: 0, fourPastMm: TWO_DARTS_MM['yoke-darts'] },
  'back-darts': { downMm: 76.2, upMm: 76.2, fourPastMm: Number.POSITIVE_INFINITY }
}
export interface Darts {
  count: number
  /** Each leg from the fold at the dart's widest, mm: half of what it takes. */
  halfMm: number
  downMm: number
  upMm: number
}

/** The darts of a job: how many, how wide, how long. Null where it has none. */
export function dartsOf({ id, amountMm }: Pick<Job, 'id' | 'amountMm'>): Darts | null {
  const dart = DARTS[id]
  if (dart === undefined) return null
  const { count, widthMm, lengthMm } = dartsFor(amountMm, { fourPastMm: dart.fourPastMm, lengthMm: dart.downMm })
  return { count, halfMm: widthMm / 2, downMm: lengthMm, upMm: dart.upMm === 0 ? 0 : Math.max(dart.upMm, lengthMm) }
}

export function dartTemplate(asked: Asked, line: Asked['job']['lines'][number]): Template | null {
  const { job, garment, t } = asked
  const darts = dartsOf(job)
  if (darts === null || darts.halfMm <= 0) return null
  const { halfMm, downMm, upMm, count } = darts
  const { thereMm } = allowances(garment, 'waistband')
  const isWaist = upMm === 0
  const point: Spot = { x: 0, y: downMm }
  const leg = (side: 1 | -1): Line => [...(isWaist ? [] : [{ x: 0, y: -upMm }]), { x: side * halfMm, y: 0 }, point]
  const legs = [leg(-1), leg(1)]
  const top = isWaist ? -thereMm : -upMm
  const lines: TemplateLine[] = [
    ...legs.map((one): TemplateLine => ({ role: 'makes', line: one })),
    { role: 'fold', line: [{ x: 0, y: top }, point] },
    ...legs.flatMap((one) => marksAlong(one, STEP_MM[asked.units]))
  ]
  const wide = halfMm + 8
  lines.push(grain(-wide - 4, top, downMm))
  if (isWaist) {
    lines.push({ role: 'edge', line: level(0, wide) }, { role: 'edge', line: level(-thereMm, wide) })
    // beyond the seam each leg goes on as it comes, so that the folded dart is caught in it
    for (const side of [-1, 1]) {
      const beyond = { x: side * halfMm * (1 + thereMm / downMm), y: -thereMm }
      lines.push({ role: 'makes', line: [{ x: side * halfMm, y: 0 }, beyond] })
    }
  } else lines.push({ role: 'mark', line: level(0, wide) })
  const x = wide + 4
  const labels: Label[] = [
    { at: { x, y: 1.1 }, text: t(isWaist ? 'template.dart.waist-seam' : 'template.at.waist'), anchor: 'start' },
    { at: { x, y: 6.4 }, text: t('template.dart.takes', { mm: 2 * halfMm }), anchor: 'start', look: 'strong' },
    { at: { x, y: 11.6 }, text: t('template.dart.leg', { mm: lengthOf(legs[0] as Line) }), anchor: 'start' },
    { at: { x, y: downMm * 0.55 }, text: t('template.dart.fold'), anchor: 'start' },
    { at: { x, y: downMm + 1.1 }, text: t('template.dart.point', { mm: downMm }), anchor: 'start' },
    ...(isWaist
      ? [{ at: { x, y: -thereMm - 0.4 }, text: t('template.head.band'), anchor: 'start' as const }]
      : [{ at: { x, y: -upMm + 1.1 }, text: t('template.dart.point', { mm: upMm }), anchor: 'start' as const }])
  ]
  lines.push({
    role: 'mark',
    line: [
      { x: x - 1, y: downMm * 0.55 - 1 },
      { x: 1, y: downMm * 0.55 - 1 }
    ]
  })
  return whole({
    ...named(asked, line, 'template.title.dart'),
    alteration: job.id,
    notes: [t('template.dart.count', { count, seam: line.seam }), t('template.dart.how'), t('template.turn-over')],
    assumed: [t('template.dart.assumed', { mm: downMm + upMm })],
    lines,
    labels,
    lengths: {
      left: lengthOf(legs[0] as Line),
      right: lengthOf(legs[1] as Line),
      takes: apart(leg(-1).at(-2) as Spot, leg(1).at(-2) as Spot)
    }
  })
}

const level = (y: number, wide: number): Line => [
  { x: -wide, y },
  { x: wide, y }
]

/** A tick across a line at every step from its point, so that both legs are pinned mark on mark. */
function marksAlong(line: Line, step: number): TemplateLine[] {
  const back = [...line].reverse()
  const marks: TemplateLine[] = []
  for (let at = step; at < lengthOf(line); at += step) {
    const { spot, way } = along(back, at)
    marks.push({
      role: 'mark',
      line: [
        { x: spot.x - 2 * way.y, y: spot.y + 2 * way.x },
        { x: spot.x + 2 * way.y, y: spot.y - 2 * way.x }
      ]
    })
  }
  return marks
}
