/** What the steps of the first visit share: who it is, and the ways on, back and out. */
import { useWords } from '../../words.tsx'
import { Field } from '../field.tsx'
import type { FirstDraft } from './first-draft.ts'

interface DraftProps {
  draft: FirstDraft
  onDraft: (draft: FirstDraft) => void
}

export function Name({ draft, onDraft }: DraftProps) {
  const { t } = useWords()
  return <Field label={t('first.name')} typed={draft.name} onTyped={(name) => onDraft({ ...draft, name })} note={t('first.name.note')} />
}

export function Ways({ onBack, onSkip }: { onBack: () => void; onSkip: () => void }) {
  const { t } = useWords()
  return (
    <div class="row">
      <button type="submit" class="btn main">
        {t('first.save')}
      </button>
      <button type="button" class="btn" onClick={onBack}>
        {t('first.back')}
      </button>
      <button type="button" class="btn bare" onClick={onSkip}>
        {t('first.skip')}
      </button>
    </div>
  )
}

/** Enter goes on to the next field, and from the last to the button that saves. */
export function onEnter(event: KeyboardEvent): void {
  const { target, currentTarget } = event
  if (event.key !== 'Enter' || !(target instanceof HTMLInputElement) || target.type !== 'text') return
  if (!(currentTarget instanceof HTMLElement)) return
  event.preventDefault()
  const stops = [...currentTarget.querySelectorAll<HTMLElement>('input[type="text"], .btn.main')]
  stops[stops.indexOf(target) + 1]?.focus()
}

/** To the first field with a message, once it stands there. */
export const toFirstWrong = (): void => {
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.wr-first-visit [aria-invalid="true"]')?.focus())
}
