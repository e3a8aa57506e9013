/** The first visit: what do you shop for, then the fewest measures for it; or a garment that is liked. Every step can be left, nothing typed is lost. */
import { useState } from 'preact/hooks'
import type { GarmentKind } from '../../../core/garment/kinds.ts'
import { isGirth, type PointId } from '../../../core/garment/points.ts'
import type { Units } from '../../../core/length.ts'
import type { BodyMeasureId } from '../../../core/wearer/body.ts'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { BodyFigure } from '../body/body-figure.tsx'
import { MAIN_PLACES } from '../body/body-places.ts'
import { Choice, Field } from '../field.tsx'
import { Headline } from '../frame.tsx'
import { typedLength } from '../typed.ts'
import { fewestFor, LIKED_KINDS, LIKED_POINTS, SHOPPED_FOR, type ShoppedFor } from './shops-for.ts'

/** Everything typed and chosen so far: kept until it is saved. */
export interface FirstDraft {
  step: 'what' | 'body' | 'garment'
  name: string
  units: Units
  chosen: ShoppedFor[]
  body: Partial<Record<BodyMeasureId, string>>
  kind: GarmentKind
  flat: boolean
  garment: Partial<Record<PointId, string>>
}
export const firstDraft = (units: Units): FirstDraft => ({
  step: 'what',
  name: '',
  units,
  chosen: [],
  body: {},
  kind: 'trousers',
  flat: true,
  garment: {}
})

export interface Measured<Id> {
  id: Id
  mm: number
  stated: string
}

export interface FirstVisitProps {
  draft: FirstDraft
  onDraft: (draft: FirstDraft) => void
  onBody: (name: string, units: Units, measures: Measured<BodyMeasureId>[]) => void
  onGarment: (name: string, units: Units, kind: GarmentKind, measures: Measured<PointId>[]) => void
  /** To the full form. */
  onSkip: () => void
  onSample: () => void
}

export function FirstVisit(props: FirstVisitProps) {
  const { step } = props.draft
  return step === 'what' ? <What {...props} /> : step === 'body' ? <Body {...props} /> : <Liked {...props} />
}

function What({ draft, onDraft, onSkip, onSample }: FirstVisitProps) {
  const { t } = useWords()
  const [unsaid, setUnsaid] = useState(false)
  const toggle = (one: ShoppedFor) =>
    onDraft({ ...draft, chosen: draft.chosen.includes(one) ? draft.chosen.filter((other) => other !== one) : [...draft.chosen, one] })
  return (
    <>
      <Headline title={t('first.what')} note={t('first.what.note')} />
      <section class="part stack">
        <fieldset class="wr-levels">
          <legend class="sr">{t('first.what')}</legend>
          {SHOPPED_FOR.map((one) => (
            <label key={one} class="wr-tick">
              <input type="checkbox" checked={draft.chosen.includes(one)} onChange={() => toggle(one)} />
              <span>{t(`first.for.${one}`)}</span>
            </label>
          ))}
        </fieldset>
        {unsaid && draft.chosen.length === 0 && (
          <p class="wrong" role="alert">
            {t('first.what.none')}
          </p>
        )}
        <div class="row">
          <button
            type="button"
            class="btn main"
            onClick={() => (draft.chosen.length === 0 ? setUnsaid(true) : onDraft({ ...draft, step: 'body' }))}
          >
            {t('first.next')}
          </button>
          <button type="button" class="btn" onClick={() => onDraft({ ...draft, step: 'garment' })}>
            {t('first.garment-instead')}
          </button>
        </div>
        <p class="note">{t('first.else')}</p>
        <div class="row">
          <button type="button" class="btn small" onClick={onSample}>
            {t('first.sample')}
          </button>
          <button type="button" class="btn small bare" onClick={onSkip}>
            {t('first.skip')}
          </button>
        </div>
      </section>
    </>
  )
}

function Who({ draft, onDraft }: DraftProps) {
  const { t } = useWords()
  return (
    <div class="row">
      <Field label={t('first.name')} typed={draft.name} onTyped={(name) => onDraft({ ...draft, name })} note={t('first.name.note')} />
      <Pick
        label={t('body.units')}
        options={[
          { value: 'cm', label: t('workroom.unit.cm') },
          { value: 'in', label: t('workroom.unit.in') }
        ]}
        value={draft.units}
        onPick={(units) => onDraft({ ...draft, units })}
      />
    </div>
  )
}
type DraftProps = { draft: FirstDraft; onDraft: (draft: FirstDraft) => void }

/** Fields of lengths: every filled one must be a length, and at least so many must be filled. */
function taken<Id extends string>(
  ids: readonly Id[],
  typed: Partial<Record<Id, string>>,
  units: Units
): { measures: Measured<Id>[]; problems: Partial<Record<Id, string>> } {
  const measures: Measured<Id>[] = []
  const problems: Partial<Record<Id, string>> = {}
  for (const id of ids) {
    const stated = (typed[id] ?? '').trim()
    if (stated === '') continue
    const length = typedLength(stated, units)
    if (length.ok) measures.push({ id, mm: length.value, stated })
    else problems[id] = length.problem
  }
  return { measures, problems }
}

function Body(props: FirstVisitProps) {
  const { draft, onDraft, onBody } = props
  const { t } = useWords()
  const ids = fewestFor(draft.chosen)
  const [active, setActive] = useState<BodyMeasureId | null>(ids[0] ?? null)
  const [tried, setTried] = useState(false)
  const { measures, problems } = taken(ids, draft.body, draft.units)
  const side = MAIN_PLACES.find(({ measure }) => measure === active)?.side ?? 'front'
  const save = () => {
    setTried(true)
    if (measures.length > 0 && Object.keys(problems).length === 0) onBody(draft.name.trim(), draft.units, measures)
  }
  return (
    <>
      <Headline title={t('first.body')} note={t('first.body.note', { count: ids.length })} />
      <section class="part wr-first">
        <figure class="wr-first-figure">
          <BodyFigure side={side} active={active} />
          {active !== null && <figcaption>{t(`body.how.${active}`)}</figcaption>}
        </figure>
        <div class="stack">
          <Who {...props} />
          <p class="note">{t(`first.type.${draft.units}`)}</p>
          {ids.map((id) => (
            <div key={id} onFocusCapture={() => setActive(id)}>
              <Field
                label={t('body.name', { measure: id })}
                typed={draft.body[id] ?? ''}
                unit={draft.units}
                onTyped={(typed) => onDraft({ ...draft, body: { ...draft.body, [id]: typed } })}
                problem={problems[id] !== undefined && (tried || active !== id) ? t(problems[id], { units: draft.units }) : null}
              />
            </div>
          ))}
          {tried && measures.length === 0 && (
            <p class="wrong" role="alert">
              {t('first.body.none')}
            </p>
          )}
          <Ways onBack={() => onDraft({ ...draft, step: 'what' })} onSave={save} onSkip={props.onSkip} />
        </div>
      </section>
    </>
  )
}

function Liked(props: FirstVisitProps) {
  const { draft, onDraft, onGarment } = props
  const { t } = useWords()
  const [tried, setTried] = useState(false)
  const points = LIKED_POINTS[draft.kind] ?? []
  const { measures, problems } = taken(points, draft.garment, draft.units)
  const save = () => {
    setTried(true)
    if (measures.length === 0 || Object.keys(problems).length > 0) return
    const around = measures.map((one) => ({ ...one, mm: draft.flat && isGirth(one.id) ? one.mm * 2 : one.mm }))
    onGarment(draft.name.trim(), draft.units, draft.kind, around)
  }
  return (
    <>
      <Headline title={t('first.garment')} note={t('first.garment.note')} />
      <section class="part stack">
        <Who {...props} />
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
          value={draft.flat ? 'flat' : 'around'}
          onPick={(how) => onDraft({ ...draft, flat: how === 'flat' })}
        />
        {points.map((point) => (
          <Field
            key={point}
            label={t('points.point', { point })}
            typed={draft.garment[point] ?? ''}
            unit={draft.units}
            onTyped={(typed) => onDraft({ ...draft, garment: { ...draft.garment, [point]: typed } })}
            problem={tried && problems[point] !== undefined ? t(problems[point], { units: draft.units }) : null}
          />
        ))}
        {tried && measures.length === 0 && (
          <p class="wrong" role="alert">
            {t('first.garment.none')}
          </p>
        )}
        <Ways onBack={() => onDraft({ ...draft, step: 'what' })} onSave={save} onSkip={props.onSkip} />
      </section>
    </>
  )
}

function Ways({ onBack, onSave, onSkip }: { onBack: () => void; onSave: () => void; onSkip: () => void }) {
  const { t } = useWords()
  return (
    <div class="row">
      <button type="button" class="btn main" onClick={onSave}>
        {t('first.save')}
      </button>
      <button type="button" class="btn" onClick={onBack}>
        {t('first.back')}
      </button>
      <button type="button" class="btn small bare" onClick={onSkip}>
        {t('first.skip')}
      </button>
    </div>
  )
}
