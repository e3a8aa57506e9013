/** Where words lie on a drawing, and a template made whole: its box is around every line and every label. */
import { type Box, boxAround } from './line-work.ts'
import type { Label, Template } from './template.ts'
import { textWidth } from './text-size.ts'

export const LABEL_MM = 3.2
const FAINT_MM = 2.8
/** Bold letters are wider. */
const BOLD = 1.1
const ROOM_MM = 2

export const labelSize = ({ look }: Label): number => (look === 'faint' ? FAINT_MM : LABEL_MM)

/** The box of a label's words, mm. */
export function labelBox(label: Label): Box {
  const size = labelSize(label)
  const wide = textWidth(label.text, size) * (label.look === 'strong' ? BOLD : 1)
  const before = label.anchor === 'start' ? 0 : label.anchor === 'end' ? wide : wide / 2
  const { x, y } = label.at
  return label.upright === true
    ? { left: x - size, right: x + 0.3 * size, top: y - (wide - before), bottom: y + before }
    : { left: x - before, right: x - before + wide, top: y - size, bottom: y + 0.3 * size }
}

/** A template with its box. */
export function whole(parts: Omit<Template, 'box'>): Template {
  const corners = parts.labels.map(labelBox).flatMap(({ left, top, right, bottom }) => [
    { x: left, y: top },
    { x: right, y: bottom }
  ])
  const { left, top, right, bottom } = boxAround([...parts.lines.flatMap(({ line }) => line), ...corners])
  return { ...parts, box: { left: left - ROOM_MM, top: top - ROOM_MM, right: right + ROOM_MM, bottom: bottom + ROOM_MM } }
}

/** Heights as near to where they are wanted as they can be, no two nearer than `apart`. In the order given, which must not fall. */
export function spread(wanted: readonly number[], apart: number): number[] {
  const heights: number[] = []
  for (const y of wanted) heights.push(Math.max(y, (heights.at(-1) ?? Number.NEGATIVE_INFINITY) + apart))
  return heights
}
