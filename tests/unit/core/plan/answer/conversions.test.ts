import { describe, expect, it } from 'vitest'
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
