/**
 * What cloth does to the work: how much harder, how much slower, and what is not done in it. One table; the most that any row says stands.
 * The cloth is that of the seam that is sewn: a trim, a collar or a lining of another cloth changes nothing.
 *
 * Sources: GILT a shop's manual on leather · PUTT a tailors' column on leather · MARTIN a leather jacket maker on alterations ·
 * DRESSNO9 a dressmaker on boned bodices · CP common practice, no source · MEM from memory. Minutes are MEM throughout.
 */
import type { AlterationId } from '../ids/alterations.ts'
import type { Structure, Trait } from './garment-input.ts'

/** What is looked at: the cloth, and of thick hides and boned bodices what the cut says. */
export interface WorkedCloth {
  structure: Structure
  traits: ReadonlySet<Trait>
  thick?: boolean
  boned?: boolean
  quilted?: boolean
}

interface ClothRow {
  id: string
  when(cloth: WorkedCloth): boolean
  level: 0 | 1 | 2
  /** Times the minutes of cotton. */
  minutes: number
  /** Only long seams take longer: an edge that is turned or a button that is moved has nothing to match. */
  atSeams?: true
  /** Not done in it, for the reason `limit.in-<id>`. */
  without?: readonly AlterationId[]
  source: string
}

const has =
  (...traits: Trait[]) =>
  (cloth: WorkedCloth): boolean =>
    traits.some((trait) => cloth.traits.has(trait))
/** Leather or suede. */
export const isHide = (cloth: Pick<WorkedCloth, 'structure' | 'traits'>): boolean =>
  cloth.structure === 'leather' || cloth.traits.has('suede')

/** Darts, gathers and what is set in: a hide neither shrinks in nor hides a hole. */
const NOT_IN_LEATHER: readonly AlterationId[] = [
  'waist-in-darts',
  'yoke-darts',
  'back-darts',
  'waist-in-elastic',
  'drawstring-add',
  'waist-out-panel',
  'thigh-panel',
  'side-panels',
  'leg-lengthen-band',
  'hem-widen',
  'rise-shorten',
  'rise-deepen',
  'shoulder-in',
  'sleeve-taper'
]
const ACROSS_PLEATS: readonly AlterationId[] = ['skirt-sides-in', 'skirt-shorten', 'sides-in', 'back-darts', 'centre-back-in']
const THROUGH_BONES: readonly AlterationId[] = ['sides-in', 'sides-out', 'centre-back-in', 'back-darts', 'release-darts']

export const CLOTH_WORK: readonly ClothRow[] = [
  {
    id: 'leather',
    when: isHide,
    level: 1,
    minutes: 1.8,
    without: NOT_IN_LEATHER,
    source: 'PUTT, GILT, MARTIN (holes stay, in only); darts and shoulders CP'
  },
  {
    id: 'thick-leather',
    when: (cloth) => isHide(cloth) && cloth.thick === true,
    level: 2,
    minutes: 2.5,
    source: 'CP: lined and quilted hides, bikers'
  },
  { id: 'coated', when: has('coated', 'vinyl'), level: 1, minutes: 1.4, source: 'CP: clips for pins, no iron' },
  { id: 'quilted', when: (cloth) => cloth.quilted === true, level: 1, minutes: 1.6, source: 'CP: the filling comes out of the seam first' },
  {
    id: 'beaded',
    when: has('beaded'),
    level: 2,
    minutes: 2,
    without: ['back-darts'],
    source: 'CP: beads come off 20 either side of a seam'
  },
  { id: 'slippery', when: has('sheer', 'slippery', 'silk'), level: 1, minutes: 1.4, source: 'CP' },
  { id: 'fraying', when: has('fraying'), level: 1, minutes: 1, source: 'CP' },
  {
    id: 'pleats',
    when: has('pleated'),
    level: 1,
    minutes: 1,
    without: ACROSS_PLEATS,
    source: 'CP: no seam across a pleat, heat-set edges are not turned'
  },
  {
    id: 'matched',
    when: has('pile', 'nap', 'check', 'stripe', 'large-print'),
    level: 0,
    minutes: 1.4,
    atSeams: true,
    source: 'CP: 30–50 % longer at seams that must match'
  },
  {
    id: 'bones',
    when: (cloth) => cloth.boned === true,
    level: 0,
    minutes: 1,
    without: THROUGH_BONES,
    source: 'DRESSNO9 (bones out and in again); CP'
  }
]

export interface ClothWork {
  level: number
  /** Times the minutes, at any seam and edge. */
  minutes: number
  /** Times the minutes, at long seams. */
  minutesAtSeams: number
  /** Why an alteration is not done in this cloth: the row's id. */
  without: ReadonlyMap<AlterationId, string>
}

const rowsFor = (cloth: WorkedCloth): ClothRow[] => CLOTH_WORK.filter((row) => row.when(cloth))
const most = (some: readonly ClothRow[]): number => some.reduce((times, { minutes }) => Math.max(times, minutes), 1)

/** Times the minutes, at long seams. */
export const minutesAtSeams = (cloth: WorkedCloth): number => most(rowsFor(cloth))

export function clothWork(cloth: WorkedCloth): ClothWork {
  const rows = rowsFor(cloth)
  return {
    level: rows.reduce((hardest, { level }) => Math.max(hardest, level), 0),
    minutes: most(rows.filter(({ atSeams }) => atSeams !== true)),
    minutesAtSeams: most(rows),
    without: new Map(rows.flatMap(({ id, without = [] }) => without.map((one) => [one, id] as const)))
  }
}
