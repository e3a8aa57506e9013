/** From a reading to a request: corrections, doubts, labels, price; and a later answer beside a first reading. */
import { describe, expect, test } from 'vitest'
import { readListing } from '../../../core/reading/read-listing.ts'
import type { Correction } from '../../../core/reading/reading.ts'
import { garmentFrom, priceFor } from '../../../core/reading/request/garment-from.ts'
import { mergeReadings } from '../../../core/reading/request/merge-readings.ts'
import { labelEvidence } from '../../../core/reading/sizes/label-evidence.ts'

const TEXT = 'Waist 16" flat, inseam 30", thigh 11" flat. £20'
const reading = readListing({ title: 'Wool trousers', text: TEXT })
const mm = (corrections: Correction[], text = TEXT) =>
  Object.fromEntries(
    garmentFrom(readListing({ title: 'Wool trousers', text }), corrections).measures.map((one) => [one.point, Math.round(one.mm * 10) / 10])
  )
const at = (quote: string, text = TEXT) => ({ quote, start: text.indexOf(quote), end: text.indexOf(quote) + quote.length })

describe('garmentFrom', () => {
  test('passes on what was read', () => {
    expect(garmentFrom(reading, [])).toEqual({
      kind: 'trousers',
      measures: [
        { point: 'waist', mm: 16 * 25.4 * 2, sdMm: 12, source: 'seller' },
        { point: 'inseam', mm: 30 * 25.4, sdMm: 8, source: 'seller' },
        { point: 'thigh', mm: 11 * 25.4 * 2, sdMm: 12, source: 'seller' }
      ],
      cloth: { fibres: [{ fibre: 'wool', percent: null }] },
      made: {},
      price: { amount: 20 }
    })
  })
  test('flips flat to around and back', () => {
    expect(mm([{ ...at('16"'), basis: 'around' }]).waist).toBe(406.4)
    expect(
      mm([
        { ...at('16"'), basis: 'around' },
        { ...at('16"'), basis: 'flat' }
      ]).waist
    ).toBe(812.8)
  })
  test('changes the unit from what was stated', () => expect(mm([{ ...at('30"'), unit: 'cm' }]).inseam).toBe(300))
  test('changes the point, and doubles no length', () => {
    const now = mm([{ ...at('30"'), point: 'outseam' }])
    expect(now.outseam).toBe(762)
    expect(now.inseam).toBeUndefined()
    expect(mm([{ ...at('16"'), point: 'outseam' }]).outseam).toBe(406.4)
  })
  test('drops what is no measure', () => expect(mm([{ ...at('11"'), point: null }]).thigh).toBeUndefined())
  test('takes typed millimetres', () => expect(mm([{ ...at('16"'), mm: 800 }]).waist).toBe(800))
  test('adds, over what was read', () => {
    const { measures } = garmentFrom(reading, [
      { add: 'inseam', mm: 755, source: 'own' },
      { add: 'hip', mm: 1010, source: 'seller' }
    ])
    expect(measures.find(({ point }) => point === 'inseam')).toEqual({ point: 'inseam', mm: 755, source: 'own' })
    expect(measures.find(({ point }) => point === 'hip')).toEqual({ point: 'hip', mm: 1010, source: 'seller' })
  })
  test('sets kind and construction right', () => {
    const garment = garmentFrom(reading, [{ kind: 'jeans' }, { made: { lined: true } }, { made: { lined: false } }])
    expect(garment.kind).toBe('jeans')
    expect(garment.made).toEqual({ lined: false })
  })
  test('a kind set right moves the bare length', () => {
    const skirt = readListing({ title: 'Dress', text: 'Length 26"' })
    expect(garmentFrom(skirt, [{ kind: 'skirt' }]).measures[0]?.point).toBe('skirtLength')
  })
  test('survives an edited text: the same words, moved', () => {
    const edited = `Reduced! ${TEXT}`
    expect(mm([{ ...at('16"'), basis: 'around' }], edited).waist).toBe(406.4)
  })
  test('of several with the same words the nearest', () => {
    const text = 'Inseam 30", waist 30" around'
    expect(mm([{ ...at('30"', text), unit: 'cm' }], text)).toEqual({ inseam: 300, waist: 762 })
    const second = { quote: '30"', start: text.lastIndexOf('30"'), end: text.lastIndexOf('30"') + 3 }
    expect(mm([{ ...second, mm: 790 }], text)).toEqual({ inseam: 762, waist: 790 })
  })
  test('a correction whose words are gone changes nothing', () => expect(mm([{ quote: '99"', start: 0, end: 3, mm: 5 }])).toEqual(mm([])))
  test('a figure left aside becomes a measure when it is named', () => {
    const text = 'Waist 16" flat. Side 41"'
    expect(mm([{ ...at('41"', text), point: 'outseam' }], text).outseam).toBe(1041.4)
    expect(mm([{ ...at('41"', text) }], text).outseam).toBeUndefined()
  })
  test('a bare figure needs its unit', () => {
    const coat = readListing({ title: 'Coat', text: 'hem 46' })
    const place = { quote: '46', start: 4, end: 6 }
    expect(garmentFrom(coat, []).measures).toEqual([])
    expect(garmentFrom(coat, [{ ...place, point: 'hem', unit: 'cm', basis: 'flat' }]).measures).toMatchObject([{ point: 'hem', mm: 920 }])
  })
  test('a range widens the standard deviation', () => {
    const skirt = garmentFrom(readListing({ title: 'Skirt', text: 'Waist 28-30" around' }), [])
    expect(skirt.measures[0]?.sdMm).toBeCloseTo(Math.hypot(12, 50.8 / Math.sqrt(12)), 6)
  })
  test('a contradiction widens it, until it is settled', () => {
    const text = 'Inseam 30". Later: inseam 27".'
    const told = readListing({ title: 'Trousers', text })
    expect(garmentFrom(told, []).measures[0]?.sdMm).toBeCloseTo(Math.hypot(8, 76.2 / Math.sqrt(12)), 6)
    expect(garmentFrom(told, [{ ...at('30"', text), mm: 762 }]).measures[0]?.sdMm).toBe(8)
  })
  test('a price in another currency is left out', () => {
    expect(garmentFrom(reading, [], { currency: 'GBP' }).price).toEqual({ amount: 20 })
    expect(garmentFrom(reading, [], { currency: 'EUR' }).price).toBeUndefined()
    expect(priceFor(reading, 'EUR')).toBeNull()
  })
  test('mending and use reach the request', () => {
    const coat = garmentFrom(readListing({ title: 'Hi-vis coat', text: 'Missing button.' }), [])
    expect(coat).toMatchObject({ use: 'protective', condition: [{ job: 'replace-button' }] })
  })
  test('a label fills only what is not told', () => {
    const jeans = garmentFrom(readListing({ title: 'Jeans W32 L34', text: 'Inseam 31"' }), [])
    expect(jeans.measures).toEqual([
      { point: 'inseam', mm: 31 * 25.4, sdMm: 8, source: 'seller' },
      { point: 'waist', mm: 33.5 * 25.4, sdMm: 25, source: 'label' }
    ])
  })
  test('of a suit the figures of the kind', () => {
    const suit = readListing({ title: 'Suit', text: 'Jacket:\nChest 42"\nWaist 38"\n\nTrousers:\nWaist 34"\nInseam 31"' })
    const points = (kind: 'jacket' | 'trousers') => garmentFrom(suit, [{ kind }]).measures.map((one) => [one.point, Math.round(one.mm)])
    expect(points('jacket')).toEqual([
      ['chest', 1067],
      ['waist', 965]
    ])
    expect(points('trousers')).toEqual([
      ['waist', 864],
      ['inseam', 787]
    ])
  })
  test('of several sizes the one for sale; without one, none', () => {
    const dress = readListing({ title: 'Dress', text: 'Size S: bust 84cm waist 66cm\nSize M: bust 88cm waist 70cm' })
    expect(
      garmentFrom(dress, [], { size: 'M' })
        .measures.filter(({ source }) => source === 'seller')
        .map((one) => one.mm)
    ).toEqual([880, 700])
    expect(garmentFrom(dress, []).measures.filter(({ source }) => source === 'seller')).toEqual([])
  })
})

describe('labelEvidence', () => {
  test('waist and leg of trousers', () =>
    expect(labelEvidence('W32 L34', 'jeans')).toEqual([
      { point: 'waist', mm: 33.5 * 25.4, sdMm: 25 },
      { point: 'inseam', mm: 34 * 25.4, sdMm: 20 }
    ]))
  test('EN 13402-3: M is a chest of 94–102 (men) or a bust of 90–98 (women)', () => {
    const [chest] = labelEvidence('M', 'shirt')
    expect(chest?.point).toBe('chest')
    // the ease of shirts (core/wearer/ease.ts): of four one close at 75, two regular at 100, one loose at 180
    expect(chest?.mm).toBe(960 + (75 + 2 * 100 + 180) / 4)
    expect(chest?.sdMm).toBeGreaterThan(60)
  })
  test('US pattern size 12, misses: bust 34 in, and the ease of dresses: close 50, regular 76, loose 120', () => {
    const [chest, ...others] = labelEvidence('US 12', 'dress')
    expect([chest?.point, others]).toEqual(['chest', []])
    expect(chest?.mm).toBeCloseTo(34 * 25.4 + (50 + 2 * 76 + 120) / 4)
  })
  test('a suit size', () => expect(labelEvidence('40R', 'jacket')).toEqual([{ point: 'chest', mm: 44 * 25.4, sdMm: 35 }]))
  test.each([
    ['UK 12', 'dress'],
    ['99', 'jeans'],
    ['', 'shirt'],
    ['M', 'trousers'],
    ['US 3', 'skirt']
  ] as const)('%s on a %s tells nothing', (label, kind) => expect(labelEvidence(label, kind)).toEqual([]))
  test('a wider code is never surer than a seller with a tape', () => {
    for (const code of ['XXS', 'XS', 'S', 'M', 'L', 'XL', 'XXL', '3XL']) expect(labelEvidence(code, 'coat')[0]?.sdMm).toBeGreaterThan(12)
  })
})

describe('mergeReadings', () => {
  const answer = readListing({ text: 'The inseam is 29", waist 33" around', kind: 'trousers' })
  const merged = mergeReadings(reading, answer)
  test('the newer figure wins, the older is kept', () => {
    expect(merged.measures.map((one) => [one.point, one.stated.text])).toEqual([
      ['thigh', '11"'],
      ['inseam', '29"'],
      ['waist', '33"']
    ])
    expect(merged.superseded?.map((one) => one.stated.text)).toEqual(['16"', '30"'])
  })
  test('a second reading near the first counts beside it; one further off than one tape goes sets it right', () => {
    const answered = (text: string, corrections: Correction[] = []) =>
      garmentFrom(mergeReadings(reading, readListing({ text, kind: 'trousers' })), corrections).measures.filter(
        ({ point }) => point === 'waist'
      )
    expect(answered('The waist is 16.5" flat').map((one) => one.mm)).toEqual([16.5 * 50.8, 16 * 50.8])
    expect(answered('The waist is 17" flat').map((one) => one.mm)).toEqual([17 * 50.8])
    expect(answered('The hip is 20" flat').map((one) => one.mm)).toEqual([16 * 50.8])
    // what the person sets is final
    const text = 'The waist is 16.5" flat'
    expect(answered(text, [{ ...at('16.5"', text), mm: 850 }]).map((one) => one.mm)).toEqual([850])
    expect(answered(text, [{ add: 'waist', mm: 860, source: 'own' }]).map((one) => one.mm)).toEqual([860])
  })
  test('a second reading of another garment or size says nothing of this one', () => {
    const suit = readListing({ title: 'Suit', text: 'Jacket: chest 21" flat, waist 19" flat. Trousers: waist 17" flat.' })
    const later = readListing({ text: 'The waist is 17.25" flat', kind: 'trousers' })
    const waists = garmentFrom(mergeReadings(suit, later), [{ kind: 'jacket' }]).measures.filter(({ point }) => point === 'waist')
    expect(waists.map(({ mm: one }) => Math.round(one))).not.toContain(Math.round(17 * 50.8))
  })
  test('an answer settles the doubt about its point', () => {
    const doubtful = readListing({ title: 'Trousers', text: 'Inseam 30". Later: inseam 27".' })
    expect(doubtful.issues.map(({ code }) => code)).toEqual(['reading.contradiction'])
    expect(mergeReadings(doubtful, answer).issues).toEqual([])
  })
  test('what only one tells is kept', () => {
    expect(merged.garment.kind).toBe('trousers')
    expect(merged.cloth.fibres).toEqual([{ fibre: 'wool', percent: null }])
    expect(merged.price).toEqual({ amount: 20, currency: 'GBP' })
  })
})

test('the size for sale, as chosen', () => {
  const reading = readListing({ title: 'Skirt', text: 'Size S: waist 68 cm, hips 92 cm\nSize M: waist 74 cm, hips 98 cm' })
  expect(garmentFrom(reading, []).measures.filter(({ source }) => source === 'seller')).toEqual([])
  const waistOf = (size: string) => garmentFrom(reading, [{ size: 'S' }, { size }]).measures.find(({ point }) => point === 'waist')?.mm
  expect([waistOf('S'), waistOf('M')]).toEqual([680, 740])
})

test('a size label typed by hand makes likely what is not told, and stands for those that were read; empty, for none', () => {
  const pair = readListing({ title: 'Trousers, W34 L32', text: 'hip 42" around' })
  const waistOf = (corrections: Correction[]) => garmentFrom(pair, corrections).measures.find(({ point }) => point === 'waist')
  const read = waistOf([])
  const typed = waistOf([{ label: 'W34 L32' }, { label: 'W30 L32' }])
  expect(read).toMatchObject({ source: 'label' })
  expect(typed).toMatchObject({ source: 'label' })
  expect((read?.mm ?? 0) - (typed?.mm ?? 0)).toBeCloseTo(4 * 25.4, 6)
  expect(waistOf([{ label: '' }])).toBeUndefined()
  // never over what was measured
  expect(garmentFrom(reading, [{ label: 'W40 L30' }]).measures.find(({ point }) => point === 'waist')?.source).toBe('seller')
})

describe('whose sizes', () => {
  const mens = readListing({ title: 'Mens wool trousers', text: TEXT })
  test('as read, and as the person says', () => {
    expect(garmentFrom(mens, []).whose).toBe('men')
    expect(garmentFrom(mens, [{ whose: 'women' }]).whose).toBe('women')
    expect(garmentFrom(mens, [{ whose: null }])).not.toHaveProperty('whose')
    expect(garmentFrom(reading, [{ whose: 'men' }]).whose).toBe('men')
  })
  test('the first text that tells it counts', () => {
    const answer = readListing({ text: 'It is a ladies skirt.', kind: 'skirt' })
    expect(mergeReadings(reading, answer).whose).toBe('women')
    expect(mergeReadings(mens, answer).whose).toBe('men')
  })
})

describe('a chart of bodies', () => {
  const text = 'Size guide:\nS: hips 91-96 cm\nM: hips 97-102 cm\n\nWaist 38 cm flat.'
  const hipOf = (title: string, corrections: Correction[] = [], words = text) =>
    garmentFrom(readListing({ title, text: words }), corrections).measures.find(({ point }) => point === 'hip')
  test('is evidence of the size for sale alone', () => {
    expect(hipOf('Skirt size M')).toMatchObject({ mm: 1055, source: 'label' })
    expect(hipOf('Skirt')).toBeUndefined()
    expect(hipOf('Skirt', [{ label: 'S' }])).toMatchObject({ mm: 995, source: 'label' })
  })
  test('goes before what such labels usually mean, and never over what was measured', () => {
    expect(hipOf('Skirt size US 12', [], 'To fit hips 97-103 cm.')).toMatchObject({ mm: 1060 })
    expect(hipOf('Skirt', [], 'To fit hips 97-103 cm. Hips 52 cm flat.')).toMatchObject({ mm: 1040, source: 'seller' })
  })
})

describe('what is set right, and what is left as it was', () => {
  /** Each measure, whole millimetres, and where it is from. */
  const got = (title: string, text: string, corrections: Correction[] = []) =>
    garmentFrom(readListing({ title, text }), corrections).measures.map(
      (one) => `${one.point} ${Math.round(one.mm)}${one.source === 'seller' ? '' : ` ${one.source}`}`
    )
  const standing = (text: string, quote: string) => ({ quote, start: text.indexOf(quote), end: text.indexOf(quote) + quote.length })
  test('the words as they were typed, whatever quotes, letters and spaces', () => {
    expect(got('Trousers', 'Waist 16” flat', [{ quote: '16"', start: 6, end: 9, mm: 900 }])).toEqual(['waist 900'])
    expect(got('Trousers', 'Waist 40 CM flat', [{ quote: ' 40  cm', start: 6, end: 13, mm: 900 }])).toEqual(['waist 900'])
    expect(got('Trousers', 'Waist 40 cm flat', [{ quote: '41 cm', start: 6, end: 11, mm: 900 }])).toEqual(['waist 800'])
  })
  test('one figure of two names: off for both, a new name for one of them', () => {
    const text = 'Bust and waist 34" around'
    const figure = standing(text, '34"')
    expect(got('Dress', text)).toEqual(['chest 864', 'waist 864'])
    expect(got('Dress', text, [{ ...figure, point: null }])).toEqual([])
    expect(got('Dress', text, [{ ...figure, point: 'hip' }])).toEqual(['hip 864', 'waist 864'])
    expect(got('Dress', text, [{ ...figure, point: 'waist', basis: 'flat' }])).toEqual(['chest 864', 'waist 1727'])
    expect(got('Dress', text, [{ ...figure, basis: 'flat' }])).toEqual(['chest 1727', 'waist 1727'])
  })
  test('a girth taken for a length and back is doubled once at the most', () => {
    const text = 'Waist 16" flat, inseam 30"'
    expect(got('Trousers', text, [{ ...standing(text, '30"'), point: 'hip' }])).toEqual(['waist 813', 'hip 762'])
    expect(got('Trousers', text, [{ ...standing(text, '16"'), point: 'hip' }])).toEqual(['hip 813', 'inseam 762'])
    expect(got('Trousers', text, [{ ...standing(text, '16"'), unit: 'cm' }])).toEqual(['waist 320', 'inseam 762'])
    expect(got('Trousers', text, [{ ...standing(text, '16"'), unit: 'cm', basis: 'around' }])).toEqual(['waist 160', 'inseam 762'])
  })
  test('what is typed stands over what is read, and the later over the earlier', () => {
    const text = 'Waist 16" flat'
    const figure = standing(text, '16"')
    const typed: Correction[] = [
      { add: 'waist', mm: 900, source: 'own' },
      { ...figure, basis: 'around' }
    ]
    expect(got('Trousers', text, typed)).toEqual(['waist 900 own'])
    expect(
      got('Trousers', text, [
        { add: 'hip', mm: 1000, source: 'own' },
        { add: 'hip', mm: 1010, source: 'seller' }
      ])
    ).toEqual(['waist 813', 'hip 1010'])
  })
  test('a figure of somebody’s body that is the garment’s after all: whole or half by what can be, in its own unit', () => {
    const whole = 'Model is 34" bust.'
    expect(got('Dress', whole)).toEqual([])
    expect(got('Dress', whole, [{ ...standing(whole, '34"'), point: 'chest' }])).toEqual(['chest 864'])
    expect(got('Dress', whole, [{ ...standing(whole, '34"'), point: 'chest', basis: 'flat' }])).toEqual(['chest 1727'])
    expect(got('Dress', whole, [{ ...standing(whole, '34"'), point: 'chest', basis: 'flat', mm: 880 }])).toEqual(['chest 880'])
    expect(got('Dress', whole, [{ ...standing(whole, '34"'), point: 'bodyLength' }])).toEqual(['bodyLength 864'])
    expect(got('Dress', whole, [{ ...standing(whole, '34"'), point: 'bodyLength', unit: 'cm' }])).toEqual(['bodyLength 340'])
    const half = 'Model is 17" bust.'
    expect(got('Dress', half, [{ ...standing(half, '17"'), point: 'chest' }])).toEqual(['chest 864'])
  })
})

describe('how sure a figure is', () => {
  const sdOf = (text: string, corrections: Correction[] = []) =>
    garmentFrom(readListing({ title: 'Skirt', text }), corrections).measures[0]?.sdMm
  test('flat or around is a close call: less, until the person says which', () => {
    expect(sdOf('Waist 52 cm')).toBeCloseTo(Math.hypot(12, 40), 6)
    expect(sdOf('Waist 52 cm', [{ quote: '52 cm', start: 6, end: 11, basis: 'flat' }])).toBe(12)
    expect(sdOf('Waist 56 cm')).toBe(12)
  })
  test('two units that disagree: less by how far apart they are', () => {
    expect(sdOf('Waist 28" (80 cm) around')).toBeCloseTo(Math.hypot(12, (800 - 711.2) / Math.sqrt(12)), 6)
    expect(sdOf('Waist 28" (71 cm) around')).toBe(12)
  })
  test('a doubt about another point is no doubt about this one', () => {
    expect(garmentFrom(readListing({ title: 'Skirt', text: 'Waist 52 cm, length 60 cm' }), []).measures.map(({ sdMm }) => sdMm)[1]).toBe(8)
  })
})

describe('cut, make and cloth as they are set', () => {
  const made = (title: string, corrections: Correction[] = []) => {
    const {
      cut,
      made: make,
      cloth
    } = garmentFrom(readListing({ title, text: 'Waist 14" flat, 95% cotton 5% elastane, unworn' }), corrections)
    return { cut, make, structure: cloth?.structure, fibres: cloth?.fibres?.length }
  }
  test('a silhouette that is set takes the place of the shape that its words told', () => {
    expect(made('A-line skirt')).toMatchObject({ cut: { silhouette: 'a-line' }, make: { skirtShape: 'flared' } })
    expect(made('A-line skirt', [{ cut: { silhouette: 'pencil' } }])).toMatchObject({ cut: { silhouette: 'pencil' }, make: {} })
    expect(made('A-line skirt', [{ cut: { silhouette: 'pencil' } }]).make).not.toHaveProperty('skirtShape')
  })
  test('a sleeve that is set leaves the skirt as it was', () => {
    const dress = made('Short sleeve A-line dress', [{ cut: { sleeve: 'long' } }])
    expect(dress.cut).toMatchObject({ sleeve: 'long', silhouette: 'a-line' })
    expect(dress.make).toEqual({ skirtShape: 'flared' })
  })
  test('no cut and no cloth told: none is said', () => {
    const plain = garmentFrom(readListing({ title: 'Skirt', text: 'Waist 14" flat' }), [])
    expect(plain).toEqual({ kind: 'skirt', measures: plain.measures, cloth: {}, made: {} })
  })
  test('of the cloth only what is set changes', () => {
    expect(made('Skirt', [{ cloth: { structure: 'knit' } }])).toMatchObject({ structure: 'knit', fibres: 2 })
    expect(made('Skirt').structure).toBeUndefined()
  })
})

test('a price with no currency told is taken in the person’s own', () => {
  expect(priceFor({ price: { amount: 20, currency: '' } }, 'EUR')).toBe(20)
  expect(priceFor({ price: { amount: 20, currency: 'GBP' } }, '')).toBe(20)
  expect(priceFor({ price: { amount: 20, currency: 'GBP' } }, undefined)).toBe(20)
  expect(priceFor({ price: { amount: 20, currency: 'GBP' } }, 'GBP')).toBe(20)
  expect(priceFor({ price: { amount: 20, currency: 'GBP' } }, 'EUR')).toBeNull()
  expect(priceFor({ price: null }, 'EUR')).toBeNull()
})
