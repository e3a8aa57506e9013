/** The answer for a look, anew with every change: at once without its chances, a moment later with them. */
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Judged } from '../../components/judged.ts'
import { type Reckoning, type ReckonOptions, type ReckonRequest, reckon, whatWouldChange } from '../../core/reckon.ts'
import type { Look } from '../../core/records/schemas.ts'
import type { Wording } from '../../core/words/say.ts'
import { judgedOf, type LookRead, lookRequest, readLook, type Wardrobe } from './judge-look.ts'

export interface JudgedLook {
  judged: Judged
  request: ReckonRequest | null
  read: LookRead
}

export function useJudged(look: Look | null, wardrobe: Wardrobe | null, wording: Wording, place: Judged['place']): JudgedLook | null {
  const texts = look === null ? '' : JSON.stringify([look.title, look.text, look.structured, look.answers, kindsSet(look), wording.units])
  const read = useMemo(() => (look === null ? null : readLook(look, wording.units)), [texts])
  const request = look === null || read === null || wardrobe === null ? null : lookRequest(look, read, wardrobe)
  const answer = useReckoning(request, wording)
  if (look === null || read === null || wardrobe === null) return null
  return { judged: judgedOf(look, read, wardrobe, answer, place), request, read }
}

/** The kind as the person set it: an answer is read as one about that kind. */
const kindsSet = ({ corrections }: Look) => corrections.filter((one) => 'kind' in one)

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
    const timer = setTimeout(() => setWhole({ key, ...wholeAnswer(request, options) }))
    return () => clearTimeout(timer)
  }, [key])
  return whole !== null && whole.key === key
    ? { reckoning: whole.reckoning, settled: true, wouldChange: whole.wouldChange }
    : { reckoning: quick, settled: quick === null, wouldChange: [] }
}

/** With the chances, and what would better it: other means or wishes, then changes of kind, which are offered apart. */
function wholeAnswer(request: ReckonRequest, options: ReckonOptions): { reckoning: Reckoning; wouldChange: string[] } {
  const reckoning = reckon(request, options)
  return { reckoning, wouldChange: [...whatWouldChange(request, options), ...reckoning.conversions].map(({ text }) => text) }
}
