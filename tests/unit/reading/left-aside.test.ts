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

describe('a figure about something else', () => {
  const one = (its: typeof loose, more: Partial<LeftAsideGiven> = {}) => left({ sizes: { lengths: [its], taken: new Set() }, ...more })
  const named = (its: typeof loose, role: 'thing' | 'detail' | 'height' | 'letDown', cost = 0) => ({
    ...NOTHING.links,
    single: [linkOf(nameAt(text, 'pocket', [], { role }), its, { cost })]
  })
  const point = (its: typeof loose) => ({ ...NOTHING.links, single: [linkOf(nameAt(text, 'pocket', ['waist']), its)] })
  test('of a size, of a chart, of a row of sizes', () => {
    expect(left({ sizes: { lengths: [], taken: new Set([label]) } })).toEqual(['32 size-label'])
    expect(left({ links: { ...NOTHING.links, joint: { ...NOTHING.links.joint, sizeFigures: [label] } } })).toEqual(['32 size-label'])
    expect(left({ charts: { quantities: new Set([label]) } })).toEqual(['32 size-chart'])
    expect(left({ sizes: { lengths: [], taken: new Set([label]) }, charts: { quantities: new Set([label]) } })).toEqual(['32 size-label'])
  })
  test('advice of whom it fits, but beside the name of a thing or a detail', () => {
    const asides = new Map([[loose, 'fits-advice' as const]])
    expect(one(loose, { asides })).toEqual(['7" fits-advice'])
    expect(one(loose, { asides, links: named(loose, 'thing') })).toEqual(['7" detail'])
    expect(one(loose, { asides, links: named(loose, 'detail') })).toEqual(['7" detail'])
    expect(one(loose, { asides, links: named(loose, 'letDown') })).toEqual(['7" fits-advice'])
    expect(one(loose, { asides: new Map([[loose, 'parcel']]), links: named(loose, 'detail') })).toEqual(['7" parcel'])
  })
  test('a bare one only with a name, or in a row with others', () => {
    const asides = new Map([[bare, 'model' as const]])
    expect(one(bare, { asides })).toEqual([])
    expect(one(bare, { asides, thing: true })).toEqual([])
    expect(one(bare, { asides, links: point(bare) })).toEqual(['8 model'])
    const row = textOf('parcel 30 x 20 x 10')
    const [first, second, third] = [figureAt(row, '30'), figureAt(row, '20'), figureAt(row, '10')]
    const parcels = new Map([first, second, third].map((its) => [its, 'parcel' as const]))
    const lengths = [first, second, third]
    const read = leftAsideOf(row, { ...NOTHING, sizes: { lengths, taken: new Set() }, asides: parcels })
    expect(read.map(({ because }) => because)).toEqual(['parcel', 'parcel', 'parcel'])
  })
  test('of a thing: with a unit or a name', () => {
    expect(one(bare, { thing: true })).toEqual([])
    expect(one(bare, { thing: true, links: point(bare) })).toEqual(['8 detail'])
    expect(one(loose, { thing: true, links: point(loose) })).toEqual(['7" detail'])
  })
  test('of a detail: with a unit, or a bare one close to its name', () => {
    expect(one(bare, { links: named(bare, 'detail', 0.49) })).toEqual(['8 detail'])
    expect(one(bare, { links: named(bare, 'detail', 0.5) })).toEqual([])
    expect(one(loose, { links: named(loose, 'detail', 2) })).toEqual(['7" detail'])
    expect(one(bare, { links: named(bare, 'height') })).toEqual(['8 model'])
  })
  test('with the name of a point and no measure it is unknown, a bare one is nothing', () => {
    expect(one(loose, { links: point(loose) })).toEqual(['7" unknown'])
    expect(one(bare, { links: point(bare) })).toEqual([])
  })
  test('cloth to spare is a measure of its own', () => {
    const allowance = { point: 'waist' as const, mm: 177.8, from: 'told' as const, stated: statedOf(text, loose) }
    expect(one(loose, { make: { allowances: [allowance as never], pulledOut: null } })).toEqual([])
    expect(one(loose, { make: { allowances: [], pulledOut: { mm: 900, aside: null } } })).toEqual(['7" unknown'])
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
  test('beside it stand an end mark and quotes at the most', () => {
    expect(about('“15”.', [], '15')[0]).toEqual(['reading.no-name'])
    expect(about('“15”..', [], '15')[0]).toEqual([])
    expect(about('  15 in  ', [], '15 in')[0]).toEqual(['reading.no-name'])
  })
  test('not one that is broken, a height, left aside for a reason, or beside a measure', () => {
    const its = textOf('15 inches')
    const figure = figureAt(its, '15 inches', { unit: 'in' })
    const of = (more: Partial<typeof figure>, given: Partial<Parameters<typeof figureIssues>[1]> = {}) =>
      figureIssues(its, {
        found: [{ ...figure, ...more }],
        measures: [],
        issues: [],
        leftAside: [],
        kind: null,
        words: 'cm',
        ...given
      })
    const codes = (...args: Parameters<typeof of>) => of(...args).issues.map(({ code }) => code)
    expect(codes({})).toEqual(['reading.no-name'])
    expect(codes({ problem: 'negative' })).toEqual([])
    expect(codes({ height: true })).toEqual([])
    expect(codes({}, { measures: [measure(waist)] })).toEqual([])
    const stated = statedOf(its, figure)
    expect(codes({}, { leftAside: [{ stated, because: 'model' }] })).toEqual([])
    const known = of({}, { leftAside: [{ stated, because: 'unknown' }] })
    expect([known.issues.length, known.leftAside.length]).toEqual([1, 1])
    // a doubt that is told already is enough
    const [doubt] = known.issues
    if (doubt === undefined) throw new Error('no doubt')
    expect(of({}, { issues: [{ ...doubt, code: 'reading.no-unit' }] }).issues.map(({ code }) => code)).toEqual(['reading.no-unit'])
  })
  test('forty letters at the most', () => {
    const long = `${'x'.repeat(31)} 15 inches`
    const stated = (words: string) => {
      const its = textOf(words)
      const one = figureAt(its, '15 inches', { unit: 'in' })
      const leftAside = [{ stated: statedOf(its, one), because: 'unknown' as const }]
      return figureIssues(its, { found: [one], measures: [], issues: [], leftAside, kind: null, words: 'cm' }).issues.length
    }
    expect([stated(long.slice(1)), stated(long)]).toEqual([1, 0])
  })
  test('which sizes and which garment, in their sentences', () => {
    const sized = (size?: string) => ({ ...measure(waist), ...(size === undefined ? {} : { size }) })
    const read = (measures: MeasureReading[], kind: 'jacket' | null) =>
      figureIssues(text, { found: [], measures, issues: [], leftAside: [], kind, words: 'cm' }).issues.map(({ values }) => values)
    expect(read([sized('M'), sized('L'), sized('M')], null)).toEqual([{ sizes: 'M, L' }])
    expect(read([sized('M'), sized()], null)).toEqual([])
    const two: MeasureReading[] = [
      { ...measure(waist), of: 'jacket' },
      { ...measure(waist), of: 'skirt' }
    ]
    expect(read(two, 'jacket')).toEqual([{ n: 2, kind: 'jacket' }])
    expect(read(two, null)).toEqual([{ n: 2, kind: 'other' }])
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
