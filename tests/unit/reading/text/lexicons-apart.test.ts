/** The languages one by one, as they are built in: the same phrases, each once a text needs it. */
import { expect, test, vi } from 'vitest'
import { LEXICONS, OF_EVERY } from '../../../../core/reading/text/lexicons.ts'
import * as apart from '../../../../core/reading/text/lexicons-apart.ts'
import * as built from '../../../../core/reading/text/of-every-built.ts'
import { languagesApart } from '../../../../entrypoints/companion/languages-apart.ts'

const others = LEXICONS.filter(({ language }) => language !== 'en')

test('English is here, and what all have together', () => {
  expect(apart.lexiconOf('en')).toBe(LEXICONS[0])
  expect(apart.OF_EVERY).toBe(built.OF_EVERY)
})

test('both forms have the same exports, but for the list of all', async () => {
  const { LEXICONS: _, ...whole } = await import('../../../../core/reading/text/lexicons.ts')
  expect(Object.keys(apart).sort()).toEqual(Object.keys(whole).sort())
})

test.each(others)('$language comes when it is asked for, and is the same', async ({ language }) => {
  expect(() => apart.lexiconOf(language)).toThrow(/withLanguages/)
  const read = vi.fn(() => apart.lexiconOf(language))
  expect(await apart.withLanguages(read)).toBe(LEXICONS.find((one) => one.language === language))
  expect(read).toHaveBeenCalledTimes(2)
  expect(apart.lexiconOf(language)?.language).toBe(language)
})

test('of a language that nobody has there are no phrases', () => {
  expect(apart.lexiconOf('xx')).toBeUndefined()
})

test('another fault is no language that is on its way', async () => {
  const fault = new Error('full')
  await expect(
    apart.withLanguages(() => {
      throw fault
    })
  ).rejects.toBe(fault)
  expect(apart.languageComing(fault)).toBeNull()
})

test('what is built in for all languages is what was worked out of them', () => {
  const { load } = languagesApart()
  const written = typeof load === 'function' ? load.call({} as never, '/core/reading/text/of-every-built.ts') : null
  expect(String(written).startsWith('export const OF_EVERY = ')).toBe(true)
  expect(JSON.parse(String(written).slice('export const OF_EVERY = '.length))).toEqual(OF_EVERY)
})

test('no word that tells a language is lost: each stands at the places of its languages, once', () => {
  const words = Object.values(OF_EVERY.telling).flatMap((list) => list.split(' '))
  expect(new Set(words).size).toBe(words.length)
  expect(words.length).toBeGreaterThan(4000)
  for (const places of Object.keys(OF_EVERY.telling))
    for (const place of places.split(' ')) expect(OF_EVERY.languages[Number(place)]).toBeDefined()
})
