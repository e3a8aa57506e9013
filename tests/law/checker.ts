/**
 * An independent reader of plans: it knows the trade's rules from its own short table and shares no code with the planner. Given a request and
 * a plan it says everything that is not as it should be.
 */
import type { GarmentInput, Made } from '../../core/garment/garment-input.ts'
import type { Job, Plan } from '../../core/plan/plan.ts'
import type { ReckonRequest } from '../../core/reckon.ts'

const TYPICAL: Record<
  string,
  { allowance: number; outlet: number; hem: number; overlap: number; hipDepth: number; felled: string[]; tailored: boolean; lined: boolean }
> = {
  trousers: { allowance: 10, outlet: 25, hem: 40, overlap: 40, hipDepth: 200, felled: [], tailored: true, lined: false },
  jeans: {
    allowance: 10,
    outlet: 0,
    hem: 15,
    overlap: 40,
    hipDepth: 190,
    felled: ['seat', 'centre-back', 'inseam'],
    tailored: false,
    lined: false
  },
  shorts: { allowance: 10, outlet: 10, hem: 30, overlap: 40, hipDepth: 200, felled: [], tailored: false, lined: false },
  skirt: { allowance: 12, outlet: 12, hem: 40, overlap: 30, hipDepth: 200, felled: [], tailored: false, lined: false },
  dress: { allowance: 12, outlet: 12, hem: 35, overlap: 25, hipDepth: 200, felled: [], tailored: false, lined: false },
  jumpsuit: { allowance: 12, outlet: 12, hem: 35, overlap: 25, hipDepth: 200, felled: [], tailored: false, lined: false },
  shirt: {
    allowance: 10,
    outlet: 0,
    hem: 13,
    overlap: 25,
    hipDepth: 200,
    felled: ['side', 'armhole', 'underarm'],
    tailored: false,
    lined: false
  },
  'knit-top': { allowance: 7, outlet: 0, hem: 20, overlap: 0, hipDepth: 200, felled: [], tailored: false, lined: false },
  jumper: { allowance: 7, outlet: 0, hem: 20, overlap: 0, hipDepth: 200, felled: [], tailored: false, lined: false },
  jacket: { allowance: 12, outlet: 20, hem: 40, overlap: 60, hipDepth: 200, felled: [], tailored: true, lined: true },
  coat: { allowance: 15, outlet: 20, hem: 50, overlap: 80, hipDepth: 200, felled: [], tailored: true, lined: true },
  waistcoat: { allowance: 12, outlet: 20, hem: 15, overlap: 50, hipDepth: 200, felled: [], tailored: true, lined: true }
}

interface Make {
  allowance(seam: string): number
  hem: number
  overlap: number
  pocketGap: number
  pocketDepth: number
  taper: number
  tailored: boolean
}

function makeOf({ kind, made = {} }: GarmentInput): Make {
  const typical = TYPICAL[kind]
  if (typical === undefined) throw new Error(`no typical make for ${kind}`)
  const felled = made.felledSeams ?? typical.felled
  return {
    allowance: (seam) => {
      if (felled === true || (Array.isArray(felled) && felled.includes(seam as never))) return 0
      if (seam === 'centre-back') return made.outletMm ?? typical.outlet
      return typeof made.seamAllowanceMm === 'number' ? made.seamAllowanceMm : typical.allowance
    },
    hem: made.hemDepthMm ?? typical.hem,
    overlap: made.overlapMm ?? typical.overlap,
    pocketGap: made.backPocketGapMm ?? 140,
    pocketDepth: made.pocketDepthMm ?? 75,
    taper: Math.max(90, made.taperLengthMm ?? 200),
    tailored: made.tailored ?? typical.tailored
  }
}

/** The most that the trade allows, mm, by alteration; undefined: any. */
function mostFor(job: Job, request: ReckonRequest, make: Make): number | undefined {
  const own = request.limits?.[job.id]
  if (own !== undefined) return own
  const made = request.garment.made ?? {}
  const leather = request.garment.cloth?.structure === 'leather'
  const out = (seam: string, seams: number) => Math.max(0, 2 * seams * (make.allowance(seam) - 10))
  const table: Partial<Record<string, number>> = {
    'waist-in-centre-back': Math.min(request.garment.kind === 'jeans' ? 40 : 75, (2 * make.taper) / (4.5 * 1.2)),
    'waist-in-side-seams': 50,
    'waist-in-darts': 60,
    'waist-elastic-shorten': 0.2 * (request.garment.measures.find(({ point }) => point === 'waist')?.mm ?? Number.POSITIVE_INFINITY),
    'waist-out-centre-back': out('centre-back', 1),
    'waist-out-side-seams': out('side', 2),
    'waist-out-panel': 50,
    'seat-in': 38,
    'seat-out': out('seat', 1),
    'leg-taper': 76,
    'thigh-out': out('inseam', 1) + out('side', 1),
    'thigh-panel': 60,
    'leg-shorten-keep-edge': 125,
    'leg-lengthen-hem':
      request.garment.kind === 'jeans' ? (made.hemDepthMm ?? Math.min(30, make.hem)) - 10 : make.hem - (make.tailored ? 25 : 10),
    'leg-lengthen-facing': make.hem - 6,
    'leg-lengthen-band': 60,
    'rise-shorten': 25,
    'rise-deepen': 10,
    'skirt-shorten': 150,
    'skirt-lengthen': make.hem - 10,
    'skirt-shorten-from-waist': 100,
    'skirt-sides-in': 100,
    'skirt-sides-out': out('side', 2),
    'sides-in': make.tailored ? 76 : 100,
    'sides-out': out('side', 2),
    'back-darts': 100,
    'centre-back-in': 38,
    'side-panels': 60,
    'body-lengthen': make.hem - 10,
    'sleeve-shorten-cuff': 45,
    'sleeve-shorten-lined': leather ? 40 : 38,
    'sleeve-shorten-head': make.tailored ? 38 : 75,
    'sleeve-lengthen': make.hem - 10,
    'sleeve-taper': 76,
    'cuff-in': 50,
    'cuff-button-move': 20,
    'shoulder-in': make.tailored ? 20 : 38,
    'shoulder-pads': 10,
    'strap-shorten': 60,
    'bust-darts': 0,
    'yoke-darts': 75,
    'pleat-reset': 80,
    'pleat-release': 40,
    'gathers-reset': 150,
    'buckle-move': 80,
    'tie-move': 60,
    'hook-move': 13,
    'growth-tuck': 60,
    'growth-hem': 100,
    'hem-layered': 150,
    'bodice-boned-in': 50,
    'strapless-draw': 40,
    'lace-back': 60,
    'waistcoat-back-in': 76,
    'knit-take-in': 60,
    'sleeve-lengthen-facing': make.hem - 6,
    'underarm-raise': 40,
    'release-darts': 40,
    'lift-at-shoulder': 25,
    'dress-waist-raise': 38,
    'neckline-take-in': 38,
    'neck-button-move': 13,
    'hem-widen': 120,
    'calf-out': out('inseam', 1),
    'undo-earlier': 0
  }
  if (job.id === 'waist-button-move') return job.direction === 'less' ? 19 : Math.min(13, make.overlap - 20)
  if (job.id === 'front-button-move') return job.direction === 'less' ? 25 : Math.min(make.overlap - 25, make.overlap / 2 - 12.5)
  return table[job.id]
}

const NEVER_TOGETHER: [RegExp, RegExp][] = [
  [/^waist-in-centre-back$/, /^waist-out-centre-back$/],
  [/^waist-in-side-seams$/, /^waist-out-side-seams$/],
  [/^seat-in$/, /^seat-out$/],
  [/^sides-in$/, /^sides-out$/],
  [/^leg-shorten-/, /^leg-lengthen-/],
  [/^skirt-shorten$/, /^skirt-lengthen$/],
  [/^body-shorten$/, /^body-lengthen$/],
  [/^skirt-sides-in$/, /^skirt-sides-out$/],
  [/^cuff-in$/, /^cuff-button-move$/],
  [/^sides-in$/, /^side-panels$/],
  [/^waist-in-(?!elastic)/, /^waist-out-/],
  [/^waist-in-/, /^(release-darts|pleat-release)$/]
]
const ONE_OF: RegExp[] = [/^leg-shorten-/, /^leg-lengthen-/, /^sleeve-(shorten|lengthen)/, /-button-move$/]

const share = (t: number): number => (t >= 1 ? 0 : t <= 2 / 3 ? 1 - 1.2 * t : 1.8 * (1 - t) ** 2)

export function faultsOf(request: ReckonRequest, plan: Plan): string[] {
  const faults: string[] = []
  const make = makeOf(request.garment)
  const mark = request.means.markMm ?? 2
  const made: Partial<Made> = request.garment.made ?? {}
  for (const job of plan.alterations) {
    const most = mostFor(job, request, make)
    if (most !== undefined && job.amountMm > most + 1e-3) faults.push(`${job.id} ${job.amountMm} is more than ${most}`)
    if (job.amountMm > job.limitMm + 1e-3) faults.push(`${job.id} ${job.amountMm} is past its own stated limit ${job.limitMm}`)
    const amounts = Object.values(job.amounts).map(Math.abs)
    if (amounts.length > 0 && Math.abs(Math.max(...amounts) - job.amountMm) > 1e-3)
      faults.push(`${job.id}: its largest amount is not ${job.amountMm}`)
    for (const [point, mm] of Object.entries(job.amounts))
      if (job.direction === 'less' ? mm > 0 : mm < 0) faults.push(`${job.id} moves ${point} the other way`)
    for (const { seam, offsetMm } of job.lines) {
      // past what two darts hold four share it, each leg on half a mark
      const marks = offsetMm / (seam === 'dart' ? mark / 2 : mark)
      if (Math.abs(marks - Math.round(marks)) > 1e-2) faults.push(`${job.id}: ${offsetMm} is no whole mark`)
    }
    // the fold takes up twice its depth: once on either side of it
    if (job.id === 'leg-shorten-keep-edge' && Math.abs(Math.max(...job.lines.map(({ offsetMm }) => offsetMm)) - job.amountMm / 2) > 1e-2)
      faults.push(`the fold of an original edge is ${job.lines.map(({ offsetMm }) => offsetMm).join(', ')} for ${job.amountMm}`)
    if (job.id === 'back-darts' && /knit|jumper/.test(request.garment.kind)) faults.push('back darts in a knit')
    if (job.id === 'sleeve-shorten-lined' && made.workingCuffButtons) faults.push('a lined sleeve shortened past working buttons')
    if (
      /(-out-centre-back|-out-side-seams|seat-out|thigh-out|sides-out|lengthen(?!-band)|release-darts)/.test(job.id) &&
      request.garment.cloth?.traits?.includes('silk')
    )
      faults.push(`${job.id} in silk`)
  }
  const pocket = plan.alterations.find(({ id }) => id === 'waist-in-centre-back')
  if (pocket !== undefined && pocket.amountMm * share(make.pocketDepth / make.taper) > Math.max(0, make.pocketGap - 50) + 1e-3)
    faults.push('the back pockets come too close')
  const ids = plan.alterations.map(({ id }) => id)
  for (const [one, other] of NEVER_TOGETHER)
    if (ids.some((id) => one.test(id)) && ids.some((id) => other.test(id))) faults.push(`${one} beside ${other}`)
  for (const family of ONE_OF) {
    const mine = ids.filter((id) => family.test(id))
    if (family.source.includes('button') ? new Set(mine).size < mine.length : mine.length > 1) faults.push(`${mine.join(' and ')} together`)
  }
  const hardest = plan.alterations.length === 0 ? 0 : 1
  if (plan.level < hardest) faults.push(`level ${plan.level} with ${plan.alterations.length} jobs`)
  if (plan.aim !== 'tailor' && plan.level > request.means.level)
    faults.push(`level ${plan.level} for a person who sews to ${request.means.level}`)
  return faults
}

/** What stays wrong must be what `after` says against the bands that were shown. */
export function misfitFaults(
  plan: Plan,
  bands: readonly { point: string; band: { least: number | null; most: number | null } | null; from: string }[]
): string[] {
  return bands.flatMap(({ point, band, from }) => {
    if (band === null || from === 'inferred' || from === 'label') return []
    const after = plan.after.find((one) => one.point === point)?.mm
    if (after === undefined) return [`${point} is told but has no figure after the plan`]
    // a null edge is free
    const [least, most] = [band.least ?? Number.NEGATIVE_INFINITY, band.most ?? Number.POSITIVE_INFINITY]
    const out = after > most ? after - most : after < least ? after - least : 0
    const said = plan.misfit.find((one) => one.point === point)?.mm ?? 0
    return Math.abs(out - said) > 1.01 ? [`${point} ends ${out.toFixed(2)} outside, but ${said} is said`] : []
  })
}
