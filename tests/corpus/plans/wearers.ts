/** The invented people that the cases are judged for. All lengths mm. */
import type { Means } from '../../../core/plan/means.ts'
import type { Wearer } from '../../../core/wearer/wearer.ts'

/** Told in full, so that nothing is worked out. Wanted, regular fit: see core/wearer/ease.ts. */
export const rowan: Wearer = {
  fit: 'regular',
  body: {
    stature: { mm: 1740 },
    neckGirth: { mm: 380 },
    bustGirth: { mm: 960 },
    waistGirth: { mm: 800 },
    waistbandGirth: { mm: 800 },
    hipGirth: { mm: 980 },
    thighGirth: { mm: 580 },
    kneeGirth: { mm: 390 },
    calfGirth: { mm: 370 },
    heelGirth: { mm: 320 },
    upperArmGirth: { mm: 300 },
    wristGirth: { mm: 165 },
    handGirth: { mm: 220 },
    headGirth: { mm: 570 },
    shoulderWidth: { mm: 420 },
    armLength: { mm: 600 },
    insideLegLength: { mm: 780 }
  }
}

export const homeSewer: Means = { level: 3, tailor: false }
export const careful: Means = { level: 4, tailor: false }
export const beginner: Means = { level: 2, tailor: false }
export const withTailor: Means = { level: 2, tailor: true }
