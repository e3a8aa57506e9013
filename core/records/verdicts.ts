/**
 * The answer of a find as it was worked out last, kept with what it stands on: the listing, whoever it is for, and the engine that worked it out.
 * One that stands on anything else is stale and is not shown. The figures stand in one table, which is read whole; what a row is drawn from in
 * another, which is read for the rows in view. Neither is in a backup. Pure.
 */
import * as z from 'zod/mini'
import { ALTERATIONS } from '../ids/alterations.ts'
import { GARMENT_KINDS, type GarmentKind } from '../ids/kinds.ts'
import { VERDICTS } from '../ids/verdicts.ts'
import type { AnswerShown } from '../plan/answer/brief.ts'
import { markOf } from './mark.ts'
import { passes } from './passes.ts'
import { personFor } from './person-for.ts'
import { bodyFrom, favouriteFor, favouritesOf, type Wardrobe } from './request-for.ts'
import { isRow } from './row.ts'
import type { Person } from './schemas.ts'

const number = z.nullable(z.number())
const verdictRow = z.object({
  id: z.string(),
  /** Which write it was, as in the summaries. */
  written: z.int(),
  /** What it stands on. */
  of: z.string(),
  /** The kind as read or set; null: none. */
  kind: z.nullable(z.enum(GARMENT_KINDS)),
  /** null: there was nothing to reckon. */
  brief: z.nullable(
    z.object({
      verdict: z.enum(VERDICTS),
      chance: number,
      chanceIf: number,
      minutes: z.number(),
      level: z.number(),
      spend: number
    })
  ),
  /** Every job in its plans. */
  jobs: z.array(z.enum(ALTERATIONS))
})
export type VerdictRow = z.infer<typeof verdictRow>
export const isVerdictRow = (row: unknown): row is VerdictRow => passes(verdictRow)(row)

export interface AnswerRow {
  id: string
  of: string
  /** Units, language and currency of its sentences. */
  worded: string
  answer: AnswerShown
}
/** `of` names the engine that wrote it, which is the one that reads it: its inside is as this engine makes it. */
export const isAnswerRow = (row: unknown): row is AnswerRow =>
  isRow(row) && typeof row.id === 'string' && typeof row.of === 'string' && typeof row.worded === 'string' && isRow(row.answer)

export const wordedAs = ({
  units,
  language = '',
  currency = ''
}: {
  units: string
  language?: string
  currency?: string | undefined
}): string => `${units} ${language} ${currency}`

/** What the answer of a find for this person and this kind stands on besides the listing. */
export type WearerMark = (personId: string | null, kind: GarmentKind | null) => string

/** Marks of everybody in a wardrobe; each is made once. */
export function wearerMarks(wardrobe: Wardrobe, engine: string): WearerMark {
  const people = new Map<string, string>()
  const marks = new Map<string, string>()
  return (personId, kind) => {
    const person = personFor(wardrobe.people, personId, wardrobe.settings.personId)
    if (person === null) return 'nobody'
    const key = `${kind ?? ''} ${person.id}`
    const known = marks.get(key)
    if (known !== undefined) return known
    const own = people.get(person.id) ?? personMark(person, wardrobe, engine)
    people.set(person.id, own)
    const mark = `${own} ${kind === null ? '' : garmentsMark(person, kind, wardrobe)}`
    marks.set(key, mark)
    return mark
  }
}

/** What is told of them, without what they are called and when it was written. */
function personMark(
  { id, units, currency, fit, sizes, means, limits, sellerSdMm, ease, easeOf }: Person,
  wardrobe: Wardrobe,
  engine: string
): string {
  const body = Object.entries(bodyFrom(wardrobe.measures.filter(({ personId }) => personId === id))).toSorted()
  return markOf(JSON.stringify([engine, id, units, currency, fit, sizes, means, limits, sellerSdMm, ease, easeOf, body]))
}

/** The garments of this kind that a listing can be set beside, and which of them where none is chosen. */
function garmentsMark(person: Person, kind: GarmentKind, wardrobe: Wardrobe): string {
  const liked = favouritesOf(person, kind, wardrobe).map(({ id, measures, toleranceMm, cloth, cut }) => [
    id,
    measures,
    toleranceMm,
    cloth,
    cut
  ])
  return liked.length === 0 ? '' : markOf(JSON.stringify([liked, favouriteFor(null, person, kind, wardrobe)?.id ?? null]))
}

/** What an answer stands on, in one text. */
export const standsOn = (told: string, wearer: string): string => `${told} ${wearer}`
