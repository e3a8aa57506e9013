/** What the page's data and its title tell that its text does not: measurements, and the description where the text is poorer. */
import { SHAPE } from '../../ids/kinds.ts'
import type { ListingText, Reading } from '../reading.ts'
import { cue, cueStart } from '../text/cues.ts'
import type { StructuredRead } from './structured.ts'

const letters = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
const key = ({ point, size }: Reading['measures'][number]): string => `${size ?? ''}/${point}`

/** A figure with a unit beside it, or a mark of inches: without one a title tells a size, no measure (`tellsMeasures`). */
const SIGNED = /\d ?(?:["”“″]|''|’’|cm|mm|in)/i
const NUMBER_AND_WORD = /\d ?(\p{L}+)/gu
const INCH_BEGINS = cueStart('inchBegins')
const INCH_SHORT = cue('inchShort')
const isMeasured = (title: string): boolean =>
  /\d/.test(title) &&
  (SIGNED.test(title) ||
    [...title.matchAll(NUMBER_AND_WORD)].some(([, unit = '']) => INCH_BEGINS.test(unit) || INCH_SHORT.test(unit.toLowerCase())))

/** The lines to read behind the text; '' where it tells all that they do. `read` reads a text of this listing. */
export function moreText(
  { text, title }: ListingText,
  { description, lines }: Pick<StructuredRead, 'description' | 'lines'>,
  first: Reading,
  read: (text: string) => Reading
): string {
  const named = title && isMeasured(title) && !letters(text).includes(letters(title)) ? title : null
  if (description === null && lines.length === 0 && named === null) return ''
  const known = new Set(first.measures.map(key))
  const parts: string[] = []
  if (description !== null && !letters(text).includes(letters(description))) {
    const keys = read(description).measures.map(key)
    if (keys.some((one) => !known.has(one)) || letters(text).length * 2 < letters(description).length) {
      parts.push(description)
      for (const one of keys) known.add(one)
    }
  }
  if (named !== null && tellsMeasures(read(named), known)) parts.push(named)
  const fresh = lines.length > 0 ? freshLines(lines, known, first.sizeChart.length === 0, read) : []
  if (fresh.length > 0) parts.push(fresh.join('\n'))
  return parts.length > 0 ? `${text === '' ? '' : '\n\n'}${parts.join('\n\n')}` : ''
}

/** Points that a title tells as a size rather than as a measure. */
const SIZED = new Set(['waist', 'inseam', 'outseam'])

/**
 * Does a title measure? “pit to pit 20"” and “bust 36" waist 28"” do; a chest of 40" alone is a size, and so are a waist and a leg on legs.
 * All its figures must be measures with their unit, or none is taken.
 */
function tellsMeasures({ measures, garment }: Reading, known: ReadonlySet<string>): boolean {
  const legs = garment.kind !== null && SHAPE[garment.kind] === 'legs'
  return (
    measures.some((one) => !known.has(key(one))) &&
    measures.every((one) => {
      if (one.unitFrom === 'judged' || one.of !== undefined || one.size !== undefined) return false
      if (one.basis === 'flat' && one.basisFrom === 'stated') return true
      if (legs) return !SIZED.has(one.point)
      return one.basis === 'length' || measures.length > 1
    })
  )
}

/** Lines of points that are not known yet, or of a body where the text names none; with none of them, nothing; sizes keep their headings. */
function freshLines(lines: readonly string[], known: ReadonlySet<string>, bodies: boolean, read: (text: string) => Reading): string[] {
  const { measures, sizeChart } = read(lines.join('\n'))
  const needed = new Set<number>()
  for (const one of measures) if (!known.has(key(one))) needed.add(lineAt(lines, one.stated.start))
  if (bodies) for (const { stated } of sizeChart) needed.add(lineAt(lines, stated.start))
  if (needed.size === 0) return []
  return lines.filter((line, index) => needed.has(index) || /^(?:Size .*:|To fit .*)$/.test(line))
}

function lineAt(lines: readonly string[], start: number): number {
  let reached = 0
  for (let index = 0; index < lines.length; index++) {
    reached += (lines[index] as string).length + 1
    if (start < reached) return index
  }
  return -1
}
