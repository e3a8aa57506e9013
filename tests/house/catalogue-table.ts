/** The table of alterations in DEVELOPERS.md, made from the rows themselves. Run this file to write it: `npx tsx tests/house/catalogue-table.ts`. */
import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { CATALOGUE } from '../../core/alterations/catalogue.ts'
import { RESCUES } from '../../core/alterations/minutes.ts'
import type { Row } from '../../core/alterations/row.ts'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { GarmentMeasure } from '../../core/garment/garment-input.ts'
import { say } from '../../core/words/say.ts'

const FILE = fileURLToPath(new URL('../../DEVELOPERS.md', import.meta.url))
const [BEGIN, END] = ['<!-- alterations: made by tests/house/catalogue-table.ts -->', '<!-- /alterations -->']
const cm = { units: 'cm' as const }

/** A garment of the row's first kind as it is assumed, with usual figures: limits that follow the garment are its. */
const usual = (row: Row) => {
  const measures: GarmentMeasure[] = (
    [
      ['waist', 850],
      ['hip', 1050],
      ['chest', 1050],
      ['inseam', 780],
      ['skirtLength', 620],
      ['bodyLength', 720],
      ['sleeveLength', 620],
      ['knee', 470],
      ['legOpening', 420],
      ['sweep', 1200],
      ['hem', 1070]
    ] as const
  ).map(([point, mm]) => ({ point, mm, source: 'own' }))
  return garmentAsWorn({ kind: row.kinds[0] ?? 'other', measures })
}
const readOf = <T>(one: T | ((garment: ReturnType<typeof usual>) => T), garment: ReturnType<typeof usual>): T =>
  typeof one === 'function' ? (one as (garment: ReturnType<typeof usual>) => T)(garment) : one

export function catalogueTable(): string {
  const rows = CATALOGUE.map((row) => {
    const garment = usual(row)
    const [line] = row.lines(garment)
    const [setUp, per25] = readOf(row.minutes, garment)
    const penalties = readOf(row.penalties ?? [], garment)
    const limit =
      line === undefined ? '' : `${Math.round(line.capMm)} mm${line.softMm === undefined ? '' : `, warned past ${Math.round(line.softMm)}`}`
    const what = say({ code: `alteration.${row.id}`, values: {} }, cm)
    const rescue = penalties.some((penalty) => RESCUES.has(penalty)) ? ' (a rescue)' : ''
    const cells = [row.id, row.direction, what + rescue, row.kinds.join(', '), limit, readOf(row.level, garment), `${setUp} + ${per25}`]
    return `| ${[...cells, row.source.replaceAll('|', '/')].join(' | ')} |`
  })
  return [
    '| id | direction | what | kinds | limit, as usually made | level | minutes + per 25 mm | source |',
    '| --- | --- | --- | --- | --- | --- | --- | --- |',
    ...rows
  ].join('\n')
}

/** DEVELOPERS.md with its table as it should be. */
export function withTable(text: string): string {
  const [from, to] = [text.indexOf(BEGIN), text.indexOf(END)]
  if (from < 0 || to < from) throw new Error(`DEVELOPERS.md needs the two lines ${BEGIN} and ${END}`)
  return `${text.slice(0, from + BEGIN.length)}\n\n${catalogueTable()}\n\n${text.slice(to)}`
}
export const developers = (): string => readFileSync(FILE, 'utf8')

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(FILE, withTable(developers()))
