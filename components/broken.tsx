/** What stands in the place of a part that could not be drawn: what happened, what is safe, and the ways on. */
import { useState } from 'preact/hooks'
import { TypedText } from './typed-text.tsx'
import { useWords } from './words.tsx'

export interface BrokenProps {
  detail: string
  onReload: () => void
  onBackup: () => void
}

/** A part of the workroom. The others go on. */
export function BrokenPart({ detail, onReload, onBackup }: BrokenProps) {
  const { t } = useWords()
  return (
    <section class="part stack" role="alert">
      <h1>{t('broken.part')}</h1>
      <p>{t('broken.part.what', { detail })}</p>
      <div class="row">
        <button type="button" class="btn" onClick={onReload}>
          {t('saving.reload')}
        </button>
        <button type="button" class="btn" onClick={onBackup}>
          {t('broken.backup')}
        </button>
      </div>
    </section>
  )
}

export interface BrokenListingProps extends BrokenProps {
  /** Puts these words in the place of the listing's; what they were can be had back. */
  onPaste: (text: string) => void
  /** null: nothing was changed that could be taken back. */
  onUndo: (() => void) | null
}

/** A listing in the panel. Those of other tabs go on. */
export function BrokenListing({ detail, onReload, onBackup, onPaste, onUndo }: BrokenListingProps) {
  const { t } = useWords()
  const [text, setText] = useState('')
  return (
    <main class="sheet answer stack">
      <h1 class="plainhead">{t('broken.listing')}</h1>
      <p class="why" role="alert">
        {t('broken.listing.what', { detail })}
      </p>
      {onUndo !== null && (
        <div class="acts">
          <button type="button" class="btn main" onClick={onUndo}>
            {t('broken.undo')}
          </button>
        </div>
      )}
      <TypedText label={t('broken.paste')} value="" rows={5} onTyped={setText} />
      <div class="acts">
        <button type="button" class="btn" disabled={text.trim() === ''} onClick={() => onPaste(text)}>
          {t('nothing.read')}
        </button>
        <button type="button" class="btn" onClick={onBackup}>
          {t('broken.backup')}
        </button>
        <button type="button" class="btn" onClick={onReload}>
          {t('saving.reload')}
        </button>
      </div>
    </main>
  )
}

/** One row of a table that could not be drawn. */
export function BrokenRow({ columns, title, onRemove }: { columns: number; title: string; onRemove: () => void }) {
  const { t } = useWords()
  return (
    <tr>
      <td colSpan={columns}>
        <span role="alert">{t('broken.row', { title })}</span>{' '}
        <button type="button" class="btn small bare" onClick={onRemove}>
          {t('workroom.remove')}
        </button>
      </td>
    </tr>
  )
}
