/** What a size label tells about measurements: little, so every figure comes with a wide standard deviation. Lengths mm, girths around. */

import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import { table } from '../../ids/table.ts'
import { INCH_MM, toMm } from '../../length.ts'
import { usualRoom } from '../../wearer/usual-room.ts'

export interface LabelMeasure {
  point: PointId
  mm: number
  sdMm: number
}

/** EN 13402-3 letter codes: chest of men, bust of women, cm from–to. */
const LETTER_CODES = table<{ men: [number, number]; women: [number, number] }>({
  XXS: { men: [70, 78], women: [66, 74] },
  XS: { men: [78, 86], women: [74, 82] },
  S: { men: [86, 94], women: [82, 90] },
  M: { men: [94, 102], women: [90, 98] },
  L: { men: [102, 110], women: [98, 107] },
  XL: { men: [110, 118], women: [107, 119] },
  XXL: { men: [118, 129], women: [119, 131] },
  '3XL': { men: [129, 141], women: [131, 143] }
})
/** Body sizes of US pattern catalogues, misses: bust, waist, hip in inches. */
const US_MISSES: Record<number, [number, number, number]> = {
  6: [30.5, 23, 32.5],
  8: [31.5, 24, 33.5],
  10: [32.5, 25, 34.5],
  12: [34, 26.5, 36],
  14: [36, 28, 38],
  16: [38, 30, 40],
  18: [40, 32, 42],
  20: [42, 34, 44]
}
/** Makers cut the waist about this much over the label's inches (makers' practice, from memory). */
const WAIST_OVER_LABEL_MM = 1.5 * INCH_MM
const WAIST_LABEL_SD = 25
const LEG_LABEL_SD = 20
/** A uniform coat of size 40 has a half breast of 22 in (US Army TM 10-8400-201-23, para 9-6): 4 in over the label. */
const COAT_OVER_LABEL_MM = 4 * INCH_MM
const SUIT_SD = 35
/** Ready-made sizes drift from the catalogues by more than a size (from memory). */
const US_DRIFT_SD = 60

const WAIST_LEG = /^w?\s?(\d{2})\s?(?:[x/-]|\s)?\s?l?\s?(\d{2})$/i
const WAIST = /^w\s?(\d{2})$/i
const US = /^us\s?(\d{1,2})$/i
const SUIT = /^(\d{2})\s?(?:r|s|l|xl|reg|long|short|t)$/i

/** The measures a label makes likely on this kind; empty where it tells nothing. */
export function labelEvidence(label: string, kind: GarmentKind): LabelMeasure[] {
  const text = label.trim()
  const shape = SHAPE[kind]
  if (shape === 'legs') {
    const pair = WAIST_LEG.exec(text)
    const waist = Number(pair?.[1] ?? WAIST.exec(text)?.[1] ?? Number.NaN)
    if (!(waist >= 22 && waist <= 60)) return []
    const found: LabelMeasure[] = [{ point: 'waist', mm: waist * INCH_MM + WAIST_OVER_LABEL_MM, sdMm: WAIST_LABEL_SD }]
    const leg = Number(pair?.[2])
    if (kind !== 'shorts' && leg >= 24 && leg <= 40) found.push({ point: 'inseam', mm: leg * INCH_MM, sdMm: LEG_LABEL_SD })
    return found
  }
  const ease = usualRoom('chest', kind)
  const code = LETTER_CODES[text.toUpperCase().replace(/^2XL$/, 'XXL')]
  if (code && ease) {
    // whose code it is isn't told: the span of both
    const low = toMm(Math.min(code.men[0], code.women[0]), 'cm')
    const high = toMm(Math.max(code.men[1], code.women[1]), 'cm')
    return [{ point: 'chest', mm: (low + high) / 2 + ease.mm, sdMm: Math.hypot((high - low) / Math.sqrt(12), ease.sd) }]
  }
  const suit = Number(SUIT.exec(text)?.[1] ?? Number.NaN)
  if (kind === 'jacket' && suit >= 30 && suit <= 60) return [{ point: 'chest', mm: suit * INCH_MM + COAT_OVER_LABEL_MM, sdMm: SUIT_SD }]
  const misses = US_MISSES[Number(US.exec(text)?.[1] ?? Number.NaN)]
  if (!misses) return []
  const [bust, waist, hip] = misses
  if (shape === 'skirt')
    return [
      { point: 'waist', mm: waist * INCH_MM + 25, sdMm: US_DRIFT_SD },
      { point: 'hip', mm: hip * INCH_MM + 50, sdMm: US_DRIFT_SD }
    ]
  return ease ? [{ point: 'chest', mm: bust * INCH_MM + ease.mm, sdMm: Math.hypot(US_DRIFT_SD, ease.sd) }] : []
}
