/** What could not be saved, why, and the way on; nothing while all is well. */
import { useWords } from '../words.tsx'
import type { SavingShown } from './saving-now.tsx'
import './saving.css'

export interface SavingBarProps {
  now: SavingShown
  onAgain: () => void
  onReload: () => void
  onClose: () => void
}

/** Nothing can be saved from this page any more: it must be opened anew. */
const FOR_GOOD = ['outdated', 'deleted']

export function SavingBar({ now: { trouble, waiting }, onAgain, onReload, onClose }: SavingBarProps) {
  const { t } = useWords()
  if (trouble === null) return null
  const forGood = FOR_GOOD.includes(trouble)
  return (
    <div class="saving-bar" role="alert">
      <p>
        <strong>{t(`saving.trouble.${trouble}`)}</strong>{' '}
        {t(forGood ? 'saving.copy' : waiting > 0 ? 'saving.again.how' : 'saving.still-there')}
      </p>
      <div class="row">
        {waiting > 0 && !forGood && (
          <button type="button" class="btn small main" onClick={onAgain}>
            {t('saving.again')}
          </button>
        )}
        <button type="button" class="btn small" onClick={onReload}>
          {t('saving.reload')}
        </button>
        {waiting === 0 && !forGood && (
          <button type="button" class="btn small bare" onClick={onClose}>
            {t('workroom.close')}
          </button>
        )}
      </div>
    </div>
  )
}
