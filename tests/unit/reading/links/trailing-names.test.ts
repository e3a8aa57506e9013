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

describe('cloth to spare behind a figure', () => {
  const spare = (words: string, name: [string, PointName], figure: string, role: Label['role'] = 'letDown') =>
    named(words, name, figure, ['to let', [], { role }])[0]
  test.each<[string, [string, PointName], string, string]>([
    ['hem has 129 mm to let down', ['hem', 'hem'], '129 mm', 'letDown'],
    ['hem has 130 mm to let down', ['hem', 'hem'], '130 mm', 'point'],
    // a bare figure may be anything
    ['hem has 2 to let down', ['hem', 'hem'], '2', 'point'],
    ['waist has 2" to let out', ['waist', 'waist'], '2"', 'letDown'],
    // no cloth is told of a cuff or a chest
    ['chest has 2" to let out', ['chest', 'chest'], '2"', 'point'],
    // farther off it is told of something else
    ['hem is 2" wobbly and more to let down', ['hem', 'hem'], '2"', 'point']
  ])('%s', (words, name, figure, role) => expect(spare(words, name, figure)).toBe(role))
  test('to let out and in a seam it is the same, in a fault it is none', () => {
    const role = (its: Label['role']) => spare('hem has 2" to let down', ['hem', 'hem'], '2"', its)
    expect([role('letOut'), role('seamAllowance'), role('fault')]).toEqual(['letOut', 'seamAllowance', 'point'])
  })
})

test.each<[string, PointName, string]>([
  ['sleeves 11" wide at the opening', 'sleeveLength', 'cuff'],
  ['sleeves 11" across the cuff', 'sleeveLength', 'cuff'],
  ['sleeves 11" wide at the hem', 'sleeveLength', 'cuff'],
  // somewhere else, of something else, or long
  ['sleeves 11" wide at the shoulder', 'sleeveLength', 'sleeveLength'],
  ['sleeves 11" wide at the cuff', 'sleeveLength', 'cuff'],
  ['sleeves 11" wide at the lovely cuff', 'sleeveLength', 'sleeveLength'],
  ['sleeves 11" wide, lovely cuff', 'sleeveLength', 'sleeveLength'],
  ['sleeves 11" long at the opening', 'sleeveLength', 'sleeveLength'],
  ['sleeves 11" wide at the opening', 'bicep', 'bicep']
])('%s of a %s is the %s', (words, point, expected) => expect(named(words, ['sleeves', point], '11"')[1]).toBe(expected))

describe('“Balloon sleeves, 52 cm long”: what the sentence speaks of is so long', () => {
  const long = (words: string) => {
    const text = textOf(words)
    const labels = [nameAt(text, 'sleeves', ['sleeveLength']), nameAt(text, 'long', ['length'])]
    const [link] = withTrailingNames(text, [linkOf(labels[1] as Label, figureAt(text, '52 cm'))], labels)
    return link?.label.points[0]
  }
  test.each<[string, string]>([
    ['Balloon sleeves, 52 cm long', 'sleeveLength'],
    ['The balloon sleeves, 52 cm long', 'sleeveLength'],
    ['Lovely. Balloon sleeves, 52 cm long', 'sleeveLength'],
    ['Lovely\nBalloon sleeves, 52 cm long', 'sleeveLength'],
    ['Lovely, balloon sleeves, 52 cm long', 'length'],
    ['sleeves, 52 cm long', 'sleeveLength'],
    // two words before the name at the most
    ['The lovely balloon sleeves, 52 cm long', 'length'],
    // the sentence speaks of what has them
    ['With balloon sleeves, 52 cm long', 'length'],
    ['Has balloon sleeves, 52 cm long', 'length'],
    ['It has lovely sleeves, 52 cm long', 'length'],
    ['Dress with sleeves, 52 cm long', 'length'],
    // another sentence, another line
    ['Balloon sleeves. It is 52 cm long', 'length'],
    ['Balloon sleeves\n52 cm long', 'length']
  ])('%s', (words, expected) => expect(long(words)).toBe(expected))
})

describe('the sentence speaks of sleeves, and of nothing else between', () => {
  /** The names of a text in their order; the one in the last place has the figure. */
  const long = (words: string, names: [string, PointName[]][], used: number[] = []) => {
    const text = textOf(words)
    const labels = names.map(([name, points]) => nameAt(text, name, points))
    const own = labels[labels.length - 1] as Label
    const others = used.map((at) => linkOf(labels[at] as Label, figureAt(text, '40 cm')))
    const links = [...others, linkOf(own, figureAt(text, '52 cm'))]
    return withTrailingNames(text, links, labels).at(-1)?.label.points[0]
  }
  test('“The sleeves are wide, 52 cm long”: a word that tells along what, and no figure of its own', () => {
    const wide: [string, PointName[]][] = [
      ['sleeves', ['sleeveLength']],
      ['wide', ['width']],
      ['long', ['length']]
    ]
    expect(long('The sleeves are wide, 52 cm long', wide)).toBe('sleeveLength')
    expect(long('The sleeves are 40 cm wide, 52 cm long', wide, [1])).toBe('length')
    expect(
      long('Sleeves, chest, 52 cm long', [
        ['Sleeves', ['sleeveLength']],
        ['chest', ['chest']],
        ['long', ['length']]
      ])
    ).toBe('length')
  })
  test('sleeves that have a figure, that may be something else, or another name', () => {
    expect(
      long(
        'Sleeves 40 cm, 52 cm long',
        [
          ['Sleeves', ['sleeveLength']],
          ['long', ['length']]
        ],
        [0]
      )
    ).toBe('length')
    expect(
      long('Sleeves, 52 cm long', [
        ['Sleeves', ['sleeveLength', 'cuff']],
        ['long', ['length']]
      ])
    ).toBe('length')
    expect(
      long('Waist, 52 cm long', [
        ['Waist', ['waist']],
        ['long', ['length']]
      ])
    ).toBe('length')
    expect(
      long('Sleeves, 52 cm wide', [
        ['Sleeves', ['sleeveLength']],
        ['wide', ['width']]
      ])
    ).toBe('width')
    // a longer name tells by itself of what it is
    expect(
      long('Sleeves, 52 cm total length', [
        ['Sleeves', ['sleeveLength']],
        ['total length', ['length']]
      ])
    ).toBe('length')
  })
})

describe('a name behind that has its own figure, or is none', () => {
  const first = (words: string, name: [string, PointName[]], behind: [string, PointName[], Partial<Label>?], used = false) => {
    const text = textOf(words)
    const labels = [nameAt(text, name[0], name[1]), nameAt(text, behind[0], behind[1], behind[2])]
    const links = [linkOf(labels[0] as Label, figureAt(text, '20"'))]
    if (used) links.push(linkOf(labels[1] as Label, figureAt(text, '30"')))
    return withTrailingNames(text, links, labels)[0]?.label.points
  }
  test.each<[string, [string, PointName[]], [string, PointName[], Partial<Label>?], boolean, PointName[]]>([
    ['width 20" hem', ['width', ['width']], ['hem', ['hem']], false, ['hem']],
    ['width 20" hem 30"', ['width', ['width']], ['hem', ['hem']], true, ['width']],
    ['width 20" hem', ['width', ['width']], ['hem', ['hem'], { letter: 'back' }], false, ['width']],
    ['width 20" hem', ['width', ['width', 'chest']], ['hem', ['hem']], false, ['width', 'chest']],
    // what is more exact already stays
    ['hem 20" width', ['hem', ['hem']], ['width', ['width']], false, ['hem']]
  ])('%s of %j, with %j behind: %j', (words, name, behind, used, expected) => expect(first(words, name, behind, used)).toEqual(expected))
})

test('a name of a sleeve and more is no cuff, however wide at its opening', () => {
  const text = textOf('sleeves 11" wide at the opening')
  const of = (points: PointName[], before = true) => {
    const label = nameAt(text, 'sleeves', points)
    return withTrailingNames(text, [linkOf(label, figureAt(text, '11"'), { before })], [label])[0]?.label.points
  }
  expect(of(['sleeveLength'])).toEqual(['cuff'])
  expect(of(['sleeveLength', 'bicep'])).toEqual(['sleeveLength', 'bicep'])
  expect(of(['sleeveLength'], false)).toEqual(['sleeveLength'])
})

describe('a back with its seams', () => {
  const back = (words: string, point: PointName) => {
    const text = textOf(words)
    const label = nameAt(text, 'Back', [], { letter: 'back' })
    const labels = [label, nameAt(text, 'collar seam down', [point])]
    return withTrailingNames(text, [linkOf(label, figureAt(text, '20"'))], labels)[0]?.label
  }
  test('from the collar down it is a length, and a letter no more', () => {
    expect(back('Back 20" collar seam down', 'bodyLength')).toMatchObject({ letter: null, points: ['bodyLength'] })
    expect(back('Back 20" collar seam down', 'chest')).toMatchObject({ letter: 'back', points: [] })
    expect(back('Back 20". And then a collar seam down', 'bodyLength')).toMatchObject({ letter: 'back', points: [] })
  })
})

describe('a width of something unknown, at its distance', () => {
  const unknown = (words: string, name = 'wide') => {
    const text = textOf(words)
    return isOfUnknown(text, linkOf(nameAt(text, name, ['width']), figureAt(text, '9"')))
  }
  test.each<[string, boolean]>([
    ['gizmo 9" wide', true],
    ['gizmo is 9" wide', true],
    ['gizmo is about 9" wide', true],
    // farther off, parted by a mark, or of two letters
    ['gizmo, 9" wide', false],
    ['gizmo measures 9" wide', true],
    ['gizmo measures about 9" wide', true],
    ['gizmo is just at about 9" wide', false],
    ['zzz 9" wide', true],
    ['zz 9" wide', false],
    ['9" wide', false],
    ['gizmo. It is 9" wide', false]
  ])('%s', (words, expected) => expect(unknown(words)).toBe(expected))
  test('a name that is no adjective is a name', () => expect(unknown('gizmo 9" width', 'width')).toBe(false))
})
