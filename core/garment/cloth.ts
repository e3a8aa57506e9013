/** What cloth does: grows, shrinks, keeps needle holes, stretches, slows the work. */

import type { GarmentKind } from '../ids/kinds.ts'
import { isGirth, type PointId } from '../ids/points.ts'
import type { Saying } from '../words/reason.ts'
import type { Cloth, Structure, Trait } from './garment-input.ts'

export interface ClothTaken {
  structure: Structure
  stretchPercent: number
  washed: boolean
  traits: ReadonlySet<Trait>
  fibres: { fibre: string; percent: number | null }[]
  assumed: ('structure' | 'stretch' | 'washed')[]
}

/** The most that any cloth stretches, %. */
const MOST_STRETCH = 400
const KNIT_KINDS: ReadonlySet<GarmentKind> = new Set<GarmentKind>(['knit-top', 'jumper'])

/** The cloth with what is not told assumed: knits stretch 25 % (stable knits 18–25, STRETCHC), all else 0; washed. */
export function clothTaken(kind: GarmentKind, told: Cloth = {}): ClothTaken {
  const stretch =
    told.stretchPercent !== undefined && told.stretchPercent >= 0 && told.stretchPercent <= MOST_STRETCH ? told.stretchPercent : undefined
  const structure = told.structure ?? (KNIT_KINDS.has(kind) ? 'knit' : 'woven')
  const assumed: ClothTaken['assumed'] = []
  if (told.structure === undefined) assumed.push('structure')
  if (stretch === undefined) assumed.push('stretch')
  if (told.washed === undefined) assumed.push('washed')
  return {
    structure,
    stretchPercent: stretch ?? (structure === 'knit' ? 25 : 0),
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

const MATCHED: Trait[] = ['pile', 'nap', 'check', 'stripe', 'large-print']
/** Pile, nap, checks, stripes and big prints take 30–50 % longer (common practice, no source): 1.4. */
export const timeFactor = (cloth: ClothTaken): number => (MATCHED.some((trait) => cloth.traits.has(trait)) ? 1.4 : 1)

const AWKWARD: Trait[] = ['fraying', 'sheer', 'slippery', 'beaded', 'pleated']
/** Fraying, sheer, slippery, beaded and pleated cloth is a level harder (common practice, no source). */
export const levelMore = (cloth: ClothTaken): 0 | 1 => (AWKWARD.some((trait) => cloth.traits.has(trait)) ? 1 : 0)

/**
 * How far a knit may be asked to stretch in wear, as a share of the body: at most half of 1 − 1/(1 + stretch)
 * (the whole is the limit at full stretch; half of it is common practice).
 */
export const stretchUsed = (cloth: ClothTaken): number =>
  cloth.structure === 'knit' ? 0.5 * (1 - 1 / (1 + cloth.stretchPercent / 100)) : 0

/** What wear and the first wash do to a point: worn = tape × (1 − shrink) + growMm. */
export interface WornChange {
  growMm: number
  shrink: number
  /** How unsure the growth is, mm (sd), and the shrinkage, as a share of the figure. */
  growSdMm: number
  shrinkSd: number
  because: Saying[]
}

/** Rigid cotton denim grows 13–25 mm at the waist in wear, washed or not (from memory). */
const GROWTH = { mm: 19, sdMm: 4 }
/**
 * Planning figures for cloth that was never washed, share of length / of girth: cotton and linen 3–4 % and 2–3 % (from memory);
 * wool ±3 %, viscose ±5 % (a maker's requirement for woven clothing, read as the shrinkage allowed).
 */
const SHRINK: Record<string, [number, number]> = {
  cotton: [0.035, 0.025],
  linen: [0.035, 0.025],
  viscose: [0.05, 0.05],
  wool: [0.03, 0.03]
}

/** Shrinkage comes out so much more or less than planned: 1 in 100 of the figure (sd; from memory). */
const SHRINK_SD = 0.01

export function wornChange(kind: GarmentKind, cloth: ClothTaken, point: PointId): WornChange {
  const change: WornChange = { growMm: 0, shrink: 0, growSdMm: 0, shrinkSd: 0, because: [] }
  const cotton = cloth.fibres.length === 0 || cloth.fibres.some(({ fibre }) => fibre === 'cotton')
  const rigid = cloth.traits.has('rigid') && (kind === 'jeans' || cloth.traits.has('denim')) && cotton
  if (rigid && point === 'waist') {
    change.growMm = GROWTH.mm
    change.growSdMm = GROWTH.sdMm
    change.because.push({ code: 'target.grows', values: { mm: GROWTH.mm }, point })
  }
  if (!cloth.washed) {
    const most = cloth.fibres.reduce(
      (best, { fibre, percent }) => ((percent ?? 0) > (best?.percent ?? 0) ? { fibre, percent } : best),
      cloth.fibres[0]
    )
    const share = most && SHRINK[most.fibre]
    if (most && share) {
      change.shrink = share[isGirth(point) ? 1 : 0]
      change.shrinkSd = SHRINK_SD
      change.because.push({ code: 'target.shrinks', values: { percent: change.shrink * 100, fibre: most.fibre }, point })
    }
  }
  return change
}
