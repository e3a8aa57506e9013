/**
 * Listings that tell one to three measures, in the manner of the trade, by somebody who had not read the code: the verdict that a tailor gives as far as
 * told, and where the ends of what the untold must be lie, mm around or along. Argued before any run; invented.
 */
import type { ToldCase } from './told-case.ts'

export const others: readonly ToldCase[] = [
  {
    name: 'sheath dress, bust a size over',
    text:
      'Sleeveless fitted sheath dress, navy crepe, back zip, unlined. Pit to pit 51cm, length 96cm. Size 14 but check ' + 'measurements.',
    body: { 'stature': 1650, 'bustGirth': 900, 'waistGirth': 740, 'hipGirth': 980 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'waist', 'least': [740, 785], 'most': [860, 912] },
      { 'point': 'hip', 'least': [998, 1040], 'most': [1113, 1165] }
    ],
    askFirst: ['hip', 'waist'],
    why:
      '51 flat is 1020 around on 900: +120, a sheath wants at most about 95, so 25 to 50 in at the sides, level 2 to 3, no ' +
      'sleeve in the way. Waist 740 + 19 less 8 in the seams: 751, at most 810 and 60 to 100 taken in along the same seams ' +
      '(about 885); hip 980 + 40 less 8: 1012, to 1070 and 60 to 80 (about 1140).'
  },
  {
    name: 'fitted sundress, waist far too small',
    text:
      '1950s style cotton sundress with a full gathered skirt and metal side zip. Waist 32cm laid flat, length 104cm from the ' +
      'shoulder. Tiny!',
    body: { 'stature': 1620, 'bustGirth': 880, 'waistGirth': 700, 'hipGirth': 960 },
    sizes: 'women',
    fit: 'as-cut',
    level: 4,
    tailor: true,
    verdict: ['leave-it'],
    asFarAsTold: true,
    conditions: [],
    askFirst: ['chest', 'waist', 'seamAllowanceMm'],
    why:
      '32 flat is 640 around on 700; the waist of a full skirt wants 10 to 20 over, so 70 to 80 is missing. Such sides hold 10 ' +
      'to 25 in all; a panel would show. The bust does not matter any more.'
  },
  {
    name: 'shirt dress, only bust and length',
    text:
      'Button through shirt dress in viscose with tie belt, long sleeves rolled up in pic. UK 14. Pit to pit 53 cm, length 112 ' + 'cm.',
    body: { 'stature': 1720, 'bustGirth': 980, 'waistGirth': 820, 'hipGirth': 1060 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: true,
    conditions: [{ 'point': 'hip', 'least': [1088, 1137], 'most': null }],
    askFirst: ['hip', 'sweep', 'waist'],
    why:
      '53 flat is 1060 around on 980: +80, buttons lie quiet from +60. Waist is belted and free. Buttons over the seat must not ' +
      'pull: 1060 + 60 less a few in the seams, about 1112; no most.'
  },
  {
    name: 'bodycon jersey dress, wanted close',
    text: 'Bodycon midi dress, black jersey 95% viscose 5% elastane, super stretchy. Laid flat armpit to armpit 41cm. Length 110cm.',
    body: { 'stature': 1670, 'bustGirth': 880, 'waistGirth': 700, 'hipGirth': 960 },
    sizes: 'women',
    fit: 'close',
    level: 3,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: true,
    conditions: [
      { 'point': 'hip', 'least': [825, 875], 'most': [1010, 1065] },
      { 'point': 'waist', 'least': [605, 655], 'most': [780, 832] }
    ],
    askFirst: ['hip', 'waist'],
    why:
      '41 flat is 820 around on 880: 7 % under, right for a jersey that reaches 50 % and wears at 15 %. Hip 960 at 86 to 90 %: ' +
      '825 to 865, and at most 2 % over (979) with 40 to 80 taken in by a stretch seam, about 1040; waist 700 at 88 to 92 %: ' +
      '615 to 645, to 740 and the same, about 805.'
  },
  {
    name: 'plus smock dress, all free below',
    text: 'Lagenlook linen smock dress, tent shape, no waist seam. Pit to pit 62cm, length 118cm. Fits lots of sizes. Pockets!',
    body: { 'stature': 1680, 'bustGirth': 1120, 'waistGirth': 980, 'hipGirth': 1200 },
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: false,
    conditions: [],
    askFirst: ['hip', 'hem', 'sweep', 'shoulderWidth', 'bicep', 'sleeveLength', 'waist', 'neck', 'armhole'],
    why:
      '62 flat is 1240 around on 1120: +120, a smock wants 70 and more and has no most. A tent widens from there and clears a ' +
      'hip of 1200 of itself. From 1480 at the shoulder it ends about 300 off the floor, below the knee. All that decides is ' +
      'told.'
  },
  {
    name: 'pencil skirt, waist a little small',
    text: 'Lined grey wool pencil skirt with back vent, two back darts. Waist 35cm across, length 60cm.',
    body: { 'stature': 1630, 'waistGirth': 715, 'hipGirth': 960 },
    sizes: 'women',
    fit: 'as-cut',
    level: 4,
    tailor: false,
    verdict: ['alters-to-fit', 'comes-close'],
    asFarAsTold: true,
    conditions: [{ 'point': 'hip', 'least': [968, 1015], 'most': [1040, 1095] }],
    askFirst: ['hip', 'waist', 'seamAllowanceMm', 'darts'],
    why:
      '35 across is 700 around on 715, wanted 715 to 735: 15 to 25 short. Side seams at 12 give 8, each of two back darts gives ' +
      '10: 28 in all, level 3 to 4 with the lining. Hip of a pencil 960 + 35 = 995 less 8, at most 1050, and not much taken in ' +
      'where the same seam goes out above.'
  },
  {
    name: 'A-line wool skirt, waist too big',
    text: 'A-line skirt in camel wool, unlined, centre back zip. Measurements flat: waist 41 cm, length 64 cm.',
    body: { 'stature': 1700, 'waistGirth': 760, 'hipGirth': 1030 },
    sizes: 'women',
    fit: 'regular',
    level: 3,
    tailor: false,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [{ 'point': 'hip', 'least': [1045, 1095], 'most': null }],
    askFirst: ['hip'],
    why:
      '41 flat is 820 around on 760: +60, wanted 5 to 40, so 20 to 45 in: side seams or two back darts, level 2 to 3. An A-line ' +
      'must clear the seat: 1030 + 40 = 1070; above that it stands free.'
  },
  {
    name: 'circle skirt, waist told',
    text: 'Full circle cotton skirt with side zip. 36cm across the waist, 65cm long. Twirls beautifully.',
    body: { 'stature': 1660, 'waistGirth': 705, 'hipGirth': 980, 'bustGirth': 890 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: true,
    verdict: ['wears-as-is'],
    asFarAsTold: false,
    conditions: [],
    askFirst: ['waist', 'hip', 'stretch', 'fibre', 'sweep', 'opens'],
    why:
      '36 across is 720 around on 705: +15, the ease a waistband wants. The hip of a full circle is free and the zip lets it ' +
      'on. 650 from a waist at about 1050 ends at 400 off the floor, just below the knee at 458. Nothing else decides.'
  },
  {
    name: 'denim skirt, waist loose, button only',
    text: 'Straight denim skirt, button and zip fly, above the knee. Waist 42.5cm flat, length 45cm. Thick denim, no stretch.',
    body: { 'stature': 1680, 'waistbandGirth': 790, 'hipGirth': 1000 },
    fit: 'as-cut',
    level: 1,
    tailor: false,
    verdict: ['alters-to-fit', 'comes-close'],
    asFarAsTold: true,
    conditions: [{ 'point': 'hip', 'least': [1002, 1048], 'most': [1075, 1125] }],
    askFirst: ['hip', 'waist'],
    why:
      '42.5 flat is 850 around on 790: +60, wanted at most 40 to 45. The button moved 13 to 19 (level 1) leaves 41 to 47: just ' +
      'right or a finger loose, a belt does the rest. Straight and rigid over 1000: +35 less growth 10 to 15, about 1022; ' +
      'nothing is taken in at level 1, so at most 1090 to 1100.'
  },
  {
    name: 'womens blazer, sleeves long',
    text:
      'Single breasted wool blazer, fully lined. Pit to pit 49cm, shoulder to shoulder 41cm, sleeve 60cm. Cuff buttons are just ' +
      'for show.',
    body: { 'stature': 1650, 'bustGirth': 900, 'waistGirth': 760, 'shoulderWidth': 395, 'armLength': 555 },
    sizes: 'women',
    fit: 'regular',
    level: 3,
    tailor: true,
    verdict: ['needs-a-tailor'],
    asFarAsTold: false,
    conditions: [],
    askFirst: ['waist', 'hem', 'hip', 'bodyLength', 'backWidth', 'bicep'],
    why:
      '49 flat is 980 around on 900: +80; shoulder 410 on 395: +15, both right. Sleeve 600 on an arm of 555 is +45, wanted at ' +
      'most about 18 to 25: 25 to 40 off through the lining with sham buttons moved, level 4, so a tailor for her. Chest and ' +
      'shoulder are told; a jacket waist can be shaped.'
  },
  {
    name: 'mens shirt, collar and chest, no sleeve',
    text: 'Mens formal shirt, white cotton twill, regular fit. 16" collar, chest 22.5" pit to pit. Long sleeve, single cuff.',
    body: { 'stature': 1800, 'neckGirth': 395, 'bustGirth': 1010, 'waistGirth': 880, 'armLength': 610 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: true,
    conditions: [{ 'point': 'sleeveLength', 'least': [580, 628], 'most': [665, 715] }],
    askFirst: ['sleeveLength', 'sleeveFromCentreBack', 'waist', 'shoulderWidth'],
    why:
      'Collar 16 in is 406 on a neck of 395: +11. Chest 22.5 in flat is 1143 around on 1010: +133, a regular cut. The waist of ' +
      'a regular shirt hangs from the chest. The sleeve is untold and is never let down: arm 610 less 10 to 20 that the ' +
      'shoulder gives, to 650 and 45 more taken off at the cuff, level 3.'
  },
  {
    name: 'mens shirt too wide, wanted close',
    text: 'Oxford shirt, blue, classic fit. Measured flat: chest 57cm, sleeve 65cm (shoulder seam to cuff).',
    body: { 'stature': 1820, 'bustGirth': 980, 'waistGirth': 820, 'armLength': 620 },
    sizes: 'men',
    fit: 'close',
    level: 3,
    tailor: false,
    verdict: ['alters-to-fit'],
    asFarAsTold: true,
    conditions: [{ 'point': 'waist', 'least': [853, 903], 'most': [1032, 1087] }],
    askFirst: ['waist', 'shoulderWidth', 'neck'],
    why:
      '57 flat is 1140 around on 980: +160; close wants 50 to about 120, so 40 to 60 in at the side seams, level 2 to 3 for the ' +
      'felled seam, under the 50 or so at which sleeves need setting again. Sleeve 650 on 620: +30, right. Waist 820 + 50 = ' +
      '870, to about 960 and the 80 to 100 that sides and darts take (1040 to 1060).'
  },
  {
    name: 'boxy short-sleeved shirt, worn loose',
    text: 'Camp collar short sleeve shirt, boxy fit, rayon print. Chest 62cm flat, length 70cm. Holiday ready.',
    body: { 'stature': 1750, 'bustGirth': 1080, 'waistGirth': 1030, 'hipGirth': 1090 },
    sizes: 'men',
    fit: 'loose',
    level: 2,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: false,
    conditions: [],
    askFirst: ['hem', 'waist', 'shoulderWidth', 'hip', 'sleeveLength', 'bicep'],
    why:
      '62 flat is 1240 around on 1080: +160, loose as he likes it and as a boxy shirt is cut. It hangs straight, about as wide ' +
      'at the hem, and clears a belly of 1030 by 200. Short sleeves ask nothing. All that decides is told.'
  },
  {
    name: 'plain T-shirt in inches',
    text: 'Vintage single stitch tee, cotton. 21" pit to pit, 28" long.',
    body: { 'stature': 1780, 'bustGirth': 1000, 'waistGirth': 850, 'hipGirth': 990 },
    fit: 'as-cut',
    level: 1,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: false,
    conditions: [],
    askFirst: ['shoulderWidth', 'hem', 'waist', 'stretch', 'fibre', 'sleeveLength'],
    why:
      '21 in flat is 1067 around on 1000: +67, an ordinary T-shirt. Waist and hem hang free of 850, and 1067 clears a hip of ' +
      '990. 28 in is 711, an ordinary length. Nothing untold decides.'
  },
  {
    name: 'polo shirt two sizes small',
    text: 'Cotton pique polo, bottle green, says L but comes up small. Chest 48cm flat, length 66cm.',
    body: { 'stature': 1760, 'bustGirth': 1060, 'waistGirth': 960, 'hipGirth': 1060 },
    sizes: 'men',
    fit: 'as-cut',
    level: 4,
    tailor: true,
    verdict: ['leave-it'],
    asFarAsTold: false,
    conditions: [],
    askFirst: ['stretch', 'fibre', 'hem', 'waist', 'shoulderWidth', 'chest'],
    why:
      '48 flat is 960 around on 1060: 100 short, 9 %. Pique is a stable knit and gives 2 to 5 %; overlocked 7 mm seams hold ' +
      'nothing. Side panels would show. Leave it at any level.'
  },
  {
    name: 'oversized jumper wanted oversized',
    text: 'Chunky oversized jumper, cream, drop shoulder. 60cm across the chest, 68cm long. Cosy!',
    body: { 'stature': 1830, 'bustGirth': 1020, 'waistGirth': 880 },
    sizes: 'men',
    fit: 'oversized',
    level: 1,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: false,
    conditions: [],
    askFirst: ['sleeveLength', 'shoulderWidth', 'hem', 'waist', 'sleeveFromCentreBack', 'bicep'],
    why:
      '60 across is 1200 around on 1020: +180, between 120 and the 220 that is usual for a jumper worn big, with no most. Waist ' +
      'and hem are free. A drop shoulder makes the sleeve forgiving. Nothing else decides.'
  },
  {
    name: 'cashmere jumper, sleeves long, tailor at hand',
    text: 'Navy cashmere crew neck, set in sleeves, ribbed cuffs. Chest 52cm flat, sleeve 68cm from the shoulder seam. No moth ' + 'holes.',
    body: { 'stature': 1740, 'bustGirth': 940, 'waistGirth': 800, 'armLength': 590 },
    sizes: 'men',
    fit: 'regular',
    level: 2,
    tailor: true,
    verdict: ['needs-a-tailor', 'comes-close'],
    asFarAsTold: false,
    conditions: [],
    askFirst: ['shoulderWidth', 'hem', 'waist', 'stretch', 'bodyLength'],
    why:
      '52 flat is 1040 around on 940: +100, regular. Sleeve 680 on an arm of 590 is +90; a rib may come to +40 or 50: 40 to 70 ' +
      'off by cutting above the rib and joining it on again, level 4 in a knit, so a tailor. Some would turn the cuff back and ' +
      'call it close.'
  },
  {
    name: 'tweed jacket, shoulders narrow',
    text: 'Tweed sports jacket, two button. Chest 21.5" pit to pit, shoulders 17" seam to seam, sleeve 24". Excellent.',
    body: { 'stature': 1780, 'bustGirth': 1000, 'shoulderWidth': 455, 'armLength': 600 },
    sizes: 'men',
    fit: 'as-cut',
    level: 5,
    tailor: true,
    verdict: ['leave-it'],
    asFarAsTold: false,
    conditions: [],
    askFirst: ['waist', 'shoulderWidth', 'backWidth', 'bodyLength', 'hem'],
    why:
      '21.5 in flat is 1092 around on 1000: +92, good, and the sleeve 24 in is 610 on 600. But 17 in is 432 across on shoulders ' +
      'of 455: 23 too narrow, wanted 5 over at least, and a shoulder is never let out. Leave it.'
  },
  {
    name: 'denim jacket, chest and sleeve',
    text: 'Denim trucker jacket, mid wash, 100% cotton. Chest 54cm flat, sleeve 61cm. Metal buttons all there.',
    body: { 'stature': 1760, 'bustGirth': 960, 'waistGirth': 830, 'armLength': 595 },
    sizes: 'men',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: ['wears-as-is'],
    asFarAsTold: false,
    conditions: [],
    askFirst: ['shoulderWidth', 'hem', 'waist', 'bodyLength'],
    why:
      '54 flat is 1080 around on 960: +120, the middle of what a denim jacket is. Sleeve 610 on 595: +15, right. Waist is free ' +
      'at 830; the shoulder of a casual jacket forgives 5 to 90 over. Enough is told.'
  },
  {
    name: 'waxed jacket without a chest',
    text: 'Waxed country jacket, size L, olive. Length 80cm, sleeve 64cm. Needs a re-wax. Tartan lining.',
    body: { 'stature': 1760, 'bustGirth': 1060, 'waistGirth': 980, 'armLength': 595 },
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: ['too-little-told'],
    asFarAsTold: true,
    conditions: [{ 'point': 'chest', 'least': [1147, 1197], 'most': null }],
    askFirst: ['chest'],
    why:
      'No girth told; an L is anything from 1120 to 1300. Over a jumper he needs 1060 + 100 to 130: 1160 to 1190, and waxed ' +
      'cloth is never let out. Sleeve 640 on 595 is +45 and right for a rain jacket. Much wider is still worn: no most.'
  }
]
