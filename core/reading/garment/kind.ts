/**
 * What kind of garment it is: one decision, in which every piece of evidence has its weight (kind-evidence.ts). Words come first (kind-words.ts),
 * then which points were measured and how large they are (kind-figures.ts).
 */
import type { Made } from '../../garment/garment-input.ts'
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import type { PointName } from '../languages/lexicon.ts'
import type { TextRead } from '../text/text.ts'
import { addTo, CLEAR, type Evidence, LEAD, LEAST, MOST, WEIGHT } from './kind-evidence.ts'
import { amountEvidence, halfEvidence, measuredEvidence, pointEvidence } from './kind-figures.ts'
import { type KindWords, kindWords, type PageWords } from './kind-words.ts'
import type { Told } from './likely-kinds.ts'
import type { Candidate } from './nouns.ts'
import { shapeOfPoints } from './points-by-kind.ts'

export interface KindRead {
  kind: GarmentKind | null
  /** 0..1 */
  sureness: number
  made: Partial<Made>
  /** A thing that is no garment: a bag, boots, cloth by the metre. */
  thing: boolean
  /** By how much it leads what comes second. */
  lead: number
  /** What spoke for and against it and others. */
  evidence: () => readonly Evidence[]
}

export interface KindGiven {
  title: TextRead | null
  text: TextRead
  page?: PageWords
  language: string
  /** The kind, where it came with the text. */
  known: GarmentKind | undefined
}
const NO_PAGE: PageWords = { name: null, category: null, path: null }

/** What the words say, once for all decisions about a text. */
export const wordsOfKind = ({ title, text, page, language }: KindGiven): KindWords => kindWords(title, text, page ?? NO_PAGE, language)

/** The decision by words alone: which sizes a text may tell hangs on it. */
export const earlyKind = (words: KindWords, known: GarmentKind | undefined): KindRead => decide(words, [], known)

/** With the points that figures were found for. */
export const kindByPoints = (words: KindWords, names: readonly PointName[], known: GarmentKind | undefined): KindRead =>
  decide(words, pointEvidence(names), known)

/** With the points and how large they are. Figures of several garments tell nothing of the one for sale. */
export function kindByFigures(
  words: KindWords,
  names: readonly PointName[],
  { measures, told }: { measures: Told['measures']; told: () => Told },
  known: GarmentKind | undefined
): KindRead {
  const several = new Set(measures.map(({ of }) => of)).size > 1
  const measured = [...halfEvidence(names), ...(several ? [] : measuredEvidence(measures))]
  const byPoints = decide(words, measured, known)
  if (several || known !== undefined || measures.length === 0 || byPoints.lead >= SETTLED) return byPoints
  return decide(words, [...measured, ...amountEvidence(told())], known)
}
/** So far ahead that no amounts change the kind: what they can take from it and give another, and as much as leaves it sure. */
const SETTLED = MOST.figures + WEIGHT.points.clear + 1

/** What nothing else parts is the commoner: trousers before jeans, where no cloth is told. */
const USUAL: Evidence[] = [{ for: 'trousers', weight: WEIGHT.usual, because: 'usual' }]
/** Legs of denim are jeans, once something says that it has legs. */
const USUAL_IN_DENIM: Evidence[] = [...USUAL, { for: 'jeans', weight: WEIGHT.cloth.denim, because: 'cloth' }]
const LEGS = 0.9
const saidOfJeans = (told: readonly Evidence[]): number => told.reduce((sum, one) => sum + (one.for === 'jeans' ? one.weight : 0), 0)
/** No evidence makes one surer, where the title names it and where it does not. */
const SUREST = { title: 0.95, text: 0.8 }

/** The likeliest of all kinds, and of things that are no garment; null where nobody could tell. */
function decide(
  { evidence, sums: ofWords, made, denim }: KindWords,
  figures: readonly Evidence[],
  known: GarmentKind | undefined
): KindRead {
  const usual = denim && saidOfJeans(evidence.concat(figures)) >= LEGS ? USUAL_IN_DENIM : USUAL
  const all = (): readonly Evidence[] => evidence.concat(figures, usual)
  if (known !== undefined) return { kind: known, sureness: 1, made: {}, thing: false, lead: Number.POSITIVE_INFINITY, evidence: all }
  const { of, sums } = addTo(addTo({ of: [...ofWords.of], sums: [...ofWords.sums] }, figures), usual)
  // the first of those that have most, and what comes next
  let kind: Candidate | null = null
  let most = Number.NEGATIVE_INFINITY
  let next = 0
  for (let place = 0; place < of.length; place++) {
    const sum = sums[place] as number
    if (sum > most) {
      if (most > next) next = most
      kind = of[place] as Candidate
      most = sum
    } else if (sum > next) next = sum
  }
  const lead = kind === null ? 0 : most - next
  if (kind === null || most < LEAST || (lead < LEAD && most < CLEAR))
    return { kind: null, sureness: 0, made: {}, thing: false, lead, evidence: all }
  const titled = evidence.some((one) => one.for === kind && one.because === 'title')
  const sureness = Math.min(titled ? SUREST.title : SUREST.text, 1 / (1 + Math.exp(-lead)))
  if (kind === 'thing') return { kind: null, sureness, made: {}, thing: true, lead, evidence: all }
  return { kind, sureness, made: made.get(kind) ?? {}, thing: false, lead, evidence: all }
}

/** The kind for figuring when no word tells one: what its points look like. */
export const effectiveKind = (kind: GarmentKind | null, names: readonly PointName[]): GarmentKind | null => {
  if (kind !== null) return kind
  const shape = shapeOfPoints(names)
  return shape === 'legs' ? 'trousers' : shape === 'skirt' ? 'skirt' : shape === 'whole' ? 'dress' : shape === 'upper' ? 'knit-top' : null
}

/** Do figures mean the same on both kinds? */
export const isReadAlike = (a: GarmentKind | null, b: GarmentKind | null): boolean =>
  a === b || (a !== null && b !== null && SHAPE[a] === SHAPE[b] && a !== 'jumpsuit' && b !== 'jumpsuit' && a !== 'shorts' && b !== 'shorts')
