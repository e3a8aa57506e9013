/**
 * The cut of one garment: each facet as it was told, else as it shows in the figures (core/wearer/cut/seen.ts), else as such a kind is
 * usually cut. What is only assumed is shown, and decides nothing.
 */
import { type Cut, FACET_IDS, type Facet, isFacetValue } from '../ids/cut.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { Made, Use } from './garment-input.ts'

export interface FacetRead {
  value: string
  /** 0..1 */
  sureness: number
  from: 'told' | 'seen' | 'assumed'
  /** Seen in how much larger it is than the body: to someone who wishes for a fit of their own that is too big, and no cut. */
  bySize?: boolean
}
export type CutRead = { [F in Facet]?: FacetRead }

/** What is told by construction says the cut too. */
const BY_MAKE: { part: keyof Made; is: Made[keyof Made]; facet: Facet; value: string; kinds: GarmentKind[] }[] = [
  {
    part: 'elasticWaist',
    is: true,
    facet: 'closing',
    value: 'elastic',
    kinds: ['trousers', 'jeans', 'shorts', 'skirt', 'dress', 'jumpsuit']
  },
  { part: 'skirtShape', is: 'straight', facet: 'silhouette', value: 'pencil', kinds: ['skirt'] },
  { part: 'skirtShape', is: 'flared', facet: 'silhouette', value: 'flared', kinds: ['skirt'] },
  { part: 'skirtShape', is: 'circle', facet: 'silhouette', value: 'circle', kinds: ['skirt'] },
  { part: 'skirtShape', is: 'pleated', facet: 'silhouette', value: 'pleated', kinds: ['skirt'] }
]

/** How such a kind is usually cut (common practice, no source). */
const ASSUMED: Partial<Record<GarmentKind, Cut>> = {
  trousers: { rise: 'mid', leg: 'straight', legLength: 'full', closing: 'fly' },
  jeans: { rise: 'mid', leg: 'straight', legLength: 'full', closing: 'fly' },
  shorts: { rise: 'mid', legLength: 'shorts', closing: 'fly' },
  skirt: { silhouette: 'pencil', closing: 'back-zip' },
  dress: { silhouette: 'sheath', closing: 'back-zip', shoulder: 'set-in' },
  jumpsuit: { legLength: 'full', shoulder: 'set-in' },
  shirt: { closeness: 'classic', shoulder: 'set-in', sleeve: 'long', closing: 'buttons' },
  'knit-top': { knit: 'tee', shoulder: 'set-in', closing: 'none' },
  jumper: { knit: 'standard', shoulder: 'set-in', sleeve: 'long', closing: 'none' },
  jacket: { layer: 'suit', shoulder: 'set-in', sleeve: 'long', closing: 'buttons' },
  coat: { layer: 'coat', shoulder: 'set-in', sleeve: 'long', closing: 'buttons' },
  waistcoat: { layer: 'suit-waistcoat', closing: 'buttons' }
}

/** Words of the cut as told, then what the make tells, then what the kind is usually. Values that are none of the facet's are left out. */
export function cutAs(kind: GarmentKind, told: Cut = {}, made: Partial<Made> = {}, use: Use = 'ordinary'): CutRead {
  const cut: CutRead = {}
  for (const facet of FACET_IDS) {
    const value = told[facet]
    if (value !== undefined && isFacetValue(facet, value)) cut[facet] = { value, sureness: 1, from: 'told' }
  }
  for (const { part, is, facet, value, kinds } of BY_MAKE)
    if (cut[facet] === undefined && made[part] === is && kinds.includes(kind)) cut[facet] = { value, sureness: 0.9, from: 'told' }
  if (use === 'child') cut.growth ??= { value: 'child', sureness: 0.9, from: 'told' }
  for (const [facet, value] of Object.entries(ASSUMED[kind] ?? {}) as [Facet, string][])
    cut[facet] ??= { value, sureness: 0.4, from: 'assumed' }
  return cut
}

/** The facets that are known (told or seen), as they decide what is wanted; for a wish of one's own without those seen by size alone. */
export function knownCut(cut: CutRead, hasWish = false): Cut {
  const known: Partial<Record<Facet, string>> = {}
  for (const facet of Object.keys(cut) as Facet[]) {
    const read = cut[facet]
    if (read !== undefined && read.from !== 'assumed' && !(hasWish && read.bySize)) known[facet] = read.value
  }
  return known as Cut
}

/** Is this facet known to be one of these values? */
export const isCut = (cut: CutRead, facet: Facet, ...values: string[]): boolean => {
  const read = cut[facet]
  return read !== undefined && read.from !== 'assumed' && values.includes(read.value)
}
