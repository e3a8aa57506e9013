/** Short lists of figures in the ways sellers write them, each read by eye before it was run. */
import type { WrittenCase } from './written-case.ts'

export const figures3: WrittenCase[] = [
  {
    id: 'fig-ad-001',
    class: 'figures',
    lang: 'en',
    title: 'Boxy knit jumper',
    text: 'pit2pit22length24sleeve19 inches',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '22', value: 22, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '24', value: 24, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '19', value: 19, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-002',
    class: 'figures',
    lang: 'en',
    title: 'Slip dress',
    text: 'MEASUREMENTSBust 17"Waist 14"Hips 19"Length 48"Laid flat',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '17', value: 17, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '14', value: 14, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '19', value: 19, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '48', value: 48, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-003',
    class: 'figures',
    lang: 'en',
    title: 'Flared jeans',
    text: 'Waist-14.5in,Rise-11in,Inseam-32in,LegOpening-10in',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '14.5', value: 14.5, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '11', value: 11, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '32', value: 32, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '10', value: 10, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-004',
    class: 'figures',
    lang: 'en',
    title: 'Trench coat',
    text: 'Bust:104cmWaist:98cmSleeve:61cmLength:110cm',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '104', value: 104, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '98', value: 98, unit: 'cm', basis: 'around' },
      { point: 'sleeveLength', text: '61', value: 61, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '110', value: 110, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-005',
    class: 'figures',
    lang: 'en',
    title: 'Mens cotton shirt',
    text: 'Chest (pit to pit when laid flat and buttoned): 22"\nBody (from base of collar to the longest part of the hem): 30"\nArm (from top of shoulder seam to end of cuff): 25"',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '22', value: 22, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '30', value: 30, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [['cotton', null]]
  },
  {
    id: 'fig-ad-006',
    class: 'figures',
    lang: 'en',
    title: 'Pleated trousers',
    text: 'waist (along the top of the band, closed) 16.5 / rise (crotch to top of band) 12.5 / inside leg 28 / hem 8 inches',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '16.5', value: 16.5, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '12.5', value: 12.5, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '28', value: 28, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '8', value: 8, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-007',
    class: 'figures',
    lang: 'en',
    title: 'Mens suit navy wool',
    text: 'Jacket 40R - p2p 21.5, waist 20, shoulder 18, sleeve 24.5, back 30.\nTrousers W34 L32 - waist 17, inseam 31.5, hem 8. All inches',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '21.5', value: 21.5, unit: 'in', basis: 'flat', of: 'jacket' },
      { point: 'waist', text: '20', value: 20, unit: 'in', basis: 'flat', of: 'jacket' },
      { point: 'shoulderWidth', text: '18', value: 18, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'sleeveLength', text: '24.5', value: 24.5, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '30', value: 30, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat', of: 'trousers' },
      { point: 'inseam', text: '31.5', value: 31.5, unit: 'in', basis: 'length', of: 'trousers' },
      { point: 'legOpening', text: '8', value: 8, unit: 'in', basis: 'flat', of: 'trousers' }
    ],
    price: null,
    fibres: [['wool', null]]
  },
  {
    id: 'fig-ad-008',
    class: 'figures',
    lang: 'en',
    title: 'Tweed skirt suit jacket',
    text: 'Jacket measurements are bust 36 inches, waist 30 inches, length 24 inches. Skirt measurements are waist 26 inches, hip 38 inches, length 25 inches.',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '36', value: 36, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'waist', text: '30', value: 30, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'bodyLength', text: '24', value: 24, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '26', value: 26, unit: 'in', basis: 'around', of: 'skirt' },
      { point: 'hip', text: '38', value: 38, unit: 'in', basis: 'around', of: 'skirt' },
      { point: 'skirtLength', text: '25', value: 25, unit: 'in', basis: 'length', of: 'skirt' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-009',
    class: 'figures',
    lang: 'en',
    title: 'Crop top with skirt',
    text: 'Top: bust 15", length 14"\nSkirt: waist 12.5", hip 17", length 15"\nall laid flat',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '15', value: 15, unit: 'in', basis: 'flat', of: 'knit-top' },
      { point: 'bodyLength', text: '14', value: 14, unit: 'in', basis: 'length', of: 'knit-top' },
      { point: 'waist', text: '12.5', value: 12.5, unit: 'in', basis: 'flat', of: 'skirt' },
      { point: 'hip', text: '17', value: 17, unit: 'in', basis: 'flat', of: 'skirt' },
      { point: 'skirtLength', text: '15', value: 15, unit: 'in', basis: 'length', of: 'skirt' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-010',
    class: 'figures',
    lang: 'en',
    title: 'Velvet dinner jacket',
    text: 'Chest 21" Sleeve 25" Length 30". Matching waistcoat chest 20" length 23". Matching trousers waist 17" inside leg 32".',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '21', value: 21, unit: 'in', basis: 'flat', of: 'jacket' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '30', value: 30, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '20', value: 20, unit: 'in', basis: 'flat', of: 'waistcoat' },
      { point: 'bodyLength', text: '23', value: 23, unit: 'in', basis: 'length', of: 'waistcoat' },
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat', of: 'trousers' },
      { point: 'inseam', text: '32', value: 32, unit: 'in', basis: 'length', of: 'trousers' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-011',
    class: 'figures',
    lang: 'en',
    title: 'Vintage jeans',
    text: 'Tag size 33x34, measure 31x32',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '31', value: 31, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '32', value: 32, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-012',
    class: 'figures',
    lang: 'en',
    title: '501 style jeans',
    text: '31 x 30 measured (tag 33 x 32 shrink to fit)',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '31', value: 31, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '30', value: 30, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-013',
    class: 'figures',
    lang: 'en',
    title: 'Tour tee',
    text: '21" x 28"',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '21', value: 21, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '28', value: 28, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-014',
    class: 'figures',
    lang: 'en',
    title: 'Blank tee',
    text: 'Fits like L: 22W x 28L',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '22', value: 22, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '28', value: 28, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-015',
    class: 'figures',
    lang: 'en',
    title: 'Sweatshirt',
    text: '22 wide 26 long',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '22', value: 22, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '26', value: 26, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-016',
    class: 'figures',
    lang: 'en',
    title: 'Army trousers',
    text: 'W 17 / R 13 / L 31 / H 9 (hem)',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '13', value: 13, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '31', value: 31, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '9', value: 9, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-017',
    class: 'figures',
    lang: 'en',
    title: 'Wool slacks',
    text: 'Waist/Hips/Rise/Inseam/Hem: 15.5/20/12/29/7.5',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '15.5', value: 15.5, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '20', value: 20, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '12', value: 12, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '29', value: 29, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '7.5', value: 7.5, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: [['wool', null]]
  },
  {
    id: 'fig-ad-018',
    class: 'figures',
    lang: 'en',
    title: 'Denim shorts',
    text: 'w: 15\nh: 19\nr: 11.5\nlength: 14',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '15', value: 15, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '19', value: 19, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '11.5', value: 11.5, unit: 'in', basis: 'length' },
      { point: 'outseam', text: '14', value: 14, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-019',
    class: 'figures',
    lang: 'en',
    title: 'Black jeans',
    text: 'W 32" (16" flat), L 31", rise 11"',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '32', value: 32, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '31', value: 31, unit: 'in', basis: 'length' },
      { point: 'frontRise', text: '11', value: 11, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-020',
    class: 'figures',
    lang: 'en',
    title: 'Prairie dress',
    text: 'Bust - 17 . 5 inches flat, waist - 14 . 25 inches flat, length - 50 inches',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '17.5', value: 17.5, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '14.25', value: 14.25, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '50', value: 50, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-021',
    class: 'figures',
    lang: 'fr',
    title: 'Chemise homme',
    text: 'aisselles 53, 5 cm / longueur 74, 5 cm / manches 64 cm',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '53.5', value: 53.5, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '74.5', value: 74.5, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '64', value: 64, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-022',
    class: 'figures',
    lang: 'en',
    title: 'Velvet gown',
    text: 'From shoulder seam to hem 56 inches. Under arm to under arm 17.5 inches. Across the hem 34 inches.',
    kind: 'dress',
    measures: [
      { point: 'bodyLength', text: '56', value: 56, unit: 'in', basis: 'length' },
      { point: 'chest', text: '17.5', value: 17.5, unit: 'in', basis: 'flat' },
      { point: 'sweep', text: '34', value: 34, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-023',
    class: 'figures',
    lang: 'en',
    title: 'Blouse',
    text: 'Length (back of collar to hem): 25"\nSide seam (armpit to hem): 15"\nWidth at hem: 20"',
    kind: 'shirt',
    measures: [
      { point: 'bodyLength', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'hem', text: '20', value: 20, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-024',
    class: 'figures',
    lang: 'en',
    title: 'Wool cape coat',
    text: 'collar to hem 42 in / pit to hem 30 in / pit to pit 24 in',
    kind: 'coat',
    measures: [
      { point: 'bodyLength', text: '42', value: 42, unit: 'in', basis: 'length' },
      { point: 'chest', text: '24', value: 24, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: [['wool', null]]
  },
  {
    id: 'fig-ad-025',
    class: 'figures',
    lang: 'en',
    title: 'Cardigan',
    text: 'Sleeve: 22" from shoulder, 17" from armpit\nSleeve width 6"\nCuff 3.5"',
    kind: 'jumper',
    measures: [
      { point: 'sleeveLength', text: '22', value: 22, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '17', value: 17, unit: 'in', basis: 'length' },
      { point: 'bicep', text: '6', value: 6, unit: 'in', basis: 'flat' },
      { point: 'cuff', text: '3.5', value: 3.5, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-026',
    class: 'figures',
    lang: 'en',
    title: 'Raglan jacket',
    text: 'sleeve (neck to cuff) 31", sleeve (armpit to cuff) 19", chest 22"',
    kind: 'jacket',
    measures: [
      { point: 'sleeveFromCentreBack', text: '31', value: 31, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '19', value: 19, unit: 'in', basis: 'length' },
      { point: 'chest', text: '22', value: 22, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-027',
    class: 'figures',
    lang: 'en',
    title: 'Linen shirt',
    text: 'sleeve inseam 18.5", sleeve outseam 24", sleeve opening 4.5"',
    kind: 'shirt',
    measures: [
      { point: 'sleeveUnderarm', text: '18.5', value: 18.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '24', value: 24, unit: 'in', basis: 'length' },
      { point: 'cuff', text: '4.5', value: 4.5, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: [['linen', null]]
  },
  {
    id: 'fig-ad-028',
    class: 'figures',
    lang: 'en',
    title: 'Polo shirt',
    text: 'Shoulder seam to sleeve hem 9", armpit to sleeve hem 6", shoulder to hem 28"',
    kind: 'knit-top',
    measures: [
      { point: 'sleeveLength', text: '9', value: 9, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '6', value: 6, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '28', value: 28, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-029',
    class: 'figures',
    lang: 'en',
    title: 'Joggers',
    text: 'Waist 30-38" elastic\nInseam 28"',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '34', value: 34, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '28', value: 28, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-030',
    class: 'figures',
    lang: 'en',
    title: 'Elastic skirt',
    text: 'waist: 13in (unstretched) / 19in (fully stretched)\nlength: 33in',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '13', value: 13, unit: 'in', basis: 'flat' },
      { point: 'skirtLength', text: '33', value: 33, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-031',
    class: 'figures',
    lang: 'en',
    title: 'Western shirt',
    text: 'sleeve 25 (23 with cuff folded), collar 16 buttoned, p2p 22, back length 31 (29 front)',
    kind: 'shirt',
    measures: [
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'neck', text: '16', value: 16, unit: 'in', basis: 'around' },
      { point: 'chest', text: '22', value: 22, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '31', value: 31, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-032',
    class: 'figures',
    lang: 'en',
    title: 'Turn up trousers',
    text: 'Inside leg: 30" (turn ups 2", could be let down to 33")',
    kind: 'trousers',
    measures: [{ point: 'inseam', text: '30', value: 30, unit: 'in', basis: 'length' }],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-033',
    class: 'figures',
    lang: 'en',
    title: 'Long coat',
    text: 'length 47" with hood down, 58" hood up; chest 24" flat',
    kind: 'coat',
    measures: [
      { point: 'bodyLength', text: '47', value: 47, unit: 'in', basis: 'length' },
      { point: 'chest', text: '24', value: 24, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-034',
    class: 'figures',
    lang: 'en',
    title: 'Wrap dress',
    text: 'bust 40" max when wrapped, waist 32" when tied, length 45", sleeves 18"',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '40', value: 40, unit: 'in', basis: 'around' },
      { point: 'waist', text: '32', value: 32, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '45', value: 45, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '18', value: 18, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-035',
    class: 'figures',
    lang: 'en',
    title: 'Kimono style jacket',
    text: 'Across back 25" cuff to cuff 54" length 34"',
    kind: 'jacket',
    measures: [
      { point: 'backWidth', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '34', value: 34, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-036',
    class: 'figures',
    lang: 'en',
    title: 'Camp collar shirt',
    text: '23.5" armpit to armpit\n29" back of collar to bottom hem\n19" shoulder seam to shoulder seam\n10" sleeve',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '23.5', value: 23.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '29', value: 29, unit: 'in', basis: 'length' },
      { point: 'shoulderWidth', text: '19', value: 19, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '10', value: 10, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-037',
    class: 'figures',
    lang: 'en',
    title: 'Bootcut jeans',
    text: '15.75 waist\n9.5 rise\n33 inseam\n9 leg opening\n(inches, flat)',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '15.75', value: 15.75, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '9.5', value: 9.5, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '33', value: 33, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '9', value: 9, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-038',
    class: 'figures',
    lang: 'de',
    title: 'Kleid',
    text: '104 cm lang, 46 cm unter den Achseln, 38 cm in der Taille',
    kind: 'dress',
    measures: [
      { point: 'bodyLength', text: '104', value: 104, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '46', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '38', value: 38, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-039',
    class: 'figures',
    lang: 'en',
    title: 'Field jacket',
    text: 'approx 24 ins armpit to armpit, approx 30 ins long, approx 25 ins sleeve',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '24', value: 24, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '30', value: 30, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-040',
    class: 'figures',
    lang: 'en',
    title: 'Vest jumper',
    text: 'Pit to pit 19.5in / 49.5cm (39in around)\nLength 24in / 61cm',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '19.5', value: 19.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '24', value: 24, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-041',
    class: 'figures',
    lang: 'en',
    title: 'Silk blouse',
    text: 'Armpit to armpit 20" (therefore 40" chest)\nLength 26"',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '20', value: 20, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '26', value: 26, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [['silk', null]]
  },
  {
    id: 'fig-ad-042',
    class: 'figures',
    lang: 'en',
    title: 'Shift dress',
    text: 'Bust 18" (x2), waist 17" (x2), hips 20" (x2), length 36"',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '18', value: 18, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '20', value: 20, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '36', value: 36, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-043',
    class: 'figures',
    lang: 'en',
    title: 'Cord trousers',
    text: 'Waist 17" across (34"), Hip 21" across (42"), leg 31" , hem 8" across (16")',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '21', value: 21, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '31', value: 31, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '8', value: 8, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-044',
    class: 'figures',
    lang: 'en',
    title: 'Blazer',
    text: '📏Sholders 17\n📏Cheast 20.5\n📏Sleave 24\n📏Lenght 28',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '17', value: 17, unit: 'in', basis: 'length' },
      { point: 'chest', text: '20.5', value: 20.5, unit: 'in', basis: 'flat' },
      { point: 'sleeveLength', text: '24', value: 24, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '28', value: 28, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-045',
    class: 'figures',
    lang: 'en',
    title: 'Mom jeans',
    text: '✨ Waits: 14in\n✨ Thighh: 11in\n✨ Inseem: 27in',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '14', value: 14, unit: 'in', basis: 'flat' },
      { point: 'thigh', text: '11', value: 11, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '27', value: 27, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-046',
    class: 'figures',
    lang: 'en',
    title: 'Midi dress',
    text: 'Brand says: bust 88 cm, waist 70 cm, length 120 cm. I measured: bust 45 cm across, waist 36 cm across, length 118 cm.',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '45', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '36', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '118', value: 118, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-047',
    class: 'figures',
    lang: 'en',
    title: 'Wool blazer',
    text: 'As listed by the retailer: chest 100cm, length 70cm.\n\nMy own tape: 49cm pit to pit, 69cm nape to hem, sleeve 60cm.',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '49', value: 49, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '69', value: 69, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['wool', null]]
  },
  {
    id: 'fig-ad-048',
    class: 'figures',
    lang: 'en',
    title: 'Hand knit jumper',
    text: 'Knitted on 4 mm and 5 mm needles. 44" chest, 27" long.',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '44', value: 44, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '27', value: 27, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-049',
    class: 'figures',
    lang: 'en',
    title: 'Evening dress',
    text: 'Mannequin is bust 34 waist 24 hips 36 and the dress is clipped. Bust 38 waist 29 hips 40 length 58 inches',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '38', value: 38, unit: 'in', basis: 'around' },
      { point: 'waist', text: '29', value: 29, unit: 'in', basis: 'around' },
      { point: 'hip', text: '40', value: 40, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '58', value: 58, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-050',
    class: 'figures',
    lang: 'en',
    title: 'Duffle coat',
    text: 'pockets 9" x 10". Chest 46" round, length 38", sleeve 25". Toggles 3".',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '46', value: 46, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '38', value: 38, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-051',
    class: 'figures',
    lang: 'en',
    title: 'High waist trousers',
    text: 'Waist circumference 28", hips 38", leg 29", hem 20", rise 13"',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '28', value: 28, unit: 'in', basis: 'around' },
      { point: 'hip', text: '38', value: 38, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '29', value: 29, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '20', value: 20, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '13', value: 13, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-052',
    class: 'figures',
    lang: 'en',
    title: 'Long shirt',
    text: 'chest 44 inches all round, waist 42, hem 50, length 38, sleeve 22',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '44', value: 44, unit: 'in', basis: 'around' },
      { point: 'waist', text: '42', value: 42, unit: 'in', basis: 'around' },
      { point: 'hem', text: '50', value: 50, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '38', value: 38, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '22', value: 22, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-053',
    class: 'figures',
    lang: 'en',
    title: '50s day dress',
    text: 'Lying flat - bust 34 waist 26 length 41 shoulders 14',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '34', value: 34, unit: 'in', basis: 'around' },
      { point: 'waist', text: '26', value: 26, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '41', value: 41, unit: 'in', basis: 'length' },
      { point: 'shoulderWidth', text: '14', value: 14, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-054',
    class: 'figures',
    lang: 'en',
    title: 'A-line skirt',
    text: 'Measures flat: waistband 28", length 24", hem 62"',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '28', value: 28, unit: 'in', basis: 'around' },
      { point: 'skirtLength', text: '24', value: 24, unit: 'in', basis: 'length' },
      { point: 'sweep', text: '62', value: 62, unit: 'in', basis: 'around' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-055',
    class: 'figures',
    lang: 'en',
    title: 'Leather jacket',
    text: 'P2P - 20 SHOULDER - 17.5 SLEEVE - 24 LENGTH - 23 WAIST - 18',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '20', value: 20, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '17.5', value: 17.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '24', value: 24, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '23', value: 23, unit: 'in', basis: 'length' },
      { point: 'waist', text: '18', value: 18, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-056',
    class: 'figures',
    lang: 'en',
    title: 'Fisherman jumper',
    text: 'Chest= 23 , Length= 27 , Sleeve from pit= 18 , Cuff= 3',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '23', value: 23, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '27', value: 27, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '18', value: 18, unit: 'in', basis: 'length' },
      { point: 'cuff', text: '3', value: 3, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-057',
    class: 'figures',
    lang: 'en',
    title: 'Two piece suit',
    text: 'SUIT JACKET\nchest: 42"\nlength: 29"\n\nSUIT PANTS\nwaist: 36"\noutseam: 42"',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '42', value: 42, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'bodyLength', text: '29', value: 29, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '36', value: 36, unit: 'in', basis: 'around', of: 'trousers' },
      { point: 'outseam', text: '42', value: 42, unit: 'in', basis: 'length', of: 'trousers' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-058',
    class: 'figures',
    lang: 'en',
    title: 'Cotton chinos',
    text: 'Approximate measurements. Waist 34. 5 inches. Inside leg 30. 25 inches. Ankle 14 inches round.',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '34.5', value: 34.5, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '30.25', value: 30.25, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '14', value: 14, unit: 'in', basis: 'around' }
    ],
    price: null,
    fibres: [['cotton', null]]
  },
  {
    id: 'fig-ad-059',
    class: 'figures',
    lang: 'en',
    title: 'Oversized shirt',
    text: 'pit to pit is approx 24.5 inches and the length from collar to bottom at the back is approx 31 inches',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '24.5', value: 24.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '31', value: 31, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-ad-060',
    class: 'figures',
    lang: 'en',
    title: 'Smock dress',
    text: 'bust up to 44" (very loose), length 40" shoulder to hem, sleeves 20" underarm to cuff',
    kind: 'dress',
    measures: [
      { point: 'bodyLength', text: '40', value: 40, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '20', value: 20, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },

  {
    id: 'fig-bd-001',
    class: 'figures',
    lang: 'en',
    title: 'Cord trousers',
    text: 'Waist laid flat: 17"\nInside leg: 30"\nRise: 12"\nThigh (measured from the crotch to the outside of the leg): 12"\nHips (measured across the bottom of the fly): 22"\nWidth of hem: 9"',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '30', value: 30, unit: 'in', basis: 'length' },
      { point: 'frontRise', text: '12', value: 12, unit: 'in', basis: 'length' },
      { point: 'thigh', text: '12', value: 12, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '22', value: 22, unit: 'in', basis: 'flat' },
      { point: 'legOpening', text: '9', value: 9, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-002',
    class: 'figures',
    lang: 'en',
    title: 'Swim shorts',
    text: '>Size: W34 L6. >Waist Size: 34". >Inside Leg: 6". >Rise: 13". >Hem: 14"',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '34', value: 34, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '6', value: 6, unit: 'in', basis: 'length' },
      { point: 'frontRise', text: '13', value: 13, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '14', value: 14, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-003',
    class: 'figures',
    lang: 'en',
    title: 'Silk suit jacket with skirt',
    text: 'Jacket:\nShoulders: 16" / Sleeves: 21" / Sleeve Inseam: 15" / Bust: 40" / Waist: 36" with a gap / Length: 23"\nSkirt:\nWaist: 28" / Hips: 40" / Length: 27"',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '16', value: 16, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'sleeveLength', text: '21', value: 21, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'sleeveUnderarm', text: '15', value: 15, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '40', value: 40, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'waist', text: '36', value: 36, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'bodyLength', text: '23', value: 23, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '28', value: 28, unit: 'in', basis: 'around', of: 'skirt' },
      { point: 'hip', text: '40', value: 40, unit: 'in', basis: 'around', of: 'skirt' },
      { point: 'skirtLength', text: '27', value: 27, unit: 'in', basis: 'length', of: 'skirt' }
    ],
    price: null,
    fibres: [['silk', null]]
  },
  {
    id: 'fig-bd-004',
    class: 'figures',
    lang: 'en',
    title: 'Dress and blazer set',
    text: 'Dress measures 15" across the shoulders, 37" through the bust, 29" at the waist, 39" through the hips and length is 43". Sleeves are 6" long from shoulder seam to cuff. Length from top of shoulder to waist seam is 16. 5". Blazer measures 16" across the shoulders, 40" through the bust, 33" at the waist, and length is 22".',
    kind: 'dress',
    measures: [
      { point: 'shoulderWidth', text: '15', value: 15, unit: 'in', basis: 'length', of: 'dress' },
      { point: 'chest', text: '37', value: 37, unit: 'in', basis: 'around', of: 'dress' },
      { point: 'waist', text: '29', value: 29, unit: 'in', basis: 'around', of: 'dress' },
      { point: 'hip', text: '39', value: 39, unit: 'in', basis: 'around', of: 'dress' },
      { point: 'bodyLength', text: '43', value: 43, unit: 'in', basis: 'length', of: 'dress' },
      { point: 'sleeveLength', text: '6', value: 6, unit: 'in', basis: 'length', of: 'dress' },
      { point: 'napeToWaist', text: '16.5', value: 16.5, unit: 'in', basis: 'length', of: 'dress' },
      { point: 'shoulderWidth', text: '16', value: 16, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '40', value: 40, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'waist', text: '33', value: 33, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'bodyLength', text: '22', value: 22, unit: 'in', basis: 'length', of: 'jacket' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-005',
    class: 'figures',
    lang: 'en',
    title: 'Suit jacket and vest',
    text: 'Shoulders: 18 1/2" across shoulder seam-to-seam\nSleeves: 25" from shoulder seam\nSleeve Inseam: 17" long\nChest: 43" around, taken under the arms\nWaist: 40"\nOverall length: 30", taken at the back from the neck seam\n\nVest:\nChest: 40" around, taken under the arms\nBottom: 36"\nOverall length: 21", taken at the back from the neck seam',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '18.5', value: 18.5, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'sleeveUnderarm', text: '17', value: 17, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '43', value: 43, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'waist', text: '40', value: 40, unit: 'in', basis: 'around', of: 'jacket' },
      { point: 'bodyLength', text: '30', value: 30, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '40', value: 40, unit: 'in', basis: 'around', of: 'waistcoat' },
      { point: 'hem', text: '36', value: 36, unit: 'in', basis: 'around', of: 'waistcoat' },
      { point: 'bodyLength', text: '21', value: 21, unit: 'in', basis: 'length', of: 'waistcoat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-006',
    class: 'figures',
    lang: 'en',
    title: 'Shirtwaist dress',
    text: 'Shoulders seam to seam: 15" (38cm)\nArmpit to armpit: 19" (48cm)\nWaist: 28" (71cm)\nShoulder to waist: 16" (41cm)\nWaist to bottom: 25" (63cm) + aprox. 2" (5cm) hem to let down\nLength: 41" (104cm)\nSweep, flat side to side: 50" (127cm)',
    kind: 'dress',
    measures: [
      { point: 'shoulderWidth', text: '15', value: 15, unit: 'in', basis: 'length' },
      { point: 'chest', text: '19', value: 19, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '28', value: 28, unit: 'in', basis: 'around' },
      { point: 'napeToWaist', text: '16', value: 16, unit: 'in', basis: 'length' },
      { point: 'skirtLength', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '41', value: 41, unit: 'in', basis: 'length' },
      { point: 'sweep', text: '50', value: 50, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-007',
    class: 'figures',
    lang: 'en',
    title: 'Day dress with bolero',
    text: 'MEASUREMENTS taken laid flat, side to side.\nDRESS\nBust 18.5\nWaist 15\nHip 22\nLength 41\nWidth back shoulder 15\nShoulder to waist 16\nWaist to hem 25\nJACKET\nBust 19\nSleeve length 16\nLength center back neck to hem 14\nWidth at shoulder 14',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '18.5', value: 18.5, unit: 'in', basis: 'flat', of: 'dress' },
      { point: 'waist', text: '15', value: 15, unit: 'in', basis: 'flat', of: 'dress' },
      { point: 'hip', text: '22', value: 22, unit: 'in', basis: 'flat', of: 'dress' },
      { point: 'bodyLength', text: '41', value: 41, unit: 'in', basis: 'length', of: 'dress' },
      { point: 'shoulderWidth', text: '15', value: 15, unit: 'in', basis: 'length', of: 'dress' },
      { point: 'napeToWaist', text: '16', value: 16, unit: 'in', basis: 'length', of: 'dress' },
      { point: 'skirtLength', text: '25', value: 25, unit: 'in', basis: 'length', of: 'dress' },
      { point: 'chest', text: '19', value: 19, unit: 'in', basis: 'flat', of: 'jacket' },
      { point: 'sleeveLength', text: '16', value: 16, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '14', value: 14, unit: 'in', basis: 'length', of: 'jacket' },
      { point: 'shoulderWidth', text: '14', value: 14, unit: 'in', basis: 'length', of: 'jacket' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-008',
    class: 'figures',
    lang: 'en',
    title: 'Plaid skirt',
    text: 'Waist - 25" Hip - 35" Low Hip - 37" Bottom Hem - 38" Length from middle back top to bottom - 26 1/2"',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '25', value: 25, unit: 'in', basis: 'around' },
      { point: 'hip', text: '35', value: 35, unit: 'in', basis: 'around' },
      { point: 'sweep', text: '38', value: 38, unit: 'in', basis: 'around' },
      { point: 'skirtLength', text: '26.5', value: 26.5, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-009',
    class: 'figures',
    lang: 'en',
    title: 'Circle skirt',
    text: 'Waist : 13"\nWaist band width: 4"\nLength: 31"\nHips: 25" pleated, can open up\nWidth of skirt at the hem fully open: 35"',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '13', value: 13, unit: 'in', basis: 'flat' },
      { point: 'skirtLength', text: '31', value: 31, unit: 'in', basis: 'length' },
      { point: 'hip', text: '25', value: 25, unit: 'in', basis: 'flat' },
      { point: 'sweep', text: '35', value: 35, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-010',
    class: 'figures',
    lang: 'en',
    title: 'Vintage jeans',
    text: 'The original label states 36 x 32 but they have shrunk a little at the waist and now measure 34 x 31.\nWaist laid flat: 17"\nInside leg: 31"\nRise: 12"',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat' },
      { point: 'inseam', text: '31', value: 31, unit: 'in', basis: 'length' },
      { point: 'frontRise', text: '12', value: 12, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-011',
    class: 'figures',
    lang: 'en',
    title: 'Herringbone sack jacket',
    text: '18.25 shoulder seam to seam\n21.5 pit to pit\n20 at the waist (lots of taper)\n25 sleeves\n31 bottom of collar to hem\n\nThe lapel is 3" and the buttons are horn.',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '18.25', value: 18.25, unit: 'in', basis: 'length' },
      { point: 'chest', text: '21.5', value: 21.5, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '20', value: 20, unit: 'in', basis: 'flat' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '31', value: 31, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-012',
    class: 'figures',
    lang: 'en',
    title: 'Check trousers',
    text: 'Elastic waist fits from about 27" to 31". Inseam is 27". Hips are 39". Rise is 12".',
    kind: 'trousers',
    measures: [
      { point: 'inseam', text: '27', value: 27, unit: 'in', basis: 'length' },
      { point: 'hip', text: '39', value: 39, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '12', value: 12, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-013',
    class: 'figures',
    lang: 'en',
    title: 'High rise trousers',
    text: 'Waist: 26"\nHigh hip/low waist: 31" - taken at the seam of the yoke\nHips: 41" - taken at the bottom of the zipper opening\nRise: 13.25"\nInseam: 30"',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '26', value: 26, unit: 'in', basis: 'around' },
      { point: 'hip', text: '41', value: 41, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '13.25', value: 13.25, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '30', value: 30, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-014',
    class: 'figures',
    lang: 'en',
    title: 'Hawaiian shirt',
    text: 'Shoulder to Shoulder    17"\nArmpit to Armpit            22"\nCollar to Hem                27 1/2"\nSleeves                         9"',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '17', value: 17, unit: 'in', basis: 'length' },
      { point: 'chest', text: '22', value: 22, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '27.5', value: 27.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '9', value: 9, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-015',
    class: 'figures',
    lang: 'en',
    title: 'Opera suit with dress',
    text: 'shoulders 14in, sleeve of jacket 18in, bust 35in, waist 27in, length of jacket 18in, armhole 8in',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '14', value: 14, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '18', value: 18, unit: 'in', basis: 'length' },
      { point: 'chest', text: '35', value: 35, unit: 'in', basis: 'around' },
      { point: 'waist', text: '27', value: 27, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '18', value: 18, unit: 'in', basis: 'length' },
      { point: 'armhole', text: '8', value: 8, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-016',
    class: 'figures',
    lang: 'en',
    title: 'Sweatshirt mens L',
    text: 'Great shape. Measures approx. 23 1/2 inches across the chest from pit to pit, 27 inches from the top of the collar to the bottom, and 34 inches from the center of the collar to the end of the sleeve.',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '23.5', value: 23.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '27', value: 27, unit: 'in', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '34', value: 34, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-017',
    class: 'figures',
    lang: 'en',
    title: 'Flannel shirt',
    text: 'Mens Size M\nUnderarm to Underarm - 22 inches\nShoulder to Shoulder - 18 inches\nSleeve (Shoulder to Cuff) - 24 inches\nLength (Collar to Hem) - 30 inches',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '22', value: 22, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '18', value: 18, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '24', value: 24, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '30', value: 30, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-018',
    class: 'figures',
    lang: 'en',
    title: 'Cocktail dress',
    text: 'BUST:36" max 37"\nWAIST: 27"\nHIPS: free\nSHOULDERS: 15"\nLENGTH: 40" from nape',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '36', value: 36, unit: 'in', basis: 'around' },
      { point: 'waist', text: '27', value: 27, unit: 'in', basis: 'around' },
      { point: 'shoulderWidth', text: '15', value: 15, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '40', value: 40, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-019',
    class: 'figures',
    lang: 'en',
    title: 'Sheepskin coat',
    text: 'Chest (inner) 44", outer 48". Length 36". Sleeve outer 25", inner 18".',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '44', value: 44, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '36', value: 36, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '18', value: 18, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-020',
    class: 'figures',
    lang: 'en',
    title: 'Suit trousers',
    text: 'Waist 84cm + 4cm spare to let out, inside leg 76cm + 5cm hem, outside leg 103cm',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '84', value: 84, unit: 'cm', basis: 'around' },
      { point: 'inseam', text: '76', value: 76, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '103', value: 103, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-021',
    class: 'figures',
    lang: 'en',
    title: 'Biker jacket',
    text: 'Armpit to armpit 48cm, shoulder to bottom 58cm, arm pit to cuff 46cm, waist band 42cm',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '48', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '58', value: 58, unit: 'cm', basis: 'length' },
      { point: 'sleeveUnderarm', text: '46', value: 46, unit: 'cm', basis: 'length' },
      { point: 'hem', text: '42', value: 42, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-022',
    class: 'figures',
    lang: 'en',
    title: 'Aran cardigan',
    text: 'Chest 112 cm (56 cm laid flat)\nTotal length from shoulder 68 cm\nSleeve seam under arm 46 cm\nCuff 9 cm\nWelt 48 cm',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '112', value: 112, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '68', value: 68, unit: 'cm', basis: 'length' },
      { point: 'sleeveUnderarm', text: '46', value: 46, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '9', value: 9, unit: 'cm', basis: 'flat' },
      { point: 'hem', text: '48', value: 48, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-023',
    class: 'figures',
    lang: 'en',
    title: 'Baggy jeans',
    text: 'waist - 17"\nthigh - 13.5"\nknee - 11"\nleg opening - 10"\nfront rise - 12.5"\nback rise - 16"\ninseam - 31"\ntotal length - 42.5"',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat' },
      { point: 'thigh', text: '13.5', value: 13.5, unit: 'in', basis: 'flat' },
      { point: 'knee', text: '11', value: 11, unit: 'in', basis: 'flat' },
      { point: 'legOpening', text: '10', value: 10, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '12.5', value: 12.5, unit: 'in', basis: 'length' },
      { point: 'backRise', text: '16', value: 16, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '31', value: 31, unit: 'in', basis: 'length' },
      { point: 'outseam', text: '42.5', value: 42.5, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-024',
    class: 'figures',
    lang: 'en',
    title: 'Work shirt',
    text: 'Measurements - (Chest/Length/Sleeve) 22/29/24 inches',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '22', value: 22, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '29', value: 29, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '24', value: 24, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-025',
    class: 'figures',
    lang: 'en',
    title: 'Bomber',
    text: 'Size XL\nP2P= 25"\nShldr= 20"\nSlv= 26"\nLgth= 27"',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '25', value: 25, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '20', value: 20, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '26', value: 26, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '27', value: 27, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-026',
    class: 'figures',
    lang: 'en',
    title: 'Boho dress',
    text: 'Bust: 18-21" (elastic back)\nWaist: 15-19" (elastic)\nLength: 50"',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '19.5', value: 19.5, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '50', value: 50, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-027',
    class: 'figures',
    lang: 'de',
    title: 'Nachthemdkleid',
    text: 'Brustweite 2 x 50 cm, Länge 110 cm, Ärmellänge ab Schulter 60 cm, ab Achsel 46 cm',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '50', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '110', value: 110, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' },
      { point: 'sleeveUnderarm', text: '46', value: 46, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-028',
    class: 'figures',
    lang: 'fr',
    title: 'Pantalon homme',
    text: 'Tour de taille 84 cm (42 à plat), entrejambe 80 cm, longueur totale 106 cm, bas 20 cm, fourche 28 cm',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '84', value: 84, unit: 'cm', basis: 'around' },
      { point: 'inseam', text: '80', value: 80, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '106', value: 106, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '20', value: 20, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '28', value: 28, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-029',
    class: 'figures',
    lang: 'es',
    title: 'Chaqueta vaquera',
    text: 'Axila a axila 52 cm\nHombro a hombro 44 cm\nLargo total 64 cm\nManga desde hombro 61 cm',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '52', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '44', value: 44, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '64', value: 64, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-030',
    class: 'figures',
    lang: 'it',
    title: 'Gonna a pieghe',
    text: 'vita 34 cm (68 cm giro), lunghezza 70 cm, fianchi liberi',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '34', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '70', value: 70, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-bd-031',
    class: 'figures',
    lang: 'nl',
    title: 'Wollen jas',
    text: 'oksel tot oksel 54 cm, schouder 42 cm, mouw 60 cm, lengte achter 95 cm',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '54', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '42', value: 42, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '95', value: 95, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['wool', null]]
  },
  {
    id: 'fig-cd-001',
    class: 'figures',
    lang: 'en',
    title: 'Boho dress',
    text: 'Bust 36-38, waist 28-30, hips free. Length 45". Model is 5\'7 and wearing a UK 10. Inches.',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '37', value: 37, unit: 'in', basis: 'around' },
      { point: 'waist', text: '29', value: 29, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '45', value: 45, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-002',
    class: 'figures',
    lang: 'en',
    title: 'Sports top',
    text: 'Will fit a 34-36" chest.',
    kind: 'knit-top',
    measures: [],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-003',
    class: 'figures',
    lang: 'en',
    title: 'Grey jumper',
    text: 'Width under arms 20in, width at the hem 18in, length shoulder to hem 26in, sleeve underarm to cuff 18in.',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '20', value: 20, unit: 'in', basis: 'flat' },
      { point: 'hem', text: '18', value: 18, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '26', value: 26, unit: 'in', basis: 'length' },
      { point: 'sleeveUnderarm', text: '18', value: 18, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-004',
    class: 'figures',
    lang: 'en',
    title: 'Linen shirt',
    text: 'Shoulders: 16.5 Chest: 20 Waist: 18 Hem: 21 Sleeves: 23 Length 28 all in inches',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '16.5', value: 16.5, unit: 'in', basis: 'length' },
      { point: 'chest', text: '20', value: 20, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '18', value: 18, unit: 'in', basis: 'flat' },
      { point: 'hem', text: '21', value: 21, unit: 'in', basis: 'flat' },
      { point: 'sleeveLength', text: '23', value: 23, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '28', value: 28, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [['linen', null]]
  },
  {
    id: 'fig-cd-005',
    class: 'figures',
    lang: 'en',
    title: 'Zip fleece',
    text: 'P2P 56cm. P2C 47cm. S2C 62cm. Length 72cm.',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '56', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'sleeveUnderarm', text: '47', value: 47, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62', value: 62, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '72', value: 72, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-006',
    class: 'figures',
    lang: 'en',
    title: 'Pencil skirt',
    text: 'Waist 76 cm / 30 in, Hip 98 cm / 38.5 in, Length 62 cm / 24.5 in',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '76', value: 76, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '98', value: 98, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '62', value: 62, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-007',
    class: 'figures',
    lang: 'en',
    title: 'High rise trousers',
    text: '29" waist, 39" hip, 11" rise, 25" inseam, 35" total length.',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '29', value: 29, unit: 'in', basis: 'around' },
      { point: 'hip', text: '39', value: 39, unit: 'in', basis: 'around' },
      { point: 'frontRise', text: '11', value: 11, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'outseam', text: '35', value: 35, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-008',
    class: 'figures',
    lang: 'en',
    title: 'Tea dress',
    text: 'Bust 2 x 46cm; waist 2 x 38cm; length 110cm',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '46', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '38', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '110', value: 110, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-009',
    class: 'figures',
    lang: 'en',
    title: 'Kilt style skirt',
    text: 'Waist = 13.5” flat (27” around); hips = 19” flat (38” around); L = 27”',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '13.5', value: 13.5, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '19', value: 19, unit: 'in', basis: 'flat' },
      { point: 'skirtLength', text: '27', value: 27, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-010',
    class: 'figures',
    lang: 'en',
    title: 'Wool coat',
    text: 'Pockets 5.5" deep, hem turned up 2", half belt 2" wide. Chest 44" round, length 42".',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '44', value: 44, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '42', value: 42, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [['wool', null]]
  },
  {
    id: 'fig-cd-011',
    class: 'figures',
    lang: 'en',
    title: 'Cami top',
    text: 'Strap drop 10", straps adjustable. Bust 16" flat. Length 22" from strap to hem.',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '16', value: 16, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '22', value: 22, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-012',
    class: 'figures',
    lang: 'en',
    title: 'Dress shirt',
    text: 'Tag 15.5/33. Neck 15.5", sleeve 33", chest 44" around, length 30".',
    kind: 'shirt',
    measures: [
      { point: 'neck', text: '15.5', value: 15.5, unit: 'in', basis: 'around' },
      { point: 'sleeveFromCentreBack', text: '33', value: 33, unit: 'in', basis: 'length' },
      { point: 'chest', text: '44', value: 44, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '30', value: 30, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-013',
    class: 'figures',
    lang: 'en',
    title: 'Lace dress',
    text: 'Fits bust up to 40, waist up to 32, hips free. Length 44 inches.',
    kind: 'dress',
    measures: [{ point: 'bodyLength', text: '44', value: 44, unit: 'in', basis: 'length' }],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-014',
    class: 'figures',
    lang: 'en',
    title: 'Wide leg jeans',
    text: 'Rise 10.75" front / 15.25" back\nWaist 15" flat\nLeg opening: 8.75" (17.5")',
    kind: 'jeans',
    measures: [
      { point: 'frontRise', text: '10.75', value: 10.75, unit: 'in', basis: 'length' },
      { point: 'backRise', text: '15.25', value: 15.25, unit: 'in', basis: 'length' },
      { point: 'waist', text: '15', value: 15, unit: 'in', basis: 'flat' },
      { point: 'legOpening', text: '8.75', value: 8.75, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-015',
    class: 'figures',
    lang: 'en',
    title: 'Wool trousers',
    text: 'Inseam 27" + 3" to let down. Waist 17" flat.',
    kind: 'trousers',
    measures: [
      { point: 'inseam', text: '27', value: 27, unit: 'in', basis: 'length' },
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: [['wool', null]]
  },
  {
    id: 'fig-cd-016',
    class: 'figures',
    lang: 'en',
    title: 'Tweed skirt',
    text: '7" metal zip, 9" split at the back. Waist 13" across. Hips 18.5" across. 25" long.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '13', value: 13, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '18.5', value: 18.5, unit: 'in', basis: 'flat' },
      { point: 'skirtLength', text: '25', value: 25, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-017',
    class: 'figures',
    lang: 'en',
    title: 'Varsity jacket',
    text: 'Chest - 23.5 - (47 total)\nLength - 27\nSleeve - 25',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '23.5', value: 23.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '27', value: 27, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-018',
    class: 'figures',
    lang: 'de',
    title: 'Lederjacke',
    text: 'Ärmellänge außen 62, innen 47 cm, Brust 54 cm quer, Länge 60 cm',
    kind: 'jacket',
    measures: [
      { point: 'sleeveLength', text: '62', value: 62, unit: 'cm', basis: 'length' },
      { point: 'sleeveUnderarm', text: '47', value: 47, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '54', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-019',
    class: 'figures',
    lang: 'en',
    title: 'Ringer tee',
    text: '19.5" / 49.5cm pit to pit, 25" / 63.5cm length, 8" / 20cm sleeve',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '19.5', value: 19.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '8', value: 8, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-020',
    class: 'figures',
    lang: 'en',
    title: 'Pleated wool skirt',
    text: 'Size 14 but measures more like a 12: waist 28", hips 40", length 28"',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '28', value: 28, unit: 'in', basis: 'around' },
      { point: 'hip', text: '40', value: 40, unit: 'in', basis: 'around' },
      { point: 'skirtLength', text: '28', value: 28, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [['wool', null]]
  },
  {
    id: 'fig-cd-021',
    class: 'figures',
    lang: 'en',
    title: 'Crepe dress',
    text: 'Approximate flat measurements: Width across chest 19 inches Width across waist 16 inches Width across hips 20 inches Full length 38 inches',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '19', value: 19, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '16', value: 16, unit: 'in', basis: 'flat' },
      { point: 'hip', text: '20', value: 20, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '38', value: 38, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-022',
    class: 'figures',
    lang: 'en',
    title: 'Blazer',
    text: 'Shoulder 43 / Chest 54 / Length 70 / Sleeve 63 (cm)',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '43', value: 43, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '54', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '63', value: 63, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-023',
    class: 'figures',
    lang: 'en',
    title: 'Sweatshirt',
    text: 'chest (pit to pit): 57cm | 22.4in\nlength: 68cm | 26.8in',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '57', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '68', value: 68, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-024',
    class: 'figures',
    lang: 'en',
    title: 'Linen trousers',
    text: 'Waist (elasticated) 28-36 inches. Outside leg 40 inches. Inside leg 29 inches.',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '32', value: 32, unit: 'in', basis: 'around' },
      { point: 'outseam', text: '40', value: 40, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '29', value: 29, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: [['linen', null]]
  },
  {
    id: 'fig-cd-025',
    class: 'figures',
    lang: 'en',
    title: 'Jeans',
    text: 'Hips 19 ¾" flat, waist 14 ⅞" flat, thigh 11 ¼" flat',
    kind: 'jeans',
    measures: [
      { point: 'hip', text: '19.75', value: 19.75, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '14.875', value: 14.875, unit: 'in', basis: 'flat' },
      { point: 'thigh', text: '11.25', value: 11.25, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-026',
    class: 'figures',
    lang: 'en',
    title: 'Dress trousers',
    text: 'Legs are 30 inches inside and 41 outside. Waist 34 all round.',
    kind: 'trousers',
    measures: [
      { point: 'inseam', text: '30', value: 30, unit: 'in', basis: 'length' },
      { point: 'outseam', text: '41', value: 41, unit: 'in', basis: 'length' },
      { point: 'waist', text: '34', value: 34, unit: 'in', basis: 'around' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-027',
    class: 'figures',
    lang: 'en',
    title: 'Maxi dress',
    text: 'bust 34 in/ waist 25 in/ hip open/ length 50 in',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '34', value: 34, unit: 'in', basis: 'around' },
      { point: 'waist', text: '25', value: 25, unit: 'in', basis: 'around' },
      { point: 'bodyLength', text: '50', value: 50, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-028',
    class: 'figures',
    lang: 'en',
    title: 'Oxford shirt',
    text: 'Sleeve: 34" from centre back, 25" from shoulder. Pit to pit 23".',
    kind: 'shirt',
    measures: [
      { point: 'sleeveFromCentreBack', text: '34', value: 34, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'in', basis: 'length' },
      { point: 'chest', text: '23', value: 23, unit: 'in', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-029',
    class: 'figures',
    lang: 'en',
    title: 'Denim jacket',
    text: 'Armpit to armpit (doubled) 42". Shoulders 17.5". Sleeve 23". Length 22".',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '42', value: 42, unit: 'in', basis: 'around' },
      { point: 'shoulderWidth', text: '17.5', value: 17.5, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '23', value: 23, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '22', value: 22, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-030',
    class: 'figures',
    lang: 'en',
    title: 'Parka',
    text: 'Length 33 inches measured down the back from below the hood. Chest 25 inches side to side. Sleeves 26 inches.',
    kind: 'coat',
    measures: [
      { point: 'bodyLength', text: '33', value: 33, unit: 'in', basis: 'length' },
      { point: 'chest', text: '25', value: 25, unit: 'in', basis: 'flat' },
      { point: 'sleeveLength', text: '26', value: 26, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-031',
    class: 'figures',
    lang: 'en',
    title: 'Golf trousers',
    text: 'Label says 36 long. Actual waist is 37 inches. Leg is 34 inches.',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '37', value: 37, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '34', value: 34, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-032',
    class: 'figures',
    lang: 'en',
    title: 'Hoodie',
    text: 'Laid flat 22.5 inches across the chest below the armpits and 27 inches from the top of the shoulder to the bottom. Marked as a large but I would say medium.',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '22.5', value: 22.5, unit: 'in', basis: 'flat' },
      { point: 'bodyLength', text: '27', value: 27, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-034',
    class: 'figures',
    lang: 'en',
    title: 'Cargo shorts',
    text: 'Waist 17" / Rise 12" / Inseam 9" / Hem 11.5" / Outseam 20"',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '17', value: 17, unit: 'in', basis: 'flat' },
      { point: 'frontRise', text: '12', value: 12, unit: 'in', basis: 'length' },
      { point: 'inseam', text: '9', value: 9, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '11.5', value: 11.5, unit: 'in', basis: 'flat' },
      { point: 'outseam', text: '20', value: 20, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-035',
    class: 'figures',
    lang: 'en',
    title: 'Denim mini skirt',
    text: 'waist 38cm (stretchy, 42cm when pulled), hips 47cm, length 38cm, back pockets 12cm x 11cm',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '38', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '47', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '38', value: 38, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-036',
    class: 'figures',
    lang: 'en',
    title: 'Sports coat',
    text: 'Chest 21 / Waist 19.5 / Shoulders 18 / Sleeves 24 (+2) / Length (BOC) 29.5 / Lapels 3.5',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '21', value: 21, unit: 'in', basis: 'flat' },
      { point: 'waist', text: '19.5', value: 19.5, unit: 'in', basis: 'flat' },
      { point: 'shoulderWidth', text: '18', value: 18, unit: 'in', basis: 'length' },
      { point: 'sleeveLength', text: '24', value: 24, unit: 'in', basis: 'length' },
      { point: 'bodyLength', text: '29.5', value: 29.5, unit: 'in', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-037',
    class: 'figures',
    lang: 'en',
    title: 'Black jeans',
    text: 'Actual measurements: \nWaist 32 inches \nInseam 31 inches \nRise 11 inches \nLeg opening 15 inches',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '32', value: 32, unit: 'in', basis: 'around' },
      { point: 'inseam', text: '31', value: 31, unit: 'in', basis: 'length' },
      { point: 'frontRise', text: '11', value: 11, unit: 'in', basis: 'length' },
      { point: 'legOpening', text: '15', value: 15, unit: 'in', basis: 'around' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'fig-cd-038',
    class: 'figures',
    lang: 'en',
    title: 'Blouse',
    text: 'Width (armpit to armpit) - 48 cm ; Length (without collar) - 64 cm ; Sleeve length (from the shoulder) - 59 cm',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '48', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '64', value: 64, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '59', value: 59, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  }
]
