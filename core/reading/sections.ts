/** Several garments in one text (a suit): which of them a figure is of. */
import { type GarmentKind, SHAPE } from '../garment/kinds.ts'
import { sectionsOf } from './kind.ts'
import type { TextRead } from './text.ts'

export interface Garments {
  kindAt: (token: number) => { kind: GarmentKind | null; of: GarmentKind | null }
}

/** By headings that name kinds of different halves of the body; with one kind only, every figure is of it. */
export function garmentsOf(text: TextRead, kind: GarmentKind | null): Garments {
  const sections = sectionsOf(text)
  const shapes = new Set(sections.map((section) => SHAPE[section.kind]))
  if (shapes.size < 2) return { kindAt: () => ({ kind, of: null }) }
  return {
    kindAt: (token) => {
      let low = 0
      let high = sections.length
      while (low < high) {
        const middle = (low + high) >> 1
        if ((sections[middle] as { from: number }).from <= token) low = middle + 1
        else high = middle
      }
      const its = sections[low - 1]?.kind ?? kind
      return { kind: its, of: its }
    }
  }
}
