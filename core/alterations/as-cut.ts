/** What the rows ask of how a garment is cut. What is only assumed decides nothing, except how a band closes: there the usual way stands. */

import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { OVER_A_SHIRT } from '../ids/kinds.ts'

/** Is it closed so, as told or seen, else as such a kind usually is? */
export const closedBy = ({ cut }: Garment, ...ways: string[]): boolean => cut.closing !== undefined && ways.includes(cut.closing.value)

export const isBoned = ({ cut }: Garment): boolean => isCut(cut, 'boning', 'boned')
export const isLayered = ({ cut }: Garment): boolean => isCut(cut, 'layers', 'several')
/** Pleats down from the band: a kilt, a pleated skirt, heat-set cloth. */
export const isPleated = ({ cut, told, cloth }: Garment): boolean =>
  isCut(cut, 'silhouette', 'pleated', 'kilt') || told.skirtShape === 'pleated' || cloth.traits.has('pleated')
export const isWrapped = ({ cut }: Garment): boolean => isCut(cut, 'silhouette', 'wrap') || isCut(cut, 'closing', 'wrap')

/** Knitted with a rib, not cut from jersey: jumpers as such, knit tops only where it is told. */
export const isKnitted = ({ kind, cut }: Garment): boolean =>
  kind === 'jumper'
    ? !isCut(cut, 'knit', 'tee', 'sweatshirt', 'felted')
    : isCut(cut, 'knit', 'ribbed', 'fine', 'standard', 'chunky', 'slipover')
/** Its edges are ribs, knitted on or sewn on. */
export const isRibbed = (garment: Garment): boolean => isKnitted(garment) || isCut(garment.cut, 'knit', 'sweatshirt')

/** Has it a sleeve sewn into an armhole, that a side seam cannot pass without? */
export const hasSetInSleeves = (garment: Garment): boolean =>
  garment.kind !== 'waistcoat' &&
  !isCut(garment.cut, 'sleeve', 'sleeveless') &&
  hasShoulderSeam(garment) &&
  !isCut(garment.cut, 'silhouette', 'strapless', 'camisole', 'sun', 'dungarees')
/** Is there a seam at the shoulder's end? */
export const hasShoulderSeam = ({ cut }: Garment): boolean => !isCut(cut, 'shoulder', 'raglan', 'dolman', 'kimono', 'halter')
/** Jackets that close with a zip, and are edged with bands or ribs. */
export const isZipped = ({ cut }: Garment): boolean =>
  isCut(cut, 'closing', 'front-zip') ||
  (isCut(cut, 'layer', 'biker', 'bomber', 'fleece', 'puffer', 'waxed') && !isCut(cut, 'closing', 'buttons'))

/** The lining is taken along: minutes more on such a kind (common practice). */
export function liningMinutes({ kind, made }: Garment): number {
  if (!made.lined) return 0
  if (kind === 'dress' || kind === 'jumpsuit') return 30
  return OVER_A_SHIRT.includes(kind) ? 40 : 20
}
/** A level harder for it, at most to 4. */
export const linedAlong = (level: number, { made }: Garment): number => (made.lined ? Math.max(level, Math.min(4, level + 1)) : level)
