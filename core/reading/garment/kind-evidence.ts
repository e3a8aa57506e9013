/** What speaks for a kind of garment, each piece named and weighed in one table; the pieces add (logarithms of odds). */
import type { Candidate } from './nouns.ts'

export interface Evidence {
  for: Candidate
  weight: number
  because: Because
}
export type Because =
  /** the noun that heads the title; other nouns of it */
  | 'title'
  /** nouns of the text */
  | 'text'
  /** category and name in the page's data, words of its address */
  | 'page'
  /** how it is made: a fly, lapels, a hood with a zip */
  | 'construction'
  /** a style that names it: a sheath, bootcuts */
  | 'style'
  /** a facet of the cut that only some kinds have */
  | 'cut'
  /** of what it is made */
  | 'cloth'
  /** which points were measured, and which of them a kind has not */
  | 'points'
  /** how well the figures go together on a kind */
  | 'figures'
  /** what is commoner among kinds that nothing else parts */
  | 'usual'

/** How much speaks for each, in the order in which they were first spoken of. */
export interface KindSums {
  of: Candidate[]
  sums: number[]
}
/** Adds evidence to sums: a list of few is quicker searched than a map is made. */
export function addTo(to: KindSums, evidence: readonly Evidence[]): KindSums {
  const { of, sums } = to
  for (const one of evidence) {
    const place = of.indexOf(one.for)
    if (place >= 0) sums[place] = (sums[place] as number) + one.weight
    else {
      of.push(one.for)
      sums.push(one.weight)
    }
  }
  return to
}

/** All weights are from memory, set by trial on listings of our own. */
export const WEIGHT = {
  title: { head: 5, thing: 8, passingHead: 4, name: 2, beside: 2.5, other: 2, passing: 1, modifier: 0.5, later: 1.5, furtherOn: 0.5 },
  text: { opening: 0.7, head: 1, modifier: 0.2, part: 0.1, tag: 0.1, named: 0.4, thing: 0.5, fielded: 4 },
  page: { name: 0.4, category: 2.5, address: 1.5 },
  construction: 1,
  style: { title: 2.5, text: 1.5 },
  cut: { title: 0.6, text: 0.4 },
  cloth: { denim: 1.5, telling: 1.8 },
  points: { shape: 2, skirt: 1.6, whole: 1.2, upper: 1, bust: 4, missing: 2, further: 1, noBust: 1.2, bothHalves: 2, clear: 1 },
  usual: 0.5
} as const

/** Of what a text repeats, the second time counts less, and so on. */
export const REPEATED = [1, 0.7, 0.5, 0.35, 0.25, 0.2, 0.15] as const

/** No more than so much may all construction words say, all facets of the cut, all figures; jumpsuits and playsuits have one model for both. */
export const MOST = { construction: 3, cut: 1.6, missing: 5, figures: 3, ofJumpsuit: 1 } as const

/** Under this sum nobody could tell; and so much must the first lead the second by. */
export const LEAST = 1.2
export const LEAD = 0.3
/** What is named so clearly needs no lead. */
export const CLEAR = 3
