/** Flat drawings for the demo shop, one a shape. */
const OUTLINES = {
  trousers: 'M70 20h60l6 60 14 200h-38L100 110 88 280H50L64 80z',
  skirt: 'M72 40h56l40 220H32z',
  top: 'M76 30q24 18 48 0l34 18 26 110-26 8-18-60v150H60V106l-18 60-26-8L42 48z',
  jacket: 'M74 28l26 40 26-40 34 18 28 170-28 6-20-110v140l-40 6-40-6V112L40 222l-28-6L40 46z'
}

/**
 * @param {import('./garments.mjs').Drawing} shape
 * @param {string} colour
 */
export const drawing = (shape, colour) =>
  '<svg viewBox="0 0 200 300" width="240" height="360" role="img" aria-label="Drawing of the garment">' +
  '<rect width="200" height="300" fill="#f1efe9"/>' +
  `<path d="${OUTLINES[shape]}" fill="${colour}" stroke="#222" stroke-width="2" stroke-linejoin="round"/></svg>`
