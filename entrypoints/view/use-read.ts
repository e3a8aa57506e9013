/** A look's texts, read; null where there is no look, and while the phrases of its language are on their way. */
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Units } from '../../core/length.ts'
import { languageComing } from '../../core/reading/text/lexicons.ts'
import { readingStandsOn, readSaved, type SavedRead } from '../../core/records/read-saved.ts'
import type { Look } from '../../core/records/schemas.ts'

export function useRead(look: Look | null, units: Units): SavedRead | null {
  const texts = look === null ? '' : readingStandsOn(look, units)
  const [come, setCome] = useState(0)
  const [failed, setFailed] = useState<{ texts: string; error: unknown } | null>(null)
  const { read, coming } = useMemo((): { read: SavedRead | null; coming: Promise<void> | null } => {
    try {
      return { read: look === null ? null : readSaved(look, units), coming: null }
    } catch (thrown) {
      const coming = languageComing(thrown)
      if (coming === null) throw thrown
      return { read: null, coming }
    }
  }, [texts, come])
  useEffect(() => {
    let isWanted = true
    coming?.then(
      () => isWanted && setCome((before) => before + 1),
      (error) => isWanted && setFailed({ texts, error })
    )
    return () => {
      isWanted = false
    }
  }, [coming])
  // its file can't be had: told where the listing would stand, with the way to load the page again
  if (failed !== null && failed.texts === texts && read === null) throw failed.error
  return read
}
