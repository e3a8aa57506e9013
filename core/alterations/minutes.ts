import type { SeamId } from '../ids/seams.ts'

/** What is opened first, and what stands against a job, in minutes. One table each; all from memory, settings. */
export const PREPARATIONS = { waistband: 15, sides: 15, hem: 8, lining: 20, armhole: 25, cuff: 12, seat: 10, inseam: 8 } as const
export type Preparation = keyof typeof PREPARATIONS

/** A check or a nap is matched at a seam: an edge that is turned, a button that is moved, a lining that is opened take no longer for it (common practice). */
export const UNMATCHED_SEAMS: ReadonlySet<SeamId> = new Set<SeamId>(['hem', 'cuff', 'front-edge', 'strap'])
const UNMATCHED_OPENINGS: ReadonlySet<string> = new Set<Preparation>(['hem', 'cuff', 'lining'])

/** What is opened, in minutes, on cloth whose matching slows the work by this factor. */
export const preparationsIn = (factor: number): Record<Preparation, number> =>
  Object.fromEntries(
    Object.entries(PREPARATIONS).map(([what, minutes]) => [what, UNMATCHED_OPENINGS.has(what) ? minutes : minutes * factor])
  ) as Record<Preparation, number>

/** Visible change, lost edges and risk, turned into minutes so that a plan can weigh them against work. */
export const PENALTIES = {
  /** gathers show at the back of a plain band */
  gathers: 30,
  /** gathers where there are gathers already */
  moreGathers: 10,
  /** darts sewn through band and yoke show */
  dartsInBand: 25,
  /** a back laced where a zip was */
  lacing: 90,
  /** an old buttonhole or button mark shows */
  oldMarks: 6,
  /** an old fold or fade line may show */
  fade: 20,
  /** a panel or gusset of other cloth shows */
  panel: 90,
  /** a gusset that is hidden between the legs */
  hiddenGusset: 20,
  /** a band or cuff added shows */
  band: 50,
  /** the original edge is lost */
  lostEdge: 20,
  /** a line of machine stitching where none was */
  machineLine: 25,
  /** it hangs otherwise: try on */
  drape: 15,
  /** one wrong cut ends it */
  recut: 60,
  /** the same at the rise, and it shows in the pockets and the fly */
  recutRise: 60,
  /** darts where none were */
  newDarts: 5
} as const
export type Penalty = keyof typeof PENALTIES

/** A flat-felled seam with its topstitching re-done. */
export const FELLED_MINUTES = 25
/** Burden of each mm past a soft limit, minutes. */
export const SOFT_MINUTES_PER_MM = 0.5
/** Neighbouring amounts along one seam differ by at most this, mm around. */
export const SMOOTH_MM = 60
/**
 * A rescue, never a refinement: it shows, and is only thought of where a point would stay wrong without it. Elastic where there is elastic,
 * a facing inside, a growth tuck are none (common practice).
 */
export const RESCUES: ReadonlySet<Penalty> = new Set<Penalty>(['gathers', 'panel', 'hiddenGusset', 'band', 'lacing', 'recutRise'])
/** Something set in that shows: never in lined, boned, leather or sheer garments (common practice). */
export const SET_IN: ReadonlySet<Penalty> = new Set<Penalty>(['gathers', 'panel', 'hiddenGusset', 'band'])
