/** The Settings page over the records: of everybody look and language, of the one chosen all else. */
import { SettingsPage } from '../../components/workroom/settings/settings-page.tsx'
import { ALTERATIONS, type AlterationId } from '../../core/ids/alterations.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { Person } from '../../core/records/schemas.ts'
import type { Find } from './finds-held.ts'
import type { WorkroomActions } from './workroom-actions.ts'

export interface SettingsPartProps {
  kept: Wardrobe
  person: Person | null
  finds: readonly Find[]
  actions: WorkroomActions
}

export function SettingsPart({ kept, person, finds, actions }: SettingsPartProps) {
  return (
    <SettingsPage
      theme={kept.settings.theme}
      onTheme={(theme) => void actions.setLook({ theme })}
      language={kept.settings.language ?? null}
      onLanguage={(language) => void actions.setLook({ language })}
      person={person}
      met={jobsMet(finds)}
      onChosen={(changes) => person !== null && void actions.choosePerson(person.id, changes, person.name, person)}
      onTyped={async (changes, began) => person !== null && actions.editPerson(person.id, changes, person.name, began)}
    />
  )
}

/** Every job in a plan of a kept listing, as it was worked out last or as of when it was kept; in the order of the catalogue. */
export function jobsMet(finds: readonly Find[]): AlterationId[] {
  const met = new Set(finds.flatMap(({ summary, verdict }) => [...(summary.verdictThen?.jobs ?? []), ...(verdict?.jobs ?? [])]))
  return ALTERATIONS.filter((id) => met.has(id))
}
