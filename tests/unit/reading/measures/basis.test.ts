/** Flat or around, by evidence. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import type { PointId } from '../../../../core/ids/points.ts'
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

/** The size at which a girth leans so far to flat by itself (logarithm of odds): the larger, the less. */
function leaning(point: PointId, kind: GarmentKind | null, lean: number): number {
  let [low, high] = [50, 5000]
  for (let n = 0; n < 60; n++) {
    const middle = (low + high) / 2
    if (plausibility(girth(point, middle), kind) > lean) low = middle
    else high = middle
  }
  const mm = (low + high) / 2
  expect(plausibility(girth(point, mm), kind)).toBeCloseTo(lean, 3)
  return mm
}
const judgedAt = (lean: number, ...evidence: GirthEvidence['evidence']) => {
  const [one] = judgeBasis([girth('chest', leaning('chest', 'jumper', lean), ...evidence)], 'jumper')
  return `${one?.basis} ${one?.from}${one?.close ? ' close' : ''}`
}

describe('at a size that is as likely whole as half, the words decide', () => {
  test.each<[GirthEvidence['evidence'], string]>([
    [['name-flat'], 'flat'],
    [['name-around'], 'around'],
    [['word-flat'], 'flat'],
    [['word-around'], 'around'],
    [['doubled'], 'flat'],
    [['halved'], 'around'],
    [['list-flat'], 'flat'],
    [['list-around'], 'around'],
    [['advised-flat'], 'flat'],
    [['advised-around'], 'around'],
    // its double or half beside it is a sum that was done
    [['doubled', 'word-around'], 'flat'],
    [['halved', 'word-flat'], 'around'],
    [['doubled', 'name-around'], 'flat'],
    [['halved', 'name-flat'], 'around'],
    // words near outweigh headings
    [['word-flat', 'list-around'], 'flat'],
    [['word-around', 'list-flat'], 'around'],
    [['name-flat', 'list-around'], 'flat'],
    [['name-around', 'list-flat'], 'around'],
    // the body it is meant for outweighs a heading, and a word where the body is as large
    [['advised-flat', 'list-around'], 'flat'],
    [['advised-around', 'list-flat'], 'around'],
    [['advised-around', 'word-flat'], 'around'],
    [['advised-flat', 'word-around'], 'around']
  ])('%j: %s', (evidence, expected) => expect(judgedAt(0, ...evidence)).toBe(`${expected} stated`))
})

describe('how sure it is', () => {
  test('without words: under a sum of 1.1 nothing is', () => {
    expect(judgedAt(1.15)).toBe('flat judged')
    expect(judgedAt(1.05)).toBe('flat judged close')
    expect(judgedAt(-1.05)).toBe('around judged close')
    expect(judgedAt(-1.15)).toBe('around judged')
  })
  test('where size speaks against a word, all but evenly', () => {
    expect(judgedAt(-3.6, 'list-flat')).toBe('flat stated')
    expect(judgedAt(-3.8, 'list-flat')).toBe('flat stated close')
    expect(judgedAt(-4.2, 'list-flat')).toBe('around judged close')
  })
  test('a word that is not believed leaves a doubt, however far size leads', () => {
    expect(judgedAt(-8, 'list-flat')).toBe('around judged close')
  })
})

test('a heading that says what the word said adds half of its weight, one beside a name the whole', () => {
  expect(judgedAt(-8.6, 'word-flat', 'list-flat')).toBe('flat stated')
  expect(judgedAt(-9.4, 'word-flat', 'list-flat')).toBe('around judged close')
  expect(judgedAt(-9.4, 'name-flat', 'list-flat')).toBe('flat stated')
  expect(judgedAt(8, 'word-around', 'list-around')).toBe('around stated')
  expect(judgedAt(9, 'word-around', 'list-around')).toBe('flat judged close')
})

describe('habit', () => {
  test.each<[PointId, boolean]>([
    ['legOpening', true],
    ['thigh', true],
    ['knee', true],
    ['calf', true],
    ['cuff', true],
    ['bicep', true],
    ['elbow', true],
    ['armhole', true],
    ['hem', true],
    ['waist', false],
    ['chest', false],
    ['hip', false],
    ['neck', false]
  ])('a %s is laid flat by habit: %s', (point, expected) => {
    const one = girth(point, 300)
    expect(plausibility(one, null) > plausibility(one, null, false)).toBe(expected)
  })
})

describe('the others of a list pull a girth so far', () => {
  const bicep = (lean: number, neighbour: GirthEvidence) =>
    judgeBasis([girth('bicep', leaning('bicep', 'shirt', lean)), neighbour], 'shirt')[0]?.basis
  test('two for one that lies flat', () => {
    const chest = girth('chest', 500, 'word-flat')
    expect([bicep(-1.9, chest), bicep(-2.1, chest)]).toEqual([FLAT, AROUND])
  })
  test('a circumference that is told pulls a quarter farther, and habit counts no more', () => {
    // the habit of a bicep is 1
    const chest = girth('chest', 1000, 'word-around')
    expect([bicep(1 + 2.4, chest), bicep(1 + 2.6, chest)]).toEqual([AROUND, FLAT])
  })
})

describe('what one girth is of another: a likely share of a flat one is no half', () => {
  /** Beside a settled flat girth of this share, though it pulls to flat, and one that is half as large. */
  test.each<[PointId, PointId, number]>([
    ['waist', 'chest', 0.88],
    ['waist', 'hip', 0.8],
    ['chest', 'hip', 0.96],
    ['underbust', 'chest', 0.86],
    ['hem', 'chest', 1],
    ['hem', 'waist', 1.08],
    ['thigh', 'hip', 0.61],
    ['thigh', 'waist', 0.75],
    ['knee', 'thigh', 0.76],
    ['legOpening', 'thigh', 0.68],
    ['legOpening', 'knee', 0.92]
  ])('%s of %s', (point, other, share) => {
    const judged = (its: PointId, mm: number, beside: PointId, whole: number) =>
      judgeBasis([girth(its, mm), girth(beside, whole / 2, 'word-flat', 'doubled')], null)[0]?.basis
    const mm = leaning(point, null, 0)
    expect([judged(point, mm, other, mm / share), judged(point, mm, other, (2 * mm) / share)]).toEqual([AROUND, FLAT])
    // and the other way round
    const large = leaning(other, null, 0)
    expect([judged(other, large, point, large * share), judged(other, large, point, 2 * large * share)]).toEqual([AROUND, FLAT])
  })
  test('a pair that tells nothing of each other only pulls', () => {
    const mm = leaning('bicep', null, 0)
    expect(judgeBasis([girth('bicep', mm), girth('hip', mm, 'word-flat', 'doubled')], null)[0]?.basis).toBe(FLAT)
  })
})
