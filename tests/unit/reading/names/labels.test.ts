/** What a figure can be of. */
import { describe, expect, test } from 'vitest'
import { labelsOf } from '../../../../core/reading/names/labels.ts'
import { figureAt, textOf } from '../given.ts'

const names = (words: string, ...figures: string[]) => {
  const text = textOf(words)
  const nth = new Map<string, number>()
  const quantities = figures.map((one) => {
    nth.set(one, (nth.get(one) ?? 0) + 1)
    return figureAt(text, one, { nth: nth.get(one) ?? 1 })
  })
  return labelsOf(text, quantities).map(({ role, points, letter, basis }) =>
    role === 'point' ? `${points.join('+') || letter}${basis ? ` ${basis}` : ''}` : role
  )
}

describe('names that belong together', () => {
  test.each([
    ['bust/waist 36/28', ['chest+waist']],
    ['length (shoulder to hem) 28"', ['bodyLength']],
    ['length from the shoulder 28"', ['bodyLength']],
    // only brackets say where a length begins: behind a colon another name does
    ['length: waist 28"', ['length', 'waist']],
    ['sleeve (from centre back) 34"', ['sleeveFromCentreBack']],
    ['front/back rise 11/15', ['frontRise+backRise']]
  ])('%s', (words, expected) => expect(names(words)).toEqual(expected))
  test('a figure between them keeps them apart', () => {
    expect(names('length 28" shoulder to shoulder 16"', '28"', '16"')).toEqual(['length', 'shoulderWidth'])
  })
  test('an end of a line too', () => expect(names('bust\nwaist 28"', '28"')).toEqual(['chest', 'waist']))
})

describe('names that name nothing', () => {
  test('what is counted in or left out', () => {
    expect(names('collar not included, chest 40"', '40"')).toEqual(['chest'])
    expect(names('rise with waistband 11"', '11"')).toEqual(['rise'])
  })
  test('where a detail is', () => expect(names('zips at the cuffs 5"', '5"')).toEqual(['detail']))
})

describe('names of one letter', () => {
  test('several different ones in a run are names', () => expect(names('W 16" H 20"', '16"', '20"')).toEqual(['w', 'h']))
  test('one alone is none, but for a W or an L with a line to itself', () => {
    expect(names('plan b 30"', '30"')).toEqual([])
    expect(names('W 68cm', '68cm')).toEqual(['w'])
  })
  test('far from each other they are no run', () => {
    const far = `W 16" ${'and so on, '.repeat(6)}H 20"`
    expect(names(far, '16"', '20"')).toEqual([])
  })
})

describe('a back', () => {
  test('alone before its figure it is a name', () => expect(names('sleeve 24", back 25"', '24"', '25"')).toEqual(['sleeveLength', 'back']))
  test('inside a sentence it is none', () => expect(names('a bow at the back 25"', '25"')).not.toContain('back'))
})

describe('where a length ends', () => {
  test.each([
    ['length down to hem 54"', ['length']],
    ['sleeve to cuff 23"', ['sleeveLength']],
    ['shoulder to bottom hem 42"', ['bodyLength']],
    ['back neck to bottom rib 22"', ['bodyLength']],
    ['collar to the longest part of the hem 30"', ['bodyLength']],
    ['armpit to sleeve hem 18"', ['sleeveUnderarm']],
    ['sleeve, seam to frill 25"', ['sleeveLength']]
  ])('%s', (words, expected) => expect(names(words, words.slice(words.lastIndexOf(' ') + 1))).toEqual(expected))
  test('behind a sleeve, from the armpit to the hem is the sleeve', () => {
    expect(names('sleeves from shoulder seam to hem 9", from armpit to hem 5"', '9"', '5"')).toEqual(['sleeveLength', 'sleeveUnderarm'])
  })
  test('without one it is none that is kept', () => expect(names('from armpit to hem 17"', '17"')).toEqual(['detail']))
})

describe('remarks in brackets', () => {
  test.each([
    ['thigh (from the crotch to the outside of the leg) 12"', ['thigh']],
    ['back width at its narrowest (sleeve to sleeve) 17"', ['backWidth flat']],
    ['back shoulder width (armhole to armhole) 14"', ['backWidth flat']]
  ])('%s', (words, expected) => expect(names(words, words.slice(words.lastIndexOf(' ') + 1))).toEqual(expected))
})

describe('letters that head a row', () => {
  test('as many figures as letters', () => {
    expect(names('W / H / R\n16 / 20 / 11', '16', '20', '11')).toEqual(['w', 'h', 'r'])
  })
  test('none where the figures are fewer', () => expect(names('W / H / R\n16 / 20', '16', '20')).toEqual([]))
  test('other signs between a letter and its figure', () => expect(names('w;15 h~20', '15', '20')).toEqual(['w', 'h']))
})
