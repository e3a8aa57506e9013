/** Words that tell the cut, and the same words where they tell something else. */
import { type Case, m } from '../case.ts'

export const wordsOfTheCut: Case[] = [
  {
    name: 'a skirt that is a dress’s own',
    teaches: 'a skirt named behind a dress is a part of it, however often it is named',
    listing: {
      text: 'Strapless evening dress with a full A line skirt. Bust across 46cm, waist across 39cm. Hips not measured as the skirt is full.'
    },
    expect: {
      kind: 'dress',
      made: { skirtShape: 'flared' },
      cut: { silhouette: 'strapless' },
      measures: [m('chest', '46cm', 'cm flat'), m('waist', '39cm', 'cm flat')]
    }
  },
  {
    name: 'double check your size',
    teaches: 'a buyer is to look twice: no figure is to be doubled for that',
    listing: { title: 'White shirt', text: 'Collar 15.5". Pit to pit 54cm. Double check your size please.' },
    expect: {
      kind: 'shirt',
      colour: 'white',
      measures: [m('neck', '15.5"', 'in around judged'), m('chest', '54cm', 'cm flat')]
    }
  },
  {
    name: 'lambswool that has felted',
    teaches: 'what has become of a knit stands over what it was: felt is not fine, gives nothing, and no blocking brings it back',
    listing: { title: 'Lambswool jumper', text: 'Felted in the wash. Pit to pit 46cm.' },
    expect: {
      kind: 'jumper',
      fibres: [['wool', null]],
      cut: { knit: 'felted' },
      faults: ['Felted in the wash'],
      measures: [m('chest', '46cm', 'cm flat')]
    }
  },
  {
    name: 'seven-eighths and an age',
    teaches: 'seven-eighths is a length where a leg is named with it',
    listing: { title: '7/8 leggings', text: 'Black.' },
    expect: { kind: 'trousers', colour: 'black', cut: { legLength: 'seven-eighths', leg: 'legging' } }
  },
  {
    name: 'relaxed, of a cut',
    teaches: 'relaxed behind a figure tells how it was measured; before the garment it is a cut',
    listing: { title: 'Relaxed linen shirt', text: 'Pit to pit 58cm' },
    expect: { kind: 'shirt', fibres: [['linen', null]], cut: { closeness: 'relaxed' }, measures: [m('chest', '58cm', 'cm flat')] }
  }
]
