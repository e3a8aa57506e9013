/** The small geometry of alterations: how far lines move, what allowances hold, how a hem's girth follows a slope. All lengths in one unit, mm in the core. */

/** What so many seams can be let out, when `keep` of each allowance must stay. */
export const letOutHolds = (allowance: number, keep: number, seams: number): number => Math.max(0, 2 * seams * (allowance - keep))

/** Shortening with the original edge kept: the depth of the fold, measured from the old hem's stitching. */
export const edgeFold = (shortening: number): number => shortening / 2

/** Change of girth per unit of length on a straight-sided leg, sleeve or skirt. */
export const slopeBetween = (girthAbove: number, girthBelow: number, apart: number): number =>
  apart > 0 ? (girthBelow - girthAbove) / apart : 0

/** A full circle grows by this for each unit further down. */
export const CIRCLE_SLOPE = 2 * Math.PI
