/**
 * Listings that tell one to three measures, in the manner of the trade, by somebody who had not read the code: the verdict that a tailor gives as far as
 * told, and where the ends of what the untold must be lie, mm around or along. Argued before any run; invented.
 */
import type { ToldCase } from './told-case.ts'

export const legs: readonly ToldCase[] = [
  {
    name: 'womens straight jeans, all cotton, waist rise and leg',
    text:
      'Straight leg jeans, mid blue, 100% cotton, no stretch. Label says 14.\nWaist 43cm laid flat, rise 27cm, inside leg 78cm. ' +
      'Lovely condition, only worn a few times.',
    body: { 'stature': 1680, 'waistGirth': 740, 'hipGirth': 1000, 'insideLegLength': 810 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [1000, 1045], 'most': [1075, 1125] },
      { 'point': 'thigh', 'least': [595, 640], 'most': null }
    ],
    askFirst: ['hip', 'thigh'],
    why:
      'Waist 43 flat is 860 around; rise 270 sits some 55 under the natural waist, where 740/1000 measures about 845, so +15, ' +
      'and rigid cotton grows. Leg 780 is 30 under her 810: right. Straight in rigid cotton wants hip 1000 + 38 less growth 15, ' +
      'about 1023, and 1100 at most once grown, so about 1085 to 1110 told; a seat is not taken in at level 3. Thigh about 600 ' +
      'wants 620 or so.'
  },
  {
    name: 'mens straight jeans in inches flat, chatty',
    text:
      'Selling my old straight leg jeans as they have been sat in the drawer. Dark indigo, heavy cotton denim. Laid flat the ' +
      'waist is 18.5", rise 10.5", inside leg 32". No rips or marks. Postage at cost.',
    body: { 'stature': 1780, 'waistbandGirth': 910, 'hipGirth': 1000, 'thighGirth': 590, 'insideLegLength': 840 },
    sizes: 'men',
    fit: 'regular',
    level: 2,
    tailor: true,
    verdict: ['wears-as-is'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [1000, 1045], 'most': [1095, 1150] },
      { 'point': 'thigh', 'least': [590, 635], 'most': null }
    ],
    askFirst: ['hip', 'thigh'],
    why:
      '18.5 in flat is 940 around against 910 at his band: +30, within 0 to 45. Leg 813 against 840 is 27 short of the floor ' +
      'line, the ordinary break. Seat 1000 in heavy denim wants 1000 + 38 less growth 15, about 1023, at most 1100 and what a ' +
      'tailor takes out of a seat (38) less growth: 1123. Thigh 590 + 30 less 8 = 612.'
  },
  {
    name: 'stretch skinnies, small, list',
    text: 'Black skinny jeans size 8\n98% cotton 2% elastane\nWaist 39 cm (across)\nFront rise 24 cm\nInseam 71 cm\nSmoke free home',
    body: { 'stature': 1600, 'waistGirth': 680, 'hipGirth': 920, 'insideLegLength': 740 },
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [865, 912], 'most': [950, 1000] },
      { 'point': 'thigh', 'least': [487, 535], 'most': [570, 620] }
    ],
    askFirst: ['hip', 'thigh'],
    why:
      '39 across is 780 around; at a rise of 240 she measures about 795, and 2 % elastane allows 3 % under (771). Inseam 710 ' +
      'against 740: -30. A stretch skinny sits on hip 920 at 96 to 105 %: 883 to about 975; thigh about 550 at 93 %: 511, to ' +
      '595.'
  },
  {
    name: 'mens jeans far too small in the waist',
    text:
      'Mens bootcut jeans, tagged W36 L34 but they have shrunk. Actual measurements: waist 45cm flat, rise 29cm, inside leg ' +
      '86cm. Cotton.',
    body: { 'stature': 1830, 'waistbandGirth': 980, 'hipGirth': 1060, 'insideLegLength': 870 },
    sizes: 'men',
    fit: 'as-cut',
    level: 4,
    tailor: true,
    verdict: ['leave-it'],
    asFarAsTold: true,
    conditions: [],
    askFirst: ['hip', 'thigh', 'stretch', 'fibre', 'waist'],
    why:
      'Waist 45 flat is 900 around against 980 at his band: 80 short. Rigid cotton gives back 13 to 25, the button 10; the seat ' +
      'and inseam are felled and hold no cloth. More than 40 stays short at any level: only a panel would do it, and it shows. ' +
      'The rest is of no account.'
  },
  {
    name: 'plus bootcut with stretch, waist told all round',
    text:
      'Bootcut jeans, dark wash, cotton with 2% elastane so a bit of give. Waist measures 39 inches all the way round, rise 11 ' +
      'inches, inside leg 34 inches. Too long for me!',
    body: { 'stature': 1700, 'waistGirth': 860, 'hipGirth': 1110, 'insideLegLength': 800 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [1050, 1100], 'most': [1170, 1220] },
      { 'point': 'thigh', 'least': [617, 667], 'most': null }
    ],
    askFirst: ['hip', 'thigh'],
    why:
      'Waist 39 in is 991 around (told all round: not doubled); at a rise of 279 she measures about 970: +20, fits. Leg 864 is ' +
      '64 over her 800; a bootcut in a flat shoe wants 5 under to 15 over, so 50 to 65 off at the hem, level 2, the flare loses ' +
      'a little. Hip 1110 + 20 less 5 to 6 % stretch: 1070 or so, to 1190 and a bit; thigh about 664 + 15 less 6 %: 640.'
  },
  {
    name: 'slim mens jeans, waist two sizes over',
    text: 'Slim fit jeans, grey, 99% cotton 1% elastane. Waist 46 cm flat. Rise 25 cm. Inside leg 76 cm. Says 34 on the label.',
    body: { 'stature': 1720, 'waistbandGirth': 840, 'hipGirth': 950, 'thighGirth': 560, 'insideLegLength': 790 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [930, 978], 'most': [1030, 1080] },
      { 'point': 'thigh', 'least': [545, 592], 'most': [625, 675] }
    ],
    askFirst: ['hip', 'thigh'],
    why:
      '46 flat is 920 around on a band of 840: +80, wanted at most +45, so 35 to 55 must go. The back seat of jeans gives 25 ' +
      'kindly and 40 at the most; two darts through the yoke give up to 50: level 3 reaches it. Slim seat 950: +25 less 3 % = ' +
      '947, to +75 and the 15 that goes with the back seam; thigh 560: about 565 to 635 and a small taper.'
  },
  {
    name: 'low flared jeans, long',
    text: 'Low rise flares!! waist 43cm flat, rise only 20cm, inside leg 85cm. Denim has a little stretch. Message me for more ' + 'pics.',
    body: { 'stature': 1640, 'waistGirth': 700, 'hipGirth': 960, 'insideLegLength': 780 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [923, 972], 'most': [1015, 1065] },
      { 'point': 'thigh', 'least': [540, 588], 'most': null }
    ],
    askFirst: ['hip', 'thigh'],
    why:
      '43 flat is 860 around. Rise 200 sits about 100 under the natural waist, where 700/960 measures near 875: 2 % under, and ' +
      'a low band with stretch is worn so. Leg 850 is 70 over 780; a flare wants about 15 over at most, so 55 off at the hem, ' +
      'level 2. Flared hip 960 + 15 less stretch 3 to 5 %: 940 or so, to 1035 and a little; thigh about 575: 565.'
  },
  {
    name: 'stout man, jeans long in the leg',
    text: 'Big mens jeans, straight leg, 100% cotton. Measured flat: waist 21.5 in, rise 12 in, inside leg 34 in.',
    body: { 'stature': 1750, 'waistbandGirth': 1060, 'hipGirth': 1100, 'insideLegLength': 780 },
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [1098, 1145], 'most': [1168, 1220] },
      { 'point': 'thigh', 'least': [657, 706], 'most': null }
    ],
    askFirst: ['hip', 'thigh'],
    why:
      '21.5 in flat is 1092 around on 1060: +32, fits. Leg 864 on 780 is +84: 85 to 110 off at a straight hem, level 2, half an ' +
      'hour. Hip 1100 + 38 less growth 15 = 1123, to 1200 and a bit; thigh about 660 + 30 less 8 = 682.'
  },
  {
    name: 'plus wide leg jeans, rigid, long',
    text:
      'Wide leg high waisted jeans, size 20, rigid denim. Waist 52cm flat, inside leg 86cm. Bought online and never took the ' +
      'tags off.',
    body: { 'stature': 1730, 'waistbandGirth': 1010, 'hipGirth': 1200, 'insideLegLength': 815 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [1198, 1248], 'most': null },
      { 'point': 'thigh', 'least': [740, 790], 'most': null }
    ],
    askFirst: ['hip', 'thigh', 'frontRise'],
    why:
      '52 flat is 1040 around on 1010: +30. Leg 860 on 815 is +45; a wide leg wants at most 15 over, so 30 to 50 off: a hem, ' +
      'level 2. Hip 1200 wide: 45 of ease less seat growth 30 in new rigid denim, about 1220; no most, the leg stands free. ' +
      'Thigh about 719 + 60 less 15: 764.'
  },
  {
    name: 'tall man, jeans a hand too short',
    text:
      'Mens regular fit jeans W36 L30. Waist measures 48cm flat, inseam 30 inches, rise 28cm. Full length on me, good used ' + 'condition.',
    body: { 'stature': 1900, 'waistbandGirth': 935, 'hipGirth': 1040, 'insideLegLength': 890 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: ['leave-it'],
    asFarAsTold: true,
    conditions: [],
    askFirst: ['hip', 'legLength', 'hemDepthMm', 'thigh', 'inseam'],
    why:
      "Waist 48 flat is 960 on 935: +25, good. But 30 in is 762 on a leg of 890: 128 short, and a man's regular jeans are " +
      'wanted within 60. A jeans hem lets down 20 at most, so 50 or more stays wanting; a band let in at the hem shows. He ' +
      'would be above the ankle in full-length jeans: leave it.'
  },
  {
    name: 'wool trousers, snug waist with cloth in the back seam',
    text:
      'Tailored wool trousers, straight leg, half lined. Waist 38cm flat, front rise 30cm, inside leg 70cm. There is a good 4cm ' +
      'of spare cloth each side in the centre back seam if you need to let them out.',
    body: { 'stature': 1580, 'waistbandGirth': 785, 'hipGirth': 990, 'insideLegLength': 730 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [{ 'point': 'hip', 'least': [992, 1038], 'most': [1080, 1135] }],
    askFirst: ['hip', 'thigh'],
    why:
      '38 flat is 760 around on 785: 25 short. The back seam holds 40 a side, keep 10: 2 x 30 = 60 to be had, so 25 to 40 out ' +
      'at the back is easy at level 3. Leg 700 on 730: right. Tailored seat 990 + 38 = 1028, and letting out the back brings ' +
      'some 10 with it; most 1090 and up to 38 by a tailor from the seat, 1108 or so.'
  },
  {
    name: 'suit trousers, leg too long',
    text: 'Charcoal suit trousers (jacket long gone), flat front, wool. Waist 17 1/2" across, inside leg 34 1/2". Dry cleaned.',
    body: { 'stature': 1800, 'waistbandGirth': 880, 'hipGirth': 980, 'insideLegLength': 850 },
    sizes: 'men',
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [{ 'point': 'hip', 'least': [997, 1043], 'most': [1058, 1110] }],
    askFirst: ['hip', 'frontRise', 'thigh'],
    why:
      '17.5 in across is 889 around on 880: +9, where a man wears his trousers. Leg 876 on 850 is +26, wanted 45 under to 5 ' +
      'over: 25 to 60 off at a blind hem, level 2. The seat decides: 980 + 38 = 1018, nothing to be let out at level 2; most ' +
      '1080 or so.'
  },
  {
    name: 'linen pull-ons, cropped and wide',
    text:
      'Cropped wide leg linen trousers with elasticated waist, pull on. Waist 36cm flat unstretched, inside leg 68cm. So comfy ' +
      'in the heat.',
    body: { 'stature': 1650, 'waistGirth': 760, 'hipGirth': 1010, 'insideLegLength': 790 },
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: true,
    conditions: [{ 'point': 'hip', 'least': [1032, 1082], 'most': null }],
    askFirst: ['hip', 'stretch', 'waist', 'frontRise'],
    why:
      'Elastic at rest 36 flat is 720 on a waist of 760: it grips and stretches. Leg 680 on 790 is 110 short, and cropped is ' +
      'said: meant so. Linen gives nothing over the seat: 1010 + 45 = 1055, and the band must stretch past 1010 too; a wide leg ' +
      'has no most.'
  },
  {
    name: 'slim chinos for a short man, hem only, can not sew',
    text: 'Slim fit chinos, stone, 98% cotton 2% elastane, labelled 38R.\nWaist 51 cm\nRise 28 cm\nInside leg 81 cm\nall measured flat',
    body: { 'stature': 1690, 'waistbandGirth': 1030, 'hipGirth': 1070, 'insideLegLength': 765 },
    sizes: 'men',
    fit: 'as-cut',
    level: 1,
    tailor: true,
    verdict: ['needs-a-tailor'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [1035, 1085], 'most': [1140, 1195] },
      { 'point': 'thigh', 'least': [615, 665], 'most': [705, 760] }
    ],
    askFirst: ['hip', 'thigh'],
    why:
      '51 flat is 1020 around on 1030: 10 under, and 2 % elastane gives 3 % (30). Leg 810 on 765 is +45: 40 to 70 must come ' +
      'off, a machine hem, beyond level 1 but a quarter of an hour for a tailor. Slim seat 1070 + 25 less 3 to 4 %: 1060, to ' +
      '1145 and up to 38 by a tailor (1165 or so); thigh about 642 + 20 less 3 %: 640, to 717 and a taper of 15 to 25.'
  },
  {
    name: 'palazzo trousers, waist a good deal too big',
    text: 'Flowing crepe palazzo trousers, high waist, back zip. Waist 47cm flat, rise 31cm, inside leg 81cm. Really swishy.',
    body: { 'stature': 1750, 'waistbandGirth': 840, 'hipGirth': 1040, 'insideLegLength': 830 },
    sizes: 'women',
    fit: 'as-cut',
    level: 4,
    tailor: false,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [{ 'point': 'hip', 'least': [1062, 1112], 'most': null }],
    askFirst: ['hip'],
    why:
      '47 flat is 940 around on 840: +100, wanted at most +45, so 55 to 85 in: the back seam gives 40 kindly, 75 at the most, ' +
      'the side seams or darts the rest, level 3 to 4 with the zip. Leg 810 on 830: 20 under, as a wide leg hangs. Palazzo over ' +
      'a seat of 1040 wants +50 or so, 1090 (the taper dies away above it); no most.'
  },
  {
    name: 'cords with a label and no girth',
    text: 'Corduroy trousers, brown, tapered with a pleat. Size 33 regular. Rise 28cm, inside leg 79cm, leg opening 18cm flat.',
    body: { 'stature': 1770, 'waistbandGirth': 830, 'hipGirth': 940, 'insideLegLength': 820 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: ['too-little-told'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'waist', 'least': [775, 825], 'most': [910, 965] },
      { 'point': 'hip', 'least': [955, 1005], 'most': [1080, 1132] }
    ],
    askFirst: ['waist', 'hip'],
    why:
      'No waist, seat or thigh: a 33 on the label is anything from 840 to 900. Leg 790 on 820 and an opening of 36 cm are ' +
      'right. The waist must be 830 less 10 to 40 by button and back seam (790 to 820), and at most 875 plus 50 to 75 at the ' +
      'back (925 to 950); the tapered seat from 940 + 50 less 0 to 30 let out (960 to 990), to 1080 and up to 38 (1118).'
  },
  {
    name: 'plus trousers by size label only',
    text: 'Smart black trousers size 20 short. Inside leg 29 inches, front rise 12 inches. Hardly worn, no bobbling.',
    body: { 'stature': 1620, 'waistbandGirth': 990, 'hipGirth': 1140, 'insideLegLength': 750 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: ['too-little-told'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'waist', 'least': [960, 1003], 'most': [1063, 1115] },
      { 'point': 'hip', 'least': [1153, 1200], 'most': [1225, 1275] }
    ],
    askFirst: ['waist', 'hip'],
    why:
      'A label is no measure and no girth is told. Leg 29 in is 737 on 750, fine. The waist must be 990 less a little by the ' +
      'button, and at most 1035 with 40 to 60 more by darts at level 2 (1075 to 1095); the seat 1140 + 38 = 1178, to 1240 or ' +
      'so.'
  },
  {
    name: 'moleskin trousers, waist big, hand work only',
    text:
      'Heavy moleskin country trousers, made in England. Measures 20in across the waist, 33.5in inside leg. Rise 11in. Slight ' +
      'fading at the knees.',
    body: { 'stature': 1850, 'waistbandGirth': 930, 'hipGirth': 1020, 'insideLegLength': 875 },
    sizes: 'men',
    fit: 'regular',
    level: 2,
    tailor: true,
    verdict: ['needs-a-tailor'],
    asFarAsTold: true,
    conditions: [{ 'point': 'hip', 'least': [1040, 1085], 'most': [1117, 1170] }],
    askFirst: ['hip', 'thigh'],
    why:
      '20 in across is 1016 around on 930: +86, wanted at most +45, so 41 to 65 in at the back seam: level 3, within 75, the ' +
      'pockets come 40 or so closer. Button and level 2 do not reach it; a tailor does. Leg 851 on 875: right. Seat 1020 + 38 = ' +
      '1058 and a little for the taper; most 1120 and up to 38 by the tailor, 1140 or so.'
  },
  {
    name: 'ankle cigarette trousers with stretch, wanted close',
    text:
      'Navy cigarette trousers, ankle grazer length. Polyester viscose with 3% elastane. Waist 39.5cm flat, rise 31cm (high), ' +
      'inside leg 68cm.',
    body: { 'stature': 1670, 'waistGirth': 720, 'hipGirth': 980, 'thighGirth': 580, 'insideLegLength': 790 },
    sizes: 'women',
    fit: 'close',
    level: 3,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [952, 1000], 'most': [1022, 1075] },
      { 'point': 'thigh', 'least': [560, 606], 'most': [630, 680] }
    ],
    askFirst: ['hip', 'thigh'],
    why:
      '39.5 flat is 790 around; rise 310 sits some 25 under the natural waist, where she measures about 770: +20. Leg 680 on ' +
      '790 is 110 short: ankle length, and said so. Slim hip 980 + 25 less 3 %: 976, to about 1040 in a close wish and a little ' +
      'by the seams; thigh 580 + 20 less 3 %: 583, to 650 and a small taper.'
  },
  {
    name: 'dress trousers let out already, still snug',
    text:
      'Wool dress trousers, waist 46.5cm flat, inside leg 78cm. Note the back seam was let out to the very edge before, so no ' +
      'more cloth in there.',
    body: { 'stature': 1740, 'waistbandGirth': 950, 'hipGirth': 1030, 'insideLegLength': 810 },
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: ['comes-close', 'leave-it'],
    asFarAsTold: true,
    conditions: [{ 'point': 'hip', 'least': [1040, 1090], 'most': null }],
    askFirst: ['hip', 'waist', 'seamAllowanceMm', 'frontRise'],
    why:
      '46.5 flat is 930 around on 950: 20 short, and wool gives nothing at the band. The back seam is empty, sides hold about ' +
      'nothing at 10 mm, the button gives 10: 10 stays short. Close, with the button at its edge, or left. Seat 1030 + 38 = ' +
      '1068.'
  }
]
