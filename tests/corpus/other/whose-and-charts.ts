/** Whose sizes, and the bodies that sizes are cut for, in other languages. */
import { aside, type Case, cutFor, m } from '../case.ts'

export const whoseAbroad: Case[] = [
  {
    name: 'Damen, für Herren',
    teaches: 'a word joined before the garment says whose: Herrenhemd',
    listing: { title: 'Herrenhemd aus Leinen', text: 'Brustweite 58 cm flach, das Hemd ist neu.' },
    expect: { kind: 'shirt', language: 'de', whose: 'men', fibres: [['linen', null]], measures: [m('chest', '58 cm', 'cm flat')] }
  },
  {
    name: 'Kleid für Damen',
    teaches: '„für Damen“ hinter dem Kleidungsstück',
    listing: { title: 'Hose', text: 'Eine schöne Hose für Damen, Bundweite 42 cm flach.' },
    expect: { kind: 'trousers', language: 'de', whose: 'women', measures: [m('waist', '42 cm', 'cm flat')] }
  },
  {
    name: 'veste femme',
    teaches: '« femme » derrière le nom du vêtement dit pour qui il est taillé ; « ma femme » non',
    listing: { title: 'Veste femme en laine', text: 'Largeur aisselle à aisselle 50 cm, la veste est à moi.' },
    expect: {
      kind: 'jacket',
      made: { tailored: false },
      language: 'fr',
      whose: 'women',
      fibres: [['wool', null]],
      measures: [m('chest', '50 cm', 'cm flat')]
    }
  },
  {
    name: 'la veste de ma femme',
    teaches: 'à qui elle était n’est pas pour qui elle est taillée',
    trap: true,
    listing: { title: 'Veste en laine', text: 'La veste de ma femme, largeur aisselle à aisselle 50 cm.' },
    expect: {
      kind: 'jacket',
      made: { tailored: false },
      language: 'fr',
      fibres: [['wool', null]],
      measures: [m('chest', '50 cm', 'cm flat')]
    }
  },
  {
    name: 'camisa de hombre',
    teaches: '“de hombre” detrás de la prenda',
    listing: { title: 'Camisa de hombre', text: 'Ancho de axila a axila 58 cm, la camisa está nueva.' },
    expect: { kind: 'shirt', language: 'es', whose: 'men', measures: [m('chest', '58 cm', 'cm flat')] }
  },
  {
    name: 'giacca da donna',
    teaches: '“da donna” dietro il capo',
    listing: { title: 'Giacca da donna', text: 'Larghezza da ascella ad ascella 50 cm, la giacca è nuova.' },
    expect: { kind: 'jacket', made: { tailored: false }, language: 'it', whose: 'women', measures: [m('chest', '50 cm', 'cm flat')] }
  },
  {
    name: 'herenbroek',
    teaches: 'heren- voor het kledingstuk',
    listing: { title: 'Herenbroek', text: 'Taille 42 cm plat gemeten, de broek is nieuw.' },
    expect: { kind: 'trousers', language: 'nl', whose: 'men', measures: [m('waist', '42 cm', 'cm flat')] }
  },
  {
    name: 'koszula damska',
    teaches: '„damska” za nazwą ubrania',
    listing: { title: 'Koszula damska', text: 'Szerokość pod pachami 50 cm, koszula jest nowa.' },
    expect: { kind: 'shirt', language: 'pl', whose: 'women', measures: [m('chest', '50 cm', 'cm flat')] }
  },
  {
    name: 'damjacka',
    teaches: 'dam- framför plagget',
    listing: { title: 'Damjacka', text: 'Bredd från armhåla till armhåla 50 cm, jackan är ny.' },
    expect: { kind: 'jacket', made: { tailored: false }, language: 'sv', whose: 'women', measures: [m('chest', '50 cm', 'cm flat')] }
  },
  {
    name: 'eine Größentabelle',
    teaches: 'unter „Körpermaße“ steht der Mensch, nicht das Kleid',
    listing: { title: 'Kleid Größe M', text: 'Körpermaße für M: Brust 92-97 cm, Hüfte 98-103 cm.\nLänge 100 cm, das Kleid ist neu.' },
    expect: {
      kind: 'dress',
      language: 'de',
      sizeLabels: ['M'],
      measures: [m('bodyLength', '100 cm', 'cm length')],
      sizeChart: [cutFor('M', 'bustGirth', '92-97 cm', 'cm', [92, 97]), cutFor('M', 'hipGirth', '98-103 cm', 'cm', [98, 103])],
      leftAside: [aside('size-chart', '92-97 cm', 'cm', 1, 94.5), aside('size-chart', '98-103 cm', 'cm', 1, 100.5)]
    }
  },
  {
    name: 'un guide des tailles',
    teaches: 'sous « guide des tailles » chaque ligne est une taille de corps',
    listing: {
      title: 'Robe taille M',
      text: 'Guide des tailles :\nS : poitrine 84-88 cm, hanches 92-96 cm\nM : poitrine 88-92 cm, hanches 96-100 cm\n\nLongueur 100 cm, la robe est neuve.'
    },
    expect: {
      kind: 'dress',
      language: 'fr',
      sizeLabels: ['M'],
      measures: [m('bodyLength', '100 cm', 'cm length', { nth: 2 })],
      sizeChart: [
        cutFor('S', 'bustGirth', '84-88 cm', 'cm', [84, 88]),
        cutFor('S', 'hipGirth', '92-96 cm', 'cm', [92, 96]),
        cutFor('M', 'bustGirth', '88-92 cm', 'cm', [88, 92]),
        cutFor('M', 'hipGirth', '96-100 cm', 'cm', [96, 100])
      ],
      leftAside: [
        aside('size-chart', '84-88 cm', 'cm', 1, 86),
        aside('size-chart', '92-96 cm', 'cm', 1, 94),
        aside('size-chart', '88-92 cm', 'cm', 1, 90),
        aside('size-chart', '96-100 cm', 'cm', 1, 98)
      ]
    }
  }
]
