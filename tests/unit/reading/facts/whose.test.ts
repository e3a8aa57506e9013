/** Whose sizes: what possesses the garment counts, what is incidental does not. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { type WhoseGiven, whoseOf } from '../../../../core/reading/facts/whose.ts'
import { textOf } from '../given.ts'

const NOTHING: Omit<WhoseGiven, 'texts' | 'title'> = { kind: null, use: null, sizeLabels: [], named: [], language: 'en' }
const inText = (words: string, more: Partial<WhoseGiven> = {}) =>
  whoseOf({ ...NOTHING, texts: [textOf(words, more.language)], title: null, ...more })
const inTitle = (words: string, more: Partial<WhoseGiven> = {}) => {
  const title = textOf(words, more.language)
  return whoseOf({ ...NOTHING, texts: [title], title, ...more })
}

describe('in a text', () => {
  test.each<[string, string | null]>([
    ['Mens wool jacket', 'men'],
    ['A lovely women’s vintage brown wool jacket', 'women'],
    ['ladies’ skirt', 'women'],
    ['Ladies plus size linen shirt', 'women'],
    ['A gent’s waistcoat', 'men'],
    ['Jacket for men, worn twice', 'men'],
    ['Mens. Hardly worn.', 'men'],
    ['Men’s M', 'men'],
    ['Womens UK 12', 'women'],
    ['Womens 12', 'women'],
    ['Womens size 12', 'women'],
    ['Mens - hardly worn', 'men'],
    ['Mens / hardly worn', 'men'],
    ['Mens\nhardly worn', 'men'],
    ['Mens', 'men'],
    ['Mens & boys’ wool jacket', 'men'],
    ['Mens lovely old brown wool heavy jacket', 'men'],
    ['Jacket in wool for men', 'men'],
    ['Wool jacket brown for men', 'men'],
    ['Unisex', null],
    ['Mens shirt, mens jacket', 'men'],
    ['Mens collection, would look good', null],
    // the garment is farther off, or of another line or part
    ['Mens lovely old brown wool heavy warm jacket', null],
    ['Mens\njacket', 'men'],
    ['Mens lovely\njacket', null],
    ['Mens lovely, jacket', null],
    ['Mens to wear with jacket', null],
    ['Mens “jacket”', null],
    ['Jacket lovely for men and more', null],
    ['Jacket, men', null]
  ])('%s', (words, whose) => expect(inText(words)).toBe(whose))
  test.each([
    'My husband’s old shirt',
    'A jacket with a men’s department feel',
    'A menswear-inspired blazer',
    'Would fit womens 12 too',
    'Suitable for men and tall people',
    'Jacket, not mens',
    'Blazer, would also suit ladies',
    'Model wears womens size 12, a coat',
    'I’m a women’s 10',
    'Boyfriend jeans',
    'Unisex mens shirt',
    'Mens and womens shirt',
    'Women always ask me about this',
    'I found it among mens things of my grandfather’s, a jacket'
  ])('incidental, denied or for both: %s', (words) => expect(inText(words)).toBeNull())
  test('of several, the one that possesses this garment', () => {
    const words = 'Ladies jacket. The mens trousers are wool.'
    expect(inText(words, { kind: 'jacket' })).toBe('women')
    expect(inText(words, { kind: 'trousers' })).toBe('men')
    expect(inText(words, { kind: 'coat' })).toBeNull()
  })
})

describe('in a title', () => {
  test('wherever it stands, the people by themselves too', () => {
    expect(inTitle('Tweed jacket vintage mens')).toBe('men')
    expect(inTitle('Jacket women brown')).toBe('women')
  })
  test('but not whose wardrobe it was in', () => {
    expect(inTitle('Veste de ma femme', { language: 'fr' })).toBeNull()
  })
  test('goes before the text', () => {
    const title = textOf('Mens jacket')
    expect(whoseOf({ ...NOTHING, texts: [title, textOf('Women’s size 12.')], title })).toBe('men')
  })
})

test.each([
  ['de', 'Herrenhemd', 'men'],
  ['de', 'Damen Jacke', 'women'],
  ['de', 'Eine Hose für Herren', 'men'],
  ['fr', 'veste noire femme', 'women'],
  ['fr', 'la veste de ma femme', null],
  ['fr', 'chemise mixte homme', null],
  ['es', 'camisa de hombre', 'men'],
  ['it', 'gonna da donna', 'women'],
  ['nl', 'damesjas', 'women'],
  ['pl', 'koszula męska', 'men'],
  ['sv', 'herrskjorta', 'men'],
  ['en', 'herringbone jacket in damask', null]
])('%s: %s', (language, words, whose) => expect(inText(words, { language })).toBe(whose))

describe('where no word tells', () => {
  test('the page’s data: codes, people, a path', () => {
    expect(inText('Jacket', { named: ['Female'] })).toBe('women')
    expect(inText('Jacket', { named: ['Clothing > Men > Jackets'] })).toBe('men')
    expect(inText('Jacket', { named: ['unisex', 'Men'] })).toBeNull()
    expect(inText('Jacket', { named: ['Clothing', 'Men'] })).toBe('men')
    expect(inText('Ladies jacket', { named: ['male'] })).toBe('women')
  })
  test.each<[string, GarmentKind, string | null]>([
    ['UK 12', 'shirt', 'women'],
    ['UK 34', 'trousers', null],
    ['US 8', 'jacket', 'women'],
    ['EU 38', 'dress', 'women'],
    ['EU 38', 'shirt', null],
    ['EU 38', 'skirt', 'women'],
    ['AU 12', 'shirt', 'women'],
    ['NZ 12', 'shirt', 'women'],
    ['UK 26', 'shirt', 'women'],
    ['UK 27', 'shirt', null],
    ['UK 0', 'shirt', 'women'],
    ['UK 120', 'shirt', null],
    ['EU UK 12', 'shirt', null],
    ['42S', 'coat', 'men'],
    ['42L', 'jacket', 'men'],
    ['42X', 'jacket', 'men'],
    ['42T', 'jacket', 'men'],
    ['42M', 'jacket', null],
    ['142R', 'jacket', null],
    ['42RX', 'jacket', null],
    ['42R', 'trousers', null],
    ['42R', 'dress', 'women'],
    ['42R', 'jacket', 'men'],
    ['M', 'dress', null],
    ['W32 L34', 'jeans', null]
  ])('a label that one of the two has alone: %s on %s', (label, kind, whose) =>
    expect(inText('', { kind, sizeLabels: [label] })).toBe(whose)
  )
  test('labels that agree', () => {
    const of = (...sizeLabels: string[]) => inText('', { kind: 'jacket', sizeLabels })
    expect([of('UK 12', 'US 8'), of('UK 12', 'M'), of('UK 12', '42R'), of()]).toEqual(['women', 'women', null, null])
    expect(inText('', { kind: null, sizeLabels: ['42R'] })).toBe('men')
  })
  test.each<[string, GarmentKind | null, string | null]>([
    ['Collar size 14', 'shirt', 'men'],
    ['Collar size 13', 'shirt', null],
    ['Collar size 20', 'shirt', 'men'],
    ['Collar size 21', 'shirt', null],
    ['Collar size 35', 'shirt', 'men'],
    ['Collar size 34', 'shirt', null],
    ['Collar size 50', 'shirt', 'men'],
    ['Collar size 51', 'shirt', null],
    ['Collar size 16', null, 'men'],
    ['Collar size: 16', 'shirt', 'men'],
    ['Size 16 collar', 'shirt', 'men'],
    ['Collar 16', 'shirt', null],
    ['Size 16', 'shirt', null],
    ['Collar size lovely', 'shirt', null]
  ])('%s of %s: %s', (words, kind, expected) => expect(inText(words, { kind })).toBe(expected))
  test('a shirt sized by its collar', () => {
    expect(inText('Collar size 16', { kind: 'shirt' })).toBe('men')
    expect(inText('Collar size 16', { kind: 'dress' })).toBeNull()
    expect(inText('Size 16, collar 5 cm', { kind: 'shirt' })).toBeNull()
  })
})

test('what children wear is nobody’s else', () => {
  expect(inText('Mens jacket', { use: 'child' })).toBeNull()
  expect(inText('Mens jacket', { use: 'child-sleepwear' })).toBeNull()
  expect(inText('Mens jacket', { use: 'protective' })).toBe('men')
})
