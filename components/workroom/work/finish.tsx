/** Finished: what it really took and what it measures now, against the plan; and what that teaches, with its numbers. */
import { useState } from 'preact/hooks'
import type { PointId } from '../../../core/ids/points.ts'
import { Day } from '../../day.tsx'
import { LengthField } from '../../length-field.tsx'
import { useWords, type Words } from '../../words.tsx'
import { Field } from '../field.tsx'
import { isFlat, onFlat } from './arrival.tsx'
import type { WorkActions, WorkShown } from './work-shown.ts'

type Props = { work: WorkShown; today: string } & Pick<WorkActions, 'onFinish' | 'onPace' | 'onSellers'>

/** Whole minutes; null: nothing typed; undefined: no number of minutes. */
export function minutesOf(typed: string): number | null | undefined {
  const text = typed.trim()
  if (text === '') return null
  return /^\d{1,5}$/.test(text) ? Number(text) : undefined
}

export function Finish({ work, today, onFinish, onPace, onSellers }: Props) {
  const words = useWords()
  const { t, units } = words
  const [minutes, setMinutes] = useState(work.minutes === null ? '' : String(work.minutes))
  const [result, setResult] = useState<ReadonlyMap<PointId, number>>(() => new Map(work.result.map(({ point, mm }) => [point, mm])))
  const [typed, setTyped] = useState<ReadonlyMap<PointId, string>>(new Map())
  const taken = minutesOf(minutes)
  const after = work.sheet?.after ?? []
  return (
    <section class="part noprint" aria-labelledby="finish-head">
      <h2 id="finish-head">{t('finish.head')}</h2>
      <div class="wk-finish">
        <Field
          label={t('finish.minutes')}
          typed={minutes}
          onTyped={setMinutes}
          problem={taken === undefined ? t('finish.minutes.wrong') : null}
        />
        {after.length > 0 && (
          <fieldset>
            <legend class="label">{t('finish.result')}</legend>
            {after.map(({ point, mm }) => {
              const found = result.get(point)
              return (
                <div key={point} class="row">
                  <LengthField
                    label={t('points.point', { point })}
                    of=""
                    typed={typed.get(point) ?? (found === undefined ? '' : words.figure(onFlat(point, found)))}
                    unit={units}
                    onTyped={(text) => setTyped(new Map([...typed, [point, text]]))}
                    onLength={({ mm: flat }) => setResult(new Map([...result, [point, isFlat(point) ? flat * 2 : flat]]))}
                  />
                  <span class="note">
                    {t('finish.planned', { mm: onFlat(point, mm) })}
                    {found !== undefined && `, ${offWords(onFlat(point, found) - onFlat(point, mm), words)}`}
                  </span>
                </div>
              )
            })}
          </fieldset>
        )}
      </div>
      <div class="row">
        <button
          type="button"
          class="btn main"
          disabled={taken === undefined}
          onClick={() => onFinish({ minutes: taken ?? null, result: [...result].map(([point, mm]) => ({ point, mm })) })}
        >
          {t('finish.do')}
        </button>
        {work.finishedAt !== null && (
          <>
            <p class="note">
              <Day iso={work.finishedAt} today={today} />
            </p>
            <button type="button" class="btn small" onClick={() => onFinish(null)}>
              {t('finish.not-after-all')}
            </button>
          </>
        )}
      </div>
      <Learnt work={work} onPace={onPace} onSellers={onSellers} />
    </section>
  )
}

/** Less than this is as planned on any tape, mm. */
const AS_PLANNED_MM = 3
function offWords(mm: number, { inner }: Words): string {
  if (Math.abs(mm) <= AS_PLANNED_MM) return inner('finish.off.same')
  return inner(mm > 0 ? 'finish.off.more' : 'finish.off.less', { mm: Math.abs(mm) })
}

function Learnt({ work: { pace, sellers }, onPace, onSellers }: { work: WorkShown } & Pick<WorkActions, 'onPace' | 'onSellers'>) {
  const { t, wording } = useWords()
  const number = (value: number) => new Intl.NumberFormat(wording.language ?? 'en', { maximumFractionDigits: 2 }).format(value)
  if (pace === null && sellers === null) return null
  return (
    <div class="wk-learnt">
      {pace !== null && (
        <p>
          {t('finish.pace', { n: pace.n, own: pace.own, table: pace.table, pace: number(pace.pace) })}{' '}
          {pace.isUsed ? (
            t('finish.pace.used', { pace: number(pace.pace) })
          ) : (
            <button type="button" class="btn small" onClick={() => onPace(pace.pace)}>
              {t('finish.pace.use', { pace: number(pace.pace) })}
            </button>
          )}
        </p>
      )}
      {sellers !== null && (
        <p>
          {t('finish.sellers', { n: sellers.n, girth: sellers.sd.girth / 2, length: sellers.sd.length })}{' '}
          {sellers.isUsed ? (
            t('finish.sellers.used')
          ) : (
            <button type="button" class="btn small" onClick={() => onSellers(sellers.sd)}>
              {t('finish.sellers.use')}
            </button>
          )}
        </p>
      )}
    </div>
  )
}
