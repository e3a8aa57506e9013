/** What a maker’s chart says of the size for sale, for whoever reads the listing: body is to be set against body. */
import type { Saying } from '../../words/reason.ts'
import type { Correction, Reading } from '../reading.ts'
import { chartForSale } from './garment-from.ts'

export function chartNotes(reading: Pick<Reading, 'sizeChart' | 'sizeLabels'>, corrections: readonly Correction[]): Saying[] {
  return chartForSale(reading, corrections).map(({ size, body, lowMm: low, highMm: high }) => {
    const one = high - low < SAME_MM
    if (size === null) return { code: one ? 'reading.size-chart.nameless-one' : 'reading.size-chart.nameless', values: { body, low, high } }
    return { code: one ? 'reading.size-chart.one' : 'reading.size-chart', values: { size, body, low, high } }
  })
}
const SAME_MM = 1
