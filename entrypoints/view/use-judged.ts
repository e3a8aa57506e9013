/** The answer for a look, anew with every change: at once without its chances, a moment later with them, from a worker. */
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Judged } from '../../components/judged.ts'
import type { Units } from '../../core/length.ts'
import { withIssuesIn } from '../../core/reading/issues.ts'
import { type ReckonRequest, reckon } from '../../core/reckon.ts'
import type { SavedRead } from '../../core/records/read-saved.ts'
import { listingRequest, type Wardrobe } from '../../core/records/request-for.ts'
import type { Look } from '../../core/records/schemas.ts'
import type { Wording } from '../../core/words/say.ts'
import { AnswersApart } from './answers-apart.ts'
import { judgedOf } from './judge-look.ts'
import { useRead } from './use-read.ts'
import type { WholeAnswer } from './whole-answer.ts'

export interface JudgedLook {
  judged: Judged
  request: ReckonRequest | null
  /** What a bare figure was read in. */
  units: Units
  read: SavedRead
}

/** `stands`: where the page of the look is, and how the find stands on the wishlist. */
export function useJudged(
  look: Look | null,
  wardrobe: Wardrobe | null,
  wording: Wording,
  stands: Pick<Judged, 'place' | 'kept'>
): JudgedLook | null {
  const asRead = useRead(look, wording.units)
  const read = useMemo(
    () =>
      asRead === null ? null : { ...asRead, reading: withIssuesIn(asRead.reading, wording), whole: withIssuesIn(asRead.whole, wording) },
    [asRead, wording]
  )
  const request = look === null || read === null || wardrobe === null ? null : listingRequest(look, read, wardrobe)
  const answer = useReckoning(request, wording)
  if (look === null || read === null || wardrobe === null) return null
  return { judged: judgedOf(look, read, wardrobe, answer, stands), request, units: wording.units, read }
}

/** One for the page: every look it shows is asked of the same worker. */
const apart = new AnswersApart()

function useReckoning(
  request: ReckonRequest | null,
  { units, language, currency }: Wording
): Pick<Judged, 'reckoning' | 'settled' | 'wouldChange'> {
  const options = { units, language, currency }
  const key = request === null ? '' : JSON.stringify([request, options])
  const quick = useMemo(() => (request === null ? null : reckon(request, { ...options, outlook: false })), [key])
  const [whole, setWhole] = useState<({ key: string } & WholeAnswer) | null>(null)
  useEffect(() => {
    if (request === null) return
    let isWanted = true
    apart.ask(request, options).then(
      (answer) => {
        if (isWanted && answer !== null) setWhole({ key, ...answer })
      },
      (error) => {
        // where the chances can't be worked out, the answer without them stands
        console.error(error)
        if (isWanted && quick !== null) setWhole({ key, reckoning: quick, wouldChange: [] })
      }
    )
    return () => {
      isWanted = false
    }
  }, [key])
  return whole !== null && whole.key === key
    ? { reckoning: whole.reckoning, settled: true, wouldChange: whole.wouldChange }
    : { reckoning: quick, settled: quick === null, wouldChange: [] }
}
