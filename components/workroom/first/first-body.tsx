/** The few measures that matter for what is shopped for: each with where it is taken, how, and its field. */
import { useState } from 'preact/hooks'
import type { BodyMeasureId } from '../../../core/wearer/body.ts'
import { useWords } from '../../words.tsx'
import { BodyFigure } from '../body/body-figure.tsx'
import { MAIN_PLACES, type Side, startMm } from '../body/body-places.ts'
import { doubtsOf } from '../body/doubts.ts'
import { Eighths } from '../body/eighths.tsx'
import { Field } from '../field.tsx'
import { Headline } from '../frame.tsx'
import { typedLength } from '../typed.ts'
import { UnitsPick } from '../units-pick.tsx'
import { useMedia } from '../use-media.ts'
import { bodyTaken, type FirstVisitProps, personOf } from './first-draft.ts'
import { Name, onEnter, toFirstWrong, Ways } from './first-steps.tsx'
import { fewestFor, ifLikedFor } from './shops-for.ts'

export function FirstBody(props: FirstVisitProps) {
  const { draft, onDraft, onBody } = props
  const { t, unitSign } = useWords()
  /** Nothing on the page moves while fields are gone through, so that no touch misses. */
  const isTouched = useMedia('(pointer: coarse)')
  const isNarrow = useMedia('(max-width: 720px)')
  const few = fewestFor(draft.chosen)
  const ifLiked = ifLikedFor(draft.chosen)
  const asked = [...few, ...ifLiked]
  const [active, setActive] = useState<BodyMeasureId | null>(few[0] ?? null)
  const [tried, setTried] = useState(false)
  const { measures, problems } = bodyTaken(asked, draft)
  const told = new Map(measures.map(({ measure, mm }) => [measure, mm]))
  const save = (event: Event) => {
    event.preventDefault()
    setTried(true)
    if (measures.length > 0 && Object.keys(problems).length === 0) return onBody(personOf(draft), measures)
    toFirstWrong()
  }
  const type = (measure: BodyMeasureId, typed: string) => onDraft({ ...draft, body: { ...draft.body, [measure]: typed } })
  return (
    <>
      <Headline title={t('first.body')} note={t('first.body.note', { count: few.length })} />
      <section class="part wr-first">
        {!isNarrow && (
          <figure class="wr-first-figure">
            <BodyFigure side={sideOf(active)} active={active} />
          </figure>
        )}
        <form class="stack" noValidate onKeyDown={onEnter} onSubmit={save}>
          <UnitsPick units={draft.units} onUnits={(units) => onDraft({ ...draft, units })} />
          <p class="note">{t(`first.type.${draft.units}`)}</p>
          {asked.map((measure) => {
            const isActive = active === measure
            const problem = problems[measure]
            return (
              <div key={measure} class="wr-first-measure" onFocusCapture={() => setActive(measure)}>
                <Field
                  label={t('body.name', { measure })}
                  number={MAIN_PLACES.find((place) => place.measure === measure)?.number}
                  typed={draft.body[measure] ?? ''}
                  unit={unitSign(draft.units)}
                  onTyped={(typed) => type(measure, typed)}
                  problem={problem !== undefined && (tried || !isActive) ? t(problem, { units: draft.units }) : null}
                  note={how(measure, ifLiked.includes(measure))}
                />
                {doubtsOf(measure, told, draft.units).map(({ code, values }) => (
                  <p key={code} class="wr-doubt">
                    {t(code, values)}
                  </p>
                ))}
                {isTouched && draft.units === 'in' && <Pressed measure={measure} typed={draft.body[measure] ?? ''} onTyped={type} />}
                {isNarrow && <BodyFigure side={sideOf(measure)} active={measure} alone />}
              </div>
            )
          })}
          {tried && measures.length === 0 && Object.keys(problems).length === 0 && (
            <p class="wrong" role="alert">
              {t('first.body.none')}
            </p>
          )}
          <Ways onBack={() => onDraft({ ...draft, step: 'sewing' })} onSkip={props.onSkip} />
          <Name {...props} />
        </form>
      </section>
    </>
  )

  function how(measure: BodyMeasureId, ifLikedToo: boolean): string {
    const sentence = t(`body.how.${measure}`)
    return ifLikedToo ? `${sentence} ${t('first.if-liked')}` : sentence
  }
}

const sideOf = (measure: BodyMeasureId | null): Side => MAIN_PLACES.find((place) => place.measure === measure)?.side ?? 'front'

interface PressedProps {
  measure: BodyMeasureId
  typed: string
  onTyped: (measure: BodyMeasureId, typed: string) => void
}

/** The eighths of an inch to press, for anyone without keys for fractions. */
function Pressed({ measure, typed, onTyped }: PressedProps) {
  const { t, figureAs } = useWords()
  const length = typedLength(typed, 'in')
  return (
    <Eighths
      label={t('body.name', { measure })}
      mm={length.ok ? length.value : null}
      startMm={startMm(measure)}
      onPress={(mm) => onTyped(measure, figureAs(mm, 'in'))}
    />
  )
}
