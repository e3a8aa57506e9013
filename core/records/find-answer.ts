/** The answer of a kept listing as of today, as it is kept with the find. Pure; costly: it reads the listing's texts and reckons. */
import type { GarmentKind } from '../ids/kinds.ts'
import type { Units } from '../length.ts'
import { type AnswerBrief, type AnswerShown, briefOf, jobsIn, shownInRow } from '../plan/answer/brief.ts'
import { type ReckonOptions, reckon } from '../reckon.ts'
import { personFor } from './person-for.ts'
import { kindOf, readSaved, type Texts } from './read-saved.ts'
import { type Asking, listingRequest, type Wardrobe } from './request-for.ts'
import type { VerdictRow } from './verdicts.ts'

/** What of a kept listing its answer is worked out from. */
export type FindTold = Texts & Asking & { id: string }

export interface FindAnswer extends Pick<VerdictRow, 'id' | 'jobs'> {
  kind: GarmentKind | null
  /** null: there is nothing to reckon. */
  brief: AnswerBrief | null
  answer: AnswerShown | null
}

/** What a bare figure of a listing was meant in: whoever it is for measures in it. */
export const unitsFor = (listing: Pick<Asking, 'personId'>, { people, settings }: Wardrobe): Units =>
  personFor(people, listing.personId, settings.personId)?.units ?? 'cm'

export function findAnswer(listing: FindTold, wardrobe: Wardrobe, options: ReckonOptions): FindAnswer {
  const read = readSaved(listing, unitsFor(listing, wardrobe))
  const kind = kindOf(read.whole, listing.corrections)
  const request = listingRequest(listing, read, wardrobe)
  const { id } = listing
  if (request === null) return { id, kind, brief: null, jobs: [], answer: null }
  const reckoning = reckon(request, options)
  return { id, kind, brief: briefOf(reckoning), jobs: jobsIn(reckoning), answer: shownInRow(reckoning) }
}
