/** Jobs, openings, mending and what every sheet begins and ends with → the drafts of all steps, in the order of work. */
import { CATALOGUE } from '../alterations/catalogue.ts'
import type { Preparation } from '../alterations/minutes.ts'
import type { Row } from '../alterations/row.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { ConditionId, GarmentInput } from '../garment/garment-input.ts'
import type { AlterationId } from '../ids/alterations.ts'
import type { Job, Plan } from '../plan/plan.ts'
import type { Values } from '../words/reason.ts'
import { type ClothSetup, clothSetup } from './cloth-setup.ts'
import { amountOf, edgeOf } from './marks.ts'
import { type Act, type JobOn, type Mark, type Opened, PARTS, type Part, STAGES, type Stage, type StepRow } from './step.ts'
import { stepsOf } from './steps/all-steps.ts'
import { MENDS } from './steps/conditions.ts'
import { FRAME } from './steps/frame.ts'
import { OPENINGS, type OpeningOn } from './steps/openings.ts'
import type { Thing } from './things.ts'

/** A step before its words are made. */
export interface Draft {
  part: Part
  stage: Stage
  act: Act
  does: string
  alteration: AlterationId | null
  condition: ConditionId | null
  values: Values
  marks: Mark[]
  opens: Opened | null
  closes: Opened | null
  uses: readonly Thing[]
  mind: readonly string[]
}

/** A job on its garment. `plan`: what else is done. */
export function jobOn(job: Job, plan: Plan, garment: Garment): JobOn {
  const row = rowOf(job, garment)
  return {
    job,
    plan,
    garment,
    lines: row?.lines(garment) ?? [],
    cloth: clothSetup(garment),
    opens: typeof row?.opens === 'function' ? row.opens(garment) : (row?.opens ?? []),
    beside: new Set(plan.alterations.map(({ id }) => id).filter((id) => id !== job.id))
  }
}
const rowOf = ({ id, direction }: Job, { kind }: Garment): Row | undefined =>
  CATALOGUE.find((row) => row.id === id && row.direction === direction && row.kinds.includes(kind)) ??
  CATALOGUE.find((row) => row.id === id && row.direction === direction)

/** Everything that is done, in order. */
export function draftsFor(plan: Plan, input: GarmentInput, garment: Garment): Draft[] {
  const cloth = clothSetup(garment)
  const mends = mendsOf(input)
  const jobs = plan.alterations.map((job) => jobOn(job, plan, garment))
  const work = [...mends.flatMap((job) => mending(job, garment, cloth)), ...jobs.flatMap(ofJob), ...openingsOf(jobs, garment, cloth)]
  const acts = new Set(work.map(({ act }) => act))
  const every = frame({
    garment,
    cloth,
    plan,
    sews: jobs.length > 0 || mends.length > 0,
    presses: acts.has('press') || acts.has('sew'),
    machines: acts.has('sew'),
    infested: mends.includes('treat-pests')
  })
  return closedOnce(inOrder([...every, ...work]))
}

/** Felt does not come back: blocking it is no job (as the minutes reckon it). */
const mendsOf = ({ condition = [], cut }: GarmentInput): ConditionId[] => [
  ...new Set(condition.map(({ job }) => job).filter((job) => !(job === 'block-knit' && cut?.knit === 'felted')))
]

interface Laid {
  part: Part
  stage: Stage
  alteration?: AlterationId
  condition?: ConditionId
  values?: Values
}
/** The rows that hold on this garment, as drafts. */
function laid<On>(rows: readonly StepRow<On>[], on: On, where: Laid): Draft[] {
  return rows
    .filter(({ when }) => when === undefined || when(on))
    .map((row) => ({
      part: where.part,
      stage: where.stage,
      act: row.act,
      does: row.does,
      alteration: where.alteration ?? null,
      condition: where.condition ?? null,
      values: { ...where.values, ...row.values?.(on) },
      marks: row.figures?.(on) ?? [],
      opens: row.opens ?? null,
      closes: row.closes ?? null,
      uses: row.uses ?? [],
      mind: row.mind ?? []
    }))
}

const frame = (on: Parameters<NonNullable<(typeof FRAME)[number]['step']['when']>>[0]): Draft[] =>
  FRAME.flatMap(({ part, step }) => laid([step], on, { part, stage: part === 'finish' ? 'last' : 'fit' }))

const mending = (condition: ConditionId, garment: Garment, cloth: ClothSetup): Draft[] => {
  const { part, steps } = MENDS[condition]
  return laid(steps, { garment, cloth }, { part, stage: 'work', condition })
}

function ofJob(on: JobOn): Draft[] {
  const { id, direction } = on.job
  const row = stepsOf(id, direction)
  if (row === undefined) throw new Error(`no steps are written for ${id}, ${direction}: add them under core/worksheet/steps`)
  const values = { amount: amountOf(on), edge: edgeOf(on), half: amountOf(on) / 2, seam: on.job.lines[0]?.seam ?? 'side' }
  const where = { part: row.part, alteration: id, values }
  return [...laid(row.fit, on, { ...where, stage: 'fit' }), ...laid(row.work, on, { ...where, stage: 'work' })]
}

/** Each opening once: before the first job that needs it works, and closed behind the last, unless a job closes it itself. */
function openingsOf(jobs: readonly JobOn[], garment: Garment, cloth: ClothSetup): Draft[] {
  const shared = (Object.keys(OPENINGS) as Preparation[]).flatMap((what): OpeningOn[] => {
    const sharing = jobs.filter(({ opens }) => opens.includes(what))
    return sharing.length === 0 ? [] : [{ what, garment, cloth, jobs: sharing }]
  })
  const places = shared.map((on) => ({ on, ...placeOf(on) }))
  return [
    ...places.flatMap(({ on, first, whose }) => laid(OPENINGS[on.what].open, on, { part: first, stage: 'open', ...whose })),
    ...places.reverse().flatMap(({ on, last, whose }) => {
      const { close, closedIn } = OPENINGS[on.what]
      return isClosedBy(on) ? [] : laid(close, on, { part: last, stage: 'close', ...closedIn, ...whose })
    })
  ]
}
/** The parts in which it is needed first and last, and whose it is where one job alone needs it. */
function placeOf({ jobs }: OpeningOn): { first: Part; last: Part; whose: Pick<Laid, 'alteration'> } {
  const order = jobs.map(({ job }) => PARTS.indexOf(stepsOf(job.id, job.direction)?.part ?? 'body'))
  const alone = jobs.length === 1 ? jobs[0]?.job.id : undefined
  return {
    first: PARTS[Math.min(...order)] ?? 'body',
    last: PARTS[Math.max(...order)] ?? 'body',
    whose: alone === undefined ? {} : { alteration: alone }
  }
}
/** A hem that is sewn anew is not sewn on its old fold first. */
const isClosedBy = ({ what, jobs }: OpeningOn): boolean =>
  jobs.some(({ job }) => stepsOf(job.id, job.direction)?.work.some(({ closes }) => closes === what))

/** By part, then stage; what stands equal keeps its order. */
function inOrder(drafts: readonly Draft[]): Draft[] {
  const rank = ({ part, stage }: Draft): number => PARTS.indexOf(part) * STAGES.length + STAGES.indexOf(stage)
  return [...drafts].sort((one, other) => rank(one) - rank(other))
}

/** What several steps would close is closed by the last of them. */
function closedOnce(drafts: readonly Draft[]): Draft[] {
  return drafts.map((draft, n) => {
    const { closes } = draft
    if (closes === null) return draft
    const later = drafts.slice(n + 1)
    const opensAgain = later.findIndex(({ opens }) => opens === closes)
    const closesLater = later.findIndex((one) => one.closes === closes)
    const isLast = closesLater < 0 || (opensAgain >= 0 && opensAgain < closesLater)
    return isLast ? draft : { ...draft, closes: null }
  })
}
