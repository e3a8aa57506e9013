/** A person: the name, the units, the fit asked for, and what they can sew and pay. */
import { useState } from 'preact/hooks'
import type { Units } from '../../../core/length.ts'
import type { Level } from '../../../core/plan/means.ts'
import { FITS } from '../../../core/wearer/body.ts'
import { LevelStitches } from '../../tape/level-stitches.tsx'
import { useWords } from '../../words.tsx'
import { useDraft } from '../drafts.tsx'
import { Choice, Field } from '../field.tsx'
import type { PersonFields } from '../shown.ts'
import { moneyTyped, typedMoney } from '../typed.ts'

export interface PersonFormProps {
  person: PersonFields
  /** The name its half-typed text is held under. */
  draft?: string
  /** A new person has one main button; a known one may be deleted. */
  onSave: (person: PersonFields) => void
  onCancel: (() => void) | null
  onRemove: (() => void) | null
}

const LEVELS: readonly Level[] = [1, 2, 3, 4, 5]
const PACES = [0.75, 1, 1.5, 2, 3] as const
/** The finest mark a person makes, mm: by cm tape and by inch tape (1/8 in). */
const MARK: Record<Units, number> = { cm: 2, in: 3.175 }

const typedOf = ({ name, units, currency, fit, means }: PersonFields) => ({
  name,
  units,
  currency,
  fit,
  level: means.level,
  tailor: means.tailor,
  pace: means.pace ?? 1,
  hour: moneyTyped(means.hourWorth ?? null)
})

export function PersonForm({ person, draft = 'person', onSave, onCancel, onRemove }: PersonFormProps) {
  const { t } = useWords()
  const { typed, type, drop } = useDraft(draft, typedOf(person))
  const [tried, setTried] = useState(false)
  const { name, units, currency, fit, level, tailor, pace, hour } = typed

  const hourWorth = typedMoney(hour)
  const money = currency.trim().toUpperCase()
  const problems = {
    name: name.trim() === '' ? 'person.name.empty' : null,
    currency: /^([A-Z]{3})?$/.test(money) ? null : 'person.currency.wrong',
    hour: hourWorth.ok ? null : hourWorth.problem
  }
  const wrong = (code: string | null): string | null => (tried && code !== null ? t(code) : null)
  const save = (event: Event) => {
    event.preventDefault()
    setTried(true)
    if (problems.name !== null || problems.currency !== null || !hourWorth.ok) {
      const form = event.currentTarget
      // the messages stand beside their fields; the first of them is gone to
      requestAnimationFrame(() => form instanceof HTMLElement && form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus())
      return
    }
    const { hourWorth: _, pace: __, ...means } = person.means
    drop()
    onSave({
      name: name.trim(),
      units,
      currency: money,
      fit,
      means: {
        ...means,
        level,
        tailor,
        markMm: MARK[units],
        ...(pace === 1 ? {} : { pace }),
        ...(hourWorth.value === null ? {} : { hourWorth: hourWorth.value })
      }
    })
  }
  return (
    <form class="wr-form" noValidate onSubmit={save}>
      <Field label={t('person.name')} typed={name} onTyped={(name) => type({ ...typed, name })} problem={wrong(problems.name)} required />
      <div class="wr-two">
        <Choice
          label={t('body.units')}
          value={units}
          options={[
            { value: 'cm', label: t('workroom.unit.cm') },
            { value: 'in', label: t('workroom.unit.in') }
          ]}
          onChoose={(units) => type({ ...typed, units })}
        />
        <Field
          label={t('person.currency')}
          typed={currency}
          onTyped={(currency) => type({ ...typed, currency })}
          problem={wrong(problems.currency)}
          note={t('person.currency.note')}
        />
      </div>
      <Choice
        label={t('person.fit')}
        value={fit}
        options={FITS.map((value) => ({ value, label: t('person.fit.is', { fit: value }) }))}
        onChoose={(fit) => type({ ...typed, fit })}
      />
      <fieldset class="wr-levels">
        <legend class="label">{t('person.level')}</legend>
        {LEVELS.map((one) => (
          <label key={one} class="wr-tick">
            <input type="radio" name="level" checked={one === level} onChange={() => type({ ...typed, level: one })} />
            <span>{t('person.level.is', { level: one })}</span>
            <LevelStitches level={one} />
          </label>
        ))}
      </fieldset>
      <label class="wr-tick">
        <input type="checkbox" checked={tailor} onChange={(event) => type({ ...typed, tailor: event.currentTarget.checked })} />
        <span>{t('person.tailor')}</span>
      </label>
      <div class="wr-two">
        <Choice
          label={t('person.pace')}
          value={String(pace)}
          options={PACES.map((value) => ({ value: String(value), label: t(`person.pace.${value}`) }))}
          onChoose={(value) => type({ ...typed, pace: Number(value) })}
        />
        <Field
          label={t('person.hour')}
          typed={hour}
          onTyped={(hour) => type({ ...typed, hour })}
          unit={money}
          problem={wrong(problems.hour)}
          note={t('person.hour.note')}
        />
      </div>
      <div class="row">
        <button type="submit" class="btn main">
          {t('workroom.save')}
        </button>
        {onCancel !== null && (
          <button
            type="button"
            class="btn"
            onClick={() => {
              drop()
              onCancel()
            }}
          >
            {t('workroom.cancel')}
          </button>
        )}
        {onRemove !== null && (
          <button type="button" class="btn bare" onClick={onRemove}>
            {t('person.remove', { name: person.name })}
          </button>
        )}
      </div>
    </form>
  )
}
