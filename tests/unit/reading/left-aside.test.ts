/** The last stages: what is left aside and why, and what is doubtful of the text as a whole. */
import { describe, expect, test } from 'vitest'
import { figureIssues } from '../../../core/reading/figure-issues.ts'
import { type LeftAsideGiven, leftAsideOf } from '../../../core/reading/left-aside.ts'
import { statedOf } from '../../../core/reading/quantities/stated.ts'
import type { MeasureReading } from '../../../core/reading/reading.ts'
import { figureAt, linkOf, nameAt, textOf } from './given.ts'

const text = textOf('waist 30" label 32 parcel 40 cm pocket 6" and 7" or 8')
const waist = figureAt(text, '30"')
const label = figureAt(text, '32')
const parcel = figureAt(text, '40 cm')
const pocket = figureAt(text, '6"')
const loose = figureAt(text, '7"')
const bare = figureAt(text, '8')

const NOTHING: LeftAsideGiven = {
  sizes: { lengths: [], taken: new Set() },
  charts: { quantities: new Set() },
  asides: new Map(),
  links: { joint: { shared: [], labels: new Set(), quantities: new Set(), sizes: [], sizeFigures: [] }, single: [] },
  measured: { asides: [], repeats: [] },
  sale: { measures: [], notOffered: [] },
  make: { allowances: [], pulledOut: null },
  thing: false
}
const measure = (one: typeof waist): MeasureReading => ({
  point: 'waist',
  mm: 762,
  lowMm: 762,
  highMm: 762,
  basis: 'around',
  basisFrom: 'stated',
  unitFrom: 'stated',
  stated: statedOf(text, one)
})
const left = (given: Partial<LeftAsideGiven>) =>
  leftAsideOf(text, { ...NOTHING, ...given }).map(({ stated, because }) => `${stated.text} ${because}`)

describe('left aside', () => {
  test('each with its reason, in the order of the text; measures are none', () => {
    const given: Partial<LeftAsideGiven> = {
      sizes: { lengths: [waist, parcel, pocket, loose, bare], taken: new Set([label]) },
      asides: new Map([[parcel, 'parcel']]),
      links: { ...NOTHING.links, single: [linkOf(nameAt(text, 'pocket', [], { role: 'detail' }), pocket)] },
      sale: { measures: [measure(waist)], notOffered: [] }
    }
    expect(left(given)).toEqual(['32 size-label', '40 cm parcel', '6" detail', '7" unknown'])
  })
  test('a bare figure that nothing claims is left out altogether', () =>
    expect(left({ sizes: { lengths: [bare], taken: new Set() } })).toEqual([]))
  test('a broken number is said elsewhere', () => {
    expect(left({ sizes: { lengths: [{ ...loose, problem: 'negative' }], taken: new Set() } })).toEqual([])
  })
  test('a figure that repeats a measure is none', () => {
    expect(left({ sizes: { lengths: [loose], taken: new Set() }, measured: { asides: [], repeats: [loose] } })).toEqual([])
  })
  test('a measure is none, whatever was thought of it on the way', () => {
    const measured = { asides: [{ quantity: waist, because: 'unknown' as const }], repeats: [] }
    const sale = { measures: [measure(waist)], notOffered: [] }
    expect(left({ sizes: { lengths: [waist], taken: new Set() }, measured, sale })).toEqual([])
  })
  test('what was said of a figure first counts', () => {
    const measured = { asides: [{ quantity: loose, because: 'unknown' as const }], repeats: [] }
    expect(
      left({ sizes: { lengths: [loose], taken: new Set() }, measured, make: { allowances: [], pulledOut: { mm: 900, aside: loose } } })
    ).toEqual(['7" pulled-out'])
  })
  test('in a text about a bag every length is a detail; a height is of the model', () => {
    expect(left({ sizes: { lengths: [loose], taken: new Set() }, thing: true })).toEqual(['7" detail'])
    const tall = { ...NOTHING.links, single: [linkOf(nameAt(text, 'pocket', [], { role: 'height' }), pocket)] }
    expect(left({ sizes: { lengths: [pocket], taken: new Set() }, links: tall })).toEqual(['6" model'])
  })
  test('of a size that is not offered it is a detail', () => {
    expect(left({ sizes: { lengths: [waist], taken: new Set() }, sale: { measures: [], notOffered: [measure(waist)] } })).toEqual([
      '30" detail'
    ])
  })
})

describe('doubts about the whole', () => {
  const about = (words: string, measures: MeasureReading[] = [], figure?: string) => {
    const its = textOf(words)
    const found = figure === undefined ? [] : [figureAt(its, figure)]
    const read = figureIssues(its, { found, measures, issues: [], leftAside: [], kind: 'jacket', words: 'cm' })
    return [read.issues.map(({ code }) => code), read.leftAside.map(({ stated, because }) => `${stated.text} ${because}`)]
  }
  test('several garments, several sizes', () => {
    expect(
      about('', [
        { ...measure(waist), of: 'jacket' },
        { ...measure(waist), of: 'skirt' }
      ])[0]
    ).toEqual(['reading.several-garments'])
    expect(
      about('', [
        { ...measure(waist), size: 'M' },
        { ...measure(waist), size: 'L' }
      ])[0]
    ).toEqual(['reading.several-sizes'])
    expect(about('', [measure(waist)])[0]).toEqual([])
  })
  test('a text that is little more than a figure needs a name', () => {
    expect(about('15.5 inches', [], '15.5 inches')).toEqual([['reading.no-name'], ['15.5 inches unknown']])
    expect(about('15', [], '15')).toEqual([['reading.no-name'], ['15 unknown']])
  })
  test('a longer one is about something else', () => {
    expect(about('Postcode 15, near the station', [], '15')).toEqual([[], []])
    const long = textOf('It is somewhere around 15 inches, I would say, but of what?')
    const one = figureAt(long, '15 inches', { unit: 'in' })
    const leftAside = [{ stated: statedOf(long, one), because: 'unknown' as const }]
    const given = { found: [one], measures: [], issues: [], leftAside, kind: null, words: 'cm' as const }
    expect(figureIssues(long, given).issues).toEqual([])
    const short = { ...long, original: 'around 15 inches' }
    expect(figureIssues(short, given).issues.map(({ code }) => code)).toEqual(['reading.no-name'])
  })
})
