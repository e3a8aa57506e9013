/** Construction, use, colour and condition, as told. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { colourOf, conditionOf, madeOf, useOf } from '../../../../core/reading/facts/make-use-condition.ts'
import { textOf } from '../given.ts'

const made = (words: string, kind: GarmentKind | null = 'trousers') => madeOf([textOf(words)], kind)

describe('how it is made, in German', () => {
  test.each<[string, GarmentKind, object]>([
    ['Sakko mit echten Ärmelknöpfen', 'jacket', { workingCuffButtons: true }],
    ['Die Ärmelknöpfe lassen sich öffnen.', 'jacket', { workingCuffButtons: true }],
    ['Ärmelknöpfe lassen sich nicht öffnen', 'jacket', { workingCuffButtons: false }],
    ['keine echten Ärmelknöpfe', 'jacket', { workingCuffButtons: false }],
    ['falsche Ärmelknöpfe', 'jacket', { workingCuffButtons: false }],
    ['Zierknöpfe am Ärmel', 'jacket', { workingCuffButtons: false }],
    ['echte Hornknöpfe', 'jacket', {}],
    ['ein Ärmelknopf fehlt', 'jacket', {}]
  ])('%s', (words, kind, its) => expect(madeOf([textOf(words, 'de')], kind)).toEqual(its))
})

describe('how it is made', () => {
  test.each<[string, GarmentKind | null, object]>([
    ['fully lined', 'jacket', { lined: true }],
    ['not lined', 'jacket', { lined: false }],
    ['Lining: none', 'jacket', { lined: false }],
    ['lining - no', 'jacket', { lined: false }],
    ['Lining: silk', 'jacket', { lined: true }],
    // in part: what opening it costs stays untold
    ['half lined', 'jacket', {}],
    ['half lined, lined', 'jacket', {}],
    ['half lined, fully lined', 'jacket', { lined: true }],
    ['Not half lined. Lined', 'jacket', { lined: true }],
    // the first telling of a fact stands
    ['lined, not lined', 'jacket', { lined: true }],
    ['not lined, lined', 'jacket', { lined: false }],
    // short sleeves of what has sleeves
    ['short sleeves', 'shirt', { shortSleeves: true }],
    ['short sleeves', 'dress', { shortSleeves: true }],
    ['short sleeves', 'waistcoat', {}],
    ['short sleeves', 'trousers', {}],
    ['short sleeves', null, {}],
    ['no short sleeves', 'shirt', { shortSleeves: false }],
    // the shape of a skirt where there is one
    ['A-line', 'skirt', { skirtShape: 'flared' }],
    ['A-line', 'dress', { skirtShape: 'flared' }],
    ['A-line', 'coat', {}],
    ['not A-line', 'skirt', {}],
    ['blind hem', 'trousers', { hemKind: 'blind' }],
    // where it opens, if such a garment can there
    ['side zip', 'trousers', { opens: ['waist'] }],
    ['side zip, ankle zips', 'trousers', { opens: ['waist', 'legOpening'] }],
    ['side zip, back zip', 'skirt', { opens: ['waist'] }],
    ['side vents', 'jacket', { opens: ['hem'] }],
    ['back slit', 'dress', { opens: ['sweep'] }],
    ['A-line, pencil skirt', 'skirt', { skirtShape: 'flared' }]
  ])('%s on %s', (words, kind, expected) => expect(made(words, kind)).toMatchObject(expected))
  test('what is not told of it is not there', () => {
    expect(made('half lined', 'jacket')).not.toHaveProperty('lined')
    expect(made('short sleeves', 'trousers')).toEqual({})
    expect(made('short sleeves', 'waistcoat')).toEqual({})
    expect(made('A-line', 'coat')).toEqual({})
    expect(made('not A-line', 'skirt')).toEqual({})
    expect(made('no blind hem')).toEqual({})
    expect(made('no side zip')).toEqual({})
    expect(made('side zip', 'shirt')).toEqual({})
    expect(made('side vents', 'trousers')).toEqual({})
    expect(made('back slit', 'trousers')).toEqual({})
    expect(made('side zip', null)).toEqual({})
  })
  test('of all texts together', () => {
    expect(madeOf([textOf('half lined'), textOf('lined')], 'jacket')).toEqual({})
    expect(madeOf([textOf('not lined'), textOf('lined')], 'jacket')).toEqual({ lined: false })
  })
})

describe('what it is for', () => {
  const use = (title: string, words: string, sizes: string[] = []) => {
    const texts = [textOf(title), textOf(words)]
    return useOf(texts, texts[0] ?? null, sizes)
  }
  test.each([
    ['Coat', 'lovely', null],
    ['Girls coat', 'lovely', 'child'],
    ['Coat', 'girls coat', 'child'],
    ['Coat', 'girls winter coat', 'child'],
    // whose it is to be, not whose sizes
    ['Coat', 'for the girls and me', null],
    ['Girls pyjamas', 'lovely', 'child-sleepwear'],
    ['Pyjamas', 'lovely', null],
    ['Pyjamas', 'girls pyjamas', 'child-sleepwear'],
    ['Coat', 'no girls coat', null],
    ['Coat', 'girls, lovely coat', null],
    ['Compression stockings', 'medical compression', 'medical-compression']
  ])('%s / %s: %s', (title, words, expected) => expect(use(title, words)).toBe(expected))
  test('a size by age is a child’s', () => {
    expect(use('Coat', 'lovely', ['age 8'])).toBe('child')
    expect(use('Coat', 'lovely', ['M', 'age 8'])).toBe('child')
    expect(use('Pyjamas', 'lovely', ['age 8'])).toBe('child-sleepwear')
    expect(use('Coat', 'lovely', ['M'])).toBeNull()
  })
})

describe('its colour', () => {
  const colour = (...texts: string[]) => colourOf(texts.map((words) => textOf(words)))
  test('the first of the title, else of the text', () => {
    expect(colour('Navy coat', 'red lining')).toBe('navy')
    expect(colour('Coat', 'red and navy')).toBe('red')
    expect(colour('Coat', 'lovely')).toBeNull()
  })
  test('what is denied is none', () => expect(colour('Not red. Navy')).toBe('navy'))
  test('only among the first 80 words', () => {
    expect(colour(`${'x '.repeat(80)}red`)).toBe('red')
    expect(colour(`${'x '.repeat(81)}red`)).toBeNull()
    expect(colour(`${'x '.repeat(81)}red`, 'navy')).toBe('navy')
  })
})

describe('its condition', () => {
  const condition = (...texts: string[]) => conditionOf(texts.map((words) => textOf(words)))
  test.each([
    ['Very good used condition', 'very good used condition'],
    ['Condition: very good', 'very good'],
    ['Condition - very good', 'very good'],
    ['Condition very good', 'very good'],
    ['condition, very good', null],
    ['condition of the wool', null],
    ['in lovely dry condition', null],
    ['New with tags', 'new with tags'],
    ['In condition. New with tags', 'new with tags'],
    ['good wool condition', null],
    ['wool', null]
  ])('%s: %j', (words, expected) => expect(condition(words)).toBe(expected))
  test('in the first text that tells it', () => {
    expect(condition('Coat', 'good condition')).toBe('good condition')
    expect(condition('bnwt coat', 'good condition')).toBe('bnwt')
  })
})
