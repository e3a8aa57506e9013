/** The figure with its numbered tapes, front or back. No face, no sex; the tape being entered has a solid ring. */
import type { BodyMeasureId } from '../../../core/wearer/body.ts'
import { type Line, mirrored, type Spot, smooth } from '../../../core/worksheet/outline/curve.ts'
import { useWords } from '../../words.tsx'
import { type BodyPlace, HALF_FIGURE, MAIN_PLACES, MORE_PLACES, type Side } from './body-places.ts'

export interface BodyFigureProps {
  side: Side
  active: BodyMeasureId | null
  /** Small, with the tape of the active measure alone: it stands beside its field. */
  alone?: boolean
}

const VIEW = { left: -140, top: -8, width: 290, height: 496 }
/** The half of the figure that one tape lies on, without room for rings; its tape is drawn broad, to be seen so small. */
const ALONE = { left: -92, width: 184, height: 236 }
const BROAD_HALF = 6
function viewAround(tape: Line): typeof VIEW {
  const ys = tape.map(({ y }) => y)
  const top = (Math.min(...ys) + Math.max(...ys) - ALONE.height) / 2
  return { ...ALONE, top: Math.min(Math.max(top, VIEW.top), VIEW.top + VIEW.height - ALONE.height) }
}
const RING = 11.5
const TAPE_HALF = 3.5
const TICK_EVERY = 6

export function BodyFigure({ side, active, alone = false }: BodyFigureProps) {
  const { t } = useWords()
  const all = [...MAIN_PLACES, ...MORE_PLACES.filter(({ measure }) => measure === active)].filter((place) => place.side === side)
  const [only] = all.filter(({ measure }) => measure === active)
  const view = alone && only !== undefined ? viewAround(only.tape) : VIEW
  const places = alone ? all.filter(({ measure }) => measure === active) : all
  return (
    <svg
      class={alone ? 'wr-figure-alone' : 'wr-figure'}
      role="img"
      aria-label={alone && active !== null ? t('body.figure.alone', { measure: active }) : t(`body.figure.${side}`)}
      viewBox={`${view.left} ${view.top} ${view.width} ${view.height}`}
      width={view.width}
      height={view.height}
    >
      <path class="o-fill o-edge" d={SILHOUETTE} />
      <ellipse class="o-fill o-edge" cx={0} cy={30} rx={22} ry={29} />
      {places.map((place) => (
        <Tape key={place.number} place={place} active={place.measure === active} broad={alone} />
      ))}
      {!alone && places.map((place) => <Ring key={place.number} place={place} active={place.measure === active} />)}
    </svg>
  )
}

function Tape({ place, active, broad }: { place: BodyPlace; active: boolean; broad: boolean }) {
  const { body, ticks } = strip(smooth(place.tape), broad ? BROAD_HALF : TAPE_HALF)
  return (
    <g class={active ? 'wr-tape wr-on' : 'wr-tape'}>
      <path class="wr-strip" d={body} />
      {!broad && <path class="tp-tick" d={ticks} />}
    </g>
  )
}

function Ring({ place: { ring, tape, number }, active }: { place: BodyPlace; active: boolean }) {
  const near = nearest(tape, ring)
  const way = Math.hypot(near.x - ring.x, near.y - ring.y)
  const start = { x: ring.x + ((near.x - ring.x) * RING) / way, y: ring.y + ((near.y - ring.y) * RING) / way }
  return (
    <g class={active ? 'wr-ring wr-on' : 'wr-ring'}>
      <path class="o-lead" d={`M${px(start.x)} ${px(start.y)}L${px(near.x)} ${px(near.y)}`} />
      <circle cx={ring.x} cy={ring.y} r={RING} />
      <text x={ring.x} y={ring.y + 4.5}>
        {number}
      </text>
    </g>
  )
}

/** A strip of tape along a line, with its ticks. */
function strip(line: Line, half: number): { body: string; ticks: string } {
  const sides = line.map((spot, i) => {
    const before = line[i - 1] ?? spot
    const after = line[i + 1] ?? spot
    const long = Math.hypot(after.x - before.x, after.y - before.y) || 1
    const across = { x: (-(after.y - before.y) / long) * half, y: ((after.x - before.x) / long) * half }
    return { one: { x: spot.x + across.x, y: spot.y + across.y }, two: { x: spot.x - across.x, y: spot.y - across.y } }
  })
  const body = `${path(sides.map(({ one }) => one))}L${path(sides.map(({ two }) => two).reverse()).slice(1)}Z`
  let gone = 0
  let next = TICK_EVERY
  let ticks = ''
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1], line[i]]
    const [from, to] = [sides[i - 1], sides[i]]
    if (a === undefined || b === undefined || from === undefined || to === undefined) continue
    const step = Math.hypot(b.x - a.x, b.y - a.y)
    while (next <= gone + step && step > 0) {
      const share = (next - gone) / step
      ticks += path([mix(from.one, to.one, share), mix(from.two, to.two, share)])
      next += TICK_EVERY
    }
    gone += step
  }
  return { body, ticks }
}

const mix = (a: Spot, b: Spot, share: number): Spot => ({ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share })
const path = (line: Line): string => line.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('')
const px = (value: number): number => Math.round(value * 10) / 10

const nearest = (line: Line, to: Spot): Spot =>
  smooth(line).reduce((best, spot) => (Math.hypot(spot.x - to.x, spot.y - to.y) < Math.hypot(best.x - to.x, best.y - to.y) ? spot : best))

const SILHOUETTE = ((): string => {
  const right = [smooth(HALF_FIGURE.arm), smooth(HALF_FIGURE.trunk), smooth(HALF_FIGURE.leg)].flat()
  return `${path([...right, ...mirrored(right).reverse()])}`
})()
