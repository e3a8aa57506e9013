/** Gauges: a card with level lines, laid against an edge and marked off all round it. Hems, kept edges, turn-ups, tucks, seams that lie across. */
import { cutFor, type HemHow, hemFor, hemFullness } from '../hems.ts'
import { spread, whole } from './label-box.ts'
import type { Line } from './line-work.ts'
import { grain } from './seam-strip.ts'
import { type Asked, allowances, isAssumed, type Label, type LineRole, makeOf, type Template, type TemplateLine } from './template.ts'
import { type JobLine, named } from './waist-strips.ts'

/** As wide as the marks are apart, so that it is moved on mark by mark. */
const CARD_MM = 50
const LABELS_APART_MM = 4.8
/** A hem taller than this is marked with a tape: its gauge tells what is turned up alone. */
const TALLEST_MM = 150

interface Row {
  role: LineRole
  /** Up the garment from where the gauge is laid on. */
  up: number
  text: string
  strong?: true
}
interface Gauge {
  rows: Row[]
  notes: string[]
  assumed: string[]
  lengths: Template['lengths']
}

function gauge(asked: Asked, line: JobLine, { rows, notes, assumed, lengths }: Gauge): Template {
  const sorted = [...rows].sort((a, b) => b.up - a.up)
  const ys = sorted.map(({ up }) => -up)
  const [top, bottom] = [ys[0] ?? 0, ys.at(-1) ?? 0]
  const heights = spread(ys, LABELS_APART_MM)
  const x = CARD_MM + 8
  const lines: TemplateLine[] = sorted.map(({ role, up }) => ({ role, line: level(-up) }))
  for (const [i, y] of ys.entries())
    lines.push({
      role: 'mark',
      line: [
        { x: CARD_MM + 1, y },
        { x: x - 1, y: heights[i] ?? y }
      ]
    })
  for (const at of [0, CARD_MM])
    lines.push({
      role: 'mark',
      line: [
        { x: at, y: top - 3 },
        { x: at, y: bottom + 3 }
      ]
    })
  if (bottom - top > 24) lines.push(grain(CARD_MM / 2, top, bottom))
  const labels: Label[] = sorted.map(({ text, strong }, i) => ({
    at: { x, y: (heights[i] ?? 0) + 1.1 },
    text,
    anchor: 'start',
    ...(strong ? { look: 'strong' as const } : {})
  }))
  return whole({ ...named(asked, line, 'template.title.gauge'), alteration: asked.job.id, notes, assumed, lines, labels, lengths })
}
const level = (y: number): Line => [
  { x: 0, y },
  { x: CARD_MM, y }
]

/** Less than this is pressed in without asking; the steps say the same. */
const WORTH_SAYING_MM = 3

/** What the turned-up cloth has too much or too little of, where the garment is not straight. */
function fullness(asked: Asked, depthMm: number, how: HemHow): string[] {
  const mm = hemFullness(asked.garment, depthMm, how)
  if (Math.abs(mm) <= WORTH_SAYING_MM) return []
  return [asked.t(mm > 0 ? 'template.hem.full' : 'template.hem.tight', { mm: Math.abs(mm) })]
}

/** A hem turned up: the fold, the cloth that is turned and where it is stitched, as the steps have it. */
export const hemUpGauge =
  (how?: HemHow) =>
  (asked: Asked, line: JobLine): Template => {
    const { t, garment } = asked
    const there = makeOf(asked, 'hemDepthMm')
    const hem = hemFor(garment, how)
    const up = line.offsetMm
    const { belowMm: below, offMm } = cutFor(garment, hem, up)
    const under = Math.min(hem.firstTurnMm, below)
    const stands = below - under
    // a tall one is chalked with a tape: the gauge tells what is turned up alone
    const isTall = up > TALLEST_MM
    const at = isTall ? 0 : up
    const rows: Row[] = [
      { role: 'makes', up: at, text: t(isTall ? 'template.hem.fold' : 'template.hem.fold-up', { mm: up }), strong: true }
    ]
    if (!isTall) rows.push({ role: 'goes', up: 0, text: t('template.hem.old-edge') })
    if (stands > 2) rows.push({ role: 'mark', up: at + stands, text: t('template.hem.stitched', { mm: stands }) })
    if (under > 2) rows.push({ role: 'fold', up: at - stands, text: t('template.hem.under', { mm: under }) })
    rows.push({
      role: offMm > 0 ? 'cut' : 'edge',
      up: at - below,
      text: t(offMm > 0 ? 'template.hem.cut' : 'template.hem.raw-edge', { mm: below })
    })
    return gauge(asked, line, {
      rows,
      notes: [
        t(isTall ? 'template.hem.lay-on-chalk' : 'template.hem.lay-on-edge', { mm: up }),
        t('template.hem.round'),
        ...fullness(asked, below, how)
      ],
      assumed: there.assumed,
      lengths: { fold: up, left: below, stands, under, fullness: hemFullness(garment, below, how) }
    })
  }

/** A hem let down: the new fold and what is left of the cloth that was turned up. */
export function hemDownGauge(asked: Asked, line: JobLine): Template {
  const { t } = asked
  const there = makeOf(asked, 'hemDepthMm')
  const down = Math.abs(line.offsetMm)
  const left = Math.max(0, there.mm - down)
  return gauge(asked, line, {
    rows: [
      { role: 'goes', up: 0, text: t('template.hem.old-edge') },
      { role: 'makes', up: -down, text: t('template.hem.fold-down', { mm: down }), strong: true },
      { role: 'edge', up: -down - left, text: t('template.hem.raw-edge', { mm: left }) }
    ],
    notes: [t('template.hem.lay-on-fold'), t('template.hem.round'), ...fullness(asked, left, undefined)],
    assumed: there.assumed,
    lengths: { fold: -down, left, fullness: hemFullness(asked.garment, left) }
  })
}

/** All of the old hem and the new length turned up in one deep hem, to let down as a child grows. */
export function deepHemGauge(asked: Asked, line: JobLine): Template {
  const { t } = asked
  const there = makeOf(asked, 'hemDepthMm')
  const up = line.offsetMm
  const left = there.mm + up
  return gauge(asked, line, {
    rows: [
      { role: 'makes', up, text: t('template.hem.fold-up', { mm: up }), strong: true },
      { role: 'goes', up: 0, text: t('template.hem.old-edge') },
      { role: 'edge', up: -there.mm, text: t('template.hem.raw-edge', { mm: left }) }
    ],
    notes: [t('template.hem.lay-on-fold'), t('template.hem.round'), ...fullness(asked, left, undefined)],
    assumed: there.assumed,
    lengths: { fold: up, left, fullness: hemFullness(asked.garment, left) }
  })
}

/** The old edge kept: a fold of half the shortening, measured from the old hem's stitching (OH-INS, OH-MAG, OH-LB). */
export function keptEdge(asked: Asked, line: JobLine): Template {
  const { t } = asked
  const fold = line.offsetMm
  return gauge(asked, line, {
    rows: [
      { role: 'edge', up: 0, text: t('template.kept.stitching') },
      { role: 'fold', up: fold, text: t('template.kept.fold', { mm: fold }), strong: true },
      { role: 'makes', up: 2 * fold, text: t('template.kept.meets', { mm: 2 * fold }) }
    ],
    notes: [t('template.kept.lay'), t('template.kept.sew')],
    assumed: [],
    lengths: { fold, taken: 2 * fold }
  })
}

/** A turn-up as it is seen, where it is not told (common practice; the rows take the same). */
const TURN_UP_MM = 38

/** A turn-up made again: the bottom edge and its two folds; three depths of cloth lie in it, the raw edge caught inside at the bottom (SEAM2, HDS). */
export function turnUpGauge(asked: Asked, line: JobLine): Template {
  const { t, garment } = asked
  const deep = garment.told.hemDepthMm ?? TURN_UP_MM
  return gauge(asked, line, {
    rows: [
      { role: 'makes', up: 0, text: t('template.turn-up.bottom'), strong: true },
      { role: 'fold', up: -deep, text: t('template.turn-up.top', { mm: deep }) },
      { role: 'cut', up: -2 * deep, text: t('template.turn-up.cut', { mm: deep }) }
    ],
    notes: [t('template.turn-up.lay', { mm: line.offsetMm }), t('template.turn-up.fold')],
    assumed: isAssumed(garment, 'hemDepthMm') ? [t('template.assumed.turn-up', { mm: deep })] : [],
    lengths: { seen: deep, below: 2 * deep }
  })
}

/** A turn-up opened: twice its depth comes down, less the hem that stays. */
export function turnUpDown(asked: Asked, line: JobLine): Template {
  const { t, garment } = asked
  const deep = garment.told.hemDepthMm ?? TURN_UP_MM
  const down = Math.abs(line.offsetMm)
  const left = Math.max(0, 2 * deep - down)
  return gauge(asked, line, {
    rows: [
      { role: 'goes', up: 0, text: t('template.turn-up.old-bottom') },
      { role: 'makes', up: -down, text: t('template.hem.fold-down', { mm: down }), strong: true },
      { role: 'edge', up: -2 * deep, text: t('template.hem.raw-edge', { mm: left }) }
    ],
    notes: [t('template.turn-up.open'), t('template.hem.round'), ...fullness(asked, left, undefined)],
    assumed: isAssumed(garment, 'hemDepthMm') ? [t('template.assumed.turn-up', { mm: deep })] : [],
    lengths: { fold: -down, left }
  })
}

/** A tuck that is let out later: half of it on either side of its fold. */
export function tuckGauge(asked: Asked, line: JobLine): Template {
  const { t } = asked
  const half = line.offsetMm / 2
  return gauge(asked, line, {
    rows: [
      { role: 'makes', up: half, text: t('template.tuck.line', { mm: half }) },
      { role: 'fold', up: 0, text: t('template.tuck.fold'), strong: true },
      { role: 'makes', up: -half, text: t('template.tuck.line', { mm: half }) }
    ],
    notes: [t('template.tuck.lay'), t('template.tuck.loose')],
    assumed: [],
    lengths: { taken: 2 * half, half }
  })
}

/** A seam that lies across the garment moved so far up or down it: the new line, and the cut that leaves an allowance on the side that stays off. */
export function acrossGauge(way: 'up' | 'down'): (asked: Asked, line: JobLine) => Template {
  return (asked, line) => {
    const { t, garment } = asked
    const sign = way === 'up' ? 1 : -1
    const by = sign * line.offsetMm
    const { thereMm } = allowances(garment, line.seam)
    const towards = by >= 0 ? 1 : -1
    const rows: Row[] = [
      { role: 'goes', up: 0, text: t('template.across.old', { seam: line.seam }) },
      { role: 'makes', up: by, text: t(by >= 0 ? 'template.across.up' : 'template.across.down', { mm: Math.abs(by) }), strong: true }
    ]
    if (line.offsetMm > 0) rows.push({ role: 'cut', up: by - towards * thereMm, text: t('template.across.cut', { mm: thereMm }) })
    return gauge(asked, line, {
      rows,
      notes: [t('template.across.lay', { seam: line.seam }), t('template.hem.round')],
      assumed: isAssumed(garment, 'seamAllowanceMm') ? [t('template.assumed.seamAllowanceMm', { mm: thereMm })] : [],
      lengths: { moved: by, allowance: thereMm }
    })
  }
}
