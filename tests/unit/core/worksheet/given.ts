/** A plan of one job by an exact amount, and its sheet. */
import { CATALOGUE } from '../../../../core/alterations/catalogue.ts'
import { perOffsetOf } from '../../../../core/alterations/row.ts'
import { garmentAsWorn } from '../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../../core/garment/garment-input.ts'
import type { AlterationId } from '../../../../core/ids/alterations.ts'
import type { PointId } from '../../../../core/ids/points.ts'
import type { Plan } from '../../../../core/plan/plan.ts'
import type { ReckonRequest } from '../../../../core/plan/request.ts'
import type { Figure, Step } from '../../../../core/worksheet/step.ts'
import { type Worksheet, worksheetFor } from '../../../../core/worksheet/worksheet.ts'

export interface Asked {
  id: AlterationId
  direction?: 'less' | 'more'
  /** All of its lines alike, or by the point each is meant for. */
  amountMm: number | Partial<Record<PointId, number>>
}

export function planWith(input: GarmentInput, asked: readonly Asked[], more: Partial<Plan> = {}): Plan {
  const garment = garmentAsWorn(input)
  return {
    aim: 'least-work',
    alterations: asked.map(({ id, direction = 'less', amountMm }) => {
      const row = CATALOGUE.find((one) => one.id === id && one.direction === direction && one.kinds.includes(input.kind))
      if (row === undefined) throw new Error(`no row for ${id}, ${direction}, ${input.kind}`)
      const lines = row.lines(garment)
      const each = lines.map(({ point }) => (typeof amountMm === 'number' ? amountMm : (amountMm[point] ?? 0)))
      const most = Math.max(...each)
      const widest = lines[each.indexOf(most)]
      return {
        id,
        direction,
        amountMm: most,
        amounts: Object.fromEntries(
          lines.map((line, k) => [line.point, (line.effects[line.point] ?? 0) * (each[k] ?? 0)] as const).filter(([, mm]) => mm !== 0)
        ),
        lines: (widest?.seams ?? []).map((move) => ({
          seam: move.seam,
          offsetMm: ((move.outward ? -1 : 1) * most) / perOffsetOf(move, most)
        })),
        limitMm: widest?.capMm ?? 0,
        limitBecause: '',
        softLimit: false,
        rescue: false,
        withoutIt: []
      }
    }),
    after: [],
    misfit: [],
    chance: null,
    level: 3,
    minutes: 0,
    cost: null,
    ...more
  }
}

export const requestFor = (garment: GarmentInput): ReckonRequest => ({ garment, means: { level: 5, tailor: false } })
export const sheetWith = (input: GarmentInput, asked: readonly Asked[], more: Partial<Plan> = {}, units: 'cm' | 'in' = 'cm'): Worksheet =>
  worksheetFor(planWith(input, asked, more), requestFor(input), 'A4', units)

/** The step that does this; throws where there is none. */
export function stepThat(sheet: Worksheet, does: string): Step {
  const found = sheet.steps.find(({ id }) => id.split('/')[1] === does)
  if (found === undefined) throw new Error(`no step "${does}" among ${sheet.steps.map(({ id }) => id).join(', ')}`)
  return found
}
export const has = (sheet: Worksheet, does: string): boolean => sheet.steps.some(({ id }) => id.split('/')[1] === does)
/** Figures of one name on a step, mm. */
export const figures = (sheet: Worksheet, does: string, is: string): number[] =>
  stepThat(sheet, does)
    .figures.filter((one: Figure) => one.is === is)
    .map(({ mm }) => mm)
/** The only figure of this name on a step, mm. */
export function figure(sheet: Worksheet, does: string, is: string): number {
  const [one, another] = figures(sheet, does, is)
  if (one === undefined || another !== undefined) throw new Error(`"${does}" has not exactly one figure "${is}"`)
  return one
}
