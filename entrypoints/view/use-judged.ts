/** The answer for a look, anew with every change: at once without its chances, a moment later with them. */
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Judged } from '../../components/judged.ts'
import type { Units } from '../../core/length.ts'
import { type Reckoning, type ReckonOptions, type ReckonRequest, reckon, whatWouldChange } from '../../core/reckon.ts'
import { readingStandsOn, readSaved, type SavedRead } from '../../core/records/read-saved.ts'
import { listingRequest, type Wardrobe } from '../../core/records/request-for.ts'
import type { Look } from '../../core/records/schemas.ts'
import type { Wording } from '../../core/words/say.ts'
import { judgedOf } from './judge-look.ts'

export interface JudgedLook {
  judged: Judged
  request: ReckonRequest | null
  /** What a bare figure was read in. */
  units: Units
  read: SavedRead
}

export function useJudged(look: Look | null, wardrobe: Wardrobe | null, wording: Wording, place: Judged['place']): JudgedLook | null {
  const texts = look === null ? '' : readingStandsOn(look, wording.units)
  const read = useMemo(() => (look === null ? null : readSaved(look, wording.units)), [texts])
  const request = look === null || read === null || wardrobe === null ? null : listingRequest(look, read, wardrobe)
  const answer = useReckoning(request, wording)
  if (look === null || read === null || wardrobe === null) return null
  return { judged: judgedOf(look, read, wardrobe, answer, place), request, units: wording.units, read }
}

function useReckoning(
  request: ReckonRequest | null,
  { units, language, currency }: Wording
): Pick<Judged, 'reckoning' | 'settled' | 'wouldChange'> {
  const options = { units, ...(language === undefined ? {} : { language }), ...(currency === undefined ? {} : { currency }) }
  const key = request === null ? '' : JSON.stringify([request, options])
  const quick = useMemo(() => (request === null ? null : reckon(request, { ...options, outlook: false })), [key])
  const [whole, setWhole] = useState<{ key: string; reckoning: Reckoning; wouldChange: string[] } | null>(null)
  useEffect(() => {
    if (request === null) return
    const timer = setTimeout(() =>
      setWhole({ key, ...(quick === null ? wholeAnswer(request, options) : wholeOr(quick, request, options)) })
    )
    return () => clearTimeout(timer)
  }, [key])
  return whole !== null && whole.key === key
    ? { reckoning: whole.reckoning, settled: true, wouldChange: whole.wouldChange }
    : { reckoning: quick, settled: quick === null, wouldChange: [] }
}

/** The whole answer; where working out the chances fails, the one without them stands. */
function wholeOr(quick: Reckoning, request: ReckonRequest, options: ReckonOptions): { reckoning: Reckoning; wouldChange: string[] } {
  try {
    return wholeAnswer(request, options)
  } catch (error) {
    console.error(error)
    return { reckoning: quick, wouldChange: [] }
  }
}

/** With the chances, and what would better it: other means or wishes, then changes of kind, which are offered apart. */
function wholeAnswer(request: ReckonRequest, options: ReckonOptions): { reckoning: Reckoning; wouldChange: string[] } {
  const reckoning = reckon(request, options)
  return { reckoning, wouldChange: [...whatWouldChange(request, options), ...reckoning.conversions].map(({ text }) => text) }
}
