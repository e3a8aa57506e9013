/** What a person can sew, in plain words: the hardest work they do themselves, and whether a tailor is at hand. And the money they reckon in. */
import { useId } from 'preact/hooks'
import type { Units } from '../../../core/length.ts'
import type { Level, Means } from '../../../core/plan/means.ts'
import { languageRow } from '../../../core/words/languages.ts'
import { LevelStitches } from '../../tape/level-stitches.tsx'
import { useWords } from '../../words.tsx'
import { Choice } from '../field.tsx'
import type { PersonFields } from '../shown.ts'
import { currencyRows } from './currencies.ts'

export const LEVELS: readonly Level[] = [1, 2, 3, 4, 5]
/** The finest mark a person makes, mm: by cm tape and by inch tape (1/8 in). */
export const MARK: Record<Units, number> = { cm: 2, in: 3.175 }
/** Other units bring another mark with them. */
export const inUnits = (means: Means, units: Units): Pick<PersonFields, 'units' | 'means'> => ({
  units,
  means: { ...means, markMm: MARK[units] }
})

export function LevelChoice({ level, onLevel }: { level: Level; onLevel: (level: Level) => void }) {
  const { t } = useWords()
  const name = useId()
  return (
    <fieldset class="wr-levels">
      <legend class="label">{t('person.level')}</legend>
      {LEVELS.map((one) => (
        <div key={one} class="wr-level-choice">
          <label class="wr-tick">
            <input type="radio" name={name} checked={one === level} aria-describedby={`${name}-${one}`} onChange={() => onLevel(one)} />
            <span>{t('person.level.is', { level: one })}</span>
            <LevelStitches level={one} />
          </label>
          <p class="note" id={`${name}-${one}`}>
            {t(`person.level.what.${one}`)}
          </p>
        </div>
      ))}
    </fieldset>
  )
}

export function TailorTick({ tailor, onTailor }: { tailor: boolean; onTailor: (tailor: boolean) => void }) {
  const { t } = useWords()
  return (
    <label class="wr-tick">
      <input type="checkbox" checked={tailor} onChange={(event) => onTailor(event.currentTarget.checked)} />
      <span>{t('person.tailor')}</span>
    </label>
  )
}

export function CurrencyChoice({ currency, onCurrency }: { currency: string; onCurrency: (currency: string) => void }) {
  const { t, wording } = useWords()
  const rows = currencyRows(languageRow(wording.language).locale, currency)
  return (
    <Choice
      label={t('person.currency')}
      value={currency}
      options={[
        { value: '', label: t('person.currency.none') },
        ...rows.map(({ code, name }) => ({ value: code, label: t('person.currency.is', { code, name }) }))
      ]}
      onChoose={onCurrency}
    />
  )
}
