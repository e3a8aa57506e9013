/**
 * Reads what a printed page draws, from the PDF's own content streams: paths through the current transformation matrix, in mm from the page's top left
 * corner. No pixels. Knows what Chromium writes (plain objects, Flate streams, paths and matrices); says so where it meets anything else.
 */
import { inflateSync } from 'node:zlib'

export interface Spot {
  x: number
  y: number
}
export interface Drawn {
  how: 'stroke' | 'fill'
  /** Corners of each subpath; a curve is kept by its handles and end. */
  paths: Spot[][]
}
export interface PdfPage {
  wideMm: number
  tallMm: number
  drawn: Drawn[]
  /** Where each run of letters begins. */
  words: Spot[]
}

const MM_PER_POINT = 25.4 / 72
type Matrix = [number, number, number, number, number, number]
/** First `inner`, then `outer`. */
const times = (inner: Matrix, outer: Matrix): Matrix => {
  const [a, b, c, d, e, f] = inner
  const [A, B, C, D, E, F] = outer
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F]
}

export function readPdf(bytes: Buffer): PdfPage[] {
  const text = bytes.toString('latin1')
  const objects = new Map<string, { at: number; body: string }>()
  for (const match of text.matchAll(/(\d+) 0 obj\s([\s\S]*?)endobj/g))
    objects.set(match[1] ?? '', { at: match.index, body: match[2] ?? '' })
  const tree = [...objects.values()].find(({ body }) => /\/Type \/Pages\b/.test(body))
  const kids = /\/Kids \[([^\]]*)\]/.exec(tree?.body ?? '')?.[1]?.matchAll(/(\d+) 0 R/g)
  if (kids === undefined) throw new Error('this PDF has no plain tree of pages')
  return [...kids].map(([, number]) => {
    const body = objects.get(number ?? '')?.body ?? ''
    const box = /\/MediaBox \[([^\]]*)\]/.exec(body)?.[1]?.split(/\s+/).map(Number)
    const contents = /\/Contents (\d+) 0 R/.exec(body)?.[1]
    if (box === undefined || contents === undefined) throw new Error('a page without a size or contents')
    const [, , wide = 0, tall = 0] = box
    return { wideMm: wide * MM_PER_POINT, tallMm: tall * MM_PER_POINT, ...interpret(streamOf(bytes, text, contents), tall) }
  })
}

function streamOf(bytes: Buffer, text: string, number: string): string {
  const head = text.search(new RegExp(`(^|\\s)${number} 0 obj`))
  const start = text.indexOf('stream', head)
  const from = start + (text[start + 6] === '\r' ? 8 : 7)
  const length = Number(/\/Length (\d+)/.exec(text.slice(head, start))?.[1])
  return inflateSync(bytes.subarray(from, from + length)).toString('latin1')
}

function interpret(stream: string, tall: number): Pick<PdfPage, 'drawn' | 'words'> {
  const drawn: Drawn[] = []
  const words: Spot[] = []
  const stack: Matrix[] = []
  let now: Matrix = [1, 0, 0, 1, 0, 0]
  let paths: Spot[][] = []
  let inText: Matrix | null = null
  const place = (x: number, y: number, by = now): Spot => {
    const [a, b, c, d, e, f] = by
    return { x: (a * x + c * y + e) * MM_PER_POINT, y: (tall - (b * x + d * y + f)) * MM_PER_POINT }
  }
  const operands: string[] = []
  const paint = (how: Drawn['how']) => {
    if (paths.length > 0) drawn.push({ how, paths })
    paths = []
  }
  for (const [token] of stream.matchAll(/<[^>]*>|\[[^\]]*\]|\([^)]*\)|[^\s<[(]+/g)) {
    if (/^[-+.\d]|^[/<([]/.test(token)) {
      operands.push(token)
      continue
    }
    const n = operands.map(Number)
    const [x = 0, y = 0, w = 0, h = 0] = n
    const here = paths.at(-1)
    if (token === 'q') stack.push(now)
    else if (token === 'Q') now = stack.pop() ?? now
    else if (token === 'cm') now = times(n as Matrix, now)
    else if (token === 'm') paths.push([place(x, y)])
    else if (token === 'l') here?.push(place(x, y))
    else if (token === 'c') here?.push(place(x, y), place(w, h), place(n[4] ?? 0, n[5] ?? 0))
    else if (token === 'h') here?.push(here[0] as Spot)
    else if (token === 're') paths.push([place(x, y), place(x + w, y), place(x + w, y + h), place(x, y + h), place(x, y)])
    else if (token === 'S' || token === 's') paint('stroke')
    else if (token === 'f' || token === 'f*') paint('fill')
    else if (token === 'n') paths = []
    else if (token === 'BT') inText = [1, 0, 0, 1, 0, 0]
    else if (token === 'Tm' && inText !== null) {
      inText = n as Matrix
      words.push(place(0, 0, times(inText, now)))
    } else if (token === 'Do') throw new Error('this page is drawn through another object: the reader of PDFs does not follow it')
    operands.length = 0
  }
  return { drawn, words }
}
