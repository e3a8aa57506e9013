/** The Settings page over the records: of everybody look and language, of the one chosen all else. */
import { SettingsPage } from '../../components/workroom/settings/settings-page.tsx'
import { ALTERATIONS, type AlterationId } from '../../core/ids/alterations.ts'
import { setSettings } from '../../core/records/owned.ts'
import type { Person } from '../../core/records/schemas.ts'
import type { PageProps } from '../view/page-start.tsx'
import type { Everything } from './everything.ts'
import type { AnswerNow } from './use-answers.ts'
import type { Done, WorkroomActions } from './workroom-actions.ts'

export interface SettingsPartProps extends PageProps {
  kept: Everything
  person: Person | null
  answers: ReadonlyMap<string, AnswerNow>
  actions: WorkroomActions
  onDone: (done: Done) => void
}

export function SettingsPart({ records, stamp, kept, person, answers, actions, onDone }: SettingsPartProps) {
  const set = (changes: Parameters<typeof setSettings>[1]) =>
    void setSettings(records, changes, stamp()).then(() => onDone({ code: 'settings.saved', values: {}, undo: null }))
  return (
    <SettingsPage
      theme={kept.settings.theme}
      onTheme={(theme) => set({ theme })}
      language={kept.settings.language ?? null}
      onLanguage={(language) => set({ language })}
      person={person}
      met={jobsMet(kept, answers)}
      onPerson={(changes) => person !== null && void actions.editPerson(person.id, changes, person.name)}
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
