/** Polish. */
import { aside, type Case, type Expected, m } from '../case.ts'

const pl = (name: string, teaches: string, title: string, text: string, expect: Expected, trap?: true): Case => ({
  name: `pl: ${name}`,
  teaches,
  ...(trap ? { trap } : {}),
  listing: { title, text },
  expect: { language: 'pl', ...expect }
})

export const polish: Case[] = [
  pl('pod pachami', 'the Polish pit to pit', 'Sweter', 'Szerokość pod pachami 52 cm, długość 64 cm, długość rękawa 60 cm', {
    kind: 'jumper',
    measures: [m('chest', '52 cm', 'cm flat'), m('bodyLength', '64 cm', 'cm length'), m('sleeveLength', '60 cm', 'cm length')]
  }),
  pl('na płasko', 'a heading says flat', 'Sukienka', 'Wymiary na płasko: biust 45 cm, talia 38 cm, biodra 50 cm, długość 100 cm', {
    kind: 'dress',
    measures: [
      m('chest', '45 cm', 'cm flat'),
      m('waist', '38 cm', 'cm flat'),
      m('hip', '50 cm', 'cm flat'),
      m('bodyLength', '100 cm', 'cm length')
    ]
  }),
  pl('obwód', 'around by name', 'Spódnica', 'Obwód pasa 70 cm, obwód bioder 96 cm, długość 60 cm', {
    kind: 'skirt',
    measures: [m('waist', '70 cm', 'cm around judged'), m('hip', '96 cm', 'cm around judged'), m('skirtLength', '60 cm', 'cm length')]
  }),
  pl(
    'spodnie',
    'rise, inside leg, leg opening',
    'Spodnie',
    'Pas 40 cm, biodra 52 cm, długość nogawki wewnętrzna 75 cm, stan 29 cm, szerokość nogawki 22 cm',
    {
      kind: 'trousers',
      measures: [
        m('waist', '40 cm', 'cm flat judged'),
        m('hip', '52 cm', 'cm flat judged'),
        m('inseam', '75 cm', 'cm length'),
        m('frontRise', '29 cm', 'cm length'),
        m('legOpening', '22 cm', 'cm flat')
      ]
    }
  ),
  pl(
    'rozmiar',
    'a size is no measure',
    'Koszula',
    'Rozmiar 38, na metce M.',
    { kind: 'shirt', sizeLabels: ['38', 'M'], leftAside: [aside('size-label', '38')] },
    true
  ),
  pl('wzrost', "the wearer's height", 'Sukienka', 'Mam 168 cm wzrostu. Długość 96 cm.', {
    kind: 'dress',
    leftAside: [aside('model', '168 cm', 'cm')],
    measures: [m('bodyLength', '96 cm', 'cm length')]
  }),
  pl('przecinek', 'decimal comma', 'Marynarka', 'Ramiona 43,5 cm, rękaw 61,5 cm', {
    kind: 'jacket',
    made: { tailored: true },
    measures: [m('shoulderWidth', '43,5 cm', 'cm length', { value: 43.5 }), m('sleeveLength', '61,5 cm', 'cm length', { value: 61.5 })]
  }),
  pl('bez ogonków', 'missing diacritics', 'Plaszcz', 'Dlugosc 102 cm, szerokosc pod pachami 55 cm, rekaw 61 cm', {
    kind: 'coat',
    measures: [m('bodyLength', '102 cm', 'cm length'), m('chest', '55 cm', 'cm flat'), m('sleeveLength', '61 cm', 'cm length')]
  }),
  pl('gumka', 'relaxed and stretched', 'Spódnica', 'Pas na gumce: 33 cm bez rozciągania, 48 cm po rozciągnięciu. Długość 74 cm', {
    kind: 'skirt',
    made: { elasticWaist: true, waistStretchedMm: 960 },
    measures: [m('waist', '33 cm', 'cm flat judged'), m('skirtLength', '74 cm', 'cm length')],
    leftAside: [aside('pulled-out', '48 cm', 'cm')]
  }),
  pl('skład', 'fibres with their shares', 'Płaszcz', 'Skład: 60% wełna, 40% poliester. Bez podszewki.', {
    kind: 'coat',
    fibres: [
      ['wool', 60],
      ['polyester', 40]
    ],
    made: { lined: false }
  }),
  pl(
    'cena',
    'price, condition, colour',
    'Czarna sukienka',
    'Bardzo dobry stan. Cena 150 zł',
    {
      kind: 'dress',
      colour: 'black',
      condition: 'bardzo dobry stan',
      price: { amount: 150, currency: 'PLN' }
    },
    true
  ),
  pl(
    'brak plam',
    'denied and admitted faults',
    'Koszula',
    'Brak plam. Brakuje guzika.',
    { kind: 'shirt', faults: ['Brakuje guzika'], mending: ['replace-button'] },
    true
  ),
  pl('od ramienia do dołu', 'landmarks with do', 'Sukienka', 'Od ramienia do dołu 98 cm', {
    kind: 'dress',
    measures: [m('bodyLength', '98 cm', 'cm length')]
  }),
  pl('rękaw od pachy', 'the underarm sleeve', 'Sweter', 'Rękaw od pachy 46 cm, ramiona 42 cm', {
    kind: 'jumper',
    measures: [m('sleeveUnderarm', '46 cm', 'cm length'), m('shoulderWidth', '42 cm', 'cm length')]
  }),
  pl(
    'torebka',
    'a bag is no garment',
    'Skórzana torebka',
    'Szerokość 30 cm, wysokość 20 cm.',
    {
      kind: null,
      issues: [{ code: 'reading.no-garment' }],
      structure: 'leather',
      leftAside: [aside('detail', '30 cm', 'cm'), aside('detail', '20 cm', 'cm')]
    },
    true
  )
]
