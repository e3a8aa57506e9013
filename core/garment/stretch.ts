/**
 * How far a cloth gives, and how much of that may be asked in wear. A row a cloth; the first that the structure, the share of elastane, the
 * main fibre, the kind and the cut fit is taken. What was told ("stretches to 60", "no longer stretchy") stands over all of it.
 *
 * Sources: classes of stretch are published (stable knits 18–25 %, moderate 25–50, super 75–100 and over; 97/3 denim sold as 15 %; a 33 % denim
 * cut for skinny jeans; 5 % elastane and over sold as shaping trousers); hip −1.5 to −5 % and thigh −8 to −10 % of the body are published figures of
 * eight sizes of women’s stretch skinny jeans. Every other edge is from memory.
 */

import type { Cut, Facet } from '../ids/cut.ts'
import { type GarmentKind, LEGGED } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import { table } from '../ids/table.ts'
import type { Cloth, Structure, Trait } from './garment-input.ts'

/** least, ideal, most in % of the body; null: free above. */
type Percent = [least: number, ideal: number, most: number | null]
export interface StretchRow {
  id: string
  structure: Structure
  /** % elastane, from and to. */
  elastane: [number, number]
  kinds?: readonly GarmentKind[]
  fibres?: readonly string[]
  traits?: readonly Trait[]
  cut?: { facet: Facet; values: readonly string[] }
  /** A pull by hand, % of the length at rest. */
  stretch: number
  /** What may be asked of it in wear, % of the body. */
  usable: number
  /** How a close cut of this cloth is wanted. */
  close: Partial<Record<PointId, Percent>>
}
export interface Stretch {
  id: string
  /** A pull by hand, %. */
  percent: number
  /** What may be asked in wear, share of the body. */
  usable: number
  /** How unsure `usable` is (sd). */
  usableSd: number
  close: StretchRow['close']
  from: 'told' | 'fibres' | 'assumed'
}

const SUITING = ['wool', 'polyester', 'viscose']
const NONE: [number, number] = [0, 0]

export const STRETCH_ROWS: readonly StretchRow[] = [
  {
    id: 'leather',
    structure: 'leather',
    elastane: [0, 100],
    stretch: 3,
    usable: 1,
    close: { waist: [0, 1.5, 4], hip: [2, 5, 10], thigh: [3, 6, 12], chest: [3, 6, 12] }
  },
  {
    id: 'coated',
    structure: 'woven',
    elastane: [0, 5],
    traits: ['vinyl', 'coated'],
    stretch: 4,
    usable: 2,
    close: { waist: [0, 2, 5], hip: [2, 5, 10], thigh: [3, 6, 12], chest: [4, 8, 14] }
  },
  {
    id: 'felted',
    structure: 'knit',
    elastane: [0, 100],
    cut: { facet: 'knit', values: ['felted'] },
    stretch: 3,
    usable: 0,
    close: { waist: [2, 10, null], hip: [2, 8, 16], chest: [4, 9, 15] }
  },
  {
    id: 'leggings',
    structure: 'knit',
    elastane: [8, 100],
    kinds: LEGGED,
    stretch: 90,
    usable: 22,
    close: { waist: [-25, -15, 0], hip: [-25, -12, 0], thigh: [-25, -13, 0] }
  },
  {
    id: 'rib',
    structure: 'knit',
    elastane: [0, 100],
    cut: { facet: 'knit', values: ['ribbed'] },
    stretch: 90,
    usable: 20,
    close: { waist: [-20, -10, 4], hip: [-16, -7, 6], thigh: [-18, -8, 6], chest: [-18, -8, 6] }
  },
  {
    id: 'sweater-chunky',
    structure: 'knit',
    elastane: [0, 2],
    cut: { facet: 'knit', values: ['chunky'] },
    stretch: 30,
    usable: 4,
    close: { waist: [0, 14, null], hip: [-4, 6, null], chest: [3, 12, 25] }
  },
  {
    id: 'sweatshirt',
    structure: 'knit',
    elastane: [0, 5],
    cut: { facet: 'knit', values: ['sweatshirt'] },
    stretch: 22,
    usable: 4,
    close: { waist: [0, 14, null], hip: [-4, 8, 20], thigh: [-2, 10, 24], chest: [2, 14, 28] }
  },
  {
    id: 'sweatshirt',
    structure: 'knit',
    elastane: [0, 5],
    cut: { facet: 'leg', values: ['jogger'] },
    stretch: 22,
    usable: 4,
    close: { waist: [0, 14, null], hip: [-4, 8, 20], thigh: [-2, 10, 24] }
  },
  {
    id: 'stretch-velvet',
    structure: 'knit',
    elastane: [3, 100],
    traits: ['pile'],
    stretch: 45,
    usable: 8,
    close: { waist: [-5, 0, 10], hip: [-5, 0, 10], thigh: [-6, 0, 10], chest: [-5, 1, 10] }
  },
  {
    id: 'stretch-lace',
    structure: 'knit',
    elastane: [0, 100],
    traits: ['sheer'],
    stretch: 50,
    usable: 8,
    close: { waist: [-6, 0, 10], hip: [-6, 0, 12], chest: [-6, 0, 10] }
  },
  {
    id: 'jersey-elastane',
    structure: 'knit',
    elastane: [3, 100],
    stretch: 60,
    usable: 13,
    close: { waist: [-10, -3, 8], hip: [-9, -2, 10], thigh: [-12, -4, 8], chest: [-10, -2, 10] }
  },
  {
    id: 'ponte',
    structure: 'knit',
    elastane: [1, 2],
    kinds: ['dress', 'skirt', 'trousers', 'jacket'],
    stretch: 25,
    usable: 6,
    close: { waist: [-4, 0, 5], hip: [-4, 1, 8], thigh: [-5, 2, 10], chest: [-4, 3, 10] }
  },
  {
    id: 'sweater-fine',
    structure: 'knit',
    elastane: [0, 2],
    kinds: ['jumper'],
    stretch: 35,
    usable: 8,
    close: { waist: [-4, 8, 24], hip: [-6, 4, 14], chest: [-3, 6, 14] }
  },
  {
    id: 'jersey',
    structure: 'knit',
    elastane: [0, 100],
    stretch: 28,
    usable: 6,
    close: { waist: [-4, 4, 15], hip: [-4, 4, 14], chest: [-5, 4, 16] }
  },
  {
    id: 'jegging',
    structure: 'woven',
    elastane: [6, 100],
    kinds: LEGGED,
    stretch: 45,
    usable: 14,
    close: { waist: [-12, -6, 0], hip: [-12, -7, 2], thigh: [-16, -10, 2] }
  },
  {
    id: 'stretch-suiting',
    structure: 'woven',
    elastane: [1, 100],
    fibres: SUITING,
    stretch: 10,
    usable: 3,
    close: { waist: [0, 2, 5], hip: [1, 5, 10], thigh: [0, 6, 14], chest: [3, 7, 12] }
  },
  {
    id: 'super-stretch-denim',
    structure: 'woven',
    elastane: [3, 100],
    kinds: LEGGED,
    stretch: 26,
    usable: 9,
    close: { waist: [-6, -2, 2], hip: [-7, -3, 4], thigh: [-11, -6, 4] }
  },
  {
    id: 'stretch-denim',
    structure: 'woven',
    elastane: [1.5, 100],
    kinds: LEGGED,
    stretch: 15,
    usable: 6,
    close: { waist: [-4, -1, 3], hip: [-4, 0, 6], thigh: [-7, -2, 8] }
  },
  {
    id: 'comfort-denim',
    structure: 'woven',
    elastane: [0.5, 100],
    kinds: LEGGED,
    stretch: 9,
    usable: 3,
    close: { waist: [-2, 1, 4], hip: [0, 3, 8], thigh: [-1, 4, 12] }
  },
  { id: 'stretch-poplin', structure: 'woven', elastane: [1, 100], kinds: ['shirt'], stretch: 9, usable: 2, close: { chest: [3, 7, 13] } },
  {
    id: 'stretch-sateen',
    structure: 'woven',
    elastane: [1, 100],
    stretch: 13,
    usable: 4,
    close: { waist: [-2, 1, 4], hip: [-2, 2, 8], thigh: [-4, 2, 10], chest: [2, 6, 12] }
  },
  {
    id: 'bias',
    structure: 'woven',
    elastane: NONE,
    cut: { facet: 'silhouette', values: ['bias'] },
    stretch: 18,
    usable: 4,
    close: { waist: [0, 3, null], hip: [-1.5, 2, 8], chest: [1, 5, 10] }
  },
  {
    id: 'rigid',
    structure: 'woven',
    elastane: [0, 100],
    stretch: 0,
    usable: 0,
    close: { waist: [-1.5, 0, 4], hip: [2, 5, 10], thigh: [3, 7, 14] }
  }
]

/** With a share not told, elastane is 2 % (the commonest on the rail; one shop’s stock). */
const ELASTANE_UNTOLD = 2
const elastaneIn = ({ fibres = [] }: Cloth): number =>
  fibres.filter(({ fibre }) => fibre === 'elastane').reduce((sum, { percent }) => sum + (percent ?? ELASTANE_UNTOLD), 0)

/** The fibre there is most of; without shares the one named first, which a label must name first too (Regulation (EU) 1007/2011, Article 9). */
export function mainFibre({ fibres = [] }: Pick<Cloth, 'fibres'>): string | undefined {
  let main = fibres[0]
  for (const one of fibres) if ((one.percent ?? 0) > (main?.percent ?? 0)) main = one
  return main?.fibre
}

/** Of a pull by hand so much may be asked in wear: 0.4 in wovens, 0.3 in jersey, 0.2 in what reaches far (common practice). */
const shareInWear = (structure: Structure, percent: number): number => (structure === 'woven' ? 0.4 : percent >= 75 ? 0.22 : 0.3)
/** Never more than this of the bound at full stretch, 1 − 1/(1 + s) (a pattern text: 50 % → 33 %). */
const OF_THE_BOUND = 0.65
/** A pull told in % is good to about six points (two makers of one elastane share differ so); an assumed one to half of itself, at least two points. */
const PULL_SD = 6
const ASSUMED_SD = 0.5
const LEAST_ASSUMED_SD = 0.02
/**
 * Close cuts are mostly made of stretch cloth where nothing is told: % elastane thought of (of 273 second-hand pairs of women’s trousers three in
 * four have some; men’s half and half, common practice), always with doubt.
 */
const ELASTANE_BY_CUT = table<number>({ skinny: 2, legging: 8, slim: 1, bootcut: 1, flared: 1 })

/** The most that any cloth stretches, %. */
export const MOST_STRETCH = 400

/** How far the cloth gives, and from what that is known. `cut`: what is told or seen of the cut. */
export function stretchOf(kind: GarmentKind, structure: Structure, cloth: Cloth, cut: Cut): Stretch {
  const told = cloth.stretchPercent
  const elastane = elastaneIn(cloth)
  const isUntold = (cloth.fibres ?? []).length === 0 && !(cloth.traits ?? []).includes('rigid')
  const assumedElastane = structure === 'woven' && isUntold ? (ELASTANE_BY_CUT[cut.leg ?? ''] ?? 0) : elastane
  const fibre = mainFibre(cloth)
  const row = STRETCH_ROWS.find(
    (one) =>
      one.structure === structure &&
      assumedElastane >= one.elastane[0] &&
      assumedElastane <= one.elastane[1] &&
      (one.kinds === undefined || one.kinds.includes(kind)) &&
      (one.fibres === undefined || (fibre !== undefined && one.fibres.includes(fibre))) &&
      (one.traits === undefined || one.traits.some((trait) => cloth.traits?.includes(trait))) &&
      (one.cut === undefined || one.cut.values.includes(String(cut[one.cut.facet])))
  )
  const { id, stretch, usable, close } = row ?? { id: 'rigid', stretch: 0, usable: 0, close: {} }
  if (told !== undefined && told >= 0 && told <= MOST_STRETCH) {
    const share = shareInWear(structure, told)
    const asked = Math.min((share * told) / 100, OF_THE_BOUND * (1 - 1 / (1 + told / 100)))
    // a told pull far from the row's own says that the row's close edges are another cloth's
    const alike = told > stretch / 2 && told < stretch * 2
    return {
      id,
      percent: told,
      usable: asked,
      usableSd: told === 0 ? 0 : (share * PULL_SD) / 100,
      close: alike ? close : {},
      from: 'told'
    }
  }
  const from = elastane > 0 || (structure === 'woven' && !isUntold) || structure === 'leather' ? 'fibres' : 'assumed'
  const sd = usable === 0 ? 0 : from === 'fibres' ? 0.4 * (PULL_SD / 100) : Math.max(LEAST_ASSUMED_SD, (ASSUMED_SD * usable) / 100)
  return { id, percent: stretch, usable: usable / 100, usableSd: sd, close, from }
}

/** A waist of a woven has a firm band: half of what the cloth may give (common practice); a thigh may be asked a fifth more. */
export const usableAt = ({ usable, id }: Pick<Stretch, 'usable' | 'id'>, structure: Structure, point: PointId): number =>
  point === 'waist' && structure === 'woven' && id !== 'jegging' ? usable / 2 : point === 'thigh' ? usable * 1.2 : usable
