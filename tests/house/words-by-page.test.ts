/** What the popup, the panel and the worker of answers can say stands among the words that they bring; the workroom brings the rest. */
import { expect, test } from 'vitest'
import { parts as german } from '../../core/words/de/index.ts'
import { ofAnswers as germanAnswers } from '../../core/words/de/of-answers.ts'
import { ofAnswers } from '../../core/words/en/of-answers.ts'
import { ofWorkroom } from '../../core/words/en/of-workroom.ts'
import { codesIn, likeCodesIn } from './codes.ts'
import { importsOf, sourcesIn, target } from './project.ts'

const files = new Map(sourcesIn('core', 'components', 'entrypoints').map((file) => [file.path, file]))
const workroomOnly: Record<string, string> = Object.assign({}, ...Object.values(ofWorkroom))
const families = new Set(Object.keys(workroomOnly).map((code) => code.slice(0, code.indexOf('.'))))

function reached(...from: string[]): Set<string> {
  const seen = new Set<string>()
  const follow = (path: string): void => {
    const file = files.get(path)
    if (file === undefined || seen.has(path) || path.startsWith('core/words/')) return
    seen.add(path)
    for (const written of importsOf(file)) follow(target(file, written) ?? '')
  }
  for (const path of from) follow(path)
  return seen
}

test('what the popup, the panel and the worker say is among the words of answers', () => {
  const own = reached('entrypoints/popup/main.tsx', 'entrypoints/sidepanel/main.tsx', 'entrypoints/view/answer-worker.ts')
  expect(own.size).toBeGreaterThan(100)
  const wrong = [...own].flatMap((path) => {
    const file = files.get(path)
    if (file === undefined) return []
    return [...codesIn(file), ...likeCodesIn(file, families)]
      .filter(({ code }) => Object.hasOwn(workroomOnly, code))
      .map(({ code, at }) => `${at} says "${code}": move it into a part that of-answers.ts lists, in every language.`)
  })
  expect([...new Set(wrong)]).toEqual([])
})

// a head that both have is two tables of one name: which of them is meant only the whole code tells
test('what they say by halves, and what a sentence looks up, is there too', () => {
  const own = reached('entrypoints/popup/main.tsx', 'entrypoints/sidepanel/main.tsx', 'entrypoints/view/answer-worker.ts')
  const inAnswers = Object.values(ofAnswers).flatMap((part) => Object.entries(part))
  const formsIn = (text: string) => [...text.matchAll(/\{\w+\|([a-z-]+)\}/g)].map((match) => `${match[1]}.`)
  // a form of numbers is no table
  const tables = (texts: string[]) => texts.flatMap(formsIn).filter((head) => head !== 'figure.')
  const heads = [...own].flatMap((path) => {
    const file = files.get(path)
    return file === undefined ? [] : codesIn(file).filter(({ whole }) => !whole)
  })
  const asked = [...new Set([...heads.map(({ code }) => code), ...tables(inAnswers.map(([, text]) => text))])]
  const wanting = asked
    .filter((head) => !inAnswers.some(([code]) => code.startsWith(head)))
    .flatMap((head) => Object.keys(workroomOnly).filter((code) => code.startsWith(head)))
  expect(wanting.map((code) => `"${code}" can be asked for by the popup or the panel: move it to the words of answers.`)).toEqual([])
})

test('every language is parted alike', () => {
  expect(Object.keys(german).sort()).toEqual(Object.keys({ ...ofAnswers, ...ofWorkroom }).sort())
  expect(Object.keys(germanAnswers).sort()).toEqual(Object.keys(ofAnswers).sort())
})
