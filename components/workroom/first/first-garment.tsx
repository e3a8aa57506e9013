/** Instead of a body: a garment that is liked, its kind and its few points, flat or around. It becomes the favourite of its kind. */
import { useState } from 'preact/hooks'
import { MeasureMark } from '../../outline/measure-mark.tsx'
import { Outline } from '../../outline/outline.tsx'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { Choice, Field } from '../field.tsx'
import { Headline } from '../frame.tsx'
import { UnitsPick } from '../units-pick.tsx'
import { measuresFrom, type PointsTyped } from '../wardrobe/garment-typed.ts'
import { type FirstVisitProps, personOf } from './first-draft.ts'
import { Name, onEnter, toFirstWrong, Ways } from './first-steps.tsx'
import { LIKED_KINDS, LIKED_POINTS } from './shops-for.ts'

export function FirstGarment(props: FirstVisitProps) {
  const { draft, onDraft, onGarment } = props
  const { t, unitSign } = useWords()
  const [tried, setTried] = useState(false)
  const [active, setActive] = useState<string | null>(null)
  const points = LIKED_POINTS[draft.kind] ?? []
  const typed: PointsTyped = Object.fromEntries(points.map((point) => [point, { text: draft.garment[point] ?? '', laid: draft.laid }]))
  const { measures, problems } = measuresFrom(typed, draft.units)
  const save = (event: Event) => {
    event.preventDefault()
    setTried(true)
    if (measures.length > 0 && Object.keys(problems).length === 0) return onGarment(personOf(draft), { kind: draft.kind, measures })
    toFirstWrong()
  }
  return (
    <>
      <Headline title={t('first.garment')} note={t('first.garment.note')} />
      <section class="part wr-first">
        <div class="wr-first-figure">
          <Outline
            kind={draft.kind}
            points={Object.fromEntries(measures.map(({ point, mm }) => [point, mm]))}
            plan={null}
            view="front"
            size="small"
          />
        </div>
        <form class="stack" noValidate onKeyDown={onEnter} onSubmit={save}>
          <UnitsPick units={draft.units} onUnits={(units) => onDraft({ ...draft, units })} />
          <Choice
            label={t('first.garment.kind')}
            value={draft.kind}
            options={LIKED_KINDS.map((value) => ({ value, label: t(`kind.${value}`) }))}
            onChoose={(kind) => onDraft({ ...draft, kind })}
          />
          <Pick
            label={t('first.garment.measured')}
            options={[
              { value: 'flat', label: t('first.garment.flat') },
              { value: 'around', label: t('first.garment.around') }
            ]}
            value={draft.laid}
            onPick={(laid) => onDraft({ ...draft, laid })}
          />
          <p class="note">{t(`first.type.${draft.units}`)}</p>
          {points.map((point) => {
            const problem = problems[point]
            return (
              <div key={point} class="wr-marked" onFocusCapture={() => setActive(point)}>
                <MeasureMark kind={draft.kind} point={point} />
                <Field
                  label={t('points.point', { point })}
                  typed={draft.garment[point] ?? ''}
                  unit={unitSign(draft.units)}
                  onTyped={(text) => onDraft({ ...draft, garment: { ...draft.garment, [point]: text } })}
                  problem={problem !== undefined && (tried || active !== point) ? t(problem, { units: draft.units }) : null}
                  note={t(`measure.${point}`)}
                />
              </div>
            )
          })}
          {tried && measures.length === 0 && Object.keys(problems).length === 0 && (
            <p class="wrong" role="alert">
              {t('first.garment.none')}
            </p>
          )}
          <Ways onBack={() => onDraft({ ...draft, step: 'sewing' })} onSkip={props.onSkip} />
          <Name {...props} />
        </form>
      </section>
    </>
  )
}
