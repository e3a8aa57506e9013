/** Cloth that is there to be let down or out, kept apart from the measures. */
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import { isGirth, type PointId } from '../../ids/points.ts'
import { type LengthUnit, toMm } from '../../length.ts'
import { pointOf } from '../garment/points-by-kind.ts'
import type { Garments } from '../garment/sections.ts'
import type { Link } from '../links/assign.ts'
import { CURRENCY_MARKS } from '../quantities/not-a-length.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { statedOf } from '../quantities/stated.ts'
import type { Reading } from '../reading.ts'
import { cue } from '../text/cues.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import { girthAt, isHemDepth, isOffGirths, KEPT_MM, letsOutHem, placeBehind, saysBackSeam, saysHem, saysToLetOut } from './spare-cloth.ts'

export interface AllowancesRead {
  allowances: Reading['allowances']
  seamAllowanceMm: number | null
  hemDepthMm: number | null
  outletMm: number | null
}

/** (+2"): cloth to spare, of the name before it. */
export const spareIn = (text: TextRead, quantities: readonly Quantity[]): Set<Quantity> =>
  new Set(quantities.filter((one) => isSpare(text, one)))
const isSpare = (text: TextRead, one: Quantity): boolean =>
  text.tokens[one.from - 1]?.text === '+' && !one.range && one.problem === null && one.value < 12 && !isBehindPrice(text, one)

/** “12€ + 2,25”, “£16 + 3.40”: postage. */
function isBehindPrice({ tokens }: TextRead, { from, unit }: Quantity): boolean {
  if (unit !== null) return false
  for (let at = from - 2; at >= Math.max(0, from - 6); at--) {
    const token = tokens[at] as Token
    if (CURRENCY_MARKS.has(token.text) || MONEY.test(token.text)) return true
    if (token.kind !== 'digits' && !isOneOf(token, '.,')) return false
  }
  return false
}
const MONEY = cue('money')

interface Around extends TextRead {
  links: readonly Link[]
  /** (+2"), in order. */
  spare: readonly Quantity[]
  /** What the text is about: of the make of another garment in it nothing is kept. */
  main: GarmentKind | null
  garmentAt: Garments['garmentAt']
  unitOf: (link: Link) => LengthUnit | null
}

/** The point that an allowance is for: the name behind it, the name before it in its sentence, else what is let down or out on this kind. */
export function gatherAllowances(around: Around): AllowancesRead {
  const { layout, links, spare } = around
  const read: AllowancesRead = { allowances: [], seamAllowanceMm: null, hemDepthMm: null, outletMm: null }
  const lastNamed: Record<'along' | 'around', { point: PointId; sentence: number } | null> = { along: null, around: null }
  let next = 0
  let last: { point: PointId; unit: LengthUnit | null; line: number } | null = null
  const spareUntil = (token: number) => {
    for (; next < spare.length && (spare[next] as Quantity).from < token; next++) {
      const one = spare[next] as Quantity
      const unit = one.unit ?? last?.unit ?? null
      // with no unit anywhere, or with no name on its line, it is nobody's
      if (last !== null && unit !== null && layout.line[one.from] === last.line)
        read.allowances.push({ point: last.point, mm: toMm(one.value, unit), stated: statedOf(around, one) })
    }
  }
  for (const link of links) {
    const { label, quantity } = link
    const kind = around.garmentAt(quantity.from).kind
    const mine = kind === around.main
    spareUntil(quantity.from)
    const sentence = layout.sentence[quantity.from] as number
    if (label.role === 'point') {
      const point = label.points[0] === undefined ? null : pointOf(label.points[0], kind)
      if (point !== null) last = { point, unit: around.unitOf(link), line: layout.line[quantity.from] as number }
      if (point !== null) lastNamed[isGirth(point) ? 'around' : 'along'] = { point, sentence }
      continue
    }
    if (label.role === 'detail') {
      const unit = quantity.unit
      if (mine && unit !== null && isHemDepth(around, label) && toMm(quantity.value, unit) <= DEEPEST_HEM_MM)
        read.hemDepthMm ??= toMm(quantity.value, unit)
      continue
    }
    if (label.role !== 'letDown' && label.role !== 'letOut' && label.role !== 'seamAllowance') continue
    const unit = around.unitOf(link)
    if (unit === null) continue
    const mm = toMm(quantity.value, unit)
    if (label.role === 'seamAllowance') {
      if (mine && saysBackSeam(around, link)) read.outletMm ??= mm
      else read.seamAllowanceMm ??= mm
      continue
    }
    const place = label.role === 'letOut' ? placeBehind(around, link) : null
    if (isOffGirths(place)) continue
    const outOfHem = label.role === 'letOut' && letsOutHem(around, link, place)
    const role = outOfHem ? 'letDown' : label.role
    const named = lastNamed[role === 'letDown' ? 'along' : 'around']
    const inHem = role === 'letDown' && (outOfHem || saysHem(around, link))
    const point = girthAt(place) ?? (named?.sentence === sentence ? named.point : usual(role, kind, inHem))
    read.allowances.push({ point, mm, stated: statedOf(around, quantity) })
    // what can be let down from the hem is turned up there: at least so deep is the hem
    if (mine && (inHem || HEMMED.has(point)) && point !== 'sleeveLength') read.hemDepthMm ??= mm
    if (mine && role === 'letOut' && saysBackSeam(around, link)) read.outletMm ??= saysToLetOut(around, link) ? mm / 2 + KEPT_MM : mm
  }
  spareUntil(Number.POSITIVE_INFINITY)
  return read
}

/** These end in a hem alone: what they can be let down by is turned up in it. */
const HEMMED = new Set<PointId>(['inseam', 'outseam', 'skirtLength'])
/** A deeper fold is no hem. */
const DEEPEST_HEM_MM = 130

function usual(role: 'letDown' | 'letOut', kind: GarmentKind | null, inHem: boolean): PointId {
  const shape = kind === null ? 'none' : SHAPE[kind]
  if (role === 'letOut') return shape === 'upper' ? 'chest' : 'waist'
  if (shape === 'legs') return 'inseam'
  if (shape === 'skirt') return 'skirtLength'
  if (shape === 'whole') return 'bodyLength'
  return (kind === 'jacket' || kind === 'shirt') && !inHem ? 'sleeveLength' : 'bodyLength'
}
