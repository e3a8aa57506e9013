/**
 * A world to judge the outlook by: people drawn from survey statistics, garments from makers' tables, tastes from an ease chart, sellers of three
 * grades, and what of it is told. Imports nothing of the product and shares none of its spreads; tables with their sources stand in `simulated`.
 */
import { ownHabit, ownTape, type Person, person, toldOf } from './simulated/bodies.ts'
import { chance, type Figures, oneOf, type Random } from './simulated/chance.ts'
import { type Garment, garmentOf, sizeLookedAt } from './simulated/garments.ts'
import { KINDS, type Kind } from './simulated/makers.ts'
import {
  byTape,
  type ClothTold,
  clothTold,
  cutTold,
  fibresOf,
  type Grade,
  makeOf,
  makeTold,
  measured,
  type Seller,
  sellerOf,
  stretchTold
} from './simulated/sellers.ts'
import type { Sex } from './simulated/survey.ts'
import { tasteOf, type Want, wantsOf } from './simulated/taste.ts'

export { type Figures, normal, type Random, randomFrom } from './simulated/chance.ts'
export { KINDS, type Kind } from './simulated/makers.ts'
export { GRADES, type Grade } from './simulated/sellers.ts'
export { simplyWorks } from './simulated/simple-limits.ts'
export { bodyBeneath, usualEase, type Want } from './simulated/taste.ts'

export interface Truth {
  kind: Kind
  seller: Seller
  sex: Sex
  /** The person's own way with a tape, in sd. */
  ownHabit: number
  body: Figures
  /** Every point that the garment has. */
  garment: Figures
  /** What this person wants, of every point that touches the body. */
  wants: Record<string, Want>
  made: Record<string, number | boolean>
  cut: Record<string, string>
  cloth: Garment['cloth']
  acceptsRescues: boolean
}
export interface Told {
  kind: Kind
  /** Whose sizes the person wears, where they say so. */
  sizes?: Sex
  body: Figures
  garment: Figures
  /** What the seller's tape said when it was laid a second time. */
  again: Figures
  made: Record<string, number | boolean>
  cut: Record<string, string>
  cloth: ClothTold
  /** How many sizes the label is off one's own. */
  sizesOff: number
  acceptsRescues: boolean
}

const SAYS_SIZES = 0.8
const ACCEPTS_RESCUES = 1 / 3
const MEN_SHARE = 0.45
const WOMENS = new Set<Kind>(['skirt', 'dress'])
const KIND_WEIGHTS = Object.fromEntries(KINDS.map((kind) => [kind, 1])) as Record<Kind, number>

export function listing(random: Random, grade: Grade): { truth: Truth; told: Told } {
  const kind = oneOf(random, KIND_WEIGHTS)
  const sex: Sex = !WOMENS.has(kind) && chance(random, MEN_SHARE) ? 'men' : 'women'
  const who: Person = person(random, sex)
  const { size, off } = sizeLookedAt(random, kind, who)
  const garment = garmentOf(random, kind, who, size)
  const habit = ownHabit(random)
  const truth: Truth = {
    kind,
    seller: sellerOf(random, grade),
    sex,
    ownHabit: habit,
    body: who.body,
    garment: garment.figures,
    wants: wantsOf(random, kind, who, garment, tasteOf(random)),
    made: makeOf(random, kind, garment),
    cut: garment.cut,
    cloth: garment.cloth,
    acceptsRescues: chance(random, ACCEPTS_RESCUES)
  }
  const told: Told = {
    kind,
    ...(chance(random, SAYS_SIZES) ? { sizes: sex } : {}),
    body: toldOf(random, who, habit),
    garment: measured(random, kind, sex, truth.garment, truth.seller),
    again: {},
    made: makeTold(random, truth.made),
    cut: cutTold(random, truth.cut),
    cloth: clothTold(random, garment),
    sizesOff: off,
    acceptsRescues: truth.acceptsRescues
  }
  return { truth, told }
}

/** The points that touch the body and were not told. */
export const untoldOf = (truth: Truth, told: Told): string[] =>
  Object.keys(truth.wants).filter((point) => told.garment[point] === undefined)

export interface About {
  point?: string | undefined
  body?: string | undefined
  made?: string | undefined
  /** A point that was told already: the tape is laid a second time. */
  again?: boolean | undefined
}

/** What the same seller answers about one point, the person about one measure of their own, or the seller about make, cut and cloth; null: nobody knows. */
export function answered(random: Random, { truth, told }: { truth: Truth; told: Told }, about: About): Told | null {
  const { point, body, made, again } = about
  const mm = point === undefined ? undefined : truth.garment[point]
  if (point !== undefined && mm !== undefined) {
    const read = () => byTape(random, point, mm, truth.seller)
    if (again === true) return told.again[point] === undefined ? { ...told, again: { ...told.again, [point]: read() } } : null
    return told.garment[point] === undefined ? { ...told, garment: { ...told.garment, [point]: read() } } : null
  }
  if (body !== undefined && truth.body[body] !== undefined && told.body[body] === undefined)
    return { ...told, body: { ...told.body, [body]: ownTape(random, body, truth.body[body], truth.ownHabit) } }
  return made === undefined ? null : answeredOfMake(random, truth, told, made)
}

function answeredOfMake(random: Random, truth: Truth, told: Told, asked: string): Told | null {
  if (asked === 'fibre') return told.cloth.fibres === undefined ? { ...told, cloth: { ...told.cloth, ...fibresOf(truth) } } : null
  if (asked === 'stretch')
    return told.cloth.stretchPercent === undefined
      ? { ...told, cloth: { ...told.cloth, stretchPercent: stretchTold(random, truth) } }
      : null
  const fact = truth.made[asked]
  if (fact !== undefined && told.made[asked] === undefined) return { ...told, made: { ...told.made, [asked]: fact } }
  const value = truth.cut[asked]
  return value !== undefined && told.cut[asked] === undefined ? { ...told, cut: { ...told.cut, [asked]: value } } : null
}
