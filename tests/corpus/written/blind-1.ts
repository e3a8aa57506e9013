/** A hundred ordinary texts, read and scored once before anything was mended from them (tests/bench/written.md). */
import type { WrittenCase } from './written-case.ts'

export const blind1: WrittenCase[] = [
  {
    id: 'b1-en-001',
    class: 'plain',
    lang: 'en',
    title: '1970s Brown Corduroy High Waist Trousers',
    text: 'Gorgeous chocolate brown wide leg cords from the 1970s. High waisted with a zip fly and two patch pockets on the front. Really soft needlecord with pale contrast stitching.\n\nMEASUREMENTS\nWaist: 27"\nHips: 38"\nRise: 12"\nInside leg: 31"\nHem of leg: 11" flat\n\nFabric: cotton corduroy\nCondition: Very good, slight fading at the knees.\n\nModel is 5\'7" and usually a UK 8.\n\n£48.00\nUK postage £3.95',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '27"', value: 27, unit: 'in', basis: 'around' },
      { point: 'hip', text: '38"', value: 38, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '12"', value: 12, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '31"', value: 31, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '11"', value: 11, unit: 'in', basis: 'flat' }
    ],
    aside: ['5\'7"', '8', '3.95'],
    price: { amount: 48, currency: 'GBP' },
    fibres: [['cotton', null]],
    lined: null,
    cut: { rise: 'high', leg: 'wide' }
  },
  {
    id: 'b1-en-002',
    class: 'plain',
    lang: 'en',
    title: 'FS: Mid grey flannel trousers, double forward pleats',
    text: 'Clearing out a few things that don\'t get worn since I went back to working from home.\n\nTagged 34 but they run a touch bigger. Mid grey wool flannel, made in Italy, lined to the knee, side tabs, 1.75" cuffs. No moth, no shine.\n\nWaist 17.25" (another 1" to let out)\nFront rise 12.5"\nInseam 29.5"\nKnee 9.75"\nLeg opening 8.25"\n\n$85 shipped CONUS, elsewhere at cost. Paypal please.',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '17.25"', value: 17.25, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '12.5"', value: 12.5, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '29.5"', value: 29.5, unit: 'in', basis: 'length' },
      { point: 'knee', text: '9.75"', value: 9.75, unit: 'in', basis: 'flat' },
      { point: 'legOpening', text: '8.25"', value: 8.25, unit: 'in', basis: 'flat' }
    ],
    aside: ['34', '1.75"', '1"'],
    price: { amount: 85, currency: 'USD' },
    fibres: [['wool', null]],
    lined: 'half',
    cut: {}
  },
  {
    id: 'b1-en-003',
    class: 'plain',
    lang: 'en',
    title: 'Linen mix pull on trousers size 14',
    text: 'Only worn twice on holiday. Elasticated waist with drawstring, tapered leg, ankle length. Oatmeal colour.\n55% linen 45% viscose\n\nwaist 38cm laid flat (stretches to 48cm)\nlength 94cm\ninside leg 66cm\n\nFrom a smoke free home, happy to combine postage on 2 or more items. £9',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '38cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '94cm', value: 94, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '66cm', value: 66, unit: 'cm', basis: 'length' }
    ],
    aside: ['14'],
    price: { amount: 9, currency: 'GBP' },
    fibres: [
      ['linen', 55],
      ['viscose', 45]
    ],
    lined: null,
    cut: { leg: 'tapered', legLength: 'ankle' },
    second: [{ point: 'waist', text: '48cm' }]
  },
  {
    id: 'b1-en-004',
    class: 'plain',
    lang: 'en',
    title: 'Ladies black work trousers BNWT 12 short',
    text: "Brand new with tags, never worn as I bought the wrong size and missed the return date. Black straight leg work trousers with belt loops. Label says UK 12 Short but I think they come up small. Across the waistband they measure 15 inches, 19.5 inches across the hips, the inside leg is 27.5 inches and it's 37 inches from waistband to hem down the outside. 64% polyester, 33% viscose, 3% elastane. RRP £39.50, asking £12 ono.",
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '15 inches', value: 15, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '19.5 inches', value: 19.5, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '27.5 inches', value: 27.5, unit: 'in', basis: 'length' },
      { point: 'outseam', text: '37 inches', value: 37, unit: 'in', basis: 'length' }
    ],
    aside: ['12', '39.50'],
    price: { amount: 12, currency: 'GBP' },
    fibres: [
      ['polyester', 64],
      ['viscose', 33],
      ['elastane', 3]
    ],
    lined: null,
    cut: { leg: 'straight' }
  },
  {
    id: 'b1-en-005',
    class: 'plain',
    lang: 'en',
    title: 'vintage 90s light wash mom jeans',
    text: "💙 light wash high rise mom jeans\n💙 tagged 12 but fits like a modern 8 \n💙 waist 14in\n💙 hips 19.5in\n💙 rise 12in\n💙 inseam 28.5in\n💙 hem 7in\n100% cotton no stretch at all. tiny bleach mark on back pocket see last pic\ni'm 5ft4 and usually a 26 for reference\n\n#mom #90s #denim #lightwash",
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '14in', value: 14, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '19.5in', value: 19.5, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '12in', value: 12, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '28.5in', value: 28.5, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '7in', value: 7, unit: 'in', basis: 'flat' }
    ],
    aside: ['8', '5ft4', '26'],
    price: null,
    fibres: [['cotton', 100]],
    lined: null,
    cut: { rise: 'high' }
  },
  {
    id: 'b1-en-006',
    class: 'plain',
    lang: 'en',
    title: 'Mens raw selvedge jeans straight leg 32x34',
    text: '14oz raw denim, worn about six months with one soak. Some whiskering, no crotch wear. Tagged 32x34.\n\nWaist - 33" (84cm)\nFront Rise - 10.5" (27cm)\nBack Rise - 14.25" (36cm)\nThigh - 12" (30.5cm)\nKnee - 8.5" (21.5cm)\nHem - 8" (20.5cm)\nInseam - 32.75" (83cm)\n\nAll measured flat except the waist which is doubled.\n\nAsking $60 + shipping ($9 in the US)',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '33"', value: 33, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '10.5"', value: 10.5, unit: 'in', basis: 'length' },
      { point: 'backRise', text: '14.25"', value: 14.25, unit: 'in', basis: 'length' },
      { point: 'thigh', text: '12"', value: 12, unit: 'in', basis: 'flat' },
      { point: 'knee', text: '8.5"', value: 8.5, unit: 'in', basis: 'flat' },
      { point: 'legOpening', text: '8"', value: 8, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '32.75"', value: 32.75, unit: 'in', basis: 'length' }
    ],
    aside: ['14', '32', '34', '9'],
    price: { amount: 60, currency: 'USD' },
    fibres: [],
    lined: null,
    cut: { leg: 'straight' }
  },
  {
    id: 'b1-en-007',
    class: 'plain',
    lang: 'en',
    title: "Women's Plus Size Boot Cut Jeans Dark Wash 20W",
    text: 'Pre-owned dark wash mid rise boot cut jeans. Size on tag is 20W. Please go by the measurements and not the tag.\n\nMeasurements (approximate):\nWaist laying flat: 20 1/2 inches\nHips laying flat: 24 inches\nRise: 11 inches\nInseam: 31 inches\nLeg opening: 9 1/4 inches\n\n78% Cotton 20% Polyester 2% Spandex\n\nPlease look at all photos as they are part of the description. Ships within 1 business day. Thank you for looking!',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '20 1/2 inches', value: 20.5, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '24 inches', value: 24, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '11 inches', value: 11, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '31 inches', value: 31, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '9 1/4 inches', value: 9.25, unit: 'in', basis: 'flat' }
    ],
    aside: ['20'],
    price: null,
    fibres: [
      ['cotton', 78],
      ['polyester', 20],
      ['elastane', 2]
    ],
    lined: null,
    cut: { rise: 'mid', leg: 'bootcut' }
  },
  {
    id: 'b1-en-008',
    class: 'plain',
    lang: 'en',
    title: 'Harlow Creek Black Regular Fit Jeans W36 L32',
    text: 'HomeMenswearJeansHarlow Creek Black Regular Fit Jeans W36 L32\n£14.99\nTax included.Add to basket\nMens regular fit jeans in black denim, zip fly, five pockets.Waist: 36"Inside leg: 31"Rise: 11.5"Leg width at hem: 8"Condition: good, light wear to the hemsFree UK delivery on orders over £50',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '36"', value: 36, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '31"', value: 31, unit: 'in', basis: 'length' },
      { point: 'frontRise', text: '11.5"', value: 11.5, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '8"', value: 8, unit: 'in', basis: 'flat' }
    ],
    aside: ['50'],
    price: { amount: 14.99, currency: 'GBP' },
    fibres: [],
    lined: null,
    cut: { closeness: 'classic' }
  },
  {
    id: 'b1-en-009',
    class: 'plain',
    lang: 'en',
    title: '80s High Waisted Denim Cut Offs',
    text: 'Reworked from a pair of vintage jeans, raw hem, button fly, faded just right.\n\nWaist 26.5" / Hip 37" / Rise 12" / Inseam 3" / Leg opening 22" around\n\nBest fits a 26. On our model (5\'9", 25" waist) they sit snug.\n\n$38\nAll sales final',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '26.5"', value: 26.5, unit: 'in', basis: 'around' },
      { point: 'hip', text: '37"', value: 37, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '12"', value: 12, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '3"', value: 3, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '22"', value: 22, unit: 'in', basis: 'around' }
    ],
    aside: ['26', '5\'9"', '25"'],
    price: { amount: 38, currency: 'USD' },
    fibres: [],
    lined: null,
    cut: { rise: 'high' }
  },
  {
    id: 'b1-en-010',
    class: 'plain',
    lang: 'en',
    title: 'Mens stone chino shorts',
    text: 'Good clean condition, hardly worn last summer. 98% cotton 2% elastane. Label 34R.\n\nWaist 35 inches\nLength from waistband to hem 20 inches\nInside leg 9 inches\nLeg opening 11 inches across\n\nCollection from Leeds or £3.20 post\n£6',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '35 inches', value: 35, unit: 'in', basis: 'around' },
      { point: 'outseam', text: '20 inches', value: 20, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '9 inches', value: 9, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '11 inches', value: 11, unit: 'in', basis: 'flat' }
    ],
    aside: ['34', '3.20'],
    price: { amount: 6, currency: 'GBP' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-011',
    class: 'plain',
    lang: 'en',
    text: 'Mens running shorts, black with reflective strip on the back. 4 inch inseam so they are on the short side. Elastic waist measures 13.5 in flat unstretched and about 18 in stretched. Outseam 12 in. Shell 100% polyester. Used but plenty of miles left in them. $8 plus shipping, will bundle with the other running stuff I have listed.',
    kind: 'shorts',
    measures: [
      { point: 'inseam', text: '4 inch', value: 4, unit: 'in', basis: 'length' },
      { point: 'waist', text: '13.5 in', value: 13.5, unit: 'in', basis: 'flat' },
      { point: 'outseam', text: '12 in', value: 12, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 8, currency: 'USD' },
    fibres: [['polyester', 100]],
    lined: null,
    cut: {},
    second: [{ point: 'waist', text: '18 in' }]
  },
  {
    id: 'b1-en-012',
    class: 'plain',
    lang: 'en',
    title: '1950s Pleated Linen Shorts',
    text: 'Crisp cream linen shorts with double pleats, turn ups and a metal side zip. High waisted and very flattering. A little rust mark by the hem that doesn\'t show on.\n\nMeasurements taken flat and doubled where necessary\nWaist: 25" / 63.5cm\nHips: 40" / 101cm\nFront rise: 13" / 33cm\nInseam: 5.5" / 14cm\nOutseam: 17.5" / 44.5cm\n\nUnlined. Label: none, probably made at home.\n\nPrice: £65.00',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '25"', value: 25, unit: 'in', basis: 'around' },
      { point: 'hip', text: '40"', value: 40, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '13"', value: 13, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '5.5"', value: 5.5, unit: 'in', basis: 'length' },
      { point: 'outseam', text: '17.5"', value: 17.5, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 65, currency: 'GBP' },
    fibres: [['linen', null]],
    lined: 'none',
    cut: { rise: 'high' }
  },
  {
    id: 'b1-en-013',
    class: 'plain',
    lang: 'en',
    title: 'Vintage 70s Green Tartan Kilt Skirt',
    text: 'Proper wool kilt in green and navy tartan with leather straps, buckles and the pin. Waist 28" on the tighter setting and 29.5" on the looser one, hips free, length 26". Some of the pleats could do with a press. Label says size 12 but it\'s more like a modern 8-10. Unlined. £22 + p&p £4.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '28"', value: 28, unit: 'in', basis: 'around' },
      { point: 'skirtLength', text: '26"', value: 26, unit: 'in', basis: 'length' }
    ],
    aside: ['12', '8-10', '4'],
    price: { amount: 22, currency: 'GBP' },
    fibres: [['wool', null]],
    lined: 'none',
    cut: { silhouette: 'kilt' },
    second: [{ point: 'waist', text: '29.5"' }]
  },
  {
    id: 'b1-en-014',
    class: 'plain',
    lang: 'en',
    title: 'Pleated satin midi skirt, never worn',
    text: 'Champagne pleated midi skirt with elastic waist. Bought for a wedding and changed my mind.\nWaist 33cm flat, length 78cm.\n100% polyester, lined\nSize label S (EU 36)',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '33cm', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '78cm', value: 78, unit: 'cm', basis: 'length' }
    ],
    aside: ['36'],
    price: null,
    fibres: [['polyester', 100]],
    lined: 'full',
    cut: { silhouette: 'pleated', dressLength: 'midi' }
  },
  {
    id: 'b1-en-015',
    class: 'plain',
    lang: 'en',
    title: '1950s Novelty Print Circle Skirt',
    text: 'Regular price\n$120.00 USD\nQuantity\n\nA real showstopper of a cotton full circle skirt printed with carnival scenes and scattered with hand sewn sequins, about 10 of which are missing. Metal zip at the side.\n\nMeasures laid flat edge to edge\n- 13" waist\n- 29.5" length\n- 90" hem\nHips are free\n\nLabel reads 14 but this is old sizing. Petticoat in the photos is not included.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '13"', value: 13, unit: 'in', basis: 'flat' },
      { point: 'skirtLength', text: '29.5"', value: 29.5, unit: 'in', basis: 'length' },
      { point: 'sweep', text: '90"', value: 90, unit: 'in', basis: 'flat' }
    ],
    aside: ['14'],
    price: { amount: 120, currency: 'USD' },
    fibres: [['cotton', null]],
    lined: null,
    cut: { silhouette: 'circle' }
  },
  {
    id: 'b1-en-016',
    class: 'plain',
    lang: 'en',
    title: 'Denim mini skirt frayed hem',
    text: "Five pocket denim mini skirt, frayed hem, light to mid blue. Marked size 28. I measure it at 14.5in across the waist, 18in across the hips about 7in down, and it's 15.5in long. 98% cotton / 2% elastane so a little give. Bought for $45, yours for $15. Local pickup or you pay the label.",
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '14.5in', value: 14.5, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '18in', value: 18, unit: 'in', basis: 'flat' },
      { point: 'skirtLength', text: '15.5in', value: 15.5, unit: 'in', basis: 'length' }
    ],
    aside: ['28', '7in', '45'],
    price: { amount: 15, currency: 'USD' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    lined: null,
    cut: { dressLength: 'mini' }
  },
  {
    id: 'b1-en-017',
    class: 'plain',
    lang: 'en',
    title: '1950s Rose Print Cotton Day Dress',
    text: 'A lovely mid 1950s day dress in crisp cotton printed with roses. Short sleeves, full gathered skirt, metal zip at the side.\n\nPlease check your own measures against these:\nShoulders seam to seam: 14.5" (37cm)\nArmpit to armpit: 18" (46cm)\nWaist: 26" (66cm)\nShoulder to waist: 15" (38cm)\nWaist to hem: 25.5" (65cm) + 2" (5cm) hem to let down\nTotal length: 40.5" (103cm)\nFabric: cotton, unlined\nCondition: great, one tiny repair under the left arm.\n\n€85,00 EUR',
    kind: 'dress',
    measures: [
      { point: 'shoulderWidth', text: '14.5"', value: 14.5, unit: 'in', basis: 'length' },
      { point: 'chest', text: '18"', value: 18, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '26"', value: 26, unit: 'in', basis: 'around' },
      { point: 'napeToWaist', text: '15"', value: 15, unit: 'in', basis: 'length' },
      { point: 'skirtLength', text: '25.5"', value: 25.5, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '40.5"', value: 40.5, unit: 'in', basis: 'length' }
    ],
    aside: ['2"'],
    price: { amount: 85, currency: 'EUR' },
    fibres: [['cotton', null]],
    lined: 'none',
    cut: { silhouette: 'gathered', sleeve: 'short' }
  },
  {
    id: 'b1-en-018',
    class: 'plain',
    lang: 'en',
    title: '90s Bias Cut Slip Dress Burgundy',
    text: 'Burgundy satin slip dress, 90s, bias cut, adjustable spaghetti straps. Tag says M.\nFlat measurements: bust 17" waist 15.5" hips 19" length with straps 48"\n100% polyester. No flaws I can see. No returns, please ask questions first!',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '17"', value: 17, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '15.5"', value: 15.5, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '19"', value: 19, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '48"', value: 48, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: null,
    fibres: [['polyester', 100]],
    lined: null,
    cut: { silhouette: 'bias' }
  },
  {
    id: 'b1-en-019',
    class: 'plain',
    lang: 'en',
    title: '1970s Calico Prairie Maxi Dress',
    text: 'Dreamy 1970s prairie maxi dress. Lace inset at the bodice, long sleeves with buttoned cuffs, ruffle at the hem, ties at the back waist.\n\n✂ MEASUREMENTS\nBust: 34"\nWaist: 26"\nHips: open\nShoulder to shoulder: 13.5"\nSleeve: 23"\nLength: 54"\nHem circumference: 110"\n\nFabric: cotton blend\nFully lined\nLabel: none\nBest fits: XS/S, dress form is a size 2\n\n$98.00',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '34"', value: 34, unit: 'in', basis: 'around' },
      { point: 'waist', text: '26"', value: 26, unit: 'in', basis: 'around' },
      { point: 'shoulderWidth', text: '13.5"', value: 13.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '23"', value: 23, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '54"', value: 54, unit: 'in', basis: 'length' },
      { point: 'sweep', text: '110"', value: 110, unit: 'in', basis: 'around' }
    ],
    aside: ['2'],
    price: { amount: 98, currency: 'USD' },
    fibres: [['cotton', null]],
    lined: 'full',
    cut: { dressLength: 'maxi', sleeve: 'long' }
  },
  {
    id: 'b1-en-020',
    class: 'plain',
    lang: 'en',
    title: 'Linen shirt dress size 12',
    text: 'Rust coloured linen shirt dress, elbow length sleeves, pockets, self tie belt. Size AU 12 but roomy.\nLaid flat: pit to pit 53cm, waist 50cm, hips 56cm, shoulder seam to hem 104cm.\n100% linen. Washes well. \n$35. Post $10.60 Aus wide or pickup Geelong.',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '53cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '50cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '56cm', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '104cm', value: 104, unit: 'cm', basis: 'length' }
    ],
    aside: ['12', '10.60'],
    price: { amount: 35, currency: 'AUD' },
    fibres: [['linen', 100]],
    lined: null,
    cut: { silhouette: 'shirt-dress', sleeve: 'elbow' }
  },
  {
    id: 'b1-en-021',
    class: 'plain',
    lang: 'en',
    title: 'Navy wool crepe shift dress',
    text: 'Smart sleeveless shift dress in navy wool crepe. Concealed back zip, fully lined, kick pleat. Size label UK 10.\nBust 36 ins\nWaist 33 ins\nHips 38 ins\nLength down centre back 37 ins\nOuter 96% wool 4% elastane. Lining 100% polyester.\nDry cleaned and ready to wear. £18',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '36 ins', value: 36, unit: 'in', basis: 'around' },
      { point: 'waist', text: '33 ins', value: 33, unit: 'in', basis: 'around' },
      { point: 'hip', text: '38 ins', value: 38, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '37 ins', value: 37, unit: 'in', basis: 'length' }
    ],
    aside: ['10'],
    price: { amount: 18, currency: 'GBP' },
    fibres: [
      ['wool', 96],
      ['elastane', 4]
    ],
    lined: 'full',
    cut: { silhouette: 'shift', sleeve: 'sleeveless' }
  },
  {
    id: 'b1-en-022',
    class: 'plain',
    lang: 'en',
    title: 'Vintage Washed Black Denim Dungarees',
    text: 'Washed black denim dungarees, relaxed fit, brass buckles, lots of pockets.\n\nWaist 34" around\nHips 42"\nInseam 27"\nLeg opening 7.5" flat\nStraps adjustable, bib is 10" tall\n\nTag: M\nFabric: cotton\nCondition: excellent, one button replaced\n$45',
    kind: 'jumpsuit',
    measures: [
      { point: 'waist', text: '34"', value: 34, unit: 'in', basis: 'around' },
      { point: 'hip', text: '42"', value: 42, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '27"', value: 27, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '7.5"', value: 7.5, unit: 'in', basis: 'flat' }
    ],
    aside: ['10"'],
    price: { amount: 45, currency: 'USD' },
    fibres: [['cotton', null]],
    lined: null,
    cut: { closeness: 'relaxed' }
  },
  {
    id: 'b1-en-023',
    class: 'plain',
    lang: 'en',
    title: 'Workwear boiler suit navy cotton drill',
    text: 'Ex stock navy boiler suit, popper front, two chest pockets, rule pocket on the leg. Heavy cotton drill. Has been washed and had a name badge taken off so slight marks on the chest.\n\nP2P: 23"\nShoulder to shoulder: 18.5"\nSleeve: 24"\nWaist: 20"\nInside leg: 29"\nShoulder to crotch: 35"\n\nSize label 104T. £40 including tracked delivery',
    kind: 'jumpsuit',
    measures: [
      { point: 'chest', text: '23"', value: 23, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '18.5"', value: 18.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '24"', value: 24, unit: 'in', basis: 'length' },
      { point: 'waist', text: '20"', value: 20, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '29"', value: 29, unit: 'in', basis: 'length' },
      { point: 'torsoLength', text: '35"', value: 35, unit: 'in', basis: 'length' }
    ],
    aside: ['104'],
    price: { amount: 40, currency: 'GBP' },
    fibres: [['cotton', null]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-024',
    class: 'plain',
    lang: 'en',
    title: 'Floral playsuit size 10',
    text: 'Ditsy floral playsuit, v neck, short sleeves, side pockets\narmpit to armpit 45cm\nwaist 36cm (elasticated, up to 44cm)\nlength from shoulder 82cm\n100% viscose\nworn once for a christening. £7',
    kind: 'jumpsuit',
    measures: [
      { point: 'chest', text: '45cm', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '36cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '82cm', value: 82, unit: 'cm', basis: 'length' }
    ],
    aside: ['10'],
    price: { amount: 7, currency: 'GBP' },
    fibres: [['viscose', 100]],
    lined: null,
    cut: { sleeve: 'short' },
    second: [{ point: 'waist', text: '44cm' }]
  },
  {
    id: 'b1-en-025',
    class: 'plain',
    lang: 'en',
    title: '1970s Disco Halter Jumpsuit',
    text: 'Slinky emerald halter jumpsuit with palazzo legs, ties at the neck and zips at the back. Polyester knit with beautiful drape. Straight out of the club.\n\nBust: up to 35"\nWaist: 27"\nHips: 40"\nInseam: 32"\n\nShown on a mannequin with a 34-24-34 figure. No label. Condition: very good, tiny pull on left leg.\n\n$145.00 or 4 interest-free payments of $36.25',
    kind: 'jumpsuit',
    measures: [
      { point: 'chest', text: '35"', value: 35, unit: 'in', basis: 'around' },
      { point: 'waist', text: '27"', value: 27, unit: 'in', basis: 'around' },
      { point: 'hip', text: '40"', value: 40, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '32"', value: 32, unit: 'in', basis: 'length' }
    ],
    aside: ['34-24-34', '36.25'],
    price: { amount: 145, currency: 'USD' },
    fibres: [['polyester', null]],
    lined: null,
    cut: { leg: 'palazzo' }
  },
  {
    id: 'b1-en-026',
    class: 'plain',
    lang: 'en',
    title: '1960s Chambray Work Shirt, sanforized',
    text: 'Faded cotton chambray with chain stitched seams, two button pockets, cat eye buttons. Repaired elbow, paint flecks. Great character.\n\npit to pit – 23.5\nshoulder to shoulder – 18.5\nsleeve (shoulder seam to cuff) – 25\nlength (back collar seam to hem) – 31\n\nall in inches. tag reads 16-16 1/2\n$55 shipped',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '23.5', value: 23.5, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '18.5', value: 18.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '31', value: 31, unit: 'in', basis: 'length' }
    ],
    aside: ['16-16 1/2'],
    price: { amount: 55, currency: 'USD' },
    fibres: [['cotton', null]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-027',
    class: 'plain',
    lang: 'en',
    title: 'Pussybow silk blouse ivory',
    text: 'Elegant ivory silk blouse with tie neck and long sleeves. Covered buttons. Small faint mark inside the collar, not visible when worn.\n\nSize: UK 12\nPit to pit: 51cm\nSleeve: 58cm from shoulder seam\nCuff: 21cm all round\nLength: 64cm\nMaterial: 100% silk\n\n£24',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '51cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '58cm', value: 58, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '21cm', value: 21, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '64cm', value: 64, unit: 'cm', basis: 'length' }
    ],
    aside: ['12'],
    price: { amount: 24, currency: 'GBP' },
    fibres: [['silk', 100]],
    lined: null,
    cut: { sleeve: 'long' }
  },
  {
    id: 'b1-en-028',
    class: 'plain',
    lang: 'en',
    title: 'Vtg Hawaiian Shirt Rayon Hibiscus Mens M',
    text: 'Vintage short sleeve Hawaiian shirt with blue hibiscus. 100% rayon, coconut buttons, matched pocket. Size tag M. Measures 22 1/2 inches pit to pit and 28 inches long from base of collar. Sleeves are 9 inches from the shoulder seam. No rips, no stains, no odors. Buy it now $34.00, flat $6.95 shipping in the US. Check my other auctions for more.',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '22 1/2 inches', value: 22.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '28 inches', value: 28, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '9 inches', value: 9, unit: 'in', basis: 'length' }
    ],
    aside: ['6.95'],
    price: { amount: 34, currency: 'USD' },
    fibres: [['viscose', 100]],
    lined: null,
    cut: { sleeve: 'short' }
  },
  {
    id: 'b1-en-029',
    class: 'plain',
    lang: 'en',
    title: 'Mens white double cuff dress shirt slim fit',
    text: 'Slim fit double cuff shirt for cufflinks (not included). 100% cotton twill.\n\nCollar 15.5"\nChest 44"\nSleeve 34" (measured from centre back)\nLength 31"\n\nWorn a handful of times, laundered and pressed. £10 each, I have 3 the same.',
    kind: 'shirt',
    measures: [
      { point: 'neck', text: '15.5"', value: 15.5, unit: 'in', basis: 'around' },
      { point: 'chest', text: '44"', value: 44, unit: 'in', basis: 'around' },
      { point: 'sleeveFromCentreBack', text: '34"', value: 34, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '31"', value: 31, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 10, currency: 'GBP' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { closeness: 'slim' }
  },
  {
    id: 'b1-en-030',
    class: 'plain',
    lang: 'en',
    title: 'Faded 1994 single stitch tee',
    text: 'perfectly thrashed, paper thin, small holes at collar\n\ntag XL fits L\npit to pit 21\nlength 27.5\nsleeve 8\n\n50/50 cotton poly\n40 shipped, trades considered',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '21', value: 21, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '27.5', value: 27.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '8', value: 8, unit: 'in', basis: 'length' }
    ],
    aside: ['1994'],
    price: { amount: 40, currency: 'USD' },
    fibres: [
      ['cotton', 50],
      ['polyester', 50]
    ],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-031',
    class: 'plain',
    lang: 'en',
    title: 'Mens knitted cotton polo',
    text: 'Short sleeve knitted polo in burgundy with a cream stripe. Size Medium. 100% cotton.\n\nChest 20.5" underarm to underarm\nHem 17" relaxed\nBack length 26" from collar seam\n\nExcellent condition. £20 posted.',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '20.5"', value: 20.5, unit: 'in', basis: 'flat' },
      { point: 'hem', text: '17"', value: 17, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '26"', value: 26, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 20, currency: 'GBP' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { sleeve: 'short' }
  },
  {
    id: 'b1-en-032',
    class: 'plain',
    lang: 'en',
    title: 'Stretchy black slash neck top UK 16',
    text: 'Underarm to underarm 46cm unstretched\nLength 60cm\nThree quarter sleeves, 43cm from shoulder seam\n95% viscose, 5% elastane\nWashed and ready to go\n£5 or 3 tops for £12',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '43cm', value: 43, unit: 'cm', basis: 'length' }
    ],
    aside: ['16', '12'],
    price: { amount: 5, currency: 'GBP' },
    fibres: [
      ['viscose', 95],
      ['elastane', 5]
    ],
    lined: null,
    cut: { sleeve: 'three-quarter' }
  },
  {
    id: 'b1-en-033',
    class: 'plain',
    lang: 'en',
    text: 'cute cropped ribbed tank 🤎 \nbust 28-34" (lots of stretch)\nlength 17"\n92% cotton 8% spandex\nfits xs-m, i\'m a 32C and it fits me great\n$10 + ship',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '28-34"', value: 31, low: 28, high: 34, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '17"', value: 17, unit: 'in', basis: 'length' }
    ],
    aside: ['32'],
    price: { amount: 10, currency: 'USD' },
    fibres: [
      ['cotton', 92],
      ['elastane', 8]
    ],
    lined: null,
    cut: { topLength: 'cropped' }
  },
  {
    id: 'b1-en-034',
    class: 'plain',
    lang: 'en',
    title: 'Hand Knitted Aran Cardigan',
    text: 'Heavy hand knitted Aran cardigan in natural cream wool, leather football buttons, raglan sleeves, two pockets. Smells faintly of lanolin as it should.\n\nArmpit to armpit, buttoned: 22"\nCollar to cuff: 31"\nSleeve seam (underarm): 18"\nLength, back of neck to hem: 27"\n\nNo size label, I\'d say men\'s M or women\'s L.\n£35 free delivery',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '22"', value: 22, unit: 'in', basis: 'flat' },
      { point: 'sleeveFromCentreBack', text: '31"', value: 31, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '18"', value: 18, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '27"', value: 27, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 35, currency: 'GBP' },
    fibres: [['wool', null]],
    lined: null,
    cut: { shoulder: 'raglan' }
  },
  {
    id: 'b1-en-035',
    class: 'plain',
    lang: 'en',
    title: '90s embroidered sweatshirt',
    text: '✨ 90s forest green sweatshirt with embroidered ducks\n🏷 Label: L, oversized fit\n📏 Pit to pit 24" Length 27"\n🧵 80% cotton 20% polyester\n⚠️ Small stain on left cuff, price reflects\n💷 £25 free post\nMessage for bundles, 10% off 2 items',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '24"', value: 24, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '27"', value: 27, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 25, currency: 'GBP' },
    fibres: [
      ['cotton', 80],
      ['polyester', 20]
    ],
    lined: null,
    cut: { closeness: 'oversized' }
  },
  {
    id: 'b1-en-036',
    class: 'plain',
    lang: 'en',
    title: 'Cashmere v neck jumper charcoal',
    text: '2 ply pure cashmere, charcoal. Has been shaved and washed. One 2mm moth hole near the hem which I have closed up.\n\nWidth underarm to underarm 50cm\nLength 63cm\nSleeve 62cm\n\nLabel: Large, 100% cashmere\n£30',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '50cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '63cm', value: 63, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62cm', value: 62, unit: 'cm', basis: 'length' }
    ],
    aside: ['2mm'],
    price: { amount: 30, currency: 'GBP' },
    fibres: [['cashmere', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-037',
    class: 'plain',
    lang: 'en',
    title: '80s Batwing Mohair Sweater Dusty Pink',
    text: 'The fluffiest oversized sweater, batwing sleeves, wide ribbed band at the bottom.\n\nBust: 50" around\nBottom band: 32" unstretched\nSleeve from underarm: 17"\nLength: 26"\n\nContent: 70% mohair, 20% acrylic, 10% nylon\nSize label: one size\nExcellent condition.\n\n$68.00 CAD',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '50"', value: 50, unit: 'in', basis: 'around' },
      { point: 'hem', text: '32"', value: 32, unit: 'in', basis: 'around' },
      { point: 'sleeveUnderarm', text: '17"', value: 17, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '26"', value: 26, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 68, currency: 'CAD' },
    fibres: [
      ['mohair', 70],
      ['acrylic', 20],
      ['polyamide', 10]
    ],
    lined: null,
    cut: { closeness: 'oversized', shoulder: 'dolman' }
  },
  {
    id: 'b1-en-038',
    class: 'plain',
    lang: 'en',
    title: 'WTS brown herringbone tweed sack jacket',
    text: "Wish this worked for me but the shoulders are too wide. Bought on here last winter, worn twice. Brown herringbone wool tweed, 3/2 roll, half lined, hook vent, patch pockets. No tagged size.\n\n18.5 shoulder seam to seam\n21.5 pit to pit\n20 waist\n25 sleeves (2 to let out)\n30.75 bottom of collar to hem\n\n$110 shipped, or make me an offer. I'm a 40R with a 33 waist for what it's worth.",
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '18.5', value: 18.5, unit: 'in', basis: 'length' },
      { point: 'chest', text: '21.5', value: 21.5, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '20', value: 20, unit: 'in', basis: 'flat' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '30.75', value: 30.75, unit: 'in', basis: 'length' }
    ],
    aside: ['3/2', '40', '33'],
    price: { amount: 110, currency: 'USD' },
    fibres: [['wool', null]],
    lined: 'half',
    cut: {}
  },
  {
    id: 'b1-en-039',
    class: 'plain',
    lang: 'en',
    title: 'Cropped denim jacket mid blue',
    text: 'Classic cropped denim jacket, metal buttons, two chest pockets, adjusters at the waist. 100% cotton.\nPit to pit: 19.5"\nShoulder: 17"\nSleeve: 23"\nLength: 19"\nSize 10 on the label.\nGood used condition, fading as you\'d expect.\n£22.00',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '19.5"', value: 19.5, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '17"', value: 17, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '23"', value: 23, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '19"', value: 19, unit: 'in', basis: 'length' }
    ],
    aside: ['10'],
    price: { amount: 22, currency: 'GBP' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { topLength: 'cropped' }
  },
  {
    id: 'b1-en-040',
    class: 'plain',
    lang: 'en',
    title: 'Vintage Brown Leather Half Belt Jacket',
    text: 'Description\n\nRugged leather jacket with half belt back and shirt collar, zips smoothly. The leather is supple with a great patina. Quilted lining intact, knit storm cuffs in the sleeves. Scuffs to both elbows.\n\nChest (pit to pit): 22" (doubled = 44")\nShoulder to shoulder: 18"\nSleeve (shoulder to cuff): 25"\nLength (base of collar to hem): 26"\n\n$150.00\nShips from Oregon. Please convo me with questions',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '22"', value: 22, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '18"', value: 18, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25"', value: 25, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '26"', value: 26, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 150, currency: 'USD' },
    fibres: [['leather', null]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-en-041',
    class: 'plain',
    lang: 'en',
    title: 'Mens navy wool 2 piece suit 40R',
    text: 'Two button navy suit, worn for a couple of weddings. 100% wool, jacket fully lined.\n\nJacket\nPit to pit 21.5"\nShoulders 18"\nSleeve 24.5"\nLength 29.5" from bottom of collar\n\nTrousers\nWaist 16.5" flat\nRise 11"\nInside leg 30.5"\nHem 8.5"\n\n£60, postage by courier £7',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '21.5"', value: 21.5, unit: 'in', basis: 'flat', of: 'jacket' },
      { point: 'shoulderWidth', text: '18"', value: 18, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'sleeveLength', text: '24.5"', value: 24.5, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '29.5"', value: 29.5, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '16.5"', value: 16.5, unit: 'in', basis: 'flat', of: 'trousers' },
      { point: 'frontRise', text: '11"', value: 11, unit: 'in', basis: 'length', of: 'trousers' },
      { point: 'inseam', text: '30.5"', value: 30.5, unit: 'in', basis: 'length', of: 'trousers' },
      { point: 'legOpening', text: '8.5"', value: 8.5, unit: 'in', basis: 'flat', of: 'trousers' }
    ],
    aside: ['40', '7'],
    price: { amount: 60, currency: 'GBP' },
    fibres: [['wool', 100]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-en-042',
    class: 'plain',
    lang: 'en',
    title: '80s Power Shoulder Blazer Houndstooth',
    text: 'Black and white houndstooth blazer, strong padded shoulders, double breasted, gold buttons. Lined.\nMaterial: wool blend\nLabel size: 9/10\n• Shoulder: 18.5"\n• Bust: 41"\n• Waist: 37"\n• Sleeve: 22.5"\n• Length: 28"\nModel is 5\'8", bust 33", waist 26", hips 36"\nVintage items may show light wear consistent with age.\n$72.00 CAD',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '18.5"', value: 18.5, unit: 'in', basis: 'length' },
      { point: 'chest', text: '41"', value: 41, unit: 'in', basis: 'around' },
      { point: 'waist', text: '37"', value: 37, unit: 'in', basis: 'around' },
      { point: 'sleeveLength', text: '22.5"', value: 22.5, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '28"', value: 28, unit: 'in', basis: 'length' }
    ],
    aside: ['9/10', '5\'8"', '33"', '26"', '36"'],
    price: { amount: 72, currency: 'CAD' },
    fibres: [['wool', null]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-en-043',
    class: 'plain',
    lang: 'en',
    title: 'Camel wool coat size 14',
    text: "Timeless camel coat, single breasted, deep pockets and a back vent. 80% wool 20% cashmere, fully lined in viscose. I've had it cleaned and all buttons are there plus a spare.\n\nunderarm to underarm 55cm\nshoulders 42cm\nsleeve from shoulder 61cm\nlength from back of neck 108cm\n\n£75 - cost me over £300 new",
    kind: 'coat',
    measures: [
      { point: 'chest', text: '55cm', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '42cm', value: 42, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61cm', value: 61, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '108cm', value: 108, unit: 'cm', basis: 'length' }
    ],
    aside: ['14', '300'],
    price: { amount: 75, currency: 'GBP' },
    fibres: [
      ['wool', 80],
      ['cashmere', 20]
    ],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-en-044',
    class: 'plain',
    lang: 'en',
    title: 'Khaki trench with zip out liner',
    text: 'Tag says 42 Regular. Shell is 65% polyester 35% cotton. Fully lined, plus a zip out liner for the winter. Belt is present. Approx measurements:\n\n24" across chest laying flat, buttoned\n19.5" shoulder seam to shoulder seam\n25" sleeve from shoulder\n44.5" back of neck to bottom\n\nSmall ink dot near right pocket (last photo). $49.99 or best offer',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '24"', value: 24, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '19.5"', value: 19.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25"', value: 25, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '44.5"', value: 44.5, unit: 'in', basis: 'length' }
    ],
    aside: ['42'],
    price: { amount: 49.99, currency: 'USD' },
    fibres: [
      ['polyester', 65],
      ['cotton', 35]
    ],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-en-045',
    class: 'plain',
    lang: 'en',
    title: '1960s Swing Coat Sea Green',
    text: 'A sweet early sixties swing coat in sea green with a big rounded collar, raglan sleeves and one huge button. Lined in satin.\n\nContent: 60% wool, 40% mohair\nLabel: Miss Almandine (union label inside)\n\nSizing: please rely on the following and remember it should be worn loose.\nSleeves: 28" from the mid neck seam\nSleeve inseam: 13"\nBust: 44" around\nHemline: 82" around\nOverall length: 38", measured flat at the back from the neck seam\n\nCondition: very good with light pilling at the cuffs.\n€120',
    kind: 'coat',
    measures: [
      { point: 'sleeveFromCentreBack', text: '28"', value: 28, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '13"', value: 13, unit: 'in', basis: 'length' },
      { point: 'chest', text: '44"', value: 44, unit: 'in', basis: 'around' },
      { point: 'sweep', text: '82"', value: 82, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '38"', value: 38, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 120, currency: 'EUR' },
    fibres: [
      ['wool', 60],
      ['mohair', 40]
    ],
    lined: 'full',
    cut: { shoulder: 'raglan' }
  },
  {
    id: 'b1-en-046',
    class: 'plain',
    lang: 'en',
    title: "Women's down parka with hood, black",
    text: 'Warm long down parka, detachable hood, two way zip. 650 fill, shell 100% nylon, 80% down 20% feather filling.\nSize M\nChest 22 in flat\nSleeve 25 in\nBottom hem 24 in\nLength 35 in from back collar\nWorn one winter. $80 firm. Cross posted.',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '22 in', value: 22, unit: 'in', basis: 'flat' },
      { point: 'sleeveLength', text: '25 in', value: 25, unit: 'in', basis: 'length' },
      { point: 'sweep', text: '24 in', value: 24, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '35 in', value: 35, unit: 'in', basis: 'length' }
    ],
    aside: ['650', '80%', '20%'],
    price: { amount: 80, currency: 'USD' },
    fibres: [['polyamide', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-047',
    class: 'plain',
    lang: 'en',
    title: 'Tweed waistcoat mens',
    text: 'Lovely wool tweed waistcoat, brown and rust check, six buttons, four pockets, satin back with adjuster, lined. \n\nWhen laid flat it measures - \nChest - 21 1/2"\nShoulders - 15"\nLength - 23 1/2"\n\nSuits up to a 42" chest depending on the fit you like. £18.50',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '21 1/2"', value: 21.5, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '15"', value: 15, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '23 1/2"', value: 23.5, unit: 'in', basis: 'length' }
    ],
    aside: ['42"'],
    price: { amount: 18.5, currency: 'GBP' },
    fibres: [['wool', null]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-en-048',
    class: 'plain',
    lang: 'en',
    title: 'Quilted gilet navy size L',
    text: 'Mens quilted gilet, zip and popper front, fleece collar lining.\nPit to pit 58cm\nLength back 70cm\n100% polyester\nsmall pull on the back, otherwise as new\n£15 collect or post for £3.49',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '58cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70cm', value: 70, unit: 'cm', basis: 'length' }
    ],
    aside: ['3.49'],
    price: { amount: 15, currency: 'GBP' },
    fibres: [['polyester', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-049',
    class: 'plain',
    lang: 'en',
    title: '70s Fringed Suede Vest',
    text: 'Rich tobacco suede with long fringe and whip stitched edges. Unlined. No closures, worn open.\n\nArmpit to armpit 17.5"\nShoulder to shoulder 13"\nLength 20" not counting the 7" fringe\n\nFits like XS-S. Some darkening at the collar.\n$40',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '17.5"', value: 17.5, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '13"', value: 13, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '20"', value: 20, unit: 'in', basis: 'length' }
    ],
    aside: ['7"'],
    price: { amount: 40, currency: 'USD' },
    fibres: [['suede', null]],
    lined: 'none',
    cut: {}
  },
  {
    id: 'b1-en-050',
    class: 'plain',
    lang: 'en',
    title: 'Ladies black satin waistcoat',
    text: 'Evening waistcoat with jet look buttons and a buckle at the back. Marked size 12. \nBust 38"  Waist 33" (cinched in 31")  Armhole 19" round  Length at back 19.5"\nFront acetate, back polyester lining fabric. In fab condition. Starting bid £5.00, postage £3.35.',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '38"', value: 38, unit: 'in', basis: 'around' },
      { point: 'waist', text: '33"', value: 33, unit: 'in', basis: 'around' },
      { point: 'armhole', text: '19"', value: 19, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '19.5"', value: 19.5, unit: 'in', basis: 'length' }
    ],
    aside: ['12', '5.00', '3.35'],
    price: null,
    fibres: [['acetate', null]],
    lined: null,
    cut: {},
    second: [{ point: 'waist', text: '31"' }]
  },
  {
    id: 'b1-en-051',
    class: 'plain',
    lang: 'en',
    title: '1950s Skirted Swimsuit Polka Dot',
    text: 'Adorable skirted swimsuit in navy with white dots, shirred back panel, boned bust, button on straps.\n\nbust 32-36"\nwaist 26-30"\nhips 34-38"\ntorso (strap to crotch) 27"\n\nnylon, soft cotton lining in the bust and gusset\nelastic still has life. $55',
    kind: 'other',
    measures: [
      { point: 'chest', text: '32-36"', value: 34, low: 32, high: 36, unit: 'in', basis: 'around' },
      { point: 'waist', text: '26-30"', value: 28, low: 26, high: 30, unit: 'in', basis: 'around' },
      { point: 'hip', text: '34-38"', value: 36, low: 34, high: 38, unit: 'in', basis: 'around' },
      { point: 'torsoLength', text: '27"', value: 27, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 55, currency: 'USD' },
    fibres: [['polyamide', null]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-052',
    class: 'plain',
    lang: 'en',
    title: 'Victorian style cotton nightdress',
    text: 'White cotton nightie with pintucks, lace at the yoke and mother of pearl buttons. Very roomy.\nBust 46"\nSleeve 21"\nLength 51"\n100% cotton, starched and ironed. I have several more listed. £20',
    kind: 'other',
    measures: [
      { point: 'chest', text: '46"', value: 46, unit: 'in', basis: 'around' },
      { point: 'sleeveLength', text: '21"', value: 21, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '51"', value: 51, unit: 'in', basis: 'length' }
    ],
    aside: [],
    price: { amount: 20, currency: 'GBP' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-053',
    class: 'plain',
    lang: 'en',
    title: '1960s Black Nylon Full Slip Lace Trim',
    text: 'Pretty full slip, deep lace at hem and bust, adjustable straps. All nylon.\n- Bust: 36"\n- Waist: 31"\n- Hips: 40"\n- Length: 39" from top of strap\n- Tag: 36 Average\nPhotographed on a size 6 form\n$24.00',
    kind: 'other',
    measures: [
      { point: 'chest', text: '36"', value: 36, unit: 'in', basis: 'around' },
      { point: 'waist', text: '31"', value: 31, unit: 'in', basis: 'around' },
      { point: 'hip', text: '40"', value: 40, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '39"', value: 39, unit: 'in', basis: 'length' }
    ],
    aside: ['6'],
    price: { amount: 24, currency: 'USD' },
    fibres: [['polyamide', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-054',
    class: 'plain',
    lang: 'en',
    title: 'Tan leather riding style boots size 6',
    text: 'Tan leather knee boots, pull on, 1.5" stacked heel. Marked UK 6.\nInsole 10"\nHeight from floor 16.5"\nCalf 14.5" round at the top\nWidth across the ball 3.5"\nResoled last year. £28 plus £4.25 postage',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['1.5"', '6', '10"', '16.5"', '14.5"', '3.5"'],
    price: { amount: 28, currency: 'GBP' },
    fibres: [['leather', null]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-en-055',
    class: 'plain',
    lang: 'en',
    title: 'Vintage Knitwear – Page 2',
    text: 'Home / Womens / Knitwear\nSort by: Newest   Showing 25–48 of 61\n\n1980s Cable Cardigan, chest 40"\n£32.00  Add to basket\nFair Isle Tank Top, pit to pit 18"\n£26.00  Sold out\nLambswool Twinset, size 12\n£38.00  Add to basket\nMohair Batwing Jumper, length 24"\n£45.00  Add to basket\nAngora Bolero, bust 34"\n£22.00 £18.00 Sale\n\nHow we measure: all garments are measured flat and doubled. Allow 2" for ease.',
    kind: null,
    measures: [],
    aside: ['40"', '18"', '12', '24"', '34"', '2"'],
    price: null,
    fibres: [],
    lined: null,
    cut: {},
    noSingle: true
  },
  {
    id: 'b1-de-01',
    class: 'plain',
    lang: 'de',
    title: 'Vintage Midikleid 70er Blumen Gr. 38',
    text: 'Verkaufe dieses schöne Midikleid aus den 70ern, kurze Ärmel, Stoffgürtel ist dabei. Größe 38 laut Etikett, fällt aber eher klein aus.\n\nMaße:\nBrustweite von Achsel zu Achsel: 45 cm\nTaille: 36 cm einfach gemessen\nÄrmellänge: 22 cm\nGesamtlänge: 108 cm\n\n100 % Polyester, ungefüttert. Zustand sehr gut, keine Flecken.\n15 € VB, Versand 5,49 €\nPrivatverkauf, keine Garantie oder Rücknahme. Tierfreier Nichtraucherhaushalt.',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '45 cm', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '36 cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '22 cm', value: 22, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '108 cm', value: 108, unit: 'cm', basis: 'length' }
    ],
    aside: ['38', '5,49'],
    price: { amount: 15, currency: 'EUR' },
    fibres: [['polyester', 100]],
    lined: 'none',
    cut: { dressLength: 'midi', sleeve: 'short' }
  },
  {
    id: 'b1-de-02',
    class: 'plain',
    lang: 'de',
    title: 'Vintage Lederjacke Herren schwarz L',
    text: 'Schwarze Bikerjacke aus echtem Leder, schöne Patina, alle Reißverschlüsse laufen einwandfrei.\n\nObermaterial: Leder\nFutter: 100% Polyester\nGröße (Etikett): L\n\nMaße in cm, flach liegend gemessen:\nSchultern 47\nBrust 56\nÄrmel 64\nLänge 66\n\n89,00 €\ninkl. MwSt., zzgl. Versandkosten\nLieferzeit 2-4 Werktage',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '47', value: 47, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '56', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '64', value: 64, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '66', value: 66, unit: 'cm', basis: 'length' }
    ],
    aside: ['2-4'],
    price: { amount: 89, currency: 'EUR' },
    fibres: [['leather', null]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-de-03',
    class: 'plain',
    lang: 'de',
    text: 'Braune Feincordhose für Herren Gr. 52, gerades Bein, kaum getragen. Bundweite 44cm (liegend), Leibhöhe 28cm, Innenbeinlänge 79cm, Außenlänge 105cm, Fußweite 20cm. 98% Baumwolle, 2% Elasthan. Preis 12 Euro, bei Versand als Warensendung plus 2,70.',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '44cm', value: 44, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '28cm', value: 28, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '79cm', value: 79, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '105cm', value: 105, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '20cm', value: 20, unit: 'cm', basis: 'flat' }
    ],
    aside: ['52', '2,70'],
    price: { amount: 12, currency: 'EUR' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    lined: null,
    cut: { leg: 'straight' }
  },
  {
    id: 'b1-fr-01',
    class: 'plain',
    lang: 'fr',
    title: 'Chemise homme en lin bleu ciel taille M',
    text: "Chemise en lin très légère, portée deux fois l'été dernier. Manches longues, col classique.\n\nLargeur aisselle à aisselle : 56 cm\nLargeur épaules : 47 cm\nLongueur manche : 64 cm\nLongueur dos : 77 cm\n\n100% lin, lavage 30°\nEnvoi soigné sous 48h. N'hésitez pas à faire un lot ! 14€",
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '56 cm', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '47 cm', value: 47, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '64 cm', value: 64, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '77 cm', value: 77, unit: 'cm', basis: 'length' }
    ],
    aside: ['30', '48'],
    price: { amount: 14, currency: 'EUR' },
    fibres: [['linen', 100]],
    lined: null,
    cut: { sleeve: 'long' }
  },
  {
    id: 'b1-fr-02',
    class: 'plain',
    lang: 'fr',
    title: 'Jupe plissée écossaise vintage',
    text: 'Jolie jupe plissée en laine, carreaux verts et bordeaux, fermeture sur le côté. Étiquette 40 mais correspond plutôt à un 36/38 actuel. Doublée.\nTour de taille 70 cm, tour de hanches 98 cm, longueur 66 cm.\nBon état, un petit accroc sur la doublure. Prix : 18 € + port 4,40 €',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '70 cm', value: 70, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '98 cm', value: 98, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '66 cm', value: 66, unit: 'cm', basis: 'length' }
    ],
    aside: ['40', '36/38', '4,40'],
    price: { amount: 18, currency: 'EUR' },
    fibres: [['wool', null]],
    lined: 'full',
    cut: { silhouette: 'pleated' }
  },
  {
    id: 'b1-fr-03',
    class: 'plain',
    lang: 'fr',
    title: 'Manteau long gris chiné',
    text: 'Manteau femme long, col tailleur, ceinture amovible.\n🔥 État : 9/10\n🔥 Taille : 40\n\nComposition : 70% laine 30% polyamide, doublure 100% acétate\n\nÉpaule à épaule: 41cm\nAisselle à aisselle: 53cm\nLongueur de la manche: 60cm\nLongueur dos: 112cm\n\n45 euros. Je mesure 1m68.',
    kind: 'coat',
    measures: [
      { point: 'shoulderWidth', text: '41cm', value: 41, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '53cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '112cm', value: 112, unit: 'cm', basis: 'length' }
    ],
    aside: ['9/10', '40', '1m68'],
    price: { amount: 45, currency: 'EUR' },
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-es-01',
    class: 'plain',
    lang: 'es',
    title: 'Vaqueros rectos tiro alto años 90',
    text: 'Vaqueros rectos de tiro alto, azul medio, 100% algodón sin elástico. Talla etiqueta 42, equivale a una 38 actual.\n\nMedidas en plano:\nCintura: 37 cm\nCadera: 51 cm\nTiro: 31 cm\nEntrepierna: 74 cm\nBajo: 18 cm\nLargo total: 102 cm\n\n22 € · Envío 3,50 € península',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '37 cm', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '51 cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31 cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '74 cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '18 cm', value: 18, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '102 cm', value: 102, unit: 'cm', basis: 'length' }
    ],
    aside: ['42', '38', '3,50'],
    price: { amount: 22, currency: 'EUR' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { leg: 'straight', rise: 'high' }
  },
  {
    id: 'b1-es-02',
    class: 'plain',
    lang: 'es',
    title: 'Vestido midi cruzado estampado',
    text: 'Vestido cruzado midi con manga corta, muy fresquito, de viscosa. Lo vendo porque me queda pequeño de pecho. Talla M.\nPecho 46 cm de axila a axila, cintura 37 cm, largo desde el hombro 115 cm. Sin forro. Estado perfecto. 12€ no negociable',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '46 cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '37 cm', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '115 cm', value: 115, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: { amount: 12, currency: 'EUR' },
    fibres: [['viscose', null]],
    lined: 'none',
    cut: { dressLength: 'midi', silhouette: 'wrap', sleeve: 'short' }
  },
  {
    id: 'b1-es-03',
    class: 'plain',
    lang: 'es',
    title: 'Jersey de lana gordo color mostaza',
    text: 'Jersey de punto grueso cuello alto, muy calentito\n-Ancho (axila a axila): 57cm\n-Largo: 63cm\n-Manga desde la axila: 46cm\n40% lana 60% acrílico\ntiene algo de bolitas en los costados\n10€ + gastos de envio',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '57cm', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '63cm', value: 63, unit: 'cm', basis: 'length' },
      { point: 'sleeveUnderarm', text: '46cm', value: 46, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: { amount: 10, currency: 'EUR' },
    fibres: [
      ['wool', 40],
      ['acrylic', 60]
    ],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-it-01',
    class: 'plain',
    lang: 'it',
    title: 'Camicia flanella uomo quadri rossa e nera',
    text: 'Camicia vintage in flanella, 100% cotone, due taschini con bottone. Taglia L, vestibilità regolare.\n\nSpalle: 48 cm / Ascella-ascella: 59 cm / Manica: 63 cm / Lunghezza: 79 cm\n\nCondizioni ottime, nessun difetto da segnalare.\n16,00 € spedizione gratuita sopra i 40 €',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '48 cm', value: 48, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '59 cm', value: 59, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '63 cm', value: 63, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '79 cm', value: 79, unit: 'cm', basis: 'length' }
    ],
    aside: ['40'],
    price: { amount: 16, currency: 'EUR' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { closeness: 'classic' }
  },
  {
    id: 'b1-it-02',
    class: 'plain',
    lang: 'it',
    title: 'Gonna longuette a tubino grigia',
    text: 'Gonna a tubino, zip dietro e spacchetto, foderata. Tg 44.\nVita 36 cm , fianchi 49 cm, lunghezza 62 cm (misure prese in piano)\n53% poliestere, 43% lana, 4% elastan\nUsata pochissimo per lavoro. 9 euro piu spese di spedizione.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '36 cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '49 cm', value: 49, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '62 cm', value: 62, unit: 'cm', basis: 'length' }
    ],
    aside: ['44'],
    price: { amount: 9, currency: 'EUR' },
    fibres: [
      ['polyester', 53],
      ['wool', 43],
      ['elastane', 4]
    ],
    lined: 'full',
    cut: { silhouette: 'pencil' }
  },
  {
    id: 'b1-it-03',
    class: 'plain',
    lang: 'it',
    title: 'Pantaloni palazzo in lino bianchi',
    text: 'Pantaloni palazzo a vita alta in puro lino, elastico dietro, tasche laterali. Taglia S/M.\nVita: 35 cm (fino a 43 cm)\nCavallo: 32 cm\nInterno gamba: 71 cm\nLunghezza totale: 101 cm\nLarghezza fondo: 31 cm\nLa modella è alta 1,72\n25€',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '35 cm', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '32 cm', value: 32, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '71 cm', value: 71, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '101 cm', value: 101, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '31 cm', value: 31, unit: 'cm', basis: 'flat' }
    ],
    aside: ['1,72'],
    price: { amount: 25, currency: 'EUR' },
    fibres: [['linen', 100]],
    lined: null,
    cut: { leg: 'palazzo', rise: 'high' },
    second: [{ point: 'waist', text: '43 cm' }]
  },
  {
    id: 'b1-nl-01',
    class: 'plain',
    lang: 'nl',
    title: 'Korte broek heren beige maat 50',
    text: 'Nette korte broek (bermuda) van een goed merk, weinig gedragen. 97% katoen 3% elastaan.\nTaille 43 cm plat gemeten\nLengte 54 cm\nBinnenbeen 27 cm\nPijpbreedte onderaan 26 cm\nVraagprijs € 8,- ophalen in Zwolle of verzenden voor € 4,25',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '43 cm', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '54 cm', value: 54, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '27 cm', value: 27, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '26 cm', value: 26, unit: 'cm', basis: 'flat' }
    ],
    aside: ['50', '4,25'],
    price: { amount: 8, currency: 'EUR' },
    fibres: [
      ['cotton', 97],
      ['elastane', 3]
    ],
    lined: null,
    cut: { legLength: 'bermuda' }
  },
  {
    id: 'b1-nl-02',
    class: 'plain',
    lang: 'nl',
    title: 'Wollen gilet heren visgraat',
    text: 'Mooi vintage gilet in visgraat, gevoerd, met gespje op de rug. Vijf knopen. Maat 48.\n\noksel tot oksel 50 cm\nschouderbreedte 35 cm\nlengte achter 57 cm\n\n60% wol 40% polyester\n€ 12,50 excl. verzendkosten',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '50 cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '35 cm', value: 35, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '57 cm', value: 57, unit: 'cm', basis: 'length' }
    ],
    aside: ['48'],
    price: { amount: 12.5, currency: 'EUR' },
    fibres: [
      ['wool', 60],
      ['polyester', 40]
    ],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-nl-03',
    class: 'plain',
    lang: 'nl',
    title: 'Leren schoudertas cognac',
    text: 'Cognackleurige leren schoudertas, verstelbare band. Mooi gebruikt.\nBreedte 32 cm\nHoogte 26 cm\nDiepte 11 cm\nLengte band max 115 cm\nBinnenin een vak met rits, voering heeft een pennenstreepje.\n€ 20, bieden mag vanaf € 15',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['32', '26', '11', '115', '15'],
    price: { amount: 20, currency: 'EUR' },
    fibres: [['leather', null]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-pl-01',
    class: 'plain',
    lang: 'pl',
    title: 'Sweter damski z warkoczami ecru M/L',
    text: 'Ciepły sweter z golfem, splot w warkocze. Stan bardzo dobry, lekkie zmechacenie na rękawach.\n\nWymiary na płasko:\nszerokość pod pachami 54 cm x2\ndługość 65 cm\nrękaw od pachy 47 cm\n\nSkład: 50% wełna, 50% akryl\nCena 35 zł, wysyłka paczkomat 14,99',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '54 cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '65 cm', value: 65, unit: 'cm', basis: 'length' },
      { point: 'sleeveUnderarm', text: '47 cm', value: 47, unit: 'cm', basis: 'length' }
    ],
    aside: ['14,99'],
    price: { amount: 35, currency: 'PLN' },
    fibres: [
      ['wool', 50],
      ['acrylic', 50]
    ],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-pl-02',
    class: 'plain',
    lang: 'pl',
    title: 'Lniane szorty z wysokim stanem',
    text: 'Szorty lniane, wysoki stan, w pasie gumka. Rozmiar na metce 40.\nPas 36 cm (rozciąga się do 47 cm), biodra 53 cm, stan 31 cm, długość całkowita 42 cm, szerokość nogawki 32 cm.\n55% len 45% wiskoza\nUżywane jeden sezon. 25 zł',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '36 cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '53 cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31 cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '42 cm', value: 42, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '32 cm', value: 32, unit: 'cm', basis: 'flat' }
    ],
    aside: ['40'],
    price: { amount: 25, currency: 'PLN' },
    fibres: [
      ['linen', 55],
      ['viscose', 45]
    ],
    lined: null,
    cut: { rise: 'high' },
    second: [{ point: 'waist', text: '47 cm' }]
  },
  {
    id: 'b1-pl-03',
    class: 'plain',
    lang: 'pl',
    title: 'Szlafrok męski bawełniany w paski',
    text: 'Szlafrok vintage, bawełna 100%, wiązany paskiem, dwie kieszenie. Noszony sporadycznie.\n- pod pachami: 64cm\n- długość całkowita: 118cm\n- rękaw od ramienia: 54cm\nWzrost modela 182 cm\n40 zł do negocjacji',
    kind: 'other',
    measures: [
      { point: 'chest', text: '64cm', value: 64, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '118cm', value: 118, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '54cm', value: 54, unit: 'cm', basis: 'length' }
    ],
    aside: ['182'],
    price: { amount: 40, currency: 'PLN' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-sv-01',
    class: 'plain',
    lang: 'sv',
    title: 'Byxdress svart strl 40',
    text: 'Fin byxdress med vida ben och knytskärp, v-ringad. Använd två gånger. 100% viskos.\nByst 48 cm tvärs över\nMidja 39 cm\nHöft 54 cm\nInnerbenslängd 71 cm\nJag är 167 cm lång.\n150 kr plus frakt 66 kr. Djur finns i hemmet.',
    kind: 'jumpsuit',
    measures: [
      { point: 'chest', text: '48 cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '39 cm', value: 39, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '54 cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '71 cm', value: 71, unit: 'cm', basis: 'length' }
    ],
    aside: ['40', '167', '66'],
    price: { amount: 150, currency: 'SEK' },
    fibres: [['viscose', 100]],
    lined: null,
    cut: { leg: 'wide' }
  },
  {
    id: 'b1-sv-02',
    class: 'plain',
    lang: 'sv',
    title: 'Vintage t-shirt med tryck 90-tal',
    text: 'Skön blekt t-shirt i 100% bomull, trycket har spruckit lite snyggt. Märkt L men sitter som M.\nBredd (ärmhåla till ärmhåla): 53 cm\nLängd: 70 cm\nPris: 120 kr\nFrakt 45 kr, samfraktar gärna!',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '53 cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70 cm', value: 70, unit: 'cm', basis: 'length' }
    ],
    aside: ['45'],
    price: { amount: 120, currency: 'SEK' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-ja-01',
    class: 'plain',
    lang: 'ja',
    title: '80s フレンチワーク モールスキンパンツ',
    text: '80年代頃のフランス製ワークパンツ。程よく色落ちしたブルーで、ワイドシルエットが今の気分です。\n\n【サイズ】表記 44\nウエスト：82cm\n股上：31cm\n股下：73cm\nワタリ：34cm\n裾幅：22cm\n\n【素材】コットン100%\n【状態】膝に小さなリペアあり。全体的に良好です。\n\n￥8,800（税込）',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '82cm', value: 82, unit: 'cm', basis: 'around' },
      { point: 'frontRise', text: '31cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '73cm', value: 73, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '34cm', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '22cm', value: 22, unit: 'cm', basis: 'flat' }
    ],
    aside: ['44'],
    price: { amount: 8800, currency: 'JPY' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { leg: 'wide' }
  },
  {
    id: 'b1-ja-02',
    class: 'plain',
    lang: 'ja',
    title: 'リネンシャツ 長袖 生成り メンズL',
    text: '数回着用しましたが、目立った傷や汚れはありません。\nサイズL　実寸は平置きの素人採寸です。\n肩幅 約47㎝\n身幅 約57㎝\n袖丈 約60㎝\n着丈 約75㎝\n麻100%\n即購入OKです！圧縮して発送します。他サイトにも出品しているため、突然削除することがあります。',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '47㎝', value: 47, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '57㎝', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60㎝', value: 60, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '75㎝', value: 75, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: null,
    fibres: [['linen', 100]],
    lined: null,
    cut: { sleeve: 'long' }
  },
  {
    id: 'b1-ja-03',
    class: 'plain',
    lang: 'ja',
    title: '90s ラグランスウェット グレー USA製',
    text: "◇DATE / 1990's\n◇MATERIAL / コットン50% , ポリエステル50%\n◇SIZE(cm) /\n・表記 XL\n・身幅63\n・着丈68\n・裄丈86\n※着用モデル：女性162cm\n◇CONDITION / \n・袖口に薄いシミ\n◇COMMENT /\n・肉厚でしっかりとした生地のラグランスリーブです。\n---\n[No.1187] ¥5,500",
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '63', value: 63, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '68', value: 68, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '86', value: 86, unit: 'cm', basis: 'length' }
    ],
    aside: ['162', '1187'],
    price: { amount: 5500, currency: 'JPY' },
    fibres: [
      ['cotton', 50],
      ['polyester', 50]
    ],
    lined: null,
    cut: { shoulder: 'raglan' }
  },
  {
    id: 'b1-ja-04',
    class: 'plain',
    lang: 'ja',
    title: 'ウール テーラードジャケット ネイビー 2B',
    text: '着用回数が少なく美品です。クリーニング済み。\nサイズ表記：AB5\n肩幅45.5cm／身幅53cm／袖丈59cm／着丈72cm\n毛100%　背抜き仕立て\n定価は4万円ほどでした。5,000円でお願いします。送料込み',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '45.5cm', value: 45.5, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '53cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '59cm', value: 59, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '72cm', value: 72, unit: 'cm', basis: 'length' }
    ],
    aside: ['4万円'],
    price: { amount: 5000, currency: 'JPY' },
    fibres: [['wool', 100]],
    lined: 'half',
    cut: {}
  },
  {
    id: 'b1-ja-05',
    class: 'plain',
    lang: 'ja',
    title: 'ビンテージ チェスターコート キャメル',
    text: '商品詳細\n上質なウール生地を使ったチェスターコート。ゆったりと羽織れるオーバーサイズ。\n\n●素材\n表地　毛80% ナイロン20%\n裏地　キュプラ100%\n\n●サイズ　M\n着丈 110cm\n身幅 58cm\n肩幅 46cm\n袖丈 57cm\n\n●コンディション　B（使用感はありますが大きなダメージはありません）\n\n販売価格 14,300円(税込)\n15,000円以上で送料無料',
    kind: 'coat',
    measures: [
      { point: 'bodyLength', text: '110cm', value: 110, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '58cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '46cm', value: 46, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '57cm', value: 57, unit: 'cm', basis: 'length' }
    ],
    aside: ['15,000'],
    price: { amount: 14300, currency: 'JPY' },
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ],
    lined: 'full',
    cut: { closeness: 'oversized' }
  },
  {
    id: 'b1-ja-06',
    class: 'plain',
    lang: 'ja',
    title: 'プリーツスカート ロング ベージュ ウエストゴム',
    text: 'フリーサイズ\nウエスト 32cm（最大46cm）\nヒップ 54cm\n総丈 82cm\nポリエステル100% 裏地付き\n身長158cmで足首が隠れるくらいです。自宅で洗えます。',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '32cm', value: 32, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '54cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '82cm', value: 82, unit: 'cm', basis: 'length' }
    ],
    aside: ['158'],
    price: null,
    fibres: [['polyester', 100]],
    lined: 'full',
    cut: { silhouette: 'pleated' },
    second: [{ point: 'waist', text: '46cm' }]
  },
  {
    id: 'b1-ja-07',
    class: 'plain',
    lang: 'ja',
    title: '昭和レトロ 花柄ワンピース 半袖 膝丈',
    text: '昭和レトロな花柄ワンピース。背中ファスナー、裏地あり。\n【平置き実寸】\n肩幅：36cm\n身幅：45cm\nウエスト：37cm\n袖丈：19cm\n着丈：98cm\n素材表記なし（ポリエステルかと思います）\n9号くらいの方に。トルソーは7号を使用しています。\n¥3,900',
    kind: 'dress',
    measures: [
      { point: 'shoulderWidth', text: '36cm', value: 36, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '45cm', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '37cm', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '19cm', value: 19, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '98cm', value: 98, unit: 'cm', basis: 'length' }
    ],
    aside: ['9号', '7号'],
    price: { amount: 3900, currency: 'JPY' },
    fibres: [],
    lined: 'full',
    cut: { dressLength: 'knee', sleeve: 'short' }
  },
  {
    id: 'b1-ja-08',
    class: 'plain',
    lang: 'ja',
    title: 'ヴィンテージ ツイードベスト メンズ',
    text: 'イギリス古着のツイードベストです。レザーのくるみボタン。裏地付き、背面に尾錠あり。\n着丈59 身幅49 肩幅34 (単位cm)\nウール100%\n古着ですので神経質な方はご遠慮ください。4200円',
    kind: 'waistcoat',
    measures: [
      { point: 'bodyLength', text: '59', value: 59, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '49', value: 49, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '34', value: 34, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: { amount: 4200, currency: 'JPY' },
    fibres: [['wool', 100]],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-ja-09',
    class: 'plain',
    lang: 'ja',
    title: 'デニムサロペット ゆったり レディース',
    text: 'ゆったり着られるデニムのサロペットです。肩紐は調節できます。\nサイズ：M\nウエスト 約46cm\nヒップ 約55cm\n股下 約66cm\nわたり 約35cm\n裾幅 約22cm\n綿98% ポリウレタン2%\n妊娠中に購入し2回着ました。2,480円',
    kind: 'jumpsuit',
    measures: [
      { point: 'waist', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '55cm', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '66cm', value: 66, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '35cm', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '22cm', value: 22, unit: 'cm', basis: 'flat' }
    ],
    aside: [],
    price: { amount: 2480, currency: 'JPY' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    lined: null,
    cut: { closeness: 'relaxed' }
  },
  {
    id: 'b1-ko-01',
    class: 'plain',
    lang: 'ko',
    title: '빈티지 와이드 데님팬츠 중청',
    text: 'comment. 핏 예쁘고 상태 좋아요!!\n표기 : 32 (남녀공용)\n허리 40 / 밑위 31 / 허벅지 33 / 밑단 24 / 총장 105 (단위 cm)\n면 100%\n✔ 38,000원 배송비 별도 3,500',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '40', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31', value: 31, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '33', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '24', value: 24, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '105', value: 105, unit: 'cm', basis: 'length' }
    ],
    aside: ['32', '3,500'],
    price: { amount: 38000, currency: 'KRW' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { leg: 'wide' }
  },
  {
    id: 'b1-ko-02',
    class: 'plain',
    lang: 'ko',
    title: '골덴 자켓 브라운 100',
    text: '사이즈100 실측사이즈  어깨 46/ 가슴 54/ 팔 61/ 총장 75\n깔끔한 기본 카라 스타일 코듀로이 자켓입니다. 안감 있어서 봄가을 입기 좋고 겨울엔 코트 안에 입으셔도 돼요.\n하자 없이 깨끗합니다~ 가격 25000원 택포',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '46', value: 46, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '54', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '61', value: 61, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '75', value: 75, unit: 'cm', basis: 'length' }
    ],
    aside: ['100'],
    price: { amount: 25000, currency: 'KRW' },
    fibres: [],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-ko-03',
    class: 'plain',
    lang: 'ko',
    title: '반팔 티셔츠 스트라이프 L',
    text: '제품 상태 : 10점 만점에 9점\n특이사항 : 목 늘어남 없음\n사이즈 : L\n▶전체 길이 71cm\n▶소매 길이 22cm\n▶어깨 너비 48cm\n▶가슴 단면 55cm\n정가 40,000 → 판매가 15,000원',
    kind: 'knit-top',
    measures: [
      { point: 'bodyLength', text: '71cm', value: 71, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '22cm', value: 22, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '48cm', value: 48, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '55cm', value: 55, unit: 'cm', basis: 'flat' }
    ],
    aside: ['9점', '40,000'],
    price: { amount: 15000, currency: 'KRW' },
    fibres: [],
    lined: null,
    cut: { sleeve: 'short' }
  },
  {
    id: 'b1-ko-04',
    class: 'plain',
    lang: 'ko',
    title: '기모 후드집업 멜란지',
    text: '⚑ Price 2.8만\n\n⚑ Size(실측) 총장 70 가슴 61 어깨 56 소매 60\n(100-105 추천✔️)\n\n⚑ 하자나 이염 없이 컨디션 좋아요❕ 면 65 폴리 35',
    kind: 'jumper',
    measures: [
      { point: 'bodyLength', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '61', value: 61, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '56', value: 56, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    aside: ['100-105'],
    price: { amount: 28000, currency: 'KRW' },
    fibres: [
      ['cotton', 65],
      ['polyester', 35]
    ],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-ko-05',
    class: 'plain',
    lang: 'ko',
    title: '[100-105] 90s 발마칸 코트 올리브',
    text: '129,000원\n\n실측\n단위cm/단면\n1-2cm 오차가 있을 수 있습니다.\n\n-소매(래글런, 목부터) 79\n-가슴 66.5\n-총장(카라제외) 113\n\nModel size\n176cm / 70kg\n상의 100 착용\n\nComment\n- 면 60% 나일론 40% 원단의 발마칸 코트. 안감은 체크 원단으로 전체 처리되어 있습니다.',
    kind: 'coat',
    measures: [
      { point: 'sleeveFromCentreBack', text: '79', value: 79, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '66.5', value: 66.5, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '113', value: 113, unit: 'cm', basis: 'length' }
    ],
    aside: ['1-2cm', '176cm', '70kg', '100-105'],
    price: { amount: 129000, currency: 'KRW' },
    fibres: [
      ['cotton', 60],
      ['polyamide', 40]
    ],
    lined: 'full',
    cut: { shoulder: 'raglan' }
  },
  {
    id: 'b1-ko-06',
    class: 'plain',
    lang: 'ko',
    text: '오버핏 체크 남방 셔츠에요 면100프로\n어깨52 가슴62 소매58 기장77\n한두번 입고 보관만 했어요 1.5에 팔아요 반값택배 1800원',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '52', value: 52, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '62', value: 62, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '58', value: 58, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '77', value: 77, unit: 'cm', basis: 'length' }
    ],
    aside: ['1800'],
    price: { amount: 15000, currency: 'KRW' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { closeness: 'oversized' }
  },
  {
    id: 'b1-ko-07',
    class: 'plain',
    lang: 'ko',
    title: '소가죽 크로스백 브라운',
    text: '✔소재 : 소가죽\n✔사이즈(cm) : 가로 27 세로 21 폭 9 끈길이 최대 120\n✔상태 : 자연스러운 사용감, 모서리 까짐 조금\n실측은 재는 위치에 따라 1-2센치 차이날 수 있어요\n50,000원 네고 조금 가능',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['27', '21', '9', '120', '1-2'],
    price: { amount: 50000, currency: 'KRW' },
    fibres: [['leather', null]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-ko-08',
    class: 'plain',
    lang: 'ko',
    title: '린넨 반바지 밴딩 남자',
    text: '여름에 시원한 린넨 밴딩 반바지 팝니다\n허리 35cm (밴딩, 최대 48cm)\n밑위 32cm\n허벅지 34cm\n밑단 30cm\n총장 51cm\n린넨 55% 면 45%\n12,000원 / 직거래는 합정역',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '35cm', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '32cm', value: 32, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '34cm', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '30cm', value: 30, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '51cm', value: 51, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: { amount: 12000, currency: 'KRW' },
    fibres: [
      ['linen', 55],
      ['cotton', 45]
    ],
    lined: null,
    cut: {},
    second: [{ point: 'waist', text: '48cm' }]
  },
  {
    id: 'b1-pt-01',
    class: 'plain',
    lang: 'pt',
    title: 'Calça jeans mom cintura alta 40',
    text: 'Calça jeans mom de cintura alta, lavagem clara, 100% algodão. Etiqueta 40, veste 38.\n\nMedidas da peça (sem esticar):\nCintura: 37 cm\nQuadril: 50 cm\nGancho: 32 cm\nEntrepernas: 69 cm\nBarra: 16 cm\nComprimento total: 99 cm\n\nR$ 69,90\nEnvio em até 2 dias úteis 💛',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '37 cm', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '50 cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '32 cm', value: 32, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '69 cm', value: 69, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '16 cm', value: 16, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '99 cm', value: 99, unit: 'cm', basis: 'length' }
    ],
    aside: ['40', '38', '2 dias'],
    price: { amount: 69.9, currency: 'BRL' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { rise: 'high' }
  },
  {
    id: 'b1-pt-02',
    class: 'plain',
    lang: 'pt',
    title: 'Vestido vintage anos 70 estampado',
    text: 'Garimpo lindo! Vestido evasê anos 70, tecido fresquinho de algodão, forrado, zíper nas costas, sem manga.\nbusto 90cm\ncintura 74cm\ncomprimento 97cm\nManequim veste 36. Peça única.\nDe R$ 120 por R$ 89,00',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '90cm', value: 90, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '74cm', value: 74, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '97cm', value: 97, unit: 'cm', basis: 'length' }
    ],
    aside: ['36', '120'],
    price: { amount: 89, currency: 'BRL' },
    fibres: [['cotton', null]],
    lined: 'full',
    cut: { silhouette: 'a-line', sleeve: 'sleeveless' }
  },
  {
    id: 'b1-pt-03',
    class: 'plain',
    lang: 'pt',
    title: 'Blazer feminino de lã risca de giz',
    text: 'Blazer em ótimo estado, com ombreira e forro inteiro. 60% lã 40% poliéster.\nTamanho M\n\nOmbro a ombro 42cm\nBusto 51cm (axila a axila)\nManga 59cm\nComprimento 71cm\n\nR$120,00 + frete. Aceito pix',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '42cm', value: 42, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '51cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '59cm', value: 59, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '71cm', value: 71, unit: 'cm', basis: 'length' }
    ],
    aside: [],
    price: { amount: 120, currency: 'BRL' },
    fibres: [
      ['wool', 60],
      ['polyester', 40]
    ],
    lined: 'full',
    cut: {}
  },
  {
    id: 'b1-pt-04',
    class: 'plain',
    lang: 'pt',
    title: 'Short de alfaiataria preto P',
    text: 'Short social com pregas e bolsos, cintura média. Usei uma vez só.\nCintura 35 cm | Quadril 48 cm | Gancho 28 cm | Comprimento 39 cm\n96% poliéster 4% elastano\nTam. P (36)\nR$ 35',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '35 cm', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '48 cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '28 cm', value: 28, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '39 cm', value: 39, unit: 'cm', basis: 'length' }
    ],
    aside: ['36'],
    price: { amount: 35, currency: 'BRL' },
    fibres: [
      ['polyester', 96],
      ['elastane', 4]
    ],
    lined: null,
    cut: { rise: 'mid' }
  },
  {
    id: 'b1-pt-05',
    class: 'plain',
    lang: 'pt',
    title: 'Saia midi evasê linho',
    text: 'Saia midi evasê de linho misto, cor terracota, botões na frente.\n📏 cintura 70 cm (elástico atrás, vai até 82 cm)\n📏 comprimento 76 cm\n55% linho 45% viscose, sem forro\nModelo 1,65m veste M\nR$ 55,00 frete por conta do comprador',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '70 cm', value: 70, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '76 cm', value: 76, unit: 'cm', basis: 'length' }
    ],
    aside: ['1,65m'],
    price: { amount: 55, currency: 'BRL' },
    fibres: [
      ['linen', 55],
      ['viscose', 45]
    ],
    lined: 'none',
    cut: { silhouette: 'a-line', dressLength: 'midi' },
    second: [{ point: 'waist', text: '82 cm' }]
  },
  {
    id: 'b1-pt-06',
    class: 'plain',
    lang: 'pt',
    title: 'Camiseta banda preta G usada',
    text: 'Camiseta preta estampada, malha 100% algodão, fio 30.1. Largura 54cm x comprimento 73cm. Estampa com desgaste natural de lavagem, sem furos. Tamanho G masculino. R$ 30 retirada ou R$ 48 com frete incluso',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '54cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '73cm', value: 73, unit: 'cm', basis: 'length' }
    ],
    aside: ['30.1', '48'],
    price: { amount: 30, currency: 'BRL' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: {}
  },
  {
    id: 'b1-pt-07',
    class: 'plain',
    lang: 'pt',
    title: 'Macacão pantalona viscose estampado',
    text: 'Macacão pantalona com decote V e faixa na cintura\nMedidas:\nbusto: 94cm\ncintura: 78cm\nquadril: 106cm\nentrepernas: 73cm\ntecido: viscose\nsem avarias, usado 3x\nR$75,00',
    kind: 'jumpsuit',
    measures: [
      { point: 'chest', text: '94cm', value: 94, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '78cm', value: 78, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '106cm', value: 106, unit: 'cm', basis: 'around' },
      { point: 'inseam', text: '73cm', value: 73, unit: 'cm', basis: 'length' }
    ],
    aside: ['3x'],
    price: { amount: 75, currency: 'BRL' },
    fibres: [['viscose', null]],
    lined: null,
    cut: { leg: 'palazzo' }
  },
  {
    id: 'b1-pt-08',
    class: 'plain',
    lang: 'pt',
    title: 'Camisa de noite algodão vintage',
    text: 'Camisa de noite branca, 100% algodão, com renda no peito e manga comprida. Era da minha avó, lavada e passada a ferro.\n\nAxila a axila: 58 cm\nManga: 52 cm\nComprimento: 112 cm\n\n8€, portes 3,20€ em correio registado. Não aceito trocas.',
    kind: 'other',
    measures: [
      { point: 'chest', text: '58 cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '52 cm', value: 52, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '112 cm', value: 112, unit: 'cm', basis: 'length' }
    ],
    aside: ['3,20'],
    price: { amount: 8, currency: 'EUR' },
    fibres: [['cotton', 100]],
    lined: null,
    cut: { sleeve: 'long' }
  }
]
