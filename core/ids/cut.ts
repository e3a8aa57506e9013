/**
 * The cut: how a garment is meant to be worn. Each facet is a closed list of the trade's words; what a value means for the fit stands in
 * core/wearer/cut. This file imports nothing.
 */
export const FACETS = {
  /** Where the band of trousers sits. */
  rise: ['ultra-low', 'low', 'mid', 'high', 'waist'],
  leg: ['skinny', 'slim', 'straight', 'tapered', 'relaxed', 'bootcut', 'flared', 'wide', 'palazzo', 'barrel', 'legging', 'jogger'],
  legLength: ['full', 'puddle', 'stacked', 'ankle', 'seven-eighths', 'cropped', 'capri', 'pedal', 'bermuda', 'shorts'],
  /** Skirts, dresses, tops and jumpsuits by their outline. */
  silhouette: [
    'pencil',
    'a-line',
    'flared',
    'gathered',
    'circle',
    'pleated',
    'kilt',
    'wrap',
    'bias',
    'bodycon',
    'puffball',
    'shift',
    'sheath',
    'fit-flare',
    'empire',
    'drop-waist',
    'shirt-dress',
    'smock',
    'jersey',
    'strapless',
    'sun',
    'princess',
    'blouse',
    'boxy',
    'peplum',
    'swing',
    'cocoon',
    'camisole',
    'corset',
    'boiler',
    'dungarees'
  ],
  waistSeam: ['natural', 'empire', 'drop', 'none'],
  /** Where the hem of a skirt, a dress or a coat falls. */
  dressLength: ['micro', 'mini', 'above-knee', 'knee', 'below-knee', 'midi', 'tea', 'ankle', 'maxi', 'train'],
  topLength: ['cropped', 'regular', 'longline'],
  /** The bottom edge of a top: a rib or elastic draws it in. */
  hem: ['drawn-in', 'straight'],
  /** The closeness its maker meant. */
  closeness: ['fitted', 'slim', 'classic', 'relaxed', 'oversized'],
  shoulder: ['set-in', 'drop', 'raglan', 'dolman', 'kimono', 'halter'],
  sleeve: ['sleeveless', 'cap', 'short', 'elbow', 'three-quarter', 'bracelet', 'long', 'balloon'],
  /** What is worn under it, and over what it goes. */
  layer: [
    'suit',
    'blazer',
    'boyfriend',
    'denim',
    'overshirt',
    'biker',
    'bomber',
    'field',
    'waxed',
    'fleece',
    'puffer',
    'kimono',
    'overcoat',
    'coat',
    'fitted-coat',
    'swing-coat',
    'wrap-coat',
    'suit-waistcoat',
    'casual-waistcoat'
  ],
  knit: ['ribbed', 'fine', 'standard', 'chunky', 'felted', 'tee', 'sweatshirt', 'slipover'],
  closing: [
    'fly',
    'side-zip',
    'back-zip',
    'front-zip',
    'buttons',
    'hook',
    'elastic',
    'drawstring',
    'buckles',
    'ties',
    'wrap',
    'snaps',
    'none'
  ],
  turnUps: ['made', 'rolled', 'none'],
  vent: ['vent', 'slit', 'kick-pleat', 'none'],
  yoke: ['yoke', 'none'],
  boning: ['boned', 'none'],
  layers: ['one', 'several'],
  pleats: ['front', 'none'],
  era: ['1930s', '1940s-50s', '1960s', '1970s', '1980s', '2000s'],
  bump: ['maternity', 'none'],
  /** A child grows: spare length is wanted, turned up inside. */
  growth: ['child', 'none']
} as const

export type Facet = keyof typeof FACETS
export type FacetValue<F extends Facet = Facet> = (typeof FACETS)[F][number]
/** A garment's cut, as far as it is known. */
export type Cut = { [F in Facet]?: FacetValue<F> }
export const FACET_IDS = Object.keys(FACETS) as Facet[]

/** Is this one of the facet's values? */
export const isFacetValue = (facet: Facet, value: string): boolean => (FACETS[facet] as readonly string[]).includes(value)
