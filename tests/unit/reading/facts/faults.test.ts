/** Faults that a text admits, and the mending they ask for. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { faultsOf } from '../../../../core/reading/facts/faults.ts'
import { textOf } from '../given.ts'

const faults = (words: string, kind: GarmentKind | null = 'trousers') => faultsOf([textOf(words)], kind)
const mending = (words: string, kind: GarmentKind | null = 'trousers') => faults(words, kind).mending.join(' ')

describe('what is admitted', () => {
  test.each([
    ['A hole in the knee', ['A hole in the knee']],
    ['Lovely trousers. A hole in the knee! Fast post', ['A hole in the knee']],
    // a sentence is told once, however many faults it has
    ['A hole and a stain', ['A hole and a stain']],
    ['A hole. A stain', ['A hole', 'A stain']],
    ['A hole. A hole', ['A hole']],
    ['- A hole;', ['A hole']],
    ['No holes', []],
    ['Waist 30"', []]
  ])('%j', (words, expected) => expect(faults(words).faults).toEqual(expected))
  test('of a long sentence only its part between commas', () => {
    const long = `lovely trousers ${'that I wore a lot '.repeat(9)}, a hole in the knee, fast post`
    expect(faults(long).faults).toEqual(['a hole in the knee'])
    const shorter = `lovely trousers ${'that I wore '.repeat(5)}, a hole in the knee, fast post`
    expect(faults(shorter).faults).toEqual([shorter])
  })
  test('in every text, each once', () => {
    expect(faultsOf([textOf('A hole'), textOf('A stain. A hole')], null).faults).toEqual(['A hole', 'A stain'])
  })
})

describe('what mends it', () => {
  test.each<[string, GarmentKind | null, string]>([
    ['a hole', 'trousers', 'patch'],
    ['a hole', null, 'patch'],
    // knits are darned
    ['a hole', 'jumper', 'darn'],
    ['a hole', 'knit-top', 'darn'],
    ['a stain', 'jumper', 'clean'],
    ['a moth hole', 'trousers', 'darn treat-pests'],
    ['a hole, a stain', 'trousers', 'patch clean']
  ])('%s on %s: %s', (words, kind, expected) => expect(mending(words, kind)).toBe(expected))
})

describe('the bag of a pocket', () => {
  test.each([
    ['small hole in the left pocket lining', 're-line-pocket'],
    ['pocket lining torn', 're-line-pocket'],
    ['pocket linings are torn', 're-line-pocket'],
    ['hole inside one pocket', 're-line-pocket'],
    ['hole in one pocket', 're-line-pocket'],
    ['hole on one pocket', 'patch'],
    ['hole near the pocket lining', 're-line-pocket'],
    ['hole in the cloth near the pocket', 'patch'],
    ['lining torn', 'close-seam'],
    ['lining fine, torn', 'patch'],
    ['pocket torn', 'patch'],
    // of another part of the sentence
    ['hole inside, the pocket is fine', 'patch'],
    ['pocket lining fine, torn', 'patch'],
    // six words away at most
    ['hole inside a b c d e pocket', 'patch'],
    ['hole inside a b c d pocket', 're-line-pocket'],
    ['pocket lining a b c d torn', 're-line-pocket'],
    ['pocket lining a b c d e torn', 'patch'],
    // a stain is no hole, and moths are in the cloth
    ['stain inside one pocket', 'clean'],
    ['moth hole inside one pocket', 'darn treat-pests'],
    // the other fault is of the pocket
    ['hole inside and tear pocket', 'patch']
  ])('%s: %s', (words, expected) => expect(mending(words)).toBe(expected))
})

describe('what was seen to', () => {
  test.each([
    ['moth nip, darned', 'treat-pests'],
    ['a repaired tear', ''],
    ['two holes and a tear, all mended', ''],
    ['two holes and a tear, mended', 'patch'],
    ['a hole', 'patch'],
    ['a hole, not mended', 'patch'],
    ['a hole that is easily mended', 'patch'],
    ['a hole that needs to be mended', 'patch'],
    ['a hole, mended easily', 'patch'],
    ['a hole that I mended', ''],
    // of another sentence, another fault, another part
    ['A hole. Mended', 'patch'],
    ['Mended. A hole', 'patch'],
    ['mended tear, a hole', 'patch'],
    ['a tear, mended', ''],
    ['a hole, small, low, mended', 'patch'],
    ['a hole, small, mended', 'patch'],
    ['a hole but the tear is mended', 'patch'],
    // one needle sees to many faults, but to no stain
    ['stain, repaired', 'clean']
  ])('%s: %s', (words, expected) => expect(mending(words)).toBe(expected))
  test('it stays told', () => expect(faults('a repaired tear').faults).toEqual(['a repaired tear']))
})

describe('what is no fault', () => {
  test.each([
    ['faded black tee', ''],
    ['bleached denim', ''],
    ['faded jeans', ''],
    ['faded cotton', ''],
    ['faded at the knee', 'dye'],
    ['faded', 'dye'],
    ['faded, black', 'dye']
  ])('%s: %s', (words, expected) => expect(mending(words)).toBe(expected))
  test('a mark of a size', () => {
    expect(faults('The mark size 12').faults).toEqual([])
    expect(faults('marks on it').faults).toEqual(['marks on it'])
  })
})
