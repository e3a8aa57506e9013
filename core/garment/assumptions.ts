/** What was taken for granted of make and cloth: only what could change a plan for this kind, each with how to look for it. */

import { SHAPE } from '../ids/kinds.ts'
import type { Saying } from '../words/reason.ts'
import type { Garment } from './garment-as-worn.ts'
import type { Made } from './garment-input.ts'

const MATTERS: Record<'legs' | 'skirt' | 'upper' | 'whole' | 'none', (keyof Made)[]> = {
  legs: [
    'backSeam',
    'outletMm',
    'seamAllowanceMm',
    'felledSeams',
    'hemDepthMm',
    'hemKind',
    'backPocketGapMm',
    'slantPockets',
    'overlapMm',
    'waistStretchedMm'
  ],
  skirt: ['backSeam', 'seamAllowanceMm', 'darts', 'hemDepthMm', 'lined', 'overlapMm', 'waistStretchedMm'],
  upper: ['lined', 'tailored', 'backSeam', 'seamAllowanceMm', 'felledSeams', 'hemDepthMm', 'workingCuffButtons', 'overlapMm'],
  whole: ['lined', 'backSeam', 'seamAllowanceMm', 'darts', 'hemDepthMm', 'waistStretchedMm'],
  none: []
}
const ONLY: Partial<Record<keyof Made, readonly string[]>> = {
  workingCuffButtons: ['jacket', 'coat'],
  backSeam: ['trousers', 'jeans', 'shorts', 'skirt', 'jacket', 'coat', 'dress']
}

export function assumptionsOf(garment: Garment): Saying[] {
  const parts = MATTERS[SHAPE[garment.kind]].filter(
    (part) => garment.assumed.includes(part) && (ONLY[part]?.includes(garment.kind) ?? true) && matters(garment, part)
  )
  const made = parts.map(
    (part): Saying => ({ code: `assumed.${part}.${wordFor(garment, part)}`, values: { part, mm: lengthOf(garment, part) } })
  )
  const cloth = garment.cloth.assumed.map(
    (part): Saying => ({
      code: `assumed.${part}`,
      values: { part, structure: garment.cloth.structure, percent: garment.cloth.stretchPercent }
    })
  )
  return [...made, ...cloth]
}

/** An elastic waist has no overlap, and only it is pulled out. */
const matters = ({ made }: Garment, part: keyof Made): boolean =>
  part === 'waistStretchedMm' ? made.waistStretchedMm > 0 : part !== 'overlapMm' || !made.elasticWaist

function wordFor(garment: Garment, part: keyof Made): string {
  const value = garment.made[part]
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (part === 'felledSeams') return 'some'
  if (part === 'hemKind') return String(value)
  return 'mm'
}

const lengthOf = (garment: Garment, part: keyof Made): number => {
  const value = garment.made[part]
  return typeof value === 'number' ? value : 0
}
