/** Figures that are sizes on a label. */
import { describe, expect, test } from 'vitest'
import { readListing } from '../../../../core/reading/read-listing.ts'
import { sizeLabelsOf } from '../../../../core/reading/sizes/size-labels.ts'
import { figureAt, textOf } from '../given.ts'

interface Told {
  legs?: boolean
  title?: boolean
  language?: string
}
const sizes = (words: string, figures: string[], { legs = false, title = false, language = 'en' }: Told = {}) => {
  const text = textOf(words, language)
  const quantities = figures.map((one) => figureAt(text, one))
  const { labels, taken, heads, pairs } = sizeLabelsOf({ ...text, quantities, legs, title, language })
  return {
    labels,
    taken: [...taken].map(({ value }) => value),
    heads: heads.map(({ label }) => label),
    pairs: pairs.map(([a, b]) => [a.value, b.value])
  }
}

describe('a size with its word behind it, or in its language’s own letters', () => {
  test.each([
    ['ja', 'Mサイズ', [], ['M']],
    ['ja', '38サイズ 着丈98', ['38', '98'], ['38']],
    ['ja', '9号', [], ['9']],
    ['ko', '66 사이즈', ['66'], ['66']],
    ['ko', '총장 70 사이즈 L', ['70'], ['L']],
    ['pt', 'Tamanho GG', [], ['GG']],
    ['pt', 'Tam M', [], ['M']]
  ])('%s: %s', (language, words, figures, labels) => {
    expect(sizes(words, figures, { language }).labels).toEqual(labels)
  })
})

describe('a waist and a leg', () => {
  test.each([
    ['W32 L34', ['32', '34'], ['W32 L34']],
    ['32W 34L', ['32', '34'], ['W32 L34']],
    ['32x34', ['32', '34'], ['W32 L34']],
    ['32/34', ['32', '34'], ['W32 L34']]
  ])('%s on legs is a label', (words, figures, labels) => {
    expect(sizes(words, figures, { legs: true })).toMatchObject({ labels, taken: [32, 34], pairs: [] })
  })
  test('on a dress 36/38 is between two sizes, and no pair', () => {
    expect(sizes('36/38', ['36', '38'])).toMatchObject({ labels: [], taken: [] })
  })
  test('after a word of measuring the pair is measured: it is no label', () => {
    expect(sizes('measures 33 x 30.5', ['33', '30.5'], { legs: true })).toMatchObject({ labels: [], taken: [], pairs: [[33, 30.5]] })
  })
  test('more letters behind make it a list of measures', () => {
    expect(sizes('W 32 L 34 H 40', ['32', '34', '40'], { legs: true })).toMatchObject({ labels: [], taken: [] })
  })
  test('three in a row are a parcel', () => {
    expect(sizes('30 x 30 x 30', ['30'], { legs: true })).toMatchObject({ labels: [] })
  })
})

describe('sizes of other kinds', () => {
  test.each([
    ['UK 12', ['12'], 'UK 12', 12],
    ['12 UK', ['12'], 'UK 12', 12],
    ['US 8', ['8'], 'US 8', 8],
    ['42R', ['42'], '42R', 42],
    ['age 8', ['8'], 'age 8', 8],
    ['size 14', ['14'], '14', 14]
  ])('%s', (words, figures, label, taken) => {
    expect(sizes(words, figures)).toMatchObject({ labels: [label], taken: [taken] })
  })
  test('a region in small letters that is a word too tells none', () => {
    expect(sizes('it 12', ['12'])).toMatchObject({ labels: [], taken: [] })
  })
  test('with a unit it is a measure: size 30" waist', () => {
    expect(sizes('size 30" waist', ['30"'])).toMatchObject({ labels: [], taken: [] })
  })
  test('a tag tells a size even with its unit', () => {
    expect(sizes('tagged 32"', ['32"'])).toMatchObject({ taken: [32] })
  })
  test('no size is more than 64', () => {
    expect(sizes('size 90', ['90'])).toMatchObject({ labels: [], taken: [] })
  })
})

describe('letters', () => {
  test('in a title a capital at an end is a size, in a text it is none', () => {
    expect(sizes('Wool coat M', [], { title: true }).labels).toEqual(['M'])
    expect(sizes('Wool coat M', []).labels).toEqual([])
    expect(sizes('Wool coat m', [], { title: true }).labels).toEqual([])
  })
  test('“(also have medium)” is none of this garment', () => {
    expect(sizes('Coat size S (also have size M)', [], { title: true }).labels).toEqual(['S'])
  })
  test('at the start of a line, with a colon and a name behind it, it heads what follows', () => {
    expect(sizes('M: chest 40\nL: chest 42', ['40', '42'])).toMatchObject({ labels: [], heads: ['M', 'L'] })
    expect(sizes('chest M: 40', ['40']).heads).toEqual([])
  })
  test('“size 10” at the start of a line is a label and heads it', () => {
    expect(sizes('Size 10 chest 36\nSize 12 chest 38', ['10', '36', '12', '38'])).toMatchObject({
      labels: ['10', '12'],
      taken: [10, 12],
      heads: ['10', '12']
    })
  })
})

describe('a pair beside the pair of the label', () => {
  const measured = (text: string) =>
    readListing({ title: 'Mens jeans', text }).measures.map(({ point, stated }) => `${point} ${stated.text}`)
  test.each([
    'Tagged 34 x 32, actual measurements 33 x 31',
    'Label says 34x32 (33 x 31 actual)',
    'tag says 34x32 but they have shrunk, I get 33 x 31',
    'W34 L32 on the tag, measured W33 L31'
  ])('%s', (text) => expect(measured(text)).toEqual(['waist 33', 'inseam 31']))
  test('with a half it is no size', () => expect(measured('33 x 31.5')).toEqual(['waist 33', 'inseam 31.5']))
  test('what they fit like is none', () => expect(measured('34x32 fits like 33x31')).toEqual([]))
  test('of a top 22W x 28L is a width and a length', () => {
    const { measures, sizeLabels } = readListing({ title: 'Blank tee', text: '22W x 28L' })
    expect(measures.map(({ point }) => point)).toEqual(['chest', 'bodyLength'])
    expect(sizeLabels).toEqual([])
  })
})

/** Its labels, what they take, and what heads a line. */
const rows = (given: [string, string[], string[], string[], Told?][]) =>
  test.each(given)('%j', (words, figures, labels, heads, more = {}) => {
    const found = sizes(words, figures, more)
    expect([found.labels, found.heads]).toEqual([labels, heads])
  })

describe('the region of a size tells which of several it is, before it and behind it', () => {
  rows([
    ['size UK 12', ['12'], ['UK 12'], ['UK 12']],
    ['size 12 UK', ['12'], ['UK 12'], ['UK 12']],
    ['Size 12 UK chest 36\nSize 14 UK chest 38', ['12', '36', '14', '38'], ['UK 12', 'UK 14'], ['UK 12', 'UK 14']],
    // at the start of a line it heads what is measured behind it, and nothing else
    ['UK 12: chest 36\nUK 14: chest 38', ['12', '36', '14', '38'], ['UK 12', 'UK 14'], ['UK 12', 'UK 14']],
    ['42R chest 45\n44R chest 47', ['42', '45', '44', '47'], ['42R', '44R'], ['42R', '44R']],
    ['UK 12 - US 8 - EU 40', ['12', '8', '40'], ['UK 12', 'US 8', 'EU 40'], []],
    ['Lovely UK 12 chest 36', ['12', '36'], ['UK 12'], []],
    ['Lovely size 12 UK coat', ['12'], ['UK 12'], []],
    ['size 8 (UK 12)', ['8', '12'], ['8', 'UK 12'], ['8']],
    ['size 12 UK 40', ['12', '40'], ['12', 'UK 40'], ['12']]
  ])
})

describe('the word of a size', () => {
  rows([
    ['size: 12', ['12'], ['12'], ['12']],
    ['size - 12', ['12'], ['12'], ['12']],
    ['size (12)', ['12'], ['12'], ['12']],
    ['size "12"', ['12'], ['12'], ['12']],
    ['size is about 12', ['12'], ['12'], ['12']],
    ['size 64', ['64'], ['64'], ['64']],
    ['size small', [], ['S'], ['S']],
    ['size 2XL', [], ['2XL'], ['2XL']],
    ['size 42R', ['42'], ['42R'], ['42R']],
    // another part of the text, or denied
    ['size, 12', ['12'], [], []],
    ['size / 12', ['12'], [], []],
    ['size\n12', ['12'], [], []],
    ['size not 12', ['12'], [], []],
    ['size 65', ['65'], [], []],
    // the waist of a label, and its leg
    ['waist size 34', ['34'], ['W34'], ['W34'], { legs: true }],
    ['waist size 34, leg 32', ['34', '32'], ['W34 L32'], ['W34 L32'], { legs: true }],
    ['size 34 waist, 32 length', ['34', '32'], ['W34 L32'], ['W34 L32'], { legs: true }],
    ['size 34 waist', ['34'], ['34'], ['34'], { legs: true }],
    ['tag says 34" x 32"', ['34"', '32"'], ['W34 L32'], []],
    ['tagged 32" waist', ['32"'], [], []]
  ])
})

describe('a size with no word beside it', () => {
  rows([
    ['W34', ['34'], ['W34'], [], { legs: true }],
    ['W34', ['34'], [], []],
    ['W 34', ['34'], [], [], { legs: true }],
    ['W34"', ['34"'], [], [], { legs: true }],
    ['W70', ['70'], [], [], { legs: true }],
    ['40S jacket', [], ['40S'], []],
    ['EU38', [], ['EU 38'], []],
    ['EU99', [], [], []],
    ['EU M', [], ['EU M'], []],
    ['uk m', [], [], []],
    ['us 8', ['8'], [], []],
    ['UK-12', ['12'], ['UK 12'], []],
    ['UK size 12', ['12'], ['UK 12'], []],
    ['Italian 42', ['42'], ['Italian 42'], []],
    ['36 EU', ['36'], ['EU 36'], []],
    ['UK 12 EU 40', ['12', '40'], ['UK 12', 'EU 40'], []],
    ['UK 70', ['70'], [], []],
    ['70 UK', ['70'], [], []],
    ['UK 12"', ['12"'], [], []],
    ['12" UK', ['12"'], [], []],
    ['age 8"', ['8"'], [], []]
  ])
})

describe('letters that head a line of measures', () => {
  rows([
    ['M: chest 52', ['52'], [], ['M']],
    ['L - chest 54', ['54'], [], ['L']],
    ['• M: chest 52', ['52'], [], ['M']],
    ['Colour M: chest 52', ['52'], [], []],
    ['M: 52', ['52'], [], []],
    ['M 54', ['54'], [], []],
    ['M: chest 52', ['52'], [], [], { title: true }]
  ])
})

describe('letters of a title', () => {
  const title = { title: true }
  rows([
    ['Wool coat M', [], ['M'], [], title],
    ['Wool coat M 52', ['52'], [], [], title],
    ['Wool coat M: 52', ['52'], [], [], title],
    ['Coat XL lovely', [], ['XL'], [], title],
    ['Coat xl lovely', [], [], [], title],
    ['Wool coat, large', [], ['L'], [], title],
    ['Mens medium shirt', [], ['M'], [], title],
    ['Coat medium, lovely', [], ['M'], [], title],
    ['Coat, medium lovely', [], ['M'], [], title],
    ['Wool medium coat', [], [], [], title],
    ['Coat also M', [], [], [], title]
  ])
})

describe('a size in the middle of a line heads what is measured right behind it', () => {
  rows([
    ['coat, size 10 measures bust 36', ['10', '36'], ['10'], ['10']],
    ['coat, size 10: bust 36', ['10', '36'], ['10'], ['10']],
    ['coat, size 10 lovely bust 36', ['10', '36'], ['10'], []],
    ['coat size 10 measures bust 36', ['10', '36'], ['10'], []],
    ['coat, size 10. Bust 36', ['10', '36'], ['10'], []]
  ])
})

describe('taille is a size, and between measures a waist', () => {
  const french = { language: 'fr' }
  rows([
    ['taille 38', ['38'], ['38'], ['38'], french],
    ['taille M', [], ['M'], ['M'], french],
    // so is what is told to be taken flat
    ['taille 46 à plat', ['46'], [], [], french],
    ['Lin. Taille: 46 à plat', ['46'], [], [], french],
    ['coton, taille 46', ['46'], ['46'], [], french],
    ['épaules 41, taille 46', ['41', '46'], [], [], french],
    ['épaules: 41, taille: 46', ['41', '46'], [], [], french],
    ['taille 38, taille 40', ['38', '40'], ['38', '40'], ['38'], french],
    ['3 poches, taille 46', ['3', '46'], ['46'], [], french],
    ['épaules 41 taille 46', ['41', '46'], ['46'], [], french]
  ])
})
