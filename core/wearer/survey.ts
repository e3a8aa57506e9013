/**
 * How body measures go together: linear regressions over the ANSUR II survey (US Army, 2012; 1,986 women and 4,082 men),
 * y = a + b·x1 + c·x2 with the residual sd, mm. Soldiers are not everyone: what is worked out from these is marked so everywhere.
 * The survey's names differ from ISO 8559-1: waist at the navel for waistGirth, lower thigh for kneeGirth, biceps flexed for
 * upperArmGirth (FLEXED_MM more than relaxed), straight biacromial breadth for shoulderWidth (OVER_THE_BACK_MM less than over the nape),
 * crotch height for insideLegLength, sleeve outseam for armLength.
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
/** Heel and ankle around: mean and sd, both sexes of the survey weighed alike. */
export const HEEL = { mm: 326.9, sdMm: 23 }
export const SURVEY_LINES: SurveyLine[] = [
  { measure: 'thighGirth', from: ['hipGirth'], female: [-89.45, 0.69092, 0, 19.1], male: [-107.74, 0.71885, 0, 19.4] },
  {
    measure: 'thighGirth',
    from: ['waistGirth', 'stature'],
    female: [54.76, 0.40465, 0.13081, 35.4],
    male: [96.84, 0.42232, 0.07464, 32.6]
  },
  { measure: 'hipGirth', from: ['waistGirth'], female: [496.54, 0.60949, 0, 45.3], male: [454.07, 0.60117, 0, 37] },
  { measure: 'hipGirth', from: ['waistGirth', 'stature'], female: [131.3, 0.57368, 0.24321, 42.7], male: [152.66, 0.57767, 0.18421, 34.9] },
  { measure: 'waistGirth', from: ['bustGirth'], female: [-104.84, 1.01994, 0, 53.6], male: [-257.77, 1.1319, 0, 51.8] },
  { measure: 'bustGirth', from: ['waistGirth'], female: [345.51, 0.69851, 0, 44.4], male: [406.44, 0.69347, 0, 40.6] },
  { measure: 'upperArmGirth', from: ['bustGirth'], female: [42.8, 0.27752, 0, 20.5], male: [28.48, 0.31138, 0, 21.4] },
  {
    measure: 'wristGirth',
    from: ['upperArmGirth', 'stature'],
    female: [32.75, 0.12634, 0.05123, 5.4],
    male: [37.91, 0.13611, 0.05082, 6.3]
  },
  { measure: 'neckGirth', from: ['bustGirth'], female: [169.43, 0.16937, 0, 13.2], male: [150.17, 0.23375, 0, 15.7] },
  { measure: 'kneeGirth', from: ['thighGirth'], female: [73.75, 0.53065, 0, 19], male: [109.62, 0.47936, 0, 15.2] },
  { measure: 'kneeGirth', from: ['hipGirth'], female: [18.38, 0.37437, 0, 20.7], male: [41.02, 0.36122, 0, 15.8] },
  { measure: 'calfGirth', from: ['hipGirth'], female: [90.57, 0.2768, 0, 19.3], male: [79.14, 0.30712, 0, 18.1] },
  { measure: 'calfGirth', from: ['thighGirth'], female: [131.94, 0.39166, 0, 18.3], male: [136.92, 0.40846, 0, 17.7] },
  { measure: 'insideLegLength', from: ['stature'], female: [-179.1, 0.59038, 0, 23.6], male: [-176.32, 0.58208, 0, 23.9] },
  { measure: 'armLength', from: ['stature'], female: [-49.55, 0.36421, 0, 17.9], male: [-41.13, 0.36115, 0, 18.4] },
  { measure: 'backWaistLength', from: ['stature'], female: [88.23, 0.20705, 0, 22.8], male: [97.46, 0.21646, 0, 23.4] },
  {
    measure: 'backWaistLength',
    from: ['stature', 'bustGirth'],
    female: [41.47, 0.16819, 0.11622, 20.8],
    male: [35.11, 0.17747, 0.12358, 21]
  },
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
  { measure: 'totalCrotchLength', from: ['hipGirth'], female: [256.23, 0.35703, 0, 32.7], male: [179.88, 0.434, 0, 32.7] }
]
