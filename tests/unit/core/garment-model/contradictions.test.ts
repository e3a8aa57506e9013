/** Which told figures are asked about as not going together, and which are not: for every reason one case each. */
import { describe, expect, it } from 'vitest'
import { contradictions } from '../../../../core/garment/contradictions.ts'
import { garmentAsWorn } from '../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../../core/garment/garment-input.ts'
import { sizeStep } from '../../../../core/garment/model/odd-figures.ts'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import type { PointId } from '../../../../core/ids/points.ts'

type Figures = Partial<Record<PointId, number>>
const issuesOf = (kind: GarmentKind, figures: Figures, more: Partial<GarmentInput> = {}) =>
  contradictions(
    garmentAsWorn({
      kind,
      measures: (Object.entries(figures) as [PointId, number][]).map(([point, mm]) => ({ point, mm, source: 'seller' })),
      ...more
    }),
    { units: 'cm' }
  )
const named = (kind: GarmentKind, figures: Figures, more?: Partial<GarmentInput>) =>
  issuesOf(kind, figures, more).map(({ code, values }) => [code, values.point])

const [CONTRADICTION, FLAT, LARGER, SMALLER] = [
  'garment.contradiction',
  'garment.flat-and-around',
  'garment.elsewhere.larger',
  'garment.elsewhere.smaller'
]

describe('geometry: a part is never larger than its whole', () => {
  it.each<[string, GarmentKind, PointId, Figures, Figures]>([
    ['one leg, both', 'trousers', 'thigh', { thigh: 1010, hip: 1000 }, { thigh: 640, hip: 1000 }],
    ['inside and outside of a leg', 'jeans', 'inseam', { inseam: 1000, outseam: 790 }, { inseam: 790, outseam: 1000 }],
    ['rise and outside of a leg', 'shorts', 'frontRise', { frontRise: 400, outseam: 300 }, { frontRise: 300, outseam: 400 }],
    [
      'a sleeve below and above',
      'shirt',
      'sleeveUnderarm',
      { sleeveUnderarm: 640, sleeveLength: 480 },
      { sleeveUnderarm: 480, sleeveLength: 640 }
    ],
    [
      'a sleeve and half the back with it',
      'shirt',
      'sleeveLength',
      { sleeveLength: 840, sleeveFromCentreBack: 620 },
      { sleeveLength: 620, sleeveFromCentreBack: 840 }
    ]
  ])('%s', (_, kind, point, cannot, can) => {
    expect(named(kind, cannot)).toEqual([[CONTRADICTION, point]])
    expect(named(kind, can)).toEqual([])
  })
})

describe('proportion: what the others make one think', () => {
  it.each<[string, GarmentKind, string, PointId, Figures, Figures]>([
    ['a thigh far too wide', 'trousers', LARGER, 'thigh', { hip: 1000, thigh: 830 }, { hip: 1000, thigh: 720 }],
    ['a thigh measured flat', 'jeans', FLAT, 'thigh', { waist: 800, hip: 1000, thigh: 310 }, { waist: 800, hip: 1000, thigh: 540 }],
    ['a knee around, the thigh flat', 'trousers', FLAT, 'knee', { hip: 1000, thigh: 600, knee: 880 }, { hip: 1000, thigh: 600, knee: 640 }],
    ['an upper sleeve', 'shirt', FLAT, 'bicep', { chest: 1100, bicep: 790 }, { chest: 1100, bicep: 460 }],
    ['an upper sleeve too small', 'jacket', SMALLER, 'bicep', { chest: 1300, waist: 1150, bicep: 130 }, { chest: 1300, bicep: 400 }],
    ['a cuff', 'shirt', FLAT, 'cuff', { chest: 1000, bicep: 370, cuff: 430 }, { chest: 1000, bicep: 370, cuff: 330 }],
    ['a waist flat, a hip around', 'trousers', FLAT, 'waist', { waist: 400, hip: 1000 }, { waist: 800, hip: 1100 }],
    ['a waist around, a chest flat', 'shirt', FLAT, 'chest', { chest: 520, waist: 1000 }, { chest: 1100, waist: 850 }],
    ['a bottom edge flat', 'knit-top', FLAT, 'hem', { chest: 1000, hem: 490 }, { chest: 1000, hem: 860 }],
    [
      'front and back rise, and both together',
      'jeans',
      LARGER,
      'crotchLength',
      { hip: 1000, frontRise: 280, backRise: 380, crotchLength: 780 },
      { hip: 1000, frontRise: 280, backRise: 380, crotchLength: 690 }
    ]
  ])('%s', (_, kind, code, point, speaks, silent) => {
    expect(named(kind, speaks)).toEqual([[code, point]])
    expect(named(kind, silent)).toEqual([])
  })

  it('says by how many sizes, beside which figure, and what would be likely', () => {
    const [issue] = issuesOf('trousers', { waist: 820, hip: 1000, thigh: 830 })
    expect(issue?.readings).toEqual([
      { point: 'thigh', mm: 830 },
      { point: 'hip', mm: 1000 }
    ])
    expect(issue?.text).toMatch(
      /^The thigh, 83 cm, is \d sizes larger than usual beside the hip, 100 cm: about 6\d(\.\d)? cm would be likely\. Was it/
    )
    expect(Number(issue?.values.sizes)).toBe(Math.round((830 - Number(issue?.values.likely)) / sizeStep('thigh', 'trousers')))
  })
  it('from size to size a thigh grows by half of what a hip does, a collar by a good centimetre', () => {
    expect(sizeStep('hip', 'jeans')).toBe(50)
    expect(sizeStep('thigh', 'jeans')).toBeCloseTo(26, 0)
    expect(sizeStep('neck', 'shirt')).toBeCloseTo(11, 0)
  })
  it('one slip throws no doubt on the other figures', () =>
    expect(named('trousers', { waist: 820, hip: 1000, thigh: 310, knee: 470, frontRise: 290, backRise: 390 })).toEqual([[FLAT, 'thigh']]))
  it('one figure alone is never called odd', () => expect(named('jeans', { waist: 410 })).toEqual([]))
  it('a size label is not called odd, and makes nothing odd that is not', () =>
    expect(
      contradictions(
        garmentAsWorn({
          kind: 'trousers',
          measures: [
            { point: 'waist', mm: 500, source: 'label' },
            { point: 'hip', mm: 1000, source: 'seller' }
          ]
        }),
        { units: 'cm' }
      ).every(({ values }) => values.point !== 'waist')
    ).toBe(true))
})

describe('style is no contradiction', () => {
  it.each<[string, GarmentKind, Figures, Partial<GarmentInput>?]>([
    ['a coat that swings', 'coat', { chest: 1100, hem: 2100 }],
    ['a ribbed bottom edge', 'jacket', { chest: 1200, hem: 900, bodyLength: 660 }],
    ['a tunic that hangs wide', 'knit-top', { chest: 900, hem: 1300 }],
    ['dropped shoulders', 'jumper', { chest: 1320, shoulderWidth: 640, bodyLength: 700 }],
    ['flares', 'jeans', { waist: 760, hip: 960, thigh: 560, knee: 420, legOpening: 620 }],
    ['palazzo legs', 'trousers', { waist: 720, hip: 1040, thigh: 760, legOpening: 1000 }],
    ['short sleeves', 'jumper', { chest: 960, sleeveLength: 220 }],
    ['pedal pushers', 'trousers', { waist: 740, hip: 980, inseam: 380 }],
    ['a full skirt that is told as one', 'skirt', { waist: 700, hip: 1700 }, { cut: { silhouette: 'circle' } }],
    ['a smock', 'dress', { chest: 960, waist: 1180, hip: 1240 }],
    ['an elastic waist', 'trousers', { waist: 600, hip: 1040 }, { made: { elasticWaist: true } }],
    ['a child’s trousers', 'trousers', { waist: 560, hip: 680, thigh: 420 }]
  ])('%s', (_, kind, figures, more) => expect(named(kind, figures, more)).toEqual([]))
})
