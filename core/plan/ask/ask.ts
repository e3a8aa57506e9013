/**
 * What is worth asking: the expected value of knowing one thing (EVPPI) — how much better the decision to buy or leave gets — from the
 * same draws as the outlook. Buying is worth `gain` where it works out and `-loss` where it does not; leaving is worth nothing.
 */
import type { Made } from '../../garment/garment-input.ts'
import type { PointId } from '../../ids/points.ts'
import type { BodyMeasureId } from '../../wearer/body.ts'
import { hasMessage, say, type Wording } from '../../words/say.ts'
import type { Outlook } from '../outlook/outlook.ts'
import type { Answerable } from '../outlook/untold-questions.ts'
import { wayOf } from '../way.ts'
import type { ClothAnswers } from './cloth-answers.ts'

export interface Ask {
  point?: PointId
  about?: keyof Made | 'stretch' | 'fibre'
  /** Told, but so near an edge that a second look at the tape is worth it. */
  again?: true
  /** Not the seller's to answer: a measure of the person's own. */
  body?: BodyMeasureId
  worth: number
  unit: 'money' | 'score'
  question: string
  /** The figures that would suit, on the seller's tape, as a sentence. */
  suits?: string
  /** Of the first question: why this is asked and not what is known to be wrong; not given where nothing else is. */
  why?: string
}

export interface Stakes {
  gain: number
  loss: number
  unit: 'money' | 'score'
}
/** Without money: a garment that works out counts 1, one that does not costs 1. */
export const PLAIN_STAKES: Stakes = { gain: 1, loss: 1, unit: 'score' }

/** Draws on either side that the expectation at one draw is smoothed over. */
const WINDOW = 20
/** So many times the spread that chance alone makes is taken for chance (from memory). */
const CERTAINTY = 1.5
const WORTH_SAYING = 0.005
/** Past this chance nothing is asked for its own sake (from memory). */
const SURE = 0.85

/** Draws are made once, so their order is too. */
const orders = new WeakMap<Float64Array, Uint16Array>()
function orderOf(z: Float64Array): Uint16Array {
  const known = orders.get(z)
  if (known !== undefined) return known
  const order = ordered(z)
  orders.set(z, order)
  return order
}

/** Drawers per value: about one value in each, so that little is left to put in order. */
const DRAWERS = 2

/** Places by rising value, ties in their own order: first into drawers by value, then each value past those before it that are larger. */
function ordered(z: Float64Array): Uint16Array {
  const count = z.length
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const one of z) {
    if (one < low) low = one
    if (one > high) high = one
  }
  const drawers = DRAWERS * count
  const scale = high > low ? (drawers - 1) / (high - low) : 0
  const ends = new Uint16Array(drawers + 1)
  const drawerOf = new Uint16Array(count)
  for (let i = 0; i < count; i++) {
    const drawer = Math.floor(((z[i] as number) - low) * scale)
    drawerOf[i] = drawer
    ends[drawer + 1] = (ends[drawer + 1] as number) + 1
  }
  for (let drawer = 0; drawer < drawers; drawer++) ends[drawer + 1] = (ends[drawer + 1] as number) + (ends[drawer] as number)
  const order = new Uint16Array(count)
  for (let i = 0; i < count; i++) {
    const drawer = drawerOf[i] as number
    const place = ends[drawer] as number
    order[place] = i
    ends[drawer] = place + 1
  }
  for (let place = 1; place < count; place++) {
    const mine = order[place] as number
    const value = z[mine] as number
    let to = place
    for (; to > 0 && (z[order[to - 1] as number] as number) > value; to--) order[to] = order[to - 1] as number
    order[to] = mine
  }
  return order
}

/**
 * EVPPI from draws: the mean over answers z of the better of buying and leaving (0), less the better of both as things stand. What is expected at
 * an answer is the mean over its neighbours, drawn in towards the mean of all by as much of their spread as chance alone would make: without
 * that, every answer looks worth something where the decision hangs in the balance.
 */
export function valueOfKnowing(z: Float64Array, utility: readonly number[]): number {
  const order = orderOf(z)
  const draws = order.length
  const upTo = new Float64Array(draws + 1)
  for (let place = 0; place < draws; place++) upTo[place + 1] = (upTo[place] ?? 0) + (utility[order[place] ?? 0] ?? 0)
  const all = (upTo[draws] ?? 0) / draws
  const expected = new Float64Array(draws)
  let spread = 0
  let within = 0
  for (let place = 0; place < draws; place++) {
    const from = Math.max(0, place - WINDOW)
    const to = Math.min(draws, place + WINDOW + 1)
    const mean = ((upTo[to] ?? 0) - (upTo[from] ?? 0)) / (to - from)
    expected[place] = mean
    spread += (mean - all) ** 2
    within += ((utility[order[place] ?? 0] ?? 0) - mean) ** 2
  }
  const byChance = within / (2 * WINDOW + 1)
  const kept = spread > 0 ? Math.sqrt(Math.max(0, 1 - (CERTAINTY * byChance) / spread)) : 0
  if (kept === 0) return 0
  let known = 0
  for (const mean of expected) known += Math.max(0, all + kept * (mean - all))
  return Math.max(0, known / draws - Math.max(0, all))
}

/** Of what is asked: the untold points and body measures that decide, each with what would suit; `key`: it decides for this kind. */
export type Suits = readonly { point?: PointId; body?: BodyMeasureId; key?: boolean; suits: string }[]

/**
 * First the untold points that decide, then what else is not told, a told figure again only where it is worth more, one's own body last. Nothing
 * where it is all but sure.
 */
export function asksFrom(outlook: Outlook, cloth: () => readonly ClothAnswers[], suits: Suits, stakes: Stakes, wording: Wording): Ask[] {
  const least = WORTH_SAYING * (stakes.gain + stakes.loss)
  const { works, likely } = outlook
  // where nothing works out no answer makes it
  if (likely > SURE) return []
  const uncertain = likely === 0 ? [] : outlook.uncertain()
  const suitsOf = (what: Answerable['what']): string | undefined =>
    suits.find(({ point, body }) => ('point' in what && what.point === point) || ('body' in what && what.body === body))?.suits
  const decides = (what: Answerable['what']): boolean => 'point' in what && what.again !== true && suitsOf(what) !== undefined
  const isKey = (what: Answerable['what']): boolean =>
    'point' in what && suits.some(({ point, key }) => point === what.point && key === true)
  const rankOf = (what: Answerable['what']): number => (decides(what) ? (isKey(what) ? 0 : 1) : 'body' in what ? 3 : 2)
  const inOrder = (one: Valued, other: Valued): number =>
    rankOf(one.what) - rankOf(other.what) || worthBeside(other, least) - worthBeside(one, least)
  const toAsk = ({ what, worth }: Valued): Ask => {
    const good = suitsOf(what)
    return { ...what, worth, unit: stakes.unit, question: questionOf(what, wording), ...(good === undefined ? {} : { suits: good }) }
  }
  const asked = [...valued(uncertain, works, stakes), ...valuedCloth(cloth(), stakes)].filter(
    ({ what, worth }) => worth > least || decides(what)
  )
  if (asked.some(({ worth }) => worth > least)) return asked.sort(inOrder).map(toAsk)
  // nothing alone would change the decision: what would at the price where it hangs in the balance comes first, and is worth nothing at this one
  return valued(uncertain, works, inTheBalance(likely, stakes))
    .filter(({ what, worth }) => worth > least || decides(what))
    .sort(inOrder)
    .map(({ what }) => toAsk({ what, worth: 0 }))
}

/** A second look has to be worth more by what the draws can show. */
const worthBeside = ({ what, worth }: Valued, least: number): number => ('again' in what && what.again ? worth - 2 * least : worth)

interface Valued {
  what: Answerable['what']
  worth: number
}

function valued(uncertain: readonly Answerable[], works: readonly boolean[], { gain, loss }: Stakes): Valued[] {
  return uncertain.map(({ what, z, wouldFit }) => {
    const utility = works.map((one, i) => (one && wouldFit?.[i] !== false ? gain : -loss))
    return { what, worth: utility.every((one) => one === utility[0]) ? 0 : valueOfKnowing(z, utility) }
  })
}

/** A few answers, each reckoned through by itself. */
const valuedCloth = (cloth: readonly ClothAnswers[], { gain, loss }: Stakes): { what: Answerable['what']; worth: number }[] =>
  cloth.map(({ about, answers }) => {
    const worths = answers.map(({ share, likely }) => ({ share, buying: likely * gain - (1 - likely) * loss }))
    const known = worths.reduce((sum, { share, buying }) => sum + share * Math.max(0, buying), 0)
    const blind = worths.reduce((sum, { share, buying }) => sum + share * buying, 0)
    return { what: { about }, worth: Math.max(0, known - Math.max(0, blind)) }
  })

/** As much at stake in all, shared so that buying is worth nothing as things stand. */
function inTheBalance(likely: number, { gain, loss, unit }: Stakes): Stakes {
  return { gain: (1 - likely) * (gain + loss), loss: likely * (gain + loss), unit }
}

type Asked = { point: PointId; again?: true | undefined } | { about: NonNullable<Ask['about']> } | { body: BodyMeasureId }
export function questionOf(what: Asked, wording: Wording): string {
  if ('point' in what) {
    const question = questionFor(what.point, wording)
    return what.again === true ? say({ code: 'ask.again', values: { question } }, wording) : question
  }
  return 'about' in what
    ? say({ code: `ask.about.${what.about}`, values: { span: 100 } }, wording)
    : say({ code: 'ask.body', values: { body: what.body } }, wording)
}

/**
 * The same questions; the first says why it is asked, where it is about a point that is not stated while another is stated and wrong (`wrong`, + too
 * big): people wonder about that.
 */
export function withWhy(asks: readonly Ask[], wrong: { point: PointId; mm: number } | undefined, wording: Wording): Ask[] {
  const [first, ...rest] = asks
  if (first?.point === undefined || first.again === true || wrong === undefined || wrong.point === first.point) return [...asks]
  const why = say(
    { code: 'ask.why-not-wrong', values: { wrong: wrong.point, way: wayOf(wrong.mm, wrong.point) }, point: first.point },
    wording
  )
  return [{ ...first, why }, ...rest]
}

/** A ready, polite question about one point. */
export const questionFor = (point: PointId, wording: Wording): string =>
  hasMessage(`ask.${point}`, wording.language)
    ? say({ code: `ask.${point}`, values: { hipDepth: 200 }, point }, wording)
    : say({ code: 'ask.any', values: {}, point }, wording)
