/** A point's figure and its band, draw by draw. */
import { describe, expect, it } from 'vitest'
import { drawnPoints, figuresFor, needsOf, writeDraw } from '../../../../../core/plan/outlook/drawn-points.ts'
import { DRAWS } from '../../../../../core/plan/outlook/draws.ts'
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
  const points = drawnPoints([one])
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
  it('a seller’s figure is drawn towards what is wanted and what the others make one expect, by their precision', () => {
    const { mm, sdMm } = drawnPoints([gap({ from: 'seller', sdMm: 12, expected: { mm: 810, sdMm: 40 } })])[0]?.figure ?? { mm: 0, sdMm: 0 }
    // precisions 1/144 of 840, 1/1600 of 810, 1/5625 of 820: people look at garments about their size, 75 around it
    const precision = 1 / 144 + 1 / 1600 + 1 / 5625
    expect(mm).toBeCloseTo((840 / 144 + 810 / 1600 + 820 / 5625) / precision, 9)
    expect(sdMm).toBeCloseTo(precision ** -0.5, 9)
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
  it('without a band nothing is drawn', () => expect(drawnPoints([gap({ band: null })])).toEqual([]))
  it('as far out as the draws go, 4.5 sd of figure and band', () => {
    expect(needsOf(gap({ bandSdMm: 5, edgeMarginMm: 8 }))).toEqual({ point: 'waist', lowMm: 795, highMm: 885, least: 808, most: 842 })
  })
})
