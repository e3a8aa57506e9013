import { describe, expect, test } from 'vitest'
import type { Ask } from '../../../../../core/plan/ask/ask.ts'
import { askedAtOnce, messageToSeller, questionId, sellersQuestions } from '../../../../../core/plan/ask/message.ts'
import { en } from '../../../../../core/words/en/index.ts'

const ask = (over: Partial<Ask>): Ask => ({ point: 'hip', worth: 0, unit: 'money', question: 'Could you measure the hip?', ...over })
const hip = ask({ worth: 3, suits: '49 to 54 cm would suit.' })
const thigh = ask({ point: 'thigh', worth: 0.9, question: 'Could you measure the thigh?' })
const lined: Ask = { about: 'lined', worth: 1, unit: 'money', question: 'Is it lined?' }
const own: Ask = { body: 'hipGirth', worth: 9, unit: 'money', question: 'Measure your own hip.' }

describe('what can be asked of the seller', () => {
  test('nothing of one’s own body, and nothing that is worth nothing and decides nothing', () => {
    expect(sellersQuestions([own, hip, ask({ point: 'knee' }), lined])).toEqual([hip, lined])
    expect(sellersQuestions([own])).toEqual([])
  })
  test('three at most, in their order', () => {
    expect(sellersQuestions([hip, lined, thigh, ask({ point: 'waist', worth: 1 })])).toEqual([hip, lined, thigh])
  })
  test('the first stands even where no question is worth anything', () => {
    expect(sellersQuestions([ask({}), ask({ point: 'knee' })])).toEqual([ask({})])
  })
})

describe('what is asked where nothing was chosen', () => {
  test('the first, what is worth a third of it, and what says what would suit', () => {
    const decides = ask({ point: 'waist', suits: '40 cm or more would suit.' })
    expect(askedAtOnce([hip, lined, thigh, decides])).toEqual([hip, lined, decides])
    expect(askedAtOnce([thigh, { ...lined, worth: 0.2 }])).toEqual([thigh])
  })
})

describe('the message', () => {
  const wording = { units: 'cm' as const }
  test('names the article, asks each thing, says what would suit, and thanks', () => {
    expect(messageToSeller('Grey  trousers\n', [hip, lined], true, wording)).toBe(
      'Hello, I am interested in “Grey trousers”. Could you measure the hip? 49 to 54 cm would suit. Is it lined? Thank you.'
    )
  })
  test('can keep what would suit to itself', () => {
    expect(messageToSeller('Trousers', [hip], false, wording)).toBe(
      'Hello, I am interested in “Trousers”. Could you measure the hip? Thank you.'
    )
  })
  test('stands without a title, and is none without a question', () => {
    expect(messageToSeller(' ', [lined], true, wording)).toBe('Hello, I am interested in what you are selling. Is it lined? Thank you.')
    expect(messageToSeller('Trousers', [], true, wording)).toBe('')
  })
  test('a title is said as it is written, whatever stands in it', () => {
    expect(messageToSeller('{title} <b>$&</b>', [lined], true, wording)).toContain('“{title} <b>$&</b>”')
  })
})

test('a second look at a point is another question than the first', () => {
  expect([hip, { ...hip, again: true as const }, lined].map(questionId)).toEqual(['hip', 'hip again', 'lined'])
})

test('whatever can be asked of the make has a name of its own', () => {
  const asked = Object.keys(en).flatMap((code) => (code.startsWith('ask.about.') ? [code.slice('ask.about.'.length)] : []))
  expect(asked.length).toBeGreaterThan(5)
  expect(asked.filter((about) => en[`ask.what.${about}`] === undefined)).toEqual([])
})
