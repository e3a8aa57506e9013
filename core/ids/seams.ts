/** Seams that a stitching line belongs to. */
export const SEAMS = [
  'centre-back',
  'side',
  'inseam',
  'seat',
  'underarm',
  'armhole',
  'waistband',
  'waist-seam',
  'neckline',
  'hem',
  'cuff',
  'shoulder',
  'dart',
  'panel',
  'front-edge',
  'strap'
] as const
export type SeamId = (typeof SEAMS)[number]
