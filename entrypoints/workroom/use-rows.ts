/** What the rows in view are drawn from: their answers and pictures, fetched as they come into view, and held for a while. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { FindShown, ListingShown } from '../../components/workroom/shown.ts'
import type { Records } from '../../core/records/database.ts'
import { answersOf, listingsOf } from '../../core/records/finds.ts'
import { type AnswerRow, wordedAs } from '../../core/records/verdicts.ts'
import type { Wording } from '../../core/words/say.ts'
import type { Find } from './finds-held.ts'

/** More rows than this are not held on to. */
const HELD_MOST = 400

interface Held {
  answers: Map<string, AnswerRow>
  /** By the write of the find: a changed one is fetched anew. */
  pictures: Map<string, { written: number; picture: string | null }>
}

export interface Rows {
  rowOf: (find: FindShown) => ListingShown
  /** Of the rows in view, those whose sentences are in other words than the page's. */
  otherwiseWorded: readonly string[]
}

export function useRows(
  records: Records,
  {
    finds,
    inView,
    first,
    wording
  }: { finds: ReadonlyMap<string, Find>; inView: readonly string[]; first: readonly AnswerRow[]; wording: Wording }
): Rows {
  const held = useRef<Held | null>(null)
  held.current ??= { answers: new Map(first.map((row) => [row.id, row])), pictures: new Map() }
  const { answers, pictures } = held.current
  const [, setFetched] = useState(0)
  const seen = inView.flatMap((id) => finds.get(id) ?? [])
  const lacking = seen.filter(({ summary: { id }, verdict }) => verdict?.brief != null && answers.get(id)?.of !== verdict.of)
  const unseen = seen.filter(({ summary: { id, written, hasPicture } }) => hasPicture && pictures.get(id)?.written !== written)
  useEffect(() => {
    if (lacking.length === 0 && unseen.length === 0) return
    let isWanted = true
    const fetch = async () => {
      const rows = await answersOf(records, idsOf(lacking))
      const listings = unseen.length === 0 ? [] : await listingsOf(records, idsOf(unseen))
      if (answers.size > HELD_MOST) answers.clear()
      if (pictures.size > HELD_MOST) pictures.clear()
      for (const row of rows) answers.set(row.id, row)
      for (const { summary } of unseen) {
        const picture = listings.find(({ id }) => id === summary.id)?.picture ?? null
        pictures.set(summary.id, { written: summary.written, picture })
      }
      if (isWanted) setFetched((n) => n + 1)
    }
    fetch().catch(console.error)
    return () => {
      isWanted = false
    }
  }, [[...lacking, ...unseen].map(({ summary: { id, written }, verdict }) => `${id} ${written} ${verdict?.of}`).join()])

  const worded = wordedAs(wording)
  const rowOf = (find: FindShown): ListingShown => {
    const its = answers.get(find.id)
    const isItsOwn = find.brief != null && its !== undefined && its.of === finds.get(find.id)?.verdict?.of
    // its figures stand in any words; its sentence in the page's own alone
    const now = isItsOwn ? (its.worded === worded ? its.answer : { ...its.answer, because: [] }) : null
    const picture = finds.get(find.id)?.summary.hasPicture === true ? (pictures.get(find.id)?.picture ?? null) : null
    return { ...find, now, picture }
  }
  const otherwiseWorded = inView.filter((id) => {
    const its = answers.get(id)
    return its !== undefined && its.worded !== worded
  })
  return { rowOf, otherwiseWorded }
}

const idsOf = (finds: readonly Find[]): string[] => finds.map(({ summary }) => summary.id)
