/** The plans side by side: least work, closest fit, a tailor; what is alike is shown once; doing nothing stands below. */
import { useEffect, useRef } from 'preact/hooks'
import type { PointId } from '../../core/ids/points.ts'
import type { Plan } from '../../core/plan/plan.ts'
import type { Reckoning } from '../../core/reckon.ts'
import { choiceOf, chosenPlan, type Judged, type PlanChoice } from '../judged.ts'
import { LevelStitches } from '../tape/level-stitches.tsx'
import { gapKind } from '../tape/tape-words.ts'
import { useWords, type Words } from '../words.tsx'

/** Plans of the same jobs and amounts, under all their aims. */
export interface PlanColumn {
  plan: Plan
  aims: PlanChoice[]
}

/** The columns, each once. */
export function planColumns(plans: readonly Plan[]): PlanColumn[] {
  const columns: PlanColumn[] = []
  for (const plan of plans) {
    const same = columns.find((column) => jobsOf(column.plan) === jobsOf(plan) && whoseWork(column.plan) === whoseWork(plan))
    if (same === undefined) columns.push({ plan, aims: [choiceOf(plan, plans)] })
    else same.aims.push(choiceOf(plan, plans))
  }
  return columns
}
const jobsOf = ({ alterations }: Plan): string =>
  alterations
    .map(({ id, direction, amounts }) => `${id} ${direction} ${JSON.stringify(Object.entries(amounts).sort())}`)
    .sort()
    .join(';')
const whoseWork = ({ aim }: Plan): string => (aim === 'tailor' ? 'tailor' : 'own')

/** Only where there is a choice: one plan alone is told by the answer and by what moves. */
export function Plans({ judged, onAim }: { judged: Judged; onAim: (aim: PlanChoice) => void }) {
  const { t, units } = useWords()
  const { reckoning } = judged
  if (reckoning === null) return null
  const count = planColumns(reckoning.plans).length
  if (count < 2) return null
  return (
    <details class="part">
      <summary>
        <h2 id="plans-head">{t('plans.head')}</h2>
        <span class="note">{t('plans.count', { n: count })}</span>
      </summary>
      <div>
        <div class="scrolls">
          <PlanTable judged={judged} reckoning={reckoning} onAim={onAim} />
        </div>
        <p class="note">{t(`plans.after.${units}`)}</p>
        <AsItIs judged={judged} />
      </div>
    </details>
  )
}

function PlanTable({ judged, reckoning, onAim }: { judged: Judged; reckoning: Reckoning; onAim: (aim: PlanChoice) => void }) {
  const words = useWords()
  const { t, inner, figure } = words
  const columns = planColumns(reckoning.plans)
  const chosen = chosenPlan(judged)
  const before = new Map(reckoning.gaps.map(({ point, garmentMm }) => [point, garmentMm]))
  const isOn = (column: PlanColumn) => chosen !== null && column.aims.includes(choiceOf(chosen, reckoning.plans))
  const on = (column: PlanColumn) => (isOn(column) ? 'on' : undefined)
  const row = (head: string, cell: (column: PlanColumn) => preact.ComponentChild) => (
    <tr key={head}>
      <th scope="row">{head}</th>
      {columns.map((column) => (
        <td key={column.aims[0]} class={on(column)}>
          {cell(column)}
        </td>
      ))}
    </tr>
  )
  const afterAt = (point: PointId) =>
    row(t('points.point', { point }), ({ plan }) => {
      const after = plan.after.find((one) => one.point === point)?.mm ?? before.get(point)
      return after === undefined ? '–' : figure(after)
    })
  return (
    <table class="plans" aria-labelledby="plans-head">
      <thead>
        <tr>
          <td />
          {columns.map((column) => (
            <th key={column.aims[0]} scope="col" class={on(column)}>
              {column.aims.map((aim, i) => (i === 0 ? t : inner)('plans.aim', { aim })).join(', ')}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {changedPoints(columns, before).map(afterAt)}
        {row(t('plans.stays-wrong'), ({ plan }) =>
          plan.misfit.length === 0 ? t('plans.nothing') : plan.misfit.map(({ point, mm }) => misfitWords(point, mm, words)).join(', ')
        )}
        {row(t('facts.hardest-short'), ({ plan }) => (
          <Hardest plan={plan} />
        ))}
        {row(t('plans.time'), ({ plan }) =>
          plan.aim === 'tailor' || plan.alterations.length === 0 ? t('plans.none') : t('facts.minutes', { minutes: plan.minutes })
        )}
        {row(t('plans.cost'), ({ plan }) => (plan.cost === null ? t('plans.no-price') : t('facts.money-figure', { spend: plan.cost })))}
        {row(t('facts.chance-name'), ({ plan: { chance } }) =>
          chance === null ? t(judged.settled ? 'facts.chance.none' : 'facts.chance.pending') : t('facts.chance', { chance })
        )}
        {row(t('plans.choice'), (column) => (
          <Choice isChosen={isOn(column)} aim={column.aims[0] ?? column.plan.aim} onAim={onAim} />
        ))}
      </tbody>
    </table>
  )
}

function Hardest({ plan }: { plan: Plan }) {
  const { t } = useWords()
  if (plan.alterations.length === 0) return <>{t('plans.none')}</>
  if (plan.aim === 'tailor') return <>{t('facts.by-tailor')}</>
  return (
    <>
      {t('facts.level', { level: plan.level })}
      <LevelStitches level={plan.level} />
    </>
  )
}

function Choice({ isChosen, aim, onAim }: { isChosen: boolean; aim: PlanChoice; onAim: (aim: PlanChoice) => void }) {
  const { t, inner } = useWords()
  const chosen = useRef<HTMLSpanElement>(null)
  const pressed = useRef(false)
  // the button is gone: who pressed it stands at what it became
  useEffect(() => {
    if (isChosen && pressed.current) chosen.current?.focus({ preventScroll: true })
    pressed.current = false
  }, [isChosen])
  if (isChosen)
    return (
      <span class="chosen" tabIndex={-1} ref={chosen}>
        {t('plans.chosen')}
      </span>
    )
  const choose = () => {
    pressed.current = true
    onAim(aim)
  }
  return (
    <button type="button" class="btn small" onClick={choose}>
      {t('plans.choose')}
      <span class="sr"> {inner('plans.aim', { aim })}</span>
    </button>
  )
}

function AsItIs({ judged }: { judged: Judged }) {
  const words = useWords()
  const asItIs = judged.reckoning?.asItIs
  if (asItIs === undefined) return null
  const wrong = asItIs.misfit.map(({ point, mm }) => misfitWords(point, mm, words, true)).join(', ')
  return (
    <p class="as-it-is">
      <b>{words.t('plans.as-it-is')}</b>{' '}
      {wrong === '' ? words.inner('plans.as-it-is.fits') : words.inner('plans.as-it-is.wrong', { wrong })}{' '}
      {asItIs.chance !== null && words.t('plans.as-it-is.chance', { chance: asItIs.chance })}
    </p>
  )
}

/** `waist 1½ in too big`, or in a narrow column `waist 1½ too big`. */
export function misfitWords(point: PointId, mm: number, { inner }: Words, unit = false): string {
  const way = mm >= 0 ? 'over' : 'under'
  return inner(`plans.misfit.${unit ? 'unit.' : ''}${way}.${gapKind(point)}`, { point, mm: Math.abs(mm) })
}

const LEAST_CHANGE_MM = 0.5
function changedPoints(columns: readonly PlanColumn[], before: ReadonlyMap<PointId, number>): PointId[] {
  const found = new Set<PointId>()
  for (const { plan } of columns) {
    for (const { point, mm } of plan.after) {
      const was = before.get(point)
      if (was !== undefined && Math.abs(was - mm) > LEAST_CHANGE_MM) found.add(point)
    }
  }
  return [...found]
}
