/** From links to figures of points: which garment, which point, which words, or why it is left aside. */
import type { GarmentKind } from '../../ids/kinds.ts'
import { SHAPE } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import { type LengthUnit, toMm } from '../../length.ts'
import { pointOf } from '../garment/points-by-kind.ts'
import type { Garments } from '../garment/sections.ts'
import type { PointName } from '../languages/lexicon.ts'
import type { Link } from '../links/assign.ts'
import { isBottomBand } from '../links/bottom-band.ts'
import { isNear } from '../links/measured.ts'
import { BACK, DROP, pointOfBack, SHORTEST_DROP_IN } from '../names/back-name.ts'
import type { Label } from '../names/label.ts'
import { isWearable } from '../quantities/plausible.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { quantityInches, quantityMm, type Sized } from '../quantities/quantity-mm.ts'
import type { AsideReason } from '../reading.ts'
import { cue } from '../text/cues.ts'
import type { TextRead } from '../text/text.ts'
import type { Evidence } from './basis.ts'
import type { Qualifier, Words } from './context.ts'
import type { Source } from './sources.ts'

export interface Figure {
  quantity: Quantity
  label: Label
  point: PointId
  name: PointName | null
  kind: GarmentKind | null
  of: GarmentKind | null
  size: string | null
  evidence: Evidence[]
  qualifiers: ReadonlySet<Qualifier>
  again: boolean
  cost: number
  /** Who took it, where the text says so. */
  source?: Source | null
}
export type Aside = { quantity: Quantity; because: AsideReason }

/** “W 34" L 31"”: long trousers are hardly so short outside; beside a W such an L is the inside leg, as on their labels. Common practice, no source. */
const LONGEST_INSIDE_IN = 34.5

/** No hip is so small, flat or around. */
const SMALLEST_HIP_IN = 13

/** One-letter names, by the garment and by what the figure can be; `chested`: the chest has a name of its own. Common practice, no source. */
export function pointOfLetter(letter: string, kind: GarmentKind | null, inches: number, chested = false): PointId | null {
  const legs = kind !== null && SHAPE[kind] === 'legs'
  if (letter === BACK) return pointOfBack(kind, inches)
  if (letter === DROP) return kind === 'skirt' && inches > SHORTEST_DROP_IN ? 'skirtLength' : null
  switch (letter) {
    case 'w':
      return kind !== null && SHAPE[kind] === 'upper' && !chested ? 'chest' : 'waist'
    case 'h':
      // H of a leg's hem, and of the hem of what has no hips
      if (legs && inches < SMALLEST_HIP_IN) return 'legOpening'
      return kind !== null && SHAPE[kind] === 'upper' ? 'hem' : 'hip'
    case 'r':
      return 'frontRise'
    case 'i':
    case 'il':
      return 'inseam'
    case 'l':
      return (kind === 'trousers' || kind === 'jeans') && inches <= LONGEST_INSIDE_IN ? 'inseam' : pointOf('length', kind)
    case 'ol':
      return pointOf('outseam', kind)
    case 't':
      return 'thigh'
    case 'k':
      return 'knee'
    case 'lo':
      return 'legOpening'
    case 'b':
      return legs ? 'legOpening' : kind === 'skirt' ? 'waist' : 'chest'
    case 'c':
      return legs ? null : 'chest'
    case 'sl':
      return 'sleeveLength'
    case 'sh':
      return 'shoulderWidth'
    case 's':
      return legs ? null : inches >= 21.5 || inches < 11 ? 'sleeveLength' : 'shoulderWidth'
    default:
      return null
  }
}

/** The point a name means here, its words taken into account (rise at the back, sleeve underarm). */
export function resolve(name: PointName, kind: GarmentKind | null, qualifiers: ReadonlySet<Qualifier>): PointId | null {
  if (name === 'rise' && qualifiers.has('back')) return 'backRise'
  if (name === 'frontRise' && qualifiers.has('back') && !qualifiers.has('front')) return 'backRise'
  if (name === 'sleeveLength' && qualifiers.has('inner')) return 'sleeveUnderarm'
  return pointOf(name, kind)
}

/** No upper sleeve and no leg of trousers lies wider (finished tables: sleeves to 464 around, widened). */
const WIDEST_SLEEVE_MM = 280
const WIDEST_LEG_MM = 420

/** “arm 7" across”, “leg 13" across”: not how long it is. */
function acrossOf(name: PointName, quantity: Sized, kind: GarmentKind | null, around: boolean): PointId | null {
  const flat = quantityMm(quantity) / (around ? 2 : 1)
  const legs = kind !== null && SHAPE[kind] === 'legs'
  if (name === 'sleeveLength' && !legs && flat <= WIDEST_SLEEVE_MM) return 'bicep'
  return (name === 'inseam' || name === 'legLength') && legs && flat <= WIDEST_LEG_MM ? 'legOpening' : null
}

/** No arm is longer from the shoulder (ANSUR II: sleeve outseam of men at most 709 mm); a longer sleeve was taken from the centre back. */
const LONGEST_SLEEVE_MM = 780

/** An inner sleeve is shorter than nearly any trouser leg (ANSUR II: sleeve inseam of men at most 570 mm). */
const LONGEST_INNER_SLEEVE_MM = 570

/** Long trousers have no shorter inside leg (common practice, no source). */
const SHORTEST_LEG_MM = 340

/** Names that the size of the figure settles: a very long sleeve, an inseam on a garment with sleeves. */
function bySize(point: PointId | null, quantity: Sized, kind: GarmentKind | null, weak: boolean): PointId | null {
  const mm = quantityMm(quantity)
  // “leg 9"” on long trousers is how wide it ends
  if (point === 'inseam' && weak && (kind === 'trousers' || kind === 'jeans') && mm < SHORTEST_LEG_MM) return 'legOpening'
  if (point === 'sleeveLength' && mm > LONGEST_SLEEVE_MM) return 'sleeveFromCentreBack'
  if (point === 'inseam' && kind !== null && SHAPE[kind] === 'upper' && mm < LONGEST_INNER_SLEEVE_MM) return 'sleeveUnderarm'
  return point
}

/** How much wider than the shoulders a back is at most (common practice, no source). */
const WIDER_BACK = 1.12

/** “Back 20"” beside shoulders of 15 3/4 is how long the back is. */
const bySides = (point: PointId | null, back: Sized, shoulders: Sized | null): PointId | null =>
  point === 'backWidth' && shoulders && ratioOf(back, shoulders) > WIDER_BACK ? 'bodyLength' : point
/** Two bare figures of one list are in one unit, whichever it is. */
const ratioOf = (a: Sized, b: Sized): number => (a.unit === b.unit ? a.value / b.value : quantityMm(a) / quantityMm(b))

const OPENING = cue('opening')

export interface LinkedFigures {
  figures: Figure[]
  /** Pulled out as far as it goes. */
  stretched: Figure[]
  /** The other figure of a name that has two: stretched, cuffed, laid open, with the collar. */
  seconds: Figure[]
  asides: Aside[]
}

export interface FiguresGiven {
  links: readonly Link[]
  words: ReadonlyMap<Link, Words>
  /** The garment whose section a token lies in. */
  garmentAt: Garments['garmentAt']
  sizeOf: (quantity: Quantity) => string | null
  /** The unit that the text tells for a figure, beside it or for its list. */
  unitOf: (link: Link) => LengthUnit | null
  /** The seller's own tape, or a shop's words. */
  sourceOf?: (token: number) => Source | null
}

/** Every linked figure, or its reason to stand aside. */
export function figuresOf(text: TextRead, given: FiguresGiven): LinkedFigures {
  const { links, words, garmentAt, sizeOf } = given
  const figures: Figure[] = []
  const asides: Aside[] = []
  const beside = besideOf(given)
  for (const link of links) {
    const { label, quantity, again, cost } = link
    if (label.role !== 'point') continue
    const { evidence, qualifiers, across } = words.get(link) as Words
    const { kind, of } = garmentAt(quantity.from)
    const around = evidence.includes('word-around')
    const meant = { text, link, kind, qualifiers, acrossIs: across ? (around ? 'around' : 'flat') : null, beside } as const
    const names = label.letter && label.points.length === 0 ? [null] : label.points
    const seen = new Set<PointId>()
    for (const name of names) {
      const point = pointMeant(name, meant, given.unitOf(link))
      if (point === null || seen.has(point)) continue
      seen.add(point)
      const source = given.sourceOf?.(quantity.from) ?? null
      figures.push({ quantity, label, point, name, kind, of, size: sizeOf(quantity), evidence, qualifiers, again, cost, source })
    }
    if (seen.size === 0) asides.push({ quantity, because: 'detail' })
  }
  return relaxedFirst(text, ownFirst(figures, asides), asides)
}

/** What else is measured, as far as it tells what a name means. */
interface Beside {
  links: readonly Link[]
  shoulders: Sized | null
  /** The chest has a name of its own: a width is the waist. */
  chested: boolean
  /** A sleeve is measured: an opening of the arm is where it ends. */
  sleeved: boolean
}
function besideOf({ links, unitOf }: FiguresGiven): Beside {
  const shoulders = links.find(({ label: { points } }) => points[0] === 'shoulderWidth')
  return {
    links,
    shoulders: shoulders ? { value: shoulders.quantity.value, unit: unitOf(shoulders) } : null,
    chested: links.some(({ label: { letter, points } }) => letter === 'b' || letter === 'c' || points[0] === 'chest'),
    sleeved: links.some(({ label: { points } }) => points[0] === 'sleeveLength')
  }
}

interface Meant {
  text: TextRead
  link: Link
  kind: GarmentKind | null
  qualifiers: ReadonlySet<Qualifier>
  /** “arm 7" across”: told as a width, laid flat or all around. */
  acrossIs: 'flat' | 'around' | null
  beside: Beside
}

/** The point that a name or a letter means with this figure; null: none. In the unit of its list, unless nobody could wear it so. */
function pointMeant(name: PointName | null, meant: Meant, unit: LengthUnit | null): PointId | null {
  const { link, kind } = meant
  const { value, unit: own } = link.quantity
  const point = pointWith(name, meant, { value, unit })
  if (unit === null || unit === own || point === null || isWearable(toMm(value, unit), point, kind)) return point
  return pointWith(name, meant, { value, unit: own })
}

function pointWith(name: PointName | null, { text, link, kind, qualifiers, acrossIs, beside }: Meant, sized: Sized): PointId | null {
  const { label } = link
  if (name === null) {
    const point = label.letter === null ? null : pointOfLetter(label.letter, kind, quantityInches(sized), beside.chested)
    return bySize(bySides(point, sized, beside.shoulders), sized, kind, label.weak)
  }
  const named =
    (isBottomBand(text, label, kind, beside.links) ? 'hem' : null) ??
    (name === 'armhole' && beside.sleeved && OPENING.test(text.tokens[label.to - 1]?.text) ? pointOf('cuff', kind) : null) ??
    (acrossIs === null ? null : acrossOf(name, sized, kind, acrossIs === 'around')) ??
    resolve(name, kind, qualifiers)
  return bySize(named, sized, kind, label.weak)
}

/** Figures of one point, of one garment and size. */
const keyOf = ({ of, size, point }: Figure): string => `${of ?? ''} ${size ?? ''} ${point}`

/**
 * Of what the seller measured, a shop's figures count no more, nor any that were told before of the same point; of a garment that the
 * seller measured, nothing that the shop says.
 */
function ownFirst(figures: readonly Figure[], asides: Aside[]): Figure[] {
  const own = figures.filter(({ source }) => source === 'own')
  if (own.length === 0) return [...figures]
  const measured = new Map(own.map((one) => [keyOf(one), one]))
  const gives = (one: Figure): boolean => {
    if (one.source === 'shop') return true
    const better = one.source === 'own' ? undefined : measured.get(keyOf(one))
    return better !== undefined && better.label !== one.label && one.quantity.from < better.quantity.from
  }
  return figures.filter((one) => {
    if (!gives(one)) return true
    asides.push({ quantity: one.quantity, because: 'size-chart' })
    return false
  })
}

/** What a label or a name tells of a point that was measured too. */
const isToldOf = (told: Figure, measured: Figure): boolean =>
  told !== measured &&
  told.point === measured.point &&
  !told.qualifiers.has('measured') &&
  isNear(quantityMm(told.quantity), quantityMm(measured.quantity)) &&
  !isTwice(told.quantity, measured.quantity)

/** “15" flat, goes round 30"”: the same figure again, or whole and half. */
const isTwice = (a: Quantity, b: Quantity): boolean =>
  [0.5, 1, 2].some((times) => Math.abs(quantityMm(a) * times - quantityMm(b)) < (times === 1 ? 2 : 13))

/** “27in to 33in stretched”: the range ends where it is pulled to. */
const asItGoes = (one: Figure): Figure => (one.quantity.range ? { ...one, quantity: { ...one.quantity, value: one.quantity.high } } : one)
/** “Waist 32 to 50”: no range of one garment at rest is so wide; it is elastic, from where it lies to where it goes. */
const givesFar = ({ point, quantity }: Figure): boolean =>
  ELASTIC.has(point) && quantity.range && quantity.high > quantity.low * LARGEST_AT_REST
const ELASTIC = new Set<PointId>(['waist', 'cuff'])
const LARGEST_AT_REST = 1.4

/** And it begins where it lies. */
function asItLies(one: Figure): Figure {
  const { quantity, qualifiers } = one
  if (!quantity.range || !(qualifiers.has('stretched') || givesFar(one))) return one
  const relaxed = { ...quantity, value: quantity.low, high: quantity.low, range: false }
  return { ...one, quantity: relaxed, qualifiers: new Set([...qualifiers].filter((word) => word !== 'stretched')) }
}

/** Of two figures of one name the garment as it lies is kept: relaxed before stretched, let down before cuffed, the first before others. */
function relaxedFirst(text: TextRead, figures: readonly Figure[], asides: Aside[]): LinkedFigures {
  const kept: Figure[] = []
  const seconds: Figure[] = []
  const second = (one: Figure, because: AsideReason) => {
    asides.push({ quantity: one.quantity, because })
    seconds.push(one)
  }
  const stretched = figures.filter((one) => one.qualifiers.has('stretched') || givesFar(one)).map(asItGoes)
  const groups = new Map<Label, Figure[]>()
  for (const one of closedFirst(figures.map(asItLies), second)) {
    const group = groups.get(one.label)
    if (group) group.push(one)
    else groups.set(one.label, [one])
  }
  for (const group of groups.values()) {
    const joint = group.every(({ again }) => !again)
    const live = group.filter((one) => !one.qualifiers.has('stretched'))
    for (const one of group) if (one.qualifiers.has('stretched')) second(one, 'detail')
    const down = live.some((one) => one.qualifiers.has('uncuffed') && !isRemarked(text, one))
    const taken = live.find((one) => one.qualifiers.has('measured') && live.some((other) => isToldOf(other, one)))
    const seen = new Set<PointId>()
    for (const one of live) {
      if (down && one.qualifiers.has('cuffed') && !one.qualifiers.has('uncuffed')) second(one, 'detail')
      else if (taken && one !== taken && isToldOf(one, taken)) asides.push({ quantity: one.quantity, because: 'unknown' })
      else if (!joint && seen.has(one.point)) second(one, one.qualifiers.size > 0 ? 'detail' : 'unknown')
      else {
        kept.push(one)
        seen.add(one.point)
      }
    }
  }
  kept.sort((a, b) => a.quantity.from - b.quantity.from)
  return { figures: kept, stretched, seconds, asides }
}

/** “inside leg 70 as cuffed (78 uncuffed)”: what stands in brackets behind a figure is the second of two. */
const isRemarked = ({ tokens }: TextRead, { quantity, again }: Figure): boolean => {
  if (!again) return false
  for (let at = quantity.from - 1; at > quantity.from - 4 && tokens[at]?.text !== ')'; at--) if (tokens[at]?.text === '(') return true
  return false
}

/** A wrap or a front that is measured laid open too counts as it is worn. */
function closedFirst(figures: readonly Figure[], second: (one: Figure, because: AsideReason) => void): Figure[] {
  if (!figures.some(({ qualifiers }) => qualifiers.has('opened'))) return [...figures]
  const isOpen = ({ qualifiers }: Figure) => qualifiers.has('opened') && !qualifiers.has('closed')
  const worn = new Set(figures.filter((one) => !isOpen(one)).map(keyOf))
  return figures.filter((one) => {
    const opened = isOpen(one) && worn.has(keyOf(one))
    if (opened) second(one, 'detail')
    return !opened
  })
}
