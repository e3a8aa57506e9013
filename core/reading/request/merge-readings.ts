/** A seller's answer beside the first reading: at each point the newer stated figure leads, the older is kept as superseded (second-look.ts). */
import type { MeasureReading, Reading } from '../reading.ts'

const key = ({ point, of, size }: MeasureReading): string => `${of ?? ''}/${size ?? ''}/${point}`

/** Places stay those of the text each figure was read in. An answer settles the doubts about the points it names. */
export function mergeReadings(first: Reading, later: Reading): Reading {
  const answered = new Set(later.measures.map(key))
  const points = new Set(later.measures.map(({ point }) => point))
  const isOpen = ({ readings }: Reading['issues'][number]) => readings.length === 0 || readings.some(({ point }) => !points.has(point))
  const either = <T>(newer: readonly T[], older: readonly T[]): T[] => (newer.length > 0 ? [...newer] : [...older])
  const both = <T>(older: readonly T[], newer: readonly T[]): T[] => [...new Set([...older, ...newer])]
  return {
    garment: first.garment.kind === null ? later.garment : first.garment,
    measures: [...first.measures.filter((one) => !answered.has(key(one))), ...later.measures],
    superseded: [...(first.superseded ?? []), ...(later.superseded ?? []), ...first.measures.filter((one) => answered.has(key(one)))],
    cloth: {
      fibres: either(later.cloth.fibres, first.cloth.fibres),
      traits: both(first.cloth.traits, later.cloth.traits),
      stretchPercent: later.cloth.stretchPercent ?? first.cloth.stretchPercent,
      structure: later.cloth.structure ?? first.cloth.structure,
      washed: later.cloth.washed ?? first.cloth.washed
    },
    made: { ...first.made, ...later.made },
    cut: { ...first.cut, ...later.cut },
    use: first.use ?? later.use,
    whose: first.whose ?? later.whose,
    language: first.language,
    colour: first.colour ?? later.colour,
    condition: later.condition ?? first.condition,
    mending: both(first.mending, later.mending),
    price: later.price ?? first.price,
    sizeLabels: both(first.sizeLabels, later.sizeLabels),
    sizeChart: [...first.sizeChart, ...later.sizeChart],
    faults: both(first.faults, later.faults),
    allowances: [...first.allowances, ...later.allowances],
    leftAside: [...first.leftAside, ...later.leftAside],
    issues: [...first.issues.filter(isOpen), ...later.issues]
  }
}
