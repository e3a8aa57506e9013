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
  }
]
