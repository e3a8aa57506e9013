/** What is wanted at each point, before the cloth's changes: from a body, from a favourite, or both (the favourite wins where it has the point). */
import { clothTaken } from '../garment/cloth.ts'
import { type CutRead, cutAs, isCut, knownCut } from '../garment/cut.ts'
import { type Garment, isTold } from '../garment/garment-as-worn.ts'
import { hasSleeves } from '../garment/sleeves.ts'
import { stretchOf } from '../garment/stretch.ts'
import type { Cut, Facet } from '../ids/cut.ts'
import { SHAPE } from '../ids/kinds.ts'
import { isGirth, POINTS, type PointId } from '../ids/points.ts'
import { isLength } from '../length.ts'
import type { CutWant } from './cut/cut-row.ts'
import { rowsOf } from './cut/cut-table.ts'
import { cutOn } from './cut/seen.ts'
import { afterTrying } from './diary.ts'
import { type CutWants, cutWants, skippedIn, wantsFromBody } from './from-body.ts'
import { boundsOf, settle } from './must-pass.ts'
import { toleranceAt } from './tolerance.ts'
import type { Target, Want } from './want.ts'
import type { Favourite, Tried, Wearer } from './wearer.ts'
import { type WholeBody, wholeBody } from './whole-body.ts'

/** The garment as it is on this wearer: its cut as told or seen on the body, and its cloth where the cut says what cloth it is of. */
export function seenOn(garment: Garment, body: WholeBody | undefined): Garment {
  const cut = cutOn(garment, body)
  const { cloth } = garment
  const stretch = stretchOf(garment.kind, cloth.structure, toldCloth(garment), knownCut(cut))
  return { ...garment, cut, cloth: { ...cloth, stretch, stretchPercent: stretch.percent } }
}

const toldCloth = ({ cloth }: Garment) => ({
  fibres: cloth.fibres,
  structure: cloth.structure,
  traits: [...cloth.traits],
  ...(cloth.stretch.from === 'told' ? { stretchPercent: cloth.stretchPercent } : {})
})

/** The wearer's whole body; nobody's: none. */
export const bodyOf = (wearer: Wearer | undefined): WholeBody | undefined =>
  wearer === undefined ? undefined : wholeBody(wearer.body, wearer.sizes)

/** The cut as it decides what this wearer wants: who asks for a close fit does not want what is meant to be loose to stay so. */
function cutFor({ cut }: Garment, wearer: Wearer | undefined): Cut {
  const known = knownCut(cut, wearer !== undefined && wearer.fit !== 'as-cut')
  if (wearer?.fit !== 'close' || !isCut(cut, 'closeness', 'relaxed', 'oversized')) return known
  const { closeness: _, ...rest } = known
  return rest
}

const SLEEVE_POINTS: readonly PointId[] = ['sleeveLength', 'sleeveUnderarm', 'sleeveFromCentreBack', 'bicep', 'cuff']
/** A dress need not have sleeves: with none told nobody has to ask how wide they are. */
function withoutSleeves(garment: Garment, wants: CutWants): CutWants {
  if (SHAPE[garment.kind] !== 'whole' || hasSleeves(garment)) return wants
  if (SLEEVE_POINTS.some((point) => isTold(garment.points.get(point)))) return wants
  return new Map([...wants, ...SLEEVE_POINTS.map((point): [PointId, readonly CutWant[]] => [point, ['skip']])])
}

/** `garment` as seenOn gives it, `body` as bodyOf gives it. */
export function targetFor(
  garment: Garment,
  wearer?: Wearer,
  favourite?: Favourite,
  tried: readonly Tried[] = [],
  body: WholeBody | undefined = bodyOf(wearer)
): Target {
  const cut = withoutSleeves(garment, cutWants(garment, cutFor(garment, wearer)))
  const skipped = skippedIn(cut)
  const wants = wearer === undefined || body === undefined ? new Map<PointId, Want>() : wantsFromBody(garment, wearer, body, cut)
  for (const [point, want] of fromFavourite(garment, favourite, skipped, wants)) wants.set(point, want)
  for (const point of new Set(tried.map((one) => one.point))) {
    const want = wants.get(point)
    const felt = tried.filter((one) => one.point === point)
    if (want !== undefined) wants.set(point, afterTrying(point, want, garment, felt))
  }
  if (body !== undefined) for (const [point, bound] of boundsOf(garment, body, skipped)) wants.set(point, settle(wants.get(point), bound))
  const ordered = new Map<PointId, Want>()
  for (const point of POINTS) {
    const want = wants.get(point)
    if (want !== undefined) ordered.set(point, want)
  }
  return ordered
}

/** How sure one's liking of a favourite's figure is, mm (sd). */
const LIKED_SD_MM = 4

function fromFavourite(
  garment: Garment,
  favourite: Favourite | undefined,
  skipped: ReadonlySet<PointId>,
  fromBody: ReadonlyMap<PointId, Want>
): [PointId, Want][] {
  if (favourite === undefined) return []
  const unlike = pointsCutOtherwise(garment, favourite)
  return favourite.measures.flatMap(({ point, mm: measured }): [PointId, Want][] => {
    if (!isLength(measured) || skipped.has(point)) return []
    const cloth = clothFactor(garment, favourite, point)
    // unlike cloth or unlike cut is not like for like: where the body tells, the body is asked
    if ((cloth !== 1 || unlike.has(point)) && fromBody.has(point)) return []
    if (unlike.has(point)) return []
    const mm = measured * cloth
    const { under, over } = toleranceAt(point, favourite.toleranceMm?.[point])
    const because = [{ code: 'target.favourite', values: { mm }, point }]
    return [[point, { least: mm - under, ideal: mm, most: mm + over, sdMm: LIKED_SD_MM, from: 'favourite', basedOn: [], because }]]
  })
}

/** Points that a facet judges which was told of both and differs: a wide leg beside a favourite skinny one. */
function pointsCutOtherwise(garment: Garment, favourite: Favourite): ReadonlySet<PointId> {
  const liked = favourite.cut ?? {}
  const known: CutRead = garment.cut
  const rows = rowsOf(knownCut(known), garment.kind).filter(({ facet }) => {
    const mine = known[facet as Facet]
    return liked[facet] !== undefined && mine?.from === 'told' && mine.value !== liked[facet]
  })
  return new Set(rows.flatMap(({ wants }) => Object.keys(wants) as PointId[]))
}

/** The same body in another cloth: wanted = favourite × (1 + ease of this cloth) / (1 + ease of its own). 1 where nothing tells them apart. */
function clothFactor(garment: Garment, favourite: Favourite, point: PointId): number {
  if (favourite.cloth === undefined || !isGirth(point)) return 1
  const own = clothTaken(garment.kind, favourite.cloth, knownCut(cutAs(garment.kind, favourite.cut)))
  if (own.stretch.id === garment.cloth.stretch.id || garment.cloth.stretch.from === 'assumed') return 1
  const [liked, here] = [own.stretch.close[point], garment.cloth.stretch.close[point]]
  return liked === undefined || here === undefined ? 1 : (1 + here[1] / 100) / (1 + liked[1] / 100)
}
