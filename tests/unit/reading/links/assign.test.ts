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

/** Each link: the name, its figure, whether the name stands behind it, whether it is a second one. */
const linked = (words: string) => {
  const read = readText(words, 'en')
  const found = quantitiesOf(read)
  return linksOf(read, labelsOf(read, found), found)
    .map(
      ({ quantity, label, before, again }) => `${label.points[0] ?? label.role} ${quantity.value}${again ? ' again' : before ? '' : ' <'}`
    )
    .join(', ')
}

describe('a second figure that is said of the same name', () => {
  test.each([
    ['rise 11" front, 14.5" back', 'rise 11, rise 14.5 again'],
    ['waist 28" (stretches to 36")', 'waist 28, waist 36 again'],
    ['waist 28" relaxed, 36" stretched', 'waist 28, waist 36 again'],
    ['waist 28" unstretched and 38" fully stretched, hip 44"', 'waist 28, waist 38 again, hip 44'],
    ['waist 30" stretched 40" hips 42"', 'waist 30, waist 40 again, hip 42'],
    ['inseam 27" cuffed, 30" uncuffed', 'inseam 27, inseam 30 again'],
    ['inseam 30" and 27" with the turn ups', 'inseam 30, inseam 27 again'],
    ['length 66 cm, without collar 61 cm', 'length 66, length 61 again'],
    ['sleeve 24", with cuff 26"', 'sleeveLength 24, sleeveLength 26 again'],
    ['sleeve 24", 26" with cuff', 'sleeveLength 24, sleeveLength 26 again'],
    ['sleeve 24", cuff 4"', 'sleeveLength 24, cuffEdge 4'],
    ['waist 30" on the label but it measures 31"', 'waist 30, waist 31 again'],
    ['waist 30", a second look at it gave 31"', 'waist 30']
  ])('%s: %s', (words, expected) => expect(linked(words)).toBe(expected))
})

describe('names before and behind their figures in one list', () => {
  test.each([
    ['30" waist, 31" inseam, 12" rise', 'waist 30 <, inseam 31 <, rise 12 <'],
    ['waist 30", inseam 31", 12" rise', 'waist 30, inseam 31, rise 12 <'],
    ['30"\nwaist\n40"\nhips', 'waist 30 <, hip 40 <'],
    ['waist\n30"\nhips\n40"', 'waist 30, hip 40'],
    ['waist 30" hips', 'waist 30'],
    ['waist, hips, inseam 31"', 'inseam 31'],
    ['waist 30"\nhips 40"\n\nThigh', 'waist 30, hip 40'],
    ['bust 36" front length 24" back length 26"', 'chest 36, length 24, length 26'],
    // a word that only says along what, or from where
    ['chest 23" pit to pit, and 27" long', 'chest 23, length 27 <'],
    ['23" pit to pit, 27" long, 24" sleeves', 'chest 23 <, length 27 <, sleeveLength 24 <'],
    ['lovely skirt 26" long, waist 28"', 'length 26 <, waist 28'],
    ['waist 30" long line cut, hips 40"', 'waist 30, hip 40'],
    ['sleeve 24" from the shoulder, chest 42"', 'sleeveLength 24, chest 42'],
    ['24" sleeves from shoulder, 42" chest, 28" length', 'sleeveLength 24 <, chest 42 <, length 28 <'],
    // what is no point of a garment takes its own
    ['pocket 6", waist 30"', 'detail 6, waist 30'],
    ['bag 12", waist 30"', 'thing 12, waist 30'],
    ['hem allowance 2", inseam 31"', 'letDown 2, inseam 31'],
    ['length 40", 2" hem allowance', 'length 40, letDown 2 <'],
    ['height 170 cm, waist 30"', 'height 170, waist 30'],
    ['waist 30", hips 40", 170 cm tall', 'waist 30, hip 40, height 170 <']
  ])('%j: %s', (words, expected) => expect(linked(words)).toBe(expected))
})
