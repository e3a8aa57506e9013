/** What can't be read is said where it is missed, with the way to it. */

import { useWords } from '../../components/words.tsx'
import type { PageName } from '../../components/workroom/frame.tsx'
import type { Records } from '../../core/records/database.ts'
import { countUnreadable } from '../../core/records/find.ts'
import { countUnreadableFinds } from '../../core/records/finds.ts'
import { useSaved } from '../view/use-records.ts'

const counted = async (records: Records) => ({
  listingsKept: await countUnreadableFinds(records),
  garmentsOwned: await countUnreadable(records, 'garmentsOwned'),
  people: await countUnreadable(records, 'people'),
  bodyMeasurements: await countUnreadable(records, 'bodyMeasurements')
})
/** The tables that each page shows. */
const SHOWS: Partial<Record<PageName, readonly (keyof Awaited<ReturnType<typeof counted>>)[]>> = {
  wishlist: ['listingsKept'],
  wardrobe: ['garmentsOwned', 'people'],
  body: ['people', 'bodyMeasurements'],
  first: ['people', 'listingsKept', 'garmentsOwned']
}

export function Missing({ records, page, onError }: { records: Records; page: PageName; onError: (error: unknown) => void }) {
  const { t } = useWords()
  const counts = useSaved(records, counted, onError)
  if (counts === null) return null
  return (
    <>
      {(SHOWS[page] ?? [])
        .filter((table) => counts[table] > 0)
        .map((table) => (
          <p key={table} class="note wr-remind" role="status">
            {t(`unreadable.${table}`, { count: counts[table] })} <a href="#backup">{t('unreadable.where')}</a>
          </p>
        ))}
    </>
  )
}
