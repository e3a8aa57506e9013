/** Words by role: what the languages' files hold, and how the rules ask for it. */
import { describe, expect, test } from 'vitest'
import { postedIn } from '../../../core/reading/facts/posted-in.ts'
import type { CueRole } from '../../../core/reading/languages/cue-roles.ts'
import { everyPairOf, phrasesIn } from '../../../core/reading/languages/phrases.ts'
import { compoundWord } from '../../../core/reading/text/compound-word.ts'
import { amount, cue, cueEnd, cueInside, cueStart } from '../../../core/reading/text/cues.ts'
import { LEXICONS } from '../../../core/reading/text/lexicons.ts'
import { normalise } from '../../../core/reading/text/normalise.ts'
import { phraseTrieOf, wordsOf } from '../../../core/reading/text/phrase-trie.ts'
import { tokensOf } from '../../../core/reading/text/tokens.ts'

describe('a list of phrases', () => {
  test('a phrase a line, without comments and empty lines', () => {
    expect(phrasesIn('\n  // how it lay\n  laid flat\n\n  flat lay\n')).toEqual(['laid flat', 'flat lay'])
    expect(phrasesIn('and')).toEqual(['and'])
    expect(phrasesIn(undefined)).toEqual([])
  })

  test('every pair of two lists', () => {
    expect(phrasesIn(everyPairOf('\n cuffs\n sleeves\n', '\n open\n // or\n work\n'))).toEqual([
      'cuffs open',
      'cuffs work',
      'sleeves open',
      'sleeves work'
    ])
  })
})

describe('a cue', () => {
  test.each(['with', 'mit', 'avec', 'con', 'met', 'med'])('%s has its role in one of the languages', (word) => {
    expect(cue('with').test(word)).toBe(true)
  })

  test('a word is asked for as tokens are: without accents, a whole word', () => {
    expect(cue('besideGarment').test('fur')).toBe(true) // für
    expect(cue('backSeam').test('gesasnaht')).toBe(true) // Gesäßnaht
    expect(cue('with').test('without')).toBe(false)
    expect(cue('with').test('')).toBe(false)
  })

  test('every word of every role is found, however long it is and whatever it begins with', () => {
    let asked = 0
    for (const { cues } of LEXICONS)
      for (const [role, list] of Object.entries(cues) as [CueRole, string][]) {
        const its = cue(role)
        for (const word of phrasesIn(list).flatMap(wordsOf)) {
          expect(its.test(word), `${role}: ${word}`).toBe(true)
          asked++
        }
      }
    expect(asked).toBeGreaterThan(2000)
  })

  test('of several roles', () => {
    expect(cue('with').test('z')).toBe(false)
    expect(cue('with', 'withOrOf').test('z')).toBe(true)
  })

  test('inside, at the start and at the end of what is written', () => {
    expect(cueInside('allOfIt').test('Fully lined')).toBe(true)
    expect(cueInside('allOfIt').test('lined')).toBe(false)
    expect(cueStart('inchBegins').test('Zoll')).toBe(true)
    expect(cueStart('inchBegins').test('30 Zoll')).toBe(false)
    expect(cueEnd('doingEnds').test('giving')).toBe(true)
    expect(cueEnd('doingEnds').test('given')).toBe(false)
  })
})

test('an amount that a word stands for', () => {
  expect(amount('part').get('viertel')).toBe(0.25)
  expect(amount('place').get('deuxieme')).toBe(2)
  expect(amount('note').get('tenner')).toBe(10)
  expect(amount('note').get('constructor')).toBeUndefined()
})

test.each([
  ['Free postage within Australia', 'AU'],
  ['Australia-wide postage', 'AU'],
  ['sent by auspost', 'AU'],
  ['anywhere in New Zealand', 'NZ'],
  ['Canada wide', 'CA'],
  ['AU size 12', 'AU'],
  ['AU 12, US 8', ''],
  ['made in Australia', ''],
  ['posted within austerity', '']
])('%s: sold in “%s”', (text, country) => {
  expect(postedIn(text)).toBe(country)
})

test.each([
  ['de', 'Baumwollenhemd', 'cotton'],
  ['de', 'Leinenkleid', 'linen'],
  ['nl', 'katoenenbroek', 'cotton']
])('%s: %s is cut where its first part ends', (language, word, fibre) => {
  const [token] = tokensOf(normalise(word).text)
  const senses = token === undefined ? undefined : compoundWord(token, phraseTrieOf(language))?.senses
  expect(senses).toContainEqual({ role: 'fibre', fibre })
  expect(senses?.some(({ role }) => role === 'kind')).toBe(true)
})
