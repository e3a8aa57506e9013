/** A garment owned: its name, kind and measures, each flat or around. */
import { useState } from 'preact/hooks'
import { GARMENT_KINDS } from '../../../core/garment/kinds.ts'
import { isGirth, type PointId } from '../../../core/garment/points.ts'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { Choice, Field } from '../field.tsx'
import type { GarmentFields } from '../shown.ts'
import { type Laid, measuresFrom, type PointsTyped, pointsAsked, typedOf } from './garment-typed.ts'

export interface GarmentFormProps {
  garment: GarmentFields
  onSave: (garment: GarmentFields) => void
  onCancel: () => void
}

export function GarmentForm({ garment, onSave, onCancel }: GarmentFormProps) {
  const { t, units } = useWords()
  const [name, setName] = useState(garment.name)
  const [kind, setKind] = useState(garment.kind)
  const [typed, setTyped] = useState<PointsTyped>(() => typedOf(garment.measures))
  const [notes, setNotes] = useState(garment.notes)
  const [tried, setTried] = useState(false)
  const { measures, problems } = measuresFrom(typed, units)
  const nameProblem = tried && name.trim() === '' ? t('garment.name.empty') : null

  const save = (event: Event) => {
    event.preventDefault()
    setTried(true)
    if (name.trim() !== '' && Object.keys(problems).length === 0) return onSave({ name: name.trim(), kind, measures, notes })
    const form = event.currentTarget
    requestAnimationFrame(() => form instanceof HTMLElement && form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus())
  }
  return (
    <form class="wr-form" noValidate onSubmit={save}>
      <div class="wr-two">
        <Field label={t('garment.name')} typed={name} onTyped={setName} problem={nameProblem} required />
        <Choice
          label={t('garment.kind')}
          value={kind}
          options={GARMENT_KINDS.map((value) => ({ value, label: t('garment.kind.is', { kind: value }) }))}
          onChoose={setKind}
        />
      </div>
      <p class="note">{t(`garment.type.${units}`)}</p>
      <div class="wr-points">
        {pointsAsked(kind, typed).map((point) => (
          <PointField
            key={point}
            point={point}
            text={typed[point]?.text ?? ''}
            laid={typed[point]?.laid ?? 'flat'}
            problem={problems[point] ?? null}
            told={tried}
            onChange={(text, laid) => setTyped({ ...typed, [point]: { text, laid } })}
          />
        ))}
      </div>
      <Field label={t('garment.notes')} typed={notes} onTyped={setNotes} long />
      <div class="row">
        <button type="submit" class="btn main">
          {t('workroom.save')}
        </button>
        <button type="button" class="btn" onClick={onCancel}>
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
