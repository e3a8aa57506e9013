/** Where a point of measure is taken on a garment that lies flat: the line that the tape follows, on a usual garment of the kind. Pure, mm. */
import type { GarmentKind } from '../../core/ids/kinds.ts'
import { POINTS_OF, type PointId } from '../../core/ids/points.ts'
import { type Line, part, type Spot, xAt } from '../../core/worksheet/outline/curve.ts'
import { legsFrame } from '../../core/worksheet/outline/legs-frame.ts'
import type { Measures, OutlineInput, View } from '../../core/worksheet/outline/outline-drawing.ts'
import { skirtFrame } from '../../core/worksheet/outline/skirt-outline.ts'
import { type UpperCut, upperFrame } from '../../core/worksheet/outline/upper-frame.ts'

/** What the drawing is given, so that it has whatever is measured on it: a sleeve where there may be one. */
export const drawnPoints = (kind: GarmentKind): Measures => ({
  ...(kind === 'shorts' ? { inseam: 220, legOpening: 600 } : {}),
  ...(kind === 'coat' ? { bodyLength: 1050 } : {}),
  ...((kind === 'dress' || kind === 'jumpsuit') && POINTS_OF[kind].includes('sleeveLength') ? { sleeveLength: 560 } : {})
})

const BACK: ReadonlySet<PointId> = new Set([
  'shoulderWidth',
  'backWidth',
  'napeToWaist',
  'backRise',
  'bodyLength',
  'sleeveFromCentreBack',
  'crotchLength'
])
/** The side of the garment on which a point is measured. */
export const viewFor = (point: PointId): View => (BACK.has(point) ? 'back' : 'front')

/** The line of the tape; null: the kind has no such point. */
export function measureLine(kind: GarmentKind, point: PointId): Line | null {
  const input: OutlineInput = { points: drawnPoints(kind), jobs: [], made: {} }
  const lines = linesOf(kind)
  return lines === null ? null : (lines(input)[point] ?? null)
}

type Lines = (input: OutlineInput) => Partial<Record<PointId, Line>>
const UPPER: Partial<Record<GarmentKind, UpperCut>> = {
  shirt: 'shirt',
  'knit-top': 'shirt',
  jumper: 'shirt',
  jacket: 'jacket',
  coat: 'jacket',
  waistcoat: 'sleeveless',
  dress: 'dress',
  jumpsuit: 'jumpsuit',
  other: 'shirt'
}
function linesOf(kind: GarmentKind): Lines | null {
  if (kind === 'trousers' || kind === 'jeans' || kind === 'shorts') return onLegs
  if (kind === 'skirt') return onSkirt
  const cut = UPPER[kind]
  return cut === undefined ? null : (input) => onUpper(input, cut)
}

const level = (y: number, from: number, to: number): Line => [
  { x: from, y },
  { x: to, y }
]
const upright = (x: number, from: number, to: number): Line => [
  { x, y: from },
  { x, y: to }
]

const BELOW_FORK = 12

function onLegs(input: OutlineInput): Partial<Record<PointId, Line>> {
  const { waistX, hipY, forkY, kneeY, hemY, outer, inner } = legsFrame(input)
  const leg = (y: number) => level(y, xAt(inner, y), xAt(outer, y))
  const calfY = forkY + (hemY - forkY) * 0.7
  return {
    waist: level(0, -waistX, waistX),
    hip: level(hipY, -xAt(outer, hipY), xAt(outer, hipY)),
    thigh: leg(forkY + BELOW_FORK),
    ...(kneeY === null ? {} : { knee: leg(kneeY), calf: leg(calfY) }),
    legOpening: leg(hemY),
    inseam: inner,
    outseam: outer,
    frontRise: upright(0, 0, forkY),
    backRise: upright(0, 0, forkY),
    crotchLength: upright(0, 0, forkY)
  }
}

function onSkirt(input: OutlineInput): Partial<Record<PointId, Line>> {
  const { waistX, hipY, hemY, side } = skirtFrame(input)
  return {
    waist: level(0, -waistX, waistX),
    hip: level(hipY, -xAt(side, hipY), xAt(side, hipY)),
    sweep: level(hemY, -xAt(side, hemY), xAt(side, hemY)),
    skirtLength: upright(0, 0, hemY)
  }
}

const HIP_BELOW = 200
/** The nape, a little below the top of the shoulder seams. */
const NAPE = 18

function onUpper(input: OutlineInput, cut: UpperCut): Partial<Record<PointId, Line>> {
  const frame = upperFrame(input, cut)
  const { neckX, shoulder, underarm, hemY, waistY, side, inner, armhole, along, across, sleeve, cuff, underside, levels } = frame
  const heightOf = (point: PointId) => levels.find((one) => one.point === point)?.y
  const body = (y: number) => level(y, -xAt(side, y), xAt(side, y))
  const onSleeve = (distance: number, aside: number): Spot => ({
    x: shoulder.x + along.x * distance + across.x * aside,
    y: shoulder.y + along.y * distance + across.y * aside
  })
  const middle = armhole[Math.floor(armhole.length / 2)] ?? shoulder
  const upperSleeve = underside[Math.floor(underside.length / 2)] ?? underarm
  const far = (upperSleeve.x - shoulder.x) * along.x + (upperSleeve.y - shoulder.y) * along.y
  const hipY = heightOf('hip') ?? (hemY > waistY + HIP_BELOW ? waistY + HIP_BELOW : undefined)
  const lines: Partial<Record<PointId, Line>> = {
    chest: body(underarm.y),
    underbust: body(underarm.y + (waistY - underarm.y) * 0.4),
    waist: body(waistY),
    shoulderWidth: level(shoulder.y, -shoulder.x, shoulder.x),
    backWidth: level(middle.y, -middle.x, middle.x),
    napeToWaist: upright(0, NAPE, waistY),
    neck: level(4, -neckX, neckX),
    armhole,
    strap: [
      { x: neckX, y: 0 },
      { x: neckX * 1.1, y: underarm.y * 0.6 }
    ],
    ...(hipY === undefined ? {} : { hip: body(hipY) })
  }
  if (sleeve > 0) {
    lines.sleeveLength = [shoulder, onSleeve(sleeve, 0)]
    lines.sleeveFromCentreBack = [{ x: 0, y: NAPE }, shoulder, onSleeve(sleeve, 0)]
    lines.sleeveUnderarm = underside
    lines.bicep = [onSleeve(far, 0), upperSleeve]
    lines.elbow = [onSleeve(sleeve * 0.55, 0), onSleeve(sleeve * 0.55, cuff * 0.66)]
    lines.cuff = [onSleeve(sleeve, 0), onSleeve(sleeve, cuff / 2)]
  }
  if (inner !== null) return { ...lines, ...onLegsBelow(side, inner, neckX) }
  const ends = heightOf('sweep') === undefined ? { hem: body(hemY) } : { sweep: body(hemY), skirtLength: upright(0, waistY, hemY) }
  return { ...lines, ...ends, bodyLength: upright(0, NAPE, hemY) }
}

/** The legs of a jumpsuit. */
function onLegsBelow(side: Line, inner: Line, neckX: number): Partial<Record<PointId, Line>> {
  const forkY = inner[0]?.y ?? 0
  const hemY = inner.at(-1)?.y ?? forkY
  const leg = (y: number) => level(y, xAt(inner, y), xAt(side, y))
  return {
    thigh: leg(forkY + BELOW_FORK),
    knee: leg(forkY + (hemY - forkY) * 0.46),
    legOpening: leg(hemY),
    inseam: inner,
    outseam: part(side, forkY - 200, hemY),
    torsoLength: [
      { x: neckX, y: 0 },
      { x: 0, y: forkY }
    ],
    crotchLength: upright(0, forkY - 220, forkY)
  }
}
