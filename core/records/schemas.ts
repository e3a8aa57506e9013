/**
 * Everything that is saved, as zod sees it. A schema here only says yes or no: a record that passes is used as it was
 * found, so fields this version does not know survive being read and written again. All lengths mm, times ISO 8601 in UTC.
 */
import * as z from 'zod/mini'
import { STATUSES } from '../ids/listing-statuses.ts'
import { VERDICTS } from '../ids/verdicts.ts'
import {
  alteration,
  amount,
  bodyMeasure,
  cloth,
  correction,
  cut,
  fit,
  kind,
  made,
  means,
  mm,
  ownEase,
  ownLimits,
  point,
  reckonRequest,
  sizes,
  tolerance
} from './garment-schemas.ts'
import { passes } from './passes.ts'

/** Time, new ids and the device come from the caller: the core has no clock and no chance. One stamp an action. */
export interface Stamp {
  /** ISO 8601, UTC: 2026-03-01T09:30:00.000Z. */
  now: string
  newId: () => string
  device: string
}

const time = z.iso.datetime()
const maybe = z.exactOptional
const id = z.string().check(z.minLength(1))

/** What every record has, so that a later merge can be exact. */
const base = {
  id,
  /** The device that wrote this revision. */
  device: z.string(),
  /** 1 when made, one more with each change. */
  revision: z.int().check(z.positive()),
  createdAt: time,
  updatedAt: time,
  /** When it was deleted; null: it is there. */
  deletedAt: z.nullable(time)
}

export const person = z.object({
  ...base,
  name: z.string().check(z.minLength(1)),
  units: z.enum(['cm', 'in']),
  /** ISO 4217; '' for none chosen. */
  currency: z.string(),
  /** The fit asked for unless a listing says another. */
  fit,
  /** Whose sizes they wear; null or left out: not said. */
  sizes: maybe(z.nullable(sizes)),
  means,
  limits: maybe(ownLimits),
  /** How far sellers' figures may be off by what this person measured again, mm (sd), around for girths. */
  sellerSdMm: maybe(z.object({ girth: amount, length: amount })),
  /** The person's own ease by point, instead of the table's. */
  ease: maybe(z.partialRecord(point, z.object({ mm: z.number(), sdMm: amount }))),
  /** The same for one kind and one fit alone; it goes before `ease`. */
  easeOf: maybe(z.array(ownEase))
})

/** One measurement of a body on one day. All are kept; the latest counts. */
export const bodyMeasurement = z.object({
  ...base,
  personId: id,
  measure: bodyMeasure,
  mm,
  /** As it was typed. */
  stated: z.string(),
  takenOn: z.iso.date()
})

export const garmentOwned = z.object({
  ...base,
  personId: id,
  name: z.string().check(z.minLength(1)),
  kind,
  /** Girths around; `stated` as it was typed (`16 flat`). */
  measures: z.array(z.object({ point, mm, stated: z.string() })),
  toleranceMm: maybe(tolerance),
  /** One a kind and person. */
  favourite: z.boolean(),
  /** Its own cloth and cut: unlike cloth or unlike cut is not like for like. */
  cloth: maybe(cloth),
  cut: maybe(cut),
  made: maybe(made),
  notes: z.string()
})

/** What the seller answered, pasted by the person; `asked`: what the panel asked for when it came. */
const answer = z.object({ id, text: z.string(), at: time, asked: maybe(z.union([point, z.literal('waistStretchedMm')])) })
/** A price as the page told it. */
const told = z.object({ amount, currency: z.string() })
/** The person's own figures for this listing, in the person's currency; null: not typed. */
const money = z.object({ price: z.nullable(amount), postage: z.nullable(amount), worth: z.nullable(amount) })

const planChoice = z.enum(['least-work', 'closest-fit', 'tailor', 'rescue', 'fewer-jobs'])

/** What a listing says and what the person set right, shared by what is looked at and what is kept (see shared-fields.ts). */
const listing = {
  address: z.string(),
  title: z.string(),
  text: z.string(),
  /** The text's full length where it was longer than is kept (see TEXT_KEPT); null: it is whole. */
  textCutFrom: z.nullable(z.int()),
  /** Parsed JSON-LD blocks, for readListing. */
  structured: z.array(z.unknown()),
  /** The price in the page's own price fields. */
  price: z.nullable(told),
  money,
  /** Addresses only; never fetched. */
  images: z.array(z.string()),
  corrections: z.array(correction),
  answers: z.array(answer),
  notes: z.string(),
  personId: z.nullable(id),
  /** null: the person's own. */
  fit: z.nullable(fit),
  /** A garment owned; null: the body alone. */
  favouriteId: z.nullable(id),
  /** The plan chosen; null: the advised one. */
  aim: z.nullable(planChoice)
}

/** What something untold had to be, so that it worked out: mm, null where it was open. Its sentence is made when it is shown. */
const condition = z.object({
  point: maybe(point),
  body: maybe(bodyMeasure),
  least: z.nullable(z.number()),
  most: z.nullable(z.number()),
  chance: z.nullable(z.number())
})

/** A picture that the person gave a listing, made small before: JPEG, PNG or WebP as a data address. It is never fetched from anywhere. */
export const PICTURE_MOST_CHARACTERS = 120_000
const picture = z.string().check(z.maxLength(PICTURE_MOST_CHARACTERS), z.regex(/^data:image\/(?:jpeg|png|webp);base64,[A-Za-z0-9+/]+=*$/))

/** The work on a garment that was bought: the sheet that is sewn from, what is done of it, and what came of it. */
const work = z.object({
  /** What the sheet is made from, as it stood when it was begun: a sheet does not change under the hand. null: none is begun. */
  sheet: z.nullable(z.object({ request: reckonRequest, plan: z.nullable(planChoice), begunAt: time })),
  /** Steps that are done, by their id. */
  ticked: z.record(z.string(), time),
  notes: z.record(z.string(), z.string()),
  /** What it really took; null: not said. */
  minutes: z.nullable(amount),
  /** What it measures when finished, mm, girths around. */
  result: z.array(z.object({ point, mm })),
  finishedAt: z.nullable(time)
})

export const listingKept = z.object({
  ...base,
  ...listing,
  /** null or left out: none. */
  picture: maybe(z.nullable(picture)),
  /** null or left out: nothing is begun. */
  work: maybe(z.nullable(work)),
  /** The host of its address, or ''. */
  site: z.string(),
  status: z.enum(STATUSES),
  tags: z.array(z.string()),
  keptAt: time,
  /** The request as it was reckoned when last kept; null: there was nothing to reckon. */
  request: z.nullable(reckonRequest),
  /** The answer then. */
  verdictThen: z.nullable(
    z.object({
      at: time,
      verdict: z.enum(VERDICTS),
      chance: z.nullable(z.number()),
      level: z.nullable(z.int()),
      minutes: z.nullable(amount),
      spend: z.nullable(amount),
      jobs: z.array(alteration),
      /** Left out: it was kept before there were any. */
      conditions: maybe(z.array(condition)),
      /** The chance if they held. */
      chanceIf: maybe(z.nullable(z.number()))
    })
  )
})

/** Why a page could not be read; each has its own sentence and the offer to paste. */
export const LOOK_PROBLEMS = [
  'browser-page',
  'store-page',
  'pdf',
  'empty',
  'other-origin-frame',
  'no-permission',
  'tab-gone',
  'failed'
] as const
/**
 * Where the page of a look is now: in front in its window, behind another tab, gone elsewhere in the same tab,
 * its tab closed, or not known since the browser started (until it is read again). `none`: pasted, there is no page.
 */
export const PAGE_PLACES = ['in-front', 'behind', 'navigated', 'closed', 'unknown', 'none'] as const

/** The part of a look that the person types and chooses. */
const choices = z.object({
  title: listing.title,
  text: listing.text,
  textCutFrom: listing.textCutFrom,
  money: listing.money,
  corrections: listing.corrections,
  answers: listing.answers,
  notes: listing.notes,
  personId: listing.personId,
  fit: listing.fit,
  favouriteId: listing.favouriteId,
  aim: listing.aim
})
/** What some of the shared fields were before a change; undo brings them back. */
const undoStep = z.object({
  address: maybe(listing.address),
  title: maybe(listing.title),
  text: maybe(listing.text),
  textCutFrom: maybe(listing.textCutFrom),
  structured: maybe(listing.structured),
  price: maybe(listing.price),
  money: maybe(listing.money),
  images: maybe(listing.images),
  corrections: maybe(listing.corrections),
  answers: maybe(listing.answers),
  notes: maybe(listing.notes),
  personId: maybe(listing.personId),
  fit: maybe(listing.fit),
  favouriteId: maybe(listing.favouriteId),
  aim: maybe(listing.aim)
})

/** What is being judged in the popup and the panel: one for a page in a tab. */
export const look = z.object({
  ...base,
  ...listing,
  windowId: z.nullable(z.int()),
  tabId: z.nullable(z.int()),
  /** The address in the browser's own bar; `address` is the one the page calls its own. '' where it was not to be seen. */
  pageAddress: z.string(),
  capturedAt: time,
  readBy: z.enum(['page', 'selection', 'menu', 'pasted']),
  /** null: it was read. With a problem the text is '' until something is pasted. */
  problem: z.nullable(z.enum(LOOK_PROBLEMS)),
  page: z.enum(PAGE_PLACES),
  /** Text typed into fields and not yet taken (an unfinished figure, a half-written answer), by the field's name. */
  drafts: z.record(z.string(), z.string()),
  /** What was before each change, newest last; undoing takes the last. */
  undo: z.array(undoStep),
  /** The listing it is kept as. */
  keptId: z.nullable(id)
})

/** One record, with the id 'settings'. */
export const settings = z.object({
  ...base,
  theme: z.enum(['system', 'light', 'dark']),
  /** Whose body is used where nothing says another. */
  personId: z.nullable(id),
  /** The language of the pages (BCP 47); null or left out: as the browser says. */
  language: maybe(z.nullable(z.string()))
})

export const SCHEMAS = {
  people: person,
  bodyMeasurements: bodyMeasurement,
  garmentsOwned: garmentOwned,
  listingsKept: listingKept,
  looks: look,
  settings
}
export const TABLES = ['people', 'bodyMeasurements', 'garmentsOwned', 'listingsKept', 'looks', 'settings'] as const
export type TableName = (typeof TABLES)[number]
export type RecordOf<T extends TableName> = z.infer<(typeof SCHEMAS)[T]>

export type Person = RecordOf<'people'>
export type BodyMeasurement = RecordOf<'bodyMeasurements'>
export type GarmentOwned = RecordOf<'garmentsOwned'>
export type ListingKept = RecordOf<'listingsKept'>
export type Look = RecordOf<'looks'>
export type Settings = RecordOf<'settings'>
export type LookProblem = (typeof LOOK_PROBLEMS)[number]
export type PagePlace = (typeof PAGE_PLACES)[number]
export type Answer = z.infer<typeof answer>
export type Work = z.infer<typeof work>
export type Money = z.infer<typeof money>
/** What a look and a kept listing share. */
export type SharedFields = Pick<Look & ListingKept, keyof typeof listing>
export type UndoStep = z.infer<typeof undoStep>
/** What the person types and chooses in a look. */
export type LookChoices = z.infer<typeof choices>
type BaseField = keyof typeof base
/** A record's own fields: what the caller gives; the rest comes from the stamp. */
export type Fields<T extends TableName> = Omit<RecordOf<T>, BaseField>

/** Is this row a whole record of the table, as this version knows it? */
export const isRecordOf = <T extends TableName>(table: T, row: unknown): row is RecordOf<T> => passes(SCHEMAS[table])(row)
