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
