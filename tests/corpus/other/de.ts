/** German. */
import { aside, type Case, type Expected, m } from '../case.ts'

const de = (name: string, teaches: string, title: string, text: string, expect: Expected, trap?: true): Case => ({
  name: `de: ${name}`,
  teaches,
  ...(trap ? { trap } : {}),
  listing: { title, text },
  expect: { language: 'de', ...expect }
})

export const german: Case[] = [
  de('einfach gemessen', 'einfach: half girths', 'Stoffhose', 'Bundweite 43 cm (einfach gemessen), Innenbeinlänge 80 cm, Leibhöhe 27 cm', {
    kind: 'trousers',
    measures: [m('waist', '43 cm', 'cm flat'), m('inseam', '80 cm', 'cm length'), m('frontRise', '27 cm', 'cm length')]
  }),
  de('Achsel zu Achsel', 'the German pit to pit', 'Strickpullover', 'Maße: Achsel zu Achsel: 52 cm / Länge: 66cm / Ärmellänge: 61 cm', {
    kind: 'jumper',
    structure: 'knit',
    measures: [m('chest', '52 cm', 'cm flat'), m('bodyLength', '66cm', 'cm length'), m('sleeveLength', '61 cm', 'cm length')]
  }),
  de('Umfang', 'Umfang is around', 'Sommerkleid', 'Brustumfang ca. 96 cm, Taillenumfang 80 cm, Gesamtlänge 110cm', {
    kind: 'dress',
    measures: [m('chest', '96 cm', 'cm around judged'), m('waist', '80 cm', 'cm around judged'), m('bodyLength', '110cm', 'cm length')]
  }),
  de(
    'Überschrift mit Einheit',
    'a heading gives unit and basis',
    'Bluse',
    'Maße in cm, flach liegend gemessen:\nBrust 48\nLänge 62\nSchulter 39\nÄrmel 58',
    {
      kind: 'shirt',
      measures: [
        m('chest', '48', 'cm flat list'),
        m('bodyLength', '62', 'cm length list'),
        m('shoulderWidth', '39', 'cm length list'),
        m('sleeveLength', '58', 'cm length list')
      ]
    }
  ),
  de('Dezimalkomma', '41,5 is one number', 'Wollrock', 'Taille 35,5 cm flach, Länge 61,5 cm', {
    kind: 'skirt',
    fibres: [['wool', null]],
    measures: [m('waist', '35,5 cm', 'cm flat', { value: 35.5 }), m('skirtLength', '61,5 cm', 'cm length', { value: 61.5 })]
  }),
  de(
    'Größe',
    'a size is no measure',
    'Blazer',
    'Größe 40, fällt normal aus.',
    {
      kind: 'jacket',
      cut: { layer: 'blazer' },
      made: { tailored: true },
      sizeLabels: ['40'],
      leftAside: [aside('size-label', '40')]
    },
    true
  ),
  de('Modell', "the wearer's height", 'Etuikleid', 'Ich bin 1,70 m groß. Gesamtlänge 98 cm.', {
    kind: 'dress',
    cut: { silhouette: 'sheath' },
    measures: [m('bodyLength', '98 cm', 'cm length')],
    leftAside: [aside('model', '1,70 m', 'cm', 1, 170)]
  }),
  de('gedehnt', 'relaxed first, stretched aside', 'Midirock', 'Gummibund: 34 cm ungedehnt, 50 cm gedehnt. Länge 70 cm', {
    kind: 'skirt',
    cut: { dressLength: 'midi' },
    made: { elasticWaist: true, waistStretchedMm: 1000 },
    measures: [m('waist', '34 cm', 'cm flat judged'), m('skirtLength', '70 cm', 'cm length')],
    leftAside: [aside('pulled-out', '50 cm', 'cm')]
  }),
  de('keine Flecken', 'what is denied is no fault, what is admitted is', 'Leinenhemd', 'Keine Flecken. Ein Knopf fehlt.', {
    kind: 'shirt',
    fibres: [['linen', null]],
    faults: ['Ein Knopf fehlt'],
    mending: ['replace-button']
  }),
  de('Material', 'fibres and lining', 'Wollmantel', 'Obermaterial: 80% Wolle, 20% Polyamid. Futter: 100% Viskose.', {
    kind: 'coat',
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ]
  }),
  de(
    'Preis und Zustand',
    'euros, condition, colour',
    'Grüner Rock',
    'Sehr guter Zustand. VB 25 €',
    {
      kind: 'skirt',
      colour: 'green',
      condition: 'sehr guter zustand',
      price: { amount: 25, currency: 'EUR' }
    },
    true
  ),
  de('ohne Umlaute', 'missing umlauts in three hands', 'Pullover', 'Laenge 66 cm, Armellange 60 cm, Achsel zu Achsel 50 cm', {
    kind: 'jumper',
    cut: { knit: 'standard' },
    measures: [m('bodyLength', '66 cm', 'cm length'), m('sleeveLength', '60 cm', 'cm length'), m('chest', '50 cm', 'cm flat')]
  }),
  de('von Schulter bis Saum', 'landmarks with bis', 'Kleid', 'Von der Schulter bis zum Saum 102 cm, vom Kragen bis zum Saum 104 cm', {
    kind: 'dress',
    measures: [m('bodyLength', '102 cm', 'cm length')],
    leftAside: [aside('unknown', '104 cm', 'cm')],
    issues: [
      {
        code: 'reading.contradiction',
        about: '104 cm',
        readings: [
          ['bodyLength', 1020],
          ['bodyLength', 1040]
        ]
      }
    ]
  }),
  de('Innenärmel', 'the underarm sleeve', 'Sakko', 'Ärmelinnenlänge 46 cm, Schulterbreite 45 cm, Reversbreite 8 cm', {
    kind: 'jacket',
    made: { tailored: true },
    measures: [m('sleeveUnderarm', '46 cm', 'cm length'), m('shoulderWidth', '45 cm', 'cm length')],
    leftAside: [aside('detail', '8 cm', 'cm')]
  }),
  de(
    'bitte verdoppeln',
    'a note to double',
    'Jeans',
    'Bund 41 cm, Oberschenkel 29 cm, Saum 18 cm, Schrittlänge 79 cm. Breiten bitte verdoppeln.',
    {
      kind: 'jeans',
      measures: [
        m('waist', '41 cm', 'cm flat'),
        m('thigh', '29 cm', 'cm flat'),
        m('legOpening', '18 cm', 'cm flat'),
        m('inseam', '79 cm', 'cm length')
      ]
    }
  ),
  de(
    'Versand',
    'a parcel and days are no lengths',
    'Strickjacke',
    'Versand im Paket 30 x 20 x 10 cm, 2-3 Tage.',
    {
      kind: 'jumper',
      structure: 'knit',
      leftAside: [aside('parcel', '30'), aside('parcel', '20'), aside('parcel', '10 cm', 'cm')]
    },
    true
  ),
  de('Riss am Ärmel', 'the size of a tear is no sleeve', 'Lederjacke', 'Ärmel 63 cm. Kleiner Riss am Ärmel (1 cm).', {
    kind: 'jacket',
    structure: 'leather',
    made: { tailored: false },
    faults: ['Kleiner Riss am Ärmel (1 cm)'],
    mending: ['patch'],
    measures: [m('sleeveLength', '63 cm', 'cm length')],
    leftAside: [aside('detail', '1 cm', 'cm')]
  }),
  de(
    'gestopft',
    'gestopft is done, muss gestopft werden is not',
    'Pullover aus Wolle',
    'Ein Mottenloch am Ärmel, sauber gestopft. Ein Loch am Saum muss noch geflickt werden.',
    {
      kind: 'jumper',
      cut: { knit: 'standard' },
      fibres: [['wool', null]],
      faults: ['Ein Mottenloch am Ärmel, sauber gestopft', 'Ein Loch am Saum muss noch geflickt werden'],
      mending: ['darn', 'treat-pests']
    }
  ),
  de('Kürzel', 'the short names of bust, waist and hip', 'Kleid', 'BW 2x45cm TW 2x37cm HW 2x49cm', {
    kind: 'dress',
    measures: [m('chest', '45cm', 'cm flat'), m('waist', '37cm', 'cm flat'), m('hip', '49cm', 'cm flat')]
  }),
  de(
    'zusammengesetzt',
    'compound names of garments by their last part, their cloth by the first',
    'Baumwollwanderhemd',
    'Brustbreite 57 cm, Länge 78 cm',
    {
      kind: 'shirt',
      measures: [m('chest', '57 cm', 'cm flat'), m('bodyLength', '78 cm', 'cm length')]
    }
  ),
  de(
    'Leinenwanderrock',
    'a compound nobody listed; its hem is a sweep',
    'Leinentrachtenrock',
    'Bund: 74 cm rundherum, Länge: 70 cm, Saumweite: 220 cm',
    {
      kind: 'skirt',
      measures: [m('waist', '74 cm', 'cm around'), m('skirtLength', '70 cm', 'cm length'), m('sweep', '220 cm', 'cm around judged')]
    }
  ),
  {
    name: 'de: Schleppe und Futter',
    teaches: 'wie lang Schleppe und Futter sind, ist keine Länge des Kleides; ein Preis in Worten',
    listing: {
      title: 'Abendkleid mit Schleppe',
      text: 'Brustumfang 88 cm, Länge ab Schulter 145 cm, Schleppe 40 cm. Futter 120 cm lang. Für fünfzig Euro'
    },
    expect: {
      kind: 'dress',
      language: 'de',
      measures: [m('chest', '88 cm', 'cm around judged'), m('bodyLength', '145 cm', 'cm length')],
      price: { amount: 50, currency: 'EUR' },
      leftAside: [aside('detail', '40 cm', 'cm'), aside('detail', '120 cm', 'cm')]
    }
  },
  de(
    'Gesäßnaht',
    'ein Wort mit ß: die Naht hinten, in der Stoff zum Auslassen liegt',
    'Stoffhose',
    'Bund 84 cm rundherum. Gesäßnaht 3 cm zum Auslassen.',
    {
      kind: 'trousers',
      measures: [m('waist', '84 cm', 'cm around')],
      made: { backSeam: true, outletMm: 15 + 9.525 },
      allowances: [{ point: 'waist', mm: 30, place: { text: '3 cm', nth: 1, value: 3, unit: 'cm' } }]
    }
  )
]
