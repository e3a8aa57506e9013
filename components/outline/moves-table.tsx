/** What moves, as a table: the same list that the outline draws. */
import type { Plan } from '../../core/plan/plan.ts'
import { movesOf } from '../../core/worksheet/outline/moves.ts'
import type { Measures } from '../../core/worksheet/outline/outline-drawing.ts'
import { useWords } from '../words.tsx'

export function MovesTable({ plan, points }: { plan: Plan; points: Measures }) {
  const { t, figure } = useWords()
  const moves = movesOf(plan, points)
  return (
    <div class="scrolls">
      <table class="moves">
        <thead>
          <tr>
            <th scope="col">{t('moves.head.seam')}</th>
            <th scope="col">{t('moves.head.line')}</th>
            <th scope="col">{t('moves.head.from-to')}</th>
          </tr>
        </thead>
        <tbody>
          {moves.map(({ job, seam, side, way, offsetMm, point, fromMm, toMm }) => (
            <tr key={`${job.id} ${seam} ${side}`}>
              <th scope="row">{side === null ? t('moves.seam', { seam }) : t(`moves.seam.${side}`, { seam })}</th>
              <td class="n">{t(`moves.${way}`, { mm: Math.abs(offsetMm) })}</td>
              <td>
                {point !== null && fromMm !== null && toMm !== null ? (
                  <>
                    {t('moves.point', { point })} <span class="n">{`${figure(fromMm)} → ${figure(toMm)}`}</span>
                  </>
                ) : (
                  '–'
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
