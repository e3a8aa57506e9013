/** What the page of the work on a garment is given, and what can be done on it. */
import type { Made } from '../../../core/garment/garment-input.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import type { Plan } from '../../../core/plan/plan.ts'
import type { Reckoning } from '../../../core/reckon.ts'
import type { Tried } from '../../../core/wearer/wearer.ts'
import type { SellerSd } from '../../../core/worksheet/arrival.ts'
import type { TemplatesDrawn } from '../../../core/worksheet/drawing/draw-templates.ts'
import type { Worksheet } from '../../../core/worksheet/worksheet.ts'

/** A point as the seller told it and as one's own tape found it; girths around, mm. */
export interface ArrivalPoint {
  point: PointId
  sellerMm: number | null
  ownMm: number | null
}
export interface SheetShown {
  sheet: Worksheet
  templates: TemplatesDrawn
  level: number
  minutes: number
  /** What the plan makes of each point that it changes, mm. */
  after: { point: PointId; mm: number }[]
  /** What the outlines are drawn from. */
  plan: Plan
  points: Partial<Record<PointId, number>>
  made: Made
  /** Have the figures changed since it was made? */
  isStale: boolean
}
export interface WorkShown {
  title: string
  wearer: string
  kind: GarmentKind
  reckoning: Reckoning
  /** What is looked at before anything is unpicked, a sentence each. */
  inspection: string[]
  /** Figures further off than two tapes usually are, and what one's own tape did to the plan, a sentence each. */
  found: string[]
  arrival: ArrivalPoint[]
  tried: Tried[]
  /** Points that can be pinched or gape, the deciding ones first. */
  canTry: PointId[]
  /** null: none is made yet. */
  sheet: SheetShown | null
  ticked: Readonly<Record<string, string>>
  notes: Readonly<Record<string, string>>
  minutes: number | null
  result: readonly { point: PointId; mm: number }[]
  finishedAt: string | null
  pace: PaceShown | null
  /** How far sellers' figures may be off by what was measured again; null: nothing was. */
  sellers: SellersShown | null
}
/** What finished pieces tell of this person's pace. */
export interface PaceShown {
  n: number
  /** Minutes taken for them, and minutes of the table. */
  own: number
  table: number
  pace: number
  isUsed: boolean
}
/** Standard deviations, mm, around for girths. */
export interface SellersShown {
  n: number
  sd: SellerSd
  isUsed: boolean
}
export type Paper = 'A4' | 'Letter'

export interface WorkActions {
  onArrived: (point: PointId, mm: number) => void
  onForget: (point: PointId) => void
  onTried: (tried: Tried) => void
  onUntried: (tried: Tried) => void
  onBegin: () => void
  onTick: (step: string, isDone: boolean) => void
  onNote: (step: string, note: string) => void
  onFinish: (outcome: { minutes: number | null; result: { point: PointId; mm: number }[] } | null) => void
  onPace: (pace: number) => void
  onSellers: (sd: SellerSd) => void
  onPaper: (paper: Paper) => void
}
