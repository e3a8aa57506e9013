/** The units and currency of whoever it is for. */
import { personFor } from '../../core/records/owned.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { Look } from '../../core/records/schemas.ts'
import { languageFor } from '../../core/words/languages.ts'
import type { Wording } from '../../core/words/say.ts'

export function wordingFor(look: Pick<Look, 'personId'> | null, wardrobe: Wardrobe | null): Wording {
  const person = wardrobe === null ? null : personFor(wardrobe.people, look?.personId ?? null, wardrobe.settings.personId)
  return {
    units: person?.units ?? 'cm',
    language: languageFor(wardrobe?.settings.language, asked()),
    currency: person?.currency || undefined
  }
}

/** The languages that the browser asks for; none where there is no browser. */
const asked = (): readonly string[] => (typeof navigator === 'undefined' ? [] : navigator.languages)
