/** How it is made, what is left to let out, what it costs; figures that only a title tells. */
import { aside, type Case, m } from '../case.ts'

export const making: Case[] = [
  {
    name: 'half lined',
    teaches: 'lined in part tells not that opening it means opening a lining: lined is told only of all of it',
    listing: { title: 'Wool blazer', text: 'Half lined, with sham cuff buttons. Chest 20" flat.' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'blazer' },
      fibres: [['wool', null]],
      made: { tailored: true, workingCuffButtons: false },
      measures: [m('chest', '20"', 'in flat')]
    }
  },
  {
    name: 'buttons that do not open',
    teaches: 'cuff buttons told in a sentence',
    listing: { title: 'Linen blazer', text: "Fully lined. The buttons on the cuffs don't open." },
    expect: {
      kind: 'jacket',
      cut: { layer: 'blazer' },
      fibres: [['linen', null]],
      made: { tailored: true, lined: true, workingCuffButtons: false }
    }
  },
  {
    name: 'left in the back seam',
    teaches: 'cloth in the back seam is its outlet, in words too',
    listing: { title: 'Wool trousers', text: 'Waist 16" flat. There is an inch and a half left in the centre back.' },
    expect: {
      kind: 'trousers',
      fibres: [['wool', null]],
      made: { outletMm: 38.1 },
      measures: [m('waist', '16"', 'in flat')],
      allowances: [{ point: 'waist', mm: 38.1, place: { text: 'an inch and a half', nth: 1, value: 1.5, unit: 'in' } }]
    }
  },
  {
    name: 'to let out at the back seam',
    teaches: 'what can be let out in all is twice what the seam holds less 3/8 in that stays: 2 × (28.575 − 9.525) = 38.1 mm',
    listing: { title: 'Wool trousers', text: 'Waist 16" flat. The centre back seam has 1.5" to let out.' },
    expect: {
      kind: 'trousers',
      fibres: [['wool', null]],
      made: { backSeam: true, outletMm: (1.5 * 25.4) / 2 + 9.525 },
      measures: [m('waist', '16"', 'in flat')],
      allowances: [{ point: 'waist', mm: 38.1, place: { text: '1.5"', nth: 1, value: 1.5, unit: 'in' } }]
    }
  },
  {
    name: 'to let out at the waist',
    teaches: 'the girth named behind is let out, whatever is usual for the kind; it is not the back seam',
    listing: { title: 'Wool dress', text: 'Bust 36" around. 2in to let out at the waist seam.' },
    expect: {
      kind: 'dress',
      cut: { waistSeam: 'natural' },
      fibres: [['wool', null]],
      measures: [m('chest', '36"', 'in around')],
      allowances: [{ point: 'waist', mm: 50.8, place: { text: '2in', nth: 1, value: 2, unit: 'in' } }]
    }
  },
  {
    name: 'hem left to let down',
    teaches: 'an allowance in the hem is an allowance and the least depth of the hem',
    listing: { title: 'Wool skirt', text: 'Length 26". 1.5in of hem left to let down.' },
    expect: {
      kind: 'skirt',
      fibres: [['wool', null]],
      made: { hemDepthMm: 38.1 },
      measures: [m('skirtLength', '26"', 'in length')],
      allowances: [{ point: 'skirtLength', mm: 38.1, place: { text: '1.5in', nth: 1, value: 1.5, unit: 'in' } }]
    }
  },
  {
    name: 'hem that has cloth',
    teaches: 'the hem named before its figure, the letting down behind it',
    listing: { title: 'Wool skirt', text: 'Hem has 2" to let down. Length 26".' },
    expect: {
      kind: 'skirt',
      fibres: [['wool', null]],
      made: { hemDepthMm: 50.8 },
      measures: [m('skirtLength', '26"', 'in length')],
      allowances: [{ point: 'skirtLength', mm: 50.8, place: { text: '2"', nth: 1, value: 2, unit: 'in' } }]
    }
  },
  {
    name: 'a sleeve turned under',
    teaches: 'what is turned under in a sleeve is no depth of the hem',
    listing: { title: 'Wool coat', text: 'Sleeve: 26" with 2" more turned under' },
    expect: {
      kind: 'coat',
      fibres: [['wool', null]],
      measures: [m('sleeveLength', '26"', 'in length')],
      allowances: [{ point: 'sleeveLength', mm: 50.8, place: { text: '2"', nth: 1, value: 2, unit: 'in' } }]
    }
  },
  {
    name: 'a hole in a pocket lining',
    teaches: 'the bag of a pocket is lined anew, cloth is patched',
    trap: true,
    listing: { title: 'Wool coat', text: 'Small hole in the left pocket lining.' },
    expect: {
      kind: 'coat',
      fibres: [['wool', null]],
      mending: ['re-line-pocket'],
      faults: ['Small hole in the left pocket lining']
    }
  },
  {
    name: 'a hole beside a pocket',
    teaches: 'near a pocket is the cloth',
    trap: true,
    listing: { title: 'Wool coat', text: 'Small hole near the left pocket.' },
    expect: { kind: 'coat', fibres: [['wool', null]], mending: ['patch'], faults: ['Small hole near the left pocket'] }
  },
  {
    name: 'postage in the price',
    teaches: '“posted” says that the postage is in it',
    trap: true,
    listing: { title: 'Linen shirt', text: '£45 posted' },
    expect: { kind: 'shirt', fibres: [['linen', null]], price: { amount: 45, currency: 'GBP' } }
  },
  {
    name: 'postage beside the price',
    teaches: 'what stands behind a plus is on top',
    trap: true,
    listing: { title: 'Linen shirt', text: '£12 + £3.50 p&p' },
    expect: { kind: 'shirt', fibres: [['linen', null]], price: { amount: 12, currency: 'GBP' } }
  },
  {
    name: 'postage before the price',
    teaches: 'an amount behind a word of postage is no price, nor is a plus behind one an allowance',
    trap: true,
    listing: { title: 'Linen shirt', text: 'Postage £4. £16 + 3.40 tracked. A tie with it for £5 more.' },
    expect: { kind: 'shirt', fibres: [['linen', null]], price: { amount: 16, currency: 'GBP' } }
  },
  {
    name: 'a pair of figures on jeans',
    teaches: 'an unnamed 24 x 29 on jeans is a size',
    trap: true,
    listing: { title: 'Blue jeans', text: 'Lovely fade. 24 x 29' },
    expect: {
      kind: 'jeans',
      colour: 'blue',
      sizeLabels: ['W24 L29'],
      mending: ['dye'],
      faults: ['Lovely fade'],
      leftAside: [aside('size-label', '24'), aside('size-label', '29')]
    }
  },
  {
    name: 'a pair of figures on a top',
    teaches: 'an unnamed 22.5 x 29 on a shirt is across the chest and how long (common practice, no source)',
    listing: { title: 'Cotton tee', text: 'Tag XL. 22.5x29 inches' },
    expect: {
      kind: 'knit-top',
      cut: { knit: 'tee' },
      fibres: [['cotton', null]],
      sizeLabels: ['XL'],
      measures: [m('chest', '22.5', 'in flat judged list'), m('bodyLength', '29 inches', 'in length')]
    }
  },
  {
    name: 'figures that only the title tells',
    teaches: 'a title that measures is read behind the text',
    listing: { title: 'Wool jumper pit to pit 20" length 25"', text: 'Lovely and warm.' },
    expect: {
      kind: 'jumper',
      fibres: [['wool', null]],
      measures: [m('chest', '20"', 'in flat'), m('bodyLength', '25"', 'in length')],
      added: '\n\nWool jumper pit to pit 20" length 25"'
    }
  },
  {
    name: 'sizes that a title tells',
    teaches: 'a waist and a leg in the title of jeans are its size',
    trap: true,
    listing: { title: 'Mens jeans 32" waist 34" leg', text: 'Lovely and soft.' },
    expect: { kind: 'jeans', whose: 'men' }
  },
  {
    name: 'what is sold in another listing',
    teaches: 'a heading with “other listing” keeps its line from this garment',
    trap: true,
    listing: { title: 'Suit jacket', text: 'JACKET: chest 23" ptp\nTROUSERS (other listing!): waist 38", inseam 31"' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'suit' },
      made: { tailored: true },
      measures: [m('chest', '23"', 'in flat')],
      leftAside: [aside('detail', '38"', 'in'), aside('detail', '31"', 'in')]
    }
  },
  {
    name: 'a chatty letter with nothing to read',
    teaches: 'years, ages, days and pictures are no figures of a garment',
    trap: true,
    listing: {
      title: 'Cotton dress',
      text: 'Bought in 1998 for a wedding, worn 2 times, see 6 photos. I can post within 3 days. Ask me for measurements, I am home after 5.'
    },
    expect: { kind: 'dress', fibres: [['cotton', null]] }
  },
  {
    name: 'zips up the back',
    teaches: 'an opening told with a verb, and one told by what it is made of: each is a phrase of its own',
    listing: { title: 'Wool dress', text: 'Zips up the back. Waist 28" around.' },
    expect: {
      kind: 'dress',
      cut: { closing: 'back-zip' },
      fibres: [['wool', null]],
      made: { opens: ['waist'] },
      measures: [m('waist', '28"', 'in around')]
    }
  }
]
