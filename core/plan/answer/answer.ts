/** Everything found out, as the answer a page shows. */
import type { Offer } from '../../alterations/alterations-for.ts'
import { assumptionsOf } from '../../garment/assumptions.ts'
import { mendingOf } from '../../garment/condition.ts'
import { contradictions } from '../../garment/contradictions.ts'
import type { CutRead } from '../../garment/cut.ts'
import type { Garment, PointTaken } from '../../garment/garment-as-worn.ts'
import type { GarmentInput } from '../../garment/garment-input.ts'
import type { Issue } from '../../garment/issue.ts'
import type { PointId } from '../../ids/points.ts'
import type { Verdict } from '../../ids/verdicts.ts'
import { once } from '../../once.ts'
import type { Wish } from '../../wearer/body.ts'
import type { Band, Gap } from '../../wearer/gaps.ts'
import type { Target, Want } from '../../wearer/want.ts'
import type { Reason } from '../../words/reason.ts'
import { said, say, type Wording } from '../../words/say.ts'
import { type Ask, asksFrom, questionFor, type Suits, withWhy } from '../ask/ask.ts'
import type { ClothAnswers } from '../ask/cloth-answers.ts'
import type { Condition } from '../conditions/conditions-of.ts'
import { LIKELY, missingFor, untoldKeys } from '../keys.ts'
import type { Means } from '../means.ts'
import type { Outlook } from '../outlook/outlook.ts'
import type { Misfit, Plan } from '../plan.ts'
import { distinct, type Plans } from '../plan-alterations.ts'
import { NOTICED_MM } from '../rounding.ts'
import { cautionsFor } from './cautions.ts'
import { type ConditionShown, conditionShown, suitsText } from './conditions-said.ts'
import { conversionsFor } from './conversions.ts'
import { type Doubt, doubtsOf } from './doubts-said.ts'
import { type NotTaken, notTaken } from './not-taken.ts'
import { reasonsFor } from './reasons.ts'
import { type Judged, judge, misfitAsItIs, mistold, staysWrong } from './verdict.ts'
import { mendingCost, stakesOf, type Worth, worthOf } from './worth.ts'
import type { Standing } from './would-change.ts'

/** What is wanted at a point. A null edge: the cut is free there; a null ideal: nothing is aimed for. */
export interface BandShown {
  least: number | null
  ideal: number | null
  most: number | null
}

export interface GapShown {
  point: PointId
  /** The tape today. */
  garmentMm: number
  from: PointTaken['from']
  sdMm: number
  /** null: not judged. */
  band: BandShown | null
  /** + too big, − too small, 0 inside. */
  gapMm: number
  because: Reason[]
}

export interface Reckoning {
  verdict: Verdict
  /** The cut as told, seen in the figures on this body, or assumed by kind. */
  cut: CutRead
  /** Key points of this kind and cut are not told: the verdict is over what is told. */
  asFarAsTold: boolean
  /** What the untold must be, so that it works out. */
  conditions: ConditionShown[]
  /** The chance if every condition holds; null where there is none. */
  chanceIf: number | null
  /** It lies whole in another fit than the one asked: it wears as that. */
  wearsAs: Wish | null
  because: Reason[]
  /** Where the chance is low: the points that cost most of it, most first. */
  doubts: Doubt[]
  gaps: GapShown[]
  /** Wanted, but neither told nor worked out. */
  untold: { point: PointId; band: BandShown }[]
  asItIs: { misfit: Misfit[]; chance: number | null }
  plans: Plan[]
  /** Other ways to move what is wrong, and why the advised plan does not take them. */
  notTaken: NotTaken[]
  chance: number | null
  ask: Ask[]
  worth: Worth | null
  cautions: string[]
  /** What is taken for granted of cloth and construction, and how to look for it. */
  assumed: Reason[]
  /** Changes of kind that would cut away all that stays wrong: offered apart, never part of a plan. */
  conversions: Reason[]
  issues: Issue[]
}

/**
 * Everything that is computed for a request, before it is put into an answer. What not every verdict looks at is worked out when it is asked for:
 * nobody plans for a garment that is right as it is.
 */
export interface ReckoningInProgress {
  input: GarmentInput
  garment: Garment
  target: Target
  gaps: readonly Gap[]
  offer: () => Offer
  plans: () => Plans
  means: Means
  outlook: Outlook | null
  conditions: readonly Condition[]
  clothAnswers: () => readonly ClothAnswers[]
  markMm: number
  wearsAs: () => Wish | null
}

/** The verdict alone, and what the advised plan would leave wrong. */
export function standingFrom(computed: ReckoningInProgress): Standing {
  const { verdict, advised } = judge(judgedFrom(computed))
  return { verdict, wrong: advised?.misfit ?? [] }
}

/** What the verdict looks at. */
function judgedFrom({ garment, gaps, plans, means, markMm, outlook, conditions, wearsAs }: ReckoningInProgress): Judged {
  const chance = { own: outlook?.own ?? null, tailor: outlook?.tailor ?? null }
  const chanceIf = once(() => (outlook === null || conditions.length === 0 ? chance : outlook.ifTheyHold(conditions)))
  return {
    garment,
    gaps,
    get plans() {
      return plans()
    },
    means,
    markMm,
    wearsAs: once(wearsAs),
    chance,
    chanceIf
  }
}

export function answerFrom(computed: ReckoningInProgress, wording: Wording): Reckoning {
  const { input, garment, target, gaps, offer, plans, means, outlook, conditions, clothAnswers, markMm } = computed
  const judged = judgedFrom(computed)
  const { chance } = judged
  const { verdict, advised } = judge(judged)
  const canJudge = verdict !== 'too-little-told'
  const slip = canJudge ? null : mistold(judged)
  const chanceOf = (plan: Plan | undefined): number | null =>
    plan === undefined ? (outlook?.asItIs ?? null) : plan.aim === 'tailor' ? chance.tailor : chance.own
  const shown = advised === undefined ? [] : worthShowing(advised, plans(), means)
  // nobody follows the plan of what is to be left: its work is not counted
  const followed = verdict === 'leave-it' ? undefined : advised
  const worth = worthOf(
    input.price,
    followed === undefined ? mendingCost(input, means) : followed.cost,
    means,
    canJudge ? chanceOf(followed) : null,
    verdict === 'wears-as-is' ? chance.own : null
  )
  const shownConditions = conditions.map((one) => conditionShown(one, wording))
  const keys = untoldKeys(garment, target)
  const suits = conditions.map((one) => ({
    ...one,
    suits: suitsText(one, wording),
    key: one.point !== undefined && keys.includes(one.point)
  }))
  const untoldKey = canJudge ? keys : []
  const chanceIf = () => (advised?.aim === 'tailor' ? judged.chanceIf().tailor : judged.chanceIf().own)
  const low = canJudge && verdict !== 'leave-it' ? chanceOf(advised) : null
  const hands = advised === undefined ? 'asItIs' : advised.aim === 'tailor' ? 'tailor' : 'own'
  const doubts = doubtsOf({ outlook, chance: low, hands, gaps, wrong: advised === undefined ? [] : staysWrong(advised, judged) }, wording)
  const wears = canJudge && verdict !== 'leave-it' ? judged.wearsAs() : null
  return {
    verdict,
    cut: garment.cut,
    asFarAsTold: keys.length > 0 || (canJudge && verdict !== 'leave-it' && (chanceOf(advised) ?? 1) < LIKELY),
    conditions: shownConditions,
    chanceIf: canJudge && conditions.length > 0 ? chanceIf() : null,
    wearsAs: wears,
    because: reasonsFor(
      {
        judged,
        verdict,
        advised,
        slip,
        tailorCould: couldTailor(judged, verdict, advised),
        priced: input.price !== undefined,
        mendingMinutes: mendingOf(input).minutes,
        chanceAsItIs: chanceOf(undefined),
        wearsAs: wears,
        untoldKey,
        conditions: shownConditions,
        doubts
      },
      wording
    ),
    doubts,
    gaps: gaps.map((gap) => gapShown(gap, wording)),
    untold: untold(garment, target),
    asItIs: {
      misfit: misfitAsItIs(gaps, ({ point, gapMm }) => say({ code: 'misfit.as-it-is', values: { mm: Math.abs(gapMm) }, point }, wording)),
      chance: chanceOf(undefined)
    },
    plans: shown.map((plan) => ({ ...plan, chance: chanceOf(plan) })),
    notTaken: advised === undefined ? [] : notTaken({ garment, gaps, ...offer(), means, markMm }, advised, wording),
    chance: canJudge ? chanceOf(advised) : null,
    ask: !canJudge
      ? askFirst(slip ?? missingFor(garment, gaps)?.[0], slip, keys, suits, wording)
      : outlook === null
        ? []
        : withWhy(asksFrom(outlook, clothAnswers, suits, stakesOf(input.price, worth), wording), mostWrong(gaps), wording),
    worth,
    cautions: cautionsFor(garment, input, advised).map((caution) => say(caution, wording)),
    assumed: assumptionsOf(garment).map((one) => said(one, wording)),
    conversions: conversionsFor(garment.kind, advised?.misfit ?? [], markMm).map((one) => said(one, wording)),
    issues: contradictions(garment, wording)
  }
}

/** There is no tailor at hand, and one would leave less wrong. */
const couldTailor = ({ means, plans }: Judged, verdict: Verdict, advised: Plan | undefined): boolean =>
  !means.tailor &&
  verdict !== 'alters-to-fit' &&
  advised !== undefined &&
  (plans.tailor?.misfit.length ?? Number.POSITIVE_INFINITY) < advised.misfit.length

/** The stated point that lies furthest outside; undefined: none does by more than is noticed. */
const mostWrong = (gaps: readonly Gap[]): { point: PointId; mm: number } | undefined =>
  gaps
    .filter(({ judged, gapMm }) => judged && Math.abs(gapMm) >= NOTICED_MM)
    .map(({ point, gapMm }) => ({ point, mm: gapMm }))
    .sort((one, other) => Math.abs(other.mm) - Math.abs(one.mm))[0]

/** The advised plan first, then every other that this person could have. */
const worthShowing = (advised: Plan, { own, tailor, rescue }: Plans, means: Means): Plan[] =>
  distinct([advised, ...own, ...(means.tailor && tailor !== undefined ? [tailor] : []), ...(rescue === undefined ? [] : [rescue])])

const gapShown = ({ point, garmentMm, from, sdMm, band, gapMm, because, want }: Gap, wording: Wording): GapShown => ({
  point,
  garmentMm,
  from,
  sdMm,
  band: band === null || want === undefined ? null : bandShown(want, band),
  gapMm,
  because: because.map((one) => said(one, wording))
})

/** An edge that is nought or free binds nothing. */
const bandShown = ({ ideal, freeAbove }: Want, band: Band): BandShown => ({
  least: band.least <= 0 ? null : band.least,
  ideal: ideal === null ? null : band.ideal,
  most: freeAbove === true ? null : band.most
})

const untold = (garment: Garment, target: Target): Reckoning['untold'] =>
  [...target].flatMap(([point, want]) =>
    garment.points.has(point) || want.ideal === null
      ? []
      : [{ point, band: bandShown(want, { least: want.least, ideal: want.ideal, most: want.most }) }]
  )

/** What nothing can be judged without is asked first, or what may be a slip; then what else decides for this kind, whatever it is worth. */
const askFirst = (first: PointId | undefined, slip: PointId | null, keys: readonly PointId[], suits: Suits, wording: Wording): Ask[] =>
  [...new Set([...(first === undefined ? [] : [first]), ...keys])].map((point): Ask => {
    const good = suits.find((one) => one.point === point)?.suits
    return {
      point,
      worth: 1,
      unit: 'score',
      question: questionFor(point, wording),
      ...(good === undefined ? {} : { suits: good }),
      ...(point === slip ? { why: say({ code: 'ask.why-slip', values: {}, point }, wording) } : {})
    }
  })
