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

/** Figures at the end, each a number with an inch mark. */
const named = (words: string) => names(words, ...(words.match(/\d+"/g) ?? []))
const rows = (given: [string, string[]][]) => test.each(given)('%s', (words, expected) => expect(named(words)).toEqual(expected))

describe('where a length starts, in brackets behind it', () => {
  rows([
    ['length [waist side] 28"', ['length']],
    // from the waist down it is that of a skirt
    ['length (waist down) 28"', ['skirtLength']],
    // seven words inside it at the most
    ['length [of the of the of the of waist] 28"', ['length']],
    ['length [of the of the of the of the waist] 28"', ['length', 'waist']],
    ['sleeve (inseam side) 18"', ['sleeveLength']],
    // the bracket has closed, or never opened
    ['length (new) waist 28"', ['length', 'waist']],
    ['length [new] waist 28"', ['length', 'waist']],
    ['length - waist 28"', ['length', 'waist']],
    // of a girth it is another name
    ['hips [waist side] 28"', ['hip', 'waist']]
  ])
})

describe('two names and what stands between them', () => {
  rows([
    // several of one figure
    ['bust/hips 36"', ['chest+hip']],
    ['bust & hips 36"', ['chest+hip']],
    ['bust + hips 36"', ['chest+hip']],
    ['bust and hips 36"', ['chest+hip']],
    // other marks and words keep them apart
    ['bust, hips 36"', ['chest', 'hip']],
    ['bust; hips 36"', ['chest', 'hip']],
    ['bust hips 36"', ['chest', 'hip']],
    ['bust. Hips 36"', ['chest', 'hip']],
    ['bust wobble hips 36"', ['chest', 'hip']],
    // the same name twice is one
    ['bust (bust) 36"', ['chest']],
    ['bust/bust 36"', ['chest']],
    // a name that says little gives way
    ['width - hem 20"', ['bottomEdge']],
    ['width hem 20"', ['bottomEdge']],
    // two that are clear both are two
    ['shoulder/chest 18"', ['shoulderWidth+chest']],
    // more names in a row than six are no joint label
    ['bust/waist/hips/thigh/knee/hem 36"', ['chest+waist+hip+thigh+knee+bottomEdge']],
    ['bust/waist/hips/thigh/knee/hem/bicep 36"', ['chest+waist+hip+thigh+knee+bottomEdge', 'bicep']]
  ])
})

describe('a name that has its figure before it begins no joint name', () => {
  rows([
    ['23" long and the shoulders 17"', ['length', 'shoulderWidth']],
    ['waist and hips 17"', ['waist+hip']],
    ['27" at the waist and hips 17"', ['waist', 'hip']],
    ['27" waist/hips', ['waist+hip']],
    // so many small words are stepped over, and no other
    ['27" wobble waist and hips 17"', ['waist+hip']]
  ])
})

describe('names of sleeves and backs', () => {
  rows([
    ['sleeve outside 25" inside 19"', ['sleeveLength', 'inseam']],
    ['back shoulder width (armhole to armhole) 14"', ['backWidth flat']],
    ['hem of each leg 9"', ['bottomEdge']],
    // said of a name that is no edge of a leg, it is a name of its own
    ['waist of each leg 9"', ['waist', 'inseam']]
  ])
})

describe('what is counted in, left out or denied is no name', () => {
  rows([
    ['including waistband 11"', []],
    ['including the waistband 11"', []],
    ['without cuffs 11"', []],
    ['no cuffs 11"', []],
    ['waistband 11"', ['waist']],
    // another sentence
    ['Filling none. Shoulder 46"', ['shoulderWidth']],
    // a strap behind an article is the thing
    ['the strap 12"', []],
    ['strap 12"', ['strap']]
  ])
})

describe('where something is measured from or to', () => {
  rows([
    ['30" from the shoulder', []],
    ['30" at the shoulder', ['shoulderWidth']],
    ['30" from the very shoulder', ['shoulderWidth']],
    // a colon behind it makes it the name of a length
    ['from the shoulder: 30"', ['bodyLength']]
  ])
})

describe('a remark in brackets only says how', () => {
  rows([
    ['chest (button to button) 42"', ['chest']],
    // with a figure of its own it is a name
    ['chest 42" (hips 40")', ['chest', 'hip']],
    ['chest (hips 40") 42"', ['chest', 'hip']],
    // three words before the bracket at the most
    ['back width at its narrowest (sleeve to sleeve) 17"', ['backWidth flat']],
    ['thigh (from the crotch to the outside of the leg): 12"', ['thigh']]
  ])
})
