/** Readings that went wrong once. */
import { aside, type Case, cutFor, m } from '../case.ts'

export const lessons: Case[] = [
  {
    name: 'cloth to spare in brackets',
    teaches: '(+2") after a figure is an allowance of it',
    listing: { title: 'Suit trousers', text: 'Waist 17.5" (+2"), Inseam 30" (+2.5"), Rise 11.5"' },
    expect: {
      kind: 'trousers',
      measures: [m('waist', '17.5"', 'in flat judged'), m('inseam', '30"', 'in length'), m('frontRise', '11.5"', 'in length')],
      allowances: [
        { point: 'waist', mm: 50.8, place: { text: '2"', nth: 1, value: 2, unit: 'in' } },
        { point: 'inseam', mm: 63.5, place: { text: '2.5"', nth: 1, value: 2.5, unit: 'in' } }
      ]
    }
  },
  {
    name: 'a line a size',
    teaches: 'sizes that head their lines part the figures',
    listing: { title: 'Dress', text: 'Size S: Bust 84cm Length 90cm\nSize M: Bust 88cm Length 91cm' },
    expect: {
      kind: 'dress',
      sizeLabels: ['S', 'M'],
      measures: [
        m('chest', '84cm', 'cm around judged', { size: 'S' }),
        m('bodyLength', '90cm', 'cm length', { size: 'S' }),
        m('chest', '88cm', 'cm around judged', { size: 'M' }),
        m('bodyLength', '91cm', 'cm length', { size: 'M' })
      ],
      issues: [{ code: 'reading.several-sizes' }]
    }
  },
  {
    name: 'a remark in brackets about the wearer',
    teaches: 'inside brackets a remark ends with them',
    listing: { title: 'Jeans', text: `Inseam 27.5" (ankle length on me, I'm 5'7"), rise 11", opening 6.5" across` },
    expect: {
      kind: 'jeans',
      cut: { legLength: 'ankle' },
      measures: [m('inseam', '27.5"', 'in length'), m('frontRise', '11"', 'in length'), m('legOpening', '6.5"', 'in flat')],
      leftAside: [aside('model', `5'7"`, 'in', 1, 67)]
    }
  },
  {
    name: 'a glued waist size beside measurements',
    teaches: 'W34 is the label, the rest is number-first',
    listing: { title: 'Shorts', text: 'W34 - 17in flat waist - 9in inseam - 12in leg opening - 11.5in rise' },
    expect: {
      kind: 'shorts',
      sizeLabels: ['W34'],
      measures: [
        m('waist', '17in', 'in flat'),
        m('inseam', '9in', 'in length'),
        m('legOpening', '12in', 'in flat judged'),
        m('frontRise', '11.5in', 'in length')
      ],
      leftAside: [aside('size-label', '34')]
    }
  },
  {
    name: 'figures before their names in brackets',
    teaches: '22" x 27" (chest x length) is read in order',
    listing: { title: 'Hoodie', text: '22" x 27" (ptp x length)' },
    expect: { kind: 'jumper', cut: { knit: 'sweatshirt' }, measures: [m('chest', '22"', 'in flat'), m('bodyLength', '27"', 'in length')] }
  },
  {
    name: 'long and wide behind their figures',
    teaches: 'an adjective does not take the name behind it along',
    listing: {
      title: 'Cropped jacket',
      text: `The sleeves are 23" long and the shoulders are 17" wide. The bust is 40" and it's 20" from top to bottom.`
    },
    expect: {
      kind: 'jacket',
      cut: { topLength: 'cropped' },
      made: { tailored: false },
      measures: [
        m('sleeveLength', '23"', 'in length'),
        m('shoulderWidth', '17"', 'in length'),
        m('chest', '40"', 'in around judged'),
        m('bodyLength', '20"', 'in length')
      ]
    }
  },
  {
    name: 'front and back of one length',
    teaches: 'the second figure of a length stays with it, the next name waits for its own',
    listing: {
      title: 'Blouse',
      text: 'Length is 25 inches at the front and 27 inches at the back, sleeves are 18 inches from the shoulder.'
    },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'blouse' },
      measures: [m('bodyLength', '25 inches', 'in length'), m('sleeveLength', '18 inches', 'in length')],
      leftAside: [aside('detail', '27 inches', 'in')]
    }
  },
  {
    name: 'a quoted label',
    teaches: 'a sign that closes a quotation is no inch mark',
    listing: { title: 'Coat', text: '"Size 12" Chest 40 Sleeve 24 all in inches' },
    expect: {
      kind: 'coat',
      sizeLabels: ['12'],
      measures: [m('chest', '40', 'in around judged list'), m('sleeveLength', '24', 'in length list')],
      leftAside: [aside('size-label', '12')]
    }
  },
  {
    name: 'the waist of a corset',
    teaches:
      'other girths of the same garment bear on flat and around; a corset is a boned top: its cut says what is wanted of it, and its bones what is done',
    listing: { title: 'Corset', text: 'Waist 24", underbust 28", bust 32"' },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'corset', boning: 'boned' },
      measures: [m('waist', '24"', 'in around judged'), m('underbust', '28"', 'in around judged'), m('chest', '32"', 'in around judged')]
    }
  },
  {
    name: 'stretches to, in brackets',
    teaches: 'words that lead on to a figure are of that figure',
    listing: { title: 'Dress', text: 'Bust 17.5in flat unstretched (will stretch to 21in), length 41in' },
    expect: {
      kind: 'dress',
      measures: [m('chest', '17.5in', 'in flat'), m('bodyLength', '41in', 'in length')],
      leftAside: [aside('detail', '21in', 'in')]
    }
  },
  {
    name: 'the width of something unknown',
    teaches: 'a word we don’t know before figure and “wide” keeps its width',
    trap: true,
    listing: { title: 'Pinafore dress', text: 'The bib is 9" wide.' },
    expect: { kind: 'dress', cut: { silhouette: 'sun' }, leftAside: [aside('detail', '9"', 'in')] }
  },
  {
    name: 'actual figures after label figures',
    teaches: 'a bare figure gives way to a measured one with its unit',
    listing: { title: 'Jeans', text: 'Waist 32. Actual waist 33 inches, actual inseam 31.5 inches' },
    expect: { kind: 'jeans', measures: [m('waist', '33 inches', 'in around judged'), m('inseam', '31.5 inches', 'in length')] }
  },
  {
    name: 'trousers as wide as flares',
    teaches: 'a width is across: 11 inches are half of the leg opening',
    listing: { title: 'Cords', text: 'waist: 29-30 inches\nbottom width: 11"' },
    expect: {
      kind: 'trousers',
      traits: ['pile'],
      structure: 'woven',
      measures: [m('waist', '29-30 inches', 'in around judged', { value: 29.5, low: 29, high: 30 }), m('legOpening', '11"', 'in flat')]
    }
  },
  {
    name: 'taken flat and doubled',
    teaches: 'figures that were doubled already are around',
    listing: { title: 'Skirt', text: 'Measurements taken flat and doubled where needed: waist 26", hips 36", length 27"' },
    expect: {
      kind: 'skirt',
      measures: [m('waist', '26"', 'in around'), m('hip', '36"', 'in around'), m('skirtLength', '27"', 'in length')]
    }
  },
  {
    name: 'long sleeves of a dress shirt',
    teaches: 'longer than any arm from the shoulder: taken from the centre back',
    listing: { title: 'Dress shirt', text: '15.5" collar / 34" sleeve / 46" chest' },
    expect: {
      kind: 'shirt',
      measures: [
        m('neck', '15.5"', 'in around judged'),
        m('sleeveFromCentreBack', '34"', 'in length'),
        m('chest', '46"', 'in around judged')
      ]
    }
  },
  {
    name: 'children by age range',
    teaches: 'age 8-9 years is one size',
    listing: { title: 'Kids jumper', text: 'Age 8-9 years. Chest 34cm flat, length 45cm' },
    expect: {
      kind: 'jumper',
      use: 'child',
      sizeLabels: ['age 8-9'],
      measures: [m('chest', '34cm', 'cm flat'), m('bodyLength', '45cm', 'cm length')],
      leftAside: [aside('size-label', '8')]
    }
  },
  {
    name: 'a jacket, and trousers given with it',
    teaches: 'a heading with a remark in brackets is a heading: what follows is of the other garment',
    listing: {
      title: 'Wool suit jacket',
      text: 'JACKET\npit to pit 21", shoulders 17.5", sleeve 23.5"\nTROUSERS (free, well worn)\nwaist 16.5", inside leg 28.5"'
    },
    expect: {
      kind: 'jacket',
      cut: { layer: 'suit' },
      fibres: [['wool', null]],
      made: { tailored: true },
      issues: [{ code: 'reading.several-garments' }],
      measures: [
        m('chest', '21"', 'in flat', { of: 'jacket' }),
        m('shoulderWidth', '17.5"', 'in length', { of: 'jacket' }),
        m('sleeveLength', '23.5"', 'in length', { of: 'jacket' }),
        m('waist', '16.5"', 'in flat judged', { of: 'trousers' }),
        m('inseam', '28.5"', 'in length', { of: 'trousers' })
      ]
    }
  },
  {
    name: 'a price paid and a price that is accepted',
    teaches: 'what was paid is no price; what is accepted is',
    listing: { title: 'Evening dress', text: 'Bust 38" around, waist 31" around. Paid £165, accept £40' },
    expect: {
      kind: 'dress',
      measures: [m('chest', '38"', 'in around'), m('waist', '31"', 'in around')],
      price: { amount: 40, currency: 'GBP' }
    }
  },
  {
    name: 'postage told behind the price',
    teaches: 'a postage with a figure of its own leaves the price before it alone',
    listing: { title: 'Wool coat', text: 'Pit to pit 21". £70 postage £8' },
    expect: { kind: 'coat', fibres: [['wool', null]], measures: [m('chest', '21"', 'in flat')], price: { amount: 70, currency: 'GBP' } }
  },
  {
    name: 'sleeves from the edge of the neck',
    teaches: 'from the neck’s edge to the cuff is neither a sleeve nor a sleeve from the centre back',
    listing: { title: 'Batwing jumper', text: 'length 55 cm from shoulder, neck edge to cuff 68 cm, hem 40 cm flat' },
    expect: {
      kind: 'jumper',
      cut: { shoulder: 'dolman' },
      measures: [m('bodyLength', '55 cm', 'cm length'), m('hem', '40 cm', 'cm flat')],
      leftAside: [aside('detail', '68 cm', 'cm')]
    }
  },
  {
    name: 'a suit in short words',
    teaches: 'JKT and SKT head their figures',
    listing: { title: 'Skirt suit', text: 'JKT - B 38" / W 30" / L 20"\nSKT - W 28" / H 39" / L 24"' },
    expect: {
      kind: 'jacket',
      made: { tailored: true },
      measures: [
        m('chest', '38"', 'in around judged', { of: 'jacket' }),
        m('waist', '30"', 'in around judged', { of: 'jacket' }),
        m('bodyLength', '20"', 'in length', { of: 'jacket' }),
        m('waist', '28"', 'in around judged', { of: 'skirt' }),
        m('hip', '39"', 'in around judged', { of: 'skirt' }),
        m('skirtLength', '24"', 'in length', { of: 'skirt' })
      ],
      issues: [{ code: 'reading.several-garments' }]
    }
  },
  {
    name: 'long, and the sleeves',
    teaches: '“28" long and the sleeves” is a length, then sleeves: what has its figure before it is no part of the next name',
    listing: { title: 'Aran cardigan', text: 'Pit to pit 24". It\'s 28" long down the back and the sleeves are 19".' },
    expect: {
      kind: 'jumper',
      cut: { knit: 'chunky' },
      structure: 'knit',
      measures: [m('chest', '24"', 'in flat'), m('bodyLength', '28"', 'in length'), m('sleeveLength', '19"', 'in length')]
    }
  },
  {
    name: 'back, right behind a figure',
    teaches: 'a bare back in a list without commas is a length where no back is so wide',
    listing: { title: 'Blazer', text: 'Chest: 22" Sleeve: 25" (2" can be let down) Back: 30"' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'blazer' },
      made: { tailored: true },
      measures: [m('chest', '22"', 'in flat judged'), m('sleeveLength', '25"', 'in length'), m('bodyLength', '30"', 'in length')],
      allowances: [{ point: 'sleeveLength', mm: 50.8, place: { text: '2"', nth: 2, value: 2, unit: 'in' } }]
    }
  },
  {
    name: 'forty short is no decade',
    teaches: '40S of a jacket is a size; 40s are years',
    listing: { title: 'Wool suit jacket 40S', text: 'Pit to pit 21". A 40s look.' },
    expect: {
      kind: 'jacket',
      whose: 'men',
      cut: { layer: 'suit', era: '1940s-50s' },
      made: { tailored: true },
      fibres: [['wool', null]],
      sizeLabels: ['40S'],
      measures: [m('chest', '21"', 'in flat')]
    }
  },
  {
    name: 'a lone L behind a chest',
    teaches: 'one letter right behind the figure of a top is a length',
    listing: { title: 'Flannel shirt', text: 'P2P: 21in. / L: 28in.' },
    expect: { kind: 'shirt', structure: 'woven', measures: [m('chest', '21in', 'in flat'), m('bodyLength', '28in', 'in length')] }
  },
  {
    name: 'a lone L that is a size',
    teaches: 'an L with no figure behind it is no name',
    listing: { title: 'Flannel shirt', text: 'P2P: 21in. Size L, fits 40 in chest' },
    expect: {
      kind: 'shirt',
      structure: 'woven',
      sizeLabels: ['L'],
      measures: [m('chest', '21in', 'in flat')],
      sizeChart: [cutFor('L', 'bustGirth', '40 in', 'in', [40, 40])],
      leftAside: [aside('fits-advice', '40 in', 'in')]
    }
  },
  {
    name: 'a pair that is measured to the half',
    teaches: 'behind “measures” a pair on legs is a waist and an inside leg',
    listing: { title: 'Jeans', text: '28x30 on tag. Measures 27x29.5' },
    expect: {
      kind: 'jeans',
      sizeLabels: ['W28 L30'],
      measures: [m('waist', '27', 'in around judged guessed', { nth: 1 }), m('inseam', '29.5', 'in length guessed')],
      leftAside: [aside('size-label', '28'), aside('size-label', '30')],
      issues: [{ code: 'reading.unit-judged', about: '27' }]
    }
  },
  {
    name: 'a start that belongs to the next name',
    teaches: 'behind a comma “length (from the collar)” says nothing of the sleeve before it',
    listing: { title: 'Overcoat', text: 'Chest (pit to pit) 23.5", sleeve 25.75", length (from bottom of collar) 42"' },
    expect: {
      kind: 'coat',
      cut: { layer: 'overcoat' },
      measures: [m('chest', '23.5"', 'in flat'), m('sleeveLength', '25.75"', 'in length'), m('bodyLength', '42"', 'in length')]
    }
  },
  {
    name: 'a lone L behind a waist',
    teaches: 'beside a waist an L is a length too, and on long trousers one so short is the inside leg',
    listing: { title: 'Chinos', text: 'waist 34in, L 32in, leg opening 7in' },
    expect: {
      kind: 'trousers',
      measures: [m('waist', '34in', 'in around judged'), m('inseam', '32in', 'in length'), m('legOpening', '7in', 'in flat judged')]
    }
  },
  {
    name: 'an L too long for an inside leg',
    teaches: 'a longer L on trousers is the outside leg',
    listing: { title: 'Trousers', text: 'W 16" H 20" L 41"' },
    expect: {
      kind: 'trousers',
      measures: [m('waist', '16"', 'in flat judged'), m('hip', '20"', 'in flat judged'), m('outseam', '41"', 'in length')]
    }
  },
  {
    name: 'the waist of a size in full',
    teaches: '“Waist 34 L 32” without a unit on jeans is their size',
    listing: { title: 'Jeans', text: 'Waist 34 L 32' },
    expect: { kind: 'jeans', sizeLabels: ['W34 L32'], leftAside: [aside('size-label', '34'), aside('size-label', '32')] }
  }
]
