/** Whose sizes it is cut for: told by words that possess the garment, by the page's data, by labels that only one of the two has. */
import { aside, type Case, m } from '../case.ts'

export const whoseSizes: Case[] = [
  {
    name: 'a man’s by its title',
    teaches: '“mens” before the name of a garment says whose sizes it is cut for',
    listing: { title: 'Mens corduroy trousers', text: 'Waist 42 cm flat, inside leg 80 cm.' },
    expect: {
      kind: 'trousers',
      whose: 'men',
      structure: 'woven',
      traits: ['pile'],
      measures: [m('waist', '42 cm', 'cm flat'), m('inseam', '80 cm', 'cm length')]
    }
  },
  {
    name: 'a woman’s in the text',
    teaches: '“ladies” some words before the garment it possesses counts in a text without a title',
    listing: { text: 'Selling a ladies vintage wool coat. Pit to pit 52 cm.' },
    expect: { kind: 'coat', whose: 'women', fibres: [['wool', null]], measures: [m('chest', '52 cm', 'cm flat')] }
  },
  {
    name: 'gents, behind the garment',
    teaches: '“for men” and “gents” right behind the garment possess it',
    listing: { text: 'Waistcoat for men, pit to pit 52 cm.' },
    expect: { kind: 'waistcoat', whose: 'men', measures: [m('chest', '52 cm', 'cm flat')] }
  },
  {
    name: 'women’s before a size',
    teaches: '“women’s” right before a size says whose size',
    listing: { text: 'Linen shirt. Women’s size 12. Pit to pit 50 cm.' },
    expect: {
      kind: 'shirt',
      whose: 'women',
      fibres: [['linen', null]],
      sizeLabels: ['12'],
      measures: [m('chest', '50 cm', 'cm flat')],
      leftAside: [aside('size-label', '12')]
    }
  },
  {
    name: 'unisex',
    teaches: 'for both is whose it is not told',
    trap: true,
    listing: { title: 'Unisex mens sweatshirt', text: 'Pit to pit 58 cm.' },
    expect: { kind: 'jumper', cut: { knit: 'sweatshirt' }, measures: [m('chest', '58 cm', 'cm flat')] }
  },
  {
    name: 'my husband’s',
    teaches: 'whose wardrobe it came out of is not whose sizes it is cut for',
    trap: true,
    listing: { text: 'Shirt, was my husband’s. Pit to pit 58 cm.' },
    expect: { kind: 'shirt', measures: [m('chest', '58 cm', 'cm flat')] }
  },
  {
    name: 'fits women too',
    teaches: 'whom it would fit besides does not count against whose it is',
    trap: true,
    listing: { title: 'Mens shirt', text: 'Would fit womens size 14 too. Pit to pit 58 cm.' },
    expect: {
      kind: 'shirt',
      whose: 'men',
      sizeLabels: ['14'],
      measures: [m('chest', '58 cm', 'cm flat')],
      leftAside: [aside('size-label', '14')]
    }
  },
  {
    name: 'jeans of a boyfriend cut',
    teaches: 'a cut named after somebody is not whose sizes',
    trap: true,
    listing: { title: 'Boyfriend jeans', text: 'Waist 42 cm flat.' },
    expect: { kind: 'jeans', cut: { leg: 'relaxed' }, measures: [m('waist', '42 cm', 'cm flat')] }
  },
  {
    name: 'men’s department feel',
    teaches: '“men’s department feel” possesses a department, and “menswear style” a style',
    trap: true,
    listing: { title: 'Wool blazer, menswear style', text: 'Has a men’s department feel. Pit to pit 50 cm.' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'blazer' },
      made: { tailored: true },
      fibres: [['wool', null]],
      measures: [m('chest', '50 cm', 'cm flat')]
    }
  },
  {
    name: 'not women’s',
    teaches: 'a denied “women’s” does not count',
    trap: true,
    listing: { text: 'Jacket, not womens. Pit to pit 50 cm.' },
    expect: { kind: 'jacket', made: { tailored: false }, measures: [m('chest', '50 cm', 'cm flat')] }
  },
  {
    name: 'a girl’s dress',
    teaches: 'children stay a use, whoever else is named',
    trap: true,
    listing: { title: 'Girls dress, womenswear quality', text: 'Length 60 cm.' },
    expect: { kind: 'dress', use: 'child', measures: [m('bodyLength', '60 cm', 'cm length')] }
  },
  {
    name: 'a suit size',
    teaches: '42R is a label that men’s jackets alone have',
    listing: { title: 'Suit jacket 42R', text: 'Pit to pit 56 cm.' },
    expect: {
      kind: 'jacket',
      whose: 'men',
      cut: { layer: 'suit' },
      made: { tailored: true },
      sizeLabels: ['42R'],
      measures: [m('chest', '56 cm', 'cm flat')]
    }
  },
  {
    name: 'a British size of women',
    teaches: 'UK 12 is a size that women’s clothes alone have',
    listing: { title: 'Linen shirt UK 12', text: 'Pit to pit 50 cm.' },
    expect: { kind: 'shirt', whose: 'women', fibres: [['linen', null]], sizeLabels: ['UK 12'], measures: [m('chest', '50 cm', 'cm flat')] }
  },
  {
    name: 'a European size of a shirt',
    teaches: 'EU 40 is women’s on a dress; on a shirt it may be a man’s collar',
    trap: true,
    listing: { title: 'Linen shirt EU 40', text: 'Pit to pit 50 cm.' },
    expect: { kind: 'shirt', fibres: [['linen', null]], sizeLabels: ['EU 40'], measures: [m('chest', '50 cm', 'cm flat')] }
  },
  {
    name: 'a European size of a dress',
    teaches: 'EU 38 on a dress is women’s',
    listing: { title: 'Linen dress EU 38', text: 'Pit to pit 46 cm.' },
    expect: { kind: 'dress', whose: 'women', fibres: [['linen', null]], sizeLabels: ['EU 38'], measures: [m('chest', '46 cm', 'cm flat')] }
  },
  {
    name: 'a collar as a size',
    teaches: 'a shirt sized by its collar is a man’s',
    listing: { title: 'Formal shirt, collar size 16', text: 'Pit to pit 58 cm.' },
    expect: { kind: 'shirt', whose: 'men', measures: [m('chest', '58 cm', 'cm flat')] }
  },
  {
    name: 'whose, in the page’s data',
    teaches: 'the audience of schema.org says whose sizes where no word does',
    listing: {
      title: 'Pleated trousers',
      text: 'Waist 42 cm flat.',
      structured: [
        {
          '@type': 'Product',
          name: 'Pleated trousers',
          audience: { '@type': 'PeopleAudience', suggestedGender: 'https://schema.org/Male' }
        }
      ]
    },
    expect: { kind: 'trousers', cut: { pleats: 'front' }, whose: 'men', measures: [m('waist', '42 cm', 'cm flat')] }
  },
  {
    name: 'whose, by the path of its category',
    teaches: 'a category under Women says whose sizes',
    listing: {
      title: 'Pleated trousers',
      text: 'Waist 42 cm flat.',
      structured: [{ '@type': 'Product', name: 'Pleated trousers', category: 'Clothing > Women > Trousers' }]
    },
    expect: { kind: 'trousers', cut: { pleats: 'front' }, whose: 'women', measures: [m('waist', '42 cm', 'cm flat')] }
  }
]
