/** Where a skirt hangs, and what it may be too small for. */
import { describe, expect, it } from 'vitest'
import { reckon } from '../../../core/reckon.ts'
import type { Body } from '../../../core/wearer/body.ts'

const body = (figures: Record<string, number>): Body => Object.fromEntries(Object.entries(figures).map(([id, mm]) => [id, { mm }])) as Body
const NATURAL = { stature: 1660, waistGirth: 700, hipGirth: 980 }
const bandOf = (figures: Record<string, number>, cut = {}) =>
  reckon(
    {
      garment: { kind: 'skirt', measures: [{ point: 'waist', mm: 730, source: 'seller' }], cut },
      wearer: { fit: 'regular', sizes: 'women', body: body(figures) },
      means: { level: 3, tailor: false }
    },
    { outlook: false }
  ).gaps.find(({ point }) => point === 'waist')?.band

describe('the band of a skirt', () => {
  it('too small for where its wearer wears a band, it rides up: it may be as small as the natural waist wants', () => {
    const [natural, both] = [bandOf(NATURAL), bandOf({ ...NATURAL, waistbandGirth: 790 })]
    expect(both?.least).toBe(natural?.least)
    expect(both?.most).toBe((natural?.most ?? 0) + 90)
  })
  it('cut low it cannot', () => {
    const low = bandOf({ ...NATURAL, waistbandGirth: 790 }, { rise: 'low' })
    expect(low?.least).toBe((bandOf(NATURAL)?.least ?? 0) + 90)
  })
})
