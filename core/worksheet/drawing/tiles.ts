/** How a template lies on sheets of paper: whole beside others where it fits, else in tiles that overlap. All mm. */
import { labelBox, labelSize } from './label-box.ts'
import type { Box, Line, Spot } from './line-work.ts'
import type { Label, Template } from './template.ts'

export type Paper = 'A4' | 'Letter'
export const SHEETS: Readonly<Record<Paper, { wide: number; tall: number }>> = {
  A4: { wide: 210, tall: 297 },
  Letter: { wide: 215.9, tall: 279.4 }
}
export const MARGIN_MM = 12
/** Neighbouring tiles show this much of each other. */
export const OVERLAP_MM = 10

export interface Tile {
  row: number
  column: number
  /** What of the template it shows, in the template's own mm. */
  shows: Box
}
export interface Tiling {
  rows: number
  columns: number
  tiles: Tile[]
}

const countOf = (size: number, window: number): number => (size <= window ? 1 : Math.ceil((size - OVERLAP_MM) / (window - OVERLAP_MM)))

/** Tiles of one window's size that cover a box, row by row; every two neighbours share OVERLAP_MM; the last of a row or column ends with the box. */
export function tilesOver(box: Box, window: { wide: number; tall: number }): Tiling {
  const columns = countOf(box.right - box.left, window.wide)
  const rows = countOf(box.bottom - box.top, window.tall)
  const tiles = Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns]
    const left = box.left + column * (window.wide - OVERLAP_MM)
    const top = box.top + row * (window.tall - OVERLAP_MM)
    const [right, bottom] = [Math.min(left + window.wide, box.right), Math.min(top + window.tall, box.bottom)]
    return { row, column, shows: { left, top, right, bottom } }
  })
  return { rows, columns, tiles }
}

/** A template turned a quarter to the left, for the other way of the paper: what was its top is its left side. */
export function turned(template: Template): Template {
  const spot = ({ x, y }: Spot): Spot => ({ x: y, y: -x })
  const turnedLine = (line: Line): Line => line.map(spot)
  const label = (one: Label): Label => ({
    ...(one.upright === true ? setLevel(one, spot(one.at)) : { ...one, at: spot(one.at), upright: true }),
    ...(one.lead === undefined ? {} : { lead: spot(one.lead) })
  })
  const { left, top, right, bottom } = template.box
  return {
    ...template,
    lines: template.lines.map(({ role, line }) => ({ role, line: turnedLine(line) })),
    labels: template.labels.map(label),
    box: { left: top, right: bottom, top: -right, bottom: -left }
  }
}

/** Words that stood upright are not stood on their head but set level, where they were. */
function setLevel(label: Label, at: Spot): Label {
  const anchor = label.anchor === 'start' ? 'end' : label.anchor === 'end' ? 'start' : 'middle'
  return { ...label, at: { x: at.x, y: at.y + labelSize(label) }, anchor, upright: false }
}

/** The tile that holds each label whole, or as much as any; a label that no tile holds whole is moved into the one that holds its middle. */
export function labelsOf(labels: readonly Label[], { tiles }: Tiling): Map<Tile, Label[]> {
  const placed = new Map<Tile, Label[]>(tiles.map((tile) => [tile, []]))
  for (const label of labels) {
    const box = labelBox(label)
    const centre = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 }
    const nearest = [...tiles].sort((a, b) => offCentre(a, centre) - offCentre(b, centre))
    const tile = nearest.find(({ shows }) => holds(shows, box)) ?? nearest[0]
    if (tile === undefined) continue
    const by = inwards(box, tile.shows)
    placed.get(tile)?.push({ ...label, at: { x: label.at.x + by.x, y: label.at.y + by.y } })
  }
  return placed
}

const offCentre = ({ shows }: Tile, { x, y }: Spot): number =>
  Math.max(
    Math.abs(x - (shows.left + shows.right) / 2) / (shows.right - shows.left),
    Math.abs(y - (shows.top + shows.bottom) / 2) / (shows.bottom - shows.top)
  )
const holds = (outer: Box, inner: Box): boolean =>
  inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom
function inwards(box: Box, window: Box): Spot {
  const shift = (low: number, high: number, least: number, most: number): number =>
    low < least ? least - low : high > most ? most - high : 0
  return { x: shift(box.left, box.right, window.left, window.right), y: shift(box.top, box.bottom, window.top, window.bottom) }
}

/** Room on a sheet, filled in rows from the left. */
export interface Shelf {
  room: Box
  x: number
  y: number
  deep: number
}
export const shelfIn = (room: Box): Shelf => ({ room, x: room.left, y: room.top, deep: 0 })
export const GAP_MM = 5

/** The place of a block's top left corner and what room is left beside it; null where there is none for it. */
export function placeOn({ room, x, y, deep }: Shelf, wide: number, tall: number): { at: Spot; left: Shelf } | null {
  const fits = (at: Spot): boolean => at.x + wide <= room.right + 1e-9 && at.y + tall <= room.bottom + 1e-9
  const beside = { x, y }
  if (fits(beside)) return { at: beside, left: { room, x: x + wide + GAP_MM, y, deep: Math.max(deep, tall) } }
  const below = { x: room.left, y: y + deep + GAP_MM }
  return fits(below) ? { at: below, left: { room, x: room.left + wide + GAP_MM, y: below.y, deep: tall } } : null
}
