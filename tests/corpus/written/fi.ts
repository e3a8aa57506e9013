/** Texts in the manner of Finnish listings. */
import type { WrittenCase } from './written-case.ts'

export const finnish: WrittenCase[] = [
  {
    id: 'fi-w01',
    class: 'plain',
    lang: 'fi',
    title: 'Ruudullinen flanellipaita L',
    text: 'Rinnanleveys kainalosta kainaloon 56 cm\nPituus 74 cm\nHihan pituus 62 cm\nHartialeveys 47 cm\n100% puuvillaa\nHinta 12 € + postikulut',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '56 cm', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '74 cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62 cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '47 cm', value: 47, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 12, currency: 'EUR' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'fi-w02',
    class: 'flat',
    lang: 'fi',
    title: 'Leveät pellavahousut',
    text: 'Mitat tasossa: vyötärö 38 cm, lantio 54 cm, haarakorkeus 30 cm, sisäsauma 74 cm, reisi 33 cm, lahkeensuu 26 cm\n55% pellava 45% viskoosi',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '38 cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '54 cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '30 cm', value: 30, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '74 cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '33 cm', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '26 cm', value: 26, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [
      ['linen', 55],
      ['viscose', 45]
    ]
  },
  {
    id: 'fi-w03',
    class: 'around',
    lang: 'fi',
    title: 'Musta vekkihame',
    text: 'Vyötärönympärys 70 cm, pituus 78 cm. Vuorellinen. Uutena 80 €, nyt 15 €.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '70 cm', value: 70, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '78 cm', value: 78, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 15, currency: 'EUR' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'fi-w04',
    class: 'coat',
    lang: 'fi',
    title: 'Harmaa villakangastakki',
    text: 'Kainalosta kainaloon 54 cm, takin pituus 102 cm, hihat 61 cm.\nPäällinen: 70% villa 30% polyamidi. Vuori: 100% polyesteri\n40 €',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '54 cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '102 cm', value: 102, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61 cm', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 40, currency: 'EUR' },
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    lined: 'full'
  },
  {
    id: 'fi-w05',
    class: 'model',
    lang: 'fi',
    title: 'Pitkä neulemekko',
    text: 'Olen 172 cm pitkä. Rinta 45 cm, pituus 120 cm, hiha 58 cm. Ei reikiä, hieman nyppyjä.',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '45 cm', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '120 cm', value: 120, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58 cm', value: 58, unit: 'cm', basis: 'length' }
    ],
    aside: ['172 cm'],
    price: null,
    fibres: []
  },
  {
    id: 'fi-w06',
    class: 'jeans',
    lang: 'fi',
    title: 'Farkut suora lahje W31 L32',
    text: 'Vyötärö 40 cm tasossa, sisälahje 79 cm, lahkeen leveys 19 cm. Puuvilla 98 % elastaani 2 %. 10e',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '40 cm', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '79 cm', value: 79, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '19 cm', value: 19, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 10, currency: 'EUR' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ]
  },
  {
    id: 'fi-w07',
    class: 'jumper',
    lang: 'fi',
    title: 'Villapaita poolokauluksella M',
    text: 'Leveys kainaloista 48 cm, pituus 60 cm, hihan pituus 58 cm. 70 % villaa, 30 % akryyliä. Ei reikiä, vähän nyppyjä. 12e sis. postikulut',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '48 cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '60 cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58 cm', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 12, currency: 'EUR' },
    fibres: [
      ['wool', 70],
      ['acrylic', 30]
    ]
  },
  {
    id: 'fi-w08',
    class: 'suit',
    lang: 'fi',
    title: 'Miesten puku tummansininen 50',
    text: 'Takki: rinta 53 cm, hartiat 45 cm, hiha 62 cm, pituus 74 cm\nHousut: vyötärö 43 cm, sisäsauma 78 cm\n100% villa. Hinta 45 €',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '53 cm', of: 'jacket', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '45 cm', of: 'jacket', value: 45, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62 cm', of: 'jacket', value: 62, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '74 cm', of: 'jacket', value: 74, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '43 cm', of: 'trousers', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '78 cm', of: 'trousers', value: 78, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 45, currency: 'EUR' },
    fibres: [['wool', 100]]
  }
]
