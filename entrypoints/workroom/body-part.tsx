/** The Body page with its person: somebody new, or the one chosen. */
import { useState } from 'preact/hooks'
import { useWords } from '../../components/words.tsx'
import { AboutForm } from '../../components/workroom/body/about-form.tsx'
import { BodyPage, type Drafts } from '../../components/workroom/body/body-page.tsx'
import { PersonForm } from '../../components/workroom/body/person-form.tsx'
import { whenSaved } from '../../components/workroom/drafts.tsx'
import { type FirstDraft, personOf } from '../../components/workroom/first/first-draft.ts'
import { Empty, Headline } from '../../components/workroom/frame.tsx'
import { inUnits } from '../../components/workroom/settings/sewing.tsx'
import { NEW_PERSON } from '../../core/records/owned.ts'
import type { BodyMeasurement, Person } from '../../core/records/schemas.ts'
import { currencyUsual, unitsUsual } from './where-usual.ts'
import type { WorkroomActions } from './workroom-actions.ts'

export interface BodyPartProps {
  person: Person | null
  measures: readonly BodyMeasurement[]
  today: string
  drafts: Drafts
  onDrafts: (drafts: Drafts, personId?: string) => void
  /** What the first visit had before it was left for this form. */
  begun: FirstDraft | null
  actions: WorkroomActions
}

export function BodyPart(props: BodyPartProps) {
  const { person } = props
  const [adding, setAdding] = useState(false)
  return person === null || adding ? (
    <NewPerson {...props} onClose={() => setAdding(false)} />
  ) : (
    <KnownPerson {...props} person={person} onAdd={() => setAdding(true)} />
  )
}

function NewPerson({ person, onDrafts, begun, actions, onClose }: BodyPartProps & { onClose: () => void }) {
  const { t } = useWords()
  const { language } = navigator
  const usual = { ...NEW_PERSON, units: unitsUsual(language), currency: currencyUsual(language) }
  const newPerson = person === null && begun !== null ? { ...usual, ...personOf(begun) } : usual
  return (
    <>
      <Headline title={t('body.new-person')} />
      {person === null && (
        <Empty>
          <p>{t('body.nobody')}</p>
          <p>{t('body.nobody.how')}</p>
          <p>
            <a href="#first-visit">{t('body.nobody.short')}</a>
          </p>
        </Empty>
      )}
      <section class="part">
        <PersonForm
          person={newPerson}
          draft="person/new"
          onSave={(fields) => {
            // figures typed before the short way was left stand in their fields, to be taken when each is left
            const saved = actions.addPerson(fields, (id) => begun !== null && person === null && onDrafts(begun.body, id))
            return whenSaved(saved, onClose)
          }}
          onCancel={person === null ? null : onClose}
        />
      </section>
    </>
  )
}

function KnownPerson({ person, measures, today, drafts, onDrafts, actions, onAdd }: BodyPartProps & { person: Person; onAdd: () => void }) {
  const { t } = useWords()
  return (
    <>
      <BodyPage
        key={person.id}
        name={person.name}
        measures={measures}
        today={today}
        drafts={drafts}
        onDrafts={onDrafts}
        onUnits={(units) => void actions.choosePerson(person.id, inUnits(person.means, units), person.name, person)}
        onMeasured={(measure, mm, stated, takenOn) => actions.measured(person.id, measure, mm, stated, takenOn)}
        onRemove={(id) => void actions.removeMeasure(id)}
      />
      <section class="part" key={person.id}>
        <div class="parthead">
          <h2>{t('body.about', { name: person.name })}</h2>
          <button type="button" class="btn small" onClick={onAdd}>
            {t('body.add-person')}
          </button>
        </div>
        <AboutForm
          key={person.id}
          draft={`person/${person.id}`}
          person={person}
          onSave={(fields, began) => actions.editPerson(person.id, fields, person.name, began)}
          onRemove={() => void actions.removePerson(person.id, person.name)}
        />
        <p class="note">
          <a href="#settings">{t('body.settings')}</a>
        </p>
      </section>
    </>
  )
}
