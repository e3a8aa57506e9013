/** The workroom: which part is shown, for whom, and what was just done. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { WordsOf } from '../../components/words.tsx'
import { AlterationsPage } from '../../components/workroom/alterations/alterations-page.tsx'
import type { Drafts } from '../../components/workroom/body/body-page.tsx'
import { DraftsHeld } from '../../components/workroom/drafts.tsx'
import type { FirstDraft } from '../../components/workroom/first/first-draft.ts'
import { DoneBar, Frame } from '../../components/workroom/frame.tsx'
import type { ListingShown } from '../../components/workroom/shown.ts'
import { WardrobePage } from '../../components/workroom/wardrobe/wardrobe-page.tsx'
import { WishlistPage } from '../../components/workroom/wishlist/wishlist-page.tsx'
import { personFor, setSettings } from '../../core/records/owned.ts'
import type { ListingKept } from '../../core/records/schemas.ts'
import { say } from '../../core/words/say.ts'
import { platform } from '../platform/extension.ts'
import type { PageProps } from '../view/page-start.tsx'
import { allLooks, useSaved } from '../view/use-records.ts'
import { useTheme } from '../view/use-theme.ts'
import { BackupPart } from './backup-part.tsx'
import { BodyPart } from './body-part.tsx'
import { everything } from './everything.ts'
import { FirstPart } from './first-part.tsx'
import { LookedAt, lastRead } from './looked-at.tsx'
import { OpenListing } from './open-listing.tsx'
import { isSample } from './sample.ts'
import { type AnswerNow, useAnswers } from './use-answers.ts'
import { useRoute } from './use-route.ts'
import { type Done, workroomActions } from './workroom-actions.ts'

export function Workroom({ records, stamp }: PageProps) {
  const [failure, setFailure] = useState<unknown>(null)
  const [done, setDone] = useState<Done | null>(null)
  /** The first visit was left for the full form. */
  const [skipped, setSkipped] = useState<FirstDraft | null>(null)
  /** What is half typed in the forms, by person. */
  const held = useRef(new Map<string, Map<string, unknown>>())
  /** What was typed into a body's fields and not yet taken, by person. */
  const [drafts, setDrafts] = useState<Readonly<Record<string, Drafts>>>({})
  const kept = useSaved(records, everything, setFailure)
  const { page, open } = useRoute()
  const person = kept === null ? null : personFor(kept.people, null, kept.settings.personId)
  const wording = useMemo(
    () => ({ units: person?.units ?? ('cm' as const), currency: person?.currency || undefined }),
    [person?.units, person?.currency]
  )
  const answers = useAnswers(kept, wording)
  const actions = useMemo(() => workroomActions(records, stamp, setDone), [records, stamp])
  const t = (code: string, values = {}) => say({ code, values }, wording)

  useTheme(kept?.settings.theme ?? 'system')
  useEffect(() => {
    document.title = t('workroom.title', { page: t(`workroom.page.${page}`) })
    // what can be taken back stays in reach; a mere message belongs to the page it was said on
    setDone((said) => (said?.undo == null ? null : said))
  }, [page])

  if (failure !== null) return <p class="wr-alone">{t('workroom.failed', { detail: String(failure) })}</p>
  if (kept === null) return <p class="wr-alone">{t('workroom.loading')}</p>
  const isNobody = kept.people.length === 0 && kept.listings.length === 0 && skipped === null
  const isFirst = page === 'first' || (isNobody && page !== 'backup' && page !== 'alterations')
  const drafted = held.current.get(person?.id ?? '') ?? new Map<string, unknown>()
  held.current.set(person?.id ?? '', drafted)
  const mine = <T extends { personId: string }>(rows: readonly T[]): T[] => rows.filter((row) => row.personId === person?.id)
  const listings = kept.listings.map((listing) => shown(listing, answers.get(listing.id) ?? null))
  const titleOf = (id: string): string => listings.find((listing) => listing.id === id)?.title || t('wishlist.untitled')
  const nameOf = (id: string): string => kept.garments.find((garment) => garment.id === id)?.name ?? ''

  return (
    <WordsOf.Provider value={wording}>
      <DraftsHeld.Provider value={drafted}>
        <Frame
          page={page}
          people={kept.people}
          personId={person?.id ?? null}
          onPerson={(id) => void setSettings(records, { personId: id }, stamp())}
          place={t(`workroom.place.${platform.where}`, { address: location.host })}
        >
          {isFirst && (
            <FirstPart
              actions={actions}
              today={localDate()}
              begin={page === 'wardrobe' ? 'garment' : 'what'}
              onSkip={(draft) => {
                setSkipped(draft)
                location.hash = 'body'
              }}
              onSample={() =>
                void actions.addSample(localDate()).then(() => {
                  location.hash = 'wishlist'
                })
              }
              onSaved={() =>
                void allLooks(records).then((looks) => {
                  location.hash = lastRead(looks) === null ? 'wishlist' : 'look'
                })
              }
            />
          )}
          {kept.people.some(isSample) && (
            <p class="note wr-sample">
              {t('sample.here')} {kept.people.every(isSample) && page !== 'first' && <a href="#first">{t('sample.own')}</a>}
              <button type="button" class="btn small" onClick={() => void actions.removeSample()}>
                {t('sample.remove')}
              </button>
            </p>
          )}
          {!isFirst && page === 'wishlist' && open !== null && (
            <OpenListing key={open} records={records} stamp={stamp} kept={kept} listingId={open} onError={setFailure} />
          )}
          {!isFirst && page === 'wishlist' && open === null && (
            <WishlistPage
              listings={listings}
              currency={wording.currency ?? ''}
              shop={platform.where === 'companion'}
              ready={mine(kept.measures).length + mine(kept.garments).length > 0}
              onOpen={(id) => {
                location.hash = `wishlist/${encodeURIComponent(id)}`
              }}
              onEdit={(id, fields) => void actions.editListing(id, fields, titleOf(id))}
              onRemove={(id) => void actions.removeListing(id, titleOf(id))}
            />
          )}
          {!isFirst && page === 'look' && <LookedAt records={records} stamp={stamp} kept={kept} onError={setFailure} />}
          {page === 'alterations' && <AlterationsPage />}
          {page === 'wardrobe' && person !== null && (
            <WardrobePage
              key={person.id}
              name={person.name}
              garments={mine(kept.garments)}
              onAdd={(garment) => void actions.addGarment(person.id, garment)}
              onEdit={(id, garment) => void actions.editGarment(id, garment)}
              onRemove={(id) => void actions.removeGarment(id, nameOf(id))}
              onFavourite={(id, on) => void actions.favourite(id, nameOf(id), on)}
            />
          )}
          {!isFirst && (page === 'body' || (page === 'wardrobe' && person === null)) && (
            <BodyPart
              person={person}
              begun={skipped}
              measures={latestFirst(mine(kept.measures))}
              today={localDate()}
              drafts={drafts[person?.id ?? ''] ?? {}}
              onDrafts={(typed, personId = person?.id ?? '') => setDrafts({ ...drafts, [personId]: typed })}
              actions={actions}
            />
          )}
          {page === 'backup' && (
            <BackupPart records={records} stamp={stamp} kept={kept} wording={wording} onDone={setDone} onError={setFailure} />
          )}
        </Frame>
      </DraftsHeld.Provider>
      <DoneBar
        said={done === null ? null : t(done.code, done.values)}
        onUndo={
          done?.undo
            ? () =>
                void done
                  .undo?.()
                  .then((back) => setDone({ code: back ? 'workroom.undone' : 'workroom.not-undone', values: {}, undo: null }))
            : null
        }
        onClose={() => setDone(null)}
      />
    </WordsOf.Provider>
  )
}

/** A kept listing as the wishlist shows it. */
const shown = (listing: ListingKept, answer: AnswerNow | null): ListingShown => ({
  ...listing,
  price: listing.money.price ?? listing.price?.amount ?? null,
  kind: (answer?.request ?? listing.request)?.garment.kind ?? null,
  now: answer?.reckoning ?? null
})

/** Of each kind the measurement that counts first: the latest day, of one day the one written later. */
const latestFirst = <T extends { takenOn: string; createdAt: string; id: string }>(rows: readonly T[]): T[] => {
  const order = (row: T) => `${row.takenOn} ${row.createdAt} ${row.id}`
  return [...rows].sort((a, b) => (order(a) < order(b) ? 1 : -1))
}

/** Today where the person is, as an ISO date. */
function localDate(): string {
  const now = new Date()
  const two = (value: number) => String(value).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
