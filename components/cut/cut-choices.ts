/** What of a cut is asked on a page: the facets of a kind, and of each facet the values that such a garment can have. Pure. */
import { FACETS, type Facet } from '../../core/ids/cut.ts'
import { type GarmentKind, SHAPE } from '../../core/ids/kinds.ts'
import { CUT_ROWS, facetsOf } from '../../core/wearer/cut/cut-table.ts'

/** How garments of each shape close (common practice, no source). */
const CLOSINGS: Record<(typeof SHAPE)[GarmentKind], readonly string[]> = {
  legs: ['fly', 'side-zip', 'back-zip', 'buttons', 'hook', 'elastic', 'drawstring', 'buckles', 'ties', 'none'],
  skirt: ['side-zip', 'back-zip', 'front-zip', 'buttons', 'hook', 'elastic', 'drawstring', 'buckles', 'ties', 'wrap', 'none'],
  whole: ['side-zip', 'back-zip', 'front-zip', 'buttons', 'hook', 'elastic', 'drawstring', 'buckles', 'ties', 'wrap', 'snaps', 'none'],
  upper: ['back-zip', 'front-zip', 'buttons', 'hook', 'ties', 'wrap', 'snaps', 'none'],
  none: FACETS.closing
}
/** The plain value of a facet, which no row of the table need name. */
const PLAIN: Partial<Record<Facet, string>> = {
  rise: 'mid',
  topLength: 'regular',
  hem: 'straight',
  closeness: 'classic',
  shoulder: 'set-in',
  sleeve: 'long',
  pleats: 'none',
  growth: 'none'
}
/** Facets whose whole list is offered on every kind that has them. */
const WHOLE: readonly Facet[] = ['dressLength', 'turnUps', 'boning', 'layers']

/** The facets asked of a kind, in the order they are said; one that is known is there whatever the kind. */
export function facetsAsked(kind: GarmentKind, known: Partial<Record<Facet, unknown>> = {}): Facet[] {
  if (SHAPE[kind] === 'none') return []
  const own = facetsOf(kind)
  return (Object.keys(FACETS) as Facet[]).filter((facet) => own.includes(facet) || known[facet] !== undefined)
}

/** The values offered, in the order of the list; one that was read is there whatever the kind. */
export function valuesAsked(kind: GarmentKind, facet: Facet, read?: string): string[] {
  const offered = new Set<string>(offeredFor(kind, facet))
  if (read !== undefined) offered.add(read)
  return FACETS[facet].filter((value) => offered.has(value))
}

function offeredFor(kind: GarmentKind, facet: Facet): readonly string[] {
  if (WHOLE.includes(facet)) return FACETS[facet]
  if (facet === 'closing') return CLOSINGS[SHAPE[kind]]
  if (facet === 'vent') return SHAPE[kind] === 'upper' ? ['vent', 'none'] : FACETS.vent
  const judged = CUT_ROWS.filter((row) => row.facet === facet && row.kinds.includes(kind)).flatMap(({ values }) => values)
  const plain = PLAIN[facet]
  return plain === undefined ? judged : [...judged, plain]
}
