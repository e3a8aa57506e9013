/** Dutch. */
import { aside, type Case, type Expected, m } from '../case.ts'

const nl = (name: string, teaches: string, title: string, text: string, expect: Expected, trap?: true): Case => ({
  name: `nl: ${name}`,
  teaches,
  ...(trap ? { trap } : {}),
  listing: { title, text },
  expect: { language: 'nl', ...expect }
})

export const dutch: Case[] = [
  nl('oksel tot oksel', 'the Dutch pit to pit', 'Wollen trui', 'Oksel tot oksel 51 cm, lengte 64 cm, mouwlengte 60 cm', {
    kind: 'jumper',
    fibres: [['wool', null]],
    measures: [m('chest', '51 cm', 'cm flat'), m('bodyLength', '64 cm', 'cm length'), m('sleeveLength', '60 cm', 'cm length')]
  }),
  nl('plat gemeten', 'flat by word', 'Spijkerbroek', 'Taille 39 cm plat gemeten, binnenbeen 78 cm, kruis 26 cm, pijpbreedte 18 cm', {
    kind: 'jeans',
    traits: ['denim'],
    measures: [
      m('waist', '39 cm', 'cm flat'),
      m('inseam', '78 cm', 'cm length'),
      m('frontRise', '26 cm', 'cm length'),
      m('legOpening', '18 cm', 'cm flat judged')
    ]
  }),
  nl('omvang', 'around by name', 'Jurk', 'Borstomvang 92 cm, tailleomvang 74 cm, lengte 100 cm', {
    kind: 'dress',
    measures: [m('chest', '92 cm', 'cm around judged'), m('waist', '74 cm', 'cm around judged'), m('bodyLength', '100 cm', 'cm length')]
  }),
  nl('lijst in cm', 'one unit for the list', 'Overhemd', 'Maten in cm:\nSchouders 46\nBorst 58\nMouw 63\nLengte 76', {
    kind: 'shirt',
    measures: [
      m('shoulderWidth', '46', 'cm length list'),
      m('chest', '58', 'cm flat judged list'),
      m('sleeveLength', '63', 'cm length list'),
      m('bodyLength', '76', 'cm length list')
    ]
  }),
  nl(
    'maat',
    'a size is no measure',
    'Kokerrok',
    'Maat 38, valt normaal.',
    {
      kind: 'skirt',
      cut: { silhouette: 'pencil' },
      whose: 'women',
      made: { skirtShape: 'straight' },
      sizeLabels: ['38'],
      leftAside: [aside('size-label', '38')]
    },
    true
  ),
  nl('ik ben', "the wearer's height", 'Jumpsuit', 'Ik ben 1.72 m lang. Binnenbeen 72 cm', {
    kind: 'jumpsuit',
    measures: [m('inseam', '72 cm', 'cm length')],
    leftAside: [aside('model', '1.72 m', 'cm', 1, 172)]
  }),
  nl('komma', 'decimal comma', 'Colbert', 'Schouderbreedte 45,5 cm, mouwen 62,5 cm', {
    kind: 'jacket',
    made: { tailored: true },
    measures: [m('shoulderWidth', '45,5 cm', 'cm length', { value: 45.5 }), m('sleeveLength', '62,5 cm', 'cm length', { value: 62.5 })]
  }),
  nl('uitgerekt', 'relaxed and stretched', 'Rok', 'Elastische taille: 34 cm ongerekt, 48 cm uitgerekt. Lengte 70 cm', {
    kind: 'skirt',
    made: { elasticWaist: true, waistStretchedMm: 960 },
    measures: [m('waist', '34 cm', 'cm flat judged'), m('skirtLength', '70 cm', 'cm length')],
    leftAside: [aside('pulled-out', '48 cm', 'cm')]
  }),
  nl('materiaal', 'fibres and lining', 'Mantel', 'Materiaal: 70% wol, 30% polyamide. Volledig gevoerd.', {
    kind: 'coat',
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    made: { lined: true }
  }),
  nl(
    'prijs',
    'price, condition, colour',
    'Groene jurk',
    'In goede staat. Vraagprijs €40',
    {
      kind: 'dress',
      colour: 'green',
      condition: 'in goede staat',
      price: { amount: 40, currency: 'EUR' }
    },
    true
  ),
  nl(
    'geen vlekken',
    'denied and admitted faults',
    'Blouse',
    'Geen vlekken. Er mist een knoop.',
    {
      kind: 'shirt',
      cut: { silhouette: 'blouse' },
      faults: ['Er mist een knoop'],
      mending: ['replace-button']
    },
    true
  ),
  nl('van schouder tot zoom', 'landmarks with tot', 'Jurk', 'Van schouder tot zoom 98 cm', {
    kind: 'dress',
    measures: [m('bodyLength', '98 cm', 'cm length')]
  }),
  nl('mouw binnenkant', 'the underarm sleeve', 'Blazer', 'Binnenmouw 46 cm, ruglengte 70 cm', {
    kind: 'jacket',
    cut: { layer: 'blazer' },
    made: { tailored: true },
    measures: [m('sleeveUnderarm', '46 cm', 'cm length'), m('bodyLength', '70 cm', 'cm length')]
  }),
  nl(
    'boven de knie',
    'a position is no length',
    'Rokje',
    'Valt 6 cm boven de knie.',
    { kind: 'skirt', leftAside: [aside('detail', '6 cm', 'cm')] },
    true
  ),
  nl(
    'tas',
    'a bag is no garment',
    'Leren handtas',
    'Breedte 30 cm, hoogte 20 cm.',
    {
      kind: null,
      issues: [{ code: 'reading.no-garment' }],
      structure: 'leather',
      leftAside: [aside('detail', '30 cm', 'cm'), aside('detail', '20 cm', 'cm')]
    },
    true
  )
]
