/** “17 1/2" at the waistband” of a jacket or a jumper: the band it ends in, not the waist. */
import type { GarmentKind } from '../../ids/kinds.ts'
import type { Label } from '../names/label.ts'
import { cueInside } from '../text/cues.ts'
import type { TextRead } from '../text/text.ts'
import type { Link } from './assign.ts'

const BANDED = new Set<GarmentKind>(['jacket', 'coat', 'jumper', 'knit-top'])
const WAISTBAND = cueInside('waistband')
const EDGES = new Set(['bottomEdge', 'hem', 'sweep'])

/** Is this name of the band below, on a garment whose bottom edge has no other name here? Common practice, no source. */
export function isBottomBand({ tokens }: TextRead, label: Label, kind: GarmentKind | null, links: readonly Link[]): boolean {
  if (kind === null || !BANDED.has(kind) || label.points[0] !== 'waist') return false
  const said = tokens
    .slice(label.from, label.to)
    .map(({ text }) => text)
    .join('')
  if (!WAISTBAND.test(said)) return false
  return !links.some(({ label: { points } }) => points[0] !== undefined && EDGES.has(points[0]))
}
