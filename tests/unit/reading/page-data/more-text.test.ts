/** What the page's data and its title tell beside its text, as lines to read behind it. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { moreText } from '../../../../core/reading/page-data/more-text.ts'
import { readListing } from '../../../../core/reading/read-listing.ts'
import type { Reading } from '../../../../core/reading/reading.ts'

interface Given {
  title?: string
  description?: string | null
  lines?: string[]
  kind?: GarmentKind
}
const more = (text: string, { title = '', description = null, lines = [], kind = 'skirt' }: Given) => {
  const read = (its: string): Reading => readListing({ text: its, kind })
  return moreText({ text, title }, { description, lines }, read(text), read)
}

describe('a title', () => {
  test.each<[string, GarmentKind, boolean]>([
    ['Blouse pit to pit 20"', 'shirt', true],
    ['Dress, bust 36" waist 28"', 'dress', true],
    ['Coat, length 100 cm', 'coat', true],
    ['Trousers, rise 11 in', 'trousers', true],
    ['Trousers, waist 16" flat', 'trousers', true],
    ["Shirt pit to pit 20''", 'shirt', true],
    ['Shirt pit to pit 508mm', 'shirt', true],
    ['Shirt pit to pit 20 inches', 'shirt', true],
    // one sign of inches for both
    ['Dress, bust 36" waist 28', 'dress', true],
    // a size, not a measure
    ['Jacket, chest 40"', 'jacket', false],
    ['Trousers, waist 34" inseam 32"', 'trousers', false],
    ['Trousers, outseam 42" rise 11"', 'trousers', false],
    // one without a unit, and figures of two garments
    ['Dress length 100 cm, pit to pit 20', 'dress', false],
    ['Dress length 100 cm, pit to pit 20"', 'dress', true],
    ['Jacket chest 20" pit to pit, trousers waist 16" flat', 'jacket', false],
    // no unit, no figure
    ['Blouse pit to pit 20', 'shirt', false],
    ['Blouse, lovely', 'shirt', false]
  ])('%s of a %s measures: %s', (title, kind, expected) => expect(more('Lovely.', { title, kind })).toBe(expected ? `\n\n${title}` : ''))
  test('one that the text has too, or whose measures it tells, is not told again', () => {
    const title = 'Blouse pit to pit 20"'
    expect(more('Lovely. BLOUSE, pit-to-pit 20"!', { title, kind: 'shirt' })).toBe('')
    expect(more('Chest 40" around.', { title, kind: 'shirt' })).toBe('')
    expect(more('Sleeve 24".', { title, kind: 'shirt' })).toBe(`\n\n${title}`)
    // nor one whose measures the description tells
    expect(more('Lovely.', { title, description: 'Pit to pit 20".', kind: 'shirt' })).toBe('\n\nPit to pit 20".')
    expect(more('Lovely.', { title, description: 'Sleeve 24".', kind: 'shirt' })).toBe(`\n\nSleeve 24".\n\n${title}`)
  })
  test('behind no text it begins at once', () => {
    expect(more('', { title: 'Blouse pit to pit 20"', kind: 'shirt' })).toBe('Blouse pit to pit 20"')
    expect(more('', {})).toBe('')
  })
})

describe('a description', () => {
  test.each<[string, string, boolean]>([
    ['Lovely.', 'Waist 72 cm', true],
    // what the text tells already, word for word or by its measures
    ['A skirt: waist 72 cm!', 'Waist 72 cm.', false],
    ['A skirt, 72 cm around the waist.', 'Waist 72 cm.', false],
    ['A skirt. Waist 72 cm.', 'Waist 72 cm, hips 98 cm', true],
    // more than twice as long as the text
    ['abcde', 'fghijk lmn', false],
    ['abcde', 'fghijk lmno', true]
  ])('%j, %j is read: %s', (text, description, expected) => expect(more(text, { description })).toBe(expected ? `\n\n${description}` : ''))
})

describe('lines of measurements', () => {
  const sized = ['Size S:', 'waist: 68 cm', 'Size M:', 'waist: 74 cm']
  test('those of points that the text does not tell, with the headings of their sizes', () => {
    expect(more('Lovely.', { lines: ['waist: 72 cm', 'hips: 98 cm'] })).toBe('\n\nwaist: 72 cm\nhips: 98 cm')
    expect(more('Waist 72 cm.', { lines: ['waist: 72 cm', 'hips: 98 cm'] })).toBe('\n\nhips: 98 cm')
    expect(more('Waist 72 cm.', { lines: ['waist: 72 cm'] })).toBe('')
    expect(more('Lovely.', { lines: sized })).toBe(`\n\n${sized.join('\n')}`)
    expect(more('Lovely.', { lines: ['waist: 72 cm', 'a lovely line', 'Size guide: see below', 'For Size:', 'not To fit waist'] })).toBe(
      '\n\nwaist: 72 cm'
    )
  })
  test('of whom it fits where the text names nobody, or beside a line of the garment', () => {
    const lines = ['To fit hips 97-103 cm']
    expect(more('Lovely.', { lines })).toBe('\n\nTo fit hips 97-103 cm')
    expect(more('To fit hips 96-100 cm.', { lines })).toBe('')
    expect(more('To fit hips 96-100 cm.', { lines: ['waist: 72 cm', ...lines] })).toBe(`\n\nwaist: 72 cm\n${lines[0]}`)
  })
  test('behind a description that tells them they are not told again', () => {
    expect(more('Lovely.', { description: 'Waist 72 cm', lines: ['waist: 72 cm', 'hips: 98 cm'] })).toBe('\n\nWaist 72 cm\n\nhips: 98 cm')
  })
})
