/** What it costs that a figure is of a name: each mark and word between them has its price. */
import { describe, expect, test } from 'vitest'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import { linkCost, NEVER } from '../../../../core/reading/links/link-cost.ts'
import { figureAt, nameAt, textOf } from '../given.ts'

const cost = (words: string, name: string, figure: string, point: PointName = 'waist') => {
  const text = textOf(words)
  const label = nameAt(text, name, [point])
  const one = figureAt(text, figure)
  return linkCost(text, label, one, label.from < one.from)
}

describe('a name before its figure', () => {
  test.each([
    ['waist 30"', 0],
    ['waist: 30"', -0.3],
    ['waist = 30"', -0.3],
    ['waist - 30"', -0.15],
    ['waist | 30"', 1],
    ['waist , 30" or so', 0.7],
    ['waist / 30"', 0.5],
    ['waist approx 30"', 0.05],
    ['waist measures 30"', 0],
    ['waist wobble 30"', 0.5],
    ['waist and 30"', 0.45]
  ])('%s costs %d', (words, expected) => expect(cost(words, 'waist', '30"')).toBeCloseTo(expected, 9))
  test('a bar parts more than a comma, a sentence more than a bar', () => {
    const bar = cost('waist | 30"', 'waist', '30"')
    expect(bar).toBeGreaterThan(cost('waist , 30" or so', 'waist', '30"'))
    expect(cost('waist . Then 30"', 'waist', '30"')).toBeGreaterThan(bar)
  })
  test('a second joint mark costs nothing more and saves nothing more', () => {
    expect(cost('waist: - 30"', 'waist', '30"')).toBeCloseTo(-0.3, 9)
  })
  test('an aside in brackets is stepped over', () => {
    expect(cost('waist (elastic and stretchy and whatnot) 30"', 'waist', '30"')).toBeCloseTo(0.2, 9)
  })
  test('alone on its line, its figure alone on the next', () => {
    expect(cost('waist\n30"', 'waist', '30"')).toBeCloseTo(0.5, 9)
    expect(cost('a fine waist\n30"', 'waist', '30"')).toBeCloseTo(1.6, 9)
    expect(cost('waist\n\n30"', 'waist', '30"')).toBeGreaterThan(2)
  })
})

describe('a name behind its figure', () => {
  test('costs a little, so that names before lead', () => expect(cost('30" waist', 'waist', '30"')).toBeCloseTo(0.35, 9))
  test('less with a small word that leads on to it', () => expect(cost('30" at waist', 'waist', '30"')).toBeCloseTo(0.25, 9))
  test('more with its own colon or verb: it waits for the figure to come', () => {
    expect(cost('30" waist:', 'waist', '30"')).toBeCloseTo(1.15, 9)
    expect(cost('30" waist is', 'waist', '30"')).toBeCloseTo(1.15, 9)
  })
})

describe('no link at all', () => {
  test('too far off', () => expect(cost(`waist ${'and so '.repeat(25)}30"`, 'waist', '30"')).toBe(NEVER))
  test('a name that says little, with a bare figure before it or anything between', () => {
    const text = textOf('14 inside')
    const weak = nameAt(text, 'inside', ['inseam'], { weak: true })
    expect(linkCost(text, weak, figureAt(text, '14'), false)).toBe(NEVER)
    expect(linkCost(text, { ...weak, weak: false }, figureAt(text, '14'), false)).toBeLessThan(1)
  })
})

test('a fault before a figure costs more than a point', () => {
  const text = textOf('hole 1"')
  const fault = nameAt(text, 'hole', [], { role: 'fault' })
  expect(linkCost(text, fault, figureAt(text, '1"'), true)).toBeCloseTo(0.6, 9)
})

/** Name and figure are those of the waist. */
const waist = (words: string) => cost(words, 'waist', '30"')
const costs = (given: [string, number][]) =>
  test.each(given)('%s costs %d', (words, expected) => {
    expect(waist(words.replace('\\n', '\n'))).toBeCloseTo(expected, 9)
  })

describe('each mark before a figure', () => {
  costs([
    ['waist ; lovely; 30"', 1.2 + 0.5 + 1.2],
    ['waist • 30"', 1],
    ['waist · 30"', 1],
    ['waist * 30"', 0.3],
    ['waist & 30"', 0.6],
    ['waist + 30"', 0.6],
    ['waist x 30"', 0.3],
    ['waist → 30"', -0.15],
    ['waist ~ 30"', -0.15],
    ['waist # 30"', 0.5],
    // a second joint mark adds nothing, a mark of inches joins nothing
    ['waist - : 30"', -0.15],
    // a sentence
    ['waist. The 30"', 2.05]
  ])
})

describe('a comma', () => {
  costs([
    // a sentence or a line that is a name, a comma and a figure
    ['waist, 30"', 0.2],
    ['Lovely. waist, 30"', 0.2],
    ['lovely waist, 30"', 0.7],
    ['waist, 30" lovely', 0.7],
    ['waist, the 30"', 0.75],
    // an aside before the name's own verb
    ['waist, tied as usual, is 30"', 0.35],
    // it stands right behind the name, holds words alone, and the verb comes behind it
    ['waist tied, lovely, is 30"', 0.05 + 0.7 + 0.5 + 0.7 + 0.05],
    ['waist, tied as usual, lovely 30"', 0.7 + 0.05 + 0.05 + 0.5 + 0.7 + 0.5],
    ['waist, tied (as usual), is 30"', 0.7 + 0.05 + 0.2 + 0.7 + 0.05]
  ])
})

describe('a semicolon', () => {
  costs([
    // glued to name and figure, or in a line of its own
    ['lovely waist;30"', -0.15],
    ['waist; 30"', -0.15],
    ['lovely waist; 30"', 1.2]
  ])
})

describe('brackets', () => {
  costs([
    ['waist (whatever and ever) 30"', 0.2],
    // one that does not close before the figure is only a mark
    ['waist (lovely 30"', 0.6]
  ])
  test('a name that ends in brackets of its own goes on to their end', () => {
    expect(cost('waist (side to side, lovely wobble) 30"', 'waist (side to side', '30"')).toBeCloseTo(0.2, 9)
    expect(cost('waist [side to side, lovely wobble] 30"', 'waist [side to side', '30"')).toBeCloseTo(0.2, 9)
    expect(cost('waist (side to side) lovely 30"', 'waist (side to side)', '30"')).toBeCloseTo(0.5, 9)
  })
})

describe('marks and words behind a figure', () => {
  costs([
    ['30" - waist', 0.45],
    ['30" : waist', 1.15],
    ['30" = waist', 1.15],
    ['30" and waist', 0.65],
    ['30" measures waist', 0.95],
    ['30" wobble waist', 0.85],
    ['30" from waist', 1.15],
    ['30" to waist', 0.4],
    // cloth to spare, told with the figure
    ['30" + 2 waist', 0.45],
    ['30" + waist', 0.95],
    // a name with its own verb or colon waits for the figure behind it
    ['30" waist = ', 1.15],
    ['30" waist measures', 1.15],
    ['30" waist lovely', 0.35]
  ])
})

describe('the end of a line', () => {
  costs([
    ['waist\\n30"', 0.5],
    ['waist\\n30" lovely', 1.6],
    ['waist\\nthe 30"', 1.65],
    // the name below, alone on its line as the figure on its own
    ['30"\\nwaist', 0.85],
    ['30"\\nwaist lovely', 1.95],
    ['the 30"\\nwaist', 1.95],
    ['• waist\\n30"', 0.5]
  ])
})

test('forty tokens off at the most', () => {
  expect(waist(`waist ${'the '.repeat(40)}30"`)).toBeCloseTo(2, 9)
  expect(waist(`waist ${'the '.repeat(41)}30"`)).toBe(NEVER)
})

test('a name that says little takes a figure only near by, and with its unit from before it', () => {
  const weak = (words: string, figure: string) => {
    const text = textOf(words)
    const label = nameAt(text, 'inside', ['inseam'], { weak: true })
    const one = figureAt(text, figure)
    return linkCost(text, label, one, label.from < one.from) < NEVER
  }
  expect([weak('14" inside', '14"'), weak('14 inside', '14'), weak('inside 14', '14')]).toEqual([true, false, true])
  expect([weak('inside wobble 14"', '14"'), weak('inside the 14"', '14"')]).toEqual([false, true])
})

test('where a sleeve starts is told behind its figure: the comma before it parts little', () => {
  const sleeve = (words: string, point: PointName) => cost(words, 'sleeves', '60 cm', point)
  expect(sleeve('Long sleeves, 60 cm from the shoulder', 'sleeveLength')).toBeCloseTo(0.2, 9)
  expect(sleeve('Long sleeves, 60 cm or so', 'sleeveLength')).toBeCloseTo(0.7, 9)
  expect(sleeve('Long sleeves, 60 cm from the shoulder', 'cuff')).toBeCloseTo(0.7, 9)
})

test('a thing costs as a fault does, before its figure alone', () => {
  const text = textOf('hole 1" hole')
  const hole = (nth: number, role: 'fault' | 'thing' | 'point') => nameAt(text, 'hole', [], { role, nth })
  const one = figureAt(text, '1"')
  expect(linkCost(text, hole(1, 'thing'), one, true)).toBeCloseTo(0.6, 9)
  expect(linkCost(text, hole(1, 'point'), one, true)).toBeCloseTo(0, 9)
  expect(linkCost(text, hole(2, 'fault'), one, false)).toBeCloseTo(0.35, 9)
})
