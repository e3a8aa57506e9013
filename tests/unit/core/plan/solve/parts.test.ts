/** Which points are one question, and which are several. */
import { describe, expect, it } from 'vitest'
import { partsOf } from '../../../../../core/plan/solve/parts.ts'
import { line, option } from '../options.ts'

const POINTS = ['waist', 'chest', 'inseam'] as const
const points = (options: Parameters<typeof partsOf>[1]) => partsOf(POINTS, options).map((part) => part.points)

describe('parts of the question', () => {
  it('points that nothing ties are apart, each with its own options', () => {
    const parts = partsOf(POINTS, [option('back-darts', [line({ waist: -1 }, 50)]), option('bust-darts', [line({ chest: -1 }, 50)])])
    expect(parts.map((part) => part.points)).toEqual([['waist'], ['chest'], ['inseam']])
    expect(parts.map(({ keys }) => [...keys])).toEqual([['back-darts/less'], ['bust-darts/less'], []])
  })
  it('an option that moves two ties them', () => {
    expect(points([option('sides-in', [line({ waist: -1, chest: -1 }, 50)])])).toEqual([['waist', 'chest'], ['inseam']])
  })
  it('so do two rivals', () => {
    const rivals = [
      option('back-darts', [line({ waist: -1 }, 50)], { excludes: ['bust-darts'] }),
      option('bust-darts', [line({ chest: -1 }, 50)])
    ]
    expect(points(rivals)).toEqual([['waist', 'chest'], ['inseam']])
  })
  it('and a limit that two draw on', () => {
    const shared = [{ group: 'pocket-gap', shares: [1], budgetMm: 30, because: { code: 'limit.sides', values: {} } }]
    const two = [
      option('back-darts', [line({ waist: -1 }, 50)], { shared }),
      option('leg-shorten-plain', [line({ inseam: -1 }, 50)], { shared })
    ]
    expect(points(two)).toEqual([['waist', 'inseam'], ['chest']])
  })
})
