/**
 * Reads texts pieced together from those of the corpus, in all its languages, with signs that break things put in: nothing may throw, every place must
 * lie where its words stand, every measure must be a length, every sentence could be said. `npx tsx tests/bench/fuzz.ts`; TEXTS=100000, SEED=7.
 */
import { readListing } from '../../core/reading/read-listing.ts'
import { written } from '../corpus/written/written.ts'
import { absurdIn } from '../law/absurd.ts'
import { randomFrom } from './simulated/chance.ts'

const TEXTS = Number(process.env.TEXTS ?? 100_000)
const PIECES_OF_TEXT = 5
const LONGEST_PIECE = 90
const WITH_A_SIGN = 0.4
const WITH_A_TITLE = 0.3

const SEED = Number(process.env.SEED ?? 20261130)
const random = randomFrom(SEED)
const oneOf = (list: readonly string[]): string => list[Math.floor(random() * list.length)] ?? ''

const PIECES = Object.values(written)
  .flat()
  .flatMap(({ title, text }) => [title ?? '', ...text.split(/(?<=[\n.。,、/])/)])
  .filter((piece) => piece.length < LONGEST_PIECE)
const SIGNS = [
  ...['\u0000', 'ー', '½', '\u3099', '😀', '\u200d', '＄', '〜', '【', 'x', '×', '"', "''", '9'.repeat(9), '\t', '|', '<td>'],
  ...['&frac12;', 'ㄱ', 'ﾊﾞ', '\ud800', '1/0', '\r\n']
]

function pieceWithSign(): string {
  const piece = oneOf(PIECES)
  if (random() >= WITH_A_SIGN) return piece
  const at = Math.floor(random() * piece.length)
  return piece.slice(0, at) + oneOf(SIGNS) + piece.slice(at + Math.floor(random() * 3))
}

let wrong = 0
let measures = 0
let slowest = 0
for (let n = 0; n < TEXTS; n++) {
  const text = Array.from({ length: 1 + Math.floor(random() * PIECES_OF_TEXT) }, pieceWithSign).join('')
  const title = random() < WITH_A_TITLE ? oneOf(PIECES) : undefined
  const began = performance.now()
  const reading = readListing(title === undefined ? { text } : { text, title })
  slowest = Math.max(slowest, performance.now() - began)
  const source = text + (reading.added ?? '')
  for (const sentence of absurdIn(reading.issues, source)) {
    wrong++
    console.log(`wrong: ${JSON.stringify(sentence)} of ${JSON.stringify(text)}`)
  }
  for (const { stated, mm } of reading.measures) {
    measures++
    if (source.slice(stated.start, stated.end) === stated.text && mm > 0 && Number.isFinite(mm)) continue
    wrong++
    console.log(`wrong: "${stated.text}" at ${stated.start}, ${mm} mm, in ${JSON.stringify(text)}`)
  }
}
console.log(`seed ${SEED}: ${TEXTS} texts, ${measures} measures, ${wrong} wrong, the slowest ${Math.round(slowest)} ms`)
if (wrong > 0) process.exitCode = 1
