/** Notes that were being typed on listings that were removed elsewhere meanwhile: they are not lost, they are told. */
import { useContext, useState } from 'preact/hooks'
import { useWords } from '../../words.tsx'
import { DraftsHeld } from '../drafts.tsx'
import { NOTES_HELD, notesHeld } from './in-row.tsx'

export function LostNotes({ listings }: { listings: readonly { id: string }[] }) {
  const { t } = useWords()
  const held = useContext(DraftsHeld)
  const [, setRead] = useState<readonly string[]>([])
  const lost = [...(held ?? [])].flatMap(([name, draft]) => {
    if (!name.startsWith(NOTES_HELD) || listings.some(({ id }) => name === NOTES_HELD + id)) return []
    const notes = notesHeld(draft)
    return notes === '' ? [] : [{ name, notes }]
  })
  return (
    <>
      {lost.map(({ name, notes }) => (
        <p key={name} role="alert">
          {t('wishlist.gone.typed', { notes })}{' '}
          <button
            type="button"
            class="btn small bare"
            onClick={() => {
              held?.delete(name)
              setRead((all) => [...all, name])
            }}
          >
            {t('workroom.close')}
          </button>
        </p>
      ))}
    </>
  )
}
