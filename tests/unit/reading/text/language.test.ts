/** In which language a text is. */
import { describe, expect, test } from 'vitest'
import { languageOf } from '../../../../core/reading/text/language.ts'
import { tokenise } from '../../../../core/reading/text/text.ts'

const language = (words: string, given?: string) => languageOf([tokenise(words).tokens], given)

describe('by its words', () => {
  test.each([
    ['Schönes Kleid, die Taille ist mit einem Band', 'de'],
    ['Very nice dress with a belt', 'en'],
    ['Robe longue avec une ceinture et des poches', 'fr'],
    ['着丈は70センチです', 'ja'],
    ['어깨는 40입니다', 'ko'],
    ['Vestido largo con cinturón y bolsillos, muy bonito', 'es'],
    ['Gonna lunga con cintura e tasche, molto bella', 'it'],
    ['Mooie jurk met een riem en zakken', 'nl'],
    ['Fin klänning med skärp och fickor', 'sv'],
    ['Piękna sukienka z paskiem i kieszeniami', 'pl'],
    ['Vestido comprido com cinto e bolsos, muito bonito', 'pt'],
    ['着丈', 'ja'],
    ['ワンピース', 'ja'],
    ['원피스', 'ko'],
    // nothing contradicts English
    ['30 40 50', 'en'],
    ['', 'en'],
    ['xqx', 'en']
  ])('%j: %s', (words, expected) => expect(language(words)).toBe(expected))
  test('of all texts together, each to its 400th word', () => {
    expect(languageOf([tokenise('dress').tokens, tokenise('Schönes Kleid und die Taille mit einem Band').tokens], undefined)).toBe('de')
    const german = 'und die mit einem ist '
    expect(language(`${'xqx '.repeat(390)}${german}`)).toBe('de')
    expect(language(`${'xqx '.repeat(401)}${german}`)).toBe('en')
  })
})

describe('a language that is told', () => {
  test.each([
    ['30 40', 'de', 'de'],
    ['30 40', 'DE-at', 'de'],
    ['30 40', 'nb', 'no'],
    ['30 40', 'nn', 'no'],
    ['30 40', 'ja-JP', 'ja'],
    ['30 40', 'd', 'en'],
    ['30 40', 'xx', 'en'],
    ['30 40', '', 'en'],
    // leads by a little
    ['the waist is with a belt and the hem is long', 'de', 'en']
  ])('%j in %j: %s', (words, given, expected) => expect(language(words, given)).toBe(expected))
  test('beside more of English it is both, and read as the other', () => {
    const german = 'und die mit einem ist '
    const english = 'the with this and you '
    expect(language(german.repeat(2) + english.repeat(4), 'de')).toBe('de')
    expect(language(german + english.repeat(2), 'de')).toBe('en')
    expect(language(german.repeat(2) + english.repeat(9), 'de')).toBe('en')
    expect(language(german.repeat(2) + english.repeat(4))).toBe('en')
  })
})
