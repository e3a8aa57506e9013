import { describe, expect, it } from 'vitest'
import { alterationsFor, OptionsByMake } from '../../core/alterations/alterations-for.ts'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { Made } from '../../core/garment/garment-input.ts'
import { randomFrom, requestFrom } from './requests.ts'

describe('options in many makes', () => {
  it('are those that each make by itself would give, whatever was kept of the others', () => {
    const random = randomFrom(77)
    let kept = 0
    for (let i = 0; i < 120; i++) {
      const request = requestFrom(random)
      const garment = garmentAsWorn(request.garment)
      const makes: Made[] = Array.from({ length: 6 }, () => ({
        ...garment.made,
        lined: random() < 0.5,
        backSeam: random() < 0.5,
        darts: random() < 0.5,
        elasticWaist: random() < 0.3,
        tailored: random() < 0.5,
        felledSeams: random() < 0.5 ? true : ['side'],
        workingCuffButtons: random() < 0.5,
        seamAllowanceMm: random() < 0.5 ? 10 : 5 + 20 * random(),
        outletMm: 40 * random(),
        hemDepthMm: 60 * random(),
        overlapMm: random() < 0.5 ? 40 : 80 * random(),
        backPocketGapMm: 60 + 100 * random()
      }))
      const keys = new Set(makes.flatMap((made) => alterationsFor({ ...garment, made }, request.limits).options.map(({ key }) => key)))
      const byMake = new OptionsByMake(garment, request.limits ?? {}, keys)
      const before = new Set<unknown>()
      for (const made of makes) {
        const options = byMake.with(made)
        expect(options).toEqual(alterationsFor({ ...garment, made }, request.limits).options)
        kept += options.filter((option) => before.has(option)).length
        for (const option of options) before.add(option)
      }
    }
    expect(kept).toBeGreaterThan(500)
  })
})
