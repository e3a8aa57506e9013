/** tests/bench/results.json: one list of rows, each bench replacing its own. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

export interface Row {
  name: string
  value: number
  unit: string
  ratio: number | null
  against: string | null
}
const FILE = fileURLToPath(new URL('./results.json', import.meta.url))

export function writeResults(bench: string, rows: readonly Row[]): void {
  const all: Record<string, readonly Row[]> = existsSync(FILE) ? JSON.parse(readFileSync(FILE, 'utf8')) : {}
  const mine = rows.map((row) => ({ ...row, value: rounded(row.value), ratio: row.ratio === null ? null : rounded(row.ratio) }))
  writeFileSync(FILE, `${JSON.stringify({ ...all, [bench]: mine }, null, 2)}\n`)
}
/** Rows as they come, each told on the console: “wishlist: first row: 12.0 ms (1.20 × with 10)”. */
export function telling(): {
  rows: Row[]
  tell: (name: string, value: number, unit: string, ratio?: number | null, against?: string | null) => void
} {
  const rows: Row[] = []
  return {
    rows,
    tell: (name, value, unit, ratio = null, against = null) => {
      rows.push({ name, value, unit, ratio, against })
      console.log(`${name}: ${value.toFixed(1)} ${unit}${ratio === null ? '' : ` (${ratio.toFixed(2)} × ${against})`}`)
    }
  }
}

/** The middle one, the upper of two; NaN of none. */
export const median = (all: readonly number[]): number => all.toSorted((a, b) => a - b)[all.length >> 1] ?? Number.NaN

const rounded = (value: number): number => Number(value.toPrecision(4))
