import { describe, expect, it } from 'vitest'
import { bracketsOf, drawTape, stretchOf, type TapeInput } from '../../../components/tape/tape-geometry.ts'
import { inch } from './fixtures.ts'

const waist: TapeInput = {
  now: { mm: inch(32), sdMm: inch(0.45), told: true },
  band: { least: inch(28.75), ideal: inch(29.5), most: inch(30.5) },
  afterMm: inch(29.5)
}

describe('the stretch of tape that is shown', () => {
  it('is never shorter than 5 in or 12 cm, with what there is in its middle', () => {
    const inches = stretchOf([waist], 'in')
    expect(inches.toMm - inches.fromMm).toBeCloseTo(5 * 25.4, 6)
    expect((inches.fromMm + inches.toMm) / 2).toBeCloseTo((inch(28.75) + inch(32) + 1.645 * inch(0.45)) / 2, 6)
    const narrow: TapeInput = { now: null, band: { least: 700, ideal: 705, most: 710 }, afterMm: null }
    const cm = stretchOf([narrow], 'cm')
    expect(cm.toMm - cm.fromMm).toBeCloseTo(120, 6)
  })
  it('leaves a margin when what there is is long', () => {
    const far: TapeInput = { now: { mm: 1200, sdMm: 0, told: true }, band: { least: 800, ideal: 850, most: 900 }, afterMm: null }
    const stretch = stretchOf([far], 'cm')
    expect(stretch.toMm - stretch.fromMm).toBeCloseTo(1.22 * 400, 6)
  })
  it('is the union for tapes that are compared', () => {
    const other: TapeInput = { ...waist, now: { mm: inch(40), sdMm: 0, told: true } }
    const both = stretchOf([waist, other], 'in')
    expect(both.fromMm).toBeLessThan(inch(28.75))
    expect(both.toMm).toBeGreaterThan(inch(40))
  })
  it('reaches from the after mark when that lies beyond the band', () => {
    const stretch = stretchOf([{ ...waist, afterMm: inch(25) }], 'in')
    expect(stretch.fromMm).toBeLessThan(inch(25))
  })
})

describe('a drawn tape', () => {
  it('puts every mark where its millimetres are', () => {
    const drawing = drawTape(waist, 'in', 328)
    const pxPerInch = 328 / 5
    expect(drawing.now?.x).toBeDefined()
    expect((drawing.now?.x ?? 0) - (drawing.band?.to ?? 0)).toBeCloseTo(1.5 * pxPerInch, 3)
    expect((drawing.band?.to ?? 0) - (drawing.band?.from ?? 0)).toBeCloseTo(1.75 * pxPerInch, 3)
    expect(drawing.after?.x).toBeCloseTo(drawing.band?.best ?? -1, 6)
    expect((drawing.now?.to ?? 0) - (drawing.now?.from ?? 0)).toBeCloseTo(2 * 1.645 * 0.45 * pxPerInch, 3)
  })
  it('numbers inches at least 27 px apart and ticks at least 4.6 px apart, at every width', () => {
    for (const width of [84, 112, 248, 288, 328, 448, 900]) {
      for (const units of ['in', 'cm'] as const) {
        const { ticks, numerals } = drawTape(waist, units, width)
        for (let i = 1; i < ticks.length; i++) expect((ticks[i]?.x ?? 0) - (ticks[i - 1]?.x ?? 0)).toBeGreaterThanOrEqual(4.6 - 1e-6)
        const numbered = ticks.filter(({ length }) => length === 10)
        expect(numbered.length).toBeGreaterThan(0)
        for (let i = 1; i < numbered.length; i++) {
          expect((numbered[i]?.x ?? 0) - (numbered[i - 1]?.x ?? 0)).toBeGreaterThanOrEqual(27 - 1e-6)
        }
        expect(numerals.length).toBeLessThanOrEqual(numbered.length)
      }
    }
  })
  it('takes eighths of an inch as its finest tick at 328 px, with ten, seven and four long', () => {
    const { ticks } = drawTape(waist, 'in', 328)
    expect((ticks[1]?.x ?? 0) - (ticks[0]?.x ?? 0)).toBeCloseTo(328 / 40, 6)
    expect(new Set(ticks.map(({ length }) => length))).toEqual(new Set([10, 7, 4]))
  })
  it('lets no numeral come nearer than 2 px to a mark', () => {
    for (const at of [28.1, 29, 30.2, 31, 32, 32.4, 33.3]) {
      const drawing = drawTape({ ...waist, now: { mm: inch(at), sdMm: 3, told: true } }, 'in', 328)
      const marks = [drawing.band?.from, drawing.band?.to, drawing.band?.best, drawing.now?.x, drawing.after?.x]
      for (const numeral of drawing.numerals) {
        const half = (numeral.text.length * 5.85) / 2
        for (const mark of marks) expect(Math.abs((mark ?? 0) - numeral.x)).toBeGreaterThanOrEqual(half + 2)
        expect(numeral.x - half).toBeGreaterThanOrEqual(0)
        expect(numeral.x + half).toBeLessThanOrEqual(328)
      }
    }
  })
  it('lets no two numerals touch, however the marks push them aside', () => {
    let pushed = 0
    for (let mm = 900; mm <= 1000; mm++) {
      const { numerals } = drawTape(
        { now: { mm, sdMm: 12, told: true }, band: { least: 998, ideal: 1036, most: 1080 }, afterMm: 1010 },
        'cm',
        340
      )
      for (const [i, one] of numerals.entries()) {
        const next = numerals[i + 1]
        if (next === undefined) continue
        expect(next.x - one.x).toBeGreaterThanOrEqual(((one.text.length + next.text.length) * 5.85) / 2 + 4 - 1e-9)
        if (next.x - one.x < 30) pushed++
      }
    }
    expect(pushed).toBeGreaterThan(0)
  })
  it('tacks a run of stitches only where now and after are 14 px apart', () => {
    expect(drawTape(waist, 'in', 328).after?.stitched).toBe(true)
    expect(drawTape({ ...waist, afterMm: inch(31.9) }, 'in', 328).after?.stitched).toBe(false)
  })
  it('is lower without a plan, and keeps its band alone when nothing is told', () => {
    expect(drawTape(waist, 'in', 328).height).toBe(76)
    const alone = drawTape({ now: null, band: waist.band, afterMm: null }, 'in', 328)
    expect(alone.height).toBe(68)
    expect(alone.now).toBeNull()
    expect(alone.band).not.toBeNull()
  })
  it('keeps labels inside its edges', () => {
    const { clamp } = drawTape(waist, 'in', 328)
    expect(clamp(3, 60)).toBe(30)
    expect(clamp(327, 60)).toBe(298)
    expect(clamp(100, 60)).toBe(100)
  })
  it('covers the whole band with its hatch', () => {
    const { hatch, band } = drawTape(waist, 'in', 328)
    const starts = [...hatch.matchAll(/M(-?\d+) 49/g)].map((match) => Number(match[1]))
    expect(starts[0] ?? 999).toBeLessThanOrEqual((band?.from ?? 0) - 24)
    expect(starts.at(-1) ?? 0).toBeGreaterThan((band?.to ?? 0) - 6 - 1e-9)
  })
})

describe('a band whose edges the cut leaves free', () => {
  const free = (band: TapeInput['band'], now = 1300): TapeInput => ({ now: { mm: now, sdMm: 0, told: true }, band, afterMm: null })
  it('runs out of the strip above the least, with a bracket there alone and no line of the best', () => {
    const { band, hatch, width } = drawTape(free({ least: 980, ideal: null, most: null }), 'cm', 328)
    expect(band).toMatchObject({ to: width, closedFrom: true, closedTo: false, best: null })
    expect(band?.from).toBeGreaterThan(0)
    expect(bracketsOf(band as NonNullable<typeof band>, 24.5, 49.5, 5).match(/M/g)).toHaveLength(1)
    const starts = [...hatch.matchAll(/M(-?[\d.]+) 49/g)].map((match) => Number(match[1]))
    expect(starts.at(-1) ?? 0).toBeGreaterThan(width - 6 - 1e-9)
  })
  it('runs out below the most', () => {
    const { band } = drawTape(free({ least: null, ideal: null, most: 860 }, 840), 'cm', 328)
    expect(band).toMatchObject({ from: 0, closedFrom: false, closedTo: true })
    expect(bracketsOf(band as NonNullable<typeof band>, 6, 16, 3)).toMatch(/^M[\d.]+ 6H[\d.]+V16h-3$/)
  })
  it('covers the whole strip, without a bracket, where both are free', () => {
    const { band, width, numerals } = drawTape(free({ least: null, ideal: null, most: null }), 'cm', 328)
    expect(band).toEqual({ from: 0, to: width, closedFrom: false, closedTo: false, best: null })
    expect(bracketsOf(band as NonNullable<typeof band>, 24.5, 49.5, 5)).toBe('')
    expect(numerals.length).toBeGreaterThan(0)
  })
  it('shows the closed edge and the figure, however far above it lies', () => {
    const stretch = stretchOf([free({ least: 980, ideal: null, most: null }, 1900)], 'cm')
    expect(stretch.fromMm).toBeLessThan(980)
    expect(stretch.toMm).toBeGreaterThan(1900)
    const far = drawTape(free({ least: 980, ideal: null, most: null }, 1900), 'cm', 248)
    expect(far.now?.x).toBeLessThan(248)
    expect(far.band?.from).toBeGreaterThan(0)
  })
  it('stands level with tapes that are closed', () => {
    const closed = free({ least: 980, ideal: 1010, most: 1040 }, 1000)
    const open = free({ least: 950, ideal: null, most: null }, 1100)
    const both = stretchOf([closed, open], 'cm')
    expect(both.fromMm).toBeLessThan(950)
    expect(both.toMm).toBeGreaterThan(1100)
    for (const one of [closed, open]) expect(Number.isFinite(drawTape(one, 'cm', 200, both).band?.to)).toBe(true)
  })
})
