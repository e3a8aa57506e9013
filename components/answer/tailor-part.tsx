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
  const { t, money } = useWords()
  const [done, setDone] = useState<Done | null>(null)
  const [taken, setTaken] = useState(false)
  const part = useRef<HTMLDivElement>(null)
  const { reckoning, tailor, drafts } = judged
  const isSent = drafts[GO_TO] === TAILOR_PRICE
  const plan = planOf(judged)
  // nobody follows the plan of what is to be left
  const jobs = plan?.aim === 'tailor' && reckoning?.verdict !== 'leave-it' ? plan.alterations.map(({ id }) => id) : []
  const couldHelp =
    !tailor.atHand &&
    (judged.wouldChange.some(({ code }) => code === 'change.tailor') ||
      (reckoning?.because.some(({ code }) => code === 'verdict.tailor-could') ?? false))
  const missing = jobs.filter((id) => tailor.prices[id] === undefined)
  const toField = (alteration?: AlterationId) => {
    const named = alteration === undefined ? '' : `[data-job="${alteration}"] `
    part.current?.querySelector<HTMLElement>(`${named}input`)?.focus()
  }
  useEffect(() => {
    if (!isSent || jobs.length === 0) return
    toField(missing[0])
    onDraft(GO_TO, null)
  }, [isSent, jobs.length])
  const did = async (act: Promise<boolean>, next: Done) => {
    if (!(await act)) return
    setTaken(false)
    setDone(next)
  }
  const takeBack = async (last: Done) => {
    const isBack = await (last.what === 'tailor' ? onTailor(false) : onTailorPrice(last.alteration, last.before))
    if (!isBack) return
    setDone(null)
    setTaken(true)
    if (last.what === 'price') toField(last.alteration)
    else part.current?.querySelector('button')?.focus()
  }
  const said = done === null ? (taken ? t('keep.taken-back') : '') : doneSaid(done)
  function doneSaid(last: Done): string {
    if (last.what === 'tailor') return t('tailor.counted')
    if (last.now === null) return t('tailor.cleared', { alteration: last.alteration })
    return t('tailor.saved', { alteration: last.alteration, price: money(last.now) })
  }
  if (!couldHelp && jobs.length === 0 && said === '') return null
  return (
    <div class="tailor-part" ref={part}>
      {couldHelp && (
        <button type="button" class="btn small" onClick={() => void did(onTailor(true), { what: 'tailor' })}>
          {t('tailor.count-in')}
        </button>
      )}
      {jobs.length > 0 && (
        <details class="fold stitched" open={missing.length > 0 || isSent || done !== null || taken}>
          <summary>{t('tailor.head')}</summary>
          <div class="row money">
            {[...new Set(jobs)].map((id) => {
              const price = tailor.prices[id] ?? null
              return (
                <div key={id} data-job={id}>
                  <MoneyField
                    label={t('tailor.job', { alteration: id })}
                    amount={price}
                    draft={drafts[`tailor.${id}`]}
                    onDraft={(typed) => onDraft(`tailor.${id}`, typed)}
                    onAmount={(amount) => {
                      onDraft(`tailor.${id}`, null)
                      if (amount !== price)
                        void did(onTailorPrice(id, amount), { what: 'price', alteration: id, before: price, now: amount })
                    }}
                  />
                </div>
              )
            })}
          </div>
          <p class="note">{t('tailor.same')}</p>
        </details>
      )}
      <div class="tailor-said">
        <p class="note" role="status">
          {said}
        </p>
        {done !== null && (
          <button type="button" class="btn small" onClick={() => void takeBack(done)}>
            {t('keep.take-back')}
          </button>
        )}
      </div>
    </div>
  )
}
