/** A body: the figure with its numbered tapes, and a field for each. A figure is kept when its field is left. */
import { useState } from 'preact/hooks'
import { figure, type Units } from '../../../core/length.ts'
import type { BodyMeasureId } from '../../../core/wearer/body.ts'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { Field } from '../field.tsx'
import { Headline } from '../frame.tsx'
import type { MeasureShown } from '../shown.ts'
import { typedDate, typedLength } from '../typed.ts'
import { BodyFigure } from './body-figure.tsx'
import { type BodyPlace, MAIN_PLACES, MORE_PLACES, type Side } from './body-places.ts'
import { doubtsOf } from './doubts.ts'
import { MeasureRow } from './measure-row.tsx'

export interface BodyPageProps {
  name: string
  /** Every measurement there is, of each kind the one that counts first. */
  measures: readonly MeasureShown[]
  /** ISO date. */
  today: string
  /** Text typed and not yet taken; it stays while another page is looked at. */
  drafts: Drafts
  onDrafts: (drafts: Drafts) => void
  onUnits: (units: Units) => void
  onMeasured: (measure: BodyMeasureId, mm: number, stated: string, takenOn: string) => void
  onRemove: (id: string) => void
}

export type Drafts = Readonly<Partial<Record<BodyMeasureId, string>>>
const SIDES: readonly Side[] = ['front', 'back']
/** Two figures are called the same when they show the same. */
const SAME_MM = 0.5

export function BodyPage({ name, measures, today, drafts, onDrafts, onUnits, onMeasured, onRemove }: BodyPageProps) {
  const { t, units } = useWords()
  const [active, setActive] = useState<BodyMeasureId | null>(null)
  const [side, setSide] = useState<Side>('front')
  const [problems, setProblems] = useState<Partial<Record<BodyMeasureId, string>>>({})
  const [date, setDate] = useState(today)
  const takenOn = typedDate(date, today)

  const history = (measure: BodyMeasureId) => measures.filter((one) => one.measure === measure)
  const latest = new Map<BodyMeasureId, number>()
  for (const one of measures) if (!latest.has(one.measure)) latest.set(one.measure, one.mm)

  const settle = (measure: BodyMeasureId, problem: string | null) => {
    setProblems(({ [measure]: _, ...rest }) => (problem === null ? rest : { ...rest, [measure]: problem }))
    const { [measure]: _, ...others } = drafts
    if (problem === null) onDrafts(others)
  }
  const take = (measure: BodyMeasureId, typed: string) => {
    const known = latest.get(measure)
    if (typed.trim() === '') return settle(measure, known === undefined ? null : 'body.emptied')
    const length = typedLength(typed, units)
    if (!length.ok) return settle(measure, length.problem)
    if (!takenOn.ok) return settle(measure, takenOn.problem)
    if (known === undefined || Math.abs(known - length.value) >= SAME_MM) onMeasured(measure, length.value, typed.trim(), takenOn.value)
    return settle(measure, null)
  }
  const shownIn = (measure: BodyMeasureId): string => {
    const mm = latest.get(measure)
    return drafts[measure] ?? (mm === undefined ? '' : figure(mm, units))
  }
  const row = (place: BodyPlace) => {
    const { measure } = place
    return (
      <MeasureRow
        key={measure}
        place={place}
        history={history(measure)}
        typed={shownIn(measure)}
        problem={problems[measure] ?? null}
        doubts={doubtsOf(measure, latest, units)}
        open={active === measure}
        onOpen={() => {
          setActive(measure)
          setSide(place.side)
        }}
        onTyped={(typed) => onDrafts({ ...drafts, [measure]: typed })}
        onDone={() => {
          if (drafts[measure] !== undefined) take(measure, drafts[measure])
        }}
        onPress={(mm) => take(measure, figure(mm, 'in'))}
        onRemove={onRemove}
      />
    )
  }
  return (
    <>
      <Headline
        title={t('body.title', { name })}
        note={t('body.told', { told: latest.size, all: MAIN_PLACES.length + MORE_PLACES.length })}
      />
      <div class="wr-body">
        <div class="wr-figures">
          <div class="wr-side">
            <Pick
              label={t('body.side')}
              options={SIDES.map((value) => ({ value, label: t(`body.side.${value}`) }))}
              value={side}
              onPick={setSide}
            />
          </div>
          {SIDES.map((one) => (
            <figure key={one} class={one === side ? 'wr-shown' : undefined}>
              <figcaption>{t(`body.side.${one}`)}</figcaption>
              <BodyFigure side={one} active={active} />
            </figure>
          ))}
          <ul class="wr-tips note">
            <li>{t('body.tip.stand')}</li>
            <li>{t('body.tip.level')}</li>
            <li>{t('body.tip.help')}</li>
          </ul>
        </div>
        <div class="wr-fields">
          <div class="wr-how row">
            <Pick
              label={t('body.units')}
              options={[
                { value: 'in', label: t('workroom.unit.in') },
                { value: 'cm', label: t('workroom.unit.cm') }
              ]}
              value={units}
              onPick={onUnits}
            />
            <Field label={t('body.taken-on')} typed={date} onTyped={setDate} problem={takenOn.ok ? null : t(takenOn.problem)} />
          </div>
          <p class="note">{t(`body.type.${units}`)}</p>
          {MAIN_PLACES.map(row)}
          <details class="wr-more stitched">
            <summary>{t('body.more')}</summary>
            {MORE_PLACES.map(row)}
          </details>
        </div>
      </div>
    </>
  )
}
