/** The listing's own words with what was read of them marked in place. Pure: places in, pieces out; text stays text. */
import type { Stated } from '../../core/garment/issue.ts'
import { isGirth } from '../../core/ids/points.ts'
import type { Correction, Reading } from '../../core/reading/reading.ts'
import type { Saying } from '../../core/words/reason.ts'
import { isQuoted } from './point-rows.ts'

export interface MarkedPart {
  start: number
  end: number
  as: 'read' | 'doubt' | 'aside'
  says: Saying
}
export interface Piece {
  start: number
  /** null: left out here. */
  text: string | null
  mark: MarkedPart | null
}

/** Every place in the text that something was made of. Where two lie over each other a doubt goes before a reading, and the earlier before the later. */
export function markedParts(reading: Reading, corrections: readonly Correction[]): MarkedPart[] {
  const marks: MarkedPart[] = []
  for (const { stated } of reading.issues) {
    const set = stated === undefined ? undefined : correctionAt(corrections, stated)
    if (stated !== undefined && set?.point && set.mm !== undefined) {
      const says = { code: isGirth(set.point) ? 'mark.set-around' : 'mark.set-long', values: { mm: set.mm } }
      marks.push({ start: stated.start, end: stated.end, as: 'read', says })
    } else if (stated !== undefined && set === undefined)
      marks.push({ start: stated.start, end: stated.end, as: 'doubt', says: { code: 'mark.doubt', values: {} } })
  }
  for (const { stated, point, mm, basis, lowMm, highMm } of reading.measures) {
    const place = { start: stated.start, end: stated.end }
    const set = correctionAt(corrections, stated)
    if (set !== undefined) {
      if (set.point === null) marks.push({ ...place, as: 'aside', says: { code: 'mark.not-this', values: { point } } })
      else
        marks.push({
          ...place,
          as: 'read',
          says: { code: basis === 'length' ? 'mark.set-long' : 'mark.set-around', values: { mm: set.mm ?? mm } }
        })
      continue
    }
    const as = lowMm < highMm ? 'doubt' : 'read'
    marks.push({ ...place, as, says: { code: basis === 'length' ? 'mark.long' : 'mark.around', values: { mm } } })
  }
  for (const { stated, mm } of reading.allowances) {
    marks.push({ start: stated.start, end: stated.end, as: 'read', says: { code: 'mark.allowance', values: { mm } } })
  }
  for (const { stated, because } of reading.leftAside) {
    marks.push({ start: stated.start, end: stated.end, as: 'aside', says: { code: `mark.aside.${because}`, values: {} } })
  }
  return apart(marks)
}

const correctionAt = (corrections: readonly Correction[], { text, start, end }: Stated) =>
  corrections.filter(isQuoted).findLast((one) => one.quote === text && one.start === start && one.end === end)

const STRENGTH: Record<MarkedPart['as'], number> = { doubt: 0, read: 1, aside: 2 }

/** Those that don't lie over a stronger one, in the order of the text. */
function apart(marks: MarkedPart[]): MarkedPart[] {
  const kept: MarkedPart[] = []
  for (const mark of [...marks].sort((a, b) => STRENGTH[a.as] - STRENGTH[b.as] || a.start - b.start)) {
    if (mark.end > mark.start && kept.every((other) => mark.end <= other.start || mark.start >= other.end)) kept.push(mark)
  }
  return kept.sort((a, b) => a.start - b.start)
}

/** Long pages: this much is shown around a mark, and of the beginning. */
const AROUND = 220
const WHOLE_UP_TO = 2500

/** The text in pieces, marked and not. A long text without `whole` keeps what stands around its marks. */
export function piecesOf(text: string, marks: readonly MarkedPart[], whole: boolean): Piece[] {
  const pieces: Piece[] = []
  const plain = (from: number, to: number) => {
    if (to <= from) return
    const piece = (start: number, end: number) => pieces.push({ start, text: text.slice(start, end), mark: null })
    const before = from === 0 && to < text.length ? 0 : from === 0 ? WHOLE_UP_TO : AROUND
    const behind = to === text.length ? 0 : AROUND
    if (whole || text.length <= WHOLE_UP_TO || to - from <= before + behind) {
      piece(from, to)
      return
    }
    if (before > 0) piece(from, from + before)
    pieces.push({ start: from + before, text: null, mark: null })
    if (behind > 0) piece(to - behind, to)
  }
  let at = 0
  for (const mark of marks) {
    if (mark.start < at || mark.end > text.length) continue
    plain(at, mark.start)
    pieces.push({ start: mark.start, text: text.slice(mark.start, mark.end), mark })
    at = mark.end
  }
  plain(at, text.length)
  return pieces
}
