/**
 * The figures of a text: what each is of, or why it is nobody's. Nothing but the sequence of stages; each is a function in the room of its
 * name, and what a stage gives is all that the next ones know of it.
 *
 *   quantities → sizes → names → charts → asides → links → garments → measures → what is for sale → the make → what is left aside → issues
 */
import type { Made } from '../garment/garment-input.ts'
import { readCharts, readCutFor, withoutCharts } from './chart/read-charts.ts'
import { spareIn } from './facts/allowances.ts'
import { pocketGap } from './facts/pocket-gap.ts'
import { readMake } from './facts/read-make.ts'
import { figureIssues } from './figure-issues.ts'
import { earlyKindOf, type KindRead } from './garment/kind.ts'
import { readGarments } from './garment/read-garments.ts'
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

/** Reads the figures of one text and the sizes in its title. `given`: what came with the text; `language`: the one it is read in. */
export function readFigures(text: TextRead, title: TextRead | null, given: ListingText, language: string): FiguresRead {
  const { asked, units: words = 'cm' } = given
  const earlyKind = earlyKindOf(title, text, language, given.kind)
  const found = readQuantities(text)
  const named = readSizes(text, title, found, { kind: earlyKind, language })
  const names = labelsOf(text, named.lengths)
  const charts = readCharts(text, names, named)
  const { sizes, labels } = withoutCharts(named, names, charts)
  const quantities = sizes.lengths
  const pockets = pocketGap(text, quantities)
  const asides = asidesOf(text, labels, quantities, pockets?.quantity)
  const cutFor = readCutFor(text, labels, sizes, asides)
  const spare = spareIn(text, quantities)
  const links = readLinks(text, { labels, quantities, asides, pairs: sizes.pairs, spare, kind: earlyKind, asked })
  const garments = readGarments(text, title, links.names, { language, known: given.kind })
  const { kind, thing } = garments.kindRead
  const measured = readMeasures(text, { sizes, asides, links, garments, asked, words })
  const sale = forSale(measured.measures, sizes, links.joint.sizes)
  const { measures } = sale
  const make = readMake(text, { measured, measures, garments, spare, pockets })
  const left = leftAsideOf(text, { sizes, charts, asides, links, measured, sale, make, thing })
  const { leftAside, issues } = figureIssues(text, { found, measures, issues: measured.issues, leftAside: left, kind, words })
  return {
    kind: garments.kindRead,
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
