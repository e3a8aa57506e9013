/** The finds for the pages of the workroom, followed as they change. */
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { FindShown } from '../../components/workroom/shown.ts'
import type { Records } from '../../core/records/database.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import { type WearerMark, wearerMarks } from '../../core/records/verdicts.ts'
import { ENGINE } from '../platform/engine.ts'
import { isFresh } from './answer-finds.ts'
import { type Find, FindsHeld, type FindsNow } from './finds-held.ts'

export function useFindsHeld(records: Records, onError: (error: unknown) => void): FindsNow | null {
  const [now, setNow] = useState<FindsNow | null>(null)
  useEffect(() => {
    const held = new FindsHeld(records, setNow, onError)
    return () => held.stop()
  }, [records])
  return now
}

/** What answers stand on besides the listings; the same one while nothing of it has changed. */
export const useWearerMarks = (wardrobe: Wardrobe): WearerMark => useMemo(() => wearerMarks(wardrobe, ENGINE), [wardrobe])

/** The finds as the wishlist shows them, in the order in which they were made. */
export function useFindsShown(finds: readonly Find[], wearer: WearerMark, currency: string): readonly FindShown[] {
  // one that stays as it was is shown by the same object: what is known of it stays known
  const shown = useMemo(() => new WeakMap<Find, FindShown>(), [wearer, currency])
  return useMemo(
    () =>
      finds.map((find) => {
        const known = shown.get(find)
        if (known !== undefined) return known
        const made = findShown(find, isFresh(find, wearer), currency)
        shown.set(find, made)
        return made
      }),
    [finds, shown]
  )
}

/** A find as the wishlist shows it; a price that the page tells in another currency than the person's stands apart. */
export function findShown({ summary, verdict }: Find, fresh: boolean, currency: string): FindShown {
  const { id, title, site, keptAt, status, notes, tags, money, verdictThen, price: told, kindThen } = summary
  const isOwn = told === null || currency === '' || told.currency === '' || told.currency === currency
  const brief = fresh ? (verdict?.brief ?? null) : null
  return {
    ...{ id, title, site, keptAt, status, notes, tags, money, verdictThen, brief },
    price: money.price ?? (isOwn ? (told?.amount ?? null) : null),
    priceElsewhere: money.price === null && !isOwn ? told : null,
    kind: brief === null ? kindThen : (verdict?.kind ?? kindThen)
  }
}
