/** Conditions on the tape that is held to a garment: girths laid flat, rounded inwards to what people read, and in words. */
import { describe, expect, it } from 'vitest'
import type { PointId } from '../../../../../core/ids/points.ts'
import { conditionShown, conditionsTogether, onTape, suitsText } from '../../../../../core/plan/answer/conditions-said.ts'
import type { Condition } from '../../../../../core/plan/conditions/conditions-of.ts'

const IN = 25.4
const tape = (point: PointId | undefined, least: number | null, most: number | null, units: 'cm' | 'in' = 'cm') =>
  onTape({ ...(point === undefined ? {} : { point }), least, most }, units)

describe('on the tape', () => {
  it('a girth is laid flat, a length and a body are not, a collar is measured along', () => {
    expect(tape('hip', 1000, 1080)).toEqual({ flat: true, least: 500, most: 540 })
    expect(tape('inseam', 760, 790)).toEqual({ flat: false, least: 760, most: 790 })
    expect(tape('neck', 380, 400)).toEqual({ flat: false, least: 380, most: 400 })
    expect(tape(undefined, 960, 1000)).toEqual({ flat: false, least: 960, most: 1000 })
  })
  it('what lies between two marks is rounded inwards, to half a centimetre or a quarter of an inch', () => {
    expect(tape('inseam', 761, 788)).toMatchObject({ least: 765, most: 785 })
    expect(tape('inseam', 30 * IN + 1, 31 * IN - 1, 'in')).toMatchObject({ least: 30.25 * IN, most: 30.75 * IN })
    // 501 to 539 flat
    expect(tape('hip', 1002, 1078)).toMatchObject({ least: 505, most: 535 })
  })
  it('an end that is open stays open', () => {
    expect(tape('inseam', null, 788)).toMatchObject({ least: null, most: 785 })
    expect(tape('inseam', 761, null)).toMatchObject({ least: 765, most: null })
  })
  it('where rounding would leave nothing, the ends stay as they are', () => {
    expect(tape('inseam', 761, 764)).toMatchObject({ least: 761, most: 764 })
    expect(tape('inseam', 761, 766)).toMatchObject({ least: 761, most: 766 })
    expect(tape('inseam', 761, 770)).toMatchObject({ least: 765, most: 770 })
  })
  it('what is on a mark but for the arithmetic stays there', () => {
    expect(tape('inseam', 760 + 1e-9, 790 - 1e-9)).toMatchObject({ least: 760, most: 790 })
  })
})

describe('in words', () => {
  const wording = { units: 'cm' } as const
  const said = (one: Partial<Condition>) => conditionShown({ least: null, most: null, ...one } as Condition, wording).text
  it('says where, how it lies and which ends there are', () => {
    expect(said({ point: 'hip', least: 1000, most: 1080 })).toBe('the hip, laid flat, is 50 to 54 cm')
    expect(said({ point: 'hip', least: 1000 })).toBe('the hip, laid flat, is 50 cm or more')
    expect(said({ point: 'inseam', most: 790 })).toMatch(/^the inside leg is 79 cm or less$/)
    expect(said({ body: 'hipGirth', least: 960, most: 1000 })).toMatch(/hip.* 96 to 100 cm/)
  })
  it('says what would suit, and all in one', () => {
    const hip = { point: 'hip', least: 1000, most: 1080 } as Condition
    expect(suitsText(hip, wording)).toBe('50 to 54 cm would suit.')
    const all = [hip, { point: 'inseam', least: 760, most: null } as Condition].map((one) => conditionShown(one, wording))
    expect(conditionsTogether(all, wording)).toMatch(/^the hip, laid flat, is 50 to 54 cm and the inside leg is 76 cm or more$/)
  })
})
