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

type Act = 'keep' | 'pass' | 'take-back'
interface Done {
  act: Act
  /** Which of the two was pressed, or taken back. */
  pressed: 'keep' | 'pass'
  /** How it stood before that press. */
  before: Status
  /** How it stands after what was done. */
  now: Status
}

const SAID = { 'keep': 'keep.done', 'pass': 'keep.passed', 'take-back': 'keep.taken-back' } as const
const MADE = { keep: 'watching', pass: 'passed' } as const

export function KeepActs({ judged, isMain, onKeep, onPass, onTakeBack, onWishlist }: KeepActsProps) {
  const { t } = useWords()
  const { kept } = judged
  const { done, doing, back, again } = useDone(kept)
  const press = (pressed: Done['pressed'], act: () => Promise<boolean>) => () =>
    doing(act, { act: pressed, pressed, before: kept, now: MADE[pressed] })
  const takeBack = ({ pressed, before }: Done) => doing(() => onTakeBack(before), { act: 'take-back', pressed, before, now: before })
  const leave = judged.reckoning?.verdict === 'leave-it'
  const keep = { act: 'keep', onClick: press('keep', onKeep), words: leave ? 'answer.keep-anyway' : 'answer.keep', main: isMain && !leave }
  const pass = { act: 'pass', onClick: press('pass', onPass), words: 'answer.pass', main: leave }
  const offered = kept === null ? [keep, pass] : kept === 'passed' ? [keep] : [pass]
  return (
    <div class="acts-place">
      <div class="done" role="status">
        {done !== null && <p class="done-said">{t(SAID[done.act])}</p>}
        {done === null && kept !== null && <p class="done-said">{t(`keep.is.${kept}`)}</p>}
      </div>
      <div class="acts">
        {done !== null && done.act !== 'take-back' ? (
          <button ref={back} type="button" class="btn" onClick={() => takeBack(done)}>
            {t('keep.take-back')}
          </button>
        ) : (
          offered.map(({ act, onClick, words, main }) => (
            <button
              key={words}
              ref={act === done?.pressed ? again : null}
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

/** What was done here last, as long as it still stands so; and where the keyboard goes on from there. */
function useDone(kept: Status) {
  const [done, setDone] = useState<Done | null>(null)
  const back = useRef<HTMLButtonElement>(null)
  const again = useRef<HTMLButtonElement>(null)
  const stoodAt = useRef<Done | null>(null)
  const cameSo = useRef<Done | null>(null)
  useEffect(() => {
    if (done === null) return
    // what is saved comes a moment after the press; once it has come and is another, it was changed elsewhere
    if (kept === done.now) cameSo.current = done
    else if (cameSo.current === done) setDone(null)
    // the pressed button is gone: who pressed it by key stands at the way back, or at the same button again as soon as it is offered
    const next = done.act === 'take-back' ? again.current : back.current
    if (stoodAt.current === done || next === null) return
    next.focus({ preventScroll: true })
    stoodAt.current = done
  }, [done, kept])
  const doing = async (act: () => Promise<boolean>, does: Done): Promise<void> => {
    if (await act()) setDone(does)
  }
  return { done, doing: (act: () => Promise<boolean>, does: Done) => void doing(act, does), back, again }
}
