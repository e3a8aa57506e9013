/** The workroom: which part is shown, for whom, and what was just done. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { Apart } from '../../components/apart.tsx'
import { BrokenPart } from '../../components/broken.tsx'
import { HelpPlace } from '../../components/help-link.tsx'
import { useWords, WordsOf } from '../../components/words.tsx'
import { AlterationsPage } from '../../components/workroom/alterations/alterations-page.tsx'
import type { Drafts } from '../../components/workroom/body/body-page.tsx'
import { DraftsHeld } from '../../components/workroom/drafts.tsx'
import type { FirstDraft } from '../../components/workroom/first/first-draft.ts'
import { DoneBar, Frame } from '../../components/workroom/frame.tsx'
import { HelpPage } from '../../components/workroom/help/help-page.tsx'
import { WardrobePage } from '../../components/workroom/wardrobe/wardrobe-page.tsx'
import { setSettings } from '../../core/records/owned.ts'
import { personFor } from '../../core/records/person-for.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { Person } from '../../core/records/schemas.ts'
import { troubleOf } from '../../core/records/trouble.ts'
import { say, type Wording } from '../../core/words/say.ts'
import { platform } from '../platform/extension.ts'
import { useFollowed } from '../view/look-apart.tsx'
import type { PageProps } from '../view/page-start.tsx'
import { useSaved, wholeWardrobe } from '../view/use-records.ts'
import { useTheme } from '../view/use-theme.ts'
import { useWording } from '../view/wording-for.ts'
import { saveBackup } from './backup-file.ts'
import { BackupPart } from './backup-part.tsx'
import { BodyPart } from './body-part.tsx'
import type { FindsNow } from './finds-held.ts'
import { FirstPart } from './first-part.tsx'
import { BackupReminder, lastChange, noteBackup, PromiseNote } from './keeping.tsx'
import { LookedAt, lastRead } from './looked-at.tsx'
import { Missing } from './missing.tsx'
import { OpenListing } from './open-listing.tsx'
import { isSample } from './sample.ts'
import { SettingsPart } from './settings-part.tsx'
import { ShopCardPart } from './shop-card-part.tsx'
import { useWentBackElsewhere } from './snapshots-here.tsx'
import { useFindsHeld } from './use-finds.ts'
import { addressOf, type Route, useRoute } from './use-route.ts'
import { WishlistPart } from './wishlist-part.tsx'
import { WorkPart } from './work-part.tsx'
import { type Done, type WorkroomActions, workroomActions } from './workroom-actions.ts'

export function Workroom({ records, stamp, saving }: PageProps) {
  const [failure, setFailure] = useState<unknown>(null)
  const [done, setDone] = useState<Done | null>(null)
  const [pageId] = useState(() => stamp().newId())
  const kept = useSaved(records, wholeWardrobe, setFailure)
  const finds = useFindsHeld(records, setFailure)
  const route = useRoute()
  const person = kept === null ? null : personFor(kept.people, null, kept.settings.personId)
  const wording = useWording(null, kept)
  const actions = useMemo(() => workroomActions(records, stamp, setDone, saving), [records, stamp, saving])
  const t = (code: string, values = {}) => say({ code, values }, wording)

  useTheme(kept?.settings.theme ?? 'system')
  useEffect(() => {
    document.title = t('workroom.title', { page: t(`workroom.page.${route.page}`) })
    // what can be taken back stays in reach; a mere message belongs to the page it was said on
    setDone((said) => (said?.undo == null ? null : said))
  }, [route.page, wording.language])

  useWentBackElsewhere(records, pageId, setDone, setFailure)
  useFollowed(failure, () => saving.tell(records.ended() ?? troubleOf(failure)))
  if (failure !== null && (kept === null || finds === null))
    return <p class="wr-alone">{t('workroom.failed', { detail: String(failure) })}</p>
  if (kept === null || finds === null) return <p class="wr-alone">{t('workroom.loading')}</p>
  return (
    <WordsOf.Provider value={wording}>
      <HelpPlace.Provider value="">
        <Parts
          records={records}
          stamp={stamp}
          saving={saving}
          pageId={pageId}
          kept={kept}
          finds={finds}
          person={person}
          route={route}
          wording={wording}
          actions={actions}
          onDone={setDone}
          onError={setFailure}
        />
      </HelpPlace.Provider>
      <DoneBar
        said={done === null ? null : t(done.code, done.values)}
        onUndo={done?.undo ? () => void takeBack(done).then(setDone) : null}
        onClose={() => setDone(null)}
      />
    </WordsOf.Provider>
  )
}

async function takeBack(done: Done): Promise<Done> {
  const back = (await done.undo?.()) ?? null
  // not saved, which the page says with its reason: it can be taken back again
  if (back === null) return done
  return { code: back ? 'workroom.undone' : 'workroom.not-undone', values: {}, undo: null }
}

/** Pages that need nobody's measures. */
const OPEN_TO_ALL: ReadonlySet<Route['page']> = new Set(['backup', 'alterations', 'help', 'settings'])

interface PartProps extends PageProps {
  /** This page, among others that are open. */
  pageId: string
  kept: Wardrobe
  finds: FindsNow
  /** Whose things are shown; null: there is nobody yet. */
  person: Person | null
  route: Route
  wording: Wording
  actions: WorkroomActions
  onDone: (done: Done) => void
  onError: (error: unknown) => void
}

/** The frame, and in it the part that the address names; where nothing is known of anybody, the first visit. */
function Parts(props: PartProps) {
  const { records, stamp, saving, pageId, kept, finds, person, wording, actions, onDone, onError } = props
  const { page, open } = props.route
  const { t } = useWords()
  /** The first visit was left for the full form. */
  const [skipped, setSkipped] = useState<FirstDraft | null>(null)
  /** What was typed into a body's fields and not yet taken, by person. */
  const [drafts, setDrafts] = useState<Readonly<Record<string, Drafts>>>({})
  const drafted = useHeldDrafts(person)
  const isNobody = kept.people.length === 0 && finds.count === 0 && skipped === null
  const isFirst = page === 'first' || (isNobody && !OPEN_TO_ALL.has(page))
  const backup = () =>
    void saveBackup(records, stamp()).then((name) => {
      noteBackup(stamp().now)
      onDone({ code: 'backup.saved', values: { name }, undo: null })
    }, onError)
  return (
    <DraftsHeld.Provider value={drafted}>
      <Frame
        page={page}
        people={kept.people}
        personId={person?.id ?? null}
        onPerson={(id) => void saving.run((records) => setSettings(records, { personId: id }, stamp()))}
        place={t(`workroom.place.${platform.where}`, { address: location.host })}
      >
        <Apart
          of={`${page} ${open ?? ''} ${isFirst} ${person?.id ?? ''}`}
          broken={(detail) => <BrokenPart detail={detail} onReload={() => location.reload()} onBackup={backup} />}
        >
          {page !== 'backup' && open === null && !isFirst && <Reminders kept={kept} finds={finds} backup={page === 'wishlist'} />}
          <Missing records={records} page={isFirst ? 'first' : page} onError={onError} />
          {isFirst && <First {...props} onSkipped={setSkipped} />}
          {kept.people.some(isSample) && <SampleNote alone={kept.people.every(isSample) && page !== 'first'} actions={actions} />}
          {!isFirst && page === 'wishlist' && <OnWishlist {...props} />}
          {!isFirst && page === 'card' && <ShopCardPart records={records} kept={kept} listingId={open ?? ''} onError={onError} />}
          {!isFirst && page === 'work' && (
            <WorkPart
              records={records}
              kept={kept}
              finds={finds.finds}
              listingId={open ?? ''}
              place={{ stamp, saving, done: onDone }}
              today={localDate()}
              onError={onError}
            />
          )}
          {!isFirst && page === 'look' && <LookedAt records={records} stamp={stamp} saving={saving} kept={kept} onError={onError} />}
          {page === 'alterations' && <AlterationsPage />}
          {page === 'wardrobe' && person !== null && <WardrobePart kept={kept} person={person} actions={actions} />}
          {!isFirst && (page === 'body' || (page === 'wardrobe' && person === null)) && (
            <BodyPart
              person={person}
              begun={skipped}
              measures={latestFirst(ofPerson(kept.measures, person))}
              today={localDate()}
              drafts={drafts[person?.id ?? ''] ?? {}}
              onDrafts={(typed, personId = person?.id ?? '') => setDrafts((all) => ({ ...all, [personId]: typed }))}
              actions={actions}
            />
          )}
          {page === 'help' && <HelpPage topic={open} />}
          {page === 'settings' && <SettingsPart kept={kept} person={person} finds={finds.finds} actions={actions} />}
          {page === 'backup' && (
            <BackupPart
              records={records}
              stamp={stamp}
              saving={saving}
              kept={kept}
              count={finds.count}
              wording={wording}
              page={pageId}
              onDone={onDone}
              onError={onError}
            />
          )}
        </Apart>
      </Frame>
    </DraftsHeld.Provider>
  )
}

/** What keeps all this, where it is worth a word. The sample is nobody's to lose. */
function Reminders({ kept, finds, backup }: { kept: Wardrobe; finds: FindsNow; backup: boolean }) {
  const own = <T extends { id: string }>(rows: readonly T[]): T[] => rows.filter((row) => !isSample(row))
  const summaries = finds.finds.map(({ summary }) => summary)
  const [people, measures, garments, listings] = [own(kept.people), own(kept.measures), own(kept.garments), own(summaries)]
  const records = finds.count - (summaries.length - listings.length) + garments.length
  const reminder = <BackupReminder records={records} changedAt={lastChange(people, measures, garments, listings)} />
  return <PromiseNote records={people.length + records} otherwise={backup ? reminder : null} />
}

/** The wishlist, or the listing of it that is open. */
function OnWishlist(props: PartProps) {
  const { records, stamp, saving, kept, finds, person, actions, onError } = props
  const { open } = props.route
  return open === null ? (
    <WishlistPart
      records={records}
      kept={kept}
      finds={finds}
      ready={ofPerson(kept.measures, person).length + ofPerson(kept.garments, person).length > 0}
      today={localDate()}
      actions={actions}
    />
  ) : (
    <OpenListing
      key={open}
      records={records}
      stamp={stamp}
      saving={saving}
      kept={kept}
      listingId={open}
      actions={actions}
      onError={onError}
    />
  )
}

/** What is half typed in the forms of one person; that of the others is held meanwhile. */
function useHeldDrafts(person: Person | null): Map<string, unknown> {
  const held = useRef(new Map<string, Map<string, unknown>>())
  const drafted = held.current.get(person?.id ?? '') ?? new Map<string, unknown>()
  held.current.set(person?.id ?? '', drafted)
  return drafted
}

function First({ records, route, actions, onSkipped }: PartProps & { onSkipped: (draft: FirstDraft) => void }) {
  return (
    <FirstPart
      actions={actions}
      today={localDate()}
      begin={route.page === 'wardrobe' ? 'garment' : 'what'}
      onSkip={(draft) => {
        onSkipped(draft)
        location.hash = 'body'
      }}
      onSample={() =>
        void actions.addSample(localDate()).then((saved) => {
          if (saved) location.hash = 'wishlist'
        })
      }
      onSaved={() =>
        void lastRead(records).then(({ look }) => {
          location.hash = addressOf(look === null ? 'wishlist' : 'look')
        })
      }
    />
  )
}

function SampleNote({ alone, actions }: { alone: boolean; actions: WorkroomActions }) {
  const { t } = useWords()
  return (
    <p class="note wr-sample">
      {t('sample.here')} {alone && <a href={addressOf('first')}>{t('sample.own')}</a>}
      <button type="button" class="btn small" onClick={() => void actions.removeSample()}>
        {t('sample.remove')}
      </button>
    </p>
  )
}

function WardrobePart({ kept, person, actions }: Pick<PartProps, 'kept' | 'actions'> & { person: Person }) {
  const nameOf = (id: string): string => kept.garments.find((garment) => garment.id === id)?.name ?? ''
  return (
    <WardrobePage
      key={person.id}
      name={person.name}
      garments={ofPerson(kept.garments, person)}
      onAdd={(garment) => actions.addGarment(person.id, garment)}
      onEdit={(id, garment, began) => actions.editGarment(id, garment, began)}
      onRemove={(id) => void actions.removeGarment(id, nameOf(id))}
      onFavourite={(id, on) => void actions.favourite(id, nameOf(id), on)}
    />
  )
}

const ofPerson = <T extends { personId: string }>(rows: readonly T[], person: Person | null): T[] =>
  rows.filter((row) => row.personId === person?.id)

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
