/** The Body page with its person: somebody new, or the one chosen. */
import { useState } from 'preact/hooks'
import { useWords } from '../../components/words.tsx'
import { BodyPage, type Drafts } from '../../components/workroom/body/body-page.tsx'
import { PersonForm } from '../../components/workroom/body/person-form.tsx'
import { PriceList } from '../../components/workroom/body/price-list.tsx'
import { Empty, Headline } from '../../components/workroom/frame.tsx'
import { NEW_PERSON } from '../../core/records/owned.ts'
import type { BodyMeasurement, Person } from '../../core/records/schemas.ts'
import type { Doings } from './doings.ts'

export interface BodyPartProps {
  person: Person | null
  measures: readonly BodyMeasurement[]
  today: string
  drafts: Drafts
  onDrafts: (drafts: Drafts) => void
  doings: Doings
}

export function BodyPart({ person, measures, today, drafts, onDrafts, doings }: BodyPartProps) {
  const { t } = useWords()
  const [adding, setAdding] = useState(false)
  if (person === null || adding) {
    return (
      <>
        <Headline title={t('body.new-person')} />
        {person === null && (
          <Empty>
            <p>{t('body.nobody')}</p>
            <p>{t('body.nobody.how')}</p>
          </Empty>
        )}
        <section class="part">
          <PersonForm
            person={NEW_PERSON}
            onSave={(fields) => {
              void doings.addPerson(fields)
              setAdding(false)
            }}
            onCancel={person === null ? null : () => setAdding(false)}
            onRemove={null}
          />
        </section>
      </>
    )
  }
  return (
    <>
      <BodyPage
        key={person.id}
        name={person.name}
        measures={measures}
        today={today}
        drafts={drafts}
        onDrafts={onDrafts}
        onUnits={(units) => void doings.editPerson(person.id, { units }, person.name)}
        onMeasured={(measure, mm, stated, takenOn) => void doings.measured(person.id, measure, mm, stated, takenOn)}
        onRemove={(id) => void doings.removeMeasure(id)}
      />
      <section class="part" key={person.id}>
        <div class="parthead">
          <h2>{t('body.about', { name: person.name })}</h2>
          <button type="button" class="btn small" onClick={() => setAdding(true)}>
            {t('body.add-person')}
          </button>
        </div>
        <PersonForm
          key={formKey(person)}
          person={person}
          onSave={(fields) => void doings.editPerson(person.id, fields, person.name)}
          onCancel={null}
          onRemove={() => void doings.removePerson(person.id, person.name)}
        />
        <details class="wr-more stitched">
          <summary>{t('prices.title')}</summary>
          <PriceList
            key={JSON.stringify([person.means.tailorPrices, person.means.notions])}
            tailorPrices={person.means.tailorPrices ?? {}}
            notions={person.means.notions ?? {}}
            currency={person.currency}
            onSave={(prices) => void doings.editPerson(person.id, { means: { ...person.means, ...prices } }, person.name)}
          />
        </details>
      </section>
    </>
  )
}

/** A form begins anew when what it shows was changed from elsewhere, and only then: what is half typed in it stays. */
const formKey = ({ name, units, currency, fit, means }: Person): string => {
  const { level, tailor, pace, hourWorth } = means
  return JSON.stringify([name, units, currency, fit, level, tailor, pace, hourWorth])
}
