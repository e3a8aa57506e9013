/** The person's own figures for one listing: price, postage, what it is worth to them. Nothing is looked up. */
import { type Judged, moneyReasons } from '../judged.ts'
import { MoneyField } from '../money-field.tsx'
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
