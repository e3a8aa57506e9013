/** What they can sew, whether there is a tailor, and the money they reckon in: each has an answer already, so that one press goes on. */
import { useWords } from '../../words.tsx'
import { Headline } from '../frame.tsx'
import { CurrencyChoice, LevelChoice, TailorTick } from '../settings/sewing.tsx'
import type { FirstVisitProps } from './first-draft.ts'

export function FirstSewing({ draft, onDraft, onSkip }: FirstVisitProps) {
  const { t } = useWords()
  return (
    <>
      <Headline title={t('settings.sewing')} note={t('first.sewing.note')} />
      <section class="part stack">
        <LevelChoice level={draft.level} onLevel={(level) => onDraft({ ...draft, level })} />
        <TailorTick tailor={draft.tailor} onTailor={(tailor) => onDraft({ ...draft, tailor })} />
        <div class="wr-few">
          <CurrencyChoice currency={draft.currency} onCurrency={(currency) => onDraft({ ...draft, currency })} />
        </div>
        <div class="row">
          <button type="button" class="btn main" onClick={() => onDraft({ ...draft, step: draft.towards })}>
            {t('first.next')}
          </button>
          <button type="button" class="btn" onClick={() => onDraft({ ...draft, step: 'what' })}>
            {t('first.back')}
          </button>
          <button type="button" class="btn bare" onClick={onSkip}>
            {t('first.skip')}
          </button>
        </div>
      </section>
    </>
  )
}
