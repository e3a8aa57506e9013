/** One amount of money: taken when its field is left or Enter is pressed; what is wrong is said beside it. */
import { useEffect, useId, useState } from 'preact/hooks'
import { useWords } from './words.tsx'

/** A plain amount, `24` or `24.90` or `24,90`; null for nothing, undefined for what is none. */
export function amountOf(typed: string): number | null | undefined {
  const text = typed.trim()
  if (text === '') return null
  return /^\d{1,7}(?:[.,]\d{1,2})?$/.test(text) ? Number(text.replace(',', '.')) : undefined
}

export interface MoneyFieldProps {
  label: string
  amount: number | null
  draft: string | undefined
  onDraft: (typed: string) => void
  onAmount: (amount: number | null) => void
}

export function MoneyField({ label, amount, draft, onDraft, onAmount }: MoneyFieldProps) {
  const { t } = useWords()
  const id = useId()
  const shown = amount === null ? '' : String(amount)
  const [text, setText] = useState(draft ?? shown)
  // changed elsewhere or taken back: the field follows, and the keyboard stays where it is
  useEffect(() => {
    if (amountOf(text) !== amount) setText(draft ?? shown)
  }, [amount])
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
