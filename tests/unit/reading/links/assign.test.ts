/** Which figure is of which name. */
import { describe, expect, test } from 'vitest'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import { linksOf } from '../../../../core/reading/links/assign.ts'
import { labelsOf } from '../../../../core/reading/names/labels.ts'
import { quantitiesOf } from '../../../../core/reading/quantities/quantities.ts'
import { readText } from '../../../../core/reading/text/text.ts'
import { figureAt, nameAt, textOf } from '../given.ts'

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

describe('a figure that is nobody’s', () => {
  const linked = (words: string, figure: string) => {
    const text = textOf(words)
    return linksOf(text, [nameAt(text, 'waist', ['waist'])], [figureAt(text, figure)]).length
  }
  test('a sentence away a figure with its unit is still of the only name, a bare one may be anything', () => {
    expect(linked('waist . Gizmo 30"', '30"')).toBe(1)
    expect(linked('waist . Gizmo 30', '30')).toBe(0)
  })
  test('two sentences away neither is', () => expect(linked('waist . Gizmo . Gizmo 30"', '30"')).toBe(0))
  test('a name that no figure takes costs too: a bare one on the next line is its own', () => {
    expect(linked('a fine waist\n30', '30')).toBe(1)
  })
  test('two names and one figure: it goes to the nearer', () => {
    const text = textOf('waist , thigh 30"')
    const [link, ...rest] = linksOf(text, [nameAt(text, 'waist', ['waist']), nameAt(text, 'thigh', ['thigh'])], [figureAt(text, '30"')])
    expect([link?.label.points[0], rest]).toEqual(['thigh', []])
  })
})

describe('a second figure of one name', () => {
  /** The figures that are the waist's; the second is marked. */
  const of = (words: string, ...figures: string[]) => {
    const text = textOf(words)
    const quantities = figures.map((one) => figureAt(text, one))
    return linksOf(text, [nameAt(text, 'waist', ['waist'])], quantities).map(
      ({ quantity, again }) => `${quantity.value}${again ? ' again' : ''}`
    )
  }
  test.each<[string, string[]]>([
    // a word says what it is of
    ['waist 30" lovely wobble gizmo 40" stretched', ['30', '40 again']],
    ['waist 30" lovely wobble gizmo relaxed 40"', ['30', '40 again']],
    ['waist 30" lovely wobble gizmo 40"', ['30']],
    // it was measured, whatever stands between
    ['waist 30" as per the label but actually measures 40"', ['30', '40 again']],
    // with what is counted in, and with no figure of its own
    ['waist 30" lovely wobble gizmo 40" with collar', ['30', '40 again']],
    ['waist 30" lovely wobble gizmo 40" with the collar', ['30', '40 again']],
    ['waist 30" lovely wobble gizmo 40" with lovely wobble', ['30']],
    ['waist 30" lovely wobble gizmo 40" with collar 5', ['30']]
  ])('%s', (words, expected) => expect(of(words, '30"', '40"')).toEqual(expected))
})

describe('a name that no figure took', () => {
  const linked = (words: string, names: [string, PointName][], figure: string) => {
    const text = textOf(words)
    return linksOf(
      text,
      names.map(([name, point]) => nameAt(text, name, [point])),
      [figureAt(text, figure)]
    ).map(({ label }) => label.points[0])
  }
  const LONG: [string, PointName] = ['long', 'length']
  const HEM: [string, PointName] = ['hem', 'hem']
  test.each([
    ['waist 30" long', LONG, ['waist']],
    ['waist lovely 30" long', LONG, ['waist']],
    ['waist lovely wobble 30" hem', HEM, ['hem']]
  ])('costs little where it only says how a figure ran: %s', (words, other, expected) =>
    expect(linked(words, [['waist', 'waist'], other], '30"')).toEqual(expected)
  )
})

test('a list that is number-first is so throughout, and one colon does not turn it', () => {
  expect(links('30" waist, 40" hips, 30" inseam')).toEqual(['waist 30', 'hip 40', 'inseam 30'])
  expect(links('30" waist\n40" hips\n30" inseam')).toEqual(['waist 30', 'hip 40', 'inseam 30'])
  expect(links('waist: 30"\nhips: 40"\ninseam: 30"')).toEqual(['waist 30', 'hip 40', 'inseam 30'])
})
