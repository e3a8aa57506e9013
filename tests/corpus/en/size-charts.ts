/** Charts of the bodies that sizes are cut for: set aside as no measure of the garment, and kept as what its label says. */
import { aside, type Case, cutFor, m } from '../case.ts'

export const sizeCharts: Case[] = [
  {
    name: 'to fit a bust and hips',
    teaches: '“to fit bust 92-97” is the body that the size is cut for',
    listing: { title: 'Crepe dress size M', text: 'To fit bust 92-97 cm, hips 98-103 cm. Length 100 cm.' },
    expect: {
      kind: 'dress',
      sizeLabels: ['M'],
      measures: [m('bodyLength', '100 cm', 'cm length')],
      sizeChart: [cutFor(null, 'bustGirth', '92-97 cm', 'cm', [92, 97]), cutFor(null, 'hipGirth', '98-103 cm', 'cm', [98, 103])],
      leftAside: [aside('fits-advice', '92-97 cm', 'cm', 1, 94.5), aside('fits-advice', '98-103 cm', 'cm', 1, 100.5)]
    }
  },
  {
    name: 'fits hips of so much',
    teaches: '“fits hips 97–103 cm” is a row for the one size',
    listing: { title: 'Denim skirt', text: 'Fits hips 97–103 cm. Waist 38 cm flat.' },
    expect: {
      kind: 'skirt',
      structure: 'woven',
      traits: ['denim'],
      measures: [m('waist', '38 cm', 'cm flat')],
      sizeChart: [cutFor(null, 'hipGirth', '97–103 cm', 'cm', [97, 103])],
      leftAside: [aside('fits-advice', '97–103 cm', 'cm', 1, 100)]
    }
  },
  {
    name: 'a size guide of several sizes',
    teaches: 'below “size guide” every line is a size’s body; the garment’s own figures come after the blank line',
    listing: {
      title: 'Chino trousers size M',
      text: 'Size guide:\nS: waist 76-81 cm, hips 91-96 cm\nM: waist 82-87 cm, hips 97-102 cm\n\nWaist 44 cm flat, inside leg 80 cm.'
    },
    expect: {
      kind: 'trousers',
      sizeLabels: ['M'],
      measures: [m('waist', '44 cm', 'cm flat'), m('inseam', '80 cm', 'cm length')],
      sizeChart: [
        cutFor('S', 'waistGirth', '76-81 cm', 'cm', [76, 81]),
        cutFor('S', 'hipGirth', '91-96 cm', 'cm', [91, 96]),
        cutFor('M', 'waistGirth', '82-87 cm', 'cm', [82, 87]),
        cutFor('M', 'hipGirth', '97-102 cm', 'cm', [97, 102])
      ],
      leftAside: [
        aside('size-chart', '76-81 cm', 'cm', 1, 78.5),
        aside('size-chart', '91-96 cm', 'cm', 1, 93.5),
        aside('size-chart', '82-87 cm', 'cm', 1, 84.5),
        aside('size-chart', '97-102 cm', 'cm', 1, 99.5)
      ]
    }
  },
  {
    name: 'a size chart as a table',
    teaches: 'columns of a body under “size chart (cm)”, a row a size',
    listing: {
      title: 'Linen shirt size L',
      text: 'Size chart (cm)\nSize | Chest | Waist\nM | 94-102 | 82-90\nL | 102-110 | 90-98\n\nPit to pit 60 cm.'
    },
    expect: {
      kind: 'shirt',
      fibres: [['linen', null]],
      sizeLabels: ['L'],
      measures: [m('chest', '60 cm', 'cm flat')],
      sizeChart: [
        cutFor('M', 'bustGirth', '94-102', 'cm', [94, 102], { bare: true }),
        cutFor('M', 'waistGirth', '82-90', 'cm', [82, 90], { bare: true }),
        cutFor('L', 'bustGirth', '102-110', 'cm', [102, 110], { bare: true }),
        cutFor('L', 'waistGirth', '90-98', 'cm', [90, 98], { bare: true })
      ],
      leftAside: [
        aside('size-chart', '94-102', null, 1, 98),
        aside('size-chart', '82-90', null, 1, 86),
        aside('size-chart', '102-110', null, 1, 106),
        aside('size-chart', '90-98', null, 1, 94)
      ]
    }
  },
  {
    name: 'a size guide beside the dress',
    teaches: 'a chart in a line ends with its sentence: what actually measures is the dress',
    listing: {
      title: 'A-line dress size 24',
      text: 'SIZE GUIDE 24: bust 132 cm, waist 116 cm, hips 140 cm. This one actually measures pit to pit 66.5 cm, length 112 cm.'
    },
    expect: {
      kind: 'dress',
      whose: 'women',
      cut: { silhouette: 'a-line' },
      made: { skirtShape: 'flared' },
      sizeLabels: ['24'],
      measures: [m('chest', '66.5 cm', 'cm flat'), m('bodyLength', '112 cm', 'cm length')],
      sizeChart: [
        cutFor('24', 'bustGirth', '132 cm', 'cm', [132, 132]),
        cutFor('24', 'waistGirth', '116 cm', 'cm', [116, 116]),
        cutFor('24', 'hipGirth', '140 cm', 'cm', [140, 140])
      ],
      leftAside: [
        aside('size-chart', '24'),
        aside('size-chart', '132 cm', 'cm'),
        aside('size-chart', '116 cm', 'cm'),
        aside('size-chart', '140 cm', 'cm')
      ]
    }
  },
  {
    name: 'body measurements of a size',
    teaches: '“body measurements” with a height in a range is a chart, no model',
    listing: {
      title: 'Jersey leggings',
      text: 'Body measurements: height 164-170 cm, hips 97-103 cm, inside leg 78 cm.\nWaist 36 cm flat.'
    },
    expect: {
      kind: 'trousers',
      structure: 'knit',
      cut: { leg: 'legging' },
      measures: [m('waist', '36 cm', 'cm flat')],
      sizeChart: [
        cutFor(null, 'stature', '164-170 cm', 'cm', [164, 170]),
        cutFor(null, 'hipGirth', '97-103 cm', 'cm', [97, 103]),
        cutFor(null, 'insideLegLength', '78 cm', 'cm', [78, 78])
      ],
      leftAside: [
        aside('size-chart', '164-170 cm', 'cm', 1, 167),
        aside('size-chart', '97-103 cm', 'cm', 1, 100),
        aside('size-chart', '78 cm', 'cm')
      ]
    }
  },
  {
    name: 'a size guide that measures the garment',
    teaches: 'what sellers head “size guide” may be the garment laid flat: it has a length and a pit to pit',
    trap: true,
    listing: { title: 'Linen shirt', text: 'Size guide:\nPit to pit 58 cm\nLength 74 cm' },
    expect: { kind: 'shirt', fibres: [['linen', null]], measures: [m('chest', '58 cm', 'cm flat'), m('bodyLength', '74 cm', 'cm length')] }
  },
  {
    name: 'a size guide of half girths',
    teaches: 'under “size guide” a waist of 40 cm is no body, so it is the garment laid flat',
    trap: true,
    listing: { title: 'Wool skirt', text: 'Size guide:\nWaist 36 cm\nHips 48 cm' },
    expect: {
      kind: 'skirt',
      fibres: [['wool', null]],
      measures: [m('waist', '36 cm', 'cm flat judged'), m('hip', '48 cm', 'cm flat judged')]
    }
  },
  {
    name: 'see the size guide',
    teaches: 'a size guide that is only pointed to heads nothing',
    trap: true,
    listing: { title: 'Wool skirt', text: 'Please check the size guide. Waist 76 cm around, hips 100 cm around.' },
    expect: {
      kind: 'skirt',
      fibres: [['wool', null]],
      measures: [m('waist', '76 cm', 'cm around'), m('hip', '100 cm', 'cm around')]
    }
  },
  {
    name: 'my own body measurements',
    teaches: 'the seller’s own body is no chart',
    trap: true,
    listing: { title: 'Wool skirt', text: 'My body measurements: waist 76 cm, hips 100 cm. Waist of the skirt 38 cm flat.' },
    expect: {
      kind: 'skirt',
      fibres: [['wool', null]],
      measures: [m('waist', '38 cm', 'cm flat')],
      leftAside: [aside('model', '76 cm', 'cm'), aside('model', '100 cm', 'cm')]
    }
  },
  {
    name: 'up to a bust',
    teaches: 'what it would fit at the most is advice, and no row of a chart',
    trap: true,
    listing: { title: 'Wrap dress', text: 'Would fit up to a 40 inch bust. Length 100 cm.' },
    expect: {
      kind: 'dress',
      cut: { silhouette: 'wrap' },
      measures: [m('bodyLength', '100 cm', 'cm length')],
      leftAside: [aside('fits-advice', '40 inch', 'in')]
    }
  }
]
