/** The kinds of garment that are told apart, and the part of the body each is fitted on. */
export const GARMENT_KINDS = [
  'trousers',
  'jeans',
  'shorts',
  'skirt',
  'dress',
  'jumpsuit',
  'shirt',
  'knit-top',
  'jumper',
  'jacket',
  'coat',
  'waistcoat',
  'other'
] as const
export type GarmentKind = (typeof GARMENT_KINDS)[number]

/** Legs, a skirt, an upper garment, or both halves at once. */
export type Shape = 'legs' | 'skirt' | 'upper' | 'whole' | 'none'
export const SHAPE: Record<GarmentKind, Shape> = {
  trousers: 'legs',
  jeans: 'legs',
  shorts: 'legs',
  skirt: 'skirt',
  dress: 'whole',
  jumpsuit: 'whole',
  shirt: 'upper',
  'knit-top': 'upper',
  jumper: 'upper',
  jacket: 'upper',
  coat: 'upper',
  waistcoat: 'upper',
  other: 'none'
}

/** Groups of kinds that tables of the trade speak of. */
export const LEGS: GarmentKind[] = ['trousers', 'jeans', 'shorts']
export const LONG_LEGS: GarmentKind[] = ['trousers', 'jeans', 'jumpsuit']
export const LEGGED: GarmentKind[] = ['trousers', 'jeans', 'shorts', 'jumpsuit']
/** They hang from a band. */
export const WAISTED: GarmentKind[] = [...LEGS, 'skirt']
export const KNITS: GarmentKind[] = ['jumper', 'knit-top']
export const SOFT_TOPS: GarmentKind[] = ['shirt', 'knit-top', 'jumper']
export const SOFT_BODIES: GarmentKind[] = [...SOFT_TOPS, 'dress', 'jumpsuit']
export const OUTER: GarmentKind[] = ['jacket', 'coat']
/** Worn over a shirt: what a tailor makes above the waist. */
export const OVER_A_SHIRT: GarmentKind[] = [...OUTER, 'waistcoat']
export const SLEEVED: GarmentKind[] = [...SOFT_TOPS, ...OUTER, 'dress', 'jumpsuit']
