/** What was saved of a listing, read: its text with the corrections' kind, and each answer of the seller's. */
import type { GarmentKind } from '../ids/kinds.ts'
import type { Units } from '../length.ts'
import { noListingIn } from '../reading/issues.ts'
import { readListing } from '../reading/read-listing.ts'
import type { Asked, Correction, Reading } from '../reading/reading.ts'
import { mergeReadings } from '../reading/request/merge-readings.ts'
import type { ListingKept, Look } from './schemas.ts'

/** An answer of the seller's, as pasted and as read. */
export interface AnswerRead {
  id: string
  text: string
  /** ISO date. */
  on: string
  reading: Reading
}

/** Everything that was read: the listing, each answer, and both together. */
export interface SavedRead {
  reading: Reading
  answers: AnswerRead[]
  whole: Reading
}

/** What the reading of a look or a kept listing stands on. */
export type Texts = Pick<Look | ListingKept, 'text' | 'title' | 'structured' | 'address' | 'answers' | 'corrections'>

/** Reads the texts of a look or a kept listing. Costly for long pages: call it when a text has changed, not with every change. */
export function readSaved({ text, title, structured, address, corrections, answers: saved }: Texts, units: Units): SavedRead {
  const listing = { text, title, structured, address, units }
  const first = readListing(listing)
  const kind = kindOf(first, corrections)
  // taken for no garment, or for a page of many, nothing was measured: the person knows better
  const reading = kind !== null && noListingIn(first.issues) !== undefined ? readListing({ ...listing, kind }) : first
  const answers = saved.map(({ id, text: answer, at, asked }) => ({
    id,
    text: answer,
    on: at.slice(0, 10),
    reading: readAnswer(answer, kind, units, asked)
  }))
  return { reading, answers, whole: answers.reduce((whole, answer) => mergeReadings(whole, answer.reading), reading) }
}

/** Everything that a reading stands on, as one text: while it stays the same, so does the reading. */
export const readingStandsOn = ({ text, title, structured, address, answers, corrections }: Texts, units: Units): string =>
  JSON.stringify([text, title, structured, address, answers, corrections.filter((one) => 'kind' in one), units])

/** What a seller answered about a listing whose kind is known. */
export const readAnswer = (text: string, kind: GarmentKind | null, units: Units, asked?: Asked): Reading =>
  readListing({ text, units, ...(kind === null ? {} : { kind }), ...(asked === undefined ? {} : { asked }) })

/** The kind that counts: as the person says, else as read. */
export const kindOf = (whole: Reading, corrections: readonly Correction[]): GarmentKind | null =>
  corrections.reduce<GarmentKind | null>((kind, one) => ('kind' in one ? one.kind : kind), whole.garment.kind)
