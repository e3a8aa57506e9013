/** The stage of links: which figure is of which name. What a figure of a model, a parcel or a label's size is near to is no name of it. */
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import type { PointName } from '../languages/lexicon.ts'
import type { Label } from '../names/label.ts'
import type { Quantity } from '../quantities/quantities.ts'
import type { AsideReason, Asked } from '../reading.ts'
import type { TextRead } from '../text/text.ts'
import { type Link, linksOf } from './assign.ts'
import { type Joint, jointOf } from './joint.ts'
import { sameThere } from './same-there.ts'
import { topPair } from './top-pair.ts'
import { isCollarHeight, isOfUnknown, withTrailingNames } from './trailing-names.ts'

export interface LinksGiven {
  labels: readonly Label[]
  quantities: readonly Quantity[]
  /** Figures about something else. */
  asides: ReadonlyMap<Quantity, AsideReason>
  /** A waist and an inside leg, told as a pair that was measured. */
  pairs: readonly [Quantity, Quantity][]
  /** (+2"): cloth to spare. */
  spare: ReadonlySet<Quantity>
  /** What the words speak of. */
  kind: GarmentKind | null
  asked: Asked | undefined
}
export interface LinksRead {
  /** Names and figures that are told in rows: bust/waist/hips 36/28/38. */
  joint: Joint
  /** Every figure with a name right beside it, those about something else too. */
  single: Link[]
  /** Those of the garment, in the order of the text. */
  ofGarment: Link[]
  /** The points that those name. */
  names: PointName[]
  /** The one figure of an answer that names nothing. */
  answer: Link | null
}

export function readLinks(text: TextRead, { labels, quantities, asides, pairs, spare, kind, asked }: LinksGiven): LinksRead {
  const own = quantities.filter((one) => !asides.has(one))
  const joint = jointOf({ labels, quantities: own, ...text })
  const top = topPair(text, own, labels, kind)
  // of a shirt or a dress a pair is no waist and no inside leg
  const legPairs = kind === null || SHAPE[kind] === 'legs' || SHAPE[kind] === 'none' ? pairs : []
  const paired = [...pairLinks(legPairs, 'waist', 'inseam'), ...(top ? pairLinks([top], 'chest', 'length') : [])]
  const linked = new Set([...joint.quantities, ...paired.map(({ quantity }) => quantity)])
  const open = quantities.filter((one) => asides.get(one) !== 'detail' && !spare.has(one) && !linked.has(one))
  const names = labels.filter((label) => !joint.labels.has(label))
  const single = withTrailingNames(text, linksOf(text, names, open), names).map((link) =>
    isOfUnknown(text, link) || isCollarHeight(text, link)
      ? { ...link, label: { ...link.label, role: 'detail' as const, points: [] } }
      : link
  )
  const named = [
    ...single.filter(({ quantity }) => !asides.has(quantity)),
    ...joint.shared.map(({ quantity, label }) => sureLink(quantity, label)),
    ...sameThere(text, names, single),
    ...paired
  ]
  const answer = named.length === 0 && asked !== undefined ? answerTo(asked, open) : null
  const ofGarment = (answer === null ? named : [answer]).sort((a, b) => a.quantity.from - b.quantity.from)
  return { joint, single, ofGarment, names: ofGarment.flatMap(({ label }) => label.points), answer }
}

/** “It’s 15.5 inches”: one figure and no name is of what was asked. */
function answerTo(asked: Asked, open: readonly Quantity[]): Link | null {
  const [one, another] = open.filter(({ problem }) => problem === null)
  if (one === undefined || another !== undefined) return null
  return sureLink(one, labelAt(one, asked === 'waistStretchedMm' ? 'waist' : asked))
}

/** A link that nothing was weighed for. */
const sureLink = (quantity: Quantity, label: Label): Link => ({ quantity, label, before: true, again: false, cost: 0 })
const labelAt = ({ from }: Quantity, name: PointName): Label => ({
  from,
  to: from,
  role: 'point',
  points: [name],
  basis: null,
  weak: false,
  letter: null
})

const pairLinks = (pairs: readonly (readonly [Quantity, Quantity])[], first: PointName, second: PointName): Link[] =>
  pairs.flatMap(([one, other]) => [sureLink(one, labelAt(one, first)), sureLink(other, labelAt(other, second))])
