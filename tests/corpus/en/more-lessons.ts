/** More lessons: tables from a page, sleeves told in prose, what is counted into a length, sums by the name of a note. */
import { aside, type Case, m } from '../case.ts'

export const moreLessons: Case[] = [
  {
    name: 'a table of sizes from a page, its columns apart by tabs',
    teaches: 'tabs part columns; a size of two words heads its row; the title says which is for sale',
    listing: {
      title: 'Field trousers, size Medium Regular',
      text: 'Size\tWaist\tInseam\tThigh\nSmall Regular\t27-31"\t29.5"\t12.5"\nMedium Regular\t31-35"\t30.5"\t13.5"\nThigh is measured flat.'
    },
    expect: {
      kind: 'trousers',
      sizeLabels: ['M', 'M regular'],
      measures: [
        m('waist', '31-35"', 'in around judged', { value: 33, low: 31, high: 35 }),
        m('inseam', '30.5"', 'in length'),
        m('thigh', '13.5"', 'in flat')
      ],
      leftAside: [aside('detail', '27-31"', 'in', 1, 29), aside('detail', '29.5"', 'in'), aside('detail', '12.5"', 'in')]
    }
  },
  {
    name: 'a long size heads its row',
    teaches: '“M long” before a bar is a size, no length',
    listing: { title: 'Trousers', text: 'Size | Waist | Inseam\nM regular | 32" | 30"\nM long | 33" | 34"' },
    expect: {
      kind: 'trousers',
      sizeLabels: ['M regular', 'M long'],
      measures: [
        m('waist', '32"', 'in around judged', { size: 'M regular' }),
        m('inseam', '30"', 'in length', { size: 'M regular' }),
        m('waist', '33"', 'in around judged', { size: 'M long' }),
        m('inseam', '34"', 'in length', { size: 'M long' })
      ],
      issues: [{ code: 'reading.several-sizes' }]
    }
  },
  {
    name: 'doubled already',
    teaches: '“flat” in the sentence that says it was doubled asks for no doubling',
    listing: { title: 'Princess coat', text: 'Waist 30" (76cm)\nSleeve from shoulder 23"\nFlat measurements have already been doubled.' },
    expect: {
      kind: 'coat',
      cut: { layer: 'fitted-coat' },
      measures: [m('waist', '30"', 'in around'), m('sleeveLength', '23"', 'in length')]
    }
  },
  {
    name: 'whose chest it is',
    teaches: '“he has a 44 inch chest” is somebody’s body',
    listing: {
      title: 'Fisherman jumper',
      text: 'It was my husband’s, he has a 44 inch chest and says it is snug. It measures 21.5 inches from armpit to armpit.'
    },
    expect: {
      kind: 'jumper',
      cut: { knit: 'chunky' },
      measures: [m('chest', '21.5 inches', 'in flat')],
      leftAside: [aside('model', '44 inch', 'in')]
    }
  },
  {
    name: 'one letter with a line to itself',
    teaches: 'a W or an L that opens a line and is all of it names its figure',
    listing: { title: 'Midi skirt', text: 'W 68-72cm (elastic at back)\nhips 100cm\nL 78cm' },
    expect: {
      cut: { dressLength: 'midi' },
      kind: 'skirt',
      measures: [
        m('waist', '68-72cm', 'cm around judged', { value: 70, low: 68, high: 72 }),
        m('hip', '100cm', 'cm around judged'),
        m('skirtLength', '78cm', 'cm length')
      ]
    }
  },
  {
    name: 'a range that ends stretched',
    teaches: 'it lies where the range begins',
    listing: { title: 'Linen mix trousers', text: 'waist 27in to 33in stretched' },
    expect: {
      kind: 'trousers',
      made: { elasticWaist: true, waistStretchedMm: 838.2 },
      measures: [m('waist', '27in to 33in', 'in around judged', { value: 27 })],
      fibres: [['linen', null]]
    }
  },
  {
    name: 'three-quarter sleeves from the shoulder',
    teaches: 'how long sleeves are said to be stands between the name and its figure',
    listing: { title: 'Top', text: 'Sleeves are three quarter so 16 inches from the shoulder.' },
    expect: { kind: 'knit-top', cut: { sleeve: 'three-quarter' }, measures: [m('sleeveLength', '16 inches', 'in length')] }
  },
  {
    name: 'long sleeves, and from where',
    teaches: 'behind “from the shoulder” a comma parts no sleeve from its figure',
    listing: { title: 'Top', text: 'Long sleeves, 60cm from shoulder' },
    expect: { kind: 'knit-top', cut: { sleeve: 'long' }, measures: [m('sleeveLength', '60cm', 'cm length')] }
  },
  {
    name: 'wide sleeves that are so long',
    teaches: '“long” is of the sleeves that the sentence opens with',
    listing: { title: 'Cardigan', text: 'The sleeves are wide, 52 cm long.' },
    expect: { kind: 'jumper', structure: 'knit', measures: [m('sleeveLength', '52 cm', 'cm length')] }
  },
  {
    name: 'a garment with such sleeves that is so long',
    teaches: 'behind “with” the sleeves are not what the sentence speaks of',
    listing: { title: 'Cardigan', text: 'Cardigan with balloon sleeves, 52 cm long.' },
    expect: {
      kind: 'jumper',
      cut: { sleeve: 'balloon' },
      structure: 'knit',
      measures: [m('bodyLength', '52 cm', 'cm length')]
    }
  },
  {
    name: 'a rise by both its ends',
    teaches: 'from the top of the waistband to the crotch seam is the front rise',
    listing: {
      title: 'Running shorts',
      text: 'Inside leg is 5 inches, and from the top of the waistband to the crotch seam at the front is 10 inches.'
    },
    expect: { kind: 'shorts', measures: [m('inseam', '5 inches', 'in length'), m('frontRise', '10 inches', 'in length')] }
  },
  {
    name: 'the crotch from front to back',
    teaches: 'the whole crotch seam',
    listing: { title: 'Jeans', text: 'Crotch front to back: 25 in (63 cm)' },
    expect: { kind: 'jeans', measures: [m('crotchLength', '25 in', 'in length')] }
  },
  {
    name: 'legs of denim',
    teaches: 'no word says jeans; legs of denim are',
    listing: { title: 'Selvedge denim, broken in', text: 'Front rise is 10.75", thigh 12.25"' },
    expect: {
      kind: 'jeans',
      structure: 'woven',
      traits: ['denim', 'rigid'],
      measures: [m('frontRise', '10.75"', 'in length'), m('thigh', '12.25"', 'in flat judged')]
    }
  },
  {
    name: 'the leg width of shorts',
    teaches: 'on shorts a leg is measured where it ends',
    listing: { title: 'Shorts', text: 'Leg width 11.5"\nOutside leg 14.5"' },
    expect: { kind: 'shorts', measures: [m('legOpening', '11.5"', 'in flat'), m('outseam', '14.5"', 'in length')] }
  },
  {
    name: 'a back from armhole to armhole',
    teaches: 'a bracket that would be a chest elsewhere says where the back was measured',
    listing: { title: 'Day dress', text: 'Across back (armhole to armhole): 13.5"' },
    expect: { kind: 'dress', measures: [m('backWidth', '13.5"', 'in length')] }
  },
  {
    name: 'a collar that is not included',
    teaches: 'what is counted in or not names no figure',
    listing: { title: 'Trench coat', text: 'A1 (pit to pit): 60 cm\nA4 (total length, collar not included): 102 cm' },
    expect: { kind: 'coat', cut: { layer: 'coat' }, measures: [m('chest', '60 cm', 'cm flat'), m('bodyLength', '102 cm', 'cm length')] }
  },
  {
    name: 'a waistband within the outside leg',
    teaches: '“mit Bund” tells what is counted, and names no waist',
    listing: { title: 'Stoffhose', text: 'Schrittlänge 80 cm, Außenlänge mit Bund 106 cm.' },
    expect: {
      kind: 'trousers',
      language: 'de',
      measures: [m('inseam', '80 cm', 'cm length'), m('outseam', '106 cm', 'cm length')]
    }
  },
  {
    name: 'a waistband by its short word',
    teaches: 'the dot behind “inkl” changes nothing',
    listing: { title: 'Stoffhose', text: 'Schrittlänge 80 cm, Außenlänge inkl. Bund 106 cm.' },
    expect: {
      kind: 'trousers',
      language: 'de',
      measures: [m('inseam', '80 cm', 'cm length'), m('outseam', '106 cm', 'cm length')]
    }
  },
  {
    name: 'postage on top',
    teaches: '“frais de port en sus” is told behind the price, and is not the price',
    listing: { title: 'Pull en laine', text: 'Longueur dos : 62 cm\n35 € frais de port en sus' },
    expect: {
      kind: 'jumper',
      language: 'fr',
      fibres: [['wool', null]],
      measures: [m('bodyLength', '62 cm', 'cm length')],
      price: { amount: 35, currency: 'EUR' }
    }
  },
  {
    name: 'a note by its name',
    teaches: 'a tenner is ten pounds',
    listing: { title: 'Skirt', text: '18 inches from waistband to hem. Tenner.' },
    expect: {
      kind: 'skirt',
      measures: [m('skirtLength', '18 inches', 'in length')],
      price: { amount: 10, currency: 'GBP' }
    }
  },
  {
    name: 'a note for the postage',
    teaches: 'a sum before “postage” is no price',
    listing: { title: 'Skirt', text: 'Length 18", a fiver postage' },
    expect: { kind: 'skirt', measures: [m('skirtLength', '18"', 'in length')] }
  },
  {
    name: 'pulled out in brackets',
    teaches: 'a bracket that begins with “stretched” is of the figure in it; how far the waist pulls out is kept',
    listing: { title: 'Shorts', text: 'elastic waist 70 cm (stretched 90)' },
    expect: {
      kind: 'shorts',
      cut: { closing: 'elastic' },
      made: { elasticWaist: true, waistStretchedMm: 900 },
      measures: [m('waist', '70 cm', 'cm around judged')],
      leftAside: [aside('pulled-out', '90')]
    }
  },
  {
    name: 'how far it pulls, and nothing else',
    teaches: 'an answer may tell only how far the waist pulls out',
    listing: { title: 'Skirt', text: 'waist stretches to 36 inches' },
    expect: {
      kind: 'skirt',
      made: { elasticWaist: true, waistStretchedMm: 914.4 },
      leftAside: [aside('pulled-out', '36 inches', 'in')]
    }
  },
  {
    name: 'a stretch that no waist has',
    teaches: 'two figures too far apart are not one waist pulled out',
    listing: { title: 'Skirt', text: 'Waist 24" relaxed, 80" stretched' },
    expect: {
      kind: 'skirt',
      measures: [m('waist', '24"', 'in around judged')],
      leftAside: [aside('detail', '80"', 'in')]
    }
  },
  {
    name: 'a column a unit',
    teaches: 'under “in | cm” the first bare figure of a line is inches, and the second says it again',
    listing: { title: 'Trousers', text: 'Measure\tinches\tcm\nWaist\t32\t81\nInside leg\t30\t76' },
    expect: {
      kind: 'trousers',
      measures: [m('waist', '32', 'in around judged list'), m('inseam', '30', 'in length list')]
    }
  },
  {
    name: 'the other unit in brackets, told above',
    teaches: 'a line that names two units is a head of columns, brackets or not',
    listing: { title: 'Trousers', text: 'Measured in inches (cm)\nWaist 32 (81)\nInside leg 30 (76)' },
    expect: {
      kind: 'trousers',
      measures: [m('waist', '32', 'in around judged list'), m('inseam', '30', 'in length list')]
    }
  },
  {
    name: 'a line that has not all the columns',
    teaches: 'one figure under two units is of neither for sure: what it can be decides',
    listing: { title: 'Trousers', text: 'Measure\tinches\tcm\nWaist\t32\t81\nInside leg\t76' },
    expect: {
      kind: 'trousers',
      measures: [m('waist', '32', 'in around judged list'), m('inseam', '76', 'cm length list')]
    }
  },
  {
    name: 'inches at the head of a column',
    teaches: 'under a corner that is empty “in” is a unit and no preposition',
    listing: { title: 'Trousers', text: '\tin\tcm\nWaist\t32\t81\nHip\t40\t102' },
    expect: {
      kind: 'trousers',
      measures: [m('waist', '32', 'in around judged list'), m('hip', '40', 'in around judged list')]
    }
  }
]
