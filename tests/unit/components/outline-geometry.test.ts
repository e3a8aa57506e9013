/**
 * The outline is measured with a ruler of its own: it knows nothing but drawn lines. What a person would read off the
 * drawing must be the garment's figures before, and the plan's figures after, within 2 mm.
 */
import { describe, expect, it } from 'vitest'
import { GARMENT_KINDS } from '../../../core/ids/kinds.ts'
import type { Job } from '../../../core/plan/plan.ts'
import type { Measures, OutlineDrawing } from '../../../core/worksheet/outline/outline-drawing.ts'
import { boxOf, outlineOf, viewsOf } from '../../../core/worksheet/outline/outline-geometry.ts'
import { inch, legsUp, waistIn } from './fixtures.ts'

interface Spot {
  x: number
  y: number
}
/** Where a drawn line crosses a height. */
function crossings(line: readonly Spot[], y: number): number[] {
  const found: number[] = []
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1] as Spot
    const b = line[i] as Spot
    if (a.y === b.y) continue
    const t = (y - a.y) / (b.y - a.y)
    if (t >= 0 && t <= 1) found.push(a.x + t * (b.x - a.x))
  }
  return found
}
const clothOf = (drawing: OutlineDrawing): Spot[] => drawing.layers.at(-1)?.cloth ?? []
/** The flat width between the two outermost crossings of the cloth. */
function clothWidth(drawing: OutlineDrawing, y: number): number {
  const xs = crossings(clothOf(drawing), y)
  return Math.max(...xs) - Math.min(...xs)
}
const comes = (drawing: OutlineDrawing, seam: string, right = true): Spot[] => {
  const lines = drawing.moved.filter((moved) => moved.seam === seam).map((moved) => moved.comes)
  const middle = (line: Spot[]) => line.reduce((sum, { x }) => sum + x, 0) / line.length
  const line = lines.find((spots) => (right ? middle(spots) > 0 : middle(spots) < 0))
  if (line === undefined) throw new Error(`nothing comes at ${seam}`)
  return line
}
const job = (id: Job['id'], amountMm: number, amounts: Job['amounts'], lines: Job['lines']): Job => ({
  ...waistIn(amountMm),
  id,
  amounts,
  lines
})

const legs: Measures = {
  waist: inch(32),
  hip: inch(40.75),
  thigh: inch(25),
  knee: inch(19),
  legOpening: inch(16),
  inseam: inch(31),
  outseam: inch(41.5)
}
const draw = (kind: Parameters<typeof outlineOf>[0], points: Measures, jobs: Job[], made = {}) => {
  const drawing = outlineOf(kind, { points, jobs, made }, viewsOf(jobs).at(-1) ?? 'front')
  if (drawing === null) throw new Error(`no outline for ${kind}`)
  return drawing
}

describe('trousers before', () => {
  const drawing = draw('trousers', legs, [])
  const rise = inch(10.5)
  it('draws waist, knee and opening true, and the inside leg', () => {
    expect(clothWidth(drawing, 0.001)).toBeCloseTo(inch(32) / 2, 0)
    const kneeY = rise + 0.46 * inch(31)
    const knee = crossings(clothOf(drawing), kneeY - 0.01).sort((a, b) => a - b)
    expect(knee).toHaveLength(4)
    expect(Math.abs((knee[3] ?? 0) - (knee[2] ?? 0) - inch(19) / 2)).toBeLessThan(1)
    const hem = crossings(clothOf(drawing), rise + inch(31) - 0.01).sort((a, b) => a - b)
    expect(Math.abs((hem[3] ?? 0) - (hem[2] ?? 0) - inch(16) / 2)).toBeLessThan(1)
    expect(boxOf(drawing).bottom).toBeCloseTo(inch(41.5), 3)
  })
  it('keeps the legs apart however wide they are', () => {
    const wide = draw('trousers', { ...legs, knee: 620, legOpening: 680 }, [])
    const xs = crossings(clothOf(wide), inch(41.5) - 0.01).sort((a, b) => a - b)
    expect(xs[2] ?? -1).toBeGreaterThan(0)
    expect(Math.abs((xs[3] ?? 0) - (xs[2] ?? 0) - 340)).toBeLessThan(1)
  })
  it('names what it drew without being told', () => {
    expect(drawing.guessed).toEqual([])
    expect(draw('trousers', { waist: 800, inseam: 780 }, []).guessed).toEqual(['frontRise', 'hip', 'legOpening', 'knee'])
  })
  it('draws shorts without a knee', () => {
    const shorts = draw('shorts', { waist: 800, hip: 1000, thigh: 600, legOpening: 560, inseam: 200, frontRise: 270 }, [])
    const hem = crossings(clothOf(shorts), 469.9).sort((a, b) => a - b)
    expect(Math.abs((hem[3] ?? 0) - (hem[2] ?? 0) - 280)).toBeLessThan(2)
  })
})

describe('trousers after', () => {
  it('centre back: both layers of the back come in, the front stays', () => {
    const total = inch(2.5)
    const drawing = draw('trousers', legs, [waistIn(total)])
    expect(drawing.view).toBe('back')
    const line = comes(drawing, 'centre-back')
    const left = comes(drawing, 'centre-back', false)
    const taken = (y: number) => (crossings(line, y)[0] ?? 0) - (crossings(left, y)[0] ?? 0)
    const front = clothWidth(drawing, 0.001)
    const back = clothWidth(drawing, 0.001) - taken(0)
    expect(Math.abs(front + back - (inch(32) - total))).toBeLessThan(2)
    // a third of the way down the taper the default blend leaves three fifths of the amount
    expect(Math.abs(taken(200 / 3) - 0.6 * total)).toBeLessThan(2)
    expect(line.at(-1)?.x).toBeCloseTo(0, 6)
    expect(line.at(-1)?.y).toBeCloseTo(200, 6)
  })
  it('side seams: two seams, two layers', () => {
    const drawing = draw('trousers', legs, [job('waist-in-side-seams', 40, { waist: -40 }, [{ seam: 'side', offsetMm: 10 }])])
    const right = crossings(comes(drawing, 'side'), 0)[0] ?? 0
    expect(Math.abs(4 * right - (inch(32) - 40))).toBeLessThan(2)
  })
  it('hem: the inside leg ends where the fold comes', () => {
    const drawing = draw('trousers', legs, [legsUp(inch(1.5))])
    const fold = comes(drawing, 'hem')
    expect(fold[0]?.y).toBeCloseTo(fold[1]?.y ?? 0, 6)
    expect(Math.abs((fold[0]?.y ?? 0) - inch(10.5) - inch(29.5))).toBeLessThan(2)
  })
  it('taper: knee and opening after, from both seams of the leg', () => {
    const taper = job('leg-taper', 60, { thigh: 0, knee: -40, legOpening: -60 }, [
      { seam: 'inseam', offsetMm: 15 },
      { seam: 'side', offsetMm: 15 }
    ])
    const drawing = draw('trousers', legs, [taper])
    const width = (y: number) => (crossings(comes(drawing, 'side'), y)[0] ?? 0) - (crossings(comes(drawing, 'inseam'), y)[0] ?? 0)
    expect(Math.abs(2 * width(inch(10.5) + 0.46 * inch(31)) - (inch(19) - 40))).toBeLessThan(2)
    expect(Math.abs(2 * width(inch(41.5) - 0.01) - (inch(16) - 60))).toBeLessThan(2)
  })
  it('draws one side alone where the line is of one side', () => {
    const drawing = draw('trousers', legs, [job('leg-shorten-plain', 20, { inseam: -20 }, [{ seam: 'hem', offsetMm: 20, side: 'left' }])])
    expect(drawing.moved).toHaveLength(1)
    expect(drawing.moved[0]?.comes.every(({ x }) => x < 0)).toBe(true)
  })
})

describe('a skirt', () => {
  const skirt: Measures = { waist: 760, hip: 980, sweep: 1200, skirtLength: 640 }
  it('draws waist, hip and hem true', () => {
    const drawing = draw('skirt', skirt, [])
    expect(Math.abs(2 * clothWidth(drawing, 0.001) - 760)).toBeLessThan(2)
    expect(Math.abs(2 * clothWidth(drawing, 200) - 980)).toBeLessThan(2)
    expect(Math.abs(2 * clothWidth(drawing, 639.99) - 1200)).toBeLessThan(2)
  })
  it('comes in at the sides by what the job says at each point', () => {
    const sides = job('skirt-sides-in', 40, { waist: -40, hip: -20 }, [{ seam: 'side', offsetMm: 10 }])
    const line = comes(draw('skirt', skirt, [sides]), 'side')
    expect(Math.abs(4 * (crossings(line, 0.001)[0] ?? 0) - 720)).toBeLessThan(2)
    expect(Math.abs(4 * (crossings(line, 200)[0] ?? 0) - 960)).toBeLessThan(2)
    expect(Math.abs(4 * (crossings(line, 639.99)[0] ?? 0) - 1200)).toBeLessThan(2)
  })
})

describe('a shirt and a jacket', () => {
  const shirt: Measures = {
    chest: 1120,
    waist: 1080,
    hem: 1100,
    shoulderWidth: 470,
    bodyLength: 760,
    sleeveLength: 640,
    cuff: 250,
    bicep: 400
  }
  it.each(['shirt', 'jacket'] as const)('draws the %s true: chest, bottom edge, length, sleeve and cuff', (kind) => {
    const drawing = draw(kind, shirt, [])
    const body = clothOf(drawing)
    const underarmY = (470 / 2 - (470 * 0.88) / 5.6) * Math.tan((19 * Math.PI) / 180) + 0.19 * 1120
    const atChest = crossings(body, underarmY)
    expect(Math.abs(2 * (Math.max(...atChest) - Math.min(...atChest)) - 1120)).toBeLessThan(2)
    const atHem = crossings(body, 759.99)
    expect(Math.abs(2 * (Math.max(...atHem) - Math.min(...atHem)) - 1100)).toBeLessThan(2)
    const shoulder = { x: 235, y: (235 - (470 * 0.88) / 5.6) * Math.tan((19 * Math.PI) / 180) }
    const sleeve = drawing.layers[0]?.cloth ?? []
    const far = Math.max(...sleeve.map(({ x, y }) => Math.hypot(x - shoulder.x, y - shoulder.y)))
    expect(far).toBeGreaterThan(638)
  })
  it('comes in at the sides, three amounts on one line', () => {
    const sides = job('sides-in', 80, { chest: -40, waist: -80, hem: -60 }, [{ seam: 'side', offsetMm: 20 }])
    const drawing = draw('shirt', shirt, [sides])
    const line = comes(drawing, 'side')
    const top = line[0]?.y ?? 0
    const waistY = top + 0.42 * (760 - top)
    expect(Math.abs(4 * (line[0]?.x ?? 0) - 1080)).toBeLessThan(2)
    expect(Math.abs(4 * (crossings(line, waistY)[0] ?? 0) - 1000)).toBeLessThan(2)
    expect(Math.abs(4 * (crossings(line, 759.99)[0] ?? 0) - 1040)).toBeLessThan(2)
  })
  it('shortens the sleeve along its length, and only the sleeve that is drawn', () => {
    const shorter = job('sleeve-shorten-lined', 25, { sleeveLength: -25 }, [{ seam: 'hem', offsetMm: 25 }])
    const drawing = draw('jacket', shirt, [shorter])
    expect(drawing.moved).toHaveLength(1)
    const [moved] = drawing.moved
    const a = moved?.goes?.[0] as Spot
    const b = moved?.comes[0] as Spot
    const shoulder = drawing.layers[0]?.edges[0]?.[0] as Spot
    const along = (spot: Spot) => Math.hypot(spot.x - shoulder.x, spot.y - shoulder.y)
    expect(along(a)).toBeCloseTo(640, 3)
    expect(along(b)).toBeCloseTo(615, 3)
  })
  it('shows the back for darts', () => {
    const darts = job('back-darts', 40, { waist: -40 }, [{ seam: 'dart', offsetMm: 10 }])
    expect(viewsOf([darts])).toEqual(['back'])
    const bust = job('bust-darts', 40, { chest: -40 }, [{ seam: 'dart', offsetMm: 10 }])
    expect(viewsOf([darts, bust])).toEqual(['front', 'back'])
    expect(viewsOf([])).toEqual(['front'])
    expect(draw('shirt', shirt, [darts]).moved).toHaveLength(2)
  })
  it.each(['trousers', 'skirt'] as const)(
    '%s: one dart half way on either side, or two at the thirds where four share the amount',
    (kind) => {
      const points = { waist: 760, hip: 1000 }
      const tips = (amountMm: number, offsetMm: number) => {
        const darts = job('waist-in-darts', amountMm, { waist: -amountMm }, [{ seam: 'dart', offsetMm }])
        return draw(kind, points, [darts])
          .moved.map(({ comes }) => Math.round(comes[1]?.x ?? Number.NaN))
          .sort((a, b) => a - b)
      }
      // a quarter of the waist is 190
      expect(tips(32, 8)).toEqual([-95, 95])
      expect(tips(60, 7.5)).toEqual([-127, -63, 63, 127])
    }
  )
})

describe('every kind', () => {
  it.each(GARMENT_KINDS)('draws %s from nothing at all with finite lines, and names what it drew', (kind) => {
    const drawing = draw(kind, {}, [])
    for (const { x, y } of drawing.layers.flatMap(({ cloth }) => cloth)) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true)
    expect(drawing.guessed.length).toBeGreaterThan(2)
  })
  it('draws a dress true at the chest, waist and hem, and as long as it is told', () => {
    const drawing = draw('dress', { chest: 960, waist: 780, hip: 1020, sweep: 1400, bodyLength: 1050, napeToWaist: 400 }, [])
    const body = clothOf(drawing)
    const round = (y: number) => 2 * (Math.max(...crossings(body, y)) - Math.min(...crossings(body, y)))
    expect(round(400)).toBeCloseTo(780, 0)
    expect(round(600)).toBeCloseTo(1020, 0)
    expect(round(1049.99)).toBeCloseTo(1400, 0)
    expect(Math.max(...body.map(({ y }) => y))).toBe(1050)
    // no sleeve is drawn where none was told
    expect(drawing.layers).toHaveLength(1)
    expect(draw('dress', { sleeveLength: 580 }, []).layers).toHaveLength(3)
  })
  it('takes a dress in at every point that the job names, and nowhere else', () => {
    const sides = job('sides-in', 60, { chest: -20, waist: -60, hip: -40 }, [{ seam: 'side', offsetMm: 15 }])
    const told = { chest: 960, waist: 780, hip: 1020, sweep: 1400, bodyLength: 1050, napeToWaist: 400 }
    const line = comes(draw('dress', told, [sides]), 'side')
    const at = (y: number) => 4 * (crossings(line, y)[0] ?? 0)
    expect(Math.abs(at(400) - 720)).toBeLessThan(2)
    expect(Math.abs(at(600) - 980)).toBeLessThan(2)
    expect(Math.abs(at(1049.99) - 1400)).toBeLessThan(2)
  })
  it('draws a jumpsuit with two legs of their own opening', () => {
    const drawing = draw('jumpsuit', { legOpening: 400, inseam: 740, napeToWaist: 400, frontRise: 300 }, [])
    const right = crossings(clothOf(drawing), 400 + 300 + 740 - 0.01).filter((x) => x > 0)
    expect(Math.max(...right) - Math.min(...right)).toBeCloseTo(200, 0)
    expect(Math.min(...right)).toBeGreaterThan(0)
  })
  it('draws something else as the kind whose points were measured', () => {
    expect(draw('other', { inseam: 760 }, []).layers[0]?.cloth).toEqual(draw('trousers', { inseam: 760 }, []).layers[0]?.cloth)
    expect(draw('other', { skirtLength: 600 }, []).layers[0]?.cloth).toEqual(draw('skirt', { skirtLength: 600 }, []).layers[0]?.cloth)
    expect(draw('other', { chest: 960, sweep: 1400 }, []).layers.length).toBe(1)
  })
})
