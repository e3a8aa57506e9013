/** The first visit with its records: what is typed is kept in this browser until it is saved. */
import { useState } from 'preact/hooks'
import { type FirstDraft, FirstVisit, firstDraft, type Measured } from '../../components/workroom/first/first-visit.tsx'
import type { GarmentKind } from '../../core/garment/kinds.ts'
import type { PointId } from '../../core/garment/points.ts'
import type { Units } from '../../core/length.ts'
import { NEW_PERSON } from '../../core/records/owned.ts'
import type { BodyMeasureId } from '../../core/wearer/body.ts'
import { say } from '../../core/words/say.ts'
import type { Doings } from './doings.ts'

const KEY = 'first-visit'
/** Where inches are usual. */
const unitsHere = (): Units => (/^en-US|^en-LR|^my\b/.test(navigator.language) ? 'in' : 'cm')

export function FirstPart({ doings, today, onSkip }: { doings: Doings; today: string; onSkip: () => void }) {
  const [draft, setDraft] = useState<FirstDraft>(() => ({ ...firstDraft(unitsHere()), ...kept() }))
  const keep = (next: FirstDraft) => {
    setDraft(next)
    keepDraft(next)
  }
  const person = async (name: string, units: Units): Promise<string> => {
    const called = name === '' ? say({ code: 'first.me', values: {} }, { units }) : name
    return doings.addPerson({ ...NEW_PERSON, name: called, units })
  }
  return (
    <FirstVisit
      draft={draft}
      onDraft={keep}
      onBody={(name, units, measures) => void saveBody(doings, person(name, units), measures, today)}
      onGarment={(name, units, kind, measures) => void saveGarment(doings, person(name, units), units, kind, measures)}
      onSkip={onSkip}
      onSample={() => void doings.addSample(today)}
    />
  )
}

async function saveBody(doings: Doings, person: Promise<string>, measures: Measured<BodyMeasureId>[], today: string): Promise<void> {
  const personId = await person
  for (const { id, mm, stated } of measures) await doings.measured(personId, id, mm, stated, today)
  goOn()
}

async function saveGarment(
  doings: Doings,
  person: Promise<string>,
  units: Units,
  kind: GarmentKind,
  measures: Measured<PointId>[]
): Promise<void> {
  const name = say({ code: 'first.liked-name', values: { kind } }, { units })
  const garmentId = await doings.addGarment(await person, {
    name,
    kind,
    notes: '',
    measures: measures.map(({ id, mm, stated }) => ({ point: id, mm, stated }))
  })
  await doings.favourite(garmentId, name, true)
  goOn()
}

/** On to the wishlist, which says how to read a first listing. */
function goOn(): void {
  keepDraft(null)
  location.hash = 'wishlist'
}

function kept(): Partial<FirstDraft> {
  try {
    const draft: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}')
    return typeof draft === 'object' && draft !== null ? draft : {}
  } catch {
    // storage switched off, or not ours: begin anew
    return {}
  }
}

function keepDraft(draft: FirstDraft | null): void {
  try {
    if (draft === null) localStorage.removeItem(KEY)
    else localStorage.setItem(KEY, JSON.stringify(draft))
  } catch {
    // storage switched off or full: the text stays in the fields
  }
}
