/** What could not be saved, why, and the way on; nothing while all is well. */
import { useWords } from '../words.tsx'
import type { ClashShown, SavingShown } from './saving-now.tsx'
import './saving.css'

export interface SavingBarProps {
  now: SavingShown
  onAgain: () => void
  onReload: () => void
  onClose: () => void
  /** Whose value counts where both were changed; null: neither. */
  onSettle: (how: 'mine' | 'theirs' | null) => void
}

/** Nothing can be saved from this page any more: it must be opened anew. */
const FOR_GOOD = ['outdated', 'deleted']

export function SavingBar({ now: { trouble, waiting, clashes }, onAgain, onReload, onClose, onSettle }: SavingBarProps) {
  const { t } = useWords()
  if (trouble === null) return clashes.length === 0 ? null : <Clashes clashes={clashes} onSettle={onSettle} />
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

/** Both values of what was changed here and elsewhere, and the choice between them. */
function Clashes({ clashes, onSettle }: { clashes: readonly ClashShown[] } & Pick<SavingBarProps, 'onSettle'>) {
  const { t } = useWords()
  return (
    <div class="saving-bar" role="alert">
      <p>
        <strong>{t('saving.clash')}</strong>
      </p>
      <dl>
        {clashes.map(({ path, mine, theirs }) => (
          <div key={path.join('.')}>
            <dt>{t(`saving.field.${KNOWN.find((name) => name === path[0]) ?? 'other'}`)}</dt>
            <dd>{t('saving.clash.both', { mine: inWords(mine), theirs: inWords(theirs) })}</dd>
          </div>
        ))}
      </dl>
      <div class="row">
        <button type="button" class="btn small" onClick={() => onSettle('mine')}>
          {t('saving.clash.mine')}
        </button>
        <button type="button" class="btn small" onClick={() => onSettle('theirs')}>
          {t('saving.clash.theirs')}
        </button>
        <button type="button" class="btn small bare" onClick={() => onSettle(null)}>
          {t('saving.clash.neither')}
        </button>
      </div>
    </div>
  )
}

const KNOWN = ['name', 'notes', 'kind', 'measures', 'corrections', 'money', 'status', 'tags', 'means', 'fit', 'easeOf', 'limits'] as const

/** A value as it can be read: as it was typed where that is known. */
export function inWords(value: unknown): string {
  if (value === undefined || value === null || value === '') return '–'
  if (typeof value === 'string' || typeof value === 'number') return String(value)
  if (typeof value === 'object' && 'stated' in value && typeof value.stated === 'string') return value.stated
  return JSON.stringify(value)
}
