/** Which language is spoken, when its words come, and how it writes days, money, figures, lists and plurals. */
import { beforeAll, describe, expect, test, vi } from 'vitest'
import { canBeSpoken, LANGUAGE_ROWS, languageFor, languageRow, loadWords, messagesIn } from '../../../core/words/languages.ts'
import { listed, say, sayInside, sayTogether, type Wording } from '../../../core/words/say.ts'

const english: Wording = { units: 'cm', currency: 'EUR' }
const german: Wording = { units: 'cm', language: 'de', currency: 'EUR' }
const day = (code: string, iso: string, wording: Wording) => say({ code, values: { day: iso } }, wording)

test('the language chosen is spoken where there are words in it, else the first that the browser asks for, else English', () => {
  expect(languageFor('en', ['de-AT'])).toBe('en')
  expect(languageFor('de', ['en-GB'])).toBe('de')
  expect(languageFor(null, ['xx', 'de-AT', 'en-US'])).toBe('de')
  expect(languageFor(null, ['xx', 'en-US', 'de'])).toBe('en')
  expect(languageFor('xx', ['yy'])).toBe('en')
  expect(languageFor(undefined, [])).toBe('en')
})

test('every row is whole: two letters, a name of its own, a locale that the browser knows', () => {
  for (const { id, name, locale } of LANGUAGE_ROWS) {
    expect(id).toMatch(/^[a-z]{2}$/)
    expect(name).not.toBe('')
    expect(Intl.DateTimeFormat.supportedLocalesOf(locale)).toEqual([locale])
  }
  expect(languageRow('de-CH').name).toBe('Deutsch')
  expect(canBeSpoken('DE')).toBe(true)
  expect(canBeSpoken('')).toBe(false)
})

test('until its words are here a language is said in English, figures and money too', async () => {
  // as in a page that has just been opened, whatever was loaded for other tests
  vi.resetModules()
  const { isSpoken, loadWords } = await import('../../../core/words/languages.ts')
  const { say } = await import('../../../core/words/say.ts')
  expect(isSpoken('de')).toBe(false)
  expect(say({ code: 'place.at', values: { mm: 735 }, point: 'hip' }, german)).toBe('73.5 cm at the hip')
  expect(say({ code: 'listing.price', values: { amount: 18 } }, german)).toBe('€18.00')
  await loadWords('de-AT')
  expect(isSpoken('de-CH')).toBe(true)
  expect(say({ code: 'place.at', values: { mm: 735 }, point: 'hip' }, german)).toBe('Hüfte 73,5\u00a0cm')
  await loadWords('xx')
  expect(isSpoken('xx')).toBe(false)
})

describe('German', () => {
  beforeAll(() => loadWords('de'))
  const t = (code: string, values = {}) => say({ code, values }, german)

  test('a day and money as they are written there', () => {
    expect(day('day.is', '2026-10-12', english)).toBe('12 Oct')
    expect(day('day.in-year', '2025-10-02', english)).toBe('2 Oct 2025')
    expect(day('day.is', '2026-10-12', german)).toBe('12. Okt.')
    expect(day('day.in-year', '2025-10-02', german)).toBe('2. Okt. 2025')
    expect(day('day.in-year', 'no day', english)).toBe('No day')
    expect(t('listing.price', { amount: 1218 })).toBe('1.218,00\u00a0€')
    expect(say({ code: 'listing.price', values: { amount: 18 } }, { units: 'cm', language: 'de' })).toBe('18,00')
    expect(say({ code: 'listing.price', values: { amount: 18.5 } }, { ...german, currency: 'no currency' })).toBe('18,50 no currency')
  })

  test('decimals behind a comma, inches as Zoll', () => {
    expect(t('tape.over.girth', { mm: 15 })).toBe('1,5\u00a0cm zu weit')
    expect(say({ code: 'tape.over.girth', values: { mm: 38.1 } }, { ...german, units: 'in' })).toBe('1½\u00a0Zoll zu weit')
    expect(say({ code: 'tape.over.girth', values: { mm: 38.1 } }, { units: 'in' })).toBe('1½ in too big')
  })

  test('hours, chances and plurals', () => {
    expect(t('facts.minutes', { minutes: 100 })).toBe('1\u00a0h\u00a040')
    expect(say({ code: 'facts.minutes', values: { minutes: 65 } }, english)).toBe('1 h 05')
    expect(t('facts.minutes', { minutes: 26 })).toBe('26\u00a0min')
    expect(t('facts.minutes', { minutes: 120 })).toBe('2\u00a0h')
    expect(t('facts.chance', { chance: 0.8 })).toBe('8\u00a0von\u00a010')
    expect(t('facts.chance', { chance: 0.01 })).toBe('Kaum 1\u00a0von\u00a010')
    expect(t('wardrobe.told', { count: 1 })).toMatch(/^1 Stück\./)
    expect(t('wardrobe.told', { count: 2 })).toMatch(/^2 Stücke\./)
  })

  test('a list ends with "und"', () => {
    expect(listed(['Taille', 'Hüfte', 'Länge'], german)).toBe('Taille, Hüfte und Länge')
  })

  test('a noun keeps its capital inside a sentence, another word gets one at the head alone', () => {
    const hip = { code: 'points.point', values: { point: 'hip' } }
    const rise = { code: 'points.point', values: { point: 'frontRise' } }
    expect([say(hip, german), sayInside(hip, german)]).toEqual(['Hüfte', 'Hüfte'])
    expect([say(rise, german), sayInside(rise, german)]).toEqual(['Vordere Leibhöhe', 'vordere Leibhöhe'])
    expect([say(hip, english), sayInside(hip, english)]).toEqual(['Hip', 'hip'])
    const jobs = ['do.skirt-shorten.less', 'do.seat-in.less'].map((code) => ({ code, values: { amount: 30 } }))
    expect(sayTogether(jobs, german)).toBe('Den Rock um 3\u00a0cm kürzen und das Gesäß um 3\u00a0cm enger nähen')
  })

  test('what stays wrong, as a tailor notes it', () => {
    const wrong = (code: string, values = {}) =>
      say({ code, values: { needs: 30, holds: 20, level: 4, way: 'big', mend: 'in', ...values }, point: 'waist' }, german)
    expect(wrong('misfit.limit')).toBe('Taille: 3\u00a0cm zu weit; enger geht es um höchstens 2\u00a0cm.')
    expect(wrong('misfit.level')).toBe('Taille: 3\u00a0cm zu weit; enger nähen ist Arbeit der Stufe 4.')
    expect(wrong('misfit.nothing', { way: 'small', mend: 'out' })).toBe('Taille: 3\u00a0cm zu eng, und auslassen lässt sich dort nichts.')
  })

  test('what it does not say is said in English', () => {
    expect(Object.keys(messagesIn('en')).filter((code) => messagesIn('de')[code] === undefined)).toEqual([])
  })
})
