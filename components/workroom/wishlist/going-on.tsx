/** What is being worked out anew for the list, how far it is, and the way to stop it; and which rows a printed list holds. */
import { useWords } from '../../words.tsx'

export interface WorkGoingOn {
  /** Answers that are still to be worked out, of so many. */
  left: number
  of: number
  isStopped: boolean
  /** How many finds were made ready so far, where that is being done; null: they all are. */
  filled: number | null
  onStop: () => void
  onGoOn: () => void
}

/** Fewer than this are done before they can be read of. */
const WORTH_A_WORD = 12

export function GoingOn({
  left,
  of,
  isStopped,
  filled,
  isWhole,
  count,
  onStop,
  onGoOn
}: WorkGoingOn & { isWhole: boolean; count: number }) {
  const { t } = useWords()
  if (filled !== null) return <p class="note wr-going">{t('wishlist.made-ready', { done: filled, count: Math.max(count, filled) })}</p>
  if (!isWhole || left === 0 || of < WORTH_A_WORD) return null
  const done = of - left
  return (
    <div class="wr-going row noprint">
      <label class="note">
        {t(isStopped ? 'wishlist.answers.stopped' : 'wishlist.answers.going', { done, of })} <progress max={of} value={done} />
      </label>
      <button type="button" class="btn small" onClick={isStopped ? onGoOn : onStop}>
        {t(isStopped ? 'wishlist.answers.go-on' : 'wishlist.answers.stop')}
      </button>
    </div>
  )
}
