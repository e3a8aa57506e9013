/** The last stage: figures that look like measurements and are none, each with its reason; a figure is named once. */
import type { Stated } from '../garment/issue.ts'
import type { ChartsRead } from './chart/read-charts.ts'
import type { MakeRead } from './facts/read-make.ts'
import type { LinksRead } from './links/read-links.ts'
import type { ForSale } from './measures/for-sale.ts'
import type { FiguresMeasured } from './measures/read-measures.ts'
import type { Quantity } from './quantities/quantities.ts'
import { statedOf } from './quantities/stated.ts'
import type { AsideReason, Reading } from './reading.ts'
import type { SizesRead } from './sizes/read-sizes.ts'
import type { TextRead } from './text/text.ts'

/** What the stages before gave. */
export interface LeftAsideGiven {
  sizes: Pick<SizesRead, 'lengths' | 'taken'>
  charts: Pick<ChartsRead, 'quantities'>
  asides: ReadonlyMap<Quantity, AsideReason>
  links: Pick<LinksRead, 'joint' | 'single'>
  measured: Pick<FiguresMeasured, 'asides' | 'repeats'>
  sale: Pick<ForSale, 'measures' | 'notOffered'>
  make: Pick<MakeRead, 'allowances' | 'pulledOut'>
  /** The whole text is about a thing that is no garment. */
  thing: boolean
}

export function leftAsideOf(
  text: TextRead,
  { sizes, charts, asides, links, measured, sale, make, thing }: LeftAsideGiven
): Reading['leftAside'] {
  const quantities = sizes.lengths
  const at = (places: readonly { stated: Stated }[]): Quantity[] => {
    const starts = new Set(places.map(({ stated }) => stated.start))
    return quantities.filter((one) => starts.has(text.tokens[one.from]?.start ?? -1))
  }
  const used = new Set([...at([...sale.measures, ...make.allowances]), ...measured.repeats])
  const because = new Map<Quantity, AsideReason>()
  // what is said of a figure first counts
  const put = (quantity: Quantity, reason: AsideReason) => {
    if (!because.has(quantity)) because.set(quantity, reason)
  }
  for (const one of [...sizes.taken, ...links.joint.sizeFigures]) put(one, 'size-label')
  for (const one of charts.quantities) put(one, 'size-chart')
  if (make.pulledOut?.aside) put(make.pulledOut.aside, 'pulled-out')
  for (const { quantity, because: reason } of measured.asides) put(quantity, reason)
  for (const one of at(sale.notOffered)) put(one, 'detail')
  const linked = new Map(links.single.map((link) => [link.quantity, link]))
  for (const one of quantities) {
    if (used.has(one) || one.problem !== null) continue
    const scope = asides.get(one)
    const link = linked.get(one)
    if (scope === 'fits-advice' && link && (link.label.role === 'thing' || link.label.role === 'detail')) put(one, 'detail')
    else if (scope && (one.unit !== null || link || besideTimes(text, one))) put(one, scope)
    else if (scope) continue
    else if (thing && (one.unit !== null || link)) put(one, 'detail')
    else if (link && link.label.role !== 'point') {
      if (one.unit !== null || link.cost < 0.5) put(one, link.label.role === 'height' ? 'model' : 'detail')
    } else if (one.unit !== null) put(one, 'unknown')
  }
  for (const one of used) because.delete(one)
  return [...because]
    .map(([quantity, reason]) => ({ stated: statedOf(text, quantity), because: reason }))
    .sort((a, b) => a.stated.start - b.stated.start)
}

/** 30 x 20 x 10 cm: one unit for a row of figures. */
const besideTimes = ({ tokens }: TextRead, one: Quantity): boolean => tokens[one.to]?.text === 'x' || tokens[one.from - 1]?.text === 'x'
