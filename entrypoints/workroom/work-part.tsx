/** The page of the work on a kept listing, from what is saved and today's answer. */
import { useMemo, useState } from 'preact/hooks'
import { chosenPlan } from '../../components/judged.ts'
import { useWords } from '../../components/words.tsx'
import { Empty, Headline } from '../../components/workroom/frame.tsx'
import { WorkPage } from '../../components/workroom/work/work-page.tsx'
import type { ArrivalPoint, Paper, SheetShown, WorkShown } from '../../components/workroom/work/work-shown.ts'
import { madeAs } from '../../core/garment/construction.ts'
import type { CutRead } from '../../core/garment/cut.ts'
import { keyPoints } from '../../core/garment/key-points.ts'
import type { PointId } from '../../core/ids/points.ts'
import { languageComing } from '../../core/reading/text/lexicons.ts'
import type { Reckoning, ReckonRequest } from '../../core/reckon.ts'
import { personFor } from '../../core/records/person-for.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { ListingKept, Look, Work } from '../../core/records/schemas.ts'
import { asListed, ownFigures, plansOf, sewnOf } from '../../core/records/work-learnt.ts'
import type { Wording } from '../../core/words/say.ts'
import { besideSeller, inspectionFor, paceTaught, planChange, type SellerSd, sellerTaught } from '../../core/worksheet/arrival.ts'
import { drawTemplates } from '../../core/worksheet/drawing/draw-templates.ts'
import { worksheetFor } from '../../core/worksheet/worksheet.ts'
import type { PageProps } from '../view/page-start.tsx'
import type { Place } from './acts.ts'
import type { Find } from './finds-held.ts'
import { requestNow, useAnswer, useListings, useReadable } from './use-answer.ts'
import { addressOf } from './use-route.ts'
import { workActions } from './work-actions.ts'

export interface WorkPartProps extends Pick<PageProps, 'records'> {
  kept: Wardrobe
  finds: readonly Find[]
  listingId: string
  onError: (error: unknown) => void
  place: Place
  today: string
}

export const workAddress = (listingId: string): string => addressOf('work', listingId)

/** A wardrobe, and the listings that its work teaches by: those measured again or sewn. */
interface Everything extends Wardrobe {
  listings: readonly ListingKept[]
}

export function WorkPart(props: WorkPartProps) {
  const { records, finds, listingId, onError } = props
  const teaching = useMemo(() => finds.filter(({ summary }) => summary.measured || summary.sewn), [finds])
  const ids = teaching.map(({ summary }) => summary.id)
  const listings = useListings(records, ids, onError)
  const own = useListings(records, [listingId], onError)
  // what other work teaches is read on this page too, and may be in other languages
  const isReadable = useReadable(listings, props.kept, onError)
  if (listings === null || own === null || !isReadable) return null
  return <OneWork {...props} kept={{ ...props.kept, listings }} listing={own[0]} wardrobe={props.kept} />
}

function OneWork({
  kept,
  wardrobe,
  listing,
  listingId,
  place,
  today
}: Omit<WorkPartProps, 'kept'> & { kept: Everything; wardrobe: Wardrobe; listing: ListingKept | undefined }) {
  const { t, wording } = useWords()
  const [paper, setPaper] = useState<Paper>(paperHere)
  const answer = useAnswer(listing ?? null, wardrobe, wording)
  const frozen = listing?.work?.sheet ?? null
  const sheet = useMemo(
    () => (frozen === null || listing === undefined ? null : sheetFrom(frozen, paper, wording)),
    [JSON.stringify(frozen), paper, wording.units, wording.language]
  )
  if (listing === undefined) return <Only text={t('work.gone')} listingId={null} />
  const person = personFor(kept.people, listing.personId, kept.settings.personId)
  if (answer === undefined) return null
  if (answer === null) return <Only text={t('work.nothing')} listingId={listingId} />
  const { request, reckoning } = answer
  const shown: WorkShown = {
    title: listing.title,
    wearer: person?.name ?? '',
    kind: request.garment.kind,
    reckoning,
    inspection: inspectionFor(request.garment, wording).map(({ look }) => look.text),
    found: foundBy(listing, kept, reckoning, wording),
    arrival: arrivalOf(listing, kept, request, reckoning.cut),
    tried: request.tried ?? [],
    canTry: reckoning.gaps.filter(({ band, from }) => band !== null && from !== 'inferred').map(({ point }) => point),
    sheet: sheet === null || frozen === null ? null : { ...sheet, isStale: isStale(frozen, request, listing.aim) },
    ticked: listing.work?.ticked ?? {},
    notes: listing.work?.notes ?? {},
    minutes: listing.work?.minutes ?? null,
    result: listing.work?.result ?? [],
    finishedAt: listing.work?.finishedAt ?? null,
    pace: paceShown(kept, listing, person?.means.pace, wording),
    sellers: sellersShown(kept, person?.sellerSdMm, wording)
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
function Only({ text, listingId }: { text: string; listingId: string | null }) {
  const { t } = useWords()
  return (
    <div>
      <Back listingId={listingId} />
      <Headline title={t('workroom.page.work')} />
      <Empty>
        <p>{text}</p>
      </Empty>
    </div>
  )
}

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

/** The request as the listing alone makes it; null, too, until the phrases of a language that came in meanwhile are here. */
function listedRequest(listing: ListingKept, kept: Everything): ReckonRequest | null {
  try {
    return requestNow({ ...listing, corrections: asListed(listing.corrections) }, kept)
  } catch (thrown) {
    if (languageComing(thrown) === null) throw thrown
    return null
  }
}

/** What the seller told, what decides for the kind and was not told, and what one's own tape found besides. */
function arrivalOf(listing: ListingKept, kept: Everything, { garment }: ReckonRequest, cut: CutRead): ArrivalPoint[] {
  const told = listedRequest(listing, kept)?.garment.measures ?? []
  const seller = new Map(told.flatMap(({ point, mm, source }) => (source === 'seller' ? [[point, mm] as const] : [])))
  const own = new Map(ownFigures(listing.corrections).map(({ point, mm }) => [point, mm]))
  return [...new Set([...seller.keys(), ...keyPoints(garment.kind, cut), ...own.keys()])].map((point) => ({
    point,
    sellerMm: seller.get(point) ?? null,
    ownMm: own.get(point) ?? null
  }))
}

/** Figures further off than two tapes usually are, and what one's own tape did to the plan. */
function foundBy(listing: ListingKept, kept: Everything, now: Reckoning, wording: Wording): string[] {
  const before = listedRequest(listing, kept)
  if (before === null || asListed(listing.corrections).length === listing.corrections.length) return []
  const beside = besideSeller(before.garment, ownFigures(listing.corrections), wording).filter(({ isBeyond }) => isBeyond)
  const was = chosenPlan({ reckoning: plansOf(before, wording.units, wording.language), aim: listing.aim })
  const is = chosenPlan({ reckoning: now, aim: listing.aim })
  const { jobs } = planChange(was ?? undefined, is ?? undefined, wording, before.means.markMm)
  return [...beside, ...jobs].map(({ says }) => says.text)
}

const SAME_PACE = 0.005
function paceShown(kept: Everything, { personId }: ListingKept, used: number | undefined, { units }: Wording): WorkShown['pace'] {
  const theirs = kept.listings.filter((one) => one.personId === personId)
  const sewn = sewnOf(theirs, (request, choice) => chosenPlan({ reckoning: plansOf(request, units), aim: choice }))
  const lesson = paceTaught(sewn, used)
  if (lesson === null) return null
  const pace = Math.round(lesson.is * 100) / 100
  const { from, own, table } = lesson
  return { n: from, own, table, pace, isUsed: Math.abs(pace - (used ?? 1)) < SAME_PACE }
}

/** Over every kept listing, whoever it is for: it says something of sellers, not of bodies. */
function sellersShown(kept: Everything, used: SellerSd | undefined, wording: Wording): WorkShown['sellers'] {
  const beside = kept.listings.flatMap((listing) => {
    const own = ownFigures(listing.corrections)
    const before = own.length === 0 ? null : listedRequest(listing, kept)
    return before === null ? [] : besideSeller(before.garment, own, wording)
  })
  const lesson = sellerTaught(beside)
  return lesson === null ? null : { n: lesson.from, sd: lesson.is, isUsed: JSON.stringify(lesson.is) === JSON.stringify(used) }
}
