/** Texts in the manner of Czech listings. */
import type { WrittenCase } from './written-case.ts'

export const czech: WrittenCase[] = [
  {
    id: 'cs-w01',
    class: 'plain',
    lang: 'cs',
    title: 'Kostkovaná košile vel. L',
    text: 'Šířka přes prsa (podpaží–podpaží) 56 cm\nDélka 74 cm\nDélka rukávu 62 cm\nRamena 47 cm\n100% bavlna\nCena 150 Kč + poštovné',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '56 cm', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '74 cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62 cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '47 cm', value: 47, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 150, currency: 'CZK' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'cs-w02',
    class: 'flat',
    lang: 'cs',
    title: 'Široké lněné kalhoty',
    text: 'Míry v ploše: pas 38 cm, boky 54 cm, sed 30 cm, vnitřní délka nohavice 74 cm, stehno 33 cm, šířka nohavice dole 26 cm\n55% len 45% viskóza',
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
    id: 'cs-w03',
    class: 'around',
    lang: 'cs',
    title: 'Černá plisovaná sukně',
    text: 'Obvod pasu 70 cm, délka 78 cm. S podšívkou. Původní cena 800 Kč, prodám za 150 Kč.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '70 cm', value: 70, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '78 cm', value: 78, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 150, currency: 'CZK' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'cs-w04',
    class: 'coat',
    lang: 'cs',
    title: 'Šedý vlněný kabát',
    text: 'Od podpaží k podpaží 54 cm, délka 102 cm, rukáv 61 cm.\nVrchní materiál: 70% vlna 30% polyamid. Podšívka: 100% polyester\n400 Kč',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '54 cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '102 cm', value: 102, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61 cm', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 400, currency: 'CZK' },
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    lined: 'full'
  },
  {
    id: 'cs-w05',
    class: 'model',
    lang: 'cs',
    title: 'Dlouhé pletené šaty',
    text: 'Měřím 172 cm. Prsa 45 cm, délka 120 cm, rukáv 58 cm. Bez děr, trochu žmolků.',
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
    id: 'cs-w06',
    class: 'jeans',
    lang: 'cs',
    title: 'Rovné džíny W31 L32',
    text: 'Pas 40 cm, krok 79 cm, sed 27 cm, nohavice dole 19 cm (měřeno v ploše)\n98% bavlna 2% elastan. 200,-',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '40 cm', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '79 cm', value: 79, unit: 'cm', basis: 'length' },
      { point: 'frontRise', text: '27 cm', value: 27, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '19 cm', value: 19, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 200, currency: 'CZK' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ]
  },
  {
    id: 'cs-w07',
    class: 'jumper',
    lang: 'cs',
    title: 'Svetr s rolákem vel. M',
    text: 'Šířka přes prsa 48 cm, délka 60 cm, rukáv 58 cm. 70 % vlna, 30 % akryl. Bez děr, trochu žmolků. 120 Kč včetně poštovného',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '48 cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '60 cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58 cm', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 120, currency: 'CZK' },
    fibres: [
      ['wool', 70],
      ['acrylic', 30]
    ]
  },
  {
    id: 'cs-w08',
    class: 'suit',
    lang: 'cs',
    title: 'Pánský oblek tmavě modrý 50',
    text: 'Sako: prsa 53 cm, ramena 45 cm, rukáv 62 cm, délka 74 cm\nKalhoty: pas 43 cm, vnitřní délka 78 cm\n100% vlna. Cena 900 Kč',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '53 cm', of: 'jacket', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '45 cm', of: 'jacket', value: 45, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62 cm', of: 'jacket', value: 62, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '74 cm', of: 'jacket', value: 74, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '43 cm', of: 'trousers', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '78 cm', of: 'trousers', value: 78, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 900, currency: 'CZK' },
    fibres: [['wool', 100]]
  }
]
