/** What sellers call a cut, and what must come of it: the whole of what is told, and as often nothing. Written before any run. */
import type { Cut } from '../../../core/ids/cut.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'

export interface WordsCase {
  title: string
  text: string
  kind: GarmentKind
  cut: Cut
  teaches: string
}
const told = (kind: GarmentKind, title: string, text: string, cut: Cut, teaches: string): WordsCase => ({ kind, title, text, cut, teaches })

export const wordsCases: WordsCase[] = [
  told('jeans', 'Low rise bootcut jeans', 'Waist 40 cm flat', { rise: 'low', leg: 'bootcut' }, 'rise and leg in a title'),
  told('jeans', 'High-waisted mom jeans', 'Waist 36 cm', { rise: 'high', leg: 'relaxed' }, 'a hyphen, and a name of the trade for a shape'),
  told('jeans', 'Skinny jeans', 'Ankle grazer length, waist 38', { leg: 'skinny', legLength: 'ankle' }, 'the length in the text'),
  told(
    'trousers',
    'Wide leg trousers',
    'Full length, side zip, no turn-ups',
    { leg: 'wide', legLength: 'full', closing: 'side-zip', turnUps: 'none' },
    'closing and what is not there'
  ),
  told('trousers', 'Black palazzo trousers', 'pull on with an elasticated waist', { leg: 'palazzo', closing: 'elastic' }, 'pulled on'),
  told(
    'trousers',
    'Tweed trousers with turn-ups',
    'double pleats, button fly',
    { turnUps: 'made', pleats: 'front', closing: 'fly' },
    'a tailored pair'
  ),
  told('trousers', 'Grey joggers', 'drawstring waist, cuffed', { leg: 'jogger', closing: 'drawstring' }, 'joggers'),
  told('trousers', 'Cropped culottes', 'linen', { leg: 'wide', legLength: 'cropped' }, 'cropped says the length'),
  told('trousers', 'Straight leg trousers', 'not skinny, not flared, just straight', { leg: 'straight' }, 'what is denied counts against'),
  told('skirt', 'Pleated kilt', 'leather straps and buckles', { silhouette: 'kilt', closing: 'buckles' }, 'a kilt and how it closes'),
  told(
    'skirt',
    'A-line midi skirt',
    'zip at the back',
    { silhouette: 'a-line', dressLength: 'midi', closing: 'back-zip' },
    'shape, length, closing'
  ),
  told(
    'skirt',
    'Pencil skirt',
    'knee length with a kick pleat',
    { silhouette: 'pencil', dressLength: 'knee', vent: 'kick-pleat' },
    'a kick pleat'
  ),
  told('skirt', 'Full circle skirt 1950s', 'side zip', { silhouette: 'circle', closing: 'side-zip', era: '1940s-50s' }, 'era in the title'),
  told('skirt', 'Bias cut satin slip skirt', 'maxi', { silhouette: 'bias', dressLength: 'maxi' }, 'a slip skirt is cut on the bias'),
  told(
    'dress',
    'Sheath dress',
    'sleeveless, concealed back zip',
    { silhouette: 'sheath', sleeve: 'sleeveless', closing: 'back-zip' },
    'no sleeves'
  ),
  told('dress', 'Tea dress', 'short sleeves, fit and flare', { silhouette: 'fit-flare', sleeve: 'short' }, 'two names of one shape'),
  told(
    'dress',
    'Empire line maxi dress',
    'halterneck',
    { silhouette: 'empire', dressLength: 'maxi', shoulder: 'halter' },
    'a halter has no shoulder seam'
  ),
  told(
    'dress',
    'Strapless ball gown',
    'boned bodice, skirt with several layers',
    { silhouette: 'strapless', boning: 'boned', layers: 'several' },
    'bones and layers'
  ),
  told('dress', 'Wrap dress', 'jersey, three quarter sleeves', { silhouette: 'wrap', sleeve: 'three-quarter' }, 'a wrap'),
  told('dress', 'Shift dress 60s', 'mini', { silhouette: 'shift', dressLength: 'mini', era: '1960s' }, 'a mini shift'),
  told('shirt', 'Slim fit shirt', 'long sleeves', { closeness: 'slim', sleeve: 'long' }, 'the closeness meant'),
  told('shirt', 'Silk blouse', 'pussy bow, bishop sleeves', { silhouette: 'blouse', sleeve: 'balloon' }, 'a blouse'),
  told(
    'shirt',
    'Oversized shirt',
    'drop shoulders, boxy',
    { closeness: 'oversized', silhouette: 'boxy', shoulder: 'drop' },
    'three facets of wide'
  ),
  told('jumper', 'Chunky cable jumper', 'raglan', { knit: 'chunky', shoulder: 'raglan' }, 'knit and shoulder'),
  told('jumper', 'Lambswool jumper', 'it has shrunk and felted', { knit: 'felted' }, 'what became of it'),
  told('knit-top', 'Fitted ribbed top', 'cropped', { knit: 'ribbed', closeness: 'fitted', topLength: 'cropped' }, 'a rib'),
  told('jumper', 'Hoodie', 'ribbed hem and cuffs', { knit: 'sweatshirt', hem: 'drawn-in' }, 'a hem that is drawn in'),
  told(
    'jacket',
    'Navy blazer',
    'single breasted, double vent',
    { layer: 'blazer', closing: 'buttons', vent: 'vent' },
    'a blazer and its vents'
  ),
  told('jacket', 'Leather biker jacket', 'asymmetric zip', { layer: 'biker', closing: 'front-zip' }, 'a biker closes with a zip'),
  told('jacket', 'Bomber jacket', 'zip front', { layer: 'bomber', closing: 'front-zip' }, 'a bomber'),
  told('jacket', 'Boyfriend blazer', 'big shoulder pads', { layer: 'boyfriend' }, 'two names of one'),
  told('coat', 'Wool overcoat', 'meant to go over a suit', { layer: 'overcoat' }, 'what goes under it'),
  told('coat', 'Puffer coat', 'down', { layer: 'puffer' }, 'filling'),
  told('waistcoat', 'Quilted gilet', 'snap front', { layer: 'casual-waistcoat', closing: 'snaps' }, 'no strap at the back'),
  told('jumpsuit', 'Boiler suit', 'zip up front', { silhouette: 'boiler', closing: 'front-zip' }, 'a boiler suit'),
  told('jumpsuit', 'Denim dungarees', 'wide leg', { silhouette: 'dungarees', leg: 'wide' }, 'straps hold it'),
  // nothing
  told('jeans', 'Blue jeans', 'Waist 40 cm flat, worn twice', {}, 'nothing said of the cut'),
  told('jumper', 'Navy jumper', 'goes well with skinny jeans', {}, 'a leg is no facet of a jumper'),
  told('trousers', 'Grey trousers', 'would go with an oversized jumper', {}, 'closeness is no facet of trousers'),
  told('shirt', 'White shirt', 'lovely with an oversized jumper over it', {}, 'another garment, led up to by "with"'),
  told('shirt', 'Blue shirt', 'not oversized', {}, 'denied'),
  told('coat', 'Grey coat', 'Chest 55 cm', {}, 'only figures'),
  told('jacket', 'Wool jacket', 'will suit any occasion', {}, '"to suit" is no suit'),
  told('dress', 'Green dress', 'comes on a full length padded hanger', {}, 'full length of something else'),
  told('skirt', 'Wool skirt', 'there is one loose thread', {}, 'a loose thread'),
  told('trousers', 'Wool trousers', 'size 32, hardly worn', {}, 'nothing at all'),
  told('dress', 'Blue dress', 'no boning, not lined', {}, 'what is not there'),
  told('waistcoat', 'Green waistcoat', 'chest 50 flat', {}, 'a waistcoat'),
  told('shorts', 'Denim shorts', 'waist 40', {}, 'shorts are short by their kind'),
  told('jumpsuit', 'Black jumpsuit', 'bust 45', {}, 'a jumpsuit')
]
