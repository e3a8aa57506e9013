/** Every word a person reads stands in a message module once, whole, and whatever is said by code has its sentence. */
import { expect, test } from 'vitest'
import { en, parts } from '../../core/words/en/index.ts'
import { codesIn, likeCodesIn } from './codes.ts'
import { sourcesIn } from './project.ts'

const FORMS = new Set(['length', 'figure', 'time', 'tens', 'percent', 'money', 'unit', 'day', 'date'])
const messages = Object.entries(en)
/** `verdict.` of `verdict.leave-it`: the tables a placeholder may look a word up in. */
const tables = new Set(messages.map(([code]) => code.slice(0, code.lastIndexOf('.'))))

test('there are messages', () => {
  expect(messages.length).toBeGreaterThan(100)
})

test('a code stands in one part only', () => {
  const seen = new Map<string, string>()
  const twice: string[] = []
  for (const [part, own] of Object.entries(parts)) {
    for (const code of Object.keys(own)) {
      const first = seen.get(code)
      if (first !== undefined) twice.push(`"${code}" stands in ${first}.ts and in ${part}.ts: keep one.`)
      seen.set(code, part)
    }
  }
  expect(twice).toEqual([])
})

test('no message is empty, and none has a blank at its edge', () => {
  expect(
    messages
      .filter(([, text]) => text.trim() === '' || text !== text.trim())
      .map(([code]) => `"${code}": write the sentence, without blanks around it.`)
  ).toEqual([])
})

test('every placeholder is whole, and its form is one that say() knows', () => {
  const wrong = messages.flatMap(([code, text]) => {
    const rest = text.replace(/\{(\w+)(?:\|([^{}]+))?\}/g, (_, _name, form?: string) => {
      if (form === undefined || FORMS.has(form) || tables.has(form)) return ''
      const isPlural = form.includes(':') && form.split('|').some((one) => one.startsWith('other:'))
      return isPlural ? '' : `{${form}}`
    })
    return /[{}]/.test(rest) ? [`"${code}": "${text}" has a placeholder that say() does not know; see the list in core/words/say.ts.`] : []
  })
  expect(wrong).toEqual([])
})

test('no exclamation, and nothing of markup', () => {
  expect(messages.filter(([, text]) => /[!<>]/.test(text)).map(([code]) => `"${code}": plain words, no "!" and no markup.`)).toEqual([])
})

test('every code that is said has its sentence', () => {
  const codes = sourcesIn('core', 'components', 'entrypoints').flatMap(codesIn)
  const missing = codes
    .filter(({ code, whole }) => (whole ? !Object.hasOwn(en, code) : !messages.some(([known]) => known.startsWith(code))))
    .map(({ code, at }) => `${at} says "${code}": write it into the part of core/words/en that belongs to this page.`)
  expect(codes.length).toBeGreaterThan(5)
  expect(missing).toEqual([])
})

const families = new Set(messages.map(([code]) => code.slice(0, code.indexOf('.'))))
/** The words of any language: their codes are no saying. */
const isWords = (path: string) => /^core\/words\/[a-z]{2}\//.test(path)
const alike = sourcesIn('core', 'components', 'entrypoints')
  .filter(({ path }) => !isWords(path) && !path.startsWith('entrypoints/companion/'))
  .flatMap((file) => likeCodesIn(file, families))
const begins = (head: string) => messages.some(([known]) => known.startsWith(head))

test('what has the look of a code, in a table or a choice, has its sentence too', () => {
  const missing = alike
    .filter(({ code, whole }) => !Object.hasOwn(en, code) && !(begins(code) && (!whole || code.endsWith('.'))))
    .map(({ code, at }) => `${at}: "${code}" begins as a message does, and is none: write it, or choose another name.`)
  expect(missing).toEqual([])
})

test('no message stands there unsaid', () => {
  const whole = new Set(alike.filter((one) => one.whole).map(({ code }) => code))
  const heads = alike.filter((one) => !one.whole || one.code.endsWith('.')).map(({ code }) => code)
  const lookedUp = new Set(messages.flatMap(([, text]) => [...text.matchAll(/\{\w+\|([\w-]+)\}/g)].map((match) => match[1] ?? '')))
  const unsaid = messages
    .filter(
      ([code]) => !whole.has(code) && !heads.some((head) => code.startsWith(head)) && !lookedUp.has(code.slice(0, code.lastIndexOf('.')))
    )
    .map(([code]) => `"${code}" is said nowhere: take it away.`)
  expect(unsaid).toEqual([])
})

test('codes are seen in objects, in calls, in either branch of a choice, and half made', () => {
  const text = `const a = { code: "a.b", values: {} }; words.t("c.d"); t(x ? "e.f" : "g.h"); t(\`i.\${j}\`); const no = { code: "KeyA" }`
  expect(codesIn({ path: 'components/x.ts', text }).map(({ code, whole }) => [code, whole])).toEqual([
    ['a.b', true],
    ['c.d', true],
    ['e.f', true],
    ['g.h', true],
    ['i.', false]
  ])
})
