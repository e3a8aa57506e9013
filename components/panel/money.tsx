/** The person's own figures for one listing: price, postage, what it is worth to them. Nothing is looked up. */
import { useId, useState } from 'preact/hooks'
import { type Judged, moneyReasons } from '../judged.ts'
import { useWords } from '../words.tsx'

export interface MoneyActions {
  onMoney: (money: Judged['money']) => void
  onDraft: (field: string, typed: string | null) => void
}

const MONEY = ['price', 'postage', 'worth'] as const

export function Money({ judged, onMoney, onDraft }: { judged: Judged } & MoneyActions) {
  const { t } = useWords()
  const { money, drafts, reckoning } = judged
  if (judged.kind === null) return null
  // of what is to be left no work is counted
  const counted = reckoning === null || reckoning.verdict === 'leave-it' ? null : reckoning
  const worth = counted?.worth ?? null
  const missing = counted === null ? [] : moneyReasons(counted)
  const typing = MONEY.some((field) => drafts[`money.${field}`] !== undefined)
  return (
    <details class="part" open={typing}>
      <summary>
        <h2>{t('money.head')}</h2>
      </summary>
      <div>
        <div class="row money">
          {MONEY.map((field) => (
            <MoneyField
              key={field}
              label={t(`money.${field}`)}
              amount={money[field]}
              draft={drafts[`money.${field}`]}
              onDraft={(typed) => onDraft(`money.${field}`, typed)}
              onAmount={(amount) => {
                onMoney({ ...money, [field]: amount })
                onDraft(`money.${field}`, null)
              }}
            />
          ))}
        </div>
        <ul class="bullets note">
          {judged.price !== null && money.price === null && <li>{t('money.from-page')}</li>}
          {worth !== null && <li>{t('facts.in-all', { spend: worth.spend })}</li>}
          {worth !== null && worth.risk !== null && (
            <li>{t(worth.riskOrAltered ? 'facts.risk-or-altered' : 'facts.risk', { risk: worth.risk })}</li>
          )}
          {missing.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </div>
    </details>
  )
}

/** A plain amount, `24` or `24.90` or `24,90`; null for nothing, undefined for what is none. */
export function amountOf(typed: string): number | null | undefined {
  const text = typed.trim()
  if (text === '') return null
  return /^\d{1,7}(?:[.,]\d{1,2})?$/.test(text) ? Number(text.replace(',', '.')) : undefined
}

interface MoneyFieldProps {
  label: string
  amount: number | null
  draft: string | undefined
  onDraft: (typed: string) => void
  onAmount: (amount: number | null) => void
}

function MoneyField({ label, amount, draft, onDraft, onAmount }: MoneyFieldProps) {
  const { t } = useWords()
  const id = useId()
  const [text, setText] = useState(draft ?? (amount === null ? '' : String(amount)))
  const wrong = amountOf(text) === undefined
  return (
    <div class="amount">
      <label class="label" for={id}>
        {label}
      </label>
      <input
        id={id}
        class="fieldin n"
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={text}
        aria-invalid={wrong}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onInput={(event) => {
          setText(event.currentTarget.value)
          onDraft(event.currentTarget.value)
        }}
        onChange={(event) => {
          const typed = amountOf(event.currentTarget.value)
          if (typed !== undefined) onAmount(typed)
        }}
      />
      {wrong && (
        <p class="wrong" id={`${id}-wrong`} role="alert">
          {t('money.wrong')}
        </p>
      )}
    </div>
  )
}
