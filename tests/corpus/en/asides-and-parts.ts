/** Asides between a name and its figure, parts of an inch in words, sides told beside a name, and names that name nothing. */
import { aside, type Case, m } from '../case.ts'

export const asidesAndParts: Case[] = [
  {
    name: 'semicolons for colons',
    teaches: 'right behind a name that opens its line a semicolon is a colon',
    listing: { title: 'Hopsack blazer', text: 'Chest ; 21.5\nWaist ; 20\nSleeves ; 24.5' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'blazer' },
      made: { tailored: true },
      measures: [
        m('chest', '21.5', 'in flat judged guessed'),
        m('waist', '20', 'in flat judged guessed'),
        m('sleeveLength', '24.5', 'in length guessed')
      ],
      issues: [{ code: 'reading.unit-judged', about: '21.5' }]
    }
  },
  {
    name: 'an aside before the verb',
    teaches: 'what stands between two commas behind a name parts it from nothing',
    listing: {
      title: 'Wrap dress',
      text: 'The waist will do anything from 28 to 34 inches, and the bust, tied the normal way, is 37 round.'
    },
    expect: {
      kind: 'dress',
      cut: { silhouette: 'wrap' },
      measures: [m('waist', '28 to 34 inches', 'in around judged', { value: 31, low: 28, high: 34 }), m('chest', '37', 'in around list')]
    }
  },
  {
    name: 'a range that goes out to',
    teaches: '“from 36 out to 42” is a range',
    listing: { title: 'Evening waistcoat', text: 'A strap takes the waist from 36" out to 42".' },
    expect: { kind: 'waistcoat', measures: [m('waist', '36" out to 42"', 'in around judged', { value: 39, low: 36, high: 42 })] }
  },
  {
    name: 'a quarter in words',
    teaches: '“and a quarter”, “and three quarters” are parts of an inch',
    listing: { title: 'Slim tee', text: '19.5" wide at the pits, 27 and a quarter inches long. Shoulders 16 and three quarters inches' },
    expect: {
      kind: 'knit-top',
      cut: { closeness: 'slim', knit: 'tee' },
      measures: [
        m('chest', '19.5"', 'in flat'),
        m('bodyLength', '27 and a quarter inches', 'in length', { value: 27.25 }),
        m('shoulderWidth', '16 and three quarters inches', 'in length', { value: 16.75 })
      ]
    }
  },
  {
    name: 'a number in two words',
    teaches: 'twenty-two inches, and a half',
    listing: {
      title: 'Flannel shirt',
      text: 'It is twenty-two inches pit to pit and thirty and a half inches from the collar seam to the hem.'
    },
    expect: {
      kind: 'shirt',
      structure: 'woven',
      measures: [
        m('chest', 'twenty-two inches', 'in flat', { value: 22 }),
        m('bodyLength', 'thirty and a half inches', 'in length', { value: 30.5 })
      ]
    }
  },
  {
    name: 'a side in the column of the name',
    teaches: '“Rise (back)” before a bar is the back rise',
    listing: { title: 'Pleated trousers', text: '| Rise (front) | 12.5" |\n| Rise (back) | 17" |' },
    expect: {
      kind: 'trousers',
      cut: { pleats: 'front' },
      measures: [m('frontRise', '12.5"', 'in length'), m('backRise', '17"', 'in length')]
    }
  },
  {
    name: 'a collar that is buttoned',
    teaches: '“round when buttoned” behind another name is no chest',
    listing: { title: 'White blouse', text: 'The bust is 20 inches when flat. The collar stands up and is 14.5" round when buttoned.' },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'blouse' },
      colour: 'white',
      measures: [m('chest', '20 inches', 'in flat')],
      leftAside: [aside('unknown', '14.5"', 'in')]
    }
  },
  {
    name: 'a place in brackets',
    teaches: '(1" below the armhole) says where the chest was measured, and names no armhole',
    listing: { title: 'Linen shirt', text: 'Chest across (1" below armhole): 22.25"\nSleeve: 24"' },
    expect: {
      kind: 'shirt',
      fibres: [['linen', null]],
      measures: [m('chest', '22.25"', 'in flat'), m('sleeveLength', '24"', 'in length')],
      leftAside: [aside('detail', '1"', 'in')]
    }
  },
  {
    name: 'without a hood',
    teaches: '“w/o hood” names nothing',
    listing: { title: 'Body warmer', text: 'Length at back, w/o hood: 64cm' },
    expect: { kind: 'waistcoat', cut: { layer: 'casual-waistcoat' }, measures: [m('bodyLength', '64cm', 'cm length')] }
  },
  {
    name: 'elastic under the bust',
    teaches: 'elastic in brackets behind a name is how that edge is made, and no waist',
    listing: { title: 'Dirndlbluse', text: 'Brustumfang 92 cm, Unterbrust (Gummizug, ungedehnt) 74 cm' },
    expect: {
      kind: 'shirt',
      language: 'de',
      made: { elasticWaist: true },
      measures: [m('chest', '92 cm', 'cm around judged'), m('underbust', '74 cm', 'cm around judged')]
    }
  },
  {
    name: 'from where to where',
    teaches: 'what a bracket behind a name tells is the way of the tape',
    listing: { title: 'Strickpullover', text: 'Ärmel innen (Achsel bis Bündchenende) 48 cm' },
    expect: { kind: 'jumper', language: 'de', structure: 'knit', measures: [m('sleeveUnderarm', '48 cm', 'cm length')] }
  },
  {
    name: 'a length and its band',
    teaches: '“Länge mit Bund” is a length',
    listing: { title: 'Faltenrock', text: 'Taillenumfang 76 cm, Länge mit Bund 63 cm' },
    expect: {
      kind: 'skirt',
      cut: { silhouette: 'pleated' },
      language: 'de',
      traits: ['pleated'],
      made: { skirtShape: 'pleated' },
      measures: [m('waist', '76 cm', 'cm around judged'), m('skirtLength', '63 cm', 'cm length')]
    }
  },
  {
    name: 'what the seller does',
    teaches: '“I’m giving you” tells of nobody’s body',
    listing: { title: 'Tee', text: 'It shrank so I’m giving you what it is after washing - 19.5" pit to pit, 27" long.' },
    expect: { kind: 'knit-top', cut: { knit: 'tee' }, measures: [m('chest', '19.5"', 'in flat'), m('bodyLength', '27"', 'in length')] }
  },
  {
    name: 'a size that is guessed, then measures',
    teaches: '“I would say a 10-12:” is the advice, and what follows the colon is measured',
    listing: { title: 'Blouse', text: 'I would say a 10-12: the bust is 20 inches when flat' },
    expect: { kind: 'shirt', cut: { silhouette: 'blouse' }, measures: [m('chest', '20 inches', 'in flat')] }
  },
  {
    name: 'a jacket and its waistcoat',
    teaches: 'a waistcoat under its own heading is another garment',
    listing: { title: 'Suit in grey flannel', text: 'JACKET\nChest: 42"\nSleeve: 24"\n\nWAISTCOAT\nChest: 40"\nLength: 22"' },
    expect: {
      kind: 'jacket',
      colour: 'grey',
      structure: 'woven',
      made: { tailored: true },
      measures: [
        m('chest', '42"', 'in around judged', { of: 'jacket' }),
        m('sleeveLength', '24"', 'in length', { of: 'jacket' }),
        m('chest', '40"', 'in around judged', { of: 'waistcoat' }),
        m('bodyLength', '22"', 'in length', { of: 'waistcoat' })
      ],
      issues: [{ code: 'reading.several-garments' }]
    }
  },
  {
    name: 'faded as it is meant to be',
    teaches: 'before a colour or a garment “faded” is a look, and needs no dye',
    listing: { title: 'Faded black tee', text: 'Pit to pit 20 in. Some fading at the collar.' },
    expect: {
      kind: 'knit-top',
      cut: { knit: 'tee' },
      colour: 'black',
      measures: [m('chest', '20 in', 'in flat')],
      faults: ['Some fading at the collar'],
      mending: ['dye']
    }
  },
  {
    name: 'only faded as it is meant to be',
    teaches: 'the look alone is no fault',
    listing: { title: 'Faded black tee', text: 'Pit to pit 20 in.' },
    expect: { kind: 'knit-top', cut: { knit: 'tee' }, colour: 'black', measures: [m('chest', '20 in', 'in flat')] }
  }
]
