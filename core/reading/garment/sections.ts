/** Several garments in one text (a suit): which of them a figure is of. */
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import type { TextRead } from '../text/text.ts'
import { sectionsOf } from './kind.ts'

export interface Garments {
  kindAt: (token: number) => { kind: GarmentKind | null; of: GarmentKind | null }
}

/** By headings that name kinds of different halves of the body, or a waistcoat and a jacket; with one kind only, every figure is of it. */
export function garmentsOf(text: TextRead, kind: GarmentKind | null): Garments {
  const sections = sectionsOf(text)
  const shapes = new Set(sections.map((section) => SHAPE[section.kind]))
  const kinds = new Set(sections.map((section) => section.kind))
  // a waistcoat beside a jacket is a garment of its own
  if (shapes.size < 2 && !(kinds.has('waistcoat') && kinds.size > 1)) return { kindAt: () => ({ kind, of: null }) }
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

/** Several sizes, each heading its figures: which of them a figure is of. */
export function sizesOf(heads: readonly { from: number; label: string }[]): (token: number) => string | null {
  if (new Set(heads.map(({ label }) => label)).size < 2) return () => null
  return (token) => {
    let low = 0
    let high = heads.length
    while (low < high) {
      const middle = (low + high) >> 1
      if ((heads[middle] as { from: number }).from <= token) low = middle + 1
      else high = middle
    }
    return heads[low - 1]?.label ?? null
  }
}

/** Of the sizes that a text measures, the one that its title offers: null when the title names none of them, or several. */
export function sizeOffered(measured: ReadonlySet<string>, titleLabels: readonly string[]): string | null {
  const named = [...measured].filter((size) =>
    titleLabels.some((label) => label === size || label.endsWith(` ${size}`) || size.startsWith(`${label} `))
  )
  return named.length === 1 ? (named[0] as string) : null
}
