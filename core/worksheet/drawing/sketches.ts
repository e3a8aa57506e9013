/** Small drawings beside a step, where a figure says more than words. Not to scale; in the ink of the page they stand on. */
import { table } from '../../ids/table.ts'
import { say, type Wording } from '../../words/say.ts'
import { smooth } from '../outline/curve.ts'
import type { Line, Spot } from './line-work.ts'
import { type Shape, toSvg } from './shapes.ts'
import { inInk, stroke, words } from './strokes.ts'
import type { LineRole } from './template.ts'

/** Which step has which sketch, by what is done (`step.<does>`). */
const BY_STEP = table<SketchId>({
  'pin-centre-back': 'pinch',
  'pin-centre-back-body': 'pinch',
  'pin-fold': 'kept-edge',
  'sew-beside-edge': 'kept-edge',
  'shank-wound': 'shank',
  'mend-shank': 'shank',
  'pin-turn-up': 'turn-up',
  'sew-darts': 'dart',
  'sew-hem-blind': 'blind-hem',
  'mark-cap': 'cap'
})
export const SKETCHED_STEPS = Object.keys(BY_STEP)
export type SketchId = 'pinch' | 'kept-edge' | 'shank' | 'turn-up' | 'dart' | 'blind-hem' | 'cap'

export interface Sketch {
  id: SketchId
  /** What it shows, in a sentence. */
  says: string
  tree: Shape
  svg: string
}

const WIDE = 64
const TALL = 46
const LETTER_MM = 2.9

/** Lines by role, and words by the name of their message `sketch.<id>.<name>`. */
interface Drawing {
  lines: [LineRole, Line][]
  words: { at: [number, number]; name: string; anchor?: 'start' | 'end' | 'middle' }[]
}
const line = (...spots: [number, number][]): Line => spots.map(([x, y]): Spot => ({ x, y }))
const arc = (x: number, y: number, wide: number, tall: number, from: number, to: number): Line =>
  Array.from({ length: 25 }, (_, i) => {
    const turn = ((from + ((to - from) * i) / 24) * Math.PI) / 180
    return { x: x + wide * Math.cos(turn), y: y + tall * Math.sin(turn) }
  })
const arrow = ([x1, y1]: [number, number], [x2, y2]: [number, number]): Line => {
  const size = Math.hypot(x2 - x1, y2 - y1)
  const [ux, uy] = [(x2 - x1) / size, (y2 - y1) / size]
  return line([x1, y1], [x2, y2], [x2 - 2 * ux - uy, y2 - 2 * uy + ux], [x2, y2], [x2 - 2 * ux + uy, y2 - 2 * uy - ux])
}

/** A sleeve's cap, so far down. */
const capLine = (down: number): Line =>
  smooth(
    line([8, 26], [13, 24.5], [18, 19], [24, 11.5], [32, 8], [40, 11.5], [46, 19], [51, 24.5], [56, 26]).map(({ x, y }) => ({
      x,
      y: y + down
    }))
  )
/** Stitches that take the hem's edge and, between, one thread of the cloth above it. */
const stitches: Line = Array.from({ length: 12 }, (_, i) => ({ x: 7 + 4.4 * i, y: i % 2 === 0 ? 30.8 : 27 }))

const SKETCHES: Record<SketchId, Drawing> = {
  pinch: {
    lines: [
      ['edge', line([8, 8], [56, 8])],
      ['edge', line([8, 13], [56, 13])],
      ['edge', line([8, 8], [5, 43])],
      ['edge', line([56, 8], [59, 43])],
      ['goes', line([32, 8], [32, 43])],
      ['makes', line([26, 8], [27.6, 18], [30, 28], [32, 36])],
      ['makes', line([38, 8], [36.4, 18], [34, 28], [32, 36])],
      ['mark', line([25, 17], [40, 17])],
      ['mark', arc(40.6, 17, 0.7, 0.7, 0, 360)],
      ['mark', arrow([18, 22], [25, 22])],
      ['mark', arrow([46, 22], [39, 22])]
    ],
    words: [
      { at: [15, 27.5], name: 'half', anchor: 'middle' },
      { at: [49, 27.5], name: 'half', anchor: 'middle' },
      { at: [34, 40], name: 'nothing' }
    ]
  },
  'kept-edge': {
    lines: [
      ['edge', line([20, 3], [20, 28], [24, 28])],
      ['edge', [...line([24, 28], [24, 16]), ...arc(26, 16, 2, 2, 180, 360), ...line([28, 28], [28, 40])]],
      ['edge', line([28, 40], [30.5, 40], [30.5, 30])],
      ['makes', line([18, 28], [31, 28])],
      ['mark', arrow([35, 28], [35, 14])],
      ['mark', arrow([35, 14], [35, 28])]
    ],
    words: [
      { at: [37, 22], name: 'half' },
      { at: [34, 30.5], name: 'sew' },
      { at: [33, 41], name: 'edge' },
      { at: [17, 8], name: 'leg', anchor: 'end' }
    ]
  },
  shank: {
    lines: [
      ['edge', line([14, 12], [38, 12], [38, 16], [14, 16], [14, 12])],
      ['edge', line([6, 34], [46, 34])],
      ['edge', line([6, 36.5], [46, 36.5])],
      ['edge', line([24, 12], [24, 36.5])],
      ['edge', line([28, 12], [28, 36.5])],
      ...[19, 22, 25, 28, 31].map((y): [LineRole, Line] => ['mark', line([22.6, y], [29.4, y - 1.4])]),
      ['goes', arc(26, 10.2, 1.6, 1.6, 0, 360)],
      ['mark', line([46.5, 25], [31, 25])]
    ],
    words: [
      { at: [47, 24.6], name: 'wind' },
      { at: [30, 9], name: 'spacer' },
      { at: [8, 41], name: 'cloth' }
    ]
  },
  'turn-up': {
    lines: [
      ['edge', line([30, 3], [30, 36])],
      ['makes', [...arc(27, 36, 3, 3, 0, 180), ...line([24, 36], [24, 16])]],
      ['makes', [...arc(25.5, 16, 1.5, 1.5, 180, 360), ...line([27, 16], [27, 35])]],
      ['mark', line([34, 39], [28, 39])],
      ['mark', line([21, 15], [24, 15])],
      ['mark', line([34, 33.5], [27.5, 33.5])]
    ],
    words: [
      { at: [35, 40], name: 'bottom' },
      { at: [20.5, 16], name: 'top', anchor: 'end' },
      { at: [35, 34.5], name: 'raw' },
      { at: [32, 8], name: 'leg' }
    ]
  },
  dart: {
    lines: [
      ['fold', line([6, 34], [60, 34])],
      ['edge', line([6, 8], [6, 34])],
      ['edge', line([6, 8], [60, 8])],
      ['makes', line([6, 20], [30, 28.5], [46, 33], [56, 33.8])],
      ['mark', line([50, 27], [52.5, 33])]
    ],
    words: [
      { at: [8, 17], name: 'wide' },
      { at: [58, 25.5], name: 'along', anchor: 'end' },
      { at: [8, 38.5], name: 'fold' }
    ]
  },
  'blind-hem': {
    lines: [
      ['edge', line([4, 14], [60, 14])],
      ['edge', line([4, 30], [60, 30])],
      ['fold', line([4, 40], [60, 40])],
      ['edge', stitches],
      ['mark', line([30.5, 23], [30, 27])]
    ],
    words: [
      { at: [31, 22], name: 'thread', anchor: 'middle' },
      { at: [6, 34.5], name: 'hem' },
      { at: [6, 44], name: 'fold' }
    ]
  },
  cap: {
    lines: [
      ['goes', capLine(0)],
      ['makes', capLine(8)],
      ['edge', line([8, 26], [10, 44])],
      ['edge', line([56, 26], [54, 44])],
      ['mark', arrow([32, 8.5], [32, 15])],
      ['mark', arrow([20, 17], [20, 24])],
      ['mark', arrow([44, 17], [44, 24])]
    ],
    words: [
      { at: [32, 5.5], name: 'old', anchor: 'middle' },
      { at: [32, 24], name: 'new', anchor: 'middle' }
    ]
  }
}

/** The sketch of a step, by what it does (`pin-fold`, or the code of its sentence, `step.pin-fold`); null where words are enough. */
export function sketchOf(does: string, wording: Wording): Sketch | null {
  const id = BY_STEP[does.replace(/^step\./, '')]
  if (id === undefined) return null
  const drawing = SKETCHES[id]
  const says = say({ code: `sketch.${id}`, values: {} }, wording)
  const tree: Shape = inInk({
    tag: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDE} ${TALL}`,
      width: `${WIDE}mm`,
      height: `${TALL}mm`,
      role: 'img'
    },
    children: [
      { tag: 'title', attributes: {}, text: says },
      ...drawing.lines.map(([role, of]) => stroke(role, of)),
      ...drawing.words.map(({ at: [x, y], name, anchor = 'start' }) =>
        words({ at: { x, y }, text: say({ code: `sketch.${id}.${name}`, values: {} }, wording), size: LETTER_MM, anchor })
      )
    ]
  })
  return { id, says, tree, svg: toSvg(tree) }
}
