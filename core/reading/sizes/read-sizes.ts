/** The second stage: figures that are sizes on a label, in the text and in its title; what is left may be a measurement. */
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import { type Quantity, quantitiesOf } from '../quantities/quantities.ts'
import { withoutRepeats } from '../quantities/repeats.ts'
import type { TextRead } from '../text/text.ts'
import { type SizeLabels, sizeLabelsOf } from './size-labels.ts'

export interface SizesRead extends SizeLabels {
  /** What the title names. */
  titleLabels: string[]
  /** The figures that are no sizes, each once where it is told in two units, or whole and half. */
  lengths: Quantity[]
}

/** `kind`: what the words speak of; 32/34 is a size where that has legs. */
export function readSizes(
  text: TextRead,
  title: TextRead | null,
  found: readonly Quantity[],
  { kind, language }: { kind: GarmentKind | null; language: string }
): SizesRead {
  const legs = kind !== null && SHAPE[kind] === 'legs'
  const upper = kind !== null && SHAPE[kind] === 'upper'
  const sizes = sizeLabelsOf({ quantities: found, legs, upper, title: false, language, ...text })
  const titleLabels = title
    ? sizeLabelsOf({ quantities: quantitiesOf(title), legs, upper: false, title: true, language, ...title }).labels
    : []
  const lengths = withoutRepeats(
    text,
    found.filter((one) => !sizes.taken.has(one))
  )
  return { titleLabels, lengths, ...sizes }
}
