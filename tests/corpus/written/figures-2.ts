/** Sixty listings by another hand in which figures are hard to take for what they are: glued, paired, nameless, of two garments. */
import type { WrittenCase } from './written-case.ts'

export const figures2: WrittenCase[] = [
  {
    id: 'en-a01',
    class: 'glued',
    lang: 'en',
    title: 'Vtg 70s western shirt pearl snaps M/L',
    text: 'Cool old western shirt, snap front, pointed yoke. Some fading at the collar fold, no holes. Tag is washed out.\nMeasurements:Pit to pit21.5"(buttoned)Length30"(back, from under collar)Sleeve24.25"Shoulder17.5"(seam to seam)Cuff3.75"flat\nFeels like a poly cotton blend. Smoke free / cat friendly home lol\nAsking $28 shipped',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '21.5"', value: 21.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '30"', value: 30, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '24.25"', value: 24.25, unit: 'in', basis: 'length' },
      { point: 'shoulderWidth', text: '17.5"', value: 17.5, unit: 'in', basis: 'length' },
      { point: 'cuff', text: '3.75"', value: 3.75, unit: 'in', basis: 'flat' }
    ],
    price: { amount: 28, currency: 'USD' },
    fibres: [
      ['polyester', null],
      ['cotton', null]
    ]
  },
  {
    id: 'en-a02',
    class: 'glued',
    lang: 'en',
    title: 'Home sewn 60s zip front housecoat dress',
    text: 'somebodys gran made this & made it well!! pockets, zip up front, short sleeves, no lining.\nLay Flat in InchesBust20.25Waist18 (it has elastic at back)Hip22.5Shoulder Width15Sleeve Length7.75 (seam to edge)Total Length39Arm opening7Bottom Hem29\nQuilty cotton poly something.\nPrice: 27.00 USDShips From: Iowa-ishShipping Cost: 9.85 USD',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '20.25', value: 20.25, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '18', value: 18, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '22.5', value: 22.5, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '15', value: 15, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '7.75', value: 7.75, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '39', value: 39, unit: 'in', basis: 'length' },
      { point: 'cuff', text: '7', nth: 3, value: 7, unit: 'in', basis: 'flat' },
      { point: 'sweep', text: '29', value: 29, unit: 'in', basis: 'flat' }
    ],
    aside: ['9.85'],
    price: { amount: 27, currency: 'USD' },
    fibres: [
      ['cotton', null],
      ['polyester', null]
    ],
    lined: 'none',
    cut: { sleeve: 'short' }
  },
  {
    id: 'en-a03',
    class: 'glued',
    lang: 'en',
    title: 'Straight leg jeans black faded 90s',
    text: 'Size on label 32x32\nWaist:16.25"Hip:21"Rise(front):11.5"Rise(back):15"Thigh:12"Inseam:30.5"Leg opening:8"\n100% Cotton,Made in Mexico,Zip fly,Straight leg\nFade to the knees and a bit of rub at the back pocket from a wallet',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '16.25"', value: 16.25, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '21"', value: 21, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '11.5"', value: 11.5, unit: 'in', basis: 'length' },
      { point: 'backRise', text: '15"', value: 15, unit: 'in', basis: 'length' },
      { point: 'thigh', text: '12"', value: 12, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '30.5"', value: 30.5, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '8"', value: 8, unit: 'in', basis: 'flat' }
    ],
    aside: ['32'],
    price: null,
    fibres: [['cotton', 100]],
    cut: { leg: 'straight' }
  },
  {
    id: 'en-a04',
    class: 'glued',
    lang: 'en',
    title: "Men's heavy wool overcoat",
    text: "Lovely heavy coat from my late uncle's wardrobe - dry cleaned. Chest(armpit to armpit,buttoned up)58cmShoulder(seam-seam)47cmSleeve(shoulder to cuff)63.5cmLength(nape to hem,collar not counted)107cm.Fully lined,small repair in lining by left pocket.Collection from Leeds or £6.50 post.£45",
    kind: 'coat',
    measures: [
      { point: 'chest', text: '58cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '47cm', value: 47, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '63.5cm', value: 63.5, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '107cm', value: 107, unit: 'cm', basis: 'length' }
    ],
    aside: ['6.50'],
    price: { amount: 45, currency: 'GBP' },
    fibres: [['wool', null]],
    lined: 'full'
  },
  {
    id: 'en-a05',
    class: 'second-garment',
    lang: 'en',
    title: '1970s 3 piece suit brown pinstripe 40R 34W',
    text: 'Three piece suit in chocolate pinstripe, two button, wide lapels. Tagged 40R.\nJacket\nChest (pit to pit) 21"\nShoulders 18"\nSleeve 24 1/2" with 1" to let down\nLength bottom of collar 30 1/4"\nVest\nChest 20", back length 22"\nTrousers\nWaist 17" (could go out 1.5")\nRise 11"\nInside leg 31"\nHem 11.5" flared\nHalf lined jacket. No fabric label but feels like a wool blend. One belt loop loose.',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '21"', value: 21, unit: 'in', basis: 'flat', of: 'jacket' },
      { point: 'shoulderWidth', text: '18"', value: 18, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'sleeveLength', text: '24 1/2"', value: 24.5, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '30 1/4"', value: 30.25, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '20"', value: 20, unit: 'in', basis: 'flat', of: 'waistcoat' },
      { point: 'bodyLength', text: '22"', value: 22, unit: 'in', basis: 'length', of: 'waistcoat' },
      { point: 'waist', text: '17"', value: 17, unit: 'in', basis: 'flat', of: 'trousers' },
      { point: 'frontRise', text: '11"', value: 11, unit: 'in', basis: 'length', of: 'trousers' },
      { point: 'inseam', text: '31"', value: 31, unit: 'in', basis: 'length', of: 'trousers' },
      { point: 'legOpening', text: '11.5"', value: 11.5, unit: 'in', basis: 'flat', of: 'trousers' }
    ],
    aside: ['40', '1"', '1.5"'],
    price: null,
    fibres: [['wool', null]],
    lined: 'half',
    cut: { leg: 'flared' }
  },
  {
    id: 'en-a06',
    class: 'second-garment',
    lang: 'en',
    title: 'Vintage skirt suit boucle pink 1960s',
    text: 'Darling little skirt suit!! Fully lined in satin, both pieces.\nJACKET bust: 37" waist: 34" shoulders: 15.5" sleeves (bracelet length): 19" length: 21.5"\nSKIRT waist: 26" hips: 37" length: 23" plus 1 1/2" hem\nThe pencil skirt has a metal zip at the side.\nFits like a modern XS/S. $96 AUD',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '37"', value: 37, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'waist', text: '34"', value: 34, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'shoulderWidth', text: '15.5"', value: 15.5, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'sleeveLength', text: '19"', value: 19, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '21.5"', value: 21.5, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '26"', value: 26, unit: 'in', basis: 'around', of: 'skirt' },
      { point: 'hip', text: '37"', nth: 2, value: 37, unit: 'in', basis: 'around', of: 'skirt' },
      { point: 'skirtLength', text: '23"', value: 23, unit: 'in', basis: 'length', of: 'skirt' }
    ],
    aside: ['1 1/2"'],
    price: { amount: 96, currency: 'AUD' },
    fibres: [],
    lined: 'full',
    cut: { sleeve: 'bracelet', silhouette: 'pencil' }
  },
  {
    id: 'en-a07',
    class: 'second-garment',
    lang: 'en',
    title: 'Linen co-ord: shirt and wide leg trousers, sage, L',
    text: "Worn on one holiday. 55% linen 45% viscose.\n\nShirt - pit to pit 58cm, length 69cm, sleeve from shoulder seam 47cm\nTrousers - elasticated waist 37cm relaxed, 52cm stretched out; rise 34cm; inside leg 70cm; bottom of leg 29cm\n\nSelling as a set for £32, won't split sorry",
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '58cm', value: 58, unit: 'cm', basis: 'flat', of: 'shirt' },
      { point: 'bodyLength', text: '69cm', value: 69, unit: 'cm', basis: 'length', of: 'shirt' },
      { point: 'sleeveLength', text: '47cm', value: 47, unit: 'cm', basis: 'length', of: 'shirt' },
      { point: 'waist', text: '37cm', value: 37, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'frontRise', text: '34cm', value: 34, unit: 'cm', basis: 'length', of: 'trousers' },
      { point: 'inseam', text: '70cm', value: 70, unit: 'cm', basis: 'length', of: 'trousers' },
      { point: 'legOpening', text: '29cm', value: 29, unit: 'cm', basis: 'flat', of: 'trousers' }
    ],
    price: { amount: 32, currency: 'GBP' },
    fibres: [
      ['linen', 55],
      ['viscose', 45]
    ],
    cut: { leg: 'wide' },
    second: [{ point: 'waist', text: '52cm' }]
  },
  {
    id: 'en-a08',
    class: 'second-garment',
    lang: 'en',
    title: 'Lace shift dress with matching duster, mother of the bride, 60s',
    text: 'both pieces lined in acetate. flat across so DOUBLE the round ones\nDress:\nbust 20\nwaist 18.25\nhips 22\nneck to hem at back 40.5\nback of neck to waist 16\nDuster:\nbust 21.5\nsleeve 19\nneck to hem 39\nshoulders 16.25\ndress is sleeveless. one bead missing. hanger not included ha',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '20', value: 20, unit: 'in', basis: 'flat', of: 'dress' },
      { point: 'waist', text: '18.25', value: 18.25, unit: 'in', basis: 'flat', of: 'dress' },
      { point: 'hip', text: '22', value: 22, unit: 'in', basis: 'flat', of: 'dress' },
      { point: 'bodyLength', text: '40.5', value: 40.5, unit: 'in', basis: 'length', of: 'dress' },
      { point: 'napeToWaist', text: '16', value: 16, unit: 'in', basis: 'length', of: 'dress' },
      { point: 'chest', text: '21.5', value: 21.5, unit: 'in', basis: 'flat', of: 'coat' },
      { point: 'sleeveLength', text: '19', value: 19, unit: 'in', basis: 'length', of: 'coat' },
      { point: 'bodyLength', text: '39', value: 39, unit: 'in', basis: 'length', of: 'coat' },
      { point: 'shoulderWidth', text: '16.25', value: 16.25, unit: 'in', basis: 'length', of: 'coat' }
    ],
    price: null,
    fibres: [],
    lined: 'full',
    cut: { sleeve: 'sleeveless', silhouette: 'shift' }
  },
  {
    id: 'en-a09',
    class: 'unnamed-order',
    lang: 'en',
    title: 'Carpenter jeans faded, tag 34x32',
    text: "tag says 34x32 but they've shrunk, I get 33 x 30\nrise 11.25 / hem 9\nloose thru the leg, paint spots, hammer loop intact\n40 bucks + ship or trade",
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '33', value: 33, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '30', value: 30, unit: 'in', basis: 'length' },
      { point: 'frontRise', text: '11.25', value: 11.25, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '9', value: 9, unit: 'in', basis: 'flat' }
    ],
    aside: ['34', '32'],
    price: { amount: 40, currency: 'USD' },
    fibres: [],
    cut: { leg: 'relaxed' }
  },
  {
    id: 'en-a10',
    class: 'unnamed-order',
    lang: 'en',
    title: 'Single stitch band-less tee, thrashed 80s blank',
    text: '20.5 x 27 inches (width x length)\n50/50 poly cotton, paper thin, two pinholes at the hem pic 5\ntagged L fits M. short sleeves obvs',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '20.5', value: 20.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '27', value: 27, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['polyester', 50],
      ['cotton', 50]
    ],
    cut: { sleeve: 'short' }
  },
  {
    id: 'en-a11',
    class: 'unnamed-order',
    lang: 'en',
    title: 'Pleated gabardine slacks',
    text: 'W 16½ · H 22 · R 12¾ · I 29 · LO 8½\n(all in inches, flat)\nTobacco brown, double pleats, turn-ups of 1 3/4". Zip fly, fob pocket. Unlined apart from the waistband. Wool gab I\'d say. Marked 34 on a stamp inside pocket.\n£65 inc. UK delivery',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '16½', value: 16.5, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '22', value: 22, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '12¾', value: 12.75, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '29', value: 29, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '8½', value: 8.5, unit: 'in', basis: 'flat' }
    ],
    aside: ['1 3/4"', '34'],
    price: { amount: 65, currency: 'GBP' },
    fibres: [['wool', null]],
    lined: 'none'
  },
  {
    id: 'en-a12',
    class: 'unnamed-order',
    lang: 'en',
    title: 'pleated tennis shorts cream',
    text: 'inches, laid flat, in this order waist - hip - rise - inseam:\n14.5 - 20 ~ 12.5 ~ 3.5\nhigh waisted, side zip, cotton drill (no care label). label UK 12 but this is a modern 8!!!',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '14.5', value: 14.5, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '20', value: 20, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '12.5', value: 12.5, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '3.5', value: 3.5, unit: 'in', basis: 'length' }
    ],
    aside: ['12', '8'],
    price: null,
    fibres: [['cotton', null]],
    cut: { rise: 'high' }
  },
  {
    id: 'en-a13',
    class: 'split-decimal',
    lang: 'en',
    title: 'Tweed A-line skirt',
    text: 'Waist (flat): 13. 5 inches\nHips (flat): 19. 25 inches\nLength: 25. 75 inches\nA line shape, fully lined, zip at back works fine. 100% wool outer, lining is acetate.\n£18',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '13. 5 inches', value: 13.5, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '19. 25 inches', value: 19.25, unit: 'in', basis: 'flat' },
      { point: 'skirtLength', text: '25. 75 inches', value: 25.75, unit: 'in', basis: 'length' }
    ],
    price: { amount: 18, currency: 'GBP' },
    fibres: [['wool', 100]],
    lined: 'full',
    cut: { silhouette: 'a-line' }
  },
  {
    id: 'en-a14',
    class: 'split-decimal',
    lang: 'en',
    title: 'Mens linen grandad collar shirt XL',
    text: 'Pit to pit 61, 5 cm , shoulder 49, 5 cm , sleeve 63 cm , back length 78, 5 cm .\nLong sleeve, collarless, coconut buttons, one replaced. 100 % linen. Washed at 40. Pick up Galway or post €5 .\n€ 15',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '61, 5 cm', value: 61.5, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '49, 5 cm', value: 49.5, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '63 cm', value: 63, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '78, 5 cm', value: 78.5, unit: 'cm', basis: 'length' }
    ],
    aside: ['40'],
    price: { amount: 15, currency: 'EUR' },
    fibres: [['linen', 100]],
    cut: { sleeve: 'long' }
  },
  {
    id: 'en-a15',
    class: 'split-decimal',
    lang: 'en',
    title: 'Shetland jumper hand framed crew neck',
    text: 'p2p 20. 5" length 25. 5" sleeve (from the shoulder seam) 22. 75" welt 15. 5" unstretched\nPure new wool, couple of darns to the elbow which I think add to it!\nWill post for 3. 95',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '20. 5"', value: 20.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '25. 5"', value: 25.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '22. 75"', value: 22.75, unit: 'in', basis: 'length' },
      { point: 'hem', text: '15. 5"', value: 15.5, unit: 'in', basis: 'flat' }
    ],
    aside: ['3. 95'],
    price: null,
    fibres: [['wool', 100]]
  },
  {
    id: 'en-a16',
    class: 'to-the-hem',
    lang: 'en',
    title: 'Victorian revival 70s gown high neck',
    text: 'girths are already doubled, lengths are single!\nChest under arms 35"\nWaist 27" w/ ties at back\nHips loose\nBack neck seam to waist seam 14.5"\nTop of shoulder to bottom hem 57"\nSleeve, seam to frill 25"\nMaxi on me at 5\'6. Long sleeve, lace bib, not lined. Muslin-y cotton\n$104 or trade for boots',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '35"', value: 35, unit: 'in', basis: 'around' },
      { point: 'waist', text: '27"', value: 27, unit: 'in', basis: 'around' },
      { point: 'napeToWaist', text: '14.5"', value: 14.5, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '57"', value: 57, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25"', value: 25, unit: 'in', basis: 'length' }
    ],
    aside: ["5'6"],
    price: { amount: 104, currency: 'USD' },
    fibres: [['cotton', null]],
    lined: 'none',
    cut: { dressLength: 'maxi', sleeve: 'long' }
  },
  {
    id: 'en-a17',
    class: 'to-the-hem',
    lang: 'en',
    title: 'Suede blouson',
    text: 'Gorgeous butter soft suede blouson, ribbed cuffs and waistband, zip front, lined.\nCollar to hem: 24.5"\nHem, straight across relaxed: 17"\nPit to pit: 23"\nShoulder seam to cuff: 23.5"\nShoulder to shoulder: 18.5"\nCAD 110 plus actual shipping',
    kind: 'jacket',
    measures: [
      { point: 'bodyLength', text: '24.5"', value: 24.5, unit: 'in', basis: 'length' },
      { point: 'hem', text: '17"', value: 17, unit: 'in', basis: 'flat' },
      { point: 'chest', text: '23"', value: 23, unit: 'in', basis: 'flat' },
      { point: 'sleeveLength', text: '23.5"', value: 23.5, unit: 'in', basis: 'length' },
      { point: 'shoulderWidth', text: '18.5"', value: 18.5, unit: 'in', basis: 'length' }
    ],
    price: { amount: 110, currency: 'CAD' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'en-a18',
    class: 'to-the-hem',
    lang: 'en',
    title: 'Boiled wool swing coat with big buttons',
    text: 'From base of collar down the centre back to bottom hem 92cm\nUnderarm to underarm 56cm\nAcross bottom hem 85cm\nTop of shoulder to sleeve hem 54cm\nBracelet sleeves, half lined, deep pockets. Some bobbling under arms. Size 14 in the label but very roomy.\n£38 - will accept offers over £30',
    kind: 'coat',
    measures: [
      { point: 'bodyLength', text: '92cm', value: 92, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '56cm', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'sweep', text: '85cm', value: 85, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '54cm', value: 54, unit: 'cm', basis: 'length' }
    ],
    aside: ['14', '30'],
    price: { amount: 38, currency: 'GBP' },
    fibres: [['wool', null]],
    lined: 'half',
    cut: { sleeve: 'bracelet', closeness: 'relaxed' }
  },
  {
    id: 'en-a19',
    class: 'sleeve-odd',
    lang: 'en',
    title: 'Beaded angora cardi cream',
    text: 'underarm to underarm 18 in\nseam to seam across top of the shoulders 14.5 in\nunderarm to sleeve hem 15.5 in\ntop of sleeve to sleeve hem 21.5 in\nback neck to bottom rib 22 in\nsheds like mad, two beads gone by the third button. lined in chiffon, lambswool and angora mix. long sleeves pushed up in pic 2',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '18 in', value: 18, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '14.5 in', value: 14.5, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '15.5 in', value: 15.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '21.5 in', value: 21.5, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '22 in', value: 22, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['wool', null],
      ['angora', null]
    ],
    lined: 'full',
    cut: { sleeve: 'long' }
  },
  {
    id: 'en-a20',
    class: 'sleeve-odd',
    lang: 'en',
    title: 'Big camel hair topcoat raglan cut',
    text: 'No shoulder seam - raglan - so I guess 45cm across the back shoulders\nSleeve from where a seam would be 60cm; sleeve from neck 82cm; sleeve underneath, pit to end 46cm; sleeve opening 17cm\nPit to pit 63cm\nLength back of neck to hem 112cm\n60% camel 40% wool by the label. Lined (rayon), hem of lining restitched by me badly.\n€85',
    kind: 'coat',
    measures: [
      { point: 'shoulderWidth', text: '45cm', value: 45, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '82cm', value: 82, unit: 'cm', basis: 'length' },
      { point: 'sleeveUnderarm', text: '46cm', value: 46, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '17cm', value: 17, unit: 'cm', basis: 'flat' },
      { point: 'chest', text: '63cm', value: 63, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '112cm', value: 112, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 85, currency: 'EUR' },
    fibres: [
      ['camel', 60],
      ['wool', 40]
    ],
    lined: 'full',
    cut: { shoulder: 'raglan' }
  },
  {
    id: 'en-a21',
    class: 'sleeve-odd',
    lang: 'en',
    title: 'Crepe de chine secretary blouse pussy bow',
    text: 'Round the bust 40", round the waist 37" , round the cuff when done up 8".\nSleeve down the outside from shoulder seam 22", inside seam 17½" .\nAcross shoulders 15½". Down the back 25" .\nBow ties are 34" each. Silk, 100%, no lining. Slight yellowing at neck. Dry cleaned since I got it, 16 quid.',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '40"', value: 40, unit: 'in', basis: 'around' },
      { point: 'waist', text: '37"', value: 37, unit: 'in', basis: 'around' },
      { point: 'cuff', text: '8"', value: 8, unit: 'in', basis: 'around' },
      { point: 'sleeveLength', text: '22"', value: 22, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '17½"', value: 17.5, unit: 'in', basis: 'length' },
      { point: 'shoulderWidth', text: '15½"', value: 15.5, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '25"', value: 25, unit: 'in', basis: 'length' }
    ],
    aside: ['34"'],
    price: { amount: 16, currency: 'GBP' },
    fibres: [['silk', 100]],
    lined: 'none'
  },
  {
    id: 'en-a22',
    class: 'sleeve-odd',
    lang: 'en',
    title: 'Reefer jacket navy melton',
    text: 'pit to pit = 54cm\npit to cuff = 45cm\nshoulder to cuff = 62cm\nmiddle of back of neck to cuff = 85cm\ncuff width = 14cm\nlength from neck seam = 76cm\n80% wool 20% polyamide. Quilted lining throughout, polyester.\nLooking for about £40. Bus stops at the door if you want to try it on lol',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '54cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'sleeveUnderarm', text: '45cm', value: 45, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '85cm', value: 85, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '14cm', value: 14, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '76cm', value: 76, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 40, currency: 'GBP' },
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ],
    lined: 'full'
  },
  {
    id: 'en-a23',
    class: 'pairs',
    lang: 'en',
    title: 'Workwear trousers moleskin French blue',
    text: 'waist 43 cm flat\nfront rise 31 cm, back rise 41 cm\ninside leg 70 cm as cuffed in the pics (78 cm uncuffed)\nleg opening 22 cm\n100% cotton moleskin. repairs to the left knee.\n55 EUR excl. shipping',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '43 cm', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31 cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'backRise', text: '41 cm', value: 41, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '70 cm', value: 70, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '22 cm', value: 22, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 55, currency: 'EUR' },
    fibres: [['cotton', 100]],
    second: [{ point: 'inseam', text: '78 cm' }]
  },
  {
    id: 'en-a24',
    class: 'pairs',
    lang: 'en',
    title: 'Smocked ruffle top boho puff sleeve',
    text: 'Bust: 14" relaxed - 19" fully stretched\nWaist: 13" relaxed - 17.5" stretched\nLength: 16" front, 18" back\nSleeve: 11"\nCrop length!! rayon, woven. Super cute with high rise jeans or a maxi skirt',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '14"', value: 14, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '13"', value: 13, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '16"', value: 16, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '11"', value: 11, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [['viscose', null]],
    cut: { topLength: 'cropped' },
    second: [
      { point: 'chest', text: '19"' },
      { point: 'waist', text: '17.5"' },
      { point: 'bodyLength', text: '18"' }
    ]
  },
  {
    id: 'en-a25',
    class: 'pairs',
    lang: 'en',
    title: 'Turtleneck cashmere sweater navy',
    text: 'Length with the roll neck up 72cm, without collar 61cm.\nArmpit to armpit 49cm, sleeve 60cm or 66cm with the cuff folded down, hem 40cm (rib, it gives).\nTwo ply cashmere. No moth that I can see, been in the freezer to be safe.\nprice 49€ or best offer, retail was over 220',
    kind: 'jumper',
    measures: [
      { point: 'bodyLength', text: '72cm', value: 72, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '49cm', value: 49, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'hem', text: '40cm', value: 40, unit: 'cm', basis: 'flat' }
    ],
    aside: ['220'],
    price: { amount: 49, currency: 'EUR' },
    fibres: [['cashmere', null]],
    second: [
      { point: 'bodyLength', text: '61cm' },
      { point: 'sleeveLength', text: '66cm' }
    ]
  },
  {
    id: 'en-a26',
    class: 'pairs',
    lang: 'en',
    title: 'NOS painters pants white canvas',
    text: 'never worn, creases from the shelf\nwaist all round 33\nrise front/back 11.5/15.25\noutseam 43.5\ninseam 32.5 left long (29.5 with the two turn ups shown)\nknee, across 9.75; bottom, across 9.25\ninches. brush loop, straight leg, 100% cotton. card tag says W34 L34 before shrink. 55 USD',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '33', value: 33, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '11.5', value: 11.5, unit: 'in', basis: 'length' },
      { point: 'backRise', text: '15.25', value: 15.25, unit: 'in', basis: 'length' },
      { point: 'outseam', text: '43.5', value: 43.5, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '32.5', value: 32.5, unit: 'in', basis: 'length' },
      { point: 'knee', text: '9.75', value: 9.75, unit: 'in', basis: 'flat' },
      { point: 'legOpening', text: '9.25', value: 9.25, unit: 'in', basis: 'flat' }
    ],
    aside: ['34'],
    price: { amount: 55, currency: 'USD' },
    fibres: [['cotton', 100]],
    cut: { leg: 'straight' },
    second: [{ point: 'inseam', text: '29.5' }]
  },
  {
    id: 'en-a27',
    class: 'wrap-girths',
    lang: 'en',
    title: 'Jersey wrap dress leopard',
    text: 'Bust: wrapped and tied about 36", opened right out 58"\nWaist: tied 28" - laid open 52" edge to edge\nLength nape to hem 41"\nSleeve 17" 3/4\n95% viscose 5% elastane. True wrap with hole in side seam for the tie.\n£14 posted',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '36"', value: 36, unit: 'in', basis: 'around' },
      { point: 'waist', text: '28"', value: 28, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '41"', value: 41, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '17"', value: 17, unit: 'in', basis: 'length' }
    ],
    price: { amount: 14, currency: 'GBP' },
    fibres: [
      ['viscose', 95],
      ['elastane', 5]
    ],
    cut: { silhouette: 'wrap', sleeve: 'three-quarter' },
    second: [
      { point: 'chest', text: '58"' },
      { point: 'waist', text: '52"' }
    ]
  },
  {
    id: 'en-a28',
    class: 'wrap-girths',
    lang: 'en',
    title: 'Batik wrap skirt 70s cotton',
    text: 'wraps around and ties!\nwaist open flat 46 in end to end, tied with a decent overlap it fits 26-32 in\nlength 31 in\nhem opened out 84 in\n100% cotton, reversible, no lining. one faint mark near the ties',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '26-32 in', value: 29, unit: 'in', basis: 'around', low: 26, high: 32 },
      { point: 'skirtLength', text: '31 in', value: 31, unit: 'in', basis: 'length' },
      { point: 'sweep', text: '84 in', value: 84, unit: 'in', basis: 'around' }
    ],
    price: null,
    fibres: [['cotton', 100]],
    lined: 'none',
    cut: { silhouette: 'wrap' },
    second: [{ point: 'waist', text: '46 in' }]
  },
  {
    id: 'en-a29',
    class: 'wrap-girths',
    lang: 'en',
    title: 'Cotton yukata style robe indigo',
    text: 'tie robe, hand dyed. Chest wrapped over as worn 104cm, all opened out 148cm. Shoulder to hem 126cm, centre of back neck to sleeve edge 63cm, bottom edge opened out 140cm. Sash 210cm long. 100% cotton no lining. thirty pounds posted',
    kind: 'other',
    measures: [
      { point: 'chest', text: '104cm', value: 104, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '126cm', value: 126, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '63cm', value: 63, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '140cm', value: 140, unit: 'cm', basis: 'around' }
    ],
    aside: ['210cm'],
    price: { amount: 30, currency: 'GBP' },
    fibres: [['cotton', 100]],
    lined: 'none',
    second: [{ point: 'chest', text: '148cm' }]
  },
  {
    id: 'en-a30',
    class: 'waist-pass-over-bust',
    lang: 'en',
    title: 'Smocked waist gauze tunic top 70s India cotton',
    text: 'waist smocking sits at 24" and pulls to 36", bear in mind that bit has to go over your bust (theres no zip or buttons) so I would say bust 36 tops. chest itself is 40" loose. length 26". bell sleeve 18". gauzy, all cotton. will let go for $31',
    kind: 'shirt',
    measures: [
      { point: 'waist', text: '24"', value: 24, unit: 'in', basis: 'around' },
      { point: 'chest', text: '40"', value: 40, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '26"', value: 26, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '18"', value: 18, unit: 'in', basis: 'length' }
    ],
    aside: ['36'],
    price: { amount: 31, currency: 'USD' },
    fibres: [['cotton', 100]],
    second: [{ point: 'waist', text: '36"' }]
  },
  {
    id: 'en-a31',
    class: 'waist-pass-over-bust',
    lang: 'en',
    title: 'Pullover 40s style rayon frock, no zip',
    text: 'Pulls over the head, no zip anywhere! Waist is 15" across and must pass over a bust of 36 or so, so try it carefully.\nBust 19" across. Hips 21". Length 42" shoulder to hem. Cap sleeves. Unlined rayon crepe. \n$65 free ship in the US',
    kind: 'dress',
    measures: [
      { point: 'waist', text: '15"', value: 15, unit: 'in', basis: 'flat' },
      { point: 'chest', text: '19"', value: 19, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '21"', value: 21, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '42"', value: 42, unit: 'in', basis: 'length' }
    ],
    aside: ['36'],
    price: { amount: 65, currency: 'USD' },
    fibres: [['viscose', null]],
    lined: 'none',
    cut: { sleeve: 'cap' }
  },
  {
    id: 'en-a32',
    class: 'waist-pass-over-bust',
    lang: 'en',
    title: 'Bias cut slip dress satin',
    text: 'NO fastening - goes on over your head, so the waist needs to get past your bust, waist = 76cm so max bust approx 92cm depending on shape\nbust = 88cm\nhips = 98cm\nlength from top of straps = 128cm\nstraps 38cm adjustable\nbias cut, midi, polyester satin, unlined\n£22 ono',
    kind: 'dress',
    measures: [
      { point: 'waist', text: '76cm', value: 76, unit: 'cm', basis: 'around' },
      { point: 'chest', text: '88cm', value: 88, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '98cm', value: 98, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '128cm', value: 128, unit: 'cm', basis: 'length' },
      { point: 'strap', text: '38cm', value: 38, unit: 'cm', basis: 'length' }
    ],
    aside: ['92cm'],
    price: { amount: 22, currency: 'GBP' },
    fibres: [['polyester', null]],
    lined: 'none',
    cut: { silhouette: 'bias', dressLength: 'midi' }
  },
  {
    id: 'en-a33',
    class: 'back-width',
    lang: 'en',
    title: 'Girls/petite riding jacket tweed',
    text: 'Across back between the sleeve seams: 35 cm\nShoulder tip to shoulder tip: 38.5 cm\nChest buttoned, armpit to armpit: 45 cm\nWaist: 41 cm\nSleeve: 57 cm\nBack length from under collar: 66 cm\nTwo back vents, fully lined, bright mustard lining. Wool.',
    kind: 'jacket',
    measures: [
      { point: 'backWidth', text: '35 cm', value: 35, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '38.5 cm', value: 38.5, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '45 cm', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '41 cm', value: 41, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '57 cm', value: 57, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '66 cm', value: 66, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['wool', null]],
    lined: 'full'
  },
  {
    id: 'en-a34',
    class: 'back-width',
    lang: 'en',
    title: 'Vintage biker jacket horsehide heavy',
    text: 'Back width at its narrowest (sleeve to sleeve) 17 in. Shoulders 18 in. Chest zipped 21.5 in. Sleeve with cuff zip closed 24.5 in. Back of neck to hem 23 in. Waistband 19 in.\nMain zip is good, belt missing. Red quilted lining, ok with one tear.\nOpen to offers around 300 dollars',
    kind: 'jacket',
    measures: [
      { point: 'backWidth', text: '17 in', value: 17, unit: 'in', basis: 'length' },
      { point: 'shoulderWidth', text: '18 in', value: 18, unit: 'in', basis: 'length' },
      { point: 'chest', text: '21.5 in', value: 21.5, unit: 'in', basis: 'flat' },
      { point: 'sleeveLength', text: '24.5 in', value: 24.5, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '23 in', value: 23, unit: 'in', basis: 'length' },
      { point: 'hem', text: '19 in', value: 19, unit: 'in', basis: 'flat' }
    ],
    price: { amount: 300, currency: 'USD' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'en-a35',
    class: 'back-width',
    lang: 'en',
    title: 'Evening coat velvet opera',
    text: 'Measures\nBack shoulder width (armhole to armhole): 14.5"\nBust: 38"\nWaist: 34"\nSleeve: 23"\nBicep: 15" around\nLength: 50"\nSilk velvet, lined with ivory crepe. Closes with one hook. Some pile loss at the seat.',
    kind: 'coat',
    measures: [
      { point: 'backWidth', text: '14.5"', value: 14.5, unit: 'in', basis: 'length' },
      { point: 'chest', text: '38"', value: 38, unit: 'in', basis: 'around' },
      { point: 'waist', text: '34"', value: 34, unit: 'in', basis: 'around' },
      { point: 'sleeveLength', text: '23"', value: 23, unit: 'in', basis: 'length' },
      { point: 'bicep', text: '15"', value: 15, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '50"', value: 50, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [['silk', null]],
    lined: 'full'
  },
  {
    id: 'en-a36',
    class: 'figure-first',
    lang: 'en',
    title: 'donegal sport coat flecked grey',
    text: "20.5 p2p\n17.25 shoulders\n19 waist at button\n24.5 + 1.5 sleeves\n29.25 BOC\n\nHalf canvassed, half lined, single vent, flap pockets. No tag size, I'm a 38R and its perfect. SOLD pending >>> back up for 60 shipped (usd)",
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '20.5', value: 20.5, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '17.25', value: 17.25, unit: 'in', basis: 'length' },
      { point: 'waist', text: '19', value: 19, unit: 'in', basis: 'flat' },
      { point: 'sleeveLength', text: '24.5', value: 24.5, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '29.25', value: 29.25, unit: 'in', basis: 'length' }
    ],
    aside: ['1.5', '38'],
    price: { amount: 60, currency: 'USD' },
    fibres: [],
    lined: 'half'
  },
  {
    id: 'en-a37',
    class: 'figure-first',
    lang: 'en',
    title: 'ladies belted mac, beige',
    text: '104cm chest\n100cm waist undone\n114cm hip\n108cm long, shoulder to hem\n76cm sleeve measured from centre of neck at back (raglan, long sleeve)\n15cm cuff flat\n\nremovable warm lining buttoned in. belt buckle re-covered. 65% polyester 35% cotton. 27 euros + post',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '104cm', value: 104, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '100cm', value: 100, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '114cm', value: 114, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '108cm', value: 108, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '76cm', value: 76, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '15cm', value: 15, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 27, currency: 'EUR' },
    fibres: [
      ['polyester', 65],
      ['cotton', 35]
    ],
    lined: 'full',
    cut: { shoulder: 'raglan', sleeve: 'long' }
  },
  {
    id: 'en-a38',
    class: 'figure-first',
    lang: 'en',
    title: 'Cropped wide cords rust',
    text: '38cm across waist / 30cm rise / 58cm inside leg / 27cm across the bottom / 51cm hips\nHigh rise wide leg, cropped. 98% cotton 2% elastane. Size 12.\n£12.50 first class post free. Ask about bundles 3 for £30',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '38cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '30cm', value: 30, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '58cm', value: 58, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '27cm', value: 27, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '51cm', value: 51, unit: 'cm', basis: 'flat' }
    ],
    aside: ['12', '30'],
    price: { amount: 12.5, currency: 'GBP' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    cut: { leg: 'wide', rise: 'high', legLength: 'cropped' }
  },
  {
    id: 'en-a39',
    class: 'doubled-again',
    lang: 'en',
    title: 'Gold brocade cocktail dress',
    text: 'Bust 17.5" (35" doubled)\nWaist 13.25" (26.5" doubled)\nHips 18.5" (37" doubled)\nLength 39" (not doubled obviously haha)\nSleeveless sheath, knee length, metal zip, fully lined. No label\n$72',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '17.5"', value: 17.5, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '13.25"', value: 13.25, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '18.5"', value: 18.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '39"', value: 39, unit: 'in', basis: 'length' }
    ],
    price: { amount: 72, currency: 'USD' },
    fibres: [],
    lined: 'full',
    cut: { silhouette: 'sheath', sleeve: 'sleeveless', dressLength: 'knee' }
  },
  {
    id: 'en-a40',
    class: 'doubled-again',
    lang: 'en',
    title: 'Plaid hunting coat red black heavy',
    text: 'P2P: 23-1/4″ (x2 = 46-1/2″)\nShoulders: 18-1/2″\nArm (shoulder seam to end): 23″\nBack, collar seam to bottom: 30-3/4″\nBottom: 23″ (x2 = 46″)\nNo lining. Game pouch at the back. Wool, itchy, bomb proof. $68 obo',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '23-1/4″', value: 23.25, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '18-1/2″', value: 18.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '23″', value: 23, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '30-3/4″', value: 30.75, unit: 'in', basis: 'length' },
      { point: 'hem', text: '23″', nth: 2, value: 23, unit: 'in', basis: 'flat' }
    ],
    price: { amount: 68, currency: 'USD' },
    fibres: [['wool', null]],
    lined: 'none'
  },
  {
    id: 'en-a41',
    class: 'doubled-again',
    lang: 'en',
    title: 'Denim pinafore skirt-dress',
    text: 'Across chest 46cm, across waist 39cm, across hip 51cm, shoulder strap to hem 94cm.\nSleeveless, square neck, wear over a tee or a jumper.\nSo all the way round thats bust 92 waist 78 hip 102 for anyone wondering 🙂\nA$35',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '39cm', value: 39, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '51cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '94cm', value: 94, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 35, currency: 'AUD' },
    fibres: [],
    cut: { sleeve: 'sleeveless' }
  },
  {
    id: 'en-a42',
    class: 'doubled-again',
    lang: 'en',
    title: 'Corduroy flares 70s',
    text: 'waist flat 14¼", hips flat 18½", thigh flat 10", knee flat 8", hem flat 12¾", front rise 10", inside leg 32"\n= waist 28½" hips 37" in real life\nflared from the knee, low rise, fully functioning metal zip. Cotton corduroy\n£42 + £3.35 p&p',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '14¼"', value: 14.25, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '18½"', value: 18.5, unit: 'in', basis: 'flat' },
      { point: 'thigh', text: '10"', value: 10, unit: 'in', basis: 'flat' },
      { point: 'knee', text: '8"', value: 8, unit: 'in', basis: 'flat' },
      { point: 'legOpening', text: '12¾"', value: 12.75, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '10"', nth: 2, value: 10, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '32"', value: 32, unit: 'in', basis: 'length' }
    ],
    aside: ['3.35'],
    price: { amount: 42, currency: 'GBP' },
    fibres: [['cotton', null]],
    cut: { leg: 'flared', rise: 'low' }
  },
  {
    id: 'en-a43',
    class: 'emoji-lines',
    lang: 'en',
    title: 'college sweatshirt bottle green 🎓 crewneck',
    text: '🔥 heavy cotton crewneck, puff print\n🔸P2P 23.5\n🔸 top to bottom 26\n🔸arm (from pit) 19.5\n🔸 tag XL, more like a L\n😬 tiny hole by the cuff, pic 4\n🏷️ £24 🚚 inc tracked 48\n❌ swaps',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '23.5', value: 23.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '26', value: 26, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '19.5', value: 19.5, unit: 'in', basis: 'length' }
    ],
    aside: ['48'],
    price: { amount: 24, currency: 'GBP' },
    fibres: [['cotton', null]]
  },
  {
    id: 'en-a44',
    class: 'emoji-lines',
    lang: 'en',
    title: 'y2k low rise cargo mini skirt 🖤',
    text: "✨waist ➡️ 15in flat\n✨length ⬇️ 12in\n✨hips ➡️ 18.5in\n🧵 97% cotton 3% spandex\n💌 $18 or bundle w/ my jeans for 30\nmodel is 5'4 🧍‍♀️size 2",
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '15in', value: 15, unit: 'in', basis: 'flat' },
      { point: 'skirtLength', text: '12in', value: 12, unit: 'in', basis: 'length' },
      { point: 'hip', text: '18.5in', value: 18.5, unit: 'in', basis: 'flat' }
    ],
    aside: ['30', "5'4"],
    price: { amount: 18, currency: 'USD' },
    fibres: [
      ['cotton', 97],
      ['elastane', 3]
    ],
    cut: { rise: 'low', dressLength: 'mini' }
  },
  {
    id: 'en-a45',
    class: 'emoji-lines',
    lang: 'en',
    title: 'Ballgown w/ chiffon overlay lilac 🪻',
    text: '🪻 across bust: 17”\n🪻 under bust: 14.5” (empire line)\n🪻 top of shoulder to floor hem: 58”\n🪻 overlay 21” deep\n🪻 sleeveless, side zip, fully lined\nworn w/ 4” heels in the photo. prom 1971!! 💲79',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '17”', value: 17, unit: 'in', basis: 'flat' },
      { point: 'underbust', text: '14.5”', value: 14.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '58”', value: 58, unit: 'in', basis: 'length' }
    ],
    aside: ['21”', '4”'],
    price: { amount: 79, currency: 'USD' },
    fibres: [],
    lined: 'full',
    cut: { silhouette: 'empire', sleeve: 'sleeveless' }
  },
  {
    id: 'en-a46',
    class: 'emoji-lines',
    lang: 'en',
    title: 'mens chinos stone slim',
    text: '👖 W: 43cm ↔️ flat\n👖 Inside leg: 79cm\n👖 Outside leg: 104cm\n👖 Ankle: 17cm ↔️\n🏷 34R\n🧺 98 cotton 2 elastane\n💷 9 quid 📦 +£3.20',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '43cm', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '79cm', value: 79, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '104cm', value: 104, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '17cm', value: 17, unit: 'cm', basis: 'flat' }
    ],
    aside: ['34', '3.20'],
    price: { amount: 9, currency: 'GBP' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    cut: { leg: 'slim' }
  },
  {
    id: 'en-a47',
    class: 'retail-beside-own-tape',
    lang: 'en',
    title: 'Midi tea dress size 12 BNWT',
    text: 'From the website: "Our Primrose tea dress falls to a flattering midi length. Size 12: bust 96cm, waist 78cm, hips 104cm. Length 118cm (size 10). Model is 178cm and wears a size 8. Shell: 100% viscose. Lining: 100% polyester."\n\nMine measured with my own tape, flat:\narmpit to armpit 50cm, waist 41cm, length 121cm\nRRP £69 - selling for £28',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '50cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '41cm', value: 41, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '121cm', value: 121, unit: 'cm', basis: 'length' }
    ],
    aside: ['96cm', '78cm', '104cm', '118cm', '178cm', '69'],
    price: { amount: 28, currency: 'GBP' },
    fibres: [['viscose', 100]],
    lined: 'full',
    cut: { dressLength: 'midi' }
  },
  {
    id: 'en-a48',
    class: 'retail-beside-own-tape',
    lang: 'en',
    title: 'Selvedge denim jacket type 3 size 40',
    text: 'Brand size chart for a 40: chest 21.5", shoulder 18", sleeve 25", length 24.5"\nAfter a soak and a year of wear I measure:\nchest 20.75"\nshoulder 17.5"\nsleeve 24.25"\nlength 23.75"\n14.5oz selvedge, 100% cotton. Paid 260 asking 140 shipped to EU in euros',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '20.75"', value: 20.75, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '17.5"', value: 17.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '24.25"', value: 24.25, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '23.75"', value: 23.75, unit: 'in', basis: 'length' }
    ],
    aside: ['21.5"', '18"', '25"', '24.5"', '14.5', '260'],
    price: { amount: 140, currency: 'EUR' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'en-a49',
    class: 'retail-beside-own-tape',
    lang: 'en',
    title: 'Wide leg trousers tall 14 never worn',
    text: 'Size guide (body): UK 14 Bust 97 / Waist 80 / Hips 105. Inside leg 86cm tall.\nI had them shortened! Actual: waist 40.5cm flat, hip 54cm flat, inside leg 74cm now, rise 31cm, hem 28cm.\n64% polyester 32% viscose 4% elastane\nWide leg, high waist, pressed crease. €20',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '40.5cm', value: 40.5, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '54cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '74cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'frontRise', text: '31cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '28cm', value: 28, unit: 'cm', basis: 'flat' }
    ],
    aside: ['97', '80', '105', '86cm'],
    price: { amount: 20, currency: 'EUR' },
    fibres: [
      ['polyester', 64],
      ['viscose', 32],
      ['elastane', 4]
    ],
    cut: { leg: 'wide', rise: 'high' }
  },
  {
    id: 'en-a50',
    class: 'retail-beside-own-tape',
    lang: 'en',
    title: 'Merino roll neck L',
    text: "- Regular fit - 100% extra fine merino - Machine washable - Garment length in size M: 66 cm - To fit chest 102-107\nMy measurements for THIS jumper (it's been washed): pit to pit 53 cm, length 65 cm, sleeve 63 cm.\nBobbles under the arm. 11 pounds",
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '53 cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '65 cm', value: 65, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '63 cm', value: 63, unit: 'cm', basis: 'length' }
    ],
    aside: ['66 cm', '102-107'],
    price: { amount: 11, currency: 'GBP' },
    fibres: [['wool', 100]],
    cut: { closeness: 'classic' }
  },
  {
    id: 'en-a51',
    class: 'not-measures',
    lang: 'en',
    title: 'Uncut 1950s sheath dress sewing pattern bust 36',
    text: 'Factory folded. Bust 36 Waist 28 Hip 38. Finished back length 42 1/4". Needs 3 1/8 yards of 44/45" fabric. Jacket and slim skirt views A B C.\nEnvelope has a tear and pencil notes.\n$14 + first class mail',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['36', '28', '38', '42 1/4"', '44/45"'],
    price: { amount: 14, currency: 'USD' },
    fibres: []
  },
  {
    id: 'en-a52',
    class: 'not-measures',
    lang: 'en',
    title: 'Tiny floral cotton lawn dress fabric 2.5m',
    text: 'Width 137cm (54") length 2.5 metres. 100% cotton lawn, would make a blouse or a summer skirt (I\'d planned a shirt dress but life happened). Pre washed. Use a size 70 needle.\n£22 the piece',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['137cm', '54"', '2.5', '70'],
    price: { amount: 22, currency: 'GBP' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'en-a53',
    class: 'not-measures',
    lang: 'en',
    title: 'Adjustable dress form mannequin small',
    text: 'Adjusts bust 33-40", waist 26-33", hips 33-41", neck 13". Stand height to 58". Back length 15". Comes with hem marker. Great for displaying coats, jackets and dresses. Collection only. 45 ono',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['33-40"', '26-33"', '33-41"', '13"', '58"', '15"'],
    price: { amount: 45, currency: 'GBP' },
    fibres: []
  },
  {
    id: 'en-a54',
    class: 'not-measures',
    lang: 'en',
    title: 'Cathedral wedding veil + matching laptop sleeve joke gift lol',
    text: 'Veil: soft tulle, 300 cm long, 150cm wide, comb at top, scalloped lace edge. Worn once with my A-line gown (gown NOT included).\nThe laptop sleeve fits 13-14" (35 x 25cm inside) and comes free with it\n60 euro',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['300 cm', '150cm', '13-14"', '35 x 25cm'],
    price: { amount: 60, currency: 'EUR' },
    fibres: []
  },
  {
    id: 'en-a55',
    class: 'one-circumference-settles-basis',
    lang: 'en',
    title: 'Wide pleated trousers 1940s style',
    text: 'Waist circumference 30"\nHips 42"\nThigh 27"\nKnee 23"\nCuff 21"\nRise 13"\nInseam 29"\nWool flannel, very drapey. Fully lined to the knee.',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '30"', value: 30, unit: 'in', basis: 'around' },
      { point: 'hip', text: '42"', value: 42, unit: 'in', basis: 'around' },
      { point: 'thigh', text: '27"', value: 27, unit: 'in', basis: 'around' },
      { point: 'knee', text: '23"', value: 23, unit: 'in', basis: 'around' },
      { point: 'legOpening', text: '21"', value: 21, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '13"', value: 13, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '29"', value: 29, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [['wool', null]],
    lined: 'half'
  },
  {
    id: 'en-a56',
    class: 'one-circumference-settles-basis',
    lang: 'en',
    title: 'Plus size kaftan dress 26/28',
    text: 'bust (all the way round) 64 waist 60 hips 66 hem 80 length 52 inches. bat wing sleeves, v neck, poly crepe, no lining needed. \ntwenty pounds including post',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '64', value: 64, unit: 'in', basis: 'around' },
      { point: 'waist', text: '60', value: 60, unit: 'in', basis: 'around' },
      { point: 'hip', text: '66', value: 66, unit: 'in', basis: 'around' },
      { point: 'sweep', text: '80', value: 80, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '52', value: 52, unit: 'in', basis: 'length' }
    ],
    price: { amount: 20, currency: 'GBP' },
    fibres: [['polyester', null]],
    lined: 'none',
    cut: { shoulder: 'dolman' }
  },
  {
    id: 'en-a57',
    class: 'one-circumference-settles-basis',
    lang: 'en',
    title: 'Fitted 50s sweater girl knit',
    text: 'Chest \n- 33" in circumference, stretchy\nWaist - 25"\nBicep - 12"\nWrist - 6.5"\nLength - 20"\nSleeve - 16.5" (3/4)\nFitted. Acrylic yarn. Pearl buttons down the back\nNZ$48',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '33" in circumference', value: 33, unit: 'in', basis: 'around' },
      { point: 'waist', text: '25"', value: 25, unit: 'in', basis: 'around' },
      { point: 'bicep', text: '12"', value: 12, unit: 'in', basis: 'around' },
      { point: 'cuff', text: '6.5"', value: 6.5, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '20"', value: 20, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '16.5"', value: 16.5, unit: 'in', basis: 'length' }
    ],
    price: { amount: 48, currency: 'NZD' },
    fibres: [['acrylic', null]],
    cut: { sleeve: 'three-quarter', closeness: 'fitted' }
  },
  {
    id: 'en-a58',
    class: 'laid-flat-over-a-round-figure',
    lang: 'en',
    title: 'Tiki print halter dress 50s',
    text: "flat measurements ::\nBust 35” flat, best on a 34\nWaist 25” flat, best on a 24.5\nHip 37” flat\nLength 41” from top of the bodice\nSarong front, shelf bust, bodice has lining, skirt hasn't. Cotton bark cloth. metal zip. \nSleeveless obvs. Offers near $180",
    kind: 'dress',
    measures: [
      { point: 'chest', text: '35” flat', value: 35, unit: 'in', basis: 'around' },
      { point: 'waist', text: '25” flat', value: 25, unit: 'in', basis: 'around' },
      { point: 'hip', text: '37” flat', value: 37, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '41”', value: 41, unit: 'in', basis: 'length' }
    ],
    aside: ['34', '24.5'],
    price: { amount: 180, currency: 'USD' },
    fibres: [['cotton', null]],
    lined: 'half',
    cut: { sleeve: 'sleeveless' }
  },
  {
    id: 'en-a59',
    class: 'laid-flat-over-a-round-figure',
    lang: 'en',
    title: 'Merchant navy style peacoat 42',
    text: 'All measurements taken laid flat\nChest 112cm\nWaist 108cm\nShoulder 47cm\nSleeve 64cm\nLength 80cm\n100% wool. Lining viscose. Anchor buttons complete. Size 42\n£50 click and drop',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '112cm', value: 112, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '108cm', value: 108, unit: 'cm', basis: 'around' },
      { point: 'shoulderWidth', text: '47cm', value: 47, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '64cm', value: 64, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '80cm', value: 80, unit: 'cm', basis: 'length' }
    ],
    aside: ['42'],
    price: { amount: 50, currency: 'GBP' },
    fibres: [['wool', 100]],
    lined: 'full'
  },
  {
    id: 'en-a60',
    class: 'laid-flat-over-a-round-figure',
    lang: 'en',
    title: 'Gingham sundress',
    text: 'measured flat on the floor ↓\nbust 90 cms waist 72 cms hips free length 108 cms straps 40 cms\nsundress with thin straps, shirred back panel, cotton, unlined. great w/ trainers or sandals\n12 pounds collect',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '90 cms', value: 90, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '72 cms', value: 72, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '108 cms', value: 108, unit: 'cm', basis: 'length' },
      { point: 'strap', text: '40 cms', value: 40, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 12, currency: 'GBP' },
    fibres: [['cotton', null]],
    lined: 'none',
    cut: { sleeve: 'sleeveless' }
  }
]
