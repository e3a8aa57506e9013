/** A language is whole: it says what English says, with the same values, in its own letters. */
import { describe, expect, test } from 'vitest'
import { en } from '../../core/words/en/index.ts'
import { LANGUAGE_ROWS, type Messages } from '../../core/words/languages.ts'
import { languageGaps } from './language-gaps.ts'

const others = await Promise.all(
  LANGUAGE_ROWS.filter(({ id }) => id !== 'en').map(async (row) => ({
    ...row,
    messages: Object.assign({}, ...Object.values({ ...(await row.load('answers')), ...(await row.load('workroom')) })) as Messages
  }))
)

test('there is a language beside English', () => {
  expect(others.map(({ id }) => id)).toContain('de')
})

describe.each(others)('$name', ({ id, locale, messages }) => {
  test('every code of English, none besides, each with the same placeholders and forms', () => {
    expect(languageGaps(en, messages, locale)).toEqual([])
  })
  test('no message is empty, none has a blank at its edge, an exclamation or markup', () => {
    const wrong = Object.entries(messages).filter(([, text]) => text.trim() === '' || text !== text.trim() || /[!<>]/.test(text))
    expect(wrong.map(([code]) => `core/words/${id}: "${code}": plain words, no "!", no markup, no blanks around them.`)).toEqual([])
  })
})

test('German is addressed as "du", and quotes and decimals are written as in German', () => {
  const german: Messages = others.find(({ id }) => id === 'de')?.messages ?? {}
  const wrong = Object.entries(german).flatMap(([code, text]) => [
    ...(/(?<![.:?„(] |^|:)\b(?:Sie|Ihnen|Ihre?[nmrs]?)\b/.test(text) ? [`"${code}": say "du".`] : []),
    ...(/["”]/.test(text) ? [`"${code}": quotes are „so“.`] : []),
    ...(/\d\.\d/.test(text) ? [`"${code}": decimals stand behind a comma.`] : [])
  ])
  expect(wrong).toEqual([])
})

describe('what is found', () => {
  const some = { 'a.one': 'Take {mm|length} off', 'a.n': '{n} {n|one:job|other:jobs}' }
  test('a code that is lacking, and one too many', () => {
    expect(languageGaps(some, { 'a.n': '{n} {n|one:Arbeit|other:Arbeiten}', 'b.x': 'x' }, 'de-DE')).toEqual([
      '"a.one": not said: write it.',
      '"b.x": English has no such code: take it away.'
    ])
  })
  test('a value that is left out, one that is not given, another form', () => {
    const gaps = (german: string) => languageGaps(some, { ...some, 'a.one': german }, 'de-DE')
    expect(gaps('Kürzen')).toEqual(['"a.one": {mm} is left out.'])
    expect(gaps('Um {mm|length} kürzen, {n} mal')).toEqual(['"a.one": {n} is not given.'])
    expect(gaps('Um {mm|figure} kürzen')).toEqual(['"a.one": {mm|figure} is written {mm|length} in English.'])
    expect(gaps('Um {mm|length} kürzen')).toEqual([])
  })
  test('a plural that lacks a form its language has', () => {
    expect(languageGaps(some, { ...some, 'a.n': '{n} {n|other:Arbeiten}' }, 'de-DE')).toEqual(['"a.n": {n|…} lacks the form "one".'])
  })
})
