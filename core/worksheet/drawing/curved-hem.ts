/**
 * The curved hem of a shirt moved up: front and back end level at the side seam, at the same height. A hem that is turned twice is sewn to a line that
 * lies above its edge; on a curve the two differ from place to place, and since both ends lie level they are alike in all (turning theorem).
 */
import { hemFor } from '../hems.ts'
import { whole } from './label-box.ts'
import { along, beside, type Line, lengthOf, type Spot } from './line-work.ts'
import { STEP_MM } from './seam-strip.ts'
import { type Asked, figureOf, type Label, type Template, type TemplateLine } from './template.ts'
import { type JobLine, named } from './waist-strips.ts'

export type Half = 'front' | 'back'
/** How far the tail hangs below the hem at the side seam (from memory; shown as assumed). */
export const TAIL_MM: Record<Half, number> = { front: 60, back: 75 }
/** From the centre so much of the hem hangs level. */
const LEVEL_SHARE = 0.3
const USUAL_HEM = 1100
const SAMPLES = 400

/**
 * Half a hem from the centre (x 0) to the side seam (x `wide`), y down from the side seam's end: level at both ends, and between them a curve
 * without a corner (cubic step).
 */
export function tailCurve(wide: number, tail: number, at = 0): Line {
  return Array.from({ length: SAMPLES + 1 }, (_, i) => {
    const u = i / SAMPLES
    const s = Math.max(0, (u - LEVEL_SHARE) / (1 - LEVEL_SHARE))
    return { x: u * wide, y: at + tail * (1 - s * s * (3 - 2 * s)) }
  })
}

/** Where the hem is eased and where it is stretched, mm, edge against the line it is sewn to. */
export function easing(edge: Line, sewn: Line): { eased: number; stretched: number } {
  let eased = 0
  let stretched = 0
  for (let i = 1; i < edge.length; i++) {
    const more = lengthOf([edge[i - 1] as Spot, edge[i] as Spot]) - lengthOf([sewn[i - 1] as Spot, sewn[i] as Spot])
    if (more > 0) eased += more
    else stretched -= more
  }
  return { eased, stretched }
}

export function curvedHem(asked: Asked, line: JobLine, half: Half): Template {
  const { t, plan, garment } = asked
  const hem = figureOf(asked, 'hem', USUAL_HEM)
  const after = plan.after.find(({ point }) => point === 'hem')?.mm ?? hem.mm
  const up = line.offsetMm
  const [wideBefore, wide] = [hem.mm / 4, after / 4]
  const old = tailCurve(wideBefore, TAIL_MM[half])
  const fold = tailCurve(wide, TAIL_MM[half], -up)
  // to the left of a line that runs from the centre outwards is up the garment
  const { allowanceMm, firstTurnMm } = hemFor(garment)
  const turn = allowanceMm - firstTurnMm
  const [first, sewn, cut] = [beside(fold, -turn), beside(fold, turn), beside(fold, -allowanceMm)]
  const { eased, stretched } = easing(first, sewn)
  const lines: TemplateLine[] = [
    { role: 'goes', line: old },
    { role: 'makes', line: fold },
    { role: 'fold', line: first },
    { role: 'cut', line: cut },
    {
      role: 'edge',
      line: [
        { x: wide, y: -up - allowanceMm - 25 },
        { x: wideBefore, y: 0 }
      ]
    },
    {
      role: 'grain',
      line: [
        { x: 0, y: -up - 40 },
        { x: 0, y: TAIL_MM[half] + 4 }
      ]
    }
  ]
  const step = STEP_MM[asked.units]
  for (let at = step; at < lengthOf(fold); at += step) {
    const { spot, way } = along(fold, at)
    lines.push({
      role: 'mark',
      line: [
        { x: spot.x + 3 * way.y, y: spot.y - 3 * way.x },
        { x: spot.x - 3 * way.y, y: spot.y + 3 * way.x }
      ]
    })
  }
  const text = (x: number, y: number, words: string, anchor: Label['anchor'] = 'start'): Label => ({ at: { x, y }, text: words, anchor })
  const name = named(asked, line, 'template.title.curved-hem')
  const start = { x: 0, y: TAIL_MM[half] - up }
  return whole({
    id: `${name.id}.${half}`,
    alteration: asked.job.id,
    title: t(`template.title.curved-hem.${half}`),
    notes: [
      t('template.curve.lay', { mm: up }),
      t('template.curve.cut', { mm: allowanceMm, first: firstTurnMm, turn }),
      t('template.curve.ease', { eased, stretched }),
      t('template.curve.even')
    ],
    assumed: [...hem.assumed, t('template.assumed.tail', { mm: TAIL_MM[half] })],
    lines,
    labels: [
      { ...text(4, start.y - 3, t('template.new-edge', { mm: up })), look: 'strong' },
      text(4, start.y + turn - 0.8, t('template.curve.turn')),
      text(4, start.y + allowanceMm + 3.6, t('template.curve.cut-here')),
      text(4, TAIL_MM[half] - 2, t('template.hem.old-edge')),
      { at: { x: -2, y: TAIL_MM[half] / 2 - up }, text: t('template.centre'), anchor: 'middle', upright: true },
      text(wide - 4, -up - allowanceMm - 14, t('template.at.side-seam'), 'end')
    ],
    lengths: { old: lengthOf(old), fold: lengthOf(fold), turned: lengthOf(first), sewn: lengthOf(sewn), eased, stretched, sideUp: up }
  })
}
