import { describe, expect, it } from 'vitest'
import type { GarmentInput, GarmentMeasure } from '../../../core/garment/garment-input.ts'
import { reckon } from '../../../core/reckon.ts'
import type { Wearer } from '../../../core/wearer/wearer.ts'

const wearer: Wearer = { fit: 'regular', body: { bustGirth: { mm: 960 }, shoulderWidth: { mm: 420 }, armLength: { mm: 600 } } }
const jersey = (left: number, right: number): GarmentInput => ({
  kind: 'knit-top',
  measures: [
    { point: 'chest', mm: 1020, source: 'own' },
    { point: 'sleeveLength', mm: left, source: 'own', side: 'left' },
    { point: 'sleeveLength', mm: right, source: 'own', side: 'right' }
  ] satisfies GarmentMeasure[]
})
const plan = (left: number, right: number) => reckon({ garment: jersey(left, right), wearer, means: { level: 2, tailor: false } }).plans[0]

describe('left and right', () => {
  it('two sides that differ are brought to one length, each by its own amount', () => {
    const job = plan(650, 642)?.alterations[0]
    expect(job?.id).toBe('sleeve-shorten-hem')
    const [left, right] = job?.lines ?? []
    expect(left).toMatchObject({ side: 'left', seam: 'hem' })
    expect(right).toMatchObject({ side: 'right', seam: 'hem' })
    expect((left?.offsetMm ?? 0) - (right?.offsetMm ?? 0)).toBe(8)
    expect(plan(650, 642)?.after.find(({ point }) => point === 'sleeveLength')?.mm).toBe(650 - (left?.offsetMm ?? 0))
  })
  it('a side that suits is left alone', () => {
    const job = plan(650, 605)?.alterations[0]
    const right = job?.lines.find(({ side }) => side === 'right')
    expect(right?.offsetMm).toBe(0)
  })
  it('sides that are alike are one figure', () => {
    expect(plan(650, 650)?.alterations[0]?.lines).toHaveLength(1)
  })
})
