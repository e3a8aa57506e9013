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

describe('a letter at the boundary of its sizes', () => {
  test.each([
    // no hip is so small
    ['h', 'trousers', 12.9, 'legOpening'],
    ['h', 'trousers', 13, 'hip'],
    // beside a W such an L is the inside leg
    ['l', 'jeans', 34.5, 'inseam'],
    ['l', 'jeans', 34.6, 'outseam'],
    ['l', 'shorts', 15, 'outseam'],
    ['l', 'skirt', 24, 'skirtLength'],
    // a sleeve is longer than shoulders are wide, or short
    ['s', 'shirt', 21.5, 'sleeveLength'],
    ['s', 'shirt', 21.4, 'shoulderWidth'],
    ['s', 'shirt', 11, 'shoulderWidth'],
    ['s', 'shirt', 10.9, 'sleeveLength'],
    ['r', 'jeans', 11, 'frontRise'],
    ['i', 'jeans', 30, 'inseam'],
    ['il', 'jeans', 30, 'inseam'],
    ['ol', 'jeans', 40, 'outseam'],
    ['t', 'jeans', 12, 'thigh'],
    ['k', 'jeans', 8, 'knee'],
    ['lo', 'jeans', 7, 'legOpening'],
    ['b', 'skirt', 14, 'waist'],
    ['b', 'shirt', 20, 'chest'],
    ['c', 'shirt', 20, 'chest'],
    ['sl', 'shirt', 24, 'sleeveLength'],
    ['sh', 'shirt', 18, 'shoulderWidth'],
    ['w', 'dress', 15, 'waist'],
    ['q', 'shirt', 20, null]
  ] as const)('%s on %s, %d in: %s', (letter, kind, inches, point) => expect(pointOfLetter(letter, kind, inches)).toBe(point))
})

describe('a rise by its side', () => {
  test.each<[PointName, Qualifier[], string]>([
    ['rise', ['back'], 'backRise'],
    ['rise', ['front'], 'frontRise'],
    ['frontRise', ['back'], 'backRise'],
    ['frontRise', ['back', 'front'], 'frontRise'],
    ['frontRise', [], 'frontRise']
  ])('%s %j', (name, sides, point) => expect(resolve(name, 'jeans', new Set(sides))).toBe(point))
  test('an inner sleeve, and no other', () => {
    expect(resolve('sleeveLength', 'shirt', new Set(['back']))).toBe('sleeveLength')
    expect(resolve('chest', 'shirt', new Set(['inner']))).toBe('chest')
  })
})

describe('what the size of a figure settles, at the boundary', () => {
  /** One name with one figure. */
  const one = (kind: GarmentKind, point: PointName, figure: string, more: Partial<Words & Link> = {}) =>
    figures(kind, `name ${figure}`, [['name', point, figure, more]]).points.map((found) => found.split(' ')[0])
  test.each<[GarmentKind, PointName, string, string]>([
    // no arm is longer from the shoulder than 780 mm
    ['shirt', 'sleeveLength', '780 mm', 'sleeveLength'],
    ['shirt', 'sleeveLength', '781 mm', 'sleeveFromCentreBack'],
    // an inner sleeve is shorter than 570 mm
    ['jacket', 'inseam', '569 mm', 'sleeveUnderarm']
  ])('%s %s %s: %s', (kind, name, figure, point) => expect(one(kind, name, figure)).toEqual([point]))
  test.each<[GarmentKind, PointName, string, boolean, string]>([
    // across an arm up to 280 mm flat, across a leg up to 420
    ['shirt', 'sleeveLength', '280 mm', false, 'bicep'],
    ['shirt', 'sleeveLength', '281 mm', false, 'sleeveLength'],
    ['shirt', 'sleeveLength', '560 mm', true, 'bicep'],
    ['shirt', 'sleeveLength', '561 mm', true, 'sleeveLength'],
    ['jeans', 'inseam', '420 mm', false, 'legOpening'],
    ['jeans', 'inseam', '421 mm', false, 'inseam'],
    ['jeans', 'legLength', '420 mm', false, 'legOpening']
  ])('across, %s %s %s, around %s: %s', (kind, name, figure, around, point) => {
    expect(one(kind, name, figure, { across: true, evidence: around ? ['word-around'] : [] })).toEqual([point])
  })
  test('a leg that says little and is no long leg is how wide it ends, on long trousers', () => {
    const leg = (kind: GarmentKind, figure: string, weak: boolean) => {
      const text = textOf(`leg ${figure}`)
      const link = linkOf(nameAt(text, 'leg', ['inseam'], { weak }), figureAt(text, figure))
      return figuresOf(text, {
        links: [link],
        words: new Map([[link, saying()]]),
        garmentAt: () => ({ kind, of: null }),
        sizeOf: () => null,
        unitOf: ({ quantity }) => quantity.unit
      }).figures.map(({ point }) => point)
    }
    expect(leg('trousers', '339 mm', true)).toEqual(['legOpening'])
    expect(leg('jeans', '339 mm', true)).toEqual(['legOpening'])
    expect(leg('trousers', '340 mm', true)).toEqual(['inseam'])
    expect(leg('trousers', '339 mm', false)).toEqual(['inseam'])
    expect(leg('shorts', '339 mm', true)).toEqual(['inseam'])
  })
  test('a back wider than the shoulders by more than 1.12 is a length', () => {
    const back = (shoulders: string, its: string) =>
      figures('jacket', `shoulders ${shoulders}, back ${its}`, [
        ['shoulders', 'shoulderWidth', shoulders],
        ['back', 'back', its]
      ]).points.map((found) => found.split(' ')[0])
    expect(back('400 mm', '448 mm')).toEqual(['shoulderWidth', 'backWidth'])
    expect(back('400 mm', '449 mm')).toEqual(['shoulderWidth', 'bodyLength'])
    // each in its own unit, and two bare ones in one
    expect(back('40 cm', '400 mm')).toEqual(['shoulderWidth', 'backWidth'])
    expect(back('15', '16')).toEqual(['shoulderWidth', 'backWidth'])
    expect(back('15', '17')).toEqual(['shoulderWidth', 'bodyLength'])
  })
  test('an opening of the arm, where a sleeve is measured, is where it ends', () => {
    const opening = (words: string, name: string, sleeve: boolean) =>
      figures('shirt', words, [
        ...(sleeve ? ([['sleeve', 'sleeveLength', '24"']] as [string, string, string][]) : []),
        [name, 'armhole', '6"']
      ])
        .points.map((found) => found.split(' ')[0])
        .at(-1)
    expect(opening('sleeve 24" arm opening 6"', 'arm opening', true)).toBe('cuff')
    expect(opening('sleeve 24" armhole 6"', 'armhole', true)).toBe('armhole')
    expect(opening('arm opening 6"', 'arm opening', false)).toBe('armhole')
  })
})

describe('the seller’s own tape and a shop’s words', () => {
  /** Two figures with who took each: of one point, or of two. */
  const taken = (words: string, said: [string, PointName, string, 'own' | 'shop' | null][]) => {
    const text = textOf(words)
    const links = said.map(([name, point, figure]) => linkOf(nameAt(text, name, [point]), figureAt(text, figure)))
    const sources = new Map(links.map((link, index) => [link.quantity.from, said[index]?.[3] ?? null]))
    const read = figuresOf(text, {
      links,
      words: new Map(links.map((link) => [link, saying()])),
      garmentAt: () => ({ kind: 'dress', of: null }),
      sizeOf: () => null,
      unitOf: ({ quantity }) => quantity.unit,
      sourceOf: (token) => sources.get(token) ?? null
    })
    return [read.figures.map(({ quantity }) => quantity.value), read.asides.map(({ quantity, because }) => `${quantity.value} ${because}`)]
  }
  test('of what the seller measured, nothing that the shop says', () => {
    expect(
      taken('bust 88cm, waist 70cm', [
        ['bust', 'chest', '88cm', 'shop'],
        ['waist', 'waist', '70cm', 'own']
      ])
    ).toEqual([[70], ['88 size-chart']])
    expect(
      taken('bust 88cm, waist 70cm', [
        ['bust', 'chest', '88cm', 'shop'],
        ['waist', 'waist', '70cm', null]
      ])
    ).toEqual([[88, 70], []])
  })
  test('nor what nobody is said to have taken of the same point before it', () => {
    expect(
      taken('bust 88cm, chest 90cm', [
        ['bust', 'chest', '88cm', null],
        ['chest', 'chest', '90cm', 'own']
      ])
    ).toEqual([[90], ['88 size-chart']])
    // behind it, or of another point, it stands
    expect(
      taken('bust 88cm, chest 90cm', [
        ['bust', 'chest', '88cm', 'own'],
        ['chest', 'chest', '90cm', null]
      ])
    ).toEqual([[88, 90], []])
    expect(
      taken('waist 88cm, chest 90cm', [
        ['waist', 'waist', '88cm', null],
        ['chest', 'chest', '90cm', 'own']
      ])
    ).toEqual([[88, 90], []])
  })
})

describe('a range of what is elastic', () => {
  const ranged = (point: PointName, low: number, high: number, ...qualifiers: Qualifier[]) => {
    const text = textOf('name 30 cm')
    const range = { ...figureAt(text, '30 cm'), low, high, value: (low + high) / 2, range: true }
    const link = linkOf(nameAt(text, 'name', [point]), range)
    const read = figuresOf(text, {
      links: [link],
      words: new Map([[link, saying(...qualifiers)]]),
      garmentAt: () => ({ kind: 'trousers', of: null }),
      sizeOf: () => null,
      unitOf: () => 'cm'
    })
    return [read.figures.map(({ quantity }) => quantity.value), read.stretched.map(({ quantity }) => quantity.value)]
  }
  test('no range at rest is wider than 1.4 times', () => {
    expect(ranged('waist', 30, 42)).toEqual([[36], []])
    expect(ranged('waist', 30, 43)).toEqual([[30], [43]])
    // a hip is not elastic
    expect(ranged('hip', 30, 60)).toEqual([[45], []])
  })
  test('“27in to 33in stretched”: it begins where it lies, and ends where it is pulled to', () => {
    expect(ranged('waist', 27, 33, 'stretched')).toEqual([[27], [33]])
  })
})

describe('of two figures of one name, the one that is kept', () => {
  const two = (words: string, first: string, second: string, a: Words, b: Words) => {
    const { points, asides } = figures('trousers', words, [
      ['waist', 'waist', first, a],
      ['waist', 'waist', second, { ...b, again: true }]
    ])
    return [points, asides]
  }
  test('measured leads only where it is near what the label tells, and neither the same nor its half', () => {
    const pair = (first: string, second: string) => two(`waist ${first} (measures ${second})`, first, second, saying(), saying('measured'))
    expect(pair('800 mm', '840 mm')).toEqual([['waist 840'], ['800 unknown']])
    expect(pair('800 mm', '400 mm')).toEqual([['waist 800'], ['400 detail']])
    expect(pair('800 mm', '412 mm')).toEqual([['waist 800'], ['412 detail']])
    expect(pair('800 mm', '430 mm')).toEqual([['waist 430'], ['800 unknown']])
    expect(pair('800 mm', '801 mm')).toEqual([['waist 800'], ['801 detail']])
    expect(pair('800 mm', '1000 mm')).toEqual([['waist 800'], ['1000 detail']])
  })
  test('worn closed before laid open, whichever is told first; open alone counts', () => {
    expect(two('waist 28" tied, 40" open', '28"', '40"', saying('closed'), saying('opened'))).toEqual([['waist 28'], ['40 detail']])
    expect(figures('trousers', 'waist 40"', [['waist', 'waist', '40"', saying('opened')]]).points).toEqual(['waist 40'])
  })
  test('uncuffed in no brackets before cuffed; one that is both stays', () => {
    const inseam = (words: string, a: Words, b: Words) =>
      figures('trousers', words, [
        ['inseam', 'inseam', '27"', a],
        ['inseam', 'inseam', '30"', { ...b, again: true }]
      ]).points
    expect(inseam('inseam 27" cuffed, 30" uncuffed', saying('cuffed'), saying('uncuffed'))).toEqual(['inseam 30'])
    expect(inseam('inseam 27" cuffed, 30"', saying('cuffed'), saying())).toEqual(['inseam 27'])
    // a bracket that has closed before it
    expect(inseam('inseam 27" (cuffed) 30" uncuffed', saying('cuffed'), saying('uncuffed'))).toEqual(['inseam 30'])
  })
})
