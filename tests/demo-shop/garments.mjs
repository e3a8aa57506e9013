/**
 * What the demo shop sells. Everything here is invented: the shop, its sellers, the garments and their figures.
 * `lines` are paragraphs; `list` is a bare list under them; each seller writes in a manner of their own.
 *
 * @typedef {'trousers' | 'skirt' | 'top' | 'jacket'} Drawing
 * @typedef {{
 *   slug: string, title: string, price: string, currency?: string, postage?: string, seller: string, drawing: Drawing, colour: string,
 *   teaches: string, lines: string[], list?: string[], note?: string, structured?: 'product' | 'graph' | 'broken' | 'none'
 * }} Garment
 */

/** @type {Garment[]} */
export const GARMENTS = [
  {
    slug: 'charcoal-wool-trousers',
    title: 'Charcoal wool trousers, pleated',
    price: '24.00',
    postage: '3.90',
    seller: 'tansy_lane',
    drawing: 'trousers',
    colour: '#4b4f52',
    teaches: 'Inches with quotes, flat, in running text. The waist is about 50 mm too big for the demo person.',
    lines: [
      'Charcoal wool flannel trousers, unlined, from the back of a good wardrobe. Marked 34 but please go by the tape.',
      'Laid flat: waist 16", hip 21", thigh 12 1/2", inside leg 31", bottoms 8". Front rise 11".',
      'About 2" turned up in the hem and plenty of cloth in the centre back seam. 98% wool, 2% elastane, washed as wool. Back pockets 5" apart.',
      'A small moth nip by the back pocket, mended. I am 6\'1" and they were long on me.'
    ]
  },
  {
    slug: 'indigo-jeans',
    title: 'Indigo jeans, straight leg',
    price: '18.50',
    postage: '4.20',
    seller: 'hob_and_hinge',
    drawing: 'trousers',
    colour: '#39486b',
    teaches: 'A bare list in centimetres with the word flat; far too long in the leg, original hem.',
    lines: ['Rigid cotton denim, indigo, hardly worn. Original hem, never taken up.', 'All measured flat in cm:'],
    list: ['Waist 39', 'Hips 53', 'Thigh 32', 'Inside leg 86', 'Leg opening 20', 'Front rise 27'],
    note: '100% cotton.'
  },
  {
    slug: 'moss-tweed-skirt',
    title: 'Moss green tweed skirt, A-line',
    price: '15.00',
    seller: 'tansy_lane',
    drawing: 'skirt',
    colour: '#66704a',
    teaches: 'Around, in centimetres, told as such; lined, with a zip.',
    lines: [
      'A-line skirt in moss green tweed, fully lined, side zip. Wool.',
      'Waist 79 cm all the way round, hips 104 cm all the way round, length 62 cm from the waistband down. Hem 4 cm deep.'
    ]
  },
  {
    slug: 'oat-linen-shirt',
    title: 'Oat linen shirt',
    price: '12.00',
    postage: '3.00',
    seller: 'eelmarsh',
    drawing: 'top',
    colour: '#cdbf9f',
    teaches: 'Both units side by side; pit to pit; size label to be left aside.',
    lines: [
      'Linen shirt, oat, size L on the label. Not washed by me.',
      'Pit to pit 22 in / 56 cm. Shoulder to shoulder 18 in / 46 cm. Sleeve from shoulder 24.5 in / 62 cm. Length 29 in / 74 cm. Collar 16 in / 41 cm.'
    ],
    structured: 'graph'
  },
  {
    slug: 'slate-jacket-sham-cuffs',
    title: 'Slate tailored jacket',
    price: '32.00',
    postage: '6.50',
    seller: 'hob_and_hinge',
    drawing: 'jacket',
    colour: '#59646c',
    teaches: 'A tailored jacket with sham cuff buttons and sleeves that are too long.',
    lines: [
      'Single-breasted wool jacket, slate, fully lined, two vents. Cuff buttons are for show only and do not undo.',
      'Chest 21 inches flat (pit to pit), shoulders 17 3/4 inches, sleeve 26 inches from the shoulder seam, back length 29 ' +
        '1/2 inches, waist 19 1/2 inches flat.'
    ]
  },
  {
    slug: 'walnut-jacket-working-cuffs',
    title: 'Walnut brown jacket, working cuffs',
    price: '38.00',
    postage: '6.50',
    seller: 'eelmarsh',
    drawing: 'jacket',
    colour: '#6d4f3a',
    teaches: 'The same with working cuff buttons; mixed units in one list.',
    lines: ['Walnut brown wool jacket, half lined, working buttonholes at the cuffs (four a side). Measured laid flat.'],
    list: ['pit to pit: 53 cm', 'shoulder width: 46.5 cm', 'sleeve: 66 cm', 'length: 75 cm', 'waist flat: 49.5 cm']
  },
  {
    slug: 'high-visibility-jacket',
    title: 'High-visibility work jacket, yellow',
    price: '14.00',
    seller: 'dray_yard',
    drawing: 'jacket',
    colour: '#d9dc3c',
    teaches: 'Protective clothing: never a plan.',
    lines: [
      'High-visibility jacket with reflective bands, marked EN ISO 20471 class 3. Waterproof, coated polyester.',
      'Chest 62 cm flat, length 80 cm, sleeve 66 cm.'
    ]
  },
  {
    slug: 'black-leather-trousers',
    title: 'Black leather trousers',
    price: '45.00',
    postage: '5.00',
    seller: 'dray_yard',
    drawing: 'trousers',
    colour: '#26262a',
    teaches: 'Leather: needle holes stay, so what is too small stays too small.',
    lines: [
      'Real leather, black, lined to the knee.',
      'Waist 14" across, hips 18.5" across, thigh 11" across, inseam 30", hem 7 1/2" across.'
    ]
  },
  {
    slug: 'sky-shirt-too-small',
    title: 'Sky blue poplin shirt, neat fit',
    price: '8.00',
    seller: 'eelmarsh',
    drawing: 'top',
    colour: '#9cbdd8',
    teaches: 'Too small everywhere.',
    lines: [
      'Cotton poplin shirt, sky blue, size 14.',
      'Chest 44 cm flat, waist 41 cm flat, shoulders 38 cm, sleeve 57 cm, length 66 cm, collar 35 cm.'
    ]
  },
  {
    slug: 'rust-cord-trousers',
    title: 'Rust needlecord trousers',
    price: '16.00',
    postage: '3.90',
    seller: 'hob_and_hinge',
    drawing: 'trousers',
    colour: '#a0522d',
    teaches: 'Figures without a unit, and one that could be either.',
    lines: ['Needlecord, rust, worn twice. Waist 15.5 flat, hips 21, thigh 12.5, inside leg 31, hem 8.', 'Rise 11 at the front.']
  },
  {
    slug: 'plum-skirt-no-figures',
    title: 'Plum wool skirt, size 12',
    price: '9.50',
    seller: 'tansy_lane',
    drawing: 'skirt',
    colour: '#6e3b5c',
    teaches: 'Text without a single measurement.',
    lines: ['Plum wool skirt, straight, size 12, fits true to size. Happy to measure if asked.']
  },
  {
    slug: 'markup-in-the-title',
    title: 'Grey trousers <img src=x onerror="document.title=\'run\'"><script>document.title="run"</script> & co.',
    price: '11.00',
    seller: 'eelmarsh',
    drawing: 'trousers',
    colour: '#8a8d90',
    teaches: 'Markup and script text in the title and the text: shown as text, never run.',
    lines: ['<b>Waist</b> 16" flat, hip 21" flat, <script>document.title="run"</script> thigh 12" flat, inside leg 30".'],
    structured: 'broken'
  },
  {
    slug: 'empty-page',
    title: '',
    price: '',
    seller: '',
    drawing: 'top',
    colour: '#999999',
    teaches: 'A page that gives no text at all.',
    lines: [],
    structured: 'none'
  },
  {
    slug: 'text-in-a-frame',
    title: 'Fern linen trousers',
    price: '13.00',
    seller: 'dray_yard',
    drawing: 'trousers',
    colour: '#5c7a52',
    teaches: 'The description stands in a frame of another origin, which a page reader may not enter.',
    lines: ['Fern green linen trousers. Waist 15 3/4" flat, hip 20" flat, inside leg 29", leg opening 9".'],
    structured: 'none'
  }
]
