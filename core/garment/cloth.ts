/** What cloth does: grows, shrinks, keeps needle holes, stretches, slows the work. */

import type { Cut } from '../ids/cut.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import { isGirth, type PointId } from '../ids/points.ts'
import { table } from '../ids/table.ts'
import type { Saying } from '../words/reason.ts'
import { clothWork, minutesAtSeams } from './cloth-work.ts'
import type { Cloth, Structure, Trait } from './garment-input.ts'
import { mainFibre, type Stretch, stretchOf, usableAt } from './stretch.ts'

export interface ClothTaken {
  structure: Structure
  /** A pull by hand, %. */
  stretchPercent: number
  stretch: Stretch
  washed: boolean
  traits: ReadonlySet<Trait>
  fibres: { fibre: string; percent: number | null }[]
  assumed: ('structure' | 'stretch' | 'washed')[]
}

const KNIT_KINDS: ReadonlySet<GarmentKind> = new Set<GarmentKind>(['knit-top', 'jumper'])

/** The cloth with what is not told assumed, by kind and cut; washed. */
export function clothTaken(kind: GarmentKind, told: Cloth = {}, cut: Cut = {}): ClothTaken {
  const structure = told.structure ?? (KNIT_KINDS.has(kind) ? 'knit' : 'woven')
  const stretch = stretchOf(kind, structure, told, cut)
  const assumed: ClothTaken['assumed'] = []
  if (told.structure === undefined) assumed.push('structure')
  if (stretch.from !== 'told') assumed.push('stretch')
  if (told.washed === undefined) assumed.push('washed')
  return {
    structure,
    stretchPercent: stretch.percent,
    stretch,
    washed: told.washed ?? true,
    traits: new Set(told.traits ?? []),
    fibres: told.fibres ?? [],
    assumed
  }
}

const HOLES: Trait[] = ['suede', 'vinyl', 'coated', 'silk', 'taffeta']
/** Leather, suede, vinyl, coated cloth, fine silk and taffeta keep needle holes: no seam moves outward (LEATHER: a fabric shop's leather notes). */
export const keepsNeedleHoles = (cloth: ClothTaken): boolean =>
  cloth.structure === 'leather' || HOLES.some((trait) => cloth.traits.has(trait))

/** How many times as long work at seams takes in it as in cotton. */
export const timeFactor = (cloth: ClothTaken): number => minutesAtSeams(cloth)
/** How many levels harder it is than cotton. */
export const levelMore = (cloth: ClothTaken): number => clothWork(cloth).level

/** What the cloth may be asked to give at a point in wear, share of the body. */
export const stretchAt = ({ stretch, structure }: ClothTaken, point: PointId): number => usableAt(stretch, structure, point)
/** Pulled on over something larger it reaches four fifths of a pull by hand: the share of the girth that is then wanted. */
export const pulledOver = ({ stretch }: ClothTaken): number => 1 / (1 + (0.8 * stretch.percent) / 100)

/** What wear and the first wash do to a point: worn = tape × (1 − shrink) + growMm. */
export interface WornChange {
  growMm: number
  shrink: number
  /** How unsure the growth is, mm (sd), and the shrinkage, as a share of the figure. */
  growSdMm: number
  shrinkSd: number
  because: Saying[]
}

/**
 * Rigid cotton denim grows in wear, mm: at the waist 13–25, washed or not (from memory); at seat and thigh 41 and 19 on a maker's raw pair (a text
 * on the life of raw denim), less for a start; half of that once it was washed and worn.
 */
const GROWTH: Partial<Record<PointId, { mm: number; sdMm: number; washedShare: number }>> = {
  waist: { mm: 19, sdMm: 4, washedShare: 1 },
  hip: { mm: 30, sdMm: 12, washedShare: 0.5 },
  thigh: { mm: 15, sdMm: 8, washedShare: 0.5 }
}
/**
 * Planning figures for cloth that was never washed, share of length / of girth: cotton and linen 3–4 % and 2–3 % (from memory);
 * wool ±3 %, viscose ±5 % (a maker's requirement for woven clothing, read as the shrinkage allowed).
 */
const SHRINK = table<[number, number]>({
  cotton: [0.035, 0.025],
  linen: [0.035, 0.025],
  viscose: [0.05, 0.05],
  wool: [0.03, 0.03]
})

/** Shrinkage comes out so much more or less than planned: 1 in 100 of the figure (sd; from memory). */
const SHRINK_SD = 0.01

export function wornChange(kind: GarmentKind, cloth: ClothTaken, point: PointId): WornChange {
  const change: WornChange = { growMm: 0, shrink: 0, growSdMm: 0, shrinkSd: 0, because: [] }
  const cotton = cloth.fibres.length === 0 || cloth.fibres.some(({ fibre }) => fibre === 'cotton')
  const rigid = cloth.traits.has('rigid') && (kind === 'jeans' || cloth.traits.has('denim')) && cotton
  const growth = rigid ? GROWTH[point] : undefined
  if (growth !== undefined) {
    const share = cloth.washed ? growth.washedShare : 1
    change.growMm = share * growth.mm
    change.growSdMm = share * growth.sdMm
    change.because.push({ code: 'target.grows', values: { mm: change.growMm }, point })
  }
  if (!cloth.washed) {
    const fibre = mainFibre(cloth)
    const share = fibre === undefined ? undefined : SHRINK[fibre]
    if (fibre !== undefined && share !== undefined) {
      change.shrink = share[isGirth(point) ? 1 : 0]
      change.shrinkSd = SHRINK_SD
      change.because.push({ code: 'target.shrinks', values: { percent: change.shrink * 100, fibre }, point })
    }
  }
  return change
}
