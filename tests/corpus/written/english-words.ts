/** Short English listings in which the words are hard: what is worn beside, names, styles without a noun, denied cuts, prices, fibres, linings. */
import type { WrittenCase } from './written-case.ts'

export const englishWords: WrittenCase[] = [
  {
    id: 'en-b01',
    class: 'noun-beside',
    lang: 'en',
    title: 'Cropped boxy linen blend top, oatmeal',
    text: 'Looks great with jeans or tucked into a pencil skirt, throw a blazer over for the office. Three buttons at the back, woven, cap sleeves. p2p 52cm, length 49cm. 55% linen, 45% cotton.\n£8',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '52cm', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '49cm', value: 49, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 8, currency: 'GBP' },
    fibres: [
      ['linen', 55],
      ['cotton', 45]
    ],
    cut: { sleeve: 'cap', topLength: 'cropped' }
  },
  {
    id: 'en-b02',
    class: 'noun-beside',
    lang: 'en',
    title: 'For the skirt lover! 80s tartan, kilt style',
    text: 'One for the skirt lovers among you. Wear with a chunky jumper and boots, or under a long coat. Leather buckles, fringe edge, pleats stitched down. Pure new wool.\nwaist 36cm, length 71cm\nUnlined. 15 pounds, can post',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '36cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '71cm', value: 71, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 15, currency: 'GBP' },
    fibres: [['wool', 100]],
    lined: 'none',
    cut: { silhouette: 'kilt' }
  },
  {
    id: 'en-b03',
    class: 'noun-beside',
    lang: 'en',
    title: 'Navy chore - layer over a hoodie or shirt',
    text: 'Chore jacket, three patch pockets. I wore it over dresses, over jumpers, even as a cardigan substitute. Sits well with wide trousers. Chest 23" length 29". Cotton drill 100%. Sleeves were taken up 1".\n$36 incl shipping in Canada',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '23"', value: 23, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '29"', value: 29, unit: 'in', basis: 'length' }
    ],
    aside: ['1"'],
    price: { amount: 36, currency: 'CAD' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'en-b04',
    class: 'noun-beside',
    lang: 'en',
    title: 'Bump-friendly wrap, pairs with leggings & trainers',
    text: 'Lovely soft nursing cardigan. No buttons, ties at side. Goes with your favourite maternity jeans, dresses, leggings. Chest unstretched 47cm length at back 70cm. Viscose 80% nylon 20%\n5.50',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '47cm', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70cm', value: 70, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 5.5, currency: 'GBP' },
    fibres: [
      ['viscose', 80],
      ['polyamide', 20]
    ],
    cut: { silhouette: 'wrap' }
  },
  {
    id: 'en-b05',
    class: 'head-place',
    lang: 'en',
    title: 'Dress shirt, double cuff, white, 16.5 collar',
    text: 'Hardly worn, bought for weddings. Slim fit. Collar 16.5". Pit to pit 21.5". 100% cotton non iron. Wear with suit trousers and braces or an open jacket.\n£10 posted',
    kind: 'shirt',
    measures: [
      { point: 'neck', text: '16.5"', value: 16.5, unit: 'in', basis: 'around' },
      { point: 'chest', text: '21.5"', value: 21.5, unit: 'in', basis: 'flat' }
    ],
    price: { amount: 10, currency: 'GBP' },
    fibres: [['cotton', 100]],
    cut: { closeness: 'slim' }
  },
  {
    id: 'en-b06',
    class: 'head-place',
    lang: 'en',
    title: 'Shirt dress with belt, chambray',
    text: 'Button through, collar, long sleeves with roll tabs, knee length. Bust 48 cm waist 43 cm length 96 cm. Lyocell 100%. A jacket over it = outfit sorted.\n€17,50',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '48 cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '43 cm', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '96 cm', value: 96, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 17.5, currency: 'EUR' },
    fibres: [['lyocell', 100]],
    cut: { silhouette: 'shirt-dress', sleeve: 'long', dressLength: 'knee' }
  },
  {
    id: 'en-b07',
    class: 'head-place',
    lang: 'en',
    title: 'Jumper skirt in ribbed knit (not the jumper!!), charcoal',
    text: 'People keep asking: this is ONLY the skirt of the set, the jumper sold already. Rib knit, elastic waist 33cm stretches to 45cm, length 78cm, midi, quite bodycon. acrylic 52% polyester 28% nylon 20%. £7',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '33cm', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '78cm', value: 78, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 7, currency: 'GBP' },
    fibres: [
      ['acrylic', 52],
      ['polyester', 28],
      ['polyamide', 20]
    ],
    cut: { silhouette: 'bodycon', dressLength: 'midi' }
  },
  {
    id: 'en-b08',
    class: 'model-name',
    lang: 'en',
    title: '"Cape" wide leg trousers by a small maker, rust cord',
    text: 'The Cape in rust, size 3 (UK 14). Elastic back, high rise, two front pockets. Not a cape, that is just what they call the trousers!\nflat waist 41 - stretches 49, inseam 68, leg opening 31, all cm\n100% organic cotton\n£48 rrp 125',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '41', value: 41, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '68', value: 68, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '31', value: 31, unit: 'cm', basis: 'flat' }
    ],
    aside: ['125'],
    price: { amount: 48, currency: 'GBP' },
    fibres: [['cotton', 100]],
    cut: { leg: 'wide', rise: 'high' }
  },
  {
    id: 'en-b09',
    class: 'model-name',
    lang: 'en',
    title: 'Model "Blouson" merino pullover (crew)',
    text: 'Knitted pullover, the model was called Blouson for some reason. Ribbed hem and cuffs, raglan. chest 54cm, from nape to cuff 80cm, length 64cm. 100 % merino wool. One darn. 39 AUD',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '54cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'sleeveFromCentreBack', text: '80cm', value: 80, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '64cm', value: 64, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 39, currency: 'AUD' },
    fibres: [['wool', 100]],
    cut: { shoulder: 'raglan' }
  },
  {
    id: 'en-b10',
    class: 'model-name',
    lang: 'en',
    title: 'Pinafore Lane - waxed coat, olive, 12',
    text: "The brand's Pinafore Lane style: hooded waxed coat with corduroy collar, two way zip and storm flap. Lining is tartan cotton, full. Outer 100% cotton (waxed). P2P 55 cm, length 90 cm, sleeve 61 cm.\nNeeds a rewax. 60 pounds.",
    kind: 'coat',
    measures: [
      { point: 'chest', text: '55 cm', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '90 cm', value: 90, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61 cm', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 60, currency: 'GBP' },
    fibres: [['cotton', 100]],
    lined: 'full'
  },
  {
    id: 'en-b11',
    class: 'no-garment',
    lang: 'en',
    title: 'Leather ankle boots 39, skirt & dress season ready',
    text: 'Heel 6cm, shaft 14cm, insole 25.5cm. Black leather upper and leather lining. Look fab with midi dresses and skinny jeans. Resoled last year.\n£30',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['6cm', '14cm', '25.5cm'],
    price: { amount: 30, currency: 'GBP' },
    fibres: []
  },
  {
    id: 'en-b12',
    class: 'no-garment',
    lang: 'en',
    title: 'Denim tote made from old jeans',
    text: 'Handmade from recycled jeans, you can still see the fly and back pockets! W 38cm H 40cm strap drop 28cm. Lined with an old shirt. 14 dollars',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['38cm', '40cm', '28cm'],
    price: { amount: 14, currency: 'USD' },
    fibres: []
  },
  {
    id: 'en-b13',
    class: 'no-garment',
    lang: 'en',
    title: 'Wool tweed remnant, enough for a waistcoat or skirt',
    text: 'Approx 1.3m x 150cm wide. Herringbone, pure wool, heavy jacket weight 480g. Would do a skirt, waistcoat or flat cap. £19 + £4 p&p',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['1.3m', '150cm', '480', '4'],
    price: { amount: 19, currency: 'GBP' },
    fibres: [['wool', 100]]
  },
  {
    id: 'en-b14',
    class: 'no-garment',
    lang: 'en',
    title: 'Jacket clip / sweater guard brooch chain vintage',
    text: 'Gold tone sweater clips with pearl flowers, chain length 7". Keeps your cardigan on your shoulders. $11 plus ship 4.50',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['7"', '4.50'],
    price: { amount: 11, currency: 'USD' },
    fibres: []
  },
  {
    id: 'en-b15',
    class: 'no-garment',
    lang: 'en',
    title: 'Digital PDF pattern - the Harbour jumpsuit sizes 6-24',
    text: 'Instant download. Bust 78-130, waist 60-112, hip 84-136 finished leg length 72cm. You will need 3m of 140 wide linen and a 40cm zip. Short or long sleeves, wide legs. Price 12.00 GBP',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['78-130', '60-112', '84-136', '72cm', '3m', '140', '40cm'],
    price: { amount: 12, currency: 'GBP' },
    fibres: []
  },
  {
    id: 'en-b16',
    class: 'construction-only',
    lang: 'en',
    title: '90s five pocket, button fly, black overdye 31',
    text: 'five pockets, button fly, riveted, coin pocket, leather patch. straight up and down leg. waist 15.75" rise 11" ins 30". no stretch 100% cotton. some fray at hem. 32usd',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '15.75"', value: 15.75, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '11"', value: 11, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '30"', value: 30, unit: 'in', basis: 'length' }
    ],
    aside: ['31'],
    price: { amount: 32, currency: 'USD' },
    fibres: [['cotton', 100]],
    cut: { leg: 'straight' }
  },
  {
    id: 'en-b17',
    class: 'construction-only',
    lang: 'en',
    title: 'Pearl snap front with sawtooth pockets, sage plaid',
    text: 'Snap front, yoke front and back, 3-snap cuffs, tails to tuck. Tag 15.5 x 34. P2P 21, back of collar to tail 31.5, cuff snapped 4.\n65% polyester 35% cotton\n$22',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '21', value: 21, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '31.5', value: 31.5, unit: 'in', basis: 'length' },
      { point: 'cuff', text: '4', nth: 2, value: 4, unit: 'in', basis: 'flat' }
    ],
    aside: ['15.5', '34'],
    price: { amount: 22, currency: 'USD' },
    fibres: [
      ['polyester', 65],
      ['cotton', 35]
    ]
  },
  {
    id: 'en-b18',
    class: 'construction-only',
    lang: 'en',
    title: 'Peak lapels, double breasted 6x2, navy gabardine',
    text: 'Lapels 3 3/4" wide, horn buttons, side vents, ticket pocket, working cuffs. Fully lined. Chest 21.25" shoulder 18.5" sleeve 25" length BOC 30". Wool. No matching pants, sold as is. $90',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '21.25"', value: 21.25, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '18.5"', value: 18.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25"', nth: 2, value: 25, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '30"', value: 30, unit: 'in', basis: 'length' }
    ],
    aside: ['3 3/4"'],
    price: { amount: 90, currency: 'USD' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'en-b19',
    class: 'construction-only',
    lang: 'en',
    title: 'Oversize, full zip, hood with drawcord, brushed inside - grey',
    text: 'Kangaroo pockets, ribbed cuffs and hem, hood is double layer. Cotton 80 poly 20. Chest 64cm / length 71cm / sleeve 60cm. £16.00',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '64cm', value: 64, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '71cm', value: 71, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 16, currency: 'GBP' },
    fibres: [
      ['cotton', 80],
      ['polyester', 20]
    ],
    cut: { closeness: 'oversized' }
  },
  {
    id: 'en-b20',
    class: 'style-only',
    lang: 'en',
    title: 'Emerald sheath 60s size 12',
    text: 'Classic sheath, back zip, kick pleat, sleeveless. Bust 36 waist 29 hips 38 shoulder to hem 40. inches. Fully lined. Silk shantung. $85',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '36', value: 36, unit: 'in', basis: 'around' },
      { point: 'waist', text: '29', value: 29, unit: 'in', basis: 'around' },
      { point: 'hip', text: '38', value: 38, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '40', value: 40, unit: 'in', basis: 'length' }
    ],
    aside: ['12'],
    price: { amount: 85, currency: 'USD' },
    fibres: [],
    lined: 'full',
    cut: { silhouette: 'sheath', sleeve: 'sleeveless' }
  },
  {
    id: 'en-b21',
    class: 'style-only',
    lang: 'en',
    title: 'Printed palazzo, pull on, one size',
    text: 'Floaty palazzo with elastic all round. Waist 32cm to 50cm, inside leg 72cm, hem 44cm. Viscose 100%. So comfy on the plane. 9 euro',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '32cm', value: 32, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '72cm', value: 72, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '44cm', value: 44, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 9, currency: 'EUR' },
    fibres: [['viscose', 100]],
    cut: { leg: 'palazzo' }
  },
  {
    id: 'en-b22',
    class: 'style-only',
    lang: 'en',
    title: 'Pleated midi, gold lamé, elastic waist, UK 10',
    text: 'Sunray pleats, swishes when you move. Waist 34cm relaxed, length 77cm. Polyester 100, lining poly 100 (short under layer). Pair w/ knit & trainers. £12',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '34cm', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '77cm', value: 77, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 12, currency: 'GBP' },
    fibres: [['polyester', 100]],
    lined: 'half',
    cut: { silhouette: 'pleated', dressLength: 'midi' }
  },
  {
    id: 'en-b23',
    class: 'points-only',
    lang: 'en',
    title: 'Lot 14 - navy, 1940s',
    text: 'waist 16"\nhip 21"\nfront rise 12.5"\ninseam 28.5"\nleg opening 10"\nsmall moth nips at the seat, otherwise sound. wool serge',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '16"', value: 16, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '21"', value: 21, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '12.5"', value: 12.5, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '28.5"', value: 28.5, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '10"', value: 10, unit: 'in', basis: 'flat' }
    ],
    aside: ['14'],
    price: null,
    fibres: []
  },
  {
    id: 'en-b24',
    class: 'points-only',
    lang: 'en',
    title: 'Purple abstract print, 70s, poly',
    text: 'bust 46cm\nwaist 40cm\nhips 52cm\nnape to hem 104cm\nsleeve 58cm\nMachine wash, colours still bright. Back zip. 100% polyester. £26',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '40cm', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '52cm', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '104cm', value: 104, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58cm', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 26, currency: 'GBP' },
    fibres: [['polyester', 100]]
  },
  {
    id: 'en-b25',
    class: 'points-only',
    lang: 'en',
    title: 'Brown check, size 14',
    text: 'waist 37cm hip 50cm length 64cm hem 61cm side zip, kick pleat at back, lined. wool mix.\n6 pounds',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '37cm', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '50cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '64cm', value: 64, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '61cm', value: 61, unit: 'cm', basis: 'flat' }
    ],
    aside: ['14'],
    price: { amount: 6, currency: 'GBP' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'en-b26',
    class: 'address-path',
    lang: 'en',
    title: 'Marlow, navy, 34R, great condition',
    path: '/mens/clothing/chinos/marlow-navy-34r-20417',
    text: 'Worn twice. Waist 88cm, slim. 98% cotton, 2% elastane. Small mark at pocket. £14',
    kind: 'trousers',
    measures: [{ point: 'waist', text: '88cm', value: 88, unit: 'cm', basis: 'around' }],
    aside: ['34'],
    price: { amount: 14, currency: 'GBP' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    cut: { leg: 'slim' }
  },
  {
    id: 'en-b27',
    class: 'address-path',
    lang: 'en',
    title: 'Tilda in moss - L',
    path: '/shop/women/knitwear/cardigans/tilda-moss',
    text: 'Chest 59cm, length 66cm. Hand wash. Alpaca 70, nylon 25, wool 5. A bit of pilling. 42 EUR',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '59cm', value: 59, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '66cm', value: 66, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 42, currency: 'EUR' },
    fibres: [
      ['alpaca', 70],
      ['polyamide', 25],
      ['wool', 5]
    ]
  },
  {
    id: 'en-b28',
    class: 'cut-denied',
    lang: 'en',
    title: 'Black stretch jeans - NOT skinny, not low rise',
    text: 'These are not skinny and not flared either, just a straight leg. Mid rise. Waist 38cm rise 25cm inseam 76cm hem 18cm. 92 cotton 6 polyester 2 elastane. £11',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '38cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '25cm', value: 25, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '76cm', value: 76, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '18cm', value: 18, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 11, currency: 'GBP' },
    fibres: [
      ['cotton', 92],
      ['polyester', 6],
      ['elastane', 2]
    ],
    cut: { leg: 'straight', rise: 'mid' }
  },
  {
    id: 'en-b29',
    class: 'cut-denied',
    lang: 'en',
    title: "Plain tee heavyweight, isnt cropped isn't oversized",
    text: 'normal length normal fit. not oversized like the newer ones, not cropped. short sleeve. 54 wide 72 long cm. cotton. 4 quid',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '54', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '72', value: 72, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 4, currency: 'GBP' },
    fibres: [],
    cut: { sleeve: 'short', closeness: 'classic' }
  },
  {
    id: 'en-b30',
    class: 'cut-denied',
    lang: 'en',
    title: 'Linen dress, no waist seam, never a wrap, A-line',
    text: 'Its A-line rather than a wrap dress, hangs away from the body, non-fitted. Three quarter sleeves. Bust 55cm length 105cm. 100% linen. No lining. Was £95, yours for £33',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '55cm', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '105cm', value: 105, unit: 'cm', basis: 'length' }
    ],
    aside: ['95'],
    price: { amount: 33, currency: 'GBP' },
    fibres: [['linen', 100]],
    lined: 'none',
    cut: { silhouette: 'a-line', sleeve: 'three-quarter' }
  },
  {
    id: 'en-b31',
    class: 'price',
    lang: 'en',
    title: 'Fair Isle tank top hand knit',
    text: '£3.10 postage or collect from Hexham. Price £17. Got another in brown for £15, both for £28. Bust 46cm length 54cm. Wool.\nV neck, sleeveless',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '54cm', value: 54, unit: 'cm', basis: 'length' }
    ],
    aside: ['3.10', '15', '28'],
    price: { amount: 17, currency: 'GBP' },
    fibres: [],
    cut: { sleeve: 'sleeveless' }
  },
  {
    id: 'en-b32',
    class: 'price',
    lang: 'en',
    title: 'Satin bomber souvenir style, embroidered tiger',
    text: 'Auction! starting bid $20, current bid 41.00 (6 bids), Buy It Now $75. Shipping $8.95. Retails for 180 new. p2p 23 length 25. lined. acetate/rayon',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '23', value: 23, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '25', value: 25, unit: 'in', basis: 'length' }
    ],
    aside: ['20', '41.00', '8.95', '180'],
    price: { amount: 75, currency: 'USD' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'en-b33',
    class: 'price',
    lang: 'en',
    title: 'Corduroy shorts high waist',
    text: '36 in cash or 45 in store credit (we only take USD), layaway from 12 a month. Waist 14", rise 12", inseam 3". High waisted. cotton',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '14"', value: 14, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '12"', value: 12, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '3"', value: 3, unit: 'in', basis: 'length' }
    ],
    aside: ['45', '12'],
    price: { amount: 36, currency: 'USD' },
    fibres: [],
    cut: { rise: 'high' }
  },
  {
    id: 'en-b34',
    class: 'price',
    lang: 'en',
    title: 'Sukajan-ish work vest from Tokyo trip',
    text: "¥4,800 firm (roughly 25 quid), I'm in Japan til August so shipping EMS 2,400 yen. Lots of pockets, zip front, unlined gilet. Width 58cm length 63cm. Nylon 100%",
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '58cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '63cm', value: 63, unit: 'cm', basis: 'length' }
    ],
    aside: ['25', '2,400'],
    price: { amount: 4800, currency: 'JPY' },
    fibres: [['polyamide', 100]],
    lined: 'none'
  },
  {
    id: 'en-b35',
    class: 'price',
    lang: 'en',
    title: 'Crochet cardigan granny square',
    text: 'originally 120, was 60, NOW 45!! (euro) free hat if you pay full price. adding a lining? +15. bust 50cm, length 55cm, acrylic. no size label',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '50cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '55cm', value: 55, unit: 'cm', basis: 'length' }
    ],
    aside: ['120', '60', '15'],
    price: { amount: 45, currency: 'EUR' },
    fibres: []
  },
  {
    id: 'en-b36',
    class: 'fibres',
    lang: 'en',
    title: 'Lace cocktail dress with underskirt',
    text: 'Outer: 68% cotton 32% nylon lace. Underskirt: 100% polyester net. Lining: 97% polyester 3% elastane. Zip: nylon. Bust 44cm waist 36cm length 95cm.\nCare label says 68% cotton, 32% polyamide, dry clean. Fully lined. £25',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '44cm', value: 44, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '36cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '95cm', value: 95, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 25, currency: 'GBP' },
    fibres: [
      ['cotton', 68],
      ['polyamide', 32]
    ],
    lined: 'full'
  },
  {
    id: 'en-b37',
    class: 'fibres',
    lang: 'en',
    title: 'Polycotton chef trousers baggy check',
    text: 'poly-cotton (65/35), drawstring. Waist 40cm flat relaxed, 56cm stretched. Inside leg 77cm. Baggy, tapered at ankle. £6',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '40cm', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '77cm', value: 77, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 6, currency: 'GBP' },
    fibres: [
      ['polyester', 65],
      ['cotton', 35]
    ],
    cut: { leg: 'relaxed' }
  },
  {
    id: 'en-b38',
    class: 'fibres',
    lang: 'en',
    title: 'Wool-cashmere overcoat, half price',
    text: 'Shell 90% wool / 10% cashmere. Collar: suede. Body lining 100% cupro, sleeve lining 100% viscose. Filling none. Shoulder 46cm chest 57cm length 101cm. single breasted. wool 90 cashmere 10 again as ppl keep asking. £95 (RRP £190)',
    kind: 'coat',
    measures: [
      { point: 'shoulderWidth', text: '46cm', value: 46, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '57cm', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '101cm', value: 101, unit: 'cm', basis: 'length' }
    ],
    aside: ['190'],
    price: { amount: 95, currency: 'GBP' },
    fibres: [
      ['wool', 90],
      ['cashmere', 10]
    ],
    lined: 'full'
  },
  {
    id: 'en-b39',
    class: 'lining-line',
    lang: 'en',
    title: 'Herringbone pencil skirt',
    text: 'Material: wool (my guess)\nLining: None\nClosure: back zip\nSize tag: 8\nMeasurements: Waist 26"; Hips 36.5"; Length 24"\nCondition: 9/10\n$19',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '26"', value: 26, unit: 'in', basis: 'around' },
      { point: 'hip', text: '36.5"', value: 36.5, unit: 'in', basis: 'around' },
      { point: 'skirtLength', text: '24"', value: 24, unit: 'in', basis: 'length' }
    ],
    aside: ['8', '9/10'],
    price: { amount: 19, currency: 'USD' },
    fibres: [],
    lined: 'none',
    cut: { silhouette: 'pencil' }
  },
  {
    id: 'en-b40',
    class: 'lining-line',
    lang: 'en',
    title: 'Cotton sundress with bolero straps',
    text: 'Fabric\n100% cotton\nLining\nbodice only, skirt unlined\nMeasurements (flat)\nBust 42 cm\nWaist 34 cm\nLength 100 cm\nPrice\n€ 21,-',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '42 cm', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '34 cm', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '100 cm', value: 100, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 21, currency: 'EUR' },
    fibres: [['cotton', 100]],
    lined: 'half'
  }
]
