/** From links to figures of points. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import type { Link } from '../../../../core/reading/links/assign.ts'
import type { Qualifier, Words } from '../../../../core/reading/measures/context.ts'
import { type FiguresGiven, figuresOf, pointOfLetter, resolve } from '../../../../core/reading/measures/figures.ts'
import { figureAt, linkOf, nameAt, textOf } from '../given.ts'

const saying = (...qualifiers: Qualifier[]): Words => ({ evidence: [], qualifiers: new Set(qualifiers), across: false })
/** Names and figures of one text, each with what is said of it. */
const figures = (
  kind: GarmentKind,
  words: string,
  said: [string, PointName | string, string, Partial<Words & Link>?][],
  unit?: 'in' | 'cm'
) => {
  const text = textOf(words)
  const links = said.map(([name, point, figure, more = {}]) => {
    const letter = point.length < 3 || point === 'back'
    const label = nameAt(text, name, letter ? [] : [point as PointName], { letter: letter ? point : null })
    return linkOf(label, figureAt(text, figure), { again: more.again ?? false })
  })
  const shared = new Map(links.map((link) => [link.label.from, link.label]))
  const same = links.map((link) => ({ ...link, label: shared.get(link.label.from) ?? link.label }))
  const given: FiguresGiven = {
    links: same,
    words: new Map(same.map((link, index) => [link, { ...saying(), ...said[index]?.[3] }])),
    garmentAt: () => ({ kind, of: null }),
    sizeOf: () => null,
    unitOf: ({ quantity }) => quantity.unit ?? unit ?? null
  }
  const read = figuresOf(text, given)
  return {
    points: read.figures.map(({ point, quantity }) => `${point} ${quantity.value}`),
    asides: read.asides.map(({ quantity, because }) => `${quantity.value} ${because}`),
    stretched: read.stretched.map(({ quantity }) => quantity.value)
  }
}

describe('a letter, by the garment and the size of its figure', () => {
  test.each([
    ['w', 'shirt', 20, false, 'chest'],
    ['w', 'shirt', 20, true, 'waist'],
    ['w', 'jeans', 16, false, 'waist'],
    ['l', 'jeans', 31, false, 'inseam'],
    ['l', 'jeans', 41, false, 'outseam'],
    ['l', 'shirt', 31, false, 'bodyLength'],
    ['s', 'shirt', 18, false, 'shoulderWidth'],
    ['s', 'shirt', 24, false, 'sleeveLength'],
    ['s', 'shirt', 9, false, 'sleeveLength'],
    ['s', 'jeans', 18, false, null],
    ['b', 'jeans', 8, false, 'legOpening'],
    ['c', 'jeans', 20, false, null],
    ['back', 'jacket', 25, false, 'bodyLength'],
    ['back', 'jacket', 17, false, 'backWidth'],
    ['back', 'jeans', 15, false, 'backRise'],
    ['drop', 'skirt', 24, false, 'skirtLength'],
    ['drop', 'skirt', 4, false, null]
  ] as const)('%s on %s, %d in (chest named: %s): %s', (letter, kind, inches, chested, point) => {
    expect(pointOfLetter(letter, kind, inches, chested)).toBe(point)
  })
})

describe('words that name another point', () => {
  test('a rise at the back, a sleeve inside', () => {
    expect(resolve('rise', 'jeans', new Set(['back']))).toBe('backRise')
    expect(resolve('rise', 'jeans', new Set())).toBe('frontRise')
    expect(resolve('sleeveLength', 'shirt', new Set(['inner']))).toBe('sleeveUnderarm')
  })
})

describe('what the size of a figure settles', () => {
  test('a very long sleeve was taken from the centre back', () => {
    expect(figures('shirt', 'sleeve 33"', [['sleeve', 'sleeveLength', '33"']]).points).toEqual(['sleeveFromCentreBack 33'])
    expect(figures('shirt', 'sleeve 25"', [['sleeve', 'sleeveLength', '25"']]).points).toEqual(['sleeveLength 25'])
  })
  test('a bare one in the unit of its list', () => {
    expect(figures('shirt', 'sleeve 33', [['sleeve', 'sleeveLength', '33']], 'cm').points).toEqual(['sleeveLength 33'])
    expect(figures('shirt', 'sleeve 33', [['sleeve', 'sleeveLength', '33']], 'in').points).toEqual(['sleeveFromCentreBack 33'])
    expect(figures('jacket', 'back 39', [['back', 'back', '39']], 'cm').points).toEqual(['backWidth 39'])
  })
  test('but not in one that nobody could wear', () => {
    // 52 inches down a jacket: it is 52 cm across
    expect(figures('jacket', 'back 52', [['back', 'back', '52']], 'in').points).toEqual(['backWidth 52'])
    expect(figures('coat', 'back 40', [['back', 'back', '40']], 'in').points).toEqual(['bodyLength 40'])
  })
  test('an inseam on a garment with sleeves is the inner sleeve', () => {
    expect(figures('jacket', 'inseam 18"', [['inseam', 'inseam', '18"']]).points).toEqual(['sleeveUnderarm 18'])
  })
  test('a back much longer than the shoulders are wide is a length', () => {
    const said: [string, string, string][] = [
      ['shoulders', 'shoulderWidth', '16"'],
      ['back', 'back', '20"']
    ]
    expect(figures('jacket', 'shoulders 16", back 20"', said).points).toEqual(['shoulderWidth 16', 'bodyLength 20'])
    const wide: [string, string, string][] = [
      ['shoulders', 'shoulderWidth', '18"'],
      ['back', 'back', '20"']
    ]
    expect(figures('jacket', 'shoulders 18", back 20"', wide).points).toEqual(['shoulderWidth 18', 'backWidth 20'])
  })
  test('across an arm or a leg is no length', () => {
    expect(figures('shirt', 'sleeve 7"', [['sleeve', 'sleeveLength', '7"', { across: true }]]).points).toEqual(['bicep 7'])
    expect(figures('jeans', 'leg 9"', [['leg', 'inseam', '9"', { across: true }]]).points).toEqual(['legOpening 9'])
  })
})

describe('of two figures of one name', () => {
  test('the garment as it lies is kept, how far it pulls out stands by itself', () => {
    const said: [string, string, string, Partial<Words & Link>?][] = [
      ['waist', 'waist', '28"', { qualifiers: new Set<Qualifier>(['relaxed']) }],
      ['waist', 'waist', '36"', { qualifiers: new Set<Qualifier>(['stretched']), again: true }]
    ]
    expect(figures('skirt', 'waist 28" relaxed, 36" stretched', said)).toEqual({
      points: ['waist 28'],
      asides: ['36 detail'],
      stretched: [36]
    })
  })
  test('what was measured leads over what a label tells', () => {
    const said: [string, string, string, Partial<Words & Link>?][] = [
      ['waist', 'waist', '32"'],
      ['waist', 'waist', '33"', { qualifiers: new Set<Qualifier>(['measured']), again: true }]
    ]
    expect(figures('jeans', 'waist 32" (measures 33")', said)).toMatchObject({ points: ['waist 33'], asides: ['32 unknown'] })
  })
  test('the second is nobody’s when nothing says what it is', () => {
    const said: [string, string, string, Partial<Words & Link>?][] = [
      ['waist', 'waist', '32"'],
      ['waist', 'waist', '40"', { again: true }]
    ]
    expect(figures('jeans', 'waist 32" 40"', said)).toMatchObject({ points: ['waist 32'], asides: ['40 unknown'] })
  })
})

test('a name that this kind has no point for is a detail', () => {
  expect(figures('jeans', 'armhole 9"', [['armhole', 'armhole', '9"']])).toMatchObject({ points: [], asides: ['9 detail'] })
})

describe('one of two', () => {
  const seconds = (said: Parameters<typeof figures>[2], words: string) => {
    const { points, asides } = figures('trousers', words, said)
    return { points, asides }
  }
  test('a wrap counts as it is worn', () => {
    expect(
      seconds(
        [
          ['waist', 'waist', '40"', saying('opened')],
          ['waist', 'waist', '28"', { ...saying('closed'), again: true }]
        ],
        'waist 40" open, 28" tied'
      )
    ).toEqual({ points: ['waist 28'], asides: ['40 detail'] })
  })
  test('let down before cuffed, but not where it is told in brackets', () => {
    const said = (second: string): Parameters<typeof figures>[2] => [
      ['inseam', 'inseam', '27"', saying('cuffed')],
      ['inseam', 'inseam', second, { ...saying('uncuffed'), again: true }]
    ]
    expect(seconds(said('30"'), 'inseam 27" cuffed, 30" uncuffed').points).toEqual(['inseam 30'])
    expect(seconds(said('30"'), 'inseam 27" as cuffed (30" uncuffed)').points).toEqual(['inseam 27'])
  })
  test('a range too wide for rest begins where it lies', () => {
    const text = textOf('waist 32 to 50 cm')
    const range = { ...figureAt(text, '32 to 50 cm'), low: 32, high: 50, value: 41, range: true }
    const link = linkOf(nameAt(text, 'waist', ['waist']), range)
    const read = figuresOf(text, {
      links: [link],
      words: new Map([[link, saying()]]),
      garmentAt: () => ({ kind: 'trousers', of: null }),
      sizeOf: () => null,
      unitOf: () => 'cm'
    })
    expect(read.figures.map(({ quantity }) => quantity.value)).toEqual([32])
    expect(read.stretched.map(({ quantity }) => quantity.value)).toEqual([50])
  })
})

test('an H of legs is the hip, or the hem where no hip is so small', () => {
  expect([pointOfLetter('h', 'trousers', 20), pointOfLetter('h', 'trousers', 9), pointOfLetter('h', 'shirt', 20)]).toEqual([
    'hip',
    'legOpening',
    'hem'
  ])
})
