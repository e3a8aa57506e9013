/** The Body page with its person: somebody new, or the one chosen. */
import { useState } from 'preact/hooks'
import { useWords } from '../../components/words.tsx'
import { BodyPage, type Drafts } from '../../components/workroom/body/body-page.tsx'
import { EasePart } from '../../components/workroom/body/ease-part.tsx'
import { LimitsPart } from '../../components/workroom/body/limits-part.tsx'
import { PersonForm } from '../../components/workroom/body/person-form.tsx'
import { PriceList } from '../../components/workroom/body/price-list.tsx'
import { type Saved, whenSaved } from '../../components/workroom/drafts.tsx'
import type { FirstDraft } from '../../components/workroom/first/first-draft.ts'
import { Empty, Headline } from '../../components/workroom/frame.tsx'
import type { PersonFields } from '../../components/workroom/shown.ts'
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
  const newPerson = person === null && begun !== null ? { ...usual, name: begun.name, units: begun.units } : usual
  return (
    <>
      <Headline title={t('body.new-person')} />
      {person === null && (
        <Empty>
          <p>{t('body.nobody')}</p>
          <p>{t('body.nobody.how')}</p>
          <p>
            <a href="#first">{t('body.nobody.short')}</a>
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
          onRemove={null}
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
        onUnits={(units) => void actions.editPerson(person.id, { units }, person.name, person)}
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
        <PersonForm
          key={person.id}
          draft={`person/${person.id}`}
          person={person}
          onSave={(fields, began) => actions.editPerson(person.id, fields, person.name, began)}
          onCancel={null}
          onRemove={() => void actions.removePerson(person.id, person.name)}
        />
        <OwnFigures person={person} onEdit={(fields, began) => actions.editPerson(person.id, fields, person.name, began ?? person)} />
      </section>
    </>
  )
}

/** What a person may set otherwise than the tables: ease, limits of jobs, prices. */
function OwnFigures({
  person,
  onEdit
}: {
  person: Person
  onEdit: (fields: Partial<PersonFields>, began?: Partial<PersonFields>) => Saved
}) {
  const { t } = useWords()
  const { tailorPrices = {}, notions = {} } = person.means
  return (
    <>
      <details class="wr-more stitched">
        <summary>{t('ease.title')}</summary>
        <EasePart own={person.easeOf ?? []} fit={person.fit} onOwn={(easeOf) => onEdit({ easeOf })} />
      </details>
      <details class="wr-more stitched">
        <summary>{t('limits.title')}</summary>
        <LimitsPart own={person.limits ?? {}} onOwn={(limits) => onEdit({ limits })} />
      </details>
      <details class="wr-more stitched">
        <summary>{t('prices.title')}</summary>
        <PriceList
          key={JSON.stringify([person.means.tailorPrices, person.means.notions])}
          tailorPrices={tailorPrices}
          notions={notions}
          currency={person.currency}
          onSave={(prices, began) => onEdit({ means: { ...person.means, ...prices } }, { means: { ...person.means, ...began } })}
        />
      </details>
    </>
  )
}
