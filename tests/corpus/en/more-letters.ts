/** Whole letters of sellers, invented, with all that stands in them. */
import { aside, type Case, m } from '../case.ts'

export const moreLetters: Case[] = [
  {
    name: 'any: letter High waisted mom jeans W28 L30 light wash',
    teaches: 'W/L label against measured flat',
    listing: {
      title: 'High waisted mom jeans W28 L30 light wash',
      text: `Worn twice, too small for me now sadly. Label is W28 L30 but I measured them anyway xx
waist across: 35cm
rise: 29 cm
inside leg: 73cm
leg opening across: 17cm
98% cotton 2% elastane so a wee bit of give. £18. Will post 2nd class unless you ask. Machine wash 30`
    },
    expect: {
      stretchPercent: 9,
      kind: 'jeans',
      cut: { rise: 'high', leg: 'relaxed' },
      measures: [
        m('waist', '35cm', 'cm flat'),
        m('frontRise', '29 cm', 'cm length'),
        m('inseam', '73cm', 'cm length'),
        m('legOpening', '17cm', 'cm flat')
      ],
      fibres: [
        ['cotton', 98],
        ['elastane', 2]
      ],
      price: { amount: 18, currency: 'GBP' },
      sizeLabels: ['W28 L30'],
      leftAside: [aside('size-label', '28'), aside('size-label', '30')]
    }
  },
  {
    name: "any: letter Men's chunky cable knit cardigan oatmeal shawl collar L",
    teaches: 'a plain letter with nothing hard in it',
    listing: {
      title: "Men's chunky cable knit cardigan oatmeal shawl collar L",
      text: 'Super cosy. Chest (pit to pit) 58cm. Length 66cm. Sleeve from underarm 44cm. 70% acrylic 30% wool, hand wash. Slight bobbling under arms. £20'
    },
    expect: {
      kind: 'jumper',
      whose: 'men',
      cut: { knit: 'chunky' },
      measures: [m('chest', '58cm', 'cm flat'), m('bodyLength', '66cm', 'cm length'), m('sleeveUnderarm', '44cm', 'cm length')],
      fibres: [
        ['acrylic', 70],
        ['wool', 30]
      ],
      structure: 'knit',
      colour: 'beige',
      mending: ['de-pill'],
      price: { amount: 20, currency: 'GBP' },
      sizeLabels: ['L'],
      faults: ['Slight bobbling under arms']
    }
  },
  {
    name: 'any: letter 80s silk pleated midi skirt emerald green size S',
    teaches: 'waist nothing said plausibly flat',
    listing: {
      title: '80s silk pleated midi skirt emerald green size S',
      text: `Beautiful drape, side button closure.
Waist- 13″
Hips- 20″
Length- 30″
silk, dry clean. One faint water mark near hem not noticeable in wear. $32. Bundle and save!!
Estate find in Santa Fe, the lady had 30 of these in every color. Elastic free waistband, pleats still sharp. I'm happy to measure anything else, just ask before you buy.`
    },
    expect: {
      kind: 'skirt',
      cut: { era: '1980s', silhouette: 'pleated', dressLength: 'midi' },
      measures: [m('waist', '13″', 'in flat judged'), m('hip', '20″', 'in flat judged'), m('skirtLength', '30″', 'in length')],
      fibres: [['silk', null]],
      traits: ['silk', 'pleated'],
      made: { 'skirtShape': 'pleated' },
      colour: 'green',
      mending: ['clean'],
      price: { amount: 32, currency: 'USD' },
      sizeLabels: ['S'],
      faults: ['One faint water mark near hem not noticeable in wear']
    }
  },
  {
    name: 'any: letter Vintage 70s prairie maxi dress high neck milkmaid cottagecore size 10',
    teaches: 'flat stated though the figures are around',
    listing: {
      title: 'Vintage 70s prairie maxi dress high neck milkmaid cottagecore size 10',
      text: `Measurements taken with the dress lying flat:
Bust: 34 inches
Waist: 27 inches
Hips: 40 inches
Length: 54 inches
100% polyester with lace yoke. Model is 5ft 7 and an 8. Couple of pulled threads at cuffs. £45`
    },
    expect: {
      kind: 'dress',
      whose: 'women',
      cut: { era: '1970s', dressLength: 'maxi' },
      measures: [
        m('chest', '34 inches', 'in around judged'),
        m('waist', '27 inches', 'in around judged'),
        m('hip', '40 inches', 'in around judged'),
        m('bodyLength', '54 inches', 'in length')
      ],
      fibres: [['polyester', 100]],
      price: { amount: 45, currency: 'GBP' },
      sizeLabels: ['10'],
      faults: ['Couple of pulled threads at cuffs'],
      leftAside: [aside('model', '5ft 7', 'in', 1, 67)],
      issues: [
        {
          code: 'reading.basis-doubt',
          about: '34 inches',
          readings: [
            ['chest', 863.6],
            ['chest', 1727.2]
          ]
        },
        {
          code: 'reading.basis-doubt',
          about: '27 inches',
          readings: [
            ['waist', 685.8],
            ['waist', 1371.6]
          ]
        },
        {
          code: 'reading.basis-doubt',
          about: '40 inches',
          readings: [
            ['hip', 1016],
            ['hip', 2032]
          ]
        }
      ]
    }
  },
  {
    name: 'any: letter Mens button down oxford shirt blue 16 1/2 34/35 slim',
    teaches: 'collar size in label',
    listing: {
      title: 'Mens button down oxford shirt blue 16 1/2 34/35 slim',
      text: 'Great shape, worn to the office maybe 5 times. 100% cotton. Pit to pit 22 in, shoulder 18 in, sleeve 26 in, length 31 in. Tag says 16 1/2 34/35. $24'
    },
    expect: {
      kind: 'shirt',
      whose: 'men',
      cut: { closeness: 'slim' },
      measures: [
        m('chest', '22 in', 'in flat'),
        m('shoulderWidth', '18 in', 'in length'),
        m('sleeveLength', '26 in', 'in length'),
        m('bodyLength', '31 in', 'in length')
      ],
      fibres: [['cotton', 100]],
      colour: 'blue',
      price: { amount: 24, currency: 'USD' },
      sizeLabels: ['16.5'],
      leftAside: [aside('size-label', '16 1/2', null, 1, 16.5)]
    }
  },
  {
    name: 'any: letter Boho maxi dress smocked back rust floral size M',
    teaches: 'relaxed against stretched',
    listing: {
      title: 'Boho maxi dress smocked back rust floral size M',
      text: `Only tried on. The back is smocked so it stretches.
Bust: 16" relaxed, 21" stretched (flat)
Waist: 14" relaxed, 18" stretched
Length: 52" shoulder to hem incl. the strap
Strap: 15" total
95% rayon 5% spandex. My bust is 36. $38, ships next day`
    },
    expect: {
      cut: { dressLength: 'maxi' },
      kind: 'dress',
      made: { waistStretchedMm: 914.4 },
      measures: [
        m('chest', '16"', 'in flat judged'),
        m('waist', '14"', 'in flat judged'),
        m('bodyLength', '52"', 'in length'),
        m('strap', '15"', 'in length')
      ],
      fibres: [
        ['viscose', 95],
        ['elastane', 5]
      ],
      colour: 'orange',
      price: { amount: 38, currency: 'USD' },
      sizeLabels: ['M'],
      leftAside: [aside('detail', '21"', 'in'), aside('pulled-out', '18"', 'in')]
    }
  },
  {
    name: 'any: letter Wide leg cropped jeans ecru size 14 BNWT',
    teaches: 'both units, cropped',
    listing: {
      title: 'Wide leg cropped jeans ecru size 14 BNWT',
      text: 'Brand new with tags, rrp £59. Waist 33in / 84cm. Rise 12in / 30cm. Inside leg 25in / 64cm. Hem 11in / 28cm across. Cotton. £25'
    },
    expect: {
      kind: 'jeans',
      cut: { leg: 'wide', legLength: 'cropped' },
      measures: [
        m('waist', '33in', 'in around judged'),
        m('frontRise', '12in', 'in length'),
        m('inseam', '25in', 'in length'),
        m('legOpening', '11in', 'in flat')
      ],
      fibres: [['cotton', null]],
      colour: 'beige',
      condition: 'bnwt',
      price: { amount: 25, currency: 'GBP' },
      sizeLabels: ['14']
    }
  },
  {
    name: 'any: letter 1970s western blouse pearl snaps pink gingham',
    teaches: 'a plain letter with nothing hard in it',
    listing: {
      title: '1970s western blouse pearl snaps pink gingham',
      text: `Bust 38”
Waist 34”
Shoulders 14.5”
Sleeves 23”
Length 26”
Cotton blend, no content tag. Replaced one snap. Pet free home. Ships from Tucson 85705. $28`
    },
    expect: {
      kind: 'shirt',
      cut: { era: '1970s', silhouette: 'blouse', closing: 'snaps' },
      measures: [
        m('chest', '38”', 'in around judged'),
        m('waist', '34”', 'in around judged'),
        m('shoulderWidth', '14.5”', 'in length'),
        m('sleeveLength', '23”', 'in length'),
        m('bodyLength', '26”', 'in length')
      ],
      fibres: [['cotton', null]],
      traits: ['check'],
      colour: 'pink',
      price: { amount: 28, currency: 'USD' }
    }
  },
  {
    name: 'any: letter 80s acid wash high waist tapered jeans juniors 11',
    teaches: 'number in cut name; size 11 junior; flat with no unit',
    listing: {
      title: '80s acid wash high waist tapered jeans juniors 11',
      text: `Measurements (inches, laid flat)
Waist 14 // Hips 19.5 // Rise 12.5 // Thigh 12 // Inseam 28 // Ankle 6.5
All cotton, no stretch whatsoever. tag junior 11, more like a 27 today. Frayed belt loop. 58 dollars ($58) bundle for a deal #80s #acidwash #momjeans`
    },
    expect: {
      kind: 'jeans',
      cut: { rise: 'high', leg: 'tapered' },
      measures: [
        m('waist', '14', 'in flat list'),
        m('hip', '19.5', 'in flat list'),
        m('frontRise', '12.5', 'in length list'),
        m('thigh', '12', 'in flat list', { nth: 2 }),
        m('inseam', '28', 'in length list'),
        m('legOpening', '6.5', 'in flat list')
      ],
      fibres: [['cotton', 100]],
      traits: ['rigid'],
      stretchPercent: 0,
      price: { amount: 58, currency: 'USD' },
      faults: ['Frayed belt loop']
    }
  },
  {
    name: 'any: letter 70s dagger collar shirt brown geometric print mens 15 1/2',
    teaches: 'collar 15.5 is measured and label; chest fits-advice',
    listing: {
      title: '70s dagger collar shirt brown geometric print mens 15 1/2',
      text: `Proper disco era this. Label 15 1/2. Would suit a 38-40 chest, being 41" underarm to underarm all round. Sleeve 24", Length 29" at the longest bit of the tail, collar points 4". 65/35 poly cotton. one button doesn't match. £14 posted second class`
    },
    expect: {
      kind: 'shirt',
      whose: 'men',
      cut: { era: '1970s' },
      measures: [m('chest', '41"', 'in around judged'), m('sleeveLength', '24"', 'in length'), m('bodyLength', '29"', 'in length')],
      fibres: [
        ['polyester', 65],
        ['cotton', 35]
      ],
      colour: 'brown',
      price: { amount: 14, currency: 'GBP' },
      sizeLabels: ['15.5'],
      leftAside: [aside('size-label', '15 1/2', null, 1, 15.5), aside('fits-advice', '38-40', null, 1, 39), aside('detail', '4"', 'in', 2)]
    }
  },
  {
    name: 'any: letter 80s silk dress batwing sleeve jewel purple belted (Dublin)',
    teaches: 'bullets like decimal points',
    listing: {
      title: '80s silk dress batwing sleeve jewel purple belted (Dublin)',
      text: `Real silk 100%, a dream on. Measurements with it lying on the table:
. Bust 23" (batwing)
. Waist 15"
. Hips 21"
. Length 45"
. Cuff 3.5"
Shoulder pads can come out. Tiny snag at back. €55 an post registered extra €8`
    },
    expect: {
      kind: 'dress',
      cut: { era: '1980s', shoulder: 'dolman' },
      measures: [
        m('chest', '23"', 'in flat judged'),
        m('waist', '15"', 'in flat judged'),
        m('hip', '21"', 'in flat judged'),
        m('bodyLength', '45"', 'in length'),
        m('cuff', '3.5"', 'in flat judged')
      ],
      fibres: [['silk', 100]],
      traits: ['silk'],
      colour: 'purple',
      price: { amount: 55, currency: 'EUR' },
      faults: ['Tiny snag at back']
    }
  },
  {
    name: 'any: letter Linen mix wide leg trousers sage M elasticated',
    teaches: 'elastic waist relaxed to stretched',
    listing: {
      title: 'Linen mix wide leg trousers sage M elasticated',
      text: `Perfect for holidays. Waist: 14" relaxed, 19" fully stretched (flat). Rise: 13". Inside leg: 28.5". Leg width at hem: 12". 55% linen 45% viscose, wash at 30. £19, worn twice so basically new.
They've got proper pockets you'd fit a phone in. I'm 5ft 3 and they sit on the ankle.`
    },
    expect: {
      kind: 'trousers',
      cut: { leg: 'wide' },
      made: { elasticWaist: true, waistStretchedMm: 965.2 },
      measures: [
        m('waist', '14"', 'in flat judged'),
        m('frontRise', '13"', 'in length'),
        m('inseam', '28.5"', 'in length'),
        m('legOpening', '12"', 'in flat')
      ],
      fibres: [
        ['linen', 55],
        ['viscose', 45]
      ],
      colour: 'green',
      price: { amount: 19, currency: 'GBP' },
      sizeLabels: ['M'],
      leftAside: [aside('pulled-out', '19"', 'in'), aside('model', '5ft 3', 'in', 1, 63)]
    }
  },
  {
    name: 'any: letter Bodycon midi ribbed knit dress chocolate size L',
    teaches: "model's body numbers",
    listing: {
      title: 'Bodycon midi ribbed knit dress chocolate size L',
      text: `Ribbed + super stretchy. Measurements unstretched, flat: armpit to armpit 15.75", waist 13.5", hip 17", length 44".
Model is 5'9", bust 34", waist 26", hips 37" wearing a S in a different color. 96% polyester 4% spandex. No flaws. $26`
    },
    expect: {
      stretchPercent: 60,
      kind: 'dress',
      cut: { silhouette: 'bodycon', dressLength: 'midi' },
      measures: [
        m('chest', '15.75"', 'in flat'),
        m('waist', '13.5"', 'in flat'),
        m('hip', '17"', 'in flat'),
        m('bodyLength', '44"', 'in length')
      ],
      fibres: [
        ['polyester', 96],
        ['elastane', 4]
      ],
      structure: 'knit',
      colour: 'brown',
      price: { amount: 26, currency: 'USD' },
      sizeLabels: ['L'],
      leftAside: [
        aside('model', `5'9"`, 'in', 1, 69),
        aside('model', '34"', 'in'),
        aside('model', '26"', 'in'),
        aside('model', '37"', 'in')
      ]
    }
  },
  {
    name: "any: letter Men's slim selvedge jeans raw indigo 34 x 32",
    teaches: 'waist already doubled beside flat girths, mixed fractions',
    listing: {
      title: "Men's slim selvedge jeans raw indigo 34 x 32",
      text: `Soaked once, hardly worn. Tag 34 x 32, 13.5 oz denim.
Waist (laid flat, doubled) = 35 inches
Front rise = 10 1/4 inches
Back rise = 14 1/2 inches
Thigh (flat at crotch) = 11 3/4 inches
Knee (flat) = 8 1/2 inches
Inseam = 33 inches
Hem (flat) = 7 1/2 inches
99% cotton 1% elastane. Slight crotch fading. $35 + $9 priority`
    },
    expect: {
      kind: 'jeans',
      whose: 'men',
      cut: { leg: 'slim' },
      measures: [
        m('waist', '35 inches', 'in around judged'),
        m('frontRise', '10 1/4 inches', 'in length', { value: 10.25 }),
        m('backRise', '14 1/2 inches', 'in length', { value: 14.5 }),
        m('thigh', '11 3/4 inches', 'in flat', { value: 11.75 }),
        m('knee', '8 1/2 inches', 'in flat', { value: 8.5 }),
        m('inseam', '33 inches', 'in length'),
        m('legOpening', '7 1/2 inches', 'in flat', { value: 7.5 })
      ],
      fibres: [
        ['cotton', 99],
        ['elastane', 1]
      ],
      traits: ['rigid', 'denim'],
      structure: 'woven',
      colour: 'blue',
      mending: ['dye'],
      price: { amount: 35, currency: 'USD' },
      sizeLabels: ['W34 L32'],
      faults: ['Slight crotch fading'],
      leftAside: [aside('size-label', '34'), aside('size-label', '32')]
    }
  },
  {
    name: 'any: letter Waxed field coat olive corduroy collar mens L',
    teaches: 'a plain letter with nothing hard in it',
    listing: {
      title: 'Waxed field coat olive corduroy collar mens L',
      text: "Rewaxed last winter so it'll keep you dry walking the dog. Pit to pit: 61cm / Sleeve: 65cm / Shoulder: 50cm / Back: 86cm. Cotton 100%, brass two way zip. Small tear in the poacher's pocket lining, wax worn at cuffs. £75 collected or I'll courier for £8"
    },
    expect: {
      kind: 'coat',
      whose: 'men',
      cut: { layer: 'waxed', closing: 'front-zip' },
      measures: [
        m('chest', '61cm', 'cm flat'),
        m('sleeveLength', '65cm', 'cm length'),
        m('shoulderWidth', '50cm', 'cm length'),
        m('bodyLength', '86cm', 'cm length')
      ],
      fibres: [['cotton', 100]],
      traits: ['coated'],
      colour: 'green',
      mending: ['re-line-pocket'],
      price: { amount: 75, currency: 'GBP' },
      sizeLabels: ['L'],
      faults: ["Small tear in the poacher's pocket lining, wax worn at cuffs"]
    }
  },
  {
    name: 'any: letter Edwardian style high neck blouse antique white lawn pintucks lace',
    teaches: 'several columns bust/waist in joint',
    listing: {
      title: 'Edwardian style high neck blouse antique white lawn pintucks lace',
      text: `True antique I believe c. 1905. Hand done lace insertion, buttons up the back. TINY.
bust/waist 32″/23″
back width across shoulders 13″
neck 12½″
sleeve, underarm 17″
cuff 7″
length from nape 21″
100% cotton. Several mended spots in lace, pinpoint rust marks. Sold as found. $34`
    },
    expect: {
      kind: 'shirt',
      cut: { silhouette: 'blouse' },
      measures: [
        m('chest', '32″', 'in around judged'),
        m('waist', '23″', 'in around judged'),
        m('backWidth', '13″', 'in length'),
        m('neck', '12½″', 'in around judged', { value: 12.5 }),
        m('sleeveUnderarm', '17″', 'in length'),
        m('cuff', '7″', 'in around judged', { nth: 2 }),
        m('bodyLength', '21″', 'in length')
      ],
      fibres: [['cotton', 100]],
      colour: 'white',
      mending: ['clean'],
      price: { amount: 34, currency: 'USD' },
      faults: ['Several mended spots in lace, pinpoint rust marks'],
      issues: [
        {
          code: 'reading.basis-doubt',
          about: '7″',
          readings: [
            ['cuff', 177.8],
            ['cuff', 355.6]
          ]
        }
      ]
    }
  },
  {
    name: 'any: letter 50s circle skirt felt poodle style handmade pink',
    teaches: 'number before name, huge sweep',
    listing: {
      title: '50s circle skirt felt poodle style handmade pink',
      text: 'Handmade, no tags. 25" waist, 27" long, hem circumference 180"!! Zipper is 7" metal and zips fine. Cotton felt... says the seller before me 100% cotton. moth nips along hem (3 or 4). Petticoat NOT included. $45, ship USPS'
    },
    expect: {
      kind: 'skirt',
      cut: { era: '1940s-50s', silhouette: 'circle' },
      measures: [m('waist', '25"', 'in around judged'), m('skirtLength', '27"', 'in length'), m('sweep', '180"', 'in around judged')],
      fibres: [['cotton', 100]],
      made: { 'skirtShape': 'circle' },
      colour: 'pink',
      mending: ['darn', 'treat-pests'],
      price: { amount: 45, currency: 'USD' },
      faults: ['moth nips along hem (3 or 4)'],
      leftAside: [aside('detail', '7"', 'in', 2)]
    }
  },
  {
    name: 'any: letter Denim shorts size 8 raw hem festival',
    teaches: 'a plain letter with nothing hard in it',
    listing: {
      title: 'Denim shorts size 8 raw hem festival',
      text: 'waist 14.5” across hips 18.5” across rise 10.5” inside leg 2.5”. 100% cotton. £9 no time wasters pls'
    },
    expect: {
      kind: 'shorts',
      measures: [
        m('waist', '14.5”', 'in flat judged'),
        m('hip', '18.5”', 'in flat'),
        m('frontRise', '10.5”', 'in length'),
        m('inseam', '2.5”', 'in length')
      ],
      fibres: [['cotton', 100]],
      traits: ['denim'],
      structure: 'woven',
      price: { amount: 9, currency: 'GBP' },
      sizeLabels: ['8']
    }
  },
  {
    name: 'any: letter Utility jumpsuit olive short sleeve size 6 petite',
    teaches: 'number before name, bare figures with names after, model body',
    listing: {
      title: 'Utility jumpsuit olive short sleeve size 6 petite',
      text: `100% tencel, so soft. Laying flat: 18" pit to pit, 15" waist w/ drawstring loose, 19.5" hips, 25" inseam. Shoulder to crotch 28". I'm 5'2 115 lbs. $30`
    },
    expect: {
      kind: 'jumpsuit',
      cut: { silhouette: 'boiler', sleeve: 'short', closing: 'drawstring' },
      made: { shortSleeves: true },
      measures: [
        m('chest', '18"', 'in flat'),
        m('waist', '15"', 'in flat judged'),
        m('hip', '19.5"', 'in flat judged'),
        m('inseam', '25"', 'in length'),
        m('torsoLength', '28"', 'in length')
      ],
      fibres: [['lyocell', 100]],
      colour: 'green',
      price: { amount: 30, currency: 'USD' },
      sizeLabels: ['6'],
      leftAside: [aside('model', "5'2", 'in', 1, 62)]
    }
  },
  {
    name: "any: letter Men's loose fit carpenter jeans stone W36 L32",
    teaches: 'stated label against measured waist; ambiguous inside leg both units',
    listing: {
      title: "Men's loose fit carpenter jeans stone W36 L32",
      text: `Bought the wrong size online and missed the return window (typical). Tagged 36/32. Comes up big.
Waist: 96cm / 38"
Hips: 118cm / 46"
Rise: 32cm / 12.5"
Inside leg: 81cm / 32"
Outside leg: 109cm / 43"
Hem: 44cm / 17"
100% cotton. No flaws at all. £22 plus £3.39 locker to locker.`
    },
    expect: {
      kind: 'jeans',
      whose: 'men',
      measures: [
        m('waist', '96cm', 'cm around judged'),
        m('hip', '118cm', 'cm around judged'),
        m('frontRise', '32cm', 'cm length'),
        m('inseam', '81cm', 'cm length'),
        m('outseam', '109cm', 'cm length'),
        m('legOpening', '44cm', 'cm around judged')
      ],
      fibres: [['cotton', 100]],
      colour: 'beige',
      price: { amount: 22, currency: 'GBP' },
      sizeLabels: ['W36 L32'],
      leftAside: [aside('size-label', '36'), aside('size-label', '32')]
    }
  },
  {
    name: 'any: letter 1950s pencil skirt charcoal wool kick pleat',
    teaches: 'waist range, details in inches around it',
    listing: {
      title: '1950s pencil skirt charcoal wool kick pleat',
      text: `Wiggle wiggle! Nice heavy wool, half lined.
Waist: 24-25" (the hook has two eyes)
Hip: 36"
Length: 28"
Hem around: 38"
Kick pleat is 6", zipper 7", hem 2". Lining seam restitched by hand. $36
I've listed 4 other skirts from the same closet tonight so check them out, shipping is only $1.50 for each one more.`
    },
    expect: {
      kind: 'skirt',
      cut: { era: '1940s-50s', silhouette: 'pencil', vent: 'kick-pleat' },
      measures: [
        m('waist', '24-25"', 'in around judged', { value: 24.5, low: 24, high: 25 }),
        m('hip', '36"', 'in around judged'),
        m('skirtLength', '28"', 'in length'),
        m('sweep', '38"', 'in around')
      ],
      fibres: [['wool', null]],
      made: { 'skirtShape': 'straight', 'opens': ['sweep'], 'hemDepthMm': 50.8 },
      colour: 'grey',
      price: { amount: 36, currency: 'USD' },
      leftAside: [aside('detail', '6"', 'in', 2), aside('detail', '7"', 'in'), aside('detail', '2"', 'in')]
    }
  },
  {
    name: 'any: letter Shirt dress belted khaki cotton size 12 worn once',
    teaches: 'nothing said, plausibly flat',
    listing: {
      title: 'Shirt dress belted khaki cotton size 12 worn once',
      text: `Bought for a christening and haven't had it on since.
Chest: 49cm
Waist: 41cm
Hips: 53cm
Shoulders: 39cm
Sleeve: 36cm (rolled)
Length: 104cm
97% cotton 3% elastane. Iron on reverse at 150. £28
Rolled sleeve tabs, chest pocket, and a tie belt (150cm long) that I've never used.`
    },
    expect: {
      kind: 'dress',
      whose: 'women',
      cut: { silhouette: 'shirt-dress', closing: 'ties' },
      measures: [
        m('chest', '49cm', 'cm flat judged'),
        m('waist', '41cm', 'cm flat judged'),
        m('hip', '53cm', 'cm flat judged'),
        m('shoulderWidth', '39cm', 'cm length'),
        m('sleeveLength', '36cm', 'cm length'),
        m('bodyLength', '104cm', 'cm length')
      ],
      fibres: [
        ['cotton', 97],
        ['elastane', 3]
      ],
      colour: 'khaki',
      condition: 'worn once',
      price: { amount: 28, currency: 'GBP' },
      sizeLabels: ['12'],
      leftAside: [aside('detail', '150cm', 'cm')]
    }
  },
  {
    name: 'any: letter Ladies leather biker jacket 90s soft black eu 38',
    teaches: 'lapel, EU/UK size labels',
    listing: {
      title: 'Ladies leather biker jacket 90s soft black eu 38',
      text: `Buttery soft. From Galway, post to all of Ireland & UK
Bust: pit to pit 18.5"
Waist: 16" across
Shoulders: 16"
Sleeves: 23.5"
Length at back: 20"
EU 38 = uk 10. Leather outer, poly lining, lining torn in pocket, scuff on elbow. €42`
    },
    expect: {
      kind: 'jacket',
      whose: 'women',
      cut: { layer: 'biker' },
      measures: [
        m('chest', '18.5"', 'in flat'),
        m('waist', '16"', 'in flat'),
        m('shoulderWidth', '16"', 'in length', { nth: 2 }),
        m('sleeveLength', '23.5"', 'in length'),
        m('bodyLength', '20"', 'in length')
      ],
      structure: 'leather',
      made: { 'tailored': false, 'lined': true },
      colour: 'black',
      mending: ['re-line-pocket', 'polish-leather'],
      price: { amount: 42, currency: 'EUR' },
      sizeLabels: ['EU 38', 'UK 10'],
      faults: ['Leather outer, poly lining, lining torn in pocket, scuff on elbow'],
      leftAside: [aside('size-label', '38'), aside('size-label', '10')]
    }
  },
  {
    name: 'any: letter Ribbed henley long sleeve rose S/M bundle of basics',
    teaches: 'bare figures list with no unit, flat implied by p2p',
    listing: {
      title: 'Ribbed henley long sleeve rose S/M bundle of basics',
      text: 'p2p 17, length 24, sleeve 23. Inches obvs. 60% modal 40% cotton. Tiny pilling. $12, 3 for $30'
    },
    expect: {
      kind: 'knit-top',
      cut: { knit: 'ribbed', sleeve: 'long' },
      measures: [
        m('chest', '17', 'in flat guessed'),
        m('bodyLength', '24', 'in length guessed'),
        m('sleeveLength', '23', 'in length guessed')
      ],
      fibres: [
        ['modal', 60],
        ['cotton', 40]
      ],
      colour: 'pink',
      mending: ['de-pill'],
      price: { amount: 12, currency: 'USD' },
      sizeLabels: ['S', 'M'],
      faults: ['Tiny pilling'],
      issues: [{ code: 'reading.unit-judged', about: '17' }]
    }
  },
  {
    name: "any: letter 70s high waist plaid trousers wide leg bell women's 9/10",
    teaches: 'flat said in head though the figures are around',
    listing: {
      title: "70s high waist plaid trousers wide leg bell women's 9/10",
      text: `Measurements taken lying flat:
Waist: 28"
Hips: 37"
Front rise: 11.5"
Inseam: 31"
Length: 42"
Wool poly blend 55/45. Pants have 1.5" hem to let down. small snag below back pocket. $39
Wore these for a '70s dance at church and got so many compliments. Will ship within 2 days.`
    },
    expect: {
      kind: 'trousers',
      whose: 'women',
      cut: { rise: 'high', leg: 'wide' },
      measures: [
        m('waist', '28"', 'in around judged'),
        m('hip', '37"', 'in around judged'),
        m('frontRise', '11.5"', 'in length'),
        m('inseam', '31"', 'in length'),
        m('outseam', '42"', 'in length')
      ],
      fibres: [
        ['wool', 55],
        ['polyester', 45]
      ],
      traits: ['check'],
      made: { 'hemDepthMm': 38.1 },
      price: { amount: 39, currency: 'USD' },
      faults: ['small snag below back pocket'],
      allowances: [{ point: 'inseam', mm: 38.1, place: { text: '1.5"', nth: 2, value: 1.5, unit: 'in' } }],
      issues: [
        {
          code: 'reading.basis-doubt',
          about: '28"',
          readings: [
            ['waist', 711.2],
            ['waist', 1422.4]
          ]
        },
        {
          code: 'reading.basis-doubt',
          about: '37"',
          readings: [
            ['hip', 939.8],
            ['hip', 1879.6]
          ]
        }
      ]
    }
  }
]
