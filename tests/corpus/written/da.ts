/** Texts in the manner of Danish listings. */
import type { WrittenCase } from './written-case.ts'

export const danish: WrittenCase[] = [
  {
    id: 'da-w01',
    class: 'plain',
    lang: 'da',
    title: 'Skjorte ternet str. L',
    text: 'Brystvidde 56 cm (målt fra ærmegab til ærmegab)\nLængde 74 cm\nÆrmelængde 62 cm\nSkulderbredde 47 cm\n100% bomuld\nPris 120 kr + porto',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '56 cm', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '74 cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62 cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '47 cm', value: 47, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 120, currency: 'DKK' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'da-w02',
    class: 'flat',
    lang: 'da',
    title: 'Vide bukser i hør',
    text: 'Mål lagt fladt: talje 38 cm, hofte 54 cm, skridt 30 cm, indvendig benlængde 74 cm, lår 33 cm, benvidde 26 cm\n55% hør 45% viskose',
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
    id: 'da-w03',
    class: 'around',
    lang: 'da',
    title: 'Plisseret nederdel sort',
    text: 'Livvidde 70 cm hele vejen rundt, længde 78 cm. Med foer. Nypris 800 kr, sælges for 150 kr.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '70 cm', value: 70, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '78 cm', value: 78, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 150, currency: 'DKK' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'da-w04',
    class: 'coat',
    lang: 'da',
    title: 'Uldfrakke grå',
    text: 'Fra armhule til armhule 54 cm, længde 102 cm, ærmer 61 cm.\nYderstof: 70% uld 30% polyamid. For: 100% polyester\nMp 400 kr',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '54 cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '102 cm', value: 102, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61 cm', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 400, currency: 'DKK' },
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    lined: 'full'
  },
  {
    id: 'da-w05',
    class: 'model',
    lang: 'da',
    title: 'Strikket kjole lang',
    text: 'Jeg er 172 cm høj og bruger str. M. Bryst 45 cm, længde 120 cm, ærmer 58 cm. Uden huller, lidt fnuller.',
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
    id: 'da-w06',
    class: 'jeans',
    lang: 'da',
    title: 'Cowboybukser straight W31 L32',
    text: 'Livvidde 40 cm, indersøm 79 cm, skridthøjde 27 cm, bukseben forneden 19 cm (målt fladt)\n98% bomuld 2% elastan. 100,-',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '40 cm', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '79 cm', value: 79, unit: 'cm', basis: 'length' },
      { point: 'frontRise', text: '27 cm', value: 27, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '19 cm', value: 19, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 100, currency: 'DKK' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ]
  },
  {
    id: 'da-w07',
    class: 'jumper',
    lang: 'da',
    title: 'Striktrøje med rullekrave str. M',
    text: 'Bredde under ærmer 48 cm, længde 60 cm, ærmelængde 58 cm. 70 % uld, 30 % akryl. Ingen huller, lidt fnuldret. 75 kr plus porto',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '48 cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '60 cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58 cm', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 75, currency: 'DKK' },
    fibres: [
      ['wool', 70],
      ['acrylic', 30]
    ]
  },
  {
    id: 'da-w08',
    class: 'suit',
    lang: 'da',
    title: 'Habit mørkeblå 50',
    text: 'Jakke: bryst 53 cm, skulder 45 cm, ærme 62 cm, længde 74 cm\nBukser: livvidde 43 cm, indvendig benlængde 78 cm\n100% uld. Sælges samlet for 500 kr',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '53 cm', of: 'jacket', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '45 cm', of: 'jacket', value: 45, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62 cm', of: 'jacket', value: 62, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '74 cm', of: 'jacket', value: 74, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '43 cm', of: 'trousers', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '78 cm', of: 'trousers', value: 78, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 500, currency: 'DKK' },
    fibres: [['wool', 100]]
  }
]
