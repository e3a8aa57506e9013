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
const rounded = (value: number): number => Number(value.toPrecision(4))
