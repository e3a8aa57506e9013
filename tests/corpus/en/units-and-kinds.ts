/** Units told once for a list or not at all, and kinds that are given with the text. */
import { aside, type Case, m } from '../case.ts'

export const unitsAndKinds: Case[] = [
  {
    name: 'a short sleeve in a bare list of centimetres',
    teaches: 'a bare 46 is of centimetres for every rule alike: no sleeve of 46 inches, measured from the centre back',
    listing: { title: 'Wool jumper', text: 'Chest 52\nSleeve 46\nLength 60' },
    expect: {
      kind: 'jumper',
      fibres: [['wool', null]],
      measures: [
        m('chest', '52', 'cm flat judged guessed'),
        m('sleeveLength', '46', 'cm length guessed'),
        m('bodyLength', '60', 'cm length guessed')
      ],
      issues: [{ code: 'reading.unit-judged', about: '52' }]
    }
  },
  {
    name: 'an answer about jeans that gives the pair',
    teaches: 'the kind that is given with the text tells that 33 x 30.5 is a waist and an inside leg',
    listing: { text: 'They measure 33 x 30.5', kind: 'jeans' },
    expect: {
      kind: 'jeans',
      measures: [m('waist', '33', 'in around judged guessed'), m('inseam', '30.5', 'in length guessed')],
      issues: [{ code: 'reading.unit-judged', about: '33' }]
    }
  },
  {
    name: 'an answer about a dress that gives two figures',
    teaches: 'only legs have a waist and an inside leg',
    trap: true,
    listing: { text: 'It measures 33 x 30.5', kind: 'dress' },
    expect: { kind: 'dress' }
  },
  {
    name: 'a pair under a French title that names two garments',
    teaches: 'the language of the page tells which word is the head: jeans, not the jumper behind them',
    listing: { title: 'Jean et pull', text: 'Mesure 33 x 30,5', language: 'fr' },
    expect: {
      kind: 'jeans',
      language: 'fr',
      structure: 'woven',
      traits: ['denim'],
      measures: [m('waist', '33', 'in around judged guessed'), m('inseam', '30,5', 'in length guessed', { value: 30.5 })],
      issues: [{ code: 'reading.unit-judged', about: '33' }]
    }
  },
  {
    name: 'a size that is told with the kind',
    teaches: 'on a garment that is known to have legs 32/34 is its label',
    listing: { text: '32/34, worn twice', kind: 'trousers' },
    expect: {
      kind: 'trousers',
      sizeLabels: ['W32 L34'],
      leftAside: [aside('size-label', '32'), aside('size-label', '34')]
    }
  },
  {
    name: 'a back under a heading in centimetres',
    teaches: 'the unit of the heading is that of the shoulders too: so much longer than they are wide, a back is a length',
    listing: { title: 'Wool jacket', text: 'Measurements in cm:\nShoulders: 45\nBack: 52' },
    expect: {
      kind: 'jacket',
      fibres: [['wool', null]],
      made: { tailored: false },
      measures: [m('shoulderWidth', '45', 'cm length list'), m('bodyLength', '52', 'cm length list')]
    }
  },
  {
    name: 'the same back with its unit beside it',
    teaches: 'a unit beside a figure changes no meaning',
    listing: { title: 'Wool jacket', text: 'Shoulders: 45\nBack: 52 cm' },
    expect: {
      kind: 'jacket',
      fibres: [['wool', null]],
      made: { tailored: false },
      measures: [m('shoulderWidth', '45', 'cm length list'), m('bodyLength', '52 cm', 'cm length')]
    }
  },
  {
    name: 'the same back with no unit anywhere',
    teaches: 'two bare figures of one list are in one unit, whichever it is',
    listing: { title: 'Wool jacket', text: 'Shoulders: 45\nBack: 52' },
    expect: {
      kind: 'jacket',
      fibres: [['wool', null]],
      made: { tailored: false },
      measures: [m('shoulderWidth', '45', 'cm length guessed'), m('bodyLength', '52', 'cm length guessed')],
      issues: [{ code: 'reading.unit-judged', about: '45' }]
    }
  },
  {
    name: 'a width of the back under a heading in centimetres',
    teaches: 'a bare 39 under a heading in centimetres is 39 cm across the back, not 39 inches down it',
    listing: { title: 'Wool jacket', text: 'Measurements in cm:\nShoulders: 45\nBack: 39' },
    expect: {
      kind: 'jacket',
      fibres: [['wool', null]],
      made: { tailored: false },
      measures: [m('shoulderWidth', '45', 'cm length list'), m('backWidth', '39', 'cm length list')]
    }
  },
  {
    name: 'letters under a heading in centimetres',
    teaches: 'S 18 in inches is a shoulder; 42 cm is one too, though a bare 42 would be a sleeve in inches',
    listing: { title: 'Wool jumper', text: 'All in cm\nC 52 S 42 L 64' },
    expect: {
      kind: 'jumper',
      fibres: [['wool', null]],
      measures: [
        m('chest', '52', 'cm flat judged list'),
        m('shoulderWidth', '42', 'cm length list'),
        m('bodyLength', '64', 'cm length list')
      ]
    }
  },
  {
    name: 'a unit that is of a detail alone',
    teaches: 'bare letters are not taken in the one unit of the text where no garment could have them so',
    trap: true,
    listing: { title: 'Wool jumper', text: 'Rib 6 cm deep\nC 21 S 18' },
    expect: {
      kind: 'jumper',
      fibres: [['wool', null]],
      measures: [m('chest', '21', 'in flat judged guessed'), m('shoulderWidth', '18', 'in length guessed')],
      leftAside: [aside('detail', '6 cm', 'cm')],
      issues: [{ code: 'reading.unit-judged', about: '21' }]
    }
  },
  {
    name: 'what a shirt measures as a pair',
    teaches: 'only legs have a waist and an inside leg: of a shirt it is the chest and the length, each once',
    listing: { title: 'Linen shirt', text: 'Measures 22 x 29' },
    expect: {
      kind: 'shirt',
      fibres: [['linen', null]],
      measures: [m('chest', '22', 'in flat judged guessed'), m('bodyLength', '29', 'in length guessed')],
      issues: [{ code: 'reading.unit-judged', about: '22' }]
    }
  },
  {
    name: 'what a dress measures as a pair',
    teaches: 'a pair that nothing names is of no point of a dress',
    trap: true,
    listing: { title: 'Linen dress', text: 'It measures 33 x 30' },
    expect: { kind: 'dress', fibres: [['linen', null]] }
  }
]
