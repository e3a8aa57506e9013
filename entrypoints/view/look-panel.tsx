/** The panel over what is saved: one look, whoever it is judged for, and where its page is. Used beside pages and in the workroom. */
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Place } from '../../components/judged.ts'
import { Panel } from '../../components/panel/panel.tsx'
import { WordsOf } from '../../components/words.tsx'
import type { Correction } from '../../core/reading/reading.ts'
import { kindOf } from '../../core/records/read-saved.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { Look } from '../../core/records/schemas.ts'
import { personOf, whoOf } from './judge-look.ts'
import type { PageProps } from './page-start.tsx'
import { panelActions } from './panel-actions.ts'
import { pasteDraft } from './paste-draft.ts'
import { useJudged } from './use-judged.ts'
import { useKept } from './use-records.ts'
import { useWording } from './wording-for.ts'

export interface LookPanelProps extends PageProps {
  look: Look | null
  wardrobe: Wardrobe
  place: Place
  windowId: number | null
}

export function LookPanel({ records, stamp, saving, look, wardrobe, place, windowId }: LookPanelProps) {
  const wording = useWording(look, wardrobe)
  const kept = useKept(records, look, console.error)
  const { asTyped, onTry } = useTyped(look)
  const judgedLook = useJudged(asTyped, wardrobe, wording, { place, kept })
  const kind = judgedLook === null || look === null ? null : kindOf(judgedLook.read.whole, look.corrections)
  return (
    <WordsOf.Provider value={wording}>
      <Panel
        key={look?.id ?? 'nothing'}
        who={whoOf(look, kind, wardrobe)}
        judged={judgedLook?.judged ?? null}
        pasteDraft={pasteDraft()}
        {...panelActions({ stamp, saving, look, judgedLook, person: personOf(look, wardrobe), windowId })}
        onTry={onTry}
      />
    </WordsOf.Provider>
  )
}

/**
 * The look with a figure that is being typed: it is answered while the same corrections stand saved under it. Once they are others, what was
 * typed is among them, or somebody changed them elsewhere: then what is saved counts, also when it is taken back later.
 */
export function useTyped(look: Look | null): { asTyped: Look | null; onTry: (corrections: Correction[] | null) => void } {
  const [typed, setTyped] = useState<{ id: string; saved: string; corrections: Correction[] } | null>(null)
  const saved = look === null ? '' : JSON.stringify(look.corrections)
  const stands = look !== null && typed !== null && typed.id === look.id && typed.saved === saved
  useEffect(() => {
    if (!stands) setTyped(null)
  }, [stands])
  const asTyped = useMemo(() => (stands ? { ...look, corrections: typed.corrections } : look), [look, stands, typed])
  const onTry = (corrections: Correction[] | null) =>
    setTyped(look === null || corrections === null ? null : { id: look.id, saved, corrections })
  return { asTyped, onTry }
}
