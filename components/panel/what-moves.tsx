/** What moves: the outline with its seams, the same in words, and the same as a table. */
import type { PointId } from '../../core/ids/points.ts'
import type { Job } from '../../core/plan/plan.ts'
import { movesOf } from '../../core/worksheet/outline/moves.ts'
import { outlineOf, viewsOf } from '../../core/worksheet/outline/outline-geometry.ts'
import { chosenPlan, type Judged } from '../judged.ts'
import { MovesTable } from '../outline/moves-table.tsx'
import { Outline } from '../outline/outline.tsx'
import { useWidth } from '../use-width.ts'
import { useWords } from '../words.tsx'
import { misfitWords } from './plans.tsx'

/** From this width on the outline has room for its figures. */
const FULL_FROM = 560

export function WhatMoves({ judged }: { judged: Judged }) {
  const { ref, width } = useWidth<HTMLElement>(320)
  const { t, inner } = useWords()
  const { kind, reckoning, made } = judged
  const plan = chosenPlan(judged)
  if (kind === null || reckoning === null || plan === null || plan.alterations.length === 0) return null
  const points = pointsOf(judged)
  const guessed = outlineOf(kind, { points, jobs: [], made }, 'front')?.guessed ?? []
  return (
    <section class="part" aria-labelledby="moves-head" ref={ref}>
      <h2 id="moves-head">{t('moves.head')}</h2>
      <div class="seams">
        {viewsOf(plan.alterations).map((view) => (
          <Outline
            key={view}
            kind={kind}
            points={points}
            plan={plan}
            made={made}
            view={view}
            size={width >= FULL_FROM ? 'full' : 'small'}
          />
        ))}
        <dl class="told">
          {plan.alterations.map((job) => (
            <JobWords key={`${job.id} ${job.direction}`} job={job} lines={movesOf({ ...plan, alterations: [job] }, points)} />
          ))}
        </dl>
      </div>
      <MovesTable plan={plan} points={points} />
      {guessed.length > 0 && (
        <p class="note">
          {t('moves.guessed')} {guessed.map((point) => inner('moves.point', { point })).join(', ')}.
        </p>
      )}
    </section>
  )
}

function JobWords({ job, lines }: { job: Job; lines: ReturnType<typeof movesOf> }) {
  const words = useWords()
  const { t } = words
  return (
    <div>
      {lines.map(({ seam, side, way, offsetMm }) => (
        <>
          <dt>{side === null ? t('moves.seam', { seam }) : t(`moves.seam.${side}`, { seam })}</dt>
          <dd>{t(way === 'in' || way === 'out' ? `moves.each.${way}` : `moves.told.${way}`, { mm: Math.abs(offsetMm) })}</dd>
        </>
      ))}
      <dd class="note">
        {job.limitBecause}
        {job.softLimit && ` ${t('moves.soft-limit')}`}
      </dd>
      {job.withoutIt.length > 0 && (
        <dd class="note">
          {t('moves.without', { gaps: job.withoutIt.map(({ point, mm }) => misfitWords(point, mm, words, true)).join(', ') })}
        </dd>
      )}
    </div>
  )
}

/** Every point that is told or worked out, as the tape says today. */
export function pointsOf({ reckoning }: Pick<Judged, 'reckoning'>): Partial<Record<PointId, number>> {
  const points: Partial<Record<PointId, number>> = {}
  for (const { point, garmentMm } of reckoning?.gaps ?? []) points[point] = garmentMm
  return points
}
