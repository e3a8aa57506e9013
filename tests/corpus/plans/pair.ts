/** How the cases of each alteration are asked: of Rowan, or of a favourite alone. */

import type { GarmentInput, Made } from '../../../core/garment/garment-input.ts'
import type { AlterationId } from '../../../core/ids/alterations.ts'
import type { Cut } from '../../../core/ids/cut.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import type { Level } from '../../../core/plan/means.ts'
import type { ReckonRequest } from '../../../core/reckon.ts'
import { garment } from './plan-case.ts'
import { rowan } from './wearers.ts'

type Figures = Partial<Record<PointId, number>>
interface Asked {
  level?: Level
  tailor?: boolean
  made?: Partial<Made>
  more?: Partial<GarmentInput>
  /** A favourite's figures, for points that a body does not judge. */
  liked?: Figures
  /** Ruled out by the person, so that this one is left. */
  without?: AlterationId[]
  limits?: ReckonRequest['limits']
}

/** What suits Rowan, at the ideal or near. */
const SUITS: Partial<Record<GarmentKind, Figures>> = {
  trousers: { waist: 820, hip: 1040, thigh: 628, knee: 470, legOpening: 420, inseam: 755 },
  jeans: { waist: 820, hip: 1036, thigh: 628, knee: 450, legOpening: 410, inseam: 755 },
  shorts: { waist: 820, hip: 1040, thigh: 628 },
  skirt: { waist: 820, hip: 1040, skirtLength: 620, sweep: 1150 },
  shirt: { chest: 1060, waist: 930, hem: 1070, shoulderWidth: 440, sleeveLength: 610, neck: 394, bicep: 390, cuff: 225 },
  jacket: { chest: 1060, waist: 916, hem: 1080, shoulderWidth: 440, sleeveLength: 610, bicep: 390 },
  'knit-top': { chest: 1020, waist: 900, hem: 1010, shoulderWidth: 440, sleeveLength: 610 },
  jumper: { chest: 1020, waist: 900, hem: 1010, shoulderWidth: 440, sleeveLength: 610 },
  dress: { chest: 1036, waist: 840, hip: 1040, shoulderWidth: 440 }
}

export function asked(
  kind: GarmentKind,
  change: Figures,
  { level = 3, tailor = false, made = {}, more = {}, liked, without = [], limits = {} }: Asked = {}
): ReckonRequest {
  return {
    garment: garment(kind, { ...SUITS[kind], ...change }, made, more),
    wearer: rowan,
    ...(liked === undefined
      ? {}
      : { favourite: { measures: Object.entries(liked).map(([point, mm]) => ({ point: point as PointId, mm })) } }),
    means: { level, tailor },
    limits: { ...limits, ...Object.fromEntries(without.map((id) => [id, 0])) }
  }
}

/** Told and liked just so, beside what a case is about: without these nothing is judged. */
const KEYS: Partial<Record<GarmentKind, Figures>> = {
  trousers: { waist: 800, hip: 1000 },
  jeans: { waist: 800, hip: 1000 },
  shorts: { waist: 800, hip: 1000 },
  skirt: { waist: 800 },
  jacket: { chest: 1050, shoulderWidth: 440 },
  shirt: { chest: 1000 },
  'knit-top': { chest: 1000 },
  jumper: { chest: 1000 },
  waistcoat: { chest: 1000 },
  dress: { chest: 1000 }
}
/** Judged by a favourite alone, so that no body's band bears on it: liked figures, less 0.6 of the tolerance, plus all of it (core/wearer/tolerance.ts). */
export function likes(
  kind: GarmentKind,
  figures: Figures,
  liked: Figures,
  { level = 3, made = {}, more = {}, without = [], limits = {} }: Asked = {}
): ReckonRequest {
  return {
    garment: garment(kind, { ...KEYS[kind], ...figures }, made, more),
    favourite: { measures: Object.entries({ ...KEYS[kind], ...liked }).map(([point, mm]) => ({ point: point as PointId, mm })) },
    means: { level, tailor: false },
    limits: { ...limits, ...Object.fromEntries(without.map((id) => [id, 0])) }
  }
}
export const cut = (cut: Cut, more: Partial<GarmentInput> = {}): Partial<GarmentInput> => ({ cut, ...more })

export interface Pair {
  id: AlterationId
  direction: 'less' | 'more'
  /** It shows: looked for in any plan, since it may stand beside the advised one only. */
  rescue?: true
  /** In the advised plan, by so much; alone unless `beside` names what goes with it. */
  answer: { why: string; request: ReckonRequest; amount: [number, number]; beside?: AlterationId[] }
  /** In no plan. */
  never: { why: string; request: ReckonRequest }
}
