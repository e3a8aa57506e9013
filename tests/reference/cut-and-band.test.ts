/** Bands, lengths, stretch and ease of the cut against the outside; the source stands beside each check. */
import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../core/garment/garment-input.ts'
import { stretchOf } from '../../core/garment/stretch.ts'
import { bandDrop } from '../../core/wearer/band-height.ts'
import { CUT_ROWS } from '../../core/wearer/cut/cut-table.ts'
import { cutOn } from '../../core/wearer/cut/seen.ts'
import { HEM_HEIGHTS } from '../../core/wearer/hem-height.ts'
import { wholeBody } from '../../core/wearer/whole-body.ts'

const IN = 25.4
const jeans = (frontRise: number): GarmentInput => ({ kind: 'jeans', measures: [{ point: 'frontRise', mm: frontRise, source: 'seller' }] })

describe('where a band sits, by its front rise', () => {
  // 279 second-hand pairs of women's US 0–2 measured by one shop (github.com/tas09009/thredup-scraper-api): the shop's own word beside the rise it
  // measured; medians and ranges of each word. The body of that size: stature 1640, hip 920 (ASTM D5585-11).
  const body = wholeBody({ stature: { mm: 1640 }, hipGirth: { mm: 920 } }, 'women')
  it.each([
    ['low', 173, 203],
    ['mid', 229, 229],
    ['high', 279, 305]
  ])('%s: from %d to %d mm', (word, from, to) => {
    for (const rise of [from, to]) {
      const seen = cutOn(garmentAsWorn(jeans(rise)), body).rise?.value
      expect(word === 'low' ? ['ultra-low', 'low'] : [word]).toContain(seen)
    }
  })
  // ANSUR II (2012): the front fork length to the navel is 18.6 + 0.038 stature + 0.194 hip for women; with 8 mm of room a rise of that length ends there
  it('a rise as long as the fork to the navel, and the room in it, ends at the navel', () => {
    const drop = bandDrop(garmentAsWorn(jeans(18.6 + 0.038 * 1640 + 0.194 * 920 + 8)), body)
    expect(Math.abs(drop?.frontMm ?? 99)).toBeLessThan(2)
  })
})

describe('a hip from a natural waist', () => {
  // the US pattern body measurements (misses' and women's), waist and hip in inches
  const sizes: [number, number][] = [
    [23, 32.5],
    [24, 33.5],
    [25, 34.5],
    [26.5, 36],
    [28, 38],
    [30, 40],
    [32, 42],
    [34, 44],
    [37, 46],
    [39, 48],
    [41.5, 50],
    [44, 52]
  ]
  it('lies within 1.65 of the sd that is claimed, on the whole within 25 mm: the largest sizes lie outside the survey', () => {
    const off = sizes.map(([waist, hip]) => (wholeBody({ waistGirth: { mm: waist * IN } }, 'women').get('hipGirth')?.mm ?? 0) - hip * IN)
    const mean = off.reduce((sum, one) => sum + one, 0) / off.length
    console.info(`hip from waist, 12 pattern sizes: ${off.map((one) => one.toFixed(0)).join(' ')}; mean ${mean.toFixed(1)} mm`)
    expect(Math.abs(mean)).toBeLessThan(25)
    for (const one of off) expect(Math.abs(one)).toBeLessThan(1.65 * 41)
  })
})

describe('the seam at the waist', () => {
  // back waist lengths of the same tables: misses 12 to 16 are 16.25 to 16.75 in, for a woman of about 5 ft 5½ in (1664)
  it('lies at 0.243 of the stature, within an inch of the pattern tables', () => {
    const back = wholeBody({ stature: { mm: 1664 } }, 'women').get('backWaistLength')?.mm ?? 0
    for (const inches of [16.25, 16.5, 16.75]) expect(Math.abs(back - inches * IN)).toBeLessThan(IN)
  })
})

describe('lengths by name', () => {
  // ANSUR II: the middle of the kneecap lies at 0.276 (women) and 0.278 (men) of the stature, the outer ankle bone at 0.039 and 0.042
  it('the kneecap lies in knee length, the ankle bone in ankle length', () => {
    for (const knee of [0.276, 0.278]) {
      expect(knee).toBeGreaterThan(HEM_HEIGHTS.knee[0])
      expect(knee).toBeLessThan(HEM_HEIGHTS.knee[2])
    }
    for (const ankle of [0.039, 0.042]) {
      expect(ankle).toBeGreaterThan(HEM_HEIGHTS.ankle[0])
      expect(ankle).toBeLessThan(HEM_HEIGHTS.ankle[2])
    }
  })
  it('names stand in one order: each ideal lies higher than the one before', () => {
    const ideals = Object.values(HEM_HEIGHTS).map(([, ideal]) => ideal)
    expect([...ideals].sort((a, b) => a - b)).toEqual(ideals)
  })
})

/** The band that a row of the cut sets at a point. */
function setOf(facet: string, value: string, kind: string, point: 'chest' | 'waist' | 'hip' | 'thigh' | 'shoulderWidth') {
  const row = CUT_ROWS.findLast(
    (one) =>
      one.facet === facet &&
      (one.values as readonly string[]).includes(value) &&
      (one.kinds as readonly string[]).includes(kind) &&
      one.wants[point] !== undefined &&
      'set' in Object(one.wants[point])
  )
  const want = row?.wants[point]
  if (want === undefined || want === 'skip' || !('set' in want)) throw new Error(`no band for ${value} at ${point}`)
  return want.set
}

describe('ease of the cut', () => {
  // Central Washington Univ. costume text ch. 16: waist 1/2–1 in, hip 2–2 3/4 in for women, bust of a fitted dress 1 1/2–2 in and up to 3
  it('a pencil skirt and a sheath have the ease of the costume text', () => {
    const [, waist] = setOf('silhouette', 'pencil', 'skirt', 'waist')
    const [, hip] = setOf('silhouette', 'pencil', 'skirt', 'hip')
    const [least, chest] = setOf('silhouette', 'sheath', 'dress', 'chest')
    expect(waist).toBeGreaterThanOrEqual(0.5 * IN)
    expect(waist).toBeLessThanOrEqual(1 * IN)
    expect(hip).toBeGreaterThanOrEqual(2 * IN)
    expect(hip).toBeLessThanOrEqual(2.75 * IN)
    // the text's least is what it draws a pattern with; half of the sold stock is smaller, so what is worn begins lower
    expect(least).toBeLessThanOrEqual(1.5 * IN)
    expect(least).toBeGreaterThanOrEqual(1 * IN)
    expect(chest).toBeLessThanOrEqual(3 * IN)
  })
  // New Mexico State Univ. guide C-209: thigh 1–2 in
  it('a straight leg has the thigh ease of the extension guide as its least and more', () => {
    const [least, ideal] = setOf('leg', 'straight', 'jeans', 'thigh')
    expect(least).toBeGreaterThanOrEqual(1 * IN)
    expect(ideal).toBeGreaterThanOrEqual(2 * IN)
  })
  // US Army TM 10-8400-201-23: a coat of size 40 measures 44 in at the chest
  it('a tailored jacket has the four inches of the army manual within its band, near its ideal', () => {
    const [least, ideal, most] = setOf('layer', 'suit', 'jacket', 'chest')
    expect(4 * IN).toBeGreaterThan(least)
    expect(4 * IN).toBeLessThan(most ?? 0)
    expect(Math.abs((ideal ?? 0) - 4 * IN)).toBeLessThan(6)
  })
  // The Cutter's Practical Guide (1898) part 1 p. 20: an overcoat has 1 in a side, 2 in in all, more at the chest than the body coat it goes over
  it('an overcoat has about two inches more than the jacket under it', () => {
    const [, jacket] = setOf('layer', 'suit', 'jacket', 'chest')
    const [, coat] = setOf('layer', 'overcoat', 'coat', 'chest')
    expect(Math.abs((coat ?? 0) - (jacket ?? 0) - 2 * IN)).toBeLessThan(16)
  })
})

describe('stretch', () => {
  // published classes of knits: stable 18–25 %, moderate 25–50 %, stretchy 50–75 %, super 75–100 % and over (STRETCHC)
  it.each([
    [
      'stable: a ponte of 2 % elastane',
      'dress',
      [
        ['viscose', 98],
        ['elastane', 2]
      ],
      18,
      25
    ],
    ['moderate: a cotton jersey', 'knit-top', [['cotton', 100]], 25, 50],
    [
      'stretchy: a jersey of 5 % elastane',
      'knit-top',
      [
        ['viscose', 95],
        ['elastane', 5]
      ],
      50,
      75
    ],
    [
      'super: leggings of 18 % elastane',
      'trousers',
      [
        ['polyamide', 82],
        ['elastane', 18]
      ],
      75,
      110
    ]
  ] as const)('%s', (_, kind, shares, from, to) => {
    const fibres = shares.map(([fibre, percent]) => ({ fibre, percent }))
    const { percent } = stretchOf(kind, 'knit', { fibres }, {})
    expect(percent).toBeGreaterThanOrEqual(from)
    expect(percent).toBeLessThanOrEqual(to)
  })
  // the bound at full stretch is 1 − 1/(1 + s) (a pattern text's worked example: 50 % → 33 %); what is asked in wear stays well inside it
  it('what is asked in wear is never more than two thirds of the bound at full stretch', () => {
    for (const told of [10, 20, 30, 50, 75, 100, 150]) {
      for (const structure of ['woven', 'knit'] as const) {
        const { usable } = stretchOf('jeans', structure, { stretchPercent: told }, {})
        expect(usable).toBeLessThanOrEqual((2 / 3) * (1 - 1 / (1 + told / 100)) + 1e-9)
      }
    }
  })
})
