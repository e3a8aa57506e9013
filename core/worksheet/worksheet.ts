/**
 * From a plan to the sheet a person sews from: what is gathered, every step in the order of work with its figures, and what a tailor is asked for.
 * Pure; all lengths mm, girths around.
 */
import { NEVER } from '../alterations/alterations-for.ts'
import { garmentAsWorn } from '../garment/garment-as-worn.ts'
import type { Plan } from '../plan/plan.ts'
import type { ReckonRequest } from '../plan/request.ts'
import { bodyOf, seenOn } from '../wearer/target.ts'
import type { Reason, Saying, Values } from '../words/reason.ts'
import { said, say, type Wording } from '../words/say.ts'
import { type Draft, draftsFor } from './assemble.ts'
import { cautionsOf } from './cautions.ts'
import { type ClothSetup, clothSetup } from './cloth-setup.ts'
import { type Docket, docketFor } from './docket.ts'
import { type Figure, PARTS, type Part, type Step } from './step.ts'
import { THING_IDS, THINGS, type Thing, thing } from './things.ts'
import { usesOf } from './uses.ts'

export type { Docket } from './docket.ts'
export type { Figure, Step } from './step.ts'

export interface Gathered extends Reason {
  thing: Thing
}
export interface Worksheet {
  /** Why there is no sheet: what is never altered. Everything else is then empty. */
  refused: Reason | null
  gather: { tools: Gathered[]; notions: Gathered[]; substitutes: Gathered[] }
  /** The parts that the work falls into, in order, for headings. */
  parts: { part: Part; name: string }[]
  steps: Step[]
  /** What a tailor is asked for; null where the plan is the person's own work. */
  docket: Docket | null
  /** Drawings and printed pages are laid on by core/worksheet/drawing; a sheet without them has none. */
  drawings?: readonly unknown[]
  pages?: readonly unknown[]
}

/** From this level on a job is a tailor's, and the sheet has a docket. */
const TAILOR_LEVEL = 4

/**
 * The sheet of a plan on the garment it was made for. `paper` is that of the drawings; no step depends on it. Throws only where a plan holds a job
 * that no steps are written for: a programming error.
 */
export function worksheetFor(
  plan: Plan,
  request: ReckonRequest,
  _paper: 'A4' | 'Letter',
  units: 'cm' | 'in',
  language?: string
): Worksheet {
  const wording: Wording = language === undefined ? { units } : { units, language }
  const { garment: input, wearer } = request
  const use = input.use ?? 'ordinary'
  if (NEVER.has(use)) return refusal({ code: `sheet.never.${use}`, values: {} }, wording)
  const garment = seenOn(garmentAsWorn(input, wearer?.sizes), bodyOf(wearer))
  const cloth = clothSetup(garment)
  const drafts = draftsFor(plan, input, garment)
  const values = valuesOf(cloth)
  const minded = new Set<string>()
  const softly = new Set(plan.alterations.filter(({ softLimit }) => softLimit).map(({ id }) => id))
  const counted = new Map<string, number>()
  const steps = drafts.map((draft): Step => {
    const mind = [...draft.mind, ...cautionsOf(draft.act, garment, cloth)]
    if (draft.act === 'try' && draft.alteration !== null && softly.delete(draft.alteration)) mind.push('past-soft-limit')
    const first = mind.filter((one) => !minded.has(one))
    for (const one of first) minded.add(one)
    const name = `${draft.alteration ?? draft.condition ?? 'sheet'}/${draft.does}`
    const nth = (counted.get(name) ?? 0) + 1
    counted.set(name, nth)
    return stepOf(draft, nth === 1 ? name : `${name}/${nth}`, { ...values, ...draft.values }, [...new Set(first)], cloth, wording)
  })
  return {
    refused: null,
    gather: gathered(steps, values, wording),
    parts: PARTS.filter((part) => steps.some((step) => step.part === part)).map((part) => ({
      part,
      name: say({ code: `part.${part}`, values: {} }, wording)
    })),
    steps,
    docket: plan.aim === 'tailor' || plan.level >= TAILOR_LEVEL ? docketFor(plan, garment, wording) : null
  }
}

const refusal = (because: Saying, wording: Wording): Worksheet => ({
  refused: said(because, wording),
  gather: { tools: [], notions: [], substitutes: [] },
  parts: [],
  steps: [],
  docket: null
})

/** What sentences say of needle, thread, stitch and iron; how far a seam runs along the old one, how far eyelets stand from the middle (CP). */
const valuesOf = (cloth: ClothSetup): Values => ({
  needle: cloth.needle,
  needleSize: cloth.needleSize,
  thread: cloth.thread,
  stitch: cloth.stitch,
  stitchMm: cloth.stitchMm,
  spi: Math.round(25.4 / cloth.stitchMm),
  press: cloth.press,
  ends: cloth.clips ? 'knotted' : 'locked',
  run: 25,
  apart: 20
})

function stepOf(draft: Draft, id: string, values: Values, minds: readonly string[], cloth: ClothSetup, wording: Wording): Step {
  const { part, stage, act, alteration, condition, opens, closes } = draft
  const does: Saying = { code: `step.${draft.does}`, values }
  if (alteration !== null) does.alteration = alteration
  return {
    id,
    part,
    stage,
    act,
    alteration,
    condition,
    does: said(does, wording),
    figures: draft.marks.map(({ is, mm, values: own = {} }): Figure => {
      const name = say({ code: `figure.${is}`, values: { ...values, ...own } }, wording)
      const side = own.side
      return { is, mm, values: own, name: side === undefined ? name : say({ code: 'figure.sided', values: { name, side } }, wording) }
    }),
    irreversible: act === 'cut',
    tryOn: act === 'try',
    cautions: minds.map((mind) => say({ code: `caution.${mind}`, values: {} }, wording)),
    minds: [...minds],
    opens,
    closes,
    uses: [...new Set([...usesOf(act, cloth), ...draft.uses])]
  }
}

/** Tools and notions of all steps, each once in the order of the table; and what does where one is missing. */
function gathered(steps: readonly Step[], values: Values, wording: Wording): Worksheet['gather'] {
  const used = new Set(steps.flatMap(({ uses }) => uses))
  const all = THING_IDS.filter((id) => used.has(id))
  const named = (id: Thing): Gathered => ({ thing: id, ...said({ code: `gather.${id}`, values }, wording) })
  return {
    tools: all.filter((id) => THINGS[id].sort === 'tool').map(named),
    notions: all.filter((id) => THINGS[id].sort === 'notion').map(named),
    substitutes: all.flatMap((id) => {
      const { instead } = thing(id)
      return instead === undefined ? [] : [{ thing: id, ...said({ code: `instead.${instead}`, values }, wording) }]
    })
  }
}
