/** Within which figures something fits: told bands and jobs of one line, so that both ends are known beforehand. */
import { describe, expect, it } from 'vitest'
import type { Option } from '../../../../../core/alterations/row.ts'
import { garmentAsWorn } from '../../../../../core/garment/garment-as-worn.ts'
import type { GarmentKind } from '../../../../../core/ids/kinds.ts'
import type { PointId } from '../../../../../core/ids/points.ts'
import { type Interval, intervalOf } from '../../../../../core/plan/conditions/conditions.ts'
import type { Means } from '../../../../../core/plan/means.ts'
import type { Beside } from '../../../../../core/plan/plan-alterations.ts'
import { besideBand } from '../beside.ts'
import { line, option } from '../options.ts'

const MEANS: Means = { level: 3, tailor: false }
interface Told {
  expected?: number
  sdMm?: number
  point?: PointId
  kind?: GarmentKind
  /** The band where that figure is told. */
  band?: (mm: number) => [number, number]
  options?: Option[]
  /** Does something else stay wrong then? */
  spoils?: (mm: number) => boolean
  means?: Means
  way?: 1 | -1
}
function within({
  expected = 820,
  sdMm = 100,
  point = 'waist',
  kind = 'trousers',
  band = () => [800, 840],
  options = [],
  spoils = () => false,
  means = MEANS,
  way = 1
}: Told = {}): [number | null, number | null] | null {
  const garment = garmentAsWorn({ kind, measures: [] })
  const tell = (mm: number): Beside => ({
    garment,
    gaps: [
      way === 1 ? besideBand(point, mm, ...band(mm)) : besideBand(point, 820, mm, mm + 40),
      besideBand('hip', spoils(mm) ? 1050 : 1000, 980, 1020)
    ],
    offer: () => ({ options })
  })
  const found: Interval | undefined = intervalOf({ point, expectedMm: expected, sdMm, way, tell }, means, 2)
  return found === undefined ? null : [found.least, found.most]
}
/** Two lines that move by whole marks: steps of 4. */
const takesIn = (capMm: number, more: Partial<Option> = {}) => option('waist-in-centre-back', [line({ waist: -1 }, capMm)], more)

describe('what an untold figure must be', () => {
  // by the band, 800 to 840, and a mark of 2 beyond either end
  it.each<[string, Told, [number | null, number | null] | null]>([
    ['with nothing to be done', {}, [798, 842]],
    ['thought to be too big', { expected: 900 }, [798, 842]],
    ['thought to be too small', { expected: 700 }, [798, 842]],
    ['thought to lie between two marks', { expected: 821 }, [798, 842]],
    ['with 32 to take in', { options: [takesIn(32)] }, [798, 874]],
    ['with 32 to take in, thought to be too big for that', { expected: 960, options: [takesIn(32)] }, [798, 874]],
    ['too hard a job', { options: [takesIn(32, { level: 4 })] }, [798, 842]],
    ['too hard a job, and a tailor at hand', { options: [takesIn(32, { level: 4 })], means: { level: 3, tailor: true } }, [798, 874]],
    ['a rescue that nobody asked for', { options: [takesIn(32, { rescue: true })] }, [798, 842]],
    [
      'a rescue that this person would wear',
      { options: [takesIn(32, { rescue: true })], means: { ...MEANS, acceptRescues: ['waist-in-centre-back'] } },
      [798, 874]
    ],
    ['no end below', { band: () => [0, 840] }, [null, 842]],
    ['no end above', { band: () => [800, 2000] }, [798, null]],
    // 22 from what is thought: past four sd of 5 nothing is looked for
    ['ends out of sight', { sdMm: 5 }, [null, null]],
    ['ends in sight', { sdMm: 5.6 }, [798, 842]],
    ['one end out of sight', { sdMm: 5, expected: 830 }, [null, 842]],
    ['something else wrong whatever it is', { spoils: () => true }, null],
    ['a body under a garment of 820, wanted from the body to 40 above it', { way: -1, expected: 800 }, [778, 822]],
    ['a body thought to be too large', { way: -1, expected: 900 }, [778, 822]],
    ['a body thought to be too small', { way: -1, expected: 700 }, [778, 822]]
  ])('%s', (_, told, ends) => expect(within(told)).toEqual(ends))

  // the band of what is told may be another than that of what is thought
  it.each<[string, Told, [number, number] | null]>([
    ['wider above', { band: (mm) => (mm === 820 ? [800, 840] : [800, 870]) }, [798, 872]],
    ['wider below', { band: (mm) => (mm === 820 ? [800, 840] : [770, 840]) }, [768, 842]],
    ['narrower above', { band: (mm) => (mm === 820 ? [800, 840] : [800, 830]) }, [798, 832]],
    ['narrower below', { band: (mm) => (mm === 820 ? [800, 840] : [811, 840]) }, [810, 842]],
    ['thought too big, and two marks further than it seemed', { expected: 900, band: (mm) => [800, mm === 900 ? 840 : 836] }, [798, 838]],
    ['thought too big, and three marks further', { expected: 900, band: (mm) => [800, mm === 900 ? 840 : 834] }, [798, 836]],
    ['thought too big, and too far for a second look', { expected: 900, band: (mm) => [800, mm === 900 ? 840 : 832] }, null],
    ['thought too small, and two marks further than it seemed', { expected: 700, band: (mm) => [mm === 700 ? 800 : 804, 840] }, [802, 842]],
    ['thought too small, and too far for a second look', { expected: 700, band: (mm) => [mm === 700 ? 800 : 808, 840] }, null]
  ])('%s', (_, told, ends) => expect(within(told)).toEqual(ends))

  it('ends at a hole where the figure moves what else is wanted: at a shoulder, and at the waist of a skirt', () => {
    const below = (mm: number) => mm >= 804 && mm <= 814
    const above = (mm: number) => mm >= 826 && mm <= 834
    for (const [spoils, ends] of [
      [below, [816, 842]],
      [above, [798, 824]]
    ] as const) {
      expect(within({ spoils, point: 'shoulderWidth', kind: 'jacket' })).toEqual(ends)
      expect(within({ spoils, kind: 'skirt' })).toEqual(ends)
      expect(within({ spoils })).toEqual([798, 842])
      expect(within({ spoils, point: 'thigh', kind: 'skirt' })).toEqual([798, 842])
    }
  })
})
