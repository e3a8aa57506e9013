/** Spanish. */
import { aside, type Case, type Expected, m } from '../case.ts'

const es = (name: string, teaches: string, title: string, text: string, expect: Expected, trap?: true): Case => ({
  name: `es: ${name}`,
  teaches,
  ...(trap ? { trap } : {}),
  listing: { title, text },
  expect: { language: 'es', ...expect }
})

export const spanish: Case[] = [
  es('axila a axila', 'the Spanish pit to pit', 'Jersey de punto', 'De axila a axila 50 cm, largo 64 cm, manga 60 cm', {
    kind: 'jumper',
    structure: 'knit',
    measures: [m('chest', '50 cm', 'cm flat'), m('bodyLength', '64 cm', 'cm length'), m('sleeveLength', '60 cm', 'cm length')]
  }),
  es('en plano', 'a heading says flat', 'Vestido', 'Medidas en plano: pecho 48 cm, cintura 42 cm, cadera 53 cm, largo total 108 cm', {
    kind: 'dress',
    measures: [
      m('chest', '48 cm', 'cm flat'),
      m('waist', '42 cm', 'cm flat'),
      m('hip', '53 cm', 'cm flat'),
      m('bodyLength', '108 cm', 'cm length')
    ]
  }),
  es('contorno', 'contorno is around', 'Falda', 'Contorno de cintura 72 cm, contorno de cadera 98 cm, largo 60 cm', {
    kind: 'skirt',
    measures: [m('waist', '72 cm', 'cm around judged'), m('hip', '98 cm', 'cm around judged'), m('skirtLength', '60 cm', 'cm length')]
  }),
  es(
    'tiro y entrepierna',
    'rise and inside leg; units of neighbours',
    'Pantalón vaquero',
    'Cintura 40 cm en plano, tiro 26, entrepierna 76, bajo 18',
    {
      kind: 'jeans',
      traits: ['denim'],
      measures: [
        m('waist', '40 cm', 'cm flat'),
        m('frontRise', '26', 'cm length list'),
        m('inseam', '76', 'cm length list'),
        m('legOpening', '18', 'cm flat judged list')
      ]
    }
  ),
  es(
    'talla',
    'a size is no measure',
    'Camisa',
    'Talla 40, etiqueta M.',
    {
      kind: 'shirt',
      sizeLabels: ['40', 'M'],
      leftAside: [aside('size-label', '40')]
    },
    true
  ),
  es('la modelo', "the model's height", 'Mono largo', 'La modelo mide 172 cm de altura. Largo pierna 70 cm', {
    kind: 'jumpsuit',
    measures: [m('inseam', '70 cm', 'cm length')],
    leftAside: [aside('model', '172 cm', 'cm')]
  }),
  es('coma decimal', 'decimal comma', 'Americana', 'Hombros 45,5 cm, manga 62,5 cm', {
    kind: 'jacket',
    made: { tailored: true },
    measures: [m('shoulderWidth', '45,5 cm', 'cm length', { value: 45.5 }), m('sleeveLength', '62,5 cm', 'cm length', { value: 62.5 })]
  }),
  es('sin acentos', 'missing accents', 'Pantalon chino', 'Cintura 42 cm plano, largo exterior 104 cm', {
    kind: 'trousers',
    measures: [m('waist', '42 cm', 'cm flat'), m('outseam', '104 cm', 'cm length')]
  }),
  es('sin estirar', 'relaxed and stretched', 'Falda midi', 'Cintura elástica: 32 cm sin estirar, 46 cm estirada. Largo 76 cm', {
    kind: 'skirt',
    cut: { dressLength: 'midi' },
    made: { elasticWaist: true, waistStretchedMm: 920 },
    measures: [m('waist', '32 cm', 'cm flat judged'), m('skirtLength', '76 cm', 'cm length')],
    leftAside: [aside('pulled-out', '46 cm', 'cm')]
  }),
  es('composición', 'fibres with their shares', 'Abrigo', 'Composición: 60% lana, 40% poliéster. Sin forro.', {
    kind: 'coat',
    fibres: [
      ['wool', 60],
      ['polyester', 40]
    ],
    made: { lined: false }
  }),
  es(
    'precio',
    'price, condition, colour',
    'Vestido rojo',
    'Muy buen estado. Precio 20€',
    {
      kind: 'dress',
      colour: 'red',
      condition: 'muy buen estado',
      price: { amount: 20, currency: 'EUR' }
    },
    true
  ),
  es(
    'sin manchas',
    'denied and admitted faults',
    'Blusa',
    'Sin manchas. Falta un botón.',
    {
      kind: 'shirt',
      faults: ['Falta un botón'],
      mending: ['replace-button']
    },
    true
  ),
  es('del hombro al bajo', 'landmarks with al', 'Vestido', 'Del hombro al bajo 102 cm', {
    kind: 'dress',
    measures: [m('bodyLength', '102 cm', 'cm length')]
  }),
  es(
    'por encima de la rodilla',
    'a position is no length',
    'Falda',
    'Queda 5 cm por encima de la rodilla.',
    {
      kind: 'skirt',
      leftAside: [aside('detail', '5 cm', 'cm')]
    },
    true
  ),
  es(
    'bolso',
    'a bag is no garment',
    'Bolso de piel',
    'Ancho 30 cm, alto 20 cm.',
    {
      kind: null,
      issues: [{ code: 'reading.no-garment' }],
      structure: 'leather',
      leftAside: [aside('detail', '30 cm', 'cm'), aside('detail', '20 cm', 'cm')]
    },
    true
  ),
  es('forro de poliéster', 'de qué es el forro: no la tela', 'Chaqueta de lana', 'Forro de poliéster. Largo total 68 cm.', {
    kind: 'jacket',
    fibres: [['wool', null]],
    made: { tailored: false, lined: true },
    measures: [m('bodyLength', '68 cm', 'cm length')]
  })
]
