/** Laws of the sheet a person sews from, over many plans of invented requests and over every alteration on its own. */
import { describe, expect, it } from 'vitest'
import { CATALOGUE } from '../../core/alterations/catalogue.ts'
import type { AlterationId } from '../../core/ids/alterations.ts'
import { PARTS, type Step } from '../../core/worksheet/step.ts'
import { type Worksheet, worksheetFor } from '../../core/worksheet/worksheet.ts'
import { type Laid, plansOf } from './sheets.ts'

const SEED = 7_311
const laid: readonly Laid[] = plansOf(SEED, 400)
const sheets = laid.map((one) => ({ ...one, sheet: worksheetFor(one.plan, one.request, 'A4', 'cm') }))
const withJobs = sheets.filter(({ plan }) => plan.alterations.length > 0)

function law(name: string, least: number, run: () => number): void {
  it(`${name} (seed ${SEED})`, () => {
    const applied = run()
    console.info(`law: ${name}: applied ${applied} times`)
    expect(applied, 'times it applied').toBeGreaterThanOrEqual(least)
  }, 60_000)
}
const told = (step: Step): string => `${step.id}: ${step.does.text}`
const gatheredIn = ({ gather }: Worksheet) => new Set([...gather.tools, ...gather.notions].map(({ thing }) => thing))

describe('laws of the sheet', () => {
  law('every row of the catalogue is on some sheet, with a fitting and work', CATALOGUE.length, () => {
    const done = new Set(
      withJobs.flatMap(({ plan, sheet }) =>
        plan.alterations
          .filter(({ id }) => ['fit', 'work'].every((stage) => sheet.steps.some((step) => step.alteration === id && step.stage === stage)))
          .map(({ id, direction }) => `${id}/${direction}`)
      )
    )
    expect(CATALOGUE.map(({ id, direction }) => `${id}/${direction}`).filter((key) => !done.has(key))).toEqual([])
    return done.size
  })

  law('parts follow each other as the trade works', 300, () => {
    for (const { sheet } of sheets) {
      const order = sheet.steps.map(({ part }) => PARTS.indexOf(part))
      expect(order).toEqual([...order].sort((a, b) => a - b))
    }
    return sheets.length
  })

  law('what is opened is closed once, later; what is closed was opened; nothing is opened twice at once', 300, () => {
    let applied = 0
    for (const { sheet } of withJobs) {
      const open = new Set<string>()
      for (const step of sheet.steps) {
        if (step.opens !== null) {
          expect(open.has(step.opens), `open already: ${told(step)}`).toBe(false)
          open.add(step.opens)
          applied++
        }
        if (step.closes !== null) {
          expect(open.has(step.closes), `not open: ${told(step)}`).toBe(true)
          open.delete(step.closes)
        }
      }
      expect([...open], `left open on ${sheet.steps.map(({ id }) => id).join(' ')}`).toEqual([])
    }
    return applied
  })

  law('a job works only when what it needs is open', 200, () => {
    let applied = 0
    for (const { plan, sheet, garment } of withJobs)
      for (const { id, direction } of plan.alterations) {
        const row = CATALOGUE.find((one) => one.id === id && one.direction === direction && one.kinds.includes(garment.kind))
        const needs = typeof row?.opens === 'function' ? row.opens(garment) : (row?.opens ?? [])
        for (const what of needs) {
          const opened = sheet.steps.findIndex(({ opens }) => opens === what)
          const works = sheet.steps.findIndex((step) => step.alteration === id && step.stage === 'work')
          expect(opened, `${id} needs ${what}`).toBeGreaterThanOrEqual(0)
          expect(opened, `${id} works before ${what} is open`).toBeLessThan(works)
          expect(sheet.steps.filter(({ opens }) => opens === what).length, `${what} is opened once`).toBe(1)
          applied++
        }
      }
    return applied
  })

  law('nothing is cut before its try-on', 200, () => {
    let applied = 0
    for (const { sheet } of withJobs)
      for (const [n, step] of sheet.steps.entries()) {
        if (!step.irreversible) continue
        const before = sheet.steps.slice(0, n)
        const tried = before.some(
          (one) =>
            one.tryOn &&
            (step.alteration === null ? one.part === step.part && one.stage === step.stage : one.alteration === step.alteration)
        )
        expect(tried, told(step)).toBe(true)
        applied++
      }
    return applied
  })

  law('a new line is tried, basted or pinned, behind its marks and before it is cut; a seam before it is sewn', 1_000, () => {
    let applied = 0
    for (const { sheet } of withJobs)
      for (const [n, step] of sheet.steps.entries()) {
        const isNewLine = step.does.code.startsWith('step.sew-line') || (step.irreversible && step.stage === 'work')
        if (!isNewLine) continue
        const before = sheet.steps.slice(0, n).filter(({ alteration, stage }) => alteration === step.alteration && stage === 'work')
        expect(
          before.some(({ tryOn }) => tryOn),
          told(step)
        ).toBe(true)
        applied++
      }
    return applied
  })

  law('figures of a job are the plan’s: its amount, its lines, its points', 1_000, () => {
    let applied = 0
    let sided = 0
    for (const { plan, sheet } of withJobs)
      for (const job of plan.alterations) {
        const figures = sheet.steps.filter(({ alteration }) => alteration === job.id).flatMap((step) => step.figures)
        const sides = new Set(job.lines.map(({ side }) => side))
        for (const { is, mm, values } of figures) {
          // of each side its own line, whose offset is all of the amount or half of it
          if (values.side !== undefined) {
            expect(sides.has(values.side as never), job.id).toBe(true)
            const own = Math.abs(job.lines.find(({ side }) => side === values.side)?.offsetMm ?? Number.NaN)
            if (is === 'fold' || is === 'edge' || is === 'new-edge' || is === 'new-edge-below') expect(mm, job.id).toBeCloseTo(own, 2)
            sided++
            continue
          }
          if (is === 'amount') expect(mm).toBeCloseTo(job.amountMm, 3)
          if (is === 'around') expect(mm).toBeCloseTo(Math.abs(job.amounts[values.point as never] ?? 0), 3)
          if (is === 'edge') expect(job.lines.map(({ offsetMm }) => Math.abs(offsetMm))).toContain(mm)
          if (is === 'fold') expect(2 * mm).toBeCloseTo(job.amountMm, 2)
          if (is === 'new-edge' || is === 'new-edge-below' || is === 'cap-down') expect(mm).toBeCloseTo(job.amountMm, 3)
          if (is === 'down') expect(mm).toBeLessThanOrEqual(Math.max(...job.lines.map(({ offsetMm }) => Math.abs(offsetMm))) + 0.01)
          applied++
        }
        expect(
          figures.some(({ is }) => is === 'amount' || is === 'around' || is === 'new-edge'),
          `${job.id} tells its amount`
        ).toBe(true)
      }
    expect(sided, 'figures of one side').toBeGreaterThan(20)
    return applied
  })

  law('a new seam is marked as deep as the plan moves its line', 100, () => {
    let applied = 0
    for (const { plan, sheet } of withJobs)
      for (const job of plan.alterations) {
        const marks = sheet.steps
          .filter(({ alteration, act }) => alteration === job.id && act === 'mark')
          .flatMap(({ figures }) => figures.filter(({ is }) => is === 'down'))
        if (marks.length === 0 || job.lines.length === 0) continue
        const deepest = Math.max(...job.lines.map(({ offsetMm }) => Math.abs(offsetMm)))
        expect(Math.max(...marks.map(({ mm }) => mm)), job.id).toBeCloseTo(deepest, 2)
        applied++
      }
    return applied
  })

  law('each leg of a dart lies as far from its middle as the plan moves its line', 10, () => {
    let applied = 0
    for (const { plan, sheet } of withJobs)
      for (const job of plan.alterations.filter(({ id }) => ['waist-in-darts', 'yoke-darts', 'release-darts'].includes(id)))
        for (const { is, mm } of sheet.steps.filter(({ alteration }) => alteration === job.id).flatMap(({ figures }) => figures))
          if (is === 'dart-half') {
            expect(mm, `${job.id} ${job.amountMm}`).toBeCloseTo(Math.abs(job.lines[0]?.offsetMm ?? Number.NaN), 2)
            applied++
          }
    return applied
  })

  law('a line down a seam says where it is measured from, and names every seam that moves', 300, () => {
    let applied = 0
    for (const { plan, sheet } of withJobs)
      for (const step of sheet.steps.filter(({ does }) => does.code.startsWith('step.mark-line-'))) {
        const job = plan.alterations.find(({ id }) => id === step.alteration)
        expect(step.does.values.from, told(step)).toBeDefined()
        const named = new Set([step.does.values.seam, step.does.values.other].filter((one) => one !== undefined))
        expect(named, told(step)).toEqual(new Set(job?.lines.map(({ seam }) => seam)))
        applied++
      }
    return applied
  })

  law('what is sewn by machine is tried on a sample, and nothing is pressed for a button alone', 300, () => {
    for (const { sheet } of sheets) {
      const own = sheet.steps.filter(({ alteration, condition, stage }) => alteration !== null || condition !== null || stage !== 'fit')
      const acts = new Set(own.filter(({ part }) => part !== 'arrival' && part !== 'ready').map(({ act }) => act))
      if (acts.has('sew')) expect(sheet.steps.some(({ does }) => does.code === 'step.ready-sample')).toBe(true)
      else if (!acts.has('press')) expect(sheet.steps.filter(({ act, part }) => act === 'press' && part !== 'ready')).toEqual([])
    }
    return sheets.length
  })

  law('darts together take the amount', 10, () => {
    let applied = 0
    for (const { plan, sheet } of withJobs)
      for (const job of plan.alterations)
        for (const step of sheet.steps.filter(({ alteration }) => alteration === job.id))
          for (const { is, mm, values } of step.figures)
            if (is === 'dart-width') {
              expect(mm * Number(values.count), job.id).toBeCloseTo(job.amountMm, 1)
              applied++
            }
    return applied
  })

  law('what is used is gathered, and what is gathered is used', 300, () => {
    let applied = 0
    for (const { sheet } of sheets) {
      const all = gatheredIn(sheet)
      const used = new Set(sheet.steps.flatMap(({ uses }) => uses))
      expect([...used].filter((one) => !all.has(one))).toEqual([])
      expect([...all].filter((one) => !used.has(one))).toEqual([])
      applied++
    }
    return applied
  })

  law('hands have what they need: a ripper, a machine with its needle and thread, chalk, scissors, an iron', 5_000, () => {
    const NEEDS: Partial<Record<Step['act'], readonly string[]>> = {
      unpick: ['seam-ripper'],
      sew: ['machine', 'machine-needle', 'thread'],
      baste: ['hand-needle', 'basting-thread'],
      mark: ['chalk', 'tape'],
      cut: ['scissors'],
      hand: ['hand-needle', 'thread']
    }
    let applied = 0
    for (const { sheet, garment } of sheets) {
      const all: ReadonlySet<string> = gatheredIn(sheet)
      const holes =
        garment.cloth.structure === 'leather' || ['suede', 'vinyl', 'coated'].some((trait) => garment.cloth.traits.has(trait as never))
      for (const step of sheet.steps) {
        const needs = [
          ...(NEEDS[step.act] ?? []),
          ...(step.act === 'press' && !holes ? ['iron'] : []),
          ...(step.act === 'pin' ? [holes ? 'clips' : 'pins'] : [])
        ]
        expect(
          needs.filter((one) => !all.has(one)),
          told(step)
        ).toEqual([])
        applied += needs.length
      }
    }
    return applied
  })

  law('a caution is said once on a sheet', 300, () => {
    for (const { sheet } of sheets) {
      const said = sheet.steps.flatMap(({ minds }) => minds)
      expect(said.length).toBe(new Set(said).size)
    }
    return sheets.length
  })

  law('iron, blade, pin and needle never come without their caution before or with them', 300, () => {
    const NEEDS: Partial<Record<Step['act'], string>> = {
      press: 'iron',
      cut: 'knife',
      sew: 'needles',
      hand: 'needles'
    }
    let applied = 0
    for (const { sheet } of sheets) {
      const minded = new Set<string>()
      for (const step of sheet.steps) {
        for (const mind of step.minds) minded.add(mind)
        // where no iron may come near, that is what is said
        const need = step.act === 'press' && minded.has('iron-none') ? 'iron-none' : NEEDS[step.act]
        if (need === undefined) continue
        expect(minded.has(need), told(step)).toBe(true)
        applied++
      }
    }
    return applied
  })

  law('every step is told once, with whole words and figures', 5_000, () => {
    let applied = 0
    for (const { sheet } of sheets) {
      expect(new Set(sheet.steps.map(({ id }) => id)).size).toBe(sheet.steps.length)
      for (const { does, figures } of sheet.steps) {
        expect(does.text).toMatch(/^[^{}]+$/)
        for (const { mm, name } of figures) {
          expect(Number.isFinite(mm), `${does.text} ${name}`).toBe(true)
          expect(mm, `${does.text} ${name}`).toBeGreaterThanOrEqual(0)
          expect(name).toMatch(/^[^{}]+$/)
        }
        applied++
      }
    }
    return applied
  })

  law('units change the words and no figure; paper changes nothing', 100, () => {
    for (const { plan, request, sheet } of sheets.slice(0, 150)) {
      const inches = worksheetFor(plan, request, 'Letter', 'in')
      expect(inches.steps.map(({ id, figures }) => [id, figures.map(({ mm }) => mm)])).toEqual(
        sheet.steps.map(({ id, figures }) => [id, figures.map(({ mm }) => mm)])
      )
    }
    return 150
  })

  law('a tailor’s plan, and one of level 4 or 5, has a docket that asks for every job', 20, () => {
    let applied = 0
    for (const { plan, sheet } of sheets) {
      const has = plan.aim === 'tailor' || plan.level >= 4
      expect(sheet.docket !== null).toBe(has)
      if (sheet.docket === null) continue
      const asked: AlterationId[] = sheet.docket.asks.map(({ alteration }) => alteration)
      expect(asked).toEqual(plan.alterations.map(({ id }) => id))
      for (const [n, { figures }] of sheet.docket.asks.entries())
        expect(figures.map(({ mm }) => mm)).toEqual(Object.values(plan.alterations[n]?.amounts ?? {}).map(Math.abs))
      applied++
    }
    return applied
  })

  law('protective, sleepwear and compression have no sheet, whatever the plan', 100, () => {
    let applied = 0
    for (const { plan, request } of withJobs.slice(0, 60))
      for (const use of ['protective', 'child-sleepwear', 'medical-compression'] as const) {
        const sheet = worksheetFor(plan, { ...request, garment: { ...request.garment, use } }, 'A4', 'cm')
        expect(sheet.refused?.code).toBe(`sheet.never.${use}`)
        expect([sheet.steps, sheet.docket, sheet.gather.tools]).toEqual([[], null, []])
        applied++
      }
    return applied
  })
})
