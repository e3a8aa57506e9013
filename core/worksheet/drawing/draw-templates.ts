/** Plan → sheets of paper with its templates at true scale: SVG in millimetres, made of numbers and escaped words. */
import type { Plan } from '../../plan/plan.ts'
import type { ReckonRequest } from '../../plan/request.ts'
import { say, type Wording } from '../../words/say.ts'
import { checkColumn } from './check-column.ts'
import { labelSize } from './label-box.ts'
import { layOut, NOTE_MM, NOTE_TALL, type Placed, roomOn, type Sheet, TITLE_MM, TITLE_TALL, type TitleOf } from './layout.ts'
import { type Box, cutTo, type Line, type Spot } from './line-work.ts'
import { type Shape, toSvg } from './shapes.ts'
import { FAINT_INK, stroke, words } from './strokes.ts'
import type { Asked, Label, Template, Untemplated } from './template.ts'
import { templatesFor } from './templates-for.ts'
import { labelsOf, MARGIN_MM, OVERLAP_MM, type Paper, SHEETS } from './tiles.ts'

/** A template, or a tile of one, on a page. */
export interface Holds {
  template: string
  row: number
  rows: number
  column: number
  columns: number
  /** What it shows, in the template's mm as it is laid out; and where that box's top left corner lies on the page. */
  shows: Box
  at: Spot
}
export interface TemplatePage {
  number: number
  of: number
  wideMm: number
  tallMm: number
  /** The page as a tree, for pages that make nodes of it; `svg` is the same as text. */
  tree: Shape
  svg: string
  holds: Holds[]
}
export interface TemplatesDrawn {
  pages: TemplatePage[]
  templates: Template[]
  /** Jobs for which nothing is drawn, each with the reason. */
  without: Untemplated[]
}

/**
 * The templates of a plan on A4 or Letter. No page where no job has one; the first page has the check squares. Lengths in mm, words in the
 * person's units. Throws only on figures that are none: the caller's error.
 */
export function drawTemplates(
  plan: Plan,
  request: ReckonRequest,
  paper: Paper,
  units: Wording['units'],
  language?: string
): TemplatesDrawn {
  const wording: Wording = language === undefined ? { units } : { units, language }
  const { templates, without } = templatesFor(plan, request, wording)
  const t: Asked['t'] = (code, values = {}) => say({ code, values }, wording)
  return { pages: pagesOf(templates, without, paper, { t, units }), templates, without }
}

/** Templates on pages of one paper. */
export function pagesOf(
  templates: readonly Template[],
  without: readonly Untemplated[],
  paper: Paper,
  asked: Pick<Asked, 't' | 'units'>
): TemplatePage[] {
  if (templates.length === 0) return []
  const titleOf: TitleOf = ({ template, tiling, tile, isTiled }) =>
    isTiled ? `${template.title} (${placeOf(tiling, tile, asked.t)})` : template.title
  const drawn = layOut(templates, paper, titleOf).map((sheet, i) => ({ sheet, shapes: onSheet(sheet, paper, i === 0, asked, without) }))
  // a tile through which nothing passes is not printed
  const kept = drawn.filter(
    ({ sheet, shapes }, i) => i === 0 || shapes.some(({ marks }) => marks > 0) || sheet.placed.some((one) => !one.isTiled)
  )
  return kept.map(({ sheet, shapes }, i) =>
    page(
      sheet,
      shapes.map(({ shape }) => shape),
      i + 1,
      kept.length,
      paper,
      asked
    )
  )
}

/** Which of its tiles this is: in one row or column by number, else by row and column. */
const placeOf = ({ rows, columns }: Placed['tiling'], { row, column }: Placed['tile'], t: Asked['t']): string =>
  rows > 1 && columns > 1
    ? t('template.page.place', { row: row + 1, rows, column: column + 1, columns })
    : t('template.page.part', { number: row + column + 1, of: rows * columns })

interface Drawn {
  shape: Shape
  /** Lines of the template itself that it holds. */
  marks: number
}

function onSheet(
  sheet: Sheet,
  paper: Paper,
  isFirst: boolean,
  asked: Pick<Asked, 't' | 'units'>,
  without: readonly Untemplated[]
): Drawn[] {
  const { tall } = SHEETS[paper]
  const column = { left: MARGIN_MM, top: MARGIN_MM, right: MARGIN_MM, bottom: tall - MARGIN_MM - 6 }
  const first: Drawn[] = isFirst ? [{ shape: { tag: 'g', attributes: {}, children: checkColumn(column, asked, without) }, marks: 0 }] : []
  return [...first, ...sheet.placed.map(piece)]
}

/** A tile of a template: its words, its lines as far as it shows them, the marks by which tiles are joined. */
function piece({ template, tiling, tile, at, head, isTiled }: Placed): Drawn {
  const onPage = ({ x, y }: Spot): Spot => ({ x: x - tile.shows.left + at.x, y: y - tile.shows.top + at.y })
  const under = head.at.y + head.titles.length * TITLE_TALL
  const texts = [
    ...head.titles.map((text, i) => words({ at: { x: head.at.x, y: head.at.y + TITLE_MM - 0.6 + i * TITLE_TALL }, text, size: TITLE_MM })),
    ...head.lines.map((text, i) => words({ at: { x: head.at.x, y: under + NOTE_MM + NOTE_TALL * i }, text, size: NOTE_MM }))
  ]
  const lines = template.lines.flatMap(({ role, line }) =>
    cutTo(line, tile.shows).map((cut) => stroke(role, cut.line.map(onPage), cut.from))
  )
  const labels = (labelsOf(template.labels, tiling).get(tile) ?? []).flatMap((label): Shape[] => [
    ...leadOf(label, tile.shows).map((lead) => stroke('mark', lead.map(onPage))),
    words({
      at: onPage(label.at),
      text: label.text,
      size: labelSize(label),
      anchor: label.anchor,
      bold: label.look === 'strong',
      faint: label.look === 'faint',
      upright: label.upright === true
    })
  ])
  const joins = isTiled ? joinMarks(tile, tiling, onPage) : []
  return { shape: { tag: 'g', attributes: {}, children: [...joins, ...lines, ...labels, ...texts] }, marks: lines.length }
}

/** The line from words to what they speak of, as far as this tile shows it. */
function leadOf({ at, lead, upright }: Label, shows: Box): Line[] {
  if (lead === undefined) return []
  const from = upright === true ? { x: at.x - LEAD_UP_MM, y: at.y + 1 } : { x: at.x - 1, y: at.y - LEAD_UP_MM }
  return cutTo([from, lead], shows).map(({ line }) => line)
}
/** The middle of small letters over their line. */
const LEAD_UP_MM = 1.1

const CROSS_MM = 3
/** The edge of what a tile shows, and crosses in the middle of each overlap: the same places on both sheets. */
function joinMarks({ row, column, shows }: Placed['tile'], { rows, columns }: Placed['tiling'], onPage: (spot: Spot) => Spot): Shape[] {
  const { left, top, right, bottom } = shows
  const quarters = (low: number, high: number) => [low + (high - low) / 4, low + (3 * (high - low)) / 4]
  const half = OVERLAP_MM / 2
  const spots: Spot[] = [
    ...(column > 0 ? quarters(top, bottom).map((y) => ({ x: left + half, y })) : []),
    ...(column < columns - 1 ? quarters(top, bottom).map((y) => ({ x: right - half, y })) : []),
    ...(row > 0 ? quarters(left, right).map((x) => ({ x, y: top + half })) : []),
    ...(row < rows - 1 ? quarters(left, right).map((x) => ({ x, y: bottom - half })) : [])
  ]
  const corner = onPage({ x: left, y: top })
  const frame: Shape = {
    tag: 'rect',
    attributes: {
      x: corner.x,
      y: corner.y,
      width: right - left,
      height: bottom - top,
      fill: 'none',
      stroke: FAINT_INK,
      'stroke-width': 0.15
    }
  }
  const crosses = spots.map(onPage).flatMap(({ x, y }): Shape[] => [
    stroke('mark', [
      { x: x - CROSS_MM, y },
      { x: x + CROSS_MM, y }
    ]),
    stroke('mark', [
      { x, y: y - CROSS_MM },
      { x, y: y + CROSS_MM }
    ]),
    { tag: 'circle', attributes: { cx: x, cy: y, r: CROSS_MM / 2, fill: 'none', stroke: FAINT_INK, 'stroke-width': 0.2 } }
  ])
  return [frame, ...crosses]
}

function page(sheet: Sheet, shapes: Shape[], number: number, of: number, paper: Paper, { t }: Pick<Asked, 't'>): TemplatePage {
  const { wide, tall } = SHEETS[paper]
  const room = roomOn(paper, false)
  const foot = tall - MARGIN_MM - 1
  const title = t('template.page.number', { number, of })
  const tree: Shape = {
    tag: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${wide}mm`,
      height: `${tall}mm`,
      viewBox: `0 0 ${wide} ${tall}`,
      role: 'img'
    },
    children: [
      { tag: 'title', attributes: {}, text: [...sheet.placed.map(({ template }) => template.title), title].join(', ') },
      { tag: 'rect', attributes: { x: 0, y: 0, width: wide, height: tall, fill: '#fff' } },
      ...shapes,
      words({ at: { x: room.left, y: foot }, text: t('template.page.scale'), size: NOTE_MM }),
      words({ at: { x: room.right, y: foot }, text: title, size: NOTE_MM, anchor: 'end' })
    ]
  }
  const holds = sheet.placed.map(
    ({ template, tiling, tile, at }): Holds => ({
      template: template.id,
      row: tile.row + 1,
      rows: tiling.rows,
      column: tile.column + 1,
      columns: tiling.columns,
      shows: tile.shows,
      at
    })
  )
  return { number, of, wideMm: wide, tallMm: tall, tree, svg: toSvg(tree), holds }
}
