/** Which language is spoken, and how its days and money are written. */
import { expect, test } from 'vitest'
import { LANGUAGE_ROWS, languageFor } from '../../../core/words/languages.ts'
import { say } from '../../../core/words/say.ts'

test('the language chosen is spoken where there are words in it, else the first that the browser asks for, else English', () => {
  expect(languageFor('en', ['de-AT'])).toBe('en')
  expect(languageFor(null, ['xx', 'en-US'])).toBe('en')
  expect(languageFor('xx', ['yy'])).toBe('en')
  expect(languageFor(undefined, [])).toBe('en')
})

test('every row is whole: two letters, a name of its own, a locale that the browser knows', () => {
  for (const { id, name, locale } of LANGUAGE_ROWS) {
    expect(id).toMatch(/^[a-z]{2}$/)
    expect(name).not.toBe('')
    expect(Intl.DateTimeFormat.supportedLocalesOf(locale)).toEqual([locale])
  }
})

test('a day is written as its language writes it, with the year where it is asked for', () => {
  const words = { units: 'cm' as const }
  expect(say({ code: 'day.is', values: { day: '2026-10-12' } }, words)).toBe('12 Oct')
  expect(say({ code: 'day.in-year', values: { day: '2025-10-02' } }, words)).toBe('2 Oct 2025')
  expect(say({ code: 'day.in-year', values: { day: 'no day' } }, words)).toBe('No day')
})
