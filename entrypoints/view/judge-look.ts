/** From what is saved to what a page shows around an answer. Pure. */
import { withoutCut } from '../../components/cut/cut-set.ts'
import { type Judged, questionForSeller } from '../../components/judged.ts'
import type { Who } from '../../components/who-bar.tsx'
import { madeAs } from '../../core/garment/construction.ts'
import type { CutRead } from '../../core/garment/cut.ts'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import { kindsOffered } from '../../core/reading/garment/likely-kinds.ts'
import type { Asked } from '../../core/reading/reading.ts'
import { garmentFrom } from '../../core/reading/request/garment-from.ts'
import { siteOf } from '../../core/records/look-text.ts'
import { personFor } from '../../core/records/person-for.ts'
import { kindOf, type SavedRead } from '../../core/records/read-saved.ts'
import { favouriteFor, favouritesOf, listingRequest, type Wardrobe } from '../../core/records/request-for.ts'
import type { Look, Person } from '../../core/records/schemas.ts'
import { bodyOf, seenOn } from '../../core/wearer/target.ts'

/** What the seller was asked for last, as far as a figure can answer it. */
export function askedOf(judged: Judged): Asked | undefined {
  const first = questionForSeller(judged)
  return first?.point ?? (first?.about === 'waistStretchedMm' ? first.about : undefined)
}

/** Whom the answer is for. */
export const personOf = (look: Pick<Look, 'personId'> | null, { people, settings }: Pick<Wardrobe, 'people' | 'settings'>): Person | null =>
  personFor(people, look?.personId ?? null, settings.personId)

/** Who is asked for, and which favourites go with it. */
export function whoOf(look: Pick<Look, 'personId' | 'fit' | 'favouriteId'> | null, kind: GarmentKind | null, wardrobe: Wardrobe): Who {
  const person = personOf(look, wardrobe)
  const favourites = favouritesOf(person, kind, wardrobe)
  return {
    people: wardrobe.people.map(({ id, name }) => ({ id, name })),
    personId: person?.id ?? null,
    fit: look?.fit ?? person?.fit ?? 'as-cut',
    favourites: favourites.map(({ id, name }) => ({ id, name })),
    favouriteId: favouriteFor(look?.favouriteId ?? null, person, kind, wardrobe)?.id ?? null
  }
}
/** Everything a page shows of a look. */
export function judgedOf(
  look: Look,
  read: SavedRead,
  wardrobe: Wardrobe,
  answer: Pick<Judged, 'reckoning' | 'settled' | 'wouldChange'>,
  { place, kept }: Pick<Judged, 'place' | 'kept'>
): Judged {
  const kind = kindOf(read.whole, look.corrections)
  const person = personOf(look, wardrobe)
  const garment = kind === null ? null : garmentAsWorn(garmentFrom(read.whole, look.corrections))
  const { made, assumed } = garment ?? madeAs('other')
  const cut = answer.reckoning?.cut ?? garment?.cut ?? {}
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
    kinds: kindsOffered(read.whole),
    made,
    assumed,
    cut,
    cutAsRead: cutAsRead(look, read, wardrobe) ?? cut,
    ...answer,
    aim: look.aim,
    level: person?.means.level ?? 3,
    tailor: { atHand: person?.means.tailor ?? false, prices: person?.means.tailorPrices ?? {} },
    money: look.money,
    notes: look.notes,
    kept,
    canUndo: look.undo.length > 0,
    drafts: look.drafts
  }
}

/** The cut without what the person set of it: told, seen in the figures on whoever is asked for, or usual. null: nothing was set. */
function cutAsRead(look: Look, read: SavedRead, wardrobe: Wardrobe): CutRead | null {
  const corrections = withoutCut(look.corrections)
  if (JSON.stringify(corrections) === JSON.stringify(look.corrections)) return null
  if (kindOf(read.whole, corrections) === null) return {}
  const request = listingRequest({ ...look, corrections }, read, wardrobe)
  return seenOn(garmentAsWorn(request?.garment ?? garmentFrom(read.whole, corrections)), bodyOf(request?.wearer)).cut
}
