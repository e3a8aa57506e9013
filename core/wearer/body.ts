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
  'bodyRise'
] as const
export type BodyMeasureId = (typeof BODY_MEASURES)[number]
export const FITS = ['close', 'regular', 'loose', 'oversized'] as const
export type Fit = (typeof FITS)[number]
export type Body = Partial<Record<BodyMeasureId, { mm: number; sdMm?: number }>>
