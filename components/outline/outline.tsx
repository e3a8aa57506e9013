/** A garment drawn to scale with the stitching lines a plan moves: those that go dotted, those that come tacked. */
import { useId } from 'preact/hooks'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { Plan } from '../../core/plan/plan.ts'
import type { Spot } from '../../core/worksheet/outline/curve.ts'
import { leadsTo } from '../../core/worksheet/outline/leads.ts'
import { type Move, movesOf } from '../../core/worksheet/outline/moves.ts'
import type { Measures, OutlineDrawing, OutlineInput, View } from '../../core/worksheet/outline/outline-drawing.ts'
import { type Box, boxOf, outlineOf, pathOf } from '../../core/worksheet/outline/outline-geometry.ts'
import { useWidth } from '../use-width.ts'
import { useWords, type Words } from '../words.tsx'

export interface OutlineProps {
  kind: GarmentKind
  points: Measures
  plan: Plan | null
  made?: OutlineInput['made']
  view: View
  /** Small: lines alone, to stand beside the list. Full: on spot-and-cross paper with its figures. */
  size: 'small' | 'full'
}

const SMALL_WIDTH = 112
const SMALL_TALL = 190

export function Outline({ kind, points, plan, made = {}, view, size }: OutlineProps) {
  const words = useWords()
  const after: Measures = Object.fromEntries(plan?.after.map(({ point, mm }) => [point, mm]) ?? [])
  const drawing = outlineOf(kind, { points, jobs: plan?.alterations ?? [], made, after }, view)
  if (drawing === null) return null
  const moves = plan === null ? [] : movesOf(plan, points)
  const label = outlineWords(kind, drawing, moves, words)
  const box = boxOf(drawing)
  // a small one has its own width: nothing is measured for the many that stand in a list
  if (size === 'full') return <AsWide drawing={drawing} box={box} label={label} moves={moves} />
  return (
    <div class="drawn outline-small">
      <Small drawing={drawing} box={box} label={label} />
    </div>
  )
}

/** As wide as there is room. */
function AsWide(props: Omit<FullProps, 'width'>) {
  const { ref, width } = useWidth<HTMLDivElement>(320)
  return (
    <div class="outline-full" ref={ref}>
      <Full {...props} width={width} />
    </div>
  )
}

/** `Trousers, back, to scale. Centre back seam: 3.2 cm inwards. …` */
export function outlineWords(kind: GarmentKind, drawing: OutlineDrawing, moves: readonly Move[], words: Words): string {
  const head = words.t(`outline.says.${drawing.view}`, { kind })
  const told = moves.map(({ seam, way, offsetMm }) => words.t(`outline.says.${way}`, { seam, mm: Math.abs(offsetMm) }))
  return [head, ...new Set(told)].join(' ')
}

function Small({ drawing, box, label }: { drawing: OutlineDrawing; box: Box; label: string }) {
  const room = 3
  const scale = Math.min((SMALL_WIDTH - 2 * room) / (box.right - box.left), (SMALL_TALL - 2 * room) / (box.bottom - box.top))
  const width = Math.round((box.right - box.left) * scale + 2 * room)
  const height = Math.round((box.bottom - box.top) * scale + 2 * room)
  const origin = { x: box.left - room / scale, y: box.top - room / scale }
  return (
    <svg role="img" aria-label={label} viewBox={`0 0 ${width} ${height}`} width={width} height={height}>
      <Lines drawing={drawing} scale={scale} origin={origin} />
    </svg>
  )
}

function Lines({ drawing, scale, origin }: { drawing: OutlineDrawing; scale: number; origin: Spot }) {
  const path = (lines: Spot[][]) => lines.map((line) => pathOf(line, scale, origin)).join('')
  return (
    <>
      {drawing.layers.map(({ cloth, edges }) => (
        <g key={pathOf(cloth.slice(0, 3), 1, { x: 0, y: 0 })}>
          <path class="o-fill" d={`${pathOf(cloth, scale, origin)}Z`} />
          <path class="o-edge" d={path(edges)} />
        </g>
      ))}
      <path class="o-seam" d={path(drawing.seams)} />
      <path class="o-goes" d={path(drawing.moved.flatMap(({ goes }) => (goes === null ? [] : [goes])))} />
      <path class="o-comes" d={path(drawing.moved.map(({ comes }) => comes))} />
    </>
  )
}

const SIDE = 46
const LABELS = 128
const TOP = 34
const FOOT = 34
const LABEL_APART = 32
const LEAST_FULL = 280

interface FullProps {
  drawing: OutlineDrawing
  box: Box
  label: string
  width: number
  moves: readonly Move[]
}

function Full({ drawing, box, label, width, moves }: FullProps) {
  const words = useWords()
  const spots = useId()
  const wide = Math.max(Math.min(width, 460), LEAST_FULL)
  const scale = Math.min((wide - SIDE - LABELS) / (box.right - box.left), 0.42)
  const origin = { x: box.left - SIDE / scale, y: box.top - TOP / scale }
  const height = Math.round((box.bottom - box.top) * scale + TOP + FOOT)
  const place = ({ x, y }: Spot): Spot => ({ x: (x - origin.x) * scale, y: (y - origin.y) * scale })
  const cell = 100 * scale
  const zero = place({ x: 0, y: 0 })
  return (
    <svg role="img" aria-label={label} viewBox={`0 0 ${wide} ${height}`} width={wide} height={height}>
      <pattern id={spots} width={cell} height={cell} patternUnits="userSpaceOnUse" x={zero.x} y={zero.y}>
        <path class="o-cross" d={`M0 ${cell / 2}M${cell / 2 - 3} ${cell / 2}h6M${cell / 2} ${cell / 2 - 3}v6`} />
        <circle class="o-spot" cx={0.8} cy={0.8} r={0.8} />
        <circle class="o-spot" cx={cell / 2} cy={0.8} r={0.8} />
        <circle class="o-spot" cx={0.8} cy={cell / 2} r={0.8} />
      </pattern>
      <rect width={wide} height={height} fill={`url(#${spots})`} />
      <Lines drawing={drawing} scale={scale} origin={origin} />
      {drawing.dimensions.map(({ point, mm, flat, from, to }) => {
        const text = words.t(flat ? 'outline.across' : 'outline.along', { point, mm })
        return <DimensionLine key={point} a={place(from)} b={place(to)} text={text} under={from.y > 0} />
      })}
      {leadsTo(drawing.moved, moves, place, { x: wide - LABELS + 14, apart: LABEL_APART, above: 8 }).map(({ from, to, move }) => (
        <g key={`${move.job.id} ${move.seam} ${move.side}`}>
          <path class="o-lead" d={`M${round(from.x)} ${round(from.y)}L${round(to.x - 4)} ${round(to.y)}`} />
          <circle class="o-dot" cx={round(from.x)} cy={round(from.y)} r={2} />
          <text class="o-tA halo" x={round(to.x)} y={round(to.y + 4)}>
            {words.t(`moves.${move.way}`, { mm: Math.abs(move.offsetMm) })}
          </text>
          <text class="o-t halo" x={round(to.x)} y={round(to.y + 18)}>
            {words.t('moves.seam', { seam: move.seam })}
          </text>
        </g>
      ))}
    </svg>
  )
}

function DimensionLine({ a, b, text, under }: { a: Spot; b: Spot; text: string; under: boolean }) {
  if (Math.abs(a.y - b.y) < 0.01) {
    const y = round(a.y + (under ? 12 : -12))
    return (
      <>
        <path class="o-dim" d={`M${round(a.x)} ${y}H${round(b.x)}M${round(a.x)} ${y - 4}v8M${round(b.x)} ${y - 4}v8`} />
        <text class="o-t o-mid halo" x={round((a.x + b.x) / 2)} y={under ? y + 16 : y - 7}>
          {text}
        </text>
      </>
    )
  }
  const x = round(Math.max(16, a.x - 26))
  return (
    <>
      <path class="o-dim" d={`M${x} ${round(a.y)}V${round(b.y)}M${x - 4} ${round(a.y)}h8M${x - 4} ${round(b.y)}h8`} />
      <text class="o-t o-mid halo" transform={`translate(${x - 6} ${round((a.y + b.y) / 2)}) rotate(-90)`}>
        {text}
      </text>
    </>
  )
}
const round = (value: number): number => Math.round(value * 10) / 10
