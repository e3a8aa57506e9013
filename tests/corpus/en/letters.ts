/** Whole letters of sellers, invented, with all that stands in them. */
import { aside, type Case, m } from '../case.ts'

export const letters: Case[] = [
  {
    name: 'letter 1970s prairie maxi dress, blue sprig cotton',
    teaches: 'a plain letter with nothing hard in it',
    listing: {
      title: '1970s prairie maxi dress, blue sprig cotton',
      text: `Gorgeous floaty prairie dress, been hanging in my wardrobe for years and I never wear it. Label says 12 but its vintage so ignore that!! I'd say UK 8-10.

Measurements, laid flat:
Pit to pit: 17.5"
Waist: 14"
Hips: free
Shoulder to hem: 54"
Sleeve: 22"

Tiny hole near the hem at the back (see pic 5), you really don't notice it on. 100% cotton, washed at 30. £28 plus £3.49 postage. No returns sorry.`
    },
    expect: {
      kind: 'dress',
      whose: 'women',
      cut: { era: '1970s', silhouette: 'smock', dressLength: 'maxi' },
      measures: [
        m('chest', '17.5"', 'in flat'),
        m('waist', '14"', 'in flat'),
        m('bodyLength', '54"', 'in length'),
        m('sleeveLength', '22"', 'in length')
      ],
      fibres: [['cotton', 100]],
      colour: 'blue',
      mending: ['patch'],
      price: { amount: 28, currency: 'GBP' },
      sizeLabels: ['12', 'UK 8-10'],
      faults: ["Tiny hole near the hem at the back (see pic 5), you really don't notice it on"],
      leftAside: [aside('size-label', '12'), aside('size-label', '8-10', null, 1, 9)]
    }
  },
  {
    name: 'letter Vintage button fly jeans tagged 27 x 32 - PLEASE READ MEASUREMENTS',
    teaches: 'tag size, mixed fractions with curly quotes, advised waist 28 against flat 14',
    listing: {
      title: 'Vintage button fly jeans tagged 27 x 32 - PLEASE READ MEASUREMENTS',
      text: 'Super broken in 90s denim, 14.5 oz, proper heavy stuff. Tag reads 27 x 32 but somebody shortened them so go by these: waist is 14” across, rise 11 1/2”, inseam 28”, leg opening 8 ½” flat, thigh 11” flat just below the crotch. Would let them go to someone with about a 28 waist. Small paint fleck on left knee, frayed at one back pocket. $45 firm, ships in a 10 x 13 mailer. Smoke free home, one cat.'
    },
    expect: {
      kind: 'jeans',
      cut: { closing: 'fly' },
      measures: [
        m('waist', '14”', 'in flat'),
        m('frontRise', '11 1/2”', 'in length', { value: 11.5 }),
        m('inseam', '28”', 'in length'),
        m('legOpening', '8 ½”', 'in flat', { value: 8.5 }),
        m('thigh', '11”', 'in flat')
      ],
      traits: ['denim'],
      structure: 'woven',
      price: { amount: 45, currency: 'USD' },
      sizeLabels: ['W27 L32'],
      faults: ['Small paint fleck on left knee, frayed at one back pocket'],
      leftAside: [
        aside('size-label', '27'),
        aside('size-label', '32'),
        aside('model', '28', null, 2),
        aside('parcel', '10'),
        aside('parcel', '13')
      ]
    }
  },
  {
    name: 'letter Chunky aran style knit, mens M / ladies oversized',
    teaches: 'dot bullets before words, unit said once for the list, cuff flat by plausibility, neck band height is a detail',
    listing: {
      title: 'Chunky aran style knit, mens M / ladies oversized',
      text: `Lovely thick jumper knitted by somebody's gran, no label. Cream. All in inches and approximate as it's stretchy
. Pit to pit 21.5
. Length 26
. Underarm sleeve 18.5
. Cuff 3.5
. Neck band height 2

Handwash only. Feels like pure wool but can't promise. Bit of bobbling under the arms. £22 posted second class
#aran #cablecore #cottage`
    },
    expect: {
      kind: 'jumper',
      cut: { knit: 'chunky', closeness: 'oversized' },
      measures: [
        m('chest', '21.5', 'in flat list'),
        m('bodyLength', '26', 'in length list'),
        m('sleeveUnderarm', '18.5', 'in length list'),
        m('cuff', '3.5', 'in flat judged list')
      ],
      fibres: [['wool', null]],
      structure: 'knit',
      colour: 'cream',
      mending: ['de-pill'],
      price: { amount: 22, currency: 'GBP' },
      sizeLabels: ['M'],
      faults: ['Bit of bobbling under the arms'],
      leftAside: [aside('detail', '2', null, 3)]
    }
  },
  {
    name: 'letter black pvc mini skirt y2k size 8',
    teaches: 'one-letter labels, short',
    listing: {
      title: 'black pvc mini skirt y2k size 8',
      text: 'W 13.5" H 18" L 15" all flat. zip works. worn twice for halloween. £9 + post'
    },
    expect: {
      kind: 'skirt',
      whose: 'women',
      cut: { era: '2000s', dressLength: 'mini' },
      measures: [m('waist', '13.5"', 'in flat'), m('hip', '18"', 'in flat'), m('skirtLength', '15"', 'in length')],
      traits: ['vinyl'],
      colour: 'black',
      price: { amount: 9, currency: 'GBP' },
      sizeLabels: ['8']
    }
  },
  {
    name: "letter Men's Brown Herringbone Sport Coat 3 Button 42R",
    teaches: 'number before the name, allowance and lapel width beside the sleeve',
    listing: {
      title: "Men's Brown Herringbone Sport Coat 3 Button 42R",
      text: `Up for sale is my late uncle's sport coat. He took good care of his things.
21" pit to pit
18 1/4" shoulder to shoulder
25" sleeve from shoulder seam, with 1.5" to let down
30" from bottom of collar to hem
3" lapels
Two small moth nips on the right sleeve, priced accordingly. 100% wool shell. Center vent. Smells of cedar closet. Asking $60, I ship Tuesdays.`
    },
    expect: {
      kind: 'jacket',
      whose: 'men',
      cut: { layer: 'blazer', vent: 'vent' },
      measures: [
        m('chest', '21"', 'in flat'),
        m('shoulderWidth', '18 1/4"', 'in length', { value: 18.25 }),
        m('sleeveLength', '25"', 'in length'),
        m('bodyLength', '30"', 'in length')
      ],
      fibres: [['wool', 100]],
      made: { 'tailored': true, 'opens': ['hem'] },
      colour: 'brown',
      mending: ['darn', 'treat-pests', 'clean'],
      price: { amount: 60, currency: 'USD' },
      sizeLabels: ['42R'],
      faults: ['Two small moth nips on the right sleeve, priced accordingly', 'Smells of cedar closet'],
      allowances: [{ point: 'sleeveLength', mm: 38.1, place: { text: '1.5"', nth: 1, value: 1.5, unit: 'in' } }],
      leftAside: [aside('detail', '3"', 'in')]
    }
  },
  {
    name: 'letter Full length camel swing coat, wool & cashmere',
    teaches: "figures in flowing sentences, girth around stated, position figure, seller's own height",
    listing: {
      title: 'Full length camel swing coat, wool & cashmere',
      text: "I bought this in 2011 for £240 and it has honestly only been out a dozen times. It is a swingy shape, so although it measures 44 inches all the way round the bust I wear it as a 14. The sleeves are 23 inches, shoulders come to about 16 inches across the back seam to seam, and from the back of the neck to the bottom is 47 inches. I'm 5ft 6 and it finishes roughly 4 inches above my ankles. 90% wool 10% cashmere. Lining has come away at one armhole, a five minute job. £75."
    },
    expect: {
      kind: 'coat',
      cut: { layer: 'swing-coat' },
      measures: [
        m('chest', '44 inches', 'in around'),
        m('sleeveLength', '23 inches', 'in length'),
        m('shoulderWidth', '16 inches', 'in length'),
        m('bodyLength', '47 inches', 'in length')
      ],
      fibres: [
        ['wool', 90],
        ['cashmere', 10]
      ],
      colour: 'brown',
      mending: ['close-seam'],
      price: { amount: 75, currency: 'GBP' },
      faults: ['Lining has come away at one armhole, a five minute job'],
      leftAside: [aside('model', '5ft 6', 'in', 1, 66), aside('model', '4 inches', 'in', 2)]
    }
  },
  {
    name: 'letter Wide leg pull on linen trousers size 16 oatmeal',
    teaches: 'relaxed against stretched, both units, trouser hem is the leg opening',
    listing: {
      title: 'Wide leg pull on linen trousers size 16 oatmeal',
      text: "Perfect holiday trousers!! Selling cos I've lost weight. Elastic waist: relaxed 16in flat (41cm), fully stretched 22in (56cm). Hips 23.5in (60cm) flat. Front rise 13in (33cm). Inside leg 27in (69cm). Hem 12in (30cm) flat each leg. 55% linen 45% viscose. Wash at 40, will crease obvs. £14 ono"
    },
    expect: {
      kind: 'trousers',
      cut: { leg: 'wide', closing: 'elastic' },
      measures: [
        m('waist', '16in', 'in flat judged'),
        m('hip', '23.5in', 'in flat'),
        m('frontRise', '13in', 'in length'),
        m('inseam', '27in', 'in length'),
        m('legOpening', '12in', 'in flat')
      ],
      fibres: [
        ['linen', 55],
        ['viscose', 45]
      ],
      made: { 'elasticWaist': true, waistStretchedMm: 1117.6 },
      colour: 'beige',
      price: { amount: 14, currency: 'GBP' },
      sizeLabels: ['16'],
      leftAside: [aside('pulled-out', '22in', 'in')]
    }
  },
  {
    name: 'letter Plain heavyweight tee washed green - size MEDIUM',
    teaches: 'three sizes in one text, title names medium; unit after the list',
    listing: {
      title: 'Plain heavyweight tee washed green - size MEDIUM',
      text: `Had a stall, selling off leftover stock. This listing is for the medium only, others on my page.
S – chest 19, length 26
M – chest 20.5, length 27.5
L – chest 22, length 29
Inches, measured flat. 240gsm cotton jersey, printed tag in neck. £12 or 3 for £30. Brand new no faults.`
    },
    expect: {
      kind: 'knit-top',
      cut: { knit: 'tee' },
      measures: [m('chest', '20.5', 'in flat list'), m('bodyLength', '27.5', 'in length list')],
      fibres: [['cotton', null]],
      structure: 'knit',
      colour: 'green',
      condition: 'brand new',
      price: { amount: 12, currency: 'GBP' },
      sizeLabels: ['M'],
      leftAside: [aside('detail', '19'), aside('detail', '26'), aside('detail', '22'), aside('detail', '29')]
    }
  },
  {
    name: 'letter Utility boilersuit khaki sz S (comes up big)',
    teaches: 'unit and flatness said once before the list; tolerance and height in cm',
    listing: {
      title: 'Utility boilersuit khaki sz S (comes up big)',
      text: `Measured in cm with the suit lying flat on the bed so give or take 1cm
armpit to armpit 53
waist (elastic, unstretched) 39
hips 54
shoulder seam to crotch 79
inside leg 70
ankle 17
sleeve 58
My height 163cm and I roll the legs twice. Cotton twill. Pen mark on pocket. £18.50`
    },
    expect: {
      kind: 'jumpsuit',
      cut: { silhouette: 'boiler' },
      measures: [
        m('chest', '53', 'cm flat list'),
        m('waist', '39', 'cm flat list'),
        m('hip', '54', 'cm flat list'),
        m('torsoLength', '79', 'cm length list'),
        m('inseam', '70', 'cm length list'),
        m('legOpening', '17', 'cm flat list'),
        m('sleeveLength', '58', 'cm length list')
      ],
      fibres: [['cotton', null]],
      structure: 'woven',
      colour: 'khaki',
      mending: ['clean'],
      price: { amount: 18.5, currency: 'GBP' },
      sizeLabels: ['S'],
      faults: ['Pen mark on pocket'],
      leftAside: [aside('unknown', '1cm', 'cm'), aside('model', '163cm', 'cm')]
    }
  },
  {
    name: 'letter Mens double cuff formal shirt, pale pink poplin, 15½/34',
    teaches: 'around with flat in brackets, size pair in title, yarn count',
    listing: {
      title: 'Mens double cuff formal shirt, pale pink poplin, 15½/34',
      text: 'Collar measures 15.5" button to hole. Chest 46" (23" flat). Sleeve from centre back of neck 34". Back length from collar seam 31". Bottle of red wine incident in 2019 but it washed out completely. Cufflinks not included. Two-fold 100s cotton. £16, can combine post.'
    },
    expect: {
      kind: 'shirt',
      whose: 'men',
      measures: [
        m('neck', '15.5"', 'in around judged'),
        m('chest', '46"', 'in around'),
        m('sleeveFromCentreBack', '34"', 'in length'),
        m('bodyLength', '31"', 'in length')
      ],
      fibres: [['cotton', null]],
      structure: 'woven',
      colour: 'pink',
      price: { amount: 16, currency: 'GBP' }
    }
  },
  {
    name: 'letter High Rise "Dad 90" denim shorts light wash sz 29',
    teaches: "x 2 notation, cut name with a number, model's body",
    listing: {
      title: 'High Rise "Dad 90" denim shorts light wash sz 29',
      text: "these run small. waist 14.25 x 2 / hip 19 x 2 / rise 12 / inseam 4 / leg opening 11.5 x 2 (inches). Model is wearing 27, she is 5'8 with 26 waist 37 hips. raw hem, a little bleach dot on back. 15 bucks"
    },
    expect: {
      kind: 'shorts',
      cut: { rise: 'high' },
      measures: [
        m('waist', '14.25', 'in flat list'),
        m('hip', '19', 'in flat list'),
        m('frontRise', '12', 'in length list'),
        m('inseam', '4', 'in length list', { nth: 2 }),
        m('legOpening', '11.5', 'in flat list')
      ],
      traits: ['denim'],
      structure: 'woven',
      price: { amount: 15, currency: 'USD' },
      sizeLabels: ['29'],
      leftAside: [aside('model', "5'8", 'in', 1, 68), aside('model', '26'), aside('model', '37')]
    }
  },
  {
    name: 'letter Navy worsted trousers, double pleat, side adjusters (from a made to me',
    teaches: "cuffed against uncuffed, waistband height, allowance, the owner's waist, mixed fractions with a space",
    listing: {
      title: 'Navy worsted trousers, double pleat, side adjusters (from a made to measure suit)',
      text: "Waist 17 1/4in laid flat, with 1in inside to let out. Waistband itself is 1.75in tall. Front rise 12 3/4in, back rise 16in. Thigh 12 1/2in. Knee 9 3/4in. Bottoms 8 1/4in. Inside leg 30in cuffed, the turn ups are 2in deep so you'd get about 33in uncuffed. Outside leg 42 1/4in to top of waistband. Made for my 36in waist five years ago, and lunch happened. Slight shine on the seat. 11oz cloth, pure wool. £40 posted"
    },
    expect: {
      kind: 'trousers',
      cut: { pleats: 'front', turnUps: 'made' },
      measures: [
        m('waist', '17 1/4in', 'in flat', { value: 17.25 }),
        m('frontRise', '12 3/4in', 'in length', { value: 12.75 }),
        m('backRise', '16in', 'in length'),
        m('thigh', '12 1/2in', 'in flat judged', { value: 12.5 }),
        m('knee', '9 3/4in', 'in flat judged', { value: 9.75 }),
        m('legOpening', '8 1/4in', 'in flat judged', { value: 8.25 }),
        m('inseam', '30in', 'in length'),
        m('outseam', '42 1/4in', 'in length', { value: 42.25 })
      ],
      fibres: [['wool', 100]],
      colour: 'navy',
      price: { amount: 40, currency: 'GBP' },
      allowances: [{ point: 'waist', mm: 25.4, place: { text: '1in', nth: 1, value: 1, unit: 'in' } }],
      leftAside: [
        aside('detail', '1.75in', 'in'),
        aside('detail', '2in', 'in', 2),
        aside('detail', '33in', 'in'),
        aside('fits-advice', '36in', 'in')
      ]
    }
  },
  {
    name: 'letter Silk pussybow blouse, 80s, ivory, tag 12',
    teaches: 'hyphenated fractions, both units',
    listing: {
      title: 'Silk pussybow blouse, 80s, ivory, tag 12',
      text: `Chest: 20-1/2" (52cm) flat
Shoulders: 17-1/4" (44cm), padded
Sleeve: 22" (56cm)
Cuff: 4" (10cm) flat, buttoned
Length: 25-3/4" (65.5cm)
Bow ties are about 24" each. Faint yellowing on the inner collar. 100% silk, cold hand wash below 30. Post $9.20 within Aus, 26 AUD`
    },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'blouse', era: '1980s' },
      measures: [
        m('chest', '20-1/2"', 'in flat', { value: 20.5 }),
        m('shoulderWidth', '17-1/4"', 'in length', { value: 17.25 }),
        m('sleeveLength', '22"', 'in length'),
        m('cuff', '4"', 'in flat', { nth: 2 }),
        m('bodyLength', '25-3/4"', 'in length', { value: 25.75 })
      ],
      fibres: [['silk', 100]],
      traits: ['silk'],
      colour: 'cream',
      mending: ['clean'],
      price: { amount: 26, currency: 'AUD' },
      sizeLabels: ['12'],
      faults: ['Faint yellowing on the inner collar'],
      leftAside: [aside('detail', '24"', 'in')]
    }
  }
]
