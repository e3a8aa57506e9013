/** Which of several garments a figure is of. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { garmentsOf } from '../../../../core/reading/garment/sections.ts'
import { textOf } from '../given.ts'

/** Each figure with the garment it is of, where the text has several. */
const of = (words: string, kind: GarmentKind | null = 'jacket') => {
  const text = textOf(words)
  const { garmentAt } = garmentsOf(text, kind)
  return text.tokens.flatMap((token, at) => (token.kind === 'digits' ? [`${token.text} ${garmentAt(at).of ?? '-'}`] : [])).join(', ')
}

describe('under the heading of a garment', () => {
  test.each([
    ['Jacket:\nchest 40\nTrousers:\nwaist 34', '40 jacket, 34 trousers'],
    ['Jacket\nchest 40\nTrousers\nwaist 34', '40 jacket, 34 trousers'],
    ['Jacket measurements\nchest 40\nTrousers measurements\nwaist 34', '40 jacket, 34 trousers'],
    ['Jacket chest 40. Trousers waist 34', '40 jacket, 34 trousers'],
    ['Jacket - chest 40. Trousers - waist 34', '40 jacket, 34 trousers'],
    ['[Jacket] chest 40 [Trousers] waist 34', '40 jacket, 34 trousers'],
    ['Jacket (lovely, new): chest 40. Trousers (worn): waist 34', '40 jacket, 34 trousers'],
    ['The jacket: chest 40. The trousers: waist 34', '40 jacket, 34 trousers'],
    ['• Jacket: chest 40 • Trousers: waist 34', '40 jacket, 34 trousers'],
    ['Top (jacket): chest 40\nTrousers: waist 34', '40 jacket, 34 trousers'],
    // in the midst of a sentence, or heading nothing
    ['chest 40 of a jacket: lovely with trousers: waist 34', '40 -, 34 -'],
    ['(jacket): chest 40\n(trousers): waist 34', '40 jacket, 34 trousers'],
    ['Jacket: chest 40 - trousers: waist 34', '40 jacket, 34 trousers'],
    ['Jacket lovely chest 40. Trousers lovely waist 34', '40 -, 34 -'],
    ['Jacket (lovely\nchest 40. Trousers (worn\nwaist 34', '40 -, 34 -'],
    // of one half of the body
    ['Jacket: chest 40. Shirt: chest 44', '40 -, 44 -'],
    ['Trousers: waist 34. Shorts: waist 34', '34 -, 34 -'],
    // a waistcoat beside a jacket is a garment of its own
    ['Jacket: chest 40. Waistcoat: chest 38', '40 jacket, 38 waistcoat'],
    ['Waistcoat: chest 38. Waistcoat: chest 38', '38 -, 38 -']
  ])('%j: %s', (words, expected) => expect(of(words)).toBe(expected))
  test('what stands before the first is of the garment itself', () => {
    expect(of('chest 40\nTrousers: waist 34', 'jacket')).toBe('40 jacket, 34 trousers')
    expect(of('chest 40\nSkirt: waist 34', 'jacket')).toBe('40 jacket, 34 skirt')
    expect(of('chest 40\nWaistcoat: chest 38', 'coat')).toBe('40 coat, 38 waistcoat')
    expect(of('chest 40\nTrousers: waist 34', 'dress')).toBe('40 dress, 34 trousers')
    expect(of('chest 40\nTrousers: waist 34', 'jumpsuit')).toBe('40 -, 34 -')
    expect(of('chest 40\nTrousers: waist 34', 'skirt')).toBe('40 -, 34 -')
    expect(of('chest 40\nTrousers: waist 34', null)).toBe('40 -, 34 -')
    expect(of('chest 40\nWaistcoat: chest 38', 'shirt')).toBe('40 -, 38 -')
  })
})

describe('begun by a sentence or a part of a list', () => {
  test.each([
    ['chest 40. The skirt is 14" across the waist', '40 jacket, 14 skirt'],
    ['chest 40, trousers waist 34', '40 jacket, 34 trousers'],
    ['chest 40; trousers waist: 34', '40 jacket, 34 trousers'],
    ['chest 40. The trousers measure 34', '40 jacket, 34 trousers'],
    ['chest 40. Matching trousers waist 34', '40 jacket, 34 trousers'],
    ['chest 40\nTrousers W34 L32', '40 jacket, 34 trousers, 32 trousers'],
    ['chest 40\nTrousers size 12 waist 34', '40 jacket, 12 trousers, 34 trousers'],
    // in its midst, or without a figure of its own
    ['chest 40 and lovely trousers waist 34', '40 -, 34 -'],
    ['chest 40, trousers lovely 34', '40 -, 34 -'],
    ['chest 40. The trousers are lovely, 34', '40 -, 34 -'],
    ['chest 40, trousers waist lovely 34', '40 -, 34 -'],
    ['chest 40, trousers are 34', '40 jacket, 34 trousers'],
    ['chest 40, trousers waist - 34', '40 jacket, 34 trousers'],
    ['chest 40, trousers waist / 34', '40 -, 34 -'],
    ['chest 40\nTrousers UK 12 waist 34', '40 jacket, 12 trousers, 34 trousers'],
    ['chest 40\nTrousers W 34', '40 -, 34 -'],
    ['chest 40\nTrousers X34', '40 -, 34 -'],
    ['chest 40, trousers W34', '40 -, 34 -'],
    ['chest 40, trousers W 34', '40 -, 34 -']
  ])('%j: %s', (words, expected) => expect(of(words)).toBe(expected))
  test('the skirt of a dress is no second garment', () => {
    expect(of('Dress: chest 40. The skirt is 14', 'dress')).toBe('40 -, 14 -')
  })
})
