/**
 * Keeps what the core answers today, or tells what differs from what was kept: for moves and renamings, which must change no answer.
 *
 *   npx tsx tests/bench/answers.ts keep FILE     writes a line an answer
 *   npx tsx tests/bench/answers.ts compare FILE  tells the first lines that differ; ends with 1 where any does
 *
 * 2,000 readings (every corpus text, then pairs, cut ends and other languages of them) and 2,000 reckonings (800 with all that is uncertain).
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { readListing } from '../../core/reading/read-listing.ts'
import type { ListingText, Reading } from '../../core/reading/reading.ts'
import { garmentFrom } from '../../core/reading/request/garment-from.ts'
import { reckon, whatWouldChange } from '../../core/reckon.ts'
import { cases } from '../corpus/cases.ts'
import { randomFrom, requestFrom } from '../law/requests.ts'

const READINGS = 2000
const SEED = 20261129
const LANGUAGES = ['en', 'de', 'fr', 'es', 'it', 'nl', 'pl', 'sv']

/** Every corpus text as it is, then two run together, one cut off anywhere, one said to be in another language, by turns. */
function listings(): ListingText[] {
  const whole = Object.values(cases).flatMap((group) => group.map(({ listing }) => listing))
  const random = randomFrom(SEED)
  const some = (): ListingText => whole[Math.floor(random() * whole.length)] ?? { text: '' }
  const made: ListingText[] = [...whole]
  while (made.length < READINGS) {
    const one = some()
    const turn = made.length % 3
    if (turn === 0) made.push({ ...one, text: `${one.text}\n${some().text}` })
    else if (turn === 1) made.push({ ...one, text: one.text.slice(0, Math.floor(random() * one.text.length)) })
    else made.push({ ...one, language: LANGUAGES[Math.floor(random() * LANGUAGES.length)] ?? 'en' })
  }
  return made
}

function* answers(): Generator<string> {
  const readings: Reading[] = []
  for (const [n, listing] of listings().entries()) {
    const reading = readListing(listing)
    readings.push(reading)
    yield JSON.stringify(['reading', n, reading, garmentFrom(reading, [])])
  }
  const random = randomFrom(SEED)
  for (let n = 0; n < 2000; n++) {
    const request = requestFrom(random)
    const reading = readings[n]
    // every third is a garment as it was read, on the same invented body
    if (n % 3 === 2 && reading !== undefined) request.garment = garmentFrom(reading, [])
    const outlook = n % 5 < 2
    const units = n % 2 === 0 ? 'cm' : 'in'
    yield JSON.stringify(['reckoning', n, reckon(request, { outlook, units }), n % 10 === 0 ? whatWouldChange(request, { units }) : null])
  }
}

const [, , what, file] = process.argv
if (file === undefined || (what !== 'keep' && what !== 'compare')) {
  console.error('Say what to do: npx tsx tests/bench/answers.ts keep FILE, or compare FILE.')
  process.exit(2)
}
if (what === 'keep') {
  writeFileSync(file, `${[...answers()].join('\n')}\n`)
} else {
  const kept = readFileSync(file, 'utf8').split('\n')
  let differ = 0
  let n = 0
  for (const line of answers()) {
    const before = kept[n++] ?? ''
    if (line === before) continue
    const at = [...line].findIndex((letter, place) => letter !== before[place])
    if (differ++ < 5)
      console.log(`${line.slice(0, 24)} …\n  before: ${before.slice(at - 60, at + 100)}\n  now:    ${line.slice(at - 60, at + 100)}`)
  }
  console.log(`${n} answers, ${differ} differ`)
  process.exit(differ > 0 || n !== kept.length - 1 ? 1 : 0)
}
