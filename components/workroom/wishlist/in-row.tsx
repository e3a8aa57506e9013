/** What is changed in a listing's row itself: its status, a word that opens its choices, and its notes. */
import { useId, useRef } from 'preact/hooks'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft } from '../drafts.tsx'
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

/** What half-typed notes are held under, before the listing's id. */
export const NOTES_HELD = 'notes/'
interface NotesTyped {
  began: string
  typed: string
}
/** The notes in what is held; '' where none were typed, or they are as they were. */
export const notesHeld = (held: unknown): string =>
  typeof held === 'object' && held !== null && 'typed' in held && 'began' in held && held.typed !== held.began
    ? String(held.typed).trim()
    : ''

export interface NotesFieldProps {
  id: string
  title: string
  notes: string
  /** Answers whether they are saved; until then what is typed stays. `began`: as they were shown when typing began. */
  onNotes: (notes: string, began: string) => Saved
}

/** Kept when the field is left or Enter is pressed; Escape brings back what was there. */
export function NotesField({ id, title, notes, onNotes }: NotesFieldProps) {
  const { t } = useWords()
  const label = useId()
  const held = useDraft<NotesTyped | null>(`${NOTES_HELD}${id}`, null)
  const { began, typed } = held.typed ?? { began: notes, typed: notes }
  const latest = useRef(held)
  latest.current = held
  const sending = useRef<string | null>(null)
  const keep = () => {
    const sent = typed.trim()
    if (held.typed === null || sent === sending.current) return
    if (sent === began) return held.drop()
    sending.current = sent
    void onNotes(sent, began).then((saved) => {
      sending.current = null
      const now = latest.current
      if (!saved || now.typed === null) return
      // what was typed since then is not saved yet
      if (now.typed.typed.trim() === sent) now.drop()
      else now.type({ began: sent, typed: now.typed.typed })
    })
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
        value={typed}
        onInput={(event) => held.type({ began, typed: event.currentTarget.value })}
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
