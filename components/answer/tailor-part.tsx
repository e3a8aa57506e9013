/** What a tailor asks for the jobs of the plan, entered right where the answer depends on it: the same figures as in the settings, with the way back. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { AlterationId } from '../../core/ids/alterations.ts'
import type { Judged } from '../judged.ts'
import { MoneyField } from '../money-field.tsx'
import { useWords } from '../words.tsx'
import { planOf } from './cost.ts'
import { GO_TO, TAILOR_PRICE } from './go-to.ts'

/** Each is true once it is saved. */
export interface TailorActions {
  onTailor: (atHand: boolean) => Promise<boolean>
  /** null: takes the price away. */
  onTailorPrice: (alteration: AlterationId, amount: number | null) => Promise<boolean>
}
export interface TailorPartProps extends TailorActions {
  judged: Judged
  onDraft: (field: string, typed: string | null) => void
}

type Done = { what: 'tailor' } | { what: 'price'; alteration: AlterationId; before: number | null; now: number | null }

export function TailorPart({ judged, onTailor, onTailorPrice, onDraft }: TailorPartProps) {
  const { t } = useWords()
  const part = useRef<HTMLDivElement>(null)
  const toField = (alteration?: AlterationId) => {
    const named = alteration === undefined ? '' : `[data-job="${alteration}"] `
    part.current?.querySelector<HTMLElement>(`${named}input`)?.focus()
  }
  const back = (last: Done) => (last.what === 'price' ? toField(last.alteration) : part.current?.querySelector('button')?.focus())
  const { done, said, did, takeBack } = useDone({ onTailor, onTailorPrice }, back)
  const { tailor, drafts } = judged
  const jobs = jobsOf(judged)
  const missing = jobs.filter((id) => tailor.prices[id] === undefined)
  const isSent = drafts[GO_TO] === TAILOR_PRICE
  const [isOpen, setOpen] = useState(false)
  useEffect(() => {
    const fold = part.current?.querySelector('details')
    if (!isSent || fold == null) return
    // a field that is folded away can't have the keyboard
    fold.open = true
    setOpen(true)
    toField(missing[0])
    onDraft(GO_TO, null)
  }, [isSent, jobs.length])
  const couldHelp = couldTailorHelp(judged)
  if (!couldHelp && jobs.length === 0 && said === '') return null
  const price = (alteration: AlterationId, before: number | null) => (now: number | null) => {
    onDraft(`tailor.${alteration}`, null)
    if (now !== before) did(onTailorPrice(alteration, now), { what: 'price', alteration, before, now })
  }
  return (
    <div class="tailor-part" ref={part}>
      {couldHelp && (
        <button type="button" class="btn small" onClick={() => did(onTailor(true), { what: 'tailor' })}>
          {t('tailor.count-in')}
        </button>
      )}
      {jobs.length > 0 && (
        <details class="fold stitched" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>{t('tailor.head')}</summary>
          <div class="row money">
            {jobs.map((id) => (
              <div key={id} data-job={id}>
                <MoneyField
                  label={t('tailor.job', { alteration: id })}
                  amount={tailor.prices[id] ?? null}
                  draft={drafts[`tailor.${id}`]}
                  onDraft={(typed) => onDraft(`tailor.${id}`, typed)}
                  onAmount={price(id, tailor.prices[id] ?? null)}
                />
              </div>
            ))}
          </div>
          <p class="note">{t('tailor.same')}</p>
        </details>
      )}
      <div class="tailor-said">
        <p class="note" role="status">
          {said}
        </p>
        {done !== null && (
          <button type="button" class="btn small" onClick={() => takeBack(done)}>
            {t('keep.take-back')}
          </button>
        )}
      </div>
    </div>
  )
}

/** The jobs that go to a tailor, each once; nobody follows the plan of what is to be left. */
function jobsOf(judged: Judged): AlterationId[] {
  const plan = judged.reckoning?.verdict === 'leave-it' ? null : planOf(judged)
  return plan?.aim === 'tailor' ? [...new Set(plan.alterations.map(({ id }) => id))] : []
}

/** There is none at hand, and one could do more. */
const couldTailorHelp = ({ tailor, wouldChange, reckoning }: Judged): boolean =>
  !tailor.atHand &&
  (wouldChange.some(({ code }) => code === 'change.tailor') ||
    (reckoning?.because.some(({ code }) => code === 'verdict.tailor-could') ?? false))

/** What was done here last, in words, and the way back. */
function useDone({ onTailor, onTailorPrice }: TailorActions, onBack: (last: Done) => void) {
  const { t, money } = useWords()
  const [done, setDone] = useState<Done | null>(null)
  const [taken, setTaken] = useState(false)
  const did = async (act: Promise<boolean>, next: Done) => {
    if (!(await act)) return
    setTaken(false)
    setDone(next)
  }
  const takeBack = async (last: Done) => {
    if (!(await (last.what === 'tailor' ? onTailor(false) : onTailorPrice(last.alteration, last.before)))) return
    setDone(null)
    setTaken(true)
    onBack(last)
  }
  const inWords = (last: Done): string => {
    if (last.what === 'tailor') return t('tailor.counted')
    const { alteration, now } = last
    return now === null ? t('tailor.cleared', { alteration }) : t('tailor.saved', { alteration, price: money(now) })
  }
  return {
    done,
    said: done !== null ? inWords(done) : taken ? t('keep.taken-back') : '',
    did: (act: Promise<boolean>, next: Done) => void did(act, next),
    takeBack: (last: Done) => void takeBack(last)
  }
}
