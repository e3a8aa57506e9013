/** Cloth, construction, kind, use, faults, price, structured data. */
import { aside, type Case, m } from '../case.ts'

export const cloth: Case[] = [
  {
    name: 'fibres with percentages',
    teaches: 'percent before and after the name; elastane gives no stretch percentage',
    listing: { title: 'Black trousers', text: 'Fabric: 65% polyester, 33% viscose and 2% elastane. Fully lined. Waist 15" flat.' },
    expect: {
      kind: 'trousers',
      colour: 'black',
      fibres: [
        ['polyester', 65],
        ['viscose', 33],
        ['elastane', 2]
      ],
      made: { lined: true },
      measures: [m('waist', '15"', 'in flat')]
    }
  },
  {
    name: 'fibres in the other order',
    teaches: 'name, then percent',
    listing: { title: 'Jumper', text: 'Wool 80%, nylon 20%' },
    expect: {
      kind: 'jumper',
      fibres: [
        ['wool', 80],
        ['polyamide', 20]
      ]
    }
  },
  {
    name: 'percentages that do not add up',
    teaches: 'the sum is told',
    trap: true,
    listing: { title: 'Skirt', text: '70% wool 20% silk' },
    expect: {
      kind: 'skirt',
      fibres: [
        ['wool', 70],
        ['silk', 20]
      ],
      traits: ['silk'],
      issues: [{ code: 'reading.percent-sum' }]
    }
  },
  {
    name: 'shell and lining',
    teaches: 'the fibre of the lining is not the cloth',
    listing: { title: 'Coat', text: 'Shell: 100% wool. Lining: 100% acetate.' },
    expect: { kind: 'coat', fibres: [['wool', 100]], made: { lined: true } }
  },
  {
    name: 'feels like',
    teaches: 'a fibre that is guessed at is taken without a percentage, one that it is not is left out',
    listing: { title: 'Blouse', text: 'No label, feels like viscose. Not silk.' },
    expect: { kind: 'shirt', cut: { silhouette: 'blouse' }, fibres: [['viscose', null]] }
  },
  {
    name: 'how far it stretches',
    teaches: 'a number gives the stretch, a word does not',
    listing: { title: 'Knit dress', text: 'Very stretchy jersey, about 30% stretch.' },
    expect: { kind: 'dress', structure: 'knit', stretchPercent: 30 }
  },
  {
    name: 'no stretch',
    teaches: 'told to have none: nought percent, and rigid',
    listing: { title: 'Rigid denim jeans', text: 'Raw denim with no stretch at all.' },
    // raw denim is denim that was never washed
    expect: { kind: 'jeans', structure: 'woven', traits: ['denim', 'rigid'], stretchPercent: 0, washed: false }
  },
  {
    name: 'construction of a jacket',
    teaches: 'working cuffs, centre back seam, lined',
    listing: { title: 'Navy pinstripe blazer', text: 'Surgeon cuffs, half lined? No: fully lined, centre back seam, two side vents.' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'blazer' },
      colour: 'navy',
      traits: ['stripe'],
      made: { tailored: true, workingCuffButtons: true, lined: true, backSeam: true, opens: ['hem'] }
    }
  },
  {
    name: 'sham cuffs and unlined',
    teaches: 'negations turn the facts',
    listing: { title: 'Linen blazer', text: 'Unlined. Cuff buttons are non-functional. No darts.' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'blazer' },
      fibres: [['linen', null]],
      made: { tailored: true, lined: false, workingCuffButtons: false, darts: false }
    }
  },
  {
    name: 'the shape of a skirt',
    teaches: 'pencil is straight, A-line is flared; a hem told by its depth',
    listing: { title: 'A-line skirt', text: 'A-line skirt with back zip, deep 3" hem. Waist 28" around.' },
    expect: {
      kind: 'skirt',
      cut: { silhouette: 'a-line', closing: 'back-zip' },
      made: { skirtShape: 'flared', opens: ['waist'], hemDepthMm: 76.2 },
      measures: [m('waist', '28"', 'in around')],
      leftAside: [aside('detail', '3"', 'in')]
    }
  },
  {
    name: 'original hem and elastic waist',
    teaches: 'construction told in passing',
    listing: { title: 'Jeans', text: 'Original hem, elasticated waist at the back.' },
    expect: { kind: 'jeans', cut: { closing: 'elastic' }, made: { hemKind: 'original-edge', elasticWaist: true } }
  },
  {
    name: 'what is worn out',
    teaches: 'faults as told, and the mending they ask for; what is denied is no fault',
    listing: { title: 'Wool cardigan', text: 'Two moth holes at the elbow. Missing one button. No stains. Some pilling under arms.' },
    expect: {
      kind: 'jumper',
      fibres: [['wool', null]],
      structure: 'knit',
      faults: ['Two moth holes at the elbow', 'Missing one button', 'Some pilling under arms'],
      mending: ['darn', 'treat-pests', 'replace-button', 'de-pill']
    }
  },
  {
    name: 'mended already',
    teaches: 'a hole that was mended needs no needle; where moths have been, moths may be',
    listing: { title: 'Wool jumper', text: 'One moth nip at the cuff, neatly darned. A small tear under the arm has been mended.' },
    expect: {
      kind: 'jumper',
      fibres: [['wool', null]],
      faults: ['One moth nip at the cuff, neatly darned', 'A small tear under the arm has been mended'],
      mending: ['treat-pests']
    }
  },
  {
    name: 'to be mended',
    teaches: 'what could be mended is not; of two holes one was',
    listing: {
      title: 'Linen shirt',
      text: 'Small hole near the hem, easily mended. Repaired tear at the elbow and a second hole on the collar.'
    },
    expect: {
      kind: 'shirt',
      fibres: [['linen', null]],
      faults: ['Small hole near the hem, easily mended', 'Repaired tear at the elbow and a second hole on the collar'],
      mending: ['patch']
    }
  },
  {
    name: 'pockets apart',
    teaches: 'how far the back pockets lie apart bounds what a back seam gives',
    listing: { title: 'Corduroy trousers', text: 'Waist 17" flat, inseam 30". Two back pockets, 5" apart. Hem 2" turned up.' },
    expect: {
      kind: 'trousers',
      structure: 'woven',
      traits: ['pile'],
      made: { backPocketGapMm: 127, hemDepthMm: 50.8 },
      measures: [m('waist', '17"', 'in flat'), m('inseam', '30"', 'in length')],
      leftAside: [aside('detail', '5"', 'in'), aside('detail', '2"', 'in')]
    }
  },
  {
    name: 'between the pockets',
    teaches: 'the gap with its words the other way round; a pocket’s own size is none',
    listing: { title: 'Jeans', text: '11 cm between the back pockets, each of the back pockets is 14 cm wide.' },
    expect: {
      kind: 'jeans',
      made: { backPocketGapMm: 110 },
      leftAside: [aside('detail', '11 cm', 'cm'), aside('detail', '14 cm', 'cm')]
    }
  },
  {
    name: 'condition',
    teaches: 'the words before condition',
    listing: { title: 'Green dress', text: 'Very good used condition. Zip works.' },
    expect: { kind: 'dress', colour: 'green', condition: 'very good used condition' }
  },
  {
    name: 'high-visibility',
    teaches: 'protective clothing is known as such',
    trap: true,
    listing: { title: 'Hi-vis jacket', text: 'High visibility work jacket, chest 46" around, sleeve 26".' },
    expect: {
      kind: 'coat',
      use: 'protective',
      measures: [m('chest', '46"', 'in around'), m('sleeveLength', '26"', 'in length')]
    }
  },
  {
    name: 'flame-resistant and armoured',
    teaches: 'flame resistance and armour are protective',
    trap: true,
    listing: { title: 'Motorcycle jacket', text: 'With CE armour at the elbows.' },
    expect: { kind: 'coat', cut: { layer: 'biker' }, use: 'protective' }
  },
  {
    name: "children's pyjamas",
    teaches: "children's sleepwear is told from children's clothing",
    trap: true,
    listing: { title: "Boys' pyjama trousers age 7-8", text: 'Soft cotton.' },
    expect: { kind: 'trousers', fibres: [['cotton', null]], use: 'child-sleepwear', sizeLabels: ['age 7-8'] }
  },
  {
    name: "children's clothing",
    teaches: "children's sizes; baby blue and boyfriend are no children",
    listing: { title: 'Girls dress age 6', text: 'Baby blue. Length 60 cm.' },
    expect: {
      kind: 'dress',
      colour: 'blue',
      use: 'child',
      sizeLabels: ['age 6'],
      measures: [m('bodyLength', '60 cm', 'cm length')]
    }
  },
  {
    name: 'boyfriend jeans',
    teaches: 'boyfriend cut and baby blue are for grown people',
    trap: true,
    listing: { title: 'Boyfriend jeans in baby blue', text: 'Comfortable.' },
    expect: { kind: 'jeans', cut: { leg: 'relaxed' }, colour: 'blue' }
  },
  {
    name: 'medical compression',
    teaches: 'medical compression is known as such',
    trap: true,
    listing: { title: 'Medical compression leggings', text: 'Class 2 compression.' },
    expect: { kind: 'trousers', cut: { leg: 'legging' }, use: 'medical-compression' }
  },
  {
    name: 'the head of a compound',
    teaches: 'a shirt dress is a dress, a jean jacket a jacket, jacket pocket in the text no jacket',
    listing: { title: 'Denim shirt dress', text: 'Looks good with a jacket and jeans.' },
    expect: { kind: 'dress', cut: { silhouette: 'shirt-dress' }, traits: ['denim'], structure: 'woven' }
  },
  {
    name: 'a denim jacket',
    teaches: 'a casual jacket is not tailored',
    listing: { title: 'Denim jacket', text: 'Pit to pit 20"' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'denim' },
      traits: ['denim'],
      structure: 'woven',
      made: { tailored: false },
      measures: [m('chest', '20"', 'in flat')]
    }
  },
  {
    name: 'kind from the points alone',
    teaches: 'inseam and rise tell legs',
    listing: { text: 'Waist 32" around, length 41", inseam 31"' },
    expect: {
      kind: 'trousers',
      measures: [m('waist', '32"', 'in around'), m('outseam', '41"', 'in length'), m('inseam', '31"', 'in length')]
    }
  },
  {
    name: 'a price in dollars',
    teaches: 'the asking price, not the price when new nor the postage',
    listing: { title: 'Skirt', text: 'RRP $120, now $38.50, shipping $6.' },
    expect: { kind: 'skirt', price: { amount: 38.5, currency: 'USD' } }
  },
  {
    name: 'a dollar that is not of the United States',
    teaches: 'the page language tells which dollar',
    listing: { title: 'Skirt', text: 'Price: $30', language: 'en-AU' },
    expect: { kind: 'skirt', price: { amount: 30, currency: 'AUD' } }
  },
  {
    name: 'structured data',
    teaches: 'JSON-LD gives name, price, colour, material, condition and description',
    listing: {
      text: 'A nice thing.',
      structured: [
        {
          '@context': 'https://schema.org',
          '@graph': [
            { '@type': 'BreadcrumbList' },
            {
              '@type': ['product'],
              name: 'Pleated wool skirt',
              color: 'Burgundy',
              material: 'Wool',
              itemCondition: 'https://schema.org/UsedCondition',
              offers: [{ '@type': 'Offer', price: '34,50', priceCurrency: 'EUR' }]
            }
          ]
        }
      ]
    },
    expect: {
      kind: 'skirt',
      colour: 'burgundy',
      fibres: [['wool', null]],
      traits: ['pleated'],
      condition: 'used',
      made: { skirtShape: 'pleated' },
      price: { amount: 34.5, currency: 'EUR' }
    }
  },
  {
    name: 'several products on a page',
    teaches: 'the one whose name is the title',
    listing: {
      title: 'Linen shirt in white',
      text: '',
      structured: [
        { '@type': 'Product', name: 'Velvet coat', offers: { price: 90, priceCurrency: 'GBP' } },
        { '@type': 'Product', name: 'Linen shirt in white', offers: { price: 22, priceCurrency: 'GBP' } }
      ]
    },
    expect: {
      kind: 'shirt',
      colour: 'white',
      fibres: [['linen', null]],
      price: { amount: 22, currency: 'GBP' }
    }
  },
  {
    name: 'broken structured data',
    teaches: 'a block that cannot be parsed is skipped and told',
    trap: true,
    listing: { title: 'Skirt', text: 'Waist 28" around', structured: ['{"@type": "Product", ', null, 7, { '@type': 'Thing' }] },
    expect: {
      kind: 'skirt',
      measures: [m('waist', '28"', 'in around')],
      issues: [{ code: 'reading.structured-broken' }]
    }
  }
]
