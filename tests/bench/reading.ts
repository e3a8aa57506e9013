/**
 * How fast the reader is, against @microsoft/recognizers-text-suite on the same texts in the same run, and that its time grows with the
 * text and no faster. Compare ratios: single times depend on the machine. Rows go into tests/bench/results.json.
 */
import Recognizers from '@microsoft/recognizers-text-suite'
import { readListing } from '../../core/reading/read-listing.ts'
import type { ListingText } from '../../core/reading/reading.ts'
import { cases } from '../corpus/cases.ts'
import { type Row, writeResults } from './results.ts'

/** About 1,000 characters of an ordinary listing. */
const LISTING = `This wool coat from the 1970s has a wide collar and two patch pockets. It is fully lined and in very good used condition,
with no holes or stains. Zip works.

Measurements (laid flat):
Pit to pit: 21 1/2"
Waist: 19"
Sleeve (shoulder to cuff): 24"
Underarm sleeve: 17.5"
Length, nape to hem: 42" / 107 cm
Shoulders: 17"
Hem: 26"

Size label says 14 but please go by the measurements. I am 5'6" with a 36" bust and it is roomy on me. 80% wool, 20% nylon.
Would suit up to a 40" bust. Price £45, postage £5, sent in a parcel of 40 x 30 x 10 cm within 2-3 days. `
const long = (thousands: number): ListingText => ({
  title: 'Wool coat',
  text: LISTING.repeat(Math.ceil((thousands * 1000) / LISTING.length)).slice(0, thousands * 1000)
})

const ONE = long(1)
const CORPUS = Object.values(cases)
  .flat()
  .map(({ listing }) => listing)
const ENGLISH = Object.values(cases)
  .flat()
  .filter(({ expect }) => (expect.language ?? 'en') === 'en')
  .map(({ listing }) => listing)
const readAll = (listings: readonly ListingText[]): void => {
  for (const listing of listings) readListing(listing)
}
const theirsAll = (listings: readonly ListingText[]): void => {
  for (const { text } of listings) Recognizers.recognizeDimension(text, 'en-us')
}
const characters = (listings: readonly ListingText[]): number =>
  listings.reduce((sum, { text, title }) => sum + text.length + (title ?? '').length, 0)

/** The median time of a run, ms, after it has warmed up (an ordinary listing 2,000 times: after 300 it still takes a third longer). */
function median(run: () => void, times: number, warm: number): number {
  for (let i = 0; i < warm; i++) run()
  const taken: number[] = []
  for (let i = 0; i < times; i++) {
    const began = performance.now()
    run()
    taken.push(performance.now() - began)
  }
  taken.sort((a, b) => a - b)
  return taken[taken.length >> 1] ?? Number.NaN
}

const ours = median(() => readListing(ONE), 1000, 2000)
const theirs = median(() => Recognizers.recognizeDimension(ONE.text, 'en-us'), 9, 2)
const all = median(() => readAll(CORPUS), 15, 3)
const english = median(() => readAll(ENGLISH), 15, 1)
const theirEnglish = median(() => theirsAll(ENGLISH), 3, 0)
const AGAINST = 'recognizers-text-suite 1.3.1, same texts and run (it looks for dimensions only)'

const rows: Row[] = [
  { name: 'an ordinary listing of 1,000 characters, median', value: ours, unit: 'ms', ratio: theirs / ours, against: AGAINST },
  {
    name: `a text of the English corpus (${Math.round(characters(ENGLISH) / ENGLISH.length)} characters on average)`,
    value: english / ENGLISH.length,
    unit: 'ms',
    ratio: theirEnglish / english,
    against: AGAINST
  },
  {
    name: `a text of the corpus in eight languages (${Math.round(characters(CORPUS) / CORPUS.length)} characters on average)`,
    value: all / CORPUS.length,
    unit: 'ms',
    ratio: null,
    against: null
  }
]
let first: number | null = null
for (const [thousands, times] of [
  [100, 15],
  [1000, 5],
  [5000, 3]
] as const) {
  const listing = long(thousands)
  const each = median(() => readListing(listing), times, 1) / thousands
  rows.push({
    name: `${thousands.toLocaleString('en')},000 characters, per 1,000`,
    value: each,
    unit: 'ms',
    ratio: first === null ? null : first / each,
    against: first === null ? null : 'the same per 1,000 of 100,000 (1: linear)'
  })
  first ??= each
}
// texts made to hurt: one piece over and over, four times as often
for (const [what, piece] of [
  ['heads of columns', 'inch cm\n30 76\n'],
  ['bare figures under one head', '1 2 3 4 '],
  ['notes on a name', 'thigh is flat '],
  ['rows of a table', 'waist\t30\t76\n']
] as const) {
  const [short, fourfold] = [2_000, 8_000].map((times) => median(() => readListing({ text: `inch cm\n${piece.repeat(times)}` }), 5, 1))
  if (short === undefined || fourfold === undefined) throw new Error('no times')
  rows.push({
    name: `${what}, 8,000 in one text`,
    value: fourfold,
    unit: 'ms',
    ratio: (4 * short) / fourfold,
    against: 'four times 2,000 (1: linear)'
  })
}
for (const { name, value, unit, ratio } of rows)
  console.log(`${name}: ${value.toFixed(3)} ${unit}${ratio === null ? '' : ` (ratio ${ratio.toFixed(2)})`}`)
writeResults('reading', rows)
