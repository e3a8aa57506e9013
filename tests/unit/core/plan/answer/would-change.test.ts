import { describe, expect, it } from 'vitest'
import type { Made } from '../../../../../core/garment/garment-input.ts'
import { reckon, whatWouldChange } from '../../../../../core/reckon.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'
import { rowan } from '../../../../corpus/plans/wearers.ts'

const trousers = { waist: 820, hip: 1050, thigh: 640 }
const codes = (request: Parameters<typeof whatWouldChange>[0]): string[] => whatWouldChange(request).map(({ code }) => code)

describe('what would change the verdict', () => {
  it('a level more, where only the level stands in the way', () => {
    // 30 too big at the seat: level 4 work, which holds 38
    expect(
      codes({ garment: garment('trousers', { ...trousers, hip: 1110 }), wearer: rowan, means: { level: 3, tailor: false } })
    ).toContain('change.level')
  })
  it('more cloth at the seams, where they are 2 mm short of enough', () => {
    // 60 too small at the waist: an outlet of 25 gives 30
    const request = {
      garment: garment('trousers', { ...trousers, waist: 752 }),
      wearer: rowan,
      means: { level: 3 as const, tailor: false },
      limits: { 'waist-out-panel': 0 }
    }
    expect(codes(request)).toContain('change.cloth')
  })
  describe('10 mm more cloth is 10 mm more than is told, or else assumed', () => {
    const BACK = 'waist-out-centre-back'
    const SIDES = 'waist-out-side-seams'
    // wanted from 800; the panel and the button are ruled out, 10 of every seam stay
    const verdict = (waist: number, made: Partial<Made>, only: typeof BACK | typeof SIDES) =>
      whatWouldChange({
        garment: garment('trousers', { ...trousers, waist }, made),
        wearer: rowan,
        means: { level: 3, tailor: false },
        limits: { 'waist-out-panel': 0, 'waist-button-move': 0, [only === SIDES ? BACK : SIDES]: 0 }
      }).find(({ code }) => code === 'change.cloth')?.values.verdict
    it.each<[string, Partial<Made>, typeof BACK | typeof SIDES, number]>([
      ['an outlet told at 15 then holds 2 × (25 − 10) = 30', { outletMm: 15 }, BACK, 30],
      ['trousers of which nothing is told have 25: 2 × (35 − 10) = 50', {}, BACK, 50],
      ['told by the seam, 15: 2 × (25 − 10) = 30', { seamAllowanceMm: { 'centre-back': 15 } }, BACK, 30],
      ['sides told at 12: 4 × (22 − 10) = 48', { seamAllowanceMm: 12 }, SIDES, 48]
    ])('%s', (_why, made, only, holds) => {
      expect(verdict(800 - holds + 1, made, only)).toBe('alters-to-fit')
      expect(verdict(800 - holds - 5, made, only)).not.toBe('alters-to-fit')
    })
  })
  it('another fit, where the garment is cut wider than is wanted', () => {
    const shirt = { chest: 1200, waist: 1090, hem: 1250, shoulderWidth: 490 }
    expect(codes({ garment: garment('shirt', shirt), wearer: rowan, means: { level: 1, tailor: false } })).toContain('change.fits')
  })
  it('fits that come to the same are said once', () => {
    const shirt = { chest: 1200, waist: 1090, hem: 1250, shoulderWidth: 490 }
    const all = whatWouldChange({ garment: garment('shirt', shirt), wearer: rowan, means: { level: 1, tailor: false } })
    const [fits, ...others] = all.filter(({ code }) => code.startsWith('change.fit'))
    expect(others.every(({ values }) => values.verdict !== fits?.values.verdict)).toBe(true)
    expect(fits?.text).toMatch(/^In another fit \(.+ or .+\): .+\.$/)
    expect(String(fits?.values.ids).split(' ').length).toBeGreaterThan(1)
  })
  it('nothing, where it alters to fit already or is never altered', () => {
    expect(codes({ garment: garment('trousers', { ...trousers, waist: 895 }), wearer: rowan, means: { level: 3, tailor: false } })).toEqual(
      []
    )
    expect(
      codes({
        garment: garment('jacket', { chest: 1300, shoulderWidth: 480 }, {}, { use: 'protective' }),
        wearer: rowan,
        means: { level: 3, tailor: false }
      }).filter((code) => !code.startsWith('change.fit'))
    ).toEqual([])
  })
})

describe('what is worth knowing of oneself', () => {
  it('a measure of one’s own that decides is asked of oneself, not of the seller', () => {
    const { body } = rowan
    const { neckGirth: _, ...withoutNeck } = body
    const shirt = garment('shirt', { chest: 1080, waist: 940, hem: 1080, shoulderWidth: 445, sleeveLength: 610, neck: 398 })
    const asks = reckon({ garment: shirt, wearer: { ...rowan, body: withoutNeck }, means: { level: 1, tailor: false } }).ask
    expect(asks.find((ask) => ask.body === 'neckGirth')?.question).toContain('your own neck')
    expect(
      reckon({ garment: shirt, wearer: rowan, means: { level: 1, tailor: false } }).ask.find((ask) => ask.body === 'neckGirth')
    ).toBeUndefined()
  })
})
