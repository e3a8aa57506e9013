/** A tailor's docket: what is asked for job by job, the marks that go with the garment, what is looked at on collection. */
import type { Garment } from '../garment/garment-as-worn.ts'
import type { AlterationId } from '../ids/alterations.ts'
import type { PointId } from '../ids/points.ts'
import type { Plan } from '../plan/plan.ts'
import type { Reason } from '../words/reason.ts'
import { listed, said, say, type Wording } from '../words/say.ts'
import type { Figure } from './step.ts'

export interface Docket {
  asks: { alteration: AlterationId; asked: Reason; figures: Figure[] }[]
  /** What is brought along and said at the fitting. */
  bring: Reason[]
  /** What is checked before it is taken home: figures by tape, then by eye. */
  onCollection: { figures: Figure[]; look: Reason[] }
}

export function docketFor(plan: Plan, garment: Garment, wording: Wording): Docket {
  const changed = new Set(plan.alterations.flatMap(({ amounts }) => Object.keys(amounts) as PointId[]))
  const figure = (is: string, mm: number, values: Figure['values']): Figure => ({
    is,
    mm,
    values,
    name: say({ code: `figure.${is}`, values }, wording)
  })
  return {
    asks: plan.alterations.map((job) => ({
      alteration: job.id,
      asked: said(
        {
          code: `do.${job.id}.${job.direction}`,
          alteration: job.id,
          values: {
            amount: job.amountMm,
            half: job.amountMm / 2,
            edge: Math.max(0, ...job.lines.map(({ offsetMm }) => Math.abs(offsetMm))),
            at: listed(
              (Object.entries(job.amounts) as [PointId, number][]).map(([point, mm]) =>
                say({ code: 'docket.at', values: { mm: Math.abs(mm), point } }, wording)
              ),
              wording
            )
          }
        },
        wording
      ),
      figures: (Object.entries(job.amounts) as [PointId, number][]).map(([point, mm]) =>
        figure(mm < 0 ? 'docket-less' : 'docket-more', Math.abs(mm), { point })
      )
    })),
    bring: [
      'docket.pinned',
      'docket.shoes',
      'docket.inside',
      ...(garment.made.lined ? ['docket.lining'] : []),
      ...(plan.alterations.some(({ softLimit }) => softLimit) ? ['docket.past-limit'] : []),
      'docket.price-first'
    ].map((code) => said({ code, values: {} }, wording)),
    onCollection: {
      figures: plan.after.filter(({ point }) => changed.has(point)).map(({ point, mm }) => figure('after', mm, { point })),
      look: ['docket.try', 'docket.seams', 'docket.level', 'docket.pressed', ...(garment.made.lined ? ['docket.lining-hangs'] : [])].map(
        (code) => said({ code, values: {} }, wording)
      )
    }
  }
}
