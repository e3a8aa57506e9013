import { quantitiesOf } from '../quantities/quantities.ts'
import { readText } from '../text/text.ts'
import { sizeLabelsOf } from './size-labels.ts'

/** The labels in a size told on its own: M, UK 12, 32 x 34. */
export function sizeLabelsIn(size: string): string[] {
  const text = readText(`size ${size.slice(0, 40)}`, 'en')
  const quantities = quantitiesOf(text)
  return sizeLabelsOf({ ...text, quantities, legs: false, title: false, language: 'en' }).labels
}
