/**
 * A sleeve shortened at the armhole: its whole cap line moves down the sleeve, and is drawn anew so that its seam is still as long as the armhole with
 * its ease, though the sleeve is narrower there. Half a cap, from the top to the underarm.
 */
import type { Garment } from '../../garment/garment-as-worn.ts'
import { capEaseMm } from '../steps/sleeves.ts'
import { whole } from './label-box.ts'
import { armholeOf } from './limb-strips.ts'
import { along, beside, type Line, lengthOf } from './line-work.ts'
import { changeAt } from './seam-change.ts'
import { grain, STEP_MM } from './seam-strip.ts'
import { type Asked, allowances, figureOf, type Template, type TemplateLine } from './template.ts'
import { type JobLine, named } from './waist-strips.ts'

/** Of half the sleeve's width, how far the two handles of the curve reach: full at the top, hollow at the underarm (common practice). */
const TOP_HANDLE = 0.5
const UNDERARM_HANDLE = 0.45
const SAMPLES = 240
const TALLEST_MM = 260
const USUAL_BICEP = 380
const LABEL_AT = 12

/** More cloth in the cap than in the armhole: the middle of what the steps ask for. */
export function capEase(garment: Garment): number {
  const [least, most] = capEaseMm(garment)
  return (least + most) / 2
}

/** Half a cap: from its top at (0, `top`) down to (`half`, `top + tall`). */
export function capCurve(half: number, tall: number, top = 0): Line {
  const [x1, x2] = [TOP_HANDLE * half, (1 - UNDERARM_HANDLE) * half]
  return Array.from({ length: SAMPLES + 1 }, (_, i) => {
    const u = i / SAMPLES
    const v = 1 - u
    return { x: 3 * v * v * u * x1 + 3 * v * u * u * x2 + u ** 3 * half, y: top + 3 * v * u * u * tall + u ** 3 * tall }
  })
}

/**
 * How tall half a cap must be so that its seam has this length, its half width being `halfAt` its height: found by halving, to a hundredth of a mm.
 * Null where the sleeve is too wide for the seam, or the cap would be taller than any.
 */
export function capHeight(seamMm: number, halfAt: (tall: number) => number): number | null {
  const length = (tall: number): number => lengthOf(capCurve(halfAt(tall), tall))
  let [low, high] = [0, TALLEST_MM]
  if (length(low) > seamMm || length(high) < seamMm) return null
  while (high - low > 0.001) {
    const middle = (low + high) / 2
    if (length(middle) < seamMm) low = middle
    else high = middle
  }
  return (low + high) / 2
}

export type CapDrawn = { ok: true; template: Template } | { ok: false; because: 'two-piece' | 'cap-too-wide' }

export function sleeveCap(asked: Asked, line: JobLine): CapDrawn {
  const { garment, job, t } = asked
  if (garment.made.tailored) return { ok: false, because: 'two-piece' }
  const bicep = figureOf(asked, 'bicep', USUAL_BICEP)
  const armhole = armholeOf(asked)
  const ease = capEase(garment)
  const seam = (armhole.mm + ease) / 2
  const half = bicep.mm / 2
  const down = line.offsetMm
  // half the change of the upper sleeve for each mm it is shortened by
  const narrows = job.amountMm === 0 ? 0 : Math.abs(changeAt(job, garment, 'bicep')) / job.amountMm / 2
  const old = capHeight(seam, () => half)
  if (old === null) return { ok: false, because: 'cap-too-wide' }
  const newHalf = (tall: number) => half - narrows * (down + tall - old)
  const tall = capHeight(seam, newHalf)
  if (tall === null) return { ok: false, because: 'cap-too-wide' }
  return {
    ok: true,
    template: drawn(asked, line, { seam, half, old, tall, newHalf: newHalf(tall), ease, armhole: armhole.mm, narrows }, [
      ...bicep.assumed,
      ...armhole.assumed,
      t('template.assumed.ease', { mm: ease })
    ])
  }
}

interface Cap {
  seam: number
  half: number
  old: number
  tall: number
  newHalf: number
  ease: number
  armhole: number
  narrows: number
}

function drawn(asked: Asked, line: JobLine, cap: Cap, assumed: string[]): Template {
  const { garment, t } = asked
  const down = line.offsetMm
  const { thereMm } = allowances(garment, 'armhole')
  const oldLine = capCurve(cap.half, cap.old)
  const newLine = capCurve(cap.newHalf, cap.tall, down)
  const underarm = down + cap.tall
  const below = underarm + 18
  const lines: TemplateLine[] = [
    { role: 'goes', line: oldLine },
    { role: 'makes', line: newLine },
    // to the left of a line from the top outwards is up, away from the sleeve
    { role: 'cut', line: beside(newLine, thereMm) },
    {
      role: 'edge',
      line: [
        { x: cap.half, y: cap.old },
        { x: cap.half - cap.narrows * (below - cap.old), y: below }
      ]
    },
    {
      role: 'fold',
      line: [
        { x: 0, y: 0 },
        { x: 0, y: below }
      ]
    },
    grain(Math.min(30, cap.newHalf / 4), down + 20, below)
  ]
  const step = STEP_MM[asked.units]
  for (let at = step; at < lengthOf(newLine) - 3; at += step) {
    const { spot, way } = along(newLine, at)
    lines.push({
      role: 'mark',
      line: [
        { x: spot.x + 3 * way.y, y: spot.y - 3 * way.x },
        { x: spot.x - 3 * way.y, y: spot.y + 3 * way.x }
      ]
    })
  }
  // led from the empty corner above the curve
  const [atOld, atNew] = [oldLine[Math.floor(oldLine.length * 0.4)], newLine[Math.floor(newLine.length * 0.45)]]
  const side = cap.half * 0.62
  return whole({
    ...named(asked, line, 'template.title.cap'),
    alteration: asked.job.id,
    notes: [
      t('template.cap.lay'),
      t('template.cap.agree', { seam: 2 * cap.seam, armhole: cap.armhole, mm: cap.ease }),
      t('template.cap.turn')
    ],
    assumed,
    lines,
    labels: [
      { at: { x: side, y: LABEL_AT }, text: t('template.cap.old'), anchor: 'start', ...(atOld === undefined ? {} : { lead: atOld }) },
      {
        at: { x: side, y: LABEL_AT + 6 },
        text: t('template.cap.new', { mm: down }),
        anchor: 'start',
        look: 'strong',
        ...(atNew === undefined ? {} : { lead: atNew })
      },
      { at: { x: cap.newHalf - 8, y: underarm + 7 }, text: t('template.cap.underarm'), anchor: 'end' },
      { at: { x: -1.5, y: (down + below) / 2 }, text: t('template.cap.centre'), anchor: 'middle', upright: true }
    ],
    lengths: { newSeam: 2 * lengthOf(newLine), oldSeam: 2 * lengthOf(oldLine), armhole: cap.armhole, ease: cap.ease, down }
  })
}
