/** The second of two figures of one name: told in millimetres as the first is, and never a measure. */
import { type LengthUnit, toMm } from '../../length.ts'
import { statedOf } from '../quantities/stated.ts'
import type { MeasureReading, SecondReading } from '../reading.ts'
import type { TextRead } from '../text/text.ts'
import type { Qualifier } from './context.ts'
import type { Figure } from './figures.ts'

/** In which state it was taken, the most telling first. */
const STATES: Qualifier[] = ['stretched', 'relaxed', 'cuffed', 'uncuffed', 'opened', 'closed', 'front', 'back', 'inner', 'measured']

export function secondsOf(
  text: TextRead,
  seconds: readonly Figure[],
  measures: readonly MeasureReading[],
  common: LengthUnit | null
): SecondReading[] {
  return seconds.flatMap((one): SecondReading[] => {
    const first = measures.find(
      ({ point, of, size }) => point === one.point && (of === undefined || of === one.of) && (size === undefined || size === one.size)
    )
    const unit = one.quantity.unit ?? first?.stated.unit ?? common
    if (first === undefined || unit === null) return []
    const factor = first.basis === 'flat' && !one.evidence.includes('word-around') ? 2 : 1
    const how = STATES.find((state) => one.qualifiers.has(state)) ?? null
    return [{ point: one.point, mm: toMm(one.quantity.value, unit) * factor, how, stated: statedOf(text, one.quantity) }]
  })
}
