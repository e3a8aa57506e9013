/** From what is saved to what a page shows: the request of a look, and everything around its answer. Pure. */
import { type Judged, questionForSeller } from '../../components/judged.ts'
import type { Who } from '../../components/who-bar.tsx'
import { madeAs } from '../../core/garment/construction.ts'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { Units } from '../../core/length.ts'
import { readListing } from '../../core/reading/read-listing.ts'
import type { Asked, Correction, Reading } from '../../core/reading/reading.ts'
import { garmentFrom } from '../../core/reading/request/garment-from.ts'
import { mergeReadings } from '../../core/reading/request/merge-readings.ts'
import type { ReckonRequest } from '../../core/reckon.ts'
import { siteOf } from '../../core/records/look-text.ts'
import { personFor } from '../../core/records/owned.ts'
import { bodyFrom, requestFor } from '../../core/records/request-for.ts'
import type { BodyMeasurement, GarmentOwned, Look, Person, Settings } from '../../core/records/schemas.ts'

/** Whom and what there is to judge for. */
export interface Wardrobe {
  people: readonly Person[]
  measures: readonly BodyMeasurement[]
  garments: readonly GarmentOwned[]
  settings: Pick<Settings, 'theme' | 'personId'>
}

/** Everything that was read of a look: the listing, each answer, and both together. */
export interface LookRead {
  reading: Reading
  answers: Judged['answers']
  whole: Reading
}

/** Reads a look's texts. Costly for long pages: call it when a text has changed, not with every change. */
export function readLook(
  look: Pick<Look, 'text' | 'title' | 'structured' | 'address' | 'answers' | 'corrections'>,
  units: Units
): LookRead {
  const { text, title, structured, address, corrections } = look
  const reading = readListing({ text, title, structured, address, units })
  const kind = kindOf(reading, corrections)
  const answers = look.answers.map(({ id, text: answer, at, asked }) => ({
    id,
    text: answer,
    on: at.slice(0, 10),
    reading: readAnswer(answer, kind, units, asked)
  }))
  return {
    reading,
    answers,
    whole: answers.reduce((whole, answer) => mergeReadings(whole, answer.reading), reading)
  }
}

/** What a seller answered about a listing whose kind is known. */
export const readAnswer = (text: string, kind: GarmentKind | null, units: Units, asked?: Asked): Reading =>
  readListing({ text, units, ...(kind === null ? {} : { kind }), ...(asked === undefined ? {} : { asked }) })

/** What the seller was asked for last, as far as a figure can answer it. */
export function askedOf(judged: Judged): Asked | undefined {
  const first = questionForSeller(judged)
  return first?.point ?? (first?.about === 'waistStretchedMm' ? first.about : undefined)
}

/** The kind that counts: as the person says, else as read. */
export const kindOf = (whole: Reading, corrections: readonly Correction[]): GarmentKind | null =>
  corrections.reduce<GarmentKind | null>((kind, one) => ('kind' in one ? one.kind : kind), whole.garment.kind)

/** Who is asked for, and which favourites go with it. */
export function whoOf(look: Pick<Look, 'personId' | 'fit' | 'favouriteId'> | null, kind: GarmentKind | null, wardrobe: Wardrobe): Who {
  const person = personFor(wardrobe.people, look?.personId ?? null, wardrobe.settings.personId)
  const favourites = favouritesOf(person, kind, wardrobe)
  return {
    people: wardrobe.people.map(({ id, name }) => ({ id, name })),
    personId: person?.id ?? null,
    fit: look?.fit ?? person?.fit ?? 'regular',
    favourites: favourites.map(({ id, name }) => ({ id, name })),
    favouriteId: favouriteFor(look, person, kind, wardrobe)?.id ?? null
  }
}
const favouritesOf = (person: Person | null, kind: GarmentKind | null, { garments }: Wardrobe): GarmentOwned[] =>
  garments.filter((garment) => garment.personId === person?.id && garment.kind === kind && garment.measures.length > 0)

/** The garment it is set beside: the one chosen; where no body is told, the favourite of its kind. */
function favouriteFor(
  look: Pick<Look, 'favouriteId'> | null,
  person: Person | null,
  kind: GarmentKind | null,
  wardrobe: Wardrobe
): GarmentOwned | null {
  const liked = favouritesOf(person, kind, wardrobe)
  const chosen = liked.find(({ id }) => id === look?.favouriteId)
  const hasBody = wardrobe.measures.some(({ personId }) => personId === person?.id)
  return chosen ?? (hasBody ? null : (liked.find(({ favourite }) => favourite) ?? liked[0] ?? null))
}

/** The request of a look; null while there is nobody, no kind, or nothing told of what is wanted. */
export function lookRequest(look: Look, { whole }: LookRead, wardrobe: Wardrobe): ReckonRequest | null {
  const person = personFor(wardrobe.people, look.personId, wardrobe.settings.personId)
  const kind = kindOf(whole, look.corrections)
  if (person === null || kind === null) return null
  const body = bodyFrom(wardrobe.measures.filter(({ personId }) => personId === person.id))
  const favourite = favouriteFor(look, person, kind, wardrobe)
  if (Object.keys(body).length === 0 && favourite === null) return null
  const garment = garmentFrom({ ...whole, price: whole.price ?? look.price }, look.corrections, { currency: person.currency })
  return requestFor(person, body, favourite, garment, { fit: look.fit, money: look.money })
}

/** Everything a page shows of a look. */
export function judgedOf(
  look: Look,
  read: LookRead,
  wardrobe: Wardrobe,
  answer: Pick<Judged, 'reckoning' | 'settled' | 'wouldChange'>,
  place: Judged['place']
): Judged {
  const kind = kindOf(read.whole, look.corrections)
  const person = personFor(wardrobe.people, look.personId, wardrobe.settings.personId)
  const { made, assumed } = kind === null ? madeAs('other') : garmentAsWorn(garmentFrom(read.whole, look.corrections))
  return {
    title: look.title,
    site: siteOf(look.address === '' ? look.pageAddress : look.address),
    price: read.whole.price ?? look.price,
    place,
    problem: look.problem,
    text: look.text + (read.reading.added ?? ''),
    textCutFrom: look.textCutFrom,
    reading: read.reading,
    answers: read.answers,
    corrections: look.corrections,
    kind,
    made,
    assumed,
    ...answer,
    aim: look.aim,
    level: person?.means.level ?? 3,
    money: look.money,
    notes: look.notes,
    kept: look.keptId !== null,
    canUndo: look.undo.length > 0,
    drafts: look.drafts
  }
}
