/**
 * No regular expression of the reader backtracks badly. Every one is judged by a checker (redos-detector, by its count of ways to match);
 * the few that it can't clear are run on long texts made to hurt them, and must take time that grows with the length.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { isSafePattern } from 'redos-detector'
import { expect, test } from 'vitest'

const FOLDER = fileURLToPath(new URL('../../core/reading/', import.meta.url))
const LITERAL = /(?<=(?:^|[(,=:[!&|?{;])\s*)\/(?![/*])((?:[^/\\\n[]|\\.|\[(?:[^\]\\\n]|\\.)*\])+)\/([dgimsuvy]*)(?=[\s),.;\]]|$)/g

interface Found {
  file: string
  source: string
  flags: string
}

function patterns(): Found[] {
  const found: Found[] = []
  const files = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))
  for (const file of files) {
    const code = readFileSync(`${FOLDER}${file}`, 'utf8')
    expect(code, `${file}: a pattern made at run time can't be judged`).not.toContain('new RegExp(')
    for (const line of code.split('\n')) {
      const plain = line.replace(/^\s*(?:\/?\*|\/\/).*$/, '').replace(/'(?:[^'\\]|\\.)*'/g, "''")
      for (const [, source = '', flags = ''] of plain.matchAll(LITERAL)) {
        expect(() => new RegExp(source, flags), `${file}: /${source}/${flags}`).not.toThrow()
        found.push({ file, source, flags })
      }
    }
  }
  return found
}
const all = patterns()

test('the patterns were found', () => {
  expect(all.length).toBeGreaterThan(60)
  expect(all.some(({ source }) => source.startsWith('<(\\/?)'))).toBe(true)
})

const MOST_WAYS = 100
const judge = ({ source, flags }: Found) =>
  isSafePattern(source, { unicode: flags.includes('u'), caseInsensitive: flags.includes('i'), maxScore: MOST_WAYS, timeout: 4000 })

/** Strings that make a careless pattern go back and forth. */
const HURTFUL = [
  '<a ',
  '<',
  '<a',
  '&',
  '&#',
  '&#1',
  ' ',
  '\t',
  '-',
  ', ',
  '1',
  '1.',
  '1 1',
  'a',
  'a1',
  '"',
  "'",
  '.',
  '•',
  ',',
  '\u0301',
  'w3',
  'é',
  '1/',
  'a b',
  '[',
  '0',
  'ー',
  'ﾊﾞ',
  '\u1112\u1161'
]

function slowest({ source, flags }: Found): number {
  const once = (text: string) => {
    const pattern = new RegExp(source, flags)
    const from = process.cpuUsage()
    if (flags.includes('g')) text.replace(pattern, '')
    else pattern.test(text)
    const used = process.cpuUsage(from)
    return (used.user + used.system) / 1000
  }
  let worst = 0
  for (const bit of HURTFUL) {
    const text = (size: number) => `${bit.repeat(Math.ceil(size / bit.length))}!`
    const long = Math.min(once(text(64_000)), once(text(64_000)))
    worst = Math.max(worst, long)
  }
  return worst
}

test.each(all.map((one) => [`${one.file} /${one.source}/${one.flags}`, one] as const))('%s', { timeout: 60_000 }, (_, one) => {
  const { safe, error } = judge(one)
  if (safe) return
  expect(error).not.toBeNull()
  // 64,000 characters: a pattern that is quadratic needs seconds, a linear one a few milliseconds
  expect(slowest(one)).toBeLessThan(400)
})
