/**
 * What kind of garment is for sale, where a first noun or a last one does not tell it: short invented listings, each with what a careful buyer
 * would take it for.
 */
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import type { Basis } from '../../../core/reading/reading.ts'
import type { WrittenCase, WrittenMeasure } from './written-case.ts'

/** A measure: point, its text, `unit basis`; the figure stands in the text. */
function m(point: PointId, text: string, how: `${WrittenMeasure['unit']} ${Basis}`, more: Partial<WrittenMeasure> = {}): WrittenMeasure {
  const [unit, basis] = how.split(' ') as [WrittenMeasure['unit'], Basis]
  return { point, text, value: Number(/\d+(?:\.\d+)?/.exec(text)?.[0]), unit, basis, ...more }
}

type More = Partial<Pick<WrittenCase, 'measures' | 'price' | 'fibres' | 'cut' | 'lined' | 'lang' | 'path' | 'noGarment' | 'noSingle'>>
let count = 0
const listing = (about: string, title: string | null, text: string, kind: GarmentKind | null, more: More = {}): WrittenCase => ({
  id: `kinds-${String(++count).padStart(2, '0')}`,
  class: about,
  lang: 'en',
  ...(title === null ? {} : { title }),
  text,
  kind,
  measures: [],
  price: null,
  fibres: [],
  ...more
})

const beside: WrittenCase[] = [
  listing(
    'worn with',
    'Cream silk blouse to wear with a pencil skirt',
    'Soft, with pearl buttons. Looks lovely with jeans or tailored trousers too.',
    'shirt',
    {
      fibres: [['silk', null]]
    }
  ),
  listing(
    'goes with',
    'Navy pleated skirt, goes with any blazer or jumper',
    'Waist 14" flat, length 26". I wore it with a white shirt, a cardigan and boots.',
    'skirt',
    { measures: [m('waist', '14"', 'in flat'), m('skirtLength', '26"', 'in length')], cut: { silhouette: 'pleated' } }
  ),
  listing('like a', 'Heavy cotton overshirt, wears like a light jacket', 'Pit to pit 58 cm, length 76 cm.', 'shirt', {
    measures: [m('chest', '58 cm', 'cm flat'), m('bodyLength', '76 cm', 'cm length')],
    fibres: [['cotton', null]]
  }),
  listing(
    'under a',
    'Fine merino roll neck',
    'Thin enough to go under a suit jacket or a shirt. Not for wearing under a dress though, I tried.',
    'jumper',
    { fibres: [['wool', null]] }
  ),
  listing(
    'hashtags',
    'Cropped cardigan in moss green',
    'Chest 17 inches across, length 18 inches.\n#dress #skirt #vintagedress #jeans #coat #jacket #trousers #knit',
    'jumper',
    { measures: [m('chest', '17 inches', 'in flat'), m('bodyLength', '18 inches', 'in length')], cut: { topLength: 'cropped' } }
  ),
  listing(
    'other items for sale',
    'Linen wide legs',
    'Waist 38 cm flat, inside leg 70 cm.\nAlso selling: a coat, two dresses, a skirt, shirts and a leather jacket. Happy to combine postage.',
    'trousers',
    { measures: [m('waist', '38 cm', 'cm flat'), m('inseam', '70 cm', 'cm length')], fibres: [['linen', null]], cut: { leg: 'wide' } }
  ),
  listing(
    'matching piece elsewhere',
    'Wool suit trousers, matching jacket listed separately',
    'Waist 34", inside leg 31". The jacket is a 42 regular.',
    'trousers',
    { measures: [m('waist', '34"', 'in around'), m('inseam', '31"', 'in length')], fibres: [['wool', null]] }
  ),
  listing(
    'with its belt and slip',
    'Chiffon tea dress with slip and belt',
    'Bust 36", waist 28". Worn once over a polo neck with a denim jacket.',
    'dress',
    { measures: [m('chest', '36"', 'in around'), m('waist', '28"', 'in around')], cut: { silhouette: 'fit-flare' } }
  ),
  listing('a photograph', 'Tweed waistcoat', 'Chest 40". Trousers and shirt in the photo are not included.', 'waistcoat', {
    measures: [m('chest', '40"', 'in around')]
  }),
  listing(
    'swap',
    'Quilted gilet',
    'Selling because I bought the coat in the same colour. Would swap for a jumper, jeans 30 waist or a denim shirt.',
    'waistcoat'
  )
]

const compounds: WrittenCase[] = [
  listing('shirt dress', 'Striped shirt dress', 'Buttons down the front like a shirt.', 'dress', { cut: { silhouette: 'shirt-dress' } }),
  listing('dress shirt', 'White dress shirt, 15.5 collar', 'Double cuffs. A shirt for a dinner jacket.', 'shirt'),
  listing('dress trousers', 'Grey dress trousers', 'Flat front, sharp crease.', 'trousers'),
  listing('skirt suit', 'Boucle skirt suit', 'Jacket: bust 38", length 22"\nSkirt: waist 28", length 20"', 'jacket', {
    measures: [
      m('chest', '38"', 'in around', { of: 'jacket' }),
      m('bodyLength', '22"', 'in length', { of: 'jacket' }),
      m('waist', '28"', 'in around', { of: 'skirt' }),
      m('skirtLength', '20"', 'in length', { of: 'skirt' })
    ]
  }),
  listing('jacket dress', 'Double breasted jacket dress, gold buttons', 'Shoulder to hem 86 cm, bust 96 cm.', 'dress', {
    measures: [m('bodyLength', '86 cm', 'cm length'), m('chest', '96 cm', 'cm around')]
  }),
  listing('coat dress', 'Sixties coat dress in crepe', 'Fully lined.', 'dress', { lined: 'full' }),
  listing('shirt jacket', 'Wool shirt jacket', 'Two chest pockets.', 'shirt', { fibres: [['wool', null]] }),
  listing('denim jacket', 'Oversized denim jacket', 'Jeans style with two flap pockets.', 'jacket', { cut: { closeness: 'oversized' } }),
  listing('jeans jacket', 'Jeans jacket 80s', 'Pit to pit 21 in.', 'jacket', { measures: [m('chest', '21 in', 'in flat')] }),
  listing('t-shirt dress', 'Grey marl t-shirt dress', 'Jersey, falls above the knee.', 'dress'),
  listing('jumper dress', 'Ribbed jumper dress with polo neck', 'Length 88 cm.', 'dress', {
    measures: [m('bodyLength', '88 cm', 'cm length')]
  }),
  listing('trouser suit', 'Pinstripe trouser suit', 'Jacket chest 36", trousers waist 29" leg 30".', 'jacket', {
    measures: [
      m('chest', '36"', 'in around', { of: 'jacket' }),
      m('waist', '29"', 'in around', { of: 'trousers' }),
      m('inseam', '30"', 'in length', { of: 'trousers' })
    ]
  }),
  listing('boot cut is no boot', 'Boot cut cords, brown', 'Waist 32", inside leg 33".', 'trousers', {
    measures: [m('waist', '32"', 'in around'), m('inseam', '33"', 'in length')],
    cut: { leg: 'bootcut' }
  }),
  listing('pencil skirt', 'Leather pencil skirt', 'Knee length, lined.', 'skirt', {
    fibres: [['leather', null]],
    cut: { silhouette: 'pencil', dressLength: 'knee' }
  }),
  listing('pinafore', 'Cord pinafore', 'Buckles on the straps. Bust 34", waist 27", length 34".', 'dress', {
    measures: [m('chest', '34"', 'in around'), m('waist', '27"', 'in around'), m('bodyLength', '34"', 'in length')]
  }),
  listing(
    'vest, a garment of strips',
    'White ribbed vest',
    'Cotton vest with thin straps, good under a shirt. 16" pit to pit.',
    'knit-top',
    {
      measures: [m('chest', '16"', 'in flat')],
      fibres: [['cotton', null]]
    }
  ),
  listing('vest of a suit', 'Pinstripe vest, 3 piece suit leftover', 'Five buttons, satin back with a cinch buckle.', 'waistcoat'),
  listing('tunic top is not dress', 'Long tunic top, wear as a dress if you are small', 'Pit to pit 49 cm, length 74 cm.', 'shirt', {
    measures: [m('chest', '49 cm', 'cm flat'), m('bodyLength', '74 cm', 'cm length')]
  }),
  listing('cloth named like a garment', 'Suiting wool A-line skirt', 'Heavy coat weight wool, shirting lined.', 'skirt', {
    fibres: [['wool', null]],
    cut: { silhouette: 'a-line' }
  }),
  listing('a model named like a thing', 'The Boot Room boyfriend shirt', 'Size 10, worn twice.', 'shirt')
]

const construction: WrittenCase[] = [
  listing('fly and five pockets', 'Mid blue denim, W32 L34', 'Button fly, five pockets, selvedge at the outseam.', 'jeans'),
  listing('lapels and vents', 'Grey herringbone, 42R', 'Notch lapels, two button front, side vents, half lined. Sleeves 25".', 'jacket', {
    measures: [m('sleeveLength', '25"', 'in length')],
    lined: 'half'
  }),
  listing('hood with zip', 'Grey marl zip hoody, ribbed cuffs', 'Kangaroo pocket, brushed inside.', 'jumper'),
  listing('legs of tweed', 'Thick tweed, 36 waist, pleated front', 'Zip fly, turn ups, belt loops. Inside leg 30".', 'trousers', {
    measures: [m('inseam', '30"', 'in length')]
  }),
  listing('crotch snaps', 'Black lace body with popper crotch', 'Stretchy.', 'jumpsuit'),
  listing(
    'straps and a full circle',
    'Fifties cotton strappy number',
    'Spaghetti straps, boned bodice, full circle below, metal zip up the back. Bust 34", waist 25".',
    'dress',
    {
      measures: [m('chest', '34"', 'in around'), m('waist', '25"', 'in around')],
      fibres: [['cotton', null]]
    }
  )
]

const style: WrittenCase[] = [
  listing('a sheath', 'Sixties sheath in emerald crepe', 'Darted at bust and waist, back zip.', 'dress', { cut: { silhouette: 'sheath' } }),
  listing('a shift', 'Printed cotton shift, size 12', 'Sleeveless, falls straight.', 'dress', {
    fibres: [['cotton', null]],
    cut: { silhouette: 'shift', sleeve: 'sleeveless' }
  }),
  listing('palazzos', 'Silky palazzos, high waisted', 'Swishy and wide.', 'trousers', { cut: { leg: 'palazzo', rise: 'high' } }),
  listing('a midi', 'Floral midi, buttons down the front', 'V neck, short sleeves, tie at the back.', 'dress', {
    cut: { dressLength: 'midi' }
  }),
  listing('flares', 'Orange corduroy flares', 'Waist 29", inside leg 32".', 'trousers', {
    measures: [m('waist', '29"', 'in around'), m('inseam', '32"', 'in length')],
    cut: { leg: 'flared' }
  }),
  listing('bootcuts of denim', 'Low rise bootcuts, dark indigo denim', 'Waist 15.5" flat, inseam 32".', 'jeans', {
    measures: [m('waist', '15.5"', 'in flat'), m('inseam', '32"', 'in length')],
    cut: { leg: 'bootcut', rise: 'low' }
  })
]

const figures: WrittenCase[] = [
  listing('an inside leg of five inches', 'Navy cotton, size 34', 'Waist 17" flat, inseam 5", rise 11".', 'shorts', {
    measures: [m('waist', '17"', 'in flat'), m('inseam', '5"', 'in length'), m('frontRise', '11"', 'in length')],
    fibres: [['cotton', null]]
  }),
  listing('long with a bust', 'Black crepe, size 14', 'Bust 98 cm, waist 80 cm, hips 106 cm, shoulder to hem 104 cm.', 'dress', {
    measures: [
      m('chest', '98 cm', 'cm around'),
      m('waist', '80 cm', 'cm around'),
      m('hip', '106 cm', 'cm around'),
      m('bodyLength', '104 cm', 'cm length')
    ]
  }),
  listing('a rise and a leg', 'Olive, worn twice', 'Waist 33", front rise 10.5", inside leg 32", hem 7.5" across.', 'trousers', {
    measures: [
      m('waist', '33"', 'in around'),
      m('frontRise', '10.5"', 'in length'),
      m('inseam', '32"', 'in length'),
      m('legOpening', '7.5"', 'in flat')
    ]
  }),
  listing('waist, hips and a length', 'Green tartan, vintage', 'Waist 27", hips 38", length 25".', 'skirt', {
    measures: [m('waist', '27"', 'in around'), m('hip', '38"', 'in around'), m('skirtLength', '25"', 'in length')]
  }),
  listing('a bust makes no skirt of it', 'Tiered floral, gathered skirt, tie straps', 'Bust 90 cm, waist 74 cm, length 118 cm.', 'dress', {
    measures: [m('chest', '90 cm', 'cm around'), m('waist', '74 cm', 'cm around'), m('bodyLength', '118 cm', 'cm length')]
  }),
  listing('too long for a jacket', 'Camel wool, double breasted, lined', 'Chest 112 cm, sleeve 62 cm, length 108 cm.', 'coat', {
    measures: [m('chest', '112 cm', 'cm around'), m('sleeveLength', '62 cm', 'cm length'), m('bodyLength', '108 cm', 'cm length')],
    fibres: [['wool', null]],
    lined: 'full'
  })
]

const page: WrittenCase[] = [
  listing('address', 'Lovely thing in rust, as new', 'Size 12, hardly worn.', 'skirt', {
    path: '/womens/clothing/skirts/rust-as-new-88213'
  }),
  listing('address of a bag', 'Lovely thing in rust, as new', 'Hardly used, no marks.', null, {
    path: '/womens/bags/rust-as-new-88214',
    noGarment: true
  }),
  listing('a heading of the category', 'Size 14 black crepe', 'Category: Dresses\nCondition: good\nColour: black', 'dress'),
  listing('address with other words', 'Boyfriend blazer', 'Shoulders 46 cm.', 'jacket', {
    path: '/dresses-skirts-and-more/boyfriend-blazer',
    measures: [m('shoulderWidth', '46 cm', 'cm length')]
  })
]

const several: WrittenCase[] = [
  listing(
    'jacket and trousers',
    'Navy two piece suit, 40R',
    'Jacket: chest 21" pit to pit, sleeve 25"\nTrousers: waist 17", inside leg 31"',
    'jacket',
    {
      measures: [
        m('chest', '21"', 'in flat', { of: 'jacket' }),
        m('sleeveLength', '25"', 'in length', { of: 'jacket' }),
        m('waist', '17"', 'in flat', { of: 'trousers' }),
        m('inseam', '31"', 'in length', { of: 'trousers' })
      ]
    }
  ),
  listing('skirt and top set', 'Skirt and top co-ord', 'Skirt: waist 66 cm, length 40 cm. Top: pit to pit 40 cm.', 'skirt', {
    measures: [
      m('waist', '66 cm', 'cm around', { of: 'skirt' }),
      m('skirtLength', '40 cm', 'cm length', { of: 'skirt' }),
      m('chest', '40 cm', 'cm flat', { of: 'knit-top' })
    ]
  }),
  listing('shirt and shorts', 'Linen shirt & shorts set', 'Both worn once on holiday.', 'shirt', { fibres: [['linen', null]] }),
  listing('twinset', 'Lambswool twinset, cardigan and shell', 'Both pieces 36" bust.', 'jumper', {
    measures: [m('chest', '36"', 'in around')],
    fibres: [['wool', null]]
  })
]

const noGarments: WrittenCase[] = [
  listing('bag', 'Leather shoulder bag', '30 x 24 x 10 cm, strap drop 55 cm.', null, { noGarment: true, fibres: [['leather', null]] }),
  listing('boots', 'Knee high suede boots, size 6', 'Shaft 38 cm, heel 7 cm. Look great with a midi dress or skinny jeans.', null, {
    noGarment: true,
    fibres: [['suede', null]]
  }),
  listing('cloth by the metre', 'Viscose dress fabric, 3 metres', '150 cm wide. Enough for a dress, or a skirt and a blouse.', null, {
    noGarment: true,
    fibres: [['viscose', null]]
  }),
  listing(
    'sewing pattern',
    'Sewing pattern for a wrap dress, uncut',
    'Size 10 to 16, bust 32 1/2 to 38 inches. Instructions included.',
    null,
    {
      noGarment: true
    }
  ),
  listing('veil', 'Cathedral wedding veil, ivory', '3 m long, comb at the top. Not worn on the day: my dress had one.', null, {
    noGarment: true
  }),
  listing('brooch', 'Enamel leaf brooch', 'Sits well on a coat lapel. 4 cm.', null, { noGarment: true }),
  listing('dress form', 'Adjustable dress form, UK 10 to 16', 'Bust 86 to 102 cm. For dressmaking, with stand.', null, { noGarment: true }),
  listing('belt', 'Wide tan belt', 'To cinch a dress or a coat. 92 cm long, 6 cm wide.', null, { noGarment: true }),
  listing('scarf', 'Cashmere scarf, navy', '180 x 30 cm. Matches any coat.', null, { noGarment: true, fibres: [['cashmere', null]] }),
  listing('boot cut jeans are a garment', 'Boot cut jeans', 'Waist 31".', 'jeans', {
    measures: [m('waist', '31"', 'in around')],
    cut: { leg: 'bootcut' }
  }),
  listing('bag of a garment', 'Beaded evening dress, comes with garment bag', 'Bust 36".', 'dress', {
    measures: [m('chest', '36"', 'in around')]
  })
]

const silent: WrittenCase[] = [
  listing('nothing told', 'Size 12, black, brand new', 'Collection from the centre of town. Any questions please ask.', null),
  listing('a waist alone', 'Black, waist 28"', 'Bought for a wedding.', null, {}),
  listing('a bundle of everything', 'Bundle of clothes size 10', 'Two dresses, three tops, a skirt, jeans and a coat. All good.', null)
]

const abroad: WrittenCase[] = [
  listing('compound', 'Schönes Hemdblusenkleid', 'Mit Gürtel. Passt gut zur Jeansjacke.', 'dress', { lang: 'de' }),
  listing('compound', 'Jeansjacke oversize', 'Zu Hose oder Rock tragbar. Achsel zu Achsel 55 cm.', 'jacket', {
    lang: 'de',
    measures: [m('chest', '55 cm', 'cm flat')]
  }),
  listing('first noun', 'Robe chemise en lin', 'Se porte avec un jean ou un pantalon. Longueur 98 cm.', 'dress', {
    lang: 'fr',
    measures: [m('bodyLength', '98 cm', 'cm length')],
    fibres: [['linen', null]]
  }),
  listing('first noun', 'Chemise en jean', 'Largeur aisselle à aisselle 50 cm.', 'shirt', {
    lang: 'fr',
    measures: [m('chest', '50 cm', 'cm flat')]
  }),
  listing('cut', 'Jean évasé taille haute', 'Tour de taille 72 cm, entrejambe 80 cm.', 'jeans', {
    lang: 'fr',
    measures: [m('waist', '72 cm', 'cm around'), m('inseam', '80 cm', 'cm length')],
    cut: { leg: 'flared', rise: 'high' }
  }),
  listing('worn with', 'Falda plisada para llevar con camisa', 'Cintura 70 cm, largo 65 cm.', 'skirt', {
    lang: 'es',
    measures: [m('waist', '70 cm', 'cm around'), m('skirtLength', '65 cm', 'cm length')],
    cut: { silhouette: 'pleated' }
  }),
  listing('first noun', 'Giacca camicia in lana', 'Da portare con pantaloni o gonna.', 'jacket', { lang: 'it', fibres: [['wool', null]] }),
  listing('compound', 'Spijkerrok met knopen', 'Leuk met een trui of blouse. Taille 36 cm plat, lengte 45 cm.', 'skirt', {
    lang: 'nl',
    measures: [m('waist', '36 cm', 'cm flat'), m('skirtLength', '45 cm', 'cm length')]
  }),
  listing('worn with', 'Sukienka koszulowa, pasuje do kurtki jeansowej', 'Biust 96 cm, długość 105 cm.', 'dress', {
    lang: 'pl',
    measures: [m('chest', '96 cm', 'cm around'), m('bodyLength', '105 cm', 'cm length')]
  }),
  listing('compound', 'Skjortklänning i bomull', 'Snygg med jeans eller över byxor.', 'dress', { lang: 'sv', fibres: [['cotton', null]] }),
  listing('cut', 'Weite Hose mit hohem Bund', 'Bundweite 36 cm, Innenbeinlänge 76 cm.', 'trousers', {
    lang: 'de',
    measures: [m('waist', '36 cm', 'cm flat'), m('inseam', '76 cm', 'cm length')],
    cut: { leg: 'wide', rise: 'high' }
  }),
  listing('no garment', 'Handtasche aus Leder', '30 x 20 cm. Passt zu Kleid und Mantel.', null, {
    lang: 'de',
    noGarment: true,
    fibres: [['leather', null]]
  })
]

const clothAndPrice: WrittenCase[] = [
  listing('its lining', 'Wool coat', 'Outer 80% wool 20% polyamide, lining 100% viscose. Lined. Asking 45.', 'coat', {
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ],
    lined: 'full',
    price: { amount: 45, currency: '' }
  }),
  listing('its underskirt', 'Silk skirt', 'Shell: 100% silk. Underskirt: 100% polyester. £30 plus £3.50 postage, was £120 new.', 'skirt', {
    fibres: [['silk', 100]],
    price: { amount: 30, currency: 'GBP' }
  }),
  listing(
    'trim and zip',
    'Cotton jacket',
    '100% cotton, trim 100% polyester, zip tape polyester. My other jacket is £60, this one £25.',
    'jacket',
    {
      fibres: [['cotton', 100]],
      price: { amount: 25, currency: 'GBP' }
    }
  )
]

const manyThings: WrittenCase[] = [
  listing(
    'a page of results',
    'Vintage clothing for women',
    '212 results. Sort by: newest\nFloral tea dress £24\nWool coat camel £65\nPleated skirt £18\nSilk blouse cream £22\nSuede boots £40\nDenim jacket £30\nLoad more',
    null,
    { noSingle: true, price: { amount: 24, currency: 'GBP' } }
  ),
  listing(
    'a shop’s front',
    'Kleiderkammer',
    'Neu eingetroffen\nJeanskleid 29 €\nLederrock 35 €\nWollmantel 80 €\nSeidenbluse 19 €\nStrickjacke 25 €\nCordhose 22 €\nIn den Warenkorb',
    null,
    { lang: 'de', noSingle: true, price: { amount: 29, currency: 'EUR' } }
  ),
  listing(
    'one listing, others below it',
    'Green wool skirt',
    'Fully lined. Price £20.\nYou may also like\nDress £30\nCoat £55\nBlouse £12\nJeans £18\nCardigan £16\nBoots £40',
    'skirt',
    { price: { amount: 20, currency: 'GBP' }, fibres: [['wool', null]], lined: 'full' }
  )
]

const denied: WrittenCase[] = [
  listing('denied cut', 'Black jeans', 'Not flared, just a straight leg. Isn’t low rise.', 'jeans', { cut: { leg: 'straight' } }),
  listing('length in the name of a shape', 'Pleated midi skirt', 'Sunray pleats.', 'skirt', {
    cut: { silhouette: 'pleated', dressLength: 'midi' }
  })
]

const more: WrittenCase[] = [
  listing('no lining, on its own line', 'Tweed skirt', 'Material: tweed\nLining: none\nZip: side', 'skirt', { lined: 'none' }),
  listing('its share behind a comma', 'Pussy bow blouse', 'Silk, 100%. Lovely.', 'shirt', { fibres: [['silk', 100]] }),
  listing(
    'outer cloth and shoulder pads',
    'Chaqueta de traje',
    'Exterior: 70% lana, 30% poliéster. Forro: 100% viscosa. Hombreras: 100% poliéster.',
    'jacket',
    {
      lang: 'es',
      fibres: [
        ['wool', 70],
        ['polyester', 30]
      ]
    }
  ),
  listing('a currency told by itself', 'Crochet cardigan', 'Was 60, now 45 (euro). Bust 50 cm across.', 'jumper', {
    measures: [m('chest', '50 cm', 'cm flat')],
    price: { amount: 45, currency: 'EUR' }
  }),
  listing('postage, then the price', 'Fair Isle slipover knit', 'Happy to send it for £3.10 post. £17', 'jumper', {
    price: { amount: 17, currency: 'GBP' }
  }),
  listing('price, then what it cost', 'Wide cord trousers', '£48 rrp 125', 'trousers', {
    price: { amount: 48, currency: 'GBP' },
    cut: { leg: 'wide' }
  }),
  listing('a bid beside the price', 'Wool skirt', 'Starting bid £5, buy it now £20.', 'skirt', {
    price: { amount: 20, currency: 'GBP' },
    fibres: [['wool', null]]
  }),
  listing('a credit beside the price', 'Silk scarf print blouse', 'Price £18. Get £10 credit when you sign up.', 'shirt', {
    price: { amount: 18, currency: 'GBP' },
    fibres: [['silk', null]]
  }),
  listing('camel, by its share', 'Camel hair topcoat', '60% camel 40% wool', 'coat', {
    fibres: [
      ['camel', 60],
      ['wool', 40]
    ]
  }),
  listing('camel, the colour', 'Camel coat', 'Length 105 cm.', 'coat', { measures: [m('bodyLength', '105 cm', 'cm length')] })
]

export const kinds: WrittenCase[] = [
  ...beside,
  ...compounds,
  ...construction,
  ...style,
  ...figures,
  ...page,
  ...several,
  ...noGarments,
  ...silent,
  ...abroad,
  ...clothAndPrice,
  ...manyThings,
  ...denied,
  ...more
]
