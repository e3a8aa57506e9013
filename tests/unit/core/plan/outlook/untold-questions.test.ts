import { describe, expect, it } from 'vitest'
import { alterationsFor } from '../../../../../core/alterations/alterations-for.ts'
import { garmentAsWorn } from '../../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../../../core/garment/garment-input.ts'
import type { Means } from '../../../../../core/plan/means.ts'
import { untoldQuestions } from '../../../../../core/plan/outlook/untold-questions.ts'
import { targetFor } from '../../../../../core/wearer/target.ts'
import type { Wearer } from '../../../../../core/wearer/wearer.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'
import { rowan } from '../../../../corpus/plans/wearers.ts'

function questionsOn(input: GarmentInput, level: Means['level'], wearer: Wearer = rowan) {
  const worn = garmentAsWorn(input)
  const { options } = alterationsFor(worn)
  return untoldQuestions({
    garment: worn,
    target: targetFor(worn, wearer),
    wearer,
    options,
    means: { level, tailor: false },
    limits: {},
    markMm: 2
  })
}
const shareAt = (asked: ReturnType<typeof questionsOn>, name: string): number => {
  const fits = asked.find(({ what }) => ('point' in what ? what.point : 'body' in what ? what.body : what.about) === name)?.wouldFit ?? []
  return fits.filter((one) => one).length / fits.length
}

describe('what nobody told', () => {
  it('an untold hip is thought as large as the told waist is beside what is wanted', () => {
    const [right, large] = [questionsOn(garment('skirt', { waist: 820 }), 1), questionsOn(garment('skirt', { waist: 940 }), 1)]
    // 80 wide about its middle, 58 of sd: about half where the waist is right, hardly any where it is a seventh too large
    expect(shareAt(right, 'hip')).toBeGreaterThan(0.4)
    expect(shareAt(right, 'hip')).toBeLessThan(0.65)
    expect(shareAt(large, 'hip')).toBeLessThan(0.1)
  })
  it('comes right more often where it can be taken in', () => {
    const [plain, sews] = [questionsOn(garment('skirt', { waist: 880 }), 1), questionsOn(garment('skirt', { waist: 880 }), 3)]
    expect(shareAt(sews, 'hip')).toBeGreaterThan(shareAt(plain, 'hip') + 0.2)
  })
  it('a body that is known is not asked for; one measure that is missing under a told point is', () => {
    const jacket = garment('jacket', { chest: 1060, waist: 915, hem: 1080, shoulderWidth: 440, sleeveLength: 612 })
    const bodies = (asked: ReturnType<typeof questionsOn>) => asked.flatMap(({ what }) => ('body' in what ? [what.body] : []))
    expect(bodies(questionsOn(jacket, 4))).toEqual([])
    const { armLength: _, stature: __, ...rest } = rowan.body
    const without = questionsOn(jacket, 4, { ...rowan, body: rest })
    expect(bodies(without)).toEqual(['armLength'])
    expect(shareAt(without, 'armLength')).toBeGreaterThan(0)
    expect(shareAt(without, 'armLength')).toBeLessThan(1)
  })
})
