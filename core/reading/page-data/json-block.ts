/** One JSON-LD block as pages write it: comments around it, line breaks inside its texts. */
import { table } from '../../ids/table.ts'

/** The value of a block; undefined where it is broken past such slips. Linear. */
export function jsonBlock(block: string): unknown {
  const text = unwrapped(block)
  try {
    return JSON.parse(text)
  } catch {
    try {
      return JSON.parse(withEscapes(text))
    } catch {
      return undefined
    }
  }
}

/** <!-- … --> and CDATA marks around a block are left over from older pages. */
function unwrapped(block: string): string {
  let text = block.trim()
  for (const [start, end] of [
    ['//<![CDATA[', '//]]>'],
    ['/*<![CDATA[*/', '/*]]>*/'],
    ['<![CDATA[', ']]>'],
    ['<!--', '-->']
  ] as const) {
    if (text.startsWith(start) && text.endsWith(end)) text = text.slice(start.length, -end.length).trim()
  }
  return text
}

const SPELLED = table({ '\n': '\\n', '\r': '\\r', '\t': '\\t' })

/** Line breaks and tabs inside a string, which JSON wants written as \n and \t. */
function withEscapes(text: string): string {
  const parts: string[] = []
  let inside = false
  let from = 0
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (code === 0x5c) at++
    else if (code === 0x22) inside = !inside
    else if (inside && code < 0x20) {
      parts.push(text.slice(from, at), SPELLED[text.charAt(at)] ?? ' ')
      from = at + 1
    }
  }
  parts.push(text.slice(from))
  return parts.join('')
}
