import { describe, expect, it } from 'vitest'
import { tapeInput } from '../../../components/tape/tape.tsx'
import { gapState, gapWords, type PointShown, tapeWords, wantedLabel, wantedWords } from '../../../components/tape/tape-words.ts'
import { wordsFor } from '../../../components/words.tsx'
import { inch } from './fixtures.ts'

const inches = wordsFor({ units: 'in' })
const cm = wordsFor({ units: 'cm' })
const waist: PointShown = {
  point: 'waist',
  garmentMm: inch(32),
  from: 'seller',
  sdMm: inch(0.456),
  band: { least: inch(28.75), ideal: inch(29.5), most: inch(30.5) },
  gapMm: inch(1.5)
}

describe('a tape in words', () => {
  it('says now, wanted, gap and after', () => {
    expect(tapeWords(waist, inch(29.5), inches)).toBe(
      'Waist: 32 in, give or take ¾. Wanted 28¾ to 30½, best 29½. 1½ in too big. After the work 29½: fits.'
    )
  })
  it('says what stays wrong after the plan', () => {
    expect(tapeWords(waist, inch(31), inches)).toContain('After the work 31, ½ in too big.')
  })
  it('says that a figure was worked out, not told', () => {
    const hip: PointShown = {
      ...waist,
      point: 'hip',
      garmentMm: 1035,
      from: 'inferred',
      sdMm: 21,
      band: { least: 978, ideal: 1010, most: 1054 }
    }
    expect(tapeWords(hip, null, cm)).toBe(
      'Hip: not stated; our guess is 103.5 cm, give or take 3.5. Wanted 97.8 to 105.4, best 101. May fit.'
    )
  })
  it('says that a figure comes from the size label, and never that it was told', () => {
    const label: PointShown = { ...waist, garmentMm: inch(30), from: 'label', sdMm: inch(1) }
    expect(tapeWords(label, null, inches)).toBe(
      'Waist: not measured; about 30 in by the size label, give or take 1⅝. Wanted 28¾ to 30½, best 29½. May fit.'
    )
    expect(tapeInput(label).now?.told).toBe(false)
  })
  it('says that nothing is told', () => {
    expect(tapeWords({ ...waist, garmentMm: null }, null, inches)).toBe('Waist: not stated. Wanted 28¾ to 30½, best 29½.')
  })
})

describe('the gap beside a point', () => {
  it.each([
    [{ garmentMm: inch(32) }, 'over', '1½ in too big'],
    [{ garmentMm: inch(28) }, 'under', '¾ in too small'],
    [{ garmentMm: inch(29.5), sdMm: inch(0.2) }, 'inside', 'Fits'],
    [{ garmentMm: inch(30.25) }, 'probably-inside', 'Probably fits'],
    [{ garmentMm: inch(30.25), from: 'inferred' }, 'may-be-inside', 'May fit'],
    [{ band: null }, 'not-judged', 'Can’t be checked'],
    [{ garmentMm: null }, 'not-told', 'Not stated'],
    [{ garmentMm: inch(32), point: 'inseam' }, 'over', '1½ in too long'],
    [{ garmentMm: inch(28), point: 'inseam' }, 'under', '¾ in too short'],
    [{ garmentMm: inch(32), point: 'shoulderWidth' }, 'over', '1½ in too wide'],
    [{ garmentMm: inch(28), point: 'shoulderWidth' }, 'under', '¾ in too narrow'],
    [{ garmentMm: inch(30.5) + 0.5 }, 'over', 'On the edge']
  ] as const)('%o', (change, state, text) => {
    const shown: PointShown = { ...waist, ...change }
    expect(gapState(shown)).toBe(state)
    expect(gapWords(shown, inches)).toBe(text)
  })
})

describe('a band whose edges the cut leaves free', () => {
  const hip: PointShown = { ...waist, point: 'hip', garmentMm: 1300, sdMm: 0 }
  const free = (band: PointShown['band'], garmentMm = 1300): PointShown => ({ ...hip, garmentMm, band })
  it.each([
    [{ least: 980, ideal: null, most: null }, 'wanted 98 or more', '98 or more'],
    [{ least: 980, ideal: 1020, most: null }, 'wanted 98 or more', '98 or more, best 102'],
    [{ least: null, ideal: null, most: 860 }, 'wanted 86 or less', '86 or less'],
    [{ least: 980, ideal: null, most: 1040 }, 'wanted 98–104', '98–104'],
    [{ least: 980, ideal: 1010, most: 1040 }, 'wanted 98–104', '98–104, best 101'],
    [{ least: null, ideal: null, most: null }, 'any size will do', 'any figure']
  ])('%o is said', (band, label, phrase) => {
    expect(wantedLabel(band, cm)).toBe(label)
    expect(wantedWords(band, cm)).toBe(phrase)
  })
  it('is never too big where it is free above, and as much too small as ever', () => {
    const band = { least: 980, ideal: null, most: null }
    expect(gapState(free(band))).toBe('inside')
    expect(gapState({ ...free(band, 985), sdMm: 12 })).toBe('probably-inside')
    expect(gapWords(free(band, 960), cm)).toBe('2 cm too small')
    expect(tapeWords(free(band), null, cm)).toBe('Hip: 130 cm, give or take 0. Wanted 98 or more. Fits.')
    expect(tapeWords(free(band, 960), 1000, cm)).toContain('2 cm too small. After the work 100: fits.')
  })
  it('is never too small where it is free below', () => {
    const band = { least: null, ideal: null, most: 860 }
    expect(gapState(free(band, 200))).toBe('inside')
    expect(gapWords(free(band, 880), cm)).toBe('2 cm too big')
  })
  it('says once that any figure will do', () => {
    const band = { least: null, ideal: null, most: null }
    expect(gapState(free(band))).toBe('inside')
    expect(tapeWords(free(band), null, cm)).toBe('Hip: 130 cm, give or take 0. Any size will do.')
    expect(tapeWords({ ...hip, garmentMm: null, band }, null, cm)).toBe('Hip: not stated. Wanted any figure.')
  })
  it('says no best where nothing is aimed for', () => {
    expect(tapeWords(free({ least: 980, ideal: null, most: 1340 }), null, cm)).toContain('Wanted 98 to 134. Fits.')
  })
})
