/** A person: the name, the units, the fit asked for, and what they can sew and pay. */
import { useState } from 'preact/hooks'
import type { Units } from '../../../core/length.ts'
import type { Level } from '../../../core/plan/means.ts'
import { FITS, SIZES, type Sizes } from '../../../core/wearer/body.ts'
import { LevelStitches } from '../../tape/level-stitches.tsx'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, useSend } from '../drafts.tsx'
import { Choice, Field } from '../field.tsx'
import type { PersonFields } from '../shown.ts'
import { moneyTyped, typedMoney } from '../typed.ts'

export interface PersonFormProps {
  person: PersonFields
  /** The name its half-typed text is held under. */
  draft?: string
  /** Answers whether it is saved; until then what is typed stays. */
  onSave: (person: PersonFields, began: PersonFields) => Saved
  /** null: there is nothing to go back to. */
  onCancel: (() => void) | null
  /** null: a new person, who can't be deleted yet. */
  onRemove: (() => void) | null
}

const LEVELS: readonly Level[] = [1, 2, 3, 4, 5]
const PACES = [0.75, 1, 1.5, 2, 3] as const
/** The finest mark a person makes, mm: by cm tape and by inch tape (1/8 in). */
const MARK: Record<Units, number> = { cm: 2, in: 3.175 }

const typedOf = ({ name, units, currency, fit, sizes, means }: PersonFields) => ({
  name,
  units,
  currency,
  fit,
  sizes: sizes ?? null,
  level: means.level,
  tailor: means.tailor,
  pace: means.pace ?? 1,
  hour: moneyTyped(means.hourWorth ?? null)
})

type Typed = ReturnType<typeof typedOf>

export function PersonForm({ person, draft = 'person', onSave, onCancel, onRemove }: PersonFormProps) {
  const { t } = useWords()
  // until something is typed the form shows the person as they are saved, also by another page
  const { typed: held, type, drop } = useDraft<{ began: PersonFields; typed: Typed } | null>(draft, null)
  const { began, typed } = held ?? { began: person, typed: typedOf(person) }
  const [tried, setTried] = useState(false)
  const send = useSend((fields: PersonFields) => onSave(fields, began), drop)
  const taken = personTyped(typed, began)
  const wrong = (code: string | null): string | null => (tried && code !== null ? t(code) : null)
  const change = (changed: Partial<Typed>) => type({ began, typed: { ...typed, ...changed } })
  const save = (event: Event) => {
    event.preventDefault()
    setTried(true)
    if (taken.person === null) {
      const form = event.currentTarget
      // the messages stand beside their fields; the first field with one gets the focus
      requestAnimationFrame(() => form instanceof HTMLElement && form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus())
      return
    }
    send(taken.person)
  }
  const cancel = () => {
    drop()
    onCancel?.()
  }
  return (
    <form class="wr-form" noValidate onSubmit={save}>
      <Field
        label={t('person.name')}
        typed={typed.name}
        onTyped={(name) => change({ name })}
        problem={wrong(taken.problems.name)}
        required
      />
      <UnitsAndCurrency typed={typed} problem={wrong(taken.problems.currency)} onChange={change} />
      <FitAndSizes typed={typed} onChange={change} />
      <Sewing typed={typed} onChange={change} />
      <PaceAndHour typed={typed} currency={taken.currency} problem={wrong(taken.problems.hour)} onChange={change} />
      <div class="row">
        <button type="submit" class="btn main">
          {t('workroom.save')}
        </button>
        {onCancel !== null && (
          <button type="button" class="btn" onClick={cancel}>
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

/** What was typed, as a person; null where something is wrong, with each field's problem as a code. What the form has not stays as it was. */
function personTyped({ name, units, currency: typedCurrency, fit, sizes, level, tailor, pace, hour }: Typed, was: PersonFields) {
  const hourWorth = typedMoney(hour)
  const currency = typedCurrency.trim().toUpperCase()
  const problems = {
    name: name.trim() === '' ? 'person.name.empty' : null,
    currency: /^([A-Z]{3})?$/.test(currency) ? null : 'person.currency.wrong',
    hour: hourWorth.ok ? null : hourWorth.problem
  }
  if (problems.name !== null || problems.currency !== null || !hourWorth.ok) return { person: null, currency, problems }
  const { hourWorth: _, pace: __, ...kept } = was.means
  const means = {
    ...kept,
    level,
    tailor,
    markMm: MARK[units],
    ...(pace === 1 ? {} : { pace }),
    ...(hourWorth.value === null ? {} : { hourWorth: hourWorth.value })
  }
  // never said, it stays left out
  const said = sizes === null && was.sizes === undefined ? {} : { sizes }
  return { person: { name: name.trim(), units, currency, fit, ...said, means }, currency, problems }
}

interface PartProps {
  typed: Typed
  onChange: (changed: Partial<Typed>) => void
}

function UnitsAndCurrency({ typed, problem, onChange }: PartProps & { problem: string | null }) {
  const { t } = useWords()
  return (
    <div class="wr-two">
      <Choice
        label={t('body.units')}
        value={typed.units}
        options={[
          { value: 'cm', label: t('workroom.unit.cm') },
          { value: 'in', label: t('workroom.unit.in') }
        ]}
        onChoose={(units) => onChange({ units })}
      />
      <Field
        label={t('person.currency')}
        typed={typed.currency}
        onTyped={(currency) => onChange({ currency })}
        problem={problem}
        note={t('person.currency.note')}
      />
    </div>
  )
}

const UNSAID = 'unsaid'

/** How clothes are to fit, and whose sizes are worn: it may stay unsaid. */
function FitAndSizes({ typed, onChange }: PartProps) {
  const { t } = useWords()
  const answers: (Sizes | typeof UNSAID)[] = [...SIZES, UNSAID]
  return (
    <div class="wr-two">
      <Choice
        label={t('person.fit')}
        value={typed.fit}
        options={FITS.map((value) => ({ value, label: t('person.fit.is', { fit: value }) }))}
        onChoose={(fit) => onChange({ fit })}
        note={t('person.fit.note')}
      />
      <Choice
        label={t('person.sizes')}
        value={typed.sizes ?? UNSAID}
        options={answers.map((value) => ({ value, label: t(`person.sizes.${value}`) }))}
        onChoose={(sizes) => onChange({ sizes: sizes === UNSAID ? null : sizes })}
        note={t('person.sizes.note')}
      />
    </div>
  )
}

/** How hard a job they do themselves, and whether a tailor is at hand. */
function Sewing({ typed, onChange }: PartProps) {
  const { t } = useWords()
  return (
    <>
      <fieldset class="wr-levels">
        <legend class="label">{t('person.level')}</legend>
        {LEVELS.map((level) => (
          <label key={level} class="wr-tick">
            <input type="radio" name="level" checked={level === typed.level} onChange={() => onChange({ level })} />
            <span>{t('person.level.is', { level })}</span>
            <LevelStitches level={level} />
          </label>
        ))}
      </fieldset>
      <label class="wr-tick">
        <input type="checkbox" checked={typed.tailor} onChange={(event) => onChange({ tailor: event.currentTarget.checked })} />
        <span>{t('person.tailor')}</span>
      </label>
    </>
  )
}

function PaceAndHour({ typed, currency, problem, onChange }: PartProps & { currency: string; problem: string | null }) {
  const { t } = useWords()
  return (
    <div class="wr-two">
      <Choice
        label={t('person.pace')}
        value={String(typed.pace)}
        options={PACES.map((value) => ({ value: String(value), label: t(`person.pace.${value}`) }))}
        onChoose={(value) => onChange({ pace: Number(value) })}
      />
      <Field
        label={t('person.hour')}
        typed={typed.hour}
        onTyped={(hour) => onChange({ hour })}
        unit={currency}
        problem={problem}
        note={t('person.hour.note')}
      />
    </div>
  )
}
