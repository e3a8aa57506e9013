/** What cloth a garment is of, as told. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { clothOn, clothSaid, wrongSum } from '../../../../core/reading/facts/cloth.ts'
import { textOf } from '../given.ts'

const cloth = (words: string, kind: GarmentKind | null = 'trousers', language = 'en') => clothOn(clothSaid([textOf(words, language)]), kind)
/** The first text is the title. */
const titled = (title: string, words: string, kind: GarmentKind = 'trousers') => clothOn(clothSaid([textOf(title), textOf(words)]), kind)
const fibres = (words: string, language = 'en'): string =>
  cloth(words, 'trousers', language)
    .fibres.map(({ fibre, percent }) => (percent === null ? fibre : `${fibre} ${percent}`))
    .join(', ')

describe('per cent in two words', () => {
  test.each([
    ['fr', '95 pour cent coton', 'cotton 95'],
    ['es', '95 por ciento algodón', 'cotton 95'],
    ['it', '95 per cento cotone', 'cotton 95'],
    ['pt', '95 por cento algodão', 'cotton 95'],
    ['nl', '95 procent katoen', 'cotton 95'],
    ['sv', '95 procent bomull', 'cotton 95']
  ])('%s: %s', (language, words, told) => expect(fibres(words, language)).toBe(told))
})

describe('fibres with their shares', () => {
  test.each([
    ['95% cotton 5% elastane', 'cotton 95, elastane 5'],
    ['cotton 95%, elastane 5%', 'cotton 95, elastane 5'],
    ['95 percent cotton, 5 percent elastane', 'cotton 95, elastane 5'],
    ['95 per cent cotton, 5 per cent elastane', 'cotton 95, elastane 5'],
    ['95 Per Cent cotton', 'cotton 95'],
    ['cotton, 5 cent a yard', 'cotton'],
    ['wool per cent', 'wool'],
    ['fully lined in silk, 100% wool', 'wool 100'],
    ['lined in 100% silk, 100% wool', 'wool 100'],
    ['lined in 60% viscose, 40% polyester, 100% wool', 'wool 100'],
    ['lined in 60% viscose, 40% polyester', ''],
    ['lining: viscose, cotton', ''],
    ['97.5% cotton, 2,5% elastane', 'cotton 97.5, elastane 2.5'],
    ['cotton 97.5%, elastane 2.5%', 'cotton 97.5, elastane 2.5'],
    ['cotton 97,5%, elastane 2,5%', 'cotton 97.5, elastane 2.5'],
    // a list of two, no figure with a decimal
    ['95, 5% cotton', 'cotton 5'],
    ['70% wool 30% silk', 'wool 70, silk 30'],
    ['wool 70% silk 30%', 'wool 70, silk 30'],
    ['linen mix (52% linen 48% cotton)', 'linen 52, cotton 48'],
    // four words beside a name at most
    ['100% of lovely soft wool', 'wool 100'],
    ['100% of the lovely soft wool', 'wool'],
    ['wool is about just 100%', 'wool 100'],
    ['wool is about just some 100%', 'wool'],
    // a sign parts them
    ['5% off; wool', 'wool'],
    ['5% off: wool', 'wool'],
    ['100% | wool', 'wool'],
    ['wool | 100%', 'wool'],
    ['wool + 100%', 'wool'],
    ['wool, now 20% off', 'wool'],
    ['wool\n20% off', 'wool'],
    ['20% off\nwool', 'wool'],
    // no sign
    ['wool 100', 'wool 100'],
    ['2 wool', 'wool'],
    ['wool 2 of 100%', 'wool'],
    // no share is so large or so small
    ['120% wool', 'wool'],
    ['100% wool', 'wool 100'],
    ['0% wool', 'wool'],
    // where one has its share, one without is left out
    ['80% wool, silk', 'wool 80'],
    // by itself between two marks
    ['Silk, 100%.', 'silk 100'],
    ['Silk, 100%', 'silk 100'],
    ['Silk, 100%, and lovely', 'silk 100'],
    ['Silk, 100%\nLovely', 'silk 100'],
    ['Silk, 100% lovely', 'silk'],
    ['Silk, all 100%', 'silk'],
    ['Silk, 100 of 2', 'silk'],
    ['Silk and more, 100%', 'silk'],
    // the sign of a ratio is of both figures, that behind a dash of its own
    ['polyester, then 65/35% cotton', 'polyester, cotton'],
    ['lovely - 60% silk, 40% wool', 'silk 60, wool 40'],
    // a sign without its figure
    ['% wool', 'wool'],
    ['some % wool', 'wool'],
    ['60. 5% wool', 'wool 5'],
    ['A.5% wool', 'wool 5']
  ])('%j', (words, expected) => expect(fibres(words)).toBe(expected))
  test('a colour that is a fibre too is one only with its share', () => {
    expect(fibres('in camel, size 12')).toBe('')
    expect(fibres('60% wool 40% camel')).toBe('wool 60, camel 40')
  })
})

describe('a lining, a trim', () => {
  test.each([
    ['wool, lining: viscose', 'wool'],
    ['wool, lining - viscose', 'wool'],
    ['wool, lined in viscose', 'wool'],
    ['wool, lining of viscose', 'wool'],
    ['wool, lining viscose', 'wool'],
    ['wool, lining 100% viscose', 'wool'],
    ['wool, fully lined in viscose', 'wool'],
    ['wool, fully lined with a viscose', 'wool'],
    ['wool, half lined in 100% viscose', 'wool'],
    ['fully lined in great condition, wool', 'wool'],
    ['fully lined wool', 'wool'],
    ['wool, fully lined', 'wool'],
    // its name behind the fibre
    ['wool, viscose lining', 'wool'],
    ['wool, silk lining', 'wool'],
    ['silk-lined wool', 'wool'],
    ['wool, silk-lined', 'wool'],
    ['silk lined wool', 'wool'],
    ['wool - lined', 'wool'],
    ['wool, viscose', 'wool, viscose'],
    // a new sentence is of the garment again, and so is what is said to be
    ['Lining: viscose. Wool', 'wool'],
    ['wool, viscose trim', 'wool'],
    ['viscose fabric', 'viscose'],
    ['lining. Viscose', 'viscose'],
    ['wool with a zip', 'wool'],
    ['wool, zip-polyester', 'wool, polyester'],
    ['lining: viscose, shell: wool', 'wool'],
    ['shell/lining: polyester', 'polyester'],
    ['shell and lining: polyester', 'polyester'],
    ['shell wool, lining: polyester', 'wool'],
    ['shell - lining: polyester', ''],
    // a lining that is only mentioned opens nothing
    ['lining fine, wool', 'wool'],
    ['100% silk, trim: polyester', 'silk 100'],
    ['silk, underskirt: polyester', 'silk'],
    ['silk, zip 100% polyester', 'silk'],
    ['silk, zip = polyester', 'silk'],
    ['silk, zip polyester', 'silk'],
    // zip polyester behind no mark, or “zip” by itself
    ['silk zip polyester', 'silk, polyester'],
    ['silk, zip, polyester', 'silk, polyester'],
    ['silk, zip 2 polyester', 'silk, polyester'],
    ['silk with zip\npolyester', 'silk, polyester'],
    // the part may be named some words before
    ['zip: dark and strong polyester', ''],
    ['zip: a b c d e f g h i polyester', ''],
    ['zip: a b c d e f g h i j k l m polyester', 'polyester']
  ])('%j', (words, expected) => expect(fibres(words)).toBe(expected))
})

describe('what is no cloth of the garment', () => {
  test.each([
    ['faux silk', ''],
    ['silk look', ''],
    ['no silk', ''],
    ['not wool', ''],
    ['skirt with leather', ''],
    ['polyester with elastane', 'polyester, elastane'],
    ['silk', 'silk']
  ])('%s', (words, expected) => expect(fibres(words)).toBe(expected))
  test.each([
    ['denim', 'woven'],
    ['denim look', null],
    ['denim lining', null],
    ['skirt with denim', null],
    ['no denim', null],
    ['denim, look', 'woven'],
    // the first that is told
    ['denim, jersey', 'woven'],
    ['jersey, denim', 'knit'],
    ['leather belt', null],
    ['imitation leather', null],
    ['look denim', 'woven']
  ])('%s is %s', (words, structure) => expect(cloth(words).structure).toBe(structure))
})

describe('how far it gives', () => {
  test.each([
    ['30% stretch', 30],
    ['stretch: 30%', 30],
    ['stretch of about 30%', 30],
    ['200% stretch', 200],
    ['201% stretch', null],
    ['no stretch', 0],
    ['stretch', null],
    ['no give', 0],
    // the share of the fibre, not how far it stretches
    ['5% stretch elastane', null]
  ])('%s: %s', (words, percent) => expect(cloth(words).stretchPercent).toBe(percent))
  test.each<[string, GarmentKind, number | null]>([
    ['very stretchy', 'trousers', 26],
    ['very stretchy', 'jumper', 60],
    ['very stretchy', 'knit-top', 60],
    ['very stretchy jersey', 'trousers', 60],
    ['very stretchy denim', 'jumper', 26],
    ['good stretch', 'trousers', 15],
    ['not very stretchy', 'trousers', null],
    ['very stretchy, not very stretchy', 'trousers', 26],
    // a small share of elastane tells less than that it gives a lot; a large one, or “good stretch”, is told by the label
    ['very stretchy, 92% cotton 8% elastane', 'trousers', null],
    ['very stretchy, 93% cotton 7% elastane', 'trousers', 26],
    ['very stretchy cotton elastane', 'trousers', 26],
    ['good stretch, 98% cotton 2% elastane', 'trousers', null],
    ['good stretch cotton elastane', 'trousers', null],
    ['good stretch, 100% cotton', 'trousers', 15]
  ])('%s, %s: %s', (words, kind, percent) => expect(cloth(words, kind).stretchPercent).toBe(percent))
  test('a kind that nobody knows is taken as woven', () => expect(cloth('very stretchy', null).stretchPercent).toBe(26))
  test('what is gone is told before what was', () => {
    expect(cloth('was very stretchy, has lost its stretch').stretchPercent).toBe(0)
    expect(cloth('very stretchy, not stretchy any more').stretchPercent).toBe(0)
    // a share of elastane tells no more than that
    expect(cloth('has lost its stretch, 90% cotton 10% elastane').stretchPercent).toBe(0)
    expect(cloth('slight stretch, 90% cotton 10% elastane').stretchPercent).toBe(9)
  })
})

describe('traits', () => {
  test.each<[string, GarmentKind | null, string[]]>([
    ['pleated skirt', 'skirt', ['pleated']],
    ['pleated dress', 'dress', ['pleated']],
    ['pleated trousers', 'trousers', []],
    ['pleated', null, []],
    // words of prose only beside what they describe
    ['checks wool', 'trousers', []],
    ['check trousers', 'trousers', ['check']],
    ['red check', 'trousers', ['check']],
    ['please check', 'trousers', []]
  ])('%s on %s: %j', (words, kind, expected) => expect(cloth(words, kind).traits).toEqual(expected))
})

test('a silk lining is no silk', () => {
  expect(cloth('wool, silk lining').traits).toEqual([])
  expect(cloth('silk-lined').traits).toEqual([])
  expect(cloth('silk, lined').traits).toEqual(['silk'])
})

test('rigid says no stretch where stretch is in its name', () => {
  const of = (words: string) => [cloth(words).traits, cloth(words).stretchPercent]
  expect(of('rigid denim')).toEqual([['rigid', 'denim'], null])
  expect(of('no stretch')).toEqual([['rigid'], 0])
  expect(of('non stretch denim')).toEqual([['rigid', 'denim'], 0])
  expect(of('selvedge, 2% stretch')).toEqual([['rigid'], 2])
})
test('a title names the cloth before a part, a text the part', () => {
  expect(titled('Denim pocket skirt', 'lovely').structure).toBe('woven')
  expect(titled('Skirt', 'denim pocket').structure).toBeNull()
  expect(titled('Check and go', 'lovely').traits).toEqual(['check'])
  expect(titled('Skirt', 'check and go').traits).toEqual([])
})
test('it was never washed only where that is told', () => {
  expect(cloth('wool').washed).toBeNull()
  expect(cloth('never washed').washed).toBe(false)
})

describe('the sum of the shares', () => {
  const of = (...percents: (number | null)[]) => wrongSum(percents.map((percent, at) => ({ fibre: `fibre ${at}`, percent })))
  test('is said where it is no hundred', () => {
    expect(of(60, 30)).toBe(90)
    expect(of(60, 42)).toBe(102)
    expect(of(60, null)).toBe(60)
  })
  test('one more or less is rounding, and none told is no sum', () => {
    expect(of(60, 40)).toBeNull()
    expect(of(60, 41)).toBeNull()
    expect(of(60, 39)).toBeNull()
    expect(of(null, null)).toBeNull()
    expect(of()).toBeNull()
  })
})
