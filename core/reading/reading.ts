/** What was read in a listing. Every figure carries its place in the text. */
import type { CutRead } from '../garment/cut.ts'
import type { Cloth, ConditionId, GarmentInput, Made, Structure, Trait } from '../garment/garment-input.ts'
import type { Issue, Stated } from '../garment/issue.ts'
import type { Whose } from '../garment/model/whose.ts'
import type { Cut } from '../ids/cut.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Units } from '../length.ts'
import type { BodyMeasureId } from '../wearer/body.ts'
import type { Tried } from '../wearer/wearer.ts'

export type Basis = 'flat' | 'around' | 'length'

export interface MeasureReading {
  point: PointId
  /** Around for a girth, whatever was stated. */
  mm: number
  /** lowMm = highMm unless a range was stated. */
  lowMm: number
  highMm: number
  basis: Basis
  basisFrom: 'stated' | 'judged'
  unitFrom: 'stated' | 'list' | 'judged'
  stated: Stated
  /** Several garments in one text (a suit): the one that this figure is of. */
  of?: GarmentKind
  /** Several sizes in one text: the one that this figure is of. */
  size?: string
}

/** A second figure of a point that has a measure: stretched, cuffed, laid open, with the collar; told, and no measure. */
export interface SecondReading {
  point: PointId
  /** Around for a girth, as the measure is. */
  mm: number
  /** In which state it was taken; null: told otherwise. */
  how: 'stretched' | 'relaxed' | 'cuffed' | 'uncuffed' | 'opened' | 'closed' | 'front' | 'back' | 'inner' | 'measured' | null
  stated: Stated
}

export type AsideReason = 'model' | 'size-label' | 'parcel' | 'fits-advice' | 'size-chart' | 'detail' | 'pulled-out' | 'unknown'

/** A body that a size is cut for, as its maker says: evidence of the label, never the garment’s measure. */
export interface ChartRow {
  /** null: the one size that the text is about. */
  size: string | null
  body: BodyMeasureId
  lowMm: number
  highMm: number
  stated: Stated
}

export interface Reading {
  /** sureness 0..1: how sure the kind is. */
  garment: { kind: GarmentKind | null; sureness: number }
  measures: MeasureReading[]
  /** Older figures that a later answer gave anew (mergeReadings); those that are near enough still count. */
  superseded?: MeasureReading[]
  /** What else was told of points that have a measure; absent where nothing was. */
  seconds?: SecondReading[]
  cloth: {
    fibres: { fibre: string; percent: number | null }[]
    traits: Trait[]
    stretchPercent: number | null
    /** false: told to be never washed; null: nothing told. */
    washed: boolean | null
    structure: Structure | null
  }
  /** As far as told. */
  made: Partial<Made>
  /** Facets as far as told in words. */
  cut: CutRead
  use: GarmentInput['use'] | null
  /** Whose sizes it is cut for; null: not told, or for both. What children wear is a use. */
  whose: Whose | null
  language: string
  colour: string | null
  condition: string | null
  /** Mending and care that the text admits to. */
  mending: ConditionId[]
  price: { amount: number; currency: string } | null
  sizeLabels: string[]
  sizeChart: ChartRow[]
  faults: string[]
  allowances: { point: PointId; mm: number; stated: Stated }[]
  leftAside: { stated: Stated; because: AsideReason }[]
  issues: Issue[]
  /** What the page's own data and its title tell beyond its text; it was read behind the text, and places go on into it. */
  added?: string
}

/** A point, or how far an elastic waist pulls out. */
export type Asked = PointId | 'waistStretchedMm'

export interface ListingText {
  text: string
  title?: string
  /** Parsed JSON-LD blocks, as found on the page; a string is a block that could not be parsed. */
  structured?: unknown[]
  /** Of the page: which of several products in its data it is about. */
  address?: string
  language?: string
  /** The kind when it is already known (a seller's answer about a listing that was read). */
  kind?: GarmentKind
  /** What was asked, where the text is an answer: a lone figure without a name is of it. */
  asked?: Asked
  /** Units for the sentences of issues. */
  units?: Units
}

/** What the person set right. `quote` is the text it stands on, so that it survives an edited text. */
export type Correction =
  | {
      quote: string
      start: number
      end: number
      /** null: not a measure. */
      point?: PointId | null
      mm?: number
      unit?: 'in' | 'cm' | 'mm'
      basis?: Basis
    }
  | { add: PointId; mm: number; source: 'seller' | 'own' }
  | { kind: GarmentKind }
  /** Whose sizes; null: not told after all. */
  | { whose: Whose | null }
  /** Of the sizes that the text measures, the one for sale. */
  | { size: string }
  /** What stands on the size label, where the text does not say: evidence of measures, never certainty. Empty: none. */
  | { label: string }
  | { made: Partial<Made> }
  | { cut: Cut }
  | { cloth: Cloth }
  /** Tried on: so much was pinched away, or was short, at a point. */
  | { tried: Tried }
