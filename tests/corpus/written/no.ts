/** Texts in the manner of Norwegian listings. */
import type { WrittenCase } from './written-case.ts'

export const norwegian: WrittenCase[] = [
  {
    id: 'no-w01',
    class: 'plain',
    lang: 'no',
    title: 'Rutete skjorte str L',
    text: 'Brystvidde 56 cm (fra armhule til armhule)\nLengde 74 cm\nErmelengde 62 cm\nSkulderbredde 47 cm\n100% bomull\nPris 120 kr + porto',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '56 cm', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '74 cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62 cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '47 cm', value: 47, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 120, currency: 'NOK' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'no-w02',
    class: 'flat',
    lang: 'no',
    title: 'Vid bukse i lin',
    text: 'Mål lagt flatt: liv 38 cm, hofte 54 cm, skritt 30 cm, innside ben 74 cm, lår 33 cm, benvidde nederst 26 cm\n55% lin 45% viskose',
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
    id: 'no-w03',
    class: 'around',
    lang: 'no',
    title: 'Plissert skjørt svart',
    text: 'Midjemål 70 cm hele veien rundt, lengde 78 cm. Med fôr. Nypris 800 kr, selges for 150 kr.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '70 cm', value: 70, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '78 cm', value: 78, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 150, currency: 'NOK' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'no-w04',
    class: 'coat',
    lang: 'no',
    title: 'Ullkåpe grå',
    text: 'Fra armhule til armhule 54 cm, lengde 102 cm, ermer 61 cm.\nYtterstoff: 70% ull 30% polyamid. Fôr: 100% polyester\n400 kr',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '54 cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '102 cm', value: 102, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61 cm', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 400, currency: 'NOK' },
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    lined: 'full'
  },
  {
    id: 'no-w05',
    class: 'model',
    lang: 'no',
    title: 'Strikket kjole lang',
    text: 'Jeg er 172 cm høy og bruker str M. Bryst 45 cm, lengde 120 cm, ermer 58 cm. Ingen hull, litt nupper.',
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
    id: 'no-w06',
    class: 'jumper',
    lang: 'no',
    title: 'Strikkegenser i ull, dame',
    text: 'Bredde under ermene 52 cm, hel lengde 64 cm, ermelengde fra skulder 60 cm. 100% merinoull. Lite hull på albuen, stoppet.',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '52 cm', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '64 cm', value: 64, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60 cm', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['wool', 100]]
  },
  {
    id: 'no-w07',
    class: 'jacket',
    lang: 'no',
    title: 'Dongerijakke herre M',
    text: 'Bredde fra armhule til armhule: 55 cm. Lengde rygg: 62 cm. Ermer: 61 cm. Skuldre: 46 cm. Selges for 200,-',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '55 cm', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '62 cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61 cm', value: 61, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '46 cm', value: 46, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 200, currency: 'NOK' },
    fibres: []
  },
  {
    id: 'no-w08',
    class: 'skirt',
    lang: 'no',
    title: 'Miniskjørt i denim str 38',
    text: 'Livvidde 37 cm flatt, hofte 47 cm, lengde 40 cm. Nypris 599, nå 80 kr.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '37 cm', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '47 cm', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '40 cm', value: 40, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 80, currency: 'NOK' },
    fibres: []
  }
]
