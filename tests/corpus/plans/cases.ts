import { garment, type PlanCase } from './plan-case.ts'
import { beginner, careful, homeSewer, rowan, withTailor } from './wearers.ts'

// what suits Rowan as it is; a case changes one thing
const trousers = { waist: 820, hip: 1050, thigh: 640, knee: 480, legOpening: 420, inseam: 756 }
const jeans = { waist: 820, hip: 1040, thigh: 630, knee: 440, legOpening: 400, inseam: 756 }
const shirt = { chest: 1080, waist: 1020, hem: 1080, shoulderWidth: 440, sleeveLength: 610, neck: 394, bicep: 390, cuff: 230 }
const jacket = { chest: 1062, waist: 916, hem: 1080, shoulderWidth: 440, sleeveLength: 610, bicep: 392 }

export const cases: PlanCase[] = [
  {
    name: 'trousers, everything inside',
    teaches: 'nothing to do is the answer when every told point lies in its band',
    request: { garment: garment('trousers', trousers), wearer: rowan, means: homeSewer },
    expect: { verdict: 'wears-as-is', noJobs: true, forbidden: [] }
  },
  {
    name: 'trousers, waist 50 too big',
    teaches: 'the centre back seam is the trade’s first place; a 200 mm taper holds 74 at one in four and a half (2L/(4.5 × 1.2))',
    request: { garment: garment('trousers', { ...trousers, waist: 895 }), wearer: rowan, means: homeSewer },
    expect: {
      verdict: 'alters-to-fit',
      advised: { 'waist-in-centre-back': [50, 74] },
      forbidden: ['waist-out-centre-back', 'waist-out-side-seams', 'rise-shorten', 'seat-in']
    }
  },
  {
    name: 'trousers, waist 50 too big, back pockets 60 apart',
    teaches:
      'pockets may come no nearer than 50: with 0.55 of the take-in at pocket depth the back seam holds 18, the rest goes to the sides',
    request: { garment: garment('trousers', { ...trousers, waist: 895 }, { backPocketGapMm: 60 }), wearer: rowan, means: homeSewer },
    expect: {
      verdict: 'alters-to-fit',
      advised: { 'waist-in-side-seams': [48, 50] },
      forbidden: ['waist-out-centre-back', 'rise-shorten']
    }
  },
  {
    name: 'jeans, 100 too long, the edge kept',
    teaches: 'an original edge is kept by folding half the shortening; a cut hem would lose it',
    request: { garment: garment('jeans', { ...jeans, inseam: 870 }, { hemKind: 'original-edge' }), wearer: rowan, means: beginner },
    expect: {
      verdict: 'alters-to-fit',
      advised: { 'leg-shorten-keep-edge': [100, 125] },
      forbidden: ['leg-shorten-plain', 'leg-shorten-blind', 'rise-shorten']
    }
  },
  {
    name: 'jacket, shoulders 30 too wide',
    teaches:
      'a shoulder 505 wide is 30 over 420 + 55; a tailored one gives 10 a side and may not be called close. Nor is it a loose jacket: the chest of 1062 is what a regular one aims for. ' +
      'The sleeve hangs (505 − 440) / 2 = 32 lower, so 575 of it covers the arm',
    request: {
      garment: garment('jacket', { ...jacket, shoulderWidth: 505, sleeveLength: 575 }),
      wearer: rowan,
      means: { level: 5, tailor: true }
    },
    expect: { verdict: 'leave-it', staysWrong: ['shoulderWidth'], forbidden: ['sides-out', 'sleeve-shorten-lined'] }
  },
  {
    name: 'jacket, sleeves 25 too long, sham cuff buttons',
    teaches: 'sham buttons move with the hem: up to 38 from the sleeve end',
    request: { garment: garment('jacket', { ...jacket, sleeveLength: 650 }, { workingCuffButtons: false }), wearer: rowan, means: careful },
    expect: {
      verdict: 'alters-to-fit',
      advised: { 'sleeve-shorten-lined': [25, 38] },
      forbidden: ['sleeve-shorten-head', 'sleeve-shorten-hem', 'sleeve-shorten-cuff']
    }
  },
  {
    name: 'jacket, sleeves 25 too long, sham cuff buttons, a beginner with a tailor',
    teaches: 'the same job handed over where the level is out of reach',
    request: {
      garment: garment('jacket', { ...jacket, sleeveLength: 650 }, { workingCuffButtons: false }),
      wearer: rowan,
      means: withTailor
    },
    expect: {
      verdict: 'needs-a-tailor',
      advised: { 'sleeve-shorten-lined': [25, 38] },
      forbidden: ['sleeve-shorten-head', 'sleeve-shorten-hem', 'sleeve-shorten-cuff']
    }
  },
  {
    name: 'jacket, sleeves 25 too long, working cuff buttons',
    teaches: 'working buttonholes forbid the sleeve end: only the head is left, a re-cut',
    request: {
      garment: garment('jacket', { ...jacket, sleeveLength: 650 }, { workingCuffButtons: true }),
      wearer: rowan,
      means: { level: 4, tailor: true }
    },
    expect: {
      verdict: 'needs-a-tailor',
      advised: { 'sleeve-shorten-head': [25, 38] },
      forbidden: ['sleeve-shorten-lined', 'sleeve-shorten-hem', 'sleeve-shorten-cuff']
    }
  },
  {
    name: 'shirt, too small everywhere',
    teaches: 'felled side seams give nothing and a shoulder never grows',
    request: {
      garment: garment('shirt', {
        chest: 930,
        waist: 860,
        hem: 920,
        shoulderWidth: 395,
        sleeveLength: 560,
        neck: 365,
        bicep: 310,
        cuff: 180
      }),
      wearer: rowan,
      means: { level: 5, tailor: true }
    },
    expect: {
      verdict: 'leave-it',
      forbidden: ['sides-out', 'shoulder-in', 'sleeve-shorten-cuff', 'sleeve-shorten-head', 'cuff-in']
    }
  },
  {
    name: 'shirt, only full at the waist',
    teaches: 'two long back darts take a full waist and leave chest, hem and sleeve alone',
    request: { garment: garment('shirt', { ...shirt, waist: 1080 }), wearer: rowan, means: beginner },
    expect: { verdict: 'alters-to-fit', advised: { 'back-darts': [60, 100] }, forbidden: ['side-panels', 'sides-out'] }
  },
  {
    name: 'leather trousers, to be let out',
    teaches:
      'leather keeps its needle holes: no seam moves outward; it gives 8 at the waist and the button 10 of 800 − 760 = 40, so 22 stay',
    request: {
      garment: garment('trousers', { ...trousers, waist: 760 }, {}, { cloth: { structure: 'leather' } }),
      wearer: rowan,
      means: beginner
    },
    expect: {
      verdict: 'leave-it',
      staysWrong: ['waist'],
      forbidden: [
        'waist-out-centre-back',
        'waist-out-side-seams',
        'seat-out',
        'thigh-out',
        'release-darts',
        'waist-out-panel',
        'leg-lengthen-hem'
      ]
    }
  },
  {
    name: 'skirt, waist 40 too big',
    teaches: 'choose a skirt by the hip and take the waist in by darts',
    request: { garment: garment('skirt', { waist: 885, hip: 1050, skirtLength: 600, sweep: 1150 }), wearer: rowan, means: homeSewer },
    expect: {
      verdict: 'alters-to-fit',
      advised: { 'waist-in-darts': [40, 100] },
      forbidden: ['skirt-sides-out', 'waist-out-side-seams', 'waist-in-elastic']
    }
  },
  {
    name: 'a high-visibility jacket',
    teaches: 'protective clothing is never altered, whatever the figures',
    request: {
      garment: garment('jacket', { ...jacket, waist: 1200, sleeveLength: 650 }, {}, { use: 'protective' }),
      wearer: rowan,
      means: { level: 5, tailor: true }
    },
    expect: { verdict: 'leave-it', noJobs: true, forbidden: [], because: ['verdict.never.protective'] }
  },
  {
    name: 'trousers, waist 50 too big, thigh a little under its best',
    teaches: 'a gusset is a rescue: it is never set to come nearer to the ideal, least of all to one that is only worked out',
    request: {
      garment: garment('trousers', { ...trousers, waist: 895, thigh: 625 }),
      wearer: { ...rowan, body: { waistbandGirth: { mm: 800 }, hipGirth: { mm: 980 }, insideLegLength: { mm: 780 } } },
      means: homeSewer
    },
    expect: {
      verdict: 'alters-to-fit',
      advised: { 'waist-in-centre-back': [50, 74] },
      forbidden: ['thigh-panel', 'leg-taper', 'waist-out-panel', 'waist-in-elastic']
    }
  }
]
