/** Figures about something else. */
import { describe, expect, test } from 'vitest'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import { asidesOf } from '../../../../core/reading/links/asides.ts'
import { figureAt, nameAt, textOf } from '../given.ts'

const aside = (words: string, figure: string, names: [string, PointName][] = [], language = 'en') => {
  const text = textOf(words, language)
  const one = figureAt(text, figure)
  const labels = names.map(([name, point]) => nameAt(text, name, [point])).sort((a, b) => a.from - b.from)
  return asidesOf(text, labels, [one]).get(one) ?? null
}

describe('of a label, where verbs stand last', () => {
  test.each([
    ['首回り39の表記です', '39', 'fits-advice'],
    ['(身長170)表記', '170', 'fits-advice'],
    ['着丈70 Mサイズ', '70', null],
    ['表記は38、着丈70です', '70', null]
  ])('%s: %s', (words, figure, because) => expect(aside(words, figure, [], 'ja')).toBe(because))
})

describe('of the model', () => {
  test('a figure that opens the sentence and is glued to the person, in Japanese', () => {
    expect(aside('楽ちん。160cmの私でくるぶしが見えます', '160cm', [], 'ja')).toBe('model')
    expect(aside('着丈70cm。160cmの私で見えます', '70cm', [['着丈', 'length']], 'ja')).toBeNull()
  })
  test('in her sentence', () => expect(aside('Model is 34" bust.', '34"', [['bust', 'chest']])).toBe('model'))
  test('until something only a garment has is named', () => {
    expect(aside('Model wears S. Inseam 30"', '30"', [['Inseam', 'inseam']])).toBeNull()
  })
  test('on the lines of a list that it heads, to the next blank line', () => {
    expect(aside('Model:\nwaist 26"', '26"')).toBe('model')
    expect(aside('Model:\nwaist 26"\n\nwaist 30"', '30"')).toBeNull()
  })
  test('a height is somebody’s', () => expect(aside('170 cm tall', '170 cm')).toBe('model'))
  test('130 cm and less is no height of a grown person', () => expect(aside('120 cm tall', '120 cm')).toBeNull())
})

describe('of who it fits', () => {
  test('to the end of the advice', () => {
    expect(aside('Would fit a 34" bust.', '34"')).toBe('fits-advice')
    expect(aside('Would fit a small. Measures 34" across', '34"')).toBeNull()
  })
})

test('of a parcel', () => expect(aside('Parcel 30 cm wide.', '30 cm')).toBe('parcel'))

describe('of a place on the garment', () => {
  test('13" from the crotch is where something was measured', () => expect(aside('taken 13" from the crotch', '13"')).toBe('detail'))
  test('1" below the armhole is a place, the figure of a name right before it is none', () => {
    expect(aside('1" below the armhole', '1"')).toBe('detail')
    expect(aside('chest 20" below', '20"', [['chest', 'chest']])).toBeNull()
  })
  test('a small figure in a sentence about a fault is the fault’s', () => {
    expect(aside('A stain of 1" on the front', '1"')).toBe('detail')
    expect(aside('A stain of 1" on the front', '1"', [])).toBe('detail')
    expect(aside('Stained, length 28"', '28"', [['length', 'length']])).toBeNull()
  })
})

test('of another listing: its whole sentence', () => {
  expect(aside('See my other listings for a 40" coat.', '40"')).toBe('detail')
})
test('how far back pockets lie apart, as told before', () => {
  const text = textOf('back pockets 5" apart')
  const one = figureAt(text, '5"')
  expect(asidesOf(text, [], [one], one).get(one)).toBe('detail')
})

describe('what a seller measured', () => {
  test('a list of names that only a garment has is no body', () => {
    expect(aside('My measurements for this: pit to pit 20", length 26"', '26"')).toBeNull()
    expect(aside('I measure: chest 20", length 24"', '20"')).toBeNull()
  })
  test('a list of a body is', () => expect(aside('My measurements: bust 34", waist 26"', '34"')).toBe('model'))
  test('a word of advice behind its figure leads on to no other', () => expect(aside('bust 40" max, waist 32"', '32"')).toBeNull())
})
