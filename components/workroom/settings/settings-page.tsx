/** The settings: how the pages look and speak, and for one person units, money, sewing, prices, limits and ease. Each is kept at once. */
import { useState } from 'preact/hooks'
import type { AlterationId } from '../../../core/ids/alterations.ts'
import type { Means } from '../../../core/plan/means.ts'
import { FITS } from '../../../core/wearer/body.ts'
import { LANGUAGE_ROWS } from '../../../core/words/languages.ts'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, useSend } from '../drafts.tsx'
import { Choice, Field } from '../field.tsx'
import { Fold } from '../fold.tsx'
import { Headline } from '../frame.tsx'
import type { PersonFields, PersonShown } from '../shown.ts'
import { moneyTyped, typedMoney } from '../typed.ts'
import { UnitsPick } from '../units-pick.tsx'
import { EasePart } from './ease-part.tsx'
import { LimitsPart } from './limits-part.tsx'
import { PriceList } from './price-list.tsx'
import { CurrencyChoice, inUnits, LevelChoice, TailorTick } from './sewing.tsx'

export type Theme = 'system' | 'light' | 'dark'
const THEMES: readonly Theme[] = ['system', 'light', 'dark']
const PACES = [0.75, 1, 1.5, 2, 3] as const
const BROWSER = 'browser'

export interface SettingsPageProps {
  theme: Theme
  onTheme: (theme: Theme) => void
  /** null: as the browser says. */
  language: string | null
  onLanguage: (language: string | null) => void
  /** null: there is nobody yet. */
  person: PersonShown | null
  /** The jobs that the kept listings need. */
  met: readonly AlterationId[]
  /** Something chosen: it counts at once, beside what another page changes. */
  onChosen: (changes: Partial<PersonFields>) => void
  /** Something typed: answers whether it is saved; until then it stays in its field. `began`: as it was shown when typing began. */
  onTyped: (changes: Partial<PersonFields>, began: Partial<PersonFields>) => Saved
}

export function SettingsPage(props: SettingsPageProps) {
  const { theme, onTheme, language, onLanguage, person } = props
  const { t } = useWords()
  return (
    <>
      <Headline title={t('settings.title')} note={t('settings.at-once')} />
      <section class="part stack">
        <h2>{t('settings.look')}</h2>
        <div class="wr-two wr-narrow">
          <Pick
            label={t('settings.look.which')}
            options={THEMES.map((value) => ({ value, label: t(`settings.look.${value}`) }))}
            value={theme}
            onPick={onTheme}
          />
          <Choice
            label={t('settings.language')}
            value={language ?? BROWSER}
            options={[
              { value: BROWSER, label: t('settings.language.browser') },
              ...LANGUAGE_ROWS.map(({ id, name }) => ({ value: id, label: name }))
            ]}
            onChoose={(value) => onLanguage(value === BROWSER ? null : value)}
          />
        </div>
      </section>
      {person === null ? (
        <section class="part">
          <a class="help-link" href="#first-visit">
            {t('wishlist.empty.body')}
          </a>
        </section>
      ) : (
        <OfPerson key={person.id} {...props} person={person} />
      )}
    </>
  )
}

function OfPerson({ person, met, onChosen, onTyped }: SettingsPageProps & { person: PersonShown }) {
  const { t } = useWords()
  const { means, units, currency, fit } = person
  const { tailorPrices = {}, notions = {} } = means
  return (
    <>
      <section class="part stack">
        <h2>{t('settings.for', { name: person.name })}</h2>
        <div class="wr-two wr-narrow">
          <UnitsPick units={units} onUnits={(value) => onChosen(inUnits(means, value))} />
          <CurrencyChoice currency={currency} onCurrency={(value) => onChosen({ currency: value })} />
          <Choice
            label={t('person.fit')}
            value={fit}
            options={FITS.map((value) => ({ value, label: t('person.fit.is', { fit: value }) }))}
            onChoose={(value) => onChosen({ fit: value })}
            note={t('person.fit.note')}
          />
        </div>
      </section>
      <section class="part stack">
        <h2>{t('settings.sewing')}</h2>
        <LevelChoice level={means.level} onLevel={(level) => onChosen({ means: { ...means, level } })} />
        <TailorTick tailor={means.tailor} onTailor={(tailor) => onChosen({ means: { ...means, tailor } })} />
        <div class="wr-two wr-narrow">
          <Choice
            label={t('person.pace')}
            value={String(means.pace ?? 1)}
            options={PACES.map((value) => ({ value: String(value), label: t(`person.pace.${value}`) }))}
            onChoose={(value) => onChosen({ means: { ...means, pace: Number(value) } })}
          />
          <HourField person={person} onTyped={onTyped} />
        </div>
      </section>
      <section class="part wr-folds">
        <Fold summary={t('prices.title')}>
          <PriceList
            key={JSON.stringify([tailorPrices, notions])}
            tailorPrices={tailorPrices}
            notions={notions}
            met={met}
            currency={currency}
            onSave={(prices, began) => onTyped({ means: { ...means, ...prices } }, { means: { ...means, ...began } })}
          />
        </Fold>
        <Fold summary={t('limits.title')}>
          <LimitsPart own={person.limits ?? {}} onOwn={(limits) => onTyped({ limits }, person)} />
        </Fold>
        <Fold summary={t('ease.title')}>
          <EasePart own={person.easeOf ?? []} fit={fit} onOwn={(easeOf) => onTyped({ easeOf }, person)} />
        </Fold>
      </section>
    </>
  )
}

/** What an hour is worth: kept when its field is left; empty leaves it out. */
function HourField({ person, onTyped }: { person: PersonShown; onTyped: SettingsPageProps['onTyped'] }) {
  const { t } = useWords()
  const held = useDraft<{ began: Means; typed: string } | null>('hour', null)
  const [left, setLeft] = useState(false)
  const { began, typed } = held.typed ?? { began: person.means, typed: moneyTyped(person.means.hourWorth ?? null) }
  const money = typedMoney(typed)
  const send = useSend((hourWorth: number | null) => {
    const { hourWorth: _, ...means } = began
    return onTyped({ means: hourWorth === null ? means : { ...means, hourWorth } }, { means: began })
  }, held.drop)
  const keep = () => {
    setLeft(true)
    if (held.typed === null || !money.ok) return
    if (money.value === (began.hourWorth ?? null)) held.drop()
    else send(money.value)
  }
  return (
    <Field
      label={t('person.hour')}
      typed={typed}
      onTyped={(text) => {
        setLeft(false)
        held.type({ began, typed: text })
      }}
      onDone={keep}
      unit={person.currency}
      problem={money.ok || !left ? null : t(money.problem)}
      note={t('person.hour.note')}
    />
  )
}
