import { describe, expect, it } from 'vitest'
import type { GarmentKind } from '../../../../../core/ids/kinds.ts'
import { POINTS, type PointId } from '../../../../../core/ids/points.ts'
import { conversionsFor } from '../../../../../core/plan/answer/conversions.ts'
import { reckon } from '../../../../../core/reckon.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'
import { rowan } from '../../../../corpus/plans/wearers.ts'

const codes = (request: Parameters<typeof reckon>[0]): string[] => reckon(request).conversions.map(({ code }) => code)
const means = { level: 2 as const, tailor: false }

describe('changes of kind, offered apart', () => {
  it('trousers far too short may become shorts', () => {
    // 560 of an inside leg of 780 would be a cropped leg, and no lack; sold as full length it is 175 short
    const figures = { waist: 820, hip: 1050, thigh: 640, inseam: 560 }
    const request = { garment: garment('trousers', figures, {}, { cut: { legLength: 'full' } }), wearer: rowan, means }
    expect(codes(request)).toEqual(['convert.to-shorts'])
    for (const plan of reckon(request).plans) for (const job of plan.alterations) expect(job.id).not.toContain('convert')
  })
  it('not where the seat is wrong as well', () => {
    expect(codes({ garment: garment('trousers', { waist: 820, hip: 940, thigh: 640, inseam: 560 }), wearer: rowan, means })).toEqual([])
  })
  it('a shirt with hopelessly short sleeves may lose them', () => {
    expect(
      codes({
        garment: garment('shirt', { chest: 1080, waist: 940, hem: 1080, shoulderWidth: 445, sleeveLength: 540 }),
        wearer: rowan,
        means
      })
    ).toEqual(['convert.to-short-sleeves'])
  })
  it('nothing is offered where nothing stays wrong', () => {
    expect(
      codes({ garment: garment('trousers', { waist: 895, hip: 1050, thigh: 640 }), wearer: rowan, means: { level: 3, tailor: false } })
    ).toEqual([])
  })
})

// what is gone once it is another garment (common practice, no source)
const LEG: PointId[] = ['inseam', 'outseam', 'knee', 'calf', 'legOpening']
const SLEEVE: PointId[] = ['sleeveLength', 'sleeveUnderarm', 'sleeveFromCentreBack', 'cuff', 'elbow']
const TOP: PointId[] = [...SLEEVE, 'chest', 'underbust', 'shoulderWidth', 'bicep', 'neck', 'backWidth', 'armhole', 'strap', 'napeToWaist']
const BELOW: PointId[] = ['hip', 'sweep', 'skirtLength', 'bodyLength']
const BECOMES: Partial<Record<GarmentKind, Record<string, PointId[]>>> = {
  trousers: { 'to-shorts': LEG },
  jeans: { 'to-shorts': LEG },
  shorts: {},
  skirt: {},
  shirt: { 'to-short-sleeves': SLEEVE, 'to-cropped': ['hem', 'bodyLength'] },
  'knit-top': { 'to-short-sleeves': SLEEVE, 'to-cropped': ['hem', 'bodyLength'] },
  jumper: { 'to-short-sleeves': SLEEVE, 'to-cropped': ['hem', 'bodyLength'] },
  dress: { 'to-short-sleeves': SLEEVE, 'to-skirt': TOP, 'to-top': BELOW },
  jumpsuit: { 'to-short-sleeves': SLEEVE },
  jacket: {},
  coat: {},
  waistcoat: {}
}
const wrong = (point: PointId, mm = -40) => ({ point, mm, because: '' })
const offered = (kind: GarmentKind, ...points: PointId[]) =>
  conversionsFor(
    kind,
    points.map((point) => wrong(point)),
    2
  )
    .map(({ code }) => code.slice('convert.'.length))
    .sort()

describe('what may become what, by the one point that stays wrong', () => {
  it.each(Object.entries(BECOMES) as [GarmentKind, Record<string, PointId[]>][])('%s', (kind, others) => {
    for (const point of POINTS) {
      const all = Object.entries(others).filter(([, cutAway]) => cutAway.includes(point))
      expect(offered(kind, point), point).toEqual(all.map(([other]) => other).sort())
    }
  })
  it('is nothing where a second point stays wrong that would stay', () => {
    expect(offered('trousers', 'inseam', 'knee')).toEqual(['to-shorts'])
    expect(offered('trousers', 'inseam', 'waist')).toEqual([])
  })
  it('leaves what lies within a mark', () => {
    const misfit = [wrong('inseam'), wrong('waist', 2)]
    expect(conversionsFor('trousers', misfit, 2)).toHaveLength(1)
    expect(conversionsFor('trousers', misfit, 1.5)).toEqual([])
    expect(conversionsFor('trousers', [wrong('inseam', 2)], 2)).toEqual([])
  })
})
