/** A point's figure and its band, draw by draw. */
import { describe, expect, it } from 'vitest'
import { beliefOf } from '../../../../../core/garment/model/garment-belief.ts'
import { drawnPoints, figuresFor, needsOf, writeDraw } from '../../../../../core/plan/outlook/drawn-points.ts'
import { DRAWS } from '../../../../../core/plan/outlook/draws.ts'
import { slipOf } from '../../../../../core/plan/outlook/slips.ts'
import { partsOf } from '../../../../../core/plan/solve/parts.ts'
import type { Gap } from '../../../../../core/wearer/gaps.ts'

const gap = (more: Partial<Gap> = {}): Gap => ({
  point: 'waist',
  garmentMm: 840,
  from: 'own',
  sdMm: 5,
  band: { least: 800, ideal: 820, most: 850 },
  aimMm: 820,
  edgeMarginMm: 0,
  bandSdMm: 0,
  gapMm: 0,
  judged: true,
  because: [],
  ...more
})
function drawn(one: Gap) {
  const points = drawnPoints([one], { kind: 'shirt', belief: undefined })
  const parts = partsOf(['waist'], [])
  const figures = figuresFor(parts)
  return Array.from({ length: DRAWS }, (_, i) => {
    writeDraw(points, parts, i, figures)
    return { at: figures[0]?.at[0] ?? 0, least: figures[0]?.least[0] ?? 0, most: figures[0]?.most[0] ?? 0 }
  })
}
const meanOf = (values: number[]) => values.reduce((sum, mm) => sum + mm, 0) / values.length
const sdOf = (values: number[]) => Math.sqrt(meanOf(values.map((mm) => (mm - meanOf(values)) ** 2)))

describe('a point as it is drawn', () => {
  it('one’s own figure lies about itself by its sd; a sure band stays', () => {
    const draws = drawn(gap())
    expect(meanOf(draws.map(({ at }) => at))).toBeCloseTo(840, 6)
    expect(sdOf(draws.map(({ at }) => at))).toBeCloseTo(5, 1)
    expect(new Set(draws.map(({ least, most }) => `${least} ${most}`))).toEqual(new Set(['800 850']))
  })
  it('a seller’s figure is drawn towards what the others make one expect and what people look at; what is untold goes with it', () => {
    const described = { kind: 'trousers' as const, elasticWaist: false, cut: {}, womens: 1 }
    const belief = beliefOf(described, [{ point: 'waist', mm: 840, sdMm: 12, commonShare: 0 }])
    const [waist, hip] = drawnPoints([gap({ from: 'seller', sdMm: 12 }), gap({ point: 'hip', from: 'inferred', judged: false })], {
      kind: 'trousers',
      belief
    })
    // precisions 1/144 of 840, 1/79² of 749 (women’s sizes), 1/75² of the 820 that is wanted
    const precision = 1 / 144 + 1 / 79 ** 2 + 1 / 75 ** 2
    const mm = (840 / 144 + 749.2 / 79 ** 2 + 820 / 75 ** 2) / precision
    // but for the draws in which the figure is a slip
    expect(Math.abs(meanOf([...(waist?.truth ?? [])]) - mm)).toBeLessThan(3)
    expect(sdOf([...(waist?.truth ?? [])])).toBeLessThan(20)
    const [one, other] = [[...(waist?.truth ?? [])], [...(hip?.truth ?? [])]]
    const together = meanOf(one.map((x, i) => (x - meanOf(one)) * ((other[i] ?? 0) - meanOf(other)))) / (sdOf(one) * sdOf(other))
    expect(together).toBeGreaterThan(0.05)
  })
  it('a figure that looks odd beside the others is more often a slip, and is then thought to lie nearer to them', () => {
    const described = { kind: 'trousers' as const, elasticWaist: false, cut: {}, womens: 1 }
    const hipOf = (mm: number) => {
      const belief = beliefOf(described, [
        { point: 'waist', mm: 800, sdMm: 12, commonShare: 0 },
        { point: 'hip', mm, sdMm: 12, commonShare: 0 }
      ])
      return belief === undefined ? undefined : slipOf('hip', mm, 12, belief)
    }
    expect(hipOf(1040)?.chance).toBeLessThan(0.02)
    expect(hipOf(1240)?.chance).toBeGreaterThan(0.3)
    expect(hipOf(1240)?.mm).toBeLessThan(1150)
  })
  it('both edges of an unsure band move together', () => {
    const draws = drawn(gap({ bandSdMm: 10 }))
    expect(sdOf(draws.map(({ least }) => least))).toBeCloseTo(10, 0)
    for (const { least, most } of draws) expect(most - least).toBeCloseTo(50, 9)
  })
  it('a band that was worked out is drawn without the margin of its edges', () => {
    expect(drawn(gap({ edgeMarginMm: 8 }))[0]).toMatchObject({ least: 808, most: 842 })
  })
  it('elastic lets the least go lower and higher, and never past the most', () => {
    const draws = drawn(gap({ leastSdMm: 40 }))
    expect(Math.min(...draws.map(({ least }) => least))).toBeLessThan(720)
    expect(Math.max(...draws.map(({ least }) => least))).toBe(850)
  })
  it('without a band nothing is drawn', () => expect(drawnPoints([gap({ band: null })], { kind: 'shirt', belief: undefined })).toEqual([]))
  it('in the farthest draw it lies so far out', () => {
    const [one] = drawnPoints([gap({ bandSdMm: 5, edgeMarginMm: 8 })], { kind: 'shirt', belief: undefined })
    const needs = one === undefined ? undefined : needsOf(one)
    expect(needs).toMatchObject({ point: 'waist', least: 800, most: 850 })
    const farthest = Math.max(...[...(one?.truth ?? [])].map((mm, i) => mm - (one?.most[i] ?? 0)))
    expect((needs?.highMm ?? 0) - 850).toBeCloseTo(farthest, 9)
  })
  it('a taste that nobody told widens the band about its ideal, a waistband’s less', () => {
    const width = (kind: 'shirt' | 'trousers') => {
      const want = { least: 800, ideal: 820, most: 850, sdMm: 0, tasteSdMm: 16, from: 'body' as const, basedOn: [], because: [] }
      const [one] = drawnPoints([gap({ bandSdMm: 16, want })], { kind, belief: undefined })
      return meanOf([...(one?.most ?? [])].map((most, i) => most - (one?.least[i] ?? 0)))
    }
    expect(width('shirt')).toBeGreaterThan(width('trousers') + 20)
    // the table's 50, and six tenths more
    expect(width('trousers')).toBeGreaterThan(75)
    expect(width('trousers')).toBeLessThan(90)
  })
})
