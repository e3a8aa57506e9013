/** Laws of the reader: whatever the text. A failure prints its seed; a law that applied to nothing fails. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readListing } from '../../core/reading/read-listing.ts'
import type { Reading } from '../../core/reading/reading.ts'
import { garmentFrom } from '../../core/reading/request/garment-from.ts'
import { cases } from '../corpus/cases.ts'
import { written } from '../corpus/written/written.ts'

const RUNS = 300
const all = Object.values(cases).flat()

/** Bits that readers stumble over, beside any text at all. */
const BITS = [
  'waist',
  'hips',
  'pit to pit',
  'length',
  '30"',
  '76 cm',
  '30 1/2',
  '1/0',
  '3..5',
  '-',
  ':',
  '/',
  '\n',
  '(',
  ')',
  'model is',
  'fits',
  'size',
  'W32',
  'L34',
  '½',
  'x2',
  '5\'8"',
  '£20',
  '100%',
  'cotton',
  '<br>',
  '&quot;',
  '’',
  '𝗪',
  '\ud83d',
  'İ',
  'flat',
  'around',
  'in',
  'to',
  'the',
  ',',
  '.',
  'from',
  'jacket:',
  'trousers:',
  'S',
  '+2"',
  '身幅',
  '着丈70袖丈60',
  '約52㎝',
  'ﾊﾞｽﾄ',
  'か\u3099',
  '：',
  '〜',
  'ー',
  '【',
  '、',
  '。',
  '3千円',
  '가슴단면',
  '총장은',
  '\u1112\u1161\u11ab',
  '3만5천원',
  'なし',
  'entrepernas'
]
const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.string({ unit: 'grapheme', maxLength: 200 }),
  fc.array(fc.constantFrom(...BITS), { maxLength: 60 }).map((bits) => bits.join(' ')),
  fc.array(fc.constantFrom(...BITS), { maxLength: 60 }).map((bits) => bits.join(''))
)
const places = (reading: Reading) => [
  ...reading.measures.map(({ stated }) => stated),
  ...reading.allowances.map(({ stated }) => stated),
  ...reading.leftAside.map(({ stated }) => stated),
  ...reading.issues.flatMap(({ stated }) => (stated ? [stated] : []))
]

test('never throws, and every place reproduces its text', () => {
  let applied = 0
  fc.assert(
    fc.property(anyText, anyText, (title, text) => {
      const reading = readListing({ title, text })
      for (const stated of places(reading)) {
        applied++
        expect((text + (reading.added ?? '')).slice(stated.start, stated.end)).toBe(stated.text)
        expect(stated.text.length).toBeGreaterThan(0)
      }
      for (const measure of reading.measures) {
        expect(measure.mm).toBeGreaterThan(0)
        expect(measure.lowMm).toBeLessThanOrEqual(measure.mm)
        expect(measure.highMm).toBeGreaterThanOrEqual(measure.mm)
      }
      garmentFrom(reading, [])
    }),
    { numRuns: RUNS }
  )
  expect(applied).toBeGreaterThan(50)
})

test('never throws on any structured data', () => {
  fc.assert(
    fc.property(fc.array(fc.anything(), { maxLength: 5 }), fc.jsonValue(), (blocks, value) => {
      readListing({
        title: 'Skirt',
        text: 'Waist 28"',
        structured: [...blocks, value, { '@type': 'Product', offers: value, color: value, material: value }]
      })
    }),
    { numRuns: RUNS }
  )
})

test('reading twice gives the same', () => {
  fc.assert(
    fc.property(anyText, (text) => {
      expect(readListing({ text })).toEqual(readListing({ text }))
    }),
    { numRuns: 100 }
  )
})

const figures = ({ measures, allowances }: Reading, by = 0) => ({
  measures: measures.map(({ stated, ...rest }) => ({ ...rest, text: stated.text, start: stated.start - by })),
  allowances: allowances.map(({ stated, ...rest }) => ({ ...rest, text: stated.text, start: stated.start - by }))
})
/** Text with no word of measuring in it. */
const junk = fc
  .array(fc.constantFrom('lorem', 'ipsum', 'dolor', 'amet', '!!', '✨', '🌸', '~~~', 'consectetur', 'qwerty'), {
    minLength: 1,
    maxLength: 30
  })
  .map((words) => words.join(' '))

test('junk before and after changes nothing', () => {
  // what a title tells stands behind the text, so behind the junk too
  const measured = all.filter(({ listing, expect: e }) => (e.measures?.length ?? 0) > 0 && listing.title !== undefined && !e.added)
  let applied = 0
  fc.assert(
    fc.property(fc.constantFrom(...measured), junk, junk, ({ listing }, before, after) => {
      applied++
      const plain = figures(readListing(listing))
      const text = `${before}\n\n${listing.text}\n\n${after}`
      expect(figures(readListing({ ...listing, text }), before.length + 2)).toEqual(plain)
    }),
    { numRuns: RUNS }
  )
  expect(applied).toBe(RUNS)
})

/** Words of nobody's in scripts without spaces, and in Latin letters. */
const junkWithout = fc
  .array(fc.constantFrom('ふむふむ', '嗚呼嗚呼', 'ムニャ', '흠흠', '헤헤', 'lorem', '✨', '！！', '…', 'ｗｗｗ'), {
    minLength: 1,
    maxLength: 12
  })
  .map((words) => words.join(''))

test('junk before and after a text without spaces changes nothing', () => {
  const measured = Object.values(written)
    .flat()
    .filter(({ lang, measures }) => (lang === 'ja' || lang === 'ko') && measures.length > 0)
  let applied = 0
  fc.assert(
    fc.property(fc.constantFrom(...measured), junkWithout, junkWithout, ({ title, text, lang: language }, before, after) => {
      applied++
      const listing = { text, language, ...(title === undefined ? {} : { title }) }
      const plain = figures(readListing(listing))
      expect(figures(readListing({ ...listing, text: `${before}\n\n${text}\n\n${after}` }), before.length + 2)).toEqual(plain)
    }),
    { numRuns: 150 }
  )
  expect(applied).toBe(150)
})

test('however a figure is written beside its name, it is the same', () => {
  const wide = (text: string) => text.replace(/[!-~]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) + 0xfee0))
  const names = [
    ['ja', '着丈', 'bodyLength', '袖丈'],
    ['ja', '肩幅', 'shoulderWidth', '着丈'],
    ['ko', '총장', 'bodyLength', '소매'],
    ['ko', '어깨너비', 'shoulderWidth', '총장']
  ] as const
  const title = { ja: 'シャツ', ko: '셔츠' }
  let applied = 0
  fc.assert(
    fc.property(
      fc.constantFrom(...names),
      fc.integer({ min: 40, max: 75 }),
      fc.constantFrom('', ' ', '：', ' : ', '　'),
      fc.constantFrom('', 'cm', '㎝', ' cm'),
      fc.constantFrom('', '、', ' / ', ' ', '\n'),
      fc.boolean(),
      ([language, name, point, next], value, joint, unit, parted, isWide) => {
        const figure = `${value}${unit}`
        const text = `${name}${joint}${isWide ? wide(figure) : figure}${parted}${next}${joint}58${unit}`
        const { measures } = readListing({ title: title[language], text, language })
        const its = measures.find((one) => one.point === point)
        expect(its?.mm, text).toBe(value * 10)
        expect(text.slice(its?.stated.start, its?.stated.end)).toBe(its?.stated.text)
        applied++
      }
    ),
    { numRuns: 300 }
  )
  expect(applied).toBeGreaterThan(200)
})

test('a girth stated flat is twice its figure, a length and a girth around are their figure', () => {
  const PER = { in: 25.4, cm: 10, mm: 1 }
  let applied = 0
  fc.assert(
    fc.property(
      fc.integer({ min: 26, max: 60 }),
      fc.constantFrom('in' as const, 'cm' as const),
      fc.constantFrom('flat' as const, 'around' as const),
      (half, unit, basis) => {
        const figure = Math.round((half * 10) / PER[unit]) * (basis === 'flat' ? 1 : 2)
        const { measures } = readListing({ title: 'Skirt', text: `Waist: ${figure} ${unit} ${basis}, length: 60 cm` })
        const waist = measures.find(({ point }) => point === 'waist')
        expect(waist?.basis).toBe(basis)
        expect(waist?.mm).toBeCloseTo(figure * PER[unit] * (basis === 'flat' ? 2 : 1), 6)
        expect(measures.find(({ point }) => point === 'skirtLength')?.mm).toBe(600)
        applied++
      }
    ),
    { numRuns: 200 }
  )
  expect(applied).toBe(200)
})

test('time grows with the length of a text without spaces', { timeout: 60_000 }, () => {
  const piece = '身幅約着丈はです袖丈ムニャムニャ裾コトコト'
  const took = (length: number) => {
    const text = `${piece.repeat(Math.ceil(length / piece.length / 2))}${`${piece}52cm`.repeat(Math.ceil(length / piece.length / 2))}`
    const from = process.cpuUsage()
    readListing({ title: 'シャツ', text, language: 'ja' })
    const { user, system } = process.cpuUsage(from)
    return (user + system) / text.length
  }
  took(50_000)
  const short = Math.min(took(50_000), took(50_000))
  // one run of a hundred thousand letters and more; a quadratic reader would need eight times as long a letter
  expect(Math.min(took(400_000), took(400_000))).toBeLessThan(short * 4)
})

test('five megabytes are read, told as long, and nothing is thrown', { timeout: 60_000 }, () => {
  const piece = 'Waist: 30", hips 40" (flat) – lovely! 12/05/2023 £20 <b>x</b>\n'
  const text = piece.repeat(Math.ceil(5_000_000 / piece.length))
  const reading = readListing({ title: 'Skirt', text })
  expect(reading.issues.map(({ code }) => code)).toContain('reading.long-text')
  expect(reading.measures.length).toBeGreaterThan(0)
})
