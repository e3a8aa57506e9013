/** Plan and request → the templates of each job, or why it has none. Pure; all lengths mm. */
import { NEVER } from '../../alterations/alterations-for.ts'
import { garmentAsWorn } from '../../garment/garment-as-worn.ts'
import type { Plan } from '../../plan/plan.ts'
import type { ReckonRequest } from '../../plan/request.ts'
import { bodyOf, seenOn } from '../../wearer/target.ts'
import { said, say, type Wording } from '../../words/say.ts'
import type { Asked, Template, Untemplated } from './template.ts'
import { MAKERS } from './template-table.ts'

export interface Templates {
  templates: Template[]
  without: Untemplated[]
}

export function templatesFor(plan: Plan, { garment: input, wearer }: ReckonRequest, wording: Wording): Templates {
  // what is never altered has no template, whatever plan is handed in
  if (NEVER.has(input.use ?? 'ordinary')) return { templates: [], without: [] }
  const garment = seenOn(garmentAsWorn(input, wearer?.sizes), bodyOf(wearer))
  const t: Asked['t'] = (code, values = {}) => say({ code, values }, wording)
  const templates: Template[] = []
  const without: Untemplated[] = []
  for (const job of plan.alterations) {
    const made = MAKERS[job.id]({ job, plan, garment, t, units: wording.units })
    if ('templates' in made) templates.push(...made.templates)
    else
      without.push({ alteration: job.id, because: said({ code: `template.none.${made.none}`, values: {}, alteration: job.id }, wording) })
  }
  return { templates, without }
}
