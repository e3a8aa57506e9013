/** Body measures in the terms of ISO 8559-1:2017; waistbandGirth and bandCrotchLength are our own (where a band is worn). */
export const BODY_MEASURES = [
  'stature',
  'neckGirth',
  'bustGirth',
  'underbustGirth',
  'waistGirth',
  'waistbandGirth',
  'hipGirth',
  'thighGirth',
  'kneeGirth',
  'calfGirth',
  'ankleGirth',
  'heelGirth',
  'upperArmGirth',
  'wristGirth',
  'handGirth',
  'headGirth',
  'shoulderWidth',
  'backWaistLength',
  'armLength',
  'insideLegLength',
  'totalCrotchLength',
  'bandCrotchLength',
  'bodyRise',
  'trunkGirth'
] as const
export type BodyMeasureId = (typeof BODY_MEASURES)[number]
/** Fits that a person may wish for, the closest first. */
export const WISHES = ['close', 'regular', 'loose', 'oversized'] as const
export type Wish = (typeof WISHES)[number]
/** As it is cut: as its maker meant it to be worn. */
export const FITS = ['as-cut', ...WISHES] as const
export type Fit = (typeof FITS)[number]
/** Whose sizes a person wears; it may stay unsaid: then both women's and men's lines are weighed alike, their difference is doubt. */
export const SIZES = ['women', 'men', 'children'] as const
export type Sizes = (typeof SIZES)[number]
export type Sex = 'women' | 'men'
export type Body = Partial<Record<BodyMeasureId, { mm: number; sdMm?: number }>>
