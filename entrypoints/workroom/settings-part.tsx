/** The Settings page over the records: of everybody look and language, of the one chosen all else. */
import { SettingsPage } from '../../components/workroom/settings/settings-page.tsx'
import { ALTERATIONS, type AlterationId } from '../../core/ids/alterations.ts'
import type { Person } from '../../core/records/schemas.ts'
import type { Everything } from './everything.ts'
import type { AnswerNow } from './use-answers.ts'
import type { WorkroomActions } from './workroom-actions.ts'

export interface SettingsPartProps {
  kept: Everything
  person: Person | null
  answers: ReadonlyMap<string, AnswerNow>
  actions: WorkroomActions
}

export function SettingsPart({ kept, person, answers, actions }: SettingsPartProps) {
  return (
    <SettingsPage
      theme={kept.settings.theme}
      onTheme={(theme) => void actions.setLook({ theme })}
      language={kept.settings.language ?? null}
      onLanguage={(language) => void actions.setLook({ language })}
      person={person}
      met={jobsMet(kept, answers)}
      onChosen={(changes) => person !== null && void actions.choosePerson(person.id, changes, person.name, person)}
      onTyped={async (changes, began) => person !== null && actions.editPerson(person.id, changes, person.name, began)}
    />
  )
}

/** Every job in a plan of a kept listing, as of now or as of when it was kept; in the order of the catalogue. */
export function jobsMet({ listings }: Pick<Everything, 'listings'>, answers: ReadonlyMap<string, AnswerNow>): AlterationId[] {
  const met = new Set(
    listings.flatMap(({ id, verdictThen }) => [
      ...(verdictThen?.jobs ?? []),
      ...(answers.get(id)?.reckoning.plans.flatMap(({ alterations }) => alterations.map((job) => job.id)) ?? [])
    ])
  )
  return ALTERATIONS.filter((id) => met.has(id))
}
