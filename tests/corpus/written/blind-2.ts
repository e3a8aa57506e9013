/** Eighty hard texts, read and scored once before anything was mended from them (tests/bench/written.md). */
import type { WrittenCase } from './written-case.ts'

export const blind2: WrittenCase[] = [
  {
    id: 'f2-en-01',
    class: 'doubled',
    lang: 'en',
    title: '1950s novelty print full skirted cotton day dress - small',
    text: 'Sweet mid-fifties day dress in crisp cotton, printed all over with tiny sailing boats on sea green. Square neck, metal zip in the side seam, and a gathered skirt that really wants a petticoat beneath it (ours is for the photos only).\n\nAll girths below have been doubled for you, lengths are as they lie.\n\nBust 34"\nWaist 25.5"\nHips free\nShoulder seam to shoulder seam 14"\nLength from shoulder 42"\nplus a generous 2" hem to let down\n\nMarked a 12, but that is a period 12 and nothing like today\'s. One pinprick hole near the back hem, otherwise lovely.',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '34"', value: 34, unit: 'in', basis: 'around' },
      { point: 'waist', text: '25.5"', value: 25.5, unit: 'in', basis: 'around' },
      { point: 'shoulderWidth', text: '14"', value: 14, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '42"', value: 42, unit: 'in', basis: 'length' }
    ],
    aside: ['2"', '12'],
    price: null,
    fibres: [['cotton', null]],
    lined: null,
    cut: { silhouette: 'gathered' }
  },
  {
    id: 'f2-en-02',
    class: 'range',
    lang: 'en',
    title: '70s block print wrap skirt, boho hippie maxi, cotton',
    text: 'Hand blocked in rust and indigo, the real thing from about 1974. Ties wherever you like it so the waist will go anywhere from 26 to 34 inches, and hips are free. Length 39 inches from the top of the band. On me (5ft 6) it skims the ankle bone.\n\n100% cotton, unlined, washes beautifully. Some fading along the ties which you would expect.\n\n£32 and £3.60 to post second class.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '26 to 34 inches', value: 30, unit: 'in', basis: 'around', low: 26, high: 34 },
      { point: 'skirtLength', text: '39 inches', value: 39, unit: 'in', basis: 'length' }
    ],
    aside: ['1974', '5ft 6', '3.60'],
    price: { amount: 32, currency: 'GBP' },
    fibres: [['cotton', 100]],
    lined: 'none',
    cut: { silhouette: 'wrap', dressLength: 'maxi' }
  },
  {
    id: 'f2-en-03',
    class: 'styling',
    lang: 'en',
    title: 'Vintage 80s Oversized Houndstooth Blazer',
    text: "Big, boxy and brilliant. This is the blazer you throw over a silk slip dress in the evening or straight leg jeans and a white tee on Sunday morning. Shoulder pads still in (they unpick in two minutes), fully lined in burgundy satin, two flap pockets.\n\nLabelled a 16, we'd say best on a modern 10-14 worn oversized.\n\nLaid flat, buttoned:\nPit to pit 22.5in\nAcross the shoulders 18in\nSleeve from shoulder seam 23in\nLength, nape to hem 29.5in\n\nShell: 70% wool 30% polyester\nLining: 100% acetate\n\nAlso looks great with our 501 style jeans, listed separately.\n\n£45 with free UK delivery",
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '22.5in', value: 22.5, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '18in', value: 18, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '23in', value: 23, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '29.5in', value: 29.5, unit: 'in', basis: 'length' }
    ],
    aside: ['501', '16', '10-14'],
    price: { amount: 45, currency: 'GBP' },
    fibres: [
      ['wool', 70],
      ['polyester', 30]
    ],
    lined: 'full',
    cut: { closeness: 'oversized' }
  },
  {
    id: 'f2-en-04',
    class: 'dual-slash',
    lang: 'en',
    title: '1940s style high waisted wide leg trousers, navy, side buttons',
    text: 'Reproduction forties trousers, worn to two dances. Sits right up on the waist with three buttons at the left side, two pressed pleats each side.\n\nWaist 29" / 74cm\nHip 41" / 104cm\nRise 13" / 33cm\nInside leg 31" / 79cm\nOutside leg 43.5" / 110cm\nHem, straight across 11.5" / 29cm\n\nGirths are all the way round apart from the hem.\n52% polyester 45% wool 3% elastane. No lining. UK 14 on the label but they run small.\n\n£55 plus postage',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '29"', value: 29, unit: 'in', basis: 'around' },
      { point: 'hip', text: '41"', value: 41, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '13"', value: 13, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '31"', value: 31, unit: 'in', basis: 'length' },
      { point: 'outseam', text: '43.5"', value: 43.5, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '11.5"', value: 11.5, unit: 'in', basis: 'flat' }
    ],
    aside: ['14'],
    price: { amount: 55, currency: 'GBP' },
    fibres: [
      ['polyester', 52],
      ['wool', 45],
      ['elastane', 3]
    ],
    lined: 'none',
    cut: { rise: 'high', leg: 'wide' }
  },
  {
    id: 'f2-en-05',
    class: 'era-prose',
    lang: 'en',
    title: 'Early 1960s bottle green swing coat',
    text: 'There was a moment, round about 1961, when everything hung from the shoulder and flew out behind you as you walked, and this coat is exactly that moment. A loopy, nubbly cloth in deep bottle green with a stand away collar, three-quarter sleeves made for long gloves, and one enormous button at the throat. Fully lined in matching satin with a tiny tear under the left arm of the lining, nothing that shows.\n\nShe measures 42 inches around the bust, the sleeve from the shoulder seam is 17 inches, and she is 38½ inches long at the centre back. Waist and hips are entirely free.\n\nI saw its twin at a fair this spring for £340. Yours for £120.',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '42 inches', value: 42, unit: 'in', basis: 'around' },
      { point: 'sleeveLength', text: '17 inches', value: 17, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '38½ inches', value: 38.5, unit: 'in', basis: 'length' }
    ],
    aside: ['1961', '340'],
    price: { amount: 120, currency: 'GBP' },
    fibres: [],
    lined: 'full',
    cut: { sleeve: 'three-quarter' }
  },
  {
    id: 'f2-en-06',
    class: 'glued',
    lang: 'en',
    title: 'Chunky Aran fisherman cable knit, cream, mens M/L',
    text: 'Hand knitted, pure new wool, heavy as a sheep. Crew neck. Cables front and back, honeycomb down the sleeves.\n\nP2P22" L27.5" Slv(from shoulder seam)24" Sh19"\n\n100% wool. Wash at 30 max, dry flat. One small pull on the back neck. Photographed on my son who is 6\'1 and normally a large.\n\n£38 posted',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '22"', value: 22, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '27.5"', value: 27.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '24"', value: 24, unit: 'in', basis: 'length' },
      { point: 'shoulderWidth', text: '19"', value: 19, unit: 'in', basis: 'length' }
    ],
    aside: ['30', "6'1"],
    price: { amount: 38, currency: 'GBP' },
    fibres: [['wool', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-en-07',
    class: 'fractions',
    lang: 'en',
    title: 'Vintage western pearl snap, sawtooth pockets, embroidered yoke',
    text: 'Long sleeved pearl snap shirt from the seventies, chocolate brown with chain stitched roses across both yokes. Sawtooth flap pockets. All snaps snap.\n\nTag reads 16 (neck). Measured flat:\n- pit to pit (snapped): 21 1/2"\n- shoulders [seam to seam]: 17 3/4"\n- sleeve (shoulder seam to end of cuff): 24 1/4"\n- length (bottom of collar to tail): 30 1/2"\n\n65% cotton 35% polyester.\n\nShipping is a flat $6 in the lower states.',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '21 1/2"', value: 21.5, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '17 3/4"', value: 17.75, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '24 1/4"', value: 24.25, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '30 1/2"', value: 30.5, unit: 'in', basis: 'length' }
    ],
    aside: ['16', '$6'],
    price: null,
    fibres: [
      ['cotton', 65],
      ['polyester', 35]
    ],
    lined: null,
    cut: { sleeve: 'long' }
  },
  {
    id: 'f2-en-08',
    class: 'w-x-l',
    lang: 'en',
    title: '90s tour tee single stitch faded black XL',
    text: 'Single stitch sleeves and hem. Printed front and back, fully cracked and faded the way you want it. A few pinholes at the collar, shown.\n\nTagged XL, fits more like a L.\n22.5" x 29" (width pit to pit x length)\nAll cotton 100%.\nTour dates on the back run through 1993.\n\nCondition 7 out of 10. $60 USD firm.',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '22.5"', value: 22.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '29"', value: 29, unit: 'in', basis: 'length' }
    ],
    aside: ['1993', '7'],
    price: { amount: 60, currency: 'USD' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-en-09',
    class: 'second-cuffed',
    lang: 'en',
    title: 'Vintage selvedge denim straight leg, dark indigo, button fly, made in Japan',
    text: 'Five pocket, button fly, 14oz selvedge with a pink ID line. Mid rise and straight from the knee down. Tag says 32 x 34 but they have been soaked and shrunk, so go by these:\n\nWaist, flat: 15.5in\nFront rise: 11in\nBack rise: 14.5in\nThigh at crotch, flat: 11.75in\nLeg opening, flat: 8in\nInseam: 31in uncuffed (28.5in with the turn-ups as photographed)\n\n100% cotton. Honeycombs starting behind the knees, no repairs.\n\n£90',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '15.5in', value: 15.5, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '11in', value: 11, unit: 'in', basis: 'length' },
      { point: 'backRise', text: '14.5in', value: 14.5, unit: 'in', basis: 'length' },
      { point: 'thigh', text: '11.75in', value: 11.75, unit: 'in', basis: 'flat' },
      { point: 'legOpening', text: '8in', value: 8, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '31in', value: 31, unit: 'in', basis: 'length' }
    ],
    second: [{ point: 'inseam', text: '28.5in' }],
    aside: ['32 x 34', '14oz'],
    price: { amount: 90, currency: 'GBP' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { leg: 'straight', rise: 'mid' }
  },
  {
    id: 'f2-en-10',
    class: 'range-elastic',
    lang: 'en',
    title: 'Linen pull on shorts sage green holiday beach',
    text: "Bought for a holiday that didn't happen! Drawstring and elastic so there's plenty of give.\n\nwaist 34-46cm flat, relaxed to fully stretched\nhips 54cm flat\nrise 31cm\ninside leg 14cm\nleg opening 32cm flat\n\n55% linen 45% viscose, not lined. I'd say a 10-12. Cost £35, asking £14. Postage £2.80 or collect.",
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '34-46cm', value: 40, unit: 'cm', basis: 'flat', low: 34, high: 46 },
      { point: 'hip', text: '54cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '14cm', value: 14, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '32cm', value: 32, unit: 'cm', basis: 'flat' }
    ],
    aside: ['£35', '10-12', '2.80'],
    price: { amount: 14, currency: 'GBP' },
    fibres: [
      ['linen', 55],
      ['viscose', 45]
    ],
    lined: 'none',
    cut: {}
  },
  {
    id: 'f2-en-11',
    class: 'abbrev',
    lang: 'en',
    title: 'French workwear herringbone boiler suit, faded grey, 1960s deadstock',
    text: 'Unissued coverall in the good hard herringbone twill cotton, stiff now and soft in a year. Full length zip, action back, stamped 48 on the inside collar.\n\nAll LF:\nPtP 23"\nSh 18.5"\nSlv 23.5"\nW 20"\nHips 22.5"\nIns leg 29"\nLeg opening 9"\n\n(LF = laid flat, double the widths)\nNo lining. Storage creases which will wash out.\n\nBelt and boots are the model\'s own.',
    kind: 'jumpsuit',
    measures: [
      { point: 'chest', text: '23"', value: 23, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '18.5"', value: 18.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '23.5"', value: 23.5, unit: 'in', basis: 'length' },
      { point: 'waist', text: '20"', value: 20, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '22.5"', value: 22.5, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '29"', value: 29, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '9"', nth: 2, value: 9, unit: 'in', basis: 'flat' }
    ],
    aside: ['48'],
    price: null,
    fibres: [['cotton', null]],
    lined: 'none',
    cut: {}
  },
  {
    id: 'f2-en-12',
    class: 'abbrev',
    lang: 'en',
    title: 'Gents tweed six button vest/waistcoat, hunting, country, peaky',
    text: 'From a three piece whose jacket and trousers are long gone. Lovat tweed front with a heather overcheck, satin back with working cinch. Six buttons, four pockets, lined throughout.\n\nChest, p2p: 20.5 ins\nWaist, flat, cinch undone: 19 ins\nL down centre back: 22 ins\nSh: 13.5 ins\n\nThe label says 40R. Front 100% wool, lining viscose.\n\n£26 + 2nd class post.',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '20.5 ins', value: 20.5, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '19 ins', value: 19, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '22 ins', value: 22, unit: 'in', basis: 'length' },
      { point: 'shoulderWidth', text: '13.5 ins', value: 13.5, unit: 'in', basis: 'length' }
    ],
    aside: ['40R'],
    price: { amount: 26, currency: 'GBP' },
    fibres: [['wool', 100]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'f2-en-13',
    class: 'set',
    lang: 'en',
    title: 'Navy chalk stripe suit, double breasted, 1990s tailoring, 42R',
    text: 'Proper English tailoring, double breasted with peak lapels. The label reads 42R with a 36 trouser, but it has been altered so please use the tape.\n\nJACKET (flat, fastened)\nPit to pit 22"\nShoulders 18.75"\nSleeve 24.5"\nLength from under collar 30.5"\n\nTROUSERS\nWaist 17.25" flat\nInside leg 30"\nRise 12"\nHem 8.5" across\n\nPure wool (100%). The jacket is half lined. £95 for both pieces, sorry I won\'t split.',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '22"', value: 22, unit: 'in', basis: 'flat', of: 'jacket' },
      { point: 'shoulderWidth', text: '18.75"', value: 18.75, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'sleeveLength', text: '24.5"', value: 24.5, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '30.5"', value: 30.5, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '17.25"', value: 17.25, unit: 'in', basis: 'flat', of: 'trousers' },
      { point: 'inseam', text: '30"', value: 30, unit: 'in', basis: 'length', of: 'trousers' },
      { point: 'frontRise', text: '12"', value: 12, unit: 'in', basis: 'length', of: 'trousers' },
      { point: 'legOpening', text: '8.5"', value: 8.5, unit: 'in', basis: 'flat', of: 'trousers' }
    ],
    aside: ['42R', '36'],
    price: { amount: 95, currency: 'GBP' },
    fibres: [['wool', 100]],
    lined: 'half',
    cut: {}
  },
  {
    id: 'f2-en-14',
    class: 'set',
    lang: 'en',
    title: '60s bouclé skirt suit, pale pink, jacket & skirt',
    text: 'First lady pink! Short boxy jacket with gilt buttons and a matching straight skirt with a kick pleat. Wool bouclé, both pieces fully lined in silk.\n\nCircumferences are given all the way round.\n\nJacket: bust 94 cm, waist 90 cm, shoulders 39 cm, sleeves 50 cm, length 52 cm\nSkirt: waist 68 cm, hips 96 cm, length 59 cm\n\nOur dress form is a size 38 and the skirt is clipped at the back.\n\n140 € for the set',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '94 cm', value: 94, unit: 'cm', basis: 'around', of: 'jacket' },
      { point: 'waist', text: '90 cm', value: 90, unit: 'cm', basis: 'around', of: 'jacket' },
      { point: 'shoulderWidth', text: '39 cm', value: 39, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'sleeveLength', text: '50 cm', value: 50, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '52 cm', value: 52, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '68 cm', value: 68, unit: 'cm', basis: 'around', of: 'skirt' },
      { point: 'hip', text: '96 cm', value: 96, unit: 'cm', basis: 'around', of: 'skirt' },
      { point: 'skirtLength', text: '59 cm', value: 59, unit: 'cm', basis: 'length', of: 'skirt' }
    ],
    aside: ['38'],
    price: { amount: 140, currency: 'EUR' },
    fibres: [['wool', null]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'f2-en-15',
    class: 'kind-by-style',
    lang: 'en',
    title: 'Camel duffle, toggles, tartan inside',
    text: 'An eighties classic and warm as toast. Horn toggles on leather loops, deep hood, two patch pockets you can get a paperback in. Half lined, the rest is the tartan back of the cloth itself.\n\npit to pit 59cm\nshoulder to shoulder 48cm\nsleeve 62cm\nlength from base of hood 93cm\n\n80% wool, 20% nylon\n\nA bit of bobbling at the cuffs. Worn over a thick jumper all last winter with cords.',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '59cm', value: 59, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '48cm', value: 48, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '93cm', value: 93, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: null,
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ],
    lined: 'half',
    cut: {}
  },
  {
    id: 'f2-en-16',
    class: 'keyword-title',
    lang: 'en',
    title: 'VTG 90s denim button front A-line skirt western boho festival grunge jeans jacket style cowgirl',
    text: "Midi length, buttons all the way down, two patch pockets. Great with cowboy boots and a tucked in shirt.\n\n37cm waist (flat) ~ 50cm hip (flat) ~ 74cm long ~ 68cm across the hem\n\n98% cotton 2% elastane\n\n£24. Buy another thing from my shop and I'll take £3 off the postage.",
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '37cm', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '50cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '74cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '68cm', value: 68, unit: 'cm', basis: 'flat' }
    ],
    aside: ['£3'],
    price: { amount: 24, currency: 'GBP' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    lined: null,
    cut: { silhouette: 'a-line', dressLength: 'midi' }
  },
  {
    id: 'f2-en-17',
    class: 'other',
    lang: 'en',
    title: '1930s bias cut peach nightgown, silk satin, ecru lace',
    text: 'Could be worn out to dinner with a velvet jacket over it and nobody would know. Bias cut silk satin with hand set lace at the bust and godets at the side.\n\nTaken all round, easing the bias a little at a time:\nBust 32-36"\nWaist 25-30"\nHips 38"\nLength from top of strap 52"\n\nUnlined. Two careful darns by the hem.',
    kind: 'other',
    measures: [
      { point: 'chest', text: '32-36"', value: 34, unit: 'in', basis: 'around', low: 32, high: 36 },
      { point: 'waist', text: '25-30"', value: 27.5, unit: 'in', basis: 'around', low: 25, high: 30 },
      { point: 'hip', text: '38"', value: 38, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '52"', value: 52, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: null,
    fibres: [['silk', null]],
    lined: 'none',
    cut: { silhouette: 'bias' }
  },
  {
    id: 'f2-en-18',
    class: 'second-stretched',
    lang: 'en',
    title: 'Retro pin up swimsuit ruched halter polka dot one piece',
    text: 'Tags still on, hygiene strip in place. Ruched front with a halter that buttons behind the neck, fully lined, soft removable cups.\n\nMeasured unstretched:\nbust 39cm flat, stretches to 50cm\nwaist 33cm flat, stretches to 44cm\nhips 38cm flat, stretches to 52cm\n\n82% polyamide 18% elastane\nSize 12. RRP £48, I want £20.',
    kind: 'other',
    measures: [
      { point: 'chest', text: '39cm', value: 39, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '33cm', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '38cm', value: 38, unit: 'cm', basis: 'flat' }
    ],
    second: [
      { point: 'chest', text: '50cm' },
      { point: 'waist', text: '44cm' },
      { point: 'hip', text: '52cm' }
    ],
    aside: ['12', '£48'],
    price: { amount: 20, currency: 'GBP' },
    fibres: [
      ['polyamide', 82],
      ['elastane', 18]
    ],
    lined: 'full',
    cut: {}
  },
  {
    id: 'f2-en-19',
    class: 'kind-by-style',
    lang: 'en',
    title: 'Vintage Japanese silk kimono robe, black with cranes, boho duster',
    text: 'A true kimono, hand sewn, probably from the seventies. Wear it loose over jeans and a camisole or belted over a slip dress.\n\nOne size. Across the chest, side seam to side seam, it is 61cm. Nape of neck to end of sleeve 64cm. Length nape to hem 148cm.\n\nOuter 100% silk, lining 100% cotton and complete. A couple of age marks on the lining, cannot be seen when worn.\n\nAUD 85, post at cost.',
    kind: 'other',
    measures: [
      { point: 'chest', text: '61cm', value: 61, unit: 'cm', basis: 'flat' },
      { point: 'sleeveFromCentreBack', text: '64cm', value: 64, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '148cm', value: 148, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: { amount: 85, currency: 'AUD' },
    fibres: [['silk', 100]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'f2-en-20',
    class: 'model',
    lang: 'en',
    title: 'Tie shoulder linen playsuit, terracotta',
    text: 'Model is 5\'9" with a 34" bust and 26" waist and wears a UK 8, which is what this is.\n\nThe garment itself:\nBust 17.25" side to side\nWaist 13.75" side to side\nHips 20.5" side to side\nInside leg 3"\nRise 13.25"\n\n100% linen, bodice lined only. Sleeveless, ties at both shoulders.',
    kind: 'jumpsuit',
    measures: [
      { point: 'chest', text: '17.25"', value: 17.25, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '13.75"', value: 13.75, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '20.5"', value: 20.5, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '3"', value: 3, unit: 'in', basis: 'length' },
      { point: 'frontRise', text: '13.25"', value: 13.25, unit: 'in', basis: 'length' }
    ],
    aside: ['5\'9"', '34"', '26"'],
    price: null,
    fibres: [['linen', 100]],
    lined: 'half',
    cut: { sleeve: 'sleeveless' }
  },
  {
    id: 'f2-en-21',
    class: 'emoji',
    lang: 'en',
    title: '🌼 60s mod shift dress 🌼',
    text: '✨ Groovy mini shift with long sleeves and a dagger collar ✨\n📏 P2P 18"\n📏 Waist 17.5" flat\n📏 Hip 19" flat\n📏 Length 33"\n📏 Sleeve 22"\n🧵 100% crimplene polyester, unlined\n🛁 gentle machine wash\n💃 I\'m 5\'4 and a size 10 and it fits me great with tights and boots\n💷 £36 – 📦 included',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '18"', value: 18, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '17.5"', value: 17.5, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '19"', value: 19, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '33"', value: 33, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '22"', value: 22, unit: 'in', basis: 'length' }
    ],
    aside: ["5'4"],
    price: { amount: 36, currency: 'GBP' },
    fibres: [['polyester', 100]],
    lined: 'none',
    cut: { silhouette: 'shift', dressLength: 'mini', sleeve: 'long' }
  },
  {
    id: 'f2-en-22',
    class: 'price',
    lang: 'en',
    title: 'Harrington, stone, tartan lined, mens medium',
    text: 'Bought new for £85, was listed at £45, now reduced to £30 as I need the space. Postage is £4.20 tracked. Or take it with the polo in my other listing for £55 the pair.\n\nChest pit to pit 54cm // Length at back 66cm // Arm from shoulder 63cm // Bottom rib, relaxed, flat 44cm\n\nThe tartan goes through the whole body.',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '54cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '66cm', value: 66, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '63cm', value: 63, unit: 'cm', basis: 'length' },
      { point: 'hem', text: '44cm', value: 44, unit: 'cm', basis: 'flat' }
    ],
    aside: ['£85', '£45', '4.20', '£55'],
    price: { amount: 30, currency: 'GBP' },
    fibres: [],
    lined: 'full',
    cut: {}
  },
  {
    id: 'f2-en-23',
    class: 'no-garment',
    lang: 'en',
    title: 'Vintage frame handbag, brown crocodile embossed, 1950s, goes with suit or coat',
    text: 'A ladylike top handle bag to finish a tailored suit or a swing coat. Brass frame with a kiss clasp that still snaps, suede lined, one inside pocket with the original mirror.\n\nWidth 27cm, height 20cm, depth 9cm, handle drop 35cm including the frame.\n\nLight wear at the corners. £40',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['27cm', '20cm', '9cm', '35cm'],
    price: { amount: 40, currency: 'GBP' },
    fibres: [],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-en-24',
    class: 'no-garment',
    lang: 'en',
    title: 'Floral cotton lawn remnant, dress/blouse fabric',
    text: "Dressmaking fabric, never cut. Enough here for a summer blouse or a child's dress. Tiny flowers in plum and teal.\n\nLength 2.4 m x width 136 cm. 100% cotton, washed once. Works out at less than £8.50 a metre.\n\n£18 for the piece, folded and posted in an envelope.",
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['2.4 m', '136 cm', '8.50'],
    price: { amount: 18, currency: 'GBP' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-en-25',
    class: 'no-garment',
    lang: 'en',
    title: '1940s sewing pattern, ladies blouse & slacks, bust 34, uncut',
    text: 'Printed pattern for a blouse with sleeves in two lengths and a pair of high waisted slacks. Factory folded, all the pieces present, instruction sheet has one small tear.\n\nEnvelope size: bust 34, waist 28, hip 37. Please remember that old sizing is not modern sizing.\n\n$15 USD, will combine post on several patterns.',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['34', '28', '37'],
    price: { amount: 15, currency: 'USD' },
    fibres: [],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-en-26',
    class: 'no-garment',
    lang: 'en',
    title: 'Tan leather knee high boots, 70s, stacked heel, UK 6',
    text: 'The boot to wear with a suede mini skirt or tucked under flares. Inside zip runs well, heels were tipped last month.\n\nInsole 26cm, heel 10cm, shaft height 38cm, calf 36cm all round at the top.',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['26cm', '10cm', '38cm', '36cm'],
    price: null,
    fibres: [],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-en-27',
    class: 'w-x-l',
    lang: 'en',
    title: 'Boxy cropped camp collar shirt, lemon print, 1980s, rayon',
    text: "Short sleeves, one chest pocket, coconut buttons. Boxy and cropped, made to sit at the top of a high waisted skirt or shorts.\n\nMeasures 55 x 56 cm (pit to pit x back length), sleeve 23 cm, shoulders 46 cm.\n\n100% rayon. Labelled 16 but it's anyone's guess. No lining of course.\n\n£19",
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '55', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '56', value: 56, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '23', value: 23, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '46', value: 46, unit: 'cm', basis: 'length' }
    ],
    aside: ['16'],
    price: { amount: 19, currency: 'GBP' },
    fibres: [['viscose', 100]],
    lined: 'none',
    cut: { topLength: 'cropped', sleeve: 'short' }
  },
  {
    id: 'f2-en-28',
    class: 'dual-slash',
    lang: 'en',
    title: 'Belted shirtwaister, gingham, pin tucks, 1950s',
    text: 'Red and white gingham shirtwaister with self belt, little short sleeves with turned back cuffs, pin tucks at the front and buttons to the hip.\n\nMeasurements (double where needed – widths are flat)\nArmpit to armpit: 48cm/19"\nWaist: 36.5cm/14.5"\nShoulder: 37cm/14.5"\nSleeve: 21cm/8.25"\nLength: 109cm/43"\nHips: free, full skirt\n\nLabel says 14. Belt eyelets slightly rusted.',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '48cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '36.5cm', value: 36.5, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '37cm', value: 37, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '21cm', value: 21, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '109cm', value: 109, unit: 'cm', basis: 'length' }
    ],
    aside: ['14'],
    price: null,
    fibres: [],
    lined: null,
    cut: { silhouette: 'shirt-dress', sleeve: 'short' }
  },
  {
    id: 'f2-en-29',
    class: 'era-prose',
    lang: 'en',
    title: 'A pair of 1970s cord bells',
    text: "If you were on the King's Road in 1972 you wore these with a skinny rib and platforms. Rust needlecord, low on the hip with a wide buttoned band, tight to the knee and then off they go. Zip is metal and runs well.\n\nFlat across the waistband they're 15 inches, across the hip 18.5 inches, and the bottom of each leg is a glorious 13 inches straight across. The inside leg is 32 inches and the front rise just 9 inches. Knee 8 inches flat.\n\nThe paper tag says 28 and it's fibbing.\n\n£42",
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '15 inches', value: 15, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '18.5 inches', value: 18.5, unit: 'in', basis: 'flat' },
      { point: 'legOpening', text: '13 inches', value: 13, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '32 inches', value: 32, unit: 'in', basis: 'length' },
      { point: 'frontRise', text: '9 inches', value: 9, unit: 'in', basis: 'length' },
      { point: 'knee', text: '8 inches', value: 8, unit: 'in', basis: 'flat' }
    ],
    aside: ['1972', '28'],
    price: { amount: 42, currency: 'GBP' },
    fibres: [],
    lined: null,
    cut: { rise: 'low', leg: 'flared' }
  },
  {
    id: 'f2-en-30',
    class: 'second-collar',
    lang: 'en',
    title: "Short leather bomber, black, ribbed, women's",
    text: 'Butter soft lamb leather (about 0.8 mm), knitted rib at cuffs and hem, quilted lining all through including the sleeves.\n\nFlat:\npit to pit 51cm\nshoulder 42cm\nsleeve incl rib 61cm\nback length without collar 54cm, with collar 60cm\nhem rib relaxed 38cm, stretched 49cm\n\nPictured on a friend who is 168cm tall over a hoodie and jogging bottoms.\n£70',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '51cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '42cm', value: 42, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61cm', value: 61, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '54cm', value: 54, unit: 'cm', basis: 'length' },
      { point: 'hem', text: '38cm', value: 38, unit: 'cm', basis: 'flat' }
    ],
    second: [
      { point: 'bodyLength', text: '60cm' },
      { point: 'hem', text: '49cm' }
    ],
    aside: ['0.8', '168cm'],
    price: { amount: 70, currency: 'GBP' },
    fibres: [['leather', null]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'f2-en-31',
    class: 'glued',
    lang: 'en',
    title: 'Dungarees wide leg ecru drill workwear painter style',
    text: 'Wide leg, hammer loop, bib pocket, adjustable straps. Sturdy drill, unlined. Label M.\n\nwaist flat 42cm/hips flat 56cm/rise 34cm/inside leg 66cm/hem flat 27cm\n\nSmall turquoise paint fleck on left knee which I think adds to it. Wear with a stripy top and clogs. £28 collected or add £3.95.',
    kind: 'jumpsuit',
    measures: [
      { point: 'waist', text: '42cm', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '56cm', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '34cm', value: 34, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '66cm', value: 66, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '27cm', value: 27, unit: 'cm', basis: 'flat' }
    ],
    aside: [],
    price: { amount: 28, currency: 'GBP' },
    fibres: [],
    lined: 'none',
    cut: { leg: 'wide' }
  },
  {
    id: 'f2-en-32',
    class: 'second-stretched',
    lang: 'en',
    title: 'Skinny rib polo neck, mustard, 70s, mod',
    text: 'Proper skinny rib, clings like a scuba diver. Fine gauge jumper with a zip at the back of the neck.\n\nBust, unstretched, 28" all round; pulled out it reaches 38". Sleeves 21" from shoulder seam. Length from the shoulder (neck not included) 22".\n\n100% acrylic, so it has lasted 50 years without a moth. Fitted.\n\n£16, postage £3.20',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '28"', value: 28, unit: 'in', basis: 'around' },
      { point: 'sleeveLength', text: '21"', value: 21, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '22"', value: 22, unit: 'in', basis: 'length' }
    ],
    second: [{ point: 'chest', text: '38"' }],
    aside: ['50'],
    price: { amount: 16, currency: 'GBP' },
    fibres: [['acrylic', 100]],
    lined: null,
    cut: { closeness: 'fitted' }
  },
  {
    id: 'f2-en-33',
    class: 'kind-by-style',
    lang: 'en',
    title: 'Breton, long sleeve, heavyweight, navy/ecru',
    text: 'The proper weight of cotton jersey, boat neck, hemmed with side slits. Size 4 on the label = medium.\n\nChest 51 cm · Shoulder 44 cm · Sleeve 58 cm · Length 66 cm (all flat, unstretched)\n\n100% cotton. Worn perhaps five times. €18, postage to France and Belgium €5.50.',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '51 cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '44 cm', value: 44, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58 cm', value: 58, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '66 cm', value: 66, unit: 'cm', basis: 'length' }
    ],
    aside: ['4'],
    price: { amount: 18, currency: 'EUR' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { sleeve: 'long' }
  },
  {
    id: 'f2-en-34',
    class: 'styling',
    lang: 'en',
    title: 'Pleated tartan kilt style skirt, 80s prep, leather buckles',
    text: "Add a roll neck, an oversized blazer and loafers and you have the whole school-run-in-a-film look. Two leather buckles, fringed edge, knife pleats from the hip. Unlined, 100% pure new wool.\n\nWaist 28-30in all round, depending on the hole\nHips, all round, 39in\nLength 25in including waistband\n\nLabel says 14. Kilt pin £6 extra if you'd like it. £34",
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '28-30in', value: 29, unit: 'in', basis: 'around', low: 28, high: 30 },
      { point: 'hip', text: '39in', value: 39, unit: 'in', basis: 'around' },
      { point: 'skirtLength', text: '25in', value: 25, unit: 'in', basis: 'length' }
    ],
    aside: ['£6', '14'],
    price: { amount: 34, currency: 'GBP' },
    fibres: [['wool', 100]],
    lined: 'none',
    cut: { silhouette: 'kilt' }
  },
  {
    id: 'f2-en-35',
    class: 'price',
    lang: 'en',
    title: 'Down gilet, forest green, packable, ladies',
    text: 'Was £110 in the shop, last month I asked £32, today it is £27.50.\n\nOuter 100% nylon, lining 100% nylon, filling 90% down 10% feather. Zip front with two zip pockets, folds into its own bag.\n\nZipped and laid flat: pit to pit 50 cm, waist 47 cm, hem 52 cm, length at back from collar seam 62 cm, shoulders 38 cm.',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '50 cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '47 cm', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'hem', text: '52 cm', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '62 cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '38 cm', value: 38, unit: 'cm', basis: 'length' }
    ],
    aside: ['£110', '£32', '90%'],
    price: { amount: 27.5, currency: 'GBP' },
    fibres: [['polyamide', 100]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'f2-en-36',
    class: 'doubled',
    lang: 'en',
    title: 'Edwardian style lawn blouse, high neck, insertion lace, c.1910',
    text: 'Antique shirtwaist in sheer cotton lawn, all hand finished with bands of valenciennes lace. Long sleeves with lace to the wrist, buttons down the back (5 replaced).\n\nNote: chest, waist and neck have already been doubled.\nbust: 36"\nwaist: 23"\nneck: 13.5"\nshoulder to shoulder: 14.25"\nsleeve: 21.5"\nlength: 20"\n\nWear it tucked in to a long skirt or, as we like it, with old jeans.\n\nUSD 95 plus shipping',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '36"', value: 36, unit: 'in', basis: 'around' },
      { point: 'waist', text: '23"', value: 23, unit: 'in', basis: 'around' },
      { point: 'neck', text: '13.5"', value: 13.5, unit: 'in', basis: 'around' },
      { point: 'shoulderWidth', text: '14.25"', value: 14.25, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '21.5"', value: 21.5, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '20"', value: 20, unit: 'in', basis: 'length' }
    ],
    aside: ['5'],
    price: { amount: 95, currency: 'USD' },
    fibres: [['cotton', null]],
    lined: null,
    cut: { sleeve: 'long' }
  },
  {
    id: 'f2-en-37',
    class: 'fractions',
    lang: 'en',
    title: 'Black velvet opera cape, hooded, 1930s, red lining',
    text: 'Silk velvet with a deep ruched collar and hood, closing with a tasselled cord. Lined throughout in scarlet satin with some splits which I have shown.\n\nA cape so no bust to speak of. Across the shoulders it is 16½", neck 15¼" round, length from the back of the neck 47¾", hem sweep 118" round.\n\n£180. The gown beneath it belongs to the shop and is not for sale.',
    kind: 'other',
    measures: [
      { point: 'shoulderWidth', text: '16½"', value: 16.5, unit: 'in', basis: 'length' },
      { point: 'neck', text: '15¼"', value: 15.25, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '47¾"', value: 47.75, unit: 'in', basis: 'length' },
      { point: 'sweep', text: '118"', value: 118, unit: 'in', basis: 'around' }
    ],
    aside: [],
    price: { amount: 180, currency: 'GBP' },
    fibres: [['silk', null]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'f2-en-38',
    class: 'model',
    lang: 'en',
    title: 'Tailored bermuda shorts, pinstripe, pleat front, high rise',
    text: 'Our model is 178 cm (waist 68, hips 94) and is wearing these with a waistcoat and a poplin shirt, neither included.\n\nWaist 36 cm across, hips 51 cm across, rise 32.5 cm, inseam 24 cm, leg opening 30 cm across, total length 54 cm.\n\n64% polyester, 33% viscose, 3% elastane. No lining.',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '36 cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '51 cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '32.5 cm', value: 32.5, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '24 cm', value: 24, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '30 cm', value: 30, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '54 cm', value: 54, unit: 'cm', basis: 'length' }
    ],
    aside: ['178', '68', '94'],
    price: null,
    fibres: [
      ['polyester', 64],
      ['viscose', 33],
      ['elastane', 3]
    ],
    lined: 'none',
    cut: { rise: 'high', legLength: 'bermuda' }
  },
  {
    id: 'f2-en-39',
    class: 'keyword-title',
    lang: 'en',
    title: 'Y2K low rise bootcut jeans flared pants 00s cyber denim skirt top style bratz',
    text: 'Low rise bootcuts with a pale whisker wash & rhinestones on the back pockets (missing 7, they are tiny).\n\nTag 29 but plz check:\nwaist 15.75" LF\nhips 19" LF\nfront rise 7.75"\nins 32"\nleg op 9.25" LF\n\n97% cotton 3% spandex. LF means laid flat so double it :)\n\n26 USD shipped',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '15.75"', value: 15.75, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '19"', value: 19, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '7.75"', value: 7.75, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '32"', value: 32, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '9.25"', value: 9.25, unit: 'in', basis: 'flat' }
    ],
    aside: ['29', '7'],
    price: { amount: 26, currency: 'USD' },
    fibres: [
      ['cotton', 97],
      ['elastane', 3]
    ],
    lined: null,
    cut: { rise: 'low', leg: 'bootcut' }
  },
  {
    id: 'f2-en-40',
    class: 'set',
    lang: 'en',
    title: 'Linen co-ord: boxy top and skirt, oatmeal',
    text: "Two pieces, cost £130 together, wore them once to a christening.\n\nTop – sleeveless with a button back, woven linen. Bust 52cm flat, length 51cm.\nSkirt – elastic back. Waist 35-43cm flat, hips 55cm flat, length 78cm.\n\nBoth 100% linen, both unlined. I'm 5'7 and the skirt hits mid calf.\n\n£46 the set",
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '52cm', value: 52, unit: 'cm', basis: 'flat', of: 'shirt' },
      { point: 'bodyLength', text: '51cm', value: 51, unit: 'cm', basis: 'length', of: 'shirt' },
      { point: 'waist', text: '35-43cm', value: 39, unit: 'cm', basis: 'flat', low: 35, high: 43, of: 'skirt' },
      { point: 'hip', text: '55cm', value: 55, unit: 'cm', basis: 'flat', of: 'skirt' },
      { point: 'skirtLength', text: '78cm', value: 78, unit: 'cm', basis: 'length', of: 'skirt' }
    ],
    aside: ['£130', "5'7"],
    price: { amount: 46, currency: 'GBP' },
    fibres: [['linen', 100]],
    lined: 'none',
    cut: { sleeve: 'sleeveless' }
  },
  {
    id: 'f2-en-41',
    class: 'fibre-lines',
    lang: 'en',
    title: 'Raglan balmacaan, Donegal tweed, mens large',
    text: 'Fly front raincoat shape in proper flecked tweed. Raglan sleeves, so the arm is measured from the middle of the collar.\n\nCloth: 92% wool, 8% cashmere\nBody lining: 100% viscose\nSleeve lining: 60% acetate 40% viscose\nFully lined.\n\nChest (p2p, buttoned) 24"\nCentre back collar to cuff 34.5"\nCentre back length 45"\nHem, flat 29"\n\nLabel 44.',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '24"', value: 24, unit: 'in', basis: 'flat' },
      { point: 'sleeveFromCentreBack', text: '34.5"', value: 34.5, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '45"', value: 45, unit: 'in', basis: 'length' },
      { point: 'sweep', text: '29"', value: 29, unit: 'in', basis: 'flat' }
    ],
    aside: ['44'],
    price: null,
    fibres: [
      ['wool', 92],
      ['cashmere', 8]
    ],
    lined: 'full',
    cut: { shoulder: 'raglan' }
  },
  {
    id: 'f2-en-42',
    class: 'abbrev',
    lang: 'en',
    title: 'Lambswool V neck golf cardi, argyle, 80s',
    text: 'Button up cardigan, argyle front, plain back and sleeves. Leather football buttons, all there.\n\np2p 21.5 / l 26 / slv (pit to cuff) 18.5 / sh 17 – all inches\n\nLabel 42. 100% lambswool, two moth nips invisibly mended.\n\n£23',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '21.5', value: 21.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '26', value: 26, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '18.5', value: 18.5, unit: 'in', basis: 'length' },
      { point: 'shoulderWidth', text: '17', value: 17, unit: 'in', basis: 'length' }
    ],
    aside: ['42'],
    price: { amount: 23, currency: 'GBP' },
    fibres: [['wool', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-en-43',
    class: 'range',
    lang: 'en',
    title: '90s velvet slip, spaghetti straps, bottle green, midi, grunge prom',
    text: 'Think 95, cherry lipstick, a fitted tee underneath or a mohair cardigan on top. Slip dress with a soft cowl, adjustable straps, midi length. A slim cut through the body.\n\nBust 43 cm pit to pit\nWaist 40 cm flat\nHips 48 cm flat\nStraps from 28-40 cm\nLength without straps 96 cm\n\n78% viscose 22% nylon, not lined.\n\n£29',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '43 cm', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '40 cm', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '48 cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'strap', text: '28-40 cm', value: 34, unit: 'cm', basis: 'length', low: 28, high: 40 },
      { point: 'bodyLength', text: '96 cm', value: 96, unit: 'cm', basis: 'length' }
    ],
    aside: ['95'],
    price: { amount: 29, currency: 'GBP' },
    fibres: [
      ['viscose', 78],
      ['polyamide', 22]
    ],
    lined: 'none',
    cut: { dressLength: 'midi', closeness: 'slim' }
  },
  {
    id: 'f2-en-44',
    class: 'kind-by-style',
    lang: 'en',
    title: '1940s jodhpurs, fawn cavalry twill, land girl',
    text: 'Land-girl era breeches dated 1943 on the label, wool cavalry twill with suede inside the knees. High waist, fly hidden at the side, laced at the calf.\n\nWaist 27" round\nHips 44" round\nRise 13.5"\nInside leg 25"\nCalf 13" round, laces give another inch',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '27"', value: 27, unit: 'in', basis: 'around' },
      { point: 'hip', text: '44"', value: 44, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '13.5"', value: 13.5, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '25"', value: 25, unit: 'in', basis: 'length' },
      { point: 'calf', text: '13"', value: 13, unit: 'in', basis: 'around' }
    ],
    aside: ['1943'],
    price: null,
    fibres: [['wool', null]],
    lined: null,
    cut: { rise: 'high' }
  },
  {
    id: 'f2-ja-01',
    class: 'era-prose',
    lang: 'ja',
    title: '70年代 レトロ 花柄 ワンピース Aライン 昭和レトロ ブラウス風襟',
    text: '1970年代、まだ街に純喫茶があふれていた頃の一着です。大きな襟とオレンジの花柄がたまらなく可愛いAラインのワンピース。\nデニムを重ねたり、冬はタートルニットを中に着ても素敵です。\n\n長袖 裏地なし\nポリエステル100%\n表記は9号ですが実寸をご覧ください。\n\n【平置き実寸】\n肩幅 37cm\n身幅 46cm\nウエスト幅 41cm\n袖丈 54cm\n着丈 101cm\n\n着用スタッフは158cmで膝が隠れるくらいでした。\n\n4,800円(送料込み)',
    kind: 'dress',
    measures: [
      { point: 'shoulderWidth', text: '37cm', value: 37, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '41cm', value: 41, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '54cm', value: 54, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '101cm', value: 101, unit: 'cm', basis: 'length' }
    ],
    aside: ['9号', '158cm'],
    price: { amount: 4800, currency: 'JPY' },
    fibres: [['polyester', 100]],
    lined: 'none',
    cut: { silhouette: 'a-line', sleeve: 'long' }
  },
  {
    id: 'f2-ja-02',
    class: 'set',
    lang: 'ja',
    title: 'ダブル セットアップ スーツ グレンチェック ジャケット スラックス',
    text: '90年代の国内縫製と思われるダブルの上下です。サイズ表記A5。\n\n■ジャケット\n肩幅46cm 身幅54cm 着丈75cm 袖丈59cm\n背抜き仕立て\n\n■スラックス(ツータック)\nウエスト平置き40cm 股上29cm 股下70cm わたり幅33cm 裾幅21cm\n\n表地 毛100%\n裏地 キュプラ100%\n\n上下で9,800円、送料は別途900円です。バラ売りはご遠慮ください。',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '46cm', value: 46, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '54cm', value: 54, unit: 'cm', basis: 'flat', of: 'jacket' },
      { point: 'bodyLength', text: '75cm', value: 75, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'sleeveLength', text: '59cm', value: 59, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '40cm', value: 40, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'frontRise', text: '29cm', value: 29, unit: 'cm', basis: 'length', of: 'trousers' },
      { point: 'inseam', text: '70cm', value: 70, unit: 'cm', basis: 'length', of: 'trousers' },
      { point: 'thigh', text: '33cm', value: 33, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'legOpening', text: '21cm', value: 21, unit: 'cm', basis: 'flat', of: 'trousers' }
    ],
    aside: ['A5', '900円'],
    price: { amount: 9800, currency: 'JPY' },
    fibres: [['wool', 100]],
    lined: 'half',
    cut: {}
  },
  {
    id: 'f2-ja-03',
    class: 'glued',
    lang: 'ja',
    title: '濃紺 セルビッチ デニム ストレート ジーンズ W31 古着',
    text: 'W31表記/13.5oz/綿100%/ボタンフライ\n\nウエスト(平置き)39cm/股上28cm/股下76cm/わたり29.5cm/裾幅20cm\n\n右膝に小さな当て布補修あり。ヒゲ、ハチノスはこれからです。白Tシャツとスニーカーでさらっと穿いてください。\n\n即決6,500円',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '39cm', value: 39, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '28cm', value: 28, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '76cm', value: 76, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '29.5cm', value: 29.5, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '20cm', value: 20, unit: 'cm', basis: 'flat' }
    ],
    aside: ['W31', '13.5oz'],
    price: { amount: 6500, currency: 'JPY' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { leg: 'straight' }
  },
  {
    id: 'f2-ja-04',
    class: 'styling',
    lang: 'ja',
    title: 'ロングジレ 麻混 ベージュ ベルト付き',
    text: 'シャツワンピースの上から、パンツにもスカートにも。一枚羽織るだけで縦のラインが出る丈長のジレです。定価12,100円。\n\n麻55% 綿45%\n裏地はありません\n\n着丈:98㎝\n肩幅:36㎝\n身幅:49㎝\n\nお値下げ後 3,200円',
    kind: 'waistcoat',
    measures: [
      { point: 'bodyLength', text: '98㎝', value: 98, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '36㎝', value: 36, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '49㎝', value: 49, unit: 'cm', basis: 'flat' }
    ],
    aside: ['12,100円'],
    price: { amount: 3200, currency: 'JPY' },
    fibres: [
      ['linen', 55],
      ['cotton', 45]
    ],
    lined: 'none',
    cut: { topLength: 'longline' }
  },
  {
    id: 'f2-ja-05',
    class: 'w-x-l',
    lang: 'ja',
    title: 'ハワイアン柄 半袖 開襟 レーヨン 椰子ボタン L',
    text: '50年代の柄を復刻した開襟シャツ。とろみのあるレーヨン100%、椰子ボタン、片胸ポケット。半袖です。\n\n身幅57cm×着丈70cm\n肩幅47cm×袖丈23cm\n\nモデル172cm、ショーツと合わせて着用しています(ショーツは商品ではありません)。\n\n5,400円',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '57cm', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70cm', value: 70, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '47cm', value: 47, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '23cm', value: 23, unit: 'cm', basis: 'length' }
    ],
    aside: ['172cm'],
    price: { amount: 5400, currency: 'JPY' },
    fibres: [['viscose', 100]],
    lined: null,
    cut: { sleeve: 'short' }
  },
  {
    id: 'f2-ja-06',
    class: 'range-elastic',
    lang: 'ja',
    title: 'プリーツスカート サテン ロング ウエストゴム くすみブルー',
    text: 'ウエスト総ゴムで楽ちん。160cmの私でくるぶしが見えるくらいです。\n\nウエスト 32〜46cm(平置き・ゴムを伸ばして)\nスカート丈 80cm\n裾幅 92cm(平置き)\n\n表地:ポリエステル100%\n裏地:ポリエステル100%(総裏)\n\nスウェットやニットと合わせてよく着ていました。1,980円、匿名配送。',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '32〜46cm', value: 32, unit: 'cm', basis: 'flat', low: 32, high: 46 },
      { point: 'skirtLength', text: '80cm', value: 80, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '92cm', value: 92, unit: 'cm', basis: 'flat' }
    ],
    aside: ['160cm'],
    price: { amount: 1980, currency: 'JPY' },
    fibres: [['polyester', 100]],
    lined: 'full',
    cut: { silhouette: 'pleated' }
  },
  {
    id: 'f2-ja-07',
    class: 'kind-by-style',
    lang: 'ja',
    title: 'バルマカーン ラグランスリーブ コットンギャバ カーキ 80s',
    text: 'ゆったりとしたラグラン袖のステンカラーコート。ジャケットの上からでも余裕で羽織れます。比翼、スローテッドポケット、総裏。\n\nラグランのため肩幅は測れません。\n裄丈(首の後ろ中心から袖口)86cm\n身幅 63cm\n着丈 110cm\n裾幅 72cm\n\n表 綿67% ポリエステル33%\n裏 ポリエステル100%\n表記42',
    kind: 'coat',
    measures: [
      { point: 'sleeveFromCentreBack', text: '86cm', value: 86, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '63cm', value: 63, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '110cm', value: 110, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '72cm', value: 72, unit: 'cm', basis: 'flat' }
    ],
    aside: ['42'],
    price: null,
    fibres: [
      ['cotton', 67],
      ['polyester', 33]
    ],
    lined: 'full',
    cut: { shoulder: 'raglan', closeness: 'relaxed' }
  },
  {
    id: 'f2-ja-08',
    class: 'keyword-title',
    lang: 'ja',
    title: '90s カレッジ スウェット トレーナー 裏起毛 古着 パーカー Tシャツ ジャケット 好きな方に',
    text: '前Vガゼット、リブ長め。ドロップショルダーのオーバーサイズです。タグXL。\n\n着丈68/身幅64/肩幅58/袖丈55(cm)\n\nコットン90% ポリエステル10%。プリントにひび割れ少々、首元に直径2ミリほどの点シミ。\n\n¥3,900',
    kind: 'jumper',
    measures: [
      { point: 'bodyLength', text: '68', value: 68, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '64', value: 64, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '58', value: 58, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '55', value: 55, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: { amount: 3900, currency: 'JPY' },
    fibres: [
      ['cotton', 90],
      ['polyester', 10]
    ],
    lined: null,
    cut: { shoulder: 'drop', closeness: 'oversized' }
  },
  {
    id: 'f2-ja-09',
    class: 'no-garment',
    lang: 'ja',
    title: '本革 トートバッグ キャメル A4 通勤 スーツに',
    text: 'スーツにもデニムにも合う牛革のトートバッグ。内ポケット二つ、底鋲あり。\n\n横38cm 縦29cm マチ12cm 持ち手の立ち上がり24cm\n\n角に軽いスレがあります。7,200円(送料込)',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['38cm', '29cm', '12cm', '24cm'],
    price: { amount: 7200, currency: 'JPY' },
    fibres: [],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-ja-10',
    class: 'second-range',
    lang: 'ja',
    title: 'ヒッコリー オーバーオール ワーク ペインター 60年代',
    text: '1960年代頃のヒッコリーストライプのオーバーオールです。コットン、裏地なし。肩ひもは真鍮の金具で長さ調節できます。\n\nウエスト平置き 47cm\n股上 36cm\n股下 74cm(裾を折り返すと68cm)\nわたり幅 35cm\n裾幅 24cm\n肩ひも 45~60cm',
    kind: 'jumpsuit',
    measures: [
      { point: 'waist', text: '47cm', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '36cm', value: 36, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '74cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '35cm', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '24cm', value: 24, unit: 'cm', basis: 'flat' },
      { point: 'strap', text: '45~60cm', value: 52.5, unit: 'cm', basis: 'length', low: 45, high: 60 }
    ],
    second: [{ point: 'inseam', text: '68cm' }],
    aside: ['1960年代'],
    price: null,
    fibres: [['cotton', null]],
    lined: 'none',
    cut: {}
  },
  {
    id: 'f2-ja-11',
    class: 'emoji',
    lang: 'ja',
    title: '🍒リンガー Tシャツ 半袖 70s風 赤🍒',
    text: '🍒ちびT気味でぴったり着られます\n📐着丈 52cm 📐身幅 41cm 📐肩幅 35cm 📐袖丈 14cm\n🧺洗濯機OK\n👖ハイウエストのデニムやミニスカートと♡ 私は155cmです\n💴1,500円',
    kind: 'knit-top',
    measures: [
      { point: 'bodyLength', text: '52cm', value: 52, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '41cm', value: 41, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '35cm', value: 35, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '14cm', value: 14, unit: 'cm', basis: 'length' }
    ],
    aside: ['155cm'],
    price: { amount: 1500, currency: 'JPY' },
    fibres: [],
    lined: null,
    cut: { sleeve: 'short', closeness: 'fitted' }
  },
  {
    id: 'f2-ja-12',
    class: 'price',
    lang: 'ja',
    title: 'ウールワイドパンツ 深履き センタープレス チャコール',
    text: '購入時24,200円、先週まで6,000円で出していました。現在4,300円です。同じ生地のベスト(別出品)とまとめて8,000円でもお譲りします。\n\n表記38/ハイウエストのワイドシルエット\nウエスト周囲 70cm\nヒップ周囲 98cm\n股上 33cm\n股下 66cm\n総丈 98cm\n裾幅 29cm\n\n毛70% ポリエステル30%、膝裏までの裏地付き。',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '70cm', value: 70, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '98cm', value: 98, unit: 'cm', basis: 'around' },
      { point: 'frontRise', text: '33cm', value: 33, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '66cm', value: 66, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '98cm', nth: 2, value: 98, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '29cm', value: 29, unit: 'cm', basis: 'flat' }
    ],
    aside: ['24,200円', '6,000円', '8,000円', '38'],
    price: { amount: 4300, currency: 'JPY' },
    fibres: [
      ['wool', 70],
      ['polyester', 30]
    ],
    lined: 'half',
    cut: { leg: 'wide', rise: 'high' }
  },
  {
    id: 'f2-ko-01',
    class: 'styling',
    lang: 'ko',
    title: '빈티지 트위드 자켓 크롭 아이보리 금장단추',
    text: '90년대 감성 가득한 크롭 트위드 자켓이에요. 안에 흰 티 하나 입고 청바지랑 매치해도 예쁘고, 원피스 위에 걸치면 하객룩으로도 좋아요.\n\n표기 55\n어깨 38cm\n가슴 단면 46cm\n소매 57cm\n총장 50cm\n\n겉감 울 60% 폴리에스터 40%\n안감 폴리에스터 100% (전체 안감)\n\n키 165 착용샷 참고해 주세요. 38,000원 택배비 포함입니다.',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '38cm', value: 38, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '57cm', value: 57, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '50cm', value: 50, unit: 'cm', basis: 'length' }
    ],
    aside: ['55', '165'],
    price: { amount: 38000, currency: 'KRW' },
    fibres: [
      ['wool', 60],
      ['polyester', 40]
    ],
    lined: 'full',
    cut: { topLength: 'cropped' }
  },
  {
    id: 'f2-ko-02',
    class: 'glued',
    lang: 'ko',
    title: '구제 와이드 데님 청바지 중청 하이웨이스트',
    text: '표기 28 / 면 100% / 하이웨이스트 와이드핏\n\n허리36엉덩이49허벅지31밑위30밑단25총장102 (단면, cm)\n\n밑단 살짝 해짐 있는데 그게 멋입니다. 19,000원, 택배비 3,500원 별도.',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '36', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '49', value: 49, unit: 'cm', basis: 'flat' },
      { point: 'thigh', text: '31', value: 31, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '30', value: 30, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '25', value: 25, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '102', value: 102, unit: 'cm', basis: 'length' }
    ],
    aside: ['28', '3,500'],
    price: { amount: 19000, currency: 'KRW' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { leg: 'wide', rise: 'high' }
  },
  {
    id: 'f2-ko-03',
    class: 'slashes',
    lang: 'ko',
    title: '모헤어 가디건 파스텔 그린 오버핏 루즈핏 니트',
    text: '정가 89,000원에 구매했어요. 보송보송한 오버핏 가디건이고 보풀 거의 없습니다. 슬립 원피스나 셔츠 위에 입으면 예뻐요.\n\n어깨 52cm / 가슴 58cm / 소매 52cm / 총장 59cm\n(바닥에 눕혀 잰 단면 기준)\n\n모헤어 30 아크릴 45 나일론 25 (%)\n\n66까지 편하게 맞아요. 27,000원',
    kind: 'jumper',
    measures: [
      { point: 'shoulderWidth', text: '52cm', value: 52, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '58cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '52cm', nth: 2, value: 52, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '59cm', value: 59, unit: 'cm', basis: 'length' }
    ],
    aside: ['89,000', '66'],
    price: { amount: 27000, currency: 'KRW' },
    fibres: [
      ['mohair', 30],
      ['acrylic', 45],
      ['polyamide', 25]
    ],
    lined: null,
    cut: { closeness: 'oversized' }
  },
  {
    id: 'f2-ko-04',
    class: 'range',
    lang: 'ko',
    title: '랩 원피스 미디 플라워 패턴 여름 휴양지룩',
    text: '끈으로 여며 입는 랩 스타일이라 허리는 조절돼요. 안감 없고 비침은 살짝 있어서 속치마 입으시면 됩니다.\n\n가슴 단면 44~52cm\n허리 단면 33~42cm\n어깨 36cm\n소매 25cm\n총장 118cm\n\n레이온 100%\n저는 163에 48kg입니다. 22,000원',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '44~52cm', value: 48, unit: 'cm', basis: 'flat', low: 44, high: 52 },
      { point: 'waist', text: '33~42cm', value: 37.5, unit: 'cm', basis: 'flat', low: 33, high: 42 },
      { point: 'shoulderWidth', text: '36cm', value: 36, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '25cm', value: 25, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '118cm', value: 118, unit: 'cm', basis: 'length' }
    ],
    aside: ['163', '48kg'],
    price: { amount: 22000, currency: 'KRW' },
    fibres: [['viscose', 100]],
    lined: 'none',
    cut: { silhouette: 'wrap', dressLength: 'midi' }
  },
  {
    id: 'f2-ko-05',
    class: 'second-cuffed',
    lang: 'ko',
    title: '투턱 슬랙스 다크그레이 남자 정장바지',
    text: '블레이저랑 셔츠에 받쳐 입으면 딱인 투턱 바지입니다. 표기 32.\n\n허리 단면 41cm\n밑위 31cm\n허벅지 단면 34cm\n밑단 단면 22cm\n총장 104cm (밑단 접으면 99cm)\n\n울 55% 폴리 45%\n모델 176cm 착용. 25,000원에 내놓습니다.',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '41cm', value: 41, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '34cm', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '22cm', value: 22, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '104cm', value: 104, unit: 'cm', basis: 'length' }
    ],
    second: [{ point: 'outseam', text: '99cm' }],
    aside: ['32', '176'],
    price: { amount: 25000, currency: 'KRW' },
    fibres: [
      ['wool', 55],
      ['polyester', 45]
    ],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-ko-06',
    class: 'fibre-lines',
    lang: 'ko',
    title: '핸드메이드 롱코트 카멜 벨트 로브',
    text: '재작년 398,000원에 구매, 120,000원에 올렸다가 95,000원으로 내립니다. 두 겹을 손으로 이은 핸드메이드라 안감이 없어요. 드롭숄더.\n\n겉감: 모 90% 캐시미어 10%\n주머니감: 폴리에스터 100%\n\n화장(목 뒤 중심~소매 끝) 80cm\n가슴 단면 57cm\n총장 116cm\n밑단 단면 66cm\n\n목폴라에 슬랙스, 부츠까지 신으면 겨울 끝.',
    kind: 'coat',
    measures: [
      { point: 'sleeveFromCentreBack', text: '80cm', value: 80, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '57cm', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '116cm', value: 116, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '66cm', value: 66, unit: 'cm', basis: 'flat' }
    ],
    aside: ['398,000', '120,000'],
    price: { amount: 95000, currency: 'KRW' },
    fibres: [
      ['wool', 90],
      ['cashmere', 10]
    ],
    lined: 'none',
    cut: { shoulder: 'drop' }
  },
  {
    id: 'f2-ko-07',
    class: 'keyword-title',
    lang: 'ko',
    title: '빈티지 체크 남방 셔츠 플란넬 아메카지 자켓 코디 청바지 힙합',
    text: '두툼한 플란넬 긴팔 남방입니다. 미국 빈티지, 표기 XL, 국내 105 정도.\n\n어깨 50 가슴 61 소매 62 총장 78 단위 cm, 단면\n\n면 100%\n왼쪽 소매 끝 작은 실밥 외 하자 없음\n가격은 상단 참고해 주세요',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '50', value: 50, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '61', value: 61, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '62', value: 62, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '78', value: 78, unit: 'cm', basis: 'length' }
    ],
    aside: ['105'],
    price: null,
    fibres: [['cotton', 100]],
    lined: null,
    cut: { sleeve: 'long' }
  },
  {
    id: 'f2-ko-08',
    class: 'emoji',
    lang: 'ko',
    title: '✨테니스 스커트 플리츠 미니 네이비✨',
    text: '🎾 플리츠 미니 스커트, 속바지는 없어요\n📏 허리 단면 33cm\n📏 엉덩이 단면 47cm\n📏 총장 40cm\n🧵 폴리에스터 100% / 안감 없음\n👟 맨투맨, 니트 조끼랑 코디하기 좋아요\n💰 24,000원 → 9,000원\n🙋 키 160, 한 번 입었어요',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '33cm', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '47cm', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '40cm', value: 40, unit: 'cm', basis: 'length' }
    ],
    aside: ['160', '24,000'],
    price: { amount: 9000, currency: 'KRW' },
    fibres: [['polyester', 100]],
    lined: 'none',
    cut: { silhouette: 'pleated', dressLength: 'mini' }
  },
  {
    id: 'f2-ko-09',
    class: 'range-elastic',
    lang: 'ko',
    title: '반바지 밴딩 카키 남녀공용',
    text: '허리 전체 밴딩에 스트링 있어서 사이즈 free예요.\n\n허리 단면 34-48cm (밴딩)\n엉덩이 단면 58cm\n밑위 33cm\n허벅지 단면 35cm\n밑단 단면 32cm\n총장 51cm\n\n하와이안 셔츠랑 입었어요. 12,000원 직거래 가능',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '34-48cm', value: 34, unit: 'cm', basis: 'flat', low: 34, high: 48 },
      { point: 'hip', text: '58cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '33cm', value: 33, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '35cm', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '32cm', value: 32, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '51cm', value: 51, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: { amount: 12000, currency: 'KRW' },
    fibres: [],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-ko-10',
    class: 'plain',
    lang: 'ko',
    title: '더블 정장 조끼 차콜 스트라이프 쓰리피스 단품',
    text: '쓰리피스 중 자켓과 바지는 이미 팔리고 조끼만 남았습니다. 앞판은 모 80% 폴리 20%, 뒤판은 새틴에 조절 버클. 안감 전체 있음.\n\n표기 100\n어깨너비 34cm\n가슴너비 51cm\n허리너비 47cm\n총기장 58cm',
    kind: 'waistcoat',
    measures: [
      { point: 'shoulderWidth', text: '34cm', value: 34, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '51cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '47cm', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '58cm', value: 58, unit: 'cm', basis: 'length' }
    ],
    aside: ['100'],
    price: null,
    fibres: [
      ['wool', 80],
      ['polyester', 20]
    ],
    lined: 'full',
    cut: {}
  },
  {
    id: 'f2-ko-11',
    class: 'model',
    lang: 'ko',
    title: '카고 점프수트 반팔 베이지 작업복 스타일',
    text: '모델 170cm, 허리 둘레 60, 엉덩이 둘레 88이고 S 입었습니다. 판매하는 것도 S 하나예요.\n\n실측(단면, cm)\n어깨 42\n가슴 53\n허리 41\n엉덩이 55\n소매 24\n인심 69\n밑단 23\n\n반팔, 앞 지퍼, 면 70% 나일론 30%, 안감 없음.\n33,000원 (벨트, 부츠 미포함)',
    kind: 'jumpsuit',
    measures: [
      { point: 'shoulderWidth', text: '42', value: 42, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '53', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '41', value: 41, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '55', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '24', value: 24, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '69', value: 69, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '23', value: 23, unit: 'cm', basis: 'flat' }
    ],
    aside: ['170', '60', '88'],
    price: { amount: 33000, currency: 'KRW' },
    fibres: [
      ['cotton', 70],
      ['polyamide', 30]
    ],
    lined: 'none',
    cut: { sleeve: 'short' }
  },
  {
    id: 'f2-ko-12',
    class: 'no-garment',
    lang: 'ko',
    title: '가죽 로퍼 브라운 245 수트 코트에 어울리는',
    text: '정장 바지에도 청바지에도 잘 어울리는 로퍼입니다. 사이즈 245, 굽 3cm, 발볼 10cm. 밑창 한 번 교체했고 깔끔해요.\n\n30,000원 택포',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['245', '3cm', '10cm'],
    price: { amount: 30000, currency: 'KRW' },
    fibres: [],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-pt-01',
    class: 'era-prose',
    lang: 'pt',
    title: 'Vestido anos 70 vintage floral boho longo',
    text: 'Garimpo dos bons! Vestido longo legítimo dos anos 70, veio do baú de uma tia que dançou muito com ele. Estampa miúda em tons de mostarda, gola com lacinho e forro completo.\n\nMedidas da peça esticada na mesa, já dobradas (contorno total):\nBusto 90 cm\nCintura 72 cm\nQuadril livre\nOmbro a ombro 36 cm\nComprimento 138 cm\n\nPoliéster 100%, forro de acetato.\nTenho 1,62 m e fica no tornozelo.\n\nR$ 89 + frete de R$ 18.',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '90 cm', value: 90, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '72 cm', value: 72, unit: 'cm', basis: 'around' },
      { point: 'shoulderWidth', text: '36 cm', value: 36, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '138 cm', value: 138, unit: 'cm', basis: 'length' }
    ],
    aside: ['1,62', '18'],
    price: { amount: 89, currency: 'BRL' },
    fibres: [['polyester', 100]],
    lined: 'full',
    cut: { dressLength: 'maxi' }
  },
  {
    id: 'f2-pt-02',
    class: 'styling',
    lang: 'pt',
    title: 'Jaqueta jeans oversized lavagem clara anos 90',
    text: 'Coringa do guarda-roupa: joga por cima do vestido florido, da saia midi ou de uma camiseta branca com calça de alfaiataria e tá pronta. Modelagem oversized.\n\nEtiqueta G\nPeito (axila a axila): 59 cm\nOmbros: 51 cm\nManga: 58,5 cm\nComprimento: 64 cm\n\nPor R$ 75,00 frete grátis',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '59 cm', value: 59, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '51 cm', value: 51, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58,5 cm', value: 58.5, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '64 cm', value: 64, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: { amount: 75, currency: 'BRL' },
    fibres: [],
    lined: null,
    cut: { closeness: 'oversized' }
  },
  {
    id: 'f2-pt-03',
    class: 'slashes',
    lang: 'pt',
    title: 'Calça pantalona de alfaiataria preta cintura alta social',
    text: 'Usei uma vez numa formatura com um blazer branco. Paguei 229,90 na loja, vendo por R$ 60.\n\nTam. 40\nCintura 74 / quadril 104 / gancho 32 / entrepernas 80 / comprimento total 110 – tudo em cm, cintura e quadril são a volta inteira.\n\n68% poliéster 29% viscose 3% elastano. Sem forro.',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '74', value: 74, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '104', value: 104, unit: 'cm', basis: 'around' },
      { point: 'frontRise', text: '32', value: 32, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '80', value: 80, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '110', value: 110, unit: 'cm', basis: 'length' }
    ],
    aside: ['40', '229,90'],
    price: { amount: 60, currency: 'BRL' },
    fibres: [
      ['polyester', 68],
      ['viscose', 29],
      ['elastane', 3]
    ],
    lined: 'none',
    cut: { leg: 'palazzo', rise: 'high' }
  },
  {
    id: 'f2-pt-04',
    class: 'range-elastic',
    lang: 'pt',
    title: 'Saia midi godê inteiro de linho cru, cós de elástico',
    text: 'Elástico só atrás, na frente o cós é liso.\n\nCintura: 34 a 42 cm (medida reta, elástico relaxado e esticado)\nComprimento: 76 cm\nQuadril livre, é godê inteiro!\nBarra com 3cm de sobra.\n\nLinho 70% viscose 30%, forrada de algodão até a barra. Diz M, eu com 1,70 uso bem com blusinha e rasteira.\n\n48 reais',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '34 a 42 cm', value: 38, unit: 'cm', basis: 'flat', low: 34, high: 42 },
      { point: 'skirtLength', text: '76 cm', value: 76, unit: 'cm', basis: 'length' }
    ],
    aside: ['1,70', '3cm'],
    price: { amount: 48, currency: 'BRL' },
    fibres: [
      ['linen', 70],
      ['viscose', 30]
    ],
    lined: 'full',
    cut: { silhouette: 'circle', dressLength: 'midi' }
  },
  {
    id: 'f2-pt-05',
    class: 'emoji',
    lang: 'pt',
    title: '👚 Blusa ciganinha laise branca 👚 festa junina, com saia ou calça',
    text: '💛 laise 100% algodão, forro só no busto\n💛 manga curta com elástico\n📏 busto 42cm (de lado a lado), estica até 50cm\n📏 comprimento 46cm\n📏 manga 22cm\n💛 veste 38',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '42cm', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '46cm', value: 46, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '22cm', value: 22, unit: 'cm', basis: 'length' }
    ],
    second: [{ point: 'chest', text: '50cm' }],
    aside: ['38'],
    price: null,
    fibres: [['cotton', 100]],
    lined: 'half',
    cut: { sleeve: 'short' }
  },
  {
    id: 'f2-pt-06',
    class: 'keyword-title',
    lang: 'pt',
    title: 'Short jeans hot pants destroyed cintura alta saia top cropped verão',
    text: 'shortinho jeans de cintura alta, barra desfiada de fábrica, etiqueta 36\n\ncós 34 cm de ponta a ponta\nquadril 46 cm de ponta a ponta\ngancho frente 29 cm, gancho costas 37 cm\nentrepernas 6 cm\nboca da perna 29 cm\n\nR$ 29,90',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '34 cm', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '46 cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '29 cm', value: 29, unit: 'cm', basis: 'length' },
      { point: 'backRise', text: '37 cm', value: 37, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '6 cm', nth: 2, value: 6, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '29 cm', nth: 2, value: 29, unit: 'cm', basis: 'flat' }
    ],
    aside: ['36'],
    price: { amount: 29.9, currency: 'BRL' },
    fibres: [],
    lined: null,
    cut: { rise: 'high' }
  },
  {
    id: 'f2-pt-07',
    class: 'model',
    lang: 'pt',
    title: 'Macacão de perna reta em viscose verde-oliva',
    text: 'A modelo tem 1,75 m, 86 de busto, 64 de cintura e 92 de quadril.\n\nA peça tem:\nbusto 47 cm (reto)\ncintura 38 cm (reto, com o cinto solto)\nquadril 53 cm (reto)\ngancho 35 cm\nentrepernas 70 cm\n\nSem mangas, sem forro, 100% viscose, passador e faixa original.\nDe R$ 120 por R$ 55.',
    kind: 'jumpsuit',
    measures: [
      { point: 'chest', text: '47 cm', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '38 cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '53 cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '35 cm', value: 35, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '70 cm', value: 70, unit: 'cm', basis: 'length' }
    ],
    aside: ['1,75', '86', '64', '92', '120'],
    price: { amount: 55, currency: 'BRL' },
    fibres: [['viscose', 100]],
    lined: 'none',
    cut: { sleeve: 'sleeveless', leg: 'straight' }
  },
  {
    id: 'f2-pt-08',
    class: 'set',
    lang: 'pt',
    title: 'Conjunto de tricô: cardigan e saia, marrom',
    text: 'Vendo junto! Malha fina de viscose 52%, poliamida 28% e poliéster 20%, nada de forro.\n\nCardigan: busto 44 cm plano, ombro a ombro 37 cm, manga 59 cm, comprimento 50 cm\nSaia: cintura 31 cm plana, quadril 42 cm plano, comprimento 63 cm\n\nEtiqueta P nas duas peças. R$ 98 o conjunto, aceito Pix.',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '44 cm', value: 44, unit: 'cm', basis: 'flat', of: 'jumper' },
      { point: 'shoulderWidth', text: '37 cm', value: 37, unit: 'cm', basis: 'length', of: 'jumper' },
      { point: 'sleeveLength', text: '59 cm', value: 59, unit: 'cm', basis: 'length', of: 'jumper' },
      { point: 'bodyLength', text: '50 cm', value: 50, unit: 'cm', basis: 'length', of: 'jumper' },
      { point: 'waist', text: '31 cm', value: 31, unit: 'cm', basis: 'flat', of: 'skirt' },
      { point: 'hip', text: '42 cm', value: 42, unit: 'cm', basis: 'flat', of: 'skirt' },
      { point: 'skirtLength', text: '63 cm', value: 63, unit: 'cm', basis: 'length', of: 'skirt' }
    ],
    aside: [],
    price: { amount: 98, currency: 'BRL' },
    fibres: [
      ['viscose', 52],
      ['polyamide', 28],
      ['polyester', 20]
    ],
    lined: 'none',
    cut: {}
  },
  {
    id: 'f2-pt-09',
    class: 'era-prose',
    lang: 'pt',
    title: 'Sobretudo de fazenda, corte de alfaiate, anos 60, cinza',
    text: 'Feito por medida num alfaiate do Porto em 1964, com a data cosida no bolso interior. Lã pesada, forro inteiro em cetim, gola de bandas largas. Fica lindamente por cima de um fato ou de uma camisola grossa.\n\nPeito, de axila a axila: 57 cm\nOmbros: 46 cm\nMangas: 62 cm\nComprimento atrás, sem gola: 108 cm\n\nCorresponde a um 52. 65 € com portes em correio registado.',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '57 cm', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '46 cm', value: 46, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62 cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '108 cm', value: 108, unit: 'cm', basis: 'length' }
    ],
    aside: ['1964', '52'],
    price: { amount: 65, currency: 'EUR' },
    fibres: [['wool', null]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'f2-pt-10',
    class: 'abbrev',
    lang: 'pt',
    title: 'Calças de ganga direitas, azul escuro, homem',
    text: 'Cintura média e perna direita. Usadas meia dúzia de vezes, tam. 42.\n\ncint. 43 cm (plana) | anca 54 cm (plana) | gancho 27 cm | entrepernas 81 cm | bainha 20 cm (plana)\n\n98% algodão, 2% elastano\n\nPortes 4,50€ por conta do comprador.',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '43 cm', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '54 cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '27 cm', value: 27, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '81 cm', value: 81, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '20 cm', value: 20, unit: 'cm', basis: 'flat' }
    ],
    aside: ['42', '4,50'],
    price: null,
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    lined: null,
    cut: { leg: 'straight', rise: 'mid' }
  },
  {
    id: 'f2-pt-11',
    class: 'glued',
    lang: 'pt',
    title: 'Camisola de pescador, lã da serra, gola alta, tricotada à mão',
    text: 'Malha grossa com tranças, 100% lã, tricotada à mão pela minha avó. Picou-me durante anos, agora que pique outro.\n\nPeito55cm/Ombros47cm/Manga60cm/Comp.68cm sem gola (medidas com a peça estendida)\n\nTenho 1,80 m e usava com calças de bombazine. Lavar a 30 no máximo. 38€',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '55cm', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '47cm', value: 47, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '68cm', value: 68, unit: 'cm', basis: 'length' }
    ],
    aside: ['1,80', '30'],
    price: { amount: 38, currency: 'EUR' },
    fibres: [['wool', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'f2-pt-12',
    class: 'no-garment',
    lang: 'pt',
    title: 'Tecido de fazenda xadrez para saia ou casaco',
    text: 'Corte de tecido antigo, nunca usado, bom para uma saia de pregas ou um casaco curto. Lã com um pouco de poliamida.\n\nMede 2,20 m de comprimento por 1,50 m de largura.\n\n25 € o corte, portes incluídos.',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['2,20 m', '1,50 m'],
    price: { amount: 25, currency: 'EUR' },
    fibres: [],
    lined: null,
    cut: {}
  }
]
