/** Which figure is of which name. */
import { describe, expect, test } from 'vitest'
import { linksOf } from '../../../../core/reading/links/assign.ts'
import { labelsOf } from '../../../../core/reading/names/labels.ts'
import { quantitiesOf } from '../../../../core/reading/quantities/quantities.ts'
import { readText } from '../../../../core/reading/text/text.ts'

const links = (text: string) => {
  const read = readText(text, 'en')
  const found = quantitiesOf(read)
  return linksOf(read, labelsOf(read, found), found).map(
    ({ quantity, label }) => `${label.points[0] ?? label.letter ?? label.role} ${quantity.value}`
  )
}
describe('links', () => {
  test.each([
    ['waist 30" hips 40"', ['waist 30', 'hip 40']],
    ['30" waist 40" hips', ['waist 30', 'hip 40']],
    ['30" waist, hips: 40", 30" inseam', ['waist 30', 'hip 40', 'inseam 30']],
    ['bust 36", waist free, hips 40"', ['chest 36', 'hip 40']],
    ['W 16" H 20" R 11"', ['w 16', 'h 20', 'r 11']],
    ['lapels 3", chest 40"', ['detail 3', 'chest 40']]
  ])('%s', (text, expected) => expect(links(text)).toEqual(expected))
  test('one letter alone is no name', () => expect(links('plan b 30"')).toEqual([]))
})
