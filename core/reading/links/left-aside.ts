/** Figures that look like measurements and are none, each with its reason; a figure is named once. */
import type { Stated } from '../../garment/issue.ts'
import type { Quantity } from '../quantities/quantities.ts'
import type { AsideReason, Reading } from '../reading.ts'
import type { TextRead } from '../text/text.ts'
import type { Link } from './link.ts'

interface All {
  text: TextRead
  quantities: readonly Quantity[]
  sizes: ReadonlySet<Quantity>
  asides: ReadonlyMap<Quantity, AsideReason>
  links: readonly Link[]
  /** Found on the way from figures to measures. */
  others: readonly { quantity: Quantity; because: AsideReason }[]
  /** Measures and allowances. */
  used: ReadonlySet<Quantity>
  /** The whole text is about a thing that is no garment. */
  thing: boolean
  stated: (quantity: Quantity) => Stated
}

export function leftAsideOf({ text, quantities, sizes, asides, links, others, used, thing, stated }: All): Reading['leftAside'] {
  const because = new Map<Quantity, AsideReason>()
  const put = (quantity: Quantity, reason: AsideReason) => {
    if (!because.has(quantity)) because.set(quantity, reason)
  }
  for (const one of sizes) put(one, 'size-label')
  for (const { quantity, because: reason } of others) if (!used.has(quantity) || quantity.disagrees === null) put(quantity, reason)
  const linked = new Map(links.map((link) => [link.quantity, link]))
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
    .map(([quantity, reason]) => ({ stated: stated(quantity), because: reason }))
    .sort((a, b) => a.stated.start - b.stated.start)
}

/** 30 x 20 x 10 cm: one unit for a row of figures. */
const besideTimes = ({ tokens }: TextRead, one: Quantity): boolean => tokens[one.to]?.text === 'x' || tokens[one.from - 1]?.text === 'x'
