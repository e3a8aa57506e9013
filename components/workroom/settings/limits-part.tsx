/** The person's own limits: how far a job may go, instead of the usual limit; 0 rules it out. What is physically there stays the bound. */
import { useState } from 'preact/hooks'
import { ALTERATIONS, type AlterationId } from '../../../core/ids/alterations.ts'
import { GARMENT_KINDS, type GarmentKind } from '../../../core/ids/kinds.ts'
import type { OwnLimits } from '../../../core/plan/means.ts'
import { useWords } from '../../words.tsx'
import { LimitWords } from '../alterations/alterations-page.tsx'
import { ALTERED_KINDS, jobsShown } from '../alterations/jobs-shown.ts'
import type { Saved } from '../drafts.tsx'
import { Choice } from '../field.tsx'
import { typedLimit } from '../typed.ts'
import { OwnFigure } from './own-figure.tsx'

export interface LimitsPartProps {
  own: OwnLimits
  onOwn: (own: OwnLimits) => Saved
}

export function LimitsPart({ own, onOwn }: LimitsPartProps) {
  const { t, units } = useWords()
  const [kind, setKind] = useState<GarmentKind>('trousers')
  const jobs = jobsShown(kind)
  const ids = ALTERATIONS.filter((id) => jobs.some((job) => job.id === id))
  const set = (id: AlterationId, mm: number | null) => {
    const { [id]: _, ...others } = own
    return onOwn(mm === null ? others : { ...others, [id]: mm })
  }
  return (
    <>
      <p class="note">
        {t('limits.what')} <a href="#what-can-be-altered">{t('workroom.page.alterations')}</a>
      </p>
      <Choice
        label={t('limits.kind')}
        value={kind}
        options={ALTERED_KINDS.map((value) => ({ value, label: t('garment.kind.is', { kind: value }) }))}
        onChoose={(value) => setKind(GARMENT_KINDS.find((one) => one === value) ?? kind)}
      />
      <ul class="wr-owns">
        {ids.map((id) => (
          <OwnFigure
            key={id}
            draft={`limit/${id}`}
            name={t('prices.job', { alteration: id })}
            label={t('limits.own')}
            ownMm={own[id] ?? null}
            read={(typed) => typedLimit(typed, units)}
            onOwn={(mm) => set(id, mm)}
          >
            {jobs
              .filter((job) => job.id === id)
              .map((job) => (
                <p key={job.direction} class="wr-usual">
                  <LimitWords job={job} />
                </p>
              ))}
            {own[id] === 0 && <p class="wr-never">{t('limits.never')}</p>}
          </OwnFigure>
        ))}
      </ul>
    </>
  )
}
