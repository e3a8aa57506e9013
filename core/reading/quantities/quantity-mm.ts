/** A figure as stated in millimetres, before its unit is settled: enough to tell a tear from a chest, or a sleeve from a leg. */
import { fromMm, toMm } from '../../length.ts'
import type { Quantity } from './quantities.ts'

/** A bare figure over this is of centimetres: few figures of a garment are so many inches (common practice, no source). */
const MOST_BARE_INCHES = 45

export type Sized = Pick<Quantity, 'value' | 'unit'>

export const quantityMm = ({ value, unit }: Sized): number => toMm(value, unit ?? (value > MOST_BARE_INCHES ? 'cm' : 'in'))

/** The same in inches, in which the limits of letters and pairs are told. */
export const quantityInches = (one: Sized): number => fromMm(quantityMm(one), 'in')
