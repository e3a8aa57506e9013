/** The stage of measures: what the words around each linked figure make of it, its point, its unit, flat or around, its millimetres. */
import type { LengthUnit, Units } from '../../length.ts'
import type { GarmentsRead } from '../garment/read-garments.ts'
import { ofThisPiece } from '../links/another-piece.ts'
import type { Link } from '../links/assign.ts'
import type { LinksRead } from '../links/read-links.ts'
import type { Quantity } from '../quantities/quantities.ts'
import type { AsideReason, Asked, SecondReading } from '../reading.ts'
import type { SizesRead } from '../sizes/read-sizes.ts'
import { sizeHeadedAt } from '../sizes/size-heads.ts'
import { nextFrom } from '../text/in-order.ts'
import { means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { listBasis, wordsOf } from './context.ts'
import { type Figure, figuresOf } from './figures.ts'
import { type MeasuresRead, measuresOf } from './measures.ts'
import { secondsOf } from './seconds.ts'
import { commonest, type ListContext } from './settle-unit.ts'
import { sourcesIn } from './sources.ts'
import { listUnit, toldUnits } from './unit.ts'

export interface MeasuresGiven {
  sizes: Pick<SizesRead, 'lengths' | 'heads'>
  asides: ReadonlyMap<Quantity, AsideReason>
  links: LinksRead
  garments: Pick<GarmentsRead, 'kindRead' | 'garmentAt'>
  asked: Asked | undefined
  /** Units for the sentences of issues. */
  words: Units
}
export interface FiguresMeasured extends MeasuresRead {
  /** Those of this garment: none where the text is about another thing. */
  links: Link[]
  /** Figures of an elastic waist pulled out as far as it goes. */
  stretched: Figure[]
  /** The second of two figures of one name. */
  seconds: SecondReading[]
  list: ListContext
}

export function readMeasures(text: TextRead, given: MeasuresGiven): FiguresMeasured {
  const { sizes, asides, garments, asked } = given
  const { ofGarment, answer } = given.links
  const links = garments.kindRead.thing ? [] : ofThisPiece(text, ofGarment, garments.kindRead.kind)
  const { words, used } = wordsOf(text, links)
  if (answer !== null && asked === 'waistStretchedMm') words.get(answer)?.qualifiers.add('stretched')
  const list: ListContext = {
    text,
    units: toldUnits(text, sizes.lengths),
    basis: listBasis(text, (token) => used.has(token)),
    common: commonUnit(sizes.lengths.filter((one) => !asides.has(one))) ?? text.trie.bareUnit,
    words: given.words
  }
  // the unit of a pocket or of a rib tells little of what bare figures mean
  const common = commonUnit(links.filter(({ label }) => label.role === 'point').map(({ quantity }) => quantity)) ?? text.trie.bareUnit
  const linked = figuresOf(text, {
    links,
    words,
    garmentAt: garments.garmentAt,
    sizeOf: sizeOfFigure(given),
    unitOf: ({ label, quantity }) => quantity.unit ?? listUnit(list.units, label, quantity) ?? common,
    sourceOf: sourcesIn(text)
  })
  const read = measuresOf(linked.figures, list, {
    stretchedOf: stretchedBy(linked.stretched),
    adviceOn: adviceBehind(text, asides),
    main: garments.kindRead.kind
  })
  const seconds = secondsOf(text, linked.seconds, read.measures, list.common)
  const { measures, issues, repeats, hemDepthMm } = read
  const left = [...linked.asides, ...read.asides]
  return { measures, asides: left, issues, repeats, hemDepthMm, links, stretched: linked.stretched, seconds, list }
}

/** The size that heads a figure's row in a table, or the lines it stands in. */
function sizeOfFigure({ links, sizes }: MeasuresGiven): (quantity: Quantity) => string | null {
  const rows = new Map(links.joint.shared.flatMap(({ quantity, size }) => (size === null ? [] : [[quantity, size] as const])))
  const headedAt = sizeHeadedAt(sizes.heads)
  return (one) => rows.get(one) ?? headedAt(one.from)
}

/** Of each name how far it gives. */
function stretchedBy(stretched: readonly Figure[]): (one: Figure) => Quantity | null {
  const by = new Map(stretched.map(({ label, quantity }) => [label, quantity]))
  return ({ label, quantity }) => {
    const its = by.get(label)
    return its === undefined || its.from === quantity.from ? null : its
  }
}

/** “Bust 35”, best on a 34”: advice right behind a figure, in its line and before any other name. */
function adviceBehind({ terms, layout }: TextRead, asides: MeasuresGiven['asides']): (one: Figure) => Quantity | null {
  const advised = [...asides]
    .flatMap(([one, because]) => (because === 'fits-advice' && one.problem === null ? [one] : []))
    .sort((a, b) => a.from - b.from)
  return ({ quantity }) => {
    const next = nextFrom(advised, quantity.spanTo)
    if (next === undefined || next.from - quantity.spanTo > NEAR || layout.line[next.from] !== layout.line[quantity.from]) return null
    for (let at = quantity.spanTo; at < next.from; at++) if (means(termAt(terms, at), 'point')) return null
    return next
  }
}
const NEAR = 8

function commonUnit(quantities: readonly Quantity[]): LengthUnit | null {
  const counts = new Map<LengthUnit, number>()
  for (const { unit } of quantities) if (unit !== null) counts.set(unit, (counts.get(unit) ?? 0) + 1)
  return commonest(counts)
}
