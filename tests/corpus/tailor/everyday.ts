/** Everyday finds: jeans, skirts, shirts, coats. Written before any run by someone who had not read the code. */
import type { TailorCase } from './tailor-case.ts'

export const everyday: TailorCase[] = [
  {
    name: 'Stretch skinny jeans in the right size',
    text: `High waisted skinny jeans, dark indigo, size 12. 98% cotton 2% elastane so they have a good bit of give.
Measured laid flat, not stretched:
Waist 39.5cm
Hips 48cm
Thigh 28cm
Front rise 28cm
Inside leg 75cm
Hem 14.5cm
Great condition, worn maybe five times. From a smoke free home.`,
    body: { stature: 1680, waistGirth: 720, hipGirth: 990, thighGirth: 590, insideLegLength: 780 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'thigh', 'legOpening', 'inseam'],
    why:
      'Around: waist 790, hip 960, thigh 560, hem 290. Hip is 3 % and thigh 5 % under the body, which 2 % elastane and a skinny cut ' +
      'want (least −4 % and −7 %); the 28 cm rise sits about 48 below the natural waist where she is about 817, so 790 is snug by 3 ' +
      '%. Inside leg 750 is 30 under 780; the hem of 290 clears a stretch heel of about 276.'
  },
  {
    name: 'Palazzo trousers a little long',
    text: `Beautiful flowing palazzo trousers in black viscose crepe, full length. Zip at the side, sits at the natural waist, no elastic.
Waist 15.5" across
Hip 23" across
Thigh 15" across
Rise 13"
Inside leg 31"
Hem 16" across each leg
Plain narrow hem.`,
    body: { stature: 1620, waistGirth: 740, hipGirth: 1010, insideLegLength: 750 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'hem the legs up so that they clear the floor', point: 'inseam', lessMm: [18, 60] }],
    notWrong: ['waist', 'hip', 'thigh', 'legOpening'],
    why:
      'Waist 787 around where the band sits 14 below the natural waist (about 772): 15 to spare, right. Hip 1168, thigh 762 and hem ' +
      '813 are wide on purpose. Inside leg 787 on a leg of 750 is 37 over, and a full-length palazzo should be from 40 under to 15 ' +
      'over: it drags. Take up 2 to 4.5 cm.'
  },
  {
    name: 'Cropped wide linen trousers meant to be short',
    text: `Cropped wide leg linen trousers, sage green, size 16. 100% linen, washed loads so beautifully soft.
Laid flat: waist 44cm, hips 58cm, front rise 31cm, inside leg 60cm, leg opening 30cm. Zip fly and button, side pockets.`,
    body: { stature: 1700, waistGirth: 800, hipGirth: 1060, insideLegLength: 790 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['inseam', 'hip', 'legOpening', 'waist'],
    why:
      'Waist 880 at a band about 37 below her waist where she is about 874: 6 over, right for a high band. Hip 1160 is 100 over and ' +
      'free. Inside leg 600 on 790 is 190 short, well inside cropped (90 to 230 short): never a lack. The linen has been washed, so ' +
      'nothing more to come off.'
  },
  {
    name: 'Oversized chunky jumper asked for as regular',
    text: `Chunky cable knit jumper in cream, 100% wool, supposed to be worn oversized with dropped shoulders. Size S but it comes up huge.
Pit to pit 62cm
Shoulder to shoulder 58cm
Sleeve from shoulder seam 46cm
Length 66cm
Slight bobbling under the arms, otherwise lovely.`,
    body: { stature: 1650, bustGirth: 880, waistGirth: 700, hipGirth: 950, shoulderWidth: 395, armLength: 550 },
    sizes: 'women',
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength', 'hem'],
    why:
      'Chest 1240 is 360 over the bust and free upwards in an oversized knit. The shoulder is 580, 185 over, which puts 92 of sleeve ' +
      'on each side: 460 + 92 = 552 against an arm of 550, so the cuff is at the wrist. Asked for as regular, it wears loose; it is ' +
      'not to be cut down.'
  },
  {
    name: 'A-line midi skirt on a small woman',
    text: `A-line midi skirt, navy cotton twill, unlined, concealed zip at the side. Size 8.
Waist flat 35cm
Hip flat 50cm
Length waistband to hem 84cm
Hem flat 70cm
Deep hem of about 4cm.`,
    body: { stature: 1530, waistGirth: 680, hipGirth: 930 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'take the hem up to mid calf on her', point: 'skirtLength', lessMm: [60, 150] }],
    notWrong: ['waist', 'hip', 'sweep'],
    why:
      'Waist 700 (+20) and hip 1000 (+70) are right. Her waist stands about 955 off the floor, so 840 ends 115 up, 0.075 of her ' +
      'height: nearly at the ankle, where a midi lies at 0.12 to 0.225. The skirt must lose at least 69 and at 145 would be mid ' +
      'calf; past 75 the line of an A-line starts to go, so about 7 to 10 cm.'
  },
  {
    name: 'Boxy drop-shoulder tee',
    text: `Heavyweight boxy tee, drop shoulder, washed black, mens M. 100% cotton 260gsm.
Pit to pit 60cm. Shoulders 56cm. Sleeve 22cm. Length back 70cm. No marks.`,
    body: { stature: 1780, bustGirth: 1000, waistGirth: 850, hipGirth: 990, shoulderWidth: 455, armLength: 600 },
    sizes: 'men',
    fit: 'as-cut',
    level: 1,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength'],
    why:
      'Chest 1200 is 200 over a chest of 1000, within boxy (60 to 240). Shoulder 560 is 105 over and a drop shoulder lies 50 to 240 ' +
      'over. The short sleeve is a cut. Nothing to do.'
  },
  {
    name: 'Jersey wrap dress',
    text: `True wrap dress in viscose jersey (95% viscose 5% elastane), print of small leaves, long tie, three quarter sleeves.
Tied as it is worn and laid flat: bust 50cm, waist 42cm, hips 56cm. Sleeve 43cm, length from shoulder 110cm. Fronts overlap by a good 25cm.`,
    body: { stature: 1700, bustGirth: 1000, waistGirth: 820, hipGirth: 1060, armLength: 570 },
    sizes: 'women',
    fit: 'as-cut',
    level: 1,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'hip', 'sleeveLength', 'bodyLength'],
    why:
      'Bust 1000 (0), waist 840 (+20), hip 1120 (+60): a true wrap in stretch jersey wants −20 to +90 at the bust, and its waist is ' +
      'where she ties it. 430 of sleeve is 0.75 of the arm, three-quarter by name. The hem ends just under the knee, about 400 off ' +
      'the floor.'
  },
  {
    name: 'Raglan sweatshirt with sleeve told from the neck',
    text: `Raglan sweatshirt, grey marl, ribbed hem and cuffs, cotton.
Pit to pit 56cm
Length 68cm
Sleeve measured from the neck seam to the end of the cuff 75.5cm (raglan so no shoulder seam)
Size label says M.`,
    body: { stature: 1760, bustGirth: 980, armLength: 595, shoulderWidth: 450 },
    sizes: 'men',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'sleeveLength', 'sleeveFromCentreBack', 'shoulderWidth', 'bodyLength'],
    why:
      'Chest 1120 is 140 over 980, mid for a sweatshirt (60 to 260). From the neck a man needs his arm and some 150 of shoulder: 595 ' +
      '+ 150 = 745, and 755 is 10 over. Read as an ordinary sleeve it would seem 160 too long, which is the blunder to avoid.'
  },
  {
    name: 'Sleeveless sheath loose at the waist',
    text: `Sleeveless fitted sheath dress in textured cotton, no stretch, unlined, centre back zip. Cherry red, size 12.
Flat measurements
Bust 48cm
Waist 42cm
Hip 53cm
Shoulder to shoulder 36cm
Length from shoulder 98cm`,
    body: { stature: 1660, bustGirth: 900, waistGirth: 740, hipGirth: 990, shoulderWidth: 395 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'waist in, by the side seams or two back darts', point: 'waist', lessMm: [26, 70] }],
    notWrong: ['chest', 'hip', 'shoulderWidth', 'bodyLength'],
    why:
      'Bust 960 (+60) and hip 1060 (+70) are right for a sheath; waist 840 is 100 over 740 where 19 to 70 is wanted, so 30 must go ' +
      'and 62 would be ideal. Two darts or 8–15 mm a line at the side seams. The 36 cm shoulder is cut in by 17 a side, as ' +
      'sleeveless is. The hem falls at the knee.'
  },
  {
    name: 'Navy blazer with sleeves too long',
    text: `Men's navy wool blazer, two button single breasted, fully lined, two vents. Cuff buttons are for show only, they don't undo.
Pit to pit 55cm
Waist (at the button, flat) 52.5cm
Shoulder seam to shoulder seam 47.5cm
Sleeve 64cm
Length from collar 76cm`,
    body: { stature: 1780, bustGirth: 1000, waistGirth: 860, hipGirth: 1000, shoulderWidth: 455, armLength: 600 },
    sizes: 'men',
    fit: 'as-cut',
    level: 2,
    tailor: true,
    verdict: 'needs-a-tailor',
    jobs: [{ about: 'sleeves up from the cuff, sham buttons moved', point: 'sleeveLength', lessMm: [18, 40] }],
    notWrong: ['chest', 'waist', 'shoulderWidth', 'bodyLength'],
    why:
      'Chest 1100 (+100), shoulder 475 (+20), length 760 (half of nape to floor is 769). Waist 1050 is 190 over the body but 50 ' +
      'under its own chest, so it has a waist. The sleeve is 640 on an arm of 600: 22 over the longest a jacket may be (+18), 37 ' +
      'over the ideal; sham buttons let 38 go. Lined cuff, level 4: for a tailor when one sews at level 2.'
  },
  {
    name: 'Classic shirt wanted close',
    text:
      'Mens classic fit poplin shirt, white, 100% cotton. Collar 15.5". Pit to pit 54cm, waist 52cm across, shoulder 47.5cm, sleeve ' +
      'shoulder to cuff 63.5cm, back length 78cm. Plain back, no pleats. Double check your size please as no returns.',
    body: { stature: 1800, bustGirth: 960, waistGirth: 800, neckGirth: 380, shoulderWidth: 460, armLength: 610 },
    sizes: 'men',
    fit: 'close',
    level: 2,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'waist in, two long back darts or side seams', point: 'waist', lessMm: [45, 115] }],
    notWrong: ['shoulderWidth', 'sleeveLength', 'neck', 'bodyLength'],
    why:
      'Chest 1080 (+120) is still close enough, waist 1040 is 240 over 800 where a slim shirt ends at about 170: some 70 must go, ' +
      'and two back darts give up to 100 without touching the armhole. Collar 394 (+14), shoulder +15, sleeve +25: leave them.'
  },
  {
    name: 'Wool coat that simply fits',
    text:
      'Ladies single breasted wool coat, charcoal, fully lined, knee length, size 14. Pit to pit 54cm. Hips 58cm flat. Shoulders ' +
      '43cm. Sleeves 57cm. Length 100cm. Bought for a winter and hardly worn, collecting welcome.',
    body: { stature: 1650, bustGirth: 960, waistGirth: 800, hipGirth: 1040, shoulderWidth: 400, armLength: 555 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: true,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'hip', 'hem', 'shoulderWidth', 'sleeveLength', 'bodyLength'],
    why:
      'Chest 1080 is 120 over 960, the middle of a coat worn over a jumper (75 to 200). Hip 1160 is 120 over. Shoulder 430 is 30 ' +
      'over, so the sleeve starts 15 out: 570 + 15 − 555 = 30 past the wrist bone, and a coat wants 8 to 45.'
  },
  {
    name: 'Pleated skirt too big at the waist',
    text: `Wool knife pleated skirt, 24 pleats all the way round, burgundy, midi, zip and hook at the side, fixed waistband with no elastic.
Waist laid flat 38.5cm, hips are very full with the pleats (approx 70cm flat), length 76cm. No lining.`,
    body: { stature: 1680, waistGirth: 690, hipGirth: 960 },
    sizes: 'women',
    fit: 'as-cut',
    level: 4,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'each pleat deepened a little under the band', point: 'waist', lessMm: [35, 72] }],
    notWrong: ['hip', 'sweep', 'skirtLength'],
    why:
      'Waist 770 on 690 is 80 over; a skirt band may be 5 to 40 over, so 40 must go and 61 would be ideal. Over 24 pleats that is ' +
      '1.7 to 2.5 mm a pleat, well under the 6 a side a pleat takes. Never a seam through the pleats and never the hip; the hem lies ' +
      'at mid calf, 0.18 of her height.'
  },
  {
    name: 'Elastic waist linen trousers, nobody said whose',
    text: `Pull on linen trousers, all elastic waist with drawstring. Stone colour, prewashed linen.
Waist 40cm flat relaxed, stretches to 60cm flat
Hips 62cm flat
Rise 33cm
Inside leg 71cm
Hem 22cm flat`,
    body: { stature: 1620, waistGirth: 860, hipGirth: 1120, insideLegLength: 730 },
    fit: 'as-cut',
    level: 1,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'inseam', 'legOpening'],
    why:
      'Relaxed the elastic is 800, 60 under the waist so it holds; pulled out it is 1200 and passes a hip of 1120. Hip 1240 (+120) ' +
      'is how pull-on trousers are cut. Inside leg 710 is 20 under 730. A rigid reading would call the waist 60 too small: wrong.'
  },
  {
    name: 'Chino shorts 6 cm loose at the band',
    text:
      'Mens chino shorts, khaki, 100% cotton twill. Waist 47cm flat, hip 56cm flat, thigh 33cm flat, front rise 28cm, inside leg ' +
      '23cm. Two back pockets about 14cm apart.',
    body: { stature: 1780, waistbandGirth: 880, hipGirth: 1010 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'waist in at the centre back', point: 'waist', lessMm: [12, 50] }],
    notWrong: ['hip', 'thigh', 'inseam'],
    why:
      'Waist 940 on a band girth of 880 is 60 over where at most 45 is worn without a belt: 15 to 40 out of the centre back, and the ' +
      'pockets stay over 100 apart. Hip 1120 (+110) and thigh 660 are ordinary in shorts; an inside leg of 230 is the cut.'
  },
  {
    name: 'Boiler suit on a tall woman, body length not told',
    text: `Utility boiler suit in washed cotton, navy, popper front, belt loops (no belt). Size 14.
Pit to pit 54cm
Waist 48cm flat
Hips 57cm flat
Shoulders 44.5cm
Sleeve 61cm
Inside leg 81cm
Hem 20cm`,
    body: { stature: 1790, bustGirth: 940, waistGirth: 760, hipGirth: 1020, shoulderWidth: 425, armLength: 602, insideLegLength: 840 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'hip', 'shoulderWidth', 'sleeveLength', 'inseam'],
    ask: ['torsoLength'],
    why:
      'Chest 1080 (+140), waist 960 (free), hip 1140 (+120), inside leg 810 (−30): all right for a boiler suit. But shoulder to fork ' +
      'decides, and it is not told: her half trunk is about 815, so 855 to 965 is wanted. Wears as far as told; the first question ' +
      'is the length from shoulder to crotch.'
  },
  {
    name: 'Tweed waistcoat too big at the back',
    text:
      'Gents tweed waistcoat, single breasted, satin back with strap and buckle, five buttons. Pit to pit 55cm, waist 50cm across ' +
      'done up with the strap undone, back length 56cm.',
    body: { stature: 1780, bustGirth: 1000, waistGirth: 860 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'back seams of the lining cloth taken in', point: 'waist', lessMm: [30, 95] }],
    notWrong: ['chest', 'bodyLength', 'shoulderWidth'],
    why:
      'Chest 1100 is 100 over, right for a waistcoat under a jacket (35 to 115). Waist 1000 is 140 over where 95 is the most, and ' +
      'the strap draws only 20 to 50: the back must be taken in by 45 or more. The back is lining cloth by nature, so its satin ' +
      'makes the job no harder: level 3.'
  },
  {
    name: 'Rigid mom jeans in the right size',
    text: `Mom jeans, light blue, 100% cotton non stretch, high waist.
Flat: waist 15 1/4", hips 21", thigh 12 3/4", rise 11 1/2", inside leg 29", ankle opening 7 1/2".`,
    body: { stature: 1650, waistGirth: 700, hipGirth: 960, insideLegLength: 765 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'thigh', 'legOpening', 'inseam'],
    why:
      'Waist 775 at a rise of 292 that sits about 35 below the natural waist, where she is about 773: snug and growing some 12 in ' +
      'wear. Hip 1067 (+107) and thigh 648 (+74) are mom shapes, opening 381 likewise. Inside leg 737 on 765 is 28 short: full ' +
      'length.'
  },
  {
    name: 'Low-rise bootcut too long',
    text: `Y2k style low rise bootcut jeans, 98% cotton 2% elastane, long leg.
Waist 43.5cm flat
Hip 48.5cm
Thigh 28.5cm
Knee 20.5cm
Hem 24cm
Front rise 20cm
Inside leg 83cm
These are low, they sit on the hip bones not the waist!`,
    body: { stature: 1620, waistGirth: 710, hipGirth: 980, thighGirth: 585, insideLegLength: 740 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'legs up, own edge kept or plain', point: 'inseam', lessMm: [65, 130] }],
    notWrong: ['waist', 'hip', 'thigh', 'legOpening', 'knee'],
    why:
      'Waist 870 must not be set against a waist of 710: a 200 rise lies 79 under her navel rise and sits about 100 down, where she ' +
      'is near 899, and stretch lets a band be 4 % under. Hip 970 (−1 %), thigh 570 (−3 %) stretch. Hem 480 against knee 410 is ' +
      'bootcut. Inside leg 830 on 740 drags by 75 to 95.'
  },
  {
    name: 'Tapered chinos loose in the waist, sewing level 1',
    text:
      'Tapered chinos, olive, 97% cotton 3% elastane. Waist 46cm laid flat, hip 53cm, thigh 32cm, knee 22cm, hem 17cm, front rise ' +
      '27cm, inside leg 80cm. Zip fly. There is a normal seam at the back of the waistband.',
    body: { stature: 1800, waistbandGirth: 840, hipGirth: 990, thighGirth: 570, insideLegLength: 830 },
    sizes: 'men',
    fit: 'as-cut',
    level: 1,
    tailor: true,
    verdict: 'needs-a-tailor',
    jobs: [{ about: 'waist in at the centre back', point: 'waist', lessMm: [26, 75] }],
    notWrong: ['hip', 'thigh', 'legOpening', 'inseam', 'knee'],
    why:
      'Waist 920 on 840 is 80 over where 45 is the most: 35 to 60 out at the back seam, an ordinary half hour at a bench but level ' +
      '3. Moving the button takes 13 at most and pulls the fly over. Hip 1060 (+70), thigh 640 (+70), hem 340 and inside leg 800 ' +
      '(−30) are as a taper should be.'
  },
  {
    name: 'Unlined pencil skirt a size too big',
    text:
      'Pencil skirt, grey polyester viscose, unlined, zip at the centre back and a kick vent. Waist 39cm flat. Hip 54cm flat. Length ' +
      '62cm. Hem 51cm flat. Size 12.',
    body: { stature: 1660, waistGirth: 700, hipGirth: 960 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [
      { about: 'side seams in at the waist', point: 'waist', lessMm: [34, 72] },
      { about: 'the same seams in over the hip', point: 'hip', lessMm: [24, 75] }
    ],
    notWrong: ['skirtLength', 'sweep'],
    why:
      'Waist 780 is 80 over 700 (most 40) and hip 1080 is 120 over 960 (most 90): 40 and 30 at least, 61 and 65 for the ideal. One ' +
      'smooth line at both sides, 10 to 16 mm a layer; unlined and zip at the back, so level 3. The vent stays untouched.'
  },
  {
    name: 'Plain tee wanted loose, sizes unsaid',
    text: `Plain white tee, 100% cotton jersey, crew neck. Pit to pit 52 cm, length 70 cm, shoulder 46 cm, sleeve 20 cm. Unisex. Bundle discounts.`,
    body: { stature: 1700, bustGirth: 940, shoulderWidth: 420, armLength: 575 },
    fit: 'loose',
    level: 1,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength'],
    why:
      'Chest 1040 is 100 over 940, in a tee worn from 10 to 170 over, and nearer loose than close. Shoulder 460 is 40 over, the ' +
      'sleeve short by kind. Nothing to do.'
  },
  {
    name: 'Hoodie wanted oversized',
    text: `Zip hoodie, fleece lined cotton, dark green, unisex L. Pit to pit 61cm, shoulder 53cm, sleeve 58cm, length 70cm. Ribbed cuffs and hem, drawcord.`,
    body: { stature: 1780, bustGirth: 1040, shoulderWidth: 455, armLength: 600 },
    fit: 'oversized',
    level: 1,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength', 'hem'],
    why:
      'Chest 1220 is 180 over 1040, within a sweatshirt (60 to 260). The shoulder is 75 over, so each sleeve starts 37 out: 580 + 37 ' +
      '= 617 against an arm of 600, at the root of the thumb with a rib that holds. Fits; it is only a little less big than ' +
      'oversized.'
  },
  {
    name: 'Straight jeans three sizes too big',
    text:
      'Straight leg jeans, mid blue, 100% cotton, W38 L32. Measured across: waist 19", hips 23.5", thigh 14", leg opening 9", inside ' +
      'leg 32", front rise 12". Five pocket, zip fly.',
    body: { stature: 1750, waistbandGirth: 820, hipGirth: 960, thighGirth: 555, insideLegLength: 800 },
    sizes: 'men',
    fit: 'regular',
    level: 4,
    tailor: true,
    verdict: 'leave-it',
    jobs: [],
    notWrong: [],
    wrong: ['waist', 'hip'],
    why:
      'Waist 965 is 145 over 820, hip 1194 is 234 over 960, thigh 711 is 156 over. The seat would have to lose 13 cm and the seams ' +
      'take 3 to 5; centre back and yoke darts give 4 to 8 at most before the pockets meet. It would be a new pair of trousers: ' +
      'leave it.'
  },
  {
    name: 'Suit trousers short, with hem to let down',
    text:
      'Suit trousers, mid grey wool, flat front, straight leg, plain hems with around 6cm of cloth turned up inside. Waist 46cm ' +
      'flat, hip 55.5cm flat, thigh 33cm flat, hem 20cm flat, front rise 27cm, inside leg 79cm.',
    body: { stature: 1850, waistbandGirth: 900, hipGirth: 1030, insideLegLength: 860 },
    sizes: 'men',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'hem let down', point: 'inseam', moreMm: [22, 56] }],
    notWrong: ['waist', 'hip', 'thigh', 'legOpening'],
    why:
      'Inside leg 790 on 860 is 70 short, and a full length stops at 45 short: 25 more is the least. 60 of hem gives 35 leaving 25 ' +
      'to turn, or 54 with a facing. Waist 920 (+20), hip 1110 (+80) and thigh 660 (+67) are right. The old crease on wool presses ' +
      'out.'
  },
  {
    name: 'Denim jacket too narrow in the shoulder',
    text:
      'Mens denim jacket, four pockets, metal buttons, 100% cotton, size S on the label. Shoulder to shoulder 44cm, pit to pit 56cm, ' +
      'sleeve 62cm, length 62cm. Nice fade on the sleeves.',
    body: { stature: 1860, bustGirth: 1060, shoulderWidth: 480, armLength: 620 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'leave-it',
    jobs: [],
    notWrong: ['chest', 'bodyLength'],
    wrong: ['shoulderWidth'],
    why:
      'Chest 1120 is 60 over 1060 and would button. But the shoulder is 440 on 480: 40 too narrow where it must be at least 5 over, ' +
      'and a shoulder is never let out. A tailor changes nothing here; in denim the seams are felled besides. Leave it.'
  },
  {
    name: 'Tea dress too small over the bust',
    text:
      'Pretty tea dress, fit and flare, woven viscose with small flowers, side zip, no stretch. Overlocked seams. Bust 47cm flat, ' +
      'waist 39cm flat, hips free (full skirt), length 108cm from shoulder.',
    body: { stature: 1670, bustGirth: 960, waistGirth: 800, hipGirth: 1040 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'leave-it',
    jobs: [],
    notWrong: ['hip', 'sweep', 'bodyLength'],
    wrong: ['chest', 'waist'],
    why:
      'Bust 940 is 20 under the body, where a woven dress needs at least 38 over: 58 short. Waist 780 is 20 under and wants 19 over: ' +
      '39 short. Overlocked seams have no cloth to let out. It cannot be closed: leave it.'
  },
  {
    name: 'Overcoat with sleeves too long',
    text:
      'Mens navy wool overcoat, meant to go over a suit, fully lined, plain sleeve ends with no buttons. Chest 60cm pit to pit, ' +
      'shoulders 50.5cm, sleeve from shoulder 68cm, length 112cm. Single breasted, vent at the back.',
    body: { stature: 1830, bustGirth: 1040, waistGirth: 920, shoulderWidth: 465, armLength: 620 },
    sizes: 'men',
    fit: 'as-cut',
    level: 4,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'sleeves up at the lined hem', point: 'sleeveLength', lessMm: [10, 42] }],
    notWrong: ['chest', 'shoulderWidth', 'bodyLength'],
    why:
      'Chest 1200 is 160 over 1040 and shoulder 505 is 40 over: just what goes over a suit. The sleeve is 680 on 620, 60 past the ' +
      'wrist bone (75 or 80 counting the shoulder), where a coat over a suit ends 10 to 45 past: take up 1.5 to 3.5 cm. No cuff ' +
      'buttons, so the hem gives 38; lined, level 4, which this person has.'
  },
  {
    name: 'Selvedge jeans too tight in the thigh',
    text:
      'Selvedge denim jeans, 100% cotton, 15oz, straight leg, felled seams, washed a few times. Waist 43.5cm flat, hip 54cm, thigh ' +
      '30cm, knee 21cm, hem 20cm, front rise 28cm, inside leg 81cm. No stretch at all.',
    body: { stature: 1800, waistbandGirth: 860, hipGirth: 1040, thighGirth: 640, insideLegLength: 820 },
    sizes: 'men',
    fit: 'as-cut',
    level: 4,
    tailor: true,
    verdict: 'leave-it',
    jobs: [],
    notWrong: ['waist', 'inseam'],
    wrong: ['thigh'],
    why:
      'A strong leg: the thigh is 640 and the jeans measure 600, 40 under where rigid denim must be at least 20 to 30 over to sit ' +
      'down in. 60 to 70 are missing and the inseam is felled with nothing inside. Growth in wear is worth 8 to 15. Only a gusset ' +
      'would do it, and it shows: leave it.'
  },
  {
    name: 'Handmade A-line skirt let out at the sides',
    text:
      'Handmade A line skirt in wool tweed, unlined, zip at the back. Waist 14.75 inches flat, hip 22 inches flat, length 24 inches. ' +
      'Whoever made it left a full 1 inch of seam allowance at each side seam.',
    body: { stature: 1700, waistGirth: 760, hipGirth: 1020 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'side seams out at the waist', point: 'waist', moreMm: [12, 50] }],
    notWrong: ['hip', 'skirtLength'],
    why:
      'Waist 749 is 11 under 760 and should be 5 to 40 over: 16 at least, 30 for the ideal. Two sides of 25 allowance give 4 × (25 − ' +
      '10) = 60. Hip 1118 is 98 over and takes no harm from a little more. The hem of 610 falls at the knee.'
  },
  {
    name: 'Bias satin slip dress',
    text:
      'Bias cut slip dress in ivory satin, thin adjustable straps, no zip. Measurements laid flat without pulling: bust 45cm, waist ' +
      '40cm, hips 49cm, length from top of strap 125cm. Size 8.',
    body: { stature: 1600, bustGirth: 860, waistGirth: 690, hipGirth: 930 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'hip', 'shoulderWidth', 'bodyLength'],
    why:
      'Bust 900 (+40), waist 800 (+110) and hip 980 (+50) are what a bias slip wants: it clings of itself and may stand 120 off at ' +
      'the waist. It has no shoulder to judge. The hem ends about 160 off the floor, at the lower calf, and bias will drop a little.'
  },
  {
    name: 'Cuffed joggers',
    text:
      'Mens joggers, grey cotton fleece, elastic waist with drawcord and ribbed ankles. Waist 38cm flat unstretched and 54cm ' +
      'stretched, hips 56cm flat, inside leg 77cm, thigh 32cm flat.',
    body: { stature: 1760, waistGirth: 860, hipGirth: 1000, thighGirth: 580, insideLegLength: 800 },
    sizes: 'men',
    fit: 'as-cut',
    level: 1,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'thigh', 'inseam', 'legOpening'],
    why:
      'The waist lies 760 relaxed on a body of 860 and stretches to 1080: it holds and passes a hip of 1000. Hip 1120 (+120) and ' +
      'thigh 640 (+60) are right. Inside leg 770 is 30 under 800, and the rib holds it up.'
  },
  {
    name: 'Boyfriend linen shirt with dropped shoulders',
    text:
      'Boyfriend fit linen shirt, pale blue, dropped shoulders, washed and soft, cuffs with one button. Pit to pit 56cm, shoulders ' +
      '47cm, sleeve 55cm from the shoulder seam, length 76cm. Ladies size 10.',
    body: { stature: 1650, bustGirth: 900, waistGirth: 720, hipGirth: 970, shoulderWidth: 395, armLength: 550 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength', 'hem'],
    why:
      'Chest 1120 is 220 over 900, within a boyfriend shirt (80 to 260). The shoulder is 470, 75 over, which is the drop. Each ' +
      'sleeve starts 37 out, so 550 + 37 = 587 against an arm of 550: 37 over, and a cuff with a button holds it at the hand.'
  },
  {
    name: 'Dress shirt with sleeves two centimetres short',
    text:
      'Mens formal shirt, white twill, double cuffs... no sorry, single button cuffs. Regular fit. Collar 16", pit to pit 58cm, ' +
      'shoulder to shoulder 48.5cm, sleeve 63cm from shoulder seam to cuff end, length 80cm.',
    body: { stature: 1900, bustGirth: 1040, waistGirth: 900, neckGirth: 392, shoulderWidth: 470, armLength: 650 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'comes-close',
    jobs: [],
    notWrong: ['chest', 'neck', 'shoulderWidth', 'bodyLength'],
    wrong: ['sleeveLength'],
    why:
      'Chest 1160 (+120), collar 406 (+14) and shoulder 485 (+15) are right. Sleeve 630 on an arm of 650 is 20 short, and a shirt ' +
      'sleeve ends in a cuff: nothing to let down, and a band would show. With sleeves rolled or under a jumper it does; as a formal ' +
      'shirt it only comes close.'
  },
  {
    name: 'Dinner trousers let out at the back seam',
    text:
      'Black dinner trousers, wool barathea, satin stripe down the side, straight leg. Waist 44.5cm flat, hip 55cm flat, thigh ' +
      '33.5cm flat, front rise 28cm, inside leg 78cm. There is a good 4cm of spare cloth in the centre back seam to let out.',
    body: { stature: 1770, waistbandGirth: 920, hipGirth: 1040, insideLegLength: 800 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'back seam let out', point: 'waist', moreMm: [24, 58] }],
    notWrong: ['hip', 'thigh', 'inseam'],
    why:
      'Waist 890 is 30 under the band girth of 920: at least 30 more, 43 for comfort. 40 of cloth in the seam gives 2 × (40 − 10) = ' +
      '60. Hip 1100 (+60) and thigh 670 (+71) are right, inside leg 780 is 20 short. The satin is a stripe, not the cloth: it ' +
      'forbids nothing at the back seam.'
  },
  {
    name: 'Belted shirt dress on a fuller woman',
    text:
      'Shirt dress, button through, cotton poplin, collar and a tie belt. Plus size 18. Bust 57cm flat, waist 56cm flat (worn with ' +
      'the belt), hips 62cm flat, length 118cm from shoulder. Elbow sleeves.',
    body: { stature: 1600, bustGirth: 1020, waistGirth: 860, hipGirth: 1100 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'hip', 'bodyLength', 'sleeveLength'],
    why:
      'Bust 1140 (+120) and hip 1240 (+140) leave the buttons easy (at least 60). Waist 1120 is 260 over, and the belt makes the ' +
      'waist: it is free and nobody takes it in. The hem is about 230 off the floor, mid calf on her.'
  },
  {
    name: 'Lined blazer with too little waist',
    text:
      'Womens fitted blazer, black, fully lined, single button, size 12. Pit to pit 49.5cm, waist 48cm flat at the button, shoulders ' +
      '42cm, sleeves 56cm, length 66cm from the nape.',
    body: { stature: 1640, bustGirth: 900, waistGirth: 730, hipGirth: 960, shoulderWidth: 392, armLength: 548 },
    sizes: 'women',
    fit: 'regular',
    level: 2,
    tailor: true,
    verdict: 'needs-a-tailor',
    jobs: [{ about: 'waist in at the side seams or centre back, with the lining', point: 'waist', lessMm: [12, 75] }],
    notWrong: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength'],
    why:
      'Chest 990 (+90), shoulder 420 (+28) and sleeve 560 (+12) are right. Waist 960 is 230 over 730 where a fitted blazer ends at ' +
      '180, and only 30 under its own chest: it hangs like a box. Some 2 to 5 cm out at the back and sides; lined, so level 4, for a ' +
      'tailor.'
  },
  {
    name: 'Slim jeans, cloth not told',
    text:
      'Mens slim fit jeans, black. Waist 42.5cm flat. Hip 50cm flat. Thigh 28.5cm flat. Knee 20.5cm, hem 17cm. Front rise 26cm. ' +
      'Inside leg 80cm. Label has been cut out so not sure of size.',
    body: { stature: 1800, waistbandGirth: 850, hipGirth: 990, thighGirth: 570, insideLegLength: 820 },
    sizes: 'men',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: ['wears-as-is', 'comes-close'],
    jobs: [],
    notWrong: ['waist', 'inseam', 'knee', 'legOpening'],
    ask: ['stretch', 'fibre'],
    why:
      'Waist 850 (0), inside leg 800 (−20), knee 410 (+35), hem 340. Hip 1000 is 10 over and thigh 570 is exactly the body: with 2 % ' +
      'elastane both are right (least −4 % and −7 %), in rigid denim the thigh is 17 to 20 short and the hip 10 to 15. Everything ' +
      'hangs on the cloth, so the one question is whether it stretches.'
  },
  {
    name: 'Tiered maxi skirt on a tall woman',
    text:
      'Tiered boho maxi skirt, cotton, elasticated waist. Waist 35cm flat unstretched, stretches to 55cm. Length 100cm. Loads of ' +
      'fabric in the hem. Size 14 to 16.',
    body: { stature: 1750, waistGirth: 780, hipGirth: 1060 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'sweep', 'skirtLength'],
    why:
      'The elastic lies 700 relaxed on 780 and stretches to 1100, past a hip of 1060. The tiers are free. A maxi of 1000 ends about ' +
      '113 off the floor on her, at the top of the ankle (0.065 of her height), a hand shorter than on the average woman: a length ' +
      'one wears, not a fault, and nothing to lengthen.'
  },
  {
    name: 'Suit jacket with only lengths told',
    text:
      'Suit jacket, mens, charcoal pinstripe, wool. Length 76cm, sleeve 63.5cm. Really smart. Inside pockets still stitched up. ' +
      "Sorry the label is faded so I can't read the size.",
    body: { stature: 1780, bustGirth: 1040, waistGirth: 900, shoulderWidth: 460, armLength: 615 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'too-little-told',
    jobs: [],
    notWrong: ['bodyLength'],
    ask: ['chest', 'shoulderWidth'],
    why:
      'No girth and no shoulder: nobody can say whether it closes. Length 760 is about half of nape to floor (769) and the sleeve is ' +
      '20 past the wrist bone, which can be put right, but chest and shoulders decide. Ask for pit to pit first, then shoulder seam ' +
      'to shoulder seam.'
  }
]
