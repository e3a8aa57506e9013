// @vitest-environment happy-dom
/** The settings: each is kept at once, and nothing else of the person is touched. */
import { act } from '@testing-library/preact'
import { afterEach, expect, test, vi } from 'vitest'
import { SettingsPage, type SettingsPageProps } from '../../../components/workroom/settings/settings-page.tsx'
import type { PersonShown } from '../../../components/workroom/shown.ts'
import { LANGUAGE_ROWS } from '../../../core/words/languages.ts'
import { jobsMet } from '../../../entrypoints/workroom/settings-part.tsx'
import { beside, field, fill, hide, inPage, show as onPage, pick, press, shownText, textOf } from '../on-page.tsx'

afterEach(hide)

const wren: PersonShown = {
  id: 'p',
  name: 'Wren',
  units: 'cm',
  currency: 'GBP',
  fit: 'regular',
  means: { level: 3, tailor: false, markMm: 2, hourWorth: 8, notions: { 'leg-taper': 2 } }
}
function show(over: Partial<SettingsPageProps> = {}) {
  const props = {
    theme: 'system' as const,
    onTheme: vi.fn(),
    language: null,
    onLanguage: vi.fn(),
    person: wren,
    met: [],
    onChosen: vi.fn(),
    onTyped: vi.fn<SettingsPageProps['onTyped']>(async () => true),
    ...over
  } satisfies SettingsPageProps
  onPage(<SettingsPage {...props} />)
  return props
}

test('light or dark, and the language: as the browser, or any that there are words in', () => {
  const { onTheme, onLanguage } = show()
  pick('Light or dark', 'Dark')
  expect(onTheme).toHaveBeenCalledExactlyOnceWith('dark')
  expect([...field('Language').querySelectorAll('option')].map(textOf)).toEqual([
    'Like the browser',
    ...LANGUAGE_ROWS.map(({ name }) => name)
  ])
  fill('Language', 'en')
  expect(onLanguage).toHaveBeenCalledExactlyOnceWith('en')
  show({ language: 'en', onLanguage })
  fill('Language', 'browser')
  expect(onLanguage).toHaveBeenLastCalledWith(null)
})

test('other units bring the mark that their tape has, and leave all else as it was', () => {
  const { onChosen } = show()
  pick('Units', 'Inches')
  expect(onChosen).toHaveBeenCalledExactlyOnceWith({ units: 'in', means: { ...wren.means, markMm: 3.175 } })
})

test('a currency is chosen by its name, and one that is not on the list stays', () => {
  const { onChosen } = show({ person: { ...wren, currency: 'XTS' } })
  expect(field('Currency').value).toBe('XTS')
  expect([...field('Currency').querySelectorAll('option')].map(textOf)).toContain('EUR – Euro')
  fill('Currency', 'EUR')
  expect(onChosen).toHaveBeenCalledExactlyOnceWith({ currency: 'EUR' })
})

test('each level says in plain words what it is; the tailor, the pace and the hour are kept one by one', async () => {
  const { onChosen, onTyped } = show()
  expect(beside('Level 1: hand stitch')).toContain('Sew on a button')
  press('Level 4: lined or fitted')
  expect(onChosen).toHaveBeenLastCalledWith({ means: { ...wren.means, level: 4 } })
  press('I can take work to a tailor')
  expect(onChosen).toHaveBeenLastCalledWith({ means: { ...wren.means, tailor: true } })
  fill('How fast you sew', '1.5')
  expect(onChosen).toHaveBeenLastCalledWith({ means: { ...wren.means, pace: 1.5 } })
  fill('What an hour of yours is worth', '')
  const { hourWorth: _, ...without } = wren.means
  await act(async () => undefined)
  expect(onTyped).toHaveBeenLastCalledWith({ means: without }, { means: wren.means })
  fill('What an hour of yours is worth', 'a lot')
  expect(onTyped).toHaveBeenCalledTimes(1)
  expect(onChosen).toHaveBeenCalledTimes(3)
  expect(beside('What an hour of yours is worth')).toContain('not an amount')
})

test('an hour that could not be saved stays in its field', async () => {
  const onTyped = vi.fn<SettingsPageProps['onTyped']>(async () => false)
  show({ onTyped })
  fill('What an hour of yours is worth', '11')
  await act(async () => undefined)
  expect(onTyped).toHaveBeenCalledExactlyOnceWith({ means: { ...wren.means, hourWorth: 11 } }, { means: wren.means })
  expect(field('What an hour of yours is worth').value).toBe('11')
})

/** Opens what is folded away under these words. */
function unfold(words: string): void {
  const fold = [...inPage().querySelectorAll('details')].find((one) => textOf(one.querySelector('summary')).startsWith(words))
  if (fold === undefined) throw new Error(`nothing is folded under "${words}"`)
  act(() => {
    fold.open = true
    fold.dispatchEvent(new Event('toggle'))
  })
}

test('prices are asked for the jobs that came up, or have one; the others are folded away', () => {
  show({ met: ['waist-in-darts'] })
  unfold('Prices of jobs')
  expect([...inPage().querySelectorAll('.wr-prices > ul h3')].map(textOf)).toEqual(['Waist in with darts', 'Legs tapered'])
  expect(inPage().querySelectorAll('.wr-prices details h3')).toHaveLength(0)
  unfold('All other jobs')
  expect(inPage().querySelectorAll('.wr-prices details h3').length).toBeGreaterThan(50)
  show({ met: [], person: { ...wren, means: { level: 3, tailor: false } } })
  unfold('Prices of jobs')
  expect(shownText()).toContain('No listing you kept needs a job yet')
})

test('the jobs that came up are those of the plans now, and of the answers when listings were kept', () => {
  const then = { at: '', verdict: 'alters-to-fit' as const, chance: null, level: null, minutes: null, spend: null }
  const finds = [
    { summary: { verdictThen: { ...then, jobs: ['leg-taper'] } }, verdict: null },
    { summary: { verdictThen: null }, verdict: { jobs: ['waist-in-darts'] } }
  ]
  expect(jobsMet(finds as unknown as Parameters<typeof jobsMet>[0])).toEqual(['waist-in-darts', 'leg-taper'])
})

test('with nobody there yet, look and language can be set all the same', () => {
  show({ person: null })
  expect(field('Language')).toBeDefined()
  expect(inPage().querySelector('.part a')?.getAttribute('href')).toBe('#first-visit')
})
