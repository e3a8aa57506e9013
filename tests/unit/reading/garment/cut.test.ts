/** The cut as a listing tells it, and as a person sets it over what was read. */
import { describe, expect, test } from 'vitest'
import { skirtSlope } from '../../../../core/alterations/skirts.ts'
import { garmentAsWorn } from '../../../../core/garment/garment-as-worn.ts'
import { readListing } from '../../../../core/reading/read-listing.ts'
import { garmentFrom } from '../../../../core/reading/request/garment-from.ts'
import { reckon } from '../../../../core/reckon.ts'

const read = (title: string, text: string) => readListing({ title, text })

describe('named lengths are read', () => {
  test.each([
    ['Midi dress', 'Chest 48 cm flat, length 118 cm.', 'midi'],
    ['Mini skirt, A-line', 'Waist 38 cm flat.', 'mini'],
    ['Maxi coat', 'Chest 55 cm flat.', 'maxi']
  ])('%s', (title, text, dressLength) => {
    expect(read(title, text).cut.dressLength).toMatchObject({ value: dressLength, from: 'told' })
  })
  test('and none of a shirt', () => expect(read('Midi shirt', 'Chest 48 cm flat.').cut.dressLength).toBeUndefined())
})

describe('what a person sets of the cut stands over words of the make that say the same', () => {
  const circle = read('Full circle skirt', 'Waist 38 cm flat, length 70 cm.')
  test('a skirt read as a circle and set as a pencil has no circle left', () => {
    expect(circle.made.skirtShape).toBe('circle')
    const garment = garmentFrom(circle, [{ cut: { silhouette: 'pencil' } }])
    expect(garment.made?.skirtShape).toBeUndefined()
    expect(garmentAsWorn(garment).made.skirtShape).toBe('straight')
  })
  test('a shape of the skirt that was set before there was a line for the cut still counts', () => {
    const garment = garmentAsWorn(garmentFrom(read('Skirt', 'Waist 38 cm flat.'), [{ made: { skirtShape: 'flared' } }]))
    expect(garment.cut.silhouette).toMatchObject({ value: 'flared', from: 'told' })
  })
  test('sleeves read as short and set as long are long', () => {
    const shirt = read('Short sleeve shirt', 'Pit to pit 53 cm.')
    const seen = reckon(
      {
        garment: garmentFrom(shirt, [{ cut: { sleeve: 'long' } }]),
        wearer: { body: { bustGirth: { mm: 960 } }, fit: 'regular' },
        means: { level: 3, tailor: false }
      },
      { outlook: false }
    )
    expect(seen.cut.sleeve).toMatchObject({ value: 'long', from: 'told' })
  })
  test('a circle told by the cut grows at its hem as one told by the make', () => {
    const slope = (told: object) => skirtSlope(garmentAsWorn({ kind: 'skirt', measures: [], ...told }))
    expect(slope({})).toBe(0)
    expect(slope({ made: { skirtShape: 'circle' } })).toBeCloseTo(2 * Math.PI, 6)
    expect(slope({ cut: { silhouette: 'circle' } })).toBeCloseTo(2 * Math.PI, 6)
  })
})
