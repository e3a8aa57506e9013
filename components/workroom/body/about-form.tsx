/** Who the body belongs to: the name, and whose sizes they wear. */
import { useState } from 'preact/hooks'
import { SIZES, type Sizes } from '../../../core/wearer/body.ts'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, useSend } from '../drafts.tsx'
import { Choice, Field } from '../field.tsx'
import type { PersonFields } from '../shown.ts'

type About = Pick<PersonFields, 'name' | 'sizes'>

export interface AboutFormProps {
  person: About
  /** The name its half-typed text is held under. */
  draft: string
  /** Answers whether it is saved; until then what is typed stays. */
  onSave: (changes: About, began: About) => Saved
  onRemove: () => void
}

interface Typed {
  name: string
  sizes: Sizes | null
}

export function AboutForm({ person, draft, onSave, onRemove }: AboutFormProps) {
  const { t } = useWords()
  // until something is typed the form shows the person as they are saved, also by another page
  const { typed: held, type: hold, drop } = useDraft<{ began: About; typed: Typed } | null>(draft, null)
  const { began, typed } = held ?? { began: person, typed: { name: person.name, sizes: person.sizes ?? null } }
  const type = (changed: Partial<Typed>) => hold({ began, typed: { ...typed, ...changed } })
  const send = useSend((changes: About) => onSave(changes, began), drop)
  const [tried, setTried] = useState(false)
  const save = (event: Event) => {
    event.preventDefault()
    setTried(true)
    const its = event.currentTarget
    if (typed.name.trim() === '') {
      requestAnimationFrame(() => its instanceof HTMLElement && its.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus())
      return
    }
    send({ name: typed.name.trim(), ...saidSizes(typed.sizes, began.sizes) })
  }
  return (
    <form class="wr-form" noValidate onSubmit={save}>
      <div class="wr-two">
        <Field
          label={t('person.name')}
          typed={typed.name}
          onTyped={(name) => type({ name })}
          problem={tried && typed.name.trim() === '' ? t('person.name.empty') : null}
          required
        />
        <SizesChoice sizes={typed.sizes} onSizes={(sizes) => type({ sizes })} />
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
