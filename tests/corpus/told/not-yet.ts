/** Cases that are not yet answered as a tailor would, each with its reason. */
export const NOT_YET: Readonly<Record<string, string>> = {
  'slim mens jeans, waist two sizes over':
    'The thigh may be 686 where the tailor stops at 675: legs are taken in by more here than he would on slim ones.',
  'slim chinos for a short man, hem only, can not sew':
    'A tailor is at hand, so what a tailor can do sets the ends: the hip begins 5 lower, and the thigh is taken in without a stop.',
  'palazzo trousers, waist a good deal too big':
    'The thigh is asked before the hip: it lies outside more often, and both have a condition.',
  'cords with a label and no girth': 'A waist of 766 may be let out by 64 at the back seam; the tailor counts on 25 to 40.',
  'plus trousers by size label only':
    'At level 2 only the button moves the waist here; the tailor takes darts for granted. The hip is taken in and let out by its own limits.',
  'ankle cigarette trousers with stretch, wanted close':
    'Untold stretch of wool with elastane is not counted under the hip and thigh of a close wish.',
  'dress trousers let out already, still snug':
    'That the back seam was let out already is not read, so its cloth is counted as still there.',
  'sheath dress, bust a size over': 'The hip may be 1168, 3 past where the tailor stops.',
  'bodycon jersey dress, wanted close': 'Of jersey wanted close the tailor asks for 20 to 60 more stretch than is counted on.',
  'plus smock dress, all free below':
    'Shoulders and sleeves are untold and often lie outside, so it is as far as told; the tailor has no doubt of a smock.',
  'pencil skirt, waist a little small': 'The hip is taken in by 100 at the sides; the tailor stops at 50.',
  'denim skirt, waist loose, button only':
    'The waist stays 34 too big at level 1, so no condition is given; the tailor accepts a remainder.',
  'mens shirt too wide, wanted close': 'The waist may be 1092: darts and sides together take more than the tailor would.',
  'boxy short-sleeved shirt, worn loose':
    'Collar and shoulder are untold and often lie outside, so it is as far as told; the tailor has no doubt of a boxy shirt.',
  'polo shirt two sizes small': 'A panel of 50 makes it come close; the tailor would not let panels into a polo shirt.',
  'circle skirt, waist told':
    'A waistband told by a seller is unlikely to be right to the centimetre for this wearer, so it is as far as told.',
  'mens shirt, collar and chest, no sleeve':
    'The sleeve is no key point of a shirt: it gets a condition only where it is not likely that all comes right.',
  'denim jacket, chest and sleeve':
    'Waist and hem are untold and often lie outside, so it is as far as told; enough is told for the tailor.'
}
