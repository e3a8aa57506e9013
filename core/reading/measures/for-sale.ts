/** Of the garments and sizes that a text measures: the figures of what is for sale. */
import type { MeasureReading } from '../reading.ts'
import type { SizesRead } from '../sizes/read-sizes.ts'

export interface ForSale {
  /** `of` and `size` stand only where they part the figures of several. */
  measures: MeasureReading[]
  /** Of the sizes that the title does not offer. */
  notOffered: MeasureReading[]
  /** What its label says, each once: by the title, then by the text. */
  sizeLabels: string[]
}

/** `tableSizes`: those that head the rows of a table. */
export function forSale(
  measured: readonly MeasureReading[],
  { labels, titleLabels }: Pick<SizesRead, 'labels' | 'titleLabels'>,
  tableSizes: readonly string[]
): ForSale {
  const sizes = new Set(measured.flatMap(({ size }) => (size === undefined ? [] : [size])))
  const offered = sizes.size > 1 ? sizeOffered(sizes, titleLabels) : null
  const isOffered = (size: string | undefined) => offered === null || size === undefined || size === offered
  const measures = sizeWhereSeveral(garmentWhereSeveral(measured.filter(({ size }) => isOffered(size))))
  const heads = measures.flatMap(({ size }) => (size === undefined ? [] : [size]))
  const others = [...labels, ...tableSizes, ...heads].filter((label) => isOffered(label) || !sizes.has(label))
  return {
    measures,
    notOffered: measured.filter(({ size }) => !isOffered(size)),
    sizeLabels: [...new Set([...titleLabels, ...others])]
  }
}

/** The one size that its title offers: null when the title names none of them, or several. */
function sizeOffered(measured: ReadonlySet<string>, titleLabels: readonly string[]): string | null {
  const named = [...measured].filter((size) =>
    titleLabels.some((label) => label === size || label.endsWith(` ${size}`) || size.startsWith(`${label} `))
  )
  return named.length === 1 ? (named[0] as string) : null
}

/** With one garment measured nothing needs to say of which. */
function garmentWhereSeveral(measures: MeasureReading[]): MeasureReading[] {
  if (measures.every((one) => !('of' in one)) || new Set(measures.map(({ of }) => of)).size > 1) return measures
  return measures.map(({ of: _, ...rest }) => rest)
}

/** Headings of sizes count only where they part the same points. */
function sizeWhereSeveral(measures: MeasureReading[]): MeasureReading[] {
  if (measures.every((one) => !('size' in one)) || new Set(measures.map(({ size }) => size)).size > 1) return measures
  return measures.map(({ size: _, ...rest }) => rest)
}
