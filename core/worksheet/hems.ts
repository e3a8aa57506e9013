/**
 * How an edge is turned up on a garment: how deep, in which folds, how it is sewn; where it is cut; and what must be eased into it.
 * Sources: JB a tutorial (1/2 in + 1 in) · JEANPLAIN (cut 1 1/8 in below the new edge) · ALBERTA hem types (narrow to 15, deep over 20) · USDAHEM hang a
 * day · CP common practice (shirts 1/2 in, turned 1/4 and 1/4; knits about 1 in; circles 1/4–1/2; jackets 40).
 */
import { legSlope } from '../alterations/leg-length.ts'
import { skirtSlope } from '../alterations/skirts.ts'
import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { INCH_MM } from '../length.ts'
import { isLegged } from './shapes.ts'

export type HemSeam = 'double-turned' | 'blind' | 'stretch' | 'narrow' | 'glued'
export interface Hem {
  /** Cloth below the new edge, mm: what is left when the rest is cut off. */
  allowanceMm: number
  /** Turned this far first, then once more by the rest; 0: turned once. */
  firstTurnMm: number
  sewn: HemSeam
}

const inches = (value: number): number => value * INCH_MM
const isCircle = ({ made, cut }: Garment): boolean => made.skirtShape === 'circle' || isCut(cut, 'silhouette', 'circle', 'bias')
/** Hems that drop and must hang before they are marked. */
export const hangsFirst = (garment: Garment): boolean =>
  isCircle(garment) || garment.made.skirtShape === 'flared' || isCut(garment.cut, 'silhouette', 'flared', 'swing', 'fit-flare', 'bias')

/** Which edge it is, and whether the job says how it is sewn, whatever the hem was. Not given: the garment's own hem. */
export type HemHow = 'blind' | 'plain' | 'sleeve' | 'sleeve-lined' | undefined
const isSleeve = (how: HemHow): boolean => how === 'sleeve' || how === 'sleeve-lined'

/** The hem that such an edge gets. */
export function hemFor(garment: Garment, how?: HemHow): Hem {
  const { kind, made, cloth } = garment
  if (cloth.structure === 'leather') return { allowanceMm: Math.max(25, Math.min(40, made.hemDepthMm)), firstTurnMm: 0, sewn: 'glued' }
  if (cloth.structure === 'knit') return { allowanceMm: inches(1), firstTurnMm: 0, sewn: 'stretch' }
  if (how === 'sleeve-lined') return { allowanceMm: Math.max(30, Math.min(40, made.hemDepthMm)), firstTurnMm: 0, sewn: 'blind' }
  if (how === 'sleeve') return { allowanceMm: Math.max(20, Math.min(40, made.hemDepthMm)), firstTurnMm: 10, sewn: 'double-turned' }
  if ((kind === 'skirt' || kind === 'dress') && isCircle(garment))
    return { allowanceMm: inches(1 / 2), firstTurnMm: inches(1 / 4), sewn: 'narrow' }
  if (kind === 'shirt') return { allowanceMm: inches(1 / 2), firstTurnMm: inches(1 / 4), sewn: 'narrow' }
  if (kind === 'jeans') return { allowanceMm: inches(1 + 1 / 8), firstTurnMm: inches(1 / 2), sewn: 'double-turned' }
  if (how === 'blind' || (how === undefined && made.hemKind === 'blind'))
    return { allowanceMm: Math.max(30, Math.min(50, made.hemDepthMm)), firstTurnMm: 0, sewn: 'blind' }
  if (isLegged(kind)) return { allowanceMm: inches(3 / 2), firstTurnMm: inches(1 / 2), sewn: 'double-turned' }
  return { allowanceMm: Math.max(20, Math.min(50, made.hemDepthMm)), firstTurnMm: 10, sewn: 'double-turned' }
}

/**
 * Turned up by `amountMm`: the new edge lies so far above the old one, the cloth below it is cut to the allowance. Where the old hem's cloth is less than
 * that, nothing is cut and all of it is turned.
 */
export function cutFor(garment: Garment, hem: Hem, amountMm: number): { belowMm: number; offMm: number } {
  const belowMm = amountMm + garment.made.hemDepthMm
  return { belowMm: Math.min(belowMm, hem.allowanceMm), offMm: Math.max(0, belowMm - hem.allowanceMm) }
}

/**
 * The raw edge of a hem is longer than the new edge by this, around, and as much again than the line it is sewn to: it is eased in. Negative: it is
 * shorter, and the seam is let out there. Geometry: the slope times the depth; a circle 2π times it.
 */
export function hemFullness(garment: Garment, depthMm: number, how?: HemHow): number {
  if (isSleeve(how)) return 0
  if (garment.kind === 'skirt' || garment.kind === 'dress') return skirtSlope(garment) * depthMm
  return isLegged(garment.kind) ? -legSlope(garment) * depthMm : 0
}
