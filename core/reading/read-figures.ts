/** The figures of a text: what each is of, or why it is nobody's. */
import { SHAPE } from '../ids/kinds.ts'
import type { LengthUnit } from '../length.ts'
import { gatherAllowances, isSpare } from './facts/allowances.ts'
import { pocketGap } from './facts/pocket-gap.ts'
import { isElastic, waistPulledOut } from './facts/pulled-out.ts'
import { actsAs, kindOf } from './garment/kind.ts'
import { garmentsOf, sizeOffered, sizesOf } from './garment/sections.ts'
import { issue } from './issues.ts'
import type { PointName } from './languages/lexicon.ts'
import { isOfAnother } from './links/another-piece.ts'
import { asidesOf } from './links/asides.ts'
import { gap } from './links/gap.ts'
import { jointOf } from './links/joint.ts'
import { leftAsideOf } from './links/left-aside.ts'
import { type Link, linksOf } from './links/link.ts'
import { sameThere } from './links/same-there.ts'
import { topPair } from './links/top-pair.ts'
import { isCollarHeight, isOfUnknown, withTrailingNames } from './links/trailing-names.ts'
import { listBasis, wordsOf } from './measures/context.ts'
import { figuresOf } from './measures/figures.ts'
import { measuresOf } from './measures/measures.ts'
import { commonest } from './measures/settle-unit.ts'
import { listUnit, toldUnits } from './measures/unit.ts'
import { labelsOf } from './names/labels.ts'
import { withoutRepeats } from './quantities/pairs.ts'
import { type Quantity, quantitiesOf } from './quantities/quantities.ts'
import { inColumns } from './quantities/unit-columns.ts'
import type { Asked, ListingText, Reading } from './reading.ts'
import { sizeLabelsOf } from './sizes/size-labels.ts'
import type { TextRead } from './text/text.ts'

/** Reads the figures of one text; `listing.text` is what its places are in. */
export function readFigures(text: TextRead, title: TextRead | null, listing: ListingText, language: string) {
  const words = listing.units ?? 'cm'
  const { tokens } = text
  const found = inColumns(text, quantitiesOf(text))
  const stated = (one: Quantity) => {
    const start = tokens[one.from]?.start ?? 0
    const end = tokens[one.to - 1]?.end ?? start
    return { text: listing.text.slice(start, end), start, end, value: one.value, unit: one.fromColumn ? null : one.unit }
  }
  const look = kindOf(title, text, [], 'en').kind
  // 32/34 is a size where the words speak of a garment with legs
  const legs = look !== null && SHAPE[look] === 'legs'
  const sizes = sizeLabelsOf({ ...text, quantities: found, legs, title: false, language })
  const quantities = withoutRepeats(
    text,
    found.filter((one) => !sizes.taken.has(one))
  )
  const labels = labelsOf(text, quantities)
  const asides = asidesOf(text, labels, quantities)
  const apart = pocketGap(text, quantities)
  if (apart) asides.set(apart.quantity, 'detail')
  const free = quantities.filter((one) => !asides.has(one))
  const joint = jointOf({ ...text, labels, quantities: free })
  const top = topPair(text, free, labels, look)
  const pairs = [...pairLinks(sizes.pairs, 'waist', 'inseam'), ...(top ? pairLinks([top], 'chest', 'length') : [])]
  const paired = new Set(pairs.map(({ quantity }) => quantity))
  const spare = quantities.filter((one) => isSpare(text, one))
  const open = quantities.filter(
    (one) => asides.get(one) !== 'detail' && !isSpare(text, one) && !joint.quantities.has(one) && !paired.has(one)
  )
  const names = labels.filter((label) => !joint.labels.has(label))
  const close = (quantity: Quantity, label: Parameters<typeof gap>[1]) => gap(text, label, quantity, false) < 0.7
  const links = withTrailingNames(text, linksOf(text, names, open), names, close).map((link) =>
    isOfUnknown(text, link) || isCollarHeight(text, link)
      ? { ...link, label: { ...link.label, role: 'detail' as const, points: [] } }
      : link
  )
  const shared = joint.shared.map(({ quantity, label }) => surely(quantity, label))
  const same = sameThere(text, names, links)
  const named = [...links.filter(({ quantity }) => !asides.has(quantity)), ...shared, ...same, ...pairs]
  const answer = named.length === 0 && listing.asked !== undefined ? loneAnswer(open, listing.asked) : null
  const ofGarment = (answer === null ? named : [answer]).sort((a, b) => a.quantity.from - b.quantity.from)

  const pointNames = ofGarment.flatMap(({ label }) => label.points)
  const kind = kindOf(title, text, pointNames, language, listing.kind)
  const acts = actsAs(kind.kind, pointNames)
  const garments = garmentsOf(text, acts)
  const measured = kind.thing ? [] : ofGarment.filter((link) => !isOfAnother(text, link, kind.kind))
  const { words: around, used } = wordsOf(text, measured)
  if (answer !== null && listing.asked === 'waistStretchedMm') around.get(answer)?.qualifiers.add('stretched')
  const rows = new Map(joint.shared.flatMap(({ quantity, size }) => (size === null ? [] : [[quantity, size] as const])))
  const sizeAt = sizesOf(sizes.heads)
  const linked = figuresOf(text, measured, around, garments.kindAt, (one) => rows.get(one) ?? sizeAt(one.from))
  const told = {
    units: toldUnits(text, quantities),
    basis: listBasis(text, (token) => used.has(token)),
    common: commonUnit(free),
    stated,
    words
  }
  const read = measuresOf(linked.figures, told)
  const allowed = gatherAllowances({
    ...text,
    links: measured,
    spare,
    main: acts,
    kindAt: (token) => garments.kindAt(token).kind,
    stated,
    unitOf: (link) => link.quantity.unit ?? listUnit(told.units, link.label, link.quantity)
  })

  const titleLabels = title ? sizeLabelsOf({ ...title, quantities: quantitiesOf(title), legs, title: true, language }).labels : []
  const sizesRead = new Set(read.measures.flatMap(({ size }) => (size === undefined ? [] : [size])))
  const offered = sizesRead.size > 1 ? sizeOffered(sizesRead, titleLabels) : null
  const mine = offered === null ? read.measures : read.measures.filter(({ size }) => size === undefined || size === offered)
  const starts = new Set([...mine, ...allowed.allowances].map((one) => one.stated.start))
  const dropped = new Set(offered === null ? [] : read.measures.filter((one) => !mine.includes(one)).map((one) => one.stated.start))
  const notOffered = offered === null ? [] : quantities.filter((one) => dropped.has(tokens[one.from]?.start ?? -1))
  const usedUp = new Set(quantities.filter((one) => starts.has(tokens[one.from]?.start ?? -1)))
  const measures = oneSize(oneGarment(mine))
  const pulledOut = waistPulledOut(linked.stretched, measures, told.common)
  const leftAside = leftAsideOf({
    text,
    quantities,
    sizes: new Set([...sizes.taken, ...joint.sizeFigures]),
    asides,
    links,
    others: [
      ...(pulledOut === null || pulledOut.quantity.range ? [] : [{ quantity: pulledOut.quantity, because: 'pulled-out' as const }]),
      ...linked.asides,
      ...read.asides,
      ...notOffered.map((quantity) => ({ quantity, because: 'detail' as const }))
    ],
    used: new Set([...usedUp, ...read.repeats]),
    thing: kind.thing,
    stated
  })
  const headed = measures.flatMap(({ size }) => (size === undefined ? [] : [size]))
  const sizesTold = [...sizes.labels, ...joint.sizes, ...headed].filter(
    (label) => offered === null || label === offered || !sizesRead.has(label)
  )
  const issues = [...read.issues]
  const kinds = new Set(measures.map(({ of }) => of))
  if (kinds.size > 1) issues.push(issue('reading.several-garments', { n: kinds.size, kind: kind.kind ?? 'other' }, {}, words))
  const sizesMeasured = new Set(measures.flatMap(({ size }) => (size === undefined ? [] : [size])))
  if (sizesMeasured.size > 1) issues.push(issue('reading.several-sizes', { sizes: [...sizesMeasured].join(', ') }, {}, words))
  nameless(listing.text, found, stated, measures.length > 0, leftAside, issues, words)
  const hemDepthMm = read.hemDepthMm ?? allowed.hemDepthMm
  return {
    kind,
    measures,
    made: {
      ...(hemDepthMm === null ? {} : { hemDepthMm }),
      ...(pulledOut === null ? {} : { waistStretchedMm: pulledOut.mm, ...(isElastic(acts) ? { elasticWaist: true } : {}) }),
      ...(allowed.outletMm === null ? {} : { outletMm: allowed.outletMm }),
      ...(apart === null ? {} : { backPocketGapMm: apart.mm }),
      ...(allowed.seamAllowanceMm === null ? {} : { seamAllowanceMm: allowed.seamAllowanceMm })
    },
    allowances: allowed.allowances,
    leftAside,
    issues,
    sizeLabels: sizesTold,
    titleLabels
  }
}

function commonUnit(quantities: readonly Quantity[]): LengthUnit | null {
  const counts = new Map<LengthUnit, number>()
  for (const { unit } of quantities) if (unit !== null) counts.set(unit, (counts.get(unit) ?? 0) + 1)
  return commonest(counts)
}

/** With one garment measured nothing needs to say of which. */
function oneGarment(measures: Reading['measures']): Reading['measures'] {
  if (new Set(measures.map(({ of }) => of)).size > 1) return measures
  return measures.map(({ of: _, ...rest }) => rest)
}

/** Headings of sizes count only where they part the same points. */
function oneSize(measures: Reading['measures']): Reading['measures'] {
  if (new Set(measures.map(({ size }) => size)).size > 1) return measures
  return measures.map(({ size: _, ...rest }) => rest)
}

/** “It’s 15.5 inches”: one figure and no name is of what was asked. */
function loneAnswer(open: readonly Quantity[], asked: Asked): Link | null {
  const [one, another] = open.filter(({ problem }) => problem === null)
  if (one === undefined || another !== undefined) return null
  return surely(one, labelAt(one, asked === 'waistStretchedMm' ? 'waist' : asked))
}

/** A link that nothing was weighed for. */
const surely = (quantity: Quantity, label: Link['label']): Link => ({ quantity, label, before: true, again: false, cost: 0 })
const labelAt = ({ from }: Quantity, name: PointName): Link['label'] => ({
  from,
  to: from,
  role: 'point',
  points: [name],
  basis: null,
  weak: false,
  letter: null
})

function pairLinks(pairs: readonly [Quantity, Quantity][], first: PointName, second: PointName): Link[] {
  return pairs.flatMap(([one, other]) =>
    (
      [
        [one, first],
        [other, second]
      ] as const
    ).map(([quantity, point]) => surely(quantity, labelAt(quantity, point)))
  )
}

const SHORT_TEXT = 40

/** A text that is little more than a figure: it needs a name. */
function nameless(
  text: string,
  found: readonly Quantity[],
  stated: (one: Quantity) => Reading['leftAside'][number]['stated'],
  measured: boolean,
  leftAside: Reading['leftAside'],
  issues: Reading['issues'],
  words: 'cm' | 'in'
): void {
  if (measured || issues.length > 0 || text.trim().length > SHORT_TEXT) return
  const one = found.find((quantity) => quantity.problem === null && !quantity.height)
  if (!one) return
  const its = stated(one)
  const known = leftAside.find(({ stated: other }) => other.start === its.start)
  if (known && known.because !== 'unknown') return
  if (!known && its.text.length < text.trim().length - 3) return
  if (!known) leftAside.push({ stated: its, because: 'unknown' })
  issues.push(issue('reading.no-name', { stated: its.text }, { stated: its }, words))
}
