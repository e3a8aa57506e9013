/** Garments owned and people: the few rules that go past one record. */
import { type Change, patch, put } from './change.ts'
import type { Records } from './database.ts'
import { all, one } from './find.ts'
import type { Fields, Settings, Stamp } from './schemas.ts'

/** A person as first made, before anything is told. */
export const NEW_PERSON: Fields<'people'> = {
  name: '',
  units: 'cm',
  currency: '',
  fit: 'as-cut',
  means: { level: 3, tailor: false }
}

/** Marks or unmarks a favourite; another of the same person and kind gives the mark up. Every change that this makes, in order. */
export async function markFavourite(records: Records, id: string, on: boolean, stamp: Stamp): Promise<Change<'garmentsOwned'>[]> {
  const changes: Change<'garmentsOwned'>[] = []
  await records.together('rw', ['garmentsOwned'], async (records) => {
    const garments = await all(records, 'garmentsOwned')
    const chosen = garments.find((garment) => garment.id === id)
    if (chosen === undefined) return
    for (const garment of garments) {
      const wanted =
        garment.id === id ? on : garment.favourite && !(on && garment.personId === chosen.personId && garment.kind === chosen.kind)
      const change = wanted === garment.favourite ? null : await patch(records, 'garmentsOwned', garment.id, { favourite: wanted }, stamp)
      if (change !== null) changes.push(change)
    }
  })
  return changes
}

const SETTINGS_ID = 'settings'
const FIRST_SETTINGS: Fields<'settings'> = { theme: 'system', personId: null }

/** The settings, or the first ones. */
export const settingsOf = async (records: Records): Promise<Pick<Settings, 'theme' | 'personId' | 'language'>> =>
  (await one(records, 'settings', SETTINGS_ID)) ?? FIRST_SETTINGS

/** Sets some settings. Where they can't be read they begin anew, and the row that was there is set aside whole. */
export async function setSettings(records: Records, changes: Partial<Fields<'settings'>>, stamp: Stamp): Promise<void> {
  await records.together('rw', ['settings', 'setAside'], async (records) => {
    const there = await patch(records, 'settings', SETTINGS_ID, changes, stamp)
    if (there !== null) return
    const row = await records.rows('settings').get(SETTINGS_ID)
    if (row !== undefined) {
      await records.rows('setAside').put({ id: stamp.newId(), from: 'settings', row })
      await records.rows('settings').delete(SETTINGS_ID)
    }
    await put(records, 'settings', { ...FIRST_SETTINGS, ...changes }, stamp, SETTINGS_ID)
  })
}
