/** Italian. */
import { aside, type Case, type Expected, m } from '../case.ts'

const it = (name: string, teaches: string, title: string, text: string, expect: Expected, trap?: true): Case => ({
  name: `it: ${name}`,
  teaches,
  ...(trap ? { trap } : {}),
  listing: { title, text },
  expect: { language: 'it', ...expect }
})

export const italian: Case[] = [
  it('da ascella ad ascella', 'the Italian pit to pit', 'Maglione', 'Da ascella ad ascella 52 cm, lunghezza 66 cm, manica 60 cm', {
    kind: 'jumper',
    measures: [m('chest', '52 cm', 'cm flat'), m('bodyLength', '66 cm', 'cm length'), m('sleeveLength', '60 cm', 'cm length')]
  }),
  it('in piano', 'a heading says flat', 'Pantaloni', 'Misure in piano: vita 41 cm, fianchi 52 cm, cavallo 28 cm, interno gamba 76 cm', {
    kind: 'trousers',
    measures: [
      m('waist', '41 cm', 'cm flat'),
      m('hip', '52 cm', 'cm flat'),
      m('frontRise', '28 cm', 'cm length'),
      m('inseam', '76 cm', 'cm length')
    ]
  }),
  it('circonferenza', 'around by name', 'Gonna', 'Circonferenza vita 70 cm, circonferenza fianchi 96 cm, lunghezza 62 cm', {
    kind: 'skirt',
    measures: [m('waist', '70 cm', 'cm around judged'), m('hip', '96 cm', 'cm around judged'), m('skirtLength', '62 cm', 'cm length')]
  }),
  it(
    'giacca',
    'shoulders, chest, sleeve, length in a row',
    'Giacca di velluto',
    'Spalle 44 cm, ascella ascella 52 cm, manica 63 cm, lunghezza 74 cm',
    {
      kind: 'jacket',
      traits: ['pile'],
      made: { tailored: false },
      measures: [
        m('shoulderWidth', '44 cm', 'cm length'),
        m('chest', '52 cm', 'cm flat'),
        m('sleeveLength', '63 cm', 'cm length'),
        m('bodyLength', '74 cm', 'cm length')
      ]
    }
  ),
  it(
    'taglia',
    'a size is no measure',
    'Camicia',
    'Taglia 42, veste bene.',
    { kind: 'shirt', sizeLabels: ['42'], leftAside: [aside('size-label', '42')] },
    true
  ),
  it('la modella', "the model's height", 'Tubino', 'La modella è alta 175 cm. Lunghezza 96 cm', {
    kind: 'dress',
    cut: { silhouette: 'sheath' },
    measures: [m('bodyLength', '96 cm', 'cm length')],
    leftAside: [aside('model', '175 cm', 'cm')]
  }),
  it('virgola', 'decimal comma', 'Camicetta', 'Spalle 38,5 cm, lunghezza 61,5 cm', {
    kind: 'shirt',
    measures: [m('shoulderWidth', '38,5 cm', 'cm length', { value: 38.5 }), m('bodyLength', '61,5 cm', 'cm length', { value: 61.5 })]
  }),
  it('unità nel titolo', 'one unit for the list', 'Cappotto', 'Misure in cm:\nSpalle 42\nAscelle 55\nManica 61\nLunghezza 102', {
    kind: 'coat',
    measures: [
      m('shoulderWidth', '42', 'cm length list'),
      m('chest', '55', 'cm flat list'),
      m('sleeveLength', '61', 'cm length list'),
      m('bodyLength', '102', 'cm length list')
    ]
  }),
  it('a riposo', 'relaxed and stretched', 'Gonna lunga', 'Vita elastica: 33 cm a riposo, 47 cm tirata. Lunghezza 88 cm', {
    kind: 'skirt',
    cut: { dressLength: 'maxi' },
    made: { elasticWaist: true, waistStretchedMm: 940 },
    measures: [m('waist', '33 cm', 'cm flat judged'), m('skirtLength', '88 cm', 'cm length')],
    leftAside: [aside('pulled-out', '47 cm', 'cm')]
  }),
  it('composizione', 'fibres with their shares', 'Abito', 'Composizione: 95% viscosa, 5% elastan. Sfoderato.', {
    kind: 'dress',
    fibres: [
      ['viscose', 95],
      ['elastane', 5]
    ],
    made: { lined: false }
  }),
  it(
    'prezzo',
    'price, condition, colour',
    'Gonna nera',
    'Ottime condizioni. Prezzo 15 €',
    {
      kind: 'skirt',
      colour: 'black',
      condition: 'ottime condizioni',
      price: { amount: 15, currency: 'EUR' }
    },
    true
  ),
  it(
    'nessuna macchia',
    'denied and admitted faults',
    'Camicia',
    'Nessuna macchia. Manca un bottone.',
    {
      kind: 'shirt',
      faults: ['Manca un bottone'],
      mending: ['replace-button']
    },
    true
  ),
  it("dalla spalla all'orlo", 'landmarks with all’', 'Vestito', "Dalla spalla all'orlo 100 cm", {
    kind: 'dress',
    measures: [m('bodyLength', '100 cm', 'cm length')]
  }),
  it('interno manica', 'the underarm sleeve', 'Blazer', 'Lunghezza interna manica 45 cm, larghezza spalle 41 cm', {
    kind: 'jacket',
    cut: { layer: 'blazer' },
    made: { tailored: true },
    measures: [m('sleeveUnderarm', '45 cm', 'cm length'), m('shoulderWidth', '41 cm', 'cm length')]
  }),
  it(
    'borsa',
    'a bag is no garment',
    'Borsa in pelle',
    'Larghezza 28 cm, altezza 22 cm.',
    {
      kind: null,
      issues: [{ code: 'reading.no-garment' }],
      structure: 'leather',
      leftAside: [aside('detail', '28 cm', 'cm'), aside('detail', '22 cm', 'cm')]
    },
    true
  )
]
