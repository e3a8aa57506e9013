/** Darts, caps, curved hems and gauges: lengths that must agree, measured on the drawn lines. */
import { describe, expect, it } from 'vitest'
import { dartsOf } from '../../../../../core/worksheet/drawing/dart.ts'
import { capCurve } from '../../../../../core/worksheet/drawing/sleeve-cap.ts'
import { job, lineOf, linesOf, request, ruler, SHIRT, type Spot, TROUSERS, templateOf, templatesOf, xAtHeight } from './given.ts'

describe('darts', () => {
  it('both legs are as long as each other, by Pythagoras', () => {
    const template = templateOf(
      job('waist-in-darts', 32, { waist: -32 }, [{ seam: 'dart', offsetMm: 8 }]),
      request('skirt', { waist: 760 })
    )
    const [left, right] = linesOf(template, 'makes')
    // 32 in two darts: 16 each, 8 to either side of the fold; 115 long
    expect(ruler(left ?? [])).toBeCloseTo(Math.hypot(115, 8), 9)
    expect(ruler(right ?? [])).toBeCloseTo(ruler(left ?? []), 9)
    expect((right?.[0]?.x ?? 0) - (left?.[0]?.x ?? 0)).toBeCloseTo(16, 9)
  })
  it('past 40 mm four share it; a wide one is drawn longer', () => {
    expect(dartsOf({ id: 'waist-in-darts', amountMm: 40 })).toMatchObject({ count: 2, halfMm: 10 })
    expect(dartsOf({ id: 'waist-in-darts', amountMm: 60 })).toMatchObject({ count: 4, halfMm: 7.5 })
    expect(dartsOf({ id: 'back-darts', amountMm: 100 })).toMatchObject({ count: 2, halfMm: 25, downMm: 125, upMm: 125 })
    expect(dartsOf({ id: 'seat-in', amountMm: 30 })).toBeNull()
  })
  it('shirt back darts: an inch each takes two inches, three above and three below the waist (DARTE)', () => {
    const template = templateOf(job('back-darts', 50.8, { waist: -50.8 }, [{ seam: 'dart', offsetMm: 12.7 }]), request('shirt', SHIRT))
    const [left, right] = linesOf(template, 'makes')
    const ys = (left ?? []).map(({ y }) => y)
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([-76.2, 76.2])
    expect((right?.[1]?.x ?? 0) - (left?.[1]?.x ?? 0)).toBeCloseTo(25.4, 9)
    expect(ruler(right ?? [])).toBeCloseTo(ruler(left ?? []), 9)
  })
})

describe('the sleeve cap', () => {
  const up = job('sleeve-shorten-head', 30, { sleeveLength: -30 }, [{ seam: 'armhole', offsetMm: 30 }])
  const template = templateOf(up, request('shirt', SHIRT))
  const [old, made] = [lineOf(template, 'goes'), lineOf(template, 'makes')]
  it('both seams, old and new, are the armhole and a quarter of an inch of ease (shirts 0 to 13, common practice), though the sleeve is narrower below', () => {
    expect(2 * ruler(old)).toBeCloseTo(520 + 6.35, 1)
    expect(2 * ruler(made)).toBeCloseTo(520 + 6.35, 1)
    expect(made.at(-1)?.x ?? 0).toBeLessThan(old.at(-1)?.x ?? 0)
  })
  it('a knit has a little more ease (MADA: 13 to 19)', () => {
    const knit = templateOf(up, request('knit-top', SHIRT, {}, { cut: { knit: 'tee' } }))
    expect(2 * ruler(lineOf(knit, 'makes'))).toBeCloseTo(520 + 15.875, 1)
  })
  it('all of it moves down: the top by the amount, the underarm by no less', () => {
    expect((made[0]?.y ?? 0) - (old[0]?.y ?? 0)).toBeCloseTo(30, 9)
    expect((made.at(-1)?.y ?? 0) - (old.at(-1)?.y ?? 0)).toBeGreaterThanOrEqual(30)
    for (const { x, y } of made.slice(1, -1)) if (x < (old.at(-1)?.x ?? 0)) expect(y).toBeGreaterThan(heightAt(old, x))
  })
  it('the curve is as long by an integral of its own', () => {
    // Simpson's rule on the speed of the cubic with these handles
    const handles: Spot[] = [
      { x: 0, y: 0 },
      { x: 97.5, y: 0 },
      { x: 107.25, y: 160 },
      { x: 195, y: 160 }
    ]
    const speed = (t: number): number => {
      const d = (of: (spot: Spot) => number): number => {
        const [a, b, c, e] = handles.map(of) as [number, number, number, number]
        return 3 * (1 - t) ** 2 * (b - a) + 6 * (1 - t) * t * (c - b) + 3 * t * t * (e - c)
      }
      return Math.hypot(
        d(({ x }) => x),
        d(({ y }) => y)
      )
    }
    let sum = 0
    for (let i = 0; i < 1000; i++) sum += (speed(i / 1000) + 4 * speed((i + 0.5) / 1000) + speed((i + 1) / 1000)) / 6000
    expect(ruler(capCurve(195, 160))).toBeCloseTo(sum, 1)
  })
  it('a tailored sleeve has none, and figures that do not go together are said', () => {
    expect(templatesOf(up, request('jacket', { chest: 1100, bicep: 400, sleeveLength: 640 }))).toEqual([])
    expect(templatesOf(up, request('shirt', { ...SHIRT, bicep: 560, armhole: 420 }))).toEqual([])
  })
})
function heightAt(line: readonly Spot[], x: number): number {
  return xAtHeight(
    line.map((spot) => ({ x: spot.y, y: spot.x })),
    x
  )
}

describe('the curved hem of a shirt', () => {
  const up = job('body-shorten', 40, { bodyLength: -40 }, [{ seam: 'hem', offsetMm: 40 }])
  const halves = templatesOf(up, request('shirt', SHIRT), { hem: 1092 })
  const [front, back] = halves
  it('front and back end level, at one height at the side seam, 40 mm above the old hem', () => {
    if (front === undefined || back === undefined) throw new Error('two halves')
    for (const half of [front, back]) {
      const [old, made] = [lineOf(half, 'goes'), lineOf(half, 'makes')]
      expect((old.at(-1)?.y ?? 0) - (made.at(-1)?.y ?? 0)).toBeCloseTo(40, 9)
      expect((old[0]?.y ?? 0) - (made[0]?.y ?? 0)).toBeCloseTo(40, 9)
      expect(made.at(-1)?.x).toBeCloseTo(1092 / 4, 9)
      for (const [a, b] of [made.slice(0, 2), made.slice(-2)] as [Spot, Spot][])
        expect(Math.abs(b.y - a.y) / (b.x - a.x)).toBeLessThan(0.01)
    }
    expect(lineOf(front, 'makes').at(-1)?.y).toBe(lineOf(back, 'makes').at(-1)?.y)
  })
  it('the edge that is turned in and the line it is sewn to are alike once it is eased (turning theorem: both ends lie level)', () => {
    for (const half of halves) {
      const { turned, sewn, eased, stretched } = half.lengths as Record<string, number>
      expect(Math.abs((turned ?? 0) - (sewn ?? 0))).toBeLessThan(1)
      expect(Math.abs((turned ?? 0) - (eased ?? 0) + (stretched ?? 0) - (sewn ?? 0))).toBeLessThan(1)
      expect(eased).toBeGreaterThan(2)
    }
  })
  it('the new hem is as long as the old one but for what the sides come in', () => {
    for (const half of templatesOf(up, request('shirt', SHIRT))) {
      expect(Math.abs(ruler(lineOf(half, 'makes')) - ruler(lineOf(half, 'goes')))).toBeLessThan(1)
    }
  })
  it('a straight hem is marked with a gauge', () => {
    const [only, second] = templatesOf(up, request('shirt', SHIRT, {}, { cut: { hem: 'straight' } }))
    expect(only?.lengths.fold).toBe(40)
    expect(second).toBeUndefined()
  })
})

describe('gauges', () => {
  const heights = (of: ReturnType<typeof templateOf>, role: Parameters<typeof lineOf>[1]) =>
    linesOf(of, role)
      .filter((line) => line[0]?.y === line[1]?.y)
      .map((line) => -(line[0]?.y ?? 0))
  it('a kept edge: five inches off is a fold of two and a half, above the stitching (OH-INS, OH-MAG, OH-LB)', () => {
    const gauge = templateOf(
      job('leg-shorten-keep-edge', 127, { inseam: -127 }, [{ seam: 'hem', offsetMm: 63.5 }]),
      request('jeans', TROUSERS)
    )
    expect(heights(gauge, 'fold')).toEqual([63.5])
    expect(heights(gauge, 'makes')).toEqual([127])
    expect(heights(gauge, 'edge')).toEqual([0])
  })
  it('a turn-up: three depths of cloth lie in it, the leg and two below the new edge (SEAM2, HDS)', () => {
    const gauge = templateOf(
      job('turn-up-shorten', 30, { inseam: -30 }, [{ seam: 'hem', offsetMm: 30 }]),
      request('trousers', TROUSERS, { hemDepthMm: 40 })
    )
    expect(heights(gauge, 'makes')).toEqual([0])
    expect(heights(gauge, 'fold')).toEqual([-40])
    expect(heights(gauge, 'cut')).toEqual([-80])
  })
  it('a tuck takes twice its half', () => {
    const gauge = templateOf(
      job('growth-tuck', 50, { inseam: -50 }, [{ seam: 'hem', offsetMm: 50 }]),
      request('trousers', TROUSERS, {}, { use: 'child' })
    )
    expect(heights(gauge, 'makes')).toEqual([25, -25])
  })
})

describe('what is never altered', () => {
  it('has no template, whatever plan is handed in', () => {
    const hem = job('leg-shorten-plain', 30, { inseam: -30 }, [{ seam: 'hem', offsetMm: 30 }])
    expect(templatesOf(hem, request('trousers', TROUSERS)).length).toBe(1)
    for (const use of ['protective', 'child-sleepwear', 'medical-compression'] as const)
      expect(templatesOf(hem, request('trousers', TROUSERS, {}, { use }))).toEqual([])
  })
})
