/** What is a cut of its own, and no fault: short sleeves, edges that are drawn in; and a sleeve told from the centre back. */
import { describe, expect, it } from 'vitest'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import { reckon } from '../../../core/reckon.ts'
import { garment } from '../../corpus/plans/plan-case.ts'
import { rowan } from '../../corpus/plans/wearers.ts'

type Figures = Partial<Record<PointId, number>>
const asked = (kind: GarmentKind, figures: Figures, made = {}, liked?: Figures) =>
  reckon({
    garment: garment(kind, figures, made),
    wearer: rowan,
    ...(liked === undefined
      ? {}
      : { favourite: { measures: Object.entries(liked).map(([point, mm]) => ({ point: point as PointId, mm })) } }),
    means: { level: 3, tailor: false }
  })
const bandOf = (reckoning: ReturnType<typeof reckon>, point: PointId) => reckoning.gaps.find((gap) => gap.point === point)?.band
// Rowan: arm 600, hip 980, waist 800
const SHIRT = { chest: 1060, shoulderWidth: 440, neck: 394 }

describe('short sleeves', () => {
  it('told no longer than three quarters of the arm or so they are the cut, and so is their edge', () => {
    const short = asked('shirt', { ...SHIRT, sleeveLength: 240, cuff: 400 })
    // a short sleeve is any length from 0.15 to 0.52 of the arm; nothing is aimed for
    expect(bandOf(short, 'sleeveLength')).toEqual({ least: 90, ideal: null, most: 312 })
    expect(bandOf(short, 'cuff')).toBeNull()
    expect(short.verdict).toBe('wears-as-is')
    // three-quarter sleeves end at 0.82 of the arm: 492
    expect(asked('knit-top', { chest: 1020, sleeveLength: 491 }).verdict).toBe('wears-as-is')
  })
  it('just longer they are sleeves that are too short', () => {
    expect(bandOf(asked('knit-top', { chest: 1020, sleeveLength: 493 }), 'sleeveLength')?.least).toBe(595)
  })
  it('by a word they are not waited for', () => {
    const told = asked('shirt', SHIRT, { shortSleeves: true })
    expect(bandOf(told, 'sleeveLength')).toMatchObject({ least: 90, ideal: null })
    expect(told.ask.map(({ point }) => point)).not.toContain('sleeveLength')
    expect(bandOf(asked('shirt', SHIRT), 'sleeveLength')?.least).toBe(595)
  })
  it('a favourite’s short sleeves still compare', () => {
    expect(bandOf(asked('shirt', { ...SHIRT, sleeveLength: 240 }, {}, { sleeveLength: 250 }), 'sleeveLength')?.ideal).toBe(250)
  })
})

describe('a bottom edge that is drawn in', () => {
  it('sits above the hip, so it need only go round the waist', () => {
    const blouson = { chest: 1060, shoulderWidth: 440, sleeveLength: 610, bodyLength: 640 }
    // 950 < 0.9 × 1060 = 954: it holds at the waist, 800 around, and blouses above it; wider it is no fault
    expect(bandOf(asked('jacket', { ...blouson, hem: 950 }), 'hem')).toEqual({ least: 800, ideal: null, most: null })
    expect(asked('jacket', { ...blouson, hem: 950 }).verdict).toBe('wears-as-is')
  })
  it('a straight one goes round the hip', () => {
    const straight = { chest: 1040, shoulderWidth: 440, sleeveLength: 610, bodyLength: 720, hem: 970 }
    expect(bandOf(asked('jacket', straight), 'hem')?.least).toBe(1020)
  })
})

describe('a sleeve from the centre back', () => {
  it('is the sleeve and half the shoulders', () => {
    const told = asked('shirt', { ...SHIRT, sleeveFromCentreBack: 840 })
    // 840 − 220
    expect(told.gaps.find(({ point }) => point === 'sleeveLength')).toMatchObject({ garmentMm: 620, gapMm: 0, from: 'seller' })
    const long = asked('shirt', { ...SHIRT, sleeveFromCentreBack: 890 })
    expect(long.plans[0]?.alterations.map(({ id }) => id)).toEqual(['sleeve-shorten-cuff'])
  })
  it('with the shoulders only worked out it is worked out too, and decides nothing', () => {
    const { gaps, verdict } = asked('shirt', { chest: 1060, neck: 394, sleeveFromCentreBack: 890 })
    const sleeve = gaps.find(({ point }) => point === 'sleeveLength')
    expect(sleeve?.from).toBe('inferred')
    expect(sleeve?.garmentMm).toBeGreaterThan(640)
    expect(verdict).toBe('wears-as-is')
  })
})
