/** Swedish. */
import { aside, type Case, type Expected, m } from '../case.ts'

const sv = (name: string, teaches: string, title: string, text: string, expect: Expected, trap?: true): Case => ({
  name: `sv: ${name}`,
  teaches,
  ...(trap ? { trap } : {}),
  listing: { title, text },
  expect: { language: 'sv', ...expect }
})

export const swedish: Case[] = [
  sv('armhåla till armhåla', 'the Swedish pit to pit', 'Stickad tröja', 'Armhåla till armhåla 50 cm, längd 64 cm, ärmlängd 60 cm', {
    kind: 'jumper',
    structure: 'knit',
    measures: [m('chest', '50 cm', 'cm flat'), m('bodyLength', '64 cm', 'cm length'), m('sleeveLength', '60 cm', 'cm length')]
  }),
  sv('tvärs över', 'flat by word', 'Jeans', 'Midja 41 cm tvärs över, innerben 76 cm, gren 27 cm, benslut 19 cm', {
    kind: 'jeans',
    measures: [
      m('waist', '41 cm', 'cm flat'),
      m('inseam', '76 cm', 'cm length'),
      m('frontRise', '27 cm', 'cm length'),
      m('legOpening', '19 cm', 'cm flat judged')
    ]
  }),
  sv('mätt plant', 'a note says flat', 'Klänning', 'Byst 46 cm, midja 39 cm, längd 98 cm. Alla mått är mätta plant.', {
    kind: 'dress',
    measures: [m('chest', '46 cm', 'cm flat'), m('waist', '39 cm', 'cm flat'), m('bodyLength', '98 cm', 'cm length')]
  }),
  sv('runt om', 'around by word', 'Kjol', 'Midja 72 cm runt om, längd 60 cm', {
    kind: 'skirt',
    measures: [m('waist', '72 cm', 'cm around'), m('skirtLength', '60 cm', 'cm length')]
  }),
  sv(
    'storlek',
    'a size is no measure',
    'Skjorta',
    'Storlek 40, passar bra.',
    { kind: 'shirt', sizeLabels: ['40'], leftAside: [aside('size-label', '40')] },
    true
  ),
  sv('jag är', "the wearer's height", 'Byxor', 'Jag är 172 cm lång. Innerben 78 cm.', {
    kind: 'trousers',
    measures: [m('inseam', '78 cm', 'cm length')],
    leftAside: [aside('model', '172 cm', 'cm')]
  }),
  sv('komma', 'decimal comma', 'Kavaj', 'Axelbredd 44,5 cm, ärm 62,5 cm', {
    kind: 'jacket',
    made: { tailored: true },
    measures: [m('shoulderWidth', '44,5 cm', 'cm length', { value: 44.5 }), m('sleeveLength', '62,5 cm', 'cm length', { value: 62.5 })]
  }),
  sv('utan prickar', 'missing rings and dots', 'Kappa', 'Langd 100 cm, armlangd 60 cm, axelbredd 41 cm', {
    kind: 'coat',
    measures: [m('bodyLength', '100 cm', 'cm length'), m('sleeveLength', '60 cm', 'cm length'), m('shoulderWidth', '41 cm', 'cm length')]
  }),
  sv('lista i cm', 'one unit for the list', 'Blus', 'Mått i cm:\nByst 48\nAxlar 39\nÄrm 58\nLängd 61', {
    kind: 'shirt',
    measures: [
      m('chest', '48', 'cm flat judged list'),
      m('shoulderWidth', '39', 'cm length list'),
      m('sleeveLength', '58', 'cm length list'),
      m('bodyLength', '61', 'cm length list')
    ]
  }),
  sv('resår', 'relaxed and stretched', 'Kjol', 'Resår i midjan: 33 cm outsträckt, 48 cm utsträckt. Längd 72 cm', {
    kind: 'skirt',
    made: { elasticWaist: true, waistStretchedMm: 960 },
    measures: [m('waist', '33 cm', 'cm flat judged'), m('skirtLength', '72 cm', 'cm length')],
    leftAside: [aside('pulled-out', '48 cm', 'cm')]
  }),
  sv('material', 'fibres and lining', 'Ullkappa', 'Material: 70% ull, 30% polyester. Helfodrad.', {
    kind: 'coat',
    fibres: [
      ['wool', 70],
      ['polyester', 30]
    ],
    made: { lined: true }
  }),
  sv(
    'pris',
    'price, condition, colour',
    'Svart klänning',
    'Mycket fint skick. Pris 350 kr',
    {
      kind: 'dress',
      colour: 'black',
      condition: 'mycket fint skick',
      price: { amount: 350, currency: 'SEK' }
    },
    true
  ),
  sv(
    'inga fläckar',
    'denied and admitted faults',
    'Skjorta',
    'Inga fläckar. En knapp saknas.',
    { kind: 'shirt', faults: ['En knapp saknas'], mending: ['replace-button'] },
    true
  ),
  sv('från axel till fåll', 'landmarks with till', 'Klänning', 'Från axeln till fållen 97 cm', {
    kind: 'dress',
    measures: [m('bodyLength', '97 cm', 'cm length')]
  }),
  sv('innerärm', 'the underarm sleeve', 'Jacka', 'Innerärm 47 cm, axel till axel 44 cm', {
    kind: 'jacket',
    made: { tailored: false },
    measures: [m('sleeveUnderarm', '47 cm', 'cm length'), m('shoulderWidth', '44 cm', 'cm length')]
  }),
  sv(
    'väska',
    'a bag is no garment',
    'Handväska i läder',
    'Bredd 30 cm, höjd 20 cm.',
    {
      kind: null,
      issues: [{ code: 'reading.no-garment' }],
      structure: 'leather',
      leftAside: [aside('detail', '30 cm', 'cm'), aside('detail', '20 cm', 'cm')]
    },
    true
  )
]
