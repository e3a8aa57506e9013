/**
 * What can be altered, made from the tables of alterations themselves: each row on a garment as it is usually made, with usual
 * figures, since a limit follows the garment. Pure; lengths mm, girths around.
 */
import { CATALOGUE } from '../../../core/alterations/catalogue.ts'
import { RESCUES } from '../../../core/alterations/minutes.ts'
import type { Row } from '../../../core/alterations/row.ts'
import { type Garment, garmentAsWorn } from '../../../core/garment/garment-as-worn.ts'
import type { AlterationId } from '../../../core/ids/alterations.ts'
import { GARMENT_KINDS, type GarmentKind } from '../../../core/ids/kinds.ts'
import { POINTS_OF, type PointId } from '../../../core/ids/points.ts'
import type { Saying } from '../../../core/words/reason.ts'

/** Where a figure comes from, without naming who printed it. */
export const SOURCE_CLASSES = ['handbook', 'practice', 'memory'] as const
export type SourceClass = (typeof SOURCE_CLASSES)[number]

export interface JobShown {
  id: AlterationId
  direction: 'less' | 'more'
  kinds: readonly GarmentKind[]
  points: PointId[]
  /** Why it can't be done on this garment as it is usually made; null: it can. */
  unless: Saying | null
  limitMm: number
  /** Past this it is warned of, mm; null: never. */
  warnedMm: number | null
  because: Saying | null
  level: number
  /** The whole job, then more for each 25 mm. */
  minutes: readonly [number, number]
  /** A rescue: only where a point would stay wrong without it. */
  rescue: boolean
  sources: SourceClass[]
}

/** Everyday figures, so that limits that follow the garment have one to follow: invented, round. */
const USUAL_MM: Partial<Record<PointId, number>> = {
  waist: 850,
  hip: 1050,
  chest: 1050,
  inseam: 780,
  skirtLength: 620,
  bodyLength: 720,
  sleeveLength: 620,
  knee: 470,
  legOpening: 420,
  sweep: 1200,
  hem: 1070
}

const usual = (kind: GarmentKind): Garment =>
  garmentAsWorn({
    kind,
    measures: POINTS_OF[kind].flatMap((point) => {
      const mm = USUAL_MM[point]
      return mm === undefined ? [] : [{ point, mm, source: 'own' as const }]
    })
  })

/** Kinds that something can be altered on, in the order of all kinds. */
export const ALTERED_KINDS: readonly GarmentKind[] = GARMENT_KINDS.filter((kind) => CATALOGUE.some((row) => row.kinds.includes(kind)))

/** Every row, or those of one kind, as they stand on that kind; of several kinds, on the first that allows the job. */
export function jobsShown(kind: GarmentKind | null): JobShown[] {
  const garments = new Map(GARMENT_KINDS.map((one) => [one, usual(one)]))
  const allows = (job: JobShown): boolean => job.unless === null && job.limitMm > 0
  return CATALOGUE.filter((row) => kind === null || row.kinds.includes(kind)).flatMap((row) => {
    const jobs = (kind === null ? row.kinds : [kind]).flatMap((one) => {
      const garment = garments.get(one)
      return garment === undefined ? [] : [jobOn(row, garment)]
    })
    return jobs.find(allows) ?? jobs.slice(0, 1)
  })
}

function jobOn(row: Row, garment: Garment): JobShown {
  const lines = row.lines(garment)
  const deepest = lines.reduce((most, line) => (line.capMm > most.capMm ? line : most), lines[0] ?? { capMm: 0, because: null })
  const penalties = typeof row.penalties === 'function' ? row.penalties(garment) : (row.penalties ?? [])
  return {
    id: row.id,
    direction: row.direction,
    kinds: row.kinds,
    points: lines.map(({ point }) => point),
    unless: row.unless?.(garment) ?? null,
    limitMm: row.fixedMm ?? Math.max(0, deepest.capMm),
    warnedMm: 'softMm' in deepest && deepest.softMm !== undefined && deepest.softMm < deepest.capMm ? deepest.softMm : null,
    because: deepest.because,
    level: typeof row.level === 'function' ? row.level(garment) : row.level,
    minutes: typeof row.minutes === 'function' ? row.minutes(garment) : row.minutes,
    rescue: penalties.some((penalty) => RESCUES.has(penalty)),
    sources: sourceClasses(row.source)
  }
}

/** Marks of textbooks, service manuals and extension guides in the tables; any other mark but MEM is practice of the trade. */
const HANDBOOK = /^(?:TM\d|WSU|CWU|NM\d|THREADS)/
export function sourceClasses(source: string): SourceClass[] {
  const marks = source.match(/\b[A-Z]{2,}[A-Z0-9]*(?:-[A-Z0-9]+)*\b/g) ?? []
  const found = new Set(marks.map((mark): SourceClass => (mark === 'MEM' ? 'memory' : HANDBOOK.test(mark) ? 'handbook' : 'practice')))
  return SOURCE_CLASSES.filter((one) => found.has(one))
}
