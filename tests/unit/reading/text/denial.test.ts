/** What is denied. */
import { describe, expect, test } from 'vitest'
import { isDenied } from '../../../../core/reading/text/text.ts'
import { textOf } from '../given.ts'

/** Is the term of this word denied? */
const denied = (words: string, word: string, language = 'en') => {
  const text = textOf(words, language)
  const term = text.terms.list.filter(({ from, to }) => text.tokens.slice(from, to).some((token) => token.text === word)).at(-1)
  if (!term) throw new Error(`"${word}" is no term of "${words}"`)
  return isDenied(text, term)
}

describe('before a word', () => {
  test.each([
    ['no holes', 'holes', true],
    ['holes', 'holes', false],
    ['without any holes', 'holes', true],
    // lists of faults, of fibres, of words of condition
    ['no holes, stains or tears', 'tears', true],
    ['no holes, stains and tears', 'tears', true],
    ['no holes, no stains', 'stains', true],
    ['not silk, wool or linen', 'linen', true],
    ['no holes, waist stains', 'stains', false],
    ['no holes, xq stains', 'stains', false],
    ['no holes, on the waist, tears', 'tears', false],
    // past no “but”, no sign, no end of a sentence
    ['no stains but holes', 'holes', false],
    ['no stains: holes', 'holes', false],
    ['no stains; holes', 'holes', false],
    ['no (holes', 'holes', false],
    ['no stains (holes', 'holes', false],
    ['no) holes', 'holes', true],
    ['no ) holes', 'holes', false],
    ['no - holes', 'holes', false],
    ['no | holes', 'holes', false],
    ['no-holes', 'holes', true],
    ['no/few holes', 'holes', true],
    ['no stains. Holes', 'holes', false],
    ['no stains! Holes', 'holes', false],
    ['no stains\nholes', 'holes', false],
    // nor past a figure, nor three words that mean nothing
    ['no xq holes', 'holes', true],
    ['no xq xq holes', 'holes', true],
    ['no xq xq xq holes', 'holes', false],
    ['no 2 holes', 'holes', false],
    // twelve words and signs away
    ['no or or or or or or or or or or or holes', 'holes', true],
    ['no or or or or or or or or or or or or holes', 'holes', false]
  ])('%j: %s %s', (words, word, expected) => expect(denied(words, word)).toBe(expected))
})

describe('behind a word, where verbs stand last', () => {
  test.each([
    ['ja', '穴はありません', '穴', true],
    ['ja', '穴があります', '穴', false],
    ['ja', '穴', '穴', false],
    ['ja', 'シミ、汚れ、穴などはありません', 'シミ', true],
    ['ja', 'シミ・穴はありません', 'シミ', true],
    ['ja', 'シミ、着丈はありません', 'シミ', false],
    // past no sentence, line, figure, other sign, other name
    ['ja', '穴。ありません', '穴', false],
    ['ja', '穴\nありません', '穴', false],
    ['ja', '穴2ありません', '穴', false],
    ['ja', '穴:ありません', '穴', false],
    ['ja', '穴サイズありません', '穴', false],
    ['ja', '穴着丈ありません', '穴', false],
    ['ja', '穴コートありません', '穴', false],
    ['ja', '穴、ありません', '穴', true],
    ['ja', '穴とシミはありません', '穴', true],
    ['ko', '구멍 없고 얼룩 있어요', '구멍', true],
    ['ko', '구멍 없고 얼룩 있어요', '얼룩', false],
    ['ko', '오염이나 구멍은 없습니다', '구멍', true]
  ])('%s %j: %s %s', (language, words, word, expected) => expect(denied(words, word, language)).toBe(expected))
})
