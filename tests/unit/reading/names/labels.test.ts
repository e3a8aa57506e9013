/** What a figure can be of. */
import { describe, expect, test } from 'vitest'
import { labelsOf } from '../../../../core/reading/names/labels.ts'
import { figureAt, namesIn, textOf } from '../given.ts'

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
    ['sleeve (inseam side) 18"', ['sleeveUnderarm']],
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

describe('each name with the words it stands in', () => {
  test.each([
    // where a length begins
    ['length from bib top 30"', ['length: length from bib']],
    ['length bib top 30"', ['length: length', 'detail: bib']],
    ['chest from bib top 30"', ['chest: chest', 'detail: bib']],
    ['length from the shoulder seam 28"', ['bodyLength: length from the shoulder seam']],
    ['length from the waist 28"', ['skirtLength: length from the waist']],
    ['length (from neck) 28"', ['bodyLength: length (from neck']],
    ['sleeve from neck 33"', ['sleeveFromCentreBack: sleeve from neck']],
    ['sleeve from the shoulder 24"', ['sleeveLength: sleeve from the shoulder']],
    ['width from armpit to armpit 20"', ['chest flat: width from armpit to armpit']],
    ['28" long from the shoulder', ['bodyLength: long from the shoulder']],
    ['28" long and 20" wide', ['length: long', 'width: wide']],
    ['length and width 20"', ['length+width: length and width']],
    // the inside and the outside of a sleeve
    ['sleeve inside seam 19"', ['sleeveUnderarm: sleeve inside']],
    ['sleeve outside 25"', ['sleeveLength: sleeve outside']],
    ['sleeve outseam 25"', ['sleeveLength: sleeve outseam']],
    ['waist inside 30"', ['waist: waist', 'inseam: inside']],
    // what is counted in, left out or denied
    ['including belt 28"', []],
    ['with belt 28", waist 30"', ['detail: belt', 'waist: waist']],
    ['no lining, chest 40"', ['chest: chest']],
    ['cuffs not included, 9"', []],
    // brackets that only say how
    ['chest (side to side) 40"', ['chest: chest']],
    ['chest (pit to pit) 20"', ['chest flat: chest (pit to pit']],
    ['chest at the widest (armpit to armpit) 20"', ['chest flat: chest at the widest (armpit to armpit']],
    ['waist (unstretched, hips 40") 30"', ['waist: waist', 'hip: hips']],
    ['thigh (hip side) 12"', ['thigh: thigh']],
    ['thigh (hip side): 12"', ['thigh: thigh']],
    ['thigh (hip side) - 12"', ['thigh: thigh']],
    // the figure stands on the next line, or elsewhere: the name in the brackets may be its own
    ['thigh (hip side)\n12"', ['thigh: thigh', 'hip: hip']],
    ['thigh (hip side) about 12"', ['thigh: thigh', 'hip: hip']],
    ['front/back rise from crotch 11"', ['frontRise+backRise: front/back rise']]
  ])('%j', (words, expected) => expect(namesIn(words)).toEqual(expected))
})
