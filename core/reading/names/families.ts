/** Names that can say the same thing, one more exactly than the other. */
import type { PointName } from '../languages/lexicon.ts'

const FAMILIES: PointName[][] = [
  ['length', 'bodyLength', 'skirtLength', 'outseam', 'legLength', 'inseam'],
  ['length', 'napeToWaist'],
  ['sleeveLength', 'sleeveUnderarm', 'sleeveFromCentreBack', 'length'],
  ['rise', 'frontRise', 'backRise', 'length'],
  ['chest', 'width'],
  ['waist', 'waistband', 'topEdge', 'width'],
  ['hip', 'width'],
  ['thigh', 'width', 'legLength', 'legWidth'],
  ['knee', 'width'],
  ['shoulderWidth', 'width'],
  // “across back (armhole to armhole)”
  ['backWidth', 'width', 'shoulderWidth', 'chest'],
  ['hem', 'bottomEdge', 'sweep', 'width', 'legOpening', 'cuffEdge'],
  ['cuff', 'cuffEdge', 'width'],
  ['bicep', 'width', 'armhole'],
  ['neck', 'width'],
  ['strap', 'length'],
  ['torsoLength', 'length']
]
/** Names that say little alone give way. */
export const GENERIC = new Set<PointName>([
  'length',
  'width',
  'topEdge',
  'waistband',
  'bottomEdge',
  'cuffEdge',
  'rise',
  'legLength',
  'sleeveLength'
])

const KIN = new Map<PointName, Set<PointName>>()
for (const family of FAMILIES) for (const one of family) KIN.set(one, new Set([...(KIN.get(one) ?? []), ...family]))

export const isFamily = (a: PointName, b: PointName): boolean => a === b || (KIN.get(a)?.has(b) ?? false)

/** The name of two that says more. */
export function moreExact(a: PointName, b: PointName): PointName {
  if (a === b) return a
  if (a === 'inseam' || b === 'inseam') return 'inseam'
  if (a === 'backWidth' && b === 'chest') return a
  // “back (shoulder to shoulder)”
  if (a === 'backWidth' && b === 'shoulderWidth') return b
  if (GENERIC.has(a) && !(GENERIC.has(b) && !GENERIC.has(a))) return GENERIC.has(b) ? (a === 'length' || a === 'width' ? b : a) : b
  return a
}
