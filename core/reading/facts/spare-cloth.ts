/** Where cloth to spare lies: in the hem, in the back seam, at the waist. */
import type { PointId } from '../../ids/points.ts'
import type { Landmark, PointName } from '../languages/lexicon.ts'
import type { Link } from '../links/assign.ts'
import type { Label } from '../names/label.ts'
import { cue } from '../text/cues.ts'
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Token } from '../text/tokens.ts'

/** What stays in a seam that is let out: 3/8 in (CB-TR, a note on the centre back trouser seam). */
export const KEPT_MM = 9.525

const HEM = cue('hem')
const DEPTH = cue('deep')
const HEM_DEPTH = cue('hemDepth')
const BACK = cue('ofTheBack')
const CENTRE = cue('seamOrCentre')
const ONE_WORD = cue('backSeam')
const TO_LET_OUT = cue('toLetOut')
const NEAR = 5

/** The tokens of the figure, its name and a few words beside them, in its own sentence. */
function* beside({ tokens, layout }: TextRead, { label, quantity }: Link, ahead: number, behind: number): Generator<string> {
  const from = Math.max(0, Math.min(label.from, quantity.from) - ahead)
  const to = Math.min(tokens.length, Math.max(label.to, quantity.spanTo) + behind)
  for (let at = from; at < to; at++) {
    const token = tokens[at] as Token
    if (layout.sentence[at] === layout.sentence[quantity.from] && token.kind === 'word') yield token.text
  }
}

/** “hem has 2" to let down”, “2" to let down at the hem”. */
export function saysHem(text: TextRead, link: Link): boolean {
  for (const word of beside(text, link, 2, 3)) if (HEM.test(word)) return true
  return false
}

/** “centre back seam has 1.5" to let out”, “an inch left in the back seam”. */
export function saysBackSeam(text: TextRead, link: Link): boolean {
  let back = false
  let centre = false
  for (const word of beside(text, link, NEAR, NEAR)) {
    if (ONE_WORD.test(word)) return true
    back ||= BACK.test(word)
    centre ||= CENTRE.test(word)
  }
  return back && centre
}

/** “to let out” tells how much wider it gets, “left in the seam” how much cloth each side of it has. */
export function saysToLetOut(text: TextRead, link: Link): boolean {
  for (const word of beside(text, link, 0, 0)) if (TO_LET_OUT.test(word)) return true
  return false
}

/** “deep hem of 3"”, “hem is 2" deep”. */
export function isHemDepth({ tokens }: TextRead, { from, to }: Label): boolean {
  let hem = false
  let deep = false
  for (let at = from; at < to; at++) {
    const word = tokens[at]?.text
    hem ||= HEM.test(word) || HEM_DEPTH.test(word)
    deep ||= DEPTH.test(word)
  }
  return hem && deep
}

type Place = Landmark | PointName
const GIRTHS: Partial<Record<Place, PointId>> = { waist: 'waist', hip: 'hip', bust: 'chest', thigh: 'thigh', knee: 'knee', bicep: 'bicep' }
/** The girth that is let out at a place. */
export const girthAt = (place: Place | null): PointId | null => (place === null ? null : (GIRTHS[place] ?? null))

const OFF_ITS_GIRTHS: ReadonlySet<Place> = new Set<Place>(['cuff', 'elbow', 'shoulder'])
/** “1" to let out at the cuff”: what is let out there makes no waist or chest wider. */
export const isOffGirths = (place: Place | null): boolean => place !== null && OFF_ITS_GIRTHS.has(place)

/** “2" to let out at the waist seam”: the place that is named behind. */
export function placeBehind({ tokens, terms, layout }: TextRead, { label, quantity }: Link): Place | null {
  let at = Math.max(label.to, quantity.spanTo)
  for (let steps = 0; steps < 4 && layout.sentence[at] === layout.sentence[quantity.from]; steps++) {
    const token = tokens[at]
    const term = termAt(terms, at)
    if (token === undefined || token.kind !== 'word') return null
    const place = meaning(term, 'landmark')?.landmark ?? meaning(term, 'point')?.point
    if (place !== undefined) return place
    if (!term || !means(term, 'light', 'all')) return null
    at = term.to
  }
  return null
}

/** “3" to let out in the hem”, “hem has 3" to let out”: that is let down. */
export function letsOutHem({ tokens }: TextRead, { label, quantity }: Link, place: Place | null): boolean {
  if (place === 'hem') return true
  const first = Math.min(label.from, quantity.from)
  for (let at = Math.max(label.from, quantity.from); at >= first - 2; at--) {
    if (at < first && tokens[at]?.kind !== 'word') return false
    if (HEM.test(tokens[at]?.text)) return true
  }
  return false
}
