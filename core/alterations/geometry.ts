/** The small geometry of alterations: how far lines move, what allowances hold, how a hem's girth follows a slope. All lengths in one unit, mm in the core. */

/** How far each stitching line moves when a girth changes by `amount` over so many seams: every seam has two layers. */
export const perLine = (amount: number, seams: number): number => amount / (2 * seams)

/** What so many seams can be let out, when `keep` of each allowance must stay. */
export const letOutHolds = (allowance: number, keep: number, seams: number): number => Math.max(0, 2 * seams * (allowance - keep))

/** Shortening with the original edge kept: the depth of the fold, measured from the old hem's stitching. */
export const edgeFold = (shortening: number): number => shortening / 2

/** Change of girth per unit of length on a straight-sided leg, sleeve or skirt. */
export const slopeBetween = (girthAbove: number, girthBelow: number, apart: number): number =>
  apart > 0 ? (girthBelow - girthAbove) / apart : 0

/** How much longer the raw edge of a hem is than where it is sewn: to ease in, or to cut as a facing. */
export const hemFullness = (slope: number, depth: number): number => Math.abs(slope) * depth

/** A full circle grows by this for each unit further down. */
export const CIRCLE_SLOPE = 2 * Math.PI

/** Length of one leg of a dart of this length and whole width. */
export const dartLeg = (length: number, width: number): number => Math.hypot(length, width / 2)

/** A flat waistband of this thickness, laid flat and doubled, reads so much more than the inside of the band. */
export const flatOverReads = (thickness: number): number => 4 * thickness
