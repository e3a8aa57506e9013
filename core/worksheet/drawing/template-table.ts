/** Which template an alteration has, one row each; or why it has none. */

import { isCut } from '../../garment/cut.ts'
import type { Garment } from '../../garment/garment-as-worn.ts'
import type { AlterationId } from '../../ids/alterations.ts'
import { bodySides, middleBack } from './body-strips.ts'
import { curvedHem } from './curved-hem.ts'
import { dartTemplate } from './dart.ts'
import { acrossGauge, deepHemGauge, hemDownGauge, hemUpGauge, keptEdge, tuckGauge, turnUpDown, turnUpGauge } from './gauges.ts'
import { armholeStrip, legStrip, raisedSide, underarmStrip } from './limb-strips.ts'
import { sleeveCap } from './sleeve-cap.ts'
import type { Asked, Template } from './template.ts'
import { centreBackTaper, type JobLine, seatStrip, sideTaper, skirtSides } from './waist-strips.ts'

/** Why there is nothing to draw: `template.none.<reason>`. */
export type WhyNone = 'measured' | 'told' | 'piece' | 'on-garment' | 'two-piece' | 'cap-too-wide' | 'nothing-moves'
export type Made = { templates: Template[] } | { none: WhyNone }
type Maker = (asked: Asked) => Made

const none =
  (reason: WhyNone): Maker =>
  () => ({ none: reason })

/** One template for each line that moves. */
const eachLine =
  (make: (asked: Asked, line: JobLine) => Template | null): Maker =>
  (asked) => {
    const templates = asked.job.lines.filter(({ offsetMm }) => offsetMm !== 0).flatMap((line) => make(asked, line) ?? [])
    return templates.length === 0 ? { none: 'nothing-moves' } : { templates }
  }

/** Two leg seams that move alike share a strip; on each side that is told apart. */
const legs: Maker = (asked) => {
  const lines = asked.job.lines.filter(({ offsetMm }) => offsetMm !== 0)
  const isAlike = (a: JobLine, b: JobLine) => a !== b && a.side === b.side && a.offsetMm === b.offsetMm
  const first = lines.filter((line) => lines.find((other) => other === line || isAlike(other, line)) === line)
  const templates = first.flatMap(
    (line) =>
      legStrip(
        asked,
        line,
        lines.find((other) => isAlike(line, other))
      ) ?? []
  )
  return templates.length === 0 ? { none: 'nothing-moves' } : { templates }
}

const cap: Maker = (asked) => {
  const [line] = asked.job.lines
  if (line === undefined || line.offsetMm === 0) return { none: 'nothing-moves' }
  const drawn = sleeveCap(asked, line)
  return drawn.ok ? { templates: [drawn.template] } : { none: drawn.because }
}

/** Shirts have a curved hem, unless they are told to end straight. */
const hasCurvedHem = ({ kind, cut }: Garment): boolean => kind === 'shirt' && !isCut(cut, 'hem', 'straight', 'drawn-in')
const bodyHem: Maker = (asked) => {
  const [line] = asked.job.lines
  if (line === undefined || line.offsetMm <= 0 || !hasCurvedHem(asked.garment)) return hem(asked)
  return { templates: [curvedHem(asked, line, 'front'), curvedHem(asked, line, 'back')] }
}

const isWaisted = ({ kind }: Garment): boolean => ['trousers', 'jeans', 'shorts', 'skirt'].includes(kind)
const hem = eachLine(hemUpGauge())
const hemDown = eachLine(hemDownGauge)

export const MAKERS: Readonly<Record<AlterationId, Maker>> = {
  'waist-in-centre-back': eachLine(centreBackTaper),
  'waist-out-centre-back': eachLine(centreBackTaper),
  'undo-earlier': (asked) => eachLine(isWaisted(asked.garment) ? centreBackTaper : middleBack)(asked),
  'waist-in-side-seams': eachLine(sideTaper),
  'waist-out-side-seams': eachLine(sideTaper),
  'seat-in': eachLine(seatStrip),
  'seat-out': eachLine(seatStrip),
  'rise-deepen': none('on-garment'),
  'leg-taper': legs,
  'thigh-out': legs,
  'calf-out': legs,
  'skirt-sides-in': eachLine(skirtSides),
  'skirt-sides-out': eachLine(skirtSides),
  'sides-in': eachLine(bodySides),
  'sides-out': eachLine(bodySides),
  'knit-take-in': eachLine(bodySides),
  'bodice-boned-in': eachLine(bodySides),
  'centre-back-in': eachLine(middleBack),
  'waistcoat-back-in': eachLine(middleBack),
  'sleeve-taper': eachLine(underarmStrip),
  'shoulder-in': eachLine(armholeStrip),
  'underarm-raise': eachLine(raisedSide),
  'waist-in-darts': eachLine(dartTemplate),
  'yoke-darts': eachLine(dartTemplate),
  'back-darts': eachLine(dartTemplate),
  'bust-darts': none('on-garment'),
  'release-darts': none('on-garment'),
  'leg-shorten-plain': eachLine(hemUpGauge('plain')),
  'leg-shorten-blind': eachLine(hemUpGauge('blind')),
  'leg-lengthen-hem': hemDown,
  'leg-lengthen-facing': hemDown,
  'leg-shorten-keep-edge': eachLine(keptEdge),
  'turn-up-shorten': eachLine(turnUpGauge),
  'turn-up-let-down': eachLine(turnUpDown),
  'growth-tuck': eachLine(tuckGauge),
  'growth-hem': eachLine(deepHemGauge),
  'skirt-shorten': hem,
  'skirt-lengthen': hemDown,
  'hem-layered': hem,
  'body-shorten': bodyHem,
  'body-lengthen': hemDown,
  'sleeve-shorten-hem': eachLine(hemUpGauge('sleeve')),
  'sleeve-shorten-lined': eachLine(hemUpGauge('sleeve-lined')),
  'sleeve-lengthen': hemDown,
  'sleeve-lengthen-facing': hemDown,
  'sleeve-shorten-head': cap,
  'sleeve-shorten-cuff': eachLine(acrossGauge('up')),
  'rib-rejoin': eachLine(acrossGauge('up')),
  'rib-rejoin-body': eachLine(acrossGauge('up')),
  'rise-shorten': eachLine(acrossGauge('down')),
  'skirt-shorten-from-waist': eachLine(acrossGauge('down')),
  'lift-at-shoulder': eachLine(acrossGauge('down')),
  'dress-waist-raise': eachLine(acrossGauge('up')),
  'dress-waist-lower': eachLine(acrossGauge('up')),
  'strap-shorten': none('measured'),
  'cuff-in': none('measured'),
  'waist-button-move': none('measured'),
  'hook-move': none('measured'),
  'buckle-move': none('measured'),
  'tie-move': none('measured'),
  'front-button-move': none('measured'),
  'neck-button-move': none('measured'),
  'cuff-button-move': none('measured'),
  'hem-unroll': none('told'),
  'shoulder-pads': none('told'),
  'waist-in-elastic': none('told'),
  'waist-elastic-shorten': none('told'),
  'drawstring-add': none('told'),
  'strapless-draw': none('told'),
  'gathers-reset': none('told'),
  'pleat-reset': none('on-garment'),
  'pleat-release': none('on-garment'),
  'neckline-take-in': none('on-garment'),
  'lace-back': none('piece'),
  'waist-out-panel': none('piece'),
  'thigh-panel': none('piece'),
  'side-panels': none('piece'),
  'hem-widen': none('piece'),
  'leg-lengthen-band': none('piece')
}
