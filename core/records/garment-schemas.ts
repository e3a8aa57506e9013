/** The core's own shapes (garment, correction, means, request), checked where they come in from storage or a file. All lengths mm. */
import * as z from 'zod/mini'
import { type Cloth, CONDITIONS, type GarmentInput, type GarmentMeasure, type Made, TRAITS, USES } from '../garment/garment-input.ts'
import { WHOSE } from '../garment/model/whose.ts'
import { ALTERATIONS } from '../ids/alterations.ts'
import { type Cut, FACETS } from '../ids/cut.ts'
import { GARMENT_KINDS } from '../ids/kinds.ts'
import { POINTS } from '../ids/points.ts'
import { SEAMS } from '../ids/seams.ts'
import { LONGEST_MM } from '../length.ts'
import type { Means, OwnLimits } from '../plan/means.ts'
import type { Correction } from '../reading/reading.ts'
import type { ReckonRequest } from '../reckon.ts'
import { BODY_MEASURES, FITS, SIZES } from '../wearer/body.ts'
import type { Favourite, Tried, Wearer } from '../wearer/wearer.ts'

/** A schema of a type that is written elsewhere: the two can't drift apart unseen. */
type Of<T> = z.ZodMiniType<T>
const maybe = z.exactOptional

export const kind = z.enum(GARMENT_KINDS)
export const point = z.enum(POINTS)
export const whose = z.enum(WHOSE)
export const fit = z.enum(FITS)
export const sizes = z.enum(SIZES)
export const bodyMeasure = z.enum(BODY_MEASURES)
export const alteration = z.enum(ALTERATIONS)
const seam = z.enum(SEAMS)
/** A length that something worn can have. */
export const mm = z.number().check(z.positive(), z.maximum(LONGEST_MM))
/** No ease is larger. */
export const MOST_EASE_MM = 1000
/** An amount of money, of minutes, of percent: never below nothing. */
export const amount = z.number().check(z.nonnegative())
const mark = z.number().check(z.positive(), z.maximum(100))

export const cloth: Of<Cloth> = z.object({
  fibres: maybe(z.array(z.object({ fibre: z.string(), percent: z.nullable(amount) }))),
  structure: maybe(z.enum(['woven', 'knit', 'leather'])),
  stretchPercent: maybe(amount),
  washed: maybe(z.boolean()),
  traits: maybe(z.array(z.enum(TRAITS)))
})

/** A facet or a value that this version does not know is refused, not left out: what is saved stays whole. */
export const cut: Of<Cut> = z.strictObject({
  rise: maybe(z.enum(FACETS.rise)),
  leg: maybe(z.enum(FACETS.leg)),
  legLength: maybe(z.enum(FACETS.legLength)),
  silhouette: maybe(z.enum(FACETS.silhouette)),
  waistSeam: maybe(z.enum(FACETS.waistSeam)),
  dressLength: maybe(z.enum(FACETS.dressLength)),
  topLength: maybe(z.enum(FACETS.topLength)),
  hem: maybe(z.enum(FACETS.hem)),
  closeness: maybe(z.enum(FACETS.closeness)),
  shoulder: maybe(z.enum(FACETS.shoulder)),
  sleeve: maybe(z.enum(FACETS.sleeve)),
  layer: maybe(z.enum(FACETS.layer)),
  knit: maybe(z.enum(FACETS.knit)),
  closing: maybe(z.enum(FACETS.closing)),
  turnUps: maybe(z.enum(FACETS.turnUps)),
  vent: maybe(z.enum(FACETS.vent)),
  yoke: maybe(z.enum(FACETS.yoke)),
  boning: maybe(z.enum(FACETS.boning)),
  layers: maybe(z.enum(FACETS.layers)),
  pleats: maybe(z.enum(FACETS.pleats)),
  era: maybe(z.enum(FACETS.era)),
  bump: maybe(z.enum(FACETS.bump)),
  growth: maybe(z.enum(FACETS.growth))
})

export const made: Of<Partial<Made>> = z.object({
  tailored: maybe(z.boolean()),
  lined: maybe(z.boolean()),
  backSeam: maybe(z.boolean()),
  felledSeams: maybe(z.union([z.boolean(), z.array(seam)])),
  seamAllowanceMm: maybe(z.union([amount, z.partialRecord(seam, amount)])),
  outletMm: maybe(amount),
  hemDepthMm: maybe(amount),
  hemKind: maybe(z.enum(['plain', 'original-edge', 'blind', 'knit'])),
  hipDepthMm: maybe(amount),
  backPocketGapMm: maybe(amount),
  pocketDepthMm: maybe(amount),
  taperLengthMm: maybe(amount),
  slantPockets: maybe(z.boolean()),
  darts: maybe(z.boolean()),
  elasticWaist: maybe(z.boolean()),
  waistStretchedMm: maybe(amount),
  skirtShape: maybe(z.enum(['straight', 'flared', 'circle', 'pleated'])),
  workingCuffButtons: maybe(z.boolean()),
  shortSleeves: maybe(z.boolean()),
  overlapMm: maybe(amount),
  opens: maybe(z.array(point))
})

const tried: Of<Tried> = z.object({ point, spareMm: maybe(amount), shortMm: maybe(amount), sdMm: maybe(amount) })

export const correction: Of<Correction> = z.union([
  z.object({
    quote: z.string(),
    start: z.number(),
    end: z.number(),
    point: maybe(z.nullable(point)),
    mm: maybe(mm),
    unit: maybe(z.enum(['in', 'cm', 'mm'])),
    basis: maybe(z.enum(['flat', 'around', 'length']))
  }),
  z.object({ add: point, mm, source: z.enum(['seller', 'own']) }),
  z.object({ kind }),
  z.object({ whose: z.nullable(whose) }),
  z.object({ size: z.string() }),
  z.object({ label: z.string() }),
  z.object({ made }),
  z.object({ cut }),
  z.object({ cloth }),
  z.object({ tried })
])

const garmentMeasure: Of<GarmentMeasure> = z.object({
  point,
  mm,
  sdMm: maybe(amount),
  source: z.enum(['seller', 'own', 'label']),
  side: maybe(z.enum(['left', 'right']))
})

export const garmentInput: Of<GarmentInput> = z.object({
  kind,
  whose: maybe(whose),
  measures: z.array(garmentMeasure),
  cloth: maybe(cloth),
  made: maybe(made),
  cut: maybe(cut),
  use: maybe(z.enum(USES)),
  condition: maybe(z.array(z.object({ job: z.enum(CONDITIONS), minutes: maybe(amount), cost: maybe(amount) }))),
  price: maybe(z.object({ amount, postage: maybe(amount) }))
})

export const means: Of<Means> = z.object({
  level: z.literal([1, 2, 3, 4, 5]),
  tailor: z.boolean(),
  acceptRescues: maybe(z.array(alteration)),
  pace: maybe(z.number().check(z.positive())),
  markMm: maybe(mark),
  hourWorth: maybe(amount),
  tailorPrices: maybe(z.partialRecord(alteration, amount)),
  notions: maybe(z.partialRecord(alteration, amount)),
  garmentWorth: maybe(amount)
})

/** How much larger than the body a person wants a kind of garment at a point, in one fit; mm, negative where shorter than the body. */
export const ownEase = z.object({ kind, fit, point, mm: z.number().check(z.minimum(-MOST_EASE_MM), z.maximum(MOST_EASE_MM)) })

export const ownLimits: Of<OwnLimits> = z.partialRecord(alteration, amount)

const wearer: Of<Wearer> = z.object({
  body: z.partialRecord(bodyMeasure, z.object({ mm, sdMm: maybe(amount) })),
  fit,
  sizes: maybe(sizes),
  ease: maybe(z.partialRecord(point, z.object({ mm: z.number(), sdMm: amount, from: z.enum(['own', 'diary']) })))
})

export const tolerance = z.partialRecord(point, z.union([amount, z.object({ under: amount, over: amount })]))

const favourite: Of<Favourite> = z.object({
  measures: z.array(z.object({ point, mm })),
  cloth: maybe(cloth),
  cut: maybe(cut),
  toleranceMm: maybe(tolerance)
})

export const reckonRequest: Of<ReckonRequest> = z.object({
  garment: garmentInput,
  wearer: maybe(wearer),
  favourite: maybe(favourite),
  tried: maybe(z.array(tried)),
  means,
  limits: maybe(ownLimits)
})
