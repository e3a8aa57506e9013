/** What the body must pass or sit in, whatever is liked: a foot through a leg, a head through a neck, a hand through a cuff, hips through a band. */
import { pulledOver } from '../garment/cloth.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { BodyMeasureId } from './body.ts'
import { FREE_MM } from './ease.ts'
import { elasticGoes } from './elastic-waist.ts'
import type { Want } from './want.ts'
import type { WholeBody } from './whole-body.ts'

/** A foot goes in pointed and a hand folded: so much of the girth (3 % from memory); and a foot with this to spare. */
const POINTED = 0.97
const HEEL_SPARE_MM = 5

interface Passage {
  point: PointId
  measure: BodyMeasureId
  kinds: readonly GarmentKind[]
  share: number
  spareMm: number
}
/** A closed opening, and what goes through it (heel and knuckles: ANSUR II; the rest common practice). */
const PASSAGES: Passage[] = [
  { point: 'legOpening', measure: 'heelGirth', kinds: ['trousers', 'jeans', 'jumpsuit'], share: POINTED, spareMm: HEEL_SPARE_MM },
  { point: 'neck', measure: 'headGirth', kinds: ['shirt', 'knit-top', 'jumper', 'dress'], share: 1, spareMm: 0 },
  { point: 'cuff', measure: 'handGirth', kinds: ['shirt', 'knit-top', 'jumper', 'dress'], share: POINTED, spareMm: 0 },
  { point: 'waist', measure: 'hipGirth', kinds: ['trousers', 'jeans', 'shorts', 'skirt'], share: 1, spareMm: 0 }
]

/** `skipped`: points where this cut has nothing to judge. */
export function boundsOf(garment: Garment, body: WholeBody, skipped: ReadonlySet<PointId>): [PointId, Want][] {
  const goesTold = !garment.made.elasticWaist || garment.told.waistStretchedMm !== undefined
  return PASSAGES.flatMap(({ point, measure, kinds, share, spareMm }): [PointId, Want][] => {
    const taken = body.get(measure)
    if (taken === undefined || !kinds.includes(garment.kind) || skipped.has(point)) return []
    if (!garment.points.has(point) || garment.made.opens.includes(point) || (point === 'waist' && !goesTold)) return []
    const elastic = point === 'waist' ? elasticGoes(garment) : 0
    const bound = share * taken.mm * pulledOver(garment.cloth) + spareMm - elastic
    const because = [{ code: 'target.must-pass', values: { body: measure, mm: bound }, point }]
    return [
      [
        point,
        {
          least: bound,
          ideal: null,
          most: bound + FREE_MM,
          freeAbove: true,
          sdMm: taken.sdMm,
          from: 'bound',
          measure,
          basedOn: taken.basedOn,
          bound,
          because
        }
      ]
    ]
  })
}

/** A band this wide, from the bound, where a wish and a physical bound contradict. */
const SETTLED_MM = 10

/** A wish under a bound: the bound holds, and a wish that lies wholly below it becomes a narrow band from it. */
export function settle(wish: Want | undefined, bound: Want): Want {
  if (wish === undefined) return bound
  const least = Math.max(wish.least, bound.least)
  const because = wish.least < bound.least ? [...wish.because, ...bound.because] : wish.because
  if (wish.most >= least)
    return { ...wish, least, ideal: wish.ideal === null ? null : Math.max(wish.ideal, least), bound: bound.least, because }
  return {
    ...wish,
    least,
    ideal: least,
    most: least + SETTLED_MM,
    sdMm: Math.max(wish.sdMm, bound.sdMm),
    bound: bound.least,
    because: [...because, { code: 'target.contradiction', values: { mm: least } }]
  }
}
