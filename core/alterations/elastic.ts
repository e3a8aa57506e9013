/** Elastic and cords at the waist. MEM from memory, CP common practice, no source. */
import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { Trait } from '../garment/garment-input.ts'
import { WAISTED } from '../ids/kinds.ts'
import type { Saying } from '../words/reason.ts'
import { isPleated, isWrapped } from './as-cut.ts'
import { limit, type Row } from './row.ts'

const hasElastic = ({ made, cut }: Garment): boolean => made.elasticWaist || isCut(cut, 'closing', 'elastic')
/** Where elastic draws a waist in, its length makes the girth: seams and buttons do not (common practice). */
export const drawnIn = (garment: Garment): Saying | undefined => (hasElastic(garment) ? limit('elastic-band') : undefined)

/** Gathered there already, or pulled on: more gathers are no stranger (common practice). */
const isGathered = (garment: Garment): boolean =>
  hasElastic(garment) ||
  isCut(garment.cut, 'closing', 'drawstring') ||
  isCut(garment.cut, 'leg', 'jogger') ||
  isCut(garment.cut, 'silhouette', 'gathered', 'puffball', 'boiler')
const gathers = (garment: Garment): readonly ['moreGathers' | 'gathers'] => [isGathered(garment) ? 'moreGathers' : 'gathers']

const DRESSY: Trait[] = ['silk', 'taffeta', 'beaded', 'sheer', 'slippery']
/** Gathers spoil a pleat, a wrap, a tailored band and dressy cloth (common practice). */
const tooGoodForGathers = (garment: Garment): Saying | undefined => {
  if (isPleated(garment) || isWrapped(garment)) return limit('no-gathers-pleats')
  const { made, cloth } = garment
  return (made.tailored && !isGathered(garment)) || DRESSY.some((trait) => cloth.traits.has(trait)) ? limit('no-gathers-dressy') : undefined
}

export const elastic: Row[] = [
  {
    id: 'waist-in-elastic',
    direction: 'less',
    kinds: WAISTED,
    unless: (garment) => drawnIn(garment) ?? tooGoodForGathers(garment),
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: -1 },
        capMm: 0.1 * (garment.points.get('waist')?.mm ?? 0),
        because: limit('elastic'),
        seams: [{ seam: 'waistband', mmPerOffset: 1 }]
      }
    ],
    level: 1,
    minutes: [25, 0],
    penalties: gathers,
    source: 'CP: a tenth of the waist; a rescue but where there are gathers already'
  },
  {
    id: 'waist-elastic-shorten',
    direction: 'less',
    kinds: [...WAISTED, 'dress', 'jumpsuit'],
    unless: (garment) => (hasElastic(garment) ? undefined : limit('no-elastic')),
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: -1 },
        capMm: 0.2 * (garment.points.get('waist')?.mm ?? 0),
        because: limit('elastic-shorten'),
        seams: [{ seam: 'waistband', mmPerOffset: 1 }]
      }
    ],
    level: 2,
    minutes: [30, 0],
    source: 'CP: the casing opened for a hand’s breadth, the elastic cut and joined; a fifth of the waist MEM'
  },
  {
    id: 'drawstring-add',
    direction: 'less',
    kinds: ['trousers', 'shorts', 'skirt', 'jumpsuit'],
    // nor where there is a cord already; cords are a danger on children’s clothes (EN 14682)
    there: ({ use, cut }) => use !== 'child' && !isCut(cut, 'closing', 'drawstring'),
    unless: tooGoodForGathers,
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: -1 },
        capMm: 0.15 * (garment.points.get('waist')?.mm ?? 0),
        because: limit('drawstring'),
        seams: [{ seam: 'waistband', mmPerOffset: 1 }]
      }
    ],
    level: 2,
    minutes: [40, 0],
    penalties: gathers,
    excludes: ['waist-in-elastic', 'waist-elastic-shorten'],
    source: 'CP: casual clothes of grown people, to 15 in 100; EN 14682 (no cords for children)'
  }
]
