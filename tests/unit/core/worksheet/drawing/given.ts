/** Plans and requests made by hand, for drawings. */
import type { GarmentInput, Made } from '../../../../../core/garment/garment-input.ts'
import type { AlterationId } from '../../../../../core/ids/alterations.ts'
import type { GarmentKind } from '../../../../../core/ids/kinds.ts'
import type { PointId } from '../../../../../core/ids/points.ts'
import type { Job, Plan } from '../../../../../core/plan/plan.ts'
import type { ReckonRequest } from '../../../../../core/plan/request.ts'
import { drawTemplates } from '../../../../../core/worksheet/drawing/draw-templates.ts'
import type { LineRole, Template } from '../../../../../core/worksheet/drawing/template.ts'

export interface Spot {
  x: number
  y: number
}

export const job = (
  id: AlterationId,
  amountMm: number,
  amounts: Job['amounts'],
  lines: Job['lines'],
  direction: Job['direction'] = 'less'
): Job => ({
  id,
  amountMm,
  direction,
  amounts,
  lines,
  limitMm: 200,
  limitBecause: '',
  softLimit: false,
  rescue: false,
  withoutIt: []
})
export const plan = (alterations: Job[], after: Partial<Record<PointId, number>> = {}): Plan => ({
  aim: 'least-work',
  alterations,
  after: Object.entries(after).map(([point, mm]) => ({ point: point as PointId, mm })),
  misfit: [],
  chance: null,
  level: 3,
  minutes: 60,
  cost: null
})
export const request = (
  kind: GarmentKind,
  measures: Partial<Record<PointId, number>>,
  made: Partial<Made> = {},
  more: Partial<GarmentInput> = {}
): ReckonRequest => ({
  garment: {
    kind,
    measures: Object.entries(measures).map(([point, mm]) => ({ point: point as PointId, mm, source: 'own' })),
    made,
    ...more
  },
  means: { level: 3, tailor: false }
})

export const TROUSERS = { waist: 850, hip: 1040, thigh: 620, knee: 480, legOpening: 420, inseam: 788, frontRise: 280 }
export const SHIRT = {
  chest: 1120,
  waist: 1090,
  hem: 1100,
  bicep: 390,
  armhole: 520,
  sleeveLength: 650,
  bodyLength: 780,
  shoulderWidth: 460
}
export const waistIn = (amountMm: number): Job =>
  job('waist-in-centre-back', amountMm, { waist: -amountMm }, [{ seam: 'centre-back', offsetMm: amountMm / 2 }])

/** The templates of one job on one garment. */
export const templatesOf = (one: Job, of: ReckonRequest, after: Partial<Record<PointId, number>> = {}): Template[] =>
  drawTemplates(plan([one], after), of, 'A4', 'cm').templates
export function templateOf(one: Job, of: ReckonRequest, after: Partial<Record<PointId, number>> = {}): Template {
  const [first] = templatesOf(one, of, after)
  if (first === undefined) throw new Error(`${one.id} has no template`)
  return first
}
export const linesOf = (template: Template, role: LineRole): Spot[][] =>
  template.lines.filter((line) => line.role === role).map(({ line }) => line)
export function lineOf(template: Template, role: LineRole): Spot[] {
  const [first] = linesOf(template, role)
  if (first === undefined) throw new Error(`${template.id} has no line that ${role}`)
  return first
}

/** A ruler of its own: how long a drawn line is, and where it stands at a height. */
export const ruler = (line: readonly Spot[]): number => {
  let mm = 0
  for (let i = 1; i < line.length; i++)
    mm += Math.sqrt(((line[i]?.x ?? 0) - (line[i - 1]?.x ?? 0)) ** 2 + ((line[i]?.y ?? 0) - (line[i - 1]?.y ?? 0)) ** 2)
  return mm
}
export function xAtHeight(line: readonly Spot[], y: number): number {
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1] as Spot, line[i] as Spot]
    if ((a.y - y) * (b.y - y) <= 0 && a.y !== b.y) return a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)
  }
  throw new Error(`the line does not pass ${y}`)
}
