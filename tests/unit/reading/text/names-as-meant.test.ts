/** Words that were run together or misspelt, as they are meant. */
import { describe, expect, test } from 'vitest'
import { slipOf } from '../../../../core/reading/text/misspelt.ts'
import { readText } from '../../../../core/reading/text/text.ts'

const words = (text: string, language = 'en') => readText(text, language).tokens.map((token) => token.text)

describe('words run together', () => {
  test.each([
    ['Bust: 20inWaist: 17', 'in waist'],
    ['20inwaist 17', 'in waist'],
    ['InchesBust20', 'inches bust'],
    ['MEASUREMENTSBust 17', 'measurements bust'],
    ['21inL 28', 'in l']
  ])('%s', (text, parted) => expect(words(text).join(' ')).toContain(parted))
  test('in another language too', () => expect(words('50cmLargo 68', 'es').join(' ')).toContain('cm largo'))
  test.each(['5inseam', '12inch', 'denimJacket', '30inside'])('%s is one word, or no name', (text) =>
    expect(words(text).join(' ')).not.toMatch(/ in | denim /)
  )
  test('each part has its place', () => {
    const text = '20inWaist 17'
    for (const { text: word, start, end } of readText(text, 'en').tokens) expect(text.slice(start, end).toLowerCase()).toBe(word)
  })
})

describe('names one slip of the pen away', () => {
  test.each([
    ['Shouder 17"', 'shoulder'],
    ['24" sleeeve', 'sleeve'],
    ['Waits: 14', 'waist'],
    ['shoullder to shoulder 17', 'shoulder']
  ])('%s', (text, name) => expect(words(text).some((word) => word.startsWith(name))).toBe(true))
  // some are compared with every word, then an index is made: what is found hangs on neither
  test('however many unknown words were asked for before, a word is meant the same', () => {
    const names = [
      'shouder',
      'waits',
      'chesst',
      'slevee',
      'inseem',
      'undearrm',
      'lenghth',
      'beast',
      'thihg',
      'colllar',
      'shoudler',
      'witdh',
      'armhloe'
    ]
    const ask = () => names.map((name) => words(`${name} 20"`)[0])
    const first = ask()
    expect(first.filter((word, at) => word !== names[at]).length).toBeGreaterThan(7)
    for (let n = 0; n < 120; n++) words(`qu${String.fromCharCode(97 + (n % 26))}xo${String.fromCharCode(97 + Math.floor(n / 26))}zz 20"`)
    expect(ask()).toEqual(first)
  })
  test.each([
    ['17 shouder', '17 shoulder'],
    ['17" shouder', '17 " shoulder'],
    ['17 in shouder', '17 in shoulder'],
    ['shouder: 17', 'shoulder : 17'],
    ['shouder := 17', 'shoulder : = 17'],
    ['shouder ½', 'shoulder ½'],
    ['shouder seam 17', 'shoulder seam 17'],
    // farther off, behind another sign, before no name
    ['shouder :=~ 17', 'shouder : = ~ 17'],
    ['shouder, 17', 'shouder , 17'],
    ['shouder lovely 17', 'shouder lovely 17'],
    ['lovely " shouder', 'lovely " shouder'],
    ['17 lovely shouder', '17 lovely shouder'],
    ['shouder zip 17', 'shouder zip 17']
  ])('%s: %s', (text, expected) => expect(words(text).join(' ')).toBe(expected))
  test('only beside a figure', () => expect(words('he waits for the post')).toContain('waits'))
  test('short words are near to too much', () => expect(words('hop 20"')).toContain('hop'))
  test('not where another word of the trade is as near', () => expect(words('beast 20"')).toContain('beast'))
  test.each([
    ['waits', 'waist', 1],
    ['chesst', 'chest', 1],
    ['chist', 'chest', 2],
    ['shouder', 'shoulder', 2],
    ['chest', 'chest', null],
    ['chiist', 'chest', null],
    // doubled behind or before, at the ends, and one letter at the most
    ['waistt', 'waist', 1],
    ['wwaist', 'waist', 1],
    ['colar', 'collar', 1],
    ['waistx', 'waist', 2],
    ['xwaist', 'waist', 2],
    ['aist', 'waist', 2],
    ['awist', 'waist', 1],
    ['waits', 'waist', 1],
    ['wiast', 'waist', 1],
    ['tsiaw', 'waist', null],
    ['waistxx', 'waist', null],
    ['wst', 'waist', null],
    ['xaisx', 'waist', null],
    ['tiger', 'waist', null]
  ])('%s to %s is a slip of %s', (a, b, slip) => expect(slipOf(a, b)).toBe(slip))
})
