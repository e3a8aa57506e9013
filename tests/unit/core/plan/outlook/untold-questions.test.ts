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
  it('a point of which no table speaks: a girth as large as the told ones are beside what is wanted, a length as it is wanted', () => {
    const trunk = { ...rowan, body: { ...rowan.body, trunkGirth: { mm: 1600 } } }
    const torso = questionsOn(garment('jumpsuit', { chest: 1030, waist: 880 }), 1, trunk)
    expect(torso.flatMap(({ what }) => ('point' in what ? [what.point] : []))).toContain('torsoLength')
    expect(shareAt(torso, 'torsoLength')).toBeGreaterThan(0.2)
    expect(shareAt(torso, 'torsoLength')).toBeLessThan(1)
  })
  it('a point that the tables tell of is drawn with the rest, and no question of its own', () => {
    const points = questionsOn(garment('skirt', { waist: 880 }), 1).flatMap(({ what }) => ('point' in what ? [what.point] : []))
    expect(points).not.toContain('hip')
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
