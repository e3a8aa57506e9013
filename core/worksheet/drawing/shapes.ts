/**
 * Drawings as data: a tree of shapes that a page can make nodes of, and the one way to SVG text. Attributes are presentation attributes and numbers,
 * never `style`: pages allow no style in the text. Words are text, never markup.
 */
import { table } from '../../ids/table.ts'

export interface Shape {
  tag: 'svg' | 'g' | 'path' | 'line' | 'rect' | 'circle' | 'text' | 'title'
  attributes: Readonly<Record<string, string | number>>
  /** The words of a text or a title. */
  text?: string
  children?: readonly Shape[]
}

const ESCAPES = table({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' })
/** What XML cannot hold even escaped. */
const NOT_IN_XML = /[\p{Cc}\uFFFE\uFFFF]/gu
const escaped = (text: string): string => text.replace(NOT_IN_XML, ' ').replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? '')

/** Hundredths of a millimetre: ten times finer than a print. Throws on what is no figure: the caller's error. */
export function hundredths(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing needs figures: ${value}`)
  const rounded = Math.round(value * 100) / 100
  return rounded === 0 ? 0 : rounded
}

/** A shape as SVG text, everything escaped. */
export function toSvg({ tag, attributes, text, children = [] }: Shape): string {
  const written = Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${typeof value === 'number' ? hundredths(value) : escaped(value)}"`)
    .join('')
  const inside = (text === undefined ? '' : escaped(text)) + children.map(toSvg).join('')
  return inside === '' ? `<${tag}${written}/>` : `<${tag}${written}>${inside}</${tag}>`
}
