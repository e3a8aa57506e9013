/** Strips, measured with a ruler that knows nothing but drawn lines, against the trade's figures and a general curve. */
import { describe, expect, it } from 'vitest'
import { offsetsThrough } from '../../../../../core/worksheet/seam-line.ts'
import { job, lineOf, linesOf, request, ruler, SHIRT, type Spot, TROUSERS, templateOf, templatesOf, waistIn, xAtHeight } from './given.ts'

/**
 * The taper as a general curve: straight to 1 − β, then the parabola that touches the straight line there and the old seam at the end. As a Bézier
 * curve its middle handle is where the two tangents meet: on the old seam, at 1 − β/2. Drawn by de Casteljau's halving, not by the formula.
 */
function taperAsCurve(deepest: number, length: number, blend: number): Spot[] {
  const mix = (a: Spot, b: Spot, t: number): Spot => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t })
  const meets: Spot = { x: 0, y: length * (1 - blend / 2) }
  const head: Spot = { x: deepest, y: 0 }
  const end: Spot = { x: 0, y: length }
  const joint = mix(head, meets, (1 - blend) / (1 - blend / 2))
  const curve = Array.from({ length: 201 }, (_, i) => mix(mix(joint, meets, i / 200), mix(meets, end, i / 200), i / 200))
  return [head, ...curve]
}

describe('the taper at the centre back', () => {
  const template = templateOf(waistIn(63.5), request('trousers', TROUSERS))
  const line = lineOf(template, 'makes')
  it('is 31.75 mm off the old seam at the top and nothing 200 mm below', () => {
    expect(line[0]).toEqual({ x: 31.75, y: 0 })
    expect(line.at(-1)).toEqual({ x: 0, y: 200 })
  })
  it('is the curve of the trade to a hundredth of a mm', () => {
    const curve = taperAsCurve(31.75, 200, 1 / 3)
    for (let y = 0.5; y < 200; y += 3.7) expect(xAtHeight(line, y)).toBeCloseTo(xAtHeight(curve, y), 2)
  })
  it('reads off every 25 mm as worked out by hand', () => {
    // 1.2 of the way: 31.75 × (1 − 1.2 × 25/200) and so on; the last ones on the parabola
    const byHand = [26.99, 22.23, 17.46, 12.7, 7.94, 3.57, 0.89]
    byHand.forEach((mm, i) => {
      expect(Math.abs(xAtHeight(line, 25 * (i + 1)) - mm)).toBeLessThan(0.02)
    })
  })
  it('lies on the old seam, which goes to the same end and stays below it', () => {
    expect(ruler(lineOf(template, 'goes'))).toBeCloseTo(200, 9)
    const stays = linesOf(template, 'edge').find((edge) => edge.every(({ x }) => x === 0))
    expect(stays?.[0]).toEqual({ x: 0, y: 200 })
  })
  it('tailored trousers keep their cloth: nothing is cut; plain ones keep half an inch', () => {
    expect(linesOf(template, 'cut')).toEqual([])
    const plain = templateOf(waistIn(63.5), request('trousers', TROUSERS, { tailored: false, outletMm: 20 }))
    const cut = lineOf(plain, 'cut')
    for (const { x, y } of cut) expect(xAtHeight(lineOf(plain, 'makes'), y === 0 ? 0.001 : y) - x).toBeCloseTo(12.7, 1)
    expect(Math.min(...cut.map(({ x }) => x))).toBeGreaterThanOrEqual(-20)
  })
  it('let out, it lies in the allowance and nothing is cut', () => {
    const out = templateOf(
      job('waist-out-centre-back', 20, { waist: 20 }, [{ seam: 'centre-back', offsetMm: -10 }], 'more'),
      request('trousers', TROUSERS, { outletMm: 25 })
    )
    expect(lineOf(out, 'makes')[0]).toEqual({ x: -10, y: 0 })
    expect(linesOf(out, 'cut')).toEqual([])
    expect(out.notes.join(' ')).toContain('nothing is cut')
    expect(out.notes.join(' ')).not.toContain('out of the band')
  })
  it('taken in, the band is made shorter by what both layers of the seam take', () => {
    expect(template.notes.join(' ')).toContain('Take 6.4 cm out of the band')
  })
  it('has a cross every 25 mm and says what was not told', () => {
    const crosses = linesOf(template, 'mark').filter(
      (mark) => mark.length === 2 && Math.abs(Math.abs((mark[0]?.x ?? 0) - (mark[1]?.x ?? 0)) - 3.2) < 1e-9
    )
    expect(crosses.length).toBeGreaterThanOrEqual(9)
    expect(template.assumed.join(' ')).toContain('taper')
    const told = templateOf(waistIn(63.5), request('trousers', TROUSERS, { taperLengthMm: 180 }))
    expect(told.assumed).toEqual([])
    expect(lineOf(told, 'makes').at(-1)).toEqual({ x: 0, y: 180 })
  })
})

describe('legs', () => {
  const taper = job('leg-taper', 60, { knee: -40, legOpening: -60 }, [
    { seam: 'inseam', offsetMm: 15 },
    { seam: 'side', offsetMm: 15 }
  ])
  const strip = templateOf(taper, request('trousers', TROUSERS), { inseam: 750 })
  const line = lineOf(strip, 'makes')
  it('one strip for both seams, from the fork to the hem as it will be, and a mirror of itself in the hem that is turned up', () => {
    expect(strip.title).toContain('side seam')
    expect(line[0]).toEqual({ x: 0, y: 0 })
    // both seams, two layers: four offsets make the change around
    expect(4 * xAtHeight(line, 750)).toBeCloseTo(60, 6)
    // the knee stands 0.47 down today's inside leg
    expect(4 * xAtHeight(line, 0.47 * 788)).toBeCloseTo(40, 1)
    const hem = line.at(-1)?.y ?? 0
    expect(hem).toBeGreaterThan(750)
    for (let d = 1; d < hem - 750; d += 5) expect(xAtHeight(line, 750 + d)).toBeCloseTo(xAtHeight(line, 750 - d), 6)
  })
  it('from the knee alone it leaves the old seam there, without a corner', () => {
    const below = templateOf(
      job('leg-taper', 40, { legOpening: -40 }, [
        { seam: 'inseam', offsetMm: 10 },
        { seam: 'side', offsetMm: 10 }
      ]),
      request('trousers', TROUSERS)
    )
    const only = lineOf(below, 'makes')
    expect(only[0]?.x).toBe(0)
    expect(only[0]?.y).toBeCloseTo(0.47 * 788, 6)
    expect((only[1]?.x ?? 1) / ((only[1]?.y ?? 0) - (only[0]?.y ?? 0))).toBeLessThan(0.003)
  })
  it('a side that is told apart has a strip of its own', () => {
    const apart = job('leg-taper', 40, { legOpening: -40 }, [
      { seam: 'side', offsetMm: 20, side: 'left' },
      { seam: 'side', offsetMm: 15, side: 'right' }
    ])
    const strips = templatesOf(apart, request('trousers', TROUSERS))
    expect(strips.map(({ title }) => title.slice(title.lastIndexOf(',') + 2))).toEqual(['left', 'right'])
    expect(strips.map((one) => lineOf(one, 'makes').find(({ y }) => y === 788)?.x)).toEqual([20, 15])
  })
})

describe('bodies', () => {
  it('side seams pass chest, waist and hem by a quarter of what each is taken in', () => {
    const sides = job('sides-in', 60, { chest: -40, waist: -60, hem: -48 }, [{ seam: 'side', offsetMm: 15 }])
    const line = lineOf(templateOf(sides, request('shirt', { ...SHIRT, napeToWaist: 440 })), 'makes')
    expect(4 * xAtHeight(line, 0.001)).toBeCloseTo(40, 1)
    // the waist 0.45 of the way from nape to waist below the underarm
    expect(4 * xAtHeight(line, 0.45 * 440)).toBeCloseTo(60, 6)
    expect(4 * (line.at(-1)?.x ?? 0)).toBeCloseTo(48, 6)
  })
  it('the centre back of a jacket takes half as much at the hem as at the waist (as the row reckons)', () => {
    const back = job('centre-back-in', 30, { waist: -30 }, [{ seam: 'centre-back', offsetMm: 15 }])
    const line = lineOf(templateOf(back, request('jacket', { chest: 1080, waist: 1000, bodyLength: 740, napeToWaist: 430 })), 'makes')
    expect(line[0]).toEqual({ x: 0, y: -60 })
    expect(2 * xAtHeight(line, 0.45 * 430)).toBeCloseTo(30, 2)
    expect(2 * (line.at(-1)?.x ?? 0)).toBeCloseTo(15, 6)
  })
})

describe('a line through offsets', () => {
  const through = (...anchors: [number, number][]) => {
    const line = offsetsThrough(anchors.map(([y, offset]) => ({ y, offset })))
    if (line === null) throw new Error('nothing moves')
    return line
  }
  it('passes each offset and never swings past two neighbours', () => {
    const line = through([0, 4], [100, 12], [300, 10], [400, 10])
    expect([0, 100, 300, 400].map((y) => line.at(y))).toEqual([4, 12, 10, 10])
    for (let y = 0; y <= 400; y += 1) {
      const [low, high] = y < 100 ? [4, 12] : y < 300 ? [10, 12] : [10, 10]
      expect(line.at(y)).toBeGreaterThanOrEqual(low - 1e-9)
      expect(line.at(y)).toBeLessThanOrEqual(high + 1e-9)
    }
  })
  it('noughts at the ends are left out but for the last, where it runs out level', () => {
    const line = through([0, 0], [100, 0], [200, 8], [260, 0], [400, 0])
    expect([line.from, line.to]).toEqual([100, 260])
    expect(line.runsOut).toEqual({ above: true, below: true })
    expect(Math.abs(line.at(100.5))).toBeLessThan(0.002)
    expect(Math.abs(line.at(259.5))).toBeLessThan(0.005)
    expect(offsetsThrough([{ y: 0, offset: 0 }])).toBeNull()
  })
})
