/** Whole letters of sellers, invented, with all that stands in them. */
import { aside, type Case, m } from '../case.ts'

export const lateLetters: Case[] = [
  {
    name: 'any: letter Mens topcoat slim charcoal herringbone 40R',
    teaches: 'size 40R; nothing said, plausibly flat',
    listing: {
      title: 'Mens topcoat slim charcoal herringbone 40R',
      text: `Wore it to job interviews, got the job, work from home now. Ha.
Chest: 21.5 inches
Waist: 20 inches
Shoulders: 18 inches
Sleeves: 25.5 inches
Length: 38 inches
60% wool 40% polyester. Vent still basted. Loose thread at second button. $85, I'm in Denver and can meet up. I'm 5'11" 165.`
    },
    expect: {
      kind: 'coat',
      whose: 'men',
      cut: { layer: 'overcoat', closeness: 'slim', vent: 'vent' },
      measures: [
        m('chest', '21.5 inches', 'in flat judged'),
        m('waist', '20 inches', 'in flat judged'),
        m('shoulderWidth', '18 inches', 'in length'),
        m('sleeveLength', '25.5 inches', 'in length'),
        m('bodyLength', '38 inches', 'in length')
      ],
      fibres: [
        ['wool', 60],
        ['polyester', 40]
      ],
      colour: 'grey',
      price: { amount: 85, currency: 'USD' },
      sizeLabels: ['40R'],
      faults: ['Loose thread at second button'],
      leftAside: [aside('model', `5'11"`, 'in', 1, 71)]
    }
  },
  {
    name: 'any: letter Gents formal white dress shirt double cuff 16½ collar',
    teaches: 'label collar against measured collar; chest given doubled with the flat figure beside it',
    listing: {
      title: 'Gents formal white dress shirt double cuff 16½ collar',
      text: `Marcella front dress shirt, double cuffs, needs studs. Collar label says 16½ but I measured 16¼" from button to buttonhole. Chest 46" (that is armpit to armpit 23" doubled). Sleeve 25½" from shoulder seam to end of cuff with cuff folded. Back length 32". White, no yellowing under arms. From my late father-in-law's wardrobe, he was 6ft 1 and 15 stone.  £9.99. 2nd class signed for £3.99.`
    },
    expect: {
      kind: 'shirt',
      whose: 'men',
      measures: [
        m('neck', '16¼"', 'in around judged', { value: 16.25 }),
        m('chest', '46"', 'in around judged'),
        m('sleeveLength', '25½"', 'in length', { value: 25.5 }),
        m('bodyLength', '32"', 'in length')
      ],
      colour: 'white',
      price: { amount: 9.99, currency: 'GBP' },
      sizeLabels: ['16.5'],
      leftAside: [aside('size-label', '16½', null, 1, 16.5), aside('model', '6ft 1', 'in', 1, 73)]
    }
  },
  {
    name: 'any: letter High rise wool wide leg trousers Y2K pinstripe',
    teaches: 'number before the name; flat thigh and hem unsaid; hem of trousers is the leg opening',
    listing: {
      title: 'High rise wool wide leg trousers Y2K pinstripe',
      text: `Charcoal pinstripe, wide wide leg, sit at natural waist.
30cm front rise
41cm back rise
36cm waist across the top
50cm hips across
31cm thigh
26cm hem
78cm inside leg
107cm outside leg

54% polyester 44% wool 2% elastane / lined to the knee. Hook and bar is a bit loose, needs a stitch. I'm 168cm tall wearing 6cm heels in pic 3. Size says EUR 36. €30 incl. tracked within Ireland`
    },
    expect: {
      kind: 'trousers',
      cut: { rise: 'high', leg: 'wide', closing: 'hook' },
      measures: [
        m('frontRise', '30cm', 'cm length'),
        m('backRise', '41cm', 'cm length'),
        m('waist', '36cm', 'cm flat'),
        m('hip', '50cm', 'cm flat'),
        m('thigh', '31cm', 'cm flat judged'),
        m('legOpening', '26cm', 'cm flat judged'),
        m('inseam', '78cm', 'cm length'),
        m('outseam', '107cm', 'cm length')
      ],
      fibres: [
        ['wool', 44],
        ['polyester', 54],
        ['elastane', 2]
      ],
      traits: ['stripe'],
      colour: 'grey',
      price: { amount: 30, currency: 'EUR' },
      sizeLabels: ['EUR 36'],
      leftAside: [aside('model', '168cm', 'cm'), aside('model', '6cm', 'cm', 3), aside('size-label', '36', null, 2)]
    }
  },
  {
    name: 'any: letter Mens cargo shorts khaki W36',
    teaches: 'label W36 against the measured waist; pocket size',
    listing: {
      title: 'Mens cargo shorts khaki W36',
      text: 'W36, measures 37" round the top. Inseam 10". leg opening 12" flat. leg pocket 8"x7". Elastic toggle missing one side. £7'
    },
    expect: {
      kind: 'shorts',
      whose: 'men',
      measures: [m('waist', '37"', 'in around'), m('inseam', '10"', 'in length'), m('legOpening', '12"', 'in flat')],
      colour: 'khaki',
      price: { amount: 7, currency: 'GBP' },
      sizeLabels: ['W36'],
      leftAside: [aside('size-label', '36'), aside('detail', '8"', 'in'), aside('detail', '7"', 'in', 2)]
    }
  },
  {
    name: 'any: letter Corduroy dungarees mustard womens small',
    teaches: 'bib width is no chest girth; rolled against not rolled; wale count',
    listing: {
      title: 'Corduroy dungarees mustard womens small',
      text: `Mustard cord dungers, slouchy leg, brass clips. Bit of paint on the left knee (was decorating, sorry). Flat: chest at bib 11in wide, waist 16.5in, hips 20.5in. Inside leg 27in rolled once, 29in not rolled. Bottoms 7.5in across. Strap adjusts. Crotch to top of bib 21in.
8 wale cord, 100% cotton. £16 + 3.40`
    },
    expect: {
      kind: 'jumpsuit',
      whose: 'women',
      cut: { silhouette: 'dungarees' },
      measures: [
        m('waist', '16.5in', 'in flat judged'),
        m('hip', '20.5in', 'in flat judged'),
        m('inseam', '29in', 'in length'),
        m('legOpening', '7.5in', 'in flat')
      ],
      fibres: [['cotton', 100]],
      traits: ['pile'],
      structure: 'woven',
      colour: 'yellow',
      price: { amount: 16, currency: 'GBP' },
      sizeLabels: ['S'],
      leftAside: [aside('detail', '11in', 'in'), aside('detail', '27in', 'in'), aside('detail', '21in', 'in')]
    }
  },
  {
    name: 'any: letter Single stitch band-style tee black 1992 tour mens XL',
    teaches: 'chest x length with no names and no unit; 50/50',
    listing: {
      title: 'Single stitch band-style tee black 1992 tour mens XL',
      text: "Thrashed single stitch tee, paper thin, no holes bigger than a pinhead. Made up band nobody remembers. Tag XL fits L. 22.5x29. 50/50 poly cotton. $45 plus 5 ship, don't lowball"
    },
    expect: {
      kind: 'knit-top',
      whose: 'men',
      cut: { knit: 'tee' },
      measures: [m('chest', '22.5', 'in flat judged guessed'), m('bodyLength', '29', 'in length guessed')],
      fibres: [
        ['polyester', 50],
        ['cotton', 50]
      ],
      colour: 'black',
      price: { amount: 45, currency: 'USD' },
      sizeLabels: ['XL'],
      issues: [{ code: 'reading.unit-judged', about: '22.5' }]
    }
  },
  {
    name: 'any: letter Mens merino crew neck, forest green, L',
    teaches: 'long dashes; chest around, nothing said; weight',
    listing: {
      title: 'Mens merino crew neck, forest green, L',
      text: `Fine gauge merino. Gift, wrong size, tried on once.
Chest – 108 cm
Body length – 70 cm
Sleeve length (under arm) – 52 cm
Weight 310 g. 100% merino wool, wool wash 30° only. No pilling as never worn. AU$35, pick up Fremantle weekends or post at cost.`
    },
    expect: {
      kind: 'jumper',
      whose: 'men',
      cut: { knit: 'fine' },
      measures: [
        m('chest', '108 cm', 'cm around judged'),
        m('bodyLength', '70 cm', 'cm length'),
        m('sleeveUnderarm', '52 cm', 'cm length')
      ],
      fibres: [['wool', 100]],
      colour: 'green',
      condition: 'never worn',
      price: { amount: 35, currency: 'AUD' },
      sizeLabels: ['L']
    }
  },
  {
    name: 'any: letter Camel wool wrap coat 80s oversized, size 14 label',
    teaches: 'figures before and after the names in one list; belt; unit after; "back" is the length',
    listing: {
      title: 'Camel wool wrap coat 80s oversized, size 14 label',
      text: `Wool/cashmere 90/10. Big shoulders, huge lapels (5in), tie belt 68in long. No buttons so bust is whatever you like.
laid flat, closed edge to edge: 25 pit to pit · 26 hips · hem 27
shoulder 19 · sleeve 23 · back 45
(inches!)
Lining torn at the left pocket, about 2in. Professionally cleaned in Nov. £75, will post abroad.`
    },
    expect: {
      kind: 'coat',
      cut: { layer: 'wrap-coat', closeness: 'oversized', closing: 'ties' },
      measures: [
        m('chest', '25', 'in flat list'),
        m('hip', '26', 'in flat judged list'),
        m('hem', '27', 'in flat judged list'),
        m('shoulderWidth', '19', 'in length list'),
        m('sleeveLength', '23', 'in length list'),
        m('bodyLength', '45', 'in length list')
      ],
      fibres: [
        ['wool', 90],
        ['cashmere', 10]
      ],
      colour: 'brown',
      mending: ['close-seam'],
      price: { amount: 75, currency: 'GBP' },
      sizeLabels: ['14'],
      faults: ['Lining torn at the left pocket, about 2in'],
      leftAside: [aside('detail', '5in', 'in'), aside('detail', '68in', 'in'), aside('detail', '2in', 'in')]
    }
  }
]
