/** What else is told: construction, use, colour, condition. */
import type { Made, Use } from '../../garment/garment-input.ts'
import { type GarmentKind, SHAPE, type Shape } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import { cue, cueInside } from '../text/cues.ts'
import { meaning, means, termAt, termsAs } from '../text/terms.ts'
import { isDenied, slice, type TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'

/** Where an opening is told for a kind that can have it there. */
const OPENS: Partial<Record<PointId, Shape[]>> = {
  waist: ['legs', 'skirt', 'whole'],
  hem: ['upper'],
  sweep: ['skirt', 'whole'],
  legOpening: ['legs', 'whole']
}

const ALL_OF_IT = cueInside('allOfIt')

const NONE = cue('noneOfIt')
/** “Lining: none”. */
const isNone = ({ tokens }: TextRead, at: number): boolean => isOneOf(tokens[at], ':=-') && NONE.test(tokens[at + 1]?.text)

/** Construction, the first telling of each fact. */
export function madeOf(texts: readonly TextRead[], kind: GarmentKind | null): Partial<Made> {
  const made: Partial<Made> = {}
  const shape = kind === null ? 'none' : SHAPE[kind]
  const sleeved = kind !== 'waistcoat' && (shape === 'upper' || shape === 'whole')
  // lined in part: what opening it costs stays untold, unless the text says somewhere that all of it is lined
  const partly = texts.some((text) => termsAs(text.terms, 'partLined').some((term) => !isDenied(text, term)))
  for (const text of texts) {
    for (const term of termsAs(text.terms, 'made')) {
      const madeFact = meaning(term, 'made')?.fact
      if (!madeFact) continue
      const denied = isDenied(text, term) || isNone(text, term.to)
      if (madeFact.fact === 'shortSleeves' && !sleeved) continue
      if (madeFact.fact === 'lined' && partly && !ALL_OF_IT.test(slice(text, term.from, term.to))) continue
      if (madeFact.fact === 'opens') {
        if (denied) continue
        const places = madeFact.value.filter((point) => OPENS[point]?.includes(shape))
        if (places.length > 0) made.opens = [...new Set([...(made.opens ?? []), ...places])]
      } else if (madeFact.fact === 'skirtShape') {
        if (!denied && (shape === 'skirt' || shape === 'whole')) made.skirtShape ??= madeFact.value
      } else if (madeFact.fact === 'hemKind') {
        if (!denied) made.hemKind ??= madeFact.value
      } else if (made[madeFact.fact] === undefined) Object.assign(made, { [madeFact.fact]: denied ? false : madeFact.value })
    }
  }
  return made
}

/** What it is for, where that forbids or changes advice; children by the title, a size by age, or “girls dress”. */
export function useOf(texts: readonly TextRead[], title: TextRead | null, sizeLabels: readonly string[]): Use | null {
  const found = new Set<Use>()
  let child = sizeLabels.some((label) => label.startsWith('age '))
  let night = false
  for (const text of texts) {
    for (const term of termsAs(text.terms, 'nightwear', 'use')) {
      if (means(term, 'nightwear')) night = true
      const use = meaning(term, 'use')?.use
      if (use === undefined || isDenied(text, term)) continue
      if (use !== 'child') found.add(use)
      else if (text === title || means(termAt(text.terms, term.to), 'kind') || means(termAt(text.terms, term.to + 1), 'kind')) child = true
    }
  }
  for (const use of ['medical-compression', 'protective', 'child-sleepwear'] as const) if (found.has(use)) return use
  return child ? (night ? 'child-sleepwear' : 'child') : null
}

const EARLY = 80

/** The first colour of the title, else of the first words. */
export function colourOf(texts: readonly TextRead[]): string | null {
  for (const text of texts) {
    for (const term of termsAs(text.terms, 'colour')) {
      if (term.from > EARLY) break
      const colour = meaning(term, 'colour')?.colour
      if (colour !== undefined && !means(term, 'fault') && !isDenied(text, term)) return colour
    }
  }
  return null
}

/** “very good used condition”, “new with tags”: as told, in small letters. */
export function conditionOf(texts: readonly TextRead[]): string | null {
  for (const text of texts) {
    for (const term of termsAs(text.terms, 'condition', 'conditionPhrase')) {
      if (means(term, 'condition')) {
        let from = term.from
        for (
          let before = termAt(text.terms, from - 1);
          before && means(before, 'conditionWord') && before.to === from;
          before = termAt(text.terms, from - 1)
        )
          from = before.from
        if (from < term.from) return slice(text, from, term.to).toLowerCase()
        let to = term.to
        if (isOneOf(text.tokens[to], ':-')) to++
        const start = to
        for (
          let after = termAt(text.terms, to);
          after && means(after, 'conditionWord') && after.from === to;
          after = termAt(text.terms, to)
        )
          to = after.to
        if (to > start) return slice(text, start, to).toLowerCase()
      }
      if (means(term, 'conditionPhrase')) return slice(text, term.from, term.to).toLowerCase()
    }
  }
  return null
}
