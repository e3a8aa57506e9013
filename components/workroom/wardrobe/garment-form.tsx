/** A garment owned: its name, kind and measures, each flat or around. */
import { useState } from 'preact/hooks'
import type { Cloth } from '../../../core/garment/garment-input.ts'
import type { Cut, Facet } from '../../../core/ids/cut.ts'
import { GARMENT_KINDS, type GarmentKind } from '../../../core/ids/kinds.ts'
import { isGirth, type PointId } from '../../../core/ids/points.ts'
import { facetsAsked, valuesAsked } from '../../cut/cut-choices.ts'
import { FacetSelect } from '../../cut/facet-select.tsx'
import { MeasureMark } from '../../outline/measure-mark.tsx'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, useSend } from '../drafts.tsx'
import { Choice, Field } from '../field.tsx'
import { onEscape, useFocusFirst } from '../form-focus.ts'
import type { GarmentFields } from '../shown.ts'
import { STRETCHES, stretchAnswer, withStretch } from './cloth-typed.ts'
import { type Laid, measuresFrom, type PointsTyped, pointsAsked, typedOf } from './garment-typed.ts'

export interface GarmentFormProps {
  garment: GarmentFields
  /** The name its half-typed text is held under. */
  draft: string
  /** Answers whether it is saved; until then what is typed stays. */
  onSave: (garment: GarmentFields, began: GarmentFields) => Saved
  onCancel: () => void
}

interface FormTyped {
  /** The garment as the form showed it first: another page may change it meanwhile. */
  began: GarmentFields
  name: string
  kind: GarmentKind
  points: PointsTyped
  cloth: Cloth
  cut: Cut
  notes: string
}

export function GarmentForm({ garment, draft, onSave, onCancel }: GarmentFormProps) {
  const { t, units } = useWords()
  const form = useDraft<FormTyped>(draft, {
    began: garment,
    name: garment.name,
    kind: garment.kind,
    points: typedOf(garment.measures),
    cloth: garment.cloth ?? {},
    cut: garment.cut ?? {},
    notes: garment.notes
  })
  const [tried, setTried] = useState(false)
  const { began } = form.typed
  const send = useSend((fields: GarmentFields) => onSave(fields, began), form.drop)
  const begun = useFocusFirst()
  const { name, kind, points, cloth, cut, notes } = form.typed
  const type = (changed: Partial<FormTyped>) => form.type({ ...form.typed, ...changed })
  const { measures, problems } = measuresFrom(points, units)
  const nameProblem = tried && name.trim() === '' ? t('garment.name.empty') : null

  const cancel = () => {
    form.drop()
    onCancel()
  }
  const save = (event: Event) => {
    event.preventDefault()
    setTried(true)
    if (name.trim() !== '' && Object.keys(problems).length === 0) {
      return send({ name: name.trim(), kind, measures, ...said(garment, cloth, cutOn(kind, cut)), notes })
    }
    const its = event.currentTarget
    requestAnimationFrame(() => its instanceof HTMLElement && its.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus())
  }
  return (
    <form class="wr-form" noValidate onSubmit={save} onKeyDown={onEscape(cancel)} ref={begun}>
      <div class="wr-two">
        <Field label={t('garment.name')} typed={name} onTyped={(name) => type({ name })} problem={nameProblem} required />
        <Choice
          label={t('garment.kind')}
          value={kind}
          options={GARMENT_KINDS.map((value) => ({ value, label: t('garment.kind.is', { kind: value }) }))}
          onChoose={(kind) => type({ kind })}
        />
      </div>
      <p class="note">{t(`garment.type.${units}`)}</p>
      <div class="wr-points">
        {pointsAsked(kind, points).map((point) => (
          <PointField
            key={point}
            kind={kind}
            point={point}
            text={points[point]?.text ?? ''}
            laid={points[point]?.laid ?? 'flat'}
            problem={problems[point] ?? null}
            told={tried}
            onChange={(text, laid) => type({ points: { ...points, [point]: { text, laid } } })}
          />
        ))}
      </div>
      <ClothAndCut kind={kind} cloth={cloth} cut={cut} onChange={type} />
      <Field label={t('garment.notes')} typed={notes} onTyped={(notes) => type({ notes })} long />
      <div class="row">
        <button type="submit" class="btn main">
          {t('workroom.save')}
        </button>
        <button type="button" class="btn" onClick={cancel}>
          {t('workroom.cancel')}
        </button>
      </div>
    </form>
  )
}

interface PointFieldProps {
  kind: GarmentKind
  point: PointId
  text: string
  laid: Laid
  problem: string | null
  /** Saving was tried: tell the problem at once. */
  told: boolean
  onChange: (text: string, laid: Laid) => void
}

/** A bad figure is told once the field is left, not while it is being typed. */
function PointField({ kind, point, text, laid, problem, told, onChange }: PointFieldProps) {
  const { t, units, unitSign } = useWords()
  const [left, setLeft] = useState(false)
  return (
    <div class="wr-point">
      <MeasureMark kind={kind} point={point} />
      <Field
        label={t('garment.point', { point })}
        typed={text}
        onTyped={(typed) => onChange(typed, laid)}
        onDone={() => setLeft(true)}
        unit={unitSign(units)}
        problem={(left || told) && problem !== null ? t(problem, { units }) : null}
        note={t(`measure.${point}`)}
      />
      {isGirth(point) && (
        <div class="wr-laid">
          <Pick
            label={t('garment.laid', { point })}
            options={[
              { value: 'flat', label: t('garment.laid.flat') },
              { value: 'around', label: t('garment.laid.around') }
            ]}
            value={laid}
            onPick={(value) => onChange(text, value)}
          />
        </div>
      )}
    </div>
  )
}

/** Cloth and cut where something is said of them, or was before; never said, they stay left out. */
const said = (was: GarmentFields, cloth: Cloth, cut: Cut): Partial<GarmentFields> => ({
  ...(was.cloth !== undefined || Object.keys(cloth).length > 0 ? { cloth } : {}),
  ...(was.cut !== undefined || Object.keys(cut).length > 0 ? { cut } : {})
})

/** What was said of the cut, as far as a garment of this kind has it: a kind set right afterwards drops the rest. */
function cutOn(kind: GarmentKind, cut: Cut): Cut {
  const own = facetsAsked(kind).filter((facet) => cut[facet] !== undefined && valuesAsked(kind, facet).includes(String(cut[facet])))
  return Object.fromEntries(own.map((facet) => [facet, cut[facet]])) as Cut
}

interface ClothAndCutProps {
  kind: GarmentKind
  cloth: Cloth
  cut: Cut
  onChange: (changed: { cloth: Cloth } | { cut: Cut }) => void
}

/** How it stretches and how it is cut, each by choice; folded away until something is said. */
function ClothAndCut({ kind, cloth, cut, onChange }: ClothAndCutProps) {
  const { t } = useWords()
  const [begunOpen] = useState(stretchAnswer(cloth) !== 'unsaid' || Object.keys(cut).length > 0)
  const set = (facet: Facet, value: string | null) => {
    const { [facet]: _, ...others } = cut
    onChange({ cut: value === null ? others : { ...others, [facet]: value } })
  }
  return (
    <details class="wr-more stitched" open={begunOpen}>
      <summary>{t('garment.more')}</summary>
      <p class="note">{t('garment.more.why')}</p>
      <Choice
        label={t('garment.stretch')}
        value={stretchAnswer(cloth)}
        options={STRETCHES.map((value) => ({ value, label: t(`garment.stretch.${value}`) }))}
        onChoose={(answer) => onChange({ cloth: withStretch(cloth, answer) })}
      />
      <div class="facets">
        {facetsAsked(kind).map((facet) => (
          <FacetSelect
            key={facet}
            facet={facet}
            values={valuesAsked(kind, facet)}
            value={cut[facet] ?? null}
            unset={t('garment.facet.unsaid')}
            onChoose={(value) => set(facet, value)}
          />
        ))}
      </div>
    </details>
  )
}
