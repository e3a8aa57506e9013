/** The Body page with its person: somebody new, or the one chosen. */
import { useState } from 'preact/hooks'
import { useWords } from '../../components/words.tsx'
import { BodyPage, type Drafts } from '../../components/workroom/body/body-page.tsx'
import { PersonForm } from '../../components/workroom/body/person-form.tsx'
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
      <section class="part" key={`about ${person.id} ${person.revision}`}>
        <div class="parthead">
          <h2>{t('body.about', { name: person.name })}</h2>
          <button type="button" class="btn small" onClick={() => setAdding(true)}>
            {t('body.add-person')}
          </button>
        </div>
        <PersonForm
          person={person}
          onSave={(fields) => void doings.editPerson(person.id, fields, person.name)}
          onCancel={null}
          onRemove={() => void doings.removePerson(person.id, person.name)}
        />
      </section>
    </>
  )
}
