/** What the page's data tells that its text does not: measurements, and the description where the text is poorer. */
import type { ListingText, Reading } from './reading.ts'
import type { StructuredRead } from './structured.ts'

const letters = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
const key = ({ point, size }: Reading['measures'][number]): string => `${size ?? ''}/${point}`

/** The lines to read behind the text; '' where it tells all that they do. `read` reads a text of this listing. */
export function moreText(
  { text }: ListingText,
  { description, lines }: Pick<StructuredRead, 'description' | 'lines'>,
  first: Reading,
  read: (text: string) => Reading
): string {
  if (description === null && lines.length === 0) return ''
  const known = new Set(first.measures.map(key))
  const parts: string[] = []
  if (description !== null && !letters(text).includes(letters(description))) {
    const told = read(description).measures.map(key)
    if (told.some((one) => !known.has(one)) || letters(text).length * 2 < letters(description).length) {
      parts.push(description)
      for (const one of told) known.add(one)
    }
  }
  const fresh = lines.length > 0 ? freshLines(lines, known, read) : []
  if (fresh.length > 0) parts.push(fresh.join('\n'))
  return parts.length > 0 ? `${text === '' ? '' : '\n\n'}${parts.join('\n\n')}` : ''
}

/** Lines of points that are not known yet; with none of them, nothing; sizes keep their headings. */
function freshLines(lines: readonly string[], known: ReadonlySet<string>, read: (text: string) => Reading): string[] {
  const { measures } = read(lines.join('\n'))
  const needed = new Set<number>()
  for (const one of measures) if (!known.has(key(one))) needed.add(lineAt(lines, one.stated.start))
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
