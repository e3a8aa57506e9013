/** Flat or around, by evidence. */
import { describe, expect, test } from 'vitest'
import { type GirthEvidence, judgeBasis, plausibility } from '../../../../core/reading/measures/basis.ts'
import { readListing } from '../../../../core/reading/read-listing.ts'
import { garmentFrom } from '../../../../core/reading/request/garment-from.ts'

const girth = (point: GirthEvidence['point'], mm: number, ...evidence: GirthEvidence['evidence']): GirthEvidence => ({
  point,
  mm,
  evidence
})
const [FLAT, AROUND] = ['flat', 'around']

describe('one girth alone', () => {
  test('its words decide, and it is stated', () => {
    expect(judgeBasis([girth('waist', 400, 'word-flat')], 'jeans')).toEqual([{ basis: FLAT, from: 'stated', close: false }])
    expect(judgeBasis([girth('waist', 800, 'word-around')], 'jeans')).toEqual([{ basis: AROUND, from: 'stated', close: false }])
  })
  test('without words what can be worn decides, and it is judged', () => {
    expect(judgeBasis([girth('waist', 400)], 'jeans')).toMatchObject([{ basis: FLAT, from: 'judged', close: false }])
    expect(judgeBasis([girth('waist', 800)], 'jeans')).toMatchObject([{ basis: AROUND, from: 'judged', close: false }])
  })
  test('its double beside it weighs more than a word', () => {
    expect(judgeBasis([girth('chest', 800, 'doubled', 'word-around')], 'coat')[0]?.basis).toBe(FLAT)
    expect(judgeBasis([girth('chest', 800, 'word-around')], 'coat')[0]?.basis).toBe(AROUND)
  })
  test('a heading weighs less than a word beside the figure', () => {
    expect(judgeBasis([girth('chest', 750, 'list-flat', 'word-around')], 'coat')[0]?.basis).toBe(AROUND)
    expect(judgeBasis([girth('chest', 750, 'list-around', 'word-flat')], 'coat')[0]?.basis).toBe(FLAT)
  })
  test('what nobody could wear is not believed, and stays close', () => {
    expect(judgeBasis([girth('chest', 500, 'list-around')], 'coat')).toEqual([{ basis: FLAT, from: 'judged', close: true }])
  })
  test('half-way between both it is close', () => {
    // a chest that is as likely whole as half: the sums meet between 1070 and half of it
    const even = [...Array(60)].map((_, n) => 600 + 5 * n).find((mm) => plausibility(girth('chest', mm), 'jacket') < 0.4) ?? 0
    expect(judgeBasis([girth('chest', even)], 'jacket')[0]).toMatchObject({ from: 'judged', close: true })
  })
})

test('small girths of a leg are nearly always laid flat', () => {
  // so much as this lean is the only thing that parts a cuff from a waist of the same likelihood
  expect(plausibility(girth('legOpening', 190), 'jeans')).toBeGreaterThan(0)
  expect(judgeBasis([girth('legOpening', 270)], 'trousers')[0]?.basis).toBe(FLAT)
})

describe('girths of one garment, judged together', () => {
  const doubtful = girth('hip', 620)
  test('a settled girth bears on another by the proportion of bodies', () => {
    const [, hip] = judgeBasis([girth('waist', 480, 'word-flat'), doubtful], 'skirt')
    expect(hip?.basis).toBe(FLAT)
    const [, small] = judgeBasis([girth('waist', 500, 'word-around'), doubtful], 'skirt')
    expect(small?.basis).toBe(AROUND)
  })
  test('the others of a list pull a girth that leans nowhere', () => {
    // a sleeve that leans to a whole girth by itself, a little
    const mm = [...Array(100)].map((_, n) => 250 + n).find((one) => plausibility(girth('bicep', one), 'shirt') < -0.6) ?? 0
    const flats = [girth('waist', 450), girth('chest', 500)]
    const [alone] = judgeBasis([girth('bicep', mm)], 'shirt')
    const [inList] = judgeBasis([girth('bicep', mm), ...flats], 'shirt')
    expect([alone?.basis, inList?.basis]).toEqual([AROUND, FLAT])
  })
})

test('a close call stays in the garment as a doubt of 40 mm more', () => {
  const listing = { title: 'Wool jacket', text: 'Chest 34"' }
  const reading = readListing(listing)
  const about = reading.measures[0]
  if (about === undefined) throw new Error('the chest was not read')
  const sd = (issues: typeof reading.issues) => garmentFrom({ ...reading, issues }, []).measures[0]?.sdMm ?? 0
  const doubt = {
    code: 'reading.basis-doubt',
    stated: about.stated,
    readings: [{ point: about.point, mm: about.mm }],
    values: {},
    text: ''
  }
  expect(Math.sqrt(sd([doubt]) ** 2 - sd([]) ** 2)).toBeCloseTo(40, 9)
  // of another figure it is none
  expect(sd([{ ...doubt, stated: { ...about.stated, start: about.stated.start + 1 } }])).toBe(sd([]))
})

describe('what settles a list', () => {
  test('one claim is not counted twice', () => {
    const [bust] = judgeBasis([girth('chest', 889, 'word-flat', 'list-flat'), girth('hip', 990, 'list-flat')], 'dress')
    expect(bust?.basis).toBe(AROUND)
  })
  test('a list that cannot lie flat is taken around as a whole', () => {
    const sweep = girth('sweep', 1575, 'list-flat')
    expect(judgeBasis([sweep], 'skirt')[0]?.basis).toBe(FLAT)
    expect(judgeBasis([girth('waist', 711, 'list-flat'), sweep], 'skirt').map(({ basis }) => basis)).toEqual([AROUND, AROUND])
  })
  test('advice as large as the figure, or double', () => {
    expect(judgeBasis([girth('waist', 700, 'word-flat', 'advised-around')], 'dress')[0]?.basis).toBe(AROUND)
    expect(judgeBasis([girth('waist', 700, 'advised-flat')], 'dress')[0]?.basis).toBe(FLAT)
  })
  test('a small girth goes with a circumference that is told', () => {
    const cuff = girth('cuff', 165)
    expect(judgeBasis([cuff], 'jumper')[0]?.basis).toBe(FLAT)
    const list = [girth('chest', 838, 'word-around'), girth('waist', 635), girth('bicep', 305), cuff]
    expect(judgeBasis(list, 'jumper')[3]?.basis).toBe(AROUND)
  })
  test('what gives is worn between what it lies at and what it goes to', () => {
    const chest = girth('chest', 1016, 'word-around')
    const waist = girth('waist', 560)
    expect(judgeBasis([chest, waist], 'shirt')[1]?.basis).toBe(FLAT)
    expect(judgeBasis([chest, { ...waist, stretchedMm: 914 }], 'shirt')[1]?.basis).toBe(AROUND)
  })
})
