/** Which options could help, and which are left out because they cannot. */
import { describe, expect, it } from 'vitest'
import { problemFor } from '../../../../../core/plan/solve/problem.ts'
import { optionsThatCouldHelp, usefulOptions, withoutIdleRescues } from '../../../../../core/plan/solve/useful-options.ts'
import { withinLevel } from '../../../../../core/plan/solve/within-means.ts'
import type { Gap } from '../../../../../core/wearer/gaps.ts'
import { line, option } from '../options.ts'

const at = (point: 'waist' | 'chest', mm: number) => ({ point, lowMm: mm, highMm: mm, least: 800, most: 850 })
const ids = (options: { id: string }[]) => options.map(({ id }) => id)
const waistIn = option('back-darts', [line({ waist: -1 }, 50)])
const chestIn = option('bust-darts', [line({ chest: -1 }, 50)])
const waistOut = option('release-darts', [line({ waist: 1 }, 40)])

describe('options that could help', () => {
  it('those that move a point back from where it is wrong', () => {
    expect(ids(optionsThatCouldHelp([at('waist', 880), at('chest', 820)], [waistIn, chestIn, waistOut]))).toEqual(['back-darts'])
    expect(ids(optionsThatCouldHelp([at('waist', 780)], [waistIn, waistOut]))).toEqual(['release-darts'])
    expect(optionsThatCouldHelp([at('waist', 820)], [waistIn, waistOut])).toEqual([])
  })
  it('and those that mend what a helpful one pushes out', () => {
    // taking the waist in by sides narrows the chest too, up to 60 under its least: a side let out at the chest could then help
    const sides = option('sides-in', [line({ waist: -1, chest: -1 }, 60)])
    const chestOut = option('side-panels', [line({ chest: 1 }, 60)])
    expect(ids(optionsThatCouldHelp([at('waist', 880), at('chest', 820)], [sides, chestOut]))).toEqual(['sides-in', 'side-panels'])
    expect(ids(optionsThatCouldHelp([at('waist', 820), at('chest', 820)], [sides, chestOut]))).toEqual([])
    // and let out, with a chest that then is too big
    const out = option('sides-out', [line({ waist: 1, chest: 1 }, 60)])
    expect(ids(optionsThatCouldHelp([at('waist', 780), at('chest', 820)], [out, chestIn]))).toEqual(['sides-out', 'bust-darts'])
  })
  it('a point that may be anywhere needs both ways', () => {
    const unsure = { point: 'waist' as const, lowMm: 780, highMm: 880, least: 800, most: 850 }
    expect(ids(optionsThatCouldHelp([unsure], [waistIn, waistOut]))).toEqual(['back-darts', 'release-darts'])
  })
})

const gap = (garmentMm: number, aimMm: number): Gap => ({
  point: 'waist',
  garmentMm,
  from: 'own',
  sdMm: 5,
  band: { least: 800, ideal: aimMm, most: 850 },
  aimMm,
  edgeMarginMm: 0,
  bandSdMm: 0,
  gapMm: 0,
  judged: true,
  because: []
})

describe('useful options by aim', () => {
  // 840 lies inside its band, 20 from the ideal
  const useful = (aim: 'least-work' | 'closest-fit', setupMinutes: number) => {
    const darts = option('back-darts', [line({ waist: -1 }, 20)], { setupMinutes })
    return ids(usefulOptions(problemFor(aim, [gap(840, 820)], [darts], [darts], 2, 1)))
  }
  it('inside the band nothing is done for least work', () => expect(useful('least-work', 5)).toEqual([]))
  it('for the closest fit what saves more than its set-up: 20 mm at two minutes are 40', () => {
    expect(useful('closest-fit', 39)).toEqual(['back-darts'])
    expect(useful('closest-fit', 41)).toEqual([])
  })
})

describe('rescues', () => {
  const panel = option('side-panels', [line({ waist: 1 }, 120)], { rescue: true })
  const point = (mm: number) => [{ point: 'waist' as const, mm, least: 800, ideal: 820, most: 850 }]
  it('are thought of only where a point is wrong', () => {
    expect(withoutIdleRescues(point(810), [panel, waistIn])).toEqual([waistIn])
    expect(withoutIdleRescues(point(780), [panel, waistIn])).toEqual([panel, waistIn])
  })
})

describe('within a level', () => {
  const tier = { line: 0, beyondMm: 30, level: 4, minutes: 60, because: { code: 'limit.re-set-sleeve', values: {} } }
  const tiered = option('sides-in', [line({ waist: -1 }, 100)], { tier })
  it('what is harder is left out', () => expect(withinLevel([tiered], 1)).toEqual([]))
  it('what becomes harder is cut off where it does, with that reason', () => {
    const [cut] = withinLevel([tiered], 3)
    expect(cut?.lines[0]).toMatchObject({ capMm: 30, because: { code: 'limit.re-set-sleeve' } })
    expect(cut?.tier).toBeUndefined()
  })
  it('at that level it is whole', () => expect(withinLevel([tiered], 4)).toEqual([tiered]))
})
