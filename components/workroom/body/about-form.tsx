/** Who the body belongs to: the name, and whose sizes they wear. */
import { useState } from 'preact/hooks'
import { SIZES, type Sizes } from '../../../core/wearer/body.ts'
import { useWords } from '../../words.tsx'
import { useDraft } from '../drafts.tsx'
import { Choice, Field } from '../field.tsx'
import type { PersonFields } from '../shown.ts'

export interface AboutFormProps {
  person: Pick<PersonFields, 'name' | 'sizes'>
  /** The name its half-typed text is held under. */
  draft: string
  onSave: (changes: Pick<PersonFields, 'name' | 'sizes'>) => void
  onRemove: () => void
}

export function AboutForm({ person, draft, onSave, onRemove }: AboutFormProps) {
  const { t } = useWords()
  const { typed, type, drop } = useDraft(draft, { name: person.name, sizes: person.sizes ?? null })
  const [tried, setTried] = useState(false)
  const save = (event: Event) => {
    event.preventDefault()
    setTried(true)
    const its = event.currentTarget
    if (typed.name.trim() === '') {
      requestAnimationFrame(() => its instanceof HTMLElement && its.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus())
      return
    }
    drop()
    onSave({ name: typed.name.trim(), ...saidSizes(typed.sizes, person.sizes) })
  }
  return (
    <form class="wr-form" noValidate onSubmit={save}>
      <div class="wr-two">
        <Field
          label={t('person.name')}
          typed={typed.name}
          onTyped={(name) => type({ ...typed, name })}
          problem={tried && typed.name.trim() === '' ? t('person.name.empty') : null}
          required
        />
        <SizesChoice sizes={typed.sizes} onSizes={(sizes) => type({ ...typed, sizes })} />
      </div>
      <div class="row">
        <button type="submit" class="btn main">
          {t('workroom.save')}
        </button>
        <button type="button" class="btn bare" onClick={onRemove}>
          {t('person.remove', { name: person.name })}
        </button>
      </div>
    </form>
  )
}

/** Never said, it stays left out. */
export const saidSizes = (sizes: Sizes | null, was: PersonFields['sizes']): Pick<PersonFields, 'sizes'> =>
  sizes === null && was === undefined ? {} : { sizes }

const UNSAID = 'unsaid'

/** Whose sizes are worn: it may stay unsaid. */
export function SizesChoice({ sizes, onSizes }: { sizes: Sizes | null; onSizes: (sizes: Sizes | null) => void }) {
  const { t } = useWords()
  const answers: (Sizes | typeof UNSAID)[] = [...SIZES, UNSAID]
  return (
    <Choice
      label={t('person.sizes')}
      value={sizes ?? UNSAID}
      options={answers.map((value) => ({ value, label: t(`person.sizes.${value}`) }))}
      onChoose={(chosen) => onSizes(chosen === UNSAID ? null : chosen)}
      note={t('person.sizes.note')}
    />
  )
}
