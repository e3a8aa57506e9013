/** The page of the work on a kept listing, from what is saved and today's answer. */
import { useMemo, useState } from 'preact/hooks'
import { chosenPlan } from '../../components/judged.ts'
import { useWords } from '../../components/words.tsx'
import { WorkPage } from '../../components/workroom/work/work-page.tsx'
import type { ArrivalPoint, Paper, SheetShown, WorkShown } from '../../components/workroom/work/work-shown.ts'
import { madeAs } from '../../core/garment/construction.ts'
import { keyPoints } from '../../core/garment/key-points.ts'
import type { PointId } from '../../core/ids/points.ts'
import type { ReckonRequest } from '../../core/reckon.ts'
import { personFor } from '../../core/records/owned.ts'
import type { ListingKept, Look, Work } from '../../core/records/schemas.ts'
import { asListed, isOwnFigure, type MeasuredAgain, paceFrom, plansOf, sellersOff } from '../../core/records/work-learnt.ts'
import type { Wording } from '../../core/words/say.ts'
import { drawTemplates } from '../../core/worksheet/drawing/draw-templates.ts'
import { worksheetFor } from '../../core/worksheet/worksheet.ts'
import type { Place } from './acts.ts'
import type { Everything } from './everything.ts'
import { type AnswerNow, requestNow } from './use-answers.ts'
import { workActions } from './work-actions.ts'

export interface WorkPartProps {
  kept: Everything
  answers: ReadonlyMap<string, AnswerNow>
  listingId: string
  place: Place
  today: string
}

export const workAddress = (listingId: string): string => `#work/${encodeURIComponent(listingId)}`

export function WorkPart({ kept, answers, listingId, place, today }: WorkPartProps) {
  const { t, wording } = useWords()
  const [paper, setPaper] = useState<Paper>(paperHere)
  const listing = kept.listings.find(({ id }) => id === listingId)
  const answer = answers.get(listingId) ?? null
  const frozen = listing?.work?.sheet ?? null
  const sheet = useMemo(
    () => (frozen === null || listing === undefined ? null : sheetFrom(frozen, paper, wording)),
    [JSON.stringify(frozen), paper, wording.units, wording.language]
  )
  if (listing === undefined) return <Only text={t('work.gone')} listingId={null} />
  const person = personFor(kept.people, listing.personId, kept.settings.personId)
  if (answer === null) return <Only text={t('work.nothing')} listingId={listingId} />
  const { request, reckoning } = answer
  const shown: WorkShown = {
    title: listing.title,
    wearer: person?.name ?? '',
    kind: request.garment.kind,
    reckoning,
    isTailored: request.garment.made?.tailored ?? request.garment.kind === 'jacket',
    arrival: arrivalOf(listing, kept, reckoning.cut),
    tried: request.tried ?? [],
    canTry: reckoning.gaps.filter(({ band, from }) => band !== null && from !== 'inferred').map(({ point }) => point),
    sheet: sheet === null || frozen === null ? null : { ...sheet, isStale: isStale(frozen, request, listing.aim) },
    ticked: listing.work?.ticked ?? {},
    notes: listing.work?.notes ?? {},
    minutes: listing.work?.minutes ?? null,
    result: listing.work?.result ?? [],
    finishedAt: listing.work?.finishedAt ?? null,
    pace: paceShown(kept, listing, person?.means.pace ?? 1, wording),
    sellers: sellersOff(kept.listings.flatMap((one) => measuredAgain(one, kept)))
  }
  return (
    <div>
      <Back listingId={listingId} />
      <WorkPage
        work={shown}
        paper={paper}
        today={today}
        {...workActions(place, { listingId, request, plan: listing.aim, person })}
        onPaper={setPaper}
      />
    </div>
  )
}

function Back({ listingId }: { listingId: string | null }) {
  const { t } = useWords()
  return (
    <p class="row noprint wr-to-others">
      <a href="#wishlist">{t('wishlist.back')}</a>
      {listingId !== null && <a href={`#wishlist/${encodeURIComponent(listingId)}`}>{t('work.listing')}</a>}
    </p>
  )
}
const Only = ({ text, listingId }: { text: string; listingId: string | null }) => (
  <div>
    <Back listingId={listingId} />
    <p>{text}</p>
  </div>
)

/** The paper of this place: letter in North America, A4 elsewhere. */
function paperHere(): Paper {
  const { region } = new Intl.Locale(navigator.language || 'en-GB').maximize()
  return ['US', 'CA', 'MX', 'PH'].includes(region ?? '') ? 'Letter' : 'A4'
}

type Frozen = NonNullable<Work['sheet']>

function sheetFrom({ request, plan: choice }: Frozen, paper: Paper, { units, language }: Wording): Omit<SheetShown, 'isStale'> | null {
  const reckoning = plansOf(request, units, language)
  const plan = chosenPlan({ reckoning, aim: choice })
  if (plan === null) return null
  const changed = new Set(plan.alterations.flatMap(({ amounts }) => Object.keys(amounts) as PointId[]))
  return {
    sheet: worksheetFor(plan, request, paper, units, language),
    templates: drawTemplates(plan, request, paper, units, language),
    plan,
    points: Object.fromEntries(reckoning.gaps.map(({ point, garmentMm }) => [point, garmentMm])),
    made: madeAs(request.garment.kind, request.garment.made).made,
    level: plan.level,
    minutes: plan.minutes,
    after: plan.after.filter(({ point }) => changed.has(point))
  }
}

const isStale = (frozen: Frozen, request: ReckonRequest, choice: Look['aim']): boolean =>
  JSON.stringify([frozen.request, frozen.plan]) !== JSON.stringify([request, choice])

const toldMm = (listing: ListingKept, kept: Everything): Map<PointId, number> => {
  const told = requestNow({ ...listing, corrections: asListed(listing.corrections) }, kept)?.garment.measures ?? []
  return new Map(told.flatMap(({ point, mm, source }) => (source === 'seller' ? [[point, mm] as const] : [])))
}

/** What the seller told, what decides for the kind and was not told, and what one's own tape found besides. */
function arrivalOf(listing: ListingKept, kept: Everything, cut: Parameters<typeof keyPoints>[1]): ArrivalPoint[] {
  const seller = toldMm(listing, kept)
  const own = new Map(listing.corrections.filter(isOwnFigure).map(({ add, mm }) => [add, mm]))
  const kind = requestNow(listing, kept)?.garment.kind
  const keys = kind === undefined ? [] : keyPoints(kind, cut)
  return [...new Set([...seller.keys(), ...keys, ...own.keys()])].map((point) => ({
    point,
    sellerMm: seller.get(point) ?? null,
    ownMm: own.get(point) ?? null
  }))
}

function measuredAgain(listing: ListingKept, kept: Everything): MeasuredAgain[] {
  const own = listing.corrections.filter(isOwnFigure)
  if (own.length === 0) return []
  const seller = toldMm(listing, kept)
  return own.flatMap(({ add: point, mm }) => {
    const sellerMm = seller.get(point)
    return sellerMm === undefined ? [] : [{ point, sellerMm, ownMm: mm }]
  })
}

function paceShown(kept: Everything, { personId }: ListingKept, used: number, { units }: Wording): WorkShown['pace'] {
  const theirs = kept.listings.filter((one) => one.personId === personId)
  const learnt = paceFrom(theirs, (request, choice) => chosenPlan({ reckoning: plansOf(request, units), aim: choice }))
  return learnt === null ? null : { ...learnt, isUsed: Math.abs(learnt.pace - used) < 0.005 }
}
