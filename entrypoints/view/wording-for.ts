/** The units and currency of whoever it is for, and the language: as chosen in the settings, else as the browser asks. */
import { useEffect, useMemo } from 'preact/hooks'
import { useSpoken } from '../../components/use-spoken.ts'
import { personFor } from '../../core/records/person-for.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { Look } from '../../core/records/schemas.ts'
import { languageFor, spokenRow } from '../../core/words/languages.ts'
import type { Wording } from '../../core/words/say.ts'

export function wordingFor(
  look: Pick<Look, 'personId'> | null,
  wardrobe: Pick<Wardrobe, 'people' | 'settings'> | null
): Wording & { language: string } {
  const person = wardrobe === null ? null : personFor(wardrobe.people, look?.personId ?? null, wardrobe.settings.personId)
  return { units: person?.units ?? 'cm', language: languageHere(wardrobe?.settings.language), currency: person?.currency || undefined }
}

/** The same for a page: its language follows the settings at once, as soon as its words are here. */
export function useWording(look: Pick<Look, 'personId'> | null, wardrobe: Pick<Wardrobe, 'people' | 'settings'> | null): Wording {
  const asked = wordingFor(look, wardrobe)
  useSpoken(asked.language)
  const { units, currency } = asked
  const { id: language, locale } = spokenRow(asked.language)
  useEffect(() => {
    document.documentElement.lang = locale
  }, [locale])
  return useMemo(() => ({ units, language, currency }), [units, language, currency])
}

/** The language of the pages in this browser. */
export const languageHere = (chosen: string | null | undefined): string => languageFor(chosen, globalThis.navigator?.languages ?? [])
