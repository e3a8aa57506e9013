/** What a cut does on a body where two rules meet: which wins, and what is then said. */
import { describe, expect, it } from 'vitest'
import { alterationsFor } from '../../../core/alterations/alterations-for.ts'
import { garmentAsWorn } from '../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../core/garment/garment-input.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import type { Level } from '../../../core/plan/means.ts'
import { reckon } from '../../../core/reckon.ts'
import type { Fit } from '../../../core/wearer/body.ts'
import { garment } from '../../corpus/plans/plan-case.ts'
import { rowan } from '../../corpus/plans/wearers.ts'

type Figures = Partial<Record<PointId, number>>
interface Asked {
  more?: Partial<GarmentInput>
  fit?: Fit
  level?: Level
}
const asked = (kind: GarmentKind, figures: Figures, { more = {}, fit = 'regular', level = 3 }: Asked = {}) =>
  reckon({ garment: garment(kind, figures, {}, more), wearer: { ...rowan, fit }, means: { level, tailor: false } })
const gapAt = (reckoning: ReturnType<typeof reckon>, point: PointId) => reckoning.gaps.find((gap) => gap.point === point)

describe('wears as another fit', () => {
  it('hip 130 and thigh 110 over are loose trousers, where 100 and 100 are the most of regular ones', () => {
    const loose = asked('trousers', { waist: 820, hip: 1110, thigh: 690, inseam: 765 }, { level: 1 })
    expect(loose).toMatchObject({ verdict: 'comes-close', wearsAs: 'loose' })
  })
  it('a band 75 too big falls down in any fit: that is left', () => {
    expect(asked('trousers', { waist: 920, hip: 1110, thigh: 690, inseam: 765 }, { level: 1 })).toMatchObject({
      verdict: 'leave-it',
      wearsAs: null
    })
  })
  it('shoulders alone 30 too wide make no loose jacket, with the chest of a loose one they do', () => {
    expect(asked('jacket', { chest: 1062, shoulderWidth: 505 })).toMatchObject({ verdict: 'leave-it', wearsAs: null })
    // 185 over the bust and 85 over the shoulders: a loose one has 140 and at most 210, 45 and at most 90
    expect(asked('jacket', { chest: 1145, shoulderWidth: 505 })).toMatchObject({ verdict: 'comes-close', wearsAs: 'loose' })
  })
})

describe('a leg that shows in its figures', () => {
  it('is slim where it narrows a little to at most 385, and no slim leg at 420', () => {
    const legs = (knee: number, legOpening: number) => asked('trousers', { waist: 820, hip: 1040, thigh: 628, knee, legOpening }).cut.leg
    expect(legs(440, 380)).toMatchObject({ value: 'slim', from: 'seen' })
    expect(legs(490, 420)).toMatchObject({ from: 'assumed' })
  })
})

describe('a blazer’s waist', () => {
  const blazer = (closeness?: 'fitted') =>
    gapAt(
      asked(
        'jacket',
        { chest: 1050, waist: 1010, shoulderWidth: 440 },
        { more: { cut: { layer: 'blazer', ...(closeness === undefined ? {} : { closeness }) } }, fit: 'as-cut' }
      ),
      'waist'
    )
  it('may be 180 over the body, or 35 under its own chest: 1010 is 30 over the one and inside the other', () => {
    expect(blazer()?.band?.most).toBe(1050 - 35)
    expect(blazer()?.gapMm).toBe(0)
  })
  it('sold as fitted must be on the body: 175 over at most, 35 too much', () => {
    expect(blazer('fitted')?.gapMm).toBe(1010 - 800 - 175)
  })
})

describe('a wish of one’s own in a shirt of another cut', () => {
  const waist = (fit: Fit) =>
    gapAt(asked('shirt', { chest: 1080, waist: 1040, neck: 394 }, { more: { cut: { closeness: 'classic' } }, fit }), 'waist')
  it('takes the band of the wish at the waist too: close, 170 over at most', () => {
    expect(waist('close')?.gapMm).toBe(1040 - 800 - 170)
  })
  it('as it is cut, a full-cut shirt hangs to 320 over', () => {
    expect(waist('as-cut')?.gapMm).toBe(0)
  })
})

describe('what the make and the cloth leave to do', () => {
  const jobs = (kind: GarmentKind, more: Partial<GarmentInput>) => alterationsFor(garmentAsWorn(garment(kind, { chest: 1000 }, {}, more)))
  it('pads are thinned in a tailored jacket; a biker, a hide and a raglan have none', () => {
    const hasPads = (more: Partial<GarmentInput>) => jobs('jacket', more).options.some(({ id }) => id === 'shoulder-pads')
    expect(hasPads({})).toBe(true)
    expect(hasPads({ cut: { layer: 'biker' } })).toBe(false)
    expect(hasPads({ cloth: { structure: 'leather' } })).toBe(false)
    expect(hasPads({ cut: { shoulder: 'raglan' } })).toBe(false)
  })
  it('the back of a waistcoat is lining cloth: slippery or checked, it is level 3; its sides are of the cloth itself', () => {
    const level = (id: string, traits: NonNullable<GarmentInput['cloth']>['traits']) =>
      jobs('waistcoat', { cloth: { traits: traits ?? [] } }).options.find((option) => option.id === id)?.level
    expect(level('waistcoat-back-in', ['slippery'])).toBe(3)
    expect(level('sides-in', ['slippery'])).toBe((level('sides-in', []) ?? 0) + 1)
  })
})

describe('a child’s legs', () => {
  const child = (more: Partial<GarmentInput> = {}) =>
    reckon({
      garment: garment('trousers', { waist: 620, hip: 820, thigh: 540, inseam: 620 }, {}, { cut: { leg: 'straight' }, ...more }),
      wearer: {
        fit: 'as-cut',
        sizes: 'children',
        body: {
          stature: { mm: 1340 },
          waistGirth: { mm: 600 },
          hipGirth: { mm: 700 },
          thighGirth: { mm: 400 },
          insideLegLength: { mm: 610 }
        }
      },
      means: { level: 2, tailor: false }
    })
  it('have room to grow at the thigh as at the seat: 140 over is wanted to 160, a grown-up’s straight leg to 110', () => {
    expect(gapAt(child({ use: 'child' }), 'thigh')?.gapMm).toBe(0)
    expect(gapAt(child(), 'thigh')?.gapMm).toBe(540 - 400 - 110)
  })
})

describe('what decides is asked by its name', () => {
  const abouts = (more: Partial<GarmentInput>) =>
    reckon({
      garment: {
        ...garment('jeans', {}, {}, more),
        measures: Object.entries({ waist: 820, hip: 1000, thigh: 585, knee: 430, legOpening: 360, inseam: 765 }).map(([point, mm]) => ({
          point: point as PointId,
          mm,
          source: 'seller'
        }))
      },
      wearer: { ...rowan, fit: 'as-cut' },
      means: { level: 2, tailor: false }
    }).ask.map(({ about }) => about)
  it('how far slim jeans stretch, of which no cloth is told; never how far a band goes that has no elastic', () => {
    expect(abouts({ cut: { leg: 'slim' } })).toContain('stretch')
    expect(abouts({ cut: { leg: 'slim' } })).not.toContain('waistStretchedMm')
    expect(abouts({ cut: { leg: 'slim' }, cloth: { stretchPercent: 15 } })).not.toContain('stretch')
  })
})

describe('a rescue', () => {
  // a dress wants 38 over a bust of 960; the panels let in 60
  const dress = (chest: number) => asked('dress', { chest, waist: 825, hip: 1030 })
  it('comes close where less than 50 is missing', () => {
    expect(dress(998 - 46).verdict).toBe('comes-close')
    expect(dress(998 - 46).plans[0]?.alterations).toMatchObject([{ id: 'side-panels', rescue: true }])
  })
  it('of more is another dress: leave it', () => {
    expect(dress(998 - 56).verdict).toBe('leave-it')
  })
})

describe('free of the body', () => {
  it('a hem is never too big, however wide', () => {
    const skirt = asked('skirt', { waist: 820, hip: 1400, sweep: 4500 }, { more: { cut: { silhouette: 'circle' } } })
    expect(gapAt(skirt, 'sweep')).toMatchObject({ gapMm: 0 })
    expect(skirt.verdict).toBe('wears-as-is')
  })
})
