// @vitest-environment happy-dom
/** The help: whole, in its parts, and of nothing but what the pages use. */
import { afterEach, expect, test } from 'vitest'
import { HELP_TOPICS, HelpLink, HelpPlace } from '../../../components/help-link.tsx'
import { HelpPage } from '../../../components/workroom/help/help-page.tsx'
import { GARMENT_KINDS } from '../../../core/ids/kinds.ts'
import { POINTS, POINTS_OF } from '../../../core/ids/points.ts'
import { parts } from '../../../core/words/en/index.ts'
import { hasMessage } from '../../../core/words/say.ts'
import { TERMS } from '../../../core/words/terms.ts'
import { fill, hide, inPage, show, shownText, textOf } from '../on-page.tsx'

afterEach(hide)

test('each term is named and explained once, and its word stands on some page besides', () => {
  const ids = Object.keys(parts.glossary ?? {})
  expect(ids.toSorted()).toEqual(TERMS.flatMap((term) => [`term.${term}`, `term-is.${term}`]).toSorted())
  const { glossary: _, help: __, ...pages } = parts
  const words = Object.values(pages).flatMap((part) => Object.values(part))
  const text = words.join('\n').toLowerCase()
  const unused = TERMS.filter((term) => !text.includes((parts.glossary?.[`term.${term}`] ?? '').toLowerCase()))
  expect(unused).toEqual([])
})

test('every point of every kind says how it is measured', () => {
  for (const point of POINTS) expect(hasMessage(`measure.${point}`), point).toBe(true)
  show(<HelpPage topic={null} />)
  for (const kind of GARMENT_KINDS.filter((one) => one !== 'other')) {
    fill('Garment', kind)
    expect(inPage().querySelectorAll('.wr-help-points li').length, kind).toBe(POINTS_OF[kind].length)
  }
})

test('an address with a part leads to its head, and its links lead to every part', () => {
  show(
    <HelpPlace.Provider value="">
      <HelpPage topic="words" />
    </HelpPlace.Provider>
  )
  expect(document.activeElement).toBe(document.getElementById('help-words'))
  const links = [...inPage().querySelectorAll('nav a')].map((one) => one.getAttribute('href'))
  expect(links).toEqual(HELP_TOPICS.map((topic) => `#help/${topic}`))
  for (const topic of HELP_TOPICS) expect(document.getElementById(`help-${topic}`)).not.toBeNull()
})

test('its words stand in the order of the alphabet', () => {
  show(<HelpPage topic={null} />)
  const names = [...inPage().querySelectorAll('.wr-help-words dt')].map(textOf)
  expect(names).toHaveLength(TERMS.length)
  expect(names).toEqual(names.toSorted((a, b) => a.localeCompare(b, 'en')))
})

test('from popup and panel a link opens the workroom in a tab of its own; inside it, the part changes', () => {
  show(<HelpLink topic="tape" />)
  const outside = inPage().querySelector('a')
  expect([outside?.getAttribute('href'), outside?.target, outside?.textContent]).toEqual([
    '/workroom.html#help/tape',
    '_blank',
    'How to read the tape'
  ])
  show(
    <HelpPlace.Provider value="">
      <HelpLink />
    </HelpPlace.Provider>
  )
  const inside = inPage().querySelector('a')
  expect([inside?.getAttribute('href'), inside?.target, shownText()]).toEqual(['#help', '', 'Help'])
})
