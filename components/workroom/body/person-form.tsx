/** Somebody new: the name, whose sizes, units and money, the fit usually wanted, and what they can sew. All of it can be changed later. */
import { useState } from 'preact/hooks'
import { FITS } from '../../../core/wearer/body.ts'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, useSend } from '../drafts.tsx'
import { Choice, Field } from '../field.tsx'
import { CurrencyChoice, inUnits, LevelChoice, TailorTick } from '../settings/sewing.tsx'
import type { PersonFields } from '../shown.ts'
import { useUnitOptions } from '../units-pick.tsx'
import { SizesChoice, saidSizes } from './about-form.tsx'

export interface PersonFormProps {
  person: PersonFields
  /** The name its half-typed text is held under. */
  draft?: string
  /** Answers whether it is saved; until then what is typed stays. */
  onSave: (person: PersonFields, began: PersonFields) => Saved
  /** null: there is nothing to go back to. */
  onCancel: (() => void) | null
}

export function PersonForm({ person, draft = 'person', onSave, onCancel }: PersonFormProps) {
  const { t } = useWords()
  const { typed: held, type, drop } = useDraft<{ began: PersonFields; typed: PersonFields } | null>(draft, null)
  const { began, typed } = held ?? { began: person, typed: person }
  const [tried, setTried] = useState(false)
  const send = useSend((fields: PersonFields) => onSave(fields, began), drop)
  const change = (changed: Partial<PersonFields>) => type({ began, typed: { ...typed, ...changed } })
  const name = typed.name.trim()
  const save = (event: Event) => {
    event.preventDefault()
    setTried(true)
    if (name === '') {
      const form = event.currentTarget
      // the message stands beside the field, which gets the focus
      requestAnimationFrame(() => form instanceof HTMLElement && form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus())
      return
    }
    send({ ...typed, name, ...inUnits(typed.means, typed.units), ...saidSizes(typed.sizes ?? null, began.sizes) })
  }
  return (
    <form class="wr-form" noValidate onSubmit={save}>
      <div class="wr-two">
        <Field
          label={t('person.name')}
          typed={typed.name}
          onTyped={(text) => change({ name: text })}
          problem={tried && name === '' ? t('person.name.empty') : null}
          required
        />
        <SizesChoice sizes={typed.sizes ?? null} onSizes={(sizes) => change({ sizes })} />
        <Choice label={t('body.units')} value={typed.units} options={useUnitOptions()} onChoose={(units) => change({ units })} />
        <CurrencyChoice currency={typed.currency} onCurrency={(currency) => change({ currency })} />
        <Choice
          label={t('person.fit')}
          value={typed.fit}
          options={FITS.map((value) => ({ value, label: t('person.fit.is', { fit: value }) }))}
          onChoose={(fit) => change({ fit })}
          note={t('person.fit.note')}
        />
      </div>
      <LevelChoice level={typed.means.level} onLevel={(level) => change({ means: { ...typed.means, level } })} />
      <TailorTick tailor={typed.means.tailor} onTailor={(tailor) => change({ means: { ...typed.means, tailor } })} />
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
      </div>
    </form>
  )
}
