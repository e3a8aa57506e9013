/** Each stage of the reader alone. */
import { describe, expect, test } from 'vitest'
import { linksOf } from '../../../core/reading/links/assign.ts'
import { labelsOf } from '../../../core/reading/names/labels.ts'
import { numberAt } from '../../../core/reading/quantities/numbers.ts'
import { quantitiesOf } from '../../../core/reading/quantities/quantities.ts'
import { withoutRepeats } from '../../../core/reading/quantities/repeats.ts'
import { layoutOf } from '../../../core/reading/text/layout.ts'
import { normalise } from '../../../core/reading/text/normalise.ts'
import { phraseTrieOf } from '../../../core/reading/text/phrase-trie.ts'
import { meaning, termsOf } from '../../../core/reading/text/terms.ts'
import { isDenied, readText } from '../../../core/reading/text/text.ts'
import { tokensOf } from '../../../core/reading/text/tokens.ts'

describe('normalise', () => {
  test.each([
    ['30” × 40″', '30" x 40"'],
    ['Ärmel – Länge', 'armel - lange'],
    ['WAIST', 'waist'],
    ['30½', '30½']
  ])('%s becomes %s', (text, plain) => expect(normalise(text).text).toBe(plain))
  test.each([
    'İstanbul',
    '𝗪𝗮𝗶𝘀𝘁 30',
    'e\u0301te\u0301',
    '👗 dress',
    '\ud800 lone',
    'Straße',
    '&quot;&frac12;',
    '<br>a<script>b</script>c',
    'ﬁt'
  ])('keeps the length of %j', (text) => expect(normalise(text).text).toHaveLength(text.length))
  test('bold letters are letters', () => expect(normalise('𝗪𝗮𝗶𝘀𝘁').text.replaceAll('\u0000', '')).toBe('waist'))
  test('a script is blanked, its neighbours stay', () => {
    const { text, markup } = normalise('a<script>waist 30</script>b')
    expect(markup).toBe(true)
    expect(text).not.toContain('waist')
    expect(text[0]).toBe('a')
    expect(text.at(-1)).toBe('b')
  })
  test('a script that never closes is left as text', () => expect(normalise('<script>waist 30').text).toContain('waist'))
})

describe('tokens', () => {
  test('letters, digits and marks part, with places', () => {
    const tokens = tokensOf('w32 l 30½"')
    expect(tokens.map(({ text }) => text)).toEqual(['w', '32', 'l', '30', '½', '"'])
    expect(tokens.map(({ start, end }) => 'w32 l 30½"'.slice(start, end))).toEqual(['w', '32', 'l', '30', '½', '"'])
    expect(tokens.map(({ spaced }) => spaced)).toEqual([true, false, true, true, false, false])
  })
})

const halves = new Set(['half'])
describe('numbers', () => {
  test.each([
    ['30', 30],
    ['30.5', 30.5],
    ['30,5', 30.5],
    ['30 1/2', 30.5],
    ['30-1/2', 30.5],
    ['30½', 30.5],
    ['30 ½', 30.5],
    ['30 and 1/2', 30.5],
    ['30 and a half', 30.5],
    ['30 & 3/4', 30.75],
    ['½', 0.5],
    ['3/4', 0.75],
    ['7/8', 0.875],
    ['28 5/16', 28.3125]
  ])('%s is %d', (text, value) => expect(numberAt(tokensOf(text), 0, halves)).toMatchObject({ value, next: tokensOf(text).length }))
  test.each([
    ['1/0', 'divided-by-zero'],
    ['3..5', 'unclear-number']
  ])('%s is a problem: %s', (text, problem) => expect(numberAt(tokensOf(text), 0, halves)).toMatchObject({ problem }))
  test.each([
    ['36,28,38', 36],
    ['30, 40', 30],
    ['30. Next', 30],
    ['32/34', 32],
    ['12/05/2023', 12]
  ])('%s begins with %d alone', (text, value) => expect(numberAt(tokensOf(text), 0, halves)).toMatchObject({ value, next: 1 }))
})

const quantities = (text: string) => {
  const read = readText(text, 'en')
  return quantitiesOf(read).map((one) => [one.value, one.unit] as const)
}
describe('quantities', () => {
  test.each([
    ['30"', [[30, 'in']]],
    ["30''", [[30, 'in']]],
    ['30 in,', [[30, 'in']]],
    ['30-inch waist', [[30, 'in']]],
    [
      '30cm 40 mm',
      [
        [30, 'cm'],
        [40, 'mm']
      ]
    ],
    ['1.2 m', [[120, 'cm']]],
    ['two inches', [[2, 'in']]],
    ['28-30"', [[29, 'in']]],
    ['between 28 and 30 inches', [[29, 'in']]],
    [`5'8"`, [[68, 'in']]],
    ['5 ft 8 in', [[68, 'in']]],
    ['1m75', [[175, 'cm']]],
    ['£30', []],
    ['30 %', []],
    ['30°', []],
    ['in 1994', []],
    ['12/05/2023', []],
    ['10:30', []],
    ['0555 010 203', []],
    ['9/10', []],
    ['3 pockets', []],
    ['2 small buttons', []],
    ['90s', []],
    ['650 fill', []],
    ['#38', []],
    ['2 in the back', [[2, null]]],
    ['"32" on the label', [[32, null]]]
  ])('%s', (text, expected) => expect(quantities(text)).toEqual(expected))
  test('the double beside a figure is no second figure', () => {
    const read = readText('19" (38" around)', 'en')
    const [one, ...rest] = withoutRepeats(read, quantitiesOf(read))
    expect(rest).toEqual([])
    expect(one).toMatchObject({ value: 19, doubling: 'flat' })
  })
})

describe('terms', () => {
  const points = (text: string) =>
    termsOf(tokensOf(normalise(text).text), phraseTrieOf('en')).list.flatMap((term) => {
      const point = meaning(term, 'point')
      return point ? [`${point.point}${point.basis ? ` ${point.basis}` : ''}`] : []
    })
  test.each([
    ['pit to pit', ['chest flat']],
    ['pit-to-pit', ['chest flat']],
    ['P2P', ['chest flat']],
    ['shoulder seam to cuff', ['sleeveLength']],
    ['collar to hem', ['bodyLength']],
    ['crotch to the bottom of the leg', ['inseam']],
    ['armpit-armpit', ['chest flat']],
    ['knee length', []],
    ['waist width', ['waist flat']]
  ])('%s', (text, expected) => expect(points(text)).toEqual(expected))
  test('two landmarks that make no point of ours are a detail', () => {
    const [term] = termsOf(tokensOf('armpit to hem'), phraseTrieOf('en')).list
    expect(meaning(term, 'detail')).toBeDefined()
  })
})

describe('layout', () => {
  test('a dot after a short form ends no sentence', () => {
    const tokens = tokensOf('approx. 30 cm. next')
    const { sentence } = layoutOf(tokens)
    expect(sentence[0]).toBe(sentence[3])
    expect(sentence.at(-1)).toBe((sentence[0] as number) + 1)
  })
})

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

describe('denial', () => {
  const denied = (text: string, word: string) => {
    const read = readText(text, 'en')
    const term = read.terms.list.find(({ from }) => read.tokens[from]?.text === word)
    if (!term) throw new Error(`"${word}" is no term`)
    return isDenied(read, term)
  }
  test.each([
    ['no holes or stains', 'stains', true],
    ['no holes, stains or tears', 'tears', true],
    ['not silk', 'silk', true],
    ['no label, feels like viscose', 'viscose', false],
    ['no stains but a hole', 'hole', false],
    ['nothing wrong. A hole', 'hole', false]
  ])('%s: %s %s', (text, word, expected) => expect(denied(text, word)).toBe(expected))
})
