/** What is changed in a listing's row itself: its status, a word that opens its choices, and its notes. */
import { useId } from 'preact/hooks'
import { useWords } from '../../words.tsx'
import { useDraft } from '../drafts.tsx'
import { STATUSES, type Status } from '../shown.ts'

export function StatusWord({
  id,
  title,
  status,
  onStatus
}: {
  id: string
  title: string
  status: Status
  onStatus: (status: Status) => void
}) {
  const { t } = useWords()
  return (
    <select
      id={`status-${id}`}
      class="wr-word"
      aria-label={t('wishlist.status-of', { title })}
      value={status}
      onChange={(event) => {
        const chosen = STATUSES.find((one) => one === event.currentTarget.value)
        if (chosen !== undefined) onStatus(chosen)
      }}
    >
      {STATUSES.map((value) => (
        <option key={value} value={value}>
          {t(`wishlist.status.${value}`)}
        </option>
      ))}
    </select>
  )
}

export interface NotesFieldProps {
  id: string
  title: string
  notes: string
  onNotes: (notes: string) => void
}

/** Kept when the field is left or Enter is pressed; Escape brings back what was there. */
export function NotesField({ id, title, notes, onNotes }: NotesFieldProps) {
  const { t } = useWords()
  const label = useId()
  const held = useDraft<string | null>(`notes/${id}`, null)
  const keep = () => {
    const typed = held.typed?.trim()
    held.drop()
    if (typed !== undefined && typed !== notes) onNotes(typed)
  }
  return (
    <>
      <label class="sr" for={label}>
        {t('wishlist.notes-of', { title })}
      </label>
      <textarea
        id={label}
        class="fieldin wr-note"
        rows={2}
        placeholder={t('wishlist.notes.empty')}
        value={held.typed ?? notes}
        onInput={(event) => held.type(event.currentTarget.value)}
        onBlur={keep}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && !event.shiftKey) {
            event.preventDefault()
            keep()
          }
          if (event.key === 'Escape' && held.typed !== null) {
            event.stopPropagation()
            held.drop()
          }
        }}
      />
    </>
  )
}
