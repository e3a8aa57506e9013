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
