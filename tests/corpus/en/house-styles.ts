/** Ways of writing that are one dealer's habit and many dealers' too. */
import { aside, type Case, m, place } from '../case.ts'

export const houseStyles: Case[] = [
  {
    name: 'a label’s figure against the measured one, in brackets',
    teaches: 'what was measured counts, not what the label says of the bust',
    listing: { title: 'Ruffle blouse', text: 'Bust: 34 - 36 inches (measures 38)\nNeck: 14 inches buttoned' },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'blouse' },
      measures: [m('chest', '38', 'in around judged list'), m('neck', '14 inches', 'in around judged')],
      leftAside: [aside('unknown', '34 - 36 inches', 'in', 1, 35)]
    }
  },
  {
    name: 'an inseam by name and as measured',
    teaches: '“I measure” with a small figure is the garment measured again, not somebody’s body',
    listing: { title: 'Running shorts', text: 'Rise 10.5". Inseam is 5" as per the name but I measure 4.75". Drawstring end is loose.' },
    expect: {
      kind: 'shorts',
      cut: { closing: 'drawstring' },
      measures: [m('frontRise', '10.5"', 'in length'), m('inseam', '4.75"', 'in length')],
      leftAside: [aside('unknown', '5"', 'in', 2, 5)]
    }
  },
  {
    name: 'a chest by its label and as measured',
    teaches: '“but measures” sets right what stands before it',
    listing: { title: 'Jacket', text: 'Chest 42" on the label but measures 44", sleeve 24"' },
    expect: {
      kind: 'jacket',
      made: { tailored: false },
      measures: [m('chest', '44"', 'in around judged'), m('sleeveLength', '24"', 'in length')],
      leftAside: [aside('unknown', '42"', 'in')]
    }
  },
  {
    name: 'a second figure that measures something else',
    teaches: 'a measured figure far from the first does not take its place',
    listing: { title: 'Dress', text: 'Length 44", slit measures 9". Waist 15" flat, goes round 30"' },
    expect: {
      kind: 'dress',
      cut: { vent: 'slit' },
      measures: [m('bodyLength', '44"', 'in length'), m('waist', '15"', 'in flat')],
      leftAside: [aside('detail', '9"', 'in')]
    }
  },
  {
    name: 'sleeves with the cuffs folded back',
    teaches: 'how the cuffs lie says how the sleeve was taken; the figure is never the cuff’s girth',
    listing: {
      title: 'Aran cardigan',
      text: '24 inches pit to pit. The sleeves with the cuff folded back are 19 inches. Length 28 inches.'
    },
    expect: {
      kind: 'jumper',
      cut: { knit: 'chunky' },
      structure: 'knit',
      measures: [m('chest', '24 inches', 'in flat'), m('sleeveLength', '19 inches', 'in length'), m('bodyLength', '28 inches', 'in length')]
    }
  },
  {
    name: 'cuffs that can be turned back',
    teaches: 'a shorter sleeve with the cuffs turned back is set aside',
    listing: {
      title: 'Cashmere cardigan',
      text: 'Sleeves are 23 inches from the shoulder seam, or you can turn the cuffs back (then 20). Length 25 inches.'
    },
    expect: {
      kind: 'jumper',
      structure: 'knit',
      fibres: [['cashmere', null]],
      measures: [m('sleeveLength', '23 inches', 'in length'), m('bodyLength', '25 inches', 'in length')]
    }
  },
  {
    name: 'cuffs folded back so many inches',
    teaches: 'how deep a cuff is folded is a detail',
    listing: { title: 'Jumper', text: 'Sleeve 24". Cuffs fold back 3". Cuffs folded back 3 inches' },
    expect: {
      kind: 'jumper',
      measures: [m('sleeveLength', '24"', 'in length')],
      leftAside: [aside('detail', '3"', 'in'), aside('detail', '3 inches', 'in')]
    }
  },
  {
    name: 'bust: fits so much, lies at so much',
    teaches: 'advice behind a name ends where the garment is measured',
    listing: { title: 'Ribbed jumper', text: 'bust: fits 32 to 38, lies at 13.5" across when relaxed. waist 12" across.' },
    expect: {
      kind: 'jumper',
      cut: { knit: 'ribbed' },
      measures: [m('chest', '13.5"', 'in flat'), m('waist', '12"', 'in flat')],
      leftAside: [aside('fits-advice', '32 to 38', null, 1, 35)]
    }
  },
  {
    name: 'a back too wide for its shoulders',
    teaches: 'a back wider than the shoulders is how long the back is',
    listing: { title: 'Leather jacket', text: 'Chest // 18 1/2″ flat\nBack // 20 1/8″\nSleeve // 24″\nShoulders // 15 3/4″' },
    expect: {
      kind: 'jacket',
      cut: { layer: 'biker' },
      structure: 'leather',
      made: { tailored: false },
      measures: [
        m('chest', '18 1/2″', 'in flat', { value: 18.5 }),
        m('bodyLength', '20 1/8″', 'in length', { value: 20.125 }),
        m('sleeveLength', '24″', 'in length'),
        m('shoulderWidth', '15 3/4″', 'in length', { value: 15.75 })
      ]
    }
  },
  {
    name: 'a back from the collar down',
    teaches: 'what stands behind the figure says which way the back was taken',
    listing: { title: 'Jacket', text: 'Back: 20" collar seam down, chest: 20" flat' },
    expect: {
      kind: 'jacket',
      made: { tailored: false },
      measures: [m('bodyLength', '20"', 'in length'), m('chest', '20"', 'in flat', { nth: 2 })]
    }
  },
  {
    name: 'the drop of a kilt',
    teaches: 'on a skirt a drop is its length; a small one is none',
    listing: { title: 'Ladies kilt', text: 'Waist → 28 inches\nDrop → 24½ inches\nApron → 15 inches wide' },
    expect: {
      kind: 'skirt',
      whose: 'women',
      cut: { silhouette: 'kilt' },
      made: { skirtShape: 'pleated' },
      measures: [m('waist', '28 inches', 'in around judged'), m('skirtLength', '24½ inches', 'in length', { value: 24.5 })],
      leftAside: [aside('detail', '15 inches', 'in')]
    }
  },
  {
    name: 'the waistband of a jacket',
    teaches: 'the band below a jacket is its bottom edge; a waist beside it stays the waist',
    listing: { title: 'Cropped denim jacket', text: '21" pit to pit, 22" sleeves, 17.5" at the waistband' },
    expect: {
      kind: 'jacket',
      cut: { topLength: 'cropped', layer: 'denim' },
      structure: 'woven',
      traits: ['denim'],
      made: { tailored: false },
      measures: [m('chest', '21"', 'in flat'), m('sleeveLength', '22"', 'in length'), m('hem', '17.5"', 'in flat judged')]
    }
  },
  {
    name: 'how far a cape goes round',
    teaches: 'the edge of a cape may be very long',
    listing: { title: 'Wool cape', text: 'Length from back of neck 31 inches, bottom edge approx 140 inches round.' },
    expect: {
      kind: 'other',
      fibres: [['wool', null]],
      measures: [m('bodyLength', '31 inches', 'in length'), m('hem', '140 inches', 'in around')]
    }
  },
  {
    name: 'a petticoat’s lowest layer in metres',
    teaches: 'the lowest layer is the edge; a yoke’s depth is none',
    listing: { title: 'Net petticoat', text: 'Waist 25" relaxed\nYoke 8" deep\nLowest layer approx. 5 metres round' },
    expect: {
      kind: 'skirt',
      measures: [
        m('waist', '25"', 'in around judged'),
        { ...m('sweep', '5 metres', 'cm around', { value: 500 }), place: place('5 metres', 'cm', 500) }
      ],
      leftAside: [aside('detail', '8"', 'in')]
    }
  },
  {
    name: 'a neck to the floor hem',
    teaches: 'the floor is where the hem is; the way to it is no hem',
    listing: { title: 'Evening gown', text: 'Bust, 32 in.\nNape to floor hem, 54 in.\nNape to end of train, 71 in.' },
    expect: {
      kind: 'dress',
      measures: [m('chest', '32 in', 'in around judged'), m('bodyLength', '54 in', 'in length')],
      leftAside: [aside('detail', '71 in', 'in')]
    }
  },
  {
    name: 'a cap sleeve with a comma',
    teaches: 'a part that is nothing but a name and its figure is of that name',
    listing: { title: 'Wiggle dress', text: 'Hips, 19" flat. Length, 41" from nape. Cap sleeve, 4".' },
    expect: {
      kind: 'dress',
      cut: { silhouette: 'sheath', sleeve: 'cap' },
      made: { shortSleeves: true },
      measures: [m('hip', '19"', 'in flat'), m('bodyLength', '41"', 'in length'), m('sleeveLength', '4"', 'in length')]
    }
  },
  {
    name: 'a bracelet sleeve in short words',
    teaches: 'what kind of sleeve it is stands between the name and its figure',
    listing: { title: 'Jacket', text: 'SHDR 15" / SLV bracelet 17" / chest 19" flat' },
    expect: {
      kind: 'jacket',
      made: { tailored: false },
      measures: [m('shoulderWidth', '15"', 'in length'), m('sleeveLength', '17"', 'in length'), m('chest', '19"', 'in flat')]
    }
  },
  {
    name: 'one letter among names',
    teaches: 'an L by itself is the length where the rest of the list has names',
    listing: { title: 'Breton top', text: 'p2p 48, L 61, sleeve 57, shoulder 42 (cm)' },
    expect: {
      kind: 'knit-top',
      measures: [
        m('chest', '48', 'cm flat list'),
        m('bodyLength', '61', 'cm length list'),
        m('sleeveLength', '57', 'cm length list'),
        m('shoulderWidth', '42', 'cm length list')
      ]
    }
  },
  {
    name: 'the knee of a skirt',
    teaches: 'how wide a skirt is at the knee is none of its points',
    listing: { title: 'Pencil skirt', text: 'Waist: 26″ – Hip: 36″ – Knee: 33″ – Length: 25¾″' },
    expect: {
      kind: 'skirt',
      cut: { silhouette: 'pencil' },
      made: { skirtShape: 'straight' },
      measures: [
        m('waist', '26″', 'in around judged'),
        m('hip', '36″', 'in around judged'),
        m('skirtLength', '25¾″', 'in length', { value: 25.75 })
      ],
      leftAside: [aside('detail', '33″', 'in')]
    }
  },
  {
    name: 'a front point and a back of a waistcoat',
    teaches: 'the front point is a length down the front, which gives way to the back',
    listing: { title: 'Tweed waistcoat', text: 'Length (front point): 25"\nLength (back): 22"\nShoulders: 14"' },
    expect: {
      kind: 'waistcoat',
      cut: { layer: 'suit-waistcoat' },
      structure: 'woven',
      measures: [m('bodyLength', '22"', 'in length'), m('shoulderWidth', '14"', 'in length')],
      leftAside: [aside('detail', '25"', 'in')]
    }
  },
  {
    name: 'too wide for it',
    teaches: '“I’m too wide” is no body told; what follows measures the garment',
    listing: { title: 'Skirt', text: "Never worn by me as I'm too wide. Waist 26 inches, hips 36 inches" },
    expect: {
      kind: 'skirt',
      condition: 'never worn',
      measures: [m('waist', '26 inches', 'in around judged'), m('hip', '36 inches', 'in around judged')]
    }
  },
  {
    name: 'a price in words',
    teaches: 'a sum in words, before a postage in figures',
    listing: { title: 'Skirt', text: 'Waist 27". Fourteen pounds fifty, or make me an offer. Postage £3.35.' },
    expect: { kind: 'skirt', measures: [m('waist', '27"', 'in around judged')], price: { amount: 14.5, currency: 'GBP' } }
  },
  {
    name: 'another price in words',
    teaches: 'tens and ones, with a hyphen or none; a weight in pounds is no price',
    listing: { title: 'Dress', text: 'Weighs two pounds. Twenty-five quid to a good home.' },
    expect: { kind: 'dress', price: { amount: 25, currency: 'GBP' } }
  },
  {
    name: 'a price behind a fee',
    teaches: 'so much, for that reason: what stands before “so” is about something else',
    listing: { title: 'Dress', text: 'The fees are silly so £26 here. Belt missing.' },
    expect: { kind: 'dress', price: { amount: 26, currency: 'GBP' }, faults: ['Belt missing'] }
  },
  {
    name: 'dollars of Australia',
    teaches: 'where it is posted tells whose dollars they are; where it was made does not',
    listing: { title: 'Knitted polo shirt', text: 'Armpit to armpit 52cm. $28 inc post within Aus' },
    expect: {
      kind: 'knit-top',
      cut: { knit: 'tee' },
      structure: 'knit',
      measures: [m('chest', '52cm', 'cm flat')],
      price: { amount: 28, currency: 'AUD' }
    }
  },
  {
    name: 'dollars, and made elsewhere',
    teaches: 'made in Canada: the dollars may still be of the United States',
    listing: { title: 'Jumper', text: 'Made in Canada. Chest 20" flat. $28 shipped' },
    expect: { kind: 'jumper', measures: [m('chest', '20"', 'in flat')], price: { amount: 28, currency: 'USD' } }
  },
  {
    name: 'a pattern’s size and the finished garment',
    teaches: 'the bust a size stands for gives way to the one measured; told alone it would stay',
    listing: { title: 'Seersucker playsuit', text: 'Size 16 pattern (bust 34).\nbust = 37.5\nwaist = 27.5\nhips = 41 (inches)' },
    expect: {
      kind: 'jumpsuit',
      structure: 'woven',
      sizeLabels: ['16'],
      measures: [
        m('chest', '37.5', 'in around judged list'),
        m('waist', '27.5', 'in around judged list'),
        m('hip', '41', 'in around judged list')
      ],
      leftAside: [aside('size-label', '16'), aside('fits-advice', '34')]
    }
  },
  {
    name: 'a size and its girths in brackets',
    teaches: 'told nowhere else, what stands in brackets behind a size is of the garment',
    listing: { title: 'Dress', text: 'Size 12 (bust 36", waist 30"), length 44"' },
    expect: {
      kind: 'dress',
      whose: 'women',
      sizeLabels: ['12'],
      measures: [m('chest', '36"', 'in around judged'), m('waist', '30"', 'in around judged'), m('bodyLength', '44"', 'in length')],
      leftAside: [aside('size-label', '12')]
    }
  },
  {
    name: 'a bell sleeve’s end',
    teaches: 'the end of a bell sleeve is its cuff',
    listing: { title: 'Crochet top', text: 'width under arm 16" lying flat\nsleeve 24"\nbell end 11" flat' },
    expect: {
      kind: 'knit-top',
      structure: 'knit',
      measures: [m('chest', '16"', 'in flat'), m('sleeveLength', '24"', 'in length'), m('cuff', '11"', 'in flat')]
    }
  },
  {
    name: 'the same at the hip',
    teaches: 'a figure told of a second name without being written again, and none where the second has its own',
    listing: { title: 'Kaftan', text: '26" across under the arms, the same at the hip. Sleeves 11" wide at the opening, length 52"' },
    expect: {
      kind: 'dress',
      cut: { silhouette: 'smock' },
      measures: [m('chest', '26"', 'in flat'), m('hip', '26"', 'in flat'), m('cuff', '11"', 'in flat'), m('bodyLength', '52"', 'in length')]
    }
  },
  {
    name: 'the same colour at the waist, and waists of their own',
    teaches: 'what is the same need not be a figure',
    listing: { title: 'Coat', text: 'Chest 21 inches flat, the same tweed at the waist, and the same wear at the hem. Length 40 inches' },
    expect: { kind: 'coat', structure: 'woven', measures: [m('chest', '21 inches', 'in flat'), m('bodyLength', '40 inches', 'in length')] }
  },
  {
    name: 'how a smock falls on the seller',
    teaches: '“on me” speaks of its own sentence only, and “on me at” of the garment',
    listing: { title: 'Smock', text: 'Sleeves are quite long on me at 61 cm. Bust 110 cm around. Length 95 cm' },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'smock' },
      measures: [m('sleeveLength', '61 cm', 'cm length'), m('chest', '110 cm', 'cm around'), m('bodyLength', '95 cm', 'cm length')]
    }
  },
  {
    name: 'a back that begins the list',
    teaches: 'a bare word and a bare figure, alone between slashes at the start',
    listing: { title: 'Jacket', text: 'Back 29 // Chest 22 // Shoulder 18.5 — inches' },
    expect: {
      kind: 'jacket',
      made: { tailored: false },
      measures: [
        m('bodyLength', '29', 'in length list'),
        m('chest', '22', 'in flat judged list'),
        m('shoulderWidth', '18.5', 'in length list')
      ]
    }
  },
  {
    name: 'a size of Australia beside dollars',
    teaches: 'sizes of one country and no other tell whose dollars they are',
    listing: { title: 'Linen skirt', text: 'Waist 38 cm flat. AU 12. Asking 30 dollars.' },
    expect: {
      kind: 'skirt',
      whose: 'women',
      fibres: [['linen', null]],
      measures: [m('waist', '38 cm', 'cm flat')],
      price: { amount: 30, currency: 'AUD' },
      sizeLabels: ['AU 12'],
      leftAside: [aside('size-label', '12')]
    }
  },
  {
    name: 'a letter: aran cardigan, the chest said twice',
    teaches: 'prose with one unit for all of it: around and flat, long down the back, cuffs folded back',
    listing: {
      title: 'Aran cardigan, hand knit, shawl collar, cream, L',
      text: `Handknit aran cardi, leather buttons, 2 pockets. Wool, not itchy to me.

48 inch chest!! No honestly, 24 pit to pit. 
It's 28 long down the back and the sleeves with the cuff folded back are 19 (22 if you turn them down). Hem 22 across the rib as it lies.

Made for my uncle but I wear it like a coat. Size 14-20 depending how slouchy. few bobbles. £33`
    },
    expect: {
      kind: 'jumper',
      cut: { knit: 'chunky', closeness: 'oversized' },
      structure: 'knit',
      fibres: [['wool', null]],
      colour: 'cream',
      sizeLabels: ['L', '14-20'],
      mending: ['de-pill'],
      faults: ['few bobbles'],
      price: { amount: 33, currency: 'GBP' },
      measures: [
        m('chest', '48 inch', 'in around judged'),
        m('bodyLength', '28', 'in length list', { nth: 1 }),
        m('sleeveLength', '19', 'in length list'),
        m('hem', '22', 'in flat list', { nth: 2 })
      ],
      leftAside: [aside('size-label', '14-20', null, 1, 17)]
    }
  },
  {
    name: 'a letter: a skirt labelled behind its figures',
    teaches: 'names behind figures, a slit and a lining among them, a sum in words before a postage',
    listing: {
      title: 'Tweed midi skirt, heather purple, lined',
      text: `Lovely thick Scottish looking tweed, purple and moss with a fleck of orange. Back zip & hook.

27" waist
38" hips
28½" length
44" round the hem
7" slit at back
26" lining

60% wool 40% acrylic. Fits like a modern 8-10. Fourteen pounds fifty, or make me an offer. Postage £3.35.`
    },
    expect: {
      kind: 'skirt',
      whose: 'women',
      cut: { dressLength: 'midi', closing: 'back-zip', vent: 'slit' },
      structure: 'woven',
      made: { lined: true, opens: ['waist', 'sweep'] },
      sizeLabels: ['8-10'],
      fibres: [
        ['wool', 60],
        ['acrylic', 40]
      ],
      colour: 'purple',
      price: { amount: 14.5, currency: 'GBP' },
      measures: [
        m('waist', '27"', 'in around judged'),
        m('hip', '38"', 'in around judged'),
        m('skirtLength', '28½"', 'in length', { value: 28.5 }),
        m('sweep', '44"', 'in around')
      ],
      leftAside: [aside('detail', '7"', 'in', 2), aside('detail', '26"', 'in'), aside('size-label', '8-10', null, 1, 9)]
    }
  },
  {
    name: 'hips free beside a stretch',
    teaches: 'a name that is told to be free takes no figure; how far a waist pulls is set aside',
    listing: { title: 'Summer dress', text: 'Waist 15" flat, stretchy to 17", hips free, length 40". Bust 17.5" flat, pulls to 19".' },
    expect: {
      kind: 'dress',
      made: { waistStretchedMm: 863.6 },
      measures: [m('waist', '15"', 'in flat'), m('bodyLength', '40"', 'in length'), m('chest', '17.5"', 'in flat')],
      leftAside: [aside('pulled-out', '17"', 'in'), aside('detail', '19"', 'in')]
    }
  },
  {
    name: 'a full slip',
    teaches: 'what is worn under a dress is none',
    listing: { title: 'Vintage full slip, ivory nylon', text: 'Bust: 34". Waist: 29". Hips: 38".' },
    expect: {
      kind: 'other',
      fibres: [['polyamide', null]],
      colour: 'cream',
      measures: [m('chest', '34"', 'in around judged'), m('waist', '29"', 'in around judged'), m('hip', '38"', 'in around judged')]
    }
  }
]
