/** The second of two figures of one name. */
import { describe, expect, test } from 'vitest'
import { readListing } from '../../../../core/reading/read-listing.ts'

const seconds = (title: string, text: string) =>
  (readListing({ title, text }).seconds ?? []).map(({ point, mm, how, stated }) => `${point} ${Math.round(mm)} ${how} ${stated.text}`)

describe('is told as the first is, and is no measure', () => {
  test.each([
    ['Jeans', 'Inseam 33" (30" cuffed)', ['inseam 762 cuffed 30"']],
    ['Wrap skirt', 'Waist 40" open, 28" tied', ['waist 1016 opened 40"']],
    ['Trousers', 'Waist 14" flat relaxed, stretches to 20"', ['waist 1016 stretched 20"']],
    ['Blouse', 'Length is 25 inches at the front and 27 inches at the back', ['bodyLength 686 back 27 inches']],
    ['Coat', 'Length 40" without collar, 43" with collar', ['bodyLength 1092 null 43"']]
  ])('%s: %s', (title, text, expected) => expect(seconds(title, text)).toEqual(expected))
  test('there is none where a name has one figure', () =>
    expect(readListing({ title: 'Coat', text: 'Length 40"' }).seconds).toBeUndefined())
})
