/** Keep, or not for me: what was done is said in the place of the two, with the way back and the way to the wishlist. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Judged } from '../judged.ts'
import { useWords } from '../words.tsx'

type Status = Judged['kept']
/** What a person can do with a find; each is true once it is saved, false where it could not be: the page then says why. */
export interface KeepActions {
  onKeep: () => Promise<boolean>
  onPass: () => Promise<boolean>
  /** Puts a find back to what it was before the last press; null: it was not kept. */
  onTakeBack: (before: Status) => Promise<boolean>
  onWishlist: () => void
}
export interface KeepActsProps extends KeepActions {
  judged: Pick<Judged, 'kept' | 'reckoning'>
  /** It is what to do next; else something above is. */
  isMain: boolean
}

interface Done {
  /** What it was before the press. */
  before: Status
  said: 'keep.done' | 'keep.passed' | 'keep.taken-back'
}

export function KeepActs({ judged, isMain, onKeep, onPass, onTakeBack, onWishlist }: KeepActsProps) {
  const { t } = useWords()
  const [done, setDone] = useState<Done | null>(null)
  const back = useRef<HTMLButtonElement>(null)
  const first = useRef<HTMLButtonElement>(null)
  const { kept } = judged
  // the pressed button is gone: who pressed it by key stands at the way back, or at the buttons again
  useEffect(() => {
    if (done === null) return
    const next = canGoBack(done) ? back.current : first.current
    next?.focus({ preventScroll: true })
  }, [done])
  const doing = async (act: () => Promise<boolean>, said: Done['said']) => {
    const before = kept
    if (await act()) setDone({ before, said })
  }
  const leave = judged.reckoning?.verdict === 'leave-it'
  const keep = {
    onClick: () => void doing(onKeep, 'keep.done'),
    words: leave ? 'answer.keep-anyway' : 'answer.keep',
    main: isMain && !leave
  }
  const pass = { onClick: () => void doing(onPass, 'keep.passed'), words: 'answer.pass', main: leave }
  const offered = kept === null ? [keep, pass] : kept === 'passed' ? [keep] : [pass]
  return (
    <div class="acts-place">
      <div class="done" role="status">
        {done !== null && <p class="done-said">{t(done.said)}</p>}
        {done === null && kept !== null && <p class="done-said">{t(`keep.is.${kept}`)}</p>}
      </div>
      <div class="acts">
        {done !== null && canGoBack(done) ? (
          <button ref={back} type="button" class="btn" onClick={() => void doing(() => onTakeBack(done.before), 'keep.taken-back')}>
            {t('keep.take-back')}
          </button>
        ) : (
          offered.map(({ onClick, words, main }, place) => (
            <button
              key={words}
              ref={place === 0 ? first : null}
              type="button"
              class={main && kept === null ? 'btn main' : 'btn'}
              onClick={onClick}
            >
              {t(words)}
            </button>
          ))
        )}
        {kept !== null && (
          <button type="button" class="btn" onClick={onWishlist}>
            {t('keep.wishlist')}
          </button>
        )}
      </div>
    </div>
  )
}

const canGoBack = ({ said }: Done): boolean => said === 'keep.done' || said === 'keep.passed'
