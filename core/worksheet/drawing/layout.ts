/** Which template comes on which sheet, and where. All mm from a sheet's top left corner. */
import type { Box, Spot } from './line-work.ts'
import type { Template } from './template.ts'
import { wrapped } from './text-size.ts'
import { MARGIN_MM, type Paper, placeOn, SHEETS, type Shelf, shelfIn, type Tile, type Tiling, tilesOver, turned } from './tiles.ts'

export const TITLE_MM = 4.4
export const NOTE_MM = 2.9
/** From line to line. */
export const TITLE_TALL = 5.4
export const NOTE_TALL = 4
const FOOT_MM = 6
/** The left of the first sheet: the check squares and how to read the lines. */
export const FIRST_COLUMN_MM = 54
const COLUMN_GAP_MM = 5
const LEAST_BLOCK_MM = 88
const LEAST_TILE_MM = 70

/** The title over a template, or over one tile of it. */
export type TitleOf = (piece: Pick<Placed, 'template' | 'tiling' | 'tile' | 'isTiled'>) => string

/** A piece of a template on a sheet, under its own words. */
export interface Placed {
  template: Template
  tiling: Tiling
  tile: Tile
  /** Where the tile's top left corner comes to lie. */
  at: Spot
  head: { at: Spot; titles: string[]; lines: string[] }
  isTiled: boolean
}
export interface Sheet {
  placed: Placed[]
}

/** Where one may draw on a sheet of this paper. */
export function roomOn(paper: Paper, isFirst: boolean): Box {
  const { wide, tall } = SHEETS[paper]
  const left = isFirst ? MARGIN_MM + FIRST_COLUMN_MM + COLUMN_GAP_MM : MARGIN_MM
  return { left, top: MARGIN_MM, right: wide - MARGIN_MM, bottom: tall - MARGIN_MM - FOOT_MM }
}

const wideOf = ({ left, right }: Box): number => right - left
const tallOf = ({ top, bottom }: Box): number => bottom - top
const headTall = (titles: readonly string[], lines: readonly string[]): number =>
  titles.length * TITLE_TALL + lines.length * NOTE_TALL + 1.5
const headLines = ({ notes, assumed }: Template, room: number): string[] =>
  [...notes, ...assumed].flatMap((note) => wrapped(note, NOTE_MM, room))

interface OpenSheet {
  placed: Placed[]
  shelf: Shelf
}

/** Sheets for these templates: the first has the check squares even where it holds none. What fits an open sheet is put there. */
export function layOut(templates: readonly Template[], paper: Paper, titleOf: TitleOf): Sheet[] {
  const sheets: OpenSheet[] = [{ placed: [], shelf: shelfIn(roomOn(paper, true)) }]
  const fresh = (): OpenSheet => ({ placed: [], shelf: shelfIn(roomOn(paper, false)) })
  for (const template of templates) {
    if (sheets.some((sheet) => placeWhole(sheet, template, titleOf))) continue
    const next = fresh()
    if (placeWhole(next, template, titleOf) || placeWhole(next, turned(template), titleOf)) sheets.push(next)
    else placeTiles(sheets, inTiles(template, paper, titleOf), fresh)
  }
  return sheets.map(({ placed }) => ({ placed }))
}

/** Puts the tiles of a template in their order: none comes on a sheet before the last one's. */
function placeTiles(sheets: OpenSheet[], pieces: readonly Piece[], fresh: () => OpenSheet): void {
  let from = 0
  for (const piece of pieces) {
    let at = sheets.findIndex((sheet, i) => i >= from && placeTile(sheet, piece))
    if (at < 0) {
      const further = fresh()
      placeTile(further, piece)
      at = sheets.push(further) - 1
    }
    from = at
  }
}

type Piece = Omit<Placed, 'at' | 'head'> & { titles: string[]; lines: string[] }

/** Puts a template whole on a sheet, if there is room; tells whether there was. */
function placeWhole(sheet: OpenSheet, template: Template, titleOf: TitleOf): boolean {
  const wide = Math.max(wideOf(template.box), Math.min(LEAST_BLOCK_MM, wideOf(sheet.shelf.room)))
  const tile = { row: 0, column: 0, shows: template.box }
  const piece = { template, tiling: { rows: 1, columns: 1, tiles: [tile] }, tile, isTiled: false }
  return place(sheet, { ...piece, titles: wrapped(titleOf(piece), TITLE_MM, wide), lines: headLines(template, wide) }, wide)
}

const tileWide = ({ tile }: Pick<Piece, 'tile'>, lines: readonly string[]): number =>
  Math.max(wideOf(tile.shows), lines.length > 0 ? LEAST_BLOCK_MM : LEAST_TILE_MM)
const placeTile = (sheet: OpenSheet, piece: Piece): boolean => place(sheet, piece, tileWide(piece, piece.lines))

function place(sheet: OpenSheet, { titles, lines, ...piece }: Piece, wide: number): boolean {
  const head = headTall(titles, lines)
  const found = placeOn(sheet.shelf, wide, head + tallOf(piece.tile.shows))
  if (found === null) return false
  const { at } = found
  sheet.shelf = found.left
  sheet.placed.push({ ...piece, at: { x: at.x, y: at.y + head }, head: { at, titles, lines } })
  return true
}

/** The tiles of a template that no sheet holds, the way round that needs less paper; its notes stand over the first, the place over each. */
function inTiles(template: Template, paper: Paper, titleOf: TitleOf): Piece[] {
  const room = roomOn(paper, false)
  const ways = [template, turned(template)].map((one) => {
    const lines = headLines(one, Math.min(wideOf(room), Math.max(wideOf(one.box), LEAST_BLOCK_MM)))
    // a title takes two lines at most in a tile this wide
    const head = headTall(['', ''], lines)
    return { one, lines, tiling: tilesOver(one.box, { wide: wideOf(room), tall: tallOf(room) - head }) }
  })
  const [plain, sideways] = ways as [(typeof ways)[number], (typeof ways)[number]]
  const { one, tiling, lines } = sideways.tiling.tiles.length < plain.tiling.tiles.length ? sideways : plain
  return tiling.tiles.map((tile, i) => {
    const piece = { template: one, tiling, tile, isTiled: true }
    const own = i === 0 ? lines : []
    return { ...piece, titles: wrapped(titleOf(piece), TITLE_MM, tileWide(piece, own)), lines: own }
  })
}
