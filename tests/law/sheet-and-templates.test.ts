/** What the steps of a sheet say in figures and what its templates draw is one thing: measured on the drawn lines, to a twentieth of a millimetre. */
import { describe, expect, it } from 'vitest'
import type { Job } from '../../core/plan/plan.ts'
import { drawTemplates } from '../../core/worksheet/drawing/draw-templates.ts'
import type { Template } from '../../core/worksheet/drawing/template.ts'
import type { Figure } from '../../core/worksheet/step.ts'
import { worksheetFor } from '../../core/worksheet/worksheet.ts'
import { plansOf } from './sheets.ts'

const SEED = 20261202
const COUNT = 60
const TOLERANCE = 0.05

interface Spot {
  x: number
  y: number
}
function xAtHeight(line: readonly Spot[], y: number): number | null {
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1] as Spot, line[i] as Spot]
    if (a.y !== b.y && y >= Math.min(a.y, b.y) - 1e-6 && y <= Math.max(a.y, b.y) + 1e-6)
      return a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)
  }
  return null
}
const lineThat = (template: Template, role: string): readonly Spot[] => template.lines.find((line) => line.role === role)?.line ?? []
/** The strip of a line at the centre back of a body starts above the underarm, where its steps begin to count. */
const STARTS: Partial<Record<Job['id'], number>> = { 'centre-back-in': -60 }

interface Told {
  job: Job
  figures: Figure[]
  templates: Template[]
}
const told: Told[] = plansOf(SEED, COUNT).flatMap(({ plan, request }) => {
  const sheet = worksheetFor(plan, request, 'A4', 'cm')
  const drawn = drawTemplates(plan, request, 'A4', 'cm')
  return sheet.refused !== null
    ? []
    : plan.alterations.map((job) => ({
        job,
        figures: sheet.steps.filter(({ alteration }) => alteration === job.id).flatMap(({ figures }) => figures),
        templates: drawn.templates.filter(({ id }) => id.startsWith(`${job.id}.${job.direction}.`))
      }))
})

/** Runs a check over every job; it must have applied often, and tells how often, for how many alterations. */
function law(name: string, check: (one: Told) => number, least: number): void {
  it(name, () => {
    let applied = 0
    const ids = new Set<string>()
    for (const one of told) {
      const found = check(one)
      applied += found
      if (found > 0) ids.add(one.job.id)
    }
    console.log(`${name}: seed ${SEED}, applied ${applied} times to ${ids.size} alterations`)
    expect(ids.size).toBeGreaterThanOrEqual(least)
  })
}
const the = (figures: readonly Figure[], is: string): number | undefined => figures.find((figure) => figure.is === is)?.mm

describe('steps and templates', () => {
  law(
    'every offset down a seam stands on the drawn line',
    ({ job, figures, templates }) => {
      let applied = 0
      for (const template of templates.filter(({ lengths }) => lengths.deepest !== undefined)) {
        const line = lineThat(template, 'makes')
        const start = STARTS[job.id] ?? 0
        for (const { mm, values } of figures.filter(({ is }) => is === 'down')) {
          if (values.side !== undefined && !template.id.endsWith(String(values.side))) continue
          const x = xAtHeight(line, start + Number(values.at))
          // past the end of the strip the steps may name what stays as it was last
          if (x === null) continue
          expect(Math.abs(Math.abs(x) - mm), `${template.id} at ${values.at}`).toBeLessThan(TOLERANCE)
          applied++
        }
      }
      return applied
    },
    14
  )

  law(
    'hems: what is turned up, and how far first, is drawn as it is said',
    ({ figures, templates, job }) => {
      const [template] = templates
      if (template?.lengths.stands === undefined || job.id === 'growth-hem') return 0
      const once = the(figures, 'turn-once')
      const first = the(figures, 'turn-first') ?? 0
      const then = the(figures, 'turn-then')
      if (once === undefined && then === undefined) return 0
      expect(template.lengths.left).toBeCloseTo(once ?? first + (then ?? 0), 2)
      expect(template.lengths.under).toBeCloseTo(first, 2)
      return 1
    },
    6
  )

  law(
    'kept edges, tucks and darts: one fold, one half',
    ({ figures, templates, job }) => {
      const [template] = templates
      const fold = the(figures, 'fold')
      const half = the(figures, 'dart-half')
      if (template === undefined) return 0
      if (job.id === 'leg-shorten-keep-edge' || job.id === 'growth-tuck') {
        expect(template.lengths.fold ?? template.lengths.half).toBeCloseTo(fold ?? Number.NaN, 2)
        return 1
      }
      if (template.lengths.takes === undefined || half === undefined) return 0
      expect(template.lengths.takes).toBeCloseTo(2 * half, 2)
      const leg = the(figures, 'dart-leg')
      if (leg !== undefined && template.lengths.left !== undefined && job.id !== 'back-darts')
        expect(template.lengths.left).toBeCloseTo(leg, 2)
      return 1
    },
    4
  )
})
