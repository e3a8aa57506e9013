/** The word for being past an edge. */
const LONG: ReadonlySet<string> = new Set([
  'inseam',
  'outseam',
  'sleeveLength',
  'sleeveFromCentreBack',
  'sleeveUnderarm',
  'bodyLength',
  'skirtLength',
  'frontRise',
  'backRise',
  'crotchLength',
  'napeToWaist',
  'torsoLength',
  'strap'
])
const WIDE: ReadonlySet<string> = new Set(['shoulderWidth', 'backWidth'])
/** The word for being past an edge: too big or small, long or short, wide or narrow. */
export function wayOf(mm: number, point: string): string {
  if (LONG.has(point)) return mm > 0 ? 'long' : 'short'
  if (WIDE.has(point)) return mm > 0 ? 'wide' : 'narrow'
  return mm > 0 ? 'big' : 'small'
}

/** What a seam does about it: taken in, let out, shortened, let down. */
export const mendOf = (mm: number, point: string): string => (LONG.has(point) ? (mm > 0 ? 'shorten' : 'lengthen') : mm > 0 ? 'in' : 'out')
