/** Portuguese, of Portugal and of Brazil. */
import { aside, type Case, type Expected, m } from '../case.ts'

const pt = (name: string, teaches: string, title: string, text: string, expect: Expected, trap?: true): Case => ({
  name: `pt: ${name}`,
  teaches,
  ...(trap ? { trap } : {}),
  listing: { title, text },
  expect: { language: 'pt', ...expect }
})

export const portuguese: Case[] = [
  pt('axila a axila', 'the Portuguese pit to pit', 'Camisola de malha', 'De axila a axila 50 cm, comprimento 64 cm, manga 60 cm', {
    kind: 'jumper',
    structure: 'knit',
    measures: [m('chest', '50 cm', 'cm flat'), m('bodyLength', '64 cm', 'cm length'), m('sleeveLength', '60 cm', 'cm length')]
  }),
  pt(
    'gancho e entrepernas',
    'words of Brazil',
    'Calça jeans',
    'Medidas com a peça deitada: cós 40cm, quadril 51cm, gancho 27cm, entrepernas 78cm, barra 17cm',
    {
      kind: 'jeans',
      traits: ['denim'],
      measures: [
        m('waist', '40cm', 'cm flat'),
        m('hip', '51cm', 'cm flat'),
        m('frontRise', '27cm', 'cm length'),
        m('inseam', '78cm', 'cm length'),
        m('legOpening', '17cm', 'cm flat')
      ]
    }
  ),
  pt('anca e entreperna', 'words of Portugal', 'Calças de ganga', 'Anca 50 cm, entreperna 79 cm, bainha 18 cm, medidas em plano', {
    kind: 'jeans',
    traits: ['denim'],
    measures: [m('hip', '50 cm', 'cm flat'), m('inseam', '79 cm', 'cm length'), m('legOpening', '18 cm', 'cm flat')]
  }),
  pt(
    'de, por',
    'what was asked before, the postage',
    'Saia preta',
    'De R$ 120 por R$ 59, frete R$ 22',
    { kind: 'skirt', colour: 'black', price: { amount: 59, currency: 'BRL' } },
    true
  ),
  pt('a price in words', 'hundreds and tens', 'Vestido', 'Vendo por cento e vinte e cinco reais', {
    kind: 'dress',
    price: { amount: 125, currency: 'BRL' }
  }),
  pt(
    'faults',
    'what there is, and what not',
    'Casaco de mulher azul marinho',
    'Tam GG. Tem um furinho na manga. Sem manchas nem borboto. Falta um botão.',
    {
      kind: 'coat',
      colour: 'navy',
      whose: 'women',
      sizeLabels: ['GG'],
      faults: ['Tem um furinho na manga', 'Falta um botão'],
      mending: ['patch', 'replace-button']
    },
    true
  ),
  pt('exterior e forro', 'the cloth is the outer one', 'Sobretudo', 'Exterior: 70% lã, 30% poliamida. Forro: 100% poliéster.', {
    kind: 'coat',
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    made: { lined: true }
  }),
  pt(
    'a modelo',
    'somebody’s height',
    'Macacão longo',
    'A modelo mede 1,72 m. Comprimento 138 cm',
    { kind: 'jumpsuit', measures: [m('bodyLength', '138 cm', 'cm length')], leftAside: [aside('model', '1,72 m', 'cm', 1, 172)] },
    true
  )
]
