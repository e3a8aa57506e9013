/** The first stage: every figure of a text that may be a length, with the unit beside it or at the head of its column. Linear. */
import type { TextRead } from '../text/text.ts'
import { type Quantity, quantitiesOf } from './quantities.ts'
import { inColumns } from './unit-columns.ts'

export const readQuantities = (text: TextRead): readonly Quantity[] => inColumns(text, quantitiesOf(text))
