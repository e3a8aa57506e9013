/** Several names, then as many figures. */
import { describe, expect, test } from 'vitest'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import { jointOf } from '../../../../core/reading/links/joint.ts'
import { figureAt, nameAt, textOf } from '../given.ts'

const joint = (words: string, names: [string, PointName[]][], figures: string[]) => {
  const text = textOf(words)
  const labels = names.map(([name, points]) => nameAt(text, name, points))
  const seen = new Map<string, number>()
  const quantities = figures.map((one) => {
    seen.set(one, (seen.get(one) ?? 0) + 1)
    return figureAt(text, one, { nth: seen.get(one) ?? 1 })
  })
  const { shared, sizes, sizeFigures } = jointOf({ ...text, labels, quantities })
  return {
    shared: shared.map(({ point, quantity, size }) => `${point} ${quantity.value}${size === null ? '' : ` ${size}`}`),
    sizes,
    sizeFigures: sizeFigures.map(({ value }) => value)
  }
}
const THREE: [string, PointName[]][] = [
  ['bust', ['chest']],
  ['waist', ['waist']],
  ['hips', ['hip']]
]

describe('as many figures as names, in their order', () => {
  test.each(['bust/waist/hips 36/28/38', 'bust, waist, hips: 36, 28, 38', 'bust x waist x hips 36 x 28 x 38'])('%s', (words) => {
    expect(joint(words, THREE, ['36', '28', '38']).shared).toEqual(['chest 36', 'waist 28', 'hip 38'])
  })
  test('a name for two counts as two', () => {
    expect(joint('bust/waist 36/28', [['bust/waist', ['chest', 'waist']]], ['36', '28']).shared).toEqual(['chest 36', 'waist 28'])
  })
  test('a word for one that nothing bounds keeps its place: 36/free/38', () => {
    expect(joint('bust/waist/hips 36/free/38', THREE, ['36', '38']).shared).toEqual(['chest 36', 'hip 38'])
  })
  test('what stands behind the bracket is no name of theirs', () => {
    const names: [string, PointName[]][] = [...THREE.slice(0, 2), ['sleeve', ['sleeveLength']]]
    expect(joint('36 x 28 (bust x waist), sleeve 23', names, ['36', '28', '23']).shared).toEqual(['chest 36', 'waist 28'])
  })
  test('the figures first, the names in brackets behind them', () => {
    expect(joint('36 x 28 x 38 (bust x waist x hips)', THREE, ['36', '28', '38']).shared).toEqual(['chest 36', 'waist 28', 'hip 38'])
  })
})

describe('nothing is shared out', () => {
  test('with fewer figures, or more', () => {
    expect(joint('bust/waist/hips 36/28', THREE, ['36', '28']).shared).toEqual([])
    expect(joint('bust/waist/hips 36/28/38/40', THREE, ['36', '28', '38', '40']).shared).toEqual([])
  })
  test('where names stand close and no mark parts their figures', () => {
    expect(joint('bust waist hips 36 28 38', THREE, ['36', '28', '38']).shared).toEqual([])
  })
  test('past the end of the sentence', () => {
    expect(joint('bust/waist/hips. And 36/28/38', THREE, ['36', '28', '38']).shared).toEqual([])
  })
  test('to one name alone', () => expect(joint('bust 36/28', [['bust', ['chest']]], ['36', '28']).shared).toEqual([]))
  test('to a word that says little', () => {
    const text = textOf('bust/inside 36/28')
    const labels = [nameAt(text, 'bust', ['chest']), nameAt(text, 'inside', ['inseam'], { weak: true })]
    expect(jointOf({ ...text, labels, quantities: [figureAt(text, '36'), figureAt(text, '28')] }).shared).toEqual([])
  })
})

describe('tables', () => {
  const words = 'size | bust | waist | hips\nM | 36 | 28 | 38\nL | 38 | 30 | 40'
  test('a row a size, by letter', () => {
    const { shared, sizes } = joint(words, THREE, ['36', '28', '38', '38', '30', '40'])
    expect(shared).toEqual(['chest 36 M', 'waist 28 M', 'hip 38 M', 'chest 38 L', 'waist 30 L', 'hip 40 L'])
    expect(sizes).toEqual(['M', 'L'])
  })
  test('a row a size, by number: the number is no measure', () => {
    const { shared, sizes, sizeFigures } = joint('size | bust | waist\n10 | 36 | 28', THREE.slice(0, 2), ['10', '36', '28'])
    expect([shared, sizes, sizeFigures]).toEqual([['chest 36 10', 'waist 28 10'], ['10'], [10]])
  })
  test('a row with another word before it is none', () => {
    expect(joint('bust | waist\nbooks | 36 | 28', THREE.slice(0, 2), ['36', '28']).shared).toEqual([])
  })
})

test('a bracket right behind its figures takes them, whatever stands on the next line', () => {
  const names: [string, PointName[]][] = [
    ['width', ['width']],
    ['length', ['length']]
  ]
  expect(joint('20.5 x 27 (width x length)\n50/50 cotton', names, ['20.5', '27', '50', '50']).shared).toEqual(['width 20.5', 'length 27'])
})

/** Bust and waist, or with the hips too where a row has three. */
const shares = (words: string, figures: string[], names = THREE.slice(0, 2)) => joint(words, names, figures).shared
const BOTH = ['chest 36', 'waist 28']

describe('what may stand between the names', () => {
  test.each<[string, boolean]>([
    ['bust & waist 36/28', true],
    ['bust + waist 36/28', true],
    ['bust | waist 36/28', true],
    ['bust • waist 36/28', true],
    ['bust - waist 36/28', true],
    ['bust and waist 36/28', true],
    ['bust (in) waist (in) 36/28', true],
    ['bust: waist 36/28', false],
    ['bust; waist 36/28', false],
    ['bust wobble waist 36/28', false],
    ['bust = waist 36/28', false],
    // six tokens apart at the most
    ['bust ,,,,,, waist 36/28', true],
    ['bust ,,,,,,, waist 36/28', false]
  ])('%s', (words, shared) => expect(shares(words, ['36', '28'])).toEqual(shared ? BOTH : []))
})

describe('what may stand between names and figures', () => {
  test.each<[string, boolean]>([
    ['bust/waist: 36/28', true],
    ['bust/waist are 36/28', true],
    ['bust/waist measures 36 and 28', true],
    ['bust/waist around 36 x 28', true],
    ['bust/waist wobble 36/28', false],
    ['bust/waist 36 wobble 28', false],
    // words of measuring lead on to the first alone
    ['bust/waist 36 around 28', false],
    ['bust/waist. 36/28', false],
    ['bust/waist 36. 28', false]
  ])('%s', (words, shared) => expect(shares(words, ['36', '28'])).toEqual(shared ? BOTH : []))
  test('a figure that runs straight into the next name is that name’s, but not behind a colon', () => {
    expect(shares('bust/waist 36/28 hips', ['36', '28'], THREE)).toEqual([])
    expect(shares('bust/waist: 36/28 hips', ['36', '28'], THREE)).toEqual(BOTH)
    expect(shares('bust/waist 36/28, hips', ['36', '28'], THREE)).toEqual(BOTH)
  })
  test('names close together, a mark between the figures', () => {
    expect(shares('bust waist 36/28', ['36', '28'])).toEqual(BOTH)
    expect(shares('bust waist 36 28', ['36', '28'])).toEqual([])
    expect(shares('bust/waist 36 28', ['36', '28'])).toEqual(BOTH)
  })
})

describe('a girth that nothing bounds keeps its place', () => {
  test.each<[string, string[], string[]]>([
    ['bust/waist/hips: free/28/38', ['28', '38'], ['waist 28', 'hip 38']],
    ['bust/waist/hips full/28/38', ['28', '38'], ['waist 28', 'hip 38']],
    ['bust/waist/hips free/full/38', ['38'], ['hip 38']],
    // a word with no mark behind it is no place in the row
    ['bust/waist/hips full 28/38', ['28', '38'], []],
    ['bust/waist/hips 36/28/free', ['36', '28'], BOTH],
    ['bust/waist/hips 36/lovely/38', ['36', '38'], []],
    ['bust/waist/hips 36/free/38/40', ['36', '38', '40'], []]
  ])('%s', (words, figures, expected) => expect(shares(words, figures, THREE)).toEqual(expected))
})

describe('figures before their names', () => {
  test.each<[string, boolean]>([
    ['36 x 28 (bust x waist)', true],
    ['36/28 (bust/waist)', true],
    ['36, 28 (bust, waist)', true],
    ['36 - 28 (bust - waist)', true],
    // not in brackets, not joined, not right before them
    ['36 x 28 bust x waist', false],
    ['36 and 28 (bust and waist)', false],
    ['36 + 28 (bust + waist)', false],
    ['36 x 28 all in (bust x waist)', false]
  ])('%s', (words, shared) => expect(shares(words, ['36', '28'])).toEqual(shared ? BOTH : []))
})

describe('rows of a table', () => {
  const table = (row: string, figures: string[], head = 'bust | waist') => {
    const { shared, sizes } = joint(`${head}\n${row}`, THREE.slice(0, 2), figures)
    return [shared.length, sizes]
  }
  test.each<[string, string[], [number, string[]]]>([
    ['M | 36 | 28', ['36', '28'], [2, ['M']]],
    ['36 | 28', ['36', '28'], [2, []]],
    ['M long | 36 | 28', ['36', '28'], [2, ['M long']]],
    ['M lovely | 36 | 28', ['36', '28'], [0, []]],
    ['10 | 36 | 28', ['10', '36', '28'], [2, ['10']]],
    // half a size is no size, nor is a figure with its unit
    ['10.5 | 36 | 28', ['10.5', '36', '28'], [0, []]],
    ['10 cm | 36 | 28', ['10 cm', '36', '28'], [0, []]],
    ['36', ['36'], [0, []]],
    // an empty line between, and no more
    ['\n36 | 28', ['36', '28'], [2, []]],
    ['\n\n36 | 28', ['36', '28'], [0, []]]
  ])('%s', (row, figures, expected) => expect(table(row, figures)).toEqual(expected))
})
