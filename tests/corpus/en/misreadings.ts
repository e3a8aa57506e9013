/** Figures that were once given to the wrong name: each costs money, so each has its case. */
import { aside, type Case, cutFor, m } from '../case.ts'

export const misreadings: Case[] = [
  {
    name: 'back, alone, is the back',
    teaches: 'a back length before a chest leaves the chest its own figure',
    listing: { title: 'Suede jacket', text: 'Sleeve outside 24", inside 18", back 25", chest 20" across' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'biker' },
      structure: 'leather',
      traits: ['suede'],
      made: { tailored: false },
      measures: [
        m('sleeveLength', '24"', 'in length'),
        m('sleeveUnderarm', '18"', 'in length'),
        m('bodyLength', '25"', 'in length'),
        m('chest', '20"', 'in flat')
      ]
    }
  },
  {
    name: 'back, small, is its width',
    teaches: 'a short figure named back is the width between the arms',
    listing: { title: 'Linen blouse', text: 'Bust 19" flat\nBack: 15"\nLength: 23"' },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'blouse' },
      fibres: [['linen', null]],
      measures: [m('chest', '19"', 'in flat'), m('backWidth', '15"', 'in length'), m('bodyLength', '23"', 'in length')]
    }
  },
  {
    name: 'two rises in one name',
    teaches: 'front/back rise: the first figure is the front',
    listing: { title: 'Wool trousers', text: 'Front/back rise 12"/16", waist 31" around' },
    expect: {
      kind: 'trousers',
      fibres: [['wool', null]],
      measures: [m('frontRise', '12"', 'in length'), m('backRise', '16"', 'in length'), m('waist', '31"', 'in around')]
    }
  },
  {
    name: 'sides behind bare figures',
    teaches: 'a word behind a second figure of a name says which it is',
    listing: { title: 'Wool trousers', text: 'Rise: 12 front, 15.5 back. Waist 17" flat' },
    expect: {
      kind: 'trousers',
      fibres: [['wool', null]],
      measures: [m('frontRise', '12', 'in length list'), m('backRise', '15.5', 'in length list'), m('waist', '17"', 'in flat')]
    }
  },
  {
    name: 'from the shoulder is no shoulder',
    teaches: 'where a second figure starts from is not what it measures',
    listing: { title: 'Cotton dress', text: 'Sleeve: 16" (from underarm) / 21" (from shoulder). Bust 36" around' },
    expect: {
      kind: 'dress',
      fibres: [['cotton', null]],
      measures: [m('sleeveUnderarm', '16"', 'in length'), m('sleeveLength', '21"', 'in length'), m('chest', '36"', 'in around')]
    }
  },
  {
    name: 'a remark in brackets names nothing',
    teaches: 'chest (button to button): no figure of buttons',
    listing: { title: 'Denim jacket', text: 'Chest (button to button) 42in, Length (back) 23in' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'denim' },
      structure: 'woven',
      traits: ['denim'],
      made: { tailored: false },
      measures: [m('chest', '42in', 'in around judged'), m('bodyLength', '23in', 'in length')]
    }
  },
  {
    name: 'the unit of a detail is the unit of the list',
    teaches: 'bare figures take the unit that details have',
    listing: { title: 'Tartan skirt', text: 'Waist 27-29 (three buckles), pleats 2" deep' },
    expect: {
      kind: 'skirt',
      cut: { closing: 'buckles' },
      traits: ['check', 'pleated'],
      measures: [m('waist', '27-29', 'in around judged list', { value: 28, low: 27, high: 29 })],
      leftAside: [aside('detail', '2"', 'in')]
    }
  },
  {
    name: 'a hem that could be let down',
    teaches: 'what can be let down is cloth to spare, and the hem is at least so deep',
    listing: { title: 'Linen skirt', text: 'Length 26" plus 2" hem that could be let down. Waist 28" around (could be taken out 1")' },
    expect: {
      kind: 'skirt',
      fibres: [['linen', null]],
      made: { hemDepthMm: 50.8 },
      measures: [m('skirtLength', '26"', 'in length'), m('waist', '28"', 'in around')],
      allowances: [
        { point: 'skirtLength', mm: 50.8, place: { text: '2"', nth: 1, value: 2, unit: 'in' } },
        { point: 'waist', mm: 25.4, place: { text: '1"', nth: 1, value: 1, unit: 'in' } }
      ]
    }
  },
  {
    name: 'an unknown name before the first figure',
    teaches: 'a name between two figures is not both’s: the figure of an unknown name is nobody’s',
    trap: true,
    listing: { title: 'Cotton shirt', text: 'Qz 22" / length 28" / sleeve 24"' },
    expect: {
      kind: 'shirt',
      fibres: [['cotton', null]],
      measures: [m('bodyLength', '28"', 'in length'), m('sleeveLength', '24"', 'in length')],
      leftAside: [aside('unknown', '22"', 'in')]
    }
  },
  {
    name: 'from somewhere to the hem',
    teaches: 'an end of a length is no hem',
    listing: { title: 'Satin dress', text: 'Length from hollow to hem 56", bust 36" around' },
    expect: {
      kind: 'dress',
      traits: ['slippery'],
      measures: [m('bodyLength', '56"', 'in length'), m('chest', '36"', 'in around')]
    }
  },
  {
    name: 'fits, then a figure',
    teaches: 'what a body may have is no measurement of the garment',
    trap: true,
    listing: { title: 'Linen trousers', text: 'Waist 37cm across, inseam 78cm. Fits 28-29" waist.' },
    expect: {
      kind: 'trousers',
      fibres: [['linen', null]],
      measures: [m('waist', '37cm', 'cm flat'), m('inseam', '78cm', 'cm length')],
      sizeChart: [cutFor(null, 'waistGirth', '28-29"', 'in', [28, 29])],
      leftAside: [aside('fits-advice', '28-29"', 'in', 1, 28.5)]
    }
  },
  {
    name: 'what was paid once',
    teaches: 'the price when it was bought is not the price asked',
    listing: { title: 'Wool coat', text: 'I bought this in 2018 for £90 and never wore it. £25 ono.' },
    expect: { kind: 'coat', fibres: [['wool', null]], price: { amount: 25, currency: 'GBP' } }
  },
  {
    name: 'W beside B',
    teaches: 'a width beside a bust is the waist, even on a top',
    listing: { title: 'Cotton blouse', text: 'B: 37 W: 33 L: 24 S: 23 inches' },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'blouse' },
      fibres: [['cotton', null]],
      measures: [
        m('chest', '37', 'in around judged list'),
        m('waist', '33', 'in around judged list'),
        m('bodyLength', '24', 'in length list'),
        m('sleeveLength', '23 inches', 'in length')
      ]
    }
  },
  {
    name: 'two garments without headings',
    teaches: 'a garment’s name before a point heads what follows, where two garments do so',
    listing: {
      title: 'Linen skirt suit',
      text: 'Jacket bust 37" around, length 22". Skirt waist 27" around, hips 38" around, length 26".'
    },
    expect: {
      kind: 'jacket',
      fibres: [['linen', null]],
      made: { tailored: true },
      measures: [
        m('chest', '37"', 'in around', { of: 'jacket' }),
        m('bodyLength', '22"', 'in length', { of: 'jacket' }),
        m('waist', '27"', 'in around', { of: 'skirt' }),
        m('hip', '38"', 'in around', { of: 'skirt' }),
        m('skirtLength', '26"', 'in length', { of: 'skirt' })
      ],
      issues: [{ code: 'reading.several-garments' }]
    }
  },
  {
    name: 'two letters for the leg',
    teaches: 'IL and OL are the inner and the outer leg',
    listing: { title: 'Wool trousers', text: 'W: 33" IL: 30" OL: 41" Thigh 12" flat' },
    expect: {
      kind: 'trousers',
      fibres: [['wool', null]],
      measures: [
        m('waist', '33"', 'in around judged'),
        m('inseam', '30"', 'in length'),
        m('outseam', '41"', 'in length'),
        m('thigh', '12"', 'in flat')
      ]
    }
  },
  {
    name: 'the hem of the second garment',
    teaches: 'cloth to spare belongs to the garment whose heading it stands under',
    listing: { title: 'Linen suit', text: 'Jacket: bust 38" around, length 25"\nSkirt: waist 27" around, length 26", hem allowance 2"' },
    expect: {
      kind: 'jacket',
      fibres: [['linen', null]],
      made: { tailored: true },
      measures: [
        m('chest', '38"', 'in around', { of: 'jacket' }),
        m('bodyLength', '25"', 'in length', { of: 'jacket' }),
        m('waist', '27"', 'in around', { of: 'skirt' }),
        m('skirtLength', '26"', 'in length', { of: 'skirt' })
      ],
      allowances: [{ point: 'skirtLength', mm: 50.8, place: { text: '2"', nth: 1, value: 2, unit: 'in' } }],
      issues: [{ code: 'reading.several-garments' }]
    }
  }
]
