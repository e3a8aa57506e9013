/** Drawings as data: escaped words, no style, the tree and its text alike; sketches by step; outlines at the scale they name. */
import { describe, expect, it } from 'vitest'
import { hasMessage, say } from '../../../../../core/words/say.ts'
import { pagesOf } from '../../../../../core/worksheet/drawing/draw-templates.ts'
import { whole } from '../../../../../core/worksheet/drawing/label-box.ts'
import { drawOutlines } from '../../../../../core/worksheet/drawing/outline-shapes.ts'
import { type Shape, toSvg } from '../../../../../core/worksheet/drawing/shapes.ts'
import { SKETCHED_STEPS, sketchOf } from '../../../../../core/worksheet/drawing/sketches.ts'
import { textWidth, wrapped } from '../../../../../core/worksheet/drawing/text-size.ts'
import { job, plan, request, TROUSERS, waistIn } from './given.ts'

const every = (shape: Shape): Shape[] => [shape, ...(shape.children ?? []).flatMap(every)]
const NASTY = '<script>alert("1")</script> & \u0001 it’s "so"'

describe('shapes', () => {
  it('words and attributes are escaped, whatever stands in them', () => {
    const svg = toSvg({ tag: 'text', attributes: { x: 1, 'aria-label': NASTY }, text: NASTY })
    expect(svg).not.toContain('<script')
    expect(svg).not.toContain('\u0001')
    expect(svg).toContain('&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp;')
    expect(svg.match(/</g)).toHaveLength(2)
  })
  it('a figure that is none is refused', () => {
    expect(() => toSvg({ tag: 'rect', attributes: { x: Number.NaN } })).toThrow(/needs figures/)
    expect(toSvg({ tag: 'rect', attributes: { x: -0.001, y: 1.23456 } })).toBe('<rect x="0" y="1.23"/>')
  })
  it('a template with words of a stranger comes out as text', () => {
    const line = [
      { x: 0, y: 0 },
      { x: 30, y: 40 }
    ]
    const template = whole({
      id: 'a',
      alteration: 'leg-taper',
      title: NASTY,
      notes: [NASTY],
      assumed: [],
      lines: [{ role: 'makes', line }],
      labels: [{ at: { x: 5, y: 5 }, text: NASTY, anchor: 'start' }],
      lengths: {}
    })
    const t = (code: string, values = {}) => say({ code, values }, { units: 'cm' })
    const [page] = pagesOf([template], [], 'A4', { t, units: 'cm' })
    expect(page?.svg).not.toContain('<script')
    for (const { attributes } of every(page?.tree as Shape)) {
      expect(Object.keys(attributes)).not.toContain('style')
      expect(Object.keys(attributes).filter((name) => name.startsWith('on'))).toEqual([])
    }
    expect(toSvg(page?.tree as Shape)).toBe(page?.svg)
  })
  it('words are broken where they are too long, and never lost', () => {
    const text = 'Lay the dotted line on the old stitching of the centre back seam.'
    const lines = wrapped(text, 3, 40)
    expect(lines.join(' ')).toBe(text)
    for (const line of lines) expect(textWidth(line, 3)).toBeLessThanOrEqual(40)
    expect(wrapped('incomprehensibilities', 3, 5)).toEqual(['incomprehensibilities'])
  })
  it('no templates, no pages', () => {
    expect(pagesOf([], [], 'A4', { t: (code) => code, units: 'cm' })).toEqual([])
  })
})

describe('sketches', () => {
  it('every step that has one is a step, and each says what it shows', () => {
    for (const does of SKETCHED_STEPS) {
      expect(hasMessage(`step.${does}`), does).toBe(true)
      const sketch = sketchOf(does, { units: 'cm' })
      expect(sketch?.says.length).toBeGreaterThan(20)
      expect(sketch?.svg).toContain('currentColor')
      expect(sketch?.svg).not.toMatch(/#000|style=|NaN/)
    }
    expect(sketchOf('step.pin-fold', { units: 'in' })?.id).toBe('kept-edge')
    expect(SKETCHED_STEPS.length).toBeGreaterThanOrEqual(7)
    expect(sketchOf('try-length', { units: 'cm' })).toBeNull()
  })
  it('nothing is drawn or written outside', () => {
    for (const does of SKETCHED_STEPS) {
      for (const { tag, attributes, text } of every(sketchOf(does, { units: 'cm' })?.tree as Shape)) {
        const figures =
          tag === 'path' ? [...String(attributes.d).matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]) : []
        for (const [x = 0, y = 0] of figures) expect(x >= 0 && x <= 64 && y >= 0 && y <= 46, does).toBe(true)
        if (tag !== 'text' || text === undefined) continue
        const wide = textWidth(text, 2.9)
        const left =
          Number(attributes.x) - (attributes['text-anchor'] === 'end' ? wide : attributes['text-anchor'] === 'middle' ? wide / 2 : 0)
        expect(left >= 0 && left + wide <= 64, `${does}: ${text}`).toBe(true)
      }
    }
  })
})

describe('outlines', () => {
  const hemUp = job('leg-shorten-blind', 38, { inseam: -38 }, [{ seam: 'hem', offsetMm: 38 }])
  const shown = drawOutlines(plan([waistIn(40), hemUp], { waist: 810, inseam: 750 }), request('trousers', TROUSERS), { units: 'cm' })
  const paths = (tree: Shape, dashes: string | undefined) =>
    every(tree)
      .filter(({ tag, attributes }) => tag === 'path' && attributes['stroke-dasharray'] === dashes && attributes.class === undefined)
      .map(({ attributes }) =>
        [...String(attributes.d).matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }))
      )
  it('front and back at one scale, no larger than asked', () => {
    expect(shown.map(({ view }) => view)).toEqual(['front', 'back'])
    expect(new Set(shown.map(({ scale }) => scale)).size).toBe(1)
    for (const { tree } of shown) {
      expect(Number.parseFloat(String(tree.attributes.width))).toBeLessThanOrEqual(120)
      expect(Number.parseFloat(String(tree.attributes.height))).toBeLessThanOrEqual(160)
    }
  })
  it('the waist is half of 850 at the scale it names; what comes is dashed, what goes is dotted', () => {
    const [front, back] = shown
    if (front === undefined || back === undefined) throw new Error('two sides')
    const edges = paths(front.tree, undefined).flat()
    const top = Math.min(...edges.filter(({ y }) => y > 10).map(({ y }) => y))
    const waist = edges.filter(({ y }) => Math.abs(y - top) < 0.01).map(({ x }) => x)
    expect((Math.max(...waist) - Math.min(...waist)) * front.scale).toBeCloseTo(425, -0.5)
    expect(paths(back.tree, '2.4 1.2').length).toBeGreaterThan(paths(front.tree, '2.4 1.2').length)
    expect(paths(back.tree, '0.6 1.6').length).toBeGreaterThan(0)
  })
  it('figures: how far each line moves, and what a point was and comes to', () => {
    expect(shown[1]?.svg).toContain('2 cm inwards')
    expect(shown[1]?.svg).toContain('3.8 cm up')
    expect(shown[1]?.svg).toContain('Waist 42.5 flat, then 40.5')
    expect(shown[1]?.says).toContain('centre back seam moves 2 cm inwards')
  })
  it('says what it drew without being told, of every kind', () => {
    const [front] = drawOutlines(plan([]), request('skirt', { waist: 800 }), { units: 'in' })
    expect(front?.svg).toContain('Not stated')
    const [jumpsuit] = drawOutlines(plan([]), request('jumpsuit', { waist: 800 }), { units: 'in' })
    expect(jumpsuit?.svg).toContain('Not stated')
  })
})
