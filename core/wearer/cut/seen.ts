/**
 * A cut that shows in the figures, where no word tells it: a front rise of 190 is low whatever is said, legs that end at four fifths of the
 * inside leg are cropped. One table; a figure suggests, so each is only so sure, and the person can change it. Edges: the same sources as the rows.
 */

import type { CutRead } from '../../garment/cut.ts'
import { isCut } from '../../garment/cut.ts'
import { type Garment, isTold } from '../../garment/garment-as-worn.ts'
import type { Facet } from '../../ids/cut.ts'
import { GARMENT_KINDS, type GarmentKind, LEGGED, LONG_LEGS, SLEEVED, SOFT_TOPS } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import { bandDrop } from '../band-height.ts'
import type { BodyMeasureId } from '../body.ts'
import type { WholeBody } from '../whole-body.ts'

/** The told figures of the garment and the body, mm; NaN where a figure is not there, so that no comparison with it holds. */
export interface Figures {
  of(point: PointId): number
  body(measure: BodyMeasureId): number
  /** How far below the navel the front of the band lies, mm. */
  drop: number
}
interface SeenRow {
  facet: Facet
  value: string
  kinds: GarmentKind[]
  sureness: number
  when(figures: Figures): boolean
  /** It shows in how much larger it is than the body. */
  bySize?: boolean
}

const ease = (figures: Figures, point: PointId, measure: BodyMeasureId): number => figures.of(point) - figures.body(measure)
const arm = (figures: Figures): number => figures.of('sleeveLength') / figures.body('armLength')
const leg = (figures: Figures): number => figures.of('inseam') / figures.body('insideLegLength')
const flare = (figures: Figures): number => figures.of('legOpening') / figures.of('knee')
const openingToThigh = (figures: Figures): number => figures.of('legOpening') / figures.of('thigh')
const isIn = (value: number, least: number, most: number): boolean => value >= least && value < most
const hasNo = (value: number): boolean => Number.isNaN(value)

const seen = (facet: Facet, value: string, kinds: GarmentKind[], sureness: number, when: SeenRow['when']): SeenRow => ({
  facet,
  value,
  kinds,
  sureness,
  when
})
const larger = (...row: Parameters<typeof seen>): SeenRow => ({ ...seen(...row), bySize: true })

/** The first of a facet that holds stands. */
export const SEEN_ROWS: readonly SeenRow[] = [
  seen('rise', 'ultra-low', LEGGED, 0.7, ({ drop }) => drop > 90),
  seen('rise', 'low', LEGGED, 0.7, ({ drop }) => isIn(drop, 60, 90.01)),
  seen('rise', 'mid', LEGGED, 0.7, ({ drop }) => isIn(drop, 5, 60)),
  seen('rise', 'high', LEGGED, 0.7, ({ drop }) => isIn(drop, -40, 5)),
  seen('rise', 'waist', LEGGED, 0.7, ({ drop }) => drop < -40),

  seen('leg', 'palazzo', LONG_LEGS, 0.6, (figures) => figures.of('legOpening') >= 600 && !(ease(figures, 'thigh', 'thighGirth') < 60)),
  seen('leg', 'flared', LONG_LEGS, 0.7, (figures) => flare(figures) > 1.3),
  seen('leg', 'bootcut', LONG_LEGS, 0.6, (figures) => isIn(flare(figures), 1.05, 1.3001)),
  seen('leg', 'flared', LONG_LEGS, 0.5, (figures) => figures.of('legOpening') >= 530 && ease(figures, 'thigh', 'thighGirth') < 60),
  seen('leg', 'wide', LONG_LEGS, 0.6, (figures) => figures.of('legOpening') >= 530),
  seen('leg', 'wide', LONG_LEGS, 0.5, (figures) => openingToThigh(figures) >= 0.88 && ease(figures, 'thigh', 'thighGirth') > 60),
  seen('leg', 'barrel', LONG_LEGS, 0.5, (figures) => figures.of('knee') >= 0.85 * figures.of('thigh') && flare(figures) <= 0.8),
  larger('leg', 'relaxed', LONG_LEGS, 0.5, (figures) => ease(figures, 'thigh', 'thighGirth') > 110 && !(flare(figures) <= 0.8)),
  seen('leg', 'tapered', LONG_LEGS, 0.5, (figures) => isIn(flare(figures), 0.7, 0.88) && ease(figures, 'thigh', 'thighGirth') > 70),
  seen('leg', 'skinny', LONG_LEGS, 0.6, (figures) => figures.of('legOpening') <= 330 && openingToThigh(figures) <= 0.6),
  seen(
    'leg',
    'slim',
    LONG_LEGS,
    0.5,
    (figures) => isIn(flare(figures), 0.8, 0.9) && figures.of('legOpening') <= 385 && ease(figures, 'thigh', 'thighGirth') < 75
  ),

  seen('legLength', 'shorts', [...LONG_LEGS, 'shorts'], 0.9, (figures) => leg(figures) < 0.28),
  seen('legLength', 'bermuda', LEGGED, 0.8, (figures) => isIn(leg(figures), 0.28, 0.42)),
  seen('legLength', 'pedal', LONG_LEGS, 0.7, (figures) => isIn(leg(figures), 0.42, 0.56)),
  seen('legLength', 'capri', LONG_LEGS, 0.7, (figures) => isIn(leg(figures), 0.56, 0.7)),
  seen('legLength', 'cropped', LONG_LEGS, 0.7, (figures) => isIn(leg(figures), 0.7, 0.8)),
  // between a cropped leg and one that is merely short: narrow at the hem it is an ankle length
  seen('legLength', 'ankle', LONG_LEGS, 0.5, (figures) => isIn(leg(figures), 0.8, 0.91) && !(figures.of('legOpening') > 400)),

  seen('silhouette', 'circle', ['skirt'], 0.7, (figures) => figures.of('sweep') >= 2.5 * figures.of('hip')),
  seen('silhouette', 'gathered', ['skirt'], 0.6, (figures) => figures.of('hip') > 1.5 * figures.of('waist')),
  seen('silhouette', 'flared', ['skirt'], 0.6, (figures) => figures.of('sweep') > 1.6 * figures.of('hip')),
  seen('silhouette', 'a-line', ['skirt'], 0.6, (figures) => isIn(figures.of('sweep') / figures.of('hip'), 1.15, 1.6001)),
  larger('silhouette', 'fit-flare', ['dress'], 0.6, (figures) => figures.of('hip') > 1.3 * figures.body('hipGirth')),
  seen(
    'silhouette',
    'fit-flare',
    ['dress'],
    0.6,
    (figures) => figures.of('sweep') > 1.6 * figures.body('hipGirth') && figures.of('chest') - figures.of('waist') >= 90
  ),
  seen('silhouette', 'smock', ['dress'], 0.6, (figures) => figures.of('waist') > figures.of('chest') + 40),
  seen('silhouette', 'shift', ['dress'], 0.5, (figures) => figures.of('chest') - figures.of('waist') < 60),

  larger('closeness', 'oversized', SOFT_TOPS, 0.5, (figures) => ease(figures, 'chest', 'bustGirth') > 200),
  larger('closeness', 'oversized', ['jumper', 'knit-top'], 0.5, (figures) => ease(figures, 'chest', 'bustGirth') > 180),
  larger('closeness', 'relaxed', SOFT_TOPS, 0.4, (figures) => isIn(ease(figures, 'chest', 'bustGirth'), 130, 200)),
  seen('silhouette', 'swing', ['shirt', 'knit-top', 'coat'], 0.6, (figures) => figures.of('hem') - figures.of('chest') >= 150),
  // a bottom edge this much narrower than the chest is drawn in (CP)
  seen('hem', 'drawn-in', ['jacket', 'coat', 'jumper', 'knit-top'], 0.6, (figures) => figures.of('hem') < 0.9 * figures.of('chest')),
  seen('topLength', 'cropped', [...SOFT_TOPS, 'jacket'], 0.6, (figures) => figures.of('bodyLength') < figures.body('backWaistLength') + 90),

  larger('shoulder', 'drop', SOFT_TOPS, 0.5, (figures) => ease(figures, 'shoulderWidth', 'shoulderWidth') > 60),
  seen('sleeve', 'cap', SLEEVED, 0.8, (figures) => arm(figures) < 0.22),
  seen('sleeve', 'short', SLEEVED, 0.8, (figures) => isIn(arm(figures), 0.22, 0.5)),
  seen('sleeve', 'elbow', SLEEVED, 0.7, (figures) => isIn(arm(figures), 0.5, 0.65)),
  seen('sleeve', 'three-quarter', SLEEVED, 0.7, (figures) => isIn(arm(figures), 0.65, 0.82)),
  seen('sleeve', 'long', SLEEVED, 0.7, (figures) => arm(figures) >= 0.9)
]

const SEEN_BY_KIND = new Map<GarmentKind, SeenRow[]>(
  GARMENT_KINDS.map((kind) => [kind, SEEN_ROWS.filter(({ kinds }) => kinds.includes(kind))])
)

/** The cut on this body: what is told stays; what is not told and shows in the figures is seen; the rest stays assumed. */
export function cutOn(garment: Garment, body: WholeBody | undefined): CutRead {
  const figures: Figures = {
    of: (point) => {
      const taken = garment.points.get(point)
      return isTold(taken) ? taken.mm : Number.NaN
    },
    body: (measure) => body?.get(measure)?.mm ?? Number.NaN,
    drop: body === undefined ? Number.NaN : (bandDrop(garment, body)?.frontMm ?? Number.NaN)
  }
  const cut: CutRead = { ...garment.cut }
  for (const { facet, value, sureness, when, bySize } of SEEN_BY_KIND.get(garment.kind) ?? []) {
    const known = cut[facet]
    if (known !== undefined && known.from !== 'assumed') continue
    if (when(figures)) cut[facet] = { value, sureness, from: 'seen', ...(bySize ? { bySize } : {}) }
  }
  // short sleeves that were only said to be short: how short, the figure tells, or nobody asks
  if (garment.made.shortSleeves && !isCut(cut, 'sleeve', 'sleeveless', 'cap', 'short', 'elbow', 'three-quarter', 'bracelet'))
    cut.sleeve = { value: hasNo(arm(figures)) ? 'short' : (cut.sleeve?.value ?? 'short'), sureness: 0.9, from: 'told' }
  return cut
}
