/**
 * What a cut means for the fit: one row a facet's value, with the band it wants at each point. A cut says where a garment touches the body;
 * only there can it be too big.
 *
 * Sources, by the letters that stand in the rows:
 * CWU16 Central Washington Univ. costume text ch. 16 · C209 New Mexico State Univ. guide C-209 (thigh +25 to +51, knee at least +25) ·
 * TM US Army TM 10-227 and TM 10-8400-201-23 · RASBAND J. Rasband, Guidelines for a fabulous fit · CUTTER The Cutter’s Practical Guide 1898
 * part 1 p. 20 · OPEN dictionaries of leg openings (a denim glossary; What is leg opening?; boot cut and flare compared) · NAMES style guides
 * on names of lengths (team cropped or team full length; seven-eighths; the guide to cropped pants; skirt length, 9 names) · BREAK tailors on
 * breaks of trousers · ANSUR the US Army survey of 2012, worked out anew · STOCK 531 second-hand dresses measured by one shop ·
 * EASE an ease chart of pattern houses, from memory · DROP a pattern cutter on drop shoulders · KUZ Kuzmichev and Adolphe p. 226 ·
 * VT a tailor on the ins and outs of ease · KNIT two knitting texts on ease · VINT two sellers of old clothes on foundations ·
 * BAG Growing clothes, 1976 · CP common practice, no source · MEM from memory.
 */
import type { Facet, FacetValue } from '../../ids/cut.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import type { BodyMeasureId } from '../body.ts'

/** least, ideal, most over the body, mm; null ideal: nothing is aimed for; null most: the cut is free above. */
export type Edges = [least: number, ideal: number | null, most: number | null]
export type CutWant =
  /** Replaces the band. */
  | { set: Edges; against?: BodyMeasureId }
  /** The same, in % of the body measure: close cuts of cloth that stretches. */
  | { percent: Edges; against?: BodyMeasureId }
  /** The same, as shares of a body measure: sleeves by their length on the arm. */
  | { share: Edges; against?: BodyMeasureId }
  /** The figure itself, whatever the body: leg openings. */
  | { is: Edges }
  /** Or so much under another point of the garment itself: it is wrong only where both tests say so. */
  | { or: Edges; under: PointId }
  /** Added to the band that is there. */
  | { shift: [least: number, ideal: number, most: number | null] }
  /** It can be too small, never too big, and nothing is aimed for. */
  | { free: number | null; against?: BodyMeasureId }
  /** Not judged and not asked for: there is no such seam. */
  | 'skip'

export interface CutRow<F extends Facet = Facet> {
  facet: F
  values: readonly FacetValue<F>[]
  kinds: readonly GarmentKind[]
  wants: Partial<Record<PointId, CutWant>>
  source: string
}

export const over = (least: number, ideal: number | null, most: number | null, against?: BodyMeasureId): CutWant => ({
  set: [least, ideal, most],
  ...(against === undefined ? {} : { against })
})
export const percent = (least: number, ideal: number | null, most: number | null, against?: BodyMeasureId): CutWant => ({
  percent: [least, ideal, most],
  ...(against === undefined ? {} : { against })
})
/** `least` over the body, mm; null: not even too small. */
export const free = (least: number | null = null, against?: BodyMeasureId): CutWant => ({
  free: least,
  ...(against === undefined ? {} : { against })
})
/** A row, its values checked against its facet. */
export const row = <F extends Facet>(
  facet: F,
  values: FacetValue<F> | readonly FacetValue<F>[],
  kinds: readonly GarmentKind[],
  wants: CutRow['wants'],
  source: string
): CutRow => ({ facet, values: typeof values === 'string' ? [values] : values, kinds, wants, source })
