/** Links set right by what stands behind their figures. */
import { describe, expect, test } from 'vitest'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import { isCollarHeight, isOfUnknown, withTrailingNames } from '../../../../core/reading/links/trailing-names.ts'
import type { Label } from '../../../../core/reading/names/label.ts'
import { figureAt, linkOf, nameAt, textOf } from '../given.ts'

/** The first name has the figure; `behind` stands unused behind it. */
const named = (words: string, name: [string, PointName], figure: string, behind?: [string, PointName[], Partial<Label>?]) => {
  const text = textOf(words)
  const label = nameAt(text, name[0], [name[1]])
  const labels = [label, ...(behind ? [nameAt(text, behind[0], behind[1], behind[2])] : [])]
  const [link] = withTrailingNames(text, [linkOf(label, figureAt(text, figure))], labels)
  return [link?.label.role, link?.label.points[0], link?.label.basis]
}

describe('a name behind the figure says the same more exactly', () => {
  test('of one family', () => {
    expect(named('width 20" hem', ['width', 'width'], '20"', ['hem', ['hem']])).toEqual(['point', 'hem', null])
    expect(named('chest 20" pit to pit', ['chest', 'chest'], '20"', ['pit to pit', ['chest'], { basis: 'flat' }])).toEqual([
      'point',
      'chest',
      'flat'
    ])
  })
  test('of another family it is a name of its own', () => {
    expect(named('chest 20" inseam', ['chest', 'chest'], '20"', ['inseam', ['inseam']])).toEqual(['point', 'chest', null])
  })
  test('farther off it is none', () => {
    expect(named('width 20". And then a hem', ['width', 'width'], '20"', ['hem', ['hem']])).toEqual(['point', 'width', null])
  })
})

test('where a length starts, told behind its figure', () => {
  expect(named('sleeve 18" from the underarm', ['sleeve', 'sleeveLength'], '18"')).toEqual(['point', 'sleeveUnderarm', null])
  expect(named('length 25" from the waist', ['length', 'length'], '25"')).toEqual(['point', 'skirtLength', null])
})
test('wide at the opening is the cuff, not how long the sleeve is', () => {
  expect(named('sleeves 11" wide at the opening', ['sleeves', 'sleeveLength'], '11"')).toEqual(['point', 'cuff', null])
  expect(named('sleeves 11" wide', ['sleeves', 'sleeveLength'], '11"')).toEqual(['point', 'sleeveLength', null])
})
test('a small figure with cloth to spare behind it is that cloth', () => {
  const spare: [string, PointName[], Partial<Label>] = ['to let down', [], { role: 'letDown' }]
  expect(named('hem has 2" to let down', ['hem', 'hem'], '2"', spare)[0]).toBe('letDown')
  expect(named('hem has 20" to let down', ['hem', 'hem'], '20"', spare)[0]).toBe('point')
})

describe('a width of something else', () => {
  test('of a thing without a name here', () => {
    const text = textOf('gizmo 9" wide')
    const wide = linkOf(nameAt(text, 'wide', ['width']), figureAt(text, '9"'))
    expect(isOfUnknown(text, wide)).toBe(true)
    const known = textOf('waist 9" wide')
    expect(isOfUnknown(known, linkOf(nameAt(known, 'wide', ['width']), figureAt(known, '9"')))).toBe(false)
  })
  test('how high a collar stands', () => {
    const text = textOf('collar 6" wide')
    const link = linkOf(nameAt(text, 'collar', ['neck'], { weak: true }), figureAt(text, '6"'))
    expect(isCollarHeight(text, link)).toBe(true)
    expect(isCollarHeight(text, { ...link, label: { ...link.label, weak: false } })).toBe(false)
    const around = textOf('collar 16" around')
    expect(isCollarHeight(around, linkOf(nameAt(around, 'collar', ['neck'], { weak: true }), figureAt(around, '16"')))).toBe(false)
  })
})
