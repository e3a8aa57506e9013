import { describe, expect, test } from 'vitest'
import { clothTaken, wornChange } from '../../../core/garment/cloth.ts'

const shrinkOf = (...fibres: [string, number | null][]) =>
  wornChange('shirt', clothTaken('shirt', { washed: false, fibres: fibres.map(([fibre, percent]) => ({ fibre, percent })) }), 'bodyLength')

describe('the fibre that cloth shrinks by', () => {
  test('of those without percentages the first that is named', () => {
    expect(shrinkOf(['viscose', null], ['linen', null])).toMatchObject({ shrink: 0.05, because: [{ values: { fibre: 'viscose' } }] })
    expect(shrinkOf(['linen', null], ['viscose', null], ['polyester', null])).toMatchObject({
      shrink: 0.035,
      because: [{ values: { fibre: 'linen' } }]
    })
  })
  test('of those with percentages the largest share, wherever it stands', () => {
    expect(shrinkOf(['cotton', 40], ['viscose', 60]).shrink).toBe(0.05)
    expect(shrinkOf(['viscose', 60], ['cotton', 40]).shrink).toBe(0.05)
    expect(shrinkOf(['wool', null], ['cotton', 20]).shrink).toBe(0.035)
  })
  test('of equal shares the first that is named', () => {
    expect(shrinkOf(['wool', 50], ['viscose', 50]).shrink).toBe(0.03)
  })
})
