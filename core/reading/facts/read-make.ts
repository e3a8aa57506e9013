/** The stage of the make: what the figures of a text tell of how the garment is made, and of its cloth to spare. */
import type { Made } from '../../garment/garment-input.ts'
import type { GarmentsRead } from '../garment/read-garments.ts'
import type { FiguresMeasured } from '../measures/read-measures.ts'
import { listUnit } from '../measures/unit.ts'
import type { Quantity } from '../quantities/quantities.ts'
import type { MeasureReading, Reading } from '../reading.ts'
import type { TextRead } from '../text/text.ts'
import { gatherAllowances } from './allowances.ts'
import type { PocketGap } from './pocket-gap.ts'
import { isElastic, type PulledOut, waistPulledOut } from './pulled-out.ts'

export interface MakeGiven {
  measured: Pick<FiguresMeasured, 'links' | 'list' | 'stretched' | 'hemDepthMm'>
  /** Those that are for sale. */
  measures: readonly MeasureReading[]
  garments: Pick<GarmentsRead, 'kind' | 'garmentAt'>
  /** (+2"), in order. */
  spare: ReadonlySet<Quantity>
  pockets: PocketGap | null
}
export interface MakeRead {
  made: Partial<Made>
  allowances: Reading['allowances']
  pulledOut: PulledOut | null
}

export function readMake(text: TextRead, { measured, measures, garments, spare, pockets }: MakeGiven): MakeRead {
  const { kind, garmentAt } = garments
  const { allowances, hemDepthMm, outletMm, seamAllowanceMm } = gatherAllowances({
    links: measured.links,
    spare: [...spare],
    main: kind,
    garmentAt,
    unitOf: ({ label, quantity }) => quantity.unit ?? listUnit(measured.list.units, label, quantity),
    ...text
  })
  const pulledOut = waistPulledOut(measured.stretched, measures, measured.list.common)
  // a hem told by its depth alone says more than one with so much to let down
  const hem = measured.hemDepthMm ?? hemDepthMm
  const made: Partial<Made> = {
    ...(hem === null ? {} : { hemDepthMm: hem }),
    ...(pulledOut === null ? {} : { waistStretchedMm: pulledOut.mm, ...(isElastic(kind) ? { elasticWaist: true } : {}) }),
    ...(outletMm === null ? {} : { outletMm }),
    ...(pockets === null ? {} : { backPocketGapMm: pockets.mm }),
    ...(seamAllowanceMm === null ? {} : { seamAllowanceMm })
  }
  return { made, allowances, pulledOut }
}
