/** Flat or around: words near, headings, neighbours, what is plausible. */
import { aside, type Case, m } from '../case.ts'

export const basis: Case[] = [
  {
    name: 'flat by heading',
    teaches: 'a heading over the list says flat for every girth, and only for girths',
    listing: { title: 'Trousers', text: 'Measurements (laid flat)\nWaist 16.5"\nHips 21"\nThigh 12"\nInseam 30"' },
    expect: {
      kind: 'trousers',
      measures: [m('waist', '16.5"', 'in flat'), m('hip', '21"', 'in flat'), m('thigh', '12"', 'in flat'), m('inseam', '30"', 'in length')]
    }
  },
  {
    name: 'across and around in one list',
    teaches: 'a list can mix both; words beside the figure win over the rest',
    listing: { title: 'Jeans', text: 'Waist 32" around\nThigh 11" across\nLeg opening 8" across\nInseam 31"' },
    expect: {
      kind: 'jeans',
      measures: [
        m('waist', '32"', 'in around'),
        m('thigh', '11"', 'in flat'),
        m('legOpening', '8"', 'in flat'),
        m('inseam', '31"', 'in length')
      ]
    }
  },
  {
    name: 'flat stated over a figure that must be around',
    teaches: 'laid flat cannot be: a 34 inch flat waist would be 68 around',
    listing: { title: 'Jeans', text: 'Measurements taken flat: waist 34", inseam 32"' },
    expect: {
      kind: 'jeans',
      measures: [m('waist', '34"', 'in around judged'), m('inseam', '32"', 'in length')],
      issues: [
        {
          code: 'reading.basis-doubt',
          about: '34"',
          readings: [
            ['waist', 863.6],
            ['waist', 1727.2]
          ]
        }
      ]
    }
  },
  {
    name: 'flat with the whole in brackets',
    teaches: 'a figure and its double confirm each other and are one measure',
    listing: { title: 'Jumper', text: 'Chest: 21" flat (42" around)\nWaist: 19" (38")\nLength: 27"' },
    expect: {
      kind: 'jumper',
      measures: [m('chest', '21"', 'in flat'), m('waist', '19"', 'in flat'), m('bodyLength', '27"', 'in length')]
    }
  },
  {
    name: 'times two',
    teaches: 'x2 and "doubled" beside half figures say flat',
    listing: { title: 'Skirt', text: 'Waist 14" x2, hips 19" x 2, length 25"' },
    expect: {
      kind: 'skirt',
      measures: [m('waist', '14"', 'in flat'), m('hip', '19"', 'in flat'), m('skirtLength', '25"', 'in length')]
    }
  },
  {
    name: 'please double',
    teaches: 'a note that asks to double says flat for the girths',
    listing: { title: 'Dress', text: 'Bust 17", waist 13", hips 20", length 40". Double the bust, waist and hips for total.' },
    expect: {
      kind: 'dress',
      measures: [
        m('chest', '17"', 'in flat'),
        m('waist', '13"', 'in flat'),
        m('hip', '20"', 'in flat'),
        m('bodyLength', '40"', 'in length')
      ]
    }
  },
  {
    name: 'nothing said and plausibly flat',
    teaches: 'a 20 inch chest is half of one',
    listing: { title: 'Shirt', text: 'Chest 20.5"\nLength 28"' },
    expect: {
      kind: 'shirt',
      measures: [m('chest', '20.5"', 'in flat judged'), m('bodyLength', '28"', 'in length')]
    }
  },
  {
    name: 'a small leg opening beside whole girths',
    teaches: 'plausibility judges each figure on its own',
    listing: { title: 'Jeans', text: 'Waist 30", hips 39", thigh 22", leg opening 7.5"' },
    expect: {
      kind: 'jeans',
      measures: [
        m('waist', '30"', 'in around judged'),
        m('hip', '39"', 'in around judged'),
        m('thigh', '22"', 'in around judged'),
        m('legOpening', '7.5"', 'in flat judged')
      ]
    }
  },
  {
    name: 'a close call',
    teaches: 'a 31 inch chest on a coat with nothing else: both readings are kept as an issue',
    listing: { title: 'Coat', text: 'Chest 31"' },
    expect: {
      kind: 'coat',
      measures: [m('chest', '31"', 'in flat judged')],
      issues: [
        {
          code: 'reading.basis-doubt',
          about: '31"',
          readings: [
            ['chest', 1574.8],
            ['chest', 787.4]
          ]
        }
      ]
    }
  },
  {
    name: 'circumference by word',
    teaches: 'circumference, all the way round, total',
    listing: { title: 'Coat', text: 'Chest circumference 46 in. Hem 60" all the way around. Sleeve 25 in.' },
    expect: {
      kind: 'coat',
      measures: [m('chest', '46 in', 'in around'), m('hem', '60"', 'in around'), m('sleeveLength', '25 in', 'in length')]
    }
  },
  {
    name: 'relaxed and stretched',
    teaches: 'the relaxed figure is the garment, the stretched one is how far it pulls out',
    listing: { title: 'Skirt', text: 'Elastic waist: 26" relaxed, 36" stretched\nLength 30"' },
    expect: {
      kind: 'skirt',
      cut: { closing: 'elastic' },
      made: { elasticWaist: true, waistStretchedMm: 914.4 },
      measures: [m('waist', '26"', 'in around judged'), m('skirtLength', '30"', 'in length')],
      leftAside: [aside('pulled-out', '36"', 'in')]
    }
  },
  {
    name: 'flat centimetres',
    teaches: 'half girths in cm, the neighbours agree',
    listing: { title: 'Blouse', text: 'Bust 48cm, waist 44cm, hem 50cm, length 60cm, shoulders 39cm' },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'blouse' },
      measures: [
        m('chest', '48cm', 'cm flat judged'),
        m('waist', '44cm', 'cm flat judged'),
        m('hem', '50cm', 'cm flat judged'),
        m('bodyLength', '60cm', 'cm length'),
        m('shoulderWidth', '39cm', 'cm length')
      ]
    }
  }
]
