/** The listing that was open when its reader had no body yet: set beside what was just entered, so that a first answer needs no further step. */
import { WithinMain } from '../../components/main-part.tsx'
import { useWords } from '../../components/words.tsx'
import { Empty, Headline } from '../../components/workroom/frame.tsx'
import type { Records } from '../../core/records/database.ts'
import { lastLook } from '../../core/records/look-now.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { Look } from '../../core/records/schemas.ts'
import { LookApart } from '../view/look-apart.tsx'
import type { PageProps } from '../view/page-start.tsx'
import { useSaved } from '../view/use-records.ts'

export interface LookedAtProps extends PageProps {
  kept: Wardrobe
  onError: (error: unknown) => void
}

/** The look that was read last and has something to read; null: there is none. */
export const lastRead = async (records: Records): Promise<{ look: Look | null }> => ({ look: await lastLook(records, isRead) })

const isRead = ({ text, structured, problem }: Look): boolean => problem === null && (text.trim() !== '' || structured.length > 0)

export function LookedAt({ records, stamp, saving, kept, onError }: LookedAtProps) {
  const { t } = useWords()
  const last = useSaved(records, lastRead, onError)
  if (last === null) return null
  const { look } = last
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
