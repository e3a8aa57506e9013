/** A garment in small with the tape lying where a point of it is measured. The words that say how stand beside it. */
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { PointId } from '../../core/ids/points.ts'
import { boxOf, outlineOf, pathOf } from '../../core/worksheet/outline/outline-geometry.ts'
import { drawnPoints, measureLine, viewFor } from './measure-line.ts'

export interface MeasureMarkProps {
  kind: GarmentKind
  point: PointId
}

const WIDE = 64
const TALL = 76
const ROOM = 4

export function MeasureMark({ kind, point }: MeasureMarkProps) {
  const line = measureLine(kind, point)
  const drawing = outlineOf(kind, { points: drawnPoints(kind), jobs: [], made: {} }, viewFor(point))
  const box = boxOf(drawing)
  const scale = Math.min((WIDE - 2 * ROOM) / (box.right - box.left), (TALL - 2 * ROOM) / (box.bottom - box.top))
  const origin = {
    x: (box.left + box.right) / 2 - WIDE / 2 / scale,
    y: (box.top + box.bottom) / 2 - TALL / 2 / scale
  }
  const path = line === null ? '' : pathOf(line, scale, origin)
  return (
    <svg class="measure-mark" aria-hidden="true" viewBox={`0 0 ${WIDE} ${TALL}`} width={WIDE} height={TALL}>
      {drawing.layers.map(({ cloth, edges }) => (
        <g key={pathOf(cloth.slice(0, 3), 1, { x: 0, y: 0 })}>
          <path class="o-fill" d={`${pathOf(cloth, scale, origin)}Z`} />
          <path class="o-faint" d={edges.map((edge) => pathOf(edge, scale, origin)).join('')} />
        </g>
      ))}
      {path !== '' && (
        <>
          <path class="m-rim" d={path} />
          <path class="m-tape" d={path} />
        </>
      )}
    </svg>
  )
}
