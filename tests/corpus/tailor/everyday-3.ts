/** Everyday finds, most told all round and in inches. Written before any run by someone who had not read the code. */
import type { TailorCase } from './tailor-case.ts'

export const everyday3: TailorCase[] = [
  {
    name: 'Women straight jeans right size, inches all round',
    text:
      "Women's straight leg jeans, mid blue, 100% cotton. Lovely condition, just don't wear them. Measurements all the way round: " +
      'waist 32in, hips 41in. Front rise 10.5in, inside leg 30in.',
    body: { stature: 1650, waistbandGirth: 800, hipGirth: 990, insideLegLength: 775 },
    sizes: 'women',
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'inseam', 'frontRise'],
    why: 'Waist 813 on 800 is +13, hip 1041 on 990 is +51 for a straight leg (38 to 100), inside leg 762 on 775 is -13. Nothing to do.'
  },
  {
    name: 'Men chinos right in the waist, too long',
    text:
      'Mens stone chinos W34 L34, regular fit, cotton twill. Waist 34.5" around, seat 43" around, inside leg 34", leg opening 15" ' +
      'around. Plain stitched hem. Worn a handful of times.',
    body: { stature: 1750, waistbandGirth: 860, hipGirth: 1030, insideLegLength: 800 },
    sizes: 'men',
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'shorten the legs', point: 'inseam', lessMm: [55, 110] }],
    notWrong: ['waist', 'hip', 'legOpening'],
    why:
      'Waist 876 (+16) and seat 1092 (+62) are right. Inside leg 864 on 800 is 64 too long for the floor; finished 755 to 805, so 59 ' +
      'to 109 off, a plain hem.'
  },
  {
    name: 'Men wool dress trousers, waist a bit big',
    text:
      'Grey wool dress trousers, flat front, tailored, plenty of cloth in the back seam. Waist 38 inches round, hips 44 inches ' +
      'round, inside leg 31 inches. Half lined to the knee.',
    body: { stature: 1790, waistbandGirth: 905, hipGirth: 1050, insideLegLength: 815 },
    sizes: 'men',
    fit: 'regular',
    level: 3,
    tailor: true,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'take in the back seam at the waist', point: 'waist', lessMm: [25, 62] }],
    notWrong: ['hip', 'inseam'],
    why:
      'Waist 965 on 905 is +60 where 10 to 30 is wanted: 30 to 50 out of the back seam, well under 75. Hip 1118 (+68) loses little ' +
      'as the taper runs out; inside leg 787 on 815 is -28, ordinary.'
  },
  {
    name: 'Women joggers elastic waist',
    text:
      'Grey marl joggers, soft cotton jersey, elasticated drawstring waist and cuffed ankles. Waist 27" relaxed stretching to 39", ' +
      'hips 42" all round, inside leg 28.5".',
    body: { stature: 1630, waistGirth: 740, hipGirth: 980, insideLegLength: 760 },
    sizes: 'women',
    fit: 'as-cut',
    level: 1,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'inseam'],
    why:
      'Elastic 686 relaxed to 991 stretched holds a 740 waist and passes a 980 hip. Hip 1067 is +87, inside leg 724 is -36 with a ' +
      'cuff: joggers as they should be.'
  },
  {
    name: 'Leggings under the body on purpose',
    text:
      'High waisted gym leggings, black, 78% nylon 22% elastane. Unstretched: waist 26in round, hips 34in round, inside leg 28in. ' +
      'Squat proof!',
    body: { stature: 1680, waistGirth: 720, hipGirth: 985, insideLegLength: 780 },
    sizes: 'women',
    fit: 'as-cut',
    level: 1,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'inseam'],
    why:
      'Waist 660 is 8 % under 720, hip 864 is 12 % under 985, just where leggings lie with 22 % elastane. Inside leg 711 on 780 ends ' +
      'at the ankle, as leggings do.'
  },
  {
    name: 'Men denim shorts three sizes small',
    text: 'Mens denim shorts, rigid 100% cotton, button fly. Waist 34in all round, hips 40in all round, inside leg 9in.',
    body: { stature: 1780, waistbandGirth: 940, hipGirth: 1080 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'leave-it',
    jobs: [],
    notWrong: ['inseam'],
    wrong: ['waist', 'hip'],
    why: 'Waist 864 on 940 is 76 short and hip 1016 on 1080 is 64 short; rigid denim with felled seams gives 10 at the button. Leave it.'
  },
  {
    name: 'Pencil skirt right size, all round',
    text: 'Navy pencil skirt, lined, back zip and vent. Measures 29in round the waist, 38.5in round the hips and 24in long.',
    body: { stature: 1650, waistGirth: 720, hipGirth: 930 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'skirtLength'],
    why: 'Waist 737 on 720 is +17, hip 978 on 930 is +48: a pencil skirt that can be sat in. 610 long ends just under the knee.'
  },
  {
    name: 'Pleated midi, elastic back',
    text:
      'Pleated midi skirt in bottle green, elasticated waistband at back. Waist 27in round (stretches to 32), length 30in. Swishes ' +
      'beautifully.',
    body: { stature: 1640, waistGirth: 715, hipGirth: 990 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'skirtLength', 'sweep'],
    why:
      'The band is 686 relaxed and 813 stretched: holds at 715. Hip and hem of an all-round pleated skirt are free; 762 is mid-calf ' +
      'on 1640.'
  },
  {
    name: 'Plus wrap dress, centimetres around',
    text:
      'Wrap dress, floral viscose, true wrap that ties at the side. Bust 120 cm around, waist 104 cm around when tied, length from ' +
      'shoulder 112 cm.',
    body: { stature: 1660, bustGirth: 1140, waistGirth: 1010, hipGirth: 1180 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'bodyLength'],
    why: 'Bust 1200 on 1140 is +60, waist 1040 on 1010 is +30 and moves by the tie anyway. 1120 from the shoulder is a midi on 1660.'
  },
  {
    name: 'A-line skirt, waist too big',
    text: 'Tan needlecord A-line skirt, unlined, side seams, back zip. 33 inches round the waist, 44 inches round the hip, 25 inches long.',
    body: { stature: 1670, waistGirth: 775, hipGirth: 1010 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'take in the sides or darts at the waist', point: 'waist', lessMm: [28, 65] }],
    notWrong: ['hip', 'sweep', 'skirtLength'],
    why:
      'Waist 838 on 775 is +63 where 10 to 35 is wanted: some 30 to 50 in over two side seams. Hip 1118 (+108) is the A of the line ' +
      'and stays.'
  },
  {
    name: 'Men classic shirt, 34 sleeve',
    text:
      'Mens white poplin shirt, classic fit. Collar 16in, chest 47in all round, sleeve 34in from centre back to cuff. Double cuff, ' +
      'no marks.',
    body: { stature: 1780, bustGirth: 1050, neckGirth: 393 },
    sizes: 'men',
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'neck', 'sleeveFromCentreBack'],
    why:
      'Chest 1194 on 1050 is +144, collar 406 on 393 is +13, sleeve 864: half shoulder 230 + arm 601 is 831, and 33 over for reach ' +
      'and cuff. An ordinary 16/34 man.'
  },
  {
    name: 'Men shirt baggy at the waist, wanted close',
    text:
      'Mens pale blue oxford shirt, cotton. Chest 43 inches around, waist 42 inches around, collar 15 inches, length 30 inches. Bit ' +
      'roomy in the body.',
    body: { stature: 1800, bustGirth: 980, waistGirth: 820, neckGirth: 368 },
    sizes: 'men',
    fit: 'close',
    level: 2,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'back darts or sides in at the waist', point: 'waist', lessMm: [40, 150] }],
    notWrong: ['neck', 'bodyLength'],
    why:
      'Chest 1092 (+112) is good. Waist 1067 on 820 is +247; a close shirt wants 50 to 170, so 77 to 130 out: two back darts and a ' +
      'little at the sides.'
  },
  {
    name: 'Women blouse right',
    text: 'Cream pussy bow blouse, polyester. Bust 40in round, length 25in, sleeve 23in.',
    body: { stature: 1640, bustGirth: 940, armLength: 560 },
    sizes: 'women',
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'sleeveLength', 'bodyLength'],
    why: 'Bust 1016 on 940 is +76, sleeve 584 on an arm of 560 is +24. A blouse that fits.'
  },
  {
    name: 'Men oversized tee on purpose',
    text:
      'Oversized boxy tee, heavyweight cotton, drop shoulders. Pit to pit 24.5 inches, shoulder to shoulder 21.5 inches, length 28 ' +
      'inches.',
    body: { stature: 1770, bustGirth: 1000, shoulderWidth: 450 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'shoulderWidth', 'bodyLength', 'waist', 'hem'],
    why:
      'Pit to pit 24.5 is 1245 round, +245, and the shoulder 546 drops 96: that is what oversized and drop shoulder mean. Nothing is ' +
      'too big.'
  },
  {
    name: 'Women cropped baby tee',
    text: 'Cropped baby tee, ribbed cotton with a bit of stretch, pink. 16.5in armpit to armpit laid flat, 16in long.',
    body: { stature: 1650, bustGirth: 870 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'bodyLength'],
    why: '838 round on 870 is 4 % under in a stretch rib: worn close on purpose. 406 long is the crop; not a lack.'
  },
  {
    name: 'Men polo far too small',
    text: 'Mens navy polo shirt, cotton pique, slim fit size S. 37 inches round the chest, 26 inches long.',
    body: { stature: 1820, bustGirth: 1080, waistGirth: 960 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'leave-it',
    jobs: [],
    notWrong: [],
    wrong: ['chest'],
    why: 'Chest 940 on 1080 is 140 under, 13 %; a stable pique gives a few per cent and the seams are overlocked. Leave it.'
  },
  {
    name: 'Men sweatshirt regular',
    text: 'Plain grey sweatshirt. Measures 46in all the way round the chest, 27in long, sleeves 24.5in from the shoulder.',
    body: { stature: 1780, bustGirth: 1040, armLength: 605 },
    sizes: 'men',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'sleeveLength', 'bodyLength'],
    why: 'Chest 1168 on 1040 is +128, ordinary for a sweatshirt; sleeve 622 on 605 is +17 with a rib cuff; 686 long covers the band.'
  },
  {
    name: 'Men shirt, sleeves long',
    text:
      'Mens checked flannel shirt, regular fit, button cuffs. Chest 46" around, sleeves 26" shoulder seam to cuff, shoulders 18.5" ' +
      'across.',
    body: { stature: 1760, bustGirth: 1030, armLength: 590, shoulderWidth: 450 },
    sizes: 'men',
    fit: 'regular',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'shorten the sleeves at the cuff', point: 'sleeveLength', lessMm: [25, 70] }],
    notWrong: ['chest', 'shoulderWidth'],
    why:
      'Chest 1168 (+138), shoulder 470 (+20) are right. Sleeve 660 on 590 is +70, and the shoulder adds 10; a cuffed shirt wears 0 ' +
      'to 40: some 40 off, within the 45 a cuff seam gives.'
  },
  {
    name: 'Plus size shirt right',
    text: 'Ladies plus size linen shirt, loose and lovely. Bust 55 inches all round, hips 57 inches all round, length 30 inches.',
    body: { stature: 1660, bustGirth: 1270, hipGirth: 1350 },
    sizes: 'women',
    fit: 'loose',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'hip', 'hem', 'bodyLength'],
    why: 'Bust 1397 on 1270 is +127 and hip 1448 on 1350 is +98: a loose linen shirt that hangs free of the body.'
  },
  {
    name: 'Child school polo',
    text: 'School polo shirt age 7-8, white. 29 inches round chest, 19 inches long. No stains.',
    body: { stature: 1250, bustGirth: 640 },
    sizes: 'children',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'bodyLength'],
    why: 'Chest 737 on 640 is +97: room for a jumper under and a year of growing. Never a misfit on a child.'
  },
  {
    name: 'Men lambswool jumper right',
    text: 'Mens lambswool crew neck jumper, charcoal. 44in round the chest, 27in long.',
    body: { stature: 1800, bustGirth: 1020 },
    sizes: 'men',
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'bodyLength'],
    why: 'Chest 1118 on 1020 is +98, a regular jumper over a shirt. Length 686 ends at the hip on 1800.'
  },
  {
    name: 'Women close rib knit, stretched figure told',
    text:
      'Ribbed roll neck jumper, fine knit, very stretchy and figure hugging. Bust 32in round unstretched, easily stretches to 42in. ' +
      'Length 24in.',
    body: { stature: 1680, bustGirth: 900, waistGirth: 730 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'bodyLength'],
    why: '813 is 10 % under 900 in a rib that reaches 1067 (31 %); a cling rib uses about that much in wear. Meant to hug.'
  },
  {
    name: 'Women chunky oversized cardigan',
    text:
      'Chunky oversized slouchy cardigan, oatmeal, open front. 50 inches around the bust, 28 inches long, sleeves 22 inches (dropped ' +
      'shoulder).',
    body: { stature: 1650, bustGirth: 960, hipGirth: 1040 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'hem', 'sleeveLength', 'bodyLength', 'shoulderWidth'],
    why:
      '1270 on 960 is +310 in a cardigan sold as oversized, and open in front. The dropped shoulder makes up the 22 in sleeve (559 ' +
      'on an arm of about 551).'
  },
  {
    name: 'Women blazer, sleeves too long, sham buttons',
    text:
      "Women's navy blazer, fully lined, single breasted. Bust 38.5in round, waist 34in round, shoulders 15.5in across, sleeves " +
      '23.5in. Cuff buttons are decorative only.',
    body: { stature: 1620, bustGirth: 900, waistGirth: 750, shoulderWidth: 380, armLength: 555 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'needs-a-tailor',
    jobs: [{ about: 'shorten lined sleeves at the cuff', point: 'sleeveLength', lessMm: [18, 50] }],
    notWrong: ['chest', 'waist', 'shoulderWidth'],
    why:
      'Bust 978 (+78), waist 864 (+114), shoulder 394 (+14) are right. Sleeve 597 on 555 is +42 and the shoulder adds 7, where up to ' +
      '18 to 20 is worn: 25 to 38 off, buttons moved; a lined sleeve is level 4.'
  },
  {
    name: 'Men suit jacket right',
    text:
      'Navy two button suit jacket, wool. Chest 42.5 inches around, shoulders 18 inches, sleeve 24.5 inches, length 30 inches from ' +
      'base of collar.',
    body: { stature: 1780, bustGirth: 980, shoulderWidth: 440, armLength: 612 },
    sizes: 'men',
    fit: 'regular',
    level: 2,
    tailor: true,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength'],
    why:
      'Chest 1080 on 980 is +100, shoulder 457 on 440 is +17, sleeve 622 on 612 is +10, length 762 is half of nape to floor (769). ' +
      'Right all through.'
  },
  {
    name: 'Men suit jacket, shoulders far too wide',
    text: 'Mens grey suit jacket, structured shoulder, lined. Chest 46in around, shoulder seam to shoulder seam 20in, sleeve 25in.',
    body: { stature: 1750, bustGirth: 970, shoulderWidth: 440, armLength: 595 },
    sizes: 'men',
    fit: 'as-cut',
    level: 4,
    tailor: true,
    verdict: 'leave-it',
    jobs: [],
    notWrong: [],
    wrong: ['shoulderWidth', 'chest'],
    why:
      'Shoulder 508 on 440 is +68 where 5 to 55 is worn and a tailor takes 20 at most; chest 1168 on 970 is +198, two sizes. Nobody ' +
      'recuts that.'
  },
  {
    name: 'Men suit jacket straight in the waist, wanted close',
    text:
      'Mens charcoal suit jacket, lined, two button, side vents. Chest 43" all round, waist 42" all round buttoned, shoulders 18", ' +
      'sleeves 24".',
    body: { stature: 1770, bustGirth: 990, waistGirth: 840, shoulderWidth: 440, armLength: 600 },
    sizes: 'men',
    fit: 'close',
    level: 3,
    tailor: true,
    verdict: 'needs-a-tailor',
    jobs: [{ about: 'take in the waist at back and side seams', point: 'waist', lessMm: [35, 100] }],
    notWrong: ['shoulderWidth', 'sleeveLength'],
    why:
      'Chest 1092 (+102), shoulder 457 (+17), sleeve 610 (+10). Waist 1067 on 840 is +227 and only 25 under its own chest: 50 to 76 ' +
      'in at the sides and back, lined, level 4.'
  },
  {
    name: 'Women cropped denim jacket',
    text: 'Cropped denim jacket, light wash, boxy. Chest 40in all round buttoned up, length 19in, sleeve 23in.',
    body: { stature: 1660, bustGirth: 900, armLength: 560 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'bodyLength', 'sleeveLength', 'waist', 'hem'],
    why: 'Chest 1016 on 900 is +116, a denim jacket over a tee; 483 long is cropped on purpose; sleeve 584 on 560 is +24.'
  },
  {
    name: 'Men denim jacket, sleeves much too short',
    text:
      'Mens indigo trucker denim jacket, cotton. 44 in round chest, 18 in across shoulders, sleeves 22.5 in shoulder to cuff. Cuffs ' +
      'with metal buttons.',
    body: { stature: 1880, bustGirth: 1000, shoulderWidth: 450, armLength: 640 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: ['leave-it', 'comes-close'],
    jobs: [],
    notWrong: ['chest', 'shoulderWidth'],
    wrong: ['sleeveLength'],
    why:
      'Sleeve 572 on an arm of 640 is 68 short and the shoulder (457, +7) gives back 3; a set-on cuff has nothing to let down. Chest ' +
      '1118 (+118) is right, but it can only be worn pushed up.'
  },
  {
    name: 'Women cardigan, centimetres around',
    text: 'Bottle green merino cardigan, button front, fits true to size. Bust 104 cm around buttoned, length 62 cm.',
    body: { stature: 1670, bustGirth: 970, waistGirth: 810 },
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'bodyLength'],
    why: 'Bust 1040 on 970 is +70, an ordinary cardigan over a blouse; 62 cm ends at the hip.'
  },
  {
    name: 'Men bomber right',
    text: 'Mens bomber jacket, olive nylon, ribbed hem and cuffs. Chest 47in all round zipped up, length 26in, sleeves 25.5in.',
    body: { stature: 1790, bustGirth: 1020, armLength: 610 },
    sizes: 'men',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'bodyLength', 'sleeveLength', 'waist', 'hem'],
    why:
      'Chest 1194 on 1020 is +174, right for a bomber (100 to 280). Sleeve 648 on 610 is +38 with a rib that holds it. Short body is ' +
      'the cut.'
  },
  {
    name: 'Women parka roomy',
    text: 'Hooded parka, khaki, quilted lining. 46 inches round the chest, 33 inches long.',
    body: { stature: 1650, bustGirth: 950, hipGirth: 1030 },
    sizes: 'women',
    fit: 'loose',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'hem', 'bodyLength'],
    why: '1168 on 950 is +218: a quilted parka goes over a thick jumper. 838 long ends above the knee; free.'
  },
  {
    name: 'Women wool coat too small',
    text: "Women's camel wool coat, single breasted, lined. Bust 39in around buttoned, shoulders 15in, length 40in.",
    body: { stature: 1670, bustGirth: 1000, shoulderWidth: 395 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'leave-it',
    jobs: [],
    notWrong: ['bodyLength'],
    wrong: ['chest'],
    why:
      'Bust 991 on 1000 is 9 under the bare body, a coat needs 75 over: 84 short where sides give 20 to 25. Shoulder 381 on 395 is ' +
      'narrow too, and no one lets a shoulder out.'
  },
  {
    name: 'Men overcoat right',
    text:
      'Mens wool overcoat, navy, knee length, notch lapel. Chest 46.5 inches around, shoulders 18.5 inches, sleeves 25 inches, back ' +
      'length 41 inches.',
    body: { stature: 1800, bustGirth: 1020, shoulderWidth: 445, armLength: 610 },
    sizes: 'men',
    fit: 'regular',
    level: 2,
    tailor: true,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'shoulderWidth', 'sleeveLength', 'bodyLength'],
    why:
      'Chest 1181 on 1020 is +161, room for a suit; shoulder 470 (+25); sleeve 635 on 610 is +25 and covers the jacket; 1041 long ' +
      'ends at the knee.'
  },
  {
    name: 'Women lined coat, sleeves too long',
    text: 'Grey wool blend coat, lined, no buttons at cuffs. Bust 42.5in round, shoulders 15.75in, sleeves 24.5in, length 38in.',
    body: { stature: 1600, bustGirth: 950, shoulderWidth: 380, armLength: 550 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'needs-a-tailor',
    jobs: [{ about: 'shorten lined coat sleeves', point: 'sleeveLength', lessMm: [22, 65] }],
    notWrong: ['chest', 'shoulderWidth', 'bodyLength'],
    why:
      'Bust 1080 (+130), shoulder 400 (+20) are right. Sleeve 622 on 550 is +72 and the shoulder adds 10: to the knuckles. A coat ' +
      'sleeve wears +8 to +45, so some 30 to 50 off; plain cuff, but lined, level 4.'
  },
  {
    name: 'Men suit waistcoat, waist slack',
    text: 'Mens wool waistcoat, six button, satin back with cinch strap. Chest 42 inches all round, waist 40 inches all round.',
    body: { stature: 1760, bustGirth: 980, waistGirth: 840 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'take in the back', point: 'waist', lessMm: [40, 110] }],
    notWrong: [],
    why:
      'Waist 1016 on 840 is +176 where 40 to 110 is neat and the strap only draws 20 to 50 in: 60 to 76 out of the back seam. Chest ' +
      '1067 (+87) comes in a little with it and stays in reach.'
  },
  {
    name: 'Women wide leg jumpsuit with tie belt',
    text:
      'Wide leg jumpsuit with tie belt, black crepe. Bust 40in round, waist 33in round, hips 43.5in round, inside leg 29in. Shoulder ' +
      'to crotch not measured sorry.',
    body: { stature: 1660, bustGirth: 940, waistGirth: 770, hipGirth: 1010, insideLegLength: 750 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'hip', 'inseam'],
    ask: ['torsoLength'],
    why:
      'Bust 1016 (+76), waist 838 (+68) drawn in by the belt, hip 1105 (+95), inside leg 737 on 750 (-13). The body length from ' +
      'shoulder to fork is the one thing to ask of a jumpsuit.'
  },
  {
    name: 'Women dungarees relaxed',
    text:
      'Relaxed fit denim dungarees, adjustable straps, side buttons. 36" all round the waist, 45" all round the hips, inside leg 28" ' +
      '(ankle length).',
    body: { stature: 1680, bustGirth: 920, waistGirth: 770, hipGirth: 1030, insideLegLength: 785 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'inseam'],
    why:
      'Dungarees hang from the straps: 914 on 770 is meant to stand free. Hip 1143 (+113) relaxed, inside leg 711 on 785 is -74, ' +
      'ankle length as told.'
  },
  {
    name: 'Women belted trench, loose',
    text:
      'Classic double breasted trench coat with belt, beige cotton. 45 inches round bust, 16.5 inches shoulder to shoulder, 42 ' +
      'inches long, sleeves 23.5 inches.',
    body: { stature: 1700, bustGirth: 970, waistGirth: 800, shoulderWidth: 395, armLength: 570 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: true,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'shoulderWidth', 'sleeveLength', 'bodyLength'],
    why:
      'Bust 1143 on 970 is +173: a trench is worn over a jacket and belted. Shoulder 419 (+24), sleeve 597 on 570 (+27), length 1067 ' +
      'over the knee.'
  },
  {
    name: 'Child winter coat with room',
    text: 'Girls red duffle coat, age 8-9. Chest 33 inches all round, sleeves 18.5 inches, length 25 inches.',
    body: { stature: 1300, bustGirth: 660 },
    sizes: 'children',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'sleeveLength', 'bodyLength'],
    why: 'Chest 838 on 660 is +178: a duffle over a jumper with a winter to grow. Spare on a child is wanted.'
  },
  {
    name: 'Shift dress right',
    text: 'Teal shift dress, fully lined, sleeveless. Bust 39in round, hips 41.5in round, length 36in from shoulder.',
    body: { stature: 1660, bustGirth: 910, waistGirth: 760, hipGirth: 980 },
    sizes: 'women',
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'hip', 'bodyLength'],
    why: 'Bust 991 on 910 is +81, hip 1054 on 980 is +74. A shift stands free at the waist. 914 from the shoulder ends just above the knee.'
  },
  {
    name: 'Sheath dress, waist too big',
    text:
      'Fitted sheath dress, black crepe, unlined, no waist seam. Measured all the way round: bust 38.5 inches, waist 34 inches, hips ' +
      '41 inches. Length 38 inches.',
    body: { stature: 1680, bustGirth: 910, waistGirth: 745, hipGirth: 970 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'darts or sides in at the waist', point: 'waist', lessMm: [45, 102] }],
    notWrong: ['hip', 'chest', 'bodyLength'],
    why:
      'Bust 978 (+68) and hip 1041 (+71) are right. Waist 864 on 745 is +119 where a sheath has 20 to 70: 50 to 80 in by deeper back ' +
      'darts or the sides.'
  },
  {
    name: 'Fit and flare, waist far too small',
    text:
      'Red cotton fit and flare dress, 50s style full skirt, side zip. 35in bust round, 26in waist round, length 41in. No stretch at ' +
      'all.',
    body: { stature: 1650, bustGirth: 900, waistGirth: 745 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'leave-it',
    jobs: [],
    notWrong: ['bodyLength'],
    wrong: ['waist', 'chest'],
    why: 'Waist 660 on 745 is 85 short, and bust 889 on 900 is under the body in rigid cotton; seams give 24 at most.'
  },
  {
    name: 'Tiered maxi too long',
    text: 'Boho tiered smock maxi dress, viscose. Bust 43 inches around, 59 inches long shoulder to hem. Too long for me!',
    body: { stature: 1600, bustGirth: 960, waistGirth: 830, hipGirth: 1050 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'shorten the hem', point: 'bodyLength', lessMm: [80, 175] }],
    notWrong: ['chest', 'waist', 'hip'],
    why:
      'Shoulder at the neck is about 1411 over the floor on 1600; 1499 lies 88 on the ground. Finished 0 to 80 clear: 90 to 170 off, ' +
      '110 to 130 by choice. Bust 1092 (+132), free below.'
  },
  {
    name: 'Denim mini, short on purpose',
    text: 'Denim mini skirt, 98% cotton 2% elastane. Waist 30in round, hips 38.5in round, length 15in.',
    body: { stature: 1680, waistbandGirth: 755, hipGirth: 945 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'skirtLength'],
    why: 'Waist 762 (+7) and hip 978 (+33) with a little give; 381 long is a mini and meant to be.'
  },
  {
    name: 'Wide leg trousers too long',
    text:
      'Wide leg trousers, high waisted, plain hem, polyester crepe. 31 inches round waist, 43 inches round hips, inside leg 33 ' +
      'inches, leg opening 24 inches round.',
    body: { stature: 1600, waistGirth: 765, hipGirth: 1010, insideLegLength: 740 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'hem up', point: 'inseam', lessMm: [80, 145] }],
    notWrong: ['waist', 'hip', 'legOpening'],
    why:
      'Waist 787 (+22), hip 1092 (+82). Inside leg 838 on 740 is 98 too long; a wide leg ends 700 to 755, best about 735: 83 to 138 ' +
      'off. The 610 opening is the cut.'
  },
  {
    name: 'Flared stretch jeans right',
    text:
      'Flared jeans, dark wash, 92% cotton 6% polyester 2% elastane. Waist 30.5in round, hips 39in round, inside leg 32in, hem 22in ' +
      'round.',
    body: { stature: 1710, waistbandGirth: 775, hipGirth: 985, insideLegLength: 810 },
    sizes: 'women',
    fit: 'close',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'inseam', 'legOpening'],
    why:
      'Waist 775 is the band itself, hip 991 on 985 (+6) with 2 % elastane, as flares sit. Inside leg 813 on 810 just clears the ' +
      'floor in a shoe; 559 at the hem is a flare.'
  },
  {
    name: 'Rigid skinny jeans too small',
    text: 'Skinny jeans, 100% cotton, no stretch. Waist 28 inches round, hips 35.5 inches round, inside leg 29 inches.',
    body: { stature: 1670, waistbandGirth: 790, hipGirth: 1000, insideLegLength: 785 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'leave-it',
    jobs: [],
    notWrong: ['inseam'],
    wrong: ['waist', 'hip'],
    why: 'Waist 711 on 790 is 79 short, hip 902 on 1000 is 98 short in cloth that gives nothing. Leave it.'
  },
  {
    name: 'Mom jeans, waist gapes',
    text: 'High waist mom jeans, non stretch cotton denim. 32.5" round at waist, 42.5" round hips, front rise 11.5", inside leg 28.5".',
    body: { stature: 1650, waistbandGirth: 770, hipGirth: 1010, insideLegLength: 765 },
    sizes: 'women',
    fit: 'as-cut',
    level: 4,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'take the waist in by back seam or yoke darts', point: 'waist', lessMm: [22, 62] }],
    notWrong: ['hip', 'inseam', 'frontRise'],
    why:
      'Waist 826 on 770 is +56 and grows in wear; 10 to 30 is wanted: some 30 to 40 out at the back, the limit of jeans. Hip 1080 ' +
      '(+70), inside leg 724 on 765 (-41) is how mom jeans end.'
  },
  {
    name: 'Cigarette trousers, ankle length',
    text: 'Ankle length cigarette trousers, navy, 3% elastane. Waist 29in round, hips 38in round, inside leg 26.5in.',
    body: { stature: 1680, waistbandGirth: 730, hipGirth: 930, insideLegLength: 780 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'inseam'],
    why: 'Waist 737 (+7) and hip 965 (+35) with elastane are a slim leg. Inside leg 673 on 780 is -107: at the ankle bone, as told.'
  },
  {
    name: 'Men suit trousers short, deep hem',
    text:
      'Charcoal suit trousers, wool. 35in round the waist, 43in round the seat, inside leg 30in with a further 2.5in turned up ' +
      'inside to let down.',
    body: { stature: 1830, waistbandGirth: 875, hipGirth: 1030, insideLegLength: 835 },
    sizes: 'men',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'let the hems down', point: 'inseam', moreMm: [22, 60] }],
    notWrong: ['waist', 'hip'],
    why: 'Waist 889 (+14), seat 1092 (+62). Inside leg 762 on 835 is -73; 63 turned up gives 38 and keeps 25, to 800 (-35). Fits.'
  },
  {
    name: 'Men bootcut jeans right',
    text: 'Mens bootcut jeans W36 L32. Actual: waist 36.5 inches round, hips 43.5 inches round, inside leg 32 inches, hem 19 inches round.',
    body: { stature: 1810, waistbandGirth: 910, hipGirth: 1055, insideLegLength: 825 },
    sizes: 'men',
    fit: 'regular',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['waist', 'hip', 'inseam', 'legOpening'],
    why: 'Waist 927 (+17), hip 1105 (+50), inside leg 813 on 825 (-12), hem 483. Label and tape agree near enough.'
  },
  {
    name: 'Men chino shorts, waist big',
    text: 'Mens chino shorts, cotton twill, belt loops, back seam with spare cloth. 38 in round waist, 45 in round hips, 10 in inside leg.',
    body: { stature: 1770, waistbandGirth: 905, hipGirth: 1070 },
    sizes: 'men',
    fit: 'regular',
    level: 3,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'take in the back seam', point: 'waist', lessMm: [24, 62] }],
    notWrong: ['hip', 'inseam', 'thigh'],
    why: 'Waist 965 on 905 is +60; 30 to 50 out of the back seam leaves +10 to +30. Hip 1143 (+73) is right for shorts.'
  },
  {
    name: 'Men chinos a touch tight, nothing to let out',
    text:
      'Mens slim chinos, 100% cotton. Waist 33in all round, hips 42in all round, inside leg 31in. No spare fabric in any of the ' +
      'seams, I checked.',
    body: { stature: 1780, waistbandGirth: 862, hipGirth: 1030, insideLegLength: 815 },
    sizes: 'men',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: ['comes-close', 'alters-to-fit'],
    jobs: [{ about: 'move the button', point: 'waist', moreMm: [6, 28] }],
    notWrong: ['hip', 'inseam'],
    why:
      'Waist 838 on 862 is 24 short; the button gives 10, cotton twill some in wear; about 10 to 14 stay tight. Hip 1067 (+37), ' +
      'inside leg 787 (-28) are right. Close, not right.'
  },
  {
    name: 'Satin slip dress',
    text: 'Bias cut satin slip dress, champagne, adjustable straps. 36.5in round bust, 39.5in round hips, 44in long.',
    body: { stature: 1690, bustGirth: 885, waistGirth: 730, hipGirth: 965 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'hip', 'bodyLength', 'shoulderWidth'],
    why: 'Bust 927 (+42) and hip 1003 (+38) on the bias skim the body. Midi by length, straps adjust.'
  },
  {
    name: 'Shirt with no girth told',
    text: 'Blue striped shirt, size L. Length 30 inches, sleeves 25 inches. Great condition, quick post.',
    body: { stature: 1790, bustGirth: 1040, waistGirth: 900, armLength: 605 },
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'too-little-told',
    jobs: [],
    notWrong: ['bodyLength', 'sleeveLength'],
    ask: ['chest'],
    why: 'Length 762 and sleeve 635 are well enough, but no girth is told and an L spans a hand. Ask pit to pit.'
  },
  {
    name: 'Plus trousers, long',
    text:
      'Plus size straight leg trousers, pull on with elasticated waist, polyester viscose elastane. Waist 40in relaxed stretches to ' +
      '52in round, hips 54in round, inside leg 32in. Plain machined hem.',
    body: { stature: 1610, waistGirth: 1090, hipGirth: 1290, insideLegLength: 730 },
    sizes: 'women',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'alters-to-fit',
    jobs: [{ about: 'hem up', point: 'inseam', lessMm: [70, 135] }],
    notWrong: ['waist', 'hip'],
    why:
      'Elastic 1016 to 1321 holds at 1090 and passes the hip; hip 1372 (+82). Inside leg 813 on 730 is 83 too long, finished 685 to ' +
      '735: 78 to 128 off.'
  },
  {
    name: 'Boyfriend blazer, oversized on purpose',
    text: "Oversized boyfriend blazer, beige, women's. Bust 44in around, shoulders 18in, sleeves 23in, length 30in.",
    body: { stature: 1680, bustGirth: 900, waistGirth: 740, shoulderWidth: 385, armLength: 565 },
    sizes: 'women',
    fit: 'as-cut',
    level: 3,
    tailor: true,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'shoulderWidth', 'bodyLength', 'sleeveLength'],
    why:
      'Bust 1118 (+218) and shoulder 457 (+72) are what boyfriend means. Sleeve 584 on 565 is +19, and the shoulder takes it to the ' +
      'thumb root, as it is worn.'
  },
  {
    name: 'Men quilted gilet',
    text: 'Quilted body warmer gilet, navy, zip front, snap pockets. 47 inches round the chest, 26 inches long.',
    body: { stature: 1780, bustGirth: 1060, waistGirth: 960 },
    sizes: 'men',
    fit: 'as-cut',
    level: 2,
    tailor: false,
    verdict: 'wears-as-is',
    jobs: [],
    notWrong: ['chest', 'waist', 'bodyLength', 'shoulderWidth'],
    why: 'Chest 1194 on 1060 is +134: a gilet goes over a jumper and stands free at the waist.'
  },
  {
    name: 'Men jumper, knitted sleeves too long',
    text:
      'Mens chunky knit wool jumper, ribbed cuffs and hem. Chest 46 inches around, shoulders 18 inches, sleeves 28 inches shoulder ' +
      'to cuff, 27 long.',
    body: { stature: 1740, bustGirth: 1040, shoulderWidth: 445, armLength: 590 },
    sizes: 'men',
    fit: 'as-cut',
    level: 2,
    tailor: true,
    verdict: 'needs-a-tailor',
    jobs: [{ about: 'cut above the cuff rib and join it on again', point: 'sleeveLength', lessMm: [65, 130] }],
    notWrong: ['chest', 'shoulderWidth', 'bodyLength'],
    why:
      'Chest 1168 (+128), shoulder 457 (+12). Sleeve 711 on 590 is +121 where -5 to 50 is worn: 75 to 110 off above the rib, a ' +
      'knitted join, level 4, so for a hand who does knits.'
  }
]
