/** Figures that are hard to take for what they are: glued, in pairs, without a name, of two garments, told twice, or no measures at all. */
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import type { WrittenCase, WrittenMeasure } from './written-case.ts'

type Unit = WrittenMeasure['unit']
type More = Omit<Partial<WrittenMeasure>, 'point' | 'text' | 'value' | 'unit' | 'basis'>

/** A measure laid flat, taken around, or along; `text` as it stands, its value told apart. */
const flat = (point: PointId, text: string, value: number, unit: Unit, more: More = {}): WrittenMeasure => ({
  point,
  text,
  value,
  unit,
  basis: 'flat',
  ...more
})
const around = (point: PointId, text: string, value: number, unit: Unit, more: More = {}): WrittenMeasure => ({
  point,
  text,
  value,
  unit,
  basis: 'around',
  ...more
})
const along = (point: PointId, text: string, value: number, unit: Unit, more: More = {}): WrittenMeasure => ({
  point,
  text,
  value,
  unit,
  basis: 'length',
  ...more
})

/** A text with nothing to read but its kind and its measures. */
const plain = (
  id: string,
  kind: GarmentKind | null,
  title: string,
  text: string,
  measures: WrittenMeasure[],
  more: Partial<WrittenCase> = {}
): WrittenCase => ({ id, class: classOf(id), lang: 'en', title, text, kind, measures, price: null, fibres: [], ...more })

const CLASSES = [
  'glued',
  'two garments',
  'no names',
  'parted decimals',
  'to the hem',
  'sleeves',
  'pairs',
  'wraps and backs',
  'figure first',
  'told twice',
  'two sources',
  'no measures',
  'basis of the list'
]
/** fig-3-02 is the second of the third class. */
const classOf = (id: string): string => CLASSES[Number(id.split('-')[1]) - 1] ?? 'plain'

const glued: WrittenCase[] = [
  plain('fig-1-01', 'knit-top', 'Striped t-shirt', 'chest20waist18length27\nall in inches, laid flat', [
    flat('chest', '20', 20, 'in'),
    flat('waist', '18', 18, 'in'),
    along('bodyLength', '27', 27, 'in')
  ]),
  plain('fig-1-02', 'jumper', 'Grey jumper', 'P2P21in L26in sleeve24in', [
    flat('chest', '21in', 21, 'in'),
    along('bodyLength', '26in', 26, 'in'),
    along('sleeveLength', '24in', 24, 'in')
  ]),
  plain(
    'fig-1-03',
    'shirt',
    'Bluse aus Leinen',
    'Länge70cm, Achsel zu Achsel52cm, Ärmel58cm',
    [along('bodyLength', '70cm', 70, 'cm'), flat('chest', '52cm', 52, 'cm'), along('sleeveLength', '58cm', 58, 'cm')],
    { lang: 'de', fibres: [['linen', null]] }
  ),
  plain(
    'fig-1-04',
    'skirt',
    'Pencil skirt',
    'Waist:26Hips:36Length:25 inches',
    [around('waist', '26', 26, 'in'), around('hip', '36', 36, 'in'), along('skirtLength', '25 inches', 25, 'in')],
    { cut: { silhouette: 'pencil' } }
  ),
  plain('fig-1-05', 'jeans', 'Straight jeans', 'waist16rise11inseam30leg opening8\nall measurements in inches, laid flat', [
    flat('waist', '16', 16, 'in', { nth: 1 }),
    along('frontRise', '11', 11, 'in'),
    along('inseam', '30', 30, 'in'),
    flat('legOpening', '8', 8, 'in')
  ]),
  plain('fig-1-06', 'jacket', 'Denim jacket', 'PTP22 Sleeve24.5 Length25 Shoulders18 (inches)', [
    flat('chest', '22', 22, 'in'),
    along('sleeveLength', '24.5', 24.5, 'in'),
    along('bodyLength', '25', 25, 'in'),
    along('shoulderWidth', '18', 18, 'in')
  ]),
  plain(
    'fig-1-07',
    'dress',
    'Robe longue',
    'Longueur120cm tour de taille74cm poitrine46cm à plat',
    [along('bodyLength', '120cm', 120, 'cm'), around('waist', '74cm', 74, 'cm'), flat('chest', '46cm', 46, 'cm')],
    { lang: 'fr' }
  ),
  plain('fig-1-08', 'jeans', 'Faded jeans', 'W16" H20" R11.5" I29" LO7.5"', [
    flat('waist', '16"', 16, 'in'),
    flat('hip', '20"', 20, 'in'),
    along('frontRise', '11.5"', 11.5, 'in'),
    along('inseam', '29"', 29, 'in'),
    flat('legOpening', '7.5"', 7.5, 'in')
  ]),
  plain(
    'fig-1-09',
    'dress',
    'Cotton day dress',
    'bust (measured 1 inch below the armhole, zipped) - 18"\nwaist (taken at the narrowest, unstretched) - 14"\nlength (back of neck to the lowest point) - 40"',
    [flat('chest', '18"', 18, 'in'), flat('waist', '14"', 14, 'in'), along('bodyLength', '40"', 40, 'in')],
    { aside: ['1 inch'], fibres: [['cotton', null]] }
  ),
  plain(
    'fig-1-10',
    'jacket',
    'Tweed jacket',
    'Chest [buttoned, seam to seam]: 21.5 in\nSleeve [shoulder seam to end of cuff]: 25 in\nLength [nape to hem, collar not counted]: 29 in',
    [flat('chest', '21.5 in', 21.5, 'in'), along('sleeveLength', '25 in', 25, 'in'), along('bodyLength', '29 in', 29, 'in')]
  ),
  plain('fig-1-11', 'jumper', 'Cable knit jumper', '20inch chest/26inch length/23inch sleeve', [
    flat('chest', '20inch', 20, 'in'),
    along('bodyLength', '26inch', 26, 'in'),
    along('sleeveLength', '23inch', 23, 'in')
  ]),
  plain('fig-1-12', 'dress', 'Tea dress', 'Bust: 20inWaist: 17inLength: 38in', [
    flat('chest', '20in', 20, 'in'),
    flat('waist', '17in', 17, 'in'),
    along('bodyLength', '38in', 38, 'in')
  ]),
  plain(
    'fig-1-13',
    'trousers',
    'Pleated wool trousers',
    'Waist 30"Hips 40"Inseam 28"Rise 12"',
    [
      around('waist', '30"', 30, 'in'),
      around('hip', '40"', 40, 'in'),
      along('inseam', '28"', 28, 'in'),
      along('frontRise', '12"', 12, 'in')
    ],
    { fibres: [['wool', null]] }
  ),
  plain(
    'fig-1-14',
    'coat',
    'Cappotto donna',
    'spalle42cm torace54cm maniche60cm lunghezza98cm',
    [
      along('shoulderWidth', '42cm', 42, 'cm'),
      flat('chest', '54cm', 54, 'cm'),
      along('sleeveLength', '60cm', 60, 'cm'),
      along('bodyLength', '98cm', 98, 'cm')
    ],
    { lang: 'it' }
  )
]

const twoGarments: WrittenCase[] = [
  plain(
    'fig-2-01',
    'jacket',
    'Mens two piece suit, charcoal',
    'Jacket: pit to pit 21, shoulders 18, sleeve 25, length 30. Trousers: waist 17, inside leg 31, rise 10.5. All inches, laid flat.',
    [
      flat('chest', '21', 21, 'in', { of: 'jacket' }),
      along('shoulderWidth', '18', 18, 'in', { of: 'jacket' }),
      along('sleeveLength', '25', 25, 'in', { of: 'jacket' }),
      along('bodyLength', '30', 30, 'in', { of: 'jacket' }),
      flat('waist', '17', 17, 'in', { of: 'trousers' }),
      along('inseam', '31', 31, 'in', { of: 'trousers' }),
      along('frontRise', '10.5', 10.5, 'in', { of: 'trousers' })
    ]
  ),
  plain(
    'fig-2-02',
    'jacket',
    'Tweed jacket and skirt suit',
    'The jacket measures 19" pit to pit and is 24" long. The skirt is 14" across the waist and 26" long.',
    [
      flat('chest', '19"', 19, 'in', { of: 'jacket' }),
      along('bodyLength', '24"', 24, 'in', { of: 'jacket' }),
      flat('waist', '14"', 14, 'in', { of: 'skirt' }),
      along('skirtLength', '26"', 26, 'in', { of: 'skirt' })
    ]
  ),
  plain(
    'fig-2-03',
    'jacket',
    'Grey suit jacket with trousers',
    'JACKET\nChest 42\nWaist 38\nSleeve 25\nLength 29\n\nTROUSERS\nWaist 34\nInside leg 31\n\nAll in inches.',
    [
      around('chest', '42', 42, 'in', { of: 'jacket' }),
      around('waist', '38', 38, 'in', { of: 'jacket' }),
      along('sleeveLength', '25', 25, 'in', { of: 'jacket' }),
      along('bodyLength', '29', 29, 'in', { of: 'jacket' }),
      around('waist', '34', 34, 'in', { of: 'trousers' }),
      along('inseam', '31', 31, 'in', { of: 'trousers' })
    ]
  ),
  plain(
    'fig-2-04',
    'jacket',
    'Three piece suit jacket, waistcoat and trousers',
    'Jacket chest 42 in, sleeve 25 in, waistcoat chest 40 in, trousers waist 34 in, inside leg 32 in',
    [
      around('chest', '42 in', 42, 'in', { of: 'jacket' }),
      along('sleeveLength', '25 in', 25, 'in', { of: 'jacket' }),
      around('chest', '40 in', 40, 'in', { of: 'waistcoat' }),
      around('waist', '34 in', 34, 'in', { of: 'trousers' }),
      along('inseam', '32 in', 32, 'in', { of: 'trousers' })
    ]
  ),
  plain(
    'fig-2-05',
    'dress',
    'Silk dress with matching jacket',
    'DRESS\nBust 18.5"\nWaist 15"\nLength 41"\nJACKET\nBust 20"\nSleeve 17"\nLength 19"\nTaken flat.',
    [
      flat('chest', '18.5"', 18.5, 'in', { of: 'dress' }),
      flat('waist', '15"', 15, 'in', { of: 'dress' }),
      along('bodyLength', '41"', 41, 'in', { of: 'dress' }),
      flat('chest', '20"', 20, 'in', { of: 'jacket' }),
      along('sleeveLength', '17"', 17, 'in', { of: 'jacket' }),
      along('bodyLength', '19"', 19, 'in', { of: 'jacket' })
    ],
    { fibres: [['silk', null]] }
  ),
  plain(
    'fig-2-06',
    'jacket',
    'Linen blazer with trousers',
    'Blazer chest across 20", length 28". Pants waist across 15", total length 40", rise 12".',
    [
      flat('chest', '20"', 20, 'in', { of: 'jacket' }),
      along('bodyLength', '28"', 28, 'in', { of: 'jacket' }),
      flat('waist', '15"', 15, 'in', { of: 'trousers' }),
      along('outseam', '40"', 40, 'in', { of: 'trousers' }),
      along('frontRise', '12"', 12, 'in', { of: 'trousers' })
    ],
    { fibres: [['linen', null]] }
  ),
  plain(
    'fig-2-07',
    'jacket',
    'Herrenanzug, Sakko und Hose',
    'Sakko: Brustweite 54 cm, Länge 76 cm, Ärmel 64 cm.\nHose: Bundweite 43 cm, Innenbeinlänge 80 cm.\nAlles flach gemessen.',
    [
      flat('chest', '54 cm', 54, 'cm', { of: 'jacket' }),
      along('bodyLength', '76 cm', 76, 'cm', { of: 'jacket' }),
      along('sleeveLength', '64 cm', 64, 'cm', { of: 'jacket' }),
      flat('waist', '43 cm', 43, 'cm', { of: 'trousers' }),
      along('inseam', '80 cm', 80, 'cm', { of: 'trousers' })
    ],
    { lang: 'de' }
  ),
  plain(
    'fig-2-08',
    'shirt',
    'Satin shirt with shorts',
    'Shirt - bust 42 inches, length 26 inches. Shorts - waist 28 inches, length 14 inches.',
    [
      around('chest', '42 inches', 42, 'in', { of: 'shirt' }),
      along('bodyLength', '26 inches', 26, 'in', { of: 'shirt' }),
      around('waist', '28 inches', 28, 'in', { of: 'shorts' }),
      along('outseam', '14 inches', 14, 'in', { of: 'shorts' })
    ]
  ),
  plain(
    'fig-2-09',
    'jacket',
    'Wool suit jacket with trousers',
    'Coat: 22 pit to pit, 19 shoulder, 25.5 sleeve, 31 length\nPants: 17.5 waist, 12 rise, 30 inseam, 8.5 hem\n(inches, flat)',
    [
      flat('chest', '22', 22, 'in', { of: 'jacket' }),
      along('shoulderWidth', '19', 19, 'in', { of: 'jacket' }),
      along('sleeveLength', '25.5', 25.5, 'in', { of: 'jacket' }),
      along('bodyLength', '31', 31, 'in', { of: 'jacket' }),
      flat('waist', '17.5', 17.5, 'in', { of: 'trousers' }),
      along('frontRise', '12', 12, 'in', { of: 'trousers' }),
      along('inseam', '30', 30, 'in', { of: 'trousers' }),
      flat('legOpening', '8.5', 8.5, 'in', { of: 'trousers' })
    ],
    { fibres: [['wool', null]] }
  )
]

const noNames: WrittenCase[] = [
  plain(
    'fig-3-01',
    'jeans',
    'Straight leg jeans',
    'Tagged 34 x 32, actual measurements 33 x 31.',
    [around('waist', '33', 33, 'in'), along('inseam', '31', 31, 'in')],
    { aside: ['34', '32'], cut: { leg: 'straight' } }
  ),
  plain(
    'fig-3-02',
    'jeans',
    'Vintage jeans',
    'Label says 32x30 (actual 31x29)',
    [around('waist', '31', 31, 'in'), along('inseam', '29', 29, 'in')],
    { aside: ['32', '30'] }
  ),
  plain('fig-3-03', 'knit-top', 'Faded black tee', 'Measures 22 x 29', [
    flat('chest', '22', 22, 'in'),
    along('bodyLength', '29', 29, 'in')
  ]),
  plain('fig-3-04', 'knit-top', 'Single stitch t-shirt', 'Size L. W 22" x L 29"', [
    flat('chest', '22"', 22, 'in'),
    along('bodyLength', '29"', 29, 'in')
  ]),
  plain('fig-3-05', 'jeans', 'Carpenter jeans', 'W / H / R / I\n16 / 20 / 11 / 30 inches, flat', [
    flat('waist', '16', 16, 'in'),
    flat('hip', '20', 20, 'in'),
    along('frontRise', '11', 11, 'in'),
    along('inseam', '30 inches', 30, 'in')
  ]),
  plain('fig-3-06', 'trousers', 'Corduroy trousers', 'W-15 H-19 R-12 I-28 (inches)', [
    flat('waist', '15', 15, 'in'),
    flat('hip', '19', 19, 'in'),
    along('frontRise', '12', 12, 'in'),
    along('inseam', '28', 28, 'in')
  ]),
  plain('fig-3-07', 'trousers', 'Work trousers', 'w;15 h;20 r;11 i;29 inches', [
    flat('waist', '15', 15, 'in'),
    flat('hip', '20', 20, 'in'),
    along('frontRise', '11', 11, 'in'),
    along('inseam', '29 inches', 29, 'in')
  ]),
  plain(
    'fig-3-08',
    'jeans',
    'Loose jeans',
    'W~16.5" H~21" R~12" I~30" LO~9"',
    [
      flat('waist', '16.5"', 16.5, 'in'),
      flat('hip', '21"', 21, 'in'),
      along('frontRise', '12"', 12, 'in'),
      along('inseam', '30"', 30, 'in'),
      flat('legOpening', '9"', 9, 'in')
    ],
    {}
  ),
  plain(
    'fig-3-09',
    'jumper',
    'Mohair jumper',
    'Size: 53cm x 66cm',
    [flat('chest', '53cm', 53, 'cm'), along('bodyLength', '66cm', 66, 'cm')],
    { fibres: [['mohair', null]] }
  ),
  plain('fig-3-10', 'shirt', 'Flannel shirt', 'PTP x Length: 21.5 x 28.5', [
    flat('chest', '21.5', 21.5, 'in'),
    along('bodyLength', '28.5', 28.5, 'in')
  ]),
  plain('fig-3-11', 'jeans', 'Black jeans', 'Actual measurements are 32 waist x 29 inseam.', [
    around('waist', '32', 32, 'in'),
    along('inseam', '29', 29, 'in')
  ]),
  plain('fig-3-12', 'trousers', 'Chino trousers', 'Waist | Rise | Inseam | Hem\n15.5 | 12 | 30 | 8.5\ninches', [
    flat('waist', '15.5', 15.5, 'in'),
    along('frontRise', '12', 12, 'in'),
    along('inseam', '30', 30, 'in'),
    flat('legOpening', '8.5', 8.5, 'in')
  ]),
  plain('fig-3-13', 'knit-top', 'Polo shirt', 'W: 21, L: 28, Sleeve: 9', [
    flat('chest', '21', 21, 'in'),
    along('bodyLength', '28', 28, 'in'),
    along('sleeveLength', '9', 9, 'in')
  ]),
  plain('fig-3-14', 'jeans', 'Faded jeans', 'Waist Rise Inseam Hem\n15.5 11 30 8', [
    flat('waist', '15.5', 15.5, 'in'),
    along('frontRise', '11', 11, 'in'),
    along('inseam', '30', 30, 'in'),
    flat('legOpening', '8', 8, 'in')
  ])
]

const decimals: WrittenCase[] = [
  plain('fig-4-01', 'knit-top', 'Ribbed t-shirt', 'Pit to pit 17. 5 inches, length 24. 5 inches, sleeve 7 inches', [
    flat('chest', '17. 5 inches', 17.5, 'in'),
    along('bodyLength', '24. 5 inches', 24.5, 'in'),
    along('sleeveLength', '7 inches', 7, 'in')
  ]),
  plain(
    'fig-4-02',
    'jacket',
    'Giacca in lana',
    'Spalle 42, 5 cm, lunghezza 68, 5 cm, maniche 61 cm',
    [along('shoulderWidth', '42, 5 cm', 42.5, 'cm'), along('bodyLength', '68, 5 cm', 68.5, 'cm'), along('sleeveLength', '61 cm', 61, 'cm')],
    { lang: 'it', fibres: [['wool', null]] }
  ),
  plain(
    'fig-4-03',
    'trousers',
    'Wool trousers',
    'Waist - 15 . 5"\nInseam - 29 . 75"',
    [flat('waist', '15 . 5"', 15.5, 'in'), along('inseam', '29 . 75"', 29.75, 'in')],
    { fibres: [['wool', null]] }
  ),
  plain(
    'fig-4-04',
    'skirt',
    'Wool skirt',
    'waist 27, 38 hips, length 24 inches',
    [around('waist', '27', 27, 'in'), around('hip', '38', 38, 'in'), along('skirtLength', '24 inches', 24, 'in')],
    { fibres: [['wool', null]] }
  ),
  plain('fig-4-05', 'shirt', 'Work shirt', 'Chest 20. 2 buttons missing. Length 28.', [
    flat('chest', '20', 20, 'in'),
    along('bodyLength', '28', 28, 'in')
  ]),
  plain('fig-4-06', 'jeans', 'Blue jeans', 'Inseam 29.5. 12 rise. 16 waist.', [
    along('inseam', '29.5', 29.5, 'in'),
    along('frontRise', '12', 12, 'in'),
    flat('waist', '16', 16, 'in')
  ]),
  plain(
    'fig-4-07',
    'skirt',
    'Jupe droite',
    'Taille 36, 5 cm à plat, longueur 58, 5 cm',
    [flat('waist', '36, 5 cm', 36.5, 'cm'), along('skirtLength', '58, 5 cm', 58.5, 'cm')],
    { lang: 'fr' }
  )
]

const toTheHem: WrittenCase[] = [
  plain('fig-5-01', 'dress', 'Floral dress', 'shoulder to bottom hem 42 inches; bust 18 inches across', [
    along('bodyLength', '42 inches', 42, 'in'),
    flat('chest', '18 inches', 18, 'in')
  ]),
  plain(
    'fig-5-02',
    'shirt',
    'Cream blouse',
    'Collar to hem at back: 27"\nArmpit to hem: 17"\nArmpit to armpit: 20"',
    [along('bodyLength', '27"', 27, 'in'), flat('chest', '20"', 20, 'in')],
    { aside: ['17"'] }
  ),
  plain('fig-5-03', 'knit-top', 'Vest top', 'Top of the shoulder down to the hem 61cm, pit to pit 40cm, hem 44cm', [
    along('bodyLength', '61cm', 61, 'cm'),
    flat('chest', '40cm', 40, 'cm'),
    flat('hem', '44cm', 44, 'cm')
  ]),
  plain('fig-5-04', 'skirt', 'Denim skirt', 'Waist to bottom hem 27", waist 15" flat', [
    along('skirtLength', '27"', 27, 'in'),
    flat('waist', '15"', 15, 'in')
  ]),
  plain(
    'fig-5-05',
    'jumper',
    'Wool jumper',
    'From collar seam to bottom of hem is 28 inches, bottom hem 19 inches across',
    [along('bodyLength', '28 inches', 28, 'in'), flat('hem', '19 inches', 19, 'in')],
    { fibres: [['wool', null]] }
  ),
  plain(
    'fig-5-06',
    'trousers',
    'Loose trousers',
    'Waistband to hem 41"\nCrotch to hem 30"\nHem 11"\nWaist 15"',
    [
      along('outseam', '41"', 41, 'in'),
      along('inseam', '30"', 30, 'in'),
      flat('legOpening', '11"', 11, 'in'),
      flat('waist', '15"', 15, 'in')
    ],
    {}
  ),
  plain('fig-5-07', 'coat', 'Swing coat', 'Length to hem 44 inches, hem 56 inches around', [
    along('bodyLength', '44 inches', 44, 'in'),
    around('sweep', '56 inches', 56, 'in')
  ]),
  plain(
    'fig-5-08',
    'knit-top',
    'Damen Shirt',
    'Schulter bis Saum 66 cm, Achsel zu Achsel 48 cm, Saumweite 50 cm',
    [along('bodyLength', '66 cm', 66, 'cm'), flat('chest', '48 cm', 48, 'cm'), flat('hem', '50 cm', 50, 'cm')],
    { lang: 'de' }
  ),
  plain(
    'fig-5-09',
    'dress',
    'Maxi dress',
    'Length down to hem: 54"\nBust: 36"',
    [along('bodyLength', '54"', 54, 'in'), around('chest', '36"', 36, 'in')],
    { cut: { dressLength: 'maxi' } }
  )
]

const sleeves: WrittenCase[] = [
  plain('fig-6-01', 'jumper', 'Chunky jumper', 'Sleeve shoulder to cuff 24", underarm to cuff 19", pit to pit 22"', [
    along('sleeveLength', '24"', 24, 'in'),
    along('sleeveUnderarm', '19"', 19, 'in'),
    flat('chest', '22"', 22, 'in')
  ]),
  plain('fig-6-02', 'shirt', 'Check shirt', 'Armpit to sleeve hem 18"\nShoulder to sleeve hem 24"\nChest 21"', [
    along('sleeveUnderarm', '18"', 18, 'in'),
    along('sleeveLength', '24"', 24, 'in'),
    flat('chest', '21"', 21, 'in')
  ]),
  plain(
    'fig-6-03',
    'knit-top',
    'Cotton t-shirt',
    'Sleeve length 8", sleeve opening 7", pit to pit 20"',
    [along('sleeveLength', '8"', 8, 'in'), flat('cuff', '7"', 7, 'in'), flat('chest', '20"', 20, 'in')],
    { fibres: [['cotton', null]] }
  ),
  plain(
    'fig-6-04',
    'shirt',
    'Cotton blouse',
    'Sleeves from shoulder seam to hem: 9 in; from armpit to hem: 5 in; pit to pit 19 in',
    [along('sleeveLength', '9 in', 9, 'in'), along('sleeveUnderarm', '5 in', 5, 'in'), flat('chest', '19 in', 19, 'in')],
    { fibres: [['cotton', null]] }
  ),
  plain('fig-6-05', 'jumper', 'Grey sweatshirt', 'Sleeve to cuff: 23"\nLength to hem: 27"\nWidth: 22"', [
    along('sleeveLength', '23"', 23, 'in'),
    along('bodyLength', '27"', 27, 'in'),
    flat('chest', '22"', 22, 'in')
  ]),
  plain('fig-6-06', 'jacket', 'Brown jacket', 'Sleeves 25" from shoulder, 20" from underarm. Chest 42" all round.', [
    along('sleeveLength', '25"', 25, 'in'),
    along('sleeveUnderarm', '20"', 20, 'in'),
    around('chest', '42"', 42, 'in')
  ]),
  plain('fig-6-07', 'jumper', 'Knitted cardigan', 'Inner sleeve seam: 18in\nOuter sleeve: 23in\nSleeve hem: 4in across', [
    along('sleeveUnderarm', '18in', 18, 'in'),
    along('sleeveLength', '23in', 23, 'in'),
    flat('cuff', '4in', 4, 'in')
  ]),
  plain(
    'fig-6-08',
    'jumper',
    'Pull en laine',
    "Manche depuis l'aisselle 46 cm, manche depuis l'épaule 60 cm, largeur aisselle à aisselle 52 cm",
    [along('sleeveUnderarm', '46 cm', 46, 'cm'), along('sleeveLength', '60 cm', 60, 'cm'), flat('chest', '52 cm', 52, 'cm')],
    { lang: 'fr', fibres: [['wool', null]] }
  )
]

const pairs: WrittenCase[] = [
  plain(
    'fig-7-01',
    'shirt',
    'Oxford shirt',
    'Sleeve 25" (22" with the cuffs turned back), chest 21", length 29"',
    [along('sleeveLength', '25"', 25, 'in'), flat('chest', '21"', 21, 'in'), along('bodyLength', '29"', 29, 'in')],
    { second: [{ point: 'sleeveLength', text: '22"' }] }
  ),
  plain(
    'fig-7-02',
    'trousers',
    'Jersey trousers',
    'Waist 14" relaxed, stretches to 20". Inseam 29".',
    [flat('waist', '14"', 14, 'in'), along('inseam', '29"', 29, 'in')],
    { second: [{ point: 'waist', text: '20"' }] }
  ),
  plain(
    'fig-7-03',
    'jeans',
    'Selvedge jeans',
    'Inseam 33" (30" cuffed), waist 16" flat',
    [along('inseam', '33"', 33, 'in'), flat('waist', '16"', 16, 'in')],
    { second: [{ point: 'inseam', text: '30"' }] }
  ),
  plain(
    'fig-7-04',
    'coat',
    'Wool coat',
    'Length 40" without collar, 43" with collar. Pit to pit 22".',
    [along('bodyLength', '40"', 40, 'in'), flat('chest', '22"', 22, 'in')],
    { second: [{ point: 'bodyLength', text: '43"' }], fibres: [['wool', null]] }
  ),
  plain(
    'fig-7-05',
    'skirt',
    'Gathered skirt',
    'Waist 26" unstretched, 34" stretched. Length 30".',
    [around('waist', '26"', 26, 'in'), along('skirtLength', '30"', 30, 'in')],
    { second: [{ point: 'waist', text: '34"' }], cut: { silhouette: 'gathered' } }
  ),
  plain(
    'fig-7-06',
    'skirt',
    'Pleated skirt',
    'Waist relaxed: 26"\nWaist stretched: 36"\nLength: 31"',
    [around('waist', '26"', 26, 'in'), along('skirtLength', '31"', 31, 'in')],
    { second: [{ point: 'waist', text: '36"' }], cut: { silhouette: 'pleated' } }
  ),
  plain('fig-7-07', 'trousers', 'Gurkha trousers', 'Rise front 12.5 back 16, waist 16, inseam 29 (inches)', [
    along('frontRise', '12.5', 12.5, 'in'),
    along('backRise', '16', 16, 'in'),
    flat('waist', '16', 16, 'in'),
    along('inseam', '29', 29, 'in')
  ]),
  plain(
    'fig-7-08',
    'shirt',
    'Long shirt',
    'Length 28" at the front and 31" at the back. Chest 44" around.',
    [along('bodyLength', '28"', 28, 'in'), around('chest', '44"', 44, 'in')],
    { second: [{ point: 'bodyLength', text: '31"' }] }
  ),
  plain(
    'fig-7-09',
    'dress',
    'Shirred dress',
    'Bust 15" flat relaxed / 20" flat stretched\nLength 46"',
    [flat('chest', '15"', 15, 'in'), along('bodyLength', '46"', 46, 'in')],
    { second: [{ point: 'chest', text: '20"' }] }
  ),
  plain(
    'fig-7-10',
    'trousers',
    'Turn-up trousers',
    'Inside leg 31 inches, 33 inches with turn ups let down. Waist 34 inches.',
    [along('inseam', '31 inches', 31, 'in'), around('waist', '34 inches', 34, 'in')],
    { second: [{ point: 'inseam', text: '33 inches' }] }
  )
]

const wraps: WrittenCase[] = [
  plain(
    'fig-8-01',
    'skirt',
    'Wrap skirt',
    'Waist 40" open, 28" tied. Length 32".',
    [around('waist', '28"', 28, 'in'), along('skirtLength', '32"', 32, 'in')],
    { second: [{ point: 'waist', text: '40"' }], cut: { silhouette: 'wrap' } }
  ),
  plain('fig-8-02', 'dress', 'Jersey dress', 'bust 36 x waist 28 x length 42 (inches)', [
    around('chest', '36', 36, 'in'),
    around('waist', '28', 28, 'in'),
    along('bodyLength', '42', 42, 'in')
  ]),
  plain('fig-8-03', 'shirt', 'Denim shirt', 'Across the back 17"; pit to pit 22"; length 29"', [
    along('backWidth', '17"', 17, 'in'),
    flat('chest', '22"', 22, 'in'),
    along('bodyLength', '29"', 29, 'in')
  ]),
  plain('fig-8-04', 'jacket', 'Chore jacket', 'Width across the back from armhole to armhole 16 in, chest 21 in, sleeve 24 in', [
    along('backWidth', '16 in', 16, 'in'),
    flat('chest', '21 in', 21, 'in'),
    along('sleeveLength', '24 in', 24, 'in')
  ]),
  plain(
    'fig-8-05',
    'dress',
    'Wrap dress',
    'When tied: bust 38", waist 30". Laid open the waist is 54". Length 44".',
    [around('chest', '38"', 38, 'in'), around('waist', '30"', 30, 'in'), along('bodyLength', '44"', 44, 'in')],
    { second: [{ point: 'waist', text: '54"' }], cut: { silhouette: 'wrap' } }
  )
]

const figureFirst: WrittenCase[] = [
  plain('fig-9-01', 'jumper', 'Aran jumper', '21 inches pit to pit\n27 inches top to bottom\n24 inches sleeve', [
    flat('chest', '21 inches', 21, 'in'),
    along('bodyLength', '27 inches', 27, 'in'),
    along('sleeveLength', '24 inches', 24, 'in')
  ]),
  plain(
    'fig-9-02',
    'shirt',
    'Damen Bluse',
    '62 cm - Länge\n50 cm - Achsel zu Achsel\n58 cm - Ärmel',
    [along('bodyLength', '62 cm', 62, 'cm'), flat('chest', '50 cm', 50, 'cm'), along('sleeveLength', '58 cm', 58, 'cm')],
    { lang: 'de' }
  ),
  plain('fig-9-03', 'jeans', 'Mom jeans', '14" waist / 11" rise / 28" inseam / 7" leg opening', [
    flat('waist', '14"', 14, 'in'),
    along('frontRise', '11"', 11, 'in'),
    along('inseam', '28"', 28, 'in'),
    flat('legOpening', '7"', 7, 'in')
  ]),
  plain('fig-9-04', 'knit-top', 'Boxy tee', '19.5 pit to pit, 17 shoulder to shoulder, 25 shoulder to hem', [
    flat('chest', '19.5', 19.5, 'in'),
    along('shoulderWidth', '17', 17, 'in'),
    along('bodyLength', '25', 25, 'in')
  ]),
  plain(
    'fig-9-05',
    'dress',
    'Linen dress',
    '38 inches - bust\n30 inches - waist\n44 inches - length',
    [around('chest', '38 inches', 38, 'in'), around('waist', '30 inches', 30, 'in'), along('bodyLength', '44 inches', 44, 'in')],
    { fibres: [['linen', null]] }
  ),
  plain('fig-9-06', 'jacket', 'Harris tweed jacket', '43cm across the shoulders, 55cm across the chest, 74cm down the back, 62cm sleeves', [
    along('shoulderWidth', '43cm', 43, 'cm'),
    flat('chest', '55cm', 55, 'cm'),
    along('bodyLength', '74cm', 74, 'cm'),
    along('sleeveLength', '62cm', 62, 'cm')
  ]),
  plain(
    'fig-9-07',
    'coat',
    'Wool coat',
    '18.5 shoulder seam to seam\n22 pit to pit\n20 at the waist\n26 sleeves\n38 bottom of collar to hem',
    [
      along('shoulderWidth', '18.5', 18.5, 'in'),
      flat('chest', '22', 22, 'in'),
      flat('waist', '20', 20, 'in'),
      along('sleeveLength', '26', 26, 'in'),
      along('bodyLength', '38', 38, 'in')
    ],
    { fibres: [['wool', null]] }
  )
]

const toldTwice: WrittenCase[] = [
  plain('fig-10-01', 'jumper', 'Fair isle jumper', 'Pit to pit 20 (40 around), length 25, sleeve 23', [
    flat('chest', '20', 20, 'in'),
    along('bodyLength', '25', 25, 'in'),
    along('sleeveLength', '23', 23, 'in')
  ]),
  plain('fig-10-02', 'shirt', 'Check shirt', 'Pit to pit is 20 inches. Length is 27 inches. So 40 inch chest all round.', [
    flat('chest', '20 inches', 20, 'in'),
    along('bodyLength', '27 inches', 27, 'in')
  ]),
  plain(
    'fig-10-03',
    'jumper',
    'Merino jumper',
    'Underarm to underarm 57 cmt. Length 70 cmt. Sleeve 61cms.',
    [flat('chest', '57 cmt', 57, 'cm'), along('bodyLength', '70 cmt', 70, 'cm'), along('sleeveLength', '61cms', 61, 'cm')],
    { fibres: [['wool', null]] }
  ),
  plain('fig-10-04', 'jacket', 'Bomber jacket', '📏 Shouder 17"\n📏 Sleevs 24"\n📏 Lenghth 26"\n📏 Chesst 21"', [
    along('shoulderWidth', '17"', 17, 'in'),
    along('sleeveLength', '24"', 24, 'in'),
    along('bodyLength', '26"', 26, 'in'),
    flat('chest', '21"', 21, 'in')
  ]),
  plain('fig-10-05', 'skirt', 'Tartan skirt', '▪️Waits 14"\n▪️Hipps 20"\n▪️Lenght 26"', [
    flat('waist', '14"', 14, 'in'),
    flat('hip', '20"', 20, 'in'),
    along('skirtLength', '26"', 26, 'in')
  ]),
  plain('fig-10-06', 'dress', 'Crepe dress', 'Bust 44cm flat x2 = 88cm, waist 36cm x 2 = 72cm, length 100cm', [
    flat('chest', '44cm', 44, 'cm'),
    flat('waist', '36cm', 36, 'cm'),
    along('bodyLength', '100cm', 100, 'cm')
  ]),
  plain(
    'fig-10-07',
    'trousers',
    'Linen trousers',
    'Waist measures 16 inches laid flat. Inseem 30 inches. Outseem 41 inches. That makes it a 32 inch waist.',
    [flat('waist', '16 inches', 16, 'in'), along('inseam', '30 inches', 30, 'in'), along('outseam', '41 inches', 41, 'in')],
    { fibres: [['linen', null]] }
  )
]

const twoSources: WrittenCase[] = [
  plain(
    'fig-11-01',
    'shirt',
    'Relaxed fit shirt',
    'From the website: chest 112cm, length 70cm in a medium.\nMy own measurements: pit to pit 54cm, length 68cm.',
    [flat('chest', '54cm', 54, 'cm'), along('bodyLength', '68cm', 68, 'cm')],
    { aside: ['112cm', '70cm'], cut: { closeness: 'relaxed' } }
  ),
  plain(
    'fig-11-02',
    'trousers',
    'Tapered trousers',
    "Retailer's description: inside leg 30 inches, rise 12 inches.\n\nMeasured by me: inside leg 29 inches, rise 11.5 inches, waist 15 inches flat.",
    [along('inseam', '29 inches', 29, 'in'), along('frontRise', '11.5 inches', 11.5, 'in'), flat('waist', '15 inches', 15, 'in')],
    { aside: ['30 inches', '12 inches'], cut: { leg: 'tapered' } }
  ),
  plain(
    'fig-11-03',
    'dress',
    'Slip dress',
    'The website says the length is 120cm but I measured 116cm. Bust 42cm across.',
    [along('bodyLength', '116cm', 116, 'cm'), flat('chest', '42cm', 42, 'cm')],
    { aside: ['120cm'] }
  )
]

const noMeasures: WrittenCase[] = [
  plain('fig-12-02', null, 'Wool fabric remnant', 'Width 58 inches, length 3 yards.', [], { noGarment: true, fibres: [['wool', null]] }),
  plain(
    'fig-12-03',
    'jumper',
    'Hand knitted jumper',
    'Knitted on 5mm needles. Chest 40 inches around, length 24 inches.',
    [around('chest', '40 inches', 40, 'in'), along('bodyLength', '24 inches', 24, 'in')],
    { aside: ['5mm'] }
  ),
  plain(
    'fig-12-04',
    'dress',
    'Velvet dress',
    'Shown on a dress form set to bust 34, waist 25, hips 35. The dress itself: bust 36, waist 28, length 40. Inches.',
    [around('chest', '36', 36, 'in'), around('waist', '28', 28, 'in'), along('bodyLength', '40', 40, 'in')],
    { aside: ['34', '25', '35'] }
  ),
  plain('fig-12-05', null, 'Cathedral veil', '108 inches long, 72 inches wide.', [], { noGarment: true, aside: ['108 inches'] }),
  plain('fig-12-06', null, 'Canvas laptop bag', 'Fits a 15 inch laptop. 16 inches wide, 12 inches tall.', [], { noGarment: true }),
  plain(
    'fig-12-07',
    'jacket',
    'Field jacket',
    'Inside pocket 7 x 5 inches, takes a 10 inch tablet. Pit to pit 22 inches, length 29 inches.',
    [flat('chest', '22 inches', 22, 'in'), along('bodyLength', '29 inches', 29, 'in')],
    { aside: ['7', '5 inches', '10 inch'] }
  ),
  plain(
    'fig-12-08',
    'dress',
    'Long dress',
    "Model is 5'8 and wears 3 inch heels. Bust 18 inches across, length 55 inches.",
    [flat('chest', '18 inches', 18, 'in'), along('bodyLength', '55 inches', 55, 'in')],
    { aside: ['3 inch'] }
  ),
  plain(
    'fig-12-09',
    'jumper',
    'Cashmere cardigan',
    'Comes with the brooch, 2 inches across. Chest 38 inches all round, length 23 inches.',
    [around('chest', '38 inches', 38, 'in'), along('bodyLength', '23 inches', 23, 'in')],
    { aside: ['2 inches'], fibres: [['cashmere', null]] }
  ),
  plain(
    'fig-12-10',
    'trousers',
    'Cargo trousers',
    'Cargo pocket 8 x 7, back pockets 6 x 5. Waist 33, inseam 31, rise 12. Inches.',
    [around('waist', '33', 33, 'in'), along('inseam', '31', 31, 'in'), along('frontRise', '12', 12, 'in')],
    { aside: ['8', '7', '6', '5'] }
  ),
  plain('fig-12-11', null, 'Vintage brooch', '2.5 inches wide, 1 inch high.', [], { noGarment: true })
]

const basisOfList: WrittenCase[] = [
  plain('fig-13-01', 'shirt', 'Western shirt', 'Chest 42" (21" flat), waist 40", hem 44", length 28"', [
    around('chest', '42"', 42, 'in'),
    around('waist', '40"', 40, 'in'),
    around('hem', '44"', 44, 'in'),
    along('bodyLength', '28"', 28, 'in')
  ]),
  plain(
    'fig-13-02',
    'dress',
    'Wool dress',
    'Measurements laid flat: shoulders 15", bust 36", waist 28", hips 40", length 42"',
    [
      along('shoulderWidth', '15"', 15, 'in'),
      around('chest', '36"', 36, 'in'),
      around('waist', '28"', 28, 'in'),
      around('hip', '40"', 40, 'in'),
      along('bodyLength', '42"', 42, 'in')
    ],
    { fibres: [['wool', null]] }
  ),
  plain(
    'fig-13-03',
    'dress',
    'Cotton dress',
    'Pit to pit 20", waist 17", hips 21", length 44"',
    [flat('chest', '20"', 20, 'in'), flat('waist', '17"', 17, 'in'), flat('hip', '21"', 21, 'in'), along('bodyLength', '44"', 44, 'in')],
    { fibres: [['cotton', null]] }
  ),
  plain('fig-13-04', 'jeans', 'Dark jeans', 'Waist circumference 30", hip 40", thigh 24", leg opening 16", inseam 30"', [
    around('waist', '30"', 30, 'in'),
    around('hip', '40"', 40, 'in'),
    around('thigh', '24"', 24, 'in'),
    around('legOpening', '16"', 16, 'in'),
    along('inseam', '30"', 30, 'in')
  ]),
  plain(
    'fig-13-05',
    'jeans',
    'Skinny jeans',
    'Waist (laid flat) 15.5 in, hips 19 in, thigh 10.5 in, ankle 5.5 in',
    [
      flat('waist', '15.5 in', 15.5, 'in'),
      flat('hip', '19 in', 19, 'in'),
      flat('thigh', '10.5 in', 10.5, 'in'),
      flat('legOpening', '5.5 in', 5.5, 'in')
    ],
    { cut: { leg: 'skinny' } }
  ),
  plain('fig-13-06', 'skirt', 'Tweed skirt', 'Laid flat: waist 30 inches, hips 40 inches, length 28 inches. Size UK 14.', [
    around('waist', '30 inches', 30, 'in'),
    around('hip', '40 inches', 40, 'in'),
    along('skirtLength', '28 inches', 28, 'in')
  ])
]

export const figures: WrittenCase[] = [
  ...glued,
  ...twoGarments,
  ...noNames,
  ...decimals,
  ...toTheHem,
  ...sleeves,
  ...pairs,
  ...wraps,
  ...figureFirst,
  ...toldTwice,
  ...twoSources,
  ...noMeasures,
  ...basisOfList
]
