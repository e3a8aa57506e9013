/** Figures become measures: unit, basis, millimetres; what cannot be settled becomes an issue and no measure. */
import type { Issue } from '../../garment/issue.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import { isGirth } from '../../ids/points.ts'
import { toMm } from '../../length.ts'
import { issue } from '../issues.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { statedOf } from '../quantities/stated.ts'
import type { MeasureReading } from '../reading.ts'
import { type BasisJudged, type Evidence, judgeBasis } from './basis.ts'
import { basisOfList } from './context.ts'
import type { Aside, Figure } from './figures.ts'
import { fits, type ListContext, type WithUnit, withUnits } from './settle-unit.ts'

export interface MeasuresRead {
  measures: MeasureReading[]
  asides: Aside[]
  issues: Issue[]
  /** Figures that only repeat a measure. */
  repeats: Quantity[]
  /** A hem told by its depth. */
  hemDepthMm: number | null
}

/** Bare figures far from their name are prose. */
const BARE_REACH = 1.05

/** `beside`: what is told of figures without being one, see BesideFigures. */
export function measuresOf(figures: readonly Figure[], list: ListContext, beside: BesideFigures = NOTHING_BESIDE): MeasuresRead {
  const read: MeasuresRead = { measures: [], asides: [], issues: [], repeats: [], hemDepthMm: null }
  const sound = figures.filter((one) => isSound(one, list, read))
  const settled = withUnits(sound, list, read)
  const worn = settled.filter((one) => isWorn(one, list, beside, read))
  const groups = new Map<string, WithUnit[]>()
  for (const one of worn) {
    const key = `${one.of ?? ''}/${one.size ?? ''}`
    const group = groups.get(key)
    if (group) group.push(one)
    else groups.set(key, [one])
  }
  for (const group of groups.values()) measureGroup(group, list, beside, read)
  return read
}

/** Broken numbers are told where they stand for a point; bare ones in prose are nobody's. */
function isSound(one: Figure, list: ListContext, read: MeasuresRead): boolean {
  const { problem } = one.quantity
  // “manche 61, sous le bras 46”: what says which it is stands between
  const reach = one.again && one.qualifiers.size > 0 ? BARE_REACH + 0.5 : BARE_REACH
  if (problem === null) return one.quantity.unit !== null || one.cost <= reach
  const stated = statedOf(list.text, one.quantity)
  read.issues.push(issue(`reading.${problem}`, { stated: stated.text, point: one.point }, { stated }, list.words))
  return false
}

/** Names whose small figures are depths and heights: a cuff of 2 inches, a waistband of 1.5. */
const DEPTHS = new Set([
  'hem',
  'bottomEdge',
  'cuffEdge',
  'cuff',
  'neck',
  'strap',
  'width',
  'sweep',
  'armhole',
  'waist',
  'legOpening',
  'bicep',
  'topEdge',
  'knee'
])
const DEPTH_MM = 115

/** Can it be worn at all? If not it is a depth, or an issue. */
function isWorn(one: WithUnit, list: ListContext, { main }: BesideFigures, read: MeasuresRead): boolean {
  const { point, quantity, name } = one
  const mm = toMm(quantity.value, one.unit)
  if (fits(one, one.unit)) return true
  if (mm < DEPTH_MM && (name === null || DEPTHS.has(name))) {
    const mine = one.of === null || one.of === main
    if (mine && (name === 'bottomEdge' || name === 'hem' || name === 'sweep')) read.hemDepthMm ??= mm
    read.asides.push({ quantity, because: 'detail' })
    return false
  }
  const stated = statedOf(list.text, quantity)
  const large = mm > 300
  read.asides.push({ quantity, because: 'unknown' })
  if (one.unitFrom === 'stated' || one.cost < 0)
    read.issues.push(issue(large ? 'reading.too-large' : 'reading.too-small', { stated: stated.text, point, mm }, { stated }, list.words))
  return false
}

function evidenceOf(one: WithUnit, list: ListContext): Evidence[] {
  const basis = basisOfList(list.basis, one.quantity.from, one.name)
  return basis === null ? one.evidence : [...one.evidence, basis === 'flat' ? 'list-flat' : 'list-around']
}

/** What is told beside figures: how far they give, and the bodies that they are meant for. */
export interface BesideFigures {
  stretchedOf: (one: Figure) => Quantity | null
  /** The figure of advice that stands right behind a figure in its line, where one does. */
  adviceOn: (one: Figure) => Quantity | null
  /** Of several pieces the one that the text is about: of the hem of another nothing is kept. */
  main?: GarmentKind | null
}
const NOTHING_BESIDE: BesideFigures = { stretchedOf: () => null, adviceOn: () => null }

function stretchedMm(one: WithUnit, { stretchedOf }: BesideFigures): { stretchedMm?: number } {
  const its = stretchedOf(one)
  const mm = its === null ? 0 : toMm(its.value, its.unit ?? one.unit)
  return mm > toMm(one.quantity.value, one.unit) ? { stretchedMm: mm } : {}
}

/** A body is a little less than its garment; in inches or in centimetres, as its size tells. */
function advisedAs(one: WithUnit, { adviceOn }: BesideFigures): Evidence[] {
  const advice = BODY_GIRTHS.has(one.point) ? adviceOn(one) : null
  if (advice === null) return []
  const unit = advice.unit ?? (advice.value > LARGEST_IN ? 'cm' : 'in')
  const ratio = toMm(advice.value, unit) / toMm(one.quantity.value, one.unit)
  return ratio > 0.8 && ratio < 1.1 ? ['advised-around'] : ratio > 1.6 && ratio < 2.2 ? ['advised-flat'] : []
}
const BODY_GIRTHS = new Set(['chest', 'waist', 'hip'])
const LARGEST_IN = 62

/** One garment, one size: girths judged together, the same point once. */
function measureGroup(group: readonly WithUnit[], list: ListContext, beside: BesideFigures, read: MeasuresRead): void {
  const girths = group.filter(({ point }) => isGirth(point))
  const kind: GarmentKind | null = group[0]?.kind ?? null
  const verdicts = judgeBasis(
    girths.map((one) => ({
      point: one.point,
      mm: toMm(one.quantity.value, one.unit),
      evidence: [...evidenceOf(one, list), ...advisedAs(one, beside)],
      ...stretchedMm(one, beside)
    })),
    kind
  )
  const judgedOf = new Map<WithUnit, BasisJudged>(girths.map((one, index) => [one, verdicts[index] as BasisJudged]))
  const byPoint = new Map<string, MeasureReading>()
  const frontOnly = group.filter((one) => isFrontLength(one) && group.some((other) => other.point === one.point && !isFrontLength(other)))
  for (const { quantity } of frontOnly) read.asides.push({ quantity, because: 'detail' })
  for (const one of group.filter((figure) => !frontOnly.includes(figure))) {
    const basis = judgedOf.get(one)
    const measure = measureOf(one, basis ?? null, list)
    const before = byPoint.get(one.point)
    if (before && (before.unitFrom === 'stated' || measure.unitFrom !== 'stated')) {
      repeat(before, measure, one, list, read)
      continue
    }
    // “32 waist (tag) … actual waist 33 inches”: a bare figure gives way to one with its unit
    if (before) read.measures.splice(read.measures.indexOf(before), 1)
    byPoint.set(one.point, measure)
    read.measures.push(measure)
    if (basis?.close) doubt(measure, list, read)
    disagreement(measure, one, list, read)
  }
}

/** A length down the front gives way to one down the back (nape to hem). */
const isFrontLength = ({ point, qualifiers }: WithUnit): boolean =>
  point === 'bodyLength' && qualifiers.has('front') && !qualifiers.has('back')

function measureOf(one: WithUnit, basis: BasisJudged | null, list: ListContext): MeasureReading {
  const factor = basis?.basis === 'flat' ? 2 : 1
  const mm = (value: number) => toMm(value, one.unit) * factor
  return {
    point: one.point,
    mm: mm(one.quantity.value),
    lowMm: mm(one.quantity.low),
    highMm: mm(one.quantity.high),
    basis: basis?.basis ?? 'length',
    basisFrom: basis?.from ?? 'stated',
    unitFrom: one.unitFrom,
    stated: statedOf(list.text, one.quantity),
    ...(one.of === null ? {} : { of: one.of }),
    ...(one.size === null ? {} : { size: one.size })
  }
}

/** Close enough to be the same figure said twice, rounded. */
const SAME_MM = 13

function repeat(before: MeasureReading, again: MeasureReading, one: WithUnit, list: ListContext, read: MeasuresRead): void {
  const { point } = before
  const girth = isGirth(point)
  const same = Math.abs(before.mm - again.mm) <= SAME_MM || (before.lowMm <= again.mm && again.mm <= before.highMm)
  const halved = girth && (Math.abs(before.mm - again.mm * 2) <= SAME_MM || Math.abs(before.mm * 2 - again.mm) <= SAME_MM)
  if (same || (halved && (before.basisFrom === 'judged' || again.basisFrom === 'judged'))) {
    read.repeats.push(one.quantity)
    return
  }
  read.asides.push({ quantity: one.quantity, because: 'unknown' })
  read.issues.push(
    issue(
      'reading.contradiction',
      { point, first: before.mm, second: again.mm },
      { stated: again.stated, readings: [before, again].map(({ mm }) => ({ point, mm })) },
      list.words
    )
  )
}

function doubt(measure: MeasureReading, list: ListContext, read: MeasuresRead): void {
  const { point, mm, stated, basis } = measure
  const other = basis === 'flat' ? mm / 2 : mm * 2
  read.issues.push(
    issue(
      'reading.basis-doubt',
      { stated: stated.text, point, basis, mm, other },
      { stated, readings: [mm, other].map((one) => ({ point, mm: one })) },
      list.words
    )
  )
}

function disagreement(measure: MeasureReading, one: WithUnit, list: ListContext, read: MeasuresRead): void {
  const other = one.quantity.disagrees
  if (!other?.unit) return
  const second = toMm(other.value, other.unit) * (measure.basis === 'flat' ? 2 : 1)
  read.asides.push({ quantity: other, because: 'unknown' })
  read.issues.push(
    issue(
      'reading.units-disagree',
      { stated: measure.stated.text, point: measure.point, first: measure.mm, second },
      { stated: measure.stated, readings: [measure.mm, second].map((mm) => ({ point: measure.point, mm })) },
      list.words
    )
  )
}
