/** Shares of fibres that are told without a sign. */
import { describe, expect, test } from 'vitest'
import { clothOn, clothSaid } from '../../../../core/reading/facts/cloth.ts'
import { sharesOf } from '../../../../core/reading/facts/fibre-shares.ts'
import { textOf } from '../given.ts'

/** The fibres of a text, each with its share where one is told. */
const shares = (words: string): string =>
  clothOn(clothSaid([textOf(words)]), 'trousers')
    .fibres.map(({ fibre, percent }) => (percent === null ? fibre : `${fibre} ${percent}`))
    .join(', ')

describe('behind each name', () => {
  test.each([
    ['cotton 95 elastane 5', 'cotton 95, elastane 5'],
    ['cotton 95, elastane 5', 'cotton 95, elastane 5'],
    ['cotton: 95, elastane: 5', 'cotton 95, elastane 5'],
    ['cotton: 95 / elastane: 5', 'cotton 95, elastane 5'],
    // they make no hundred
    ['cotton 95 elastane 4', 'cotton, elastane'],
    ['cotton 95 elastane', 'cotton, elastane'],
    // no share has four figures
    ['cotton 0095 elastane 5', 'cotton, elastane'],
    ['cotton 095 elastane 005', 'cotton 95, elastane 5']
  ])('%s', (words, expected) => expect(shares(words)).toBe(expected))
})

describe('before each name', () => {
  test.each([
    ['95 cotton 5 elastane', 'cotton 95, elastane 5'],
    ['60 wool & 40 silk', 'wool 60, silk 40'],
    ['50 wool x 30 silk x 20 linen', 'wool 50, silk 30, linen 20'],
    ['95 cotton 6 elastane', 'cotton, elastane']
  ])('%s', (words, expected) => expect(shares(words)).toBe(expected))
})

describe('a ratio before the names', () => {
  test.each([
    ['65/35 poly cotton', 'polyester 65, cotton 35'],
    ['65-35 poly cotton', 'polyester 65, cotton 35'],
    ['65/35 blend of polyester and cotton', 'polyester 65, cotton 35'],
    ['65/35% poly cotton', 'polyester 65, cotton 35'],
    ['65/35 % poly cotton', 'polyester 65, cotton 35'],
    ['50/30/20 wool, silk and linen', 'wool 50, silk 30, linen 20'],
    // fewer or more figures than names
    ['65/35 wool', 'wool'],
    ['65/35 wool, silk and linen', 'wool, silk, linen'],
    // no stroke between them
    ['65.35 poly cotton', 'polyester, cotton'],
    ['65 x 35 poly cotton', 'polyester, cotton'],
    // two words between are read over, a third is not, nor any other word
    ['65/35 mix of poly cotton', 'polyester 65, cotton 35'],
    ['65/35 a blend of poly cotton', 'polyester, cotton'],
    ['65/35 lovely poly cotton', 'polyester, cotton']
  ])('%s', (words, expected) => expect(shares(words)).toBe(expected))
})

describe('a ratio behind the names', () => {
  test.each([
    ['acrylic/wool (60/40)', 'acrylic 60, wool 40'],
    ['acrylic and wool: 60/40', 'acrylic 60, wool 40'],
    ['wool poly blend 55/45', 'wool 55, polyester 45'],
    ['wool poly mix, 55-45', 'wool 55, polyester 45'],
    ['wool/silk/linen 50/30/20', 'wool 50, silk 30, linen 20'],
    ['wool/silk (60/30)', 'wool, silk'],
    ['wool/silk/linen 60/40', 'wool, silk, linen'],
    ['wool/silk 60.40', 'wool, silk'],
    ['wool poly blend fabric: 55/45', 'wool 55, polyester 45'],
    ['wool poly blend in a fabric 55/45', 'wool, polyester'],
    ['wool poly. Score 55/45', 'wool, polyester']
  ])('%s', (words, expected) => expect(shares(words)).toBe(expected))
})

describe('names that belong together', () => {
  test.each([
    // another word between them: each stands for itself
    ['65/35 poly lovely cotton', 'polyester, cotton'],
    ['65/35 poly and cotton', 'polyester 65, cotton 35'],
    ['65/35 poly + cotton', 'polyester 65, cotton 35'],
    ['65/35 poly : cotton', 'polyester, cotton'],
    // the end of a line parts them
    ['65/35 poly\ncotton', 'polyester, cotton'],
    ['65/35 poly - mix and - cotton', 'polyester 65, cotton 35'],
    ['65/35 poly - mix - and - cotton', 'polyester, cotton'],
    ['65/35 poly: cotton', 'polyester, cotton']
  ])('%j', (words, expected) => expect(shares(words)).toBe(expected))
  test('one that comes again begins anew, and the share told first stays', () => {
    expect(shares('wool wool 60/40')).toBe('wool')
    expect(shares('wool/silk 60/40. Wool/silk 70/30')).toBe('wool 60, silk 40')
  })
})

describe('all of it', () => {
  test.each([
    ['pure wool', 'wool 100'],
    ['all wool', 'wool 100'],
    ['pure new wool', 'wool 100'],
    ['wool', 'wool'],
    ['lovely wool', 'wool'],
    // two fibres are not all of it both
    ['pure wool and silk', 'wool, silk'],
    ['feels like pure wool', 'wool'],
    ['looks like pure wool', 'wool'],
    ['feels pure wool', 'wool'],
    ['soft, pure wool', 'wool 100']
  ])('%s', (words, expected) => expect(shares(words)).toBe(expected))
  test('in words that are one name with the fibre, too', () => {
    const text = textOf('like pure wool')
    const one = (from: number) => sharesOf(text, [{ fibre: 'wool', from, to: 3 }]).get('wool')
    expect([one(1), one(2)]).toEqual([undefined, undefined])
    const plain = textOf('lovely pure wool')
    expect(sharesOf(plain, [{ fibre: 'wool', from: 1, to: 3 }]).get('wool')).toBe(100)
  })
})
