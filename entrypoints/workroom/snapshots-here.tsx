/** Earlier states over the records: shown, looked at before anything changes, gone back to; and told when another page went back. */
import { useEffect, useRef, useState } from 'preact/hooks'
import { type SnapshotShown, SnapshotsPart } from '../../components/workroom/backup-snapshots.tsx'
import type { Records } from '../../core/records/database.ts'
import {
  type GoingBack,
  makeSnapshot,
  previewRestore,
  restore,
  type Snapshot,
  snapshots,
  snapshotsLetGo
} from '../../core/records/snapshots.ts'
import { there } from '../../core/records/trouble.ts'
import { useSaved } from '../view/use-records.ts'
import { actOfForm, back, type Done, type Place } from './acts.ts'

const statesNow = async (records: Records) => ({ made: await snapshots(records), letGo: await snapshotsLetGo(records) })

export interface SnapshotsHereProps extends Place {
  records: Records
  /** This page, among others that are open. */
  page: string
  onError: (error: unknown) => void
}

export function SnapshotsHere({ records, page, onError, ...place }: SnapshotsHereProps) {
  const states = useSaved(records, statesNow, onError)
  const [planned, setPlanned] = useState<{ key: string; counts: GoingBack } | null>(null)
  const shown = states?.made.map(shownOf) ?? null
  const look = async (key: string) => {
    const counts = await previewRestore(records, key)
    setPlanned(counts === null ? null : { key, counts })
    if (counts === null) place.done({ code: 'snapshots.gone', values: {}, undo: null })
  }
  const go = (key: string) => {
    const at = shown?.find((one) => one.key === key)
    if (at === undefined) return
    void actOfForm(place, async (records) => wentBack(records, place, at, page)).then((saved) => {
      if (saved) setPlanned(null)
    })
  }
  return (
    <SnapshotsPart
      shown={shown}
      letGo={states?.letGo ?? false}
      planned={planned}
      onLook={(key) => void look(key).catch(onError)}
      onGo={go}
      onLeave={() => setPlanned(null)}
    />
  )
}

/** Goes back, having kept how it is now; that can be taken back as far as nobody has changed it since. */
async function wentBack(records: Records, place: Place, { key, day, time }: SnapshotShown, page: string): Promise<Done> {
  const now = await makeSnapshot(records, 'restoring', place.stamp(), { by: page, stays: key })
  const { written } = there(await restore(records, key, place.stamp()))
  const undo = back(place, async (records) => {
    const undone = await restore(records, now.key, place.stamp(), written)
    return undone !== null && undone.left === 0
  })
  return { code: 'snapshots.went', values: { day, time }, undo }
}

/** A snapshot with its day and time as they are where the person is. */
function shownOf({ key, madeAt, because, counts }: Snapshot): SnapshotShown {
  const at = new Date(madeAt)
  const two = (value: number) => String(value).padStart(2, '0')
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`
  return { key, day, time: `${two(at.getHours())}:${two(at.getMinutes())}`, because, counts }
}

const lastGoingBack = async (records: Records) => {
  const last = (await snapshots(records)).find(({ because }) => because === 'restoring')
  return { key: last?.key ?? '', by: last?.by ?? '' }
}

/** Tells where another page took everything back while this one was open. */
export function useWentBackElsewhere(records: Records, page: string, tell: (done: Done) => void, onError: (error: unknown) => void): void {
  const last = useSaved(records, lastGoingBack, onError)
  const known = useRef<string | null>(null)
  useEffect(() => {
    if (last === null) return
    const isNew = known.current !== null && last.key > known.current
    known.current = last.key
    if (isNew && last.by !== page) tell({ code: 'snapshots.elsewhere', values: {}, undo: null })
  }, [last?.key])
}
