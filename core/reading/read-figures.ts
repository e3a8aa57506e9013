/**
 * The figures of a text: what each is of, or why it is nobody's. Nothing but the sequence of stages; each is a function in the room of its
 * name, and what a stage gives is all that the next ones know of it. The kind is decided by words first, and settled by words and figures.
 *
 *   quantities → sizes → names → charts → asides → links → garments → measures → what is for sale → the make → what is left aside → issues
 */
import type { Made } from '../garment/garment-input.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import { readCharts, readCutFor, withoutCharts } from './chart/read-charts.ts'
import { spareIn } from './facts/allowances.ts'
import { type ClothSaid, clothOn } from './facts/cloth.ts'
import { pocketGap } from './facts/pocket-gap.ts'
import { readMake } from './facts/read-make.ts'
import { figureIssues } from './figure-issues.ts'
import { earlyKind, effectiveKind, isReadAlike, type KindRead, kindByFigures, kindByPoints, wordsOfKind } from './garment/kind.ts'
import type { PageWords } from './garment/kind-words.ts'
import type { Told } from './garment/likely-kinds.ts'
import { readGarments } from './garment/read-garments.ts'
import type { PointName } from './languages/lexicon.ts'
import { leftAsideOf } from './left-aside.ts'
import { asidesOf } from './links/asides.ts'
import { readLinks } from './links/read-links.ts'
import { forSale } from './measures/for-sale.ts'
import { readMeasures } from './measures/read-measures.ts'
import { labelsOf } from './names/labels.ts'
import { readQuantities } from './quantities/read-quantities.ts'
import type { ListingText, Reading } from './reading.ts'
import { readSizes } from './sizes/read-sizes.ts'
import type { TextRead } from './text/text.ts'

export interface FiguresRead
  extends Pick<Reading, 'measures' | 'seconds' | 'allowances' | 'leftAside' | 'issues' | 'sizeLabels' | 'sizeChart'> {
  kind: KindRead
  made: Partial<Made>
}

/** How the kind stands while figures are read: first by words, then by points, at last settled. */
interface KindSoFar {
  /** What the words speak of: 32/34 is a size where that has legs. */
  early: GarmentKind | null
  byPoints: (names: readonly PointName[]) => KindRead
}

/**
 * Reads the figures of one text and the sizes in its title. `given`: what came with the text; `language`: the one it is read in.
 * The kind is settled when the figures are known; where they mean something else on that kind, they are read again, once.
 */
export function readFigures(text: TextRead, title: TextRead | null, given: FiguresGiven): FiguresRead {
  const { listing, language, page } = given
  const { kind: known } = listing
  const words = wordsOfKind({ title, text, page, language, known })
  const first = figuresAs(text, title, given, {
    early: earlyKind(words, known).kind,
    byPoints: (names) => kindByPoints(words, names, known)
  })
  const { measures, made } = first
  // cloth and make are looked at only where amounts are asked
  const told = (): Told => {
    return { garment: { kind: null, sureness: 0 }, measures, cloth: clothOn(given.cloth(), null), made, whose: null }
  }
  const kind = kindByFigures(words, first.names, { measures, told }, known)
  const settled = kind.thing ? null : effectiveKind(kind.kind, first.names)
  if (kind.thing === first.kind.thing && isReadAlike(settled, first.readAs)) return { ...first, kind }
  return figuresAs(text, title, given, { early: kind.kind, byPoints: () => kind })
}

export interface FiguresGiven {
  listing: ListingText
  language: string
  /** What the page tells beside title and text. */
  page: PageWords
  /** What title and text say of the cloth. */
  cloth: () => ClothSaid
}
interface Pass extends FiguresRead {
  names: readonly PointName[]
  /** The kind that figures were judged by. */
  readAs: GarmentKind | null
}

function figuresAs(text: TextRead, title: TextRead | null, { listing, language }: FiguresGiven, { early, byPoints }: KindSoFar): Pass {
  const { asked, units: words = 'cm' } = listing
  const found = readQuantities(text)
  const named = readSizes(text, title, found, { kind: early, language })
  const names = labelsOf(text, named.lengths)
  const charts = readCharts(text, names, named)
  const { sizes, labels } = withoutCharts(named, names, charts)
  const quantities = sizes.lengths
  const pockets = pocketGap(text, quantities)
  const asides = asidesOf(text, labels, quantities, pockets?.quantity)
  const cutFor = readCutFor(text, labels, sizes, asides)
  const spare = spareIn(text, quantities)
  const links = readLinks(text, { labels, quantities, asides, pairs: sizes.pairs, spare, kind: early, asked })
  const garments = readGarments(text, byPoints(links.names), links.names)
  const { kind, thing } = garments.kindRead
  const measured = readMeasures(text, { sizes, asides, links, garments, asked, words })
  const sale = forSale(measured.measures, sizes, links.joint.sizes)
  const { measures } = sale
  const make = readMake(text, { measured, measures, garments, spare, pockets })
  const left = leftAsideOf(text, { sizes, charts, asides, links, measured, sale, make, thing })
  const { leftAside, issues } = figureIssues(text, { found, measures, issues: measured.issues, leftAside: left, kind, words })
  return {
    kind: garments.kindRead,
    names: links.names,
    readAs: garments.kind,
    measures,
    ...(measured.seconds.length > 0 ? { seconds: measured.seconds } : {}),
    made: make.made,
    allowances: make.allowances,
    leftAside,
    issues,
    sizeLabels: sale.sizeLabels,
    sizeChart: [...charts.rows, ...cutFor]
  }
}
