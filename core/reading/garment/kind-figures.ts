/** What the measured points of a listing and their magnitudes say of its kind. */
import { GARMENT_KINDS, type GarmentKind, SHAPE, type Shape } from '../../ids/kinds.ts'
import { POINTS_OF, type PointId } from '../../ids/points.ts'
import type { PointName } from '../languages/lexicon.ts'
import { byKind } from './by-kind.ts'
import { type Evidence, MOST, WEIGHT } from './kind-evidence.ts'
import { evidenceOfKinds, type Told } from './likely-kinds.ts'
import { pointOf, pointOn, shapeOfPoints } from './points-by-kind.ts'

/** By which points figures were found for, before their amounts are known. */
export const pointEvidence = (names: readonly PointName[]): Evidence[] => [
  ...shapeEvidence(shapeOfPoints(names)),
  ...missingEvidence([...new Set(names)], LACK_NAME)
]

const hasPoint = (kind: GarmentKind, name: PointName): boolean => {
  const point = pointOf(name, kind)
  return point !== null && POINTS_OF[kind].includes(point)
}

/** Half the body that the points are of. */
export const halfEvidence = (names: readonly PointName[]): readonly Evidence[] => shapeEvidence(shapeOfPoints(names))

/** By the points that were measured; those of one garment only. */
export function measuredEvidence(measures: Told['measures']): Evidence[] {
  const points = [...new Set(measures.map(({ point }) => point))]
  return [
    ...withoutBust(measures),
    ...bothHalves(points),
    ...(points.length >= 2 ? [{ for: 'thing', weight: -WEIGHT.points.missing, because: 'points' } as const] : []),
    ...missingEvidence(points, LACK_POINT)
  ]
}

/** By their amounts, which takes the models of all kinds: no kind loses more by them than MOST.figures or gains more than WEIGHT.points.clear. */
export function amountEvidence(told: Told): Evidence[] {
  const points = new Set(told.measures.map(({ point }) => point))
  const likely = evidenceOfKinds({ ...told, measures: told.measures.filter((one) => !isShortSleeve(one)) })
  if (likely.size === 0) return []
  const most = Math.max(...likely.values())
  // figures that go together on no garment were misread or mistyped
  const trusted = most / points.size < NO_GARMENT ? HARDLY : TRUSTED
  const evidence = clearFigures(likely, most)
  for (const [kind, log] of likely) {
    const weight = Math.max(-(kind === 'jumpsuit' ? MOST.ofJumpsuit : MOST.figures), (log - most) * trusted)
    if (weight !== 0) evidence.push({ for: kind, weight, because: 'figures' })
  }
  return evidence
}

/** Any top may have short sleeves: how long they are says nothing of its kind. */
const isShortSleeve = ({ point, mm }: Told['measures'][number]): boolean => SLEEVES.includes(point) && mm < LONG_SLEEVE_MM
const SLEEVES: readonly PointId[] = ['sleeveLength', 'sleeveUnderarm']
/** From three quarters of an arm on (ANSUR II, arms 600). */
const LONG_SLEEVE_MM = 450
/** Figures hang together less well than their model thinks: makers differ, and sellers measure as they like (from memory). */
const TRUSTED = 0.5
const HARDLY = 0.15
/** So unlikely a figure is on the average, where none of the kinds suits them (an sd of 60 mm has −5 at its middle). */
const NO_GARMENT = -12

const OF_TOPS: readonly PointId[] = [
  'chest',
  'shoulderWidth',
  'sleeveLength',
  'sleeveFromCentreBack',
  'sleeveUnderarm',
  'underbust',
  'strap'
]
/** Who measures the waist and the length of a dress measures its bust too. */
function withoutBust(measures: Told['measures']): Evidence[] {
  const has = (points: readonly PointId[]) => measures.some(({ point }) => points.includes(point))
  if (measures.length < 2 || !has(['waist']) || has(OF_TOPS)) return []
  return GARMENT_KINDS.filter((kind) => SHAPE[kind] === 'upper' || kind === 'dress').map((kind) => ({
    for: kind,
    weight: -WEIGHT.points.noBust,
    because: 'points'
  }))
}

/** Figures that only one kind is likely to have tell it by themselves: a bust and a metre of length. */
function clearFigures(likely: ReadonlyMap<GarmentKind, number>, most: number): Evidence[] {
  let all = 0
  for (const log of likely.values()) all += Math.exp(log - most)
  const evidence: Evidence[] = []
  for (const [kind, log] of likely)
    if (Math.exp(log - most) / all >= CLEAR_SHARE) evidence.push({ for: kind, weight: WEIGHT.points.clear, because: 'figures' })
  return evidence
}
const CLEAR_SHARE = 0.8

/** A bust and an inside leg on one garment. */
const bothHalves = (points: readonly PointId[]): Evidence[] =>
  points.includes('chest') && points.includes('inseam') ? [{ for: 'jumpsuit', weight: WEIGHT.points.bothHalves, because: 'points' }] : []

/** What a kind has not cannot have been measured on it: a bust rules out a skirt. `lacking`: the kinds that have not a name, each by its place. */
function missingEvidence<Name extends PointName>(names: readonly Name[], lacking: (name: Name) => readonly boolean[]): Evidence[] {
  const { bust, missing: first, further } = WEIGHT.points
  const evidence: Evidence[] = []
  const lacked = names.map(lacking)
  const bustMissing = lacked[names.indexOf('chest' as Name)]
  for (let place = 0; place < GARMENT_KINDS.length; place++) {
    let count = 0
    for (let at = 0; at < lacked.length; at++) if (lacked[at]?.[place]) count++
    if (count === 0) continue
    const weight = (bustMissing?.[place] ? bust : first) + (count - 1) * further
    evidence.push({ for: GARMENT_KINDS[place] as GarmentKind, weight: -Math.min(MOST.missing, weight), because: 'points' })
  }
  return evidence
}

/** Kinds that have no point of this name, and kinds on which a measured point is none of theirs. */
const LACK_NAME = byKind<PointName>((name, kind) => !hasPoint(kind, name))
const LACK_POINT = byKind<PointId>((point, kind) => !POINTS_OF[kind].includes(pointOn(kind, point)))

/** Which kinds have what was measured as their own; dungarees have legs too, and a dress an upper half. */
const shapeEvidence = (shape: Shape | null): readonly Evidence[] => (shape === null ? [] : OF_SHAPE[shape])
const { shape: legs, skirt, whole, upper } = WEIGHT.points
const BY_SHAPE: Record<Shape, Partial<Record<Shape | 'jumpsuit', number>>> = {
  legs: { legs, jumpsuit: legs / 2 },
  skirt: { skirt },
  whole: { whole, jumpsuit: whole / 2 },
  upper: { upper, whole: upper / 2 },
  none: {}
}
const ofShape = (shape: Shape): Evidence[] =>
  GARMENT_KINDS.flatMap((kind): Evidence[] => {
    const weight = BY_SHAPE[shape][kind === 'jumpsuit' ? kind : SHAPE[kind]]
    return weight === undefined ? [] : [{ for: kind, weight, because: 'points' }]
  })
const OF_SHAPE: Record<Shape, readonly Evidence[]> = {
  legs: ofShape('legs'),
  skirt: ofShape('skirt'),
  whole: ofShape('whole'),
  upper: ofShape('upper'),
  none: ofShape('none')
}
