/** A garment owned: its name, kind and measures, each flat or around. */
import { useState } from 'preact/hooks'
import { GARMENT_KINDS, type GarmentKind } from '../../../core/ids/kinds.ts'
import { isGirth, type PointId } from '../../../core/ids/points.ts'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { useDraft } from '../drafts.tsx'
import { Choice, Field } from '../field.tsx'
import type { GarmentFields } from '../shown.ts'
import { type Laid, measuresFrom, type PointsTyped, pointsAsked, typedOf } from './garment-typed.ts'

export interface GarmentFormProps {
  garment: GarmentFields
  /** The name its half-typed text is held under. */
  draft: string
  onSave: (garment: GarmentFields) => void
  onCancel: () => void
}

interface FormTyped {
  name: string
  kind: GarmentKind
  points: PointsTyped
  notes: string
}

export function GarmentForm({ garment, draft, onSave, onCancel }: GarmentFormProps) {
  const { t, units } = useWords()
  const form = useDraft<FormTyped>(draft, {
    name: garment.name,
    kind: garment.kind,
    points: typedOf(garment.measures),
    notes: garment.notes
  })
  const [tried, setTried] = useState(false)
  const { name, kind, points, notes } = form.typed
  const type = (changed: Partial<FormTyped>) => form.type({ ...form.typed, ...changed })
  const { measures, problems } = measuresFrom(points, units)
  const nameProblem = tried && name.trim() === '' ? t('garment.name.empty') : null

  const save = (event: Event) => {
    event.preventDefault()
    setTried(true)
    if (name.trim() !== '' && Object.keys(problems).length === 0) {
      form.drop()
      return onSave({ name: name.trim(), kind, measures, notes })
    }
    const its = event.currentTarget
    requestAnimationFrame(() => its instanceof HTMLElement && its.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus())
  }
  return (
    <form class="wr-form" noValidate onSubmit={save}>
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
            point={point}
            text={points[point]?.text ?? ''}
            laid={points[point]?.laid ?? 'flat'}
            problem={problems[point] ?? null}
            told={tried}
            onChange={(text, laid) => type({ points: { ...points, [point]: { text, laid } } })}
          />
        ))}
      </div>
      <Field label={t('garment.notes')} typed={notes} onTyped={(notes) => type({ notes })} long />
      <div class="row">
        <button type="submit" class="btn main">
          {t('workroom.save')}
        </button>
        <button
          type="button"
          class="btn"
          onClick={() => {
            form.drop()
            onCancel()
          }}
        >
          {t('workroom.cancel')}
        </button>
      </div>
    </form>
  )
}

interface PointFieldProps {
  point: PointId
  text: string
  laid: Laid
  problem: string | null
  /** Saving was tried: tell the problem at once. */
  told: boolean
  onChange: (text: string, laid: Laid) => void
}

/** A bad figure is told once the field is left, not while it is being typed. */
function PointField({ point, text, laid, problem, told, onChange }: PointFieldProps) {
  const { t, units } = useWords()
  const [left, setLeft] = useState(false)
  return (
    <div class="wr-point">
      <Field
        label={t('garment.point', { point })}
        typed={text}
        onTyped={(typed) => onChange(typed, laid)}
        onDone={() => setLeft(true)}
        unit={units}
        problem={(left || told) && problem !== null ? t(problem, { units }) : null}
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
