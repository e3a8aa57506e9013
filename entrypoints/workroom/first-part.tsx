/** The first visit with its records: what is typed is kept in this browser until it is saved. */
import { useState } from 'preact/hooks'
import * as z from 'zod/mini'
import { useWords } from '../../components/words.tsx'
import { type FirstDraft, type FirstPerson, firstDraft } from '../../components/workroom/first/first-draft.ts'
import { FirstVisit } from '../../components/workroom/first/first-visit.tsx'
import { SHOPPED_FOR } from '../../components/workroom/first/shops-for.ts'
import type { GarmentFields } from '../../components/workroom/shown.ts'
import { GARMENT_KINDS } from '../../core/ids/kinds.ts'
import { POINTS } from '../../core/ids/points.ts'
import { NEW_PERSON } from '../../core/records/owned.ts'
import { BODY_MEASURES } from '../../core/wearer/body.ts'
import { currencyUsual, unitsUsual } from './where-usual.ts'
import type { WorkroomActions } from './workroom-actions.ts'

const KEY = 'first-visit'

export interface FirstPartProps {
  actions: WorkroomActions
  today: string
  /** The step to begin with, where nothing was typed yet. */
  begin: FirstDraft['step']
  /** To the full form, with what was typed. */
  onSkip: (draft: FirstDraft) => void
  onSample: () => void
  /** Saved: on to a first answer. */
  onSaved: () => void
}

export function FirstPart({ actions, today, begin, onSkip, onSample, onSaved }: FirstPartProps) {
  const { t } = useWords()
  const [draft, setDraft] = useState<FirstDraft>(() => kept() ?? { ...begun(), step: begin })
  const keep = (next: FirstDraft) => {
    setDraft(next)
    keepDraft(next)
  }
  const somebody = (person: FirstPerson) => ({
    ...NEW_PERSON,
    ...person,
    name: person.name === '' ? t('first.me') : person.name
  })
  const liked = (garment: Pick<GarmentFields, 'kind' | 'measures'>): GarmentFields => ({
    ...garment,
    name: t('first.liked-name', { kind: garment.kind }),
    notes: ''
  })
  const saved = (done: boolean) => {
    if (!done) return
    keepDraft(null)
    onSaved()
  }
  return (
    <FirstVisit
      draft={draft}
      onDraft={keep}
      onBody={(person, measures) => void actions.meet(somebody(person), measures, null, today).then(saved)}
      onGarment={(person, garment) => void actions.meet(somebody(person), [], liked(garment), today).then(saved)}
      onSkip={() => onSkip(draft)}
      onSample={onSample}
    />
  )
}

const stored: z.ZodMiniType<FirstDraft> = z.object({
  step: z.enum(['what', 'sewing', 'body', 'garment']),
  towards: z.enum(['body', 'garment']),
  name: z.string(),
  units: z.enum(['cm', 'in']),
  currency: z.string(),
  level: z.union([z.literal(1), z.literal(2), z.literal(3), z.literal(4), z.literal(5)]),
  tailor: z.boolean(),
  chosen: z.array(z.enum(SHOPPED_FOR)),
  body: z.partialRecord(z.enum(BODY_MEASURES), z.string()),
  kind: z.enum(GARMENT_KINDS),
  laid: z.enum(['flat', 'around']),
  garment: z.partialRecord(z.enum(POINTS), z.string())
})

const begun = (): FirstDraft => firstDraft(unitsUsual(navigator.language), currencyUsual(navigator.language))

function kept(): FirstDraft | null {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null')
    // what a version before this one had not asked yet is as it begins
    const parsed = stored.safeParse(typeof found === 'object' && found !== null ? { ...begun(), ...found } : null)
    return parsed.success ? parsed.data : null
  } catch {
    // storage switched off, or not ours: begin anew
    return null
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
