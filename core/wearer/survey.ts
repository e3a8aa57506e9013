/**
 * How body measures go together: linear regressions y = a + b·x1 + c·x2 with the residual sd, mm, over two surveys of individuals.
 * ANSUR II (US Army, 2012; 1,986 women and 4,082 men). Soldiers are not everyone: what is worked out from these is marked so everywhere. Its names
 * differ from ISO 8559-1: its only waist is at the navel, where trousers are worn (waistbandGirth here), biceps flexed for upperArmGirth (FLEXED_MM
 * more than relaxed), straight biacromial breadth for shoulderWidth (OVER_THE_BACK_MM less than over the nape), crotch height for insideLegLength,
 * sleeve outseam for armLength.
 * BD (Heinz, Peterson, Johnson and Kerk 2003, Exploring relationships in body dimensions, J. Statistics Education 11(2); 260 women and 247 men): the
 * narrowest waist (waistGirth here) and the girth at the navel on the same person, knee over the kneecap.
 */
import type { BodyMeasureId } from './body.ts'

export interface SurveyLine {
  measure: BodyMeasureId
  from: BodyMeasureId[]
  /** intercept, coefficients, residual sd */
  female: [number, number, number, number]
  male: [number, number, number, number]
}

/** A flexed upper arm is about this much larger than one at rest (from memory). */
export const FLEXED_MM = 20
/** Shoulder point to shoulder point over the nape is about this much longer than straight across (from memory). */
export const OVER_THE_BACK_MM = 35
export const SURVEY_LINES: SurveyLine[] = [
  // heel and ankle around, for the foot through a leg; the hand's knuckles through a cuff (ANSUR II)
  { measure: 'heelGirth', from: ['stature'], female: [57.1, 0.156, 0, 12], male: [69.8, 0.156, 0, 13] },
  { measure: 'heelGirth', from: ['stature', 'calfGirth'], female: [27.8, 0.12, 0.233, 10], male: [17.7, 0.124, 0.274, 10] },
  { measure: 'handGirth', from: ['stature'], female: [81.1, 0.065, 0, 8], male: [90.3, 0.07, 0, 9] },
  { measure: 'thighGirth', from: ['hipGirth'], female: [-89.45, 0.69092, 0, 19.1], male: [-107.74, 0.71885, 0, 19.4] },
  {
    measure: 'thighGirth',
    from: ['waistbandGirth', 'stature'],
    female: [54.76, 0.40465, 0.13081, 35.4],
    male: [96.84, 0.42232, 0.07464, 32.6]
  },
  // from the natural waist: BD; from where a band is worn: ANSUR II
  { measure: 'hipGirth', from: ['waistGirth'], female: [438, 0.743, 0, 41], male: [498, 0.567, 0, 38] },
  { measure: 'hipGirth', from: ['waistbandGirth'], female: [496.54, 0.60949, 0, 45.3], male: [454.07, 0.60117, 0, 37] },
  {
    measure: 'hipGirth',
    from: ['waistbandGirth', 'stature'],
    female: [131.3, 0.57368, 0.24321, 42.7],
    male: [152.66, 0.57767, 0.18421, 34.9]
  },
  { measure: 'waistbandGirth', from: ['waistGirth'], female: [72, 1.097, 0, 55], male: [165, 0.842, 0, 40] },
  { measure: 'waistbandGirth', from: ['waistGirth', 'hipGirth'], female: [-208, 0.621, 0.64, 48], male: [-29, 0.622, 0.389, 37] },
  { measure: 'waistGirth', from: ['waistbandGirth'], female: [165, 0.636, 0, 42], male: [35, 0.924, 0, 42] },
  { measure: 'waistbandGirth', from: ['bustGirth'], female: [-104.84, 1.01994, 0, 53.6], male: [-257.77, 1.1319, 0, 51.8] },
  { measure: 'bustGirth', from: ['waistGirth'], female: [373, 0.699, 0, 44.4], male: [515, 0.586, 0, 51] },
  { measure: 'bustGirth', from: ['waistbandGirth'], female: [345.51, 0.69851, 0, 44.4], male: [406.44, 0.69347, 0, 40.6] },
  { measure: 'upperArmGirth', from: ['bustGirth'], female: [42.8, 0.27752, 0, 20.5], male: [28.48, 0.31138, 0, 21.4] },
  {
    measure: 'wristGirth',
    from: ['upperArmGirth', 'stature'],
    female: [32.75, 0.12634, 0.05123, 5.4],
    male: [37.91, 0.13611, 0.05082, 6.3]
  },
  { measure: 'neckGirth', from: ['bustGirth'], female: [169.43, 0.16937, 0, 13.2], male: [150.17, 0.23375, 0, 15.7] },
  // over the kneecap: BD (the survey of soldiers has the lower thigh)
  { measure: 'kneeGirth', from: ['hipGirth'], female: [82, 0.283, 0, 17], male: [121, 0.257, 0, 16] },
  { measure: 'calfGirth', from: ['hipGirth'], female: [90.57, 0.2768, 0, 19.3], male: [79.14, 0.30712, 0, 18.1] },
  { measure: 'calfGirth', from: ['thighGirth'], female: [131.94, 0.39166, 0, 18.3], male: [136.92, 0.40846, 0, 17.7] },
  { measure: 'insideLegLength', from: ['stature'], female: [-179.1, 0.59038, 0, 23.6], male: [-176.32, 0.58208, 0, 23.9] },
  { measure: 'armLength', from: ['stature'], female: [-49.55, 0.36421, 0, 17.9], male: [-41.13, 0.36115, 0, 18.4] },
  // nape to the seam of a dress: between the waist of ISO 8559-1 (0.193 of the stature + 66) and the hip bone, where pattern tables have it
  { measure: 'backWaistLength', from: ['stature'], female: [0, 0.243, 0, 18], male: [0, 0.249, 0, 18] },
  { measure: 'shoulderWidth', from: ['stature'], female: [102.82, 0.16121, 0, 15.1], male: [154.64, 0.14864, 0, 16.2] },
  {
    measure: 'shoulderWidth',
    from: ['stature', 'bustGirth'],
    female: [89.24, 0.14993, 0.03375, 14.9],
    male: [109.13, 0.12018, 0.0902, 14.3]
  },
  {
    measure: 'totalCrotchLength',
    from: ['stature', 'hipGirth'],
    female: [51.99, 0.15696, 0.30673, 31.3],
    male: [-7.02, 0.12919, 0.39477, 31.7]
  },
  { measure: 'totalCrotchLength', from: ['hipGirth'], female: [256.23, 0.35703, 0, 32.7], male: [179.88, 0.434, 0, 32.7] },
  // round the trunk, shoulder, fork, shoulder
  { measure: 'trunkGirth', from: ['stature', 'hipGirth'], female: [171.9, 0.454, 0.634, 39], male: [61.1, 0.435, 0.825, 43] }
]
