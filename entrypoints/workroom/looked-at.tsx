/** The listing that was open when its reader had no body yet: set beside what was just entered, so that a first answer needs no further step. */
import { WithinMain } from '../../components/main-part.tsx'
import { useWords } from '../../components/words.tsx'
import { Empty, Headline } from '../../components/workroom/frame.tsx'
import type { Look } from '../../core/records/schemas.ts'
import { LookApart } from '../view/look-apart.tsx'
import type { PageProps } from '../view/page-start.tsx'
import { allLooks, useSaved } from '../view/use-records.ts'
import type { Everything } from './everything.ts'

export interface LookedAtProps extends PageProps {
  kept: Everything
  onError: (error: unknown) => void
}

/** The look that was read last and has something to read; null: there is none. */
export const lastRead = (looks: readonly Look[]): Look | null =>
  looks
    .filter(({ text, structured, problem }) => problem === null && (text.trim() !== '' || structured.length > 0))
    .reduce<Look | null>((last, look) => (last === null || look.capturedAt >= last.capturedAt ? look : last), null)

export function LookedAt({ records, stamp, saving, kept, onError }: LookedAtProps) {
  const { t } = useWords()
  const looks = useSaved(records, allLooks, onError)
  if (looks === null) return null
  const look = lastRead(looks)
  if (look === null) {
    return (
      <>
        <Headline title={t('workroom.page.look')} />
        <Empty>
          <p>{t('wishlist.empty.how')}</p>
        </Empty>
      </>
    )
  }
  return (
    <div class="wr-open">
      <p>{t('look.here')}</p>
      <WithinMain.Provider value>
        <LookApart records={records} stamp={stamp} saving={saving} look={look} wardrobe={kept} place="none" windowId={null} />
      </WithinMain.Provider>
    </div>
  )
}
