/** The one way from what is saved to what is reckoned: popup, panel and wishlist all ask by listingRequest. */
import type { GarmentInput } from '../garment/garment-input.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import { isGirth } from '../ids/points.ts'
import type { Means } from '../plan/means.ts'
import { garmentFrom } from '../reading/request/garment-from.ts'
import type { ReckonRequest } from '../reckon.ts'
import type { Body, Fit } from '../wearer/body.ts'
import type { Favourite, Wearer } from '../wearer/wearer.ts'
import { personFor } from './person-for.ts'
import { kindOf, type SavedRead } from './read-saved.ts'
import type { BodyMeasurement, GarmentOwned, ListingKept, Look, Person, Settings } from './schemas.ts'

/** Whom and what there is to judge for. */
export interface Wardrobe {
  people: readonly Person[]
  measures: readonly BodyMeasurement[]
  garments: readonly GarmentOwned[]
  settings: Pick<Settings, 'theme' | 'personId' | 'language'>
}

/** What a look and a kept listing say of a request. */
export type Asking = Pick<Look | ListingKept, 'corrections' | 'price' | 'money' | 'personId' | 'fit' | 'favouriteId'>

/** The request of a look or a kept listing; null while there is nobody, no kind, or nothing told of what is wanted. */
export function listingRequest(listing: Asking, { whole }: SavedRead, wardrobe: Wardrobe): ReckonRequest | null {
  const person = personFor(wardrobe.people, listing.personId, wardrobe.settings.personId)
  const kind = kindOf(whole, listing.corrections)
  if (person === null || kind === null) return null
  const body = bodyFrom(wardrobe.measures.filter(({ personId }) => personId === person.id))
  const favourite = favouriteFor(listing.favouriteId, person, kind, wardrobe)
  if (Object.keys(body).length === 0 && favourite === null) return null
  const garment = garmentFrom({ ...whole, price: whole.price ?? listing.price }, listing.corrections, { currency: person.currency })
  const request = requestFor(person, body, favourite, garment, { fit: listing.fit, money: listing.money })
  const tried = listing.corrections.flatMap((one) => ('tried' in one ? [one.tried] : []))
  return tried.length === 0 ? request : { ...request, tried }
}

/** The garments of a person that a listing of this kind can be set beside. */
export const favouritesOf = (person: Person | null, kind: GarmentKind | null, { garments }: Pick<Wardrobe, 'garments'>): GarmentOwned[] =>
  garments.filter((garment) => garment.personId === person?.id && garment.kind === kind && garment.measures.length > 0)

/**
 * The garment that a listing is set beside: the one chosen. Where none is chosen and no body is told, the one marked as the
 * favourite of its kind (should a merge have brought two, the one marked last), else the first.
 */
export function favouriteFor(
  chosenId: string | null,
  person: Person | null,
  kind: GarmentKind | null,
  { garments, measures }: Pick<Wardrobe, 'garments' | 'measures'>
): GarmentOwned | null {
  const liked = favouritesOf(person, kind, { garments })
  const chosen = liked.find(({ id }) => id === chosenId)
  if (chosen !== undefined) return chosen
  if (measures.some(({ personId, deletedAt }) => personId === person?.id && deletedAt === null)) return null
  const marked = liked.filter(({ favourite }) => favourite).sort(markedLast)
  return marked[0] ?? liked[0] ?? null
}
const markedLast = (a: GarmentOwned, b: GarmentOwned): number =>
  a.updatedAt < b.updatedAt ? 1 : a.updatedAt > b.updatedAt ? -1 : a.id < b.id ? 1 : -1

/** The latest measurement of each kind; of two on one day the one written later. */
export function latestMeasures(rows: readonly BodyMeasurement[]): Map<BodyMeasurement['measure'], BodyMeasurement> {
  const latest = new Map<BodyMeasurement['measure'], BodyMeasurement>()
  for (const row of rows) {
    if (row.deletedAt !== null) continue
    const other = latest.get(row.measure)
    if (other === undefined || order(row) > order(other)) latest.set(row.measure, row)
  }
  return latest
}
const order = (row: BodyMeasurement): string => `${row.takenOn} ${row.createdAt} ${row.id}`

/** The body as last measured, for one person's rows. Lengths mm, girths around. */
export function bodyFrom(rows: readonly BodyMeasurement[]): Body {
  const body: Body = {}
  for (const [measure, row] of latestMeasures(rows)) body[measure] = { mm: row.mm }
  return body
}

/** What of an owned garment is wanted again. */
export type Liked = Pick<GarmentOwned, 'measures' | 'toleranceMm' | 'cloth' | 'cut'>

/** What a listing says otherwise than the person's own settings; null or left out: as the person's. */
export interface Wish {
  fit?: Fit | null
  money?: { price: number | null; postage: number | null; worth: number | null }
}

/**
 * A request to reckon from what is kept: the person, the body, a favourite garment (or null), and the garment as read.
 * With no body told and a favourite, the favourite alone is the target. Money typed by the person goes before the page's.
 */
export function requestFor(person: Person, body: Body, favourite: Liked | null, garment: GarmentInput, wish: Wish = {}): ReckonRequest {
  const request: ReckonRequest = { garment: asMeasuredBefore(priced(garment, wish), person), means: meansFor(person, wish) }
  if (Object.keys(body).length > 0) request.wearer = wearerFor(person, body, garment.kind, wish)
  if (favourite !== null && favourite.measures.length > 0) request.favourite = favouriteFrom(favourite)
  if (person.limits !== undefined) request.limits = person.limits
  return request
}

/** A seller's figures as far off as this person has found sellers to be, where they have measured any again. */
function asMeasuredBefore(garment: GarmentInput, { sellerSdMm }: Person): GarmentInput {
  if (sellerSdMm === undefined) return garment
  const measures = garment.measures.map((one) =>
    one.source === 'seller' && one.sdMm === undefined ? { ...one, sdMm: sellerSdMm[isGirth(one.point) ? 'girth' : 'length'] } : one
  )
  return { ...garment, measures }
}

/** With the person's own ease for this kind and this fit; where there is none, the ease that stands for every kind. */
function wearerFor(person: Person, body: Body, kind: GarmentKind, wish: Wish): Wearer {
  const wearer: Wearer = { body, fit: wish.fit ?? person.fit, ...(person.sizes ? { sizes: person.sizes } : {}) }
  const ease: NonNullable<Wearer['ease']> = {}
  for (const point of Object.keys(person.ease ?? {}) as (keyof NonNullable<typeof person.ease>)[]) {
    const own = person.ease?.[point]
    if (own !== undefined) ease[point] = { mm: own.mm, sdMm: own.sdMm, from: 'own' }
  }
  for (const own of person.easeOf ?? []) {
    if (own.kind === kind && own.fit === wearer.fit) ease[own.point] = { mm: own.mm, sdMm: 0, from: 'own' }
  }
  return Object.keys(ease).length === 0 ? wearer : { ...wearer, ease }
}

function favouriteFrom(owned: Liked): Favourite {
  const favourite: Favourite = { measures: owned.measures.map(({ point, mm }) => ({ point, mm })) }
  // nothing said of the cloth is no plain cloth
  if (tells(owned.cloth)) favourite.cloth = owned.cloth
  if (tells(owned.cut)) favourite.cut = owned.cut
  if (owned.toleranceMm !== undefined) favourite.toleranceMm = owned.toleranceMm
  return favourite
}

const tells = <T extends object>(some: T | undefined): some is T => some !== undefined && Object.keys(some).length > 0

function meansFor(person: Person, wish: Wish): Means {
  const worth = wish.money?.worth ?? null
  return worth === null ? person.means : { ...person.means, garmentWorth: worth }
}

function priced(garment: GarmentInput, wish: Wish): GarmentInput {
  const amount = wish.money?.price ?? garment.price?.amount ?? null
  if (amount === null) return garment
  const postage = wish.money?.postage ?? garment.price?.postage ?? null
  return { ...garment, price: postage === null ? { amount } : { amount, postage } }
}
