/** What looks like a measurement and is none. */
import { aside, type Case, cutFor, m } from '../case.ts'

export const traps: Case[] = [
  {
    name: 'an empty text',
    teaches: 'nothing is nothing, never 0',
    trap: true,
    listing: { text: '' },
    expect: { kind: null }
  },
  {
    name: 'a number alone',
    teaches: '12 without a name is no measure, and says so',
    trap: true,
    listing: { text: '12' },
    expect: {
      kind: null,
      leftAside: [aside('unknown', '12')],
      issues: [{ code: 'reading.no-name', about: '12' }]
    }
  },
  {
    name: 'divided by zero',
    teaches: '1/0 is told, not thrown',
    trap: true,
    listing: { title: 'Trousers', text: 'Waist 1/0"' },
    expect: { kind: 'trousers', issues: [{ code: 'reading.divided-by-zero', about: '1/0' }] }
  },
  {
    name: 'two dots in a number',
    teaches: '3..5 could be 3.5 or 3 to 5: it is not guessed',
    trap: true,
    listing: { title: 'Trousers', text: 'Inseam 3..5 cm' },
    expect: { kind: 'trousers', issues: [{ code: 'reading.unclear-number', about: '3..5' }] }
  },
  {
    name: 'a negative length',
    teaches: 'after a colon a minus is a minus',
    trap: true,
    listing: { title: 'Trousers', text: 'Waist: -4 cm' },
    expect: { kind: 'trousers', issues: [{ code: 'reading.negative', about: '-4 cm' }] }
  },
  {
    name: 'a nine-metre inseam',
    teaches: 'too long for anything worn',
    trap: true,
    listing: { title: 'Trousers', text: 'Inseam 9 m' },
    expect: {
      kind: 'trousers',
      leftAside: [aside('unknown', '9 m', 'cm', 1, 900)],
      issues: [{ code: 'reading.too-large', about: '9 m' }]
    }
  },
  {
    name: 'an inseam too short',
    teaches: 'too short for the point in either unit',
    trap: true,
    listing: { title: 'Trousers', text: 'Outseam: 2 inches' },
    expect: {
      kind: 'trousers',
      leftAside: [aside('unknown', '2 inches', 'in')],
      issues: [{ code: 'reading.too-small', about: '2 inches' }]
    }
  },
  {
    name: 'contradictory figures',
    teaches: 'the same point twice with different figures: the first is kept and both are shown',
    trap: true,
    listing: { title: 'Trousers', text: 'Waist 32" around, inseam 30". Also: inseam 27".' },
    expect: {
      kind: 'trousers',
      measures: [m('waist', '32"', 'in around'), m('inseam', '30"', 'in length')],
      leftAside: [aside('unknown', '27"', 'in')],
      issues: [
        {
          code: 'reading.contradiction',
          about: '27"',
          readings: [
            ['inseam', 762],
            ['inseam', 685.8]
          ]
        }
      ]
    }
  },
  {
    name: 'the same figure twice',
    teaches: 'repeating is no contradiction',
    listing: { title: 'Trousers with 30" inseam', text: 'Inseam 30". Waist 16" flat. Inseam: 76 cm' },
    expect: { kind: 'trousers', measures: [m('inseam', '30"', 'in length'), m('waist', '16"', 'in flat')] }
  },
  {
    name: 'both units plausible',
    teaches: 'a bare 46 hem of a coat could be inches around or centimetres flat: no measure, both readings',
    trap: true,
    listing: { title: 'Coat', text: 'hem 46' },
    expect: {
      kind: 'coat',
      leftAside: [aside('unknown', '46')],
      issues: [
        {
          code: 'reading.no-unit',
          about: '46',
          readings: [
            ['hem', 1168.4],
            ['hem', 920]
          ]
        }
      ]
    }
  },
  {
    name: 'bare numbers that can only be inches',
    teaches: 'what is plausible for the kind gives the unit, and says so',
    listing: { title: 'Jeans', text: 'Waist 16, rise 11, inseam 30, leg opening 8' },
    expect: {
      kind: 'jeans',
      measures: [
        m('waist', '16', 'in flat judged guessed'),
        m('frontRise', '11', 'in length guessed'),
        m('inseam', '30', 'in length guessed'),
        m('legOpening', '8', 'in flat judged guessed')
      ],
      issues: [{ code: 'reading.unit-judged', about: '16' }]
    }
  },
  {
    name: 'bare numbers that can only be centimetres',
    teaches: 'plausibility of the whole list',
    listing: { title: 'Shirt', text: 'Chest 54, length 74, sleeve 62' },
    expect: {
      kind: 'shirt',
      measures: [
        m('chest', '54', 'cm flat judged guessed'),
        m('bodyLength', '74', 'cm length guessed'),
        m('sleeveLength', '62', 'cm length guessed')
      ],
      issues: [{ code: 'reading.unit-judged', about: '54' }]
    }
  },
  {
    name: 'waist and length on the label',
    teaches: 'W32 L34 is a size',
    trap: true,
    listing: { title: 'Blue denim jeans W32 L34', text: 'Size W32 L34. Lovely jeans.' },
    expect: {
      kind: 'jeans',
      structure: 'woven',
      traits: ['denim'],
      colour: 'blue',
      sizeLabels: ['W32 L34'],
      leftAside: [aside('size-label', '32'), aside('size-label', '34')]
    }
  },
  {
    name: 'a pair of numbers as size',
    teaches: '26 x 30 and 32/34 are sizes on trousers',
    trap: true,
    listing: { title: 'Mens chinos 34/32', text: 'Chinos, 34 x 32, worn twice.' },
    expect: {
      kind: 'trousers',
      whose: 'men',
      sizeLabels: ['W34 L32'],
      leftAside: [aside('size-label', '34'), aside('size-label', '32')]
    }
  },
  {
    name: 'country sizes',
    teaches: 'UK 12, EU 40, US 8 are sizes',
    trap: true,
    listing: { title: 'Dress', text: 'Label says UK 12 / EU 40 / US 8 but see photos.' },
    expect: {
      kind: 'dress',
      whose: 'women',
      sizeLabels: ['UK 12', 'EU 40', 'US 8'],
      leftAside: [aside('size-label', '12'), aside('size-label', '40'), aside('size-label', '8')]
    }
  },
  {
    name: 'letter sizes',
    teaches: 'size M and size 14 stand beside real figures',
    listing: { title: 'Shirt', text: 'Size M, fits a bit small. Chest 20" flat. Marked size 14.' },
    expect: {
      kind: 'shirt',
      sizeLabels: ['M', '14'],
      measures: [m('chest', '20"', 'in flat')],
      leftAside: [aside('size-label', '14')]
    }
  },
  {
    name: 'waist size on the label',
    teaches: '"waist size 32" is what the label says',
    trap: true,
    listing: { title: 'Jeans', text: 'Labelled waist size 32, leg 34.' },
    expect: {
      kind: 'jeans',
      sizeLabels: ['W32 L34'],
      leftAside: [aside('size-label', '32'), aside('size-label', '34')]
    }
  },
  {
    name: 'numbers in the names of cuts',
    teaches: 'a cut number with an s or after "fit" is a name',
    trap: true,
    listing: { title: 'Straight leg jeans', text: 'Classic 400s cut, mid rise, 90s style from 1994, 5 pocket, button fly.' },
    expect: { kind: 'jeans', cut: { leg: 'straight', rise: 'mid', closing: 'fly' } }
  },
  {
    name: 'names of rises and lengths',
    teaches: 'high rise, knee length, hip length and 3/4 sleeves are names of cuts',
    trap: true,
    listing: { title: 'Knee length skirt', text: 'High rise, knee length. Worn with a hip length jacket with 3/4 sleeves in the photo.' },
    expect: { cut: { dressLength: 'knee' }, kind: 'skirt' }
  },
  {
    name: "the model's body",
    teaches: "a model's height and figures are nobody's garment",
    trap: true,
    listing: { title: 'Dress', text: `Model is 5'8" with a 34" bust, 26" waist and 37" hips.` },
    expect: {
      kind: 'dress',
      leftAside: [
        aside('model', `5'8"`, 'in', 1, 68),
        aside('model', '34"', 'in'),
        aside('model', '26"', 'in'),
        aside('model', '37"', 'in')
      ]
    }
  },
  {
    name: "the model's body, then the garment",
    teaches: "the model's figures end where the garment's measurements begin",
    listing: {
      title: 'Dress',
      text: 'My model is 170 cm tall. Bust 86 cm, waist 64 cm.\n\nMeasurements:\nBust 92 cm\nWaist 70 cm\nLength 105 cm'
    },
    expect: {
      kind: 'dress',
      measures: [
        m('chest', '92 cm', 'cm around judged'),
        m('waist', '70 cm', 'cm around judged', { nth: 2 }),
        m('bodyLength', '105 cm', 'cm length')
      ],
      leftAside: [aside('model', '170 cm', 'cm'), aside('model', '86 cm', 'cm'), aside('model', '64 cm', 'cm')]
    }
  },
  {
    name: 'fits advice',
    teaches: '"best for up to a 38 bust" is advice',
    trap: true,
    listing: { title: 'Cardigan', text: 'Best for up to a 38" bust. Would fit a 28-30 inch waist.' },
    expect: {
      kind: 'jumper',
      structure: 'knit',
      leftAside: [aside('fits-advice', '38"', 'in'), aside('fits-advice', '28-30 inch', 'in', 1, 29)]
    }
  },
  {
    name: 'fits advice beside measurements',
    teaches: 'the advice ends where measuring begins',
    listing: { title: 'Skirt', text: 'Should fit a 27" waist, measures 14" across the waist and 20" across the hips, 25" long.' },
    expect: {
      kind: 'skirt',
      measures: [m('waist', '14"', 'in flat'), m('hip', '20"', 'in flat'), m('skirtLength', '25"', 'in length')],
      leftAside: [aside('fits-advice', '27"', 'in')]
    }
  },
  {
    name: "the seller's own body",
    teaches: "I'm 5ft 6 with a 28 inch waist is the seller",
    trap: true,
    listing: { title: 'Jeans', text: "I'm 5ft 6 with a 28 inch waist and they fit me well." },
    expect: { kind: 'jeans', leftAside: [aside('model', '5ft 6', 'in', 1, 66), aside('model', '28 inch', 'in')] }
  },
  {
    name: 'a heel and a bag',
    teaches: 'heels and bags have measurements that are no garment',
    trap: true,
    listing: { title: 'Leather handbag', text: 'Handbag 12" wide, 10" tall, strap drop 9". Fits a 13 inch laptop. Shown with 3" heels.' },
    expect: {
      kind: null,
      issues: [{ code: 'reading.no-garment' }],
      structure: 'leather',
      leftAside: [
        aside('detail', '12"', 'in'),
        aside('detail', '10"', 'in'),
        aside('detail', '9"', 'in'),
        aside('detail', '13 inch', 'in'),
        aside('detail', '3"', 'in')
      ]
    }
  },
  {
    name: 'positions',
    teaches: 'a figure below, above or from something is a place, not a size',
    listing: {
      title: 'Trousers',
      text: 'Thigh (1" below crotch): 12" flat. Small mark 7 inches below the crotch. Knee 9" flat, taken 13" from the crotch.'
    },
    expect: {
      kind: 'trousers',
      mending: ['clean'],
      faults: ['Small mark 7 inches below the crotch'],
      measures: [m('thigh', '12"', 'in flat'), m('knee', '9"', 'in flat')],
      leftAside: [aside('detail', '1"', 'in'), aside('detail', '7 inches', 'in'), aside('detail', '13"', 'in')]
    }
  },
  {
    name: 'two in the back',
    teaches: '"2 in the back" is a count, not two inches',
    trap: true,
    listing: { title: 'Trousers', text: 'Two front pockets and 2 in the back. 4 belt loops.' },
    expect: { kind: 'trousers' }
  },
  {
    name: 'a parcel',
    teaches: 'the size and weight of a parcel',
    trap: true,
    listing: { title: 'Jumper', text: 'Sent in a parcel of 30 x 20 x 10 cm, weighs 800 g. Postage 4.50.' },
    expect: {
      kind: 'jumper',
      leftAside: [aside('parcel', '30'), aside('parcel', '20'), aside('parcel', '10 cm', 'cm')]
    }
  },
  {
    name: 'years, prices, telephone numbers',
    teaches: 'none of these is a length',
    trap: true,
    listing: { title: 'Coat', text: 'From 1972. Cost £250 new, asking £45. Ring 0555 010 203 after 6pm. Item no. 38.' },
    expect: { kind: 'coat', price: { amount: 45, currency: 'GBP' } }
  },
  {
    name: 'washing degrees and percentages',
    teaches: '30 degrees and 100 % are no lengths',
    trap: true,
    listing: { title: 'Shirt', text: '100% cotton, wash at 30°, iron at 110 degrees, 20% off, 3 for 2.' },
    expect: { kind: 'shirt', fibres: [['cotton', 100]] }
  },
  {
    name: 'fill power and weights',
    teaches: '650 fill and 14 oz are no lengths',
    trap: true,
    listing: { title: 'Down jacket', text: '650 fill down. Shell 40 denier nylon. Denim collar 14 oz.' },
    expect: {
      kind: 'coat',
      cut: { layer: 'puffer' },
      fibres: [['polyamide', null]]
    }
  },
  {
    name: 'details',
    teaches: 'lapel, collar height, waistband height and belt are details',
    listing: {
      title: 'Blazer',
      text: 'Chest 20" flat. Lapel width 3.5". Collar height 2". Back vent 8". Waist 19" flat.'
    },
    expect: {
      kind: 'jacket',
      cut: { layer: 'blazer', vent: 'vent' },
      made: { tailored: true, opens: ['hem'] },
      measures: [m('chest', '20"', 'in flat'), m('waist', '19"', 'in flat')],
      leftAside: [aside('detail', '3.5"', 'in'), aside('detail', '2"', 'in'), aside('detail', '8"', 'in')]
    }
  },
  {
    name: 'waistband and pocket',
    teaches: 'the height of a band is no waist, the depth of a pocket no length',
    listing: { title: 'Trousers', text: 'Waistband height 1.5 inches, pocket depth 10 inches, belt 36 inches. Inseam 30 inches.' },
    expect: {
      kind: 'trousers',
      measures: [m('inseam', '30 inches', 'in length')],
      leftAside: [aside('detail', '1.5 inches', 'in'), aside('detail', '10 inches', 'in'), aside('detail', '36 inches', 'in')]
    }
  },
  {
    name: 'hem to let down',
    teaches: 'an allowance is kept apart from the length; what is let down from a hem is turned up in it',
    listing: { title: 'Trousers', text: 'Inseam 29", with 2" hem to let down. Waist 16" flat with 1.5" to let out.' },
    expect: {
      kind: 'trousers',
      made: { hemDepthMm: 50.8 },
      measures: [m('inseam', '29"', 'in length'), m('waist', '16"', 'in flat')],
      allowances: [
        { point: 'inseam', mm: 50.8, place: { text: '2"', nth: 1, value: 2, unit: 'in' } },
        { point: 'waist', mm: 38.1, place: { text: '1.5"', nth: 1, value: 1.5, unit: 'in' } }
      ]
    }
  },
  {
    name: 'cuffed and uncuffed',
    teaches: 'the leg let down is the garment, the rolled figure is left aside',
    listing: { title: 'Jeans', text: 'Inseam 27" cuffed, 30" uncuffed. Waist 31" around.' },
    expect: {
      kind: 'jeans',
      measures: [m('inseam', '30"', 'in length'), m('waist', '31"', 'in around')],
      leftAside: [aside('detail', '27"', 'in')]
    }
  },
  {
    name: 'a fault with its size',
    teaches: 'the length of a tear is no length of the garment',
    trap: true,
    listing: { title: 'Silk dress', text: 'There is a 2 inch tear at the waist. No other holes or stains.' },
    expect: {
      kind: 'dress',
      fibres: [['silk', null]],
      traits: ['silk'],
      mending: ['patch'],
      faults: ['There is a 2 inch tear at the waist'],
      leftAside: [aside('detail', '2 inch', 'in')]
    }
  },
  {
    name: 'side seam from the armpit',
    teaches: 'pit to hem is no length of ours: left aside, not taken for one',
    listing: { title: 'Shirt', text: 'Pit to pit 21", pit to hem 17", length 28"' },
    expect: {
      kind: 'shirt',
      measures: [m('chest', '21"', 'in flat'), m('bodyLength', '28"', 'in length')],
      leftAside: [aside('detail', '17"', 'in')]
    }
  },
  {
    name: 'a skirt above the knee',
    teaches: 'where a hem falls is no length',
    trap: true,
    listing: { title: 'Skirt', text: 'The hem falls 4 inches above the knee on me.' },
    expect: { cut: { dressLength: 'above-knee' }, kind: 'skirt', leftAside: [aside('detail', '4 inches', 'in')] }
  },
  {
    name: 'free hips',
    teaches: 'a point without a figure takes no neighbour figure',
    listing: { title: 'Dress', text: 'Bust: 36"\nWaist: free\nHips: open\nLength: 40"' },
    expect: {
      kind: 'dress',
      measures: [m('chest', '36"', 'in around judged'), m('bodyLength', '40"', 'in length')]
    }
  },
  {
    name: 'markup in the title',
    teaches: 'tags and scripts are text that is skipped, and told',
    trap: true,
    listing: { title: '<script>alert("waist 30")</script><b>Wool skirt</b>', text: 'A skirt.' },
    expect: { kind: 'skirt', fibres: [['wool', null]], issues: [{ code: 'reading.markup' }] }
  },
  {
    name: 'entities of a saved page',
    teaches: '&quot; is an inch mark and the place still holds',
    listing: { title: 'Skirt', text: 'Waist: 28&quot; &amp; hips: 38&#34;' },
    expect: {
      kind: 'skirt',
      measures: [
        { ...m('waist', '28&quot;', 'in around judged'), place: { text: '28&quot;', nth: 1, value: 28, unit: 'in' } },
        { ...m('hip', '38&#34;', 'in around judged'), place: { text: '38&#34;', nth: 1, value: 38, unit: 'in' } }
      ]
    }
  },
  {
    name: 'a delivery time and a count',
    teaches: 'days, pieces and pairs are no lengths',
    trap: true,
    listing: { title: 'Jeans', text: 'Posted within 2-3 days. 2 pairs available, 14 day returns, 100 sold.' },
    expect: { kind: 'jeans' }
  },
  {
    name: 'shoe and hat sizes',
    teaches: 'other things for sale have sizes too',
    trap: true,
    listing: { text: 'Suede ankle boots, size 39, heel 7 cm, shaft height 12 cm.' },
    expect: {
      kind: null,
      issues: [{ code: 'reading.no-garment' }],
      structure: 'leather',
      traits: ['suede'],
      sizeLabels: ['39'],
      leftAside: [aside('size-label', '39'), aside('detail', '7 cm', 'cm'), aside('detail', '12 cm', 'cm')]
    }
  },
  {
    name: 'prose without figures',
    teaches: 'words of measurement without figures are no measurements',
    trap: true,
    listing: {
      title: 'Wool trousers',
      text: 'Nipped in at the waist, generous through the hips, long in the leg. Please ask for measurements!'
    },
    expect: { kind: 'trousers', fibres: [['wool', null]] }
  },
  {
    name: 'a fabric remnant',
    teaches: 'cloth by the metre is no garment',
    trap: true,
    listing: { title: 'Fabric remnant', text: 'Fabric piece, 150 cm wide, 2 m long.' },
    expect: {
      kind: null,
      issues: [{ code: 'reading.no-garment' }],
      leftAside: [aside('detail', '150 cm', 'cm'), aside('detail', '2 m', 'cm', 1, 200)]
    }
  },
  {
    name: 'body measurements a size is for',
    teaches: '"to fit chest 40" is the wearer',
    trap: true,
    listing: { title: 'Waistcoat', text: 'To fit chest 40", waist 34".' },
    expect: {
      kind: 'waistcoat',
      sizeChart: [cutFor(null, 'bustGirth', '40"', 'in', [40, 40]), cutFor(null, 'waistGirth', '34"', 'in', [34, 34])],
      leftAside: [aside('fits-advice', '40"', 'in'), aside('fits-advice', '34"', 'in')]
    }
  },
  {
    name: 'units that disagree',
    teaches: '30" / 86 cm cannot both be true: the first is kept and told',
    trap: true,
    listing: { title: 'Skirt', text: 'Waist 30" (86 cm) around' },
    expect: {
      kind: 'skirt',
      measures: [m('waist', '30"', 'in around')],
      leftAside: [aside('unknown', '86 cm', 'cm')],
      issues: [
        {
          code: 'reading.units-disagree',
          about: '30"',
          readings: [
            ['waist', 762],
            ['waist', 860]
          ]
        }
      ]
    }
  },
  {
    name: 'a quoted size',
    teaches: 'a number in quotation marks is no number of inches',
    trap: true,
    listing: { title: 'Jeans', text: 'Tag reads "32". Made in Portugal.' },
    expect: { kind: 'jeans', sizeLabels: ['32'], leftAside: [aside('size-label', '32')] }
  },
  {
    name: 'a date and a score',
    teaches: 'dates, scores and times are no lengths',
    trap: true,
    listing: { title: 'Shirt', text: 'Listed 12/05/2023 at 10:30, condition 9/10, rated 4.9 by 120 buyers.' },
    expect: { kind: 'shirt' }
  }
]
