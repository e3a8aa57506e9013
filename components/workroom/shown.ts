/** What the workroom's pages are given. Records have these fields and more; a page asks for no other. */
import type { Cloth } from '../../core/garment/garment-input.ts'
import type { AlterationId } from '../../core/ids/alterations.ts'
import type { Cut } from '../../core/ids/cut.ts'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { Status } from '../../core/ids/listing-statuses.ts'
import type { PointId } from '../../core/ids/points.ts'
import type { Units } from '../../core/length.ts'
import type { AnswerBrief, AnswerShown } from '../../core/plan/answer/brief.ts'
import type { Condition } from '../../core/plan/conditions/conditions-of.ts'
import type { Means, OwnLimits } from '../../core/plan/means.ts'
import type { Verdict } from '../../core/reckon.ts'
import type { BodyMeasureId, Fit, Sizes } from '../../core/wearer/body.ts'

export interface PersonShown {
  id: string
  name: string
  units: Units
  currency: string
  fit: Fit
  /** Whose sizes they wear; null or left out: not said. */
  sizes?: Sizes | null
  means: Means
  /** The person's own limits by job, mm; 0: never. */
  limits?: OwnLimits
  easeOf?: OwnEase[]
}
/** How much larger than the body a kind is wanted at a point, in one fit, mm; below 0 where shorter. */
export interface OwnEase {
  kind: GarmentKind
  fit: Fit
  point: PointId
  mm: number
}
export type PersonFields = Omit<PersonShown, 'id'>

export interface MeasureShown {
  id: string
  measure: BodyMeasureId
  mm: number
  /** As it was typed. */
  stated: string
  takenOn: string
}

export interface GarmentFields {
  name: string
  kind: GarmentKind
  measures: { point: PointId; mm: number; stated: string }[]
  /** Its cloth and cut as far as they were said. */
  cloth?: Cloth
  cut?: Cut
  notes: string
}
export interface GarmentShown extends GarmentFields {
  id: string
  favourite: boolean
}

export { STATUSES, type Status } from '../../core/ids/listing-statuses.ts'

export interface Money {
  price: number | null
  postage: number | null
  worth: number | null
}
/** What can be changed of a kept listing without opening it. */
export interface ListingFields {
  status: Status
  notes: string
  tags: string[]
  money: Money
}
/** What was changed of them; of the money, too, only what was. */
export type ListingChanges = Partial<Omit<ListingFields, 'money'>> & { money?: Partial<Money> }
/** What a list is found, filtered and ordered by. */
export interface FindShown extends ListingFields {
  id: string
  title: string
  site: string
  keptAt: string
  /** What the page or the person says it costs, in the person's currency. */
  price: number | null
  /** What the page says in another currency, where the person typed nothing; left out: it says nothing else. */
  priceElsewhere?: { amount: number; currency: string } | null
  kind: GarmentKind | null
  /** The answer when it was kept. */
  verdictThen: {
    verdict: Verdict
    chance: number | null
    level: number | null
    minutes: number | null
    spend: number | null
    jobs: AlterationId[]
    /** What the untold had to be; left out: it was not kept with it. */
    conditions?: Condition[]
    chanceIf?: number | null
  } | null
  /** The figures of the answer as of now; null while it is being worked out, or where nothing can be; left out: they stand in `now`. */
  brief?: AnswerBrief | null
}
/** What a row, a comparison and a card are drawn from. */
export interface ListingShown extends FindShown {
  /** The picture the person gave it, as a data address; null or left out: none. */
  picture?: string | null
  /** The answer as of now; null while it is being worked out or fetched, or where nothing can be. */
  now: AnswerShown | null
}
