/** How figures and names stand beside each other. */
import { aside, type Case, m } from '../case.ts'

export const layouts: Case[] = [
  {
    name: 'a plain list with colons',
    teaches: 'name, colon, figure, unit; a bare length on trousers is the outseam',
    listing: {
      title: 'Grey wool trousers',
      text: 'Waist: 32"\nHips: 40"\nInseam: 30"\nRise: 11"\nLength: 40"\nLeg opening: 8" flat'
    },
    expect: {
      kind: 'trousers',
      fibres: [['wool', null]],
      colour: 'grey',
      measures: [
        m('waist', '32"', 'in around judged'),
        m('hip', '40"', 'in around judged'),
        m('inseam', '30"', 'in length'),
        m('frontRise', '11"', 'in length'),
        m('outseam', '40"', 'in length', { nth: 2 }),
        m('legOpening', '8"', 'in flat')
      ]
    }
  },
  {
    name: 'names and figures with nothing between',
    teaches: 'name number, all on one line without commas',
    listing: { title: 'Cotton shirt', text: 'chest 21" length 29" shoulders 18" sleeve 25"' },
    expect: {
      kind: 'shirt',
      fibres: [['cotton', null]],
      measures: [
        m('chest', '21"', 'in flat judged'),
        m('bodyLength', '29"', 'in length'),
        m('shoulderWidth', '18"', 'in length'),
        m('sleeveLength', '25"', 'in length')
      ]
    }
  },
  {
    name: 'figures before their names',
    teaches: 'number-first lists with commas',
    listing: { title: 'Tweed skirt', text: '28" waist, 38" hips, 26" long' },
    expect: {
      kind: 'skirt',
      structure: 'woven',
      measures: [m('waist', '28"', 'in around judged'), m('hip', '38"', 'in around judged'), m('skirtLength', '26"', 'in length')]
    }
  },
  {
    name: 'figures before their names without commas',
    teaches: 'a run that begins with a figure and ends with a name is number-first',
    listing: { title: 'Linen shirt', text: '22" pit to pit 30" length 19" shoulders' },
    expect: {
      kind: 'shirt',
      fibres: [['linen', null]],
      measures: [m('chest', '22"', 'in flat'), m('bodyLength', '30"', 'in length'), m('shoulderWidth', '19"', 'in length')]
    }
  },
  {
    name: 'hyphens as joints',
    teaches: 'name-number: the hyphen is not a minus',
    listing: { title: 'Black jeans', text: 'waist-31" inseam-30" rise-10" thigh-11" hem-7"' },
    expect: {
      kind: 'jeans',
      colour: 'black',
      measures: [
        m('waist', '31"', 'in around judged'),
        m('inseam', '30"', 'in length'),
        m('frontRise', '10"', 'in length'),
        m('thigh', '11"', 'in flat judged'),
        m('legOpening', '7"', 'in flat judged')
      ]
    }
  },
  {
    name: 'slashes as joints',
    teaches: 'name/number, list by slashes',
    listing: { title: 'Knitted jumper', text: 'chest/20" length/26" sleeve/24"' },
    expect: {
      kind: 'jumper',
      structure: 'knit',
      measures: [m('chest', '20"', 'in flat judged'), m('bodyLength', '26"', 'in length'), m('sleeveLength', '24"', 'in length')]
    }
  },
  {
    name: 'equals signs',
    teaches: 'name = number',
    listing: { title: 'Silk blouse', text: 'Bust = 40 in\nLength = 25 in\nSleeve = 23.5 in' },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'blouse' },
      fibres: [['silk', null]],
      traits: ['silk'],
      measures: [m('chest', '40 in', 'in around judged'), m('bodyLength', '25 in', 'in length'), m('sleeveLength', '23.5 in', 'in length')]
    }
  },
  {
    name: 'bullets that look like minus signs',
    teaches: 'a hyphen at the head of a line is a bullet',
    listing: { title: 'Chinos', text: '- 33" waist\n- 41" hips\n- 31" inseam\n- 12" rise' },
    expect: {
      kind: 'trousers',
      measures: [
        m('waist', '33"', 'in around judged'),
        m('hip', '41"', 'in around judged'),
        m('inseam', '31"', 'in length'),
        m('frontRise', '12"', 'in length')
      ]
    }
  },
  {
    name: 'bullets that look like decimal points',
    teaches: 'a dot at the head of a line is a bullet',
    listing: { title: 'Wool coat', text: '.42" chest\n.38" length\n·17" shoulders' },
    expect: {
      kind: 'coat',
      fibres: [['wool', null]],
      measures: [m('chest', '42"', 'in around judged'), m('bodyLength', '38"', 'in length'), m('shoulderWidth', '17"', 'in length')]
    }
  },
  {
    name: 'mixed fractions in three hands',
    teaches: '30 1/2, 30-1/2 and 30½ are one number',
    listing: { title: 'Jeans', text: 'Waist 30 1/2"\nInseam 30-1/2"\nRise 10½"\nLeg opening 7 ¾"' },
    expect: {
      kind: 'jeans',
      measures: [
        m('waist', '30 1/2"', 'in around judged', { value: 30.5 }),
        m('inseam', '30-1/2"', 'in length', { value: 30.5 }),
        m('frontRise', '10½"', 'in length', { value: 10.5 }),
        m('legOpening', '7 ¾"', 'in flat judged', { value: 7.75 })
      ]
    }
  },
  {
    name: 'curly quotes and double primes',
    teaches: 'every mark that stands for inches',
    listing: { title: 'Cotton dress', text: 'Bust: 36”\nWaist: 28″\nHips: 38“\nLength: 44’’' },
    expect: {
      kind: 'dress',
      fibres: [['cotton', null]],
      measures: [
        m('chest', '36”', 'in around judged'),
        m('waist', '28″', 'in around judged'),
        m('hip', '38“', 'in around judged'),
        m('bodyLength', '44’’', 'in length')
      ]
    }
  },
  {
    name: 'one unit for a whole list',
    teaches: 'a heading gives the unit of bare numbers below it',
    listing: { title: 'Linen trousers', text: 'Measurements in cm:\nWaist 82\nHips 104\nInseam 76\nRise 29,5' },
    expect: {
      kind: 'trousers',
      fibres: [['linen', null]],
      measures: [
        m('waist', '82', 'cm around judged list'),
        m('hip', '104', 'cm around judged list'),
        m('inseam', '76', 'cm length list'),
        m('frontRise', '29,5', 'cm length list', { value: 29.5 })
      ]
    }
  },
  {
    name: 'the unit only in a closing note',
    teaches: 'a note after the list gives unit and basis',
    listing: {
      title: 'Flannel shirt',
      text: 'Pit to pit 22\nLength 30\nSleeve 25\nWaist 21\nAll measurements are in inches and taken laying flat.'
    },
    expect: {
      kind: 'shirt',
      structure: 'woven',
      measures: [
        m('chest', '22', 'in flat list'),
        m('bodyLength', '30', 'in length list'),
        m('sleeveLength', '25', 'in length list'),
        m('waist', '21', 'in flat list')
      ]
    }
  },
  {
    name: 'units only on some',
    teaches: 'a bare number takes the unit of its neighbours',
    listing: { title: 'Jeans', text: 'Waist 31 inches, inseam 30, rise 10, leg opening 8 inches' },
    expect: {
      kind: 'jeans',
      measures: [
        m('waist', '31 inches', 'in around judged'),
        m('inseam', '30', 'in length list'),
        m('frontRise', '10', 'in length list'),
        m('legOpening', '8 inches', 'in flat judged')
      ]
    }
  },
  {
    name: 'both inches and centimetres',
    teaches: 'the same figure in two units is one measure',
    listing: { title: 'Wool skirt', text: 'Waist: 28" / 71 cm\nHips: 38 in (96.5 cm)\nLength: 66cm/26"' },
    expect: {
      kind: 'skirt',
      fibres: [['wool', null]],
      measures: [m('waist', '28"', 'in around judged'), m('hip', '38 in', 'in around judged'), m('skirtLength', '66cm', 'cm length')]
    }
  },
  {
    name: 'one-letter shorthand',
    teaches: 'W, H, R, I, L and LO with colons are measurements',
    listing: { title: 'Vintage corduroy trousers', text: 'W: 16" H: 21" R: 12" I: 30" L: 41" LO: 9"' },
    expect: {
      kind: 'trousers',
      traits: ['pile'],
      structure: 'woven',
      measures: [
        m('waist', '16"', 'in flat judged'),
        m('hip', '21"', 'in flat judged'),
        m('frontRise', '12"', 'in length'),
        m('inseam', '30"', 'in length'),
        m('outseam', '41"', 'in length'),
        m('legOpening', '9"', 'in flat judged')
      ]
    }
  },
  {
    name: 'joint labels with as many figures',
    teaches: 'bust/waist/hips 36/28/38 are three measures',
    listing: { title: 'Crepe dress', text: 'Bust/waist/hips: 36/28/38 inches. Length 42 inches.' },
    expect: {
      kind: 'dress',
      measures: [
        m('chest', '36', 'in around judged list'),
        m('waist', '28', 'in around judged list'),
        m('hip', '38 inches', 'in around judged'),
        m('bodyLength', '42 inches', 'in length')
      ]
    }
  },
  {
    name: 'a joint label with one figure',
    teaches: 'bust/waist 40" states both',
    listing: { title: 'Shift dress', text: 'Bust/waist: 40"\nLength: 36"' },
    expect: {
      kind: 'dress',
      cut: { silhouette: 'shift' },
      measures: [m('chest', '40"', 'in around judged'), m('waist', '40"', 'in around judged'), m('bodyLength', '36"', 'in length')]
    }
  },
  {
    name: 'figures in the middle of sentences',
    teaches: 'prepositions bind a figure to the name after it',
    listing: {
      title: 'Blazer',
      text: 'The blazer measures 21 inches pit to pit and is 29 inches long, with a 25 inch sleeve. It is 18" across the shoulders.'
    },
    expect: {
      kind: 'jacket',
      cut: { layer: 'blazer' },
      made: { tailored: true },
      measures: [
        m('chest', '21 inches', 'in flat'),
        m('bodyLength', '29 inches', 'in length'),
        m('sleeveLength', '25 inch', 'in length'),
        m('shoulderWidth', '18"', 'in length')
      ]
    }
  },
  {
    name: 'names on one line, figures on the next',
    teaches: 'a name alone on its line takes the figure alone on the next',
    listing: { title: 'Jeans', text: 'Waist\n32 in\nInseam\n30 in\nRise\n11 in' },
    expect: {
      kind: 'jeans',
      measures: [m('waist', '32 in', 'in around judged'), m('inseam', '30 in', 'in length'), m('frontRise', '11 in', 'in length')]
    }
  },
  {
    name: 'labels with their ends in brackets',
    teaches: 'a bracket after the name refines it, it is no second name',
    listing: {
      title: 'Cotton shirt',
      text: 'Length (shoulder to hem): 28"\nChest (armpit to armpit): 20"\nSleeve (shoulder to cuff): 24"'
    },
    expect: {
      kind: 'shirt',
      fibres: [['cotton', null]],
      measures: [m('bodyLength', '28"', 'in length'), m('chest', '20"', 'in flat'), m('sleeveLength', '24"', 'in length')]
    }
  },
  {
    name: 'from one landmark to another',
    teaches: 'two landmarks and "to" name the point between them',
    listing: {
      title: 'Wool jumper',
      text: 'Collar to hem 26", nape to cuff 32", underarm to cuff 18", shoulder seam to shoulder seam 17"'
    },
    expect: {
      kind: 'jumper',
      fibres: [['wool', null]],
      measures: [
        m('bodyLength', '26"', 'in length'),
        m('sleeveFromCentreBack', '32"', 'in length'),
        m('sleeveUnderarm', '18"', 'in length'),
        m('shoulderWidth', '17"', 'in length')
      ]
    }
  },
  {
    name: 'a range',
    teaches: 'a range keeps both ends and reads in the middle',
    listing: { title: 'Skirt', text: 'Waist 28-30"\nHips 38 to 40 inches\nLength 24"' },
    expect: {
      kind: 'skirt',
      measures: [
        m('waist', '28-30"', 'in around judged', { value: 29, low: 28, high: 30 }),
        m('hip', '38 to 40 inches', 'in around judged', { value: 39, low: 38, high: 40 }),
        m('skirtLength', '24"', 'in length')
      ]
    }
  },
  {
    name: 'capital letters and bold alphabets',
    teaches: 'mathematical letters are letters, and places still hold',
    listing: { title: 'SHIRT', text: '𝗖𝗵𝗲𝘀𝘁: 21”\nLENGTH — 29”' },
    expect: {
      kind: 'shirt',
      measures: [m('chest', '21”', 'in flat judged'), m('bodyLength', '29”', 'in length')]
    }
  },
  {
    name: 'front and back rise',
    teaches: 'a rise with front and back',
    listing: { title: 'Trousers', text: 'Front rise 11", back rise 15", waist 16" flat' },
    expect: {
      kind: 'trousers',
      measures: [m('frontRise', '11"', 'in length'), m('backRise', '15"', 'in length'), m('waist', '16"', 'in flat')]
    }
  },
  {
    name: 'figures glued to unit and name',
    teaches: '21in, 54cm, 30inch; abbreviations of the trade',
    listing: { title: 'T-shirt', text: 'P2P 21in Length 28inch' },
    expect: {
      kind: 'knit-top',
      cut: { knit: 'tee' },
      measures: [m('chest', '21in', 'in flat'), m('bodyLength', '28inch', 'in length')]
    }
  },
  {
    name: 'cuff and hem of a trouser leg',
    teaches: 'cuff, hem and bottoms on trousers are the leg opening',
    listing: { title: 'Jeans', text: 'Waist 30", cuff 14" around' },
    expect: {
      kind: 'jeans',
      measures: [m('waist', '30"', 'in around judged'), m('legOpening', '14"', 'in around')]
    }
  },
  {
    name: 'inner sleeve',
    teaches: 'an inner or under sleeve is the underarm sleeve; waist length is nape to waist',
    listing: { title: 'Dress', text: 'Inner sleeve 17", waist length 15.5", bust 36"' },
    expect: {
      kind: 'dress',
      measures: [m('sleeveUnderarm', '17"', 'in length'), m('napeToWaist', '15.5"', 'in length'), m('chest', '36"', 'in around judged')]
    }
  },
  {
    name: 'hem of a skirt and of a top',
    teaches: 'the bottom edge is sweep on a skirt',
    listing: { title: 'Full skirt', text: 'Waist 27" around. Hem 90" around. Length 28".' },
    expect: {
      kind: 'skirt',
      cut: { silhouette: 'gathered' },
      made: { skirtShape: 'flared' },
      measures: [m('waist', '27"', 'in around'), m('sweep', '90"', 'in around'), m('skirtLength', '28"', 'in length')]
    }
  },
  {
    name: 'a suit in two parts',
    teaches: 'each figure carries the garment it is of',
    listing: {
      title: 'Two piece suit',
      text: 'Jacket:\nChest 42"\nSleeve 25"\nLength 30"\n\nTrousers:\nWaist 34"\nInseam 31"\nLength 41"'
    },
    expect: {
      kind: 'jacket',
      cut: { layer: 'suit' },
      made: { tailored: true },
      measures: [
        m('chest', '42"', 'in around judged', { of: 'jacket' }),
        m('sleeveLength', '25"', 'in length', { of: 'jacket' }),
        m('bodyLength', '30"', 'in length', { of: 'jacket' }),
        m('waist', '34"', 'in around judged', { of: 'trousers' }),
        m('inseam', '31"', 'in length', { of: 'trousers' }),
        m('outseam', '41"', 'in length', { of: 'trousers' })
      ],
      issues: [{ code: 'reading.several-garments' }]
    }
  },
  {
    name: 'a size table',
    teaches: 'a header of names and a row a size: each figure carries its size',
    listing: { title: 'Cotton dress', text: 'Size | Bust | Waist | Length (cm)\nS | 86 | 68 | 98\nM | 92 | 74 | 99' },
    expect: {
      kind: 'dress',
      fibres: [['cotton', null]],
      sizeLabels: ['S', 'M'],
      measures: [
        m('chest', '86', 'cm around judged list', { size: 'S' }),
        m('waist', '68', 'cm around judged list', { size: 'S' }),
        m('bodyLength', '98', 'cm length list', { size: 'S' }),
        m('chest', '92', 'cm around judged list', { size: 'M' }),
        m('waist', '74', 'cm around judged list', { size: 'M' }),
        m('bodyLength', '99', 'cm length list', { size: 'M' })
      ],
      issues: [{ code: 'reading.several-sizes' }]
    }
  },
  {
    name: 'waist by inseam, measured',
    teaches: 'a pair after "measures" is waist and inside leg, a pair after "tagged" is a label',
    listing: { title: 'Jeans', text: 'Tagged 33x32. Measures 32" x 30".' },
    expect: {
      kind: 'jeans',
      sizeLabels: ['W33 L32'],
      measures: [m('waist', '32"', 'in around judged'), m('inseam', '30"', 'in length')],
      leftAside: [aside('size-label', '33'), aside('size-label', '32')]
    }
  }
]
